"""The layered field: for every event, state and number of elbows ahead, the least cost to get outdoors.

``cost[k][state][kind][event]`` is the least cost of the rest of a route that starts a run at the event in `state`,
entered through an elbow of `kind`, with exactly k elbows ahead. Layer 0 is the last run. Layer k follows from layer
k - 1 by one scan per state and elbow kind. The field is computed backwards from all exits at once, so that one field
serves every place of the hood.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field
from typing import overload

import numpy as np

from routeviz.search.lattice import Lattice
from routeviz.search.masks import Small
from routeviz.search.moves import END
from routeviz.search.terms import Costs
from routeviz.search.ways import Way, cost_to_leave, ways

__all__ = ["Layer", "Layers", "arrivals"]

_AT_ONCE = 1 << 14  # events, so that all they need stays in the processor's cache


def arrivals(
    grid: Lattice, below: Sequence[list[Costs]], state: int, kind: int, events: Small | None = None
) -> Costs | None:
    """Give the least cost after an elbow of `kind` out of a run in `state`; None when there is no such turn.

    `below` is the layer with one elbow fewer; `events` are the events that matter, all unless given. Costs are of shape
    (events,), in ticks of length with prices added.
    """
    terms = grid.terms
    turns = [
        (np.int32(1 << turn.body), terms.costs(terms.none >> turn.body), below[turn.target][kind])
        for turn in grid.table.turns if turn.source == state and turn.kind == kind
    ]  # fmt: skip
    if not turns:
        return None
    best = np.full(len(grid.alive) if events is None else len(events), terms.none, terms.costs)
    for start in range(0, len(best), _AT_ONCE):
        here = slice(start, start + _AT_ONCE)
        which, least = here if events is None else events[here], best[here]
        bits = grid.bits[which]
        for bit, weight, cost in turns:
            worth = cost[which]
            if bit & grid.barred:  # no way where the body has no room
                worth = np.maximum((bits & bit) * weight, worth)
            np.minimum(least, worth, out=least)
    return best


class Layer(Sequence[list[Costs]]):
    """All costs with one number of elbows ahead; a state's costs are computed when they are first asked for."""

    def __init__(self, layers: Layers, elbows: int) -> None:
        self._layers, self._elbows = layers, elbows
        self._known: dict[int, list[Costs]] = {}

    def __len__(self) -> int:
        """Give the number of states."""
        return len(self._layers.grid.table.states)

    @overload
    def __getitem__(self, state: int) -> list[Costs]: ...
    @overload
    def __getitem__(self, state: slice) -> list[list[Costs]]: ...
    def __getitem__(self, state: int | slice) -> list[Costs] | list[list[Costs]]:
        """Give a state's costs per kind of elbow."""
        if isinstance(state, slice):
            return [self[n] for n in range(*state.indices(len(self)))]
        if state not in range(len(self)):
            raise IndexError(state)
        if state not in self._known:
            self._known[state] = self._layers.compute(state, self._elbows)
        return self._known[state]


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
    cost: list[Layer] = field(default_factory=list)
    first_runs: dict[tuple[object, int, int], Costs] = field(default_factory=dict)  # what launches computed from it

    def __post_init__(self) -> None:
        """Begin with the layer of last runs."""
        grid = self.grid
        if not self.out:
            for state, found in zip(grid.table.states, grid.rails, strict=True):
                half = grid.table.half(state)
                self.out.append(
                    ways(grid.space, grid.coordinates, found, half, state.sign, grid.terms, grid.space.boxing)
                )
        self.grow(0)

    def allows(self, state: int, elbows: int) -> bool:
        """Tell whether a run with so many elbows ahead may be in this state."""
        if elbows and self.grid.table.states[state].axis == self.grid.flat:
            return False  # it would leave the plane that its elbows share
        return self.only.get(elbows, state) == state

    def ways_out(self, out: list[Way]) -> list[Way]:
        """Give those of the ways that count."""
        return [way for way in out if way.exit.face == self.face] if self.face else out

    def grow(self, elbows: int) -> None:
        """Add layers until routes with `elbows` elbows after the point are covered."""
        while len(self.cost) <= elbows:
            self.cost.append(Layer(self, len(self.cost)))

    def compute(self, state: int, elbows: int) -> list[Costs]:
        """Compute the costs of runs in a state with so many elbows ahead, per kind of the elbow before them."""
        if not self.allows(state, elbows):
            nothing = np.full(len(self.grid.alive), self.grid.terms.none, self.grid.terms.costs)
            return [nothing for _ in self.grid.table.take_off]
        return self._run(state, elbows) if elbows else self._last_run(state)

    def _last_run(self, state: int) -> list[Costs]:
        grid, table, out = self.grid, self.grid.table, self.ways_out(self.out[state])
        if self.anywhere:
            return [np.zeros(len(grid.alive), grid.terms.costs) for _ in table.take_off]
        rail, sign = grid.rails[state], table.states[state].sign
        return [
            cost_to_leave(out, rail, grid.shape, grid.alive, sign, table.lag(kind, END), grid.terms)
            for kind in range(len(table.take_off))
        ]

    def _run(self, state: int, elbows: int) -> list[Costs]:
        grid, table = self.grid, self.grid.table
        kinds = range(len(table.take_off))
        best: list[Costs] = []
        for kind in kinds:
            value = arrivals(grid, self.cost[elbows - 1], state, kind)
            if value is None:
                continue
            lags = [table.lag(entry, kind) for entry in kinds]
            found = grid.track(state).scan(value, table.states[state].sign, lags)
            best = [np.minimum(a, b, out=a) for a, b in zip(best, found, strict=True)] if best else found
        return best
