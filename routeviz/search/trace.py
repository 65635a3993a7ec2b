"""From costs back to a route: follow, run by run, what the field promised."""

from __future__ import annotations

import math
from dataclasses import dataclass
from itertools import pairwise
from typing import NamedTuple

import numpy as np

from routeviz.model.freespace import Exit, Ticks
from routeviz.search.launch import Launch, Slice
from routeviz.search.layers import Layers, arrivals
from routeviz.search.masks import Small
from routeviz.search.moves import END, START, State
from routeviz.search.terms import Costs
from routeviz.search.ways import cost_to_leave

__all__ = ["OFFSET", "Bent", "Trace", "line_of", "trace"]

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
    to the corners. The two corners of an offset have the kind `OFFSET`; `offsets` say how they bend, in order.
    """

    points: tuple[Ticks, ...]
    states: tuple[State, ...]
    kinds: tuple[int, ...]
    exit: Exit
    cost: int
    offsets: tuple[Bent, ...] = ()

    @property
    def elbows(self) -> int:
        """Give the number of elbows; the two bends of an offset count as one."""
        return len(self.kinds) - len(self.offsets)

    @property
    def length(self) -> int:
        """Give the length along the centre lines, corners square [ticks]."""
        return sum(round(math.dist(a, b)) for a, b in pairwise(self.points))


class _Cursor(NamedTuple):
    """Where a route stands: at a point of its grid, about to run in a state."""

    state: int
    entry: int
    elbows: int  # still ahead
    cost: int  # still to pay
    point: tuple[int, int, int]  # grid indices in the slice, or in the field
    slice: Slice | None  # None: in the field itself


class _Tracer:
    def __init__(self, layers: Layers, launch: Launch) -> None:
        self.layers, self.launch = layers, launch
        self.grid = layers.grid

    def shape(self, here: _Cursor) -> tuple[int, int, int]:
        return self.grid.shape if here.slice is None else here.slice.shape

    def place(self, here: _Cursor) -> Ticks:
        coordinates = self.grid.coordinates if here.slice is None else here.slice.coordinates
        x, y, z = (int(c[i]) for c, i in zip(coordinates, here.point, strict=True))
        return x, y, z

    def after(self, here: _Cursor, kind: int, names: Small) -> Costs | None:
        """Give the least cost after an elbow of `kind` at events of the cursor's own grid, of the shape of `names`."""
        if here.slice is None:
            return arrivals(self.grid, self.layers.cost[here.elbows - 1], here.state, kind, names)
        if here.slice is self.launch.first:
            return self.launch.values(self.layers, here.elbows, kind)[names]
        return here.slice.after(self.layers, here.elbows, kind)[names]

    def step(self, here: _Cursor) -> tuple[_Cursor, int] | None:
        """Take the next elbow: the nearest one that keeps the promise."""
        state = self.grid.table.states[here.state]
        track = self.grid.track(here.state) if here.slice is None else here.slice.track
        line = line_of(here.point, self.shape(here), state.axis)
        names, _, length, paid = track.reach(line, here.point[state.axis], state.sign)
        best: tuple[int, int, int] | None = None  # length, kind, which of the events ahead
        for kind in range(len(self.grid.table.take_off)):
            after = self.after(here, kind, names)
            if after is None:
                continue
            kept = (after + paid == here.cost) & (length >= self.grid.table.lag(here.entry, kind))
            found = np.flatnonzero(kept)
            if len(found):
                n = int(found[0 if state.sign > 0 else -1])
                best = min(best or (int(length[n]), kind, n), (int(length[n]), kind, n))
        if best is None:
            return None
        _, kind, n = best
        return self.turned(here, int(names[n]), here.cost - int(paid[n]), kind), kind

    def turned(self, here: _Cursor, name: int, cost: int, kind: int) -> _Cursor:
        """Give the cursor after an elbow at an event of the cursor's own grid, whose rest costs `cost`."""
        number = name if here.slice is None else int(here.slice.field[name])
        if number >= 0:
            for turn in self.grid.table.turns:
                if turn.source != here.state or turn.kind != kind or not self.grid.fits(turn.body, number):
                    continue
                if int(self.layers.cost[here.elbows - 1][turn.target][kind][number]) == cost:
                    return _Cursor(turn.target, kind, here.elbows - 1, cost, self.grid.point(number), None)
        i, _, k = np.unravel_index(name, self.shape(here))
        for back in self.launch.backs:
            if back.turn.kind != kind or k >= back.bits.shape[2]:
                continue
            if int(back.costs(self.layers, here.elbows - 1)[i, k]) == cost:
                return _Cursor(back.turn.target, kind, here.elbows - 1, cost, (int(i), back.row, int(k)), back.slice)
        raise AssertionError("the field promised an elbow that is not there")

    def leave(self, here: _Cursor) -> tuple[Ticks, Exit] | None:
        """Run out through the exit that keeps the promise."""
        part, shape = here.slice, self.shape(here)
        found, out = (
            (self.grid.rails[here.state], self.layers.out[here.state]) if part is None else (part.rail, part.out)
        )
        state, lag = self.grid.table.states[here.state], self.grid.table.lag(here.entry, END)
        flat = np.array([np.ravel_multi_index(here.point, shape)], np.int32)
        for way in self.layers.ways_out(out):
            if int(cost_to_leave([way], found, shape, flat, state.sign, lag, self.grid.terms)[0]) == here.cost:
                place = list(self.place(here))
                place[state.axis] = int(way.end.ravel()[line_of(here.point, shape, state.axis)])
                return (place[0], place[1], place[2]), way.exit
        return None


def line_of(point: tuple[int, int, int], shape: tuple[int, int, int], axis: int) -> int:
    """Give a grid point's line along an axis: a flat index over the two other axes."""
    first, second = (t for t in range(3) if t != axis)
    return point[first] * shape[second] + point[second]


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
    here = _Cursor(launch.first.state, START, elbows, total, index, launch.first)
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
