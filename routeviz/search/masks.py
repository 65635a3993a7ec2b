"""Shapes against the grid: which grid edges a run may not use and at which grid points an elbow has no room.

Comparisons are exact on whole ticks. A box is an index range along each axis; a sloped prism is tested on the two
axes of its outline, rectangle against convex polygon, and is an index range along the third.
"""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
import numpy.typing as npt

from routeviz.model.freespace import Ints, Region
from routeviz.search.moves import Body

__all__ = ["Bools", "Coordinates", "block_corners", "block_runs", "edges_inside", "overlaps_outline", "points_inside"]

Bools = npt.NDArray[np.bool_]
Coordinates = Sequence[Ints]


def points_inside(x: Ints, lo: int, hi: int) -> slice:
    """Give the indices strictly inside the open interval (lo, hi)."""
    return slice(int(np.searchsorted(x, lo, "right")), int(np.searchsorted(x, hi, "left")))


def edges_inside(x: Ints, lo: int, hi: int) -> slice:
    """Give the indices i of the grid edges from i to i + 1 that meet the open interval (lo, hi)."""
    start = max(int(np.searchsorted(x, lo, "right")) - 1, 0)
    return slice(start, max(start, min(int(np.searchsorted(x, hi, "left")), len(x) - 1)))


def overlaps_outline(region: Region, u_lo: Ints, u_hi: Ints, v_lo: Ints, v_hi: Ints) -> Bools:
    """Tell which open rectangles (u by v) overlap a prism's convex outline: the separating-axis test, exact.

    Returns
    -------
    array of shape (len(u_lo), len(v_lo))
    """
    corners = np.array(region.outline, np.int64)
    low, high = corners.min(axis=0), corners.max(axis=0)
    hit: Bools = ((u_lo < high[0]) & (u_hi > low[0]))[:, None] & ((v_lo < high[1]) & (v_hi > low[1]))[None, :]
    for (u1, v1), (u2, v2) in zip(corners, np.roll(corners, -1, axis=0), strict=True):
        for nu, nv in ((v2 - v1, u1 - u2), (v1 - v2, u2 - u1)):
            far = int((corners @ np.array([nu, nv])).max())
            across = nu * (u_lo if nu > 0 else u_hi)
            along = nv * (v_lo if nv > 0 else v_hi)
            hit &= across[:, None] + along[None, :] < far
    return hit


def block_runs(blocked: Bools, coordinates: Coordinates, axis: int, half: Sequence[int], region: Region) -> None:
    """Mark the grid edges along `axis` on which a run with half sizes `half` overlaps a region.

    Parameters
    ----------
    blocked : array of shape (nx, ny, nz), one less along `axis`; changed in place
    """
    ranges = [
        edges_inside(coordinates[t], region.lo[t], region.hi[t]) if t == axis
        else points_inside(coordinates[t], region.lo[t] - half[t], region.hi[t] + half[t])
        for t in range(3)
    ]  # fmt: skip
    if any(r.stop <= r.start for r in ranges):
        return
    part = blocked[ranges[0], ranges[1], ranges[2]]
    if region.axis < 0:
        part[...] = True
        return
    spans = []
    for t in (t for t in range(3) if t != region.axis):
        x = coordinates[t]
        if t == axis:
            spans += [x[:-1][ranges[t]], x[1:][ranges[t]]]
        else:
            spans += [x[ranges[t]] - half[t], x[ranges[t]] + half[t]]
    part |= np.expand_dims(overlaps_outline(region, spans[0], spans[1], spans[2], spans[3]), region.axis)


def block_corners(
    bits: npt.NDArray[np.uint32], coordinates: Coordinates, body: Body, number: int, region: Region
) -> None:
    """Set bit `number` at the grid points where an elbow's body overlaps a region.

    Parameters
    ----------
    bits : array of shape (nx, ny, nz); changed in place
    """
    ranges = [
        points_inside(coordinates[t], region.lo[t] - body[t][1], region.hi[t] - body[t][0]) for t in range(3)
    ]
    if any(r.stop <= r.start for r in ranges):
        return
    part = bits[ranges[0], ranges[1], ranges[2]]
    bit = np.uint32(1 << number)
    if region.axis < 0:
        part |= bit
        return
    spans = []
    for t in (t for t in range(3) if t != region.axis):
        x = coordinates[t][ranges[t]]
        spans += [x + body[t][0], x + body[t][1]]
    hit = overlaps_outline(region, spans[0], spans[1], spans[2], spans[3])
    part |= np.expand_dims(np.where(hit, bit, np.uint32(0)), region.axis)
