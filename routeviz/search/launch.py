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
from routeviz.search.lattice import Lattice, Rail, corners, rail
from routeviz.search.layers import Layers, arrivals
from routeviz.search.lines import Lines, lines
from routeviz.search.masks import Corners, Small
from routeviz.search.moves import END, START, Turn, lying
from routeviz.search.terms import Costs
from routeviz.search.ways import Way, cost_to_leave, ways

__all__ = ["Launch", "Slice", "launches"]


@dataclass(frozen=True, eq=False)
class Slice:
    """Runs in one state on a part of the grid, with free stretches and prices of their own.

    `field` holds, per point of the slice, its number in the field, -1 where no elbow has room there.
    """

    state: int
    coordinates: tuple[Ints, Ints, Ints]
    rail: Rail
    track: Lines
    out: list[Way]
    field: Small

    @property
    def shape(self) -> tuple[int, int, int]:
        """Give the slice's shape."""
        a, b, c = (len(x) for x in self.coordinates)
        return a, b, c

    def leave(self, layers: Layers, entry: int) -> Costs:
        """Give the least cost [ticks of length, prices added] of a last run from every point of the slice, flat in C order of `shape`."""
        table, terms, out = layers.grid.table, layers.grid.terms, layers.ways_out(self.out)
        sign, every = table.states[self.state].sign, np.arange(len(self.field), dtype=np.int32)
        return cost_to_leave(out, self.rail, self.shape, every, sign, table.lag(entry, END), terms)

    def after(self, layers: Layers, elbows: int, kind: int) -> Costs:
        """Give, per point of the slice, the least cost after an elbow of `kind` there with `elbows` - 1 more ahead."""
        key = self, elbows, kind
        if key not in layers.first_runs:
            grid = layers.grid
            value = np.full(len(self.field), grid.terms.none, grid.terms.costs)
            inside = np.flatnonzero(self.field >= 0)
            plain = arrivals(grid, layers.cost[elbows - 1], self.state, kind, self.field[inside])
            if plain is not None:
                value[inside] = plain
            layers.first_runs[key] = value
        return layers.first_runs[key]

    def run(self, layers: Layers, value: Costs, entry: int, kind: int) -> Costs:
        """Give the least cost of a run from every event of the slice to a point with `value`.

        Both are flat in C order of `shape`, in ticks of length with prices added.
        """
        table = layers.grid.table
        return self.track.scan(value, table.states[self.state].sign, [table.lag(entry, kind)])[0]


@dataclass(frozen=True, eq=False)
class Back:
    """The turn from the riser into a run straight back under the cover, where the elbow has room, and that run."""

    turn: Turn
    slice: Slice
    row: int  # index along y of the risers
    bits: Corners  # of shape (nx, 1, nz)

    def costs(self, layers: Layers, elbows: int) -> Costs:
        """Give the least cost after the elbow, of shape (nx, nz), with `elbows` more elbows ahead."""
        key = self, elbows, 0
        if key not in layers.first_runs:
            none = layers.grid.terms.none
            if elbows == 0:
                found = self.slice.leave(layers, self.turn.kind)
            else:
                found = np.full(len(self.slice.field), none, layers.grid.terms.costs)
                for kind in range(len(layers.grid.table.take_off)):
                    value = self.slice.after(layers, elbows, kind)
                    np.minimum(found, self.slice.run(layers, value, self.turn.kind, kind), out=found)
            free = (self.bits[:, 0, :] >> self.turn.body) & 1 == 0
            layers.first_runs[key] = np.where(free, found.reshape(self.slice.shape)[:, self.row, :], none)
        return layers.first_runs[key]


@dataclass(frozen=True, eq=False)
class Launch:
    """First runs in one state for a set of collars: any point of the slice may be a collar."""

    first: Slice
    backs: tuple[Back, ...]

    def costs(self, layers: Layers, elbows: int) -> Costs:
        """Give the least cost of a route with exactly `elbows` elbows from every point of the slice.

        Returns
        -------
        int array of the slice's shape
        """
        key = self, elbows, 0
        if key not in layers.first_runs:
            layers.first_runs[key] = self._costs(layers, elbows).reshape(self.first.shape)
        return layers.first_runs[key]

    def _costs(self, layers: Layers, elbows: int) -> Costs:
        if elbows == 0:
            return self.first.leave(layers, START)
        best = np.full(len(self.first.field), layers.grid.terms.none, layers.grid.terms.costs)
        for kind in range(len(layers.grid.table.take_off)):
            value = self.values(layers, elbows, kind)
            np.minimum(best, self.first.run(layers, value, START, kind), out=best)
        return best

    def values(self, layers: Layers, elbows: int, kind: int) -> Costs:
        """Give, per point of the slice, the least cost after a first elbow of `kind` there."""
        key = self, elbows, kind + 1
        if key not in layers.first_runs:
            value = self.first.after(layers, elbows, kind).copy()
            for back in self.backs:
                if back.turn.kind == kind and layers.allows(back.turn.target, elbows - 1):
                    here = value.reshape(self.first.shape)[:, 0, : back.bits.shape[2]]
                    np.minimum(here, back.costs(layers, elbows - 1), out=here)
            layers.first_runs[key] = value
        return layers.first_runs[key]


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
    own = np.arange(number.size, dtype=np.int32).reshape(number.shape)
    kinds = range(len(grid.table.take_off))
    entries = [START] if everywhere else kinds
    wanted = [(state_of.sign, grid.table.lag(entry, kind)) for entry in entries for kind in kinds]
    place = coordinates[state_of.axis]
    track = lines(state_of.axis, place, found.blocked, found.boxed, events, own, grid.terms, wanted)
    out = ways(space, coordinates, found, half, state_of.sign, grid.terms, boxing)
    return Slice(state, coordinates, found, track, out, number.ravel())


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
    for state in lying(grid.space, table):
        number = table.states.index(state)
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
