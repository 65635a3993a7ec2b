"""The roof as solids: rafters or trusses, ridge board, deck and covering, eave soffits."""

from __future__ import annotations

from shapely import Polygon, box
from shapely.geometry.base import BaseGeometry

from routeviz.framing.layout import Slot, slots
from routeviz.framing.materials import is_combustible, is_gap, member_burns, member_crossing
from routeviz.framing.place import CHORD_IN, House, sides_of
from routeviz.framing.roofshape import RoofShape, Slope, is_cathedral
from routeviz.framing.underroof import below
from routeviz.model.scene import AboveKind, MemberKind, MemberLayout, RoofForm, WallSide
from routeviz.model.solids import Box, Crossing, Member, Prism, Solid, SolidKind

__all__ = ["SOFFIT_IN", "eave_soffit_z", "rafter_slots", "roof_solids", "truss_webs"]

SOFFIT_IN = 0.375  # board under the eave
_RIDGE_IN = 1.5
_FACES = {WallSide.HOOD: (1, 1), WallSide.FRONT: (1, -1), WallSide.LEFT: (0, -1), WallSide.RIGHT: (0, 1)}


def _points(shape: Polygon) -> tuple[tuple[float, float], ...]:
    """Give a polygon's corners, without the repeated last one."""
    return tuple((float(x), float(y)) for x, y in list(shape.exterior.coords)[:-1])


def _parts(shape: BaseGeometry) -> list[Polygon]:
    """Give the polygons of a shapely result that are more than slivers."""
    parts = [shape] if isinstance(shape, Polygon) else list(getattr(shape, "geoms", []))
    return [p for p in parts if isinstance(p, Polygon) and p.area > 1e-6]


def rafter_slots(house: House, shape: RoofShape) -> tuple[Slot, ...]:
    """Give rafters or trusses in true coordinates along the ridge, ordered by number."""
    layout = shape.roof.framing
    if layout is None:
        return ()
    lo, hi = house.core[2 * shape.axis : 2 * shape.axis + 2]
    if shape.axis == 0:
        return slots(layout, lo, hi)
    found = slots(layout, -hi, -lo)
    return tuple(Slot(s.number, -s.hi, -s.lo, s.plies) for s in found)


def _ridge_gap(shape: RoofShape) -> float:
    """Give half the thickness of the ridge board that rafters end at; trusses meet without one."""
    layout = shape.roof.framing
    if layout is None or shape.ridge_u is None or layout.kind is MemberKind.TRUSS:
        return 0.0
    return _RIDGE_IN / 2


def _member(layout: MemberLayout, shape: RoofShape, slot: Slot) -> Member:
    return Member(layout.kind, layout.size, layout.width_in * slot.plies, layout.depth_in, 1 - shape.axis, slot.number,
                  slot.plies, True, False)  # fmt: skip


def _framing(house: House, shape: RoofShape) -> list[Solid]:
    layout = shape.roof.framing
    if layout is None:
        return []
    truss = layout.kind is MemberKind.TRUSS
    kind, word = (SolidKind.CHORD, "truss") if truss else (SolidKind.RAFTER, "rafter")
    gap = _ridge_gap(shape)
    solids = []
    for slot in rafter_slots(house, shape):
        for slope in shape.slopes:
            lo = slope.lo + (gap if slope.lo == shape.ridge_u else 0.0)
            hi = slope.hi - (gap if slope.hi == shape.ridge_u else 0.0)
            if hi - lo < 1e-6:
                continue
            tail, words = (f"-{slope.name}", f", {slope.name} slope") if slope.name else ("", "")
            what = f"{word} {slot.number}{' top chord' if truss else ''}{words}"
            outline = tuple(slope.band(0.0, layout.depth_in * slope.stretch, lo, hi))
            solids.append(
                Solid(f"{word}-{slot.number}{'-top' if truss else ''}{tail}", kind, what,
                      Prism(shape.axis, slot.lo, slot.hi, outline), member_crossing(layout.kind), "roof.framing",
                      _member(layout, shape, slot), "steel" if layout.kind is MemberKind.STEEL else "timber",
                      space="attic", combustible=member_burns(layout.kind))
            )  # fmt: skip
        if truss:
            solids += _truss_rest(house, shape, layout, slot)
    return solids


def _truss_rest(house: House, shape: RoofShape, layout: MemberLayout, slot: Slot) -> list[Solid]:
    """Give a truss's bottom chord (unless the ceiling's joists are the chords) and its webs."""
    lo, hi = house.core[2 * (1 - shape.axis)], house.core[2 * (1 - shape.axis) + 1]
    member, chord_top = _member(layout, shape, slot), shape.base
    found: list[tuple[str, SolidKind, str, Polygon]] = []
    if house.scene.ceiling.joists is None or house.scene.above.kind is AboveKind.STOREY:
        chord = below(box(lo, chord_top - CHORD_IN, hi, chord_top), shape.tops(lo, hi, 0))
        found.append(("bottom", SolidKind.CHORD, "bottom chord", chord))
    ends = [house.place(s) for s in sides_of(shape.axis)]
    in_wall = any(
        slot.lo < max(p.depth(n) for n in p.core_n) and min(p.depth(n) for n in p.core_n) < slot.hi for p in ends
    )
    webs = [] if in_wall else truss_webs(house, shape)  # in a gable wall the studs stand in their place
    found += [(f"web-{i}", SolidKind.WEB, f"web {i}", web) for i, web in enumerate(webs, 1)]
    return [
        Solid(f"truss-{slot.number}-{key}", kind, f"truss {slot.number} {words}",
              Prism(shape.axis, slot.lo, slot.hi, _points(part)), Crossing.NEVER, "roof.framing", member, "timber",
              space="attic", combustible=True)
        for key, kind, words, part in found
    ]  # fmt: skip


def _between_chords(shape: RoofShape, lo: float, hi: float, bottom: float) -> Polygon:
    """Give what lies over the bottom chord and under the top ones; at the eaves it may end in a point."""
    tops = [(u, shape.underside(u)) for u in shape.profile(lo, hi)]
    foot = min(bottom, *(z for _, z in tops)) - 1.0
    under = Polygon([(lo, foot), (hi, foot), *reversed(tops)])
    parts = _parts(under.intersection(box(lo, bottom, hi, max(bottom, *(z for _, z in tops)) + 1.0)))
    return max(parts, key=lambda p: p.area, default=Polygon())


def truss_webs(house: House, shape: RoofShape) -> list[Polygon]:
    """Lay a king post and two diagonals between the chords of one truss, as outlines in (u, z).

    The scene does not say how they run. Where the ridge is not over the kitchen there are none, and a low truss has
    no diagonals.
    """
    bottom = shape.base
    across = 2 * (1 - shape.axis)
    room = _between_chords(shape, house.core[across], house.core[across + 1], bottom)
    if shape.ridge_u is None or room.area < 1.0:
        return []
    ridge, top = shape.ridge_u, shape.underside(shape.ridge_u)
    lo, _, hi, _ = room.bounds
    taken: BaseGeometry = Polygon()
    webs = []
    half = CHORD_IN / 2
    lines = [box(ridge - half, bottom, ridge + half, top)]
    for slope, end in ((shape.slopes[0], lo), (shape.slopes[-1], hi)):
        middle = (ridge + end) / 2
        rise = slope.z(middle) - bottom
        if rise > 2 * CHORD_IN and abs(middle - ridge) > 2 * CHORD_IN:
            lines.append(Polygon([(ridge - half, bottom), (ridge + half, bottom), (middle + half, bottom + rise),
                                  (middle - half, bottom + rise)]))  # fmt: skip
    for line in lines:
        webs += _parts(line.intersection(room).difference(taken))
        taken = taken.union(line)
    return webs


def _ridge_board(shape: RoofShape) -> list[Solid]:
    gap, layout = _ridge_gap(shape), shape.roof.framing
    if gap == 0.0 or shape.ridge_u is None or layout is None:
        return []
    underside = shape.underside(shape.ridge_u)
    top = underside + min(layout.depth_in * s.stretch - gap * abs(s.b) for s in shape.slopes)
    lo, hi = [0.0, 0.0, underside], [0.0, 0.0, top]
    lo[shape.axis], hi[shape.axis] = shape.along
    lo[1 - shape.axis], hi[1 - shape.axis] = shape.ridge_u - gap, shape.ridge_u + gap
    member = Member(MemberKind.SAWN, layout.size, _RIDGE_IN, top - underside, shape.axis)
    return [
        Solid("ridge", SolidKind.RIDGE, "ridge board", Box((lo[0], lo[1], lo[2]), (hi[0], hi[1], hi[2])),
              Crossing.NEVER, "roof", member, "timber", space="attic", combustible=True)
    ]  # fmt: skip


def _sheets(shape: RoofShape) -> list[Solid]:
    solids = []
    for k, layer in enumerate(shape.roof.layers, 1):
        if is_gap(layer.material):
            continue
        kind = SolidKind.COVERING if k == len(shape.roof.layers) and k > 1 else SolidKind.DECK
        for slope in shape.slopes:
            outline = slope.band(shape.rise(slope, k - 1), shape.rise(slope, k), slope.lo, slope.hi)
            tail = f"-{slope.name}" if slope.name else ""
            solids.append(
                Solid(f"roof-{k}{tail}", kind, layer.material, Prism(shape.axis, *shape.along, tuple(outline)),
                      Crossing.PASS, "roof.layers", None, layer.material, space="attic",
                      combustible=is_combustible(layer.material))
            )  # fmt: skip
    return solids


def eave_soffit_z(house: House, shape: RoofShape, side: WallSide) -> float | None:
    """Give the underside of the eave soffit over a wall; None where the roof has no overhang there."""
    if side not in shape.eaves or not house.outdoors(side) or shape.roof.form is RoofForm.FLAT:
        return None
    slope, edge = _slope_over(shape, side), _eave_edge(shape, side)
    return slope.z(edge) - SOFFIT_IN if abs(edge - house.place(side).outer) > 1.0 else None


def _eave_edge(shape: RoofShape, side: WallSide) -> float:
    return _slope_over(shape, side).hi if _FACES[side][1] > 0 else _slope_over(shape, side).lo


def _slope_over(shape: RoofShape, side: WallSide) -> Slope:
    return shape.slopes[-1] if _FACES[side][1] > 0 else shape.slopes[0]


def _soffits(house: House, shape: RoofShape) -> list[Solid]:
    solids = []
    for side in shape.eaves:
        z = eave_soffit_z(house, shape, side)
        if z is None:
            continue
        axis = _FACES[side][0]
        face = house.place(side).outer
        edge = _eave_edge(shape, side)
        lo, hi = [0.0, 0.0, z], [0.0, 0.0, z + SOFFIT_IN]
        lo[axis], hi[axis] = min(face, edge), max(face, edge)
        lo[1 - axis], hi[1 - axis] = shape.along
        solids.append(
            Solid(f"eave-{side}", SolidKind.EAVE, "vented eave soffit" if shape.roof.soffit_vented else "eave soffit",
                  Box((lo[0], lo[1], lo[2]), (hi[0], hi[1], hi[2])), Crossing.NEVER, "roof", None, "soffit board",
                  side=side, space="outdoors", combustible=True)
        )  # fmt: skip
    return solids


def _sloped_ceiling(house: House, shape: RoofShape) -> list[Solid]:
    """Give the boards under the rafters of a cathedral ceiling."""
    width, depth = house.scene.kitchen.width_in, house.scene.kitchen.depth_in
    lo, hi = (-depth, 0.0) if shape.axis == 0 else (0.0, width)
    along = (0.0, width) if shape.axis == 0 else (-depth, 0.0)
    solids, at = [], 0.0
    for k, layer in enumerate(house.scene.ceiling.layers, 1):  # from the rafters down to the room
        at -= layer.thickness_in
        for slope in shape.slopes:
            ends = max(lo, slope.lo), min(hi, slope.hi)
            if ends[0] >= ends[1] or is_gap(layer.material):
                continue
            outline = slope.band(at * slope.stretch, (at + layer.thickness_in) * slope.stretch, *ends)
            tail = f"-{slope.name}" if slope.name else ""
            solids.append(
                Solid(f"ceiling-{k}{tail}", SolidKind.BOARD, f"ceiling {layer.material}",
                      Prism(shape.axis, *along, tuple(outline)), Crossing.PASS, "ceiling.layers", None, layer.material,
                      combustible=is_combustible(layer.material))
            )  # fmt: skip
    return solids


def roof_solids(house: House, shape: RoofShape) -> list[Solid]:
    """Give every solid of the roof; under a cathedral roof the sloped ceiling too."""
    solids = _framing(house, shape) + _ridge_board(shape) + _sheets(shape) + _soffits(house, shape)
    return solids + (_sloped_ceiling(house, shape) if is_cathedral(house) else [])
