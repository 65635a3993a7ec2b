"""Level duct in the cold."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from routeviz.model.finding import Finding, State
from routeviz.model.route import level_stretches
from routeviz.model.scene import Site
from routeviz.rules.bench import duct, kitchen, look, straight_up
from routeviz.rules.context import Context
from routeviz.rules.outcome import not_checked
from routeviz.rules.registry import Rule, Scope

_LEVEL_IN = 24.0  # shorter level pieces drain by themselves


def judge(context: Context, rule: Rule) -> Iterator[Finding]:
    """Look for long level runs where water may form."""
    if not context.scene.site.cold_climate:
        return
    route, limit = context.the_route(), context.limit("slope")
    level = [part for stretch in level_stretches(route.parts) for part in stretch]
    run = sum(part.length_in for part in level)
    if run <= _LEVEL_IN or limit is None:
        return
    slope = limit.number / 12  # in per ft
    fall = f"{1000 * slope:.0f} mm per metre" if context.scene.metric else f"{context.length(limit.number)} per foot"
    detail = (
        f"{context.length(run)} of duct drawn level; at {fall} it falls {context.length(run * slope)} over that length"
    )
    remedy = f"Let it fall a little towards the cap, {fall}, and set each hole lower by the fall up to it, where no member is in the way."
    if route.as_built:
        remedy = f"Put a level on it: it should fall a little towards the cap, {fall}."
    yield not_checked(rule, context, "slope", limit=limit, where=tuple(part.id for part in level), place=level[0].start,
                      detail=detail, remedy=remedy)  # fmt: skip


def _cold(level_in: float) -> Context:
    scene = replace(kitchen(), site=Site(cold_climate=True))
    points = ((60.0, -8.0, 77.5), (60.0, -8.0, 101.0), (60.0 + level_in, -8.0, 101.0))
    return look(scene, route=duct(points))


RULE = Rule(
    code="DCT-SLOPE",
    title="Fall towards the cap",
    scope=Scope.ROUTE,
    checks="Whether a long level run should be laid with a slight fall.",
    why="Water that forms in a cold duct must run out at the cap, not back into the hood.",
    limits=("slope",),
    sources=(),
    applies="To level runs in a cold climate; it reminds, since drawn runs are level.",
    blind="How the duct is really hung.",
    judge=judge,
    passing_words="A duct straight up.",
    passing=lambda: look(replace(kitchen(), site=Site(cold_climate=True)), route=straight_up()),
    failing_words="8 ft of level duct.",
    failing=lambda: _cold(96.0),
    fails_as=State.NOT_CHECKED,
)
