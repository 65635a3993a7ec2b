"""A cap too near an outdoor unit."""

from __future__ import annotations

from collections.abc import Iterator

from routeviz.model.finding import Finding
from routeviz.model.scene import OutdoorKind
from routeviz.rules.bench import hood_wall_face, keep_out, look, straight_out
from routeviz.rules.context import Context
from routeviz.rules.distances import distance_findings
from routeviz.rules.registry import Rule, Scope

_KINDS = (OutdoorKind.UNIT,)


def judge(context: Context, rule: Rule) -> Iterator[Finding]:
    """Measure from the edge of the cap's opening to the edge of each thing."""
    yield from distance_findings(context, rule, _KINDS, "outdoor_unit", remedy=".")


def _beside(gap_in: float) -> Context:
    thing = keep_out("outdoor-unit", OutdoorKind.UNIT.value, 64.0 + gap_in, 60.0, 30.0, 40.0)
    return look(faces=(hood_wall_face(thing),), route=straight_out())


RULE = Rule(
    code="TRM-UNIT",
    title="Cap to the outdoor unit",
    scope=Scope.ROUTE,
    checks="The distance from the edge of the opening of the cap to an outdoor unit.",
    why="Grease clogs its fins. No code is known to us that speaks of it.",
    limits=("outdoor_unit",),
    sources=(),
    applies="Where the scene lists an outdoor unit: on the face of the cap, round a corner, or under the roof that it stands on.",
    blind="The air stream of the unit.",
    judge=judge,
    passing_words="24 in from edge to edge.",
    passing=lambda: _beside(24.0),
    failing_words="4 in from edge to edge.",
    failing=lambda: _beside(4.0),
)
