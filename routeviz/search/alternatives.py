"""Other ways out that differ in kind: another face, or another sequence of directions, never a near copy.

Each kind of route is one restricted field on the planes through the collar: one exit, one direction per run. The best
route of each kind is exact. The first choice is the best of each face, then what is left by cost.
"""

from __future__ import annotations

from collections.abc import Iterator

from routeviz.model.freespace import FreeSpace
from routeviz.search.layers import Layers
from routeviz.search.measure import touches_itself
from routeviz.search.solve import Solution
from routeviz.search.stages import PLANAR, Found, Looker
from routeviz.search.terms import Terms
from routeviz.search.trace import Trace

__all__ = ["Kind", "alternatives", "kind_of"]

Kind = tuple[str, tuple[tuple[int, int], ...]]  # where it leaves, and axis and sign of every straight


def _leaves(route: Trace) -> str:
    """Name where a route leaves; a wall and the gable over it are one plane and count as one."""
    leave = route.exit
    return f"{leave.axis} {leave.sign} {leave.rise[0]}" if leave.flat else leave.face


def kind_of(route: Trace) -> Kind:
    """Tell what kind of route this is."""
    return _leaves(route), tuple((s.axis, s.sign) for s in route.states)


def _restricted(base: Solution, face: str, only: dict[int, int]) -> Solution:
    layers = Layers(base.grid, base.layers.out, face, only)
    return Solution(base.grid, layers, base.launches)


def _options(space: FreeSpace, fields: list[Solution], elbows: int) -> Iterator[Found]:
    """Give the best of every kind of route with at most so many elbows."""
    collar = space.start.point
    for face in dict.fromkeys(e.face for e in space.exits):
        for number, base in enumerate(fields):
            plain = _restricted(base, face, {})
            for k in range(elbows + 1):
                if plain.cost(collar, k) is None or (k == 0 and number):
                    continue
                for only in _sequences(base, k):
                    found = _restricted(base, face, only)
                    cost = found.cost(collar, k)
                    if cost is not None:
                        yield Found(cost, found)


def _sequences(base: Solution, elbows: int) -> Iterator[dict[int, int]]:
    """Give every choice of a state for each run after the first."""
    table = base.grid.table
    chains: list[list[int]] = [[base.launches[0].first.state]] if base.launches else []
    for _ in range(elbows):
        chains = [[*c, t.target] for c in chains for t in table.turns if t.source == c[-1]]
    for chain in chains:
        yield {len(chain) - 1 - n: state for n, state in enumerate(chain) if n}


def alternatives(
    space: FreeSpace, looker: Looker, best: Trace, count: int, *, boxed: bool
) -> list[tuple[Found, Trace]]:  # fmt: skip
    """Give at most `count` routes of other kinds than the best, best first.

    Only hidden routes with at most two elbows are offered, and boxed ones when the best is boxed too. Through a face
    that has been offered already, only routes with at most one elbow more than the best count.
    """
    if count < 1:
        return []
    elbows = min(space.limits.elbows, PLANAR)
    terms = Terms(priced=boxed)
    found = list(_options(space, looker.planar(terms), elbows)) + looker.with_offset(priced=boxed)
    options = sorted(found, key=lambda o: o.cost)
    seen, faces = {kind_of(best)}, {_leaves(best)}
    first: list[tuple[Found, Trace]] = []
    rest: list[tuple[Found, Trace]] = []
    for option in options:
        if len(first) >= count:
            break
        route = option.route()
        if route is None or kind_of(route) in seen:
            continue
        halves = [option.solution.grid.table.half(s) for s in route.states]
        if touches_itself(route.points, halves, space.limits.contact):
            continue
        seen.add(kind_of(route))
        if route.offset is not None and _leaves(route) in faces:
            continue  # a straight run with a needless jog
        if _leaves(route) not in faces:
            first.append((option, route))
        elif route.elbows <= best.elbows + 1:
            rest.append((option, route))
        faces.add(_leaves(route))
    chosen = (first + rest)[:count]
    return sorted(chosen, key=lambda c: c[0].cost)
