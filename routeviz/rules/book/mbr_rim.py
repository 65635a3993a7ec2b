"""Rim joists that the duct passes through."""

from __future__ import annotations

from collections.abc import Iterator

from routeviz.model.finding import Finding
from routeviz.model.solids import Crossing, Solid, SolidKind
from routeviz.rules.bench import OUT, look, meets, member, straight_out
from routeviz.rules.context import Context
from routeviz.rules.registry import Rule, Scope
from routeviz.rules.touched import ruling_findings


def judge(context: Context, rule: Rule) -> Iterator[Finding]:
    """Judge every rim that the route passes through."""
    yield from ruling_findings(context, rule)


def _rim() -> Solid:
    return member("rim-hood", SolidKind.RIM, (0.0, 4.5, 96.0), (120.0, 6.0, 103.25), 0, "2x8", exterior=True,
                  crossing=Crossing.RULE)  # fmt: skip


def _out(size_in: float) -> Context:
    hole = meets(_rim(), OUT, (60.0, 5.0, 99.625), size_in)
    return look(solids=(_rim(),), route=straight_out(z=99.625, penetrations=(hole,)))


RULE = Rule(
    code="MBR-RIM",
    title="Cut in a rim joist",
    scope=Scope.ROUTE,
    checks="Whether the hole in the rim leaves wood above and below it.",
    why="The rim lies on its wall over its whole length, so the rule for joists that span does not hold; it still closes the floor and stiffens it.",
    limits=("member_cuts",),
    sources=("common-practice",),
    tables=("rim",),
    applies="To every sawn rim that the route passes through, between two joists. Rims of engineered timber go by their maker.",
    blind="Studs and posts that stand on the rim there; inspectors differ.",
    judge=judge,
    passing_words="A 6 in hole in the middle of a 2x8 rim.",
    passing=lambda: _out(6.0),
    failing_words="An 8 in hole in the same rim.",
    failing=lambda: _out(8.0),
)
