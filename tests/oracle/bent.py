"""Routes with one offset of 45 degrees, and at most one elbow, listed one by one on whole coordinates.

The offset's body is written out by hand: a stub, the sum of a slanting segment and a square, a stub.
"""

from __future__ import annotations

import math
from collections.abc import Iterator
from functools import cache

from oracle.naive import DIRECTIONS, Block, World
from shapely.geometry import MultiPoint, box

Point = tuple[int, int, int]
Way = tuple[int, int]


@cache
def _slant(length: int, shift: int, half: int) -> object:
    """The hull of two squares: a segment from the origin to (length, shift), grown by a square."""
    ends = [(u + a, v + b) for u, v in ((0, 0), (length, shift)) for a in (-half, half) for b in (-half, half)]
    return MultiPoint(ends).convex_hull


class Bent:
    """The offset of one world: its stub, how much its bends bulge, and the shifts that two bends allow."""

    def __init__(self, world: World, shifts: tuple[int, ...]) -> None:
        self.world = world
        self.stub = math.ceil(world.radius * math.tan(math.pi / 8))
        self.bulge = math.ceil(world.radius * (1 / math.cos(math.pi / 8) - 1))
        self.shifts = [d for d in shifts if d >= 2 * world.radius * (1 - math.cos(math.pi / 4))]

    def advance(self, shift: int) -> int:
        return shift + 2 * self.stub

    def length(self, shift: int) -> int:
        return 2 * self.stub + round(shift * math.sqrt(2))

    def fits(self, p: Point, way: Way, turn: Way, shift: int, blocks: list[Block]) -> bool:
        """Whether an offset that begins at p has room."""
        r, world = self.world.r, self.world
        (a, s), (t, side) = way, turn
        c = 3 - a - t
        for back, length, at in ((0, self.stub, 0), (self.stub + shift, self.stub, shift)):
            lo, hi = [0.0] * 3, [0.0] * 3
            begin, end = sorted((p[a] + s * back, p[a] + s * (back + length)))
            lo[a], hi[a] = begin, end
            lo[t], hi[t] = p[t] + side * at - r, p[t] + side * at + r
            lo[c], hi[c] = p[c] - r, p[c] + r
            if length and any(b.meets(tuple(lo), tuple(hi)) for b in blocks):
                return False
        slant = _slant(shift, shift, r + self.bulge)
        for b in blocks:
            if b.lo[c] >= p[c] + r or b.hi[c] <= p[c] - r:
                continue
            u = sorted((s * (v - p[a]) - self.stub) for v in (b.lo[a], b.hi[a]))
            v = sorted(side * (w - p[t]) for w in (b.lo[t], b.hi[t]))
            if slant.intersection(box(u[0], v[0], u[1], v[1])).area > 1e-9:  # type: ignore[attr-defined]
                return False
        return all(world.lo[k] <= q <= world.hi[k] for k, q in enumerate(self.landed(p, way, turn, shift)))

    def landed(self, p: Point, way: Way, turn: Way, shift: int) -> Point:
        q = [p[0], p[1], p[2]]
        q[way[0]] += way[1] * self.advance(shift)
        q[turn[0]] += turn[1] * shift
        return q[0], q[1], q[2]


def enumerate_bent(world: World, shifts: tuple[int, ...], slack: dict[Way, int]) -> Iterator[tuple[int, int]]:
    """Give (elbows, length) of every hidden route with one offset; the offset counts as one elbow, and at most one more.

    `slack` is how far an offset of the riser may shift inside the cover.
    """
    bent = Bent(world, shifts)
    solid = world.blocks + world.outdoors

    def walk(p: Point, way: Way, last: bool, cover: bool) -> Iterator[tuple[Point, int]]:
        yield p, 0
        n = 0
        while world.step_free(p, *way, last, cover):
            q = [p[0], p[1], p[2]]
            q[way[0]] += way[1]
            p, n = (q[0], q[1], q[2]), n + 1
            yield p, n

    def ends(p: Point, way: Way) -> bool:
        across = [p[t] for t in range(3) if t != way[0]]
        return any((o.axis, o.sign) == way and o.end(*across) == p[way[0]] for o in world.openings)

    def go(p: Point, way: Way, before: int, paid: int, used: int, gone: bool, cover: bool) -> Iterator[tuple[int, int]]:
        """Run from p, which lies behind a fitting that takes `before` of the run; `gone`: the offset has been made."""
        first = used == 0
        gap = world.first if first else world.between
        for q, n in walk(p, way, True, cover):
            if gone and n >= before + world.last and ends(q, way):
                yield used, paid + n
        for q, n in walk(p, way, False, cover):
            if used < 2 and n >= before + gap + world.radius and (gone or used == 0):
                for turn in DIRECTIONS:
                    if turn[0] == way[0]:
                        continue
                    if world.elbow_free(q, way, turn, False):
                        yield from go(q, turn, world.radius, paid + n, used + 1, gone, False)
                    if first and world.covered and turn == (1, 1) and q[2] + world.r <= world.cover_top and (
                        world.elbow_free(q, way, turn, True)
                    ):  # fmt: skip
                        yield from go(q, turn, world.radius, paid + n, used + 1, gone, True)
            if not gone and n >= before + gap:
                for turn in DIRECTIONS:
                    if turn[0] == way[0]:
                        continue
                    for shift in bent.shifts:
                        hidden = first and world.covered and shift <= slack.get(turn, 0)
                        if bent.fits(q, way, turn, shift, solid if hidden else solid + world.room):
                            landed = bent.landed(q, way, turn, shift)
                            yield from go(landed, way, 0, paid + n + bent.length(shift), used + 1, True, hidden)

    yield from go(world.start, (2, 1), 0, 0, 0, False, world.covered)


def enumerate_two(world: World, shifts: tuple[int, ...], slack: dict[Way, int]) -> Iterator[int]:
    """Give the length of every hidden straight way up with two offsets in turn."""
    bent = Bent(world, shifts)
    solid = world.blocks + world.outdoors

    def inside(p: Point) -> bool:
        moved = [p[t] - world.start[t] for t in (0, 1)]
        return world.covered and all(
            m <= slack.get((t, 1), 0) and -m <= slack.get((t, -1), 0) for t, m in enumerate(moved)
        )

    def go(p: Point, paid: int, made: int) -> Iterator[int]:
        q, n = p, 0
        while made == 2:
            if n >= world.last and any(
                (o.axis, o.sign) == (2, 1) and o.end(q[0], q[1]) == q[2] for o in world.openings
            ):
                yield paid + n
            if not world.step_free(q, 2, 1, True, inside(q)):
                return
            q, n = (q[0], q[1], q[2] + 1), n + 1
        while made < 2:
            if n >= (world.between if made else world.first):
                for turn in DIRECTIONS[:4]:
                    for shift in bent.shifts:
                        landed = bent.landed(q, (2, 1), turn, shift)
                        hidden = inside(q) and inside(landed)
                        if bent.fits(q, (2, 1), turn, shift, solid if hidden else solid + world.room):
                            yield from go(landed, paid + n + bent.length(shift), made + 1)
            if not world.step_free(q, 2, 1, False, inside(q)):
                return
            q, n = (q[0], q[1], q[2] + 1), n + 1

    yield from go(world.start, 0, 0)
