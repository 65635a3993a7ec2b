"""May it be cut, and what then: beams, joists, trusses, rims, studs, strips and masonry that stand in the duct's way.

Numbers are the rules' own (IRC R502.8.1, R602.6, R802.7.2; read for the rule tests too), plain geometry of the given
sizes, or what experienced people conclude; the table in `field_cases` says which.
"""

from __future__ import annotations

import math
from dataclasses import replace

import pytest
import samples
from cases.homes import (
    ALLOWED,
    BOARD,
    MM,
    STACK,
    blind,
    bought,
    built,
    cap,
    elbow,
    flat_duct,
    found,
    framed,
    holes_in,
    must_broken,
    offset,
    one,
    only_wall,
    rear_outlet,
    reducer,
    room_above,
    round_duct,
    ruled,
    steps,
    straight,
    with_duct,
    with_wall,
)

from routeviz import pipeline
from routeviz.model.finding import MemberVerdict, State
from routeviz.model.scene import (
    Beam,
    Layer,
    MakerLimits,
    MemberKind,
    MemberLayout,
    RuleChoice,
    RunDirection,
    Scene,
    SectionSize,
    WallFrame,
    WallSide,
)
from routeviz.rules import bore, notch, severing

RISE = 78.5  # top of the collar over the floor: cooktop 36, mounting 30, body 11, collar 1 1/2
CEILING_BOARD = 96.625  # underside of the joists


def up_to(height_in: float, duct_in: float = 6.0) -> float:
    """Give the straight from the collar to an elbow of radius 1 D whose run lies at this height."""
    return height_in - RISE - duct_in


# --- a beam at the edge of the house, on which the bump-out's framing hangs ---


def house_with_edge_beam(kind: MemberKind = MemberKind.SAWN, depth_in: float = 12.0) -> Scene:
    """Joists run out to the front wall; a doubled member crosses them 10 ft out."""
    home = room_above(blind(samples.scene()), size="2x12", depth_in=11.25)
    home = with_wall(home, WallSide.FRONT, beyond="outdoors", bearing=True)
    beam = Beam("edge-beam", kind, 3.0, depth_in, RunDirection.ALONG, 120.0, CEILING_BOARD)
    return with_duct(replace(home, ceiling=replace(home.ceiling, beams=(beam,))), round_duct(6.0))


def test_a_doubled_member_that_carries_others_is_a_beam_and_takes_no_duct() -> None:
    beam = framed(house_with_edge_beam()).solid("edge-beam")
    ruling = ruled(beam, bore(6.0, 12.0))
    assert ruling.verdict is MemberVerdict.NOT_ALLOWED
    assert ruling.code == "MBR-BEAM"
    assert ruling.allowed_in == 0.75  # cables only
    assert ruling.ours_in == 6.0
    assert "4 in" in ruling.detail  # even a joist of 12 in would take no more than a third
    assert "not behind it" in ruling.remedy
    assert ruled(beam, bore(0.75, 12.0)).verdict in ALLOWED


def test_a_duct_along_the_bay_stops_at_the_beam_that_crosses_it() -> None:
    plan = built(house_with_edge_beam(), straight(up_to(102.25)), elbow("front"), straight(122.0), cap())
    assert [f.code for f in must_broken(plan)] == ["MBR-BEAM"]
    finding = one(plan, "MBR-BEAM", "edge beam")
    assert finding.limit == 0.75
    assert finding.margin is not None
    assert finding.margin < 0


def test_the_way_out_is_a_face_that_is_not_behind_the_beam() -> None:
    plan = pipeline.plan(only_wall(house_with_edge_beam()), alternatives=1)
    assert plan.best is not None
    assert plan.best.route.termination.face.startswith("face-hood")
    assert not holes_in(plan, "beam")
    assert not must_broken(plan)


# --- I-joists and the third-of-depth rule ---


def i_joists(chart_in: float | None) -> Scene:
    """14 in I-joists run out; a solid beam as deep crosses them; the maker's chart, when at hand, allows a hole."""
    home = house_with_edge_beam(depth_in=14.0)
    layout = MemberLayout(MemberKind.I_JOIST, "14 in I-joist", 2.5, 14.0, 16.0, 14.0)
    home = replace(home, ceiling=replace(home.ceiling, joists=layout))
    maker = MakerLimits(member_hole_in=chart_in, document="the joist maker's hole chart")
    return replace(with_duct(home, round_duct(6.0), clearance_in=0.0), rules=RuleChoice("irc-2021", maker))


def test_across_i_joists_by_their_makers_chart_and_not_by_a_third_of_the_depth() -> None:
    home = i_joists(6.0)
    plan = built(home, straight(up_to(103.625)), elbow("right"), straight(75.0), cap())
    cut = found(plan, "MBR-ENGINEERED")
    assert len(cut) == 5  # joists 5 to 9 at 78, 94, 110, 126 and 142 in
    for finding in cut:
        assert finding.state is not State.BROKEN
        assert (finding.measured, finding.limit) == (6.0, 6.0)  # a third of 14 in would be 4 2/3
        assert finding.source_text == "the joist maker's hole chart"
        assert "sawn timber and does not apply" in finding.detail
    assert not must_broken(plan)


def test_without_the_chart_nobody_but_the_maker_allows_the_web_hole() -> None:
    joist = framed(i_joists(None)).solid("joist-5")
    assert ruled(joist, bore(6.0, 14.0), i_joists(None)).verdict is MemberVerdict.DECIDED_ELSEWHERE
    assert ruled(joist, bore(4.5, 14.0), i_joists(None)).verdict is MemberVerdict.DECIDED_ELSEWHERE


def test_the_chart_never_covers_a_flange() -> None:
    joist = framed(i_joists(6.0)).solid("joist-5")
    assert ruled(joist, notch(1.5, 14.0), i_joists(6.0)).verdict is MemberVerdict.NOT_ALLOWED
    assert ruled(joist, severing(6.0, 14.0), i_joists(6.0)).verdict is MemberVerdict.NOT_ALLOWED


def test_a_solid_beam_across_the_i_joists_takes_no_duct_chart_or_not() -> None:
    plan = built(i_joists(6.0), straight(up_to(103.625)), elbow("front"), straight(122.0), cap())
    finding = one(plan, "MBR-BEAM", "edge beam")
    assert finding.state is State.BROKEN
    assert "4 11/16 in" in finding.detail  # 14 / 3 = 4.67, less than 6 too


def test_the_joist_makers_chart_says_nothing_of_an_engineered_beam() -> None:
    home = i_joists(6.0)
    beam = replace(home.ceiling.beams[0], kind=MemberKind.ENGINEERED)
    home = replace(home, ceiling=replace(home.ceiling, beams=(beam,)))
    ruling = ruled(framed(home).solid("edge-beam"), bore(6.0, 14.0), home)
    assert ruling.verdict in (MemberVerdict.DECIDED_ELSEWHERE, MemberVerdict.NOT_ALLOWED)
    plan = built(home, straight(up_to(103.625)), elbow("front"), straight(122.0), cap())
    assert one(plan, "MBR-ENGINEERED", "edge beam").state is State.BROKEN


# --- a rim that had a smaller duct ---


def rim_of_2x8(*sections: SectionSize) -> Scene:
    return with_duct(room_above(blind(samples.scene())), *sections)


def test_6_in_through_a_2x8_rim_between_two_joists_is_tolerated_and_tight() -> None:
    rim = framed(rim_of_2x8(round_duct(6.0))).solid("rim-hood")
    ruling = ruled(rim, bore(6.0, 7.25))
    assert ruling.verdict in ALLOWED
    assert bore(6.0, 7.25).edge_in == 0.625
    plan = built(rim_of_2x8(round_duct(6.0)), straight(up_to(100.25)), elbow("back"), straight(10.0), cap())
    finding = one(plan, "MBR-RIM")
    assert finding.state is State.CLOSE
    assert not must_broken(plan)


def test_5_in_at_the_rim_keeps_more_wood_and_loses_air() -> None:
    home = rim_of_2x8(round_duct(6.0))
    wide = built(home, straight(up_to(100.25)), elbow("back"), straight(10.0), cap())
    narrow = built(home, straight(up_to(100.25)), elbow("back"), reducer(round_duct(5.0)), straight(4.0), cap())
    kept, spared = one(wide, "MBR-RIM"), one(narrow, "MBR-RIM")
    assert kept.detail.count("3/8 in of wood left above and below") == 1  # (7 1/4 - 6 1/2) / 2, with the 1/4 in gap
    assert spared.detail.count("7/8 in of wood left above and below") == 1  # (7 1/4 - 5 1/2) / 2
    lost = one(narrow, "DCT-SHRINK")
    assert (lost.state, lost.must) == (State.BROKEN, False)
    assert lost.measured == pytest.approx(25 / 36)
    assert wide.best is not None
    assert narrow.best is not None
    assert narrow.best.air.full.flow_cfm < wide.best.air.full.flow_cfm


# --- a joist that somebody notched ---


def joist_beside_the_wall() -> Scene:
    """Joists 10 in deep along the wall, the first 2 in off it, the next 400 mm on; the duct goes out behind."""
    layout = MemberLayout(MemberKind.SAWN, "50x254 mm", 50 * MM, 10.0, 400 * MM, 2.0 + 25 * MM, RunDirection.ALONG)
    home = room_above(blind(samples.scene()))
    home = replace(home, metric=True, ceiling=replace(home.ceiling, joists=layout, rim=False))
    return with_duct(home, round_duct(6.0))


def test_8_in_notched_out_of_a_10_in_joist_is_five_times_too_much() -> None:
    ruling = ruled(framed(joist_beside_the_wall()).solid("joist-1"), notch(8.0, 10.0))
    assert ruling.verdict is MemberVerdict.NOT_ALLOWED
    assert ruling.measure == "notch"
    assert ruling.allowed_in == pytest.approx(10.0 / 6)
    assert ruling.ours_in == 8.0


def test_too_deep_is_said_before_too_long() -> None:
    """The cut is half round: 8 in deep and 6 in long."""
    cut = notch(8.0, 10.0, along_in=6.0, from_end_in=30.0, length_in=144.0)
    ruling = ruled(framed(joist_beside_the_wall()).solid("joist-1"), cut)
    assert (ruling.measure, ruling.allowed_in) == ("notch", pytest.approx(10.0 / 6))


@pytest.mark.parametrize(("drop_in", "clear"), [(6.25, True), (5.75, False)])
def test_under_the_joists_the_ceiling_drops_by_the_duct_and_a_little(drop_in: float, clear: bool) -> None:
    """The duct's underside lies `drop_in` below the joists: a 6 in duct with 1/4 in above it clears them."""
    home = joist_beside_the_wall()
    home = replace(home, ceiling=replace(home.ceiling, layers=()))
    underside = home.kitchen.ceiling_in
    plan = built(home, straight(up_to(underside - drop_in + 3.0)), elbow("back"), straight(10.0), cap())
    joists = found(plan, "MBR-JOIST")
    assert (not joists) if clear else (joists and joists[0].state is State.BROKEN)
    assert bool(must_broken(plan)) is not clear


def test_no_route_of_ours_touches_the_joist_beside_the_wall() -> None:
    plan = pipeline.plan(only_wall(joist_beside_the_wall()), alternatives=1)
    assert plan.best is not None
    assert not holes_in(plan, "joist")
    top = max(p.start[2] for p in plan.best.route.parts) + 3.0
    assert top <= CEILING_BOARD


# --- a truss on the duct's line ---


def truss_over_the_outlet() -> Scene:
    """Nothing but the roof to go to; a truss runs along the wall 8 1/2 in out, right over the outlet."""
    home = blind(samples.scene())
    for side in (WallSide.HOOD, WallSide.RIGHT):
        home = with_wall(home, side, beyond="room", outside=BOARD)
    chords = MemberLayout(MemberKind.TRUSS, "2x4", 1.5, 3.5, 24.0, 8.5, RunDirection.ALONG)
    assert home.roof is not None
    roof = replace(
        home.roof, ridge=RunDirection.OUT, ridge_at_in=105.0, framing=replace(chords, direction=RunDirection.OUT)
    )
    return replace(home, ceiling=replace(home.ceiling, joists=chords), roof=roof)


def test_a_truss_is_never_cut() -> None:
    home = truss_over_the_outlet()
    ruling = ruled(framed(home).solid("truss-1-bottom"), severing(8.5, 3.5))
    assert ruling.verdict not in ALLOWED
    assert "never cut" in ruling.rule
    plan = built(home, straight(80.0), cap())
    assert one(plan, "MBR-ENGINEERED", "bottom chord").state is State.BROKEN


def test_past_the_truss_by_half_duct_half_chord_and_a_gap() -> None:
    """Forward by 4 + 3/4 + 1/4 = 5 in; the duct then no longer fits the chimney cover."""
    forward = 8.0 / 2 + 1.5 / 2 + 0.25
    plan = built(truss_over_the_outlet(), offset("front", forward), straight(60.0), cap())
    assert plan.best is not None
    gaps = {n.solid: n.gap_in for n in plan.best.route.near}
    assert gaps["truss-1-bottom"] == pytest.approx(0.25)
    assert not must_broken(plan)
    assert one(plan, "FIT-COVER-DUCT").state is State.BROKEN
    order = steps(plan)
    assert order.index("look") < order.index("inside")  # the inspection hole is the first cut
    assert "Cut a small opening" in next(s.text for s in plan.best.takeoff.steps if s.id == "look")


# --- a stud dead centre behind a rear outlet ---


def stud_dead_centre(off_in: float = 0.0) -> Scene:
    """2x4 studs at 16 in in an outside wall, stud 5 `off_in` right of the outlet's middle."""
    studs = samples.studs("2x4", depth=3.5, first=6.0 + off_in)
    return rear_outlet(with_wall(blind(samples.scene()), WallSide.HOOD, studs=studs, core_in=3.5), STACK)


def test_a_cut_stud_is_framed_like_a_small_window() -> None:
    plan = built(stud_dead_centre(), straight(5.5), cap())
    finding = one(plan, "MBR-STUD", "stud 5")
    assert (finding.state, finding.must) == (State.BROKEN, True)
    assert finding.ruling is not None
    pieces = {p.name: p for p in finding.ruling.framing}
    assert pieces["header"].length_in == 30.5  # two bays of 16 in less one stud
    assert pieces["header"].count == 2
    assert pieces["sill"].length_in == 30.5
    assert {"cripple above", "cripple below"} <= set(pieces)
    assert "like a small window" in finding.remedy
    assert bought(plan, "header") == ("2x4, 30 1/2 in",)
    order = steps(plan)
    assert order.index("frame") < order.index("inside")


def test_the_wallboard_is_opened_from_stud_to_stud() -> None:
    """A patch of about 14 x 28 in comes with the framed opening (a trade article's figure)."""
    plan = built(stud_dead_centre(), straight(5.5), cap())
    assert plan.best is not None
    (patch,) = (
        line
        for line in plan.best.takeoff.buy
        if "board" in line.item and "patch" in line.item and "backing" not in repr(line)
    )
    wide, high = (float_of(t) for t in patch.size.removesuffix(" in").split(" x "))
    assert wide == pytest.approx(28.0, abs=4.5)
    assert high == pytest.approx(14.0, abs=2.5)


def float_of(text: str) -> float:
    return math.fsum(int(a) / int(b or 1) for a, _, b in (t.partition("/") for t in text.split()))


# --- furring, brick and logs ---


def brick_wall(core_in: float, **changes: object) -> Scene:
    home = with_wall(
        blind(samples.scene()), WallSide.HOOD, frame=WallFrame.MASONRY, core_in=core_in, outside=(), studs=None
    )
    return with_wall(home, WallSide.HOOD, **changes)


def test_a_furring_strip_may_be_cut_without_a_header() -> None:
    strips = MemberLayout(MemberKind.FURRING, "1x2", 1.5, 0.75, 16.0, 6.0, RunDirection.ALONG)
    inside = (Layer("furring gap", 0.75), Layer("wood lath and plaster", 0.75))
    home = rear_outlet(brick_wall(8.0, studs=strips, inside=inside), STACK)
    plan = built(home, straight(10.0), cap())
    finding = one(plan, "MBR-FREE", "furring")
    assert finding.state is State.FINE
    assert finding.ruling is not None
    assert finding.ruling.verdict is MemberVerdict.ALLOWED
    names = [p.name for p in finding.ruling.framing]
    assert "header" not in names
    assert any("anchor" in n for n in names)
    assert any("block" in n or "backing" in n for n in names)
    assert bought(plan, "anchor")
    assert not must_broken(plan)


@pytest.mark.parametrize("section", [STACK, round_duct(6.0)], ids=["3-1/4 x 10", "6 round"])
def test_brick_and_block_need_no_lintel_over_a_hood_duct(section: SectionSize) -> None:
    """4 in brick on 4 in block: 10 in is about one and a quarter brick lengths; the hole, with sleeve and mortar, is 1 in larger."""
    plan = built(rear_outlet(brick_wall(8.0), section), straight(9.0), cap())
    finding = one(plan, "MBR-MASONRY")
    assert finding.state is State.FINE
    assert finding.ruling is not None
    assert finding.ruling.verdict in ALLOWED
    assert not any("lintel" in p.name for p in finding.ruling.framing)
    assert any(p.name == "sleeve" and p.size == "in a hole 1 in larger than the duct" for p in finding.ruling.framing)
    assert plan.best is not None
    (hole,) = (h for h in plan.best.takeoff.holes if "masonry" in h.layer)
    assert sorted(hole.size_in) == sorted((section.width_in + 1.0, section.height_in + 1.0))
    assert finding.measured == section.width_in + 1.0  # one hole: the finding's and the schedule's
    assert bought(plan, "sleeve")


def test_a_hole_wider_than_two_bricks_is_no_longer_ours_to_allow() -> None:
    plan = built(rear_outlet(brick_wall(8.0), flat_duct(18.0, 4.0)), straight(9.0), cap())
    assert one(plan, "MBR-MASONRY").ruling is not None
    assert one(plan, "MBR-MASONRY").state is not State.FINE
