"""The field against an integer programme with free coordinates in sixteenths of an inch.

`ROUTEVIZ_ORACLE` sets how many random rooms; from 10 on, every place of the framed house is certified instead of a few.
"""

from __future__ import annotations

import os
from collections.abc import Sequence
from dataclasses import replace

import numpy as np
import pytest
from framed_house import collars, framed_house
from oracle.integer_programme_aside import least_length

from routeviz.model.freespace import (
    Barrier,
    BarrierKind,
    Exit,
    FreeSpace,
    KeepClear,
    Limits,
    Region,
    Section,
    Start,
    Ticks,
)  # fmt: skip
from routeviz.model.scene import SectionShape, SectionSize
from routeviz.model.solids import FaceKind
from routeviz.search.solve import Solution, solve
from routeviz.search.terms import Terms

SCALE = int(os.environ.get("ROUTEVIZ_ORACLE", "1"))
SHAPES = [SectionShape.ROUND, SectionShape.RECT, SectionShape.OVAL]


def random_room(rng: np.random.Generator, shape: SectionShape) -> FreeSpace:
    """About 30 by 30 by 30 in: boxes, sheets that one direction may cross, outdoors above, up to four exits."""

    def number(low: int, high: int) -> int:
        return int(rng.integers(low, high + 1))

    lo, hi = (0, -160, 0), (480, 320, 480)
    barriers = []
    for n in range(number(2, 9)):
        size = [number(8, 200) for _ in range(3)]
        runs = [True, True, True]
        if rng.random() < 0.3:
            thin = number(0, 2)
            size[thin], runs[thin] = number(8, 24), False
        at = [number(lo[t] - 16, hi[t] - 8) for t in range(3)]
        kind = BarrierKind.SOLID if all(runs) else BarrierKind.SHEET
        region = Region((at[0], at[1], at[2]), (at[0] + size[0], at[1] + size[1], at[2] + size[2]))
        barriers.append(Barrier(f"box-{n}", "", kind, region, (runs[0], runs[1], runs[2])))
    if rng.random() < 0.4:
        barriers.append(
            Barrier(
                "out", "", BarrierKind.OUTDOORS, Region((-99, -250, number(380, 480)), (580, 420, 700)), (True,) * 3
            )
        )
    exits = []
    for axis, sign in ((1, 1), (0, 1), (2, 1), (0, -1)):
        if rng.random() < 0.4:
            continue
        u, v = (t for t in range(3) if t != axis)
        a, b = (sorted(number(lo[t], hi[t]) for _ in range(2)) for t in (u, v))
        k = number(lo[u], hi[u]), number(lo[v], hi[v])
        keep = (KeepClear("k", "", k, (k[0] + number(0, 60), k[1] + number(0, 60)), 0, number(0, 50)),)
        face = FaceKind.ROOF if axis == 2 else FaceKind.WALL
        at = hi[axis] if sign > 0 else lo[axis]
        exits.append(Exit(f"exit {axis} {sign}", "", face, axis, sign, (float(at), 0.0, 0.0), (a[0], b[0]), (a[1], b[1]),
                          keep if rng.random() < 0.5 else ()))  # fmt: skip
    high = number(16, 40)
    wide = high if shape is SectionShape.ROUND else high + number(8, 40)
    easy = number(8, 60)
    hard = easy if shape is SectionShape.ROUND else number(8, 90)
    section = Section(SectionSize(shape, wide / 8, high / 8), wide, high, hard, easy)
    start = Start((number(60, 420), -number(60, 120), number(0, 120)), 2, 1, wide_axes=(0, 1))
    limits = Limits(3, number(0, 60), number(0, 40), number(0, 40), 0, boxing=False)
    return FreeSpace(lo, hi, section, start, limits, tuple(barriers), (), tuple(exits))


@pytest.mark.parametrize("shape", SHAPES)
def test_random_rooms_in_sixteenths(shape: SectionShape) -> None:
    rng = np.random.default_rng(101 + SHAPES.index(shape))
    reached = bent = 0
    for _ in range((25 if shape is SectionShape.ROUND else 10) * SCALE):
        space = random_room(rng, shape)
        if not space.exits:
            continue
        found = solve(space, Terms(), 3, [space.start.point])
        for k in range(4):
            ours = found.cost(space.start.point, k)
            assert (None if ours is None else ours[2]) == least_length(space, space.start.point, k), (k, space)
            reached += ours is not None
            bent += ours is not None and k > 1
    assert reached > 5 * SCALE
    assert bent > 2 * SCALE


def test_every_place_in_a_framed_house() -> None:
    space, every = framed_house(), collars()
    assert len(every) >= 300
    found = [solve(space, Terms(), 3, every)]
    elbows = [_certified(space, found, collar, 3) for collar in (every if SCALE >= 10 else every[7::43])]
    assert {-1, 1, 2, 3} <= set(elbows)


def test_flat_duct_in_a_framed_house() -> None:
    space, every = framed_house(wide=8.0, high=3.25, shape=SectionShape.RECT), collars()
    some = tuple(every[n] for n in (1, 8, 12, 33, 92, 112))
    found = [solve(space, Terms(), 2, some, plane=t) for t in (0, 1)]
    assert {1, 2} <= {_certified(space, found, collar, 2) for collar in some}


def _certified(space: FreeSpace, found: Sequence[Solution], collar: Ticks, most: int) -> int:
    """Compare every number of elbows up to the fewest that do; give it, or -1 where there is no way at all."""
    here = replace(space, start=replace(space.start, point=collar))
    for k in range(most + 1):
        ours = min((c[2] for f in found if (c := f.cost(collar, k)) is not None), default=None)
        assert ours == least_length(here, collar, k), (collar, k)
        if ours is not None:
            return k
    return -1
