"""From costs back to a route: follow, run by run, what the field promised."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from itertools import pairwise
from typing import NamedTuple

import numpy as np

from routeviz.model.freespace import Exit, Ints, Ticks
from routeviz.search.launch import Back, Launch, Slice
from routeviz.search.layers import Layers
from routeviz.search.lines import NONE, Lines
from routeviz.search.moves import END, START, State
from routeviz.search.ways import Way, cost_to_leave

__all__ = ["OFFSET", "Bent", "Trace", "trace"]

OFFSET = -2  # kind of a corner that belongs to an offset


@dataclass(frozen=True)
class Bent:
    """The two equal bends of an offset: their angle and radius, and the axis along which it shifts."""

    angle_deg: float
    radius: int
    axis: int


@dataclass(frozen=True)
class Trace:
    """A route.

    `points` are the collar, every corner and the end [ticks]; `states` belong to the straights between them, `kinds`
    to the corners. The two corners of an offset have the kind `OFFSET`; `offset` says how they bend.
    """

    points: tuple[Ticks, ...]
    states: tuple[State, ...]
    kinds: tuple[int, ...]
    exit: Exit
    cost: int
    offset: Bent | None = None

    @property
    def elbows(self) -> int:
        """Give the number of elbows; the two bends of an offset count as one."""
        return len(self.kinds) - (1 if self.offset is not None else 0)

    @property
    def length(self) -> int:
        """Give the length along the centre lines, corners square [ticks]."""
        return sum(round(math.dist(a, b)) for a, b in pairwise(self.points))


class _Cursor(NamedTuple):
    """Where a route stands: at a place in line order of a track, about to run in a state."""

    state: int
    entry: int
    elbows: int  # still ahead
    cost: int  # still to pay
    at: int  # place in line order
    slice: Slice | None  # None: in the field itself


class _Tracer:
    def __init__(self, layers: Layers, launch: Launch) -> None:
        self.layers, self.launch = layers, launch
        self.grid = layers.grid
        self._backs: dict[tuple[int, int], Ints] = {}

    def backs(self, elbows: int, kind: int) -> list[tuple[int, Back]]:
        """Give the runs back under the cover that may follow with so many elbows ahead."""
        return [
            (n, back)
            for n, back in enumerate(self.launch.backs)
            if back.turn.kind == kind and self.layers.allows(back.turn.target, elbows)
        ]

    def track(self, here: _Cursor) -> tuple[Lines, list[Way]]:
        if here.slice is not None:
            return here.slice.track, here.slice.out
        return self.grid.tracks[here.state], self.layers.out[here.state]

    def index(self, here: _Cursor) -> tuple[int, int, int]:
        """Give grid indices in the cursor's own grid."""
        name = int(self.track(here)[0].order[here.at])
        if here.slice is None:
            return self.grid.point(name)
        a, b, c = np.unravel_index(name, here.slice.shape)
        return int(a), int(b), int(c)

    def place(self, here: _Cursor) -> Ticks:
        coordinates = self.grid.coordinates if here.slice is None else here.slice.coordinates
        x, y, z = (int(c[i]) for c, i in zip(coordinates, self.index(here), strict=True))
        return x, y, z

    def back_cost(self, number: int, elbows: int) -> Ints:
        key = number, elbows
        if key not in self._backs:
            self._backs[key] = self.launch.backs[number].costs(self.layers, elbows)
        return self._backs[key]

    def in_field(self, state: int, kind: int, elbows: int, cost: int, number: int) -> _Cursor:
        track = self.grid.tracks[state]
        return _Cursor(state, kind, elbows, cost, track.find(number), None)

    def turned(self, here: _Cursor, at: int, cost: int, kind: int) -> _Cursor | None:
        """Give the cursor after an elbow at the place `at` on the cursor's line whose rest costs `cost`."""
        moved = here._replace(at=at)
        track = self.track(here)[0]
        name = int(track.order[at])
        number = name if here.slice is None else int(here.slice.field[name])
        if number >= 0:
            for turn in self.grid.table.turns:
                if turn.source != here.state or turn.kind != kind or not self.grid.fits[turn.body][number]:
                    continue
                if int(self.layers.cost[here.elbows - 1][turn.target][kind][number]) == cost:
                    return self.in_field(turn.target, kind, here.elbows - 1, cost, number)
        if here.slice is self.launch.first:
            return self.under_cover(moved, cost, kind)
        return None

    def under_cover(self, here: _Cursor, cost: int, kind: int) -> _Cursor | None:
        i, _, k = self.index(here)
        for number, back in self.backs(here.elbows - 1, kind):
            found = self.back_cost(number, here.elbows - 1)
            if k < found.shape[1] and int(found[i, k]) == cost:
                return self.enter(back, i, k, here.elbows - 1, cost)
        return None

    @staticmethod
    def enter(back: Back, i: int, k: int, elbows: int, cost: int) -> _Cursor:
        name = int(np.ravel_multi_index((i, back.row, k), back.slice.shape))
        return _Cursor(back.turn.target, back.turn.kind, elbows, cost, back.slice.track.find(name), back.slice)

    def cost_after(self, here: _Cursor, at: int, kind: int) -> int:
        """Give the least cost after an elbow of `kind` at the place `at` of the cursor's line."""
        track = self.track(here)[0]
        name = int(track.order[at])
        number = name if here.slice is None else int(here.slice.field[name])
        best = int(NONE)
        if number >= 0:
            for turn in self.grid.table.turns:
                if turn.source == here.state and turn.kind == kind and self.grid.fits[turn.body][number]:
                    best = min(best, int(self.layers.cost[here.elbows - 1][turn.target][kind][number]))
        if here.slice is self.launch.first:
            i, _, k = self.index(here._replace(at=at))
            for which, _ in self.backs(here.elbows - 1, kind):
                found = self.back_cost(which, here.elbows - 1)
                if k < found.shape[1]:
                    best = min(best, int(found[i, k]))
        return best

    def step(self, here: _Cursor) -> tuple[_Cursor, int] | None:
        """Take the next elbow: the nearest one that keeps the promise."""
        track = self.track(here)[0]
        sign = self.grid.table.states[here.state].sign
        for at in track.within(here.at, sign):
            length = abs(int(track.place[at]) - int(track.place[here.at]))
            paid = abs(int(track.cost[at]) - int(track.cost[here.at]))
            for kind in range(len(self.grid.table.take_off)):
                if length < self.grid.table.lag(here.entry, kind):
                    continue
                rest = here.cost - paid
                if self.cost_after(here, at, kind) == rest:
                    there = self.turned(here, at, rest, kind)
                    if there is not None:
                        return there, kind
        return None

    def leave(self, here: _Cursor) -> tuple[Ticks, Exit] | None:
        """Run out through the exit that keeps the promise."""
        track, out = self.track(here)
        state, lag = self.grid.table.states[here.state], self.grid.table.lag(here.entry, END)
        only = replace(track, line=track.line[[here.at]], place=track.place[[here.at]], cost=track.cost[[here.at]])
        for way in self.layers.ways_out(out):
            if int(cost_to_leave([way], only, state.sign, lag, self.grid.terms)[0]) == here.cost:
                place = list(self.place(here))
                place[state.axis] = int(way.end.ravel()[only.line[0]])
                return (place[0], place[1], place[2]), way.exit
        return None


def trace(layers: Layers, launch: Launch, index: tuple[int, int, int], elbows: int) -> Trace | None:
    """Follow the field from a collar.

    Parameters
    ----------
    index : three int
        The collar's place in the launch's slice.
    elbows : int
        Exact number of elbows.

    Returns
    -------
    Trace or None
        None when no such route exists.
    """
    tracer = _Tracer(layers, launch)
    total = int(launch.costs(layers, elbows)[index])
    if total >= layers.grid.terms.limit:
        return None
    name = int(np.ravel_multi_index(index, launch.first.shape))
    here = _Cursor(launch.first.state, START, elbows, total, launch.first.track.find(name), launch.first)
    points, states, kinds = [tracer.place(here)], [layers.grid.table.states[here.state]], []
    while here.elbows:
        found = tracer.step(here)
        if found is None:
            raise AssertionError("the field promised a route that cannot be followed")
        here, kind = found
        points.append(tracer.place(here))
        states.append(layers.grid.table.states[here.state])
        kinds.append(kind)
    end = tracer.leave(here)
    if end is None:
        raise AssertionError("the field promised an exit that cannot be reached")
    return Trace((*points, end[0]), tuple(states), tuple(kinds), end[1], total)
