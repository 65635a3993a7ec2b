"""Decompositions of prisms: convex parts, and stairs of boxes that cover them.

Shapes are the closed sets of `routeviz.model.solids`; all lengths are inches, all results exact up to rounding.
"""

from __future__ import annotations

import itertools
import math
from functools import lru_cache

from routeviz.geometry.measure import bounds
from routeviz.model.solids import Box, Prism, Shape, Vec3

__all__ = ["boxes_overlap", "convex_parts", "stair_boxes"]

Point2 = tuple[float, float]
_TINY = 1e-9


def lift(axis: int, along: float, flat: Point2) -> Vec3:
    """Give the point with coordinate `along` on `axis` and `flat` in the two other axes."""
    if axis == 0:
        return (along, flat[0], flat[1])
    return (flat[0], along, flat[1]) if axis == 1 else (flat[0], flat[1], along)


def boxes_overlap(a: Box, b: Box, *, margin: float = 0.0) -> bool:
    """Whether two boxes come nearer than `margin` on every axis; touching boxes do not overlap."""
    return all(
        a.lo[i] < b.hi[i] + margin - _TINY and b.lo[i] < a.hi[i] + margin - _TINY for i in range(3)
    )  # fmt: skip


def _turns(outline: tuple[Point2, ...]) -> list[float]:
    n = len(outline)
    found = []
    for i in range(n):
        (ax, ay), (bx, by), (cx, cy) = outline[i - 1], outline[i], outline[(i + 1) % n]
        found.append((bx - ax) * (cy - by) - (by - ay) * (cx - bx))
    return found


def _is_convex(outline: tuple[Point2, ...]) -> bool:
    turns = _turns(outline)
    scale = max(abs(c) for p in outline for c in p) or 1.0
    slack = 1e-12 * scale * scale
    return all(t >= -slack for t in turns) or all(t <= slack for t in turns)


@lru_cache(maxsize=4096)
def convex_parts(prism: Prism) -> tuple[Prism, ...]:
    """Give convex prisms that fill a prism and share only faces; a convex prism is its own single part."""
    if _is_convex(prism.outline):
        return (prism,)
    import mapbox_earcut
    import numpy as np

    corners = np.asarray(prism.outline, dtype=np.float64)
    cut = mapbox_earcut.triangulate_float64(corners, np.array([len(corners)], dtype=np.uint32)).reshape(-1, 3)
    triangles = [tuple(prism.outline[int(i)] for i in three) for three in cut]
    return tuple(
        Prism(prism.axis, prism.start, prism.end, t) for t in triangles if abs(sum(_turns(t))) > _TINY
    )  # fmt: skip


def _strip(outline: tuple[Point2, ...], lo: float, hi: float) -> tuple[float, float] | None:
    """Give the least and greatest second coordinate of a convex outline over lo <= first <= hi."""
    heights = [v for u, v in outline if lo <= u <= hi]
    for (u0, v0), (u1, v1) in zip(outline, outline[1:] + outline[:1], strict=True):
        heights += [v0 + (v1 - v0) * (cut - u0) / (u1 - u0) for cut in (lo, hi) if (u0 - cut) * (u1 - cut) < 0]
    return (min(heights), max(heights)) if heights else None


def stair_boxes(shape: Shape, *, step: float = 6.0) -> tuple[Box, ...]:
    """Cover a shape with axis-parallel boxes, never leaving a part of it out.

    Parameters
    ----------
    shape : Box, Prism or Cylinder
        A box is covered by itself, a cylinder by the box around it.
    step : float
        Longest tread [in] of the stairs that cover a sloped prism.

    Returns
    -------
    tuple of Box
        For prisms along x or y the boxes have exactly the prism's footprint, so a vertical riser meets the boxes if
        and only if it meets the prism; in every other direction they are larger than the prism, never smaller.
    """
    if not isinstance(shape, Prism):
        return (bounds(shape),)
    found = []
    for part in convex_parts(shape):
        us = sorted({p[0] for p in part.outline})
        cuts = [us[0]]
        for a, b in itertools.pairwise(us):
            flat = all(_level(part.outline, a, b, low) for low in (True, False))
            count = 1 if flat else max(1, math.ceil((b - a) / step - _TINY))
            cuts += [a + (b - a) * i / count for i in range(1, count)] + [b]
        for a, b in itertools.pairwise(cuts):
            span = _strip(part.outline, a, b)
            if span is not None and b - a > _TINY and span[1] - span[0] > _TINY:
                found.append(Box(lift(part.axis, part.start, (a, span[0])), lift(part.axis, part.end, (b, span[1]))))
    return tuple(found)


def _level(outline: tuple[Point2, ...], a: float, b: float, low: bool) -> bool:
    """Whether the lower (or upper) border of a convex outline is level between two neighbouring corners."""
    pick = 0 if low else 1
    ends = [_strip(outline, a + t * (b - a), a + t * (b - a)) for t in (0.25, 0.75)]
    return all(e is not None for e in ends) and abs(ends[0][pick] - ends[1][pick]) < _TINY  # type: ignore[index]
