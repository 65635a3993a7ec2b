"""The graph of candidate runs: what a route with at most two elbows can be made of.

A candidate run is a set of straights that differ only in length: the same direction, the same places (joist bay, stud
bay, attic) passed in the same order, and for a last run the same way out. Two of them are joined where an elbow has
room at an end of one that is a beginning of the other. So every path through the graph from the collar to the outdoors
is one kind of route, and `best` gives the best route of that kind exactly: the least over all its elbow places.

The elbow places are the points of grids that are closed under the bounds of the bays too, for the same reason as
in `coordinates`: to lie in a bay is a wish that concerns one axis only.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING, NamedTuple

import numpy as np

from routeviz.model.freespace import Exit, Ints, Ticks
from routeviz.search.bays import Bays, Names
from routeviz.search.coordinates import Ground
from routeviz.search.lattice import Lattice, Rail, Track
from routeviz.search.launch import Launch, Slice
from routeviz.search.moves import END, START, Turn
from routeviz.search.solve import Solution, solve_on
from routeviz.search.trace import Trace, line_of
from routeviz.search.ways import Way, cost_to_leave

if TYPE_CHECKING:
    import networkx as nx

__all__ = ["COLLAR", "OUTDOORS", "Run", "RunGraph", "with_bays"]

COLLAR, OUTDOORS = "collar", "outdoors"  # where every path begins and ends


class Run(NamedTuple):
    """A candidate run: `came` is the state of the run before it, -1 for a first run; `leave` is END for a last one."""

    came: int
    state: int
    entry: int
    leave: int
    bays: Names
    exit: Exit | None


@dataclass(frozen=True)
class _Straights:
    """The straights of a candidate run: from which place to which, how long and at what cost.

    Places are numbers of elbow places; a last run ends at a coordinate instead.
    """

    begin: Ints
    end: Ints
    length: Ints
    cost: Ints


def with_bays(ground: Ground, bays: Bays) -> Ground:
    """Give a ground whose grids hold the bounds of all bays too, and the least middle runs that keep a duct off itself."""
    table, start = ground.table, ground.space.start.axis
    faces = []
    for t, values in enumerate(ground.faces):
        halves = {table.half(s)[t] for s in table.states if s.axis != t} if t != start else ()
        keep = {a + b + max(ground.space.limits.contact, 1) for a in halves for b in halves}
        beside = {c[t] + side * k for c in ground.collars for k in keep for side in (1, -1)}
        faces.append(np.union1d(values, np.array([*bays.edges(t), *beside], np.int64)))
    return replace(ground, faces=(faces[0], faces[1], faces[2]))


class _Gatherer:
    """Collects the candidate runs of one planar grid."""

    def __init__(self, field: Solution, collar: Ticks, bays: Bays) -> None:
        self.grid, self.bays, self.collar = field.grid, bays, collar
        self.out, self.launches = field.layers.out, field.launches
        self.plain = len(self.grid.alive)
        self.size = max((len(launch.first.field) for launch in field.launches), default=0)
        self.rows: dict[Run, list[tuple[Ints, Ints, Ints, Ints]]] = {}
        self.reached: set[tuple[int, int]] = set()  # (state, kind of the elbow) of middle runs
        self.places: list[Ints] = []
        self._places = np.stack(np.unravel_index(self.grid.alive, self.grid.shape), axis=1).astype(np.int64)
        for number, launch in enumerate(self.launches):
            self._first(number, launch)
        self._behind_middles()

    def add(self, run: Run, begin: Ints, end: Ints, length: Ints, cost: Ints) -> None:
        self.rows.setdefault(run, []).append((begin, end, length, cost))

    def by_bays(self, run: Run, codes: Ints, begin: Ints, end: Ints, length: Ints, cost: Ints) -> None:
        """Add straights of one state, sorted by the places they pass."""
        first = int(codes[0])
        if (codes == first).all():
            self.add(run._replace(bays=self.bays.named(first)), begin, end, length, cost)
            return
        for code in np.unique(codes).tolist():
            which = codes == code
            self.add(run._replace(bays=self.bays.named(code)), begin[which], end[which], length[which], cost[which])

    def _first(self, number: int, launch: Launch) -> None:
        """Gather the first runs from the collar, and what follows their elbows."""
        first, table = launch.first, self.grid.table
        state, shape = table.states[first.state], first.shape
        index = tuple(int(np.searchsorted(c, v)) for c, v in zip(first.coordinates, self.collar, strict=True))
        here = index[0], index[1], index[2]
        ahead = first.track.reach(line_of(here, shape, state.axis), here[state.axis], state.sign)
        names, length, cost = ahead.names.astype(np.int64), ahead.length, ahead.cost
        ends = first.rail.place[ahead.at]
        codes = self.bays.codes(
            state.axis, self.collar, np.full(len(ends), self.collar[state.axis]), ends, state.sign
        )  # fmt: skip
        places = self.plain + number * self.size + names
        none = np.zeros(len(names), np.int64)
        for kind in range(len(table.take_off)):
            run = Run(-1, first.state, START, kind, (), None)
            keep = length >= table.lag(START, kind)
            if keep.any():
                self.by_bays(run, codes[keep], none[keep], places[keep], length[keep], cost[keep])
        flat = np.array([np.ravel_multi_index(here, shape)], np.int32)
        collar = np.array([self.collar], np.int64)
        self._last(-1, START, first.state, first.rail, shape, first.out, flat, none[:1], collar)
        longest = int(length.max(initial=0))
        for turn in table.turns:
            if turn.source == first.state and longest >= table.lag(START, turn.kind):
                self._turned(launch, turn, names, places)

    def _turned(self, launch: Launch, turn: Turn, names: Ints, places: Ints) -> None:
        """Gather the runs behind an elbow on the first run: plain ones, and those back under the cover."""
        grid, first = self.grid, launch.first
        numbers = first.field[names]
        fits = numbers >= 0
        fits[fits] = (grid.bits[numbers[fits]] >> turn.body) & 1 == 0
        numbers, begin = numbers[fits], places[fits]
        points = self._coordinates(grid.coordinates, self._places[numbers])
        self._last(turn.source, turn.kind, turn.target, grid.rails[turn.target], grid.shape, self.out[turn.target],
                   grid.alive[numbers], begin, points)  # fmt: skip
        if grid.table.states[turn.target].axis != grid.flat:
            track = grid.track(turn.target)
            for n, place, point in zip(numbers.tolist(), begin.tolist(), points.tolist(), strict=True):
                self._middle(turn, track, grid.point(n), grid.shape, place, point, None)
        for back in launch.backs:
            if back.turn == turn:
                self._back(back.slice, back.bits[:, 0, :], back.row, turn, launch, names, places)

    def _back(
        self, part: Slice, bits: np.ndarray, row: int, turn: Turn, launch: Launch, names: Ints, places: Ints
    ) -> None:  # fmt: skip
        i, _, k = np.unravel_index(names, launch.first.shape)
        fits = k < bits.shape[1]
        fits[fits] = (bits[i[fits], k[fits]] >> turn.body) & 1 == 0
        index = np.stack([i[fits], np.full(int(fits.sum()), row), k[fits]], axis=1).astype(np.int64)
        flat = np.ravel_multi_index(tuple(index.T), part.shape).astype(np.int32)
        points = self._coordinates(part.coordinates, index)
        self._last(turn.source, turn.kind, turn.target, part.rail, part.shape, part.out, flat, places[fits], points)
        if self.grid.table.states[turn.target].axis == self.grid.flat:
            return
        for here, place, point in zip(index.tolist(), places[fits].tolist(), points.tolist(), strict=True):
            self._middle(turn, part.track, (here[0], here[1], here[2]), part.shape, place, point, part.field)

    @staticmethod
    def _coordinates(coordinates: Sequence[Ints], index: Ints) -> Ints:
        return np.stack([c[index[:, t]] for t, c in enumerate(coordinates)], axis=1)

    def _middle(
        self, turn: Turn, track: Track, here: tuple[int, int, int], shape: tuple[int, int, int], place: int,
        point: list[int], numbers: Ints | np.ndarray | None,
    ) -> None:  # fmt: skip
        """Gather the runs from one elbow to a second one; `numbers` are a slice's numbers in the field."""
        table = self.grid.table
        state = table.states[turn.target]
        ahead = track.reach(line_of(here, shape, state.axis), here[state.axis], state.sign)
        ends, length, cost = ahead.names.astype(np.int64), ahead.length, ahead.cost
        if numbers is not None:
            ends = numbers[ends].astype(np.int64)
        there = ends >= 0
        for kind in range(len(table.take_off)):
            keep = there & (length >= table.lag(turn.kind, kind))
            if keep.any():
                to = track.place[ahead.at][keep]
                codes = self.bays.codes(state.axis, point, np.full(len(to), point[state.axis]), to, state.sign)
                run = Run(turn.source, turn.target, turn.kind, kind, (), None)
                self.by_bays(run, codes, np.full(len(to), place), ends[keep], length[keep], cost[keep])
                self.reached.add((turn.target, kind))
                self.places.append(ends[keep])

    def _behind_middles(self) -> None:
        """Gather the last runs behind a second elbow."""
        grid = self.grid
        if not self.places:
            return
        numbers = np.unique(np.concatenate(self.places))
        for turn in grid.table.turns:
            if (turn.source, turn.kind) in self.reached:
                fits = numbers[(grid.bits[numbers] >> turn.body) & 1 == 0]
                points = self._coordinates(grid.coordinates, self._places[fits])
                self._last(turn.source, turn.kind, turn.target, grid.rails[turn.target], grid.shape,
                           self.out[turn.target], grid.alive[fits], fits, points)  # fmt: skip

    def _last(
        self, came: int, entry: int, state: int, rail: Rail, shape: tuple[int, int, int], out: list[Way],
        flat: np.ndarray, begin: Ints, points: Ints,
    ) -> None:  # fmt: skip
        """Gather last runs in a state from many places."""
        table, terms = self.grid.table, self.grid.terms
        axis, sign, _ = table.states[state]
        lag = table.lag(entry, END)
        for way in out:
            cost = cost_to_leave([way], rail, shape, flat, sign, lag, terms).astype(np.int64)
            some = np.flatnonzero(cost < terms.limit)
            if not len(some):
                continue
            index = np.unravel_index(flat[some], shape)
            u, v = (t for t in range(3) if t != axis)
            end = way.end[index[u], index[v]].astype(np.int64)
            here, codes = points[some], np.empty(len(some), np.int64)
            _, which = np.unique(here[:, u] * (1 << 32) + here[:, v], return_inverse=True)
            order = np.argsort(which, kind="stable")
            for part in np.split(order, np.flatnonzero(np.diff(which[order])) + 1):
                point = here[part[0]].tolist()
                codes[part] = self.bays.codes(axis, point, here[part, axis], end[part], sign)
            run = Run(came, state, entry, END, (), way.exit)
            self.by_bays(run, codes, begin[some], end, np.abs(end - here[:, axis]), cost[some])


@dataclass(frozen=True)
class RunGraph:
    """The candidate runs of one planar grid as a directed graph from `COLLAR` to `OUTDOORS`."""

    field: Solution
    collar: Ticks
    graph: nx.DiGraph[Run | str]
    straights: dict[Run, _Straights]
    places: Ints  # coordinates of the places, of shape (count, 3)

    @staticmethod
    def of(ground: Ground, plane: int, elbows: int, bays: Bays) -> RunGraph:
        """Gather the candidate runs of routes whose elbows lie in the plane across `plane` through the collar."""
        import networkx as nx

        field = solve_on(ground, elbows, plane=plane)
        collar = ground.collars[0]
        found = _Gatherer(field, collar, bays)
        straights = {
            run: _Straights(*(np.concatenate(part) for part in zip(*rows, strict=True)))
            for run, rows in found.rows.items()
        }  # fmt: skip
        graph: nx.DiGraph[Run | str] = nx.DiGraph()
        graph.add_nodes_from((COLLAR, OUTDOORS))
        ends: dict[tuple[int, int], list[Run]] = {}
        for run in straights:
            graph.add_edge(COLLAR, run) if run.came < 0 else ends.setdefault((run.came, run.entry), []).append(run)
            if run.leave == END:
                graph.add_edge(run, OUTDOORS)
        for run, made in straights.items():
            if run.leave != END:
                here = set(made.end.tolist())
                for after in ends.get((run.state, run.leave), ()):
                    if not here.isdisjoint(straights[after].begin.tolist()):
                        graph.add_edge(run, after)
        return RunGraph(field, collar, graph, straights, _all_places(field.grid, field.launches))

    def kinds(self, elbows: int) -> Iterator[tuple[Run, ...]]:
        """Give every path from the collar to the outdoors: one or more per kind of route."""
        import networkx as nx

        for path in nx.all_simple_paths(self.graph, COLLAR, OUTDOORS, cutoff=elbows + 2):
            yield tuple(run for run in path if isinstance(run, Run))

    def best(self, path: Sequence[Run], contact: int) -> Trace | None:
        """Give the best route along a path; None where its runs do not meet, or would touch each other."""
        table, far = self.field.grid.table, 1 << 62
        cost = np.full(len(self.places), far, np.int64)
        cost[0], before = 0, []
        for n, run in enumerate(path):
            made = self.straights[run]
            total = np.where(cost[made.begin] < far, cost[made.begin] + made.cost, far)
            if 0 < n < len(path) - 1:  # the runs on both sides of this one keep apart
                axis = table.states[run.state].axis
                halves = [table.half(table.states[path[m].state])[axis] for m in (n - 1, n + 1)]
                total[made.length < sum(halves) + max(contact, 1)] = far
            if not (total < far).any():
                return None
            before.append(total)
            if run.leave != END:
                cost = np.full(len(self.places), far, np.int64)
                np.minimum.at(cost, made.end, total)
        return self._followed(path, before)

    def _followed(self, path: Sequence[Run], totals: list[Ints]) -> Trace:
        """Go back from the end along what the least total was made of."""
        table = self.field.grid.table
        last = self.straights[path[-1]]
        at = int(totals[-1].argmin())
        least = int(totals[-1][at])
        states = tuple(table.states[run.state] for run in path)
        points: list[list[int]] = []
        for n in range(len(path) - 1, -1, -1):
            made = self.straights[path[n]]
            place = int(made.begin[at])
            points.append(self.collar_or(place, n))
            if n:
                wanted = int(totals[n][at] - made.cost[at])
                earlier = self.straights[path[n - 1]]
                at = int(np.flatnonzero((earlier.end == place) & (totals[n - 1] == wanted))[0])
        points.reverse()
        end = list(points[-1])
        end[states[-1].axis] = int(last.end[int(totals[-1].argmin())])
        route = [(p[0], p[1], p[2]) for p in (*points, end)]
        leave = path[-1].exit
        assert leave is not None
        return Trace(tuple(route), states, tuple(run.leave for run in path[:-1]), leave, least)

    def collar_or(self, place: int, number: int) -> list[int]:
        """Give a place's coordinates; the first run begins at the collar."""
        return list(self.collar) if number == 0 else [int(v) for v in self.places[place]]


def _all_places(grid: Lattice, launched: Sequence[Launch]) -> Ints:
    """Give the coordinates of every numbered place: the grid's elbow places, then each first run's points."""
    parts = [(grid.coordinates, grid.alive, grid.shape)]
    parts += [(la.first.coordinates, np.arange(len(la.first.field), dtype=np.int32), la.first.shape) for la in launched]
    found = [
        np.stack([c[i] for c, i in zip(coordinates, np.unravel_index(flat, shape), strict=True)], axis=1)
        for coordinates, flat, shape in parts
    ]  # fmt: skip
    return np.concatenate([*found, np.zeros((1, 3), np.int64)])
