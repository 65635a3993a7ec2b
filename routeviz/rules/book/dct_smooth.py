"""Flexible duct."""

from __future__ import annotations

from collections.abc import Iterator

from routeviz.model.finding import Finding
from routeviz.model.route import PartKind
from routeviz.rules.bench import as_built_part, look, round_duct, straight_up
from routeviz.rules.context import Context
from routeviz.rules.outcome import not_checked, yes_or_no
from routeviz.rules.registry import Rule, Scope


def judge(context: Context, rule: Rule) -> Iterator[Finding]:
    """Look for parts that are not smooth inside."""
    limit = context.limit("smooth_inside")
    flex = [p for p in context.the_route().parts if p.kind is PartKind.FLEX]
    where = tuple(p.id for p in flex)
    long = context.length(sum(p.length_in for p in flex))
    place = flex[0].start if flex else None
    if limit is None:
        if flex:
            yield not_checked(
                rule, context, "smooth_inside", where=where, place=place, detail=f"{long} of flexible duct"
            )
        return
    yield yes_or_no(rule, limit, not flex, where=where, place=place,
                    detail=f"{long} of flexible duct: its ridges hold grease and cost flow" if flex else "rigid all the way",
                    remedy="Replace it with smooth rigid metal duct; look at the joints before closing the wall.")  # fmt: skip


def _flex() -> Context:
    hose = as_built_part(PartKind.FLEX, round_duct(8.0), length_in=24.0)
    whole = straight_up()
    return look(route=straight_up(parts=(hose, *whole.parts), as_built=True))


RULE = Rule(
    code="DCT-SMOOTH",
    title="Smooth inside",
    fault="Flexible duct, not smooth inside",
    scope=Scope.ROUTE,
    checks="Whether any part of the duct is flexible, and so not smooth inside.",
    why="Ridges hold grease, cost several times the flow loss, and cannot be cleaned.",
    limits=("smooth_inside",),
    sources=(),
    applies="To every route. Some inspectors let a short semi-rigid piece at the hood pass; the rule does not.",
    blind="Dents and screws inside rigid duct.",
    judge=judge,
    passing_words="Rigid duct all the way.",
    passing=lambda: look(route=straight_up()),
    failing_words="24 in of flexible duct at the hood.",
    failing=lambda: _flex(),
)
