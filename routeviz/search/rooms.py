"""Which coordinates matter: only those at which some elbow, or a run between elbows, can touch something.

Every coordinate of a route is the coordinate of an elbow, of the collar or of the exit. So a face counts only if an
elbow's body can lie against it, or if a run that ends in an elbow can. Where elbows have room is found once on a
small grid: the body's low corner, over the faces themselves. In a framed house most faces drop out (no elbow fits
between two studs), which makes the search's grid ten to a hundred times smaller.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from functools import lru_cache
from itertools import product

import numpy as np

from routeviz.model.freespace import Barrier, FreeSpace, Ints, Region
from routeviz.search.masks import Bools, add_up, block_corners
from routeviz.search.moves import Body, Moves
from routeviz.search.terms import Terms

__all__ = ["Room", "alive_part", "obstacles", "room_constants", "rooms", "run_constants"]


@dataclass(frozen=True)
class Room:
    """Where elbow bodies of one size fit.

    `low` are the coordinates of the body's low corner, `free` tells where it has room, `offset` are, per axis, the
    distances from the low corner to the elbow's own corner. `part` marks a body that is only part of an elbow.
    """

    size: tuple[int, int, int]
    offset: tuple[frozenset[int], frozenset[int], frozenset[int]]
    low: tuple[Ints, Ints, Ints]
    free: Bools
    part: bool = False


class _Counts:
    """How many marks lie in any box of an array, for many boxes at once."""

    def __init__(self, marks: Bools) -> None:
        self.table = np.zeros([n + 1 for n in marks.shape], np.int32)
        inner = self.table[tuple(slice(1, None) for _ in marks.shape)]
        inner[...] = marks
        for axis in range(marks.ndim):
            add_up(inner, axis)

    def any(self, lo: Sequence[Ints], hi: Sequence[Ints]) -> Bools:
        """Tell which boxes [lo, hi) hold a mark; bounds may lie outside the array."""
        ends = []
        empty: Bools = np.zeros(1, bool)
        for t, n in enumerate(self.table.shape):
            begin, end = np.clip(lo[t], 0, n - 1), np.clip(hi[t], 0, n - 1)
            empty = empty | (begin >= end)
            ends.append((begin, end))
        total = np.zeros(1, np.int64)
        for corner in product((0, 1), repeat=self.table.ndim):
            sign = (-1) ** (self.table.ndim - sum(corner))
            total = total + sign * self.table[tuple(e[c] for e, c in zip(ends, corner, strict=True))]
        return (total > 0) & ~empty


def obstacles(space: FreeSpace, terms: Terms) -> list[tuple[Region, tuple[bool, bool, bool]]]:
    """Give what elbows and, along the marked axes, runs may not overlap on the given terms."""
    found = [(b.region, _runs(b, terms)) for b in space.barriers if b.id not in terms.ignore]
    if not terms.priced:
        found += [(region, (True, True, True)) for region in space.boxing]
    return found


def _runs(barrier: Barrier, terms: Terms) -> tuple[bool, bool, bool]:
    x, y, z = barrier.runs
    return (False, False, z) if terms.relaxed and barrier.region.axis in (0, 1) else (x, y, z)


def _faces(region: Region, axis: int) -> tuple[set[int], set[int]]:
    """Give the coordinates at which a region begins and ends along an axis; slopes count with all their corners."""
    low, high = {region.lo[axis]}, {region.hi[axis]}
    if region.axis >= 0 and axis != region.axis:
        which = [t for t in range(3) if t != region.axis].index(axis)
        corners = {corner[which] for corner in region.outline}
        low, high = low | corners, high | corners
    return low, high


@lru_cache(maxsize=64)
def _face_table(regions: tuple[Region, ...], axis: int) -> tuple[Ints, Ints, Ints]:
    """Give the faces of all regions along an axis: number of the region, coordinate, 1 where it ends and 0 where it begins."""
    rows = [
        (n, value, end) for n, region in enumerate(regions)
        for end, values in enumerate(_faces(region, axis)) for value in sorted(values)
    ]  # fmt: skip
    table = np.array(rows, np.int64).reshape(-1, 3)
    return table[:, 0], table[:, 1], table[:, 2]


def rooms(space: FreeSpace, table: Moves, terms: Terms) -> list[Room]:
    """Find where elbow bodies fit, one record per size of body."""
    sizes: dict[tuple[int, int, int, bool], list[Body]] = {}
    for number, bodies in enumerate(table.parts(relaxed=terms.relaxed, legs=terms.legs)):
        for body in bodies:
            x, y, z = (hi - lo for lo, hi in body)
            sizes.setdefault((x, y, z, number > 0), []).append(body)
    stops = [
        region for region, _ in obstacles(space, terms)
        if not (terms.relaxed and region.axis in (0, 1))
    ]  # fmt: skip
    found = []
    for (*sides, part), same in sizes.items():
        size = sides[0], sides[1], sides[2]
        offset = [frozenset(-b[t][0] for b in same) for t in range(3)]
        low = []
        for t in range(3):  # elbows' corners stay inside the bounds, their bodies may stand out
            edges = {bound - o for bound in (space.lo[t], space.hi[t]) for o in offset[t]}
            values = set(edges)
            for region in stops:
                begin, end = _faces(region, t)
                values |= {v - size[t] for v in begin} | end
            low.append(np.array(sorted(v for v in values if min(edges) <= v <= max(edges)), np.int64))
        bits = block_corners(low, [((0, size[0]), (0, size[1]), (0, size[2]))], stops)
        found.append(Room(size, (offset[0], offset[1], offset[2]), (low[0], low[1], low[2]), bits == 0, part))
    return found


@lru_cache(maxsize=64)
def _bounds(regions: tuple[Region, ...]) -> tuple[Ints, Ints]:
    """Give all regions' low and high corners, of shape (3, count)."""
    return (np.array([r.lo for r in regions], np.int64).reshape(-1, 3).T,
            np.array([r.hi for r in regions], np.int64).reshape(-1, 3).T)  # fmt: skip


def _near(x: Ints, lo: Ints, hi: Ints) -> tuple[Ints, Ints]:
    """Give index ranges of the coordinates in [lo, hi] and of the neighbours on both sides of any gap there."""
    return np.searchsorted(x, lo) - 1, np.searchsorted(x, hi, "right") + 1


def room_constants(room: Room, regions: tuple[Region, ...]) -> Iterator[tuple[int, Ints]]:
    """Give (axis, coordinates) of elbows that touch a region: corners of shape (n,) [ticks], rising."""
    low, high = _bounds(regions)
    counts = _Counts(room.free)
    for axis in range(3):
        of, face, end = _face_table(regions, axis)
        touch = face - (1 - end) * room.size[axis]
        spans = [_near(room.low[t], low[t][of] - room.size[t], high[t][of]) for t in range(3)]
        at = np.searchsorted(room.low[axis], touch)
        there = (at < len(room.low[axis])) & (room.low[axis][np.minimum(at, len(room.low[axis]) - 1)] == touch)
        spans[axis] = at, at + there
        found = np.unique(touch[counts.any([s[0] for s in spans], [s[1] for s in spans])])
        for offset in room.offset[axis]:
            yield axis, found + offset


def run_constants(
    room: Room, regions: tuple[Region, ...], axis: int, half: Sequence[int]
) -> Iterator[tuple[int, Ints]]:  # fmt: skip
    """Give (axis, coordinates) of runs along `axis`, ending in an elbow of this room, that touch a region sideways.

    Coordinates are those of centre lines, of shape (n,) [ticks]; `half` is half a run's section along each axis [ticks].
    """
    low, high = _bounds(regions)
    sides = [t for t in range(3) if t != axis]
    counts = _Counts(np.any(room.free, axis=axis))
    for touch, other in (sides, sides[::-1]):
        of, face, end = _face_table(regions, touch)
        value = face + (2 * end - 1) * half[touch]
        offsets = room.offset[other]
        across = _near(
            room.low[other], low[other][of] - half[other] - max(offsets), high[other][of] + half[other] - min(offsets)
        )
        hit: Bools = np.zeros(len(value), bool)
        for offset in room.offset[touch]:
            along = _near(room.low[touch], value - offset, value - offset)
            first, second = (along, across) if touch == sides[0] else (across, along)
            hit |= counts.any([first[0], second[0]], [first[1], second[1]])
        yield touch, np.unique(value[hit])


def alive_part(found: Sequence[Room], axis: int, values: Ints) -> Ints:
    """Keep the coordinates that an elbow's corner can have: between two neighbouring coordinates with room.

    Takes `values` of shape (n,) along `axis` [ticks] and gives those that are kept, in their order.
    """
    keep = np.zeros(len(values), bool)
    others = tuple(t for t in range(3) if t != axis)
    for room in found:
        if room.part:
            continue
        low = room.low[axis]
        free: Bools = np.any(room.free, axis=others)
        if not free.any():
            continue
        for offset in room.offset[axis]:
            at = values - offset
            right = np.searchsorted(low, at)
            left = np.searchsorted(low, at, "right") - 1
            inside = (left >= 0) & (right < len(low))
            keep[inside] |= free[left[inside]] & free[right[inside]]
    return values[keep]
