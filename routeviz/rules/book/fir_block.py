"""Holes through ceilings and floors that must be closed."""

from __future__ import annotations

from collections.abc import Iterator

from routeviz.model.finding import Finding, State
from routeviz.model.solids import Box, Crossing, Solid, SolidKind
from routeviz.rules.bench import UP, look, meets, straight_up
from routeviz.rules.context import Context
from routeviz.rules.cuts import main_axis
from routeviz.rules.outcome import not_checked
from routeviz.rules.registry import Rule, Scope
from routeviz.rules.touched import solid_of

_LEVELS = frozenset({SolidKind.BOARD, SolidKind.SUBFLOOR, SolidKind.PLATE})


def judge(context: Context, rule: Rule) -> Iterator[Finding]:
    """Count the ceilings, floors and plates that the duct passes through upright."""
    found, first = [], None
    for crossing in context.the_route().penetrations:
        solid = solid_of(context.frame, crossing.solid)
        if solid is not None and solid.kind in _LEVELS and main_axis(crossing.direction) == 2:
            found.append(solid.id)
            first = first or crossing.centre
    if found:
        yield not_checked(rule, context, "fireblock", limit=context.limit("fireblock"), where=tuple(found), place=first,
                          detail="the gap round a duct at ceiling and floor levels must stop flame and smoke",
                          remedy="Close the gap round the duct with an approved material after it is laid." if context.limit("fireblock") else "")  # fmt: skip


def _ceiling() -> Context:
    board = Solid(
        "ceiling-1",
        SolidKind.BOARD,
        "ceiling board",
        Box((0.0, -120.0, 96.0), (120.0, 0.0, 96.5)),
        Crossing.PASS,
        "example",
    )
    return look(solids=(board,), route=straight_up(penetrations=(meets(board, UP, (60.0, -8.0, 96.2), 8.5),)))


RULE = Rule(
    code="FIR-BLOCK",
    title="Fireblocking round the duct",
    scope=Scope.ROUTE,
    checks="Which ceilings, floors and plates the duct passes through, where the gap must be closed.",
    why="Open gaps at floor levels are chimneys for fire inside walls and ceilings.",
    limits=("fireblock",),
    sources=("irc-m1601-4-5",),
    applies="To upright runs; it reminds, since the drawing cannot show the work.",
    blind="Whether it was done.",
    judge=judge,
    passing_words="A duct that passes no ceiling.",
    passing=lambda: look(route=straight_up()),
    failing_words="A duct up through the ceiling.",
    failing=lambda: _ceiling(),
    fails_as=State.NOT_CHECKED,
)
