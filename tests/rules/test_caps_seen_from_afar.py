"""A cap near what is not on its own face: whole scenes, each distance worked out from the scene's own numbers."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest
import samples
from cases.homes import (
    beyond_hood_wall,
    blind,
    built,
    cap,
    elbow,
    found,
    one,
    only_roof,
    only_wall,
    rear_outlet,
    round_duct,
    straight,
    with_hood,
    with_wall,
)

from routeviz import pipeline
from routeviz.model.finding import State, Verdict
from routeviz.model.scene import Opening, OpeningKind, OutdoorKind, OutdoorThing, Scene, SpaceKind, WallSide

OUTER = 7.1875  # of the hood wall: board 1/2, studs 5 1/2, sheathing 7/16, siding 3/4
COLLAR_Z = 36.0 + 30.0 + 11.0  # cooktop, mounting, hood
BACK_IN = 8.5  # of the outlet, out from the wall


# --- on the roof ---


def test_a_cap_on_the_roof_is_measured_level_to_the_lot_line() -> None:
    home = with_wall(only_roof(samples.scene()), WallSide.HOOD, lot_line_in=6.0)
    line = one(built(home, straight(45.0), cap("outdoors")), "TRM-LOT-LINE")
    assert line.measured == pytest.approx(6.0 + OUTER + BACK_IN - 4.0)
    assert (line.limit, line.state, line.must) == (36.0, State.BROKEN, True)
    plan = pipeline.plan(home, alternatives=1)
    assert plan.best is not None
    kept = one(plan, "TRM-LOT-LINE")
    assert kept.state is State.FINE
    assert kept.measured == pytest.approx(6.0 + OUTER - plan.best.route.termination.point[1] - 4.0)
    assert "the lot line is too near" in plan.second


def test_a_cap_on_the_roof_is_measured_in_space_to_the_window_under_the_eave() -> None:
    """The window's near edge is 20 in to one side of the duct's middle, its head 92 in up."""
    roof = replace(samples.scene().roof, overhang_in=0.0)
    window = Opening("high-window", OpeningKind.WINDOW, True, 90.0, 60.0, 28.0, 32.0)
    home = with_wall(only_roof(samples.scene(roof=roof)), WallSide.HOOD, openings=(window,))
    plan = built(home, straight(40.0), cap("outdoors"))
    assert plan.best is not None
    end_z = plan.best.route.termination.point[2]
    assert end_z == COLLAR_Z + home.hood.outlet.collar_in + 40.0
    level = math.hypot(20.0, BACK_IN + OUTER) - 4.0
    near = one(plan, "TRM-OPENING")
    assert near.measured == pytest.approx(math.hypot(level, end_z - 92.0))
    assert (near.state, near.must) == (State.BROKEN, True)
    searched = pipeline.plan(replace(home, cap=replace(home.cap, roof_stub_in=4.0)), alternatives=1)
    assert searched.best is not None
    assert one(searched, "TRM-OPENING").state is State.FINE
    assert "high window is too near for a cap" in searched.second


def test_an_intake_on_the_wall_is_no_harm_to_a_cap_on_the_roof_3_ft_above_it() -> None:
    intake = OutdoorThing("fresh-air", OutdoorKind.MECHANICAL_INTAKE, "hood", 66.0, 70.0, 8.0, 8.0)
    home = only_roof(blind(samples.scene(outdoors=(intake,))))
    plan = built(home, straight(45.0), cap("outdoors"))
    assert plan.best is not None
    above = one(plan, "TRM-INTAKE")
    assert above.measured == pytest.approx(plan.best.route.termination.point[2] - 78.0)
    assert (above.limit, above.state) == (36.0, State.FINE)


# --- round a corner ---


@pytest.mark.parametrize(
    ("kind", "code"),
    [(OutdoorKind.MECHANICAL_INTAKE, "TRM-INTAKE"), (OutdoorKind.GRAVITY_INTAKE, "TRM-GRAVITY"),
     (OutdoorKind.OPERABLE_WINDOW, "TRM-OPENING"), (OutdoorKind.METER, "TRM-GAS")],
)  # fmt: skip
def test_what_is_listed_round_the_corner_is_measured_in_space(kind: OutdoorKind, code: str) -> None:
    """The duct's edge is 32 1/2 in from the right wall inside, the thing 6 in round the corner at the same height."""
    home = only_wall(rear_outlet(blind(samples.scene()), round_duct(8.0)))
    home = replace(
        with_hood(home, centre_in=107.5), outdoors=(OutdoorThing("thing", kind, "right", 6.0, 66.0, 10.0, 10.0),)
    )
    plan = built(home, straight(OUTER), cap())
    told = one(plan, code)
    assert told.title.endswith("round the corner")
    if kind is OutdoorKind.MECHANICAL_INTAKE:  # 10 ft, or 3 ft above it: the duct's lower edge is 8 in under its top
        assert (told.limit, told.state, told.must) == (120.0, State.BROKEN, True)
    assert told.measured == pytest.approx(math.hypot(144.0 + OUTER - 111.5, 6.0 + OUTER))


def test_the_search_keeps_10_ft_from_an_intake_round_the_corner() -> None:
    home = only_wall(rear_outlet(blind(samples.scene()), round_duct(8.0)))
    intake = OutdoorThing("fresh-air", OutdoorKind.MECHANICAL_INTAKE, "right", 6.0, 66.0, 10.0, 10.0)
    plan = pipeline.plan(replace(home, outdoors=(intake,)), alternatives=1)
    assert plan.verdict is Verdict.BLOCKED
    (why,) = plan.paths.why_not
    assert [b.id for b in why.blockers] == ["fresh-air"]
    farthest = 144.0 + OUTER - math.sqrt(120.0**2 - (6.0 + OUTER) ** 2) - 4.0
    assert why.shift_in is not None
    assert farthest - 0.5 < 70.0 + why.shift_in <= farthest  # studs and steps of the tape take the rest


# --- from the wall of a space beyond ---


def beside_the_window() -> Scene:
    """A porch behind the hood wall from 40 in on, its left wall outdoors; a kitchen window beside it, 8 to 32 in."""
    home = beyond_hood_wall(samples.scene(), SpaceKind.PORCH, deep_in=72.0, open_side=WallSide.LEFT)
    home = replace(home, spaces=(replace(home.spaces[0], left_in=40.0, width_in=96.0),))
    window = Opening("sink-window", OpeningKind.WINDOW, True, 8.0, 56.0, 24.0, 30.0)
    home = with_wall(home, WallSide.HOOD, openings=(window,))
    return only_wall(rear_outlet(home, round_duct(8.0), max_elbows=1))


def test_a_cap_on_the_side_of_a_porch_is_measured_to_the_kitchens_window_beside_it() -> None:
    home = beside_the_window()
    outer = home.wall(WallSide.HOOD).thickness_in
    side = 40.0 - next(w for w in home.spaces[0].walls if w.side is WallSide.LEFT).thickness_in
    plan = built(home, straight(outer + 3.5), elbow("left"), straight(40.0), cap("outdoors"))
    assert plan.best is not None
    _, y, z = plan.best.route.termination.point
    assert 56.0 < z < 86.0
    near = one(plan, "TRM-OPENING")
    assert near.measured == pytest.approx(math.hypot(side - 32.0, y - 4.0 - outer))
    assert (near.state, near.must) == (State.BROKEN, True)
    searched = pipeline.plan(home, alternatives=1)
    assert searched.best is not None
    assert searched.best.route.termination.face == "face-porch-left"
    assert one(searched, "TRM-OPENING").state in (State.FINE, State.CLOSE)
    assert found(searched, "TRM-FLAP")
