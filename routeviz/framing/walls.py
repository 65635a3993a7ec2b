"""Walls as solids: plates, studs, framed openings, cores of masonry, layers, services, windows and doors."""

from __future__ import annotations

from dataclasses import dataclass

from routeviz.framing.layout import Slot, slots
from routeviz.framing.materials import is_combustible, is_gap, layer_kind, member_burns, member_crossing
from routeviz.framing.openings import frame_openings, name_of
from routeviz.framing.place import PLATE_IN, Place
from routeviz.framing.sheets import Rect, pieces
from routeviz.model.scene import MemberKind, MemberLayout, Opening, OpeningKind, Wall, WallFrame
from routeviz.model.solids import Crossing, Member, Solid, SolidKind

__all__ = ["Heights", "stud_slots", "wall_solids"]

FRAMED = (WallFrame.WOOD, WallFrame.STEEL)
_GLAZING_IN, _DOOR_IN = 1.0, 1.75


@dataclass(frozen=True, slots=True)
class Heights:
    """From where to where a wall's parts reach [in above the floor]."""

    floor: float
    plate_top: float
    board_top: float  # of the room-side layers
    cover_top: float  # of the outer layers


def stud_slots(place: Place) -> tuple[Slot, ...]:
    """Give the wall's layout studs, the end stud and the corner post included.

    The layout counts from the first stud; the wall's frame always ends with a stud, which takes the next number.
    A corner post before the first stud has the number 0.
    """
    layout = place.wall.studs
    if layout is None:
        return ()
    lo, hi = place.core
    found = list(slots(layout, lo, hi))
    if layout.kind is MemberKind.FURRING:
        return tuple(found)
    width, last = layout.width_in, max((s.hi for s in found), default=lo)
    if last <= hi - width + 1e-9:
        number = max((s.number for s in found), default=0)
        absent = [n for n in layout.missing if n > number]
        found.append(Slot(max([number, *absent]) + 1, hi - width, hi))
    if found[0].lo >= lo + width - 1e-9:
        found.insert(0, Slot(0, lo, lo + width))
    return tuple(found)


def _strip_n(wall: Wall) -> tuple[tuple[float, float], tuple[float, float]]:
    """Give the spans across the wall of furring strips and of what is left of the core."""
    at, strips = 0.0, None
    depth = wall.studs.depth_in if wall.studs else 0.0
    for layer in reversed(wall.inside):
        if is_gap(layer.material) and strips is None:
            strips = (at, at + min(layer.thickness_in, depth or layer.thickness_in))
        at += layer.thickness_in
    if strips is not None or wall.studs is None:
        return strips or (at, at), (at, at + wall.core_in)
    depth = min(depth, wall.core_in / 2)
    return (at, at + depth), (at + depth, at + wall.core_in)


def _member(place: Place, layout: MemberLayout, axis: int, slot: Slot | None = None) -> Member:
    wall = place.wall
    outdoors = wall.beyond == "outdoors"
    number, plies = (slot.number, slot.plies) if slot else (0, 1)
    return Member(layout.kind, layout.size, layout.width_in * plies, layout.depth_in, axis, number, plies, wall.bearing,
                  outdoors)  # fmt: skip


def _plates(place: Place, layout: MemberLayout, heights: Heights, doors: list[Rect]) -> list[Solid]:
    wall, n = place.wall, place.core_n
    if wall.plates < 1:
        return []
    member = _member(place, layout, place.run_axis)
    bottom = Rect(*place.core, heights.floor, heights.floor + PLATE_IN)
    found = [(f"bottom{'' if i == 1 else f'-{i}'}", "bottom plate", r) for i, r in enumerate(pieces(bottom, doors), 1)]
    for k in range(1, wall.plates):
        top = heights.plate_top - PLATE_IN * (wall.plates - 1 - k)
        found.append((f"top-{k}", f"top plate {k}" if wall.plates > 2 else "top plate",
                      Rect(*place.core, top - PLATE_IN, top)))  # fmt: skip
    return [
        Solid(f"{place.prefix}-plate-{key}", SolidKind.PLATE, f"{place.member_words}{words}",
              place.box((r.s0, r.s1), n, (r.z0, r.z1)), Crossing.RULE, f"walls.{place.prefix}.plates", member,
              "steel" if layout.kind is MemberKind.STEEL else "timber", side=place.kitchen_side, space=place.space,
              combustible=member_burns(layout.kind), wall=place.words, rated=place.wall.fire_rated)
        for key, words, r in found
    ]  # fmt: skip


def _stud_solid(
    place: Place, layout: MemberLayout, slot: Slot, z: tuple[float, float], n: tuple[float, float]
) -> Solid:
    key = f"stud-{slot.number}" if slot.number else "stud-corner"
    words = f"stud {slot.number}" if slot.number else "corner stud"
    kind = SolidKind.STUD
    if layout.kind is MemberKind.FURRING:
        key, words, kind = f"furring-{slot.number}", f"furring strip {slot.number}", SolidKind.FURRING
    return Solid(
        f"{place.prefix}-{key}", kind, f"{place.member_words}{words}", place.box((slot.lo, slot.hi), n, z),
        member_crossing(layout.kind), f"walls.{place.prefix}.studs", _member(place, layout, 2, slot),
        "steel" if layout.kind is MemberKind.STEEL else "timber", side=place.kitchen_side, space=place.space,
        combustible=member_burns(layout.kind), wall=place.words, rated=place.wall.fire_rated,
    )  # fmt: skip


def _framed_core(place: Place, heights: Heights) -> list[Solid]:
    wall, layout = place.wall, place.wall.studs
    if layout is None:
        return []
    top_plates = max(0, wall.plates - 1)
    z = (heights.floor + (PLATE_IN if wall.plates else 0.0), heights.plate_top - PLATE_IN * top_plates)
    doors = [hole for hole in _holes(wall, heights) if hole.z0 <= z[0]]
    framed, taken = frame_openings(place, layout, heights.floor, z)
    solids = _plates(place, layout, heights, doors) + framed
    for slot in stud_slots(place):
        if not any(t[0] < slot.hi - 1e-9 and slot.lo < t[1] - 1e-9 for t in taken):
            solids.append(_stud_solid(place, layout, slot, z, place.core_n))
    return solids


def _solid_core(place: Place, heights: Heights) -> list[Solid]:
    """Give masonry, concrete or log as pieces round the openings, and furring strips on its room side."""
    wall = place.wall
    strips_n, core_n = _strip_n(wall)
    holes = _holes(wall, heights)
    sheet = Rect(*place.core, heights.floor, heights.plate_top)
    material = {WallFrame.LOG: "log", WallFrame.CONCRETE: "concrete"}.get(wall.frame, "masonry")
    solids = [
        Solid(f"{place.prefix}-core-{i}", SolidKind.MASONRY, f"{place.member_words}{material}",
              place.box((r.s0, r.s1), core_n, (r.z0, r.z1)), Crossing.PASS, f"walls.{place.prefix}", None, material,
              side=place.kitchen_side, space=place.space, combustible=wall.frame is WallFrame.LOG, wall=place.words,
              rated=wall.fire_rated)
        for i, r in enumerate(pieces(sheet, holes), 1)
    ]  # fmt: skip
    if wall.studs is None or strips_n[1] <= strips_n[0]:
        return solids
    for slot in slots(wall.studs, 0.0, place.length):
        strip = Rect(slot.lo, slot.hi, heights.floor, heights.board_top)
        for i, r in enumerate(pieces(strip, holes), 1):
            solid = _stud_solid(place, wall.studs, Slot(slot.number, r.s0, r.s1, slot.plies), (r.z0, r.z1), strips_n)
            solids.append(solid if i == 1 else _renamed(solid, f"{solid.id}-{i}"))
    return solids


def _renamed(solid: Solid, new_id: str) -> Solid:
    return Solid(new_id, *(getattr(solid, name) for name in Solid.__slots__[1:]))


def _holes(wall: Wall, heights: Heights) -> list[Rect]:
    return [
        Rect(o.left_in, o.left_in + o.width_in, heights.floor + o.sill_in, heights.floor + o.sill_in + o.height_in)
        for o in wall.openings
    ]


def _layers(place: Place, heights: Heights) -> list[Solid]:
    wall, holes = place.wall, _holes(place.wall, heights)
    solids: list[Solid] = []
    at = inside_top = place.core_n[0]
    for k, layer in enumerate(wall.inside, 1):
        span = (at - layer.thickness_in, at)
        at = span[0]
        sheet = Rect(0.0, place.length, heights.floor, heights.board_top)
        solids += _sheet(place, f"inside-{k}", layer.material, sheet, holes, span, outer=False)
    at = inside_top + wall.core_in
    for k, layer in enumerate(wall.outside, 1):
        span = (at, at + layer.thickness_in)
        at = span[1]
        outer = wall.beyond == "outdoors"
        sheet = Rect(*place.cover, heights.floor, heights.cover_top)
        solids += _sheet(place, f"outside-{k}", layer.material, sheet, holes, span, outer=outer)
    return solids


def _sheet(
    place: Place, key: str, material: str, sheet: Rect, holes: list[Rect], n: tuple[float, float], *, outer: bool
) -> list[Solid]:
    if is_gap(material) or sheet.z1 - sheet.z0 < 1e-9:
        return []
    return [
        Solid(f"{place.prefix}-{key}-{i}", layer_kind(material, outer=outer), f"{place.member_words}{material}",
              place.box((r.s0, r.s1), n, (r.z0, r.z1)), Crossing.PASS,
              f"walls.{place.prefix}.{key.split('-')[0]}", None, material, side=place.kitchen_side,
              space=place.space, combustible=is_combustible(material), wall=place.words,
              rated=place.wall.fire_rated)
        for i, r in enumerate(pieces(sheet, holes), 1)
    ]  # fmt: skip


def _leaf(place: Place, opening: Opening, floor: float) -> Solid:
    glazing = opening.kind is OpeningKind.WINDOW
    middle = sum(place.core_n) / 2
    thick = min(_GLAZING_IN if glazing else _DOOR_IN, place.wall.thickness_in)
    z = floor + opening.sill_in
    return Solid(
        f"{place.prefix}-{opening.id}", SolidKind.GLAZING if glazing else SolidKind.DOOR, name_of(opening),
        place.box((opening.left_in, opening.left_in + opening.width_in), (middle - thick / 2, middle + thick / 2),
                  (z, z + opening.height_in)),
        Crossing.NEVER, f"walls.{place.prefix}.openings", material="glass" if glazing else "door",
        side=place.kitchen_side, space=place.space, combustible=not glazing, wall=place.words,
        rated=place.wall.fire_rated,
    )  # fmt: skip


def _services(place: Place, floor: float) -> list[Solid]:
    return [
        Solid(f"{place.prefix}-{s.id}", SolidKind.SERVICE, f"{s.kind.value} {s.id.replace('-', ' ')}".strip(),
              place.box((s.left_in, s.left_in + s.width_in), place.core_n,
                        (floor + s.bottom_in, floor + s.bottom_in + s.height_in)),
              Crossing.RULE if s.movable else Crossing.NEVER, f"walls.{place.prefix}.services", None, s.kind.value,
              s.clearance_in, place.kitchen_side, place.space, wall=place.words, rated=place.wall.fire_rated)
        for s in place.wall.services
    ]  # fmt: skip


def wall_solids(place: Place, heights: Heights) -> list[Solid]:
    """Give every solid of one wall, from its bottom plate to the top of its plates and layers."""
    core = _framed_core(place, heights) if place.wall.frame in FRAMED else _solid_core(place, heights)
    leaves = [_leaf(place, opening, heights.floor) for opening in place.wall.openings]
    return core + _layers(place, heights) + leaves + _services(place, heights.floor)
