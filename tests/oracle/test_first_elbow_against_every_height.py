"""Whether any elbow fits on the first run, against every whole height tried one by one; sloped bars included."""

from __future__ import annotations

import os
from dataclasses import replace

import numpy as np
from oracle.naive import World, enumerate_routes
from oracle.worlds import as_space, random_world

from routeviz.search.first import bends_at_all
from routeviz.search.moves import Moves, moves

SCALE = int(os.environ.get("ROUTEVIZ_ORACLE", "1"))


def fits_somewhere(world: World, table: Moves) -> bool:
    """Climb step by step; at every height ask each elbow's parts one by one."""
    p = world.start
    climbed = 0
    while True:
        for turn in table.turns:
            if table.states[turn.source][:2] != (2, 1) or climbed < world.first + world.radius:
                continue
            hidden = world.covered and table.states[turn.target][:2] == (1, 1)
            stops = world.blocks + world.outdoors + ([] if world.priced or hidden else world.room)
            parts = (table.tubes[turn.body], table.legs[0][turn.body], table.legs[1][turn.body])
            boxes = [
                ([float(p[t] + b[t][0]) for t in range(3)], [float(p[t] + b[t][1]) for t in range(3)]) for b in parts
            ]
            if not any(s.meets(tuple(lo), tuple(hi)) for s in stops for lo, hi in boxes):
                return True
        if not world.step_free(p, 2, 1, False, world.covered):
            return False
        p, climbed = (p[0], p[1], p[2] + 1), climbed + 1


def test_no_elbow_fits_where_no_height_has_room() -> None:
    rng = np.random.default_rng(61)
    nowhere = sloped = 0
    for number in range(200 * SCALE):
        slopes = number % 2 == 1
        world = random_world(rng, 13, slopes=slopes)
        world = replace(world, r=2, radius=int(rng.integers(2, 6)))
        space = as_space(world, 2)
        table = moves(space.section, space.limits)
        said, found = bends_at_all(space, table, priced=world.priced), fits_somewhere(world, table)
        assert said >= found, (number, world)
        if not slopes:
            assert said == found, (number, world)
        nowhere += not said
        sloped += slopes and not said
        if not said:
            assert all(elbows == 0 for elbows, _, _ in enumerate_routes(world, 1))
    assert nowhere >= 15 * SCALE
    assert sloped >= 5 * SCALE
