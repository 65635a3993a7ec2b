"""How far a solid reaches along the axes."""

from __future__ import annotations

from routeviz.model.solids import Box, Cylinder, Shape, Vec3

__all__ = ["extent"]


def extent(shape: Shape) -> tuple[Vec3, Vec3]:
    """Give the least and greatest corner [in] of the box round a shape."""
    if isinstance(shape, Box):
        return shape.lo, shape.hi
    if isinstance(shape, Cylinder):
        (a, b), r = shape.centre, shape.radius
        low, high = [a - r, b - r], [a + r, b + r]
    else:
        low = [min(p[k] for p in shape.outline) for k in (0, 1)]
        high = [max(p[k] for p in shape.outline) for k in (0, 1)]
    low.insert(shape.axis, shape.start)
    high.insert(shape.axis, shape.end)
    return (low[0], low[1], low[2]), (high[0], high[1], high[2])
