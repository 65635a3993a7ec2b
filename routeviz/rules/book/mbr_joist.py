"""Sawn joists and rafters that the duct cuts."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from routeviz.model.finding import Finding
from routeviz.rules.bench import UP, duct, joist, look, meets, straight_up
from routeviz.rules.context import Context
from routeviz.rules.registry import Rule, Scope
from routeviz.rules.touched import ruling_findings


def judge(context: Context, rule: Rule) -> Iterator[Finding]:
    """Judge every sawn joist and rafter that the route cuts."""
    yield from ruling_findings(context, rule)


def _across(size_in: float) -> Context:
    """Let a small duct run along the wall and through one joist in the middle of its depth."""
    crossed = joist(4, 60.0)
    run = duct(((40.0, -20.0, 101.125), (80.0, -20.0, 101.125)))
    return look(
        solids=(crossed,),
        route=replace(run, penetrations=(meets(crossed, (1.0, 0.0, 0.0), (60.0, -20.0, 101.125), size_in),)),
    )


def _up() -> Context:
    crossed = joist(4, 60.0)
    return look(solids=(crossed,), route=straight_up(penetrations=(meets(crossed, UP, (60.0, -8.0, 100.0), 8.5),)))


RULE = Rule(
    code="MBR-JOIST",
    title="Cut in a joist or rafter",
    scope=Scope.ROUTE,
    checks="Each sawn joist or rafter that the duct would cut: hole size against a third of the depth, wood left at the edges, notches.",
    why="A joist cut too deep sags or splits under load, and the ceiling with it.",
    limits=("member_cuts",),
    sources=("irc-r502-8-1", "irc-r802-7-1", "irc-r502-10", "irc-r802-9"),
    tables=("sawn", "rafter", "opening"),
    applies="To every sawn joist or rafter that the route passes through or overlaps. The framing of an opening is told with it.",
    blind="Other holes already in the member, splits and knots, and the load above.",
    judge=judge,
    passing_words="A 3 in hole in the middle of a 2x10 joist.",
    passing=lambda: _across(3.0),
    failing_words="An 8 in duct straight up through a joist.",
    failing=lambda: _up(),
)
