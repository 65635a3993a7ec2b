"""One offset, alone or with one elbow before or behind it, against plain enumeration on whole coordinates."""

from __future__ import annotations

import os
from dataclasses import replace

import numpy as np
from oracle.bent import enumerate_bent
from oracle.naive import Opening, World
from oracle.worlds import as_space, random_world

from routeviz.model.freespace import FreeSpace, OffsetChoice
from routeviz.search.bends import elbow_with_offset
from routeviz.search.moves import moves
from routeviz.search.offsets import straight_with_offset

SCALE = int(os.environ.get("ROUTEVIZ_ORACLE", "1"))
SHIFTS = (1, 2, 3, 4, 5)
FAR = 10**9


def problem(rng: np.random.Generator, number: int) -> tuple[World, FreeSpace, dict[tuple[int, int], int]]:
    world = replace(random_world(rng, 10), priced=False)
    world = replace(world, blocks=world.blocks[: 1 + number % 3], outdoors=[])
    axis, sign = [(0, 1), (0, -1), (1, 1), (1, -1), (2, 1)][number % 5]  # one wide way out besides
    u, v = (t for t in range(3) if t != axis)
    at = float(world.hi[axis] if sign > 0 else world.lo[axis])
    wide = Opening(axis, sign, (at, 0.0, 0.0), (world.lo[u] + 1, world.lo[v] + 1), (world.hi[u] - 1, world.hi[v] - 1))
    world = replace(world, openings=[*world.openings, wide])
    if number % 2:
        world = replace(world, room=[], covered=False)
    slack = {turn: int(rng.integers(0, 4)) for turn in ((0, -1), (0, 1), (1, -1), (1, 1))}
    space = as_space(world, 2)
    start = replace(space.start, cover_slack=(slack[0, -1], slack[0, 1], slack[1, -1], slack[1, 1]))
    return world, replace(space, start=start, offsets=(OffsetChoice(45.0, SHIFTS),)), slack


def test_one_offset_and_one_elbow_are_what_enumeration_finds() -> None:
    rng = np.random.default_rng(71)
    compared = straight = turned = 0
    for number in range(60 * SCALE):
        world, space, slack = problem(rng, number)
        best = {1: FAR, 2: FAR}
        for used, length in enumerate_bent(world, SHIFTS, slack):
            best[used] = min(best[used], length)
        table = moves(space.section, space.limits)
        one = straight_with_offset(space, table, priced=False)
        two = elbow_with_offset(space, table)
        assert (FAR if one is None else one[1].length) == best[1], (world, slack)
        assert (FAR if two is None else two[1].length) == best[2], (world, slack, two)
        compared += 2
        straight += best[1] < FAR
        turned += best[2] < FAR
    assert compared == 120 * SCALE
    assert straight >= 8 * SCALE
    assert turned >= 8 * SCALE
