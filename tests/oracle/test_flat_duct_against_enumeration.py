"""Rectangular duct, whose wide side turns with every hard bend, against plain enumeration on whole coordinates."""

from __future__ import annotations

import os
from dataclasses import replace

import numpy as np
from oracle.flat import enumerate_flat
from oracle.naive import FAR
from oracle.worlds import as_space, random_world

from routeviz.model.freespace import Section
from routeviz.model.scene import SectionShape, SectionSize
from routeviz.search.solve import solve
from routeviz.search.terms import Terms

SCALE = int(os.environ.get("ROUTEVIZ_ORACLE", "1"))
FLAT = SectionSize(SectionShape.RECT, 4.0, 2.0)


def test_flat_duct_finds_what_enumeration_finds() -> None:
    rng = np.random.default_rng(41)
    reached = bent = 0
    for _ in range(60 * SCALE):
        world = replace(random_world(rng, 11), room=[], covered=False, priced=False)
        radii = int(rng.integers(2, 4)), int(rng.integers(1, 3))
        best = [FAR] * 3
        for wide in (0, 1):
            for used, cost in enumerate_flat(world, (2, 1), radii, 2, wide):
                best[used] = min(best[used], cost)
        space = replace(as_space(world, 2), section=Section(FLAT, 2, 1, *radii))
        found = solve(space, Terms(), 2, [world.start])
        ours = [FAR if (c := found.cost(world.start, k)) is None else c[2] for k in range(3)]
        assert ours == best, world
        reached += sum(v < FAR for v in best)
        bent += sum(v < FAR for v in best[1:])
    assert reached > 20 * SCALE
    assert bent > 15 * SCALE
