"""The layered field: for every event, state and number of elbows ahead, the least cost to get outdoors.

``cost[k][state][kind][event]`` is the least cost of the rest of a route that starts a run at the event in `state`,
entered through an elbow of `kind`, with exactly k elbows ahead. Layer 0 is the last run. Layer k follows from layer
k - 1 by one scan per state and elbow kind. The field is computed backwards from all exits at once, so that one field
serves every place of the hood.
"""

from __future__ import annotations

from dataclasses import dataclass, field

import numpy as np

from routeviz.model.freespace import Ints
from routeviz.search.lattice import Lattice
from routeviz.search.lines import NONE
from routeviz.search.moves import END
from routeviz.search.ways import Way, cost_to_leave, ways

__all__ = ["Layers", "arrivals"]


def arrivals(grid: Lattice, below: list[list[Ints]], state: int, kind: int) -> Ints | None:
    """Give, per event, the least cost after an elbow of `kind` out of a run in `state`; None when there is no such turn.

    `below` is the layer with one elbow fewer.
    """
    best: Ints | None = None
    for turn in grid.table.turns:
        if turn.source != state or turn.kind != kind:
            continue
        if best is None:
            best = np.where(grid.fits[turn.body], below[turn.target][kind], NONE)
        else:
            np.minimum(best, below[turn.target][kind], out=best, where=grid.fits[turn.body])
    return best


@dataclass
class Layers:
    """A field that grows by layers.

    `out` are the ways out per state, computed unless given. `face`, when given, is the only exit that counts;
    `only[k]`, when given, is the only state in which a run with k elbows ahead may be. `anywhere` lets every route end
    right behind its last elbow: it tells how far a duct can get at all.
    """

    grid: Lattice
    out: list[list[Way]] = field(default_factory=list)
    face: str = ""
    only: dict[int, int] = field(default_factory=dict)
    anywhere: bool = False
    cost: list[list[list[Ints]]] = field(default_factory=list)

    def __post_init__(self) -> None:
        """Compute the layer of last runs."""
        grid = self.grid
        if not self.out:
            for state, found in zip(grid.table.states, grid.rails, strict=True):
                half = grid.table.half(state)
                self.out.append(
                    ways(grid.space, grid.coordinates, found, half, state.sign, grid.terms, grid.space.boxing)
                )
        self.cost.append([self._last_run(number) for number in range(len(grid.table.states))])

    def allows(self, state: int, elbows: int) -> bool:
        """Tell whether a run with so many elbows ahead may be in this state."""
        return self.only.get(elbows, state) == state

    def ways_out(self, out: list[Way]) -> list[Way]:
        """Give those of the ways that count."""
        return [way for way in out if way.exit.face == self.face] if self.face else out

    def grow(self, elbows: int) -> None:
        """Add layers until routes with `elbows` elbows after the point are covered."""
        while len(self.cost) <= elbows:
            self.cost.append([self._run(number) for number in range(len(self.grid.table.states))])

    def _nothing(self) -> list[Ints]:
        return [np.full(len(self.grid.alive), NONE, np.int64) for _ in self.grid.table.take_off]

    def _last_run(self, number: int) -> list[Ints]:
        grid, out = self.grid, self.ways_out(self.out[number])
        if self.anywhere:
            return [np.zeros(len(grid.alive), np.int64) for _ in grid.table.take_off]
        if not out or not self.allows(number, 0):
            return self._nothing()
        table, track = grid.table, grid.tracks[number]
        return [
            track.place_in(
                cost_to_leave(out, track, table.states[number].sign, table.lag(kind, END), grid.terms), len(grid.alive)
            )
            for kind in range(len(table.take_off))
        ]

    def _run(self, number: int) -> list[Ints]:
        grid, below = self.grid, self.cost[-1]
        if not self.allows(number, len(self.cost)):
            return self._nothing()
        table, track = grid.table, grid.tracks[number]
        kinds = range(len(table.take_off))
        best: list[Ints] = []
        for kind in kinds:
            value = arrivals(grid, below, number, kind)
            if value is None:
                continue
            found = track.scan(value, table.states[number].sign, [table.lag(entry, kind) for entry in kinds])
            best = [np.minimum(a, b, out=a) for a, b in zip(best, found, strict=True)] if best else found
        return [track.place_in(cost, len(grid.alive)) for cost in best]
