"""Every kind of route (way out, directions, places) and its best cost, against plain enumeration on whole coordinates.

The enumeration knows no graph, no grid and no bays: it asks every unit step of a route in which place its middle lies.
"""

from __future__ import annotations

import os
from dataclasses import replace
from itertools import combinations, pairwise

import numpy as np
from oracle.naive import Block, Opening, World, enumerate_routes
from oracle.worlds import as_space, random_world

from routeviz.model.freespace import FreeSpace, Region
from routeviz.search.alternatives import Kind, alternatives, best_of_each_kind, kind_of, wiggles
from routeviz.search.bays import Bays
from routeviz.search.solve import prepare
from routeviz.search.stages import Looker
from routeviz.search.terms import Terms

SCALE = int(os.environ.get("ROUTEVIZ_ORACLE", "1"))
Point = tuple[int, int, int]
Named = list[tuple[str, Point, Point]]
HEAVY = 10**7


def problem(rng: np.random.Generator, number: int) -> tuple[World, FreeSpace, Named]:
    """A small world with named places: some side by side, some one over the other."""
    world = replace(random_world(rng, 9), priced=number % 3 == 2)
    world = replace(world, blocks=world.blocks[: number % 4])
    if number % 3 == 0:
        world = replace(world, room=[], covered=False)
    elif number % 3 == 1:
        world = replace(world, room=[b for b in world.room if b.hi[1] <= 0])
    if number % 2:
        axis, sign = [(0, 1), (0, -1), (1, 1), (2, 1)][number % 4]
        u, v = (t for t in range(3) if t != axis)
        at = float(world.hi[axis] if sign > 0 else world.lo[axis])
        wide = Opening(axis, sign, (at, 0.0, 0.0), (world.lo[u], world.lo[v]), (world.hi[u], world.hi[v]))
        world = replace(world, openings=[*world.openings, wide])
    places: Named = []
    for _ in range(int(rng.integers(1, 5))):
        ends = [sorted(int(x) for x in rng.integers(world.lo[t] - 1, world.hi[t] + 2, 2)) for t in range(3)]
        if all(b > a for a, b in ends):
            name = str(rng.choice(["north", "south", "attic"]))
            places.append((name, (ends[0][0], ends[1][0], ends[2][0]), (ends[0][1], ends[1][1], ends[2][1])))
    space = as_space(world, 2)
    return world, replace(space, bays=tuple((n, Region(lo, hi)) for n, lo, hi in places)), places


def passed(a: Point, b: Point, places: Named) -> tuple[str, ...]:
    """Name the places of a straight, unit step by unit step."""
    axis = next(t for t in range(3) if a[t] != b[t])
    step = 1 if b[axis] > a[axis] else -1
    names: list[str] = []
    for at in range(a[axis], b[axis], step):
        middle = [float(v) for v in a]
        middle[axis] = at + step / 2
        here = [name for name, lo, hi in places if all(lo[t] <= middle[t] <= hi[t] for t in range(3))]
        if here and (not names or names[-1] != here[-1]):
            names.append(here[-1])
    return tuple(names)


def apart(points: tuple[Point, ...], r: int) -> bool:
    """Whether the first and the third straight keep at least one unit between them."""
    if len(points) < 4:
        return True
    boxes = []
    for a, b in (points[:2], points[2:4]):
        half = [0 if a[t] != b[t] else r for t in range(3)]
        boxes.append([(min(a[t], b[t]) - half[t], max(a[t], b[t]) + half[t]) for t in range(3)])
    gaps = [max(q[0] - p[1], p[0] - q[1], 0) for p, q in zip(*boxes, strict=True)]
    return sum(g * g for g in gaps) >= 1


def expected(world: World, places: Named) -> dict[Kind, tuple[int, int, int]]:
    """The best cost (boxed, elbows, length) of every kind."""
    best: dict[Kind, tuple[int, int, int]] = {}
    for elbows, cost, points in enumerate_routes(world, 2):
        if not apart(points, world.r):
            continue
        way = next(t for t in range(3) if points[-1][t] != points[-2][t])
        sign = 1 if points[-1][way] > points[-2][way] else -1
        ways = []
        for a, b in pairwise(points):
            axis = next(t for t in range(3) if a[t] != b[t])
            ways.append((axis, 1 if b[axis] > a[axis] else -1))
        leaves = f"{way} {sign} {float(points[-1][way])}"
        kind = Kind(leaves, tuple(ways), tuple(passed(a, b, places) for a, b in pairwise(points)))
        boxed, length = divmod(cost, HEAVY)
        found = boxed, elbows, length
        best[kind] = min(best.get(kind, found), found)
    return best


def test_every_kind_has_the_cost_that_enumeration_finds() -> None:
    rng = np.random.default_rng(97)
    compared = with_bays = worlds = 0
    for number in range(150 * SCALE):
        world, space, places = problem(rng, number)
        ground = prepare(space, Terms(priced=world.priced), [world.start])
        bays = Bays.of(space)
        found = {kind: cost for kind, (cost, _) in best_of_each_kind(ground, 2, bays).items()}
        wanted = expected(world, places)
        assert found == wanted, (number, world, places, set(found.items()) ^ set(wanted.items()))
        compared += len(wanted)
        with_bays += len({k.bays for k in wanted}) > 1
        worlds += bool(wanted)
    assert worlds >= 40 * SCALE
    assert compared >= 200 * SCALE
    assert with_bays >= 10 * SCALE


def test_an_elbow_just_clear_of_the_open_room_is_found() -> None:
    """The room ends at z = 5 and the elbow reaches 2 below its corner, so that it has room from 7 on and not before."""
    right = Opening(0, 1, (9.0, 0.0, 0.0), (-2, 0), (5, 8))
    world = World((0, -3, 0), (9, 6, 9), [], [], [Block((0, -3, 3), (9, 0, 5))], [right], (7, -2, 3), 1, 2, 1, 1, 0,
                  True, 5, True)  # fmt: skip
    ground = prepare(as_space(world, 2), Terms(priced=True), [world.start])
    best = min(cost for cost, _ in best_of_each_kind(ground, 2, Bays.of(ground.space)).values())
    assert best == min(expected(world, []).values()) == (0, 1, (7 - 3) + (9 - 7))


def same_way_with_more_turns(kind: Kind, other: Kind) -> bool:
    """Whether striking out some of a route's straights leaves the other's directions, through the same places."""
    if kind.leaves != other.leaves:
        return False
    both = [[name for names in k.bays for name in names] for k in (kind, other)]
    once = [[n for i, n in enumerate(names) if not i or names[i - 1] != n] for names in both]
    return once[0] == once[1] and other.ways in combinations(kind.ways, len(other.ways))


def wanted_others(every: dict[Kind, tuple[int, int, int]], best: Kind, count: int) -> list[tuple[int, int, int]]:
    """Choose by the rule in plain words: one for each other way out, then the cheapest that are no wiggles."""
    ranked = sorted(every, key=lambda k: every[k])
    chosen = [best]
    for kind in ranked:
        if len(chosen) <= count and all(kind.leaves != c.leaves for c in chosen):
            chosen.append(kind)
    for kind in ranked:
        few = every[kind][1] <= every[best][1] + 1
        if len(chosen) <= count and few and not any(kind == c or same_way_with_more_turns(kind, c) for c in chosen):
            chosen.append(kind)
    return sorted(every[k] for k in chosen[1:])


def test_the_others_are_those_that_the_rule_picks_from_the_enumeration() -> None:
    rng = np.random.default_rng(53)
    told = same_face = 0
    for number in range(150 * SCALE):
        world, space, places = problem(rng, number)
        every = expected(world, places)
        least = min(every.values(), default=None)
        if least is None or list(every.values()).count(least) > 1 or len(set(every.values())) < len(every):
            continue  # equal costs leave the choice open
        looker, bays = Looker(space), Bays.of(space)
        routes = best_of_each_kind(looker.ground(Terms(priced=world.priced)), 2, bays)
        best = next(k for k, c in every.items() if c == least)
        got = alternatives(space, looker, routes[best][1], 3, boxed=world.priced)
        assert [cost for cost, _ in got] == wanted_others(every, best, 3), (number, world, places)
        kinds = [best, *(kind_of(route, bays) for _, route in got)]
        assert len(set(kinds)) == len(kinds)
        assert not any(wiggles(a, b) for n, a in enumerate(kinds) for b in kinds[:n])
        told += len(got)
        same_face += len({k.leaves for k in kinds}) < len(kinds)
    assert told >= 12 * SCALE
    assert same_face >= 3 * SCALE
