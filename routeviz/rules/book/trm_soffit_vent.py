"""A cap too near a vented soffit."""

from __future__ import annotations

from collections.abc import Iterator

from routeviz.model.finding import Finding
from routeviz.model.scene import OutdoorKind
from routeviz.rules.bench import hood_wall_face, keep_out, look, straight_out
from routeviz.rules.context import Context
from routeviz.rules.distances import distance_findings
from routeviz.rules.registry import Rule, Scope

_KINDS = (OutdoorKind.SOFFIT_VENT,)


def judge(context: Context, rule: Rule) -> Iterator[Finding]:
    """Measure from the edge of the cap's opening to the edge of each thing."""
    yield from distance_findings(
        context, rule, _KINDS, "soffit_vent", remedy=", or put solid soffit panels beside and above the cap."
    )


def _beside(gap_in: float) -> Context:
    thing = keep_out("soffit-vent", OutdoorKind.SOFFIT_VENT.value, 64.0 + gap_in, 60.0, 30.0, 40.0)
    return look(faces=(hood_wall_face(thing),), route=straight_out())


RULE = Rule(
    code="TRM-SOFFIT-VENT",
    title="Cap to the soffit vent",
    scope=Scope.ROUTE,
    checks="The distance from the edge of the opening of the cap to a vented soffit.",
    why="Warm greasy air rises into the soffit and from there into the attic.",
    limits=("soffit_vent",),
    sources=(),
    applies="Where the eaves are vented over the face of the cap or round its corner. Inspectors are split on whether a soffit vent is an opening.",
    blind="Vents in the gable or at the ridge, and a vented eave below a cap on the roof.",
    judge=judge,
    passing_words="48 in from edge to edge.",
    passing=lambda: _beside(48.0),
    failing_words="12 in from edge to edge.",
    failing=lambda: _beside(12.0),
)
