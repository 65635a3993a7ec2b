"""Where points, segments and arcs stand against a shape: inside, how far, from where to where.

All results are exact but for floating point: point distances are closed forms; along a segment the distance to a
convex shape is a convex function and is minimised to 1e-10 of the segment; along an arc it is sampled and refined.
"""

from __future__ import annotations

import math
from collections.abc import Callable
from itertools import pairwise

from routeviz.model.solids import Box, Cylinder, Prism, Shape, Vec3

__all__ = [
    "arc_distance",
    "bounds",
    "clip",
    "contains",
    "nearest_point",
    "plane_axes",
    "point_distance",
    "segment_distance",
]

_GOLDEN = (math.sqrt(5) - 1) / 2


def plane_axes(axis: int) -> tuple[int, int]:
    """Give the two axes of an outline swept along `axis`, in axis order."""
    return ((1, 2), (0, 2), (0, 1))[axis]


def bounds(shape: Shape) -> Box:
    """Give the smallest axis-parallel box around a shape."""
    if isinstance(shape, Box):
        return shape
    u, v = plane_axes(shape.axis)
    lo, hi = [0.0] * 3, [0.0] * 3
    lo[shape.axis], hi[shape.axis] = shape.start, shape.end
    if isinstance(shape, Prism):
        for k, a in ((0, u), (1, v)):
            lo[a] = min(p[k] for p in shape.outline)
            hi[a] = max(p[k] for p in shape.outline)
    else:
        for k, a in ((0, u), (1, v)):
            lo[a] = shape.centre[k] - shape.radius
            hi[a] = shape.centre[k] + shape.radius
    return Box((lo[0], lo[1], lo[2]), (hi[0], hi[1], hi[2]))


def _nearest_on_polygon(outline: tuple[tuple[float, float], ...], x: float, y: float) -> tuple[float, float]:
    """Give the point of a filled polygon nearest to (x, y)."""
    inside = False
    best, where = math.inf, (x, y)
    n = len(outline)
    for i in range(n):
        (ax, ay), (bx, by) = outline[i], outline[(i + 1) % n]
        if (ay > y) != (by > y) and x < (bx - ax) * (y - ay) / (by - ay) + ax:
            inside = not inside
        dx, dy = bx - ax, by - ay
        size = dx * dx + dy * dy
        t = 0.0 if size == 0 else min(1.0, max(0.0, ((x - ax) * dx + (y - ay) * dy) / size))
        px, py = ax + t * dx, ay + t * dy
        d = (px - x) ** 2 + (py - y) ** 2
        if d < best:
            best, where = d, (px, py)
    return (x, y) if inside else where


def nearest_point(shape: Shape, point: Vec3) -> Vec3:
    """Give the point of the filled shape that is nearest to `point` (itself, when inside)."""
    if isinstance(shape, Box):
        x, y, z = (min(max(p, a), b) for p, a, b in zip(point, shape.lo, shape.hi, strict=True))
        return (x, y, z)
    u, v = plane_axes(shape.axis)
    out = [0.0] * 3
    out[shape.axis] = min(max(point[shape.axis], shape.start), shape.end)
    if isinstance(shape, Prism):
        out[u], out[v] = _nearest_on_polygon(shape.outline, point[u], point[v])
    else:
        dx, dy = point[u] - shape.centre[0], point[v] - shape.centre[1]
        size = math.hypot(dx, dy)
        k = 1.0 if size <= shape.radius else shape.radius / size
        out[u], out[v] = shape.centre[0] + dx * k, shape.centre[1] + dy * k
    return (out[0], out[1], out[2])


def point_distance(shape: Shape, point: Vec3) -> float:
    """Give the distance from a point to the filled shape [in]; 0 inside.

    Examples
    --------
    >>> point_distance(Box((0, 0, 0), (1, 1, 1)), (4, 5, 0.5))
    5.0
    """
    return math.dist(nearest_point(shape, point), point)


def contains(shape: Shape, point: Vec3, *, tolerance_in: float = 1e-9) -> bool:
    """Whether the closed shape holds the point."""
    return point_distance(shape, point) <= tolerance_in


def narrow(f: Callable[[float], float], lo: float, hi: float, *, within: float = 1e-10) -> float:
    """Give the place of the least value of a function with one valley on [lo, hi], by golden section."""
    c, d = hi - _GOLDEN * (hi - lo), lo + _GOLDEN * (hi - lo)
    fc, fd = f(c), f(d)
    while hi - lo > within:
        if fc <= fd:
            hi, d, fd = d, c, fc
            c = hi - _GOLDEN * (hi - lo)
            fc = f(c)
        else:
            lo, c, fc = c, d, fd
            d = lo + _GOLDEN * (hi - lo)
            fd = f(d)
    return (lo + hi) / 2


def _least(f: Callable[[float], float], lo: float, hi: float) -> float:
    return min((lo, hi, narrow(f, lo, hi)), key=f)


def segment_distance(shape: Shape, a: Vec3, b: Vec3) -> tuple[float, Vec3, Vec3]:
    """Give the least distance [in] from a segment to a convex shape, with the points on segment and shape.

    A prism with a re-entrant outline is searched piecewise, which finds the least to the same precision.
    """

    def at(t: float) -> Vec3:
        return (a[0] + t * (b[0] - a[0]), a[1] + t * (b[1] - a[1]), a[2] + t * (b[2] - a[2]))

    inside = clip(shape, a, b)
    if inside is not None:
        p = at((inside[0] + inside[1]) / 2)
        return 0.0, p, p
    pieces = 1 if not isinstance(shape, Prism) or len(shape.outline) <= 4 else 16

    def away(t: float) -> float:
        return point_distance(shape, at(t))

    t = min((_least(away, i / pieces, (i + 1) / pieces) for i in range(pieces)), key=away)
    p = at(t)
    q = nearest_point(shape, p)
    return math.dist(p, q), p, q


def arc_distance(shape: Shape, corner: Vec3, before: Vec3, after: Vec3, radius_in: float) -> tuple[float, Vec3, Vec3]:
    """Give the least distance [in] from an elbow's centre-line arc to a shape, with both points.

    Parameters
    ----------
    corner : Vec3
        Where the two straights' centre lines meet.
    before, after : Vec3
        Unit directions of the run before and after the elbow.
    radius_in : float
        Centre-line radius.
    """
    cosine = sum(p * q for p, q in zip(before, after, strict=True))
    angle = math.acos(max(-1.0, min(1.0, cosine)))
    cut = radius_in * math.tan(angle / 2)
    start = tuple(c - cut * d for c, d in zip(corner, before, strict=True))
    inward = tuple((q - cosine * p) / math.sin(angle) for p, q in zip(before, after, strict=True))

    def at(t: float) -> Vec3:
        w = t * angle
        along, side = radius_in * math.sin(w), radius_in * (1 - math.cos(w))
        x, y, z = (s + along * d + side * n for s, d, n in zip(start, before, inward, strict=True))
        return (x, y, z)

    def away(t: float) -> float:
        return point_distance(shape, at(t))

    samples = 12
    best = min(range(samples + 1), key=lambda i: away(i / samples))
    t = _least(away, max(0.0, (best - 1) / samples), min(1.0, (best + 1) / samples))
    p = at(t)
    q = nearest_point(shape, p)
    return math.dist(p, q), p, q


def clip(shape: Shape, a: Vec3, b: Vec3) -> tuple[float, float] | None:
    """Give the part of a segment inside a shape as two fractions of it, or None when it stays outside.

    For a re-entrant prism the first entry and the last exit are given.

    Examples
    --------
    >>> clip(Box((0, 0, 0), (1, 1, 1)), (0.5, 0.5, -1), (0.5, 0.5, 3))
    (0.25, 0.5)
    """
    if isinstance(shape, Box):
        return _clip_slabs(tuple(zip(shape.lo, shape.hi, strict=True)), a, b)
    k = shape.axis
    range_ = _clip_slabs(((shape.start, shape.end),), (a[k],), (b[k],))
    if range_ is None:
        return None
    u, v = plane_axes(k)
    flat = (
        _clip_polygon(shape.outline, (a[u], a[v]), (b[u], b[v]))
        if isinstance(shape, Prism)
        else _clip_disc(shape, (a[u], a[v]), (b[u], b[v]))
    )
    if flat is None:
        return None
    lo, hi = max(range_[0], flat[0]), min(range_[1], flat[1])
    return (lo, hi) if lo < hi else None


def _clip_slabs(
    slabs: tuple[tuple[float, float], ...], a: tuple[float, ...], b: tuple[float, ...]
) -> tuple[float, float] | None:
    lo, hi = 0.0, 1.0
    for (low, high), p, q in zip(slabs, a, b, strict=True):
        d = q - p
        if d == 0:
            if not low < p < high:
                return None
            continue
        t0, t1 = sorted(((low - p) / d, (high - p) / d))
        lo, hi = max(lo, t0), min(hi, t1)
    return (lo, hi) if lo < hi else None


def _clip_polygon(
    outline: tuple[tuple[float, float], ...], a: tuple[float, float], b: tuple[float, float]
) -> tuple[float, float] | None:
    def inside(t: float) -> bool:
        x, y = a[0] + t * (b[0] - a[0]), a[1] + t * (b[1] - a[1])
        return _nearest_on_polygon(outline, x, y) == (x, y)

    cuts = [0.0, 1.0]
    dx, dy = b[0] - a[0], b[1] - a[1]
    for (px, py), (qx, qy) in zip(outline, (*outline[1:], outline[0]), strict=True):
        ex, ey = qx - px, qy - py
        det = dx * ey - dy * ex
        if det == 0:
            continue
        t = ((px - a[0]) * ey - (py - a[1]) * ex) / det
        s = ((px - a[0]) * dy - (py - a[1]) * dx) / det
        if 0 < t < 1 and -1e-12 <= s <= 1 + 1e-12:
            cuts.append(t)
    cuts.sort()
    within = [(p, q) for p, q in pairwise(cuts) if q > p and inside((p + q) / 2)]
    return (within[0][0], within[-1][1]) if within else None


def _clip_disc(shape: Cylinder, a: tuple[float, float], b: tuple[float, float]) -> tuple[float, float] | None:
    px, py = a[0] - shape.centre[0], a[1] - shape.centre[1]
    dx, dy = b[0] - a[0], b[1] - a[1]
    size, half, rest = dx * dx + dy * dy, px * dx + py * dy, px * px + py * py - shape.radius**2
    if size == 0:
        return (0.0, 1.0) if rest < 0 else None
    root = half * half - size * rest
    if root <= 0:
        return None
    lo, hi = max(0.0, (-half - math.sqrt(root)) / size), min(1.0, (-half + math.sqrt(root)) / size)
    return (lo, hi) if lo < hi else None
