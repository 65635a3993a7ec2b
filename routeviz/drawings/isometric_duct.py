"""The duct and its cap in the isometric."""

from __future__ import annotations

import math
from collections.abc import Sequence
from itertools import pairwise

from routeviz.drawings import palette as ink
from routeviz.drawings.caps import cap_foot_in
from routeviz.drawings.flat import arc_points
from routeviz.drawings.isometric_order import Picture, Piece
from routeviz.drawings.primitives import Point
from routeviz.model.plan import Plan
from routeviz.model.route import Part, Route
from routeviz.model.solids import Vec3

__all__ = ["behind_wall", "duct"]

_LIMB = math.sqrt(1.5)  # a ball of radius r shows as a circle of radius r times this
_CHUNK_IN = 5.0
_ARC = 9  # pieces of an elbow
_EDGE_MM = 0.2  # half a line's width and a little [mm]


def duct(picture: Picture, route: Route, plan: Plan) -> list[Piece]:
    """Give the pieces of the duct before the hood wall, and a roof cap; what runs in or behind the wall is dashed later."""
    found: list[Piece] = []
    visible = [p for p in route.parts if p.length_in > 0]
    for at, part in enumerate(visible):
        points = _fine(part)
        for n, (a, b) in enumerate(pairwise(points)):
            if min(a[1], b[1]) > -1e-6 and max(a[1], b[1]) > 0.5:
                continue
            enters = max(a[1], b[1]) > 0.5
            if enters:
                a, b = _before_wall(a, b)
            last = enters or (at == len(visible) - 1 and n == len(points) - 2)
            found.append(_tube(picture, part, a, b, last))
    if route.termination.direction[2] > 0.5 and route.capped:
        found += _roof_cap(picture, route, plan)
    return found


def _before_wall(a: Vec3, b: Vec3) -> tuple[Vec3, Vec3]:
    """Cut a stretch off where it goes into the hood wall."""
    share = a[1] / (a[1] - b[1])
    face: Vec3 = (a[0] + share * (b[0] - a[0]), 0.0, a[2] + share * (b[2] - a[2]))
    return (a, face) if a[1] < b[1] else (face, b)


def _fine(part: Part) -> list[Vec3]:
    points = arc_points(part, _ARC)
    if len(points) > 2:
        return points
    count = max(1, math.ceil(part.length_in / _CHUNK_IN))
    return [
        tuple(s + (e - s) * n / count for s, e in zip(part.start, part.end, strict=True))  # type: ignore[misc]
        for n in range(count + 1)
    ]


def _tube(picture: Picture, part: Part, a: Vec3, b: Vec3, last: bool) -> Piece:
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
        inner = [
            _rim(picture, p, way, r - _EDGE_MM / picture.scale, part) for p in (a, b)
        ]  # not over a neighbour's edges
        if step > 1e-6:
            nx, ny = -(v1 - v0) / step * limb, (u1 - u0) / step * limb
            if not part.section.is_round:
                spread = max(abs((p[0] - u0) * nx + (p[1] - v0) * ny) / limb for p in rims[0])
                nx, ny = nx / limb * spread, ny / limb * spread
            quad = ((u0 + nx, v0 + ny), (u1 + nx, v1 + ny), (u1 - nx, v1 - ny), (u0 - nx, v0 - ny))
            for rim in inner:
                picture.sketch.path(rim, 0.0, fill=ink.STEEL, closed=True)
            picture.sketch.path(quad, 0.0, fill=ink.STEEL, closed=True, name=part.id)
            more = (
                limb * math.tan(math.radians(part.angle_deg) / (2 * _ARC)) / step
            )  # so that an elbow's outer edges meet
            for p, q in ((quad[0], quad[1]), (quad[3], quad[2])):
                dx, dy = more * (q[0] - p[0]), more * (q[1] - p[1])
                picture.sketch.line((p[0] - dx, p[1] - dy), (q[0] + dx, q[1] + dy), ink.FINE, colour=ink.UP)
        if last:
            picture.sketch.path(rims[1], ink.FINE, colour=ink.UP, fill=ink.STEEL_LIGHT, closed=True)

    return Piece((lo[0], lo[1], lo[2]), (hi[0], hi[1], hi[2]), paint)


def _rim(picture: Picture, at: Sequence[float], way: Sequence[float], r: float, part: Part) -> list[Point]:
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


def _roof_cap(picture: Picture, route: Route, plan: Plan) -> list[Piece]:
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

    def can(z0: float, z1: float, radius: float) -> Piece:
        def paint() -> None:
            low, high = disc(z0, radius), disc(z1, radius)
            edge = sorted(range(32), key=lambda k: low[k][0])
            left, right = edge[0], edge[-1]
            skin = [low[k] for k in _arc(right, left, low)] + [high[left], high[right]]
            picture.sketch.path(skin, ink.FINE, colour=ink.UP, fill=ink.STEEL, closed=True, name="cap")
            picture.sketch.path(high, ink.FINE, colour=ink.UP, fill=ink.STEEL_LIGHT, closed=True, name="cap")

        return Piece((x - radius, y - radius, z0), (x + radius, y + radius, z1), paint)

    return [can(z, top, r), can(top + 0.01, top + 2.5, r + 3.0)]


def _arc(a: int, b: int, ring: Sequence[Point]) -> list[int]:
    """Give the indexes from a to b on the lower side of a ring."""
    one = [(a + k) % len(ring) for k in range((b - a) % len(ring) + 1)]
    other = [(a - k) % len(ring) for k in range((a - b) % len(ring) + 1)]
    return min((one, other), key=lambda way: sum(ring[k][1] for k in way) / len(way))


def _limbs(picture: Picture, part: Part, a: Vec3, b: Vec3, way: Sequence[float], r: float) -> list[tuple[Point, Point]]:
    """Give the two outer edges of a run as they show; none where one looks along it."""
    (u0, v0), (u1, v1) = picture.at(a), picture.at(b)
    step = math.hypot(u1 - u0, v1 - v0)
    if step < 1e-6:
        return []
    nx, ny = -(v1 - v0) / step, (u1 - u0) / step
    spread = max(abs((p[0] - u0) * nx + (p[1] - v0) * ny) for p in _rim(picture, a, way, r, part))
    return [
        ((u0 + s * nx * spread, v0 + s * ny * spread), (u1 + s * nx * spread, v1 + s * ny * spread)) for s in (1, -1)
    ]


def behind_wall(picture: Picture, route: Route, deepest: float) -> None:
    """Show dashed what runs inside or behind the hood wall."""
    for part in route.parts:
        points = [p for p in _fine(part) if 0.0 <= p[1] <= deepest + _CHUNK_IN] if part.length_in > 0 else []
        if part.length_in > 0 and part.start[1] < 0.0 < part.end[1]:
            points.insert(0, _before_wall(part.start, part.end)[1])
        if len(points) < 2:
            continue
        r = max(part.section.width_in, part.section.height_in) / 2
        way = [b - a for a, b in zip(points[0], points[-1], strict=True)]
        if math.hypot(*way) < 1e-6:
            continue
        for a, b in _limbs(picture, part, points[0], points[-1], way, r):
            picture.sketch.line(a, b, ink.HAIR, colour=ink.UP, dash=ink.HIDDEN_DASH)
        for end in (points[0], points[-1]):
            picture.sketch.path(
                _rim(picture, end, way, r, part), ink.HAIR, colour=ink.UP, closed=True, dash=ink.HIDDEN_DASH
            )
