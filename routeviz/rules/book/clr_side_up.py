"""Wall cabinets beside the cooktop that hang too low."""

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
from routeviz.rules.raising import raised_words
from routeviz.rules.registry import Rule, Scope


def judge(context: Context, rule: Rule) -> Iterator[Finding]:
    """Measure the underside of side cabinets from the counter, and from the cooking surface where that differs."""
    top, limit = context.scene.cooktop, context.limit("side_cabinet_up")
    if limit is None or (top.kind is not CooktopKind.GAS and limit.source != "maker"):
        return
    counter = top.height_in if top.counter_in is None else top.counter_in
    for thing, apart in side_things(context, within_in=_zone(context)):
        place = (thing.left_in + thing.width_in / 2, -(thing.out_in + thing.depth_in), thing.bottom_in)
        name = spoken(thing.id)
        from_counter, from_top = thing.bottom_in - counter, thing.bottom_in - top.height_in
        detail = f"{context.length(apart)} from the cooktop's edge"
        short = max(0.0, limit.number - min(from_counter, from_top))
        remedy = f"{raised_words(context, thing, short, 'it')}, or keep it farther from the cooktop."
        differ = abs(counter - top.height_in) > 1e-9
        yield at_least(rule, limit, from_counter, where=(thing.id,), place=place, detail=detail, remedy=remedy,
                       title=f"{rule.title}: {name}{' (measured from the counter)' if differ else ''}")  # fmt: skip
        if differ:
            yield at_least(rule, limit, from_top, where=(thing.id,), place=place, detail=detail, remedy=remedy,
                           title=f"{rule.title}: {name} (measured from the cooking surface)", must=False)  # fmt: skip


def _zone(context: Context) -> float:
    side = context.limit("side_clearance")
    return side.number if side is not None else 6.0


def _with(bottom_in: float) -> Context:
    plain = kitchen(obstacles=(cabinet("side-cabinet", 78.0, bottom_in, 24.0, 30.0),))
    return look(replace(plain, cooktop=replace(plain.cooktop, kind=CooktopKind.GAS)))


RULE = Rule(
    code="CLR-SIDE-UP",
    title="Side cabinet above the counter",
    scope=Scope.SCENE,
    checks="How high wall cabinets beside a gas cooktop hang above the counter; both readings where the surfaces differ.",
    why="Flames lick out sideways under a wide pan and scorch the bottom of a low cabinet.",
    limits=("side_cabinet_up", "side_clearance"),
    sources=(),
    applies="To cabinets within the side clearance of a gas cooktop, or of any cooktop whose maker gives the number.",
    blind="Which of the two surfaces an inspector measures from; both are reported.",
    judge=judge,
    passing_words="A side cabinet 19 in above the counter.",
    passing=lambda: _with(55.0),
    failing_words="A side cabinet 17 3/4 in above the counter.",
    failing=lambda: _with(53.75),
)
