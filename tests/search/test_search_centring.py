"""Routes move to the middle of what they run in; expected places are arithmetic on the numbers written here."""

from __future__ import annotations

import pytest
import samples
from search.test_search_find import ROOF, box, house, plan

from routeviz.freespace import carve
from routeviz.model.solids import Crossing, SolidKind
from routeviz.search import find
from routeviz.search.centring import centred
from routeviz.search.stages import Looker
from routeviz.search.terms import Terms
from routeviz.search.verify import verify
from routeviz.units import TICKS_PER_IN


def test_a_run_between_two_beams_lies_midway() -> None:
    low = box("low", (-20, -40, 96.5), (164, -30, 100), Crossing.NEVER, SolidKind.BEAM)
    high = box("high", (-20, -60, 112), (164, 0, 119), Crossing.NEVER, SolidKind.BEAM)
    framed, scene = house(low, high, faces=(ROOF,)), plan(offset_angles_deg=())
    space = carve(framed, scene, samples.ROUND_8)
    looker = Looker(space)
    shortest = looker.costs(Terms(), 2)[0]
    route = shortest.route()
    assert route is not None
    table = shortest.solution.grid.table
    moved = centred(shortest.solution.grid.space, table, route)
    # clear of 100 + 1/4 + 4 below and 112 - 1/4 - 4 above: midway is 106, with 1 3/4 in on both sides
    assert [p[2] / TICKS_PER_IN for p in moved.points[1:3]] == [106.0, 106.0]
    assert route.length <= moved.length <= route.length + 3 * TICKS_PER_IN
    found = find(space)
    assert found.best is not None
    assert found.best.slack_in == pytest.approx(1.75, abs=1e-3)
    assert verify(found.best, framed, scene) == ()


def test_nothing_is_gained_where_all_is_wide() -> None:
    space = carve(house(), plan(), samples.ROUND_8)
    ways = list(Looker(space).costs(Terms(), 1))
    assert ways
    for found in ways:
        route = found.route()
        assert route is not None
        assert centred(found.solution.grid.space, found.solution.grid.table, route).length == route.length
