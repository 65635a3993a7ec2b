"""Two slow searches that share nothing with the product's: no grid closure, no masks, no tables, no suffix minima.

Both work on every whole coordinate of a small world. `whole_field` steps unit by unit on the full integer lattice
and gives the cost from every point; `enumerate_routes` lists routes one by one in plain Python. A shape is tested by
plain comparison of boxes, a slope by shapely.
"""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass, field
from functools import cache

import numpy as np
from shapely.geometry import Polygon, box

DIRECTIONS = [(a, s) for a in range(3) for s in (1, -1)]
FAR = 10**15
HEAVY = 10**7  # a boxed unit weighs this many units of length


@dataclass
class Block:
    """Something in the way: a box or, with an outline, a prism along `axis`; and which runs it stops."""

    lo: tuple[int, int, int]
    hi: tuple[int, int, int]
    runs: tuple[bool, bool, bool] = (True, True, True)
    axis: int = -1
    outline: tuple[tuple[int, int], ...] = ()

    def meets(self, lo: tuple[float, ...], hi: tuple[float, ...]) -> bool:
        """Whether an open box overlaps it."""
        if any(lo[t] >= self.hi[t] or hi[t] <= self.lo[t] for t in range(3)):
            return False
        if self.axis < 0:
            return True
        u, v = (t for t in range(3) if t != self.axis)
        return _area(self.outline, lo[u], lo[v], hi[u], hi[v]) > 1e-9

    def meets_each(self, lo: np.ndarray, hi: np.ndarray) -> np.ndarray:
        """Whether each of many open boxes, of shape (n, 3), overlaps it."""
        hit = ((lo < np.array(self.hi)) & (hi > np.array(self.lo))).all(axis=1)
        if self.axis >= 0:
            hit[hit] = [self.meets(tuple(a), tuple(b)) for a, b in zip(lo[hit].tolist(), hi[hit].tolist(), strict=True)]
        return hit


@cache
def _area(outline: tuple[tuple[int, int], ...], a: float, b: float, c: float, d: float) -> float:
    return float(Polygon(outline).intersection(box(a, b, c, d)).area)


@dataclass
class Opening:
    """Where a duct may end: a rectangle on a flat or sloped end, with things to keep away from."""

    axis: int
    sign: int
    rise: tuple[float, float, float]
    lo: tuple[int, int]
    hi: tuple[int, int]
    keep: list[tuple[tuple[int, int], tuple[int, int], int, int, int | None]] = field(default_factory=list)

    def end(self, u: int, v: int) -> int | None:
        """Where a duct at (u, v) ends, or None where it may not."""
        if not (self.lo[0] <= u <= self.hi[0] and self.lo[1] <= v <= self.hi[1]):
            return None
        for lo, hi, reach, flange, above in self.keep:
            du, dv = max(lo[0] - u, u - hi[0], 0), max(lo[1] - v, v - hi[1], 0)
            if math.sqrt(du * du + dv * dv) < reach - 1e-12 and not (above is not None and v >= above):
                return None
            if lo[0] - flange < u < hi[0] + flange and lo[1] - flange < v < hi[1] + flange:
                return None
        return round(self.rise[0] + self.rise[1] * u + self.rise[2] * v)


@dataclass
class World:
    """A small problem in whole units."""

    lo: tuple[int, int, int]
    hi: tuple[int, int, int]
    blocks: list[Block]
    outdoors: list[Block]
    room: list[Block]
    openings: list[Opening]
    start: tuple[int, int, int]
    r: int
    radius: int
    between: int
    first: int
    last: int
    covered: bool
    cover_top: int
    priced: bool

    def least(self, opens: bool, closes: bool) -> int:
        """Least length of a run that does or does not begin at the collar, and end at the cap."""
        if opens and closes:
            return max(self.first, self.last, 1)
        size = self.first if opens else self.radius
        size += self.last if closes else self.radius
        return size if opens or closes else size + self.between

    def tube(self, p: tuple[int, int, int], axis: int, sign: int) -> tuple[tuple[float, ...], tuple[float, ...]]:
        """The unit step of a run from p."""
        lo = [float(p[t] - (self.r if t != axis else 0)) for t in range(3)]
        hi = [float(p[t] + (self.r if t != axis else 0)) for t in range(3)]
        lo[axis], hi[axis] = (p[axis], p[axis] + 1) if sign > 0 else (p[axis] - 1, p[axis])
        return tuple(lo), tuple(hi)

    def step_free(self, p: tuple[int, int, int], axis: int, sign: int, last: bool, cover: bool) -> bool:
        """Whether a run may take the unit step from p."""
        lo, hi = self.tube(p, axis, sign)
        if not all(self.lo[t] <= p[t] + (sign if t == axis else 0) <= self.hi[t] for t in range(3)):
            return False
        stops = self.blocks + ([] if last else self.outdoors)
        if any(b.runs[axis] and b.meets(lo, hi) for b in stops):
            return False
        return self.priced or not self.boxed(p, axis, sign, cover)

    def boxed(self, p: tuple[int, int, int], axis: int, sign: int, cover: bool) -> bool:
        """Whether a step runs in the open room; a cover hides first runs, and runs back up to the wall."""
        if cover and (axis == 2 or max(p[1], p[1] + sign) <= 0):
            return False
        lo, hi = self.tube(p, axis, sign)
        return any(b.meets(lo, hi) for b in self.room)

    def elbow_box(
        self, p: tuple[int, int, int], come: tuple[int, int], go: tuple[int, int]
    ) -> tuple[tuple[float, ...], tuple[float, ...]]:
        """The box round an elbow at p: it came along `come` and goes on along `go`."""
        lo, hi = [p[t] - self.r for t in range(3)], [p[t] + self.r for t in range(3)]
        for axis, toward in ((come[0], -come[1]), go):
            if toward > 0:
                hi[axis] = p[axis] + max(self.radius, self.r)
            else:
                lo[axis] = p[axis] - max(self.radius, self.r)
        return tuple(map(float, lo)), tuple(map(float, hi))

    def elbow_free(self, p: tuple[int, int, int], come: tuple[int, int], go: tuple[int, int], cover: bool) -> bool:
        """Whether an elbow has room at p."""
        lo, hi = self.elbow_box(p, come, go)
        if any(b.meets(lo, hi) for b in self.blocks + self.outdoors):
            return False
        if cover:
            return True
        touches = any(b.meets(lo, hi) for b in self.room)
        core = tuple(float(v - self.r) for v in p), tuple(float(v + self.r) for v in p)
        return not touches or (self.priced and any(b.meets(*core) for b in self.room))


def whole_field(world: World, elbows: int) -> tuple[list[list[np.ndarray]], list[int]]:
    """Give cost[k][direction] at every lattice point for a run that follows an elbow, and the start's cost by k."""
    shape = tuple(b - a + 1 for a, b in zip(world.lo, world.hi, strict=True))
    points = [tuple(int(v) + o for v, o in zip(i, world.lo, strict=True)) for i in np.ndindex(*shape)]
    grid = np.array(points)
    tables: dict[tuple[object, ...], np.ndarray] = {}

    def hit(blocks: list[Block], lo: np.ndarray, hi: np.ndarray) -> np.ndarray:
        found = np.zeros(len(points), bool)
        for b in blocks:
            found |= b.meets_each(lo, hi)
        return found

    def step(axis: int, sign: int) -> tuple[np.ndarray, np.ndarray]:
        lo, hi = grid - world.r, grid + world.r
        lo[:, axis] = grid[:, axis] - (sign < 0)
        hi[:, axis] = grid[:, axis] + (sign > 0)
        return lo, hi

    def in_room(axis: int, sign: int, cover: bool) -> np.ndarray:
        key = ("room", axis, sign, cover)
        if key not in tables:
            tables[key] = hit(world.room, *step(axis, sign))
            if cover:
                hidden = np.full(len(points), True) if axis == 2 else np.maximum(grid[:, 1], grid[:, 1] + sign) <= 0
                tables[key] &= ~hidden
        return tables[key]

    def free(axis: int, sign: int, last: bool, cover: bool) -> np.ndarray:
        key = ("free", axis, sign, last, cover)
        if key not in tables:
            stops = [b for b in world.blocks + ([] if last else world.outdoors) if b.runs[axis]]
            ahead_ = grid[:, axis] + sign
            ok = ~hit(stops, *step(axis, sign)) & (ahead_ >= world.lo[axis]) & (ahead_ <= world.hi[axis])
            if not world.priced:
                ok &= ~in_room(axis, sign, cover)
            tables[key] = ok.reshape(shape)
        return tables[key]

    def price(axis: int, sign: int, cover: bool) -> np.ndarray:
        return 1 + HEAVY * in_room(axis, sign, cover).reshape(shape).astype(np.int64)

    def elbow(come: tuple[int, int], go: tuple[int, int], cover: bool) -> np.ndarray:
        key = ("elbow", come, go, cover)
        if key not in tables:
            lo, hi = grid - world.r, grid + world.r
            core_lo, core_hi = lo.copy(), hi.copy()
            for axis, toward in ((come[0], -come[1]), go):
                if toward > 0:
                    hi[:, axis] = grid[:, axis] + max(world.radius, world.r)
                else:
                    lo[:, axis] = grid[:, axis] - max(world.radius, world.r)
            ok = ~hit(world.blocks + world.outdoors, lo, hi)
            if not cover:
                touches = hit(world.room, lo, hi)
                ok &= ~touches | (hit(world.room, core_lo, core_hi) if world.priced else False)
            tables[key] = ok.reshape(shape)
        return tables[key]

    def ends(axis: int, sign: int) -> np.ndarray:
        """Mark where a duct ends that runs this way."""
        found = np.full(shape, False)
        for o in world.openings:
            if (o.axis, o.sign) != (axis, sign):
                continue
            for p in points:
                across = [p[t] for t in range(3) if t != axis]
                found[tuple(p[t] - world.lo[t] for t in range(3))] |= o.end(*across) == p[axis]
        return found

    def ahead(array: np.ndarray, axis: int, sign: int, n: int, fill: int) -> np.ndarray:
        """The array as seen n steps ahead."""
        out = np.full(array.shape, fill, array.dtype)
        src, dst = [slice(None)] * 3, [slice(None)] * 3
        size = array.shape[axis]
        if n < size:
            src[axis] = slice(n, None) if sign > 0 else slice(0, size - n)
            dst[axis] = slice(0, size - n) if sign > 0 else slice(n, None)
            out[tuple(dst)] = array[tuple(src)]
        return out

    def run(axis: int, sign: int, after: np.ndarray, least: int, last: bool, cover: bool) -> np.ndarray:
        """Least cost of a run of at least `least` steps to a point with the cost `after`."""
        best = np.full(shape, FAR, np.int64)
        paid = np.zeros(shape, np.int64)
        can, cost = free(axis, sign, last, cover), price(axis, sign, cover)
        for n in range(1, max(shape)):
            paid = paid + ahead(np.where(can, cost, FAR), axis, sign, n - 1, FAR)
            paid = np.minimum(paid, FAR)
            if n >= least:
                best = np.minimum(best, np.where(paid < FAR, paid + ahead(after, axis, sign, n, FAR), FAR))
        return np.minimum(best, FAR)

    def turned(cost: list[np.ndarray], come: tuple[int, int]) -> np.ndarray:
        best = np.full(shape, FAR, np.int64)
        for d, go in enumerate(DIRECTIONS):
            if go[0] != come[0]:
                best = np.minimum(best, np.where(elbow(come, go, False), cost[d], FAR))
        return best

    field_: list[list[np.ndarray]] = [
        [run(a, s, np.where(ends(a, s), 0, FAR), world.least(False, True), True, False) for a, s in DIRECTIONS]
    ]
    while len(field_) <= elbows:
        field_.append([run(a, s, turned(field_[-1], (a, s)), world.least(False, False), False, False)
                       for a, s in DIRECTIONS])  # fmt: skip
    at = tuple(v - o for v, o in zip(world.start, world.lo, strict=True))
    opens = [int(run(2, 1, np.where(ends(2, 1), 0, FAR), world.least(True, True), True, world.covered)[at])]
    for k in range(1, elbows + 1):
        after = turned(field_[k - 1], (2, 1))
        if world.covered:
            if k == 1:
                back = run(1, 1, np.where(ends(1, 1), 0, FAR), world.least(False, True), True, True)
            else:
                back = run(1, 1, turned(field_[k - 2], (1, 1)), world.least(False, False), False, True)
            room = elbow((2, 1), (1, 1), True) & (grid[:, 2] + world.r <= world.cover_top).reshape(shape)
            after = np.minimum(after, np.where(room, back, FAR))
        opens.append(int(run(2, 1, after, world.least(True, False), False, world.covered)[at]))
    return field_, opens


def enumerate_routes(world: World, elbows: int) -> Iterator[tuple[int, int, tuple[tuple[int, int, int], ...]]]:
    """Give (elbows, cost, points) of every route with at most `elbows` elbows, depth first in plain Python."""

    def walk(
        p: tuple[int, int, int], way: tuple[int, int], last: bool, cover: bool
    ) -> Iterator[tuple[tuple[int, int, int], int]]:
        cost = 0
        while world.step_free(p, *way, last, cover):
            cost += 1 + (HEAVY if world.boxed(p, *way, cover) else 0)
            p = tuple(p[t] + (way[1] if t == way[0] else 0) for t in range(3))  # type: ignore[assignment]
            yield p, cost

    def go(
        p: tuple[int, int, int],
        way: tuple[int, int],
        used: int,
        paid: int,
        points: tuple[tuple[int, int, int], ...],
        cover: bool,
    ) -> Iterator[tuple[int, int, tuple[tuple[int, int, int], ...]]]:
        opens = used == 0
        for q, cost in walk(p, way, True, cover):
            length = sum(abs(a - b) for a, b in zip(p, q, strict=True))
            across = [q[t] for t in range(3) if t != way[0]]
            if length >= world.least(opens, True) and any(
                (o.axis, o.sign) == way and o.end(*across) == q[way[0]] for o in world.openings
            ):
                yield used, paid + cost, (*points, q)
        if used == elbows:
            return
        for q, cost in walk(p, way, False, cover):
            if sum(abs(a - b) for a, b in zip(p, q, strict=True)) < world.least(opens, False):
                continue
            for turn in DIRECTIONS:
                if turn[0] == way[0]:
                    continue
                if world.elbow_free(q, way, turn, False):
                    yield from go(q, turn, used + 1, paid + cost, (*points, q), False)
                if (
                    opens
                    and world.covered
                    and turn == (1, 1)
                    and q[2] + world.r <= world.cover_top
                    and (world.elbow_free(q, way, turn, True))
                ):
                    yield from go(q, turn, used + 1, paid + cost, (*points, q), True)

    yield from go(world.start, (2, 1), 0, 0, (world.start,), world.covered)
