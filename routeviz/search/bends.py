"""Routes of one offset and one elbow: the offset in the run before the elbow, or in the run behind it.

All lines of such a route are known once the shift is chosen, so that only two places are left free: where the offset
begins on its run, and where the elbow sits. Each barrier forbids an open interval of them, and the least place outside
all of them is found without a grid. It is exact for the listed shifts, but for two things that can only make an answer
too cautious: bodies are those of `offsets`, and an offset upwards or downwards behind the elbow is tried only at
heights at which some straight part of the route touches something.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from math import isqrt

import numpy as np

from routeviz.model.freespace import BarrierKind, Exit, FreeSpace
from routeviz.search.extent import along_range
from routeviz.search.fans import fans
from routeviz.search.mirror import mirrored, unmirrored
from routeviz.search.moves import END, Moves, State, Turn, lying
from routeviz.search.offsets import Column, Offset, gaps, slack
from routeviz.search.solve import Cost
from routeviz.search.trace import OFFSET, Bent, Trace

__all__ = ["elbow_with_offset"]

Spans = list[tuple[int, int]]
_FAR = 1 << 60


@dataclass(frozen=True)
class _Turned:
    """An elbow out of the first run, and the exit that the run behind it leaves through."""

    turn: Turn
    state: State
    leave: Exit
    end: int


def _spans(column: Column, along: int, lo: list[int], hi: list[int], which: np.ndarray) -> Spans:
    """Give the extents along an axis of the things `which` overlap a rectangle on the two other axes."""
    near = which.copy()
    for t in range(3):
        if t != along:
            near &= (column.lo[:, t] < hi[t]) & (column.hi[:, t] > lo[t])
    found = []
    for n in np.flatnonzero(near):
        region = column.regions[n]
        if region.axis < 0:
            found.append((int(column.lo[n, along]), int(column.hi[n, along])))
        else:
            low, high, there = along_range(region, along, lo, hi)
            if there:
                found.append((low, high))
    return found


def _kept(leave: Exit, axis: int, other: int) -> Spans:
    """Give the open intervals along `axis` in which a cap may not sit, at the coordinate `other` across."""
    side = [t for t in range(3) if t != leave.axis].index(axis)
    found = [(-_FAR, leave.lo[side]), (leave.hi[side], _FAR)]
    if not leave.lo[1 - side] <= other <= leave.hi[1 - side]:
        return [(-_FAR, _FAR)]
    for keep in leave.keep_clear:
        beside = max(keep.lo[1 - side] - other, other - keep.hi[1 - side], 0)
        if beside < keep.reach and (side == 1 or keep.holds_off(other)):
            far = keep.reach**2 - beside**2
            root = isqrt(far)
            reach = root + (root * root < far)
            top = keep.hi[side] + reach
            found.append((keep.lo[side] - reach, top if side == 0 or keep.above is None else min(top, keep.above)))
        if keep.lo[1 - side] - keep.flange < other < keep.hi[1 - side] + keep.flange:
            found.append((keep.lo[side] - keep.flange, keep.hi[side] + keep.flange))
    return found


class _Search:
    """One way of lying on the collar, one direction behind the elbow (up the axis `go`)."""

    def __init__(self, space: FreeSpace, table: Moves, state: State, turned: _Turned, *, hides_back: bool) -> None:
        self.space, self.table, self.state, self.turned = space, table, state, turned
        self.along, self.go = state.axis, turned.state.axis
        self.across = 3 - self.along - self.go
        self.take_off = table.take_off[turned.turn.kind]
        self.body = table.bodies[turned.turn.body]
        self.half, self.half_after = table.half(state), table.half(turned.state)
        self.first = Column(space, state, priced=False)
        self.hides_back = hides_back
        self.every = np.ones(len(self.first.regions), bool)
        self.running = self.first.stops_run
        barriers = space.barriers
        room = [True] * len(space.boxing)
        self.after = np.array([b.runs[self.go] for b in barriers] + room)
        self.outdoors = np.array([b.kind is BarrierKind.OUTDOORS for b in barriers] + [False] * len(room))
        self.room = self.first.room
        start = list(space.start.point)
        self.least = start[self.along] + space.limits.first + self.take_off
        self.top = min(self._first_stop(), space.hi[self.along])
        self.barred = self.elbow(start, ~self.room if hides_back else self.every)
        self.whole = self.run(start, start[self.go], turned.end, self.every)

    def turns_at_all(self) -> bool:
        """Tell whether the elbow has room anywhere on the first run."""
        return next(gaps(self.least, self.top, self.barred), None) is not None

    def _under_cover(self, height: int) -> bool:
        """Tell whether the cover hides an elbow at this height and the run straight back from it."""
        return self.hides_back and height + self.half_after[2] <= self.space.start.cover_top

    def elbow(self, at: list[int], which: np.ndarray) -> Spans:
        """Give the open intervals along the first run's axis in which the elbow has no room."""
        lo = [at[t] + self.body[t][0] for t in range(3)]
        hi = [at[t] + self.body[t][1] for t in range(3)]
        low, high = self.body[self.along]
        return [(a - high, b - low) for a, b in _spans(self.first, self.along, lo, hi, which)]

    def run(self, at: list[int], begin: int, end: int, which: np.ndarray) -> Spans:
        """Give the open intervals along the first run's axis in which a run up the axis `go` is barred."""
        half = self.half_after
        lo, hi = [at[t] - half[t] for t in range(3)], [at[t] + half[t] for t in range(3)]
        lo[self.go], hi[self.go] = begin, end
        found = _spans(self.first, self.along, lo, hi, which & self.after)
        return [(a - half[self.along], b + half[self.along]) for a, b in found]

    def before(self, offset: Offset) -> tuple[Cost, Trace] | None:
        """Put the offset before the elbow."""
        space, a = self.space, self.along
        at = list(space.start.point)
        at[offset.axis] += offset.sign * offset.distance
        length = self.turned.end - at[self.go]
        if length < self.table.lag(self.turned.turn.kind, END):
            return None
        hidden = space.start.covered and offset.distance <= slack(space, offset)
        if not self.first.begins(offset, hidden):
            return None
        barred = self.elbow(at, self.every) + self.run(at, at[self.go], self.turned.end, ~self.outdoors)
        barred += _kept(self.turned.leave, a, at[self.across])
        begin = space.start.point[a] + space.limits.first
        least = begin + offset.advance + space.limits.between + self.take_off
        if next(gaps(least, space.hi[a], barred), None) is None:
            return None
        counts = ~self.room if hidden else self.every
        lo, hi = (
            [v - h for v, h in zip(at, self.half, strict=True)],
            [v + h for v, h in zip(at, self.half, strict=True)],
        )
        stops = _spans(self.first, a, lo, hi, counts & self.running)
        fits = list(gaps(begin, self.first.free_to(offset), self.first.forbidden(offset, hidden)))
        best: tuple[int, int] | None = None
        for low, high in fits:
            for place in sorted({low, *(b - offset.advance for _, b in stops if low <= b - offset.advance <= high)}):
                behind = place + offset.advance
                if any(p < behind < q for p, q in stops):
                    continue
                top = min((p for p, q in stops if q > behind), default=_FAR)
                least = behind + space.limits.between + self.take_off
                spot = next(gaps(least, min(top, space.hi[a]), barred), None)
                if spot is not None and (best is None or spot[0] < best[0]):
                    best = spot[0], place
        if best is None:
            return None
        height, place = best
        return self._route(offset, height, place, before=True)

    def _route(self, offset: Offset, height: int, place: int, *, before: bool) -> tuple[Cost, Trace]:
        """Write the route: the elbow at `height` on the first axis, the offset from `place` on along its run's axis."""
        start, a, go = self.space.start.point, self.along, self.go
        here, points = list(start), [start]

        def to(axis: int, value: int, shift: bool = False) -> None:
            here[axis] = value
            if shift:
                here[offset.axis] += offset.sign * offset.distance
            points.append((here[0], here[1], here[2]))

        if not before:
            to(a, height)
        bend = place + offset.stub
        to(a if before else go, bend)
        to(a if before else go, bend + offset.forward, shift=True)
        if before:
            to(a, height)
        to(go, self.turned.end)
        kind = self.turned.turn.kind
        states, after = (self.state, self.turned.state), (OFFSET, OFFSET, kind)
        trace = Trace(
            tuple(points), (states[0],) * 3 + (states[1],) if before else (states[0],) + (states[1],) * 3,
            after if before else (kind, OFFSET, OFFSET), self.turned.leave, 0,
            (Bent(offset.angle_deg, offset.radius, offset.axis),),
        )  # fmt: skip
        return (0, 2, trace.length), trace

    def behind(self, offset: Offset) -> tuple[Cost, Trace] | None:
        """Put the offset behind the elbow: the lowest elbow that allows it."""
        space, a, go = self.space, self.along, self.go
        start = space.start.point
        upright = offset.axis == a
        rise = offset.sign * offset.distance
        moved = [v + (rise if t == offset.axis else 0) for t, v in enumerate(start)]
        corner = start[go] + self.take_off + space.limits.between
        highest = self.turned.end - space.limits.last - offset.advance
        if corner > highest:
            return None
        exits = _kept(self.turned.leave, a, moved[self.across])
        tail = self.run(moved, highest + offset.advance, self.turned.end, ~self.outdoors)
        exits, tail = [[(p - rise * upright, q - rise * upright) for p, q in part] for part in (exits, tail)]
        barred = self.barred + exits + tail
        if next(gaps(self.least, self.top, barred), None) is None:
            return None
        after = self.run(moved, start[go], self.turned.end, self.every)
        edges = {self.least, *(q for _, q in barred), *(v for span in self.whole for v in span)}
        edges |= {v - rise * upright for span in after for v in span}
        for height in sorted(h for h in edges if self.least <= h <= self.top):
            if any(p < height < q for p, q in barred):
                continue
            place = self._place(offset, height, corner, highest)
            if place is not None:
                return self._route(offset, height, place, before=False)
        return None

    def _first_stop(self) -> int:
        """Give how far the first run is free."""
        start = self.space.start.point
        counts = ~self.room if self.space.start.covered else self.every
        lo = [v - h for v, h in zip(start, self.half, strict=True)]
        hi = [v + h for v, h in zip(start, self.half, strict=True)]
        found = _spans(self.first, self.along, lo, hi, counts & self.running)
        return min((p for p, q in found if q > start[self.along]), default=_FAR)

    def _place(self, offset: Offset, height: int, corner: int, highest: int) -> int | None:
        """Give the nearest place of the offset on the run behind an elbow at this height."""
        at = list(self.space.start.point)
        at[self.along] = height
        covered = self._under_cover(height)
        if self.hides_back and not covered and self.elbow_in_room(at):
            return None
        column = Column(
            self.space, self.turned.state, priced=False, start=(at[0], at[1], at[2]), covered=covered
        )  # fmt: skip
        free = column.free_from(offset, self.turned.end, False)
        if free is None:
            return None
        lowest = max(corner, free - offset.advance)
        spot = next(gaps(lowest, min(highest, column.free_to(offset)), column.forbidden(offset, False)), None)
        if spot is None:
            return None
        beyond = self.run(at, max(at[self.go], 0), spot[0] + offset.stub, self.room) if covered else []
        return None if any(p < height < q for p, q in beyond) else spot[0]

    def elbow_in_room(self, at: list[int]) -> bool:
        """Tell whether an elbow lies in the open room."""
        return any(p < at[self.along] < q for p, q in self.elbow(at, self.room))


def _turns(space: FreeSpace, table: Moves, source: int, axis: int) -> Iterator[_Turned]:
    for turn in table.turns:
        state = table.states[turn.target]
        if turn.source != source or state[:2] != (axis, 1):
            continue
        for leave in space.exits:
            if (leave.axis, leave.sign) == (axis, 1) and leave.flat:
                yield _Turned(turn, state, leave, round(leave.rise[0]))


def _inside(space: FreeSpace, offset: Offset) -> bool:
    at = space.start.point[offset.axis] + offset.sign * offset.distance
    return space.lo[offset.axis] <= at <= space.hi[offset.axis]


def _one_way(space: FreeSpace, table: Moves, axis: int, *, hides_back: bool) -> Iterator[tuple[Cost, Trace]]:
    """Give the best route per shift whose run behind the elbow goes up an axis."""
    for state in lying(space, table):
        number = table.states.index(state)
        for turned in _turns(space, table, number, axis):
            search = _Search(space, table, state, turned, hides_back=hides_back)
            for fan in fans(space, table, state):
                for offset in fan.offsets():
                    if not _inside(space, offset):
                        break
                    found = search.before(offset)
                    if found is not None:
                        yield found
            if not search.turns_at_all():
                continue
            for fan in fans(space, table, turned.state):
                for offset in fan.offsets():
                    if offset.axis != space.start.axis and not _inside(space, offset):
                        break
                    found = search.behind(offset)
                    if found is not None:
                        yield found
                        if (offset.axis, offset.sign) != (space.start.axis, 1):
                            break  # a longer shift the same way is no shorter, unless it saves some of the riser


def elbow_with_offset(space: FreeSpace, table: Moves) -> tuple[Cost, Trace] | None:
    """Find the best hidden route of one 90-degree elbow and one offset from the listed shifts, or None.

    Parameters
    ----------
    space : FreeSpace
        The open room below the collar is taken as closed already.
    table : Moves

    Returns
    -------
    tuple of Cost and Trace
        Two elbows (two equal bends count as one); and the route.
    """
    if space.start.sign < 0:
        return None
    best: tuple[Cost, Trace] | None = None
    for axis in (t for t in range(3) if t != space.start.axis):
        for turned in (False, True) if axis != 2 else (False,):
            seen = mirrored(space, axis) if turned else space
            hides = space.start.covered and axis == 1 and not turned and space.start.axis == 2
            for cost, route in _one_way(seen, table, axis, hides_back=hides):
                if best is None or cost < best[0]:
                    best = cost, unmirrored(route, axis, space) if turned else route
    return best
