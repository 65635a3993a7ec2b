"""Events on parallel grid lines, and the one scan that the whole search consists of.

An *event* is a grid point where something may happen: an elbow, a start. All events of one axis lie in one array,
line after line; runs may not cross the end of a *segment*, the free interval of a line. A scan answers, for every
event at once: what is the least value of (cost to get to an event at least `lag` ahead in my segment + cost from
there)? Adding the cost coordinate turns that into one suffix minimum, because the cost of a run is a difference of
cost coordinates.

Numbers: every cost is below `limit` and every cost coordinate within a segment spans less than `limit`. Segments
are set 2 x `limit` apart, so that a minimum that comes from another segment is at least `limit` and reads as "no
way"; so does every sum with `NONE`. The offsets restart in blocks, so that nothing comes near 2^63.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property
from itertools import pairwise

import numpy as np
import numpy.typing as npt

from routeviz.model.freespace import Ints
from routeviz.search.masks import Bools

__all__ = ["NONE", "Lines", "lines"]

NONE = np.int64(1 << 61)  # no way; sums of two stay below 2^63
Small = npt.NDArray[np.int32]
_ROOM = 1 << 60  # segment offsets stay below


@dataclass(frozen=True)
class Lines:
    """Events along one axis, in line order: line after line, ascending along each.

    Attributes
    ----------
    order : int32 array
        Each event's number in the caller's numbering.
    line : int32 array
        Each event's line: flat index over the two other axes.
    index, place : int32 and int64 arrays
        Grid index and coordinate along the axis [ticks].
    cost : int64 array
        Cost coordinate: the cost between two events of a segment is the difference.
    segment : int32 array
        Number of the free interval, ascending.
    first_at : int32 array
        For each grid point, flat in line order, the first event at or after it.
    axis_place : int64 array
        All grid coordinates along the axis.
    limit : int
        Larger than any cost.
    """

    order: Small
    line: Small
    index: Small
    place: Ints
    cost: Ints
    segment: Small
    first_at: npt.NDArray[np.int32]
    axis_place: Ints
    limit: int

    @cached_property
    def _blocks(self) -> list[slice]:
        """Give slices of events whose segments share one run of offsets."""
        if not len(self.segment):
            return []
        per_block = max(1, _ROOM // (2 * self.limit) - 1)
        number = self.segment // per_block
        cuts = np.flatnonzero(np.diff(number)) + 1
        return [slice(int(a), int(b)) for a, b in pairwise([0, *cuts, len(number)])]

    @cached_property
    def _key(self) -> Ints:
        """Give the cost coordinate with its segment's offset."""
        key = self.cost.copy()
        for block in self._blocks:
            key[block] += (self.segment[block] - self.segment[block.start]).astype(np.int64) * (2 * self.limit)
        return key

    @cached_property
    def _ahead(self) -> dict[tuple[int, int], Small]:
        return {}

    def ahead(self, sign: int, lag: int) -> Small:
        """Give, per event, the first event at least `lag` ahead in its segment; the event count where there is none."""
        found = self._ahead.get((sign, lag))
        if found is None:
            count, width, x = len(self.place), len(self.axis_place), self.axis_place
            # backwards: one past the last coordinate that is far enough back
            step = np.searchsorted(x, x + lag) if sign > 0 else np.searchsorted(x, x - lag, "right")
            at = self.line * width
            at += step[self.index]
            found = np.append(self.first_at, np.int32(count))[at]
            if sign < 0:
                found -= 1
            inside = (found >= 0) & (found < count)
            inside[inside] = self.segment[found[inside]] == self.segment[inside]
            found[~inside] = count
            self._ahead[sign, lag] = found
        return found

    def scan(self, value: Ints, sign: int, lags: list[int]) -> list[Ints]:
        """Give the least cost of a run to an event at least `lag` ahead plus that event's value.

        Parameters
        ----------
        value : int64 array in the caller's numbering
            Cost from each event on; `limit` or more means no way.
        sign : int
            Direction along the axis.
        lags : list of int
            Least lengths asked for [ticks].

        Returns
        -------
        list of int64 arrays, one per lag, in line order
            `limit` or more means no way.
        """
        count = len(self.order)
        best = np.empty(count + 1, np.int64)
        best[count] = NONE
        inner = best[:count]
        np.take(value, self.order, out=inner)
        if sign > 0:
            inner += self._key
            for block in self._blocks:
                back = inner[block][::-1]
                np.minimum.accumulate(back, out=back)
        else:
            inner -= self._key
            for block in self._blocks:
                np.minimum.accumulate(inner[block], out=inner[block])
        found = []
        for lag in lags:
            result = best[self.ahead(sign, lag)]
            if sign > 0:
                result -= self._key
            else:
                result += self._key
            found.append(result)
        return found

    def place_in(self, values: Ints, size: int) -> Ints:
        """Put values from line order into the caller's numbering of `size` events; `NONE` elsewhere."""
        placed = np.full(size, NONE, np.int64) if size != len(values) else np.empty(size, np.int64)
        placed[self.order] = values
        return placed

    def find(self, name: int) -> int:
        """Give the place in line order of the event with this number."""
        return int(np.flatnonzero(self.order == name)[0])

    def within(self, event: int, sign: int) -> range:
        """Give the events ahead of an event (a place in line order) in its segment, nearest first."""
        if sign > 0:
            return range(event + 1, int(np.searchsorted(self.segment, self.segment[event], "right")))
        return range(event - 1, int(np.searchsorted(self.segment, self.segment[event], "left")) - 1, -1)


def lines(
    axis: int, place: Ints, blocked: Bools, cost: Ints, events: Bools, number: npt.NDArray[np.integer], limit: int
) -> Lines:
    """Sort the events of a grid into lines along one axis.

    Parameters
    ----------
    axis : int
    place : int64 array of length n
        Grid coordinates along the axis.
    blocked : bool array of the grid's shape, one less along `axis`
        Grid edges that a run may not use.
    cost : int64 array of the grid's shape, or of length n
        Cost coordinate of the grid points.
    events : bool array of the grid's shape
        Where something may happen.
    number : int array of the grid's shape
        The caller's number of each event.
    limit : int
        Larger than any cost.
    """
    turn = (*(t for t in range(3) if t != axis), axis)
    flat = np.ascontiguousarray(events.transpose(turn)).ravel()
    here = np.flatnonzero(flat)
    first_at = np.zeros(len(flat), np.int32)
    np.cumsum(flat[:-1], out=first_at[1:], dtype=np.int32)
    width = len(place)
    ends = np.ones((len(flat) // width, width), bool)  # whether the free interval ends behind a grid point
    ends.reshape(*(events.shape[t] for t in turn))[:, :, :-1] = blocked.transpose(turn)
    behind = np.cumsum(ends.ravel(), dtype=np.int32)
    line, index = (part.astype(np.int32) for part in np.divmod(here, width))
    key = behind[here] - ends.ravel()[here]
    segment = np.zeros(len(here), np.int32)
    if len(here):
        np.cumsum(key[1:] != key[:-1], out=segment[1:])
    along = cost[index] if cost.ndim == 1 else np.ascontiguousarray(cost.transpose(turn)).ravel()[here]
    named = np.ascontiguousarray(number.transpose(turn)).ravel()[here]
    return Lines(
        named.astype(np.int32), line, index, place[index], along.astype(np.int64), segment, first_at, place, limit
    )
