"""Beams and headers that the duct cuts."""

from __future__ import annotations

from collections.abc import Iterator

from routeviz.model.finding import Finding
from routeviz.model.solids import Solid, SolidKind
from routeviz.rules.bench import OUT, duct, look, meets, member
from routeviz.rules.context import Context
from routeviz.rules.registry import Rule, Scope
from routeviz.rules.touched import ruling_findings


def judge(context: Context, rule: Rule) -> Iterator[Finding]:
    """Judge every beam and header that the route cuts."""
    yield from ruling_findings(context, rule)


def _beam() -> Solid:
    return member("house-beam", SolidKind.BEAM, (0.0, -40.0, 96.0), (120.0, -37.0, 107.25), 0, "2x12", plies=2)


def _through(size_in: float) -> Context:
    run = duct(
        ((60.0, -80.0, 101.6), (60.0, 6.5, 101.6)), penetrations=(meets(_beam(), OUT, (60.0, -38.5, 101.6), size_in),)
    )
    return look(solids=(_beam(),), route=run)


RULE = Rule(
    code="MBR-BEAM",
    title="Cut in a beam or header",
    scope=Scope.ROUTE,
    checks="Whether the route cuts a beam, a doubled carrying member, a ridge or a header.",
    why="A beam carries the framing that hangs on it; the rule for single joists does not hold for it.",
    limits=("member_cuts",),
    sources=("common-practice", "irc-r502-8-1"),
    tables=("beam",),
    applies="To every sawn beam, ridge or header that the route passes through or overlaps.",
    blind="What an engineer would allow after calculation.",
    judge=judge,
    passing_words="A 3/4 in hole, as for a cable.",
    passing=lambda: _through(0.75),
    failing_words="A 6 in duct through a doubled 2x12 that carries joists.",
    failing=lambda: _through(6.0),
)
