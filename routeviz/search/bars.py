"""What bars a route: the route of another place of the hood is moved here, and everything it meets is named."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from itertools import pairwise

import numpy as np

from routeviz.model.freespace import Barrier, BarrierKind, FreeSpace, Region, Ticks
from routeviz.model.path import Blocker
from routeviz.search.measure import bodies, gap
from routeviz.search.moves import END, START, Moves
from routeviz.search.trace import Trace
from routeviz.units import TICKS_PER_IN

__all__ = ["bars", "crossed_members"]

_MOST = 4
_Box = tuple[Ticks, Ticks]


def bars(space: FreeSpace, table: Moves, route: Trace) -> tuple[Blocker, ...]:
    """Name what bars a route that is free for a hood elsewhere from the hood where it stands.

    The part of the route up to its first run along the wall moves with the hood; so does its end, where it goes
    through a wall or roof that the hood moves along.

    Returns
    -------
    tuple of Blocker
        In order along the route, solids before closed places; then keep-outs of the face, then straights that become
        too short.
    """
    here = _moved(space, route)
    found = list(_met(space, table, here))
    found.sort(key=lambda b: b.kind == "zone")
    if not found:
        found = [*_kept_out(here), *_too_short(table, here)]
    first = {(b.id, b.label): b for b in reversed(found)}
    return tuple(b for b in found if first[b.id, b.label] is b)[:_MOST]


def _moved(space: FreeSpace, route: Trace) -> Trace:
    """Move a route's beginning to the hood: what shares the collar's place along the wall and in height."""
    points = [list(p) for p in route.points]
    for axis in (0, 2):
        away = space.start.point[axis] - points[0][axis]
        for n, state in enumerate((*route.states, None)):
            points[n][axis] += away
            if state is None or state.axis == axis:
                break
    last = points[-1]
    u, v = (np.array([last[t]], np.int64) for t in range(3) if t != route.exit.axis)
    last[route.exit.axis] = int(route.exit.end(u, v)[0])
    return replace(route, points=tuple((p[0], p[1], p[2]) for p in points))


def _parts(table: Moves, route: Trace) -> Iterator[tuple[int, int, _Box]]:
    """Give (number of the run or elbow, run axis or -1, box) of every part, in order."""
    runs, elbows = bodies(route, table)
    for n, run in enumerate(runs):
        yield n, route.states[n].axis, run
        if n < len(elbows):
            yield n, -1, elbows[n]


def _stands(barrier: Barrier, axis: int, last: bool) -> bool:
    """Tell whether a barrier bars a part: an elbow (axis -1), or a run, of which the last may end outdoors."""
    return axis < 0 or (barrier.runs[axis] and not (last and barrier.kind is BarrierKind.OUTDOORS))


def _met(space: FreeSpace, table: Moves, route: Trace) -> Iterator[Blocker]:
    last = len(route.states) - 1
    back = route.states[min(1, last)][:2] == (1, 1)
    for number, axis, box in _parts(table, route):
        for barrier in space.barriers:
            if _stands(barrier, axis, axis >= 0 and number == last) and gap(box, barrier.region) < 0:
                yield _blocker(barrier, axis, box)
        if space.start.covered and (number == 0 or (number == 1 and back and axis >= 0)) and (axis >= 0 or back):
            continue  # the cover hides it
        if any(gap(box, region) < 0 for region in space.boxing):
            at = _centre(box)
            yield Blocker("open-room", "open room", 0.0, _inches(at), "zone")


def _blocker(barrier: Barrier, axis: int, box: _Box) -> Blocker:
    lo, hi, region = *box, barrier.region
    own = barrier.grown
    deep = min(min(hi[t], region.hi[t] - own) - max(lo[t], region.lo[t] + own) for t in range(3) if t != axis)
    solid = barrier.kind is not BarrierKind.CLOSED and barrier.kind is not BarrierKind.OUTDOORS
    return Blocker(
        barrier.id, barrier.label, max(deep, 0) / TICKS_PER_IN if solid else 0.0, _inches(_inside(box, region, axis)),
        "solid" if solid else "zone", axis if axis >= 0 else None,
    )  # fmt: skip


def _centre(box: _Box) -> tuple[float, float, float]:
    (a, b, c), (d, e, f) = box
    return (a + d) / 2, (b + e) / 2, (c + f) / 2


def _inside(box: _Box, region: Region, axis: int) -> tuple[float, float, float]:
    """Give the point of a region nearest to the middle of a part; along a run, the middle of what they share."""
    lo, hi, at = *box, list(_centre(box))
    for t in range(3):
        if t == axis:
            at[t] = (max(lo[t], region.lo[t]) + min(hi[t], region.hi[t])) / 2
        else:
            at[t] = min(max(at[t], region.lo[t]), region.hi[t])
    return at[0], at[1], at[2]


def _inches(point: tuple[float, float, float]) -> tuple[float, float, float]:
    return point[0] / TICKS_PER_IN, point[1] / TICKS_PER_IN, point[2] / TICKS_PER_IN


def _kept_out(route: Trace) -> Iterator[Blocker]:
    """Name what keeps the cap away."""
    leave, end = route.exit, route.points[-1]
    u, v = (end[t] for t in range(3) if t != leave.axis)
    for keep in leave.keep_clear:
        away = float(np.hypot(max(keep.lo[0] - u, u - keep.hi[0], 0), max(keep.lo[1] - v, v - keep.hi[1], 0)))
        square = max(keep.lo[0] - u, u - keep.hi[0], keep.lo[1] - v, v - keep.hi[1])
        short = max(keep.reach - away, float(keep.flange - square))
        if (away < keep.reach and keep.holds_off(v)) or square < keep.flange:
            yield Blocker(keep.id, keep.label, short / TICKS_PER_IN, _inches(end), "keep-out")
    if not (leave.lo[0] <= u <= leave.hi[0] and leave.lo[1] <= v <= leave.hi[1]):
        yield Blocker(leave.face, f"the edge of {leave.label}", 0.0, _inches(end), "keep-out")


def _too_short(table: Moves, route: Trace) -> Iterator[Blocker]:
    """Name the straights that would be shorter than they must be."""
    entries, leaves = (START, *route.kinds), (*route.kinds, END)
    for n, (a, b) in enumerate(pairwise(route.points)):
        state = route.states[n]
        lack = table.lag(entries[n], leaves[n]) - (b[state.axis] - a[state.axis]) * state.sign
        if lack > 0:
            where = "straight to the outside" if n == len(route.states) - 1 else f"straight {n + 1}"
            yield Blocker("", where, lack / TICKS_PER_IN, _inches(a), "straight", state.axis)


def crossed_members(space: FreeSpace, table: Moves, route: Trace) -> tuple[Blocker, ...]:
    """Name the framing members that a route from crossing terms goes through, in order."""
    found: dict[str, Blocker] = {}
    for _, axis, box in _parts(table, route):
        for barrier in space.barriers:
            if axis >= 0 and barrier.across[axis] and gap(box, barrier.region) < 0:
                found.setdefault(barrier.id, _blocker(barrier, axis, box))
    return tuple(found.values())
