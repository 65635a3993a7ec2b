"""The map: the best way out for every place of the hood along the wall and at every height, from one field.

The hidden field is computed once for all collars and holds every route with at most two elbows; a place without a
hidden route is looked up in a second field, in the plane of the collars, where the open room is priced. Offsets,
third elbows and true elbow bodies are left to `find`, which answers one place in full.
"""

from __future__ import annotations

import time
from collections.abc import Sequence
from dataclasses import dataclass

from routeviz.model.freespace import FreeSpace, Ints, Ticks
from routeviz.model.path import Centreline, Outcome
from routeviz.search.measure import centreline
from routeviz.search.solve import Cost, Solution, solve
from routeviz.search.stages import PLANAR
from routeviz.search.terms import Terms
from routeviz.units import TICKS_PER_IN, ticks

__all__ = ["Cell", "Field", "field"]


@dataclass(frozen=True, slots=True)
class Cell:
    """The answer for one place: `elbows`, `boxed_in` and `length_in` are None where there is no way out."""

    shift_in: float
    lift_in: float
    outcome: Outcome
    elbows: int | None
    boxed_in: float | None
    length_in: float | None


@dataclass
class Field:
    """All places of the hood: shifts along the wall (right is positive) by lifts, from where the space was carved."""

    space: FreeSpace
    shifts_in: tuple[float, ...]
    lifts_in: tuple[float, ...]
    elbows: int
    solutions: tuple[Solution, ...]  # hidden first, then priced
    costs: tuple[Ints, ...]  # per solution, of shape (elbows + 1, lifts, shifts)
    seconds: float

    def _collar(self, lift: int, shift: int) -> Ticks:
        x, y, z = self.space.start.point
        return x + ticks(self.shifts_in[shift]), y, z + ticks(self.lifts_in[lift])

    def _best(self, lift: int, shift: int) -> tuple[Cost, Solution] | None:
        for solution, table in zip(self.solutions, self.costs, strict=True):
            found = []
            for k in range(self.elbows + 1):
                value = int(table[k, lift, shift])
                if value < solution.grid.terms.limit:
                    boxed, length = (
                        divmod(value, solution.grid.terms.weight) if solution.grid.terms.priced else (0, value)
                    )
                    found.append((boxed, k, length))
            if found:
                return min(found), solution
        return None

    def cell(self, lift: int, shift: int) -> Cell:
        """Give the answer for one place by its numbers in `lifts_in` and `shifts_in`; costs microseconds."""
        at = self.shifts_in[shift], self.lifts_in[lift]
        best = self._best(lift, shift)
        if best is None:
            return Cell(*at, Outcome.LIMIT_REACHED if self.elbows < self.space.limits.elbows else Outcome.NONE_EXISTS,
                        None, None, None)  # fmt: skip
        boxed, k, length = best[0]
        outcome = Outcome.PROVEN if k == 0 and boxed == 0 else Outcome.BEST_FOUND
        return Cell(*at, outcome, k, boxed / TICKS_PER_IN, length / TICKS_PER_IN)

    def front(self, lift: int, shift: int) -> tuple[tuple[int, float], ...]:
        """Give (elbows, length) of the hidden routes that no other beats in both [in]."""
        rows: list[tuple[int, float]] = []
        for k in range(self.elbows + 1):
            value = int(self.costs[0][k, lift, shift])
            if value < self.solutions[0].grid.terms.limit and (not rows or value / TICKS_PER_IN < rows[-1][1]):
                rows.append((k, value / TICKS_PER_IN))
        return tuple(rows)

    def route(self, lift: int, shift: int) -> Centreline | None:
        """Give the best route for one place, traced from the field."""
        best = self._best(lift, shift)
        if best is None:
            return None
        (boxed, k, _), solution = best
        found = solution.route(self._collar(lift, shift), k)
        return None if found is None else centreline(solution.grid.space, solution.grid.table, found, boxed)


def field(space: FreeSpace, shifts_in: Sequence[float], lifts_in: Sequence[float] = (0.0,)) -> Field:
    """Map the best way out over places of the hood.

    Parameters
    ----------
    space : FreeSpace
        Carved with the hood at any place.
    shifts_in : sequence of float
        Shifts of the hood along the wall; right is positive [in].
    lifts_in : sequence of float
        Shifts of the hood in height; up is positive [in].

    Returns
    -------
    Field

    Raises
    ------
    LimitError
        If the grid for so many places would be too large.
    """
    began = time.perf_counter()
    x, y, z = space.start.point
    collars = [[(x + ticks(s), y, z + ticks(t)) for s in shifts_in] for t in lifts_in]
    every = [c for row in collars for c in row]
    elbows = min(space.limits.elbows, PLANAR)
    solutions = [solve(space, Terms(), elbows, every)]
    costs = [solutions[0].costs(collars, elbows)]
    unsolved = (costs[0] >= solutions[0].grid.terms.limit).all(axis=0)
    if space.limits.boxing and space.start.axis == 2 and unsolved.any():
        solutions.append(solve(space, Terms(priced=True), elbows, every, plane=1))
        costs.append(solutions[1].costs(collars, elbows))
    return Field(
        space, tuple(shifts_in), tuple(lifts_in), elbows, tuple(solutions), tuple(costs), time.perf_counter() - began
    )
