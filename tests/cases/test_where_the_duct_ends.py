"""Is this a place for the exhaust to come out: enclosed places, caps beside windows and under eaves, rated walls.

Whole scenes: what stands in the scene must reach the finding, through frame, duct and rules. The distances alone are
tested to the edge in ``tests/rules``.
"""

from __future__ import annotations

from dataclasses import replace

import pytest
import samples
from cases.homes import (
    MM,
    beyond_hood_wall,
    blind,
    built,
    cap,
    elbow,
    flex,
    found,
    must_broken,
    one,
    only_wall,
    open_end,
    outside,
    rear_outlet,
    round_duct,
    straight,
    with_wall,
)

from routeviz import pipeline
from routeviz.model.finding import State, Verdict
from routeviz.model.plan import Plan
from routeviz.model.scene import CooktopKind, Opening, OpeningKind, OutdoorKind, RuleChoice, Scene, SpaceKind, WallSide

WALL_IN = 7.1875  # board 1/2, studs 5 1/2, sheathing 7/16, siding 3/4
OUTLET_Z = 72.0  # cooktop 36, mounting 30, outlet 6 above the hood's underside
SIX = round_duct(6.0)


def straight_back(profile: str = "irc-2021", *, windows: tuple[Opening, ...] = (), **changes: object) -> Plan:
    """Judge a 6 in duct straight back through the hood wall, its middle 70 in from the left and 72 in up."""
    home = replace(with_wall(blind(samples.scene()), WallSide.HOOD, openings=windows), **changes)
    home = replace(rear_outlet(home, SIX), rules=RuleChoice(profile))
    return built(home, straight(WALL_IN), cap())


def window(left_in: float, sill_in: float, *, opens: bool = True, height_in: float = 20.0) -> Opening:
    return Opening("window", OpeningKind.WINDOW, opens, left_in, sill_in, 24.0, height_in)


# --- garages, porches and other places that are not outdoors ---


def garage_behind(*, deep_in: float = 240.0, open_side: WallSide = WallSide.FRONT, **laid: object) -> Scene:
    home = beyond_hood_wall(samples.scene(), SpaceKind.GARAGE, deep_in=deep_in, open_side=open_side)
    return only_wall(rear_outlet(home, SIX, **laid))


@pytest.mark.parametrize("kind", list(CooktopKind))
@pytest.mark.parametrize("place", [SpaceKind.GARAGE, SpaceKind.PORCH, SpaceKind.ATTIC, SpaceKind.SHAFT])
def test_blowing_into_an_enclosed_place_is_broken_whatever_cooks(place: SpaceKind, kind: CooktopKind) -> None:
    home = rear_outlet(beyond_hood_wall(samples.scene(), place), SIX)
    home = replace(home, cooktop=replace(home.cooktop, kind=kind))
    plan = built(home, straight(20.0), open_end())
    ends = one(plan, "TRM-OUTDOORS")
    assert (ends.state, ends.must) == (State.BROKEN, True)
    assert place.value in ends.detail
    assert "to the open air" in ends.remedy
    assert plan.verdict is Verdict.BLOCKED


def test_20_ft_through_the_garage_to_the_open_air_is_allowed_and_its_loss_told() -> None:
    home = garage_behind()
    through = built(home, straight(10.0), elbow("right"), straight(10.0), elbow("back"), straight(229.1875), cap())
    assert not must_broken(through)
    assert one(through, "TRM-OUTDOORS").state is State.FINE
    steel = one(through, "FIR-GARAGE")
    assert steel.limit == 19.0  # thousandths of an inch: 26 gage, IRC R302.5.2
    assert "no opening there" in steel.detail
    short = straight_back()
    assert through.best is not None
    assert short.best is not None
    long_air, short_air = through.best.air, short.best.air
    assert through.best.route.elbows == 2.0
    assert long_air.full.flow_cfm < short_air.full.flow_cfm
    assert {"elbow", "straight"} <= {word for loss in long_air.losses for word in loss.label.split()}


def test_into_a_cold_garage_right_and_out_of_its_side_wall() -> None:
    """One elbow beside the hood's own; wrap it, let it fall outwards, a damper at the cap, joints within reach."""
    home = garage_behind(deep_in=120.0, open_side=WallSide.RIGHT, max_elbows=1)
    home = replace(home, site=replace(home.site, cold_climate=True, air_temp_f=0.0))
    plan = pipeline.plan(home, alternatives=1)
    assert plan.best is not None
    assert plan.best.route.elbows == 1.0
    assert plan.best.route.termination.face == "face-garage-right"
    assert 72.0 <= plan.best.route.length_in <= 108.0  # 6 to 8 ft across, and the way through the two walls
    wrap = one(plan, "DCT-INSULATION")
    assert "R-8" in wrap.remedy
    assert "joints within reach" in wrap.remedy
    assert "fall a little towards the cap" in one(plan, "DCT-SLOPE").remedy
    assert one(plan, "DCT-LOW-POINT").measured == 0.0
    assert one(plan, "DCT-DAMPER").state is State.FINE


def test_a_porch_is_crossed_to_its_far_edge() -> None:
    home = only_wall(rear_outlet(beyond_hood_wall(samples.scene(), SpaceKind.PORCH, deep_in=72.0), SIX, max_elbows=1))
    plan = pipeline.plan(home, alternatives=1)
    assert plan.best is not None
    assert plan.best.route.termination.face == "face-porch-front"
    assert one(plan, "TRM-OUTDOORS").state is State.FINE


def test_where_no_way_leads_outdoors_the_hood_that_cleans_and_returns_is_what_is_left() -> None:
    home = garage_behind(deep_in=60.0, max_elbows=1)
    home = replace(home, spaces=(replace(home.spaces[0], duct_allowed=False),))
    plan = pipeline.plan(home, alternatives=1)
    assert plan.best is None
    assert plan.verdict is Verdict.BLOCKED
    assert "returns the air" in plan.answer + plan.second
    assert "outdoors is better" in plan.answer + plan.second


# --- caps beside openings ---


def test_a_cap_under_a_vented_soffit_beside_a_door() -> None:
    vent = outside("eave-vent", OutdoorKind.SOFFIT_VENT, 0.0, 87.0, 144.0, 1.0)
    door = outside("side-door", OutdoorKind.DOOR, 95.0, 0.0, 36.0, 80.0)
    plan = straight_back(outdoors=(vent, door))
    soffit = one(plan, "TRM-SOFFIT-VENT")
    assert (soffit.measured, soffit.limit, soffit.state) == (87.0 - OUTLET_Z - 3.0, 36.0, State.BROKEN)
    assert "solid soffit panels" in soffit.remedy
    assert "Move the cap" in soffit.remedy
    beside = one(plan, "TRM-OPENING")
    assert (beside.measured, beside.limit, beside.must) == (95.0 - 70.0 - 3.0, 36.0, True)
    assert beside.state is State.BROKEN


def test_an_opening_sash_counts_and_a_fixed_one_does_not() -> None:
    near = window(97.0, 60.0)  # 24 in from the opening's edge
    opening = one(straight_back("washington", windows=(near,)), "TRM-OPENING")
    assert (opening.state, opening.measured, opening.limit) == (State.BROKEN, 24.0, 36.0)
    fixed = straight_back("washington", windows=(replace(near, operable=False),))
    assert not found(fixed, "TRM-OPENING")
    assert not found(fixed, "TRM-FIXED")


@pytest.mark.parametrize(
    ("edition", "limit", "state"), [("irc-2021", 36.0, State.BROKEN), ("irc-2024", 12.0, State.FINE)]
)
def test_the_edition_decides_how_near_a_cap_may_sit_above_a_window(edition: str, limit: float, state: State) -> None:
    below = window(58.0, 30.0, height_in=25.0)  # its head 55 in up, 14 in below the opening
    told = one(straight_back(edition, windows=(below,)), "TRM-OPENING")
    assert (told.measured, told.limit, told.state) == (14.0, limit, state)


def test_no_code_speaks_of_an_outdoor_unit_above_the_cap() -> None:
    unit = outside("heat-pump", OutdoorKind.UNIT, 50.0, 80.0, 40.0, 30.0)
    told = one(straight_back(outdoors=(unit,)), "TRM-UNIT")
    assert (told.must, told.source) == (False, "common-practice")


def test_beside_ones_own_window_and_under_three_neighbours() -> None:
    own = window(76.0, 50.0, height_in=36.0)
    above = tuple(
        outside(f"neighbour-{n}", OutdoorKind.OPERABLE_WINDOW, 76.0, 50.0 + 108.0 * n, 24.0, 36.0) for n in (1, 2, 3)
    )
    plan = straight_back(windows=(own,), outdoors=above)
    near = [f for f in found(plan, "TRM-OPENING") if f.state is State.BROKEN]
    assert [f.measured for f in near] == [3.0]
    smell = found(plan, "TRM-ABOVE")
    assert len(smell) == 3
    assert {(f.state, f.must) for f in smell} == {(State.CLOSE, False)}


@pytest.mark.parametrize(
    ("profile", "state", "limit"), [("irc-2021", State.BROKEN, 36.0), ("unknown", State.NOT_CHECKED, None)]
)
def test_half_a_yard_to_the_lot_line(profile: str, state: State, limit: float | None) -> None:
    """1 1/2 ft to the line: broken where 3 ft is the rule, and asked, not guessed, where no rule is known."""
    home = with_wall(blind(samples.scene()), WallSide.HOOD, lot_line_in=18.0)
    home = replace(rear_outlet(home, SIX), rules=RuleChoice(profile))
    told = one(built(home, straight(WALL_IN), cap()), "TRM-LOT-LINE")
    assert (told.measured, told.state, told.limit) == (18.0, state, limit)
    if profile == "unknown":
        assert told.remedy.startswith("Ask the building department")


def test_a_hose_between_two_windows_under_the_eave() -> None:
    """A weatherboard wall; windows that open on both sides 760 mm apart, eave vents above, a foil hose behind."""
    left, right = window(70.0 - 380 * MM - 24.0, 50.0), window(70.0 + 380 * MM, 50.0)
    vents = outside("eave-vents", OutdoorKind.SOFFIT_VENT, 0.0, 92.0, 144.0, 1.0)
    home = with_wall(
        blind(samples.scene()), WallSide.HOOD, openings=(replace(left, id="left"), replace(right, id="right"))
    )
    home = replace(rear_outlet(home, round_duct(150 * MM)), metric=True, outdoors=(vents,))
    plan = built(home, flex(WALL_IN), cap())
    assert one(plan, "DCT-SMOOTH").state is State.BROKEN
    sides = found(plan, "TRM-OPENING")
    # 380 mm to the middle less half of 150 mm; the window's head at 70 in is 2 in below the duct's middle
    assert [f.state for f in sides] == [State.BROKEN, State.BROKEN]
    assert all(f.measured is not None and f.measured < 36.0 for f in sides)
    assert one(plan, "TRM-SOFFIT-VENT").state is State.BROKEN
    unsure = built(replace(home, rules=RuleChoice("unknown")), flex(WALL_IN), cap())
    assert {f.state for f in found(unsure, "TRM-OPENING")} == {State.NOT_CHECKED}


def test_a_gutter_in_front_of_the_flap() -> None:
    """At the eave's corner the gutter hangs 1 in over the opening: the flap cannot swing."""
    gutter = outside("gutter", OutdoorKind.OTHER, 0.0, OUTLET_Z + 4.0, 144.0, 5.0)
    told = one(straight_back(outdoors=(gutter,)), "TRM-FLAP", "gutter")
    assert (told.measured, told.state) == (1.0, State.BROKEN)


# --- rated walls ---


def test_a_duct_through_a_rated_wall_is_flagged_with_the_shaft_that_people_build() -> None:
    home = rear_outlet(with_wall(blind(samples.scene()), WallSide.HOOD, fire_rated=True), SIX)
    told = one(built(home, straight(WALL_IN), cap()), "FIR-WALL")
    assert (told.state, told.must) == (State.BROKEN, True)
    assert "furr out a shaft" in told.remedy
    assert "7 1/8 in deep" in told.remedy  # 6 in duct, 1/4 in on both sides, 5/8 in board
