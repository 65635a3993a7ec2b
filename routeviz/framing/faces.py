"""Outer faces where a duct may leave, with everything a cap must keep away from."""

from __future__ import annotations

import itertools
from collections.abc import Iterator, Mapping, Sequence

from routeviz.framing.outdoors import Outdoors, behind, outdoors, seen, seen_from_above, view
from routeviz.framing.place import House, Place, sides_of
from routeviz.framing.roofshape import RoofShape, Slope
from routeviz.framing.sheets import Rect, pieces
from routeviz.framing.spaces import Beyond, space_name
from routeviz.framing.upper import infill_places
from routeviz.framing.walls import Heights
from routeviz.model.scene import RoofForm, WallSide
from routeviz.model.solids import ExitFace, FaceKind, KeepOut, RoofEdge, WallEnd

__all__ = ["exit_faces"]

GROUND_CLEAR_IN = 12.0  # caps start this high above the floor; common practice
OVERLAP_IN = 12.0  # how far a wall's face and its gable's face reach into each other, so that a cap may sit across
_STEPS = 8  # steps that follow the roof's edge on a gable, always on the safe side


def _distance(keep_away: Mapping[str, float], kind: str) -> float:
    return float(keep_away.get(kind, 0.0))


def _edges(house: House, place: Place, lo: tuple[float, float], hi: tuple[float, float], keep_away: Mapping[str, float],
           *, gable: bool) -> list[KeepOut]:  # fmt: skip
    wanted, found = _distance(keep_away, "edge"), []
    for side, at in zip(sides_of(place.run_axis), (lo[0], hi[0]), strict=True):
        if house.outdoors(side):
            found.append(KeepOut(f"corner-{place.prefix}-{side}", f"corner with {house.place(side).words}", "edge",
                                 (at, lo[1]), (at, hi[1]), wanted))  # fmt: skip
    if not gable:
        found.append(_top_edge(place, lo, hi, keep_away))
    return found


def _ends(house: House, place: Place) -> tuple[WallEnd, ...]:
    """Give both upright ends of a kitchen wall: the corner's finished outer face, else the inner face indoors."""
    walls = [house.place(side) for side in sides_of(place.run_axis)]
    return tuple(_corner(w) if w.wall.beyond == "outdoors" else _inner(w) for w in walls)


def _corner(met: Place) -> WallEnd:
    return WallEnd(f"corner with {met.words}", met.outer, hooks=True)


def _inner(met: Place) -> WallEnd:
    return WallEnd(f"inner face of {met.words}", met.normal_origin, hooks=False)


def _top_edge(
    place: Place, lo: tuple[float, float], hi: tuple[float, float], keep_away: Mapping[str, float]
) -> KeepOut:
    return KeepOut(
        f"eave-{place.prefix}", "top edge of the wall", "eave", (lo[0], hi[1]), hi, _distance(keep_away, "eave")
    )


def _wall_faces(house: House, shape: RoofShape | None, place: Place, heights: Heights, top: float,
                others: list[Beyond], things: Sequence[Outdoors], keep_away: Mapping[str, float]) -> list[ExitFace]:  # fmt: skip
    lo_s, hi_s = place.span(place.cover)
    side, gable = place.wall.side, _gable_top(shape, place)
    goes_on = gable is not None and gable > top + 6.0  # the gable above has a face of its own; both reach a little over
    lo, hi = (lo_s, heights.floor + GROUND_CLEAR_IN), (hi_s, min(gable, top + OVERLAP_IN) if gable and goes_on else top)
    if hi[1] - lo[1] < 1.0:
        return []
    keep = seen(things, view(place, lo, hi), keep_away) + _edges(house, place, lo, hi, keep_away, gable=goes_on)
    if goes_on and shape is not None and place.normal_axis == shape.axis:
        keep += _rake_steps(shape, lo, hi, _distance(keep_away, "eave"))
    hidden = behind(place, others)
    keep += [KeepOut(f"edge-{name}", f"the {name}", "edge", (r.s0, r.z0), (r.s1, r.z1), _distance(keep_away, "edge"))
             for name, r in hidden]  # fmt: skip
    open_air = pieces(Rect(lo[0], hi[0], lo[1], hi[1]), [r for _, r in hidden])
    return [
        ExitFace(f"face-{side}" if i == 1 else f"face-{side}-{i}", place.words, FaceKind.WALL, place.normal_axis,
                 place.normal_sign, place.outer, (place.outer, 0.0, 0.0), (r.s0, r.z0), (r.s1, r.z1), tuple(keep),
                 "outdoors", side, ends=_ends_of_piece(_ends(house, place), (lo_s, hi_s), r, hidden))
        for i, r in enumerate(open_air, 1)
        if r.s1 - r.s0 >= 1.0 and r.z1 - r.z0 >= 1.0
    ]  # fmt: skip


def _ends_of_piece(
    ends: tuple[WallEnd, ...], cover: tuple[float, float], piece: Rect, hidden: list[tuple[str, Rect]]
) -> tuple[WallEnd, ...]:
    """Give the ends of what a space leaves of a wall: its own, or the wall of the space that stands against it."""
    found = []
    for whole, end, at in zip(ends, cover, (piece.s0, piece.s1), strict=True):
        met = next((name for name, r in hidden if abs(at - end) > 1e-6 and at in (r.s0, r.s1)), None)
        found.append(WallEnd(f"corner with the {met}", at, hooks=True) if met else whole)
    return tuple(found)


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
    house: House,
    shape: RoofShape,
    place: Place,
    base: float,
    things: Sequence[Outdoors],
    keep_away: Mapping[str, float],
) -> ExitFace | None:
    lo_s, hi_s = place.span(place.cover)
    end, top = place.normal_axis == shape.axis, _gable_top(shape, place)
    if top is None or top - base < 6.0:
        return None
    lo, hi = (lo_s, max(base - OVERLAP_IN, GROUND_CLEAR_IN)), (hi_s, top)
    side = place.wall.side
    keep = seen(things, view(place, lo, hi), keep_away)
    if end:
        keep += _rake_steps(shape, lo, hi, _distance(keep_away, "eave"))
    label = _GABLE_WORDS[side] if end else f"the top of {place.words}"
    return ExitFace(f"gable-{side}", label, FaceKind.GABLE, place.normal_axis, place.normal_sign, place.outer,
                    (place.outer, 0.0, 0.0), lo, hi, tuple(keep), "outdoors", side, "attic", ends=_ends(house, place))  # fmt: skip


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


def _roof_faces(
    house: House, shape: RoofShape, things: Sequence[Outdoors], keep_away: Mapping[str, float]
) -> list[ExitFace]:
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
                              tuple(_roof_keep(edges, things, keep_away)), "outdoors", None, "attic", edges))  # fmt: skip
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


def _roof_keep(
    edges: tuple[RoofEdge, ...], things: Sequence[Outdoors], keep_away: Mapping[str, float]
) -> list[KeepOut]:
    wanted, found = _distance(keep_away, "edge"), []
    first, second = (tuple(e.at_in for e in edges if e.axis == axis) for axis in (0, 1))
    lo, hi = (min(first), min(second)), (max(first), max(second))
    for edge, side in zip(edges, (*sides_of(0), *sides_of(1)), strict=True):
        if not edge.hooks:
            continue
        a, b = list(lo), list(hi)
        a[edge.axis] = b[edge.axis] = edge.at_in
        ridge = edge.label == "ridge"
        found.append(KeepOut("ridge" if ridge else f"roof-edge-{side}", "ridge" if ridge else f"{edge.label} of the roof",
                             "edge", (a[0], a[1]), (b[0], b[1]), wanted))  # fmt: skip
    return found + seen_from_above(things, lo, hi, keep_away)


def _space_faces(
    house: House, other: Beyond, things: Sequence[Outdoors], keep_away: Mapping[str, float]
) -> list[ExitFace]:
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
        keep = seen(things, view(place, lo, hi), keep_away)
        keep += [*_space_corners(house, other, place, lo, hi, keep_away), _top_edge(place, lo, hi, keep_away)]
        found.append(ExitFace(f"face-{place.prefix}", place.words, FaceKind.WALL, place.normal_axis, place.normal_sign,
                              place.outer, (place.outer, 0.0, 0.0), lo, hi, tuple(keep), "outdoors", None,
                              other.space.id, ends=_space_ends(other, place)))  # fmt: skip
    return found


def _space_ends(other: Beyond, place: Place) -> tuple[WallEnd, ...]:
    """Give both upright ends of a space's wall; where its next wall is not known, the inside of the space."""
    axis, found = place.run_axis, []
    for at in (other.inside.lo[axis], other.inside.hi[axis]):
        met = next((p for p in other.places if p.normal_axis == axis and abs(p.normal_origin - at) < 1e-6), None)
        known = met is not None and met.wall.beyond == "outdoors"
        found.append(
            _corner(met) if met and known else WallEnd(f"inner side of the {space_name(other.space)}", at, hooks=False)
        )
    return tuple(found)


def _space_corners(house: House, other: Beyond, place: Place, lo: tuple[float, float], hi: tuple[float, float],
                   keep_away: Mapping[str, float]) -> Iterator[KeepOut]:  # fmt: skip
    """Give both upright edges of a space's wall, with the wall that each of them meets: the kitchen's, or its next one."""
    walls = [p for p in (*other.places, house.place(other.space.beyond)) if p.normal_axis == place.run_axis]
    for end, at in (("low", lo[0]), ("high", hi[0])):
        met = next((p for p in walls if abs(p.outer - at) <= p.wall.thickness_in), None)
        words = f"corner with {met.words}" if met else f"end of {place.words}"
        yield KeepOut(
            f"corner-{place.prefix}-{end}", words, "edge", (at, lo[1]), (at, hi[1]), _distance(keep_away, "edge")
        )


def exit_faces(
    house: House, shape: RoofShape | None, heights: dict[WallSide, Heights], tops: dict[WallSide, float],
    others: list[Beyond], bases: dict[WallSide, float], keep_away: Mapping[str, float],
) -> tuple[ExitFace, ...]:  # fmt: skip
    """Give every outer face of the house in a fixed order: walls, gables, roof, walls of spaces.

    `tops` are the heights up to which the wall faces reach, `bases` where gables begin [in].
    """
    things = outdoors(house, shape, tops, others)
    found: list[ExitFace] = []
    for place in house.places:
        if house.outdoors(place.wall.side):
            side = place.wall.side
            found += _wall_faces(house, shape, place, heights[side], tops[side], others, things, keep_away)
    if shape is not None:
        gables = (
            _gable_face(house, shape, place, bases[place.wall.side], things, keep_away)
            for place in infill_places(house, shape)
        )
        found += [face for face in gables if face]
        found += _roof_faces(house, shape, things, keep_away)
    for other in others:
        found += _space_faces(house, other, things, keep_away)
    return tuple(found)
