"""The question of one hood: what is the best way out, and how sure is that?"""

from __future__ import annotations

import math
import time

from routeviz.errors import LimitError
from routeviz.model.freespace import FreeSpace
from routeviz.model.path import Outcome, Paths, SearchFacts, WhyNot
from routeviz.search.alternatives import alternatives
from routeviz.search.centring import centred
from routeviz.search.measure import centreline, touches_itself
from routeviz.search.moves import lying, moves
from routeviz.search.nearest import why_not_fewer
from routeviz.search.simpler import why_not_straight
from routeviz.search.solve import Cost
from routeviz.search.stages import PLANAR, Found, Looker
from routeviz.search.terms import Terms
from routeviz.search.trace import Trace
from routeviz.units import TICKS_PER_IN

__all__ = ["find"]

MOST_ALTERNATIVES = 3


def _starts_free(space: FreeSpace) -> bool:
    """Tell whether the collar lies inside the bounds and, one way round, clear of everything that is never crossed."""
    start = space.start.point
    table = moves(space.section, space.limits)
    if any(not space.lo[t] <= start[t] <= space.hi[t] for t in range(3)):
        return False
    ahead = [space.start.sign * (t == space.start.axis) for t in range(3)]
    stops = [b.region for b in space.barriers if b.runs[space.start.axis] and b.region.axis < 0]
    for half in (table.half(state) for state in lying(space, table)):
        lo = [start[t] - half[t] + min(ahead[t], 0) for t in range(3)]
        hi = [start[t] + half[t] + max(ahead[t], 0) for t in range(3)]
        if not any(all(lo[t] < r.hi[t] and hi[t] > r.lo[t] for t in range(3)) for r in stops):
            return True
    return False


def _front(costs: list[Cost]) -> tuple[tuple[float, float, float], ...]:
    """Give (elbows, boxed, length) of the costs that no other beats in all three [in]."""
    kept = [
        c for c in costs
        if not any(all(a <= b for a, b in zip(o, c, strict=True)) and o != c for o in costs)
    ]  # fmt: skip
    return tuple((float(k), b / TICKS_PER_IN, n / TICKS_PER_IN) for b, k, n in sorted(set(kept), key=lambda c: c[1]))


def _best(space: FreeSpace, found: list[Found]) -> tuple[Found, Trace] | None:
    """Give the best route that keeps clear of itself."""
    for candidate in found:
        route = candidate.route()
        if route is None:
            continue
        halves = [candidate.solution.grid.table.half(s) for s in route.states]
        if not touches_itself(route.points, halves, space.limits.contact):
            return candidate, route
    return None


def _facts(space: FreeSpace, looker: Looker, began: float, note: str = "", not_tried: str = "") -> SearchFacts:
    """Say how large the largest grid was, how long it all took, and what was left out."""
    grids = [f.grid for f in looker.fields.values()]
    largest = max(grids, key=lambda g: len(g.alive), default=None)
    shape, alive = (largest.shape, len(largest.alive)) if largest else ((0, 0, 0), 0)
    return SearchFacts(shape, alive, space.limits.elbows, time.perf_counter() - began, note, not_tried)


def _not_tried(space: FreeSpace, cost: Cost | None) -> str:
    """Name the kinds of route with offsets, no dearer than the answer in boxing and elbows, that nothing looks for.

    One offset alone, one beside an elbow and two in turn are looked for where they are hidden, and one alone where it
    is boxed. `cost` is the answer's, None where there is none.
    """
    limit = space.limits.elbows
    if not space.offsets or limit < PLANAR:
        return ""
    found = []
    if limit > PLANAR and (cost is None or cost[1] > PLANAR or cost[0]):
        found.append("offsets in ways with three or more elbows")
    if cost[0] if cost is not None else space.limits.boxing:
        found.append("offsets in the open room beside an elbow or another offset")
    return " or ".join(found)


def _why_not(looker: Looker, *, below: float, explained: bool, boxed: bool = False) -> tuple[WhyNot, ...]:
    """Explain the straight ways that are not free, then every number of elbows below the answer's."""
    space = looker.space
    straight = why_not_straight(space, below=below)
    if not explained:
        return straight
    most = min(space.limits.elbows, PLANAR)
    return why_not_fewer(space, looker.ground(Terms()), straight, below=below, most=most, boxed=boxed)


def find(
    space: FreeSpace, *, others: int = MOST_ALTERNATIVES, explained: bool = True, hidden: bool = True
) -> Paths:  # fmt: skip
    """Find the best way out for the hood where it stands.

    Cost is lexicographic: boxed length in the open room, elbows, length.

    Parameters
    ----------
    space : FreeSpace
        From `routeviz.freespace.carve`.
    others : int
        Most other ways out to look for beside the best.
    explained : bool
        Whether to look for the nearest places with fewer elbows; straight ways are explained in any case. Where
        neither is asked for, a straight way is taken as soon as it is found, and the front holds nothing else.
    hidden : bool
        False where it is known that no hidden way exists, so that only ways with boxing need be looked for.

    Returns
    -------
    Paths
        Its outcome names how the search ended; `best` is None unless a route was found.
    """
    began, looker = time.perf_counter(), Looker(space)
    if not _starts_free(space):
        simpler = why_not_straight(space, below=math.inf)
        return Paths(Outcome.BAD_START, None, (), (), simpler, _facts(space, looker, began))
    front: list[Cost] = []
    bound: Cost | None = None
    try:
        if hidden and not others and not explained and (straight := looker.straight()) is not None:
            route = _best(space, [straight])
            if route is not None:
                return _answer(space, looker, route, straight.cost, [straight.cost], began, others, explained)
        for priced in ((False,) if hidden else ()) + ((True,) if space.limits.boxing else ()):
            found, bound = looker.look(priced=priced)
            front += [f.cost for f in found]
            best = _best(space, found)
            if best is not None:
                return _answer(space, looker, best, bound, front, began, others, explained)
    except LimitError as limit:
        simpler = why_not_straight(space, below=math.inf)
        return Paths(Outcome.LIMIT_REACHED, None, (), (), simpler, _facts(space, looker, began, str(limit)))
    outcome = Outcome.LIMIT_REACHED if looker.limit or bound is not None else Outcome.NONE_EXISTS
    note = looker.limit or ("" if bound is None else "none found; a route along slopes is not ruled out")
    simpler = _why_not(looker, below=math.inf, explained=explained)
    if explained and space.start.reach_z is not None:
        note = "; ".join(filter(None, (note, "other heights were looked at for two elbows or one offset at the most")))
    left_out = _not_tried(space, None) if looker.goes_on(priced=space.limits.boxing) else ""
    return Paths(outcome, None, (), (), simpler, _facts(space, looker, began, note, left_out))


def _answer(
    space: FreeSpace,
    looker: Looker,
    best: tuple[Found, Trace],
    bound: Cost | None,
    front: list[Cost],
    began: float,
    count: int,
    explained: bool,
) -> Paths:
    """Write the answer, with the outcome that the bound allows."""
    found, route = best
    boxed, elbows, _ = found.cost
    not_tried = _not_tried(space, found.cost)
    proven = (elbows == 0 and boxed == 0) or (bound == found.cost and not not_tried)
    note = "" if proven else _doubt(found.cost, bound, fewer=not space.offsets or elbows <= PLANAR)
    table = found.solution.grid.table
    settled = centred(space, table, route) if boxed == 0 else route
    if settled.length != route.length:
        apart = (settled.length - route.length) / TICKS_PER_IN
        note = "; ".join(filter(None, (note, f"centred in its bay, {apart:+.2f} in")))
    line = centreline(space, table, settled, boxed)
    others = tuple(
        centreline(space, table, other, cost[0])
        for cost, other in alternatives(space, looker, route, count, boxed=boxed > 0)
    )
    simpler = _why_not(looker, below=line.elbows, explained=explained, boxed=boxed > 0)
    outcome = Outcome.PROVEN if proven else Outcome.BEST_FOUND
    return Paths(outcome, line, others, _front(front), simpler, _facts(space, looker, began, note, not_tried))


def _doubt(cost: Cost, bound: Cost | None, *, fewer: bool) -> str:
    """Say what a bound leaves open."""
    boxed, _, length = cost
    if bound is None:
        return "a way with less boxing is not ruled out" if boxed else ""
    if bound[:2] < cost[:2]:
        return "fewer elbows are not ruled out"
    said = "elbows proven" if fewer else "fewer elbows are ruled out but for offsets that were not tried"
    if bound[:2] == cost[:2] and length > bound[2]:
        said += f"; at most {(length - bound[2]) / TICKS_PER_IN:.2f} in longer than the shortest"
    return said
