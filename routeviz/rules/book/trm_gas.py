"""A cap too near a gas meter or regulator."""

from __future__ import annotations

from collections.abc import Iterator

from routeviz.model.finding import Finding
from routeviz.model.scene import OutdoorKind
from routeviz.rules.bench import hood_wall_face, keep_out, look, straight_out
from routeviz.rules.context import Context
from routeviz.rules.distances import distance_findings
from routeviz.rules.registry import Rule, Scope

_KINDS = {OutdoorKind.METER: "meter", OutdoorKind.REGULATOR: "regulator"}  # each with its own limit


def judge(context: Context, rule: Rule) -> Iterator[Finding]:
    """Measure from the edge of the cap's opening to the edge of each thing."""
    for kind, key in _KINDS.items():
        yield from distance_findings(context, rule, (kind,), key, remedy=", and ask the gas supplier.")


def _beside(gap_in: float) -> Context:
    thing = keep_out("gas-meter", OutdoorKind.METER.value, 64.0 + gap_in, 60.0, 30.0, 40.0)
    return look(faces=(hood_wall_face(thing),), route=straight_out())


RULE = Rule(
    code="TRM-GAS",
    title="Cap to the gas meter or regulator",
    scope=Scope.ROUTE,
    checks="The distance from the edge of the opening of the cap to a gas meter or a regulator vent.",
    why="A regulator may vent gas; a fan motor and a flap should not be near.",
    limits=("meter", "regulator"),
    sources=(),
    applies="Where the scene lists a meter or regulator: on the face of the cap, round a corner, or under the roof that it stands on.",
    blind="The own distance that the gas supplier asks for.",
    judge=judge,
    passing_words="48 in from edge to edge.",
    passing=lambda: _beside(48.0),
    failing_words="12 in from edge to edge.",
    failing=lambda: _beside(12.0),
)
