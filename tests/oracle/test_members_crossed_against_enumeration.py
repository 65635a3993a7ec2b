"""The fewest members that a route with so many elbows must cross, against plain enumeration on whole coordinates."""

from __future__ import annotations

import os
from dataclasses import replace

import numpy as np
import pytest
from oracle.crossing import Member, enumerate_crossing
from oracle.naive import Block, Opening, World
from oracle.worlds import as_space, random_world

from routeviz.model.freespace import Barrier, BarrierKind, FreeSpace, Region
from routeviz.search.lattice import lattice
from routeviz.search.launch import launches
from routeviz.search.layers import Layers
from routeviz.search.moves import moves
from routeviz.search.solve import Solution, solve
from routeviz.search.terms import Terms

SCALE = int(os.environ.get("ROUTEVIZ_ORACLE", "1"))
NONE = (10**9, 10**9)


def random_members(rng: np.random.Generator, size: int) -> list[Member]:
    """Rows of joists, studs and single bars; some lie two deep."""
    depth, found = size // 3, []
    spread = [(0, size), (-depth, size - depth), (0, size)]
    for _ in range(int(rng.integers(1, 4))):
        lies = int(rng.integers(0, 3))
        row = int(rng.choice([t for t in range(3) if t != lies]))
        deep = 3 - lies - row
        at, thick = int(rng.integers(*spread[deep])), int(rng.integers(1, 3))
        for start in range(int(rng.integers(0, 4)), size, int(rng.integers(3, 6))):
            lo, hi = [0, 0, 0], [0, 0, 0]
            lo[lies], hi[lies] = spread[lies][0] - 1, spread[lies][1] + 1
            lo[deep], hi[deep] = at, at + thick
            lo[row], hi[row] = spread[row][0] + start, spread[row][0] + start + 1
            found.append((Block((lo[0], lo[1], lo[2]), (hi[0], hi[1], hi[2])), lies))
    return found


def random_rafters(rng: np.random.Generator, size: int) -> list[Member]:
    """A row of sloped bars that lie along y or x and rise that way."""
    depth, swept = size // 3, int(rng.integers(0, 2))
    lies = 1 - swept
    span = (-depth - 1, size - depth + 1) if lies == 1 else (-1, size + 1)
    begin = 0 if swept == 0 else -depth
    low, rise = int(rng.integers(size // 2, size - 2)), int(rng.integers(-4, 5))
    outline = ((span[0], low), (span[1], low + rise), (span[1], low + rise + 2), (span[0], low + 2))
    found = []
    for at in range(begin + int(rng.integers(0, 3)), begin + size, int(rng.integers(3, 5))):
        lo, hi = [0, 0, min(low, low + rise)], [0, 0, max(low, low + rise) + 2]
        lo[lies], hi[lies], lo[swept], hi[swept] = *span, at, at + 1
        found.append((Block((lo[0], lo[1], lo[2]), (hi[0], hi[1], hi[2]), axis=swept, outline=outline), lies))
    return found


def with_members(space: FreeSpace, members: list[Member]) -> FreeSpace:
    more = tuple(
        Barrier(f"member-{n}", f"member {n}", BarrierKind.SOLID, Region(b.lo, b.hi, b.axis, b.outline),
                (True, True, True), (lies != 0, lies != 1, lies != 2))
        for n, (b, lies) in enumerate(members)
    )  # fmt: skip
    return replace(space, barriers=(*space.barriers, *more))


def every_coordinate(space: FreeSpace) -> Solution:
    every = tuple(np.arange(a, b + 1, dtype=np.int64) for a, b in zip(space.lo, space.hi, strict=True))
    grid = lattice(space, moves(space.section, space.limits), (every[0], every[1], every[2]), Terms(crossing=True))
    return Solution(grid, Layers(grid), launches(grid, [space.start.point]))


@pytest.mark.parametrize("slopes", [False, True])
def test_the_fewest_members_crossed_are_what_enumeration_finds(slopes: bool) -> None:
    rng = np.random.default_rng(53 + slopes)
    compared = reached = over = 0
    for number in range((50 if slopes else 160) * SCALE):
        world = random_world(rng, 9)
        world = replace(
            world, priced=False, blocks=[] if slopes else world.blocks[:1], room=[] if number % 3 else world.room
        )
        members = random_rafters(rng, 9) if slopes else random_members(rng, 9)
        if slopes:  # out through the top, past the rafters
            world = replace(world, openings=[Opening(2, 1, (9.0, 0.0, 0.0), (0, -3), (9, 6))])
        x, y, z = world.start
        if any(b.meets((x - 1, y - 1, z - 1), (x + 1, y + 1, z + 1)) for b, _ in members):
            continue
        best = [NONE] * 3
        for used, count, length in enumerate_crossing(world, members, 2):
            best[used] = min(best[used], (count, length))
        space = with_members(as_space(world, 2), members)
        if slopes:  # no finite grid but the full lattice is sure to hold the optimum
            parts = [every_coordinate(space)]
        else:
            parts = [solve(space, Terms(crossing=True), 2, [world.start], plane=p) for p in (0, 1)]
        for k in range(3):
            costs = [(c[0], c[2]) for p in parts if (c := p.cost(world.start, k)) is not None]
            assert min(costs, default=NONE) == best[k], (world, members, k)
            compared += 1
            reached += best[k] != NONE
            over += best[k] != NONE and best[k][0] > 0
    assert compared >= 80 * SCALE
    assert reached > 40 * SCALE
    assert over > 15 * SCALE


def test_a_run_that_ends_inside_a_member_crosses_it() -> None:
    """The exit lies in the middle of a member from z = 5 to 6: clear of it, the elbow sits at 7, 4 up and 4 to the left."""
    world = World(
        (0, -3, 0), (9, 6, 9), [], [], [], [Opening(0, -1, (2.0, 0.0, 0.0), (-3, 5), (-1, 9))], (6, -2, 3), 1, 1,
        between=3, first=2, last=0, covered=False, cover_top=3, priced=False,
    )  # fmt: skip
    members: list[Member] = [(Block((1, -4, 5), (3, 7, 6)), 1)]
    best = min((count, length) for used, count, length in enumerate_crossing(world, members, 1) if used == 1)
    assert best == (0, 4 + 4)
    space = with_members(as_space(world, 1), members)
    found = [solve(space, Terms(crossing=True), 1, [world.start], plane=p).cost(world.start, 1) for p in (0, 1)]
    assert min(c for c in found if c is not None) == (0, 1, 4 + 4)
