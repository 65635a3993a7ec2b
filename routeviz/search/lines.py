"""Events on parallel grid lines, and the one scan that the whole search consists of.

An *event* is a grid point where something may happen: an elbow, a start. All events of one axis lie in one array,
line after line; runs may not cross the end of a *segment*, the free interval of a line. A scan answers, for every
event at once: what is the least value of (cost to get to an event at least `lag` ahead in my segment + cost from
there)? Adding the cost coordinate turns that into one suffix minimum, because the cost of a run is a difference of
cost coordinates.

Numbers: every cost is below `limit` and every cost coordinate within a segment spans less than `limit`. Segments
are set 2 x `limit` apart, so that a minimum that comes from another segment is at least `limit` and reads as "no
way"; so does every sum with "no way" itself. Both building and scanning go chunk by chunk, so that what they touch
stays in the processor's cache; the segments' offsets restart with every chunk, so that nothing comes near 2^63.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from typing import NamedTuple

import numpy as np
import numpy.typing as npt

from routeviz.model.freespace import Ints
from routeviz.search.masks import Bools, Small
from routeviz.search.terms import Costs, Terms

__all__ = ["Ahead", "Lines", "lines"]

_POINTS = 1 << 15  # grid points built at once
_EVENTS = 1 << 14  # events scanned at once
_FAR = 1 << 61  # no way, while scanning
_ROOM = 1 << 60  # segment offsets stay below
_LAST = (1 << 31) - 1


class Ahead(NamedTuple):
    """Events ahead on a line: the caller's numbers, grid indices along the axis, lengths and costs of the runs there."""

    names: Small
    at: Small
    length: Ints
    cost: Ints


@dataclass(frozen=True)
class Lines:
    """Events along one axis, in line order: line after line, ascending along each.

    Attributes
    ----------
    order : int32 array
        Each event's number in the caller's numbering; `ordered` says that both are the same.
    line, index : int32 arrays
        Each event's line, a flat index over the two other axes, and its grid index along the axis.
    segment : int32 array
        Number of the free interval, ascending.
    key : int64 array
        Cost coordinate plus the segment's offset: within a segment, cost is the difference.
    chunks : tuple of (start, stop)
        Stretches of events between segments' ends.
    ahead : dict
        Per (sign, lag) and event: the first event at least `lag` ahead in its segment, counted from its chunk's start;
        the chunk's size where there is none.
    place : int64 array
        All grid coordinates along the axis [ticks].
    """

    order: Small
    ordered: bool
    line: Small
    index: Small
    segment: Small
    key: Ints
    chunks: tuple[tuple[int, int], ...]
    ahead: dict[tuple[int, int], npt.NDArray[np.integer]]
    place: Ints
    terms: Terms

    def scan(self, value: Costs, sign: int, lags: Sequence[int]) -> list[Costs]:
        """Give the least cost of a run to an event at least `lag` ahead plus that event's value.

        Parameters
        ----------
        value : array in the caller's numbering
            Cost from each event on; `limit` or more means no way.
        sign : int
            Direction along the axis.
        lags : sequence of int
            Least lengths asked for [ticks].

        Returns
        -------
        list of arrays, one per lag, in the caller's numbering
            `limit` or more means no way, as everywhere outside the events.
        """
        none, partial = self.terms.none, len(value) != len(self.order)
        found = [np.full_like(value, none) if partial else np.empty_like(value) for _ in lags]
        ahead = [self.ahead[sign, lag] for lag in lags]
        most = max((b - a for a, b in self.chunks), default=0)
        best, result, name = np.empty(most + 1, np.int64), np.empty(most, np.int64), np.empty(most, np.intp)
        for start, stop in self.chunks:
            size = stop - start
            key, inner, here = self.key[start:stop], best[:size], slice(start, stop)
            if not self.ordered:
                name[:size] = self.order[here]
            worth = value[here] if self.ordered else value[name[:size]]
            if sign > 0:
                np.add(worth, key, out=inner)
                np.minimum.accumulate(inner[::-1], out=inner[::-1])
            else:
                np.subtract(worth, key, out=inner)
                np.minimum.accumulate(inner, out=inner)
            best[size] = _FAR
            for to, table in zip(found, ahead, strict=True):
                cost = np.take(best, table[here], out=result[:size], mode="clip")
                (np.subtract if sign > 0 else np.add)(cost, key, out=cost)
                np.minimum(cost, none, out=cost)
                to[here if self.ordered else name[:size]] = cost
        return found

    def reach(self, line: int, index: int, sign: int) -> Ahead:
        """Give the events that a run from the event at a grid index on a line can reach, in ascending order."""
        first, last = (int(np.searchsorted(self.line, np.int32(line), side)) for side in ("left", "right"))
        event = first + int(np.searchsorted(self.index[first:last], np.int32(index)))
        if sign > 0:
            others = slice(event + 1, int(np.searchsorted(self.segment, self.segment[event], "right")))
        else:
            others = slice(int(np.searchsorted(self.segment, self.segment[event], "left")), event)
        length = np.abs(self.place[self.index[others]] - self.place[self.index[event]])
        return Ahead(self.order[others], self.index[others], length, np.abs(self.key[others] - self.key[event]))


def _pieces(shape: tuple[int, ...]) -> Iterator[tuple[slice, slice]]:
    """Cut lines (rows by columns by width) into stretches of about `_POINTS` grid points."""
    rows, columns, width = shape
    if columns * width <= _POINTS:
        step = max(1, _POINTS // max(columns * width, 1))
        for row in range(0, rows, step):
            yield slice(row, min(row + step, rows)), slice(0, columns)
        return
    step = max(1, _POINTS // width)
    for row in range(rows):
        for column in range(0, columns, step):
            yield slice(row, row + 1), slice(column, min(column + step, columns))


def _cut(segment: Small, most: int) -> Iterator[tuple[int, int]]:
    """Cut events into chunks at segments' ends: of about `_EVENTS` events and at most `most` segments."""
    at, count = 0, len(segment)
    while at < count:
        stop = count if at + _EVENTS >= count else int(np.searchsorted(segment, segment[at + _EVENTS]))
        if stop <= at:  # one long segment
            stop = int(np.searchsorted(segment, segment[at], "right"))
        stop = min(stop, int(np.searchsorted(segment, np.int32(min(int(segment[at]) + most, _LAST)))))
        yield at, stop
        at = stop


class _Builder:
    """Sorts the events of a grid into lines, piece by piece."""

    def __init__(self, place: Ints, count: int, wanted: Sequence[tuple[int, int]]) -> None:
        self.place = place
        self.order, self.line, self.index, self.segment = (np.empty(count, np.int32) for _ in range(4))
        self.key = np.empty(count, np.int64)
        self.ahead = {lag: np.empty(count, np.int32) for lag in wanted}
        self.steps = {
            (sign, lag): np.searchsorted(place, place + lag)
            if sign > 0
            else np.searchsorted(place, place - lag, "right")
            for sign, lag in wanted
        }
        self.events = self.segments = 0

    def add(self, events: Bools, blocked: Bools, number: Small, first_line: int) -> tuple[slice, Ints]:
        """Add a piece of whole lines; give which events they are, and their flat grid places in the piece."""
        flat = np.ascontiguousarray(events).ravel()
        at = np.flatnonzero(flat)
        new = slice(self.events, self.events + len(at))
        before = np.zeros(len(flat) + 1, np.int32)  # how many events lie before a grid point
        np.cumsum(flat, out=before[1:], dtype=np.int32)
        ends = np.ones(events.shape, bool)  # whether the free interval ends behind a grid point
        ends[..., :-1] = blocked
        behind = np.cumsum(ends, dtype=np.int32)[at]
        behind -= ends.ravel()[at]
        segment = self.segment[new]
        if len(at):
            segment[0] = self.segments
            np.cumsum(behind[1:] != behind[:-1], out=segment[1:], dtype=np.int32)
            segment[1:] += self.segments
            self.segments = int(segment[-1]) + 1
        line, index = np.divmod(at.astype(np.int32), np.int32(len(self.place)))
        self.line[new], self.index[new] = line + np.int32(first_line), index
        self.order[new] = np.ascontiguousarray(number).ravel()[at]
        padded = np.append(behind, np.int32(-1))
        for (sign, lag), found in self.ahead.items():
            to = before[self.steps[sign, lag][index] + (at - index)]
            if sign < 0:  # one past the last event that is far enough back
                to -= 1
            to[padded[to] != behind] = len(self.order)
            to += np.int32(new.start) * (to < len(self.order))
            found[new] = to
        self.events = new.stop
        return new, at


def lines(
    axis: int, place: Ints, blocked: Bools, boxed: Small | None, events: Bools, number: Small, terms: Terms,
    wanted: Sequence[tuple[int, int]],
) -> Lines:  # fmt: skip
    """Sort the events of a grid into lines along one axis.

    Parameters
    ----------
    axis : int
    place : int64 array of length n
        Grid coordinates along the axis.
    blocked : bool array of the grid's shape, one less along `axis`
        Grid edges that a run may not use.
    boxed : int32 array of the grid's shape, or None
        What has its price, up to each grid point.
    events : bool array of the grid's shape
        Where something may happen.
    number : int32 array of the grid's shape
        The caller's number of each event.
    terms : Terms
    wanted : sequence of (sign, lag)
        The scans that will be asked for.
    """
    turn = (*(t for t in range(3) if t != axis), axis)
    events, blocked, number = events.transpose(turn), blocked.transpose(turn), number.transpose(turn)
    price = None if boxed is None else boxed.transpose(turn)
    build = _Builder(place, int(np.count_nonzero(events)), tuple(dict.fromkeys(wanted)))
    for rows, columns in _pieces(events.shape):
        first = rows.start * events.shape[1] + columns.start
        new, at = build.add(events[rows, columns], blocked[rows, columns], number[rows, columns], first)
        build.key[new] = place[build.index[new]]
        if price is not None:
            build.key[new] += np.ascontiguousarray(price[rows, columns]).ravel()[at].astype(np.int64) * terms.weight
    chunks = tuple(_cut(build.segment, max(1, _ROOM // (2 * terms.limit) - 1)))
    short = max((b - a for a, b in chunks), default=0) < 1 << 16
    ahead: dict[tuple[int, int], npt.NDArray[np.integer]] = {}
    for lag, found in build.ahead.items():
        for start, stop in chunks:
            np.minimum(found[start:stop] - np.int32(start), np.int32(stop - start), out=found[start:stop])
        ahead[lag] = found.astype(np.uint16) if short else found
    for start, stop in chunks:
        offset = (build.segment[start:stop] - build.segment[start]).astype(np.int64)
        build.key[start:stop] += offset * (2 * terms.limit)
    ordered = axis == 2 and bool((build.order == np.arange(len(build.order), dtype=np.int32)).all())
    return Lines(build.order, ordered, build.line, build.index, build.segment, build.key, chunks, ahead, place, terms)
