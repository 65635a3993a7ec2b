"""A duct belongs in the middle of its bay: one small linear programme per route.

The kind of route, its exit and the side on which it passes every solid stay as they are; then every wish is linear.
The programme moves the corners so that the clear gaps beside the duct grow (up to a cap, beyond which more gap is
worth nothing), while the route grows by at most a stated length. The result is rounded to ticks and accepted only if
it keeps clear of everything again; otherwise the route stays as the search left it.

A member that a run crosses keeps wood on both sides of the hole. Where an elbow that stands on a sheet holds the run
too near the member's edge, the elbow may stand a little in the sheet's hole: as deep as the hole's gap lets it bend.
"""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass, field, replace
from itertools import pairwise

import numpy as np

from routeviz.model.freespace import BarrierKind, FreeSpace, Region, Ticks
from routeviz.search.linear import least_cost
from routeviz.search.measure import bodies, gap, least_gap, touches_itself
from routeviz.search.moves import END, START, Moves
from routeviz.search.trace import Trace
from routeviz.units import TICKS_PER_IN

__all__ = ["centred", "spared"]

LONGER_IN = 3.0  # how much longer a centred route may be
_CAP_IN = 3.0  # more gap than this is worth nothing
_REACH_IN = 24.0  # solids farther away do not matter
_WOOD_IN = 2.0  # an elbow stands in a sheet's hole only where less wood than this is left beside a hole in a member
_OTHERS_WEIGHT = 0.01  # of the other gaps against the least one
_LENGTH_WEIGHT = 1e-4  # of an inch of length against an inch of the least gap


@dataclass
class _Programme:
    """Rows of a linear programme over the corners' free coordinates and one gap per body."""

    space: FreeSpace
    table: Moves
    route: Trace
    dips: bool = False  # whether elbows may stand in the holes of sheets
    variable: dict[tuple[int, int], int] = field(default_factory=dict)  # (point, axis) to its variable
    upper: list[tuple[dict[int, float], float]] = field(default_factory=list)
    equal: list[tuple[dict[int, float], float]] = field(default_factory=list)

    def __post_init__(self) -> None:
        """Give a variable to every coordinate that a run may change; the others follow it."""
        count = 0
        for n, state in enumerate(self.route.states):
            for axis in range(3):
                before = self.variable.get((n, axis), -1)
                if axis == state.axis:
                    self.variable[n + 1, axis], count = count, count + 1
                else:
                    self.variable[n + 1, axis] = before
        self.moving = count
        self.count = count

    def gap_variable(self) -> int:
        """Add a variable for a gap."""
        self.count += 1
        return self.count - 1

    def term(self, point: int, axis: int, sign: float) -> tuple[dict[int, float], float]:
        """Give a coordinate as coefficients and a constant [in]."""
        at = self.variable.get((point, axis), -1)
        return ({at: sign}, 0.0) if at >= 0 else ({}, sign * self.route.points[point][axis] / TICKS_PER_IN)

    def at_most(self, parts: list[tuple[dict[int, float], float]], limit: float) -> None:
        """Add: the sum of the parts is at most the limit."""
        row: dict[int, float] = {}
        for coefficients, constant in parts:
            limit -= constant
            for at, value in coefficients.items():
                row[at] = row.get(at, 0.0) + value
        if row:
            self.upper.append((row, limit))


def _runs(programme: _Programme) -> list[tuple[dict[int, float], float]]:
    """Keep every run's direction and least length; give the parts of the whole length."""
    route, table = programme.route, programme.table
    entries, leaves = (START, *route.kinds), (*route.kinds, END)
    total = []
    for n, state in enumerate(route.states):
        run = [programme.term(n + 1, state.axis, -state.sign), programme.term(n, state.axis, state.sign)]
        programme.at_most(run, -table.lag(entries[n], leaves[n]) / TICKS_PER_IN)
        total += [programme.term(n + 1, state.axis, state.sign), programme.term(n, state.axis, -state.sign)]
    return total


def _exit(programme: _Programme) -> None:
    """Keep the end on its face and inside the face's usable part."""
    leave, last = programme.route.exit, len(programme.route.points) - 1
    axes = [t for t in range(3) if t != leave.axis]
    row, limit = programme.term(last, leave.axis, 1.0)[0].copy(), leave.rise[0] / TICKS_PER_IN
    for side, axis in enumerate(axes):
        coefficients, constant = programme.term(last, axis, -leave.rise[side + 1])
        limit -= constant
        for at, value in coefficients.items():
            row[at] = row.get(at, 0.0) + value
        programme.at_most([programme.term(last, axis, 1.0)], leave.hi[side] / TICKS_PER_IN)
        programme.at_most([programme.term(last, axis, -1.0)], -leave.lo[side] / TICKS_PER_IN)
    programme.equal.append((row, limit))


def _dip(space: FreeSpace, table: Moves, route: Trace, elbow: int, thing: _Thing) -> tuple[int, int, int]:
    """Give the axis, the side and the depth [ticks] to which an elbow may stand in the hole of what its leg passes.

    Over a depth d the skin on the inner side, of radius R - r, leaves the straight by R - r - sqrt((R - r)^2 - d^2),
    which the hole's gap must hold. The outer skin leaves it by less.
    """
    s1, s2 = route.states[elbow], route.states[elbow + 1]
    for leg, (state, sign) in enumerate(((s1, -s1.sign), (s2, s2.sign))):
        sheet = thing.kind is BarrierKind.SHEET and not thing.runs[state.axis]
        cover = (
            thing.is_room and space.start.covered and elbow == 0 and leg == 0
        )  # it hides what stands below the sheet
        if sheet or cover:
            other = s2.axis if leg == 0 else s1.axis
            throat = table.take_off[route.kinds[elbow]] - table.half(state)[other]
            return state.axis, sign, math.isqrt(max(throat**2 - max(throat - space.limits.hole, 0) ** 2, 0))
    return 0, 0, 0


@dataclass(frozen=True, slots=True)
class _Thing:
    """What a body keeps its side of: a barrier, or a part of the open room."""

    region: Region
    runs: tuple[bool, bool, bool]
    kind: BarrierKind
    is_room: bool = False


def _things(space: FreeSpace) -> list[_Thing]:
    barriers = [_Thing(b.region, b.runs, b.kind) for b in space.barriers]
    return barriers + [_Thing(r, (True, True, True), BarrierKind.CLOSED, True) for r in space.boxing]


def _ends(route: Trace, table: Moves) -> Iterator[tuple[tuple[int, int], tuple[Ticks, Ticks], int]]:
    """Give each body: the points that span it, its reach from them (low, high), and its run axis (-1: an elbow)."""
    for n, state in enumerate(route.states):
        half = table.half(state)
        yield (n, n + 1), ((-half[0], -half[1], -half[2]), half), state.axis
    for n, (s1, s2) in enumerate(pairwise(route.states)):
        source, target = table.states.index(s1), table.states.index(s2)
        body = table.bodies[next(t.body for t in table.turns if t[:2] == (source, target))]
        (a, b), (c, d), (e, f) = body
        yield (n + 1, n + 1), ((a, c, e), (b, d, f)), -1


def _sides(programme: _Programme) -> list[int]:
    """Keep every body on its side of everything, with a gap to solids that counts; give the gap variables."""
    route, space = programme.route, programme.space
    things = _things(space)
    gaps = []
    for (first, second), (low, high), axis in _ends(route, programme.table):
        own = programme.gap_variable()
        gaps.append(own)
        spread = [sorted((route.points[first][t], route.points[second][t])) for t in range(3)]
        lo, hi = [s[0] + low[t] for t, s in enumerate(spread)], [s[1] + high[t] for t, s in enumerate(spread)]
        for thing in things:
            region, runs, kind = thing.region, thing.runs, thing.kind
            if axis >= 0 and not runs[axis] and kind is not BarrierKind.MEMBER:
                continue
            far = [max(region.lo[t] - hi[t], lo[t] - region.hi[t]) for t in range(3)]
            if max(far) > _REACH_IN * TICKS_PER_IN:
                continue
            points = (first, second)
            if max(far) >= 0 and region.axis < 0 and (axis < 0 or runs[axis]):
                t = max(range(3), key=lambda t: far[t])
                reach = [low[t], high[t]]
                if axis < 0 and programme.dips:
                    across, side, depth = _dip(space, programme.table, route, first - 1, thing)
                    if across == t:
                        reach[side > 0] -= side * depth
                _keep_apart(
                    programme, points, (reach[0], reach[1]), t, region, own if kind is BarrierKind.SOLID else -1
                )
            elif axis >= 0 and not runs[axis]:
                _keep_inside(programme, points, low, high, axis, region, own)
    return gaps


def _keep_apart(
    programme: _Programme, points: tuple[int, int], reach: tuple[int, int], axis: int, region: Region, own: int
) -> None:
    low, high = reach[0] / TICKS_PER_IN, reach[1] / TICKS_PER_IN
    extra: tuple[dict[int, float], float] = ({own: 1.0}, 0.0) if own >= 0 else ({}, 0.0)
    below = all(programme.route.points[p][axis] + reach[1] <= region.lo[axis] for p in points)
    for p in set(points):
        if below:
            programme.at_most([programme.term(p, axis, 1.0), extra], region.lo[axis] / TICKS_PER_IN - high)
        else:
            programme.at_most([programme.term(p, axis, -1.0), extra], low - region.hi[axis] / TICKS_PER_IN)


def _keep_inside(
    programme: _Programme, points: tuple[int, int], low: Ticks, high: Ticks, axis: int, region: Region, own: int
) -> None:
    """Leave wood on both sides where a run crosses a member that is larger than the duct."""
    for t in (t for t in range(3) if t != axis):
        at = programme.route.points[points[0]][t]
        if region.axis < 0 and region.lo[t] <= at + low[t] and at + high[t] <= region.hi[t]:
            extra = ({own: 1.0}, 0.0)
            programme.at_most([programme.term(points[0], t, 1.0), extra], (region.hi[t] - high[t]) / TICKS_PER_IN)
            programme.at_most([programme.term(points[0], t, -1.0), extra], (low[t] - region.lo[t]) / TICKS_PER_IN)


def _solved(programme: _Programme, longer_in: float) -> Trace | None:
    """Solve, and give the route with its corners moved."""
    route = programme.route
    total = _runs(programme)
    _exit(programme)
    gaps = _sides(programme)
    programme.at_most(total, route.length / TICKS_PER_IN + longer_in)
    least = programme.gap_variable()
    for own in gaps:
        programme.at_most([({least: 1.0}, 0.0), ({own: -1.0}, 0.0)], 0.0)
    cost = np.zeros(programme.count)
    cost[least], cost[gaps] = -1.0, -_OTHERS_WEIGHT
    for coefficients, _ in total:
        for at, value in coefficients.items():
            cost[at] += _LENGTH_WEIGHT * value
    free = programme.count - programme.moving
    low = [-math.inf] * programme.moving + [0.0] * free
    high = [math.inf] * programme.moving + [_CAP_IN] * free
    best = least_cost(cost, low, high, upper=programme.upper, equal=programme.equal)
    if best is None:
        return None
    points: list[Ticks] = []
    for n, point in enumerate(route.points):
        which = [programme.variable.get((n, t), -1) for t in range(3)]
        moved = [round(best[k] * TICKS_PER_IN) if k >= 0 else point[t] for t, k in enumerate(which)]
        points.append((moved[0], moved[1], moved[2]))
    leave, last = route.exit, list(points[-1])
    u, v = (np.array([last[t]], np.int64) for t in range(3) if t != leave.axis)
    last[leave.axis] = int(leave.end(u, v)[0])
    return replace(route, points=(*points[:-1], (last[0], last[1], last[2])))


def _holds(space: FreeSpace, table: Moves, before: Trace, after: Trace, *, dips: bool) -> bool:
    """Tell whether a moved route keeps clear of everything that the route before kept clear of."""
    u, v = (np.array([after.points[-1][t]], np.int64) for t in range(3) if t != after.exit.axis)
    if not bool(after.exit.allows(u, v)[0]):
        return False
    entries, leaves = (START, *after.kinds), (*after.kinds, END)
    for n, state in enumerate(after.states):
        length = (after.points[n + 1][state.axis] - after.points[n][state.axis]) * state.sign
        if length < table.lag(entries[n], leaves[n]):
            return False
    if touches_itself(after.points, [table.half(s) for s in after.states], space.limits.contact):
        return False
    (old_runs, old_elbows), (new_runs, new_elbows) = bodies(before, table), bodies(after, table)
    solid, room = [b.region for b in space.barriers], list(space.boxing)
    if any(gap(elbow, r) < 0 for elbow in old_elbows for r in solid):
        return False  # an elbow that only its true shape lets through stays where it is
    pairs = zip(old_runs, new_runs, strict=True)
    if not all(gap(new, r) >= 0 or gap(old, r) < 0 for old, new in pairs for r in (*solid, *room)):
        return False
    for n, (old_elbow, elbow) in enumerate(zip(old_elbows, new_elbows, strict=True)):
        for thing in _things(space):
            shown = _less(elbow, _dip(space, table, after, n, thing)) if dips else elbow
            if gap(shown, thing.region) < 0 and not (thing.is_room and gap(old_elbow, thing.region) < 0):
                return False
    return True


def _less(box: tuple[Ticks, Ticks], dip: tuple[int, int, int]) -> tuple[Ticks, Ticks]:
    """Cut off what of an elbow's box may stand in a hole."""
    axis, side, depth = dip
    lo, hi = list(box[0]), list(box[1])
    if side > 0:
        hi[axis] -= depth
    else:
        lo[axis] += depth
    return (lo[0], lo[1], lo[2]), (hi[0], hi[1], hi[2])


def _least(space: FreeSpace, table: Moves, route: Trace) -> float:
    """Give the least gap of the route to any solid, capped [ticks]."""
    solid = [b.region for b in space.barriers if b.kind is BarrierKind.SOLID]
    runs, elbows = bodies(route, table)
    most = _CAP_IN * TICKS_PER_IN
    return min(most, least_gap([*runs, *elbows], solid)) if solid else most


def centred(space: FreeSpace, table: Moves, route: Trace, *, longer_in: float = LONGER_IN) -> Trace:
    """Move a route's corners to the middle of what it runs in.

    Parameters
    ----------
    space : FreeSpace
    table : Moves
    route : Trace
        A hidden route of 90-degree elbows; one with an offset is given back as it is.
    longer_in : float
        How much longer it may become [in].

    Returns
    -------
    Trace
        Of the same kind; the route itself where nothing is gained.
    """
    if route.offsets or not route.kinds:
        return route
    best = _better(space, table, route, longer_in, dips=False)
    if _wood(space, table, best) < _WOOD_IN * TICKS_PER_IN:
        deeper = _better(space, table, route, longer_in, dips=True)
        if _wood(space, table, deeper) > _wood(space, table, best):
            return deeper
    return best


def spared(space: FreeSpace, table: Moves, route: Trace) -> Trace:
    """Centre a route only where a member that it crosses would keep little wood: for the many places of a map."""
    plain = bool(route.kinds) and not route.offsets  # others stay as they are
    return centred(space, table, route) if plain and _wood(space, table, route) < _WOOD_IN * TICKS_PER_IN else route


def _better(space: FreeSpace, table: Moves, route: Trace, longer_in: float, *, dips: bool) -> Trace:
    """Give the route that the programme moves, or the route itself where that is no better or does not hold."""
    found = _solved(_Programme(space, table, route, dips), longer_in)
    if found is None or not _holds(space, table, route, found, dips=dips):
        return route
    return found if _least(space, table, found) >= _least(space, table, route) - 1 else route


def _wood(space: FreeSpace, table: Moves, route: Trace) -> float:
    """Give the least that members which the runs cross have left beside the duct [ticks]; infinite where they keep none."""
    least = math.inf
    for state, (lo, hi) in zip(route.states, bodies(route, table)[0], strict=True):
        for b in space.barriers:
            if b.kind is BarrierKind.MEMBER and not b.runs[state.axis] and gap((lo, hi), b.region) < 0:
                sides = (t for t in range(3) if t != state.axis)
                left = min(m for t in sides for m in (lo[t] - b.region.lo[t], b.region.hi[t] - hi[t]))
                least = min(least, left) if left >= 0 else least  # what is narrower than the duct keeps none
    return least
