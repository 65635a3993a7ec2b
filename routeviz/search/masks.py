"""Shapes against the grid: which grid edges a run may not use and at which grid points an elbow has no room.

Comparisons are exact on whole ticks. A box is an index range along each axis; a sloped prism is tested on the two
axes of its outline, rectangle against convex polygon, and is an index range along the third.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from functools import lru_cache
from itertools import pairwise

import numpy as np
import numpy.typing as npt

from routeviz.model.freespace import Ints, Region
from routeviz.search.moves import Body

__all__ = [
    "Bools", "Coordinates", "Corners", "Small", "add_up", "block_corners", "block_runs", "count_runs", "nearby", "overlaps_outline",
    "points_inside",
]  # fmt: skip

Bools = npt.NDArray[np.bool_]
Coordinates = Sequence[Ints]
Small = npt.NDArray[np.int32]
Corners = npt.NDArray[np.uint16 | np.uint32]
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
    low, high, slants = _sides(region.outline)
    hit: Bools = ((u_lo < high[0]) & (u_hi > low[0]))[:, None] & ((v_lo < high[1]) & (v_hi > low[1]))[None, :]
    for nu, nv, far in slants:
        across = nu * (u_lo if nu > 0 else u_hi)
        along = nv * (v_lo if nv > 0 else v_hi)
        hit &= across[:, None] < (far - along)[None, :]
    return hit


_Point = tuple[int, int]


@lru_cache(maxsize=1 << 12)
def _sides(outline: tuple[_Point, ...]) -> tuple[_Point, _Point, tuple[tuple[int, int, int], ...]]:
    """Give a convex outline's lowest and highest coordinates, and per slanted side its outward normal and distance."""
    us, vs = [u for u, _ in outline], [v for _, v in outline]
    slants = []
    for (u1, v1), (u2, v2) in pairwise((*outline, outline[0])):
        if u1 == u2 or v1 == v2:
            continue  # the bounding rectangle has this side
        for nu, nv in ((v2 - v1, u1 - u2), (v1 - v2, u2 - u1)):
            far = nu * u1 + nv * v1
            if max(nu * u + nv * v for u, v in outline) == far:  # else it points inwards
                slants.append((nu, nv, far))
    return (min(us), min(vs)), (max(us), max(vs)), tuple(slants)


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


def count_runs(coordinates: Coordinates, axis: int, half: Sequence[int], regions: Iterable[Region]) -> Small:
    """Count, per grid point, the regions that a run along `axis` meets on its line before that point.

    A region counts from the first grid edge on which the run overlaps it. Between two points of a line that lie in no
    region, the difference is the number of regions between them.

    Returns
    -------
    int32 array of the grid's shape
    """
    found: Small = np.zeros([len(c) for c in coordinates], np.int32)
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
    add_up(found, axis)
    return found


def add_up(values: Small, axis: int) -> None:
    """Replace values by their running sums along an axis; numpy alone is slow along any axis but the last."""
    if axis == values.ndim - 1:
        np.cumsum(values, axis=axis, out=values)
        return
    rows = np.moveaxis(values, axis, 0)
    for before, row in pairwise(rows):
        row += before


def nearby(coordinates: Coordinates, bodies: Sequence[Body], regions: Iterable[Region]) -> list[Region]:
    """Give the regions that some body can overlap at all, somewhere on the grid; on thin grids these are few."""
    if not all(len(c) for c in coordinates):
        return []
    low = [int(c[0]) + min(b[t][0] for b in bodies) for t, c in enumerate(coordinates)]
    high = [int(c[-1]) + max(b[t][1] for b in bodies) for t, c in enumerate(coordinates)]
    return [r for r in regions if all(r.lo[t] < high[t] and r.hi[t] > low[t] for t in range(3))]


def block_corners(coordinates: Coordinates, bodies: Sequence[Body], regions: Iterable[Region]) -> Corners:
    """Mark the grid points where elbow bodies overlap a region: bit n stands for body n.

    All bodies share a core round their corner; where a box meets the core, all bits are set at once, and each body
    adds only what its legs reach further.

    Returns
    -------
    unsigned array of the grid's shape, of 16 bits where they suffice
    """
    kind: type[np.uint16 | np.uint32] = np.uint16 if len(bodies) <= 16 else np.uint32
    bits: Corners = np.zeros([len(c) for c in coordinates], kind)
    every = nearby(coordinates, bodies, regions)
    boxes, prisms = [r for r in every if r.axis < 0], [r for r in every if r.axis >= 0]
    core = [(max(b[t][0] for b in bodies), min(b[t][1] for b in bodies)) for t in range(3)]
    shared = _Spans(coordinates, boxes, core)
    shared.fill(bits, kind((1 << len(bodies)) - 1))
    for number, body in enumerate(bodies):
        for leg in _Spans(coordinates, boxes, body).without(shared):
            leg.fill(bits, kind(1 << number))
    for axis in range(3):
        _block_by_prisms(bits, coordinates, bodies, [r for r in prisms if r.axis == axis], axis)
    return bits


def _block_by_prisms(
    bits: Corners, coordinates: Coordinates, bodies: Sequence[Body], prisms: Sequence[Region], axis: int
) -> None:
    """Mark where elbow bodies overlap prisms along one axis; bodies with the same extent along it are marked at once."""
    if not prisms:
        return
    u, v = (t for t in range(3) if t != axis)
    kind = bits.dtype.type
    outlines: _Memo = {}
    for extent in dict.fromkeys(body[axis] for body in bodies):
        alike = [(kind(1 << n), body) for n, body in enumerate(bodies) if body[axis] == extent]
        spans = [_Spans(coordinates, prisms, body) for _, body in alike]
        flats: dict[tuple[tuple[int, int], ...], Corners] = {}
        for n, region in enumerate(prisms):
            along = slice(int(spans[0].lo[n, axis]), int(spans[0].hi[n, axis]))
            if along.start >= along.stop:
                continue
            if region.outline not in flats:
                flat: Corners = np.zeros((bits.shape[u], bits.shape[v]), kind)
                for (bit, body), span in zip(alike, spans, strict=True):
                    ranges = tuple(slice(int(a), int(b)) for a, b in zip(span.lo[n], span.hi[n], strict=True))
                    if ranges[u].start < ranges[u].stop and ranges[v].start < ranges[v].stop:
                        hits = _outline_hits(outlines, coordinates, region, (ranges[0], ranges[1], ranges[2]), body, -1)
                        flat[ranges[u], ranges[v]] |= np.where(hits.squeeze(axis), bit, kind(0))
                flats[region.outline] = flat
            rows, columns = (
                slice(int(min(s.lo[n, t] for s in spans)), int(max(s.hi[n, t] for s in spans))) for t in (u, v)
            )
            where = [rows, columns]
            where.insert(axis, along)
            bits[tuple(where)] |= np.expand_dims(flats[region.outline][rows, columns], axis)


class _Spans:
    """Index ranges of many boxes along each axis, of shape (boxes, 3): from `lo` up to but without `hi`."""

    def __init__(self, coordinates: Coordinates, boxes: Sequence[Region], grow: Sequence[tuple[int, int]]) -> None:
        self.lo, self.hi = (np.empty((len(boxes), 3), np.int64) for _ in range(2))
        if boxes:
            for t, x in enumerate(coordinates):
                self.lo[:, t] = np.searchsorted(x, np.array([b.lo[t] for b in boxes]) - grow[t][1], "right")
                self.hi[:, t] = np.searchsorted(x, np.array([b.hi[t] for b in boxes]) - grow[t][0], "left")

    def without(self, other: _Spans) -> Iterator[_Spans]:
        """Cut away a part inside each box; what is left is up to six boxes each."""
        lo, hi = self.lo.copy(), self.hi.copy()
        inner_lo, inner_hi = np.clip(other.lo, lo, hi), np.clip(other.hi, lo, hi)
        inner_hi = np.maximum(inner_lo, inner_hi)
        empty = (inner_lo >= inner_hi).any(axis=1)
        inner_lo[empty], inner_hi[empty] = lo[empty], lo[empty]
        for t in range(3):
            for begin, end in ((lo[:, t], inner_lo[:, t]), (inner_hi[:, t], hi[:, t])):
                left = _Spans((), (), ())
                left.lo, left.hi = lo.copy(), hi.copy()
                left.lo[:, t], left.hi[:, t] = begin, end
                yield left
            lo[:, t], hi[:, t] = inner_lo[:, t], inner_hi[:, t]

    def fill(self, bits: Corners, value: np.unsignedinteger) -> None:
        """Set bits in all boxes that are not empty."""
        some = self.lo < self.hi
        full = some[:, 0] & some[:, 1] & some[:, 2]
        for (a, b, c), (d, e, f) in zip(self.lo[full].tolist(), self.hi[full].tolist(), strict=True):
            bits[a:d, b:e, c:f] |= value
