"""Each example home gives the right value of its situation.

The values are worked out by hand on top of every scene file, from the geometry written there; limits come from the
sources that the findings name.
"""

from __future__ import annotations

import math
from functools import cache
from pathlib import Path

import pytest

from routeviz import pipeline, reports, scenefile, studies
from routeviz.model.finding import Finding, MemberVerdict, State, Verdict
from routeviz.model.path import Outcome
from routeviz.model.plan import Plan
from routeviz.model.route import PartKind
from routeviz.model.solids import FaceKind
from routeviz.model.study import FixKind

SCENES = Path(__file__).parents[2] / "scenes"


@cache
def plan_of(name: str) -> Plan:
    return pipeline.plan(scenefile.load(SCENES / f"{name}.toml"))


def findings(plan: Plan, code: str) -> list[Finding]:
    return [f for f in plan.all_findings if f.code == code]


def test_straight_up_between_two_joists() -> None:
    plan = plan_of("juniper_straight_up")
    assert plan.verdict is Verdict.WORKS
    assert plan.paths.outcome is Outcome.PROVEN
    route = plan.options[0].route
    assert route.elbows == 0
    assert route.termination.kind is FaceKind.ROOF
    gaps = {n.label: n.gap_in for n in route.near}
    assert gaps["joist 4"] == pytest.approx(3.25)
    assert gaps["joist 5"] == pytest.approx(3.25)
    assert "between joists 4 and 5" in plan.answer
    assert findings(plan, "FIT-COVER")[0].measured == pytest.approx(19.0)


def test_joist_dead_centre_names_the_joist_and_the_least_shift_each_way() -> None:
    plan = plan_of("joist_dead_centre")
    assert plan.verdict is Verdict.BLOCKED
    assert plan.paths.outcome is Outcome.NONE_EXISTS
    why = next(w for w in plan.paths.why_not if w.wanted == "straight up")
    assert why.blockers[0].label == "joist 4"
    assert {abs(why.shift_in or 0), abs(why.shift_other_in or 0)} == {5.0}
    assert abs(why.middle_in or 0) == pytest.approx(8.0)
    ruling = next(m for m in plan.members if m.label == "joist 4")
    assert ruling.verdict is MemberVerdict.NOT_ALLOWED
    assert ruling.allowed_in == pytest.approx(7.25 / 3)  # IRC R502.8.1: a third of the depth
    found = studies.fixes(plan)
    assert [f.kind for f in found] == [FixKind.SHIFT, FixKind.OFFSET, FixKind.SHIFT_BOTH]
    assert (found[0].moved_in, found[0].elbows) == (5.0, 0)
    assert (found[1].moved_in, found[1].elbows) == (2.0, 1)  # the cover leaves 3 in beside the duct: 5 - 3
    assert "5 in right frees it too" in plan.second or "5 in left frees it too" in plan.second


def test_out_the_back_with_one_elbow() -> None:
    plan = plan_of("out_the_back")
    route = plan.options[0].route
    assert plan.verdict is Verdict.WORKS
    assert route.elbows == 1
    assert route.termination.label == "the wall behind"
    assert "between studs 4 and 5" in plan.answer
    gaps = {n.label: n.gap_in for n in route.near}
    assert gaps["stud 4"] == pytest.approx(4.25)
    assert gaps["stud 5"] == pytest.approx(4.25)
    assert "room above" in plan.second
    assert findings(plan, "TRM-OPENING")[0].measured == pytest.approx(40.5, abs=0.25)


def test_rear_outlet_straight_back() -> None:
    plan = plan_of("rear_outlet_straight_back")
    route = plan.options[0].route
    assert plan.verdict is Verdict.WORKS
    assert route.elbows == 0
    assert route.length_in == pytest.approx(7.1875)
    assert route.parts[0].start[2] == pytest.approx(73.0)


def test_stud_dead_centre_shift_either_way_or_frame_an_opening() -> None:
    plan = plan_of("stud_dead_centre")
    assert plan.verdict is Verdict.BLOCKED
    why = next(w for w in plan.paths.why_not if w.wanted == "straight back")
    assert why.blockers[0].label == "stud 4"
    assert {abs(why.shift_in or 0), abs(why.shift_other_in or 0)} == {6.0}
    ruling = next(m for m in plan.members if m.label == "stud 4")
    assert ruling.verdict is MemberVerdict.NOT_ALLOWED
    header = next(p for p in ruling.framing if p.name == "header")
    assert header.length_in == pytest.approx(30.5)  # 64 3/4 - 32 3/4 - 1 1/2 in
    assert {f.kind for f in studies.fixes(plan)} == {FixKind.SHIFT, FixKind.SHIFT_BOTH, FixKind.FRAME}


def test_side_wall_along_a_joist_bay() -> None:
    plan = plan_of("side_wall_storey_above")
    route = plan.options[0].route
    assert route.elbows == 1
    assert route.termination.label == "the right wall"
    assert "joists 1 and 2" in plan.answer
    assert plan.verdict is Verdict.TIGHT
    rim = findings(plan, "MBR-RIM")[0]
    assert rim.state is State.CLOSE
    run = next(p for p in route.parts if p.kind is PartKind.STRAIGHT and p.direction[0] > 0.9)
    assert 99.875 - 1e-6 <= run.start[2] <= 102.625 + 1e-6
    # the elbow stands as deep in the ceiling board's hole as its 1/4 in lets it: sqrt(3^2 - 2 3/4^2) below the board's top
    assert run.start[2] == pytest.approx(102.625 - (9 - 2.75**2) ** 0.5, abs=1e-3)
    # of 96 5/8 to 105 7/8 in, the 6 1/2 in hole leaves at least 1 in on either side, not all of it below
    left = run.start[2] - 3.25 - 96.625, 105.875 - run.start[2] - 3.25
    assert min(left) > 1.0
    assert "1 9/16 in of wood left below the hole, 1 3/16 in above it" in rim.detail
    board = next(p for p in route.penetrations if "ceiling" in p.label)
    assert board.centre[:2] == pytest.approx(
        (72.0, -8.75)
    )  # the hole is cut for the straight, though the elbow stands in it
    assert board.through_in == pytest.approx(0.625)


def test_garage_is_passed_through_to_outdoors() -> None:
    plan = plan_of("garage_beyond")
    route = plan.options[0].route
    assert route.termination.space == "outdoors"
    assert route.termination.label == "the garage's far wall"
    assert route.length_in == pytest.approx(12 * 12 + 10, abs=1)
    assert findings(plan, "FIR-GARAGE")


def test_gas_with_low_cabinets() -> None:
    plan = plan_of("gas_low_cabinets")
    assert plan.verdict is Verdict.BLOCKED
    shelf = findings(plan, "HGT-CABINET")[0]
    assert (shelf.measured, shelf.limit, shelf.state, shelf.must) == (22.0, 30.0, State.BROKEN, True)
    readings = findings(plan, "CLR-SIDE-UP")
    assert sorted({(f.measured, f.state) for f in readings}) == [(17.75, State.BROKEN), (18.0, State.CLOSE)]
    assert plan.options[0].route.elbows == 0


def test_metric_home_with_a_concrete_ceiling() -> None:
    plan = plan_of("metric_concrete_ceiling")
    route = plan.options[0].route
    assert route.elbows == 1
    assert route.termination.label == "the wall behind"
    assert "concrete ceiling" in plan.second
    text = reports.plan_text(plan)
    assert " mm" in text
    assert "l/s" in text
    assert "cfm" not in text


def test_big_fan_on_a_small_duct() -> None:
    plan = plan_of("big_fan_small_duct")
    speed = findings(plan, "AIR-SPEED")[0]
    assert speed.state is State.BROKEN
    assert speed.measured == pytest.approx(800 / (3.141592653589793 * 0.25**2), rel=1e-6)  # 4074 ft/min on 6 in
    air = plan.options[0].air
    assert air.full.flow_cfm < 0.75 * 800
    assert any(a.label.startswith("8 in") and a.gain_cfm > 50 for a in air.advice)


def test_as_built_flex_that_ends_in_the_attic() -> None:
    plan = plan_of("as_built_flex_in_attic")
    assert plan.verdict is Verdict.BLOCKED
    assert findings(plan, "TRM-OUTDOORS")[0].state is State.BROKEN
    assert findings(plan, "DCT-SMOOTH")[0].state is State.BROKEN
    assert plan.options[0].route.termination.space == "attic"
    assert {f.title for f in plan.must_broken} >= {
        "Ends inside the attic", "Flexible duct, not smooth inside", "No backdraft damper"
    }  # fmt: skip
    assert plan.answer.startswith(
        "To clear first: No backdraft damper; screws at each joint; flexible duct, not smooth inside; "
        "ends inside the attic; 1 more, advice only. As built: up"
    )


def test_truss_is_never_cut_and_a_hidden_offset_passes_behind_it() -> None:
    plan = plan_of("truss_in_front")
    why = next(w for w in plan.paths.why_not if w.wanted == "straight up")
    assert why.blockers[0].label.startswith("truss 1")
    assert {m.verdict for m in plan.members} == {MemberVerdict.DECIDED_ELSEWHERE}
    assert plan.best is not None
    route = plan.best.route
    assert route.boxed_in == 0.0
    assert [p.angle_deg for p in route.parts if p.kind is PartKind.ELBOW] == [30.0, 30.0]
    back = [p.start[1] for p in route.parts if p.kind is PartKind.STRAIGHT and p.direction[2] > 0.9]
    assert back == [pytest.approx(-4.0)]  # 7 1/4 - 1/4 - 3: 4 1/2 in back from the outlet at 8 1/2 in
    (between,) = (p.length_in for p in route.parts if p.kind is PartKind.STRAIGHT and p.direction[2] < 0.9)
    slant = math.radians(30)
    assert 12.0 * (1 - math.cos(slant)) + between * math.sin(slant) == pytest.approx(4.5, abs=1e-4)
    gaps = {n.label: n.gap_in for n in route.near}
    assert gaps["truss 1 bottom chord"] == pytest.approx(0.25, abs=1e-4)
    # the run is 66 + 1/2 + 3 1/2 = 70 in: the diagonal to half of it passes over the hood at 50 in
    assert [m.label for m in plan.members if "web" in m.label] == ["truss 1 web 2"]
    # the chords are the ceiling's joists, which may be off by 1/2 in: more than the 1/4 in that the duct keeps
    assert [(f.state, f.detail) for f in findings(plan, "MBR-CLASH")] == [
        (State.CLOSE, "its place may be off by 1/2 in")
    ]


def test_cathedral_roof_and_its_long_cover() -> None:
    plan = plan_of("cathedral_roof")
    assert plan.options[0].route.elbows == 0
    assert plan.options[0].route.termination.kind is FaceKind.ROOF
    cover = findings(plan, "FIT-COVER")[0]
    assert (cover.measured, cover.margin) == (pytest.approx(128.0), pytest.approx(2.0))


def test_cap_under_a_vented_eave_beside_a_window() -> None:
    plan = plan_of("soffit_vent_cap")
    assert plan.verdict is Verdict.BLOCKED
    why = next(w for w in plan.paths.why_not if w.wanted == "straight back")
    assert "window" in why.blockers[0].label
    assert why.blockers[0].overlap_in == pytest.approx(36 - 15.75)  # 15 3/4 in instead of 3 ft
    assert why.shift_in == pytest.approx(28.0)


def test_wall_too_near_the_lot_line() -> None:
    plan = plan_of("lot_line_close")
    assert plan.verdict is Verdict.BLOCKED
    assert "lot line" in plan.answer
    assert not studies.fixes(plan)


def test_furring_strip_is_no_stud() -> None:
    plan = plan_of("furring_strip_brick")
    assert plan.verdict is Verdict.WORKS
    strips = [f for f in plan.all_findings if f.code == "MBR-FREE"]
    assert strips
    assert all(f.state is not State.BROKEN for f in strips)


def test_old_hole_is_judged() -> None:
    plan = plan_of("old_duct_in_the_way")
    assert findings(plan, "EXI-HOLE")[0].state is State.BROKEN
    assert plan.options[0].route.elbows == 0
