"""Why not simpler: what stands in a run straight up or straight back, and the least shift along the wall that frees it.

A straight way out is a fixed set of boxes for every place of the hood along the wall, so each barrier forbids one open
interval of places. The nearest places outside all of them are the least shifts; each is checked again as a whole
against every barrier and every exit before it is offered.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

import numpy as np
import numpy.typing as npt

from routeviz.model.freespace import Barrier, BarrierKind, Exit, FreeSpace, Ints
from routeviz.model.path import Blocker, WhyNot
from routeviz.search.moves import Moves, State, lying, moves
from routeviz.units import TICKS_PER_IN

__all__ = ["why_not_straight"]

_REACH = 60 * TICKS_PER_IN  # no shift farther than this is offered
_MOST_BLOCKERS = 4
_HEIGHT_STEP = TICKS_PER_IN // 2


@dataclass(frozen=True, slots=True)
class _Body:
    """Part of a way out across the wall: its run axis (-1 for an elbow) and its open range in y and z."""

    axis: int
    y: tuple[int, int]
    z: tuple[int, int]


@dataclass(frozen=True, slots=True)
class _Way:
    """A straight way out, the same for every place along the wall but for its x."""

    wanted: str
    bodies: tuple[_Body, ...]
    exit: Exit | None
    at: tuple[int, int]  # where it leaves, in the exit's axes; the x in it counts as 0 for exits across the wall
    half: int


def why_not_straight(space: FreeSpace, *, below: float) -> tuple[WhyNot, ...]:
    """Explain every straight way out with fewer elbows than `below` that is not free where the hood stands.

    Parameters
    ----------
    space : FreeSpace
        The problem as carved for this hood.
    below : float
        Elbows of the answer; infinite when there is none.
    """
    found = []
    barriers = _Barriers.of(space)
    for ways in _candidates(space, moves(space.section, space.limits), below):
        placed = [_Placed(space, way, barriers.forbidding(way)) for way in ways]
        checked = [(way, _meets(way, space.start.point[0])) for way in placed]
        way, blockers = min(checked, key=lambda w: (len(w[1]), w[0].way.bodies[-1].z[0]))
        if blockers:
            found.append(_explain(way, blockers))
    return tuple(found)


@dataclass(frozen=True)
class _Barriers:
    """What may stand in a run, with its bounds as arrays [ticks], of shape (n, 3)."""

    every: tuple[Barrier, ...]
    lo: Ints
    hi: Ints
    runs: npt.NDArray[np.bool_]

    @staticmethod
    def of(space: FreeSpace) -> _Barriers:
        every = tuple(b for b in space.barriers if b.kind is not BarrierKind.OUTDOORS)
        lo = np.array([b.region.lo for b in every], np.int64).reshape(-1, 3)
        hi = np.array([b.region.hi for b in every], np.int64).reshape(-1, 3)
        return _Barriers(every, lo, hi, np.array([b.runs for b in every], np.bool_).reshape(-1, 3))

    def forbidding(self, way: _Way) -> tuple[_Interval, ...]:
        """Give the open interval of places along the wall that each barrier forbids."""
        stands = np.array([self._in(body) for body in way.bodies])
        which = np.flatnonzero(stands.any(axis=0)).tolist()
        first = stands.argmax(axis=0).tolist()
        return tuple(
            _Interval(b.region.lo[0] - way.half, b.region.hi[0] + way.half, b, way.bodies[first[n]])
            for n in which
            for b in (self.every[n],)
        )

    def _in(self, body: _Body) -> npt.NDArray[np.bool_]:
        """Tell which barriers, wherever they are along the wall, stand in this body."""
        lo, hi = self.lo, self.hi
        met = (body.y[0] < hi[:, 1]) & (body.y[1] > lo[:, 1]) & (body.z[0] < hi[:, 2]) & (body.z[1] > lo[:, 2])
        return met & self.runs[:, body.axis] if body.axis >= 0 else met


@dataclass(frozen=True, slots=True)
class _Interval:
    """The open interval of places [ticks] that a barrier forbids, and the body of the way that it stands in."""

    low: int
    high: int
    barrier: Barrier
    body: _Body


@dataclass(frozen=True, slots=True)
class _Placed:
    """A straight way in its space, with what each barrier forbids it."""

    space: FreeSpace
    way: _Way
    forbidden: tuple[_Interval, ...]


def _candidates(space: FreeSpace, table: Moves, below: float) -> Iterator[list[_Way]]:
    """Give, per kind of straight way, its variants by height and by how the duct lies on the collar."""
    rising, states = space.start.axis == 2, list(lying(space, table))
    if rising and below > 0:
        yield [_up(space, table, state) for state in states]
    if below > (1 if rising else 0):
        runs = _rising_backs if rising else _plain_backs
        back = [way for leave in _faces(space, 1) for state in states for way in runs(space, table, leave, state)]
        if back:
            yield back


def _faces(space: FreeSpace, axis: int) -> list[Exit]:
    return [e for e in space.exits if e.axis == axis and e.sign == 1]


def _up(space: FreeSpace, table: Moves, state: State) -> _Way:
    x, y, z = space.start.point
    half = table.half(state)
    fit = [e for e in _faces(space, 2) if e.lo[1] <= y <= e.hi[1]]
    leave = fit[0] if fit else None
    top = int(leave.end(np.int64(x), np.int64(y))) if leave else space.hi[2]  # type: ignore[arg-type]
    return _Way("straight up", (_Body(2, (y - half[1], y + half[1]), (z, top)),), leave, (0, y), half[0])


def _plain_backs(space: FreeSpace, table: Moves, leave: Exit, state: State) -> Iterator[_Way]:
    """Give the run straight back from a rear outlet."""
    _, y, z = space.start.point
    half = table.half(state)
    body = _Body(1, (y, _plane(leave)), (z - half[2], z + half[2]))
    yield _Way("straight back", (body,), leave, (0, z), half[0])


def _rising_backs(space: FreeSpace, table: Moves, leave: Exit, state: State) -> Iterator[_Way]:
    """Give the runs straight back from a riser, every half inch of height below the cover's top."""
    _, y, z = space.start.point
    half = table.half(state)
    for turn in table.turns:
        after = table.states[turn.target]
        if table.states[turn.source] != state or after[:2] != (1, 1):
            continue
        elbow, take_off, run = table.bodies[turn.body], table.take_off[turn.kind], table.half(after)
        low = z + space.limits.first + take_off
        high = (space.start.cover_top or space.hi[2]) - run[2]
        for at in range(low, max(high, low) + 1, _HEIGHT_STEP):
            bodies = (
                _Body(2, (y - half[1], y + half[1]), (z, at - take_off)),
                _Body(-1, (y + elbow[1][0], y + elbow[1][1]), (at + elbow[2][0], at + elbow[2][1])),
                _Body(1, (y + take_off, _plane(leave)), (at - run[2], at + run[2])),
            )
            yield _Way("straight back", bodies, leave, (0, at), max(half[0], run[0]))


def _plane(leave: Exit) -> int:
    return int(leave.end(np.int64(0), np.int64(0)))  # type: ignore[arg-type]


def _leaves(way: _Way, x: int) -> bool:
    """Tell whether the exit takes a duct that comes out at x."""
    if way.exit is None:
        return False
    u, v = np.int64(x), np.int64(way.at[1])
    return bool(way.exit.allows(u, v))  # type: ignore[arg-type]


def _meets(placed: _Placed, x: int) -> tuple[Blocker, ...]:
    """Name what a way meets at a place: barriers first, then what the exit keeps away from."""
    way = placed.way
    found = []
    for met in placed.forbidden:
        if met.low < x < met.high:
            region, gap = met.barrier.region, met.barrier.grown
            into = min(region.hi[0] - gap, x + way.half) - max(region.lo[0] + gap, x - way.half)
            at = (
                _between(x, region.lo[0], region.hi[0]),
                _between(sum(met.body.y) // 2, region.lo[1], region.hi[1]),
                _between(sum(met.body.z) // 2, region.lo[2], region.hi[2]),
            )
            kind = "zone" if met.barrier.kind is BarrierKind.CLOSED else "solid"
            found.append(Blocker(met.barrier.id, met.barrier.label, max(into, 0) / TICKS_PER_IN, _inches(at), kind))
    found.sort(key=lambda b: (b.kind == "zone", b.at[2] if way.wanted == "straight up" else b.at[1], b.id))
    if not found and not _leaves(way, x):
        found += list(_kept_out(way, x, placed.space.no_roof))
    closed = [b for b in found[_MOST_BLOCKERS:] if b.kind == "zone"]  # behind however many members, it is what decides
    return (*found[: _MOST_BLOCKERS - len(closed[:1])], *closed[:1])


def _kept_out(way: _Way, x: int, no_roof: str) -> Iterator[Blocker]:
    """Name what keeps a cap away where the way would leave."""
    if way.exit is None:
        yield Blocker("", no_roof, 0.0, (x / TICKS_PER_IN, 0.0, 0.0), "zone")
        return
    v = way.at[1]
    for keep in way.exit.keep_clear:
        away = np.hypot(max(keep.lo[0] - x, x - keep.hi[0], 0), max(keep.lo[1] - v, v - keep.hi[1], 0))
        if away < keep.reach and keep.holds_off(v):
            plane = float(way.exit.rise[0]) if way.exit.axis == 1 else float(way.exit.end(np.int64(x), np.int64(v)))  # type: ignore[arg-type]
            point = (float(x), plane, float(v)) if way.exit.axis == 1 else (float(x), float(v), plane)
            yield Blocker(keep.id, keep.label, float(keep.reach - away) / TICKS_PER_IN, _inches(point), "keep-out")


def _between(value: int, low: int, high: int) -> int:
    return min(max(value, low), high)


def _inches(point: tuple[float, float, float]) -> tuple[float, float, float]:
    return (float(point[0]) / TICKS_PER_IN, float(point[1]) / TICKS_PER_IN, float(point[2]) / TICKS_PER_IN)


def _explain(placed: _Placed, blockers: tuple[Blocker, ...]) -> WhyNot:
    way, x = placed.way, placed.space.start.point[0]
    forbidden = _merged([(met.low, met.high) for met in placed.forbidden])
    edges = sorted({e for pair in (*forbidden, *placed.space.start.reach_x) for e in pair} | _exit_edges(way))
    good = [e for e in edges if abs(e - x) <= _REACH and _free(placed, e)]
    left = max((e for e in good if e < x), default=None)
    right = min((e for e in good if e > x), default=None)
    near, other = sorted((left, right), key=lambda e: abs(e - x) if e is not None else _REACH * 2)
    middle = None if near is None else _middle(placed, near, near < x, forbidden)
    return WhyNot(
        wanted=way.wanted,
        blockers=blockers,
        shift_in=None if near is None else (near - x) / TICKS_PER_IN,
        shift_other_in=None if other is None else (other - x) / TICKS_PER_IN,
        middle_in=middle,
        verified=near is not None,
        spare_in=None if near is None or middle is None else abs(middle - (near - x) / TICKS_PER_IN),
        elbows=len(way.bodies) // 2,
    )


def _merged(intervals: list[tuple[int, int]]) -> list[tuple[int, int]]:
    merged: list[tuple[int, int]] = []
    for low, high in sorted(intervals):
        if merged and low < merged[-1][1]:
            merged[-1] = (merged[-1][0], max(high, merged[-1][1]))
        else:
            merged.append((low, high))
    return merged


def _exit_edges(way: _Way) -> set[int]:
    """Give places where the exit begins or ceases to allow a cap at the way's height."""
    if way.exit is None:
        return set()
    edges = {way.exit.lo[0], way.exit.hi[0]}
    for keep in way.exit.keep_clear:
        dv = max(keep.lo[1] - way.at[1], way.at[1] - keep.hi[1], 0)
        reach = int(np.ceil(np.sqrt(max(keep.reach**2 - dv**2, 0))))
        edges |= {keep.lo[0] - reach, keep.hi[0] + reach, keep.lo[0] - keep.flange, keep.hi[0] + keep.flange}
    return edges


def _free(placed: _Placed, x: int) -> bool:
    """Check a place as a whole: inside the bounds, clear of every barrier, and let out by the exit."""
    space, way = placed.space, placed.way
    inside = space.lo[0] <= x - way.half and x + way.half <= space.hi[0]
    inside &= any(low <= x <= high for low, high in space.start.reach_x)
    return inside and not _meets(placed, x)


def _middle(placed: _Placed, near: int, leftwards: bool, forbidden: list[tuple[int, int]]) -> float:
    """Give the shift to the middle of the free stretch that begins at `near`."""
    low, high = next(pair for pair in placed.space.start.reach_x if pair[0] <= near <= pair[1])
    if leftwards:
        end = max((right for _, right in forbidden if right <= near), default=near - _REACH)
        end = max(end, low)
    else:
        end = min((left for left, _ in forbidden if left >= near), default=near + _REACH)
        end = min(end, high)
    middle = (near + end) // 2
    best = middle if _free(placed, middle) else near
    return (best - placed.space.start.point[0]) / TICKS_PER_IN
