"""Where a duct may run: the zones of the house, later ones overruling earlier ones."""

from __future__ import annotations

import itertools

from routeviz.framing.ceiling import joist_axis, joist_slots
from routeviz.framing.furniture import cover_box
from routeviz.framing.layout import Slot
from routeviz.framing.levels import storey_levels
from routeviz.framing.place import WALL_WORDS, House, Place, sides_of
from routeviz.framing.roof import rafter_slots
from routeviz.framing.roofshape import RoofShape, is_cathedral
from routeviz.framing.spaces import Beyond, space_name
from routeviz.framing.underroof import under_roof
from routeviz.framing.walls import FRAMED, Heights
from routeviz.model.overhead import ceiling_at_in, ceiling_over_hood_in
from routeviz.model.scene import AboveKind, MemberKind, ObstacleKind, WallSide
from routeviz.model.solids import Box, Passage, Prism, Solid, SolidKind, Zone, obstacle_box
from routeviz.model.spoken import spoken

__all__ = ["furniture_zones", "zones"]


def _section(shape: RoofShape, lo: float, hi: float, bottom: float | None) -> tuple[tuple[float, float], ...]:
    """Give the roof space's outline in (u, z) up to the outer surface; `bottom` None means the rafters' underside."""
    tops = reversed(shape.skyline(lo, hi))
    if bottom is not None:
        return ((lo, bottom), (hi, bottom), *tops)
    return (*((u, shape.underside(u)) for u in shape.profile(lo, hi)), *tops)


def _roof_zones(house: House, shape: RoofShape | None, base: float) -> list[Zone]:
    if shape is None:
        return []
    axis, across = shape.axis, 1 - shape.axis
    along = house.outer[2 * axis], house.outer[2 * axis + 1]
    lo, hi = house.outer[2 * across], house.outer[2 * across + 1]
    if not is_cathedral(house):
        section = _section(shape, lo, hi, base)
        if min(z for _, z in section[2:]) <= base:  # the roof dips under the base line over the outer layers
            section = _section(shape, lo, hi, min(shape.surface(lo), shape.surface(hi)) - 0.01)
        name = "attic" if house.scene.above.kind is not AboveKind.ROOF else "roof space"
        return [Zone("attic", name, Passage.HIDDEN, Prism(axis, *along, section), "attic", name)]
    bottom = min(base, house.ceiling, shape.surface(lo) - 0.01, shape.surface(hi) - 0.01)
    found = [Zone("roof-space", "roof space", Passage.HIDDEN,
                  Prism(axis, *along, _section(shape, lo, hi, bottom)), "attic")]  # fmt: skip
    ordered = sorted(rafter_slots(house, shape), key=lambda s: s.lo)
    for a, b, words in _bays(ordered, along, tuple(WALL_WORDS[s] for s in sides_of(axis))):
        outline = _section(shape, lo, hi, None)
        found.append(Zone(f"bay-rafter-{words.replace(' ', '-')}", f"rafter bay {words}", Passage.HIDDEN,
                          Prism(axis, a, b, outline), "attic", f"rafter bay {words}"))  # fmt: skip
    return found


def _bays(ordered: list[Slot], ends: tuple[float, float], end_words: tuple[str, ...]) -> list[tuple[float, float, str]]:
    """Give the gaps between members in order of coordinate, named by their numbers, the lower one first."""
    found = []
    rising = len(ordered) < 2 or ordered[0].number < ordered[-1].number
    marks = [(ends[0], ends[0], end_words[0]), *((s.lo, s.hi, str(s.number)) for s in ordered)]
    marks.append((ends[1], ends[1], end_words[1]))
    for a, b in itertools.pairwise(marks):
        if b[0] - a[1] < 1.0:
            continue
        found.append((a[1], b[0], f"{a[2]}-{b[2]}" if rising else f"{b[2]}-{a[2]}"))
    return found


def _ceiling_zones(house: House, shape: RoofShape | None) -> list[Zone]:
    x0, x1, y0, y1 = house.outer
    if is_cathedral(house) or house.joist_top - house.ceiling < 0.01:
        return []
    slab, top = house.scene.ceiling.slab_in, house.joist_top - house.scene.ceiling.slab_in
    found = []
    if top - house.ceiling > 0.01:
        whole = Box((x0, y0, house.ceiling), (x1, y1, top))
        found.append(Zone("ceiling", "ceiling", Passage.HIDDEN, _indoors(shape, whole)))
    if slab > 0:
        concrete = Box((x0, y0, top), (x1, y1, house.joist_top))
        found.append(Zone("slab", "concrete ceiling", Passage.CLOSED, concrete))
    layout = house.scene.ceiling.joists
    if not found or found[0].passage is Passage.CLOSED:
        return found  # concrete right over the room: nothing hangs under it that could make bays
    if layout is not None:
        axis = joist_axis(layout)
        ordered = sorted(joist_slots(house, layout), key=lambda s: s.lo)
        word = "truss bay" if layout.kind is MemberKind.TRUSS else "joist bay"
    elif shape is not None and shape.roof.framing is not None:
        axis, ordered = 1 - shape.axis, sorted(rafter_slots(house, shape), key=lambda s: s.lo)
        word = "truss bay"
    else:
        return found
    run = house.outer[2 * axis], house.outer[2 * axis + 1]  # a bay goes on over the walls to their outer faces
    across = 1 - axis
    ends = house.outer[2 * across], house.outer[2 * across + 1]
    words = tuple(WALL_WORDS[s] for s in sides_of(across))
    for a, b, name in _bays(ordered, ends, words):
        lo, hi = [0.0, 0.0, house.ceiling], [0.0, 0.0, top]
        lo[axis], hi[axis], lo[across], hi[across] = *run, a, b
        bay = _indoors(shape, Box((lo[0], lo[1], lo[2]), (hi[0], hi[1], hi[2])))
        found.append(Zone(f"bay-{word.split()[0]}-{name.replace(' ', '-')}", f"{word} {name}", Passage.HIDDEN, bay,
                          bay=f"{word} {name}"))  # fmt: skip
    return found


def _indoors(shape: RoofShape | None, zone: Box) -> Box | Prism:
    """Give what of a zone over the ceiling lies under the roof's outer surface."""
    return (under_roof(shape, zone) if shape is not None else zone) or zone


def _wall_zone(place: Place, z: tuple[float, float]) -> Zone:
    span = min(place.core[0], place.cover[0]), max(place.core[1], place.cover[1])
    words = place.words.removeprefix("the ")
    return Zone(f"wall-{place.prefix}", f"inside {place.words}", Passage.HIDDEN,
                place.box(span, (0.0, place.wall.thickness_in), z), place.space, words)  # fmt: skip


def _stud_bays(place: Place, solids: list[Solid]) -> list[Zone]:
    """Give the bays between neighbouring full-height studs of one wall."""
    if place.wall.frame not in FRAMED or place.wall.studs is None:
        return []
    axis = place.run_axis
    studs = [
        (s.shape.lo, s.shape.hi, s.member.number)
        for s in solids
        if s.kind is SolidKind.STUD
        and (s.origin, s.space) == (f"walls.{place.prefix}.studs", place.space)
        and isinstance(s.shape, Box)
        and s.member
    ]
    studs.sort(key=lambda s: s[0][axis])
    word = f"{place.member_words}stud bay"
    openings = [place.span((o.left_in, o.left_in + o.width_in)) for o in place.wall.openings]
    found = []
    for (lo_a, hi_a, a), (lo_b, hi_b, b) in itertools.pairwise(studs):
        middle = (hi_a[axis] + lo_b[axis]) / 2
        if lo_b[axis] - hi_a[axis] < 1.0 or any(o[0] < middle < o[1] for o in openings):
            continue
        lo, hi = list(lo_a), list(hi_b)
        lo[axis], hi[axis] = hi_a[axis], lo_b[axis]
        lo[1 - axis], hi[1 - axis] = sorted((place.depth(0.0), place.outer))  # the sheets before the bay belong to it
        name = f"{min(a, b) or 'corner'}-{max(a, b)}"
        found.append(Zone(f"bay-{place.prefix}-stud-{name}", f"{word} {name}", Passage.HIDDEN,
                          Box((lo[0], lo[1], lo[2]), (hi[0], hi[1], hi[2])), place.space, f"{word} {name}"))  # fmt: skip
    return found


def _storey_zones(house: House, top: float) -> list[Zone]:
    levels = storey_levels(house)
    x0, x1, y0, y1 = house.outer
    if levels is None:
        if house.scene.above.kind is AboveKind.SLAB:
            return [Zone("above", "the flat above", Passage.CLOSED, Box((x0, y0, house.joist_top), (x1, y1, top + 1.0)),
                         "storey")]  # fmt: skip
        return []
    ceiling = levels[1]
    room = Box((x0, y0, house.joist_top), (x1, y1, ceiling))
    found = [Zone("storey", "room above", Passage.CLOSED, room, "storey")]
    for place in house.places:
        if house.outdoors(place.wall.side):
            zone = _wall_zone(place, (house.joist_top, ceiling))
            found.append(Zone(f"{zone.id}-upper", f"inside {place.words} upstairs", Passage.HIDDEN, zone.shape, "storey",
                              f"{zone.bay} upstairs"))  # fmt: skip
    return found


def _kitchen_zone(house: House, shape: RoofShape | None) -> Zone:
    kitchen = house.scene.kitchen
    if shape is None or not is_cathedral(house):
        room: Box | Prism = Box((0.0, -kitchen.depth_in, 0.0), (kitchen.width_in, 0.0, house.ceiling))
        return Zone("kitchen", "kitchen", Passage.BOXING, room)
    lo, hi = (-kitchen.depth_in, 0.0) if shape.axis == 0 else (0.0, kitchen.width_in)
    along = (0.0, kitchen.width_in) if shape.axis == 0 else (-kitchen.depth_in, 0.0)
    tops = [(u, _ceiling_in(house, shape, u)) for u in shape.profile(lo, hi)]
    return Zone(
        "kitchen", "kitchen", Passage.BOXING, Prism(shape.axis, *along, ((lo, 0.0), (hi, 0.0), *reversed(tops)))
    )


def _ceiling_in(house: House, shape: RoofShape, u: float) -> float:
    """Give the ceiling's height at a place across the ridge."""
    return ceiling_at_in(house.scene, 0.0, -u) if shape.axis == 0 else ceiling_at_in(house.scene, u)


def _up_to_slope(house: House, shape: RoofShape, cover: Box) -> Box:
    """Let the inside of a cover that closes to a sloped ceiling reach it wherever it is higher than in the middle."""
    across = 1 - shape.axis
    ends = shape.profile(cover.lo[across], cover.hi[across])
    top = max(_ceiling_in(house, shape, u) for u in ends)
    return Box(cover.lo, (cover.hi[0], cover.hi[1], max(top, cover.hi[2])))


def furniture_zones(house: House, shape: RoofShape | None) -> list[Zone]:
    """Give the zones inside cabinets, soffits, chases and the chimney cover."""
    found = []
    for thing in house.scene.obstacles:
        hides = thing.hides_duct or thing.kind is ObstacleKind.CHASE
        if hides and thing.kind not in (ObstacleKind.HOLE, ObstacleKind.DUCT):
            words = spoken(thing.id)
            found.append(
                Zone(f"in-the-{thing.id}", f"inside the {words}", Passage.HIDDEN, obstacle_box(thing), bay=words)
            )
    cover = cover_box(house)
    if cover is not None:
        if shape is not None and is_cathedral(house) and cover.hi[2] > ceiling_over_hood_in(house.scene) - 0.01:
            cover = _up_to_slope(house, shape, cover)
        found.append(Zone("in-cover", "inside the chimney cover", Passage.HIDDEN, cover, bay="chimney cover"))
    return found


def _space_zones(found: list[Beyond]) -> list[Zone]:
    result = []
    for space in found:
        allowed = space.space.duct_allowed
        name = space_name(space.space)
        top = space.space.floor_in + space.space.height_in
        result += [_wall_zone(place, (space.space.floor_in, top)) for place in space.places]
        result.append(Zone(space.space.id, name, Passage.HIDDEN if allowed else Passage.CLOSED, space.inside,
                           space.space.id, name if allowed else ""))  # fmt: skip
    return result


def zones(
    house: House, shape: RoofShape | None, heights: dict[WallSide, Heights], solids: list[Solid], others: list[Beyond],
    bounds: Box, base: float,
) -> tuple[Zone, ...]:  # fmt: skip
    """Give all zones: the open air first, the kitchen and what hides in it last.

    `base` is where the space under the roof begins [in].
    """
    found = [Zone("outdoors", "outdoors", Passage.OUTDOORS, bounds, "outdoors")]
    found += _space_zones(others)
    levels = storey_levels(house)
    found += _roof_zones(house, shape, base if levels is None else levels[1]) + _storey_zones(house, bounds.hi[2])
    for place in house.places:
        h = heights[place.wall.side]
        found.append(_wall_zone(place, (h.floor, max(h.plate_top, house.ceiling))))
    for place in house.places:
        found += _stud_bays(place, solids)
    found += _ceiling_zones(house, shape)
    found.append(_kitchen_zone(house, shape))
    return tuple(found + furniture_zones(house, shape))
