"""Offsets against plain enumeration on whole coordinates: one alone, one beside an elbow, two in turn."""

from __future__ import annotations

import os
from dataclasses import replace
from itertools import pairwise, product

import numpy as np
from oracle.bent import enumerate_bent, enumerate_two
from oracle.naive import Block, Opening, World, enumerate_routes
from oracle.worlds import as_space, random_world

from routeviz.model.freespace import FreeSpace, OffsetChoice
from routeviz.search.bends import elbow_with_offset
from routeviz.search.moves import moves
from routeviz.search.stages import Looker
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
    if number % 3 == 0:  # a thing near it, from which a cap keeps its distance unless it is well above
        low = int(rng.integers(world.lo[u], world.hi[u])), int(rng.integers(world.lo[v], world.hi[v]))
        wide.keep.append((low, (low[0] + 2, low[1] + 1), int(rng.integers(2, 6)), 1, low[1] + int(rng.integers(2, 5))))
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


def passages(rng: np.random.Generator) -> World:
    """A riser, a passage aside and, mostly, a second riser: all narrow, cut into one solid block."""
    size, wide = 12, 2
    start = int(rng.integers(3, 10)), int(rng.integers(-1, 6)), 0
    corner = (*start[:2], int(rng.integers(3, 9)))
    axis, step = int(rng.integers(0, 2)), int(rng.choice([-1, 1])) * int(rng.integers(1, 8))
    far = (corner[0] + step * (axis == 0), corner[1] + step * (axis == 1), corner[2])
    lines = [(start, corner), (corner, far), (far, (*far[:2], size if rng.random() < 0.6 else far[2]))]
    lo, hi = (-6, -10, -1), (size + 6, size + 2, size + 1)
    free = []
    for a, b in lines:
        more = [wide + int(v) for v in rng.integers(0, 2, 3)]
        free.append([(min(p, q) - m, max(p, q) + m) for p, q, m in zip(a, b, more, strict=True)])
    cuts = [
        sorted({lo[t], hi[t], *(min(max(v, lo[t]), hi[t]) for passage in free for v in passage[t])}) for t in range(3)
    ]
    blocks = []
    for cell in product(*(list(pairwise(c)) for c in cuts)):
        if not any(all(f[t][0] <= cell[t][0] and cell[t][1] <= f[t][1] for t in range(3)) for f in free):
            low, high = zip(*cell, strict=True)
            blocks.append(Block((low[0], low[1], low[2]), (high[0], high[1], high[2])))
    openings = [Opening(2, 1, (float(size), 0.0, 0.0), lo[:2], hi[:2])]
    for t, sign in ((0, 1), (0, -1), (1, 1)):
        other = 1 - t
        at = float((size + 4 if t == 0 else size) if sign > 0 else -4)
        openings.append(Opening(t, sign, (at, 0.0, 0.0), (lo[other], 0), (hi[other], size)))
    between, first = int(rng.integers(2, 6)), int(rng.integers(0, 2))
    return World(
        (-4, -8, 0), (size + 4, size, size), blocks, [], [], openings, start, wide, int(rng.integers(1, 4)), between,
        first, 0, False, size, False,
    )  # fmt: skip


def test_no_way_has_two_fittings_where_no_second_one_is_reached() -> None:
    rng = np.random.default_rng(83)
    slack = dict.fromkeys(((0, -1), (0, 1), (1, -1), (1, 1)), 0)
    nowhere = reached = 0
    for number in range(100 * SCALE):
        world = passages(rng)
        space = as_space(world, 2)
        space = replace(space, offsets=(OffsetChoice(45.0, SHIFTS),), limits=replace(space.limits, elbows=3))
        ways = any(elbows >= 2 for elbows, _, _ in enumerate_routes(world, 3))
        ways = ways or any(used == 2 for used, _ in enumerate_bent(world, SHIFTS, slack))
        ways = ways or any(True for _ in enumerate_two(world, SHIFTS, slack))
        said = Looker(space).goes_on(priced=False)
        assert said >= ways, (number, world)
        nowhere += not said
        reached += ways
    assert nowhere >= 4 * SCALE
    assert reached >= 10 * SCALE
