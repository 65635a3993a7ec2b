"""The scan of `lines` for grids on which elbows fit nearly everywhere: whole slabs of grid points at a time.

Sorting events into lines costs more than scanning them. Where a good part of all grid points are events it is cheaper
to keep the grid as it is, with the axis of the runs turned to the front, and to carry the least value from slab to
slab: three passes over each, all of them along neighbouring numbers. Only lengths can be scanned so, since they alone
are the same for a whole slab.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

import numpy as np
import numpy.typing as npt

from routeviz.model.freespace import Ints
from routeviz.search.lines import Ahead
from routeviz.search.masks import Bools, Small
from routeviz.search.terms import Costs, Terms

__all__ = ["Slabs", "slabs", "split"]

_AT_ONCE = 1 << 14  # events, so that all they need stays in the processor's cache


@dataclass(frozen=True)
class Slabs:
    """Events of a grid whose axis of the runs comes first: slabs, and lines across them.

    Attributes
    ----------
    place : int64 array
        Grid coordinates along the axis, one per slab [ticks].
    walls : uint8 array of shape (slabs - 1, lines)
        1 where no run may pass from a slab into the next.
    number : int32 array of shape (slabs, lines of one of the other axes, lines of the other)
        Each grid point's event, -1 where none is.
    position, along : int32 arrays
        Per event: its flat place in the slabs, and its coordinate along the axis [ticks].
    ahead : dict of int32 arrays
        Per (sign, lag) and event: the flat place at least `lag` ahead on its line, one past all places where a wall
        or the end of the line comes first.
    work : int32 array
        Room for one scan: one place more than the grid has points.
    """

    place: Ints
    walls: npt.NDArray[np.uint8]
    number: Small
    position: Small
    along: Small
    ahead: dict[tuple[int, int], Small]
    work: Small
    terms: Terms

    def scan(self, value: Costs, sign: int, lags: Sequence[int]) -> list[Costs]:
        """Give the least cost of a run to an event at least `lag` ahead plus that event's value.

        Arrays of shape (events,), in ticks of length with prices added; see `Lines.scan`.
        """
        none = self.terms.none
        self.work.fill(none)
        shift = np.add if sign > 0 else np.subtract
        back = np.subtract if sign > 0 else np.add
        at = np.empty(min(len(value), _AT_ONCE), np.intp)  # indexing by it is faster than by int32
        for here in _pieces(len(value)):
            worth = shift(value[here], self.along[here])
            at[: len(worth)] = self.position[here]
            self.work[at[: len(worth)]] = worth
        self._carry(sign)
        found = []
        for lag in lags:
            cost, ahead = np.empty_like(value), self.ahead[sign, lag]
            for here in _pieces(len(value)):
                part = np.take(self.work, ahead[here], out=cost[here], mode="clip")
                back(part, self.along[here], out=part)
                np.minimum(part, none, out=part)
            found.append(cost)
        return found

    def _carry(self, sign: int) -> None:
        """Carry the least value of each line from slab to slab, against the direction of the runs."""
        none, count = np.int32(self.terms.none), len(self.place)
        slab = self.work[:-1].reshape(count, -1)
        kept = np.empty(slab.shape[1], np.int32)
        steps = range(count - 2, -1, -1) if sign > 0 else range(1, count)
        for n in steps:
            wall = self.walls[n if sign > 0 else n - 1]
            np.multiply(wall, none, out=kept, casting="unsafe")
            np.add(kept, slab[n + sign], out=kept)
            np.minimum(slab[n], kept, out=slab[n])

    def reach(self, line: int, index: int, sign: int) -> Ahead:
        """Give the events that a run from a grid index on a line can reach, in ascending order."""
        first, second = divmod(line, self.number.shape[2])
        if sign > 0:
            stops = np.flatnonzero(self.walls[index:, line])
            here = slice(index + 1, index + 1 + int(stops[0]) if len(stops) else None)
        else:
            stops = np.flatnonzero(self.walls[:index, line])
            here = slice(int(stops[-1]) + 1 if len(stops) else 0, index)
        names = self.number[here, first, second]
        there = np.flatnonzero(names >= 0)
        at = (there + here.start).astype(np.int32)
        length = np.abs(self.place[at] - self.place[index])
        return Ahead(names[there], at, length, length)


def _pieces(count: int) -> Iterator[slice]:
    for start in range(0, count, _AT_ONCE):
        yield slice(start, start + _AT_ONCE)


def split(flat: Small, shape: tuple[int, int, int], axis: int) -> tuple[Small, Small]:
    """Give the line (a flat index over the two other axes) and the index along the axis of flat grid indices.

    `flat` counts through a grid of `shape` in C order; both results are of its shape.
    """
    _, ny, nz = shape
    if axis == 2:
        line = flat // np.int32(nz)
        return line, flat - line * np.int32(nz)
    first = flat // np.int32(ny * nz)
    rest = flat - first * np.int32(ny * nz)
    if axis == 0:
        return rest, first
    second = rest // np.int32(nz)
    return rest + (first - second) * np.int32(nz), second


def _steps(place: Ints, sign: int, lag: int) -> Ints:
    """Give, per grid coordinate, the first one at least `lag` ahead; their number where there is none."""
    if sign > 0:
        return np.searchsorted(place, place + lag)
    found: Ints = np.searchsorted(place, place - lag, "right") - 1
    found[found < 0] = len(place)
    return found


def slabs(
    axis: int, place: Ints, blocked: Bools, alive: Small, number: Small, terms: Terms,
    wanted: Sequence[tuple[int, int]], work: Small,
) -> Slabs:  # fmt: skip
    """Turn the axis of the runs to the front and look up how far each least length reaches.

    Parameters
    ----------
    axis : int
    place : int64 array of length n
        Grid coordinates along the axis.
    blocked : bool array of the grid's shape, one less along `axis`
        Grid edges that a run may not use.
    alive : int32 array
        Flat grid index of each event.
    number : int32 array of the grid's shape
        Number of each grid point's event, -1 where none is.
    terms : Terms
        Only lengths cost.
    wanted : sequence of (sign, lag)
        The scans that will be asked for.
    work : int32 array
        Room for one scan: one place more than the grid has points.
    """
    count, points = len(place), number.size
    width = points // max(count, 1)
    walls = np.ascontiguousarray(np.moveaxis(blocked, axis, 0)).reshape(max(count - 1, 0), width).view(np.uint8)
    passed = np.zeros(points + 1, np.int16 if count < 1 << 15 else np.int32)
    before = passed[:-1].reshape(count, width)
    for n, wall in enumerate(walls):
        np.add(before[n], wall, out=before[n + 1])
    passed[-1] = -1
    position, along = np.empty_like(alive), np.empty_like(alive)
    ahead = {key: np.empty_like(alive) for key in dict.fromkeys(wanted)}
    steps = {key: _steps(place, *key) * width for key in ahead}
    places = place.astype(np.int32)
    for here in _pieces(len(alive)):
        line, small = split(alive[here], number.shape, axis)
        index = small.astype(np.intp)
        at = index * width + line
        position[here], along[here], walled = at, places[index], passed[at]
        for key, found in ahead.items():
            to = np.minimum(steps[key][index] + line, points)
            to[passed[to] != walled] = points
            found[here] = to
    return Slabs(place, walls, np.moveaxis(number, axis, 0), position, along, ahead, work, terms)
