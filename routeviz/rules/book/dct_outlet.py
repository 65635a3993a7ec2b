"""Duct narrower than the hood's outlet."""

from __future__ import annotations

from collections.abc import Iterator

from routeviz.model.finding import Finding
from routeviz.rules.bench import look, round_duct, straight_up
from routeviz.rules.context import Context
from routeviz.rules.outcome import at_least, judge_number
from routeviz.rules.registry import Rule, Scope
from routeviz.rules.sections import area_in2, section_words


def judge(context: Context, rule: Rule) -> Iterator[Finding]:
    """Compare the areas of the outlet and of the duct that follows it, and the maker's or place's least size."""
    route, outlet = context.the_route(), context.scene.hood.outlet.section
    part = next((p for p in route.parts if p.length_in > 0), route.parts[0])
    own = area_in2(route.section) / area_in2(outlet)
    words = f"{section_words(outlet, context.scene.metric)} outlet, {section_words(route.section, context.scene.metric)} duct"
    if own < 1:
        words += f": {(1 - own) * 100:.0f} of 100 parts of the area lost"
    yield from judge_number(rule, context, "duct_area_share", own, "of the outlet's area", where=(part.id,), place=part.start, detail=words,
                            remedy=f"Use {section_words(outlet, context.scene.metric)} duct or larger.")  # fmt: skip
    least = context.limit("duct_least")
    if least is not None:
        smallest = min(route.section.width_in, route.section.height_in) if route.section.is_round else 0.0
        if smallest:
            yield at_least(rule, least, smallest, where=(part.id,), place=part.start, title="Least duct size",
                           remedy=f"Use duct of {context.length(least.number)} or more.")  # fmt: skip


def _with(diameter_in: float) -> Context:
    return look(route=straight_up(section=round_duct(diameter_in)))


RULE = Rule(
    code="DCT-OUTLET",
    title="Duct as wide as the hood's outlet",
    fault="Narrower than the hood's outlet",
    scope=Scope.ROUTE,
    checks="The duct's area against the area of the hood's outlet, and any least size that the maker or the place gives.",
    why="A duct narrower than the outlet makes the hood louder and weaker from its first inch.",
    limits=("duct_area_share", "duct_least"),
    sources=(),
    applies="To every route. The least size only where a maker or a place gives one.",
    blind="How much the fan has to spare; see the air figures.",
    judge=judge,
    passing_words="8 in duct on an 8 in outlet.",
    passing=lambda: _with(8.0),
    failing_words="6 in duct on an 8 in outlet.",
    failing=lambda: _with(6.0),
)
