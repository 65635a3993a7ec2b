"""Cabinet sides too near the cooktop."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from routeviz.model.finding import Finding
from routeviz.model.scene import CooktopKind
from routeviz.model.spoken import spoken
from routeviz.rules.bench import cabinet, kitchen, look
from routeviz.rules.beside import side_things
from routeviz.rules.context import Context
from routeviz.rules.outcome import at_least
from routeviz.rules.registry import Rule, Scope


def judge(context: Context, rule: Rule) -> Iterator[Finding]:
    """Measure sideways from the cooktop's edge: up to the height of wall cabinets, and on up to the hood."""
    top, limit = context.scene.cooktop, context.limit("side_clearance")
    up = context.limit("side_cabinet_up")
    if limit is None or up is None or (top.kind is not CooktopKind.GAS and limit.source != "maker"):
        return
    counter = top.height_in if top.counter_in is None else top.counter_in
    hood_bottom = context.scene.hood_bottom_in
    for thing, apart in side_things(context, within_in=limit.number + 12.0, stone=limit.source == "maker"):
        near = thing.left_in + (
            thing.width_in if thing.left_in + thing.width_in <= top.centre_in else 0.0
        )  # its edge by the cooktop
        place = (near, -(thing.out_in + thing.depth_in), thing.bottom_in)
        name = spoken(thing.id)
        remedy = f"Keep it {context.length(limit.number)} from the cooktop, or hang it higher."
        if thing.bottom_in < counter + up.number - 1e-9:
            yield at_least(rule, limit, apart, where=(thing.id, "cooktop"), place=place, title=f"{name[:1].upper()}{name[1:]} beside the cooktop",
                           detail=f"it reaches below {context.length(up.number)} above the counter", remedy=remedy)  # fmt: skip
        elif limit.source == "maker" and hood_bottom is not None and thing.bottom_in < hood_bottom:
            short = f"{context.length(up.number)} above the counter"
            yield at_least(rule, limit, apart, where=(thing.id, "cooktop"),
                           place=place, must=False, remedy=remedy, title=f"{name[:1].upper()}{name[1:]} beside the cooktop (read up to the hood)",
                           detail=f"the other reading ends the zone {short}, and there it is fine")  # fmt: skip


def _with(left_in: float) -> Context:
    plain = kitchen(obstacles=(cabinet("tall-cabinet", left_in, 0.0, 24.0, 84.0),))
    return look(replace(plain, cooktop=replace(plain.cooktop, kind=CooktopKind.GAS)))


RULE = Rule(
    code="CLR-SIDE",
    title="Cabinet beside the cooktop",
    scope=Scope.SCENE,
    checks="The sideways distance from the cooktop's edge to cabinets that reach low beside it; with a maker's number also up to the hood.",
    why="Wood beside a flame dries out and chars long before it burns.",
    limits=("side_clearance", "side_cabinet_up"),
    sources=(),
    applies="To gas cooktops, and to any cooktop whose maker gives a side clearance; its reading up to the hood is advice.",
    blind="Which of two readings of a maker's drawing an inspector takes; both are reported with their spare.",
    judge=judge,
    passing_words="A tall cabinet 8 in from the cooktop.",
    passing=lambda: _with(83.0),
    failing_words="A tall cabinet 3 in from the cooktop.",
    failing=lambda: _with(78.0),
)
