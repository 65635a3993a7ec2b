"""How far a sloped prism reaches along one axis over a rectangle on the other two."""

from __future__ import annotations

import math
from collections.abc import Sequence
from functools import lru_cache
from itertools import pairwise

from routeviz.model.freespace import Region

__all__ = ["along_range"]


@lru_cache(maxsize=1 << 14)
def _span(corners: tuple[tuple[int, int], ...], left: float, right: float) -> tuple[int, int]:
    """Give the extent in the second coordinate of a convex outline between two values of the first, rounded outwards."""
    heights: list[float] = [v for u, v in corners if left <= u <= right]
    for (u1, v1), (u2, v2) in pairwise((*corners, corners[0])):
        for at in (left, right):
            if min(u1, u2) < at < max(u1, u2):
                heights.append(v1 + (v2 - v1) * (at - u1) / (u2 - u1))
    return math.floor(min(heights)), math.ceil(max(heights))


def along_range(region: Region, axis: int, lo: Sequence[int], hi: Sequence[int]) -> tuple[int, int, bool]:
    """Give the lowest and highest coordinate along `axis` of a convex prism inside a rectangle, and whether it is there.

    Parameters
    ----------
    region : Region
        A prism.
    axis : int
    lo, hi : three int
        The rectangle; what stands at `axis` is ignored.

    Returns
    -------
    tuple of int, int and bool
        Rounded outwards. A prism that is swept along `axis` counts with its bounding box.
    """
    if region.axis == axis:
        return region.lo[axis], region.hi[axis], True
    flat = next(t for t in range(3) if t not in (axis, region.axis))
    left, right = max(lo[flat], region.lo[flat]), min(hi[flat], region.hi[flat])
    if left >= right:
        return region.lo[axis], region.hi[axis], False
    corners = region.outline if flat < axis else tuple((v, u) for u, v in region.outline)
    low, high = _span(corners, left, right)
    return low, high, True
