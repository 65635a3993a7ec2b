"""What a route on the grid amounts to: its bends, its length, what it crosses, where it runs, how close it comes."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from itertools import pairwise

import numpy as np

from routeviz.model.freespace import BarrierKind, FreeSpace, Region, Ticks
from routeviz.model.path import Bend, Centreline
from routeviz.model.solids import Vec3
from routeviz.search.moves import Moves
from routeviz.search.trace import OFFSET, Trace
from routeviz.units import TICKS_PER_IN

__all__ = ["bodies", "centreline", "gap", "inches", "least_gap", "touches_itself"]

Boxes = list[tuple[Ticks, Ticks]]


def inches(point: Sequence[float]) -> Vec3:
    """Give a point in inches."""
    return point[0] / TICKS_PER_IN, point[1] / TICKS_PER_IN, point[2] / TICKS_PER_IN


def _spread(a: Ticks, b: Ticks, half: tuple[int, int, int]) -> tuple[Ticks, Ticks]:
    lo = tuple(min(a[t], b[t]) - half[t] for t in range(3))
    hi = tuple(max(a[t], b[t]) + half[t] for t in range(3))
    return (lo[0], lo[1], lo[2]), (hi[0], hi[1], hi[2])


_PIECES = 12  # boxes along a diagonal


def _straight(a: Ticks, b: Ticks, half: tuple[int, int, int]) -> Boxes:
    """Give the boxes round one straight; a diagonal is cut into short pieces."""
    if sum(p != q for p, q in zip(a, b, strict=True)) <= 1:
        return [_spread(a, b, half)]
    marks = [tuple(round(p + (q - p) * n / _PIECES) for p, q in zip(a, b, strict=True)) for n in range(_PIECES + 1)]
    return [_spread((p[0], p[1], p[2]), (q[0], q[1], q[2]), half) for p, q in pairwise(marks)]


def bodies(route: Trace, table: Moves) -> tuple[Boxes, Boxes]:
    """Give the boxes round the straights and the boxes round the 90-degree elbows [ticks]."""
    runs = [
        box for (a, b), s in zip(pairwise(route.points), route.states, strict=True)
        for box in _straight(a, b, table.half(s))
    ]  # fmt: skip
    elbows = []
    for corner, kind, (s1, s2) in zip(route.points[1:-1], route.kinds, pairwise(route.states), strict=True):
        if kind == OFFSET:
            continue
        source, target = table.states.index(s1), table.states.index(s2)
        body = table.bodies[next(t.body for t in table.turns if t[:2] == (source, target))]
        lo, hi = (tuple(corner[t] + body[t][i] for t in range(3)) for i in (0, 1))
        elbows.append(((lo[0], lo[1], lo[2]), (hi[0], hi[1], hi[2])))
    return runs, elbows


def gap(box: tuple[Ticks, Ticks], region: Region) -> float:
    """Give a lower bound of the clear distance between a box and a region [ticks]; negative when they overlap.

    Exact for boxes that face each other; for prisms the largest separation along any face's normal.
    """
    lo, hi = box
    (ax, ay, az), (bx, by, bz), (cx, cy, cz), (dx, dy, dz) = lo, hi, region.lo, region.hi
    x, y, z = max(cx - bx, ax - dx), max(cy - by, ay - dy), max(cz - bz, az - dz)
    most = max(x, y, z)
    if most > 0:
        return math.hypot(max(x, 0), max(y, 0), max(z, 0))
    if region.axis < 0:
        return float(most)
    u, v = (t for t in range(3) if t != region.axis)
    corners = np.array(region.outline, np.float64)
    square = np.array([(a, b) for a in (lo[u], hi[u]) for b in (lo[v], hi[v])], np.float64)
    best = float(most)
    for (u1, v1), (u2, v2) in pairwise([*corners, corners[0]]):
        for normal in (np.array([v2 - v1, u1 - u2]), np.array([v1 - v2, u2 - u1])):
            size = float(np.hypot(*normal))
            if size > 0:
                best = max(best, float((square @ normal).min() - (corners @ normal).max()) / size)
    return best


def least_gap(boxes: Boxes, regions: Sequence[Region]) -> float:
    """Give the least `gap` of many boxes to many regions [ticks]; 0 where there is nothing to measure."""
    if not boxes or not regions:
        return 0.0
    lo, hi = (np.array([r.lo for r in regions]), np.array([r.hi for r in regions]))
    least = math.inf
    for box in boxes:
        axes = np.maximum(lo - np.array(box[1]), np.array(box[0]) - hi)
        most = axes.max(axis=1)
        apart = np.where(most > 0, np.sqrt((np.maximum(axes, 0).astype(np.float64) ** 2).sum(axis=1)), most)
        for n in np.flatnonzero(most <= 0).tolist():
            apart[n] = gap(box, regions[n])  # where bounding boxes overlap, prisms may still be apart
        least = min(least, float(apart.min()))
    return least


def _apart(a: tuple[Ticks, Ticks], b: tuple[Ticks, Ticks]) -> float:
    steps = [max(a[0][t] - b[1][t], b[0][t] - a[1][t], 0) for t in range(3)]
    return math.hypot(*steps)


def touches_itself(points: Sequence[Ticks], halves: Sequence[tuple[int, int, int]], contact: int) -> bool:
    """Tell whether two runs that do not share an elbow come closer than `contact`."""
    runs = [_spread(a, b, h) for (a, b), h in zip(pairwise(points), halves, strict=True)]
    return any(_apart(runs[i], runs[j]) < max(contact, 1) for i in range(len(runs)) for j in range(i + 2, len(runs)))


def _bays(space: FreeSpace, points: Sequence[Ticks]) -> Iterator[str]:
    """Give the named places along the centre line, in order; later regions overrule earlier ones."""
    last = ""
    for a, b in pairwise(points):
        axis = max(range(3), key=lambda t: abs(a[t] - b[t]))
        u, v = (t for t in range(3) if t != axis)
        (u_lo, u_hi), (v_lo, v_hi) = sorted((a[u], b[u])), sorted((a[v], b[v]))
        on = [
            (name, r) for name, r in space.bays
            if r.lo[u] <= u_lo and u_hi <= r.hi[u] and r.lo[v] <= v_lo and v_hi <= r.hi[v]
        ]  # fmt: skip
        low, high = min(a[axis], b[axis]), max(a[axis], b[axis])
        cuts = {low, high} | {v for _, r in on for v in (r.lo[axis], r.hi[axis]) if low < v < high}
        pieces = list(pairwise(sorted(cuts)))
        for lo, hi in pieces if b[axis] > a[axis] else reversed(pieces):
            middle = (lo + hi) / 2
            names = [name for name, r in on if r.lo[axis] < middle < r.hi[axis]]
            if names and names[-1] != last:
                last = names[-1]
                yield last


def centreline(space: FreeSpace, table: Moves, route: Trace, boxed: int = 0) -> Centreline:
    """Give a route as people measure it: inches, bends with their radii, what it crosses and how close it comes."""
    runs, elbows = bodies(route, table)
    solid = [b.region for b in space.barriers if b.kind is BarrierKind.SOLID]
    crossed = [
        b.id for b in space.barriers
        if b.kind is BarrierKind.MEMBER and any(gap(run, b.region) < 0 for run in runs)
    ]  # fmt: skip
    slack = least_gap(runs + elbows, solid)
    bends = []
    bent = iter(enumerate((b for b in route.offsets for _ in (0, 1)), 2))  # each offset bends twice
    for corner, kind, (before, after) in zip(route.points[1:-1], route.kinds, pairwise(route.states), strict=True):
        number, turned = next(bent) if kind == OFFSET else (0, None)
        plane = after.axis if turned is None else turned.axis
        side = 2 * (space.section.half_wide if before.wide == plane else space.section.half_high) / TICKS_PER_IN
        if turned is None:
            bends.append(Bend(inches(corner), 90.0, table.take_off[kind] / TICKS_PER_IN, side))
        else:
            radius = turned.radius / TICKS_PER_IN
            bends.append(Bend(inches(corner), turned.angle_deg, radius, side, offset_id=number // 2))
    return Centreline(
        points=tuple(inches(p) for p in route.points),
        bends=tuple(bends),
        section=space.section.size,
        wide_axis=tuple(s.wide if s.wide >= 0 else None for s in route.states),
        face=route.exit.face,
        elbows=float(route.elbows),
        length_in=route.length / TICKS_PER_IN,
        boxed_in=boxed / TICKS_PER_IN,
        crossed=tuple(crossed),
        bays=tuple(dict.fromkeys(_bays(space, route.points))),
        slack_in=max(0.0, slack / TICKS_PER_IN),
    )
