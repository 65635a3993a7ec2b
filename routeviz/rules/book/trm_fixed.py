"""A cap too near a window that does not open."""

from __future__ import annotations

from collections.abc import Iterator

from routeviz.model.finding import Finding
from routeviz.model.scene import OutdoorKind
from routeviz.rules.bench import hood_wall_face, keep_out, look, straight_out
from routeviz.rules.context import Context
from routeviz.rules.distances import distance_findings
from routeviz.rules.registry import Rule, Scope

_KINDS = (OutdoorKind.FIXED_WINDOW,)


def judge(context: Context, rule: Rule) -> Iterator[Finding]:
    """Measure from the edge of the cap's opening to the edge of each thing."""
    yield from distance_findings(
        context, rule, _KINDS, "opening_fixed", remedy=", or ask whether fixed glass counts here."
    )


def _beside(gap_in: float) -> Context:
    thing = keep_out("fixed-window", OutdoorKind.FIXED_WINDOW.value, 64.0 + gap_in, 60.0, 30.0, 40.0)
    return look(faces=(hood_wall_face(thing),), route=straight_out())


RULE = Rule(
    code="TRM-FIXED",
    title="Cap to the fixed window",
    scope=Scope.ROUTE,
    checks="The distance from the edge of the opening of the cap to the edge of a window that does not open.",
    why="Some codes count fixed glass as an opening; grease also stains it.",
    limits=("opening_fixed",),
    sources=(),
    applies="Where the place counts fixed windows. Places that count only openings that open leave it out.",
    blind="Windows of a neighbour that the scene does not list, and those on the far side of the house.",
    judge=judge,
    passing_words="48 in from edge to edge.",
    passing=lambda: _beside(48.0),
    failing_words="20 in from edge to edge.",
    failing=lambda: _beside(20.0),
)
