"""The field against two independent searches on every whole coordinate of random small worlds.

Whole fields are compared where both use all coordinates; the closed grid is compared at the collar, for every number
of elbows. `ROUTEVIZ_ORACLE` sets how many worlds (default small, so that the suite stays quick).
"""

from __future__ import annotations

import os
from dataclasses import replace

import numpy as np
import pytest
from oracle.naive import DIRECTIONS, FAR, HEAVY, World, enumerate_routes, whole_field
from oracle.worlds import as_space, random_world

from routeviz.search.lattice import lattice
from routeviz.search.launch import launches
from routeviz.search.layers import Layers
from routeviz.search.moves import moves
from routeviz.search.solve import Solution, solve
from routeviz.search.terms import Terms

SCALE = int(os.environ.get("ROUTEVIZ_ORACLE", "1"))


def lexicographic(cost: tuple[int, int, int] | None) -> int:
    return FAR if cost is None else cost[0] * HEAVY + cost[2]


def plain(values: np.ndarray, terms: Terms) -> np.ndarray:
    values = values.astype(np.int64)
    boxed, length = np.divmod(values, terms.weight) if terms.priced else (np.zeros_like(values), values)
    return np.where(values >= terms.limit, FAR, boxed * HEAVY + length)


def full_solution(world: World, elbows: int) -> Solution:
    """Solve on every whole coordinate."""
    space = as_space(world, elbows)
    table, terms = moves(space.section, space.limits), Terms(priced=world.priced)
    every = tuple(np.arange(a, b + 1, dtype=np.int64) for a, b in zip(world.lo, world.hi, strict=True))
    grid = lattice(space, table, (every[0], every[1], every[2]), terms)
    return Solution(grid, Layers(grid), launches(grid, [world.start]))


@pytest.mark.parametrize("slopes", [False, True])
def test_whole_fields_agree_on_the_full_lattice(slopes: bool) -> None:
    rng = np.random.default_rng(11 + slopes)
    values = reached = 0
    for _ in range(12 * SCALE):
        world = random_world(rng, 12, slopes=slopes, rounded=True)
        expected, opens = whole_field(world, 2)
        found = full_solution(world, 3)
        found.layers.grow(2)
        grid = found.grid
        for k in range(3):
            for d, (axis, sign) in enumerate(DIRECTIONS):
                state = grid.table.number(axis, sign, -1)
                ours = plain(found.layers.cost[k][state][0], grid.terms)
                theirs = expected[k][d].ravel()[grid.alive]
                assert np.array_equal(ours, theirs), (world, k, axis, sign)
                values += len(ours)
                reached += int((theirs < FAR).sum())
        assert [lexicographic(found.cost(world.start, k)) for k in range(3)] == opens
    assert values > 100_000 * SCALE
    assert reached > 5_000 * SCALE


def test_the_closed_grid_finds_what_the_full_lattice_finds() -> None:
    rng = np.random.default_rng(23)
    compared = reached = 0
    share = []
    for _ in range(110 * SCALE):
        world = random_world(rng, 11)
        _, opens = whole_field(world, 3)
        found = solve(as_space(world, 3), Terms(priced=world.priced), 3, [world.start])
        assert [lexicographic(found.cost(world.start, k)) for k in range(4)] == opens, world
        compared += 4
        reached += sum(v < FAR for v in opens)
        share.append(np.prod(found.grid.shape) / 12**3)
    assert compared >= 400 * SCALE
    assert reached > 60 * SCALE
    assert np.mean(share) < 0.9


def test_planes_through_the_collar_hold_all_routes_with_two_elbows() -> None:
    rng = np.random.default_rng(29)
    reached = 0
    for _ in range(60 * SCALE):
        world = random_world(rng, 11)
        _, opens = whole_field(world, 2)
        parts = [solve(as_space(world, 2), Terms(priced=world.priced), 2, [world.start], plane=p) for p in (0, 1)]
        best = [min(lexicographic(p.cost(world.start, k)) for p in parts) for k in range(3)]
        assert best == opens, world
        reached += sum(v < FAR for v in opens)
    assert reached > 30 * SCALE


def test_the_closed_grid_finds_what_plain_enumeration_finds() -> None:
    rng = np.random.default_rng(31)
    compared = reached = 0
    for _ in range(110 * SCALE):
        world = replace(random_world(rng, 9), r=1)
        best = [FAR] * 4
        for used, cost, _ in enumerate_routes(world, 3):
            best[used] = min(best[used], cost)
        found = solve(as_space(world, 3), Terms(priced=world.priced), 3, [world.start])
        assert [lexicographic(found.cost(world.start, k)) for k in range(4)] == best, world
        compared += 4
        reached += sum(v < FAR for v in best)
    assert compared >= 400 * SCALE
    assert reached > 40 * SCALE
