"""The least shift of the hood that saves elbows, against plain enumeration from every whole place and height."""

from __future__ import annotations

import os
from dataclasses import replace

import numpy as np
from oracle.naive import World, enumerate_routes
from oracle.worlds import as_space, random_world

from routeviz.search.nearest import why_not_fewer
from routeviz.search.solve import prepare
from routeviz.search.terms import Terms
from routeviz.units import TICKS_PER_IN

SCALE = int(os.environ.get("ROUTEVIZ_ORACLE", "1"))


def fewest(world: World, start: tuple[int, int, int]) -> int:
    """Give the least number of elbows from a place; 9 where there is no route with two."""
    return min((used for used, _, _ in enumerate_routes(replace(world, start=start), 2)), default=9)


def test_the_least_shift_is_what_trying_every_place_finds() -> None:
    rng = np.random.default_rng(61)
    told = freed = raised = 0
    for number in range(80 * SCALE):
        world = replace(random_world(rng, 9), priced=False, room=[])
        x, y, z = world.start
        below = fewest(world, world.start)
        if below < 2:
            continue
        reach_z, step = (max(z - 3, 0), z + 3), 1 + number % 2
        reach_x = ((1, 8),) if number % 3 else tuple(r for r in ((1, x - 2), (x, x), (x + 1, 8)) if r[0] <= r[1])
        along = {v: fewest(world, (v, y, z)) for low, high in reach_x for v in range(low, high + 1)}
        heights = {v: fewest(world, (x, y, v)) for v in range(reach_z[0], reach_z[1] + 1)}
        heights = {v: n for v, n in heights.items() if (v - z) % step == 0}  # those that can be written down
        space = as_space(world, 2)
        space = replace(space, start=replace(space.start, reach_x=reach_x, reach_z=reach_z, step_z=step))
        found = why_not_fewer(space, prepare(space, Terms(), [world.start]), (), below=below, most=2)
        by_elbows = {w.elbows: w for w in found}
        nearer = lifted = 99
        for k in (1, 2):
            if k >= below:
                break
            least = min((abs(v - x) for v, n in along.items() if n <= k), default=99)
            lift = min((abs(v - z) for v, n in heights.items() if n <= k), default=99)
            why = by_elbows.get(k)
            if why is None:  # it helps no sooner than what fewer elbows offer
                assert least >= nearer, (world, k)
                assert lift >= lifted, (world, k)
                continue
            if least < nearer:
                assert round(abs(why.shift_in or 0.0) * TICKS_PER_IN) == least, (world, k)
                freed += 1
            else:
                assert why.shift_in is None, (world, k)
            if lifted == 99:
                assert (99 if why.lift_in is None else round(abs(why.lift_in) * TICKS_PER_IN)) == lift, (world, k)
                raised += lift < 99
            if why.shift_in is not None or why.lift_in is not None:
                assert why.verified, (world, k)
                assert why.blockers, (world, k)
            if why.middle_in is not None:
                assert fewest_at(world, why.middle_in) <= k, (world, k)
            nearer, lifted, told = min(nearer, least), min(lifted, lift), told + 1
    assert told > 20 * SCALE
    assert freed > 15 * SCALE
    assert raised >= 2 * SCALE


def fewest_at(world: World, shift_in: float) -> int:
    """Give the fewest elbows at a shift; a middle is rounded down to a whole place."""
    x, y, z = world.start
    return fewest(world, (x + round(shift_in * TICKS_PER_IN), y, z))
