"""Members, hood and counter of the isometric, cut into pieces short enough to be ordered far first."""

from __future__ import annotations

import math
from collections.abc import Sequence

from routeviz.drawings import palette as ink
from routeviz.drawings.flat import clipped, ends_of
from routeviz.drawings.isometric_order import Crop, Picture, Piece
from routeviz.model.plan import Option, Plan
from routeviz.model.scene import Scene, WallSide
from routeviz.model.solids import Box, Prism, Solid, SolidKind, Vec3

__all__ = ["furniture", "members", "short"]

_LONG_IN = 16.0  # members are shown in pieces no longer than this, so that the order holds


def members(picture: Picture, plan: Plan, option: Option | None, crop: Crop) -> list[Piece]:
    """Paint the studs on the wall at once and give the pieces of joists, rafters, chords and beams."""
    found: list[Piece] = []
    for solid in plan.frame.solids:
        wall_stud = solid.side is WallSide.HOOD and solid.kind in (SolidKind.STUD, SolidKind.JACK)
        over = solid.kind in (SolidKind.JOIST, SolidKind.RAFTER, SolidKind.BEAM, SolidKind.CHORD) and solid.side is None
        if wall_stud and solid.space == "kitchen":
            _stud_line(picture, solid, crop, plan.scene.kitchen.ceiling_in)
        elif over and isinstance(solid.shape, Box):
            found += _boxes(picture, solid, short(solid, crop, plan.scene, option))
        elif over and isinstance(solid.shape, Prism) and solid.shape.axis != 2:
            found += _prisms(picture, solid, short(solid, crop, plan.scene, option))
    return found


def short(solid: Solid, crop: Crop, scene: Scene, option: Option | None) -> Crop:
    """Cut a member that stands between the viewer and the riser short behind the duct, so that hood and duct show."""
    riser = scene.hood.centre_in + scene.hood.outlet.across_in
    reach = max(scene.hood.outlet.out_in, 4.0) + scene.hood.outlet.section.width_in / 2 + 3.0
    if option is not None:
        first = option.route.parts[0]
        riser = first.start[0]
        reach = max(-p.start[1] for p in option.route.parts) + first.section.width_in / 2 + 3.0
    if sum(ends_of(solid.shape, 0)) / 2 <= riser:
        return crop
    return crop[0], (max(crop[1][0], -reach), crop[1][1]), crop[2]


def _stud_line(picture: Picture, solid: Solid, crop: Crop, ceiling: float) -> None:
    """Show a stud as a pale stripe on the wall's face."""
    (x0, x1), (z0, z1) = ends_of(solid.shape, 0), ends_of(solid.shape, 2)
    z0, z1 = max(z0, crop[2][0]), min(z1, ceiling)
    if x0 < max(crop[0][0], 0.0) or x1 > crop[0][1] or z1 <= z0:
        return
    picture.face(((x0, 0, z0), (x1, 0, z0), (x1, 0, z1), (x0, 0, z1)), ink.TIMBER, ink.HAIR)


def _boxes(picture: Picture, solid: Solid, crop: Crop) -> list[Piece]:
    """Cut a member to the crop and into short pieces, so that far-first works with the duct between them."""
    lo, hi = [], []
    for k in range(3):
        a, b = ends_of(solid.shape, k)
        a, b = max(a, crop[k][0]), min(b, crop[k][1])
        if b - a < 0.2:
            return []
        lo.append(a)
        hi.append(b)
    along = max(range(3), key=lambda k: hi[k] - lo[k])
    count = max(1, math.ceil((hi[along] - lo[along]) / _LONG_IN))
    found = []
    for n in range(count):
        from_, to = list(lo), list(hi)
        from_[along] = lo[along] + (hi[along] - lo[along]) * n / count
        to[along] = lo[along] + (hi[along] - lo[along]) * (n + 1) / count
        low, high = (from_[0], from_[1], from_[2]), (to[0], to[1], to[2])
        found.append(_box_piece(picture, low, high, along, n == 0, n == count - 1, solid.id))
    return found


def _box_piece(picture: Picture, lo: Vec3, hi: Vec3, along: int, first: bool, last: bool, name: str) -> Piece:
    def paint() -> None:
        (x0, y0, z0), (x1, y1, z1) = lo, hi
        faces = [
            (2, ((x0, y0, z1), (x1, y0, z1), (x1, y1, z1), (x0, y1, z1)), "#ead0a4"),
            (1, ((x0, y0, z0), (x1, y0, z0), (x1, y0, z1), (x0, y0, z1)), "#e0c08c"),
            (0, ((x1, y0, z0), (x1, y1, z0), (x1, y1, z1), (x1, y0, z1)), "#c9a468"),
        ]
        for axis, corners, fill in faces:
            if axis == along and not ((axis == 0 and last) or (axis == 1 and first) or (axis == 2 and last)):
                continue
            picture.sketch.path([picture.at(c) for c in corners], 0.0, fill=fill, closed=True, name=name)
            edges = list(zip(corners, (*corners[1:], corners[0]), strict=True))
            for a, b in edges:
                lengthwise = abs(a[along] - b[along]) > 1e-9
                at_end = (abs(a[along] - lo[along]) < 1e-9 and first) or (abs(a[along] - hi[along]) < 1e-9 and last)
                if lengthwise or at_end:
                    picture.sketch.line(picture.at(a), picture.at(b), ink.HAIR, colour=ink.TIMBER_EDGE)

    return Piece(lo, hi, paint)


def _prisms(picture: Picture, solid: Solid, crop: Crop) -> list[Piece]:
    """Cut a sloped member into short pieces along the slope."""
    shape = solid.shape
    assert isinstance(shape, Prism)
    run = 1 if shape.axis == 0 else 0
    wide0, wide1 = max(shape.start, crop[shape.axis][0]), min(shape.end, crop[shape.axis][1])
    low, high = min(p[0] for p in shape.outline), max(p[0] for p in shape.outline)
    low, high = max(low, crop[run][0]), min(high, crop[run][1])
    if wide1 - wide0 < 0.2 or high - low < 0.5:
        return []

    count = max(1, math.ceil((high - low) / _LONG_IN))
    found: list[Piece] = []
    for n in range(count):
        a, b = low + (high - low) * n / count, low + (high - low) * (n + 1) / count
        for piece in clipped(shape.outline, (a, crop[2][0], b, crop[2][1])):
            zs = [p[1] for p in piece]
            lo, hi = [0.0, 0.0, min(zs)], [0.0, 0.0, max(zs)]
            lo[shape.axis], hi[shape.axis], lo[run], hi[run] = wide0, wide1, a, b
            found.append(
                _slope_piece(picture, shape.axis, wide0, wide1, piece, lo, hi, (n == 0, n == count - 1), solid.id)
            )
    return found


def _slope_piece(
    picture: Picture, axis: int, start: float, end: float, outline: Sequence[tuple[float, float]],
    lo: list[float], hi: list[float], ends: tuple[bool, bool], name: str,
) -> Piece:  # fmt: skip
    def point(at: float, p: tuple[float, float]) -> Vec3:
        return (at, p[0], p[1]) if axis == 0 else (p[0], at, p[1])

    def paint() -> None:
        near_side = end if axis == 0 else start
        picture.sketch.path([picture.at(point(near_side, p)) for p in outline], 0.0, fill="#c9a468" if axis == 0 else "#e0c08c",
                            closed=True, name=name)  # fmt: skip
        top = sorted(outline, key=lambda p: (p[0], p[1]))
        left = max((p for p in top if abs(p[0] - top[0][0]) < 1e-6), key=lambda p: p[1])
        right = max((p for p in top if abs(p[0] - top[-1][0]) < 1e-6), key=lambda p: p[1])
        upper = (point(start, left), point(end, left), point(end, right), point(start, right))
        picture.sketch.path([picture.at(p) for p in upper], 0.0, fill="#ead0a4", closed=True, name=name)
        for a, b in zip(outline, (*outline[1:], outline[0]), strict=True):
            at_cut = abs(a[0] - b[0]) < 1e-6
            if (
                not at_cut
                or (ends[0] and abs(a[0] - lo[1 - axis]) < 1e-6)
                or (ends[1] and abs(a[0] - hi[1 - axis]) < 1e-6)
            ):
                picture.sketch.line(picture.at(point(near_side, a)), picture.at(point(near_side, b)), ink.HAIR,
                                    colour=ink.TIMBER_EDGE)  # fmt: skip
        far_side = start if axis == 0 else end
        picture.sketch.line(picture.at(point(far_side, left)), picture.at(point(far_side, right)), ink.HAIR,
                            colour=ink.TIMBER_EDGE)  # fmt: skip

    return Piece((lo[0], lo[1], lo[2]), (hi[0], hi[1], hi[2]), paint)


def furniture(picture: Picture, scene: Scene, crop: Crop) -> list[Piece]:
    """Give counter, cooktop and hood."""
    (x0, x1), _, (z0, _) = crop
    cook, hood = scene.cooktop, scene.hood
    x0, x1 = max(x0, 0.0), min(x1, scene.kitchen.width_in)
    deep = -(cook.depth_in + cook.back_in + 2.0)
    top = cook.height_in
    found = [_block(picture, (x0, deep, z0), (x1, 0.0, top), ("#f6f2ea", "#e4ddd0", "#d4ccbd"))]
    half = cook.width_in / 2
    plate = (
        (cook.centre_in - half, -cook.back_in - cook.depth_in, top),
        (cook.centre_in + half, -cook.back_in, top + 0.4),
    )
    found += _cropped_block(picture, plate, crop, (ink.DARK, ink.DARK, ink.DARK))
    bottom = scene.hood_bottom_in
    if bottom is not None:
        half = hood.width_in / 2
        rim = (hood.centre_in - half, -hood.depth_in, bottom), (hood.centre_in + half, 0.0, bottom + hood.canopy_in)
        found.append(_block(picture, rim[0], rim[1], (ink.STEEL_LIGHT, ink.STEEL, ink.STEEL_DARK)))
        found.append(_canopy(picture, scene, bottom))
    return found


def _cropped_block(picture: Picture, ends: tuple[Vec3, Vec3], crop: Crop, fills: tuple[str, str, str]) -> list[Piece]:
    """Give what of a block lies in the part of the house that is shown."""
    (x0, y0, z0), (x1, y1, z1) = (
        tuple(pick(at, edge) for at, edge in zip(end, (side[k] for side in crop), strict=True))
        for k, (pick, end) in enumerate(zip((max, min), ends, strict=True))
    )
    inside = x0 < x1 and y0 < y1 and z0 < z1
    return [_block(picture, (x0, y0, z0), (x1, y1, z1), fills)] if inside else []


def _block(picture: Picture, lo: Vec3, hi: Vec3, fills: tuple[str, str, str]) -> Piece:
    def paint() -> None:
        (x0, y0, z0), (x1, y1, z1) = lo, hi
        picture.face(((x0, y0, z1), (x1, y0, z1), (x1, y1, z1), (x0, y1, z1)), fills[0], ink.FINE, ink.INK)
        picture.face(((x0, y0, z0), (x1, y0, z0), (x1, y0, z1), (x0, y0, z1)), fills[1], ink.FINE, ink.INK)
        picture.face(((x1, y0, z0), (x1, y1, z0), (x1, y1, z1), (x1, y0, z1)), fills[2], ink.FINE, ink.INK)

    return Piece(lo, hi, paint)


def _canopy(picture: Picture, scene: Scene, bottom: float) -> Piece:
    hood = scene.hood
    half, z0, z1 = hood.width_in / 2, bottom + hood.canopy_in, bottom + hood.body_in
    cover = hood.cover
    neck = min(half, cover.width_in / 2 if cover else hood.outlet.section.width_in / 2 + 2.0)
    deep = min(hood.depth_in, cover.depth_in if cover else hood.depth_in / 2)
    x = hood.centre_in

    def paint() -> None:
        a, b, c, d = (
            (x - half, -hood.depth_in, z0),
            (x + half, -hood.depth_in, z0),
            (x + neck, -deep, z1),
            (x - neck, -deep, z1),
        )
        picture.face((a, b, c, d), ink.STEEL_LIGHT, ink.FINE, ink.INK)
        e, f = (x + half, 0.0, z0), (x + neck, 0.0, z1)
        picture.face((b, e, f, c), ink.STEEL_DARK, ink.FINE, ink.INK)
        picture.face((c, f, (x - neck, 0.0, z1), d), ink.STEEL, ink.FINE, ink.INK)

    return Piece((x - half, -hood.depth_in, z0), (x + half, 0.0, z1), paint)
