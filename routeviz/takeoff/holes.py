"""The hole schedule: every layer with its hole, measured from two edges that a tape can hook on."""

from __future__ import annotations

import math
from dataclasses import dataclass

from routeviz.model.overhead import ceiling_at_in
from routeviz.model.route import Penetration, Route
from routeviz.model.scene import Scene, WallSide
from routeviz.model.solids import ExitFace, FaceKind, Frame, Solid, SolidKind, Vec3
from routeviz.model.takeoff import Hole
from routeviz.takeoff.beside import beside
from routeviz.takeoff.masonry import lies_on, needs_sleeve, sleeved_in
from routeviz.takeoff.strips import behind_board
from routeviz.takeoff.within import Within, within
from routeviz.units import length_text

__all__ = ["block_in", "hole_schedule", "main_axis", "on_block"]

_UP_THERE = (SolidKind.DECK, SolidKind.COVERING)
_PLUMB = "cut plumb, along the duct"  # square to the slope the edges would pinch it


def main_axis(direction: Vec3) -> int:
    """Give the axis a direction follows most: 0 along the hood wall, 1 through it, 2 up."""
    return max(range(3), key=lambda k: (abs(direction[k]), k))


def on_block(solid: Solid) -> bool:
    """Whether a cap on this cladding needs a mounting block: lapped siding is not flat."""
    return "siding" in f"{solid.label} {solid.material}".lower()


def block_in(route: Route, scene: Scene) -> float:
    """Give the side of a wall cap's mounting block [in]: the cap's flange."""
    section = route.parts[-1].section
    return scene.cap.wall_flange_in or max(section.width_in, section.height_in) + 4.0


@dataclass(frozen=True, slots=True)
class _Edges:
    """A centre from two named edges."""

    from_left_in: float
    from_left_name: str
    from_other_in: float
    from_other_name: str


def hole_schedule(route: Route, scene: Scene, frame: Frame) -> tuple[Hole, ...]:
    """List the holes in order from the hood.

    Holes whose centres lie on one straight part through touching layers share a group number: they are drilled
    from one centre.
    """
    found: list[Hole] = []
    group, previous = 0, None
    for crossing in route.penetrations:
        if previous is None or not _follows(previous, crossing):
            group += 1
        previous = crossing
        found.append(_hole(crossing, group, route, scene, frame))
    return tuple(found)


def _follows(before: Penetration, after: Penetration) -> bool:
    """Whether `after` is drilled from the centre of `before`: same axis and no more than a stud's depth further."""
    axis = main_axis(before.direction)
    if axis != main_axis(after.direction):
        return False
    aside = math.dist(
        [c for k, c in enumerate(before.centre) if k != axis], [c for k, c in enumerate(after.centre) if k != axis]
    )
    return aside < 1e-6 and math.dist(before.leave, after.centre) <= 12.0 + 1e-6


def _hole(crossing: Penetration, group: int, route: Route, scene: Scene, frame: Frame) -> Hole:
    solid = frame.solid(crossing.solid)
    edges = _edges(crossing, solid.space, scene, frame)
    note, shape, size, axis = "", crossing.shape, crossing.hole_in, main_axis(crossing.direction)
    if crossing.sloped:
        note = f"ellipse: the long side runs up the slope; {_PLUMB}" if shape == "ellipse" else _PLUMB
    elif needs_sleeve(solid.kind):
        note, size = "with a sleeve; make good round it", sleeved_in(crossing)
    elif solid.kind is SolidKind.CLADDING and on_block(solid) and route.termination.kind is not FaceKind.ROOF:
        side = block_in(route, scene)
        note, shape, size = "the cap's mounting block, set into the siding", "rectangular", (side, side)
    elif (behind := lies_on(crossing, route, frame)) is not None:  # plaster or render: the core bit goes through both
        note, size = "as wide as the hole behind it", sleeved_in(behind)
    if not note and any(strip.covers(crossing) for strip in behind_board(route, scene)):
        note = "in the strip that is opened: cut it in the patch"
    return Hole(
        solid=crossing.solid,
        layer=crossing.label,
        shape=shape,
        size_in=size,
        from_left_in=edges.from_left_in,
        from_left_name=edges.from_left_name,
        from_other_in=edges.from_other_in,
        from_other_name=edges.from_other_name,
        from_centre_in=crossing.centre[0] - scene.hood.centre_in if axis != 0 else None,
        centre=crossing.centre,
        note=note,
        duct_in=crossing.size_in,
        outside=_from_outside(crossing, solid, route, scene, frame),
        group=group,
        member=beside(crossing, size, axis, frame, frozenset(p.solid for p in route.penetrations), metric=scene.metric),
        sides=("along the hood wall", "out from it") if axis == 2 else ("wide", "high"),
    )


def _edges(crossing: Penetration, space_id: str, scene: Scene, frame: Frame) -> _Edges:
    """Name two edges and give the centre from them, in the space from which the layer can be reached."""
    x, y, z = crossing.centre
    beyond = within(space_id, scene, frame)
    axis = main_axis(crossing.direction)
    if beyond is not None:
        return _edges_beyond(crossing, beyond)
    if axis == 2:
        above = ", plumb above the hole below" if z > ceiling_at_in(scene, x) + 12.0 else ""
        return _Edges(x, "from the left wall", -y, f"out from the hood wall{above}")
    if axis == 1:
        return _Edges(x, "from the left wall", z, "above the floor")
    return _Edges(-y, "out from the hood wall", z, "above the floor")


def _edges_beyond(crossing: Penetration, beyond: Within) -> _Edges:
    """Measure in a space beyond a kitchen wall, as someone there would."""
    axis = main_axis(crossing.direction)
    first, other = (1 - beyond.deep, beyond.deep) if axis == 2 else (1 - axis, 2)
    at = crossing.centre
    return _Edges(beyond.measured(first, at[first]), beyond.words(first), beyond.measured(other, at[other]),
                  beyond.words(other))  # fmt: skip


def _from_outside(crossing: Penetration, solid: Solid, route: Route, scene: Scene, frame: Frame) -> str:
    """Say how to find the centre on the outer face; "" for a layer inside."""
    if solid.kind in _UP_THERE:
        face = next((f for f in frame.faces if f.id == route.termination.face), None)
        return _on_roof(crossing, face, scene)
    if solid.kind not in (SolidKind.CLADDING, SolidKind.SHEATHING, SolidKind.MASONRY):
        return ""
    words = "drill the centre through from inside, then cut from outside"
    if needs_sleeve(solid.kind) or lies_on(crossing, route, frame) is not None:
        words = "drill the pilot through from inside, then cut from both faces"
    if solid.side is WallSide.HOOD and solid.space == "kitchen":
        left = scene.wall(WallSide.LEFT)
        if left.beyond == "outdoors":
            corner = length_text(crossing.centre[0] + left.thickness_in, metric=scene.metric)
            return f"{words}; check: {corner} from the house corner, which is to your right outside"
    return words


def _on_roof(crossing: Penetration, face: ExitFace | None, scene: Scene) -> str:
    """Give the centre along the slope from what a tape hooks on up there."""
    words = {"ridge": "down the slope from the ridge", "high edge": "down the slope from the high edge",
             "eave": "up the slope from the eave"}  # fmt: skip
    checks = []
    for edge in face.edges if face is not None else ():
        if face is not None and edge.label in words:
            along = abs(crossing.centre[edge.axis] - edge.at_in) * math.hypot(1.0, face.plane[1 + edge.axis])
            checks.append(f"{length_text(along, metric=scene.metric)} {words[edge.label]}")
    return "drill the centre up from inside" + (f"; check: {', '.join(checks)}" if checks else "")
