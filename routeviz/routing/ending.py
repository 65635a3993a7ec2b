"""Where a route as built ends: what the list says, held against the place that its lengths lead to.

A list is tape-measure work. So an end within a hand's breadth of a place, or inside the layers of an outer wall or
roof, may be taken as it is stated; where list and lengths plainly disagree, the lengths are believed.
"""

from __future__ import annotations

import math
from collections.abc import Iterator

from routeviz.geometry import contains
from routeviz.model.route import Termination
from routeviz.model.scene import Scene, SpaceKind, WallSide
from routeviz.model.solids import ExitFace, FaceKind, Frame, Passage, Vec3, Zone
from routeviz.model.spoken import spoken
from routeviz.routing.vectors import along

__all__ = ["ending"]

HAND_IN = 6.0  # a hand's breadth: how far a list may miss a place along the duct and still be believed
_MEASURED_IN = 1.0  # the same where the list says nothing of its end
_BEYOND_IN = 36.0  # an end farther outside than this is out of doors, but belongs to no face
_OUTDOORS = SpaceKind.OUTDOORS.value
_UNKNOWN = ("", "where nobody knows")
_OUT = (_OUTDOORS, _OUTDOORS)
_Place = tuple[str, str]  # the space, and where that is in words: ("attic", "inside the attic")


def ending(scene: Scene, frame: Frame, point: Vec3, direction: Vec3) -> Termination:
    """Give where the scene's list of fittings ends, with `stated` set where the list says otherwise."""
    fittings = scene.as_built.fittings if scene.as_built else ()
    stated = fittings[-1].ends_in.strip() if fittings else ""
    out = stated.lower() == _OUTDOORS
    if out or not stated:
        for face in frame.faces:
            reach = max(HAND_IN, _layers_in(face, scene)) if out else _MEASURED_IN
            if _leaves(face, point, direction, reach):
                return Termination(face.id, face.kind, face.space, point, direction, face.label)
    space, words = _place(scene, frame, point)
    believed = _believed(stated, scene, frame, point, direction)
    if believed is not None:
        space, words = believed
    elif stated and space in ("", _OUTDOORS):  # the frame holds no such place; nobody claims a bad end without cause
        space, words = (stated, f"inside the {stated}, as the list says") if not out else _OUT
    elif stated:
        return Termination("", None, space, point, direction, words, stated)
    return Termination("", None, space, point, direction, words)


def _layers_in(face: ExitFace, scene: Scene) -> float:
    """Give how deep the wall or roof is behind a face, measured along the duct that leaves by it."""
    if face.kind is FaceKind.ROOF:
        roof = scene.roof
        layers = 0.0 if roof is None else sum(layer.thickness_in for layer in roof.layers)
        framing = roof.framing.depth_in if roof is not None and roof.framing is not None else 0.0
        return (layers + framing) * math.hypot(1.0, face.plane[1], face.plane[2])
    space = next((s for s in scene.spaces if s.id == face.owner), None)
    walls = scene.walls if space is None else space.walls
    return next((wall.thickness_in for wall in walls if wall.side is face.side), 0.0)


def _leaves(face: ExitFace, point: Vec3, direction: Vec3, reach_in: float) -> bool:
    """Whether an end lies at or beyond a face, within its edges, and points outwards."""
    plane = face.plane[0] + face.plane[1] * point[0] + face.plane[2] * point[1] if face.axis == 2 else face.at_in
    past = (point[face.axis] - plane) * face.sign
    others = [a for a in range(3) if a != face.axis]
    inside = all(lo <= point[a] <= hi for a, lo, hi in zip(others, face.lo, face.hi, strict=True))
    return inside and -reach_in <= past <= _BEYOND_IN and direction[face.axis] * face.sign > 0.5


def _believed(stated: str, scene: Scene, frame: Frame, point: Vec3, direction: Vec3) -> _Place | None:
    """Give the stated place where the end lies in it, or within a hand's breadth of it along the duct."""
    if not stated:
        return None
    for step in sorted(range(-int(HAND_IN), int(HAND_IN) + 1), key=abs):
        at = along(point, direction, float(step))
        space, words = _place(scene, frame, at)
        if any(_same(stated, name) for name in _names(scene, space, words)):
            return space, words
    return None


def _same(stated: str, name: str) -> bool:
    a, b = (spoken(text).lower() for text in (stated, name))
    return a == b if _OUTDOORS in (a, b) else a in b or b in a


def _names(scene: Scene, space: str, words: str) -> Iterator[str]:
    """Give what people may call a place: its own name, its kind, its words without "inside the"."""
    if not space:
        return
    yield space
    yield from (known.kind.value for known in scene.spaces if known.id == space)
    yield words.removeprefix("in the ").removeprefix("inside the ").removeprefix("inside ")


def _place(scene: Scene, frame: Frame, point: Vec3) -> _Place:
    """Give the space that a point lies in, and where that is in words; ("", ...) where the scene does not tell."""
    for zone in reversed(frame.zones):
        if zone.passage is not Passage.OUTDOORS and contains(zone.shape, point):
            return _in_zone(zone)
    return _outside(scene, point)


def _in_zone(zone: Zone) -> _Place:
    space = zone.bay if zone.bay and zone.space == "kitchen" else zone.space
    if zone.id == "kitchen":
        return "kitchen", "in the kitchen"
    if zone.id.startswith("in-"):  # the cover, a cabinet, a soffit: hidden, and still the kitchen
        return "kitchen", f"in the kitchen, {zone.label}"
    if zone.label.startswith("inside "):
        return space, zone.label
    closed = zone.passage is Passage.CLOSED or zone.id == zone.space
    name = zone.label.removeprefix("the ")
    if zone.space in ("attic", "kitchen") or not closed:
        return space, f"inside {name}" if "bay" in name.split() else f"inside the {name}"
    return space, f"in the {name}"


def _outside(scene: Scene, point: Vec3) -> _Place:
    """Give the place of a point that lies in nothing framed: out of doors, another room, or not told by the scene."""
    x, y, z = point
    if z < 0:
        return _UNKNOWN
    kitchen = scene.kitchen
    past = {
        WallSide.HOOD: y,
        WallSide.FRONT: -kitchen.depth_in - y,
        WallSide.LEFT: -x,
        WallSide.RIGHT: x - kitchen.width_in,
    }
    beyond = [scene.wall(side) for side, far in past.items() if far > 0]
    if any(wall.beyond == _OUTDOORS and past[wall.side] >= wall.thickness_in for wall in beyond):
        return _OUT
    room = next((wall for wall in beyond if wall.beyond != _OUTDOORS), None)
    if room is not None and room.beyond == "room" and z <= kitchen.ceiling_in:
        name = "wall behind the hood" if room.side is WallSide.HOOD else f"{room.side.value} wall"
        return "room", f"in the room beyond the {name}"
    if room is not None or scene.roof is None:
        return _UNKNOWN
    return _OUT
