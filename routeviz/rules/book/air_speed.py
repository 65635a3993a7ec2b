"""Air too fast in the duct."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from routeviz.model.finding import Finding
from routeviz.model.route import PartKind
from routeviz.model.scene import Fan
from routeviz.rules.bench import kitchen, look, round_duct, straight_up
from routeviz.rules.context import Context
from routeviz.rules.outcome import judge_number
from routeviz.rules.registry import Rule, Scope
from routeviz.rules.sections import area_in2, section_words

_LAID = (PartKind.STRAIGHT, PartKind.FLEX, PartKind.ELBOW)


def judge(context: Context, rule: Rule) -> Iterator[Finding]:
    """Divide the labelled flow by the area of the narrowest part."""
    parts = [p for p in context.the_route().parts if p.kind in _LAID]
    if not parts:
        return
    narrow = min(parts, key=lambda p: area_in2(p.section))
    flow = context.scene.hood.fan.rated_cfm
    speed = flow * 144 / area_in2(narrow.section)
    yield from judge_number(
        rule, context, "air_speed", speed, "ft/min", least=False, where=(narrow.id,), place=narrow.start,
        detail=f"{context.flow(flow)} in {section_words(narrow.section, context.scene.metric)} duct",
        remedy="Use a wider duct all the way; the labelled flow will not pass through this one.",
    )  # fmt: skip


def _in(diameter_in: float) -> Context:
    plain = kitchen()
    scene = replace(plain, hood=replace(plain.hood, fan=Fan(800.0)))
    return look(scene, route=straight_up(section=round_duct(diameter_in)))


RULE = Rule(
    code="AIR-SPEED",
    title="Air speed at the labelled flow",
    scope=Scope.ROUTE,
    checks="The speed that the labelled flow would have in the narrowest part of the duct.",
    why="Fast air is loud and loses its pressure on the way; the labelled flow then stays on the label.",
    limits=("air_speed",),
    sources=(),
    applies="To every route. 6 in duct is good for about 400 cfm, 8 in for 600 to 900, 10 in for about 1200.",
    blind="What really flows; see the air figures.",
    judge=judge,
    passing_words="800 cfm in 8 in duct.",
    passing=lambda: _in(8.0),
    failing_words="800 cfm in 6 in duct.",
    failing=lambda: _in(6.0),
)
