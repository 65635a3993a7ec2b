"""What stands and hangs in the kitchen: floor, counter, cooktop, hood, chimney cover, cabinets and other obstacles."""

from __future__ import annotations

from routeviz.framing.place import House
from routeviz.geometry import plane_axes
from routeviz.model.overhead import ceiling_over_hood_in
from routeviz.model.scene import MemberKind, Obstacle, ObstacleKind
from routeviz.model.solids import Box, Crossing, Cylinder, Member, Solid, SolidKind, obstacle_box
from routeviz.model.spoken import spoken

__all__ = ["cover_box", "furniture_solids", "hood_bottom"]

USUAL_MOUNT_IN = 30.0  # cooking surface to hood while the scene leaves it open; common practice
_PANEL_IN = 0.75  # cabinet panels; common practice
_BACK_IN = 0.25  # cabinet backs; common practice
_SOFFIT_BOARD_IN = 0.5
_COUNTER_DEPTH_IN, _COUNTER_IN, _COOKTOP_IN, _FLOOR_IN = 25.0, 1.5, 2.0, 0.75
_KINDS = {
    ObstacleKind.CABINET: SolidKind.CABINET, ObstacleKind.SOFFIT: SolidKind.SOFFIT, ObstacleKind.BEAM: SolidKind.BEAM,
    ObstacleKind.PIPE: SolidKind.SERVICE,
}  # fmt: skip


def hood_bottom(house: House) -> float:
    """Give the hood's underside above the floor [in], at the usual height while none is chosen."""
    given = house.scene.hood_bottom_in
    return house.scene.cooktop.height_in + USUAL_MOUNT_IN if given is None else given


def cover_box(house: House) -> Box | None:
    """Give the chimney cover from the hood's body up to the ceiling; None without one.

    One that is too short is made longer with an extension, which FIT-COVER asks for and the take-off counts.
    """
    hood = house.scene.hood
    if hood.cover is None:
        return None
    bottom = hood_bottom(house) + hood.body_in
    top = ceiling_over_hood_in(house.scene)
    if top - bottom < 0.01:
        return None
    half = hood.cover.width_in / 2
    return Box((hood.centre_in - half, -hood.cover.depth_in, bottom), (hood.centre_in + half, 0.0, top))


def _hood(house: House) -> list[Solid]:
    hood = house.scene.hood
    bottom, x = hood_bottom(house), hood.centre_in
    rim = min(hood.canopy_in, hood.body_in)
    width = hood.cover.width_in if hood.cover else min(hood.width_in, 14.0)
    depth = hood.cover.depth_in if hood.cover else min(hood.depth_in, 12.0)
    boxes = [("hood-canopy", "hood", SolidKind.HOOD, Box((x - hood.width_in / 2, -hood.depth_in, bottom),
                                                         (x + hood.width_in / 2, 0.0, bottom + rim)))]  # fmt: skip
    if hood.body_in - rim > 0.01:
        body = Box((x - width / 2, -depth, bottom + rim), (x + width / 2, 0.0, bottom + hood.body_in))
        boxes.append(("hood-body", "hood body", SolidKind.HOOD, body))
    cover = cover_box(house)
    if cover is not None:
        boxes.append(("cover", "chimney cover", SolidKind.COVER, cover))
    return [Solid(key, kind, label, box, Crossing.GHOST, "hood", None, "steel") for key, label, kind, box in boxes]


def _worktop(house: House) -> list[Solid]:
    top, width = house.scene.cooktop, house.scene.kitchen.width_in
    left, right = top.centre_in - top.width_in / 2, top.centre_in + top.width_in / 2
    z, back = top.height_in, -top.back_in
    solids = [
        Solid("cooktop", SolidKind.COOKTOP, f"{top.kind.value} cooktop",
              Box((left, back - top.depth_in, z - _COOKTOP_IN), (right, back, z)), Crossing.GHOST, "cooktop", None,
              "steel")
    ]  # fmt: skip
    level = z if top.counter_in is None else top.counter_in
    for key, a, b in (("counter-left", 0.0, left), ("counter-right", right, width)):
        if b - a > 0.5:
            slab = Box((a, -_COUNTER_DEPTH_IN, level - _COUNTER_IN), (b, 0.0, level))
            solids.append(Solid(key, SolidKind.COUNTER, "counter", slab, Crossing.GHOST, "cooktop", None, "counter",
                                combustible=True))  # fmt: skip
    return solids


def _panels(thing: Obstacle, box: Box) -> list[Solid]:
    """Give a hollow thing that hides duct as thin panels; each may be cut."""
    soffit = thing.kind is ObstacleKind.SOFFIT
    t = min(_SOFFIT_BOARD_IN if soffit else _PANEL_IN, min(b - a for a, b in zip(box.lo, box.hi, strict=True)) / 3)
    (x0, y0, z0), (x1, y1, z1) = box.lo, box.hi
    sides = {
        "bottom": Box((x0, y0, z0), (x1, y1, z0 + t)), "top": Box((x0, y0, z1 - t), (x1, y1, z1)),
        "left": Box((x0, y0, z0 + t), (x0 + t, y1, z1 - t)), "right": Box((x1 - t, y0, z0 + t), (x1, y1, z1 - t)),
        "front": Box((x0 + t, y0, z0 + t), (x1 - t, y0 + t, z1 - t)),
    }  # fmt: skip
    if thing.kind is ObstacleKind.CABINET:  # from the wall to the room, so that drawings end with the front
        sides = {"back": Box((x0 + t, y1 - min(_BACK_IN, t), z0 + t), (x1 - t, y1, z1 - t)), **sides}
    words = _words(thing)
    return [
        Solid(f"{thing.id}-{key}", _KINDS.get(thing.kind, SolidKind.OBSTACLE), f"{key} of the {words}", part,
              Crossing.RULE, f"obstacles.{thing.id}", None, "gypsum board" if soffit else "cabinet panel",
              thing.clearance_in, combustible=thing.combustible, protected=thing.protected)
        for key, part in sides.items()
    ]  # fmt: skip


def _words(thing: Obstacle) -> str:
    name = spoken(thing.id)
    return name if thing.kind.value.split()[-1] in name else f"{thing.kind.value} {name}"


def _crossing(thing: Obstacle) -> Crossing:
    if thing.kind in (ObstacleKind.CHASE, ObstacleKind.HOLE):
        return Crossing.GHOST
    if thing.kind is ObstacleKind.DUCT:
        return Crossing.GHOST if thing.cut_allowed else Crossing.NEVER
    return Crossing.RULE if thing.cut_allowed else Crossing.NEVER


def _beam_member(thing: Obstacle) -> Member | None:
    """Give what the cutting rules need of a beam that was measured as a thing in the way; only its maker may judge it."""
    if thing.kind is not ObstacleKind.BEAM:
        return None
    axis, across = (0, thing.depth_in) if thing.width_in >= thing.depth_in else (1, thing.width_in)
    return Member(MemberKind.ENGINEERED, "", across, thing.height_in, axis)


def _obstacle(thing: Obstacle) -> list[Solid]:
    box = obstacle_box(thing)
    hollow = thing.hides_duct and thing.kind not in (ObstacleKind.CHASE, ObstacleKind.HOLE, ObstacleKind.DUCT)
    if hollow:
        return _panels(thing, box)
    shape: Box | Cylinder = box
    diameter = thing.diameter_in
    if diameter is not None and thing.kind in (ObstacleKind.HOLE, ObstacleKind.DUCT, ObstacleKind.PIPE):
        sizes = [b - a for a, b in zip(box.lo, box.hi, strict=True)]
        axis = max(range(3), key=lambda a: abs(sizes[a] - diameter))  # it runs where it is not as wide as it is thick
        first, second = plane_axes(axis)
        centre = ((box.lo[first] + box.hi[first]) / 2, (box.lo[second] + box.hi[second]) / 2)
        shape = Cylinder(axis, box.lo[axis], box.hi[axis], centre, diameter / 2)
    return [
        Solid(thing.id, _KINDS.get(thing.kind, SolidKind.OBSTACLE), _words(thing), shape, _crossing(thing),
              f"obstacles.{thing.id}", _beam_member(thing), thing.kind.value, thing.clearance_in, combustible=thing.combustible,
              protected=thing.protected)
    ]  # fmt: skip


def furniture_solids(house: House) -> list[Solid]:
    """Give everything that stands, hangs or lies in the kitchen's measures."""
    kitchen = house.scene.kitchen
    floor = Box((0.0, -kitchen.depth_in, -_FLOOR_IN), (kitchen.width_in, 0.0, 0.0))
    solids = [Solid("floor", SolidKind.FLOOR, "floor", floor, Crossing.GHOST, "kitchen", None, "floor")]
    solids += _worktop(house) + _hood(house)
    for thing in house.scene.obstacles:
        solids += _obstacle(thing)
    return solids
