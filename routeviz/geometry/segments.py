"""Where a straight line enters and leaves a shape."""

from __future__ import annotations

import math

from routeviz.geometry.shapes import Point2, convex_parts, plane_axes
from routeviz.model.solids import Box, Cylinder, Shape, Vec3

__all__ = ["clip", "clips"]

Span = tuple[float, float]
_TINY = 1e-12


def _slab(start: float, step: float, lo: float, hi: float) -> Span | None:
    """Give the fractions of a line between two parallel planes."""
    if abs(step) < _TINY:
        return (0.0, 1.0) if lo <= start <= hi else None
    a, b = (lo - start) / step, (hi - start) / step
    return (min(a, b), max(a, b))


def _meet(*spans: Span | None) -> Span | None:
    lo, hi = 0.0, 1.0
    for span in spans:
        if span is None:
            return None
        lo, hi = max(lo, span[0]), min(hi, span[1])
    return (lo, hi) if lo <= hi else None


def _in_convex(start: Point2, step: Point2, outline: tuple[Point2, ...]) -> Span | None:
    """Clip a line in the plane against a convex outline of either sense."""
    area = sum(a[0] * b[1] - b[0] * a[1] for a, b in zip(outline, outline[1:] + outline[:1], strict=True))
    sense = 1.0 if area > 0 else -1.0
    lo, hi = -math.inf, math.inf
    for a, b in zip(outline, outline[1:] + outline[:1], strict=True):
        nx, ny = -(b[1] - a[1]) * sense, (b[0] - a[0]) * sense  # points inwards
        size = math.hypot(nx, ny)
        if size == 0.0:
            continue
        height = ((start[0] - a[0]) * nx + (start[1] - a[1]) * ny) / size
        slope = (step[0] * nx + step[1] * ny) / size
        if abs(slope) < _TINY:
            if height < -1e-9:
                return None
        elif slope > 0:
            lo = max(lo, -height / slope)
        else:
            hi = min(hi, -height / slope)
    return (lo, hi) if lo <= hi else None


def _in_circle(start: Point2, step: Point2, centre: Point2, radius: float) -> Span | None:
    x, y = start[0] - centre[0], start[1] - centre[1]
    a, b, c = step[0] ** 2 + step[1] ** 2, x * step[0] + y * step[1], x * x + y * y - radius * radius
    if a < _TINY:
        return (-math.inf, math.inf) if c <= 0 else None
    root = b * b - a * c
    if root < 0:
        return None
    root = math.sqrt(root)
    return ((-b - root) / a, (-b + root) / a)


def clips(shape: Shape, a: Vec3, b: Vec3) -> tuple[Span, ...]:
    """Give every part of the segment from `a` to `b` that lies in a shape, as fractions of its length, in order."""
    step = (b[0] - a[0], b[1] - a[1], b[2] - a[2])
    if isinstance(shape, Box):
        span = _meet(*(_slab(a[i], step[i], shape.lo[i], shape.hi[i]) for i in range(3)))
        return (span,) if span else ()
    u, v = plane_axes(shape.axis)
    slab = _slab(a[shape.axis], step[shape.axis], shape.start, shape.end)
    flat, move = (a[u], a[v]), (step[u], step[v])
    if isinstance(shape, Cylinder):
        span = _meet(slab, _in_circle(flat, move, shape.centre, shape.radius))
        return (span,) if span else ()
    return _joined([_meet(slab, _in_convex(flat, move, part.outline)) for part in convex_parts(shape)])


def _joined(spans: list[Span | None]) -> tuple[Span, ...]:
    found: list[Span] = []
    for lo, hi in sorted(s for s in spans if s is not None):
        if found and lo <= found[-1][1] + 1e-9:
            found[-1] = (found[-1][0], max(found[-1][1], hi))
        else:
            found.append((lo, hi))
    return tuple(found)


def clip(shape: Shape, a: Vec3, b: Vec3) -> Span | None:
    """Give where the segment from `a` to `b` first enters and last leaves a shape, as fractions of its length.

    Returns
    -------
    tuple of float or None
        None when the segment stays outside. A segment that only touches gives two equal fractions.

    Examples
    --------
    >>> clip(Box((0.0, 0.0, 0.0), (1.0, 1.0, 1.0)), (-1.0, 0.5, 0.5), (3.0, 0.5, 0.5))
    (0.25, 0.5)
    """
    found = clips(shape, a, b)
    return (found[0][0], found[-1][1]) if found else None
