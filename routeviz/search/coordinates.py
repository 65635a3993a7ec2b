"""The closed grid: coordinates that are sure to hold an optimum.

Fix the directions of all runs and the side on which each passes every box. Then every wish concerns one axis only:
faces give v <= c or v >= c, runs give |v - w| >= lag with a known sign, and length and boxed length are linear. So
the problem falls into one chain of difference constraints per axis, and some optimum sits at a vertex, where every
coordinate hangs on a constant (a face, the start, an exit plane) through a chain of runs of exactly their least
length. `tight_shifts` lists the sums of such chains; `Ground.grid` adds them to the constants.

Sloped prisms and rounded keep-out corners tie two axes together. No finite grid is closed under them, and routes that
they bind are called best found, not proven.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, replace

import numpy as np

from routeviz.errors import LimitError
from routeviz.model.freespace import Exit, FreeSpace, Ints, Region, Ticks
from routeviz.search.masks import points_inside
from routeviz.search.moves import END, START, Moves
from routeviz.search.rooms import Room, alive_part, obstacles, room_constants, rooms, run_constants
from routeviz.search.terms import Terms

__all__ = ["MOST_POINTS", "Ground", "Shifts", "ground", "tight_shifts"]

MOST_POINTS = 16_000_000  # grid points; about 700 MB at the peak, together with the limit on elbow places


@dataclass(frozen=True)
class Shifts:
    """Along one axis: what to add to the start, to faces and to exit planes."""

    start: frozenset[int]
    face: frozenset[int]
    plane: frozenset[int]


def _sums(lags: Sequence[frozenset[int]]) -> set[int]:
    """Give all sums of one signed lag from each set."""
    found = {0}
    for choice in lags:
        found = {v + s * lag for v in found for lag in choice for s in (1, -1)}
    return found


def _sequences(first: int, last: int, runs: int) -> Iterable[tuple[int, ...]]:
    """Give the sequences of run axes, at most `runs` long, each unlike the one before, from first to last."""
    stack: list[tuple[int, ...]] = [(first,)]
    while stack:
        found = stack.pop()
        if found[-1] == last:
            yield found
        if len(found) < runs:
            stack += [(*found, axis) for axis in range(3) if axis != found[-1]]


def tight_shifts(
    table: Moves, elbows: int, first: int, exit_axis: int, *, loose: bool = False
) -> tuple[Shifts, Shifts, Shifts]:  # fmt: skip
    """List the sums of tight runs for routes with at most `elbows` elbows.

    Parameters
    ----------
    first, exit_axis : int
        Axis of the first and of the last run. Across the exit axis the route's end is free within the exit.
    loose : bool
        Whether the collar itself may move, so that it too may hang on a face or an exit plane.
    """
    base = 0 if loose else 1
    kinds = range(len(table.take_off))
    between = frozenset(table.lag(f, e) for f in kinds for e in kinds)
    opening = frozenset(table.lag(START, e) for e in kinds)
    closing = frozenset(table.lag(f, END) for f in kinds)
    only = frozenset({table.lag(START, END)})
    found: list[tuple[set[int], set[int], set[int]]] = [({0}, {0}, {0}) for _ in range(3)]
    for sequence in _sequences(first, exit_axis, elbows + 1):
        count = len(sequence)
        lags = [only] if count == 1 else [opening, *[between] * (count - 2), closing]
        for axis, (start, face, plane) in enumerate(found):
            chain = [lag for lag, along in zip(lags, sequence, strict=True) if along == axis]
            unknown = len(chain) - 1 if axis == exit_axis else len(chain)
            for i in range(1, unknown + 1):
                start |= _sums(chain[:i])
                for j in range(base, i):
                    face |= _sums(chain[j:i])
                if axis == exit_axis:
                    plane |= _sums(chain[i:])
            if loose and axis == exit_axis:
                plane |= _sums(chain)
    x, y, z = (Shifts(frozenset(a), frozenset(b), frozenset(c)) for a, b, c in found)
    return x, y, z


def constants(
    space: FreeSpace, table: Moves, terms: Terms, found: Sequence[Room], collars: Sequence[Ticks]
) -> tuple[set[int], set[int], set[int]]:
    """Give, per axis, the coordinates at which something begins or ends to be in the way of a route."""
    values: tuple[set[int], set[int], set[int]] = (set(), set(), set())
    halves = {(s.axis, table.half(s)) for s in table.states}
    stops = obstacles(space, terms)
    solid = tuple(region for region, _ in stops if not (terms.relaxed and region.axis in (0, 1)))
    running = [tuple(region for region, runs in stops if runs[along]) for along in range(3)]
    for room in found:
        for axis, touched in room_constants(room, solid):
            values[axis].update(touched.tolist())
        for along, half in halves if not room.part else ():
            for axis, touched in run_constants(room, running[along], along, half):
                values[axis].update(touched.tolist())
    if terms.priced:
        for region in space.boxing:  # a price begins where a run's side does, room for an elbow where its body does
            for axis in range(3):
                for grow in {0, *(half[axis] for _, half in halves), *(abs(v) for b in table.bodies for v in b[axis])}:
                    values[axis].update((region.lo[axis] - grow, region.hi[axis] + grow))
    for face in space.exits:
        for side, axis in enumerate(t for t in range(3) if t != face.axis):
            edges = {face.lo[side], face.hi[side]}
            for keep in face.keep_clear:
                for grow in {0, keep.reach, keep.flange} if keep.reach else {keep.flange}:
                    edges |= {keep.lo[side] - grow, keep.hi[side] + grow}
                edges |= {keep.above} if side == 1 and keep.above is not None else set()
            values[axis].update(v for v in edges if face.lo[side] <= v <= face.hi[side])
        for axis, value in _rounded(face, collars):
            values[axis].add(value)
    values[2].update(_under_cover(space, table, terms, stops, collars))
    return values


def _rounded(face: Exit, collars: Sequence[Ticks]) -> Iterator[tuple[int, int]]:
    """Give (axis, coordinate) where a keep-out's rounded corner ends straight above or beside a collar."""
    axes = [t for t in range(3) if t != face.axis]
    for keep in face.keep_clear:
        for side, other in ((0, 1), (1, 0)):
            for at in {c[axes[side]] for c in collars}:
                beside = max(keep.lo[side] - at, at - keep.hi[side], 0)
                if 0 < beside < keep.reach:
                    far = math.isqrt(keep.reach**2 - beside**2) + 1
                    yield axes[other], keep.lo[other] - far
                    yield axes[other], keep.hi[other] + far


def _under_cover(
    space: FreeSpace, table: Moves, terms: Terms, stops: Sequence[tuple[Region, tuple[bool, bool, bool]]],
    collars: Sequence[Ticks],
) -> set[int]:  # fmt: skip
    """Give the heights at which the elbow under a cover, or its run straight back, touches something."""
    start = space.start
    if not start.covered:
        return set()
    heights: set[int] = set()
    lowest = min(c[2] for c in collars)
    across = np.unique(np.array([c[0] for c in collars], np.int64))
    for turn in table.turns:
        source, target = table.states[turn.source], table.states[turn.target]
        if source[:2] != (2, 1) or target[:2] != (1, 1):
            continue
        half = table.half(target)
        for (x_lo, x_hi), _, (z_lo, z_hi) in (
            bodies[turn.body] for bodies in table.parts(relaxed=terms.relaxed, legs=terms.legs)
        ):
            for region, _ in stops:
                beside = points_inside(across, region.lo[0] - x_hi, region.hi[0] - x_lo)
                if beside.start < beside.stop:
                    for v in (region.lo[2], region.hi[2]):
                        heights.update((v - z_hi, v - z_lo, v - half[2], v + half[2]))
    return {v for v in heights if lowest <= v <= start.cover_top}


@dataclass(frozen=True)
class Ground:
    """What any grid for one set of terms and collars is made from: where elbows fit, and the faces that matter."""

    space: FreeSpace
    table: Moves
    terms: Terms
    collars: tuple[Ticks, ...]
    rooms: list[Room]
    faces: tuple[Ints, Ints, Ints]

    def _grown(self, elbows: int) -> list[set[int]]:
        """Give faces, collars and planes with the sums of tight runs added."""
        values = [set(f.tolist()) for f in self.faces]
        places = [{c[t] for c in self.collars} for t in range(3)]
        for axis in {e.axis for e in self.space.exits}:
            for t, shift in enumerate(tight_shifts(self.table, elbows, self.space.start.axis, axis)):
                values[t].update(c + v for c in places[t] for v in shift.start)
                for v in shift.face:
                    values[t].update((self.faces[t] + v).tolist())
                if t == axis:
                    values[t].update(plane + v for a, plane in self._planes() if a == axis for v in shift.plane)
        return values

    def at(self, space: FreeSpace, collars: Sequence[Ticks]) -> Ground:
        """Give the same ground with the hood at other places; `space` is the ground's, cut for these collars."""
        values: list[set[int]] = [set(f.tolist()) for f in self.faces]
        for face in self.space.exits:
            for axis, value in _rounded(face, collars):
                values[axis].add(value)
        values[2] |= _under_cover(space, self.table, self.terms, obstacles(space, self.terms), collars)
        x, y, z = (np.array(sorted(v), np.int64) for v in values)
        return replace(self, space=space, collars=tuple(collars), faces=(x, y, z))

    def places(self, axis: int, elbows: int, low: int, high: int) -> Ints:
        """Give the coordinates at which the collar may begin or cease to have a route with at most so many elbows.

        With the directions and sides of a route fixed, the places of the collar that allow it are an interval along
        each axis, and its ends are among these.

        Coordinates between `low` and `high` [ticks], rising, of shape (n,).
        """
        values = set(self.faces[axis].tolist())
        for leave in {e.axis for e in self.space.exits}:
            shift = tight_shifts(self.table, elbows, self.space.start.axis, leave, loose=True)[axis]
            for v in shift.face:
                values.update((self.faces[axis] + v).tolist())
            if axis == leave:
                values.update(plane + v for a, plane in self._planes() if a == axis for v in shift.plane)
        found = np.array(sorted(v for v in values if low <= v <= high), np.int64)
        return found if axis == self.space.start.axis else alive_part(self.rooms, axis, found)

    def _planes(self) -> set[tuple[int, int]]:
        return {(e.axis, round(e.rise[0])) for e in self.space.exits if e.flat}

    def grid(self, elbows: int, *, plane: int = -1) -> tuple[Ints, Ints, Ints]:
        """Give the coordinates that hold an optimum for every collar with at most `elbows` elbows.

        Parameters
        ----------
        elbows : int
            Elbow limit of the closure; one more when the collar itself may move.
        plane : int
            Give an axis for routes whose elbows all share the collars' coordinate along it.

        Returns
        -------
        three int64 arrays
            Sorted coordinates [ticks] inside the space's bounds.

        Raises
        ------
        LimitError
            If the grid would have more than `MOST_POINTS` points.
        """
        space, values, found = self.space, self._grown(elbows), []
        for t in range(3):
            within = np.array(sorted(v for v in values[t] if space.lo[t] <= v <= space.hi[t]), np.int64)
            fixed = {c[t] for c in self.collars} | {at for axis, at in self._planes() if axis == t}
            if t == 2 and space.start.covered:
                low = min(c[2] for c in self.collars)
                fixed |= {v for v in within.tolist() if low <= v <= space.start.cover_top}
            if self.terms.priced:  # the price changes here, whether or not an elbow fits
                fixed |= {v for r in space.boxing for v in (r.lo[t], r.hi[t]) if space.lo[t] <= v <= space.hi[t]}
            alive = within[:0] if t == plane else alive_part(self.rooms, t, within)
            found.append(np.union1d(alive, np.array(sorted(fixed), np.int64)))
        points = len(found[0]) * len(found[1]) * len(found[2])
        if points > MOST_POINTS:
            raise LimitError(
                f"The search grid would have {points / 1e6:.0f} million points, more than {MOST_POINTS / 1e6:.0f} "
                "million. Allow fewer elbows, or take out solids that are far from any route"
            )
        return found[0], found[1], found[2]


def ground(space: FreeSpace, table: Moves, terms: Terms, collars: Sequence[Ticks]) -> Ground:
    """Find where elbows fit and which faces matter, once for all grids of these terms and collars."""
    found = rooms(space, table, terms)
    x, y, z = (np.array(sorted(f), np.int64) for f in constants(space, table, terms, found, collars))
    return Ground(space, table, terms, tuple(collars), found, (x, y, z))
