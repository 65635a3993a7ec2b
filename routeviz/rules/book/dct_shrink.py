"""Duct that gets narrower on its way."""

from __future__ import annotations

from collections.abc import Iterator

from routeviz.model.finding import Finding
from routeviz.model.route import PartKind
from routeviz.rules.bench import as_built_part, look, round_duct, straight_up
from routeviz.rules.context import Context
from routeviz.rules.outcome import judge_number
from routeviz.rules.registry import Rule, Scope
from routeviz.rules.sections import area_in2, section_words


def judge(context: Context, rule: Rule) -> Iterator[Finding]:
    """Follow the area beyond the hood's own transition; only less than the least so far is a step down."""
    route, metric = context.the_route(), context.scene.metric
    found, narrowest = False, route.parts[0].section_out if route.parts else route.section
    for part in route.parts:
        first = part is route.parts[0] and part.kind is PartKind.TRANSITION
        if part.section == part.section_out or first:
            continue
        found = True
        if area_in2(part.section) < area_in2(narrowest):
            narrowest = part.section
        share = min(1.0, area_in2(part.section_out) / area_in2(narrowest))
        words = f"{section_words(part.section, metric)} to {section_words(part.section_out, metric)}"
        if share < 1:
            words += f": {(1 - share) * 100:.0f} of 100 parts of the area lost"
        if area_in2(part.section_out) < area_in2(narrowest):
            narrowest = part.section_out
        yield from judge_number(rule, context, "downstream_area_share", share, "of the area before", where=(part.id,), place=part.start,
                                detail=words, remedy="Keep the wider duct all the way to a cap of that size.")  # fmt: skip
    if not found:
        yield from judge_number(
            rule, context, "downstream_area_share", 1.0, "of the area before", detail="one section all the way"
        )


def _reduced() -> Context:
    narrow = as_built_part(PartKind.TRANSITION, round_duct(8.0), out=round_duct(6.0), start=(60.0, -8.0, 100.0))
    whole = straight_up()
    return look(route=straight_up(parts=(*whole.parts[:-1], narrow, whole.parts[-1]), as_built=True))


RULE = Rule(
    code="DCT-SHRINK",
    title="Never narrower downstream",
    fault="Narrower downstream",
    scope=Scope.ROUTE,
    checks="Whether the duct's area shrinks anywhere between the hood's own transition and the cap.",
    why="Air that has to squeeze loses pressure and gains noise; grease settles at the step.",
    limits=("downstream_area_share",),
    sources=(),
    applies="To every part that changes the section after the first.",
    blind="The free area inside the cap.",
    judge=judge,
    passing_words="8 in duct from the hood to the cap.",
    passing=lambda: look(route=straight_up()),
    failing_words="8 in duct reduced to 6 in half way.",
    failing=lambda: _reduced(),
)
