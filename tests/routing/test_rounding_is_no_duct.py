"""An elbow that sits on the collar but for the search's rounding has no piece of duct before it."""

from __future__ import annotations

import handmade
import pytest
import samples

from routeviz.model.path import Bend, Centreline
from routeviz.model.route import PartKind
from routeviz.routing import realise
from routeviz.units import TICKS_PER_IN


@pytest.mark.parametrize(("over", "straights"), [(0.0, 1), (1 / TICKS_PER_IN, 1), (1 / 64, 2), (3.0, 2)])
def test_a_gap_of_a_tick_is_no_straight(over: float, straights: int) -> None:
    """The take-off of a right angle of radius 8 in is 8 in, so the corner stands that far over the collar."""
    x, y, z = handmade.COLLAR
    corner, end = (x, y, z + 8.0 + over), (x, 7.1875, z + 8.0 + over)
    line = Centreline((handmade.COLLAR, corner, end), (Bend(corner, 90.0, 8.0, 8.0),), samples.ROUND_8, (None, None), "wall-hood",
                      1.0, 8.0 + over + 15.6875, 0.0, (), (), 0.0)  # fmt: skip
    route = realise(line, samples.scene(), handmade.frame())
    assert sum(p.kind is PartKind.STRAIGHT for p in route.parts) == straights
    assert route.length_in == pytest.approx(sum(p.length_in for p in route.parts))
