"""Straight ways out that step aside: one offset, or two in turn on the same run.

An offset does not change where its run goes, only on which line. So the length of such a way is the distance to its
end and what each offset adds, whatever the offsets' places, and the best way is the least of that over the listed
shifts for which the offsets fit somewhere.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

import numpy as np

from routeviz.model.freespace import Exit, FreeSpace, Ints, Ticks
from routeviz.search.fans import FAR, Fan, Fits, Leaving, back, core_fits, fans, fits, leaving
from routeviz.search.moves import Moves, State, lying
from routeviz.search.offsets import Column, Offset, gaps
from routeviz.search.solve import Cost
from routeviz.search.trace import OFFSET, Bent, Trace

__all__ = ["Sidesteps", "least_with_offset", "offsets_at_all", "straight_with_offset", "straight_with_two"]


def _upwards(space: FreeSpace) -> FreeSpace:
    """Leave out the room below the collar: a riser goes up from there, whatever its bends are grown by."""
    if space.start.axis != 2:
        return space
    return replace(space, barriers=tuple(b for b in space.barriers if b.id != "open-room"))


def _states(space: FreeSpace, table: Moves) -> Iterator[State]:
    """Give the ways in which a duct may lie on the collar; a run down its axis takes no offset."""
    return lying(space, table) if space.start.sign > 0 else iter(())


def _hidden(column: Column, fan: Fan) -> np.ndarray:
    """Tell which shifts stay inside the chimney cover."""
    if not column.covered:
        return np.zeros(len(fan.distance), bool)
    space = column.space
    left, right, out, back = space.start.cover_slack
    room = ((left, right) if fan.axis == 0 else (out, back))[fan.sign > 0]
    moved = fan.sign * (column.start[fan.axis] - space.start.point[fan.axis])
    hidden: np.ndarray = fan.distance + moved <= room
    return hidden


def _begins(column: Column, fan: Fan, hidden: np.ndarray) -> np.ndarray:
    """Tell for which shifts the first stub has room anywhere on the run."""
    one = fan.offset(0)
    return np.where(hidden, column.begins(one, True), column.begins(one, False))


def _written(
    start: Ticks, state: State, offsets: list[tuple[Offset, int]], end: int, face: Exit
) -> Trace:  # fmt: skip
    """Write a run with offsets, each with the place where it begins, as a route."""
    here, along = list(start), state.axis
    points: list[Ticks] = [start]
    for offset, at in offsets:
        here[along] = at + offset.stub
        points.append((here[0], here[1], here[2]))
        here[along] += offset.forward
        here[offset.axis] += offset.sign * offset.distance
        points.append((here[0], here[1], here[2]))
    here[along] = end
    points.append((here[0], here[1], here[2]))
    bent = tuple(Bent(o.angle_deg, o.radius, o.axis) for o, _ in offsets)
    return Trace(tuple(points), (state,) * (len(points) - 1), (OFFSET,) * (len(points) - 2), face, 0, bent)


def straight_with_offset(space: FreeSpace, table: Moves, *, priced: bool) -> tuple[Cost, Trace] | None:
    """Find the best straight way out with one offset from the listed shifts, or None.

    Parameters
    ----------
    space : FreeSpace
        The open room below the collar is taken as closed already.
    table : Moves
    priced : bool
        Whether the open room may be used at a price.

    Returns
    -------
    tuple of Cost and Trace
        Boxed length, elbows (two equal bends count as one) and length; and the route.
    """
    space = _upwards(space)
    found = (_least(space, column, fan, out) for column, fan, out in _aside(space, table, priced=priced))
    return min((way for way in found if way is not None), key=lambda way: way[0], default=None)


def _aside(space: FreeSpace, table: Moves, *, priced: bool) -> Iterator[tuple[Column, Fan, Leaving]]:
    """Give every way of lying on the collar with every fan of offsets and every way out straight ahead of them."""
    for state in _states(space, table):
        column = Column(space, state, priced=priced)
        for fan in fans(space, table, state):
            for out in leaving(space, column, fan):
                yield column, fan, out


def least_with_offset(space: FreeSpace, table: Moves) -> Cost | None:
    """Give a cost that no hidden straight way with one offset can beat: only the core of its diagonal takes room.

    None when even so there is no such way.
    """
    shortest, space = FAR, _upwards(space)
    for column, fan, out in _aside(space, table, priced=False):
        begin, hidden = space.start.point[column.state.axis], _hidden(column, fan)
        lowest = np.maximum(begin + space.limits.first, back(column, fan, out.end, hidden))
        highest = np.minimum(column.free_to(fan.offset(0)), out.end - space.limits.last - fan.advance)
        if (lowest > highest).all():
            continue
        at = core_fits(column, fan, hidden).least(lowest, highest)
        length = np.where(out.open & (at < FAR), out.end - begin + fan.extra, FAR)
        shortest = min(shortest, int(length.min()))
    return None if shortest == FAR else (0, 1, shortest)


def offsets_at_all(space: FreeSpace, table: Moves, *, priced: bool, straight: int = 0) -> bool:
    """Tell whether the core of any listed offset has room on the first run; a proof where it says no.

    Parameters
    ----------
    space : FreeSpace
        The open room below the collar is taken as closed already.
    table : Moves
    priced : bool
        Whether the open room may be used at a price.
    straight : int
        How much straight duct must have room behind the offset [ticks].
    """
    space = _upwards(space)
    for state in _states(space, table):
        column = Column(space, state, priced=priced)
        for fan in fans(space, table, state):
            hidden = _hidden(column, fan)
            if any(_first_offsets(space, column, fan, core_fits(column, fan, hidden), hidden, straight)):
                return True
    return False


def _least(space: FreeSpace, column: Column, fan: Fan, out: Leaving) -> tuple[Cost, Trace] | None:
    """Give the best way with one offset of a fan: as low as it goes, or under the ceiling where it would need boxing."""
    hidden = _hidden(column, fan)
    worth = out.open & _begins(column, fan, hidden)
    if not worth.any():
        return None
    begin = column.start[column.state.axis]
    lowest = np.maximum(begin + space.limits.first, back(column, fan, out.end, hidden))
    highest = np.minimum(column.free_to(fan.offset(0)), out.end - space.limits.last - fan.advance)
    highest = np.where(worth, highest, -FAR)
    if (lowest > highest).all():
        return None
    room = fits(column, fan, hidden)
    at = room.least(lowest, highest)
    boxed = np.zeros_like(at)
    if column.priced and column.state.axis == 2:
        at, boxed = _boxed(column, fan, room, lowest, highest, at)
        boxed[hidden] = 0
    length = out.end - begin + fan.extra
    good = np.flatnonzero(at < FAR)
    if not len(good):
        return None
    n = min(good.tolist(), key=lambda n: (boxed[n], length[n], n))
    route = _written(space.start.point, column.state, [(fan.offset(n), int(at[n]))], int(out.end[n]), out.exit)
    return (int(boxed[n]), 1, route.length), route


def _boxed(
    column: Column, fan: Fan, room: Fits, lowest: Ints, highest: Ints, at: Ints
) -> tuple[Ints, Ints]:  # fmt: skip
    """Move offsets up under the ceiling, and give what of each would need boxing."""
    start = column.space.start
    begin = start.point[2]
    top = start.cover_top if start.covered else int(column.hi[column.room, 2].max(initial=begin))
    under = room.most(lowest, np.minimum(highest, top - fan.advance))
    at = np.where((at < FAR) & (under > -FAR), under, at)
    length = fan.extra + fan.advance
    before = 0 if start.covered else at - begin
    return at, np.where(at < top, length + np.maximum(top - at - fan.advance, 0) + before, 0)


def straight_with_two(space: FreeSpace, table: Moves, beat: int = FAR) -> tuple[Cost, Trace] | None:
    """Find the best hidden straight way out with two offsets in turn from the listed shifts, or None.

    Parameters
    ----------
    space : FreeSpace
        The open room below the collar is taken as closed already.
    table : Moves
    beat : int
        Only a way shorter than this is wanted [ticks].

    Returns
    -------
    tuple of Cost and Trace
        Two elbows (two equal bends count as one); and the route.
    """
    best: tuple[Cost, Trace] | None = None
    space = _upwards(space)
    nearest = min(_ends(space), default=FAR)
    for state in _states(space, table) if nearest < FAR else ():
        column = Column(space, state, priced=False)
        begin = space.start.point[state.axis]
        firsts = []
        for fan in fans(space, table, state):
            hidden = _hidden(column, fan)
            if _begins(column, fan, hidden).any():
                found = _first_offsets(space, column, fan, fits(column, fan, hidden), hidden, space.limits.between)
                firsts += [(extra, at, n, fan) for n, extra, at in found]
        cache: dict[tuple[int, int, bool], Line] = {}
        for extra, at, n, fan in sorted(firsts, key=lambda f: (f[0], f[1])):
            if nearest - begin + extra >= beat:
                break
            offset = fan.offset(n)
            way = _second(space, table, column, offset, at, bool(_hidden(column, fan)[n]), beat - extra, cache)
            if way is not None:
                beat, best = way[0][2], way
    return best


def _ends(space: FreeSpace) -> Iterator[int]:
    """Give for every way out straight ahead the least coordinate at which a duct may end there."""
    for leave in space.exits:
        if (leave.axis, leave.sign) == (space.start.axis, space.start.sign):
            u, v = (np.array([leave.lo[i], leave.hi[i]], np.int64) for i in (0, 1))
            yield int(leave.end(u[:, None], v[None, :]).min())


def _first_offsets(
    space: FreeSpace, column: Column, fan: Fan, room: Fits, hidden: np.ndarray, straight: int = 0
) -> Iterator[tuple[int, int, int]]:
    """Give, per shift that has room and free stretch of the line that it leads to: the shift's number, what it adds, its place.

    The stretch holds so much straight duct behind the offset.
    """
    along, limits = column.state.axis, space.limits
    begin, top = column.start[along], space.hi[along]
    lands = column.start[fan.axis] + fan.sign * fan.distance
    inside = (space.lo[fan.axis] <= lands) & (lands <= space.hi[fan.axis])
    highest = np.where(inside, column.free_to(fan.offset(0)), -FAR)
    somewhere = room.least(np.full(len(highest), begin + limits.first), highest) < FAR
    for n in np.flatnonzero(somewhere).tolist():
        offset = fan.offset(n)
        low, high, near = column.extents(offset, offset.distance, offset.distance, offset.half[0])
        counts = ~column.room if hidden[n] or column.priced else np.ones(len(near), bool)
        stops = near & counts & column.stops_run
        barred = list(zip(low[stops].tolist(), high[stops].tolist(), strict=True))
        here = Fits(room.low[:, [n]], room.high[:, [n]])
        for u, v in gaps(begin, top, barred):
            lowest = max(begin + limits.first, u - offset.advance)
            most = min(int(highest[n]), v - offset.advance - straight)
            at = int(here.least(np.array([lowest]), np.array([most]))[0])
            if at < FAR:
                yield n, int(fan.extra[n]), at


class Line:
    """A line along which a duct may run on, and what hidden offsets from it need that does not hang on where they begin."""

    def __init__(self, space: FreeSpace, table: Moves, column: Column) -> None:
        self.column, self.last = column, space.limits.last
        self._free: dict[tuple[tuple[int, int], int], int] = {}
        self.ways: list[tuple[Fan, Leaving, Ints, Ints, np.ndarray]] = []
        self._fits: dict[int, Fits] = {}
        for fan in fans(space, table, column.state):
            hidden = _hidden(column, fan)
            for out in leaving(space, column, fan):
                lowest = back(column, fan, out.end, hidden)
                highest = np.where(out.open, out.end - self.last - fan.advance, -FAR)
                if (lowest <= highest).any():
                    self.ways.append((fan, out, lowest, highest, hidden))

    def fits(self, number: int) -> Fits:
        """Give where the offsets of one way have room; found when first asked for."""
        if number not in self._fits:
            fan, _, _, _, hidden = self.ways[number]
            self._fits[number] = fits(self.column, fan, hidden)
        return self._fits[number]

    def free_from(self, fan: Fan, begin: int) -> int:
        """Give how far the line is free from a place on it."""
        key = fan.half, begin
        if key not in self._free:
            self._free[key] = _free_from(self.column, fan, begin)
        return self._free[key]

    def best(self, begin: int, straight: int, beat: int = FAR) -> tuple[int, Offset, int, Leaving, int] | None:
        """Give the best offset for a duct that runs from `begin` on for at least `straight`.

        Returns
        -------
        tuple of int, Offset, int, Leaving and int
            What the way costs beyond its start's coordinate, less than `beat`; the offset and where it begins; the way
            out and where the duct ends. None where no offset fits.
        """
        found: tuple[int, Offset, int, Leaving, int] | None = None
        beat = min(beat, FAR)  # which stands for no way
        for number, (fan, out, lowest, highest, _) in enumerate(self.ways):
            lowest = np.maximum(lowest, begin + straight)
            highest = np.minimum(highest, self.free_from(fan, begin))
            cost = out.end + fan.extra
            highest = np.where(cost < beat, highest, -FAR)
            if (lowest > highest).all():
                continue
            place = self.fits(number).least(lowest, highest)
            cost = np.where(place < FAR, cost, FAR)
            n = int(cost.argmin())
            if int(cost[n]) < beat:
                beat = int(cost[n])
                found = beat, fan.offset(n), int(place[n]), out, int(out.end[n])
        return found


class Sidesteps:
    """Hidden straight ways with one offset for many heights of one collar."""

    def __init__(self, space: FreeSpace, table: Moves) -> None:
        self.space = space = _upwards(space)
        self.lines = [Line(space, table, Column(space, state, priced=False)) for state in _states(space, table)]

    def best(self, height: int) -> tuple[Cost, Trace] | None:
        """Give the best way from a height of the collar, or None; a rear outlet has only the space's own."""
        x, y, _ = self.space.start.point
        begin = height if self.space.start.axis == 2 else y
        point = (x, y, height)
        found: tuple[Cost, Trace] | None = None
        for line in self.lines:
            best = line.best(begin, self.space.limits.first, FAR if found is None else found[0][2] + begin)
            if best is not None:
                _, offset, at, out, end = best
                route = _written(point, line.column.state, [(offset, at)], end, out.exit)
                found = (0, 1, route.length), route
        return found


def _second(
    space: FreeSpace, table: Moves, column: Column, offset: Offset, at: int, hidden: bool, beat: int,
    cache: dict[tuple[int, int, bool], Line],
) -> tuple[Cost, Trace] | None:  # fmt: skip
    """Give the best way that goes on from a first offset with a second one."""
    key = offset.axis, offset.sign * offset.distance, hidden
    if key not in cache:
        cache[key] = Line(space, table, column.moved(offset, covered=hidden))
    begin = space.start.point[column.state.axis]
    best = cache[key].best(at + offset.advance, space.limits.between, begin + beat)
    if best is None:
        return None
    _, second, place, out, end = best
    route = _written(space.start.point, column.state, [(offset, at), (second, place)], end, out.exit)
    return (0, 2, route.length), route


def _free_from(column: Column, fan: Fan, begin: int) -> int:
    """Give how far a column is free from a place on it."""
    low, high, near = column.extents(fan.offset(0), 0, 0, fan.half[0])
    counts = ~column.room if column.covered else np.ones(len(near), bool)
    stops = near & counts & column.stops_run & (high > begin)
    return int(low[stops].min()) if stops.any() else FAR
