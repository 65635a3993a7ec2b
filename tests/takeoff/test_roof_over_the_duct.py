"""How high the roof is over the duct is measured before the last piece is cut, and said as taken where nobody did.

The roof made by hand: the deck's underside is at 112 + 8 1/2 / 4 = 114 1/8 in over the duct; ceiling 96, collar 78 1/2,
hood's underside 66 in.
"""

from __future__ import annotations

from dataclasses import replace

import handmade
import pytest
import samples

from routeviz.model.route import Route
from routeviz.model.scene import Above, AboveKind, Scene
from routeviz.model.takeoff import MeasureFirst, Step
from routeviz.takeoff import count

WHAT = "Height from the ceiling to the roof's underside over the duct (cut the last piece to fit)"


def measured(route: Route, scene: Scene) -> list[MeasureFirst]:
    return [m for m in count(route, scene, handmade.frame()).measure_first if m.what == WHAT]


def steps(route: Route, scene: Scene) -> dict[str, Step]:
    return {s.id: s for s in count(route, scene, handmade.frame()).steps}


def heeled() -> Scene:
    plain = samples.scene()
    assert plain.roof is not None
    return replace(plain, roof=replace(plain.roof, heel_in=13.0))


def test_it_comes_before_all_else_where_nobody_measured_a_heel() -> None:
    found = count(handmade.up_route(), samples.scene(), handmade.frame()).measure_first
    assert (found[0].what, found[0].assumed, found[0].assumed_only) == (WHAT, "18 1/8 in", True)


def test_with_a_heel_it_is_a_number_like_another() -> None:
    (line,) = measured(handmade.up_route(), heeled())
    assert (line.assumed, line.assumed_only) == ("18 1/8 in", False)
    assert count(handmade.up_route(), heeled(), handmade.frame()).measure_first[0].what != WHAT


def test_it_may_come_down_until_the_rafters_lie_on_the_ceiling() -> None:
    # 5/8 board and 5 1/2 x 1.0308 = 5.669 of rafter: 6.294, and 18.125 - 6.294 is left
    (line,) = measured(handmade.up_route(), samples.scene())
    # 36 1/2 in of run, 1 1/2 over the collar and a stub of 8: 46 in of a section of 60, so 14 more than 18 1/8
    assert line.changes_at == "less than 6 5/16 in, or more than 32 1/8 in: one more section of duct"
    assert line.slack_in == pytest.approx(18.125 - 0.625 - 5.5 * (1 + 1 / 16) ** 0.5)


def test_it_may_come_down_no_further_than_the_last_straight_is_long() -> None:
    whole = handmade.up_route()
    x, y, z = handmade.COLLAR
    top = whole.termination.point[2]
    lower = handmade.straight("straight-1", (x, y, z), (x, y, top - 10.0))
    last = handmade.straight("straight-2", (x, y, top - 10.0), (x, y, top))
    (line,) = measured(replace(whole, parts=(lower, last, whole.parts[-1])), samples.scene())
    assert line.slack_in == 10.0
    assert line.changes_at.startswith("less than 8 1/8 in, or more than ")


def test_the_run_up_is_measured_before_any_straight_is_cut() -> None:
    for scene in (samples.scene(), heeled()):
        found = steps(handmade.up_route(), scene)
        order = list(found)
        assert order.index("inside") < order.index("outside") < order.index("rise") < order.index("cut-duct")
        assert "takes 48 1/8 in, 35 5/8 in of it from the collar" in found["rise"].text  # 114 1/8 less 66, less 78 1/2


def test_no_roof_is_measured_where_none_is_gone_through_or_the_ceiling_is_its_own() -> None:
    plain = samples.scene()
    follows = replace(plain, above=Above(AboveKind.ROOF), ceiling=replace(plain.ceiling, joists=None))
    built = replace(handmade.up_route(), as_built=True, centreline=None)
    for route, scene in ((handmade.back_route(), plain), (handmade.up_route(), follows), (built, plain)):
        assert not measured(route, scene)
        assert "rise" not in steps(route, scene)
