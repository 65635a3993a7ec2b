"""The question of one hood: what is the best way out, and how sure is that?"""

from __future__ import annotations

import math
import time

from routeviz.errors import LimitError
from routeviz.model.freespace import FreeSpace
from routeviz.model.path import Outcome, Paths, SearchFacts
from routeviz.search.measure import centreline, touches_itself
from routeviz.search.moves import moves
from routeviz.search.simpler import why_not_straight
from routeviz.search.solve import Cost, Solution, solve
from routeviz.search.terms import Terms
from routeviz.search.trace import Trace
from routeviz.units import TICKS_PER_IN

__all__ = ["find"]


def _starts_free(space: FreeSpace) -> bool:
    """Tell whether the collar lies inside the bounds and clear of everything that is never crossed."""
    start = space.start.point
    table = moves(space.section, space.limits)
    halves = [table.half(s) for s in table.states if s[:2] == (space.start.axis, space.start.sign)]
    if any(not space.lo[t] <= start[t] <= space.hi[t] for t in range(3)):
        return False
    ahead = [space.start.sign * (t == space.start.axis) for t in range(3)]
    for barrier in space.barriers:
        region = barrier.region
        if not barrier.runs[space.start.axis] or region.axis >= 0:
            continue
        for half in halves:
            lo = [start[t] - half[t] + min(ahead[t], 0) for t in range(3)]
            hi = [start[t] + half[t] + max(ahead[t], 0) for t in range(3)]
            if all(lo[t] < region.hi[t] and hi[t] > region.lo[t] for t in range(3)):
                return False
    return True


def _ranked(solution: Solution, elbows: int) -> list[Cost]:
    """Give the best cost for every number of elbows up to the limit, best first."""
    start = solution.grid.space.start.point
    return sorted(c for c in (solution.cost(start, k) for k in range(elbows + 1)) if c is not None)


def _front(costs: list[Cost]) -> tuple[tuple[float, float, float], ...]:
    """Give (elbows, boxed, length) of the costs that no other beats in all three [in]."""
    kept = [
        c for c in costs
        if not any(all(a <= b for a, b in zip(o, c, strict=True)) and o != c for o in costs)
    ]  # fmt: skip
    return tuple((float(k), b / TICKS_PER_IN, n / TICKS_PER_IN) for b, k, n in sorted(set(kept), key=lambda c: c[1]))


def _clear_of_itself(space: FreeSpace, solution: Solution, route: Trace) -> bool:
    halves = [solution.grid.table.half(s) for s in route.states]
    return not touches_itself(route.points, halves, space.limits.contact)


def find(space: FreeSpace) -> Paths:
    """Find the best way out for the hood where it stands.

    Cost is lexicographic: boxed length in the open room, elbows, length.

    Parameters
    ----------
    space : FreeSpace
        From `routeviz.freespace.carve`.

    Returns
    -------
    Paths
        Its outcome names how the search ended; `best` is None unless a route was found.
    """
    began = time.perf_counter()
    none = SearchFacts((0, 0, 0), 0, space.limits.elbows, 0.0)
    if not _starts_free(space):
        return Paths(Outcome.BAD_START, None, (), (), why_not_straight(space, below=math.inf), none)
    solution: Solution | None = None
    front: list[Cost] = []
    for priced in (False, True) if space.limits.boxing else (False,):
        try:
            solution = solve(space, Terms(priced=priced), min(space.limits.elbows, 3), [space.start.point])
        except LimitError as limit:
            facts = SearchFacts((0, 0, 0), 0, space.limits.elbows, time.perf_counter() - began, str(limit))
            return Paths(Outcome.LIMIT_REACHED, None, (), (), why_not_straight(space, below=math.inf), facts)
        costs = _ranked(solution, space.limits.elbows)
        front += costs
        for boxed, elbows, _ in costs:
            route = solution.route(space.start.point, elbows)
            if route is not None and _clear_of_itself(space, solution, route):
                facts = SearchFacts(
                    solution.grid.shape, len(solution.grid.alive), space.limits.elbows, time.perf_counter() - began
                )
                line = centreline(space, solution.grid.table, route, boxed)
                outcome = Outcome.PROVEN if elbows == 0 else Outcome.BEST_FOUND
                return Paths(outcome, line, (), _front(front), why_not_straight(space, below=line.elbows), facts)
    facts = none
    if solution is not None:
        facts = SearchFacts(
            solution.grid.shape, len(solution.grid.alive), space.limits.elbows, time.perf_counter() - began
        )
    return Paths(Outcome.NONE_EXISTS, None, (), (), why_not_straight(space, below=math.inf), facts)
