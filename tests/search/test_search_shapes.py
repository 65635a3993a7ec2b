"""The true elbow against dense sampling, and zones against their own rule: the last zone that holds a place rules it."""

from __future__ import annotations

import numpy as np
from shapely.geometry import Point, Polygon

from routeviz.freespace.zones import places
from routeviz.model.freespace import Limits, Region, Section
from routeviz.model.scene import SectionShape, SectionSize
from routeviz.model.solids import Box, Passage, Prism, Zone
from routeviz.search.moves import moves
from routeviz.search.torus import arc_axes, ring_hits
from routeviz.units import TICKS_PER_IN


def test_ring_against_points_on_its_arc() -> None:
    rng = np.random.default_rng(3)
    turns = np.linspace(0, np.pi / 2, 4001)
    decided = 0
    for _ in range(400):
        radius, half = int(rng.integers(60, 120)), int(rng.integers(20, 60))
        section = Section(SectionSize(SectionShape.ROUND, 1, 1), half, half, radius, radius)
        body = moves(section, Limits(3, 0, 0, 0, 0)).bodies[int(rng.integers(0, 12))]
        lo = rng.integers(-120, 120, 3)
        hi = lo + rng.integers(10, 90, 3)
        (u, su), (v, sv) = arc_axes(body)
        arc = np.zeros((len(turns), 3))
        arc[:, u] = su * (radius - radius * np.cos(turns))
        arc[:, v] = sv * (radius - radius * np.sin(turns))
        away = np.maximum(np.maximum(lo - arc, arc - hi), 0)
        least = np.sqrt((away**2).sum(axis=1)).min()
        if abs(least - half) < 0.05:
            continue
        region = Region(tuple(int(x) for x in lo), tuple(int(x) for x in hi))  # type: ignore[arg-type]
        assert bool(ring_hits(np.zeros((1, 3), np.int64), body, radius, half, region)[0]) == (least < half)
        decided += 1
    assert decided > 300


def test_the_last_zone_that_holds_a_place_rules_it() -> None:
    rng = np.random.default_rng(8)
    bounds = Box((0, 0, 0), (40, 40, 40))
    asked = sloped = 0
    for _ in range(20):
        zones = []
        for n in range(6):
            passage = list(Passage)[int(rng.integers(0, 4))]
            lo = rng.integers(0, 25, 3).astype(float)
            hi = lo + rng.integers(3, 15, 3)
            shape: Box | Prism = Box(tuple(lo), tuple(hi))  # type: ignore[arg-type]
            if n % 3 == 1:
                axis = 0
                outline = ((lo[1], lo[2]), (hi[1], lo[2]), (hi[1], hi[2] - 1), (lo[1], lo[2] + 1))
                shape = Prism(axis, lo[0], hi[0], outline)
            zones.append(Zone(f"z{n}", f"z{n}", passage, shape))
        found = places(tuple(zones), bounds)
        for _ in range(60):
            p = rng.uniform(0.05, 39.95, 3)
            want = [z.id for z in zones if _holds(z.shape, p)][-1:]
            have = [f.zone.id for f in found if _inside(f.region, p)]
            if any(_near(z.shape, p) for z in zones):
                continue  # within rounding of a slope
            assert have == want
            asked += 1
        sloped += sum(f.region.axis >= 0 for f in found)
    assert asked > 800
    assert sloped > 20


def _holds(shape: Box | Prism, p: np.ndarray) -> bool:
    if isinstance(shape, Box):
        return all(shape.lo[t] < p[t] < shape.hi[t] for t in range(3))
    return shape.start < p[0] < shape.end and Polygon(shape.outline).contains(Point(p[1], p[2]))


def _near(shape: Box | Prism, p: np.ndarray) -> bool:
    return isinstance(shape, Prism) and Polygon(shape.outline).exterior.distance(Point(p[1], p[2])) < 1e-3


def _inside(region: Region, p: np.ndarray) -> bool:
    at = p * TICKS_PER_IN
    if not all(region.lo[t] < at[t] < region.hi[t] for t in range(3)):
        return False
    if region.axis < 0:
        return True
    u, v = (t for t in range(3) if t != region.axis)
    return bool(Polygon(region.outline).contains(Point(at[u], at[v])))
