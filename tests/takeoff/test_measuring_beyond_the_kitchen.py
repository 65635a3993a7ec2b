"""What to measure first in a space beyond the kitchen is measured from that place's own walls and floor."""

from __future__ import annotations

from dataclasses import replace

import handmade
import pytest
from takeoff.test_holes_beyond_the_kitchen import AWAY, WIDE, at, beyond

from routeviz import framing
from routeviz.model.route import Near
from routeviz.model.scene import WallSide
from routeviz.model.takeoff import MeasureFirst
from routeviz.takeoff.measure import measure_first

BEGINS_LEFT = (WallSide.HOOD, WallSide.RIGHT)  # where a wall's own measure begins at the left hand of who faces it
GAP = 2.0


def measured(side: WallSide, solid_id: str, toward: tuple[float, float, float]) -> MeasureFirst:
    """Measure a member of the porch behind one wall that stands 2 in from a duct, in a direction from the duct."""
    home = beyond(side)
    home = replace(home, duct=replace(home.duct, clearance_in=0.5))
    frame = framing.frame(home)
    label = frame.solid(solid_id).label
    near = Near(solid_id, label, GAP, toward, (0.0, 0.0, 0.0), handmade.up_route().parts[0].id)
    route = replace(handmade.up_route(), near=(near,), penetrations=())
    (only,) = measure_first(route, home, frame)
    return only


@pytest.mark.parametrize("side", AWAY, ids=str)
def test_a_stud_of_the_far_wall_is_measured_from_the_left_wall_of_the_place(side: WallSide) -> None:
    """Stud 2 stands 16 to 17 1/2 in from where the wall's measure begins; the duct is on its right."""
    home = beyond(side)
    here, there = at(home, side, 10.0, 0.0), at(home, side, 0.0, 0.0)
    leftwards = tuple((b - a) / 10.0 for a, b in zip(here, there, strict=True))
    found = measured(side, "back-porch-front-stud-2", (*leftwards, 0.0))
    edge = 17.5 if side in BEGINS_LEFT else WIDE - 16.0
    assert found.what == "back porch far wall stud 2, right edge"
    assert found.assumed == f"{edge:g} in from the left wall of the back porch".replace("17.5", "17 1/2")
    limit = edge + GAP - 0.5
    assert found.changes_at == f"more than {limit:g} in".replace("85.5", "85 1/2")


@pytest.mark.parametrize("side", AWAY, ids=str)
def test_a_stud_of_a_side_wall_is_measured_from_the_kitchens_wall(side: WallSide) -> None:
    """Stud 2 stands 16 to 17 1/2 in from the kitchen's wall; the duct is beyond it or before it."""
    ax, ay = AWAY[side]
    beyond_it = measured(side, "back-porch-left-stud-2", (float(-ax), float(-ay), 0.0))
    assert beyond_it.what == "back porch left wall stud 2, face away from the kitchen"
    assert beyond_it.assumed == "17 1/2 in from the kitchen's wall in the back porch"
    assert beyond_it.changes_at == "more than 19 in"
    before_it = measured(side, "back-porch-left-stud-2", (float(ax), float(ay), 0.0))
    assert before_it.what == "back porch left wall stud 2, face towards the kitchen"
    assert before_it.assumed == "16 in from the kitchen's wall in the back porch"
    assert before_it.changes_at == "less than 14 1/2 in"


def test_heights_count_from_the_floor_of_the_place() -> None:
    """Its floor lies 4 in over the kitchen's, and its walls are 90 in high: two top plates of 1 1/2 in end there."""
    found = measured(WallSide.HOOD, "back-porch-left-plate-top-1", (0.0, 0.0, 1.0))
    assert found.what.endswith(", underside")
    assert found.assumed == "87 in above the floor of the back porch"
    assert found.changes_at == "less than 85 1/2 in"
