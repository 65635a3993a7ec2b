"""Too many elbows."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from routeviz.model.finding import Finding
from routeviz.model.route import offsets_in
from routeviz.rules.bench import look, straight_up
from routeviz.rules.context import Context
from routeviz.rules.outcome import at_most
from routeviz.rules.registry import Rule, Scope


def judge(context: Context, rule: Rule) -> Iterator[Finding]:
    """Count elbows in 90-degree equivalents."""
    route, limit = context.the_route(), context.limit("elbows")
    if limit is None:
        return
    wanted = context.scene.duct.max_elbows
    own = replace(limit, value=float(wanted), note="as the scene wants it") if wanted != limit.number else limit
    bends = tuple(p.id for p in route.parts if p.angle_deg)
    detail = "the two elbows of an offset count as one" if len(bends) > route.elbows and offsets_in(route.parts) else ""
    yield at_most(rule, own, route.elbows, where=bends, detail=detail,
                  remedy="Look for a straighter way, or two 45s for a 90 and a jog.")  # fmt: skip


def _with(elbows: float) -> Context:
    return look(route=straight_up(elbows=elbows))


RULE = Rule(
    code="ELB-COUNT",
    title="Elbows",
    scope=Scope.ROUTE,
    checks="The number of elbows, two 45s counting as one 90, against what the scene allows.",
    why="Every elbow costs air, makes noise and catches grease.",
    limits=("elbows",),
    sources=(),
    applies="To every route.",
    blind="Elbows inside the hood.",
    judge=judge,
    passing_words="One elbow.",
    passing=lambda: _with(1.0),
    failing_words="Five elbows.",
    failing=lambda: _with(5.0),
)
