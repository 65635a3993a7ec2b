"""The picture: an isometric of wall, joists, hood and duct, far things first.

True isometric from the right of the room: the three axes have the same scale, 30 degrees each way.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from itertools import pairwise

from routeviz.drawings import palette as ink
from routeviz.drawings.caps import cap_foot_in
from routeviz.drawings.flat import arc_points, ends_of
from routeviz.drawings.primitives import Anchor, Face, Point
from routeviz.drawings.sketch import Sketch
from routeviz.model.plan import Option, Plan
from routeviz.model.route import Part, PartKind, Route
from routeviz.model.scene import Scene, WallSide
from routeviz.model.solids import Box, Prism, Solid, SolidKind, Vec3

__all__ = ["draw_isometric", "project"]

_COS = math.sqrt(0.75)
_LIMB = math.sqrt(1.5)  # a ball of radius r shows as a circle of radius r times this
_CHUNK_IN = 5.0
_LONG_IN = 16.0  # members are shown in pieces no longer than this, so that the order holds


def project(point: Sequence[float]) -> Point:
    """Give the flat place [in] of a point: x runs right and down, the room comes left and down, z up."""
    x, room, z = point[0], -point[1], point[2]
    return _COS * (x - room), z - 0.5 * (x + room)


@dataclass(frozen=True, slots=True)
class _Piece:
    """Something to paint: the box round it, for the order, and how."""

    lo: Vec3
    hi: Vec3
    paint: Callable[[], None]


@dataclass(slots=True)
class _Picture:
    """Where the picture stands on the page."""

    sketch: Sketch
    origin: Point
    scale: float

    def at(self, point: Sequence[float]) -> Point:
        u, v = project(point)
        return self.origin[0] + u * self.scale, self.origin[1] + v * self.scale

    def face(self, corners: Sequence[Sequence[float]], fill: str, weight: float = ink.FINE, colour: str = ink.TIMBER_EDGE,
             name: str = "") -> None:  # fmt: skip
        self.sketch.path([self.at(c) for c in corners], weight, colour=colour, fill=fill, closed=True, name=name)


def draw_isometric(sketch: Sketch, plan: Plan, option: Option | None, room: tuple[float, float, float, float]) -> None:
    """Draw the picture into a part of the page (left, bottom, right, top) [mm], as large as it will go."""
    crop = _crop(plan, option)
    corners = [(x, y, z) for x in crop[0] for y in crop[1] for z in crop[2]]
    flat = [project(c) for c in corners]
    u0, u1, v0, v1 = min(p[0] for p in flat), max(p[0] for p in flat), min(p[1] for p in flat), max(p[1] for p in flat)
    scale = min((room[2] - room[0]) / (u1 - u0), (room[3] - room[1]) / (v1 - v0))
    origin = (
        (room[0] + room[2]) / 2 - scale * (u0 + u1) / 2,
        (room[1] + room[3]) / 2 - scale * (v0 + v1) / 2,
    )
    picture = _Picture(sketch, origin, scale)
    _wall(picture, crop, plan.scene)
    pieces = _members(picture, plan, option, crop) + _furniture(picture, plan.scene, crop)
    if option is not None:
        pieces += _duct(picture, option.route, plan)
    for piece in _far_first(pieces):
        piece.paint()
    if option is not None:
        _behind_wall(picture, option.route, crop[1][1])
    _numbers(picture, plan, option, crop)


_Crop = tuple[tuple[float, float], tuple[float, float], tuple[float, float]]


def _crop(plan: Plan, option: Option | None) -> _Crop:
    """Choose the part of the house to show [in]: the hood and the duct with a bay round them."""
    scene = plan.scene
    hood = scene.hood
    xs = [hood.centre_in - hood.width_in / 2 - 16.0, hood.centre_in + hood.width_in / 2 + 16.0]
    ys = [-scene.cooktop.depth_in - scene.cooktop.back_in - 4.0, 0.0]
    zs = [scene.cooktop.height_in - 3.0, scene.kitchen.ceiling_in + 10.0]
    if option is not None:
        for part in option.route.parts:
            half = max(part.section.width_in, part.section.height_in) / 2 + 3.0
            for end in (part.start, part.end):
                xs += [end[0] - half, end[0] + half]
                deepest = scene.wall(WallSide.HOOD).thickness_in
                ys += [min(end[1] - half, deepest), min(end[1] + half, deepest)]
                zs += [end[2] + half]
        if option.route.termination.direction[2] > 0.5:
            zs.append(cap_foot_in(option.route, plan.frame) + scene.cap.roof_stub_in + 6.0)
    return (min(xs), max(xs)), (min(ys), max(ys)), (min(zs), max(zs))


def _wall(picture: _Picture, crop: _Crop, scene: Scene) -> None:
    (x0, x1), _, (z0, _) = crop
    x0, x1, top = max(x0, 0.0), min(x1, scene.kitchen.width_in), scene.kitchen.ceiling_in
    picture.face(((x0, 0, z0), (x1, 0, z0), (x1, 0, top), (x0, 0, top)), ink.WALL, ink.MEDIUM, "#b9ad99")


def _members(picture: _Picture, plan: Plan, option: Option | None, crop: _Crop) -> list[_Piece]:
    found: list[_Piece] = []
    for solid in plan.frame.solids:
        wall_stud = solid.side is WallSide.HOOD and solid.kind in (SolidKind.STUD, SolidKind.JACK)
        over = solid.kind in (SolidKind.JOIST, SolidKind.RAFTER, SolidKind.BEAM, SolidKind.CHORD) and solid.side is None
        if wall_stud and solid.space == "kitchen":
            _stud_line(picture, solid, crop, plan.scene.kitchen.ceiling_in)
        elif over and isinstance(solid.shape, Box):
            found += _boxes(picture, solid, _short(solid, crop, plan.scene, option))
        elif over and isinstance(solid.shape, Prism) and solid.shape.axis != 2:
            found += _prisms(picture, solid, _short(solid, crop, plan.scene, option))
    return found


def _short(solid: Solid, crop: _Crop, scene: Scene, option: Option | None) -> _Crop:
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


def _stud_line(picture: _Picture, solid: Solid, crop: _Crop, ceiling: float) -> None:
    """Show a stud as a pale stripe on the wall's face."""
    (x0, x1), (z0, z1) = ends_of(solid.shape, 0), ends_of(solid.shape, 2)
    z0, z1 = max(z0, crop[2][0]), min(z1, ceiling)
    if x0 < max(crop[0][0], 0.0) or x1 > crop[0][1] or z1 <= z0:
        return
    picture.face(((x0, 0, z0), (x1, 0, z0), (x1, 0, z1), (x0, 0, z1)), ink.TIMBER, ink.HAIR)


def _boxes(picture: _Picture, solid: Solid, crop: _Crop) -> list[_Piece]:
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


def _box_piece(picture: _Picture, lo: Vec3, hi: Vec3, along: int, first: bool, last: bool, name: str) -> _Piece:
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

    return _Piece(lo, hi, paint)


def _prisms(picture: _Picture, solid: Solid, crop: _Crop) -> list[_Piece]:
    """Cut a sloped member into short pieces along the slope."""
    shape = solid.shape
    assert isinstance(shape, Prism)
    run = 1 if shape.axis == 0 else 0
    wide0, wide1 = max(shape.start, crop[shape.axis][0]), min(shape.end, crop[shape.axis][1])
    low, high = min(p[0] for p in shape.outline), max(p[0] for p in shape.outline)
    low, high = max(low, crop[run][0]), min(high, crop[run][1])
    if wide1 - wide0 < 0.2 or high - low < 0.5:
        return []
    from routeviz.drawings.flat import clipped

    count = max(1, math.ceil((high - low) / _LONG_IN))
    found: list[_Piece] = []
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
    picture: _Picture, axis: int, start: float, end: float, outline: Sequence[tuple[float, float]],
    lo: list[float], hi: list[float], ends: tuple[bool, bool], name: str,
) -> _Piece:  # fmt: skip
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

    return _Piece((lo[0], lo[1], lo[2]), (hi[0], hi[1], hi[2]), paint)


def _furniture(picture: _Picture, scene: Scene, crop: _Crop) -> list[_Piece]:
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
    found.append(_block(picture, plate[0], plate[1], (ink.DARK, ink.DARK, ink.DARK)))
    bottom = scene.hood_bottom_in
    if bottom is not None:
        half = hood.width_in / 2
        rim = (hood.centre_in - half, -hood.depth_in, bottom), (hood.centre_in + half, 0.0, bottom + hood.canopy_in)
        found.append(_block(picture, rim[0], rim[1], (ink.STEEL_LIGHT, ink.STEEL, ink.STEEL_DARK)))
        found.append(_canopy(picture, scene, bottom))
    return found


def _block(picture: _Picture, lo: Vec3, hi: Vec3, fills: tuple[str, str, str]) -> _Piece:
    def paint() -> None:
        (x0, y0, z0), (x1, y1, z1) = lo, hi
        picture.face(((x0, y0, z1), (x1, y0, z1), (x1, y1, z1), (x0, y1, z1)), fills[0], ink.FINE, ink.INK)
        picture.face(((x0, y0, z0), (x1, y0, z0), (x1, y0, z1), (x0, y0, z1)), fills[1], ink.FINE, ink.INK)
        picture.face(((x1, y0, z0), (x1, y1, z0), (x1, y1, z1), (x1, y0, z1)), fills[2], ink.FINE, ink.INK)

    return _Piece(lo, hi, paint)


def _canopy(picture: _Picture, scene: Scene, bottom: float) -> _Piece:
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

    return _Piece((x - half, -hood.depth_in, z0), (x + half, 0.0, z1), paint)


def _duct(picture: _Picture, route: Route, plan: Plan) -> list[_Piece]:
    found: list[_Piece] = []
    visible = [p for p in route.parts if p.length_in > 0]
    for at, part in enumerate(visible):
        points = _fine(part)
        for n, (a, b) in enumerate(pairwise(points)):
            if max(a[1], b[1]) > 0.5:
                continue
            last = at == len(visible) - 1 and n == len(points) - 2
            found.append(_tube(picture, part, a, b, last))
    if route.termination.direction[2] > 0.5 and any(p.kind is PartKind.CAP for p in route.parts):
        found += _roof_cap(picture, route, plan)
    return found


def _fine(part: Part) -> list[Vec3]:
    points = arc_points(part, 9)
    if len(points) > 2:
        return points
    count = max(1, math.ceil(part.length_in / _CHUNK_IN))
    return [
        tuple(s + (e - s) * n / count for s, e in zip(part.start, part.end, strict=True))  # type: ignore[misc]
        for n in range(count + 1)
    ]


def _tube(picture: _Picture, part: Part, a: Vec3, b: Vec3, last: bool) -> _Piece:
    r = max(part.section.width_in, part.section.height_in) / 2
    thin = min(part.section.width_in, part.section.height_in) / 2
    way = [q - p for p, q in zip(a, b, strict=True)]
    long = math.hypot(*way)
    reach = [r * math.sqrt(max(0.0, 1 - (w / long) ** 2)) for w in way]
    lo = tuple(min(p, q) - k for p, q, k in zip(a, b, reach, strict=True))
    hi = tuple(max(p, q) + k for p, q, k in zip(a, b, reach, strict=True))

    def paint() -> None:
        (u0, v0), (u1, v1) = picture.at(a), picture.at(b)
        limb = (thin if not part.section.is_round else r) * _LIMB * picture.scale
        step = math.hypot(u1 - u0, v1 - v0)
        rims = [_rim(picture, p, way, r, part) for p in (a, b)]
        if step > 1e-6:
            nx, ny = -(v1 - v0) / step * limb, (u1 - u0) / step * limb
            if not part.section.is_round:
                spread = max(abs((p[0] - u0) * nx + (p[1] - v0) * ny) / limb for p in rims[0])
                nx, ny = nx / limb * spread, ny / limb * spread
            quad = ((u0 + nx, v0 + ny), (u1 + nx, v1 + ny), (u1 - nx, v1 - ny), (u0 - nx, v0 - ny))
            for rim in rims:
                picture.sketch.path(rim, 0.0, fill=ink.STEEL, closed=True)
            picture.sketch.path(quad, 0.0, fill=ink.STEEL, closed=True, name=part.id)
            for p, q in ((quad[0], quad[1]), (quad[3], quad[2])):
                picture.sketch.line(p, q, ink.FINE, colour=ink.UP)
        if last:
            picture.sketch.path(rims[1], ink.FINE, colour=ink.UP, fill=ink.STEEL_LIGHT, closed=True)

    return _Piece((lo[0], lo[1], lo[2]), (hi[0], hi[1], hi[2]), paint)


def _rim(picture: _Picture, at: Sequence[float], way: Sequence[float], r: float, part: Part) -> list[Point]:
    long = math.hypot(*way)
    d = [w / long for w in way]
    k = min(range(3), key=lambda n: abs(d[n]))
    seed = [1.0 if n == k else 0.0 for n in range(3)]
    if part.wide is not None and abs(sum(x * y for x, y in zip(part.wide, d, strict=True))) < 0.5:
        seed = list(part.wide)
    share = sum(x * y for x, y in zip(seed, d, strict=True))
    a = [s - share * w for s, w in zip(seed, d, strict=True)]
    size = math.hypot(*a)
    a = [v / size for v in a]
    b = [d[1] * a[2] - d[2] * a[1], d[2] * a[0] - d[0] * a[2], d[0] * a[1] - d[1] * a[0]]
    if part.section.is_round:
        steps = [(r * math.cos(t * math.pi / 16), r * math.sin(t * math.pi / 16)) for t in range(32)]
    else:
        w, h = part.section.width_in / 2, part.section.height_in / 2
        steps = [(-w, -h), (w, -h), (w, h), (-w, h)]
    return [picture.at([p + u * m + v * n for p, m, n in zip(at, a, b, strict=True)]) for u, v in steps]


def _roof_cap(picture: _Picture, route: Route, plan: Plan) -> list[_Piece]:
    end = route.parts[-1]
    x, y, _ = route.termination.point
    z = cap_foot_in(route, plan.frame)
    r = max(end.section.width_in, end.section.height_in) / 2
    top = z + plan.scene.cap.roof_stub_in

    def disc(level: float, radius: float) -> list[Point]:
        return [
            picture.at((x + radius * math.cos(t * math.pi / 16), y + radius * math.sin(t * math.pi / 16), level))
            for t in range(32)
        ]

    def can(z0: float, z1: float, radius: float) -> _Piece:
        def paint() -> None:
            low, high = disc(z0, radius), disc(z1, radius)
            edge = sorted(range(32), key=lambda k: low[k][0])
            left, right = edge[0], edge[-1]
            skin = [low[k] for k in _arc(right, left, low)] + [high[left], high[right]]
            picture.sketch.path(skin, ink.FINE, colour=ink.UP, fill=ink.STEEL, closed=True, name="cap")
            picture.sketch.path(high, ink.FINE, colour=ink.UP, fill=ink.STEEL_LIGHT, closed=True, name="cap")

        return _Piece((x - radius, y - radius, z0), (x + radius, y + radius, z1), paint)

    return [can(z, top, r), can(top + 0.01, top + 2.5, r + 3.0)]


def _arc(a: int, b: int, ring: Sequence[Point]) -> list[int]:
    """Give the indexes from a to b on the lower side of a ring."""
    one = [(a + k) % len(ring) for k in range((b - a) % len(ring) + 1)]
    other = [(a - k) % len(ring) for k in range((a - b) % len(ring) + 1)]
    return min((one, other), key=lambda way: sum(ring[k][1] for k in way) / len(way))


def _behind_wall(picture: _Picture, route: Route, deepest: float) -> None:
    """Show dashed what runs inside or behind the hood wall."""
    for part in route.parts:
        points = [p for p in _fine(part) if -1.0 < p[1] <= deepest + _CHUNK_IN] if part.length_in > 0 else []
        if len(points) < 2:
            continue
        r = max(part.section.width_in, part.section.height_in) / 2
        way = [b - a for a, b in zip(points[0], points[-1], strict=True)]
        if math.hypot(*way) < 1e-6:
            continue
        for end in (points[0], points[-1]):
            picture.sketch.path(
                _rim(picture, end, way, r, part), ink.HAIR, colour=ink.UP, closed=True, dash=ink.HIDDEN_DASH
            )


def _numbers(picture: _Picture, plan: Plan, option: Option | None, crop: _Crop) -> None:
    """Write the joists' numbers at their ends towards the room."""
    for solid in plan.frame.solids:
        member = solid.member
        if solid.kind is not SolidKind.JOIST or member is None or not member.number or member.axis != 1:
            continue
        (x0, x1), (y0, y1), (z0, _) = (ends_of(solid.shape, k) for k in range(3))
        if (
            x0 < crop[0][0]
            or x1 > crop[0][1]
            or y1 < crop[1][0]
            or y0 > crop[1][1]
            or z0 > plan.scene.kitchen.ceiling_in + 14
        ):
            continue
        u, v = picture.at(((x0 + x1) / 2, max(y0, _short(solid, crop, plan.scene, option)[1][0]), z0))
        places = [
            ((u - 0.6, v - 3.0), Anchor.MIDDLE),
            ((u - 2.6, v - 1.0), Anchor.MIDDLE),
            ((u + 1.6, v - 3.6), Anchor.MIDDLE),
        ]
        picture.sketch.label(places, str(member.number), ink.SMALL, Face.NARROW_BOLD, halo=ink.WHITE)


def _far_first(pieces: Sequence[_Piece]) -> list[_Piece]:
    """Order pieces so that what is behind comes first; the viewer is right of, in front of and above everything."""
    count = len(pieces)
    boxes = [_screen(p) for p in pieces]
    waits: list[set[int]] = [set() for _ in range(count)]
    for i in range(count):
        for j in range(i + 1, count):
            if not _meet(boxes[i], boxes[j]):
                continue
            if _behind(pieces[i], pieces[j]):
                waits[j].add(i)
            elif _behind(pieces[j], pieces[i]):
                waits[i].add(j)
    depth = [p.lo[0] + p.hi[0] - p.lo[1] - p.hi[1] + p.lo[2] + p.hi[2] for p in pieces]
    left = set(range(count))
    order: list[_Piece] = []
    while left:
        ready = [k for k in left if not (waits[k] & left)] or list(left)
        chosen = min(ready, key=lambda k: (depth[k], k))
        order.append(pieces[chosen])
        left.remove(chosen)
    return order


def _behind(a: _Piece, b: _Piece) -> bool:
    e = 1e-6
    return a.hi[0] <= b.lo[0] + e or a.lo[1] >= b.hi[1] - e or a.hi[2] <= b.lo[2] + e


def _screen(piece: _Piece) -> tuple[float, float, float, float]:
    flat = [
        project((x, y, z))
        for x in (piece.lo[0], piece.hi[0])
        for y in (piece.lo[1], piece.hi[1])
        for z in (piece.lo[2], piece.hi[2])
    ]
    return min(p[0] for p in flat), min(p[1] for p in flat), max(p[0] for p in flat), max(p[1] for p in flat)


def _meet(a: tuple[float, float, float, float], b: tuple[float, float, float, float]) -> bool:
    return a[0] < b[2] and b[0] < a[2] and a[1] < b[3] and b[1] < a[3]
