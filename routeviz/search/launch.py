"""The first run: from the collar into the field, under the terms of the chimney cover.

The cover hides the riser itself, and an elbow with a run straight back to the wall, but nothing that leaves the
cover sideways or to the front. So the first run has a grid of its own, the slice of the field's grid through the
collars; and under a cover the run straight back has one too.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

import numpy as np

from routeviz.model.freespace import Ints, Region, Ticks
from routeviz.search.lattice import Corners, Lattice, Rail, corners, rail
from routeviz.search.layers import Layers, arrivals
from routeviz.search.lines import NONE, Lines, lines
from routeviz.search.moves import END, START, Turn
from routeviz.search.ways import Way, cost_to_leave, ways

__all__ = ["Launch", "Slice", "launches"]


@dataclass(frozen=True)
class Slice:
    """Runs in one state on a part of the grid, with free stretches and prices of their own.

    `field` holds, per point of the slice, its number in the field, -1 where no elbow has room there.
    """

    state: int
    coordinates: tuple[Ints, Ints, Ints]
    rail: Rail
    track: Lines
    out: list[Way]
    field: Ints

    @property
    def shape(self) -> tuple[int, int, int]:
        """Give the slice's shape."""
        a, b, c = (len(x) for x in self.coordinates)
        return a, b, c

    def leave(self, layers: Layers, entry: int) -> Ints:
        """Give the least cost of a last run from every event of the slice (flat)."""
        table, terms = layers.grid.table, layers.grid.terms
        sign = table.states[self.state].sign
        cost = cost_to_leave(layers.ways_out(self.out), self.track, sign, table.lag(entry, END), terms)
        return self.track.place_in(cost, len(self.field))

    def after(self, layers: Layers, elbows: int, kind: int) -> Ints:
        """Give, per point of the slice, the least cost after an elbow of `kind` there with `elbows` - 1 more ahead."""
        value = np.full(len(self.field), NONE, np.int64)
        plain = arrivals(layers.grid, layers.cost[elbows - 1], self.state, kind)
        if plain is not None:
            inside = self.field >= 0
            value[inside] = plain[self.field[inside]]
        return value

    def run(self, layers: Layers, value: Ints, entry: int, kind: int) -> Ints:
        """Give the least cost of a run from every event of the slice to a point with `value` (flat)."""
        table = layers.grid.table
        found = self.track.scan(value, table.states[self.state].sign, [table.lag(entry, kind)])[0]
        return self.track.place_in(found, len(self.field))


@dataclass(frozen=True)
class Back:
    """The turn from the riser into a run straight back under the cover, where the elbow has room, and that run."""

    turn: Turn
    slice: Slice
    row: int  # index along y of the risers
    bits: Corners  # of shape (nx, 1, nz)

    def costs(self, layers: Layers, elbows: int) -> Ints:
        """Give the least cost after the elbow, of shape (nx, nz), with `elbows` more elbows ahead."""
        if elbows == 0:
            found = self.slice.leave(layers, self.turn.kind)
        else:
            found = np.full(len(self.slice.field), NONE, np.int64)
            for kind in range(len(layers.grid.table.take_off)):
                value = self.slice.after(layers, elbows, kind)
                np.minimum(found, self.slice.run(layers, value, self.turn.kind, kind), out=found)
        free = (self.bits[:, 0, :] >> np.uint32(self.turn.body)) & np.uint32(1) == 0
        return np.where(free, found.reshape(self.slice.shape)[:, self.row, :], NONE)


@dataclass(frozen=True)
class Launch:
    """First runs in one state for a set of collars: any point of the slice may be a collar."""

    first: Slice
    backs: tuple[Back, ...]

    def costs(self, layers: Layers, elbows: int) -> Ints:
        """Give the least cost of a route with exactly `elbows` elbows from every point of the slice.

        Returns
        -------
        int64 array of the slice's shape
        """
        if elbows == 0:
            return self.first.leave(layers, START).reshape(self.first.shape)
        best = np.full(len(self.first.field), NONE, np.int64)
        for kind in range(len(layers.grid.table.take_off)):
            value = self.values(layers, elbows, kind)
            np.minimum(best, self.first.run(layers, value, START, kind), out=best)
        return best.reshape(self.first.shape)

    def values(self, layers: Layers, elbows: int, kind: int) -> Ints:
        """Give, per point of the slice, the least cost after a first elbow of `kind` there."""
        value = self.first.after(layers, elbows, kind)
        for back in self.backs:
            if back.turn.kind == kind and layers.allows(back.turn.target, elbows - 1):
                here = value.reshape(self.first.shape)[:, 0, : back.bits.shape[2]]
                np.minimum(here, back.costs(layers, elbows - 1), out=here)
        return value


def _slice(
    grid: Lattice, state: int, coordinates: tuple[Ints, Ints, Ints], boxing: Sequence[Region], everywhere: bool,
    row: int = -1,
) -> Slice:  # fmt: skip
    """Mark a part of the grid for runs in one state; events are all points, or the field's and one row."""
    space, state_of = grid.space, grid.table.states[state]
    half = grid.table.half(state_of)
    found = rail(space, coordinates, state_of.axis, half, grid.terms, boxing=boxing)
    cells = np.ix_(*(np.searchsorted(c, part) for c, part in zip(grid.coordinates, coordinates, strict=True)))
    number = grid.number[cells]
    events = np.full(number.shape, True) if everywhere else number >= 0
    if row >= 0:
        events[:, row, :] = True
    own = np.arange(number.size).reshape(number.shape)
    track = lines(
        state_of.axis, coordinates[state_of.axis], found.blocked, found.cost(grid.terms), events, own,
        grid.terms.limit,
    )  # fmt: skip
    out = ways(space, coordinates, found, half, state_of.sign, grid.terms, boxing)
    return Slice(state, coordinates, found, track, out, number.ravel().astype(np.int64))


def _beyond_wall(regions: Sequence[Region]) -> list[Region]:
    """Give the parts of regions behind the finished hood wall (y > 0)."""
    return [replace(r, lo=(r.lo[0], max(r.lo[1], 0), r.lo[2])) for r in regions if r.hi[1] > 0]


def _backs(grid: Lattice, state: int, xs: Ints, y: int, z: Ints) -> tuple[Back, ...]:
    """Mark the runs straight back under the cover from risers at (xs, y)."""
    table, (_, ys, _) = grid.table, grid.coordinates
    found = []
    for turn in table.turns:
        target = table.states[turn.target]
        if turn.source != state or target[:2] != (1, 1):
            continue
        under = z[z + table.half(target)[2] <= grid.space.start.cover_top]
        if not len(under):
            continue
        behind = ys[ys >= y]
        boxing = _beyond_wall(grid.space.boxing)
        part = _slice(grid, turn.target, (xs, behind, under), boxing, everywhere=False, row=0)
        bits = corners(grid.space, (xs, np.array([y]), under), table, grid.terms, boxing=False)
        found.append(Back(turn, part, 0, bits))
    return tuple(found)


def launches(grid: Lattice, collars: Sequence[Ticks]) -> tuple[Launch, ...]:
    """Mark the first runs for collars that share the coordinate across the hood wall (y).

    Returns
    -------
    tuple of Launch
        One per way in which the section may lie on the collar. Their slices are indexed as the grid, with the
        collars' x, their y and, for a rear outlet, their z only.
    """
    start, table = grid.space.start, grid.table
    x = np.array(sorted({c[0] for c in collars}), np.int64)
    y = np.array([start.point[1]], np.int64)
    z = np.array(sorted({c[2] for c in collars}), np.int64)
    found = []
    for number, state in enumerate(table.states):
        if state[:2] != (start.axis, start.sign) or (state.wide >= 0 and state.wide not in start.wide_axes):
            continue
        if start.axis == 2:
            heights = grid.coordinates[2][grid.coordinates[2] >= z[0]]
            part = (x, y, heights)
        else:
            heights = z
            part = (x, grid.coordinates[1][grid.coordinates[1] >= y[0]], z)
        boxing = () if start.covered else grid.space.boxing
        first = _slice(grid, number, part, boxing, everywhere=True)
        backs = _backs(grid, number, x, start.point[1], heights) if start.covered and start.axis == 2 else ()
        found.append(Launch(first, backs))
    return tuple(found)
