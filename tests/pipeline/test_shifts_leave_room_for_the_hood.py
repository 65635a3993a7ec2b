"""A shift is offered where the duct is free and the hood itself has room; how far a thing reaches in is told without its gap."""

from __future__ import annotations

from dataclasses import replace

import pytest
import samples

from routeviz import pipeline
from routeviz.model.finding import Verdict
from routeviz.model.plan import Plan
from routeviz.model.scene import Obstacle, ObstacleKind, Scene


def thing(kind: ObstacleKind, left: float, width: float, bottom: float, high: float, **more: float) -> Obstacle:
    box = {"out_in": 0.0, "depth_in": 12.0, **more}
    return Obstacle(id="thing", kind=kind, left_in=left, width_in=width, bottom_in=bottom, height_in=high, **box)  # type: ignore[arg-type]


def blocked(*things: Obstacle) -> Scene:
    """Joist 5 (77 1/4 to 78 3/4 in) dead over an 8 in duct at 78 in; no way but straight up."""
    home = samples.scene()
    return replace(
        home, hood=replace(home.hood, centre_in=78.0), cooktop=replace(home.cooktop, centre_in=78.0),
        duct=replace(home.duct, max_elbows=0, boxing_allowed=False), cap=replace(home.cap, wall=False),
        obstacles=things,
    )  # fmt: skip


def shifts(plan: Plan) -> tuple[float | None, float | None]:
    (why,) = (w for w in plan.paths.why_not if w.wanted == "straight up")
    return why.shift_in, why.shift_other_in


def test_either_side_while_the_wall_is_free() -> None:
    """4 + 3/4 + 1/4 in."""
    assert shifts(pipeline.plan(blocked(), alternatives=1)) == (-5.0, 5.0)


def test_no_shift_into_a_cabinet_beside_the_hood() -> None:
    """The hood, 36 in wide, reaches from 60 to 96 in; a cabinet from 98 in on leaves it 2 in to the right."""
    plan = pipeline.plan(blocked(thing(ObstacleKind.CABINET, 98.0, 20.0, 54.0, 30.0)), alternatives=1)
    assert shifts(plan) == (-5.0, None)
    assert "5 in left and it goes straight up" in plan.answer
    assert "right" not in plan.answer + plan.second


def test_a_hood_that_cannot_hang_is_told_of_a_place_where_it_can() -> None:
    """A cabinet from 50 to 68 in is in the hood's place: from 86 in on the hood has room, with 7 1/4 in beside joist 5."""
    plan = pipeline.plan(blocked(thing(ObstacleKind.CABINET, 50.0, 18.0, 54.0, 30.0)), alternatives=1)
    assert plan.verdict is Verdict.NO_PLACE
    assert "reaches 8 in into the hood's place" in plan.answer
    assert shifts(plan)[0] == 8.0
    # 8 in aside the 36 in canopy, 20 in deep, covers 25 x 18 of the 30 x 21 in: 0.71, less than 0.75: the cooktop goes along
    assert plan.second == "Shift hood and cooktop 8 in right and it goes straight up: there the hood has room too."
    moved = replace(plan.scene.hood, centre_in=86.0)
    again = pipeline.plan(replace(plan.scene, hood=moved), alternatives=1)
    assert again.verdict is not Verdict.NO_PLACE
    assert again.best is not None


@pytest.mark.parametrize("own", [0.0, 1.0, 2.5])
def test_how_far_a_thing_reaches_in_counts_no_gap(own: float) -> None:
    """A riser in the attic from 80 in on reaches 2 in into a duct of 8 in at 78 in, whatever it must keep away."""
    riser = replace(thing(ObstacleKind.PIPE, 80.0, 12.0, 100.0, 10.0, depth_in=40.0), clearance_in=own)
    plan = pipeline.plan(blocked(riser), alternatives=1)
    (why,) = (w for w in plan.paths.why_not if w.wanted == "straight up")
    assert {b.label: b.overlap_in for b in why.blockers}["pipe thing"] == pytest.approx(2.0, abs=1e-3)
