"""Offsets: two equal elbows that shift a run sideways on to a line that is free.

For one shift everything is closed form. The offset's body is two stubs and a diagonal; each barrier forbids one open
interval of places of the offset along the run for each of the three, and the run behind must be free up to the exit.
Shifts come from a finite list (`FreeSpace.offsets`), nearest first, so the least shift is exact for that list.

Bodies are square and a little too large: the diagonal is grown by half the duct and by what the bend leaves its
corner, and a slope counts with its extent over the whole width it passes. So an offered offset fits; one that fits
only by a hair may be missed.
"""

from __future__ import annotations

import math
from collections.abc import Iterator
from copy import copy
from dataclasses import dataclass

import numpy as np

from routeviz.model.freespace import BarrierKind, FreeSpace, Ints, Ticks
from routeviz.search.extent import along_range
from routeviz.search.moves import State

__all__ = ["Column", "Offset", "gaps", "slack"]


@dataclass(frozen=True)
class Offset:
    """One shift: towards `sign` along `axis` by `distance`; `stub` is the take-off, `forward` the diagonal's advance.

    `half` are the duct's half sizes along the run's two sides (in the shift's plane, across it), `bulge` what the bend
    leaves its corner towards the inside [ticks].
    """

    axis: int
    sign: int
    distance: int
    angle_deg: float
    radius: int
    stub: int
    forward: int
    half: tuple[int, int]
    bulge: int

    @property
    def advance(self) -> int:
        """Give the length along the run from the first stub's start to the second stub's end."""
        return self.forward + 2 * self.stub

    @property
    def length(self) -> int:
        """Give the length along the centre lines, corners square."""
        return 2 * self.stub + round(math.hypot(self.forward, self.distance))


class Column:
    """What stands along a straight run and beside it, in the run's own measures.

    The run goes up the axis `along` from the collar (a run that goes down its axis is mirrored). For an offset, `low`
    and `high` are the extents of everything near along the run.
    """

    def __init__(
        self, space: FreeSpace, state: State, *, priced: bool, start: Ticks | None = None, covered: bool | None = None
    ) -> None:  # fmt: skip
        self.space, self.state, self.priced = space, state, priced
        self.start = space.start.point if start is None else start
        self.covered = space.start.covered if covered is None else covered
        barriers = list(space.barriers)
        self.regions = [b.region for b in barriers] + list(space.boxing)
        self._begins: dict[tuple[tuple[int, int], int, bool], bool] = {}
        room = len(space.boxing)
        self.stops_run = np.array([b.runs[state.axis] for b in barriers] + [True] * room)
        self.outdoors = np.array([b.kind is BarrierKind.OUTDOORS for b in barriers] + [False] * room)
        self.room = np.array([False] * len(barriers) + [True] * room)
        self.lo = np.array([r.lo for r in self.regions], np.int64).reshape(-1, 3)
        self.hi = np.array([r.hi for r in self.regions], np.int64).reshape(-1, 3)

    def moved(self, offset: Offset, *, covered: bool) -> Column:
        """Give the same for the line that an offset leads to."""
        found, start = copy(self), list(self.start)
        start[offset.axis] += offset.sign * offset.distance
        found.start, found.covered, found._begins = (start[0], start[1], start[2]), covered, {}
        return found

    def extents(self, offset: Offset, first: int, second: int, grow: int) -> tuple[Ints, Ints, np.ndarray]:
        """Give low and high along the run [ticks] of what lies beside it between two shifts, and whether it is near at all.

        All three are of shape (regions,); low and high mean nothing where a region is not near.
        """
        across = next(t for t in range(3) if t not in (offset.axis, self.state.axis))
        lo, hi = [0, 0, 0], [0, 0, 0]
        ends = sorted((self.start[offset.axis] + offset.sign * first, self.start[offset.axis] + offset.sign * second))
        lo[offset.axis], hi[offset.axis] = ends[0] - grow, ends[1] + grow
        lo[across], hi[across] = self.start[across] - offset.half[1], self.start[across] + offset.half[1]
        near = np.ones(len(self.regions), bool)
        for t in (offset.axis, across):
            near &= (self.lo[:, t] < hi[t]) & (self.hi[:, t] > lo[t])
        low, high = self.lo[:, self.state.axis].copy(), self.hi[:, self.state.axis].copy()
        for n in np.flatnonzero(near):
            if self.regions[n].axis >= 0:
                low[n], high[n], near[n] = along_range(self.regions[n], self.state.axis, lo, hi)
        return low, high, near

    def forbidden(self, offset: Offset, hidden: bool) -> list[tuple[int, int]]:
        """Give the open intervals of places of the offset's start that its body forbids."""
        found = []
        d, stub, forward, half = offset.distance, offset.stub, offset.forward, offset.half[0]
        counts = ~self.room if hidden or self.priced else np.ones(len(self.regions), bool)
        for at, behind in ((0, 0), (d, offset.advance - stub)):
            low, high, near = self.extents(offset, at, at, half)
            stops = near & counts
            found += [
                (a - behind - stub, b - behind) for a, b in zip(low[stops].tolist(), high[stops].tolist(), strict=True)
            ]
        grow = half + offset.bulge
        low, high, near = self.extents(offset, 0, d, grow)
        for n in np.flatnonzero(near & counts):
            a = offset.sign * (int(self.lo[n, offset.axis]) - self.start[offset.axis])
            b = offset.sign * (int(self.hi[n, offset.axis]) - self.start[offset.axis])
            first = max((min(a, b) - grow) / d, 0.0)
            last = min((max(a, b) + grow) / d, 1.0)
            if first < last:
                found.append((math.floor(low[n] - grow - stub - last * forward),
                              math.ceil(high[n] + grow - stub - first * forward)))  # fmt: skip
        return found

    def free_from(self, offset: Offset, end: int, hidden: bool) -> int | None:
        """Give the lowest place from which the shifted run is free up to its end; None where it is not at all."""
        low, high, near = self.extents(offset, offset.distance, offset.distance, offset.half[0])
        counts = ~self.room if hidden or self.priced else np.ones(len(self.regions), bool)
        stops = near & counts & self.stops_run & ~self.outdoors & (low < end)
        if (high[stops] >= end).any():
            return None
        return int(high[stops].max()) if stops.any() else -(1 << 62)

    def begins(self, offset: Offset, hidden: bool) -> bool:
        """Tell whether the first stub of such an offset has room anywhere on the first run; the shift does not matter."""
        key = offset.half, offset.stub, hidden
        if key not in self._begins:
            counts = ~self.room if hidden or self.priced else np.ones(len(self.regions), bool)
            low, high, near = self.extents(offset, 0, 0, offset.half[0])
            stops = near & counts
            barred = [(a - offset.stub, b) for a, b in zip(low[stops].tolist(), high[stops].tolist(), strict=True)]
            begin = self.start[self.state.axis] + self.space.limits.first
            self._begins[key] = next(gaps(begin, self.free_to(offset), barred), None) is not None
        return self._begins[key]

    def free_to(self, offset: Offset) -> int:
        """Give how far the first run is free from the collar."""
        low, high, near = self.extents(offset, 0, 0, offset.half[0])
        counts = ~self.room if self.covered or self.priced else np.ones(len(self.regions), bool)
        stops = near & counts & self.stops_run & (high > self.start[self.state.axis])
        return int(low[stops].min()) if stops.any() else 1 << 62


def gaps(lowest: int, highest: int, forbidden: list[tuple[int, int]]) -> Iterator[tuple[int, int]]:
    """Give the closed intervals of [lowest, highest] outside all open forbidden ones."""
    at = lowest
    for low, high in sorted(forbidden):
        if low >= highest:
            break
        if low >= at:
            yield at, low
        at = max(at, high)
        if at > highest:
            return
    if at <= highest:
        yield at, highest


def slack(space: FreeSpace, offset: Offset) -> int:
    """Give how far the run may shift this way inside the chimney cover."""
    left, right, out, back = space.start.cover_slack
    return ((left, right) if offset.axis == 0 else (out, back))[offset.sign > 0]
