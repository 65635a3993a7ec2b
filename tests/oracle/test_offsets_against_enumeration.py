"""Offsets against plain enumeration on whole coordinates: one alone, one beside an elbow, two in turn."""

from __future__ import annotations

import os
from dataclasses import replace

import numpy as np
from oracle.bent import enumerate_bent, enumerate_two
from oracle.naive import Opening, World
from oracle.worlds import as_space, random_world

from routeviz.model.freespace import FreeSpace, OffsetChoice
from routeviz.search.bends import elbow_with_offset
from routeviz.search.moves import moves
from routeviz.search.stepped import straight_with_offset, straight_with_two

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


def test_two_offsets_in_turn_are_what_enumeration_finds() -> None:
    rng = np.random.default_rng(29)
    found_some = only_two = 0
    for number in range(150 * SCALE):
        world, space, slack = problem(rng, 5 * number + 4)  # a wide way out straight up
        if number % 2:
            world = replace(world, room=[], covered=False)
        if number % 3 == 0:  # a small one, aside and forwards or back
            x, y, _ = world.start
            at = x + int(rng.choice([-3, -2, 2, 3])), y + int(rng.choice([-2, -1, 1, 2, 3]))
            world = replace(world, hi=(*world.hi[:2], 15), openings=[Opening(2, 1, (15.0, 0.0, 0.0), at, at)])
        start = replace(space.start, covered=world.covered)
        space = replace(as_space(world, 2), start=start, offsets=space.offsets)
        best = min(enumerate_two(world, SHIFTS, slack), default=FAR)
        table = moves(space.section, space.limits)
        found = straight_with_two(space, table)
        assert (FAR if found is None else found[1].length) == best, (number, world, slack, found)
        if found is not None:
            assert found[0] == (0, 2, found[1].length)
            found_some += 1
            only_two += straight_with_offset(space, table, priced=False) is None
            assert straight_with_two(space, table, found[1].length) is None
    assert found_some >= 10 * SCALE
    assert only_two >= 3 * SCALE, only_two
