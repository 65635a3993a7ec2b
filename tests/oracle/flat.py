"""Flat duct by plain enumeration: the wide side is a direction that the writer of this file turns by hand."""

from __future__ import annotations

from collections.abc import Iterator

from oracle.naive import DIRECTIONS, World

Point = tuple[int, int, int]


def half_sizes(axis: int, wide: int, sizes: tuple[int, int]) -> list[int]:
    """Half the duct along x, y, z: `sizes` are the wide and the narrow half; nothing along the run."""
    return [0 if t == axis else sizes[0] if t == wide else sizes[1] for t in range(3)]


def enumerate_flat(
    world: World, sizes: tuple[int, int], radii: tuple[int, int], elbows: int, wide: int
) -> Iterator[tuple[int, int]]:
    """Give (elbows, cost) of every route; `radii` are those of bends in the plane of the wide and the narrow side."""

    def free(p: Point, axis: int, sign: int, w: int, last: bool) -> bool:
        half = half_sizes(axis, w, sizes)
        lo, hi = [float(p[t] - half[t]) for t in range(3)], [float(p[t] + half[t]) for t in range(3)]
        lo[axis], hi[axis] = (p[axis], p[axis] + 1) if sign > 0 else (p[axis] - 1, p[axis])
        q = p[axis] + sign
        stops = world.blocks + ([] if last else world.outdoors)
        return world.lo[axis] <= q <= world.hi[axis] and not any(
            b.runs[axis] and b.meets(tuple(lo), tuple(hi)) for b in stops
        )

    def fits(p: Point, come: tuple[int, int], go: tuple[int, int], w: int) -> bool:
        hard = w == go[0]  # the wide side lies in the plane of the bend
        across = 3 - come[0] - go[0]
        in_plane, radius = (sizes[0], radii[0]) if hard else (sizes[1], radii[1])
        beside = sizes[1] if hard else sizes[0]
        lo, hi = [float(v) for v in p], [float(v) for v in p]
        lo[across] -= beside
        hi[across] += beside
        for axis, toward in ((come[0], -come[1]), go):
            reach = max(radius, in_plane)
            lo[axis] -= in_plane if toward > 0 else reach
            hi[axis] += reach if toward > 0 else in_plane
        return not any(b.meets(tuple(lo), tuple(hi)) for b in world.blocks + world.outdoors)

    def go_on(
        p: Point, way: tuple[int, int], w: int, used: int, paid: int, off: int
    ) -> Iterator[tuple[int, int]]:  # fmt: skip
        for last in (True, False):
            q, length = p, 0
            while free(q, *way, w, last):
                q = tuple(q[t] + (way[1] if t == way[0] else 0) for t in range(3))  # type: ignore[assignment]
                length += 1
                if last:
                    least = (off if used else world.first) + world.last
                    least = max(world.first, world.last, 1) if not used else least
                    across = [q[t] for t in range(3) if t != way[0]]
                    if length >= least and any(
                        (o.axis, o.sign) == way and o.end(*across) == q[way[0]] for o in world.openings
                    ):
                        yield used, paid + length
                    continue
                if used == elbows:
                    break
                for turn in DIRECTIONS:
                    if turn[0] == way[0]:
                        continue
                    radius = radii[0] if w == turn[0] else radii[1]
                    least = (off + world.between if used else world.first) + radius
                    if length >= least and fits(q, way, turn, w):
                        after = way[0] if w == turn[0] else w
                        yield from go_on(q, turn, after, used + 1, paid + length, radius)

    yield from go_on(world.start, (2, 1), wide, 0, 0, 0)
