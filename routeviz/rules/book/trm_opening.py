"""A cap too near a window or door that opens."""

from __future__ import annotations

from collections.abc import Iterator

from routeviz.model.finding import Finding
from routeviz.model.scene import OutdoorKind
from routeviz.rules.bench import hood_wall_face, keep_out, look, straight_out
from routeviz.rules.context import Context
from routeviz.rules.distances import either, meetings, unasked
from routeviz.rules.registry import Rule, Scope

_KINDS = (OutdoorKind.OPERABLE_WINDOW, OutdoorKind.DOOR)


def judge(context: Context, rule: Rule) -> Iterator[Finding]:
    """Measure from the edge of the cap's opening to the edge of each window or door that opens."""
    for met in meetings(context):
        if met.thing.kind not in _KINDS:
            continue
        limit, higher = context.limit("opening_operable"), context.limit("opening_above")
        if limit is None:
            yield from unasked(context, rule, met, "opening_operable")
            continue
        short = max(0.0, limit.number - met.gap_in)
        yield either(context, rule, met, limit, higher, remedy=f"Move the cap {context.length(short)} farther away.")


def _beside(gap_in: float) -> Context:
    window = keep_out("sink-window", OutdoorKind.OPERABLE_WINDOW.value, 64.0 + gap_in, 60.0, 30.0, 40.0)
    return look(faces=(hood_wall_face(window),), route=straight_out())


RULE = Rule(
    code="TRM-OPENING",
    title="Cap to the opening window or door",
    scope=Scope.ROUTE,
    checks="The distance from the edge of the opening of the cap to the edge of each window or door that opens.",
    why="What is blown out comes straight back in.",
    limits=("opening_operable", "opening_above"),
    sources=(),
    applies="To windows and doors on the face of the cap, round a corner, and under the roof that it stands on. A newer edition lets a cap above the window come closer.",
    blind="Windows of neighbours that the scene does not list, those on the far side of the house, and wind.",
    judge=judge,
    passing_words="48 in from edge to edge.",
    passing=lambda: _beside(48.0),
    failing_words="35 in from edge to edge: an inch short.",
    failing=lambda: _beside(35.0),
)
