"""A bay in the wall of a space beyond the kitchen bears that wall's own name."""

from __future__ import annotations

from dataclasses import replace

import pytest
import samples
from search.test_search_find import WALL

from routeviz import framing
from routeviz.model.path import Centreline
from routeviz.model.scene import Space, SpaceKind, WallSide
from routeviz.model.solids import FaceKind
from routeviz.routing.words import in_words

PLAN = {WallSide.LEFT: (0, -1.0), WallSide.RIGHT: (0, 1.0), WallSide.FRONT: (1, 1.0)}


@pytest.mark.parametrize(("side", "said"), [(WallSide.LEFT, "porch left wall"), (WallSide.RIGHT, "porch right wall"),
                                            (WallSide.FRONT, "porch far wall")])  # fmt: skip
def test_a_bay_beyond_is_named_by_its_own_wall(side: WallSide, said: str) -> None:
    """Studs 2 and 3 of each wall stand 16 to 17 1/2 in and 32 to 33 1/2 in from where its measure begins."""
    walls = tuple(samples.wall(s, studs=samples.studs("2x4", depth=3.5), core_in=3.5) for s in PLAN)
    porch = Space("porch", SpaceKind.PORCH, WallSide.HOOD, 72.0, 20.0, 96.0, 0.0, 100.0, walls, True)
    home = replace(samples.scene(), spaces=(porch,))
    home = replace(home, walls=tuple(replace(w, beyond="porch") if w.side is WallSide.HOOD else w for w in home.walls))
    axis, sign = PLAN[side]
    outer = home.wall(WallSide.HOOD).thickness_in
    inside = {WallSide.LEFT: 20.0, WallSide.RIGHT: 116.0, WallSide.FRONT: outer + 72.0}[side]
    middle = 24.75 + (20.0 if axis == 1 else outer)  # between the two studs
    across = [middle, middle]
    across[axis] = inside
    start = (across[0], across[1], 60.0)
    across[axis] += sign * 8.0
    line = Centreline((start, (across[0], across[1], 60.0)), (), samples.ROUND_8, (None,), "", 0.0, 8.0, 0.0, ())
    face = replace(WALL, kind=FaceKind.WALL, label=f"the {said}")
    words = in_words(line, framing.frame(home), face)
    assert f"between {said} studs 2 and 3, out through the {said}" in words
