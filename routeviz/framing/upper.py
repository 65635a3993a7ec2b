"""What stands above the kitchen walls: gable and high-wall infill, and the storey above."""

from __future__ import annotations

import itertools
from dataclasses import replace

from routeviz.framing.levels import UPPER_CEILING_IN, storey_levels
from routeviz.framing.materials import is_combustible, is_gap, layer_kind, member_burns
from routeviz.framing.place import House, Place, sides_of
from routeviz.framing.roofshape import RoofShape, is_cathedral
from routeviz.framing.walls import FRAMED, Heights, stud_slots, wall_solids
from routeviz.model.scene import WallSide
from routeviz.model.solids import Box, Crossing, Member, Prism, Solid, SolidKind

__all__ = ["infill_places", "infill_solids", "storey_solids"]


def _upper_place(place: Place) -> Place:
    bare = replace(place.wall, openings=(), services=())
    words = "upper wall " if not place.member_words else f"upper {place.member_words}"
    return replace(place, wall=bare, prefix=f"{place.prefix}-upper", words=f"{place.words} upstairs",
                   member_words=words, space="storey", kitchen_side=None)  # fmt: skip


def storey_solids(house: House, tops: dict[WallSide, float]) -> list[Solid]:
    """Give the storey above: subfloor, its outer walls in the layout of the walls below, and its ceiling board.

    Nobody measured the studs upstairs; they are taken to stand over the ones below.
    """
    levels = storey_levels(house)
    if levels is None:
        return []
    floor, ceiling = levels
    x0, x1, y0, y1 = house.core
    solids, at = [], house.joist_top
    for k, layer in enumerate(house.scene.above.floor_layers, 1):
        sheet = Box((x0, y0, at), (x1, y1, at + layer.thickness_in))
        at += layer.thickness_in
        if not is_gap(layer.material):
            solids.append(Solid(f"floor-above-{k}", SolidKind.SUBFLOOR, f"{layer.material} above", sheet,
                                Crossing.PASS, "above.floor_layers", None, layer.material, space="storey",
                                combustible=is_combustible(layer.material)))  # fmt: skip
    for place in house.places:
        if house.outdoors(place.wall.side):
            top = ceiling + UPPER_CEILING_IN
            heights = Heights(floor, top, ceiling, tops.get(place.wall.side, top))
            solids += wall_solids(_upper_place(place), heights)
    board = Box((0.0, -house.scene.kitchen.depth_in, ceiling),
                (house.scene.kitchen.width_in, 0.0, ceiling + UPPER_CEILING_IN))  # fmt: skip
    solids.append(Solid("ceiling-above", SolidKind.BOARD, "ceiling board upstairs", board, Crossing.PASS, "above", None,
                        "gypsum board", space="storey"))  # fmt: skip
    return solids


def infill_places(house: House, shape: RoofShape) -> list[Place]:
    """Give the outer walls that go on above the eave line: gable ends and the high wall of a shed roof."""
    return [place for place in _rising(house, shape) if house.outdoors(place.wall.side)]


def _rising(house: House, shape: RoofShape) -> list[Place]:
    ends = sides_of(shape.axis)
    high = [s for s in sides_of(1 - shape.axis) if s not in shape.eaves]
    return [house.place(s) for s in (*ends, *high)]


def _outline(
    shape: RoofShape, place: Place, span: tuple[float, float], n: tuple[float, float], base: float
) -> list[tuple[float, float]]:
    """Give the part of a wall above `base` and under the roof as an outline along the wall; empty when there is none."""
    lo, hi = place.span(span)
    if place.normal_axis == shape.axis:  # a gable end: the section of the roof
        tops = [(u, shape.underside(u)) for u in shape.profile(lo, hi)]
    else:
        top = min(shape.underside(place.depth(d)) for d in n)
        tops = [(lo, top), (hi, top)]
    if max(z for _, z in tops) <= base + 0.01:
        return []
    return _above([(u, z - base) for u, z in tops], base)


def _above(tops: list[tuple[float, float]], base: float) -> list[tuple[float, float]]:
    """Give the polygon between the base line and the tops, where the tops lie above it."""
    line: list[tuple[float, float]] = []
    for (u0, h0), (u1, h1) in itertools.pairwise(tops):
        if (h0 > 0) != (h1 > 0) and h0 != h1:
            cross = u0 + (u1 - u0) * h0 / (h0 - h1)
            line += [(u0, h0), (cross, 0.0)] if h0 > 0 else [(cross, 0.0)]
        elif h0 > 0 or h1 > 0:
            line.append((u0, h0))
    if tops[-1][1] > 0:
        line.append(tops[-1])
    first, last = line[0], line[-1]
    foot = [(first[0], base)] if first[1] > 0 else []
    foot_end = [(last[0], base)] if last[1] > 0 else []
    return [*foot, *((u, h + base) for u, h in line), *foot_end]


def infill_solids(house: House, shape: RoofShape, bases: dict[WallSide, float]) -> list[Solid]:
    """Give the walls from their tops (by side, [in]) to the roof: outer layers, studs over the studs below, masonry.

    Under a cathedral roof the room-side layers go up to the ceiling too, and so do walls to other rooms.
    """
    solids: list[Solid] = []
    for place in _rising(house, shape) if is_cathedral(house) else infill_places(house, shape):
        base = bases[place.wall.side]
        solids += _infill_sheets(house, shape, place, base) + _infill_core(house, shape, place, base)
    return solids


def _infill_sheets(house: House, shape: RoofShape, place: Place, base: float) -> list[Solid]:
    wall, at, outer = place.wall, place.core_n[1], house.outdoors(place.wall.side)
    sheets = []
    for k, layer in enumerate(wall.outside, 1):
        sheets.append((f"outside-{k}", layer.material, place.cover, (at, at + layer.thickness_in), base, outer))
        at += layer.thickness_in
    if is_cathedral(house):
        at = place.core_n[0]
        for k, layer in enumerate(wall.inside, 1):
            sheets.append(
                (f"inside-{k}", layer.material, (0.0, place.length), (at - layer.thickness_in, at), base, False)
            )
            at -= layer.thickness_in
    solids = []
    for key, material, span, n, start, is_outer in sheets:
        outline = _outline(shape, place, span, n, start)
        if outline and not is_gap(material):
            solids.append(
                Solid(f"{place.prefix}-gable-{key}", layer_kind(material, outer=is_outer),
                      f"{place.member_words}{material}", place.prism(outline, n), Crossing.PASS, f"walls.{place.prefix}",
                      None, material, side=place.kitchen_side, space="attic", combustible=is_combustible(material),
                      wall=place.words, rated=wall.fire_rated)
            )  # fmt: skip
    return solids


def _infill_core(house: House, shape: RoofShape, place: Place, base: float) -> list[Solid]:
    wall, n = place.wall, place.core_n
    if not is_cathedral(house):
        base = max(base, shape.base)
    if wall.frame not in FRAMED or wall.studs is None:
        outline = _outline(shape, place, place.core, n, base)
        core = place.prism(outline, n) if outline else None
        return [] if core is None else [_masonry(place, core)]
    layout, solids = wall.studs, []
    for slot in stud_slots(place):
        outline = _outline(shape, place, (slot.lo, slot.hi), n, base)
        if len(outline) < 4 or max(z for _, z in outline) - base < 3.0:
            continue
        number = slot.number or "corner"
        member = Member(layout.kind, layout.size, layout.width_in * slot.plies, layout.depth_in, 2, slot.number,
                        slot.plies, False, house.outdoors(place.wall.side))  # fmt: skip
        solids.append(
            Solid(f"{place.prefix}-gable-stud-{number}", SolidKind.STUD, f"{place.member_words}gable stud {number}",
                  place.prism(outline, n), Crossing.NEVER, f"walls.{place.prefix}.studs", member, "timber",
                  side=place.kitchen_side if is_cathedral(house) else None, space="attic",
                  combustible=member_burns(layout.kind), wall=place.words, rated=wall.fire_rated)
        )  # fmt: skip
    return solids


def _masonry(place: Place, core: Prism) -> Solid:
    return Solid(f"{place.prefix}-gable-core", SolidKind.MASONRY, f"{place.member_words}gable {place.wall.frame.value}",
                 core, Crossing.PASS, f"walls.{place.prefix}", None, place.wall.frame.value, side=place.kitchen_side,
                 space="attic", combustible=place.wall.frame.value == "log", wall=place.words,
                 rated=place.wall.fire_rated)  # fmt: skip
