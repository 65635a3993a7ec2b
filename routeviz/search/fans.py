"""All offsets of a run in one direction at once: what forbids them, and the least place where each fits.

For one shift everything is closed form (see `offsets`). Here the shifts of one direction and angle are one array, and
whatever stands beside the run is one row: so many offsets cost about as much as one.
"""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass, replace
from functools import lru_cache
from itertools import pairwise

import numpy as np

from routeviz.model.freespace import Exit, FreeSpace, Ints
from routeviz.search.extent import along_range
from routeviz.search.masks import Bools
from routeviz.search.moves import Moves, State
from routeviz.search.offsets import Column, Offset

__all__ = ["FAR", "Fan", "Fits", "Leaving", "back", "core_fits", "fans", "fits", "leaving"]

FAR = 1 << 60


@dataclass(frozen=True)
class Fan:
    """The offsets towards `sign` along `axis` with bends of one angle; arrays over their rising distances [ticks].

    The other measures are those of `offsets.Offset`.
    """

    axis: int
    sign: int
    angle_deg: float
    radius: int
    stub: int
    half: tuple[int, int]
    bulge: int
    distance: Ints
    forward: Ints

    @property
    def advance(self) -> Ints:
        """Give each offset's length along the run [ticks], first stub's start to second stub's end, of the shape of `distance`."""
        return self.forward + 2 * self.stub

    @property
    def extra(self) -> Ints:
        """Give how much longer than its advance each offset's centre line is [ticks], of the shape of `distance`."""
        return np.rint(np.hypot(self.forward, self.distance)).astype(np.int64) - self.forward

    def offset(self, number: int) -> Offset:
        """Give one of them."""
        return Offset(self.axis, self.sign, int(self.distance[number]), self.angle_deg, self.radius, self.stub,
                      int(self.forward[number]), self.half, self.bulge)  # fmt: skip

    def offsets(self) -> Iterator[Offset]:
        """Give them all, the nearest first."""
        return (self.offset(n) for n in range(len(self.distance)))


def fans(space: FreeSpace, table: Moves, state: State) -> Iterator[Fan]:
    """Give the offsets of a run in a state, one record per direction and angle that has any."""
    half = table.half(state)
    for axis in (t for t in range(3) if t != state.axis):
        radius = space.section.radius_wide if state.wide == axis else space.section.radius_high
        across = next(t for t in range(3) if t not in (axis, state.axis))
        for sign in (1, -1):
            for choice in space.offsets:
                angle = math.radians(choice.angle_deg)
                shifts = np.array(choice.shifts, np.int64)
                shifts = shifts[shifts >= 2 * radius * (1 - math.cos(angle))]
                if len(shifts):
                    yield Fan(
                        axis, sign, choice.angle_deg, radius, math.ceil(radius * math.tan(angle / 2)),
                        (half[axis], half[across]), math.ceil(radius * (1 / math.cos(angle / 2) - 1)), shifts,
                        np.rint(shifts / math.tan(angle)).astype(np.int64),
                    )  # fmt: skip


@dataclass(frozen=True)
class _Beside:
    """What lies beside a run between two shifts: which of the column's things, and their extents along the run.

    `low`, `high` and `near` are of shape (things, shifts).
    """

    which: Ints
    low: Ints
    high: Ints
    near: Bools


@lru_cache(maxsize=1 << 10)
def _chains(corners: tuple[tuple[int, int], ...]) -> tuple[np.ndarray, np.ndarray, np.ndarray]:
    """Give the first coordinates of a convex outline's corners, and the least and greatest second ones there."""
    at = np.array(sorted({u for u, _ in corners}), np.float64)
    low, high = np.full(len(at), math.inf), np.full(len(at), -math.inf)
    for (u1, v1), (u2, v2) in pairwise((*corners, corners[0])):
        here = (at >= min(u1, u2)) & (at <= max(u1, u2))
        ends = (v1 + (v2 - v1) * (at[here] - u1) / (u2 - u1),) if u1 != u2 else (float(v1), float(v2))
        for heights in ends:
            low[here], high[here] = np.minimum(low[here], heights), np.maximum(high[here], heights)
    return at, low, high


def _spans(corners: tuple[tuple[int, int], ...], left: Ints, right: Ints) -> tuple[Ints, Ints]:
    """Give the extents in the second coordinate of a convex outline between values of the first, rounded outwards."""
    at, low, high = _chains(corners)
    least = np.interp(np.clip(at[low.argmin()], left, right), at, low)
    most = np.interp(np.clip(at[high.argmax()], left, right), at, high)
    return np.floor(least).astype(np.int64), np.ceil(most).astype(np.int64)


def _beside(column: Column, fan: Fan, first: Ints, second: Ints, grow: int) -> _Beside:
    """Find what lies beside the run between the shifts `first` and `second`, grown by `grow`."""
    along, axis = column.state.axis, fan.axis
    across = 3 - along - axis
    ends = column.start[axis] + fan.sign * first, column.start[axis] + fan.sign * second
    lo, hi = np.minimum(*ends) - grow, np.maximum(*ends) + grow
    side = column.start[across] - fan.half[1], column.start[across] + fan.half[1]
    which = np.flatnonzero(
        (column.lo[:, across] < side[1]) & (column.hi[:, across] > side[0])
        & (column.lo[:, axis] < hi.max()) & (column.hi[:, axis] > lo.min())
    )  # fmt: skip
    low, high = (np.repeat(v[which, along][:, None], len(first), axis=1) for v in (column.lo, column.hi))
    near = (column.lo[which, axis][:, None] < hi) & (column.hi[which, axis][:, None] > lo)
    for row, n in enumerate(which.tolist()):
        region = column.regions[n]
        if region.axis < 0 or region.axis == along or not near[row].any():
            continue
        if 3 - along - region.axis == across:
            ends_lo, ends_hi = [0, 0, 0], [0, 0, 0]
            ends_lo[across], ends_hi[across] = side
            low[row], high[row], there = along_range(region, along, ends_lo, ends_hi)
            near[row] &= there
        else:
            left, right = np.maximum(lo, region.lo[axis]), np.minimum(hi, region.hi[axis])
            corners = region.outline if axis < along else tuple((v, u) for u, v in region.outline)
            low[row], high[row] = _spans(corners, left, right)
            near[row] &= left < right
    return _Beside(which, low, high, near)


@dataclass(frozen=True)
class Leaving:
    """A way out straight ahead: for which shifts it is open, and where the duct would end."""

    exit: Exit
    open: Bools
    end: Ints


def leaving(space: FreeSpace, column: Column, fan: Fan) -> Iterator[Leaving]:
    """Give the ways out straight ahead of the shifted runs."""
    at = [np.full(len(fan.distance), v, np.int64) for v in column.start]
    at[fan.axis] = at[fan.axis] + fan.sign * fan.distance
    u, v = (at[t] for t in range(3) if t != column.state.axis)
    inside = (space.lo[fan.axis] <= at[fan.axis]) & (at[fan.axis] <= space.hi[fan.axis])
    for leave in space.exits:
        if (leave.axis, leave.sign) == column.state[:2]:
            allowed = leave.allows(u, v) & inside
            if allowed.any():
                yield Leaving(leave, allowed, leave.end(u, v))


@dataclass(frozen=True)
class Fits:
    """The places where each offset of a fan may begin: outside all open intervals (`low`, `high`), of shape (things, shifts)."""

    low: Ints
    high: Ints

    def least(self, lowest: Ints, highest: Ints) -> Ints:
        """Give each offset's least place from `lowest` on [ticks along the run], `FAR` where it lies above `highest`.

        All three are of shape (shifts,).
        """
        at = lowest
        while True:
            hit = (self.low < at) & (self.high > at) & (at <= highest)
            if not hit.any():
                return np.where(at <= highest, at, FAR)
            at = np.maximum(at, np.where(hit, self.high, -FAR).max(axis=0))

    def most(self, lowest: Ints, highest: Ints) -> Ints:
        """Give each offset's greatest place up to `highest` [ticks along the run], -`FAR` where it lies below `lowest`.

        All three are of shape (shifts,).
        """
        at = highest
        while True:
            hit = (self.low < at) & (self.high > at) & (at >= lowest)
            if not hit.any():
                return np.where(at >= lowest, at, -FAR)
            at = np.minimum(at, np.where(hit, self.low, FAR).min(axis=0))


def _gathered(rows: list[tuple[Ints, Ints, Bools]]) -> Fits:
    """Put intervals together; those that are not there are empty."""
    low = np.concatenate([np.where(there, lo, FAR) for lo, _, there in rows])
    high = np.concatenate([np.where(there, hi, -FAR) for _, hi, there in rows])
    return Fits(low, high)


def fits(column: Column, fan: Fan, hidden: Bools) -> Fits:
    """Find where each offset of a fan has room.

    Parameters
    ----------
    column : Column
        The run from which the offsets start.
    fan : Fan
    hidden : bool array
        Whether the cover hides the offset, so that the open room does not count.
    """
    d, half, grow = fan.distance, fan.half[0], fan.half[0] + fan.bulge
    none = np.zeros_like(d)
    first, second, slant = (
        _beside(column, fan, *shifts) for shifts in ((none, none, half), (d, d, half), (none, d, grow))
    )
    rows = []
    for part, behind in ((first, none), (second, fan.advance - fan.stub)):
        rows.append((part.low - behind - fan.stub, part.high - behind, _counts(column, part, hidden)))
    a, b = (fan.sign * (v[slant.which, fan.axis][:, None] - column.start[fan.axis]) for v in (column.lo, column.hi))
    begin = np.maximum((np.minimum(a, b) - grow) / d, 0.0)
    finish = np.minimum((np.maximum(a, b) + grow) / d, 1.0)
    rows.append((
        np.floor(slant.low - grow - fan.stub - finish * fan.forward).astype(np.int64),
        np.ceil(slant.high + grow - fan.stub - begin * fan.forward).astype(np.int64),
        _counts(column, slant, hidden) & (begin < finish),
    ))  # fmt: skip
    return _gathered(rows)


def core_fits(column: Column, fan: Fan, hidden: Bools) -> Fits:
    """Find where not even the cores of each offset's bends and diagonal would be in something: a bound for `fits`.

    A core is a square that fits into the round duct whichever way it is cut. The diagonal's is swept along the part
    behind the first bend and before the second; a bend's lies along its stub, less what the arc leaves the stub by.
    """
    angle = math.radians(fan.angle_deg)
    inner = min(fan.half) / math.sqrt(2)
    half, thin = int(inner / (math.cos(angle) + math.sin(angle))), int(inner * math.cos(angle / 2)) - fan.bulge
    lean = replace(fan, half=(half, int(inner)))
    d, inset = fan.distance, math.ceil(fan.stub * math.sin(angle)) + half
    least, most = np.minimum(inset, d // 2), np.maximum(d - inset, d // 2)
    part = _beside(column, lean, least, most, half)
    a, b = (fan.sign * (v[part.which, fan.axis][:, None] - column.start[fan.axis]) for v in (column.lo, column.hi))
    begin = np.maximum((np.minimum(a, b) - half) / d, least / d)
    finish = np.minimum((np.maximum(a, b) + half) / d, most / d)
    rows = [(
        np.floor(part.low - half - fan.stub - finish * fan.forward).astype(np.int64) + 1,
        np.ceil(part.high + half - fan.stub - begin * fan.forward).astype(np.int64) - 1,
        _counts(column, part, hidden) & (begin < finish),
    )]  # fmt: skip
    for shift, behind in ((np.zeros_like(d), 0), (d, fan.advance - fan.stub)) if thin > 0 else ():
        part = _beside(column, replace(fan, half=(thin, thin)), shift, shift, thin)
        rows.append((part.low - behind - fan.stub, part.high - behind, _counts(column, part, hidden)))
    return _gathered(rows)


def _counts(column: Column, part: _Beside, hidden: Bools) -> Bools:
    """Tell what is in the way: the open room is not where the cover hides the offset, nor where boxing has its price."""
    return part.near & (~column.room[part.which][:, None] | ~(hidden | column.priced))


def back(column: Column, fan: Fan, end: Ints, hidden: Bools) -> Ints:
    """Give the least places of offsets from which the shifted runs are free up to their ends, `FAR` where they are not.

    Parameters
    ----------
    column : Column
        The run from which the offsets start.
    fan : Fan
    end : int64 array
        Where each shifted run ends.
    hidden : bool array
        Whether the cover hides the offset, so that the open room does not count.
    """
    line = _beside(column, fan, fan.distance, fan.distance, fan.half[0])
    stops = _counts(column, line, hidden) & (column.stops_run & ~column.outdoors)[line.which][:, None]
    stops &= line.low < end
    least = np.where(stops, line.high, -FAR).max(axis=0, initial=-FAR)
    return np.where((stops & (line.high >= end)).any(axis=0), FAR, least - fan.advance)
