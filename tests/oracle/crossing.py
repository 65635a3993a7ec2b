"""Routes that may cross members, listed one by one: what a run crosses is what its whole swept box overlaps."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from oracle.naive import DIRECTIONS, Block, World

Member = tuple[Block, int]  # and the axis along which it lies
Point = tuple[int, int, int]


def _swept(world: World, p: Point, q: Point, axis: int) -> tuple[tuple[float, ...], tuple[float, ...]]:
    lo, hi = (
        [float(min(a, b)) for a, b in zip(p, q, strict=True)],
        [float(max(a, b)) for a, b in zip(p, q, strict=True)],
    )
    for t in range(3):
        if t != axis:
            lo[t], hi[t] = lo[t] - world.r, hi[t] + world.r
    return tuple(lo), tuple(hi)


def enumerate_crossing(world: World, members: Sequence[Member], elbows: int) -> Iterator[tuple[int, int, int]]:
    """Give (elbows, members crossed, length) of every route.

    No run goes along the inside of a member, and no elbow sits in one; a member counts once per run that crosses it.
    """

    def crossed(p: Point, q: Point, axis: int) -> int | None:
        met = [lies for block, lies in members if block.meets(*_swept(world, p, q, axis))]
        return None if axis in met else len(met)

    def fits(q: Point, way: tuple[int, int], turn: tuple[int, int], cover: bool) -> bool:
        body = world.elbow_box(q, way, turn)
        return world.elbow_free(q, way, turn, cover) and not any(block.meets(*body) for block, _ in members)

    def reach(p: Point, way: tuple[int, int], last: bool, cover: bool) -> Iterator[tuple[Point, int, int]]:
        q, length = p, 0
        while world.step_free(q, *way, last, cover):
            step = [q[0], q[1], q[2]]
            step[way[0]] += way[1]
            q, length = (step[0], step[1], step[2]), length + 1
            count = crossed(p, q, way[0])
            if count is None:
                return
            yield q, length, count

    def go(
        p: Point, way: tuple[int, int], used: int, over: int, paid: int, cover: bool
    ) -> Iterator[tuple[int, int, int]]:
        for q, length, count in reach(p, way, True, cover):
            across = [q[t] for t in range(3) if t != way[0]]
            ends = any((o.axis, o.sign) == way and o.end(*across) == q[way[0]] for o in world.openings)
            if ends and length >= world.least(used == 0, True):
                yield used, over + count, paid + length
        if used == elbows:
            return
        for q, length, count in reach(p, way, False, cover):
            if length < world.least(used == 0, False):
                continue
            for turn in DIRECTIONS:
                if turn[0] == way[0]:
                    continue
                if fits(q, way, turn, False):
                    yield from go(q, turn, used + 1, over + count, paid + length, False)
                hidden = used == 0 and world.covered and turn == (1, 1) and q[2] + world.r <= world.cover_top
                if hidden and fits(q, way, turn, True):
                    yield from go(q, turn, used + 1, over + count, paid + length, True)

    yield from go(world.start, (2, 1), 0, 0, 0, world.covered)
