"""Why not fewer elbows: the nearest place of the hood from which a route with so many elbows goes, and what bars it here.

The places that allow a route of one kind are an interval along the wall and one in height, with ends on the closed
grid of a collar that may move (`Ground.places`). So the field over these places, nearest first, has the least shift
exactly; only where a keep-out's rounded corner decides can it be a fraction of an inch too large. Every place that is
offered is solved again with the others left out.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field, replace

import numpy as np

from routeviz.errors import LimitError
from routeviz.model.freespace import FreeSpace, Ints, Ticks
from routeviz.model.path import WhyNot
from routeviz.search.bars import bars, crossed_members
from routeviz.search.coordinates import Ground
from routeviz.search.solve import Solution, above, solve_on
from routeviz.search.stepped import Sidesteps
from routeviz.search.terms import Terms
from routeviz.search.trace import Trace
from routeviz.units import TICKS_PER_IN

__all__ = ["why_not_fewer"]

REACH = 36 * TICKS_PER_IN  # no shift farther than this is looked for
_NEAREST = 12  # places along the wall in the first field; each next one has twice as many
_HEIGHTS_AT_ONCE = 96
_QUARTER = TICKS_PER_IN // 4
_MOST_CUT = 3  # a route through more members is no advice
_NUMBER = {1: "one elbow", 2: "two elbows"}
Spans = tuple[tuple[int, int], ...]
_STRAIGHT = {"straight up": ((2, 1),), "straight back": ((2, 1), (1, 1))}


def _fewest(fields: Sequence[Solution], collar: Ticks, elbows: int) -> Trace | None:
    """Give the best route with the fewest elbows, at most so many."""
    for k in range(elbows + 1):
        costs = [(cost, n) for n, f in enumerate(fields) if (cost := f.cost(collar, k)) is not None]
        if costs:
            return fields[min(costs)[1]].route(collar, k)
    return None


@dataclass
class _Places:
    """Fields over places of the hood, and what they say. `known` is the fewest elbows by place along the wall."""

    space: FreeSpace
    ground: Ground
    elbows: int
    known: dict[int, int] = field(default_factory=dict)

    def solved(self, collars: Sequence[Ticks]) -> list[Solution]:
        """Solve for these collars alone: two fields that hold all routes with at most two elbows."""
        ground = self.ground.at(above(self.space, min(c[2] for c in collars)), collars)
        return [solve_on(ground, self.elbows, plane=t) for t in range(3) if t != self.space.start.axis]

    def fewest(self, collars: Sequence[Ticks]) -> list[int]:
        """Give the least number of elbows per collar; one more than `elbows` where there is no route."""
        found = np.full(len(collars), self.elbows + 1, np.int64)
        for solution in self.solved(collars):
            table = solution.costs([collars], self.elbows)[:, 0, :]
            for k in range(self.elbows, -1, -1):
                found[(table[k] < solution.grid.terms.limit) & (found > k)] = k
        return [int(v) for v in found]

    def along_wall(self, elbows: int, reach: int) -> _Along:
        """Find the least shifts along the wall, less than `reach`, that allow so many elbows."""
        x, y, z = self.space.start.point
        every = self._along(x - reach + 1, x + reach - 1)
        nearest = every[np.argsort(np.abs(every - x), kind="stable")]
        new = nearest[[v not in self.known for v in nearest.tolist()]]
        for part in _chunks(new):
            if _bay_ends(self.known, x, elbows, self.space.start.reach_x):
                break
            collars = [(v, y, z) for v in part.tolist()]
            self.known.update(zip(part.tolist(), self.fewest(collars), strict=True))
        return _stretch(
            {v: k for v, k in self.known.items() if abs(v - x) < reach}, x, elbows, self.space.start.reach_x
        )

    def _along(self, low: int, high: int) -> Ints:
        """Give where the collar may begin or cease to have a route, and the ends of where the hood has room."""
        parts = [(max(low, a), min(high, b)) for a, b in self.space.start.reach_x if a <= high and b >= low]
        found = [self.ground.places(0, self.elbows, a, b) for a, b in parts]
        ends = [v for pair in self.space.start.reach_x for v in pair if low <= v <= high]
        return np.unique(np.concatenate([*found, np.array(ends, np.int64)]))

    def in_height(self) -> list[tuple[int, int]]:
        """Give (change of height, fewest elbows) within the hood's limits, the least change first.

        The heights that allow a route of one kind are an interval with ends among `Ground.places`. So the heights that
        can be written down next to all these ends hold the least change of every number of elbows.
        """
        x, y, z = self.space.start.point
        if self.elbows == 0 and self.space.start.axis == 2:
            return []  # a plain riser is as free from any height
        ends = self._lifts([int(v) - z for v in self.ground.places(2, self.elbows, *self._band())])
        found: list[tuple[int, int]] = []
        for at in range(0, len(ends), _HEIGHTS_AT_ONCE):
            part = ends[at : at + _HEIGHTS_AT_ONCE]
            found += zip(part, self.fewest([(x, y, z + v) for v in part]), strict=True)
        return found

    def _band(self) -> tuple[int, int]:
        return self.space.start.reach_z or (0, -1)

    def _lifts(self, ends: Sequence[int]) -> list[int]:
        """Give the changes of height next to some and to the limits that can be written down, the least first."""
        (low, high), z, step = self._band(), self.space.start.point[2], self.space.start.step_z
        near = {v // step * step + more for v in (*ends, low - z, high - z) for more in (0, step)}
        return sorted((v for v in near if v and low <= z + v <= high), key=lambda v: (abs(v), v))

    def with_offset(self) -> tuple[int, Trace] | None:
        """Give the least change of height, in quarters of an inch, that lets a hidden straight way with one offset out."""
        (low, high), z = self._band(), self.space.start.point[2]
        if not self.space.offsets or self.space.limits.elbows < 1 or self.space.start.axis != 2 or low > high:
            return None
        ways = Sidesteps(above(self.space, low), self.ground.table)
        first, last = -((z - low) // _QUARTER), (high - z) // _QUARTER
        steps = {n * _QUARTER for n in range(first, last + 1)} | set(self._lifts([]))
        for lift in sorted(steps - {0}, key=lambda v: (abs(v), v)):
            found = ways.best(z + lift)
            if found is not None:
                return lift, found[1]
        return None


def _chunks(places: Ints) -> Iterator[Ints]:
    at, size = 0, _NEAREST
    while at < len(places):
        yield places[at : at + size]
        at, size = at + size, 2 * size


@dataclass(frozen=True)
class _Along:
    """What was found along the wall for one number of elbows [ticks, shifts of the collar]."""

    near: int | None = None
    other: int | None = None  # the least shift to the other side
    end: int | None = None  # the far end of the stretch of good places that begins at `near`


def _stretch(known: dict[int, int], x: int, elbows: int, reach: Spans) -> _Along:
    good = sorted((v for v, k in known.items() if k <= elbows and v != x), key=lambda v: (abs(v - x), v))
    if not good:
        return _Along()
    near = end = good[0]
    low, high = next(pair for pair in reach if pair[0] <= near <= pair[1])
    sign = 1 if near > x else -1
    other = next((v for v in good if (v - x) * sign < 0), None)
    for v in sorted((v for v in known if (v - near) * sign > 0), key=lambda v: abs(v - near)):
        if known[v] > elbows or not low <= v <= high:
            break
        end = v
    return _Along(near - x, None if other is None else other - x, end - x)


def _bay_ends(known: dict[int, int], x: int, elbows: int, reach: Spans) -> bool:
    """Tell whether the nearest good stretch is known to its end."""
    found = _stretch(known, x, elbows, reach)
    return found.end is not None and x + found.end not in (min(known), max(known))


def why_not_fewer(
    space: FreeSpace, ground: Ground, told: Sequence[WhyNot], *, below: float, most: int, boxed: bool = False
) -> tuple[WhyNot, ...]:  # fmt: skip
    """Explain every number of elbows up to `most` that is below the answer's.

    Parameters
    ----------
    space : FreeSpace
        The problem as carved for this hood.
    ground : Ground
        Of the same problem, on plain terms.
    told : sequence of WhyNot
        What is told of the straight ways. A number of elbows that helps no sooner than these is not told of.
    below : float
        Elbows of the answer; infinite when there is none.
    most : int
        At most 2: such routes lie in two planes through the collar.
    boxed : bool
        Whether the answer lies in the open room, so that a hidden route with as many elbows is worth telling of too.

    Returns
    -------
    tuple of WhyNot
        Those told, with the members to be cut and the least change of height, then what is new.
    """
    wanted = [k for k in range(most + 1) if k < below + boxed]
    if not wanted:
        return tuple(told)
    try:
        places = _Places(space, ground, max(wanted))
        through = _through(space, ground, wanted)
        heights = places.in_height()
        found = [_completed(places, why, through, heights) for why in told]
        for k in wanted[1:]:
            why = _explained(places, k, found, through[k], heights)
            if why is not None:
                found.append(replace(why, wanted=f"hidden {why.wanted}") if boxed else why)
        found += _by_offset(places, found) if below > 1 or boxed else []
    except LimitError:  # a house too large to explain; the answer itself stands
        return tuple(told)
    return tuple(found)


def _through(space: FreeSpace, ground: Ground, wanted: Sequence[int]) -> dict[int, Trace | None]:
    """Give, per number of elbows, the route from here that crosses the fewest members as if they were cut."""
    start = space.start.point
    base = replace(ground, terms=Terms(crossing=True))
    planes = [t for t in range(3) if t != space.start.axis]
    fields = [solve_on(base, max(wanted), plane=t) for t in (planes if max(wanted) else planes[:1])]
    found: dict[int, Trace | None] = {}
    for k in wanted:
        costs = [(c, n) for n, f in enumerate(fields) if (c := f.cost(start, k)) is not None]
        best = min(costs, default=None)
        found[k] = fields[best[1]].route(start, k) if best is not None and best[0][0] <= _MOST_CUT else None
    return found


def _kind(route: Trace) -> tuple[tuple[int, int], ...]:
    return tuple((s.axis, s.sign) for s in route.states)


def _completed(
    places: _Places, why: WhyNot, through: dict[int, Trace | None], heights: Sequence[tuple[int, int]]
) -> WhyNot:  # fmt: skip
    """Add to a straight way the members to be cut for it, and the least change of height."""
    space = places.space
    kind = _STRAIGHT[why.wanted][-1:] if space.start.axis == 1 else _STRAIGHT[why.wanted]
    route = through.get(why.elbows)
    crossing = why.crossing
    if route is not None and _kind(route) == kind:
        crossing = crossed_members(space, places.ground.table, route)
    lift = _lift(places, why.elbows, heights, kind)
    return replace(why, crossing=crossing, lift_in=_inches(lift))


def _lift(
    places: _Places, elbows: int, heights: Sequence[tuple[int, int]], kind: tuple[tuple[int, int], ...] = ()
) -> int | None:  # fmt: skip
    """Give the least change of height that allows so many elbows, solved again; `kind`, if given, is the route's."""
    x, y, z = places.space.start.point
    lift = next((v for v, k in heights if k <= elbows), None)
    if lift is None:
        return None
    collar = x, y, z + lift
    route = _fewest(places.solved([collar]), collar, elbows)
    return lift if route is not None and kind in ((), _kind(route)) else None


def _explained(
    places: _Places, elbows: int, told: Sequence[WhyNot], through: Trace | None, heights: Sequence[tuple[int, int]]
) -> WhyNot | None:  # fmt: skip
    """Explain one number of elbows, unless what is told already helps as soon."""
    space, table = places.space, places.ground.table
    x, y, z = space.start.point
    shifts = [round(abs(w.shift_in) * TICKS_PER_IN) for w in told if w.shift_in is not None]
    along = places.along_wall(elbows, min([REACH, *shifts]))
    crossing = () if through is None else crossed_members(space, table, through)
    if any(0 < len(w.crossing) <= len(crossing) for w in told):
        crossing = ()  # fewer elbows for no more cuts
    lift = None if any(w.lift_in is not None for w in told) else _lift(places, elbows, heights)
    if along.near is None and not crossing and lift is None and (shifts or told):
        return None
    nearest, other, middle = _again(places, elbows, along)
    if nearest is None and lift is not None:
        collar = x, y, z + lift
        nearest = _fewest(places.solved([collar]), collar, elbows)
    spare = None if middle is None or along.near is None else abs(middle - along.near)
    return WhyNot(
        wanted=f"with {_NUMBER[elbows]}",
        blockers=(() if nearest is None else bars(space, table, nearest)) or crossing,
        shift_in=_inches(along.near),
        shift_other_in=_inches(other),
        middle_in=_inches(middle),
        lift_in=_inches(lift),
        verified=nearest is not None,
        spare_in=_inches(spare),
        elbows=elbows,
        points=() if nearest is None else tuple(
            (p[0] / TICKS_PER_IN, p[1] / TICKS_PER_IN, p[2] / TICKS_PER_IN) for p in nearest.points
        ),
        crossing=crossing,
    )  # fmt: skip


def _by_offset(places: _Places, told: Sequence[WhyNot]) -> Iterator[WhyNot]:
    """Tell of a change of height that lets an offset out, unless one as small lets a plainer way out."""
    found = places.with_offset()
    lifts = [abs(w.lift_in) for w in told if w.lift_in is not None]
    if found is None or any(lift <= abs(found[0]) / TICKS_PER_IN for lift in lifts):
        return
    lift, route = found
    points = tuple((a / TICKS_PER_IN, b / TICKS_PER_IN, c / TICKS_PER_IN) for a, b, c in route.points)
    yield WhyNot(
        "straight with one offset", (), None, None, None, _inches(lift), verified=True, elbows=1, points=points
    )


def _again(places: _Places, elbows: int, along: _Along) -> tuple[Trace | None, int | None, int | None]:
    """Solve the offered places again: give the nearest route, and the other shift and the middle where they hold."""
    if along.near is None or along.end is None:
        return None, None, None
    x, y, z = places.space.start.point
    middle = (along.near + along.end) // 2
    shifts = [along.near, middle, *([] if along.other is None else [along.other])]
    collars = [(x + v, y, z) for v in shifts]
    fields = places.solved(collars)
    routes = [_fewest(fields, c, elbows) for c in collars]
    other = along.other if routes[-1] is not None else None
    return routes[0], other, middle if routes[1] is not None else along.near


def _inches(value: int | None) -> float | None:
    return None if value is None else value / TICKS_PER_IN
