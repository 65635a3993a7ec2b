"""Rectangular and oval duct, whose wide side turns with every hard bend, against plain enumeration on whole coordinates."""

from __future__ import annotations

import os
from dataclasses import replace

import numpy as np
import pytest
from oracle.flat import enumerate_flat
from oracle.naive import FAR
from oracle.worlds import as_space, random_world

from routeviz.model.freespace import Section
from routeviz.model.scene import SectionShape, SectionSize
from routeviz.search.solve import solve
from routeviz.search.terms import Terms

SCALE = int(os.environ.get("ROUTEVIZ_ORACLE", "1"))


@pytest.mark.parametrize(
    ("shape", "count", "size", "elbows"),
    [(SectionShape.RECT, 60, 11, 2), (SectionShape.OVAL, 40, 10, 2), (SectionShape.OVAL, 30, 9, 3)],
)
def test_flat_duct_finds_what_enumeration_finds(shape: SectionShape, count: int, size: int, elbows: int) -> None:
    rng = np.random.default_rng(41 + elbows * (shape is SectionShape.OVAL))
    reached = bent = 0
    for _ in range(count * SCALE):
        world = replace(random_world(rng, size), room=[], covered=False, priced=False)
        radii = int(rng.integers(2, 4)), int(rng.integers(1, 3))
        best = [FAR] * (elbows + 1)
        for wide in (0, 1):
            for used, cost in enumerate_flat(world, (2, 1), radii, elbows, wide):
                best[used] = min(best[used], cost)
        space = replace(as_space(world, elbows), section=Section(SectionSize(shape, 4.0, 2.0), 2, 1, *radii))
        found = solve(space, Terms(), elbows, [world.start])
        ours = [FAR if (c := found.cost(world.start, k)) is None else c[2] for k in range(elbows + 1)]
        assert ours == best, world
        reached += sum(v < FAR for v in best)
        bent += sum(v < FAR for v in best[1:])
    assert reached > count // 3 * SCALE
    assert bent > count // 4 * SCALE
