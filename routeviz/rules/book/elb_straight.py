"""Elbows too close together."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from routeviz.model.finding import Finding
from routeviz.model.route import PartKind, offsets_in
from routeviz.rules.bench import look, straight_up
from routeviz.rules.context import Context
from routeviz.rules.outcome import at_least
from routeviz.rules.registry import Rule, Scope


def judge(context: Context, rule: Rule) -> Iterator[Finding]:
    """Measure the straight duct between neighbouring elbows; the two of one offset count as one fitting."""
    route, limit = context.the_route(), context.limit("straight_between")
    if limit is None or not route.straights_between_in:
        return
    wanted = context.scene.duct.min_straight_in
    own = replace(limit, value=wanted, note="as the scene wants it") if wanted != limit.number else limit
    short = min(route.straights_between_in)
    within = {a.id for a, _ in offsets_in(route.parts)}  # after these an offset goes on
    fittings = [p for p in route.parts if p.kind is PartKind.ELBOW and p.id not in within]
    at = route.straights_between_in.index(short)
    first = fittings[min(at, len(fittings) - 1)] if fittings else route.parts[0]
    words = "elbows back to back" if short < 1e-6 else ""
    yield at_least(rule, own, short, where=(first.id,), place=first.end, detail=words,
                   remedy="Move the elbows apart, or make the jog an offset of two 45s.")  # fmt: skip


def _with(straight_in: float) -> Context:
    return look(route=straight_up(straights_between_in=(straight_in,), elbows=2.0))


RULE = Rule(
    code="ELB-STRAIGHT",
    title="Straight between elbows",
    scope=Scope.ROUTE,
    checks="The least straight duct between two elbows, against what the scene wants.",
    why="Air leaves an elbow whirling on one side; a second elbow right after it costs much more than alone.",
    limits=("straight_between",),
    sources=(),
    applies="To routes with two elbows or more. No code gives a number; 24 in is what the trade likes.",
    blind="How smooth the elbows are.",
    judge=judge,
    passing_words="30 in between two elbows.",
    passing=lambda: _with(30.0),
    failing_words="Two elbows back to back.",
    failing=lambda: _with(0.0),
)
