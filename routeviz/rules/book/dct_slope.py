"""Level duct in the cold."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from routeviz.model.finding import Finding, State
from routeviz.model.route import PartKind
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
    level = [p for p in context.the_route().parts if p.kind is PartKind.STRAIGHT and abs(p.direction[2]) < 0.01]
    run = sum(p.length_in for p in level)
    if run <= _LEVEL_IN:
        return
    limit = context.limit("slope")
    fall = "20 mm per metre" if context.scene.metric else "1/4 in per foot"
    yield not_checked(rule, context, "slope", limit=limit, where=tuple(p.id for p in level), place=level[0].start,
                      detail=f"{context.length(run)} of level duct; fittings have play enough for a slight fall",
                      remedy=f"Let it fall a little towards the cap, about {fall}.")  # fmt: skip


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
