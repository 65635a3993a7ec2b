"""The map: the best way out for every place of the hood along the wall and at every height, from one field.

Routes with at most two elbows lie in one of two planes through their collar. So the hidden field is two small ones,
each computed once for all collars: elbows in the collars' common plane, and elbows in the planes across it, all of
them side by side. For places without a hidden route these fields also tell whether a duct gets as far as a second
elbow at all. Where it does, a third elbow is looked for in the whole space, if that is small enough. What is left is
looked up in a field in the collars' common plane where the open room is priced. Where a hidden way has two elbows or
is not there, an offset on the first run is looked for. Offsets beside an elbow and true elbow bodies are left to
`find`, which answers one place in full.
"""

from __future__ import annotations

import itertools
import time
from collections.abc import Sequence
from dataclasses import dataclass, replace
from dataclasses import field as made

import numpy as np

from routeviz.errors import LimitError
from routeviz.model.freespace import Exit, FreeSpace, Ints, Ticks
from routeviz.model.path import Centreline, Outcome
from routeviz.search.centring import spared
from routeviz.search.layers import Layers
from routeviz.search.masks import Bools
from routeviz.search.measure import centreline
from routeviz.search.solve import Solution, above, prepare, solve_on
from routeviz.search.stages import PLANAR, Found
from routeviz.search.stepped import Sidesteps, straight_with_offset
from routeviz.search.terms import Terms
from routeviz.search.trace import Trace
from routeviz.units import TICKS_PER_IN, ticks

__all__ = ["Cell", "Field", "field"]

_DEEP = PLANAR + 1
_MOST_DEEP = 3_000_000  # grid points of the whole space; more would take longer than the rest of the map


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
    elbows: int  # the most that a way was looked for with, where none was found with fewer
    solutions: tuple[Solution, ...]  # hidden first, then priced
    costs: tuple[Ints, ...]  # per solution, of shape (elbows + 1, lifts, shifts)
    further: Bools  # of shape (lifts, shifts): where more elbows may give a hidden way that was not looked for
    seconds: float
    _traces: dict[tuple[int, int], Trace | None] = made(default_factory=dict, repr=False)
    _sidesteps: dict[tuple[int, int], Sidesteps] = made(default_factory=dict, repr=False)
    _found: dict[tuple[int, int], Found | None] = made(default_factory=dict, repr=False)

    @property
    def not_tried(self) -> str:
        """Name the kinds of route that a map does not hold."""
        offsets = "offsets beside an elbow or another offset, " if self.space.offsets else ""
        return f"{offsets}elbows by their true shape"

    def _collar(self, lift: int, shift: int) -> Ticks:
        x, y, z = self.space.start.point
        return x + ticks(self.shifts_in[shift]), y, z + ticks(self.lifts_in[lift])

    def _best(self, lift: int, shift: int) -> Found | None:
        if (lift, shift) not in self._found:
            best = self._least(lift, shift, priced=False)
            if best is None or best.cost[1] > 1:
                best = min((f for f in (best, self._sidestep(lift, shift)) if f), key=lambda f: f.cost, default=None)
            self._found[lift, shift] = best or self._boxed(lift, shift)
        return self._found[lift, shift]

    def _least(self, lift: int, shift: int, *, priced: bool) -> Found | None:
        """Give the best way from the fields where the open room has its price, or from those where it is closed."""
        best: Found | None = None
        for solution, table in zip(self.solutions, self.costs, strict=True):
            terms = solution.grid.terms
            for k, value in enumerate(table[:, lift, shift].tolist() if terms.priced == priced else ()):
                if value < terms.limit:
                    boxed, length = divmod(value, terms.weight) if priced else (0, value)
                    if best is None or (boxed, k, length) < best.cost:
                        best = Found((boxed, k, length), solution)
        return best

    def _sidestep(self, lift: int, shift: int) -> Found | None:
        """Give the best hidden straight way with one offset."""
        solution = self.solutions[0]
        space = solution.grid.space
        if not space.offsets or space.limits.elbows < 1:
            return None
        x, y, z = self._collar(lift, shift)
        key = shift, 0 if space.start.axis == 2 else lift  # a riser's line is the same from every height
        if key not in self._sidesteps:
            here = replace(space, start=replace(space.start, point=(x, y, z)))
            self._sidesteps[key] = Sidesteps(here, solution.grid.table)
        best = self._sidesteps[key].best(z)
        return None if best is None else Found(best[0], solution, best[1])

    def _boxed(self, lift: int, shift: int) -> Found | None:
        """Give the best way with boxing: from the priced fields, or straight with one offset."""
        best = self._least(lift, shift, priced=True)
        solution = self.solutions[-1]
        if not solution.grid.terms.priced or not self.space.offsets or self.space.limits.elbows < 1:
            return best
        start = replace(self.space.start, point=self._collar(lift, shift))
        here = above(replace(self.space, start=start), start.point[2])
        aside = straight_with_offset(here, solution.grid.table, priced=True)
        found = None if aside is None else Found(aside[0], solution, aside[1])
        return min((f for f in (best, found) if f), key=lambda f: f.cost, default=None)

    def cell(self, lift: int, shift: int) -> Cell:
        """Give the answer for one place by its numbers in `lifts_in` and `shifts_in`."""
        at = self.shifts_in[shift], self.lifts_in[lift]
        best = self._best(lift, shift)
        if best is None:
            outcome = Outcome.LIMIT_REACHED if self.further[lift, shift] else Outcome.NONE_EXISTS
            return Cell(*at, outcome, None, None, None)
        boxed, k, length = best.cost
        outcome = Outcome.PROVEN if k == 0 and boxed == 0 else Outcome.BEST_FOUND
        return Cell(*at, outcome, k, boxed / TICKS_PER_IN, length / TICKS_PER_IN)

    def front(self, lift: int, shift: int) -> tuple[tuple[int, float], ...]:
        """Give (elbows, length) of the hidden routes that no other beats in both [in]."""
        hidden = [c for c, s in zip(self.costs, self.solutions, strict=True) if not s.grid.terms.priced]
        rows: list[tuple[int, float]] = []
        for k in range(max(len(table) for table in hidden)):
            value = min(int(table[k, lift, shift]) for table in hidden if k < len(table))
            if value < self.solutions[0].grid.terms.limit and (not rows or value / TICKS_PER_IN < rows[-1][1]):
                rows.append((k, value / TICKS_PER_IN))
        return tuple(rows)

    def trace(self, lift: int, shift: int) -> Trace | None:
        """Follow the field from one place; remembered."""
        if (lift, shift) not in self._traces:
            best = self._best(lift, shift)
            found = None if best is None else best.made or best.solution.route(self._collar(lift, shift), best.cost[1])
            self._traces[lift, shift] = found
        return self._traces[lift, shift]

    def exit(self, lift: int, shift: int) -> Exit | None:
        """Give the face through which the best route of one place leaves."""
        found = self.trace(lift, shift)
        return None if found is None else found.exit

    def route(self, lift: int, shift: int) -> Centreline | None:
        """Give the best route for one place, traced from the field; moved only where a member would keep little wood."""
        best, found = self._best(lift, shift), self.trace(lift, shift)
        if best is None or found is None:
            return None
        space, table = best.solution.grid.space, best.solution.grid.table
        return centreline(space, table, spared(space, table, found) if best.cost[0] == 0 else found, best.cost[0])


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
    try:
        return _field(space, shifts_in, lifts_in)
    except LimitError as limit:
        raise LimitError(
            f"{len(shifts_in)} places at {len(lifts_in)} heights are too many for one map. {limit}, "
            "or ask for fewer places or heights"
        ) from limit


def _field(space: FreeSpace, shifts_in: Sequence[float], lifts_in: Sequence[float]) -> Field:
    began = time.perf_counter()
    x, y, z = space.start.point
    collars = [[(x + ticks(s), y, z + ticks(t)) for s in shifts_in] for t in lifts_in]
    every = [c for row in collars for c in row]
    elbows = min(space.limits.elbows, PLANAR)
    across = [t for t in range(3) if t != space.start.axis]
    hidden = prepare(space, Terms(), every)
    solutions = [solve_on(hidden, elbows, plane=t) for t in across]
    costs = [solution.costs(collars, elbows) for solution in solutions]
    unsolved = np.minimum.reduce(costs).min(axis=0) >= Terms().limit
    further = unsolved & (space.limits.elbows > PLANAR)
    if further.any():
        further &= _second_elbow(solutions, collars)
    deep = _deep(
        space, [c for row, wanted in zip(collars, further, strict=True) for c in itertools.compress(row, wanted)]
    )
    if deep is not None:
        table = np.full((_DEEP + 1, *further.shape), Terms().limit, np.int64)
        table[:, further] = deep[1]
        solutions.append(deep[0])
        costs.append(table)
        unsolved &= table.min(axis=0) >= Terms().limit
        further = unsolved & further & (space.limits.elbows > _DEEP)
    if not further.any():
        elbows = space.limits.elbows
    if space.limits.boxing and space.start.axis == 2 and unsolved.any():
        solutions.append(solve_on(prepare(space, Terms(priced=True), every), PLANAR, plane=1))
        costs.append(solutions[-1].costs(collars, min(space.limits.elbows, PLANAR)))
    seconds = time.perf_counter() - began
    return Field(
        space, tuple(shifts_in), tuple(lifts_in), elbows, tuple(solutions), tuple(costs), further, seconds
    )  # fmt: skip


def _second_elbow(solutions: Sequence[Solution], collars: Sequence[Sequence[Ticks]]) -> Bools:
    """Tell from which collars a duct gets as far as a second elbow; a third one is behind a second."""
    found = np.zeros((len(collars), len(collars[0])), bool)
    for solution in solutions:
        everywhere = Layers(solution.grid, solution.layers.out, anywhere=True)
        costs = Solution(solution.grid, everywhere, solution.launches).costs(collars, PLANAR)
        found |= costs[PLANAR] < solution.grid.terms.limit
    return found


def _deep(space: FreeSpace, collars: Sequence[Ticks]) -> tuple[Solution, Ints] | None:
    """Search the whole space with a third elbow, and give the costs too; None where that would take too long."""
    if not collars:
        return None
    base = prepare(space, Terms(), collars)
    try:
        if np.prod([len(c) for c in base.grid(_DEEP)]) > _MOST_DEEP:
            return None
    except LimitError:
        return None
    found = solve_on(base, _DEEP)
    return found, found.costs([collars], _DEEP)[:, 0]
