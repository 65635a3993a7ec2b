"""Routes move to the middle of what they run in; expected places are arithmetic on the numbers written here."""

from __future__ import annotations

from dataclasses import replace
from math import sqrt

import pytest
import samples
from search.test_search_find import ROOF, box, house, plan

from routeviz.freespace import carve
from routeviz.model.solids import Crossing, ExitFace, FaceKind, SolidKind
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


BAND = ExitFace("band", "the floor's edge", FaceKind.WALL, 1, 1, 6.0, (6.0, 0, 0), (0.0, 97.0), (144.0, 112.0))


def rim(top_in: float) -> tuple[object, ...]:
    """A rim over the wall from 96 1/2 in up, under a floor that nothing passes."""
    return (
        box("rim", (0, 4.5, 96.5), (144, 6.0, top_in), Crossing.RULE, SolidKind.RIM),
        box("floor", (-20, -116, 119), (164, 30, 120), Crossing.NEVER, SolidKind.DECK),
    )


@pytest.mark.parametrize(
    ("top_in", "height_in"),
    [
        # an 8 in duct on an elbow of radius 8 in: standing on the board it runs at 96 1/2 + 8 = 104 1/2 in
        (112.5, 104.5),  # the rim's middle is there: nothing is to be gained
        # midway would be 103 1/4; the board's hole lets the elbow down by sqrt(4^2 - 3 3/4^2) = 1.392 in at the most
        (110.0, 103.25),
        (109.0, 104.5 - sqrt(4**2 - 3.75**2)),  # midway would be 102 3/4
    ],
)
def test_an_elbow_stands_in_the_boards_hole_where_the_rim_would_be_cut_at_its_edge(
    top_in: float, height_in: float
) -> None:
    framed, scene = house(*rim(top_in), faces=(BAND,)), plan(offset_angles_deg=())  # type: ignore[arg-type]
    found = find(carve(framed, scene, samples.ROUND_8)).best
    assert found is not None
    assert found.points[-1][2] == pytest.approx(height_in, abs=1e-3)
    assert verify(found, framed, scene) == ()


def test_the_checker_refuses_an_elbow_that_its_hole_does_not_hold() -> None:
    framed, scene = house(*rim(109.0), faces=(BAND,)), plan(offset_angles_deg=())  # type: ignore[arg-type]
    found = find(carve(framed, scene, samples.ROUND_8)).best
    assert found is not None
    start, corner, end = found.points
    lower = replace(
        found,
        points=(start, (corner[0], corner[1], corner[2] - 0.05), (end[0], end[1], end[2] - 0.05)),
        length_in=found.length_in - 0.05,
    )
    assert verify(lower, framed, scene) == ("elbow 2 lies inside board",)
