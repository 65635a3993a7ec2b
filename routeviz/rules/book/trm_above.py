"""A cap below a window that opens."""

from __future__ import annotations

import math
from collections.abc import Iterator

from routeviz.model.finding import Finding, State
from routeviz.model.scene import OutdoorKind
from routeviz.model.solids import FaceKind
from routeviz.rules.bench import hood_wall_face, keep_out, look, straight_out
from routeviz.rules.context import Context
from routeviz.rules.distances import aside_in, face_of, meetings
from routeviz.rules.outcome import at_least, settled
from routeviz.rules.registry import Rule, Scope


def judge(context: Context, rule: Rule) -> Iterator[Finding]:
    """Look for opening windows above the cap and not far to one side, beyond the distance that a code asks for."""
    route, limit = context.the_route(), context.limit("smell_reach")
    face = face_of(context.frame, route.termination)
    if limit is None or face is None or face.kind is FaceKind.ROOF:
        return
    code = context.limit("opening_operable")
    axes = [a for a in range(3) if a != face.axis]
    up = route.termination.point[axes[1]]
    for met in meetings(context):
        if met.thing.kind != OutdoorKind.OPERABLE_WINDOW or met.thing.lo[1] < up:
            continue
        aside = math.hypot(max(aside_in(route, met.thing, axes[0]), 0.0), met.thing.away_in)
        if aside >= limit.number or (code is not None and met.gap_in < code.number):
            continue
        found = at_least(rule, limit, aside, where=("cap", met.thing.id), place=route.termination.point,
                         title=f"{met.thing.label[:1].upper()}{met.thing.label[1:]} above the cap", remedy="Put the cap to one side, or go out through the roof.")  # fmt: skip
        yield settled(found, State.CLOSE, "what the hood blows out rises into it; no code gives a number for this")


def _below(aside_in: float) -> Context:
    window = keep_out("bedroom-window", OutdoorKind.OPERABLE_WINDOW.value, 64.0 + aside_in, 130.0, 30.0, 40.0)
    return look(faces=(hood_wall_face(window),), route=straight_out())


RULE = Rule(
    code="TRM-ABOVE",
    title="Window above the cap",
    scope=Scope.ROUTE,
    checks="Whether a window that opens lies above the cap, even where it is far enough away for the code.",
    why="Warm greasy air rises along the wall; the people above open their windows to it.",
    limits=("smell_reach",),
    sources=(),
    applies="To caps on walls under windows that open, the own house's and those that the scene lists outdoors.",
    blind="Wind, and how often the windows are open.",
    judge=judge,
    passing_words="A window above, 4 ft to one side.",
    passing=lambda: _below(48.0),
    failing_words="A window 3 ft 10 in right above.",
    failing=lambda: _below(-10.0),
    fails_as=State.CLOSE,
)
