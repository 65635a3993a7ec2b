"""Which coordinates matter: only those at which some elbow, or a run between elbows, can touch something.

Every coordinate of a route is the coordinate of an elbow, of the collar or of the exit. So a face counts only if an
elbow's body can lie against it, or if a run that ends in an elbow can. Where elbows have room is found once on a
small grid: the body's low corner, over the faces themselves. In a framed house most faces drop out (no elbow fits
between two studs), which makes the search's grid ten to a hundred times smaller.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

import numpy as np

from routeviz.model.freespace import Barrier, FreeSpace, Ints, Region
from routeviz.search.masks import Bools, block_corners
from routeviz.search.moves import Body, Moves
from routeviz.search.terms import Terms

__all__ = ["Room", "alive_part", "obstacles", "room_constants", "rooms", "run_constants"]


@dataclass(frozen=True)
class Room:
    """Where elbow bodies of one size fit.

    `low` are the coordinates of the body's low corner, `free` tells where it has room, `offset` are, per axis, the
    distances from the low corner to the elbow's own corner.
    """

    size: tuple[int, int, int]
    offset: tuple[frozenset[int], frozenset[int], frozenset[int]]
    low: tuple[Ints, Ints, Ints]
    free: Bools


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


def rooms(space: FreeSpace, table: Moves, terms: Terms) -> list[Room]:
    """Find where elbow bodies fit, one record per size of body."""
    sizes: dict[tuple[int, int, int], list[Body]] = {}
    for body in table.tubes if terms.relaxed else table.bodies:
        x, y, z = (hi - lo for lo, hi in body)
        sizes.setdefault((x, y, z), []).append(body)
    stops = [
        region for region, _ in obstacles(space, terms)
        if not (terms.relaxed and region.axis in (0, 1))
    ]  # fmt: skip
    found = []
    for size, bodies in sizes.items():
        low = []
        for t in range(3):
            values = {space.lo[t], space.hi[t] - size[t]}
            for region in stops:
                begin, end = _faces(region, t)
                values |= {v - size[t] for v in begin} | end
            low.append(np.array(sorted(v for v in values if space.lo[t] <= v <= space.hi[t] - size[t]), np.int64))
        bits = np.zeros([len(c) for c in low], np.uint32)
        body = ((0, size[0]), (0, size[1]), (0, size[2]))
        for region in stops:
            block_corners(bits, low, body, 0, region)
        offset = [frozenset(-b[t][0] for b in bodies) for t in range(3)]
        found.append(Room(size, (offset[0], offset[1], offset[2]), (low[0], low[1], low[2]), bits == 0))
    return found


def _near(x: Ints, lo: int, hi: int) -> slice:
    """Give the indices of coordinates in [lo, hi] and of the neighbours on both sides of any gap there."""
    return slice(max(int(np.searchsorted(x, lo)) - 1, 0), int(np.searchsorted(x, hi, "right")) + 1)


def room_constants(room: Room, region: Region) -> Iterable[tuple[int, int]]:
    """Give (axis, coordinate) of elbows that touch a region."""
    for axis in range(3):
        begin, end = _faces(region, axis)
        across = [
            slice(None) if t == axis else _near(room.low[t], region.lo[t] - room.size[t], region.hi[t])
            for t in range(3)
        ]
        for low in {v - room.size[axis] for v in begin} | end:
            at = int(np.searchsorted(room.low[axis], low))
            if at < len(room.low[axis]) and room.low[axis][at] == low:
                across[axis] = slice(at, at + 1)
                if room.free[across[0], across[1], across[2]].any():
                    yield from ((axis, low + offset) for offset in room.offset[axis])


def run_constants(room: Room, region: Region, axis: int, half: Sequence[int]) -> Iterable[tuple[int, int]]:
    """Give (axis, coordinate) of runs along `axis`, ending in an elbow of this room, that touch a region sideways."""
    sides = [t for t in range(3) if t != axis]
    free: Bools = np.any(room.free, axis=axis)
    for side, (touch, other) in enumerate((sides, sides[::-1])):
        begin, end = _faces(region, touch)
        offsets = room.offset[other]
        span = _near(
            room.low[other], region.lo[other] - half[other] - max(offsets), region.hi[other] + half[other] - min(offsets)
        )
        for value in {v - half[touch] for v in begin} | {v + half[touch] for v in end}:
            for offset in room.offset[touch]:
                at = _near(room.low[touch], value - offset, value - offset)
                part = free[at, span] if side == 0 else free[span, at]
                if part.any():
                    yield touch, value
                    break


def alive_part(found: Sequence[Room], axis: int, values: Ints) -> Ints:
    """Keep the coordinates that an elbow's corner can have: between two neighbouring coordinates with room."""
    keep = np.zeros(len(values), bool)
    others = tuple(t for t in range(3) if t != axis)
    for room in found:
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
