"""A cap with no room for its flange and flap."""

from __future__ import annotations

from collections.abc import Iterator

from routeviz.model.finding import Finding
from routeviz.model.scene import OutdoorKind, Scene, SectionSize
from routeviz.model.solids import FaceKind
from routeviz.rules.bench import hood_wall_face, keep_out, look, straight_out
from routeviz.rules.context import Context
from routeviz.rules.distances import face_of, meetings
from routeviz.rules.outcome import arithmetic, at_least
from routeviz.rules.registry import Rule, Scope

_USUAL_FLANGE_IN = 4.0  # how much wider than the duct a cap's flange is; common practice
_BODIES = (OutdoorKind.OTHER, OutdoorKind.UNIT, OutdoorKind.METER, OutdoorKind.REGULATOR, "edge", "eave")


def _overhang(scene: Scene, section: SectionSize) -> float:
    """Give how far the cap's flange reaches beyond the duct's edge."""
    flange = scene.cap.wall_flange_in
    if flange is None:
        return _USUAL_FLANGE_IN / 2
    return max(0.0, (flange - section.width_in) / 2)


def judge(context: Context, rule: Rule) -> Iterator[Finding]:
    """Measure from the edge of the cap's opening to what its flange or flap would strike."""
    route = context.the_route()
    face = face_of(context.frame, route.termination)
    if face is None or face.kind is FaceKind.ROOF:
        return
    wanted = _overhang(context.scene, route.parts[-1].section_out)
    limit = arithmetic("flange", wanted, must=False, words="the cap's own size, usual where none is given")
    near = [m for m in meetings(context) if m.thing.kind in _BODIES and m.thing.away_in < _USUAL_FLANGE_IN]
    if not near:
        return
    met = min(near, key=lambda m: m.gap_in)
    yield at_least(
        rule, limit, met.gap_in, where=("cap", met.thing.id), place=route.termination.point,
        title=f"{rule.title}: {met.thing.label}", detail="room for the flange, and for the flap to swing open",
        remedy=f"Move the cap {context.length(max(0.0, wanted - met.gap_in))} away, or move what is there.",
    )  # fmt: skip


def _under(gap_in: float) -> Context:
    gutter = keep_out("gutter", OutdoorKind.OTHER.value, 0.0, 84.0 + gap_in, 120.0, 5.0)
    return look(faces=(hood_wall_face(gutter),), route=straight_out())


RULE = Rule(
    code="TRM-FLAP",
    title="Room for the cap",
    fault="No room for the cap",
    scope=Scope.ROUTE,
    checks="The room round the opening for the cap's flange, and for its flap to swing.",
    why="A gutter or a cable over the flap keeps it shut, and a flange over a corner cannot be sealed.",
    limits=(),
    sources=("arithmetic",),
    applies="To caps on walls and gables: against eaves, corners and other things on the face.",
    blind="How far the flap of this cap swings.",
    judge=judge,
    passing_words="A gutter 10 in above the opening.",
    passing=lambda: _under(10.0),
    failing_words="A gutter 1 in above the opening.",
    failing=lambda: _under(1.0),
)
