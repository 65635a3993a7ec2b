"""Shapes against the grid: which grid edges a run may not use and at which grid points an elbow has no room.

Comparisons are exact on whole ticks. A box is an index range along each axis; a sloped prism is tested on the two
axes of its outline, rectangle against convex polygon, and is an index range along the third.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence

import numpy as np
import numpy.typing as npt

from routeviz.model.freespace import Ints, Region
from routeviz.search.moves import Body

__all__ = [
    "Bools", "Coordinates", "block_corners", "block_runs", "count_runs", "overlaps_outline", "points_inside",
]  # fmt: skip

Bools = npt.NDArray[np.bool_]
Coordinates = Sequence[Ints]
_Memo = dict[tuple[object, ...], Bools]


def points_inside(x: Ints, lo: int, hi: int) -> slice:
    """Give the indices strictly inside the open interval (lo, hi)."""
    return slice(int(np.searchsorted(x, lo, "right")), int(np.searchsorted(x, hi, "left")))


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
        if u1 == u2 or v1 == v2:
            continue  # the bounding rectangle has this side
        for nu, nv in ((v2 - v1, u1 - u2), (v1 - v2, u2 - u1)):
            far = (corners @ np.array([nu, nv])).max()
            across = nu * (u_lo if nu > 0 else u_hi)
            along = nv * (v_lo if nv > 0 else v_hi)
            hit &= across[:, None] + along[None, :] < far
    return hit


def _ranges(
    coordinates: Coordinates, regions: Sequence[Region], grow: Sequence[tuple[int, int]], edges: int
) -> Iterator[tuple[Region, tuple[slice, slice, slice]]]:
    """Give the index ranges that each region blocks, leaving out regions that block nothing.

    `grow` are the body's extents (low, high) along each axis. Along axis `edges`, if it is one, the range counts
    grid edges instead of points.
    """
    if not regions:
        return
    bounds = []
    for t, x in enumerate(coordinates):
        lo = np.searchsorted(x, np.array([r.lo[t] for r in regions]) - grow[t][1], "right")
        hi = np.searchsorted(x, np.array([r.hi[t] for r in regions]) - grow[t][0], "left")
        if t == edges:
            lo, hi = np.maximum(lo - 1, 0), np.minimum(hi, len(x) - 1)
        bounds += [lo, hi]
    full = (bounds[0] < bounds[1]) & (bounds[2] < bounds[3]) & (bounds[4] < bounds[5])
    table = np.stack(bounds, axis=1)[full].tolist()
    for n, (a, b, c, d, e, f) in zip(np.flatnonzero(full).tolist(), table, strict=True):
        yield regions[n], (slice(a, b), slice(c, d), slice(e, f))


def _outline_hits(
    memo: _Memo, coordinates: Coordinates, region: Region, ranges: tuple[slice, slice, slice],
    grow: Sequence[tuple[int, int]], edges: int,
) -> Bools:  # fmt: skip
    """Test a prism on its two flat axes; repeated members share the answer."""
    flat = [t for t in range(3) if t != region.axis]
    key = (region.axis, region.outline, *((ranges[t].start, ranges[t].stop, *grow[t]) for t in flat))
    if key not in memo:
        spans: list[Ints] = []
        for t in flat:
            x = coordinates[t]
            first, second = (x[:-1], x[1:]) if t == edges else (x, x)
            spans += [first[ranges[t]] + grow[t][0], second[ranges[t]] + grow[t][1]]
        memo[key] = overlaps_outline(region, spans[0], spans[1], spans[2], spans[3])
    return np.expand_dims(memo[key], region.axis)


def block_runs(
    coordinates: Coordinates, axis: int, half: Sequence[int], regions: Iterable[Region], blocked: Bools | None = None
) -> Bools:
    """Mark the grid edges along `axis` on which a run with half sizes `half` overlaps a region.

    Parameters
    ----------
    coordinates : three int64 arrays
    axis : int
    half : three int
        Half sizes across the run; 0 along it.
    regions : iterable of Region
    blocked : array, optional
        Marks to add to, changed in place.

    Returns
    -------
    bool array of the grid's shape, one less along `axis`
    """
    if blocked is None:
        shape = [len(c) for c in coordinates]
        shape[axis] = max(shape[axis] - 1, 0)
        blocked = np.zeros(shape, bool)
    grow = [(-h, h) for h in half]
    memo: _Memo = {}
    for region, ranges in _ranges(coordinates, list(regions), grow, axis):
        if region.axis < 0:
            blocked[ranges] = True
        else:
            blocked[ranges] |= _outline_hits(memo, coordinates, region, ranges, grow, axis)
    return blocked


def count_runs(coordinates: Coordinates, axis: int, half: Sequence[int], regions: Iterable[Region]) -> Ints:
    """Count, per grid point, the regions that a run along `axis` meets on its line before that point.

    A region counts from the first grid edge on which the run overlaps it. Between two points of a line that lie in no
    region, the difference is the number of regions between them.

    Returns
    -------
    int64 array of the grid's shape
    """
    found = np.zeros([len(c) for c in coordinates], np.int64)
    begins = np.moveaxis(found, axis, 0)[1:]
    grow = [(-h, h) for h in half]
    memo: _Memo = {}
    for region, ranges in _ranges(coordinates, list(regions), grow, axis):
        where = [s for t, s in enumerate(ranges) if t != axis]
        along = ranges[axis]
        if region.axis < 0:
            begins[along.start, where[0], where[1]] += 1
        else:
            hits = np.moveaxis(
                np.broadcast_to(_outline_hits(memo, coordinates, region, ranges, grow, axis),
                                [s.stop - s.start for s in ranges]), axis, 0)  # fmt: skip
            first = hits.copy()
            first[1:] &= ~hits[:-1]
            begins[along, where[0], where[1]] += first
    np.cumsum(found, axis=axis, out=found)
    return found


def block_corners(
    coordinates: Coordinates, bodies: Sequence[Body], regions: Iterable[Region]
) -> npt.NDArray[np.uint32]:
    """Mark the grid points where elbow bodies overlap a region: bit n stands for body n.

    Returns
    -------
    uint32 array of the grid's shape
    """
    bits = np.zeros([len(c) for c in coordinates], np.uint32)
    every = list(regions)
    memo: _Memo = {}
    for number, body in enumerate(bodies):
        bit = np.uint32(1 << number)
        for region, ranges in _ranges(coordinates, every, body, -1):
            if region.axis < 0:
                bits[ranges] |= bit
            else:
                bits[ranges] |= np.where(_outline_hits(memo, coordinates, region, ranges, body, -1), bit, np.uint32(0))
    return bits
