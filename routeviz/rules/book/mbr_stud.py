"""Studs that the duct cuts."""

from __future__ import annotations

from collections.abc import Iterator

from routeviz.model.finding import Finding
from routeviz.model.solids import Solid, SolidKind
from routeviz.rules.bench import OUT, look, meets, member, straight_out
from routeviz.rules.context import Context
from routeviz.rules.registry import Rule, Scope
from routeviz.rules.touched import ruling_findings


def judge(context: Context, rule: Rule) -> Iterator[Finding]:
    """Judge every stud that the route cuts."""
    yield from ruling_findings(context, rule)


def _stud() -> Solid:
    return member("stud-5", SolidKind.STUD, (59.25, 0.5, 1.5), (60.75, 6.0, 94.5), 2, "2x6", exterior=True)


def _bored() -> Context:
    route = straight_out(penetrations=(meets(_stud(), (1.0, 0.0, 0.0), (60.0, 3.25, 80.0), 2.0),))
    return look(solids=(_stud(),), route=route)


def _out() -> Context:
    return look(solids=(_stud(),), route=straight_out(penetrations=(meets(_stud(), OUT, (60.0, 3.25, 80.0), 8.5),)))


RULE = Rule(
    code="MBR-STUD",
    title="Cut in a stud",
    scope=Scope.ROUTE,
    checks="Each stud that the duct would cut: bore or notch against its share of the depth, wood left at the edges, and how many successive doubled studs are bored wider than a single one may be.",
    why="A bearing stud carries floors and roof; an exterior one also the wind.",
    limits=("member_cuts",),
    sources=("irc-r602-6",),
    tables=("stud", "wall_opening"),
    applies="To every stud that the route passes through or overlaps. The framing of an opening, like a small window, is told with it.",
    blind="Whether a partition carries load after all; say so in the scene.",
    judge=judge,
    passing_words="A 2 in bore through a 2x6 exterior stud.",
    passing=lambda: _bored(),
    failing_words="An 8 in duct through the wall with a stud in its middle.",
    failing=lambda: _out(),
)
