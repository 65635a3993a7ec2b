"""Offsets, elbows, sections and parts: ducts that people laid or asked about, from the scene to the parts list.

Offsets of two equal elbows of angle t and radius R shift by 2 R (1 - cos t) + L sin t and rise by 2 R sin t + L cos t,
with L the straight between them; everything else is a sum of the given sizes.
"""

from __future__ import annotations

import math
from dataclasses import replace

import pytest
import samples
from cases.homes import (
    BOARD,
    MM,
    STACK,
    beyond_hood_wall,
    blind,
    bought,
    built,
    cap,
    elbow,
    flat_duct,
    flex,
    found,
    labelled,
    must_broken,
    offset,
    one,
    only_roof,
    only_wall,
    rear_outlet,
    reducer,
    room_above,
    round_duct,
    steps,
    straight,
    thing,
    with_duct,
    with_hood,
    with_wall,
)

from routeviz import pipeline, studies
from routeviz.model.finding import MemberVerdict, State
from routeviz.model.route import PartKind
from routeviz.model.scene import (
    Layer,
    MakerLimits,
    Obstacle,
    ObstacleKind,
    Outlet,
    RuleChoice,
    RunDirection,
    Scene,
    SectionSize,
    Service,
    ServiceKind,
    SpaceKind,
    WallFrame,
    WallSide,
)
from routeviz.model.study import FixKind

RISE = 78.5  # top of the collar over the floor
SIX, SEVEN, EIGHT = round_duct(6.0), round_duct(7.0), round_duct(8.0)


def between(shift_in: float, radius_in: float, angle_deg: float = 45.0) -> float:
    """Give the straight between the two elbows of an offset."""
    t = math.radians(angle_deg)
    return (shift_in - 2 * radius_in * (1 - math.cos(t))) / math.sin(t)


def inner_walls(home: Scene, *sides: WallSide) -> Scene:
    """Let these walls stand towards other rooms."""
    for side in sides:
        home = with_wall(home, side, beyond="room", outside=BOARD, openings=(), lot_line_in=None)
    return home


# --- a riser of the cooling that wants the same place in the attic ---


def riser_in_the_attic() -> Scene:
    """A 10 in riser stands right over the outlet, 21 in above the joists, under a 6/12 roof with its ridge at 72 in."""
    riser = thing("cooling-riser", ObstacleKind.TRUNK, 65.0, 3.5, 125.0, 10.0, 10.0, 40.0, combustible=False)
    home = inner_walls(samples.scene(obstacles=(riser,)), WallSide.HOOD, WallSide.RIGHT)
    assert home.roof is not None
    assert home.roof.framing is not None
    assert home.ceiling.joists is not None
    rafters = replace(home.roof.framing, spacing_in=24.0, first_in=18.0)
    roof = replace(home.roof, ridge=RunDirection.OUT, ridge_at_in=72.0, pitch=0.5, framing=rafters)
    ceiling = replace(home.ceiling, joists=replace(home.ceiling.joists, spacing_in=24.0))
    return replace(home, roof=roof, ceiling=ceiling, duct=replace(home.duct, max_elbows=1, boxing_allowed=False))


SIDEWAYS = 8.0 / 2 + 10.0 / 2 + 0.25  # half the duct, half the riser, the gap


def test_two_45s_move_the_duct_past_the_riser_and_their_straight_is_cut_to_length() -> None:
    plan = built(riser_in_the_attic(), straight(26.0), offset("right", SIDEWAYS), straight(40.0), cap())
    assert plan.best is not None
    assert not must_broken(plan)
    assert {n.solid: n.gap_in for n in plan.best.route.near}["cooling-riser"] == pytest.approx(0.25)
    assert plan.best.route.elbows == 1.0
    piece = next(c for c in plan.best.takeoff.cuts if c.part == "straight-2")
    assert piece.visible_in == pytest.approx(between(SIDEWAYS, 8.0))  # 6.454 in
    assert piece.cut_in == pytest.approx(piece.visible_in + 1.5)  # and the overlap


def test_half_an_inch_less_and_both_want_the_same_place() -> None:
    plan = built(riser_in_the_attic(), straight(26.0), offset("right", SIDEWAYS - 0.5), straight(40.0), cap())
    assert any("cooling" in f.title and f.state is State.BROKEN for f in plan.all_findings)


# --- offsets inside a wall cabinet ---


def under_cabinet(inside_in: float) -> Scene:
    """A hood without a cover under a wall cabinet; the joist stands dead over the outlet, the bays beside it are free."""
    ceiling = RISE + inside_in + 0.75  # the cabinet's top panel lies under the ceiling
    home = blind(samples.scene())
    assert home.ceiling.joists is not None
    assert home.roof is not None
    assert home.roof.framing is not None
    cabinet = thing("hood-cabinet", ObstacleKind.CABINET, 50.0, 0.0, 77.0, 40.0, 14.0, ceiling - 77.0, hides_duct=True)
    home = replace(
        home, obstacles=(cabinet,), kitchen=replace(home.kitchen, ceiling_in=ceiling),
        ceiling=replace(home.ceiling, joists=replace(home.ceiling.joists, first_in=6.0)),
        roof=replace(home.roof, framing=replace(home.roof.framing, first_in=6.0)),
        duct=replace(home.duct, max_elbows=1, boxing_allowed=False),
    )  # fmt: skip
    return only_roof(with_hood(home, cover=None))


def test_a_hose_inside_the_cabinet_is_not_the_answer() -> None:
    plan = built(under_cabinet(20.0), flex(18.0), straight(40.0), cap())
    assert one(plan, "DCT-SMOOTH").state is State.BROKEN


def test_the_old_hole_is_at_the_left_and_smaller_than_the_new_outlet() -> None:
    """Outlet 120 mm in the middle, the hole made for 100 mm at the left: 31 % less area, and an offset in the cabinet."""
    outlet, old = round_duct(120 * MM), round_duct(100 * MM)
    home = with_duct(under_cabinet(26.0), outlet)
    left = 250 * MM
    hole = Obstacle("old-hole", ObstacleKind.HOLE, 70.0 - left - 50 * MM, 8.5 - 50 * MM, 0.0, 100 * MM, 100 * MM, 0.5,
                    diameter_in=100 * MM)  # fmt: skip
    top = RISE + 26.0 + 0.75
    home = replace(home, metric=True, obstacles=(*home.obstacles, replace(hole, bottom_in=top)))
    plan = built(home, reducer(old), straight(1.0), offset("left", left), straight(30.0), cap())
    lost = one(plan, "DCT-OUTLET")
    assert lost.margin == pytest.approx(1 / 1.44 - 1)  # -0.306
    assert (lost.state, lost.must) == (State.BROKEN, False)
    assert "31 of 100" in lost.detail
    assert plan.best is not None
    elbows = [p for p in plan.best.route.parts if p.kind is PartKind.ELBOW]
    assert len(elbows) == 2
    assert all(77.0 < p.start[2] < top and 77.0 < p.end[2] < top for p in elbows)  # inside the cabinet
    assert one(plan, "FIT-BOXING").state is State.FINE
    reused = one(plan, "EXI-HOLE")
    assert "0 mm off" in reused.detail  # the duct comes up in the old hole's middle


# --- up and across ---


def side_wall(height_in: float, **laid: object) -> Scene:
    """A room above, joists along the hood wall, the right wall outdoors 74 in from the outlet."""
    home = inner_walls(blind(samples.scene()), WallSide.HOOD)
    assert home.ceiling.joists is not None
    joists = replace(home.ceiling.joists, size="2x12", depth_in=11.25, direction=RunDirection.ALONG, first_in=16.0)
    home = replace(
        home, kitchen=replace(home.kitchen, ceiling_in=height_in), ceiling=replace(home.ceiling, joists=joists)
    )
    assert home.hood.cover is not None
    home = with_hood(room_above(home), cover=replace(home.hood.cover, max_in=60.0))
    return with_duct(home, SIX, **{"max_elbows": 1, "boxing_allowed": False, **laid})


def test_4_ft_up_and_6_ft_across_is_one_elbow_in_metal() -> None:
    home = side_wall(119.0)
    plan = pipeline.plan(home, alternatives=1)
    assert plan.best is not None
    route = plan.best.route
    assert route.elbows == 1.0
    assert route.termination.face == "face-right"
    corner = next(p.corner for p in route.parts if p.kind is PartKind.ELBOW)
    assert corner is not None
    assert corner[2] - RISE == pytest.approx(48.0, abs=2.0)
    assert abs(route.termination.point[0] - corner[0]) == pytest.approx(80.0, abs=8.0)  # 6 ft and the wall
    assert one(plan, "DCT-MATERIAL").state is State.FINE
    assert not must_broken(plan)


def test_plastic_is_refused() -> None:
    plan = built(side_wall(119.0), straight(41.0), elbow("right"), straight(76.0), cap(), material="PVC")
    told = one(plan, "DCT-MATERIAL")
    assert (told.state, told.must) == (State.BROKEN, True)


def test_sideways_beats_a_roof_that_needs_a_chase_in_the_room_above() -> None:
    """8 ft sideways out of the kitchen wall: one elbow; straight up only where a chase leads through the bedroom."""
    home = side_wall(96.0)
    assert home.roof is not None
    assert home.roof.framing is not None
    rafters = replace(home.roof, framing=replace(home.roof.framing, first_in=8.0))
    home = replace(with_hood(home, centre_in=48.0), cooktop=replace(home.cooktop, centre_in=48.0), roof=rafters)
    rows = {row.label: row for row in studies.compare(home)}
    sideways, roof = rows["wall only"], rows["roof only"]
    assert sideways.elbows == 1.0
    assert sideways.length_in is not None
    assert sideways.length_in > 96.0
    assert sideways.broken == 0
    assert roof.elbows is None
    chase = thing("bedroom-chase", ObstacleKind.CHASE, 40.0, 0.0, 96.0, 16.0, 16.0, 140.0)
    opened = pipeline.plan(only_roof(replace(home, obstacles=(chase,))), alternatives=1)
    assert opened.best is not None
    assert opened.best.route.elbows == 0.0


# --- up, across, down and out ---


def bulkhead(*, maker_ft: float | None = None) -> Scene:
    """A soffit under the ceiling and a shallow cabinet to go down behind, at the right."""
    soffit = thing("bulkhead", ObstacleKind.SOFFIT, 54.0, 0.0, 82.0, 70.0, 20.0, 14.0, hides_duct=True)
    cabinet = thing("shallow-cabinet", ObstacleKind.CABINET, 100.0, 0.0, 54.0, 24.0, 14.0, 28.0, hides_duct=True)
    home = replace(
        blind(samples.scene(obstacles=(soffit, cabinet))), kitchen=replace(samples.scene().kitchen, ceiling_in=96.0)
    )
    maker = MakerLimits(max_equivalent_ft=maker_ft, document="the hood's leaflet")
    return replace(with_hood(with_duct(home, SIX), cover=None), rules=RuleChoice("irc-2021", maker))


DOWN_AND_OUT = (
    straight(4.5),
    elbow("right"),
    straight(30.0),
    elbow("down"),
    straight(10.0),
    elbow("back"),
    straight(10.0),
)


@pytest.mark.parametrize(("maker_ft", "state"), [(75.0, State.FINE), (40.0, State.BROKEN)])
def test_down_and_out_hangs_on_the_makers_length(maker_ft: float, state: State) -> None:
    """Three elbows of 15 ft and about 6 ft of duct: 51 ft by the code's count."""
    plan = built(bulkhead(maker_ft=maker_ft), *DOWN_AND_OUT, cap())
    told = one(plan, "AIR-LENGTH", "by the maker")
    assert told.state is state
    assert told.limit == maker_ft
    assert told.source_text == "the hood's leaflet"
    assert one(plan, "DCT-LOW-POINT").state is State.FINE  # it falls all the way to the cap


def test_a_sag_where_grease_and_water_collect_is_flagged() -> None:
    plan = built(bulkhead(), *DOWN_AND_OUT[:5], elbow("right"), straight(4.0), elbow("up"), straight(60.0), cap())
    told = one(plan, "DCT-LOW-POINT")
    assert (told.state, told.measured) == (State.BROKEN, 1.0)


# --- what is bought and cut ---


def test_a_flat_stretch_in_a_low_bay_takes_two_transitions() -> None:
    """3 x 10 in for the stretch along a 2x8 bay, 6 in round before and after; its friction is that of 5.7 in round."""
    home = with_duct(room_above(blind(samples.scene())), SIX)
    flat = flat_duct(10.0, 3.0)
    plan = built(
        home, straight(15.75), elbow("front"), reducer(flat), straight(60.0), reducer(SIX), straight(50.0), cap()
    )
    sizes = bought(plan, "transition")
    assert len(sizes) == 2
    assert all("3 x 10 in" in size and "6 in round" in size for size in sizes)
    assert plan.best is not None
    through = plan.best.air.full.flow_cfm
    whole = built(home, straight(15.75), elbow("front"), straight(122.0), cap())
    assert whole.best is not None
    assert 0.9 < through / whole.best.air.full.flow_cfm < 1.0
    assert {f.state for f in found(plan, "DCT-SHRINK")} == {State.FINE}  # back to 6 in is no step down


@pytest.mark.parametrize(("height_in", "pieces"), [(46.0, 2), (60.0, 3), (67.0, 3)])
def test_an_old_chase_takes_plain_lengths_and_no_elbow(height_in: float, pieces: int) -> None:
    """Lengths of 24 in straight up: as many as the height asks for; the roof's hole is longer down the slope."""
    home = with_duct(samples.scene(), STACK, stock_in=24.0, overlap_in=1.0)
    plan = built(home, straight(height_in), cap())
    assert plan.best is not None
    assert plan.best.route.elbows == 0.0
    assert len(plan.best.takeoff.cuts) == pieces == math.ceil(height_in / 24.0)
    deck = next(h for h in plan.best.takeoff.holes if h.layer == "roof deck")
    # the 3/12 slope runs square to the hood wall: only that side grows, by sqrt(1 + 1/16); the depth of the deck adds
    assert deck.duct_in[0] == pytest.approx(10.0)
    assert deck.duct_in[1] >= 3.25 * math.hypot(1.0, 0.25) - 1e-9
    assert abs(deck.centre[0] - 70.0) < 1e-9
    assert abs(deck.centre[1] + 8.5) < 1e-9  # plumb over the outlet


def test_three_inches_into_the_roof_cap_are_cut_too() -> None:
    """10 in duct that ends on the roof's surface: what the cap takes is added to the last piece."""
    home = with_duct(samples.scene(), round_duct(10.0))
    shallow, deep = (replace(home, cap=replace(home.cap, roof_stub_in=1.0, overlap_in=o)) for o in (1.5, 3.0))
    usual, longer = (built(h, straight(36.0), cap()).best for h in (shallow, deep))
    assert usual is not None
    assert longer is not None
    assert longer.takeoff.cuts[-1].cut_in - usual.takeoff.cuts[-1].cut_in == pytest.approx(1.5)
    assert longer.takeoff.cuts[-1].visible_in == usual.takeoff.cuts[-1].visible_in


def test_no_separation_from_wood_is_asked_for_and_screws_are_a_matter_of_choice() -> None:
    home = with_duct(samples.scene(), round_duct(10.0))
    plan = built(home, straight(45.0), cap(), screws=3)
    wood = found(plan, "CLR-DUCT")
    assert all(not f.must for f in wood)
    assert one(plan, "DCT-SCREWS").state is State.FINE


def test_7_to_6_in_right_on_the_hood_loses_a_quarter_of_the_area() -> None:
    """Area goes with the square: 36 of 49 parts are left."""
    home = with_duct(blind(samples.scene()), SEVEN)
    plan = built(home, reducer(SIX), straight(30.0), cap())
    lost = one(plan, "DCT-OUTLET")
    assert lost.margin == pytest.approx(36 / 49 - 1)
    assert (lost.state, lost.must) == (State.BROKEN, False)
    assert "27 of 100" in lost.detail


def test_a_hose_closed_up_in_a_soffit_is_opened_inspected_and_replaced() -> None:
    plan = built(with_duct(samples.scene(), SIX), flex(24.0), straight(40.0), cap())
    told = one(plan, "DCT-SMOOTH")
    assert (told.state, told.must) == (State.BROKEN, True)
    assert "before closing" in told.remedy
    order = steps(plan)
    assert order.index("inspect") < order.index("patch")


@pytest.mark.parametrize(("cladding", "channel"), [("vinyl siding", True), ("brick veneer", False)])
def test_what_a_wall_cap_needs_hangs_on_the_cladding(cladding: str, channel: bool) -> None:
    """Vinyl: cut the siding back to a flat block with channel round it; never screw the cap on top of the siding."""
    home = with_wall(
        blind(samples.scene()), WallSide.HOOD, outside=(Layer("OSB sheathing", 0.4375), Layer(cladding, 0.75))
    )
    plan = built(rear_outlet(home, SIX), straight(7.1875), cap())
    assert bool(bought(plan, "channel")) is channel
    assert bool(bought(plan, "mounting block")) is channel
    assert plan.best is not None
    sizes = {h.layer: max(h.size_in) for h in plan.best.takeoff.holes}
    sheathing, outer = sizes["OSB sheathing"], next(v for k, v in sizes.items() if cladding in k)
    assert (outer > sheathing + 1.0) is channel


# --- what is there already ---


def old_wall_duct(cfm: float) -> Scene:
    """A 6 in duct and hole of an earlier 400 cfm hood in the hood wall."""
    hole = Obstacle("old-hole", ObstacleKind.HOLE, 67.0, -7.1875, 69.0, 6.0, 7.1875, 6.0, diameter_in=6.0)
    return labelled(rear_outlet(replace(blind(samples.scene()), obstacles=(hole,)), EIGHT), cfm)


@pytest.mark.parametrize(
    ("cfm", "section", "fpm", "state"),
    # Q / A: 4074, 2292 and 2037 ft/min
    [(800.0, SIX, 4070.0, State.BROKEN), (800.0, EIGHT, 2290.0, State.FINE), (400.0, SIX, 2040.0, State.FINE)],
)
def test_800_cfm_does_not_go_through_6_in(cfm: float, section: SectionSize, fpm: float, state: State) -> None:
    home = rear_outlet(old_wall_duct(cfm), section)
    plan = built(home, straight(7.1875), cap())
    speed = one(plan, "AIR-SPEED")
    assert speed.measured == pytest.approx(fpm, rel=0.002)
    assert speed.state is state


def test_the_larger_hood_needs_a_larger_hole() -> None:
    plan = built(old_wall_duct(800.0), straight(7.1875), cap())
    told = one(plan, "EXI-HOLE")
    assert (told.measured, told.state) == (6.0, State.BROKEN)
    assert "Enlarge it to 8 1/2 in" in told.remedy


def test_6_in_higher_means_a_new_hole_6_in_higher() -> None:
    home = rear_outlet(old_wall_duct(400.0), SIX)
    same = built(home, straight(7.1875), cap())
    raised = built(with_hood(home, mount_in=36.0), straight(7.1875), cap())
    assert one(same, "EXI-HOLE").state is not State.FINE or "0 in off" in one(same, "EXI-HOLE").detail
    told = one(raised, "EXI-HOLE")
    assert "6 in off" in told.detail
    assert "make good the rest" in told.remedy
    assert same.best is not None
    assert raised.best is not None
    low, high = (p.best.takeoff.holes[0].from_other_in for p in (same, raised) if p.best is not None)
    assert high - low == pytest.approx(6.0)


def test_an_old_duct_is_followed_before_anything_is_joined_to_it() -> None:
    """Icy air falls out of the hood; the duct ends over the garage ceiling, nobody knows where; no damper shuts it."""
    old = thing("old-duct", ObstacleKind.DUCT, 66.0, 4.5, 96.0, 8.0, 8.0, 12.0, diameter_in=8.0, cut_allowed=True)
    home = replace(samples.scene(obstacles=(old,)), cap=replace(samples.scene().cap, damper=False))
    plan = built(home, straight(45.0), cap())
    told = one(plan, "EXI-DUCT", "its end")
    assert told.state is State.NOT_CHECKED
    assert "Follow it" in told.remedy
    damper = one(plan, "DCT-DAMPER")
    assert (damper.state, damper.must) == (State.BROKEN, True)
    known = replace(home, obstacles=(replace(old, ends_at="outdoors"),))
    assert not found(built(known, straight(45.0), cap()), "EXI-DUCT", "its end")


# --- three ways round a stud behind a built-in ---


def stud_behind(off_in: float = 0.0) -> Scene:
    studs = samples.studs("2x4", depth=3.5, first=6.0)
    home = with_wall(blind(samples.scene()), WallSide.HOOD, studs=studs, core_in=3.5)
    home = rear_outlet(home, STACK)
    centre = 70.0 + off_in
    return replace(with_hood(home, centre_in=centre), cooktop=replace(home.cooktop, centre_in=centre))


def test_reframe_or_go_over_it_or_move_the_range() -> None:
    """Each of the three is judged with what it costs: lumber; two elbows, a transition and cabinet space; inches."""
    framed = built(stud_behind(), straight(5.1875), cap())
    assert bought(framed, "header")

    cabinet = thing("hood-cabinet", ObstacleKind.CABINET, 50.0, 0.0, 77.0, 54.0, 13.0, 19.0, hides_duct=True)
    over = replace(stud_behind(), obstacles=(cabinet,))
    top = Outlet("top", STACK, 0.0, 6.5)
    over = with_hood(with_duct(with_hood(over, outlet=top, cover=None), STACK), outlet=top)
    aside = built(over, reducer(SIX), elbow("right"), straight(12.0), elbow("back"), straight(6.0), cap())
    assert aside.best is not None
    assert aside.best.route.elbows == 2.0
    assert len(bought(aside, "transition")) == 1
    assert not found(aside, "MBR-STUD")
    (space,) = aside.best.takeoff.cabinets
    assert space.lost_in3 == pytest.approx(6.5 * 6.5 * 42.5)  # 42 1/2 in of duct, boxed in with 1/4 in all round

    moved = built(stud_behind(10.0 / 2 + 1.5 / 2 + 0.25), straight(5.1875), cap())
    assert not must_broken(moved)
    assert not bought(moved, "header")
    still = built(stud_behind(10.0 / 2 + 1.5 / 2 - 0.25), straight(5.1875), cap())
    assert must_broken(still)


@pytest.mark.slow
def test_moving_and_framing_are_offered_with_what_they_cost() -> None:
    """Both planned again: 6 in for hood and range together, or header and sill of 30 1/2 in."""
    home = only_wall(stud_behind())
    plan = pipeline.plan(replace(home, duct=replace(home.duct, max_elbows=1)), alternatives=1)
    assert plan.best is None
    fixes = {fix.kind: fix for fix in studies.fixes(plan, most=5)}
    moved = fixes[FixKind.SHIFT_BOTH]
    assert moved.moved_in == 10.0 / 2 + 1.5 / 2 + 0.25
    assert (moved.elbows, moved.broken) == (0.0, 0)
    framed = fixes[FixKind.FRAME]
    assert framed.members[0] == "stud 5"
    assert {"2 headers 2x4 30 1/2 in", "1 sill 2x4 30 1/2 in"} <= set(framed.members)
    assert framed.moved_in == 0.0


def cabled_stud_before_a_garage() -> Scene:
    """A stud behind the outlet with a cable on it; the garage lies behind, the open air at its right."""
    home = beyond_hood_wall(samples.scene(), SpaceKind.GARAGE, deep_in=120.0, open_side=WallSide.RIGHT)
    cable = Service("range-cable", ServiceKind.CABLE, 69.0, 0.0, 2.0, 93.0, 0.0, movable=True)
    studs = samples.studs("2x4", depth=3.5, first=6.0)
    home = with_wall(home, WallSide.HOOD, studs=studs, core_in=3.5, services=(cable,))
    return rear_outlet(home, STACK)


def test_behind_a_cabled_stud_the_cable_moves_first_and_the_duct_is_never_split() -> None:
    home = cabled_stud_before_a_garage()
    through = built(home, straight(20.0), elbow("right"), straight(75.0), cap())
    cable = one(through, "SVC-CLASH")
    assert (cable.state, cable.must) == (State.BROKEN, True)
    assert "moved" in cable.remedy
    assert one(through, "MBR-STUD").state is State.BROKEN
    assert bought(through, "header")


def test_the_bay_beside_it_is_reached_through_the_cabinet_and_costs_its_space() -> None:
    """Up 12 in, right 24 in to the next bay's middle, back: 42 1/2 in of 6 1/2 in boxing, 1.0 of 7.7 cubic feet."""
    cabinet = thing("hood-cabinet", ObstacleKind.CABINET, 50.0, 0.0, 77.0, 54.0, 13.0, 19.0, hides_duct=True)
    home = replace(cabled_stud_before_a_garage(), obstacles=(cabinet,))
    home = with_duct(with_hood(home, outlet=Outlet("top", STACK, 0.0, 6.5), cover=None), STACK)
    in_garage = (straight(12.0), elbow("right"), straight(52.0))
    plan = built(home, reducer(SIX), elbow("right"), straight(12.0), elbow("back"), *in_garage, cap())
    assert not must_broken(plan)
    assert not found(plan, "MBR-STUD")
    assert "sealed, with no opening there" in one(plan, "FIR-GARAGE").detail
    assert one(plan, "TRM-OUTDOORS").state is State.FINE
    assert plan.best is not None
    (space,) = plan.best.takeoff.cabinets
    assert space.lost_in3 == pytest.approx(6.5 * 6.5 * (6.0 + 6.0 + 6.0 + 12.0 + 6.0 + 6.0 + 0.5))
    assert space.of_in3 == 54.0 * 13.0 * 19.0


# --- the settling gap of a log wall ---


def log_wall(duct_mm: float, *, may_cut: bool) -> Scene:
    """A log wall; over a window a gap of 130 mm, closed above by a fixing board. The duct lies on the gap's bottom."""
    duct, bottom = round_duct(duct_mm * MM), 70.0
    board = thing(
        "fixing-board", ObstacleKind.OTHER, 40.0, -1.0, bottom + 130 * MM, 60.0, 1.0, 6.0, cut_allowed=may_cut
    )
    home = with_wall(
        blind(samples.scene()), WallSide.HOOD, frame=WallFrame.LOG, core_in=6.0, studs=None, outside=(), inside=()
    )
    home = rear_outlet(home, duct, up_in=bottom + duct_mm * MM / 2 - 66.0)
    return replace(home, metric=True, obstacles=(board,))


@pytest.mark.parametrize(("duct_mm", "short_mm"), [(150.0, 20.0), (163.0, 33.0)])
def test_150_mm_do_not_go_through_a_gap_of_130(duct_mm: float, short_mm: float) -> None:
    """20 mm short for the duct, 33 mm for the hole of 163 mm that was drilled."""
    plan = built(log_wall(duct_mm, may_cut=False), straight(7.0), cap())
    assert plan.best is not None
    assert {n.solid: n.gap_in for n in plan.best.route.near}["fixing-board"] == pytest.approx(-short_mm * MM)
    assert must_broken(plan)


def test_the_trim_carries_nothing_and_gives_way() -> None:
    plan = built(log_wall(150.0, may_cut=True), straight(7.0), cap())
    told = one(plan, "MBR-FREE", "fixing board")
    assert told.state is State.FINE
    assert told.ruling is not None
    assert told.ruling.verdict is MemberVerdict.ALLOWED
    assert not must_broken(plan)
