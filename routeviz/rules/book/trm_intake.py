"""A cap too near a mechanical air intake."""

from __future__ import annotations

from collections.abc import Iterator

from routeviz.model.finding import Finding
from routeviz.model.scene import OutdoorKind
from routeviz.rules.bench import hood_wall_face, keep_out, look, straight_out
from routeviz.rules.context import Context
from routeviz.rules.distances import either, meetings, unasked
from routeviz.rules.registry import Rule, Scope
from routeviz.units import length_text


def judge(context: Context, rule: Rule) -> Iterator[Finding]:
    """Measure from the cap's opening to the intake, and how far the cap stands above it."""
    for met in meetings(context):
        if met.thing.kind != OutdoorKind.MECHANICAL_INTAKE:
            continue
        limit, higher = context.limit("intake_mechanical"), context.limit("intake_mechanical_above")
        if limit is None:
            yield from unasked(context, rule, met, "intake_mechanical")
            continue
        over = (
            ""
            if higher is None
            else f", or {length_text(higher.number, metric=context.scene.metric, long=True)} above it"
        )
        yield either(context, rule, met, limit, higher, remedy=f"Move the cap away from the intake{over}.")


def _beside(gap_in: float) -> Context:
    intake = keep_out("fresh-air", OutdoorKind.MECHANICAL_INTAKE.value, 64.0 + gap_in, 76.0, 8.0, 8.0)
    return look(faces=(hood_wall_face(intake),), route=straight_out(x=60.0))


RULE = Rule(
    code="TRM-INTAKE",
    title="Cap to the air intake",
    scope=Scope.ROUTE,
    checks="The distance from the edge of the opening of the cap to a mechanical air intake, or its height above it.",
    why="A fan would draw the smoke back into the house.",
    limits=("intake_mechanical", "intake_mechanical_above"),
    sources=(),
    applies="Where the scene lists a mechanical intake: on the face of the cap, round a corner, or under the roof that it stands on. A cap 3 ft or more above the intake may be nearer.",
    blind="Factory fittings that join intake and exhaust in one cap, which are excepted; intakes on the far side of the house.",
    judge=judge,
    passing_words="11 ft from edge to edge.",
    passing=lambda: _beside(132.0),
    failing_words="6 ft from edge to edge, at the same height.",
    failing=lambda: _beside(72.0),
)
