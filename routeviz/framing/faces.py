"""Outer faces where a duct may leave, with everything a cap must keep away from."""

from __future__ import annotations

import itertools
from collections.abc import Mapping

from routeviz.framing.openings import name_of
from routeviz.framing.place import House, Place, sides_of
from routeviz.framing.roofshape import RoofShape, Slope
from routeviz.framing.sheets import Rect, pieces
from routeviz.framing.spaces import Beyond, space_name
from routeviz.framing.upper import infill_places
from routeviz.framing.walls import Heights
from routeviz.model.scene import Opening, OpeningKind, OutdoorKind, OutdoorThing, RoofForm, WallSide
from routeviz.model.solids import ExitFace, FaceKind, KeepOut, RoofEdge
from routeviz.model.spoken import spoken

__all__ = ["exit_faces"]

GROUND_CLEAR_IN = 12.0  # caps start this high above the floor; common practice
OVERLAP_IN = 12.0  # how far a wall's face and its gable's face reach into each other, so that a cap may sit across
_STEPS = 8  # steps that follow the roof's edge on a gable, always on the safe side


def _distance(keep_away: Mapping[str, float], kind: str) -> float:
    return float(keep_away.get(kind, 0.0))


def _opening_kind(opening: Opening) -> OutdoorKind:
    if opening.kind is OpeningKind.DOOR:
        return OutdoorKind.DOOR
    return OutdoorKind.OPERABLE_WINDOW if opening.operable else OutdoorKind.FIXED_WINDOW


def _wall_openings(place: Place, floor: float, keep_away: Mapping[str, float]) -> list[KeepOut]:
    found = []
    for o in place.wall.openings:
        kind = _opening_kind(o)
        lo, hi = place.span((o.left_in, o.left_in + o.width_in))
        z = floor + o.sill_in
        found.append(KeepOut(f"{place.prefix}-{o.id}", name_of(o), kind.value, (lo, z), (hi, z + o.height_in),
                             _distance(keep_away, kind.value)))  # fmt: skip
    return found


def _things(
    place: Place, face: str, outdoors: tuple[OutdoorThing, ...], keep_away: Mapping[str, float]
) -> list[KeepOut]:
    found = []
    for t in outdoors:
        if t.face != face:
            continue
        lo, hi = place.span((t.left_in, t.left_in + t.width_in))
        found.append(KeepOut(t.id, _thing_words(t), t.kind.value, (lo, t.bottom_in), (hi, t.bottom_in + t.height_in),
                             _distance(keep_away, t.kind.value), t.away_in))  # fmt: skip
    return found


def _thing_words(thing: OutdoorThing) -> str:
    words = spoken(thing.id)
    return words if thing.kind.value.split()[-1] in words else f"{thing.kind.value} {words}"


def _lot_line(
    place: Place, lo: tuple[float, float], hi: tuple[float, float], keep_away: Mapping[str, float]
) -> list[KeepOut]:
    if place.wall.lot_line_in is None:
        return []
    return [KeepOut(f"lot-line-{place.prefix}", "lot line", OutdoorKind.LOT_LINE.value, lo, hi,
                    _distance(keep_away, OutdoorKind.LOT_LINE.value), place.wall.lot_line_in)]  # fmt: skip


def _round_corner(house: House, place: Place, z: tuple[float, float], keep_away: Mapping[str, float]) -> list[KeepOut]:
    """Give what a neighbouring outer wall brings: its openings and its lot line, as seen along this face.

    An opening round the corner is a line at the corner that stands off by its distance behind this face, so the
    distance to a cap is the true one in space.
    """
    found = []
    for side in sides_of(place.run_axis):
        other = house.place(side)
        if not house.outdoors(side) or other.wall.side is place.wall.side:
            continue
        for keep in _wall_openings(other, 0.0, keep_away):
            away = min(abs(place.outer - v) for v in (keep.lo[0], keep.hi[0]))
            found.append(KeepOut(keep.id, f"{keep.label} round the corner", keep.kind, (other.outer, keep.lo[1]),
                                 (other.outer, keep.hi[1]), keep.distance_in, away))  # fmt: skip
        if other.wall.lot_line_in is not None:
            line = other.outer + other.normal_sign * other.wall.lot_line_in
            found.append(KeepOut(f"lot-line-{side}", "lot line", OutdoorKind.LOT_LINE.value, (line, z[0]), (line, z[1]),
                                 _distance(keep_away, OutdoorKind.LOT_LINE.value)))  # fmt: skip
    return found


def _edges(house: House, place: Place, lo: tuple[float, float], hi: tuple[float, float], keep_away: Mapping[str, float],
           *, vented: bool, gable: bool) -> list[KeepOut]:  # fmt: skip
    wanted, found = _distance(keep_away, "edge"), []
    for side, at in zip(sides_of(place.run_axis), (lo[0], hi[0]), strict=True):
        if house.outdoors(side):
            found.append(KeepOut(f"corner-{place.prefix}-{side}", f"corner with {house.place(side).words}", "edge",
                                 (at, lo[1]), (at, hi[1]), wanted))  # fmt: skip
    if not gable:
        found.append(KeepOut(f"eave-{place.prefix}", "top edge of the wall", "eave", (lo[0], hi[1]), (hi[0], hi[1]),
                             _distance(keep_away, "eave")))  # fmt: skip
    if vented:
        kind = OutdoorKind.SOFFIT_VENT.value
        found.append(KeepOut(f"soffit-vent-{place.prefix}", "soffit vent", kind, (lo[0], hi[1]), (hi[0], hi[1]),
                             _distance(keep_away, kind)))  # fmt: skip
    return found


def _wall_faces(house: House, shape: RoofShape | None, place: Place, heights: Heights, top: float,
                others: list[Beyond], keep_away: Mapping[str, float]) -> list[ExitFace]:  # fmt: skip
    lo_s, hi_s = place.span(place.cover)
    side, gable = place.wall.side, _gable_top(shape, place)
    goes_on = gable is not None and gable > top + 6.0  # the gable above has a face of its own; both reach a little over
    lo, hi = (lo_s, heights.floor + GROUND_CLEAR_IN), (hi_s, min(gable, top + OVERLAP_IN) if gable and goes_on else top)
    if hi[1] - lo[1] < 1.0:
        return []
    vented = shape is not None and shape.roof.soffit_vented and side in shape.eaves
    keep = _wall_openings(place, heights.floor, keep_away)
    keep += _things(place, side.value, house.scene.outdoors, keep_away)
    keep += _lot_line(place, lo, hi, keep_away) + _round_corner(house, place, (lo[1], hi[1]), keep_away)
    keep += _edges(house, place, lo, hi, keep_away, vented=vented, gable=goes_on)
    if goes_on and shape is not None and place.normal_axis == shape.axis:
        keep += _rake_steps(shape, lo, hi, _distance(keep_away, "eave"))
    hidden = _behind(place, others)
    keep += [KeepOut(f"edge-{name}", f"the {name}", "edge", (r.s0, r.z0), (r.s1, r.z1), _distance(keep_away, "edge"))
             for name, r in hidden]  # fmt: skip
    open_air = pieces(Rect(lo[0], hi[0], lo[1], hi[1]), [r for _, r in hidden])
    return [
        ExitFace(f"face-{side}" if i == 1 else f"face-{side}-{i}", place.words, FaceKind.WALL, place.normal_axis,
                 place.normal_sign, place.outer, (place.outer, 0.0, 0.0), (r.s0, r.z0), (r.s1, r.z1), tuple(keep),
                 "outdoors", side)
        for i, r in enumerate(open_air, 1)
        if r.s1 - r.s0 >= 1.0 and r.z1 - r.z0 >= 1.0
    ]  # fmt: skip


def _behind(place: Place, others: list[Beyond]) -> list[tuple[str, Rect]]:
    """Give what spaces cover of a wall that is said to be outdoors, their walls included."""
    found = []
    for other in others:
        if other.space.beyond is not place.wall.side:
            continue
        ends = [p.outer for p in other.places if p.normal_axis == place.run_axis]
        axis = place.run_axis
        lo, hi = min([other.inside.lo[axis], *ends]), max([other.inside.hi[axis], *ends])
        found.append((space_name(other.space), Rect(lo, hi, other.inside.lo[2], other.inside.hi[2])))
    return found


_GABLE_WORDS = {
    WallSide.HOOD: "the gable end behind", WallSide.LEFT: "the gable end on the left",
    WallSide.RIGHT: "the gable end on the right", WallSide.FRONT: "the gable end in front",
}  # fmt: skip


def _gable_top(shape: RoofShape | None, place: Place) -> float | None:
    """Give the highest point of an outer wall under the roof; None where the wall ends at an eave."""
    if shape is None or place.wall.side in shape.eaves:
        return None
    if place.normal_axis == shape.axis:
        return max(shape.underside(u) for u in shape.profile(*place.span(place.cover)))
    return shape.underside(place.outer)


def _gable_face(
    house: House, shape: RoofShape, place: Place, base: float, keep_away: Mapping[str, float]
) -> ExitFace | None:
    lo_s, hi_s = place.span(place.cover)
    end, top = place.normal_axis == shape.axis, _gable_top(shape, place)
    if top is None or top - base < 6.0:
        return None
    lo, hi = (lo_s, max(base - OVERLAP_IN, GROUND_CLEAR_IN)), (hi_s, top)
    side = place.wall.side
    keep = _things(place, side.value, house.scene.outdoors, keep_away) + _wall_openings(place, 0.0, keep_away)
    keep += _lot_line(place, lo, hi, keep_away) + _round_corner(house, place, (lo[1], hi[1]), keep_away)
    if end:
        keep += _rake_steps(shape, lo, hi, _distance(keep_away, "eave"))
    label = _GABLE_WORDS[side] if end else f"the top of {place.words}"
    return ExitFace(f"gable-{side}", label, FaceKind.GABLE, place.normal_axis, place.normal_sign, place.outer,
                    (place.outer, 0.0, 0.0), lo, hi, tuple(keep), "outdoors", side, "attic")  # fmt: skip


def _rake_steps(shape: RoofShape, lo: tuple[float, float], hi: tuple[float, float], wanted: float) -> list[KeepOut]:
    """Cover what lies above the roof's edge on a gable with rectangles, never less than it."""
    found: list[KeepOut] = []
    profile = shape.profile(lo[0], hi[0])
    for a, b in itertools.pairwise(profile):
        cuts = [a + (b - a) * i / _STEPS for i in range(_STEPS + 1)]
        for u0, u1 in itertools.pairwise(cuts):
            low = max(lo[1], min(shape.underside(u0), shape.underside(u1)))
            if low < hi[1] - 1e-6:
                found.append(
                    KeepOut(f"rake-{len(found) + 1}", "edge of the roof", "eave", (u0, low), (u1, hi[1]), wanted)
                )
    return found


def _roof_faces(house: House, shape: RoofShape, keep_away: Mapping[str, float]) -> list[ExitFace]:
    axis, across = shape.axis, 1 - shape.axis
    along, found = house.outer[2 * axis : 2 * axis + 2], []
    for slope in shape.slopes:
        ends = max(slope.lo, house.outer[2 * across]), min(slope.hi, house.outer[2 * across + 1])
        if ends[1] - ends[0] < 6.0:
            continue
        lo, hi = [0.0, 0.0], [0.0, 0.0]
        lo[axis], hi[axis] = along
        lo[across], hi[across] = ends
        height = slope.a + shape.rise(slope)
        plane = (height, slope.b, 0.0) if across == 0 else (height, 0.0, slope.b)
        edges = _roof_edges(house, shape, slope)
        tail, words = (f"-{slope.name}", f"the roof's {slope.name} slope") if slope.name else ("", "the roof")
        found.append(ExitFace(f"roof{tail}", words, FaceKind.ROOF, 2, 1, 0.0, plane, (lo[0], lo[1]), (hi[0], hi[1]),
                              tuple(_roof_keep(house, edges, keep_away)), "outdoors", None, "attic", edges))  # fmt: skip
    return found


def _roof_edges(house: House, shape: RoofShape, slope: Slope) -> tuple[RoofEdge, ...]:
    """Give the lines round a slope: its own where the scene says where they are, else the walls' outer faces below."""
    gable, ridge_at = shape.roof.form is RoofForm.GABLE, shape.roof.ridge_at_in
    ridge = ridge_at if shape.axis == 1 else -ridge_at
    found = []
    for axis in (0, 1):
        ends = shape.along if axis == shape.axis else (slope.lo, slope.hi)
        for side, way, at in zip(sides_of(axis), (-1, 1), ends, strict=True):
            rises = 0.0 if axis == shape.axis else slope.b * way
            if gable and rises > 0:
                found.append(RoofEdge("ridge", axis, ridge, hooks=True))
            elif house.outdoors(side):
                name = "rake" if axis == shape.axis else "eave" if rises < 0 else "high edge" if rises > 0 else "edge"
                found.append(RoofEdge(name if slope.b else "edge", axis, at, hooks=True))
            else:
                found.append(
                    RoofEdge(f"outer face of the {side} wall below", axis, house.place(side).outer, hooks=False)
                )
    return tuple(found)


def _roof_keep(house: House, edges: tuple[RoofEdge, ...], keep_away: Mapping[str, float]) -> list[KeepOut]:
    wanted, found = _distance(keep_away, "edge"), []
    for edge, side in zip(edges, (*sides_of(0), *sides_of(1)), strict=True):
        if not edge.hooks:
            continue
        first, second = (tuple(e.at_in for e in edges if e.axis == axis) for axis in (0, 1))
        a, b = [min(first), min(second)], [max(first), max(second)]
        a[edge.axis] = b[edge.axis] = edge.at_in
        ridge = edge.label == "ridge"
        found.append(KeepOut("ridge" if ridge else f"roof-edge-{side}", "ridge" if ridge else f"{edge.label} of the roof",
                             "edge", (a[0], a[1]), (b[0], b[1]), wanted))  # fmt: skip
    found += [
        KeepOut(t.id, _thing_words(t), t.kind.value, (t.left_in, -t.bottom_in - t.height_in),
                (t.left_in + t.width_in, -t.bottom_in), _distance(keep_away, t.kind.value), t.away_in)
        for t in house.scene.outdoors
        if t.face == "roof"
    ]  # fmt: skip
    return found


def _space_faces(house: House, other: Beyond, keep_away: Mapping[str, float]) -> list[ExitFace]:
    if not other.space.duct_allowed:
        return []
    found = []
    for place in other.places:
        if place.wall.beyond != "outdoors":
            continue
        lo_s, hi_s = place.span(place.cover)
        lo = (lo_s, other.space.floor_in + GROUND_CLEAR_IN)
        hi = (hi_s, other.space.floor_in + other.space.height_in)
        if hi[1] - lo[1] < 1.0:
            continue
        keep = _wall_openings(place, other.space.floor_in, keep_away) + _lot_line(place, lo, hi, keep_away)
        keep += _things(place, f"{other.space.id}/{place.wall.side}", house.scene.outdoors, keep_away)
        found.append(ExitFace(f"face-{place.prefix}", place.words, FaceKind.WALL, place.normal_axis, place.normal_sign,
                              place.outer, (place.outer, 0.0, 0.0), lo, hi, tuple(keep), "outdoors", None,
                              other.space.id))  # fmt: skip
    return found


def exit_faces(
    house: House, shape: RoofShape | None, heights: dict[WallSide, Heights], tops: dict[WallSide, float],
    others: list[Beyond], bases: dict[WallSide, float], keep_away: Mapping[str, float],
) -> tuple[ExitFace, ...]:  # fmt: skip
    """Give every outer face of the house in a fixed order: walls, gables, roof, walls of spaces.

    `tops` are the heights up to which the wall faces reach, `bases` where gables begin [in].
    """
    found: list[ExitFace] = []
    for place in house.places:
        if house.outdoors(place.wall.side):
            side = place.wall.side
            found += _wall_faces(house, shape, place, heights[side], tops[side], others, keep_away)
    if shape is not None:
        gables = (
            _gable_face(house, shape, place, bases[place.wall.side], keep_away) for place in infill_places(house, shape)
        )
        found += [face for face in gables if face]
        found += _roof_faces(house, shape, keep_away)
    for other in others:
        found += _space_faces(house, other, keep_away)
    return tuple(found)
