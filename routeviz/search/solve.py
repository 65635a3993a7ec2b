"""One solved field with its collars: the object that every question is put to."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

import numpy as np

from routeviz.model.freespace import Barrier, BarrierKind, FreeSpace, Ints, Ticks
from routeviz.search.coordinates import Ground, ground
from routeviz.search.lattice import MOST_EVENTS, Lattice, lattice
from routeviz.search.launch import Launch, launches
from routeviz.search.layers import Layers
from routeviz.search.moves import moves
from routeviz.search.terms import Terms
from routeviz.search.trace import Trace, trace

__all__ = ["Cost", "Solution", "above", "prepare", "solve", "solve_on", "solve_straight"]

Cost = tuple[int, int, int]  # boxed length, elbows, length; smaller is better


@dataclass
class Solution:
    """A field for one section and one set of terms, and the first runs from a set of collars."""

    grid: Lattice
    layers: Layers
    launches: tuple[Launch, ...]

    def _index(self, launch: Launch, collar: Ticks) -> tuple[int, int, int]:
        x, y, z = (int(np.searchsorted(c, v)) for c, v in zip(launch.first.coordinates, collar, strict=True))
        return x, y, z

    def cost(self, collar: Ticks, elbows: int) -> Cost | None:
        """Give the least cost of a route with exactly `elbows` elbows, or None when there is none.

        On crossing terms the number of members crossed takes the place of the boxed length.
        """
        self.layers.grow(elbows - 1)
        found = [int(la.costs(self.layers, elbows)[self._index(la, collar)]) for la in self.launches]
        least = min(found, default=self.grid.terms.limit)
        if least >= self.grid.terms.limit:
            return None
        boxed, length = divmod(least, self.grid.terms.weight) if self.grid.terms.dear else (0, least)
        return boxed, elbows, length

    def costs(self, collars: Sequence[Sequence[Ticks]], elbows: int) -> Ints:
        """Give the least cost per number of elbows and collar, of shape (elbows + 1, rows, places in a row)."""
        self.layers.grow(elbows - 1)
        found = np.full((elbows + 1, len(collars), len(collars[0])), self.grid.terms.limit, np.int64)
        places = np.array(collars, np.int64)
        for launch in self.launches:
            index = tuple(np.searchsorted(c, places[:, :, t]) for t, c in enumerate(launch.first.coordinates))
            for k in range(elbows + 1):
                np.minimum(found[k], launch.costs(self.layers, k)[index], out=found[k])
        return found

    def route(self, collar: Ticks, elbows: int) -> Trace | None:
        """Give one best route with exactly `elbows` elbows, or None when there is none."""
        self.layers.grow(elbows - 1)
        best: Trace | None = None
        for launch in self.launches:
            found = trace(self.layers, launch, self._index(launch, collar), elbows)
            if found is not None and (best is None or found.cost < best.cost):
                best = found
        return best


def above(space: FreeSpace, height: int) -> FreeSpace:
    """Close the open room below a height: boxing hangs from the ceiling, it does not come down past the hood."""
    barriers, boxing = list(space.barriers), []
    for region in space.boxing:
        if region.lo[2] >= height or (region.axis >= 0 and region.axis != 2):
            boxing.append(region)
            continue
        below = replace(region, hi=(region.hi[0], region.hi[1], min(region.hi[2], height)))
        barriers.append(
            Barrier("open-room", "open room below the collar", BarrierKind.CLOSED, below, (True, True, True))
        )
        if region.hi[2] > height:
            boxing.append(replace(region, lo=(region.lo[0], region.lo[1], height)))
    return replace(space, barriers=tuple(barriers), boxing=tuple(boxing))


def solve(
    space: FreeSpace, terms: Terms, elbows: int, collars: Sequence[Ticks], *, plane: int = -1
) -> Solution:  # fmt: skip
    """Lay the closed grid and prepare the field; its layers are computed when they are asked for.

    Parameters
    ----------
    space : FreeSpace
    terms : Terms
    elbows : int
        The grid is closed for routes with at most this many elbows.
    collars : sequence of Ticks
        Places of the collar; all with the start's y.
    plane : int
        Give an axis for routes whose elbows all share the collars' coordinate along it; much smaller.
    """
    return solve_on(prepare(space, terms, collars), elbows, plane=plane)


def prepare(space: FreeSpace, terms: Terms, collars: Sequence[Ticks]) -> Ground:
    """Do the part of `solve` that all its grids share."""
    cut = above(space, min(c[2] for c in collars))
    return ground(cut, moves(space.section, space.limits), terms, collars)


def solve_on(base: Ground, elbows: int, *, plane: int = -1, most: int = MOST_EVENTS) -> Solution:
    """Do the rest of `solve`."""
    only = None if plane < 0 else (plane, np.array(sorted({c[plane] for c in base.collars}), np.int64))
    grid = lattice(base.space, base.table, base.grid(elbows, plane=plane), base.terms, only, most)
    return Solution(grid, Layers(grid), launches(grid, base.collars))


def solve_straight(space: FreeSpace) -> Solution:
    """Solve for the hidden way without an elbow alone: where no elbow is placed, the grid is little but the collar."""
    start, none = space.start, np.array([], np.int64)
    bare = Ground(above(space, start.point[2]), moves(space.section, space.limits), Terms(), (start.point,), [],
                  (none, none, none))  # fmt: skip
    return solve_on(bare, 0, plane=next(t for t in range(3) if t != start.axis))
