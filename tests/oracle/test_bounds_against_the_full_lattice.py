"""The two bounds against the true elbow on every whole coordinate: never above it, and the sharp one never below the other."""

from __future__ import annotations

import math
import os
from dataclasses import replace

import numpy as np
from oracle.naive import Block, World
from oracle.worlds import as_space, random_world

from routeviz.model.freespace import FreeSpace
from routeviz.search.lattice import lattice
from routeviz.search.launch import launches
from routeviz.search.layers import Layers
from routeviz.search.moves import moves
from routeviz.search.solve import Solution, solve
from routeviz.search.terms import Terms

SCALE = int(os.environ.get("ROUTEVIZ_ORACLE", "1"))
FAR = (10**9, 9, 10**9)


def on_every_coordinate(space: FreeSpace, terms: Terms) -> Solution:
    every = tuple(np.arange(a, b + 1, dtype=np.int64) for a, b in zip(space.lo, space.hi, strict=True))
    grid = lattice(space, moves(space.section, space.limits), (every[0], every[1], every[2]), terms)
    return Solution(grid, Layers(grid), launches(grid, [space.start.point]))


def sheets(rng: np.random.Generator, world: World) -> list[Block]:
    """Boards across the whole world: a run goes squarely through, and no elbow bends inside one."""
    found = []
    for axis in rng.choice(3, 2):
        lo, hi = [v - 1 for v in world.lo], [v + 1 for v in world.hi]
        lo[axis] = int(rng.integers(min(world.start[axis] + 3, world.hi[axis] - 2), world.hi[axis] - 1))
        hi[axis] = lo[axis] + 1
        found.append(Block((lo[0], lo[1], lo[2]), (hi[0], hi[1], hi[2]), (axis != 0, axis != 1, axis != 2)))
    return found


def test_bounds_are_never_above_a_true_elbow() -> None:
    rng = np.random.default_rng(83)
    reached = sharper = settled = 0
    for number in range(120 * SCALE):
        world = replace(random_world(rng, 17), r=2, radius=int(rng.integers(4, 7)), between=int(rng.integers(0, 3)))
        world = replace(world, blocks=[*world.blocks[: number % 3], *sheets(rng, world)])
        if number % 2:
            world = replace(world, room=[], priced=False)
        space = as_space(world, 2)
        start = world.start
        true = on_every_coordinate(space, Terms(priced=world.priced, rings=True))
        light, sharp = (
            [solve(space, Terms(priced=world.priced, relaxed=True, legs=legs), 2, [start], plane=p) for p in (0, 1)]
            for legs in (False, True)
        )
        for k in range(3):
            cost = true.cost(start, k) or FAR
            low, high = (min((c for f in fields if (c := f.cost(start, k))), default=FAR) for fields in (light, sharp))
            assert low <= high <= cost, (world, k)
            reached += cost != FAR
            sharper += low < high
            settled += low < high == cost
    assert reached > 12 * SCALE
    assert sharper > 5 * SCALE
    assert settled > 4 * SCALE


def test_the_legs_lie_inside_the_true_elbow() -> None:
    """Every corner of a leg is nearer to the arc that the centre line runs than half the duct."""
    for half, radius in ((2, 3), (2, 6), (4, 8), (32512, 65024), (20320, 60960), (5, 5)):
        space = as_space(replace(random_world(np.random.default_rng(1), 11), r=half, radius=radius), 2)
        table = moves(space.section, space.limits)
        for turn in table.turns:
            source, target = table.states[turn.source], table.states[turn.target]
            for legs in table.legs:
                for n in range(8):
                    at = [legs[turn.body][t][n >> t & 1] for t in range(3)]
                    back, ahead = -at[source.axis] * source.sign, at[target.axis] * target.sign
                    across = at[3 - source.axis - target.axis]
                    in_plane = math.hypot(radius - back, radius - ahead) - radius
                    if radius > half:
                        assert math.hypot(in_plane, across) <= half + 1e-9, (half, radius, turn, at)
                        assert min(back, ahead) >= 0, "a leg ends where the elbow does"
                        assert max(back, ahead) <= radius
