"""A cap over a walkway."""

from __future__ import annotations

from collections.abc import Iterator

from routeviz.model.finding import Finding
from routeviz.model.scene import OutdoorKind
from routeviz.model.solids import FaceKind
from routeviz.rules.bench import hood_wall_face, keep_out, look, straight_out
from routeviz.rules.context import Context
from routeviz.rules.distances import aside_in, face_of, meetings
from routeviz.rules.outcome import at_least
from routeviz.rules.registry import Rule, Scope


def judge(context: Context, rule: Rule) -> Iterator[Finding]:
    """See whether the cap stands over the walkway; the sideways room counts."""
    route, limit = context.the_route(), context.limit("walkway")
    face = face_of(context.frame, route.termination)
    if limit is None or face is None:
        return
    axes = [a for a in range(3) if a != face.axis]
    sideways = axes if face.kind is FaceKind.ROOF else axes[:1]  # a roof has two level sides
    for met in meetings(context):
        if met.thing.kind == OutdoorKind.WALKWAY:
            side = max(aside_in(route, met.thing, axis, i) for i, axis in enumerate(sideways))
            yield at_least(rule, limit, side, where=("cap", met.thing.id), place=route.termination.point,
                           title=f"Cap clear of the {met.thing.label}", remedy="Move the cap to one side of the walkway.")  # fmt: skip


def _over(left_in: float) -> Context:
    path = keep_out("garden-path", OutdoorKind.WALKWAY.value, left_in, 12.0, 36.0, 1.0)
    return look(faces=(hood_wall_face(path),), route=straight_out())


RULE = Rule(
    code="TRM-WALKWAY",
    title="Cap clear of the walkway",
    scope=Scope.ROUTE,
    checks="Whether the cap blows onto a walkway, deck or balcony.",
    why="Greasy air and drips make it slippery and unpleasant; some places forbid it.",
    limits=("walkway",),
    sources=(),
    applies="Where the scene lists a walkway on the face of the cap.",
    blind="Decks that the scene does not list.",
    judge=judge,
    passing_words="A path 20 in to one side.",
    passing=lambda: _over(84.0),
    failing_words="A path right under the cap.",
    failing=lambda: _over(44.0),
)
