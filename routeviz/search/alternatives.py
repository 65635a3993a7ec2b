"""Other ways out that differ in kind, never a near copy.

The kind of a route is where it leaves, the sequence of its directions, and the places (joist bay, stud bay, attic)
that each of its runs lies in. The graph of candidate runs (`runs`) gives the best route of every kind with at most two
elbows exactly. The first choice is the best of each way out, then what is left by cost.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import pairwise

import numpy as np

from routeviz.model.freespace import Exit, FreeSpace
from routeviz.search.bays import Bays, Names
from routeviz.search.centring import centred
from routeviz.search.coordinates import Ground
from routeviz.search.measure import touches_itself
from routeviz.search.moves import Moves
from routeviz.search.runs import Run, RunGraph, with_bays
from routeviz.search.solve import Cost
from routeviz.search.stages import PLANAR, Looker
from routeviz.search.terms import Terms
from routeviz.search.trace import OFFSET, Trace

__all__ = ["Kind", "alternatives", "best_of_each_kind", "kind_of", "wiggles"]

Ways = tuple[tuple[int, int], ...]


@dataclass(frozen=True, slots=True)
class Kind:
    """What tells routes apart: the way out, axis and sign of every straight, and the places each straight lies in."""

    leaves: str
    ways: Ways
    bays: tuple[Names, ...]


def _leaves(leave: Exit) -> str:
    """Name a way out; a wall and the gable over it are one plane and count as one."""
    return f"{leave.axis} {leave.sign} {leave.rise[0]}" if leave.flat else leave.face


def kind_of(route: Trace, bays: Bays) -> Kind:
    """Tell what kind of route this is; an offset's diagonal belongs to the run it shifts."""
    ways: list[tuple[int, int]] = []
    places: list[list[str]] = []
    for n, ((a, b), state) in enumerate(zip(pairwise(route.points), route.states, strict=True)):
        shifted = n and route.kinds[n - 1] == OFFSET
        if not shifted:
            ways.append((state.axis, state.sign))
            places.append([])
        if not (shifted and n < len(route.kinds) and route.kinds[n] == OFFSET):
            places[-1] += [name for name in bays.run(a, b) if not places[-1] or places[-1][-1] != name]
    return Kind(_leaves(route.exit), tuple(ways), tuple(tuple(p) for p in places))


def wiggles(kind: Kind, other: Kind) -> bool:
    """Tell whether a kind only adds turns to another: the same way out, through the same places in the same order."""
    if kind.leaves != other.leaves or _joined(kind.bays) != _joined(other.bays):
        return False
    left = iter(kind.ways)
    return all(way in left for way in other.ways)


def _joined(bays: Sequence[Names]) -> list[str]:
    """Give all places of a route in order, no name twice in a row."""
    found: list[str] = []
    for name in (n for names in bays for n in names):
        if not found or found[-1] != name:
            found.append(name)
    return found


def best_of_each_kind(
    ground: Ground, elbows: int, bays: Bays, planes: Sequence[int] = (0, 1, 2)
) -> dict[Kind, tuple[Cost, Trace]]:  # fmt: skip
    """Give the best route of every kind with at most `elbows` elbows, for the ground's one collar.

    Parameters
    ----------
    ground : Ground
        On plain or priced terms.
    elbows : int
        At most 2: such routes lie in two planes through the collar.
    bays : Bays
        The places that tell kinds apart.
    planes : sequence of int
        Axes across the planes to look in, where not all of them need be.
    """
    space, table, terms = ground.space, ground.table, ground.terms
    found: dict[Kind, tuple[Cost, Trace]] = {}
    closed = with_bays(ground, bays)
    for plane in (t for t in planes if t != space.start.axis):
        graph = RunGraph.of(closed, plane, elbows, bays)
        for path in graph.kinds(elbows):
            route = graph.best(path, space.limits.contact)
            if route is None:
                continue
            boxed, length = divmod(route.cost, terms.weight) if terms.dear else (0, route.cost)
            cost, kind = (boxed, route.elbows, length), _kind_of_path(path, table)
            if kind not in found or cost < found[kind][0]:
                found[kind] = cost, route
    return found


def _kind_of_path(path: Sequence[Run], table: Moves) -> Kind:
    leave = path[-1].exit
    assert leave is not None
    return Kind(_leaves(leave), tuple(table.states[r.state][:2] for r in path), tuple(r.bays for r in path))


def _different(
    options: Sequence[tuple[Cost, Trace, Kind]], best: Trace, kind: Kind, count: int
) -> Iterator[tuple[Cost, Trace]]:  # fmt: skip
    """Choose `count` of the options, best first: the best of each way out, then by cost."""
    chosen, faces = [kind], {kind.leaves}
    later: list[tuple[Cost, Trace, Kind]] = []
    for cost, route, own in options:
        if own.leaves in faces:
            later.append((cost, route, own))
        elif len(chosen) <= count:
            faces.add(own.leaves)
            chosen.append(own)
            yield cost, route
    for cost, route, own in later:
        if len(chosen) > count:
            return
        if cost[1] <= best.elbows + 1 and own not in chosen and not any(wiggles(own, c) for c in chosen):
            chosen.append(own)
            yield cost, route


def alternatives(
    space: FreeSpace, looker: Looker, best: Trace, count: int, *, boxed: bool
) -> list[tuple[Cost, Trace]]:  # fmt: skip
    """Give at most `count` routes of other kinds than the best, best first.

    Only hidden routes with at most two elbows are offered, and boxed ones when the best is boxed too. Through a face
    that has been offered already, only routes with at most one elbow more than the best count, and none that merely
    adds turns to one that is offered.

    Parameters
    ----------
    space : FreeSpace
    looker : Looker
        What has been computed for the space so far.
    best : Trace
        The best route.
    count : int
    boxed : bool
        Whether the best route runs in the open room.
    """
    if count < 1:
        return []
    terms, bays = Terms(priced=boxed), Bays.of(space)
    table = looker.ground(terms).table
    every = best_of_each_kind(looker.ground(terms), min(space.limits.elbows, PLANAR), bays, _planes(looker, terms))
    options = [(cost, route, kind) for kind, (cost, route) in every.items()]
    for offset in looker.with_offset(priced=boxed):
        route = offset.route()
        if route is not None and not touches_itself(
            route.points, [table.half(s) for s in route.states], space.limits.contact
        ):
            options.append((offset.cost, route, kind_of(route, bays)))
    options.sort(key=lambda o: (o[0], o[1].points))
    found = _different(options, best, kind_of(best, bays), count)
    return sorted(((cost, _settled(space, table, route, bays, cost)) for cost, route in found), key=lambda f: f[0])


def _planes(looker: Looker, terms: Terms) -> list[int]:
    """Give the planes in which there is any route with an elbow, or one if two ways out lie straight ahead."""
    start, elbows = looker.space.start, min(looker.space.limits.elbows, PLANAR)
    found = [
        f.grid.flat for f in looker.planar(terms)
        if any(f.cost(start.point, k) is not None for k in range(1, elbows + 1))
    ]  # fmt: skip
    u, v = (np.array([start.point[t]], np.int64) for t in range(3) if t != start.axis)
    ahead = [e for e in looker.space.exits if (e.axis, e.sign) == (start.axis, start.sign) and bool(e.allows(u, v)[0])]
    return found or [f.grid.flat for f in looker.planar(terms)[: len(ahead) - 1]]


def _settled(space: FreeSpace, table: Moves, route: Trace, bays: Bays, cost: Cost) -> Trace:
    """Centre a hidden route in its bay, unless that would make it another kind."""
    moved = centred(space, table, route) if cost[0] == 0 else route
    return moved if kind_of(moved, bays) == kind_of(route, bays) else route
