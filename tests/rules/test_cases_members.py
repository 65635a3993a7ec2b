"""Members in the way, as people meet them: each test carries one situation's geometry in our own words."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest
import rulebench as bench
import samples

from routeviz import rules
from routeviz.geometry import bounds
from routeviz.model.finding import MemberRuling, MemberVerdict, State
from routeviz.model.path import Blocker, WhyNot
from routeviz.model.scene import (
    Ceiling,
    DuctChoice,
    Layer,
    MakerLimits,
    MemberKind,
    MemberLayout,
    RunDirection,
    SectionShape,
    SectionSize,
    WallFrame,
    WallSide,
)
from routeviz.model.solids import Box, Crossing, Frame, Member, Solid, SolidKind, Vec3
from routeviz.rules.bench import UP, flat, look, meets, member, round_duct, straight_up
from routeviz.rules.members import member_verdict

IRC = rules.profile("irc-2021")
X: Vec3 = (1.0, 0.0, 0.0)
Y: Vec3 = (0.0, 1.0, 0.0)


def ruling(
    solid: Solid, cut: rules.Cut, *, frame: Frame | None = None, maker: MakerLimits | None = None
) -> MemberRuling:
    found = member_verdict(solid, cut, IRC, frame=frame, maker=maker)
    assert found is not None
    return found


def test_a_doubled_member_at_the_house_edge_takes_no_6_in_hole() -> None:
    # Two plies of 12 in carry the edge of the upper floor; a 6 in duct along the joists wants through it to a
    # one-storey bay. Even the joist rule would give 12 / 3 = 4 in; a beam is judged more strictly.
    edge = member("edge-beam", SolidKind.BEAM, (0.0, 40.0, 96.0), (144.0, 43.0, 108.0), 0, "2x12", plies=2)
    found = ruling(edge, rules.cut_of(edge, meets(edge, Y, (60.0, 41.5, 102.0), 6.0)))
    assert found.verdict is MemberVerdict.NOT_ALLOWED
    assert found.ours_in == 6.0
    assert found.allowed_in is not None
    assert found.allowed_in < 4.0
    assert "4 in" in found.detail
    assert ruling(edge, rules.bore(0.75, 12.0)).verdict is MemberVerdict.WITHIN  # a cable hole


def test_along_the_i_joists_the_beam_stops_it_and_across_them_the_chart_decides() -> None:
    # 14 in I-joists, 6 in duct. Along: a 14 in beam crosses. Across: web holes, whose chart allows 6 in here.
    beam = member("sunroom-beam", SolidKind.BEAM, (0.0, -40.0, 96.0), (144.0, -36.5, 110.0), 0, "14 in")
    assert ruling(beam, rules.bore(6.0, 14.0)).verdict is MemberVerdict.NOT_ALLOWED
    web = member(
        "i-joist-3", SolidKind.JOIST, (60.0, -120.0, 96.0), (62.0, 0.0, 110.0), 1, "14 in", timber=MemberKind.I_JOIST
    )
    hole = rules.bore(6.0, 14.0)
    with_chart = ruling(web, hole, maker=MakerLimits(member_hole_in=6.0, document="web-hole chart"))
    assert with_chart.verdict is MemberVerdict.WITHIN
    assert with_chart.source_text == "web-hole chart"
    assert "does not apply" in with_chart.detail  # a third of 14 in would be 4.67 in
    assert ruling(web, hole).verdict is MemberVerdict.DECIDED_ELSEWHERE
    smaller = ruling(web, hole, maker=MakerLimits(member_hole_in=5.0))
    assert smaller.verdict is MemberVerdict.NOT_ALLOWED
    flange = ruling(web, rules.bore(6.0, 14.0, edge_in=-0.5), maker=MakerLimits(member_hole_in=6.0))
    assert flange.verdict is MemberVerdict.NOT_ALLOWED
    assert "flange" in flange.detail


def test_a_rim_in_one_bay_takes_6_in_and_keeps_a_sliver() -> None:
    # 2x8 rim, 7 1/4 in; an old 4 in hole; the new fan wants 6 in: 5/8 in stay above and below.
    rim = member("rim-hood", SolidKind.RIM, (0.0, 4.5, 96.0), (144.0, 6.0, 103.25), 0, "2x8", crossing=Crossing.RULE)
    cut = rules.cut_of(rim, meets(rim, Y, (60.0, 5.0, 99.625), 6.0))
    found = ruling(rim, cut)
    assert found.verdict is MemberVerdict.WITHIN
    assert found.ours_in == pytest.approx(0.625)
    assert "inspector" in found.remedy
    context = look(solids=(rim,), route=straight_up(penetrations=(meets(rim, Y, (60.0, 5.0, 99.625), 6.0),)))
    told = bench.one_of(rules.check(context), "MBR-RIM")
    assert (told.state, told.must) == (State.CLOSE, False)
    assert (told.measured, told.limit, told.margin) == (None, None, None)  # no rule says how much wood must stay
    assert "5/8 in of wood left above and below the hole" in told.detail
    assert ruling(rim, rules.bore(7.5, 7.25)).verdict is MemberVerdict.NOT_ALLOWED


@pytest.mark.parametrize(
    ("height_in", "verdict"),
    [
        (101.25, MemberVerdict.WITHIN),  # midway: (9 1/4 - 6 1/2) / 2 = 1 3/8 in on either side
        (102.375, MemberVerdict.WITHIN),  # 105 7/8 - 102 3/8 - 3 1/4 = 1/4 in above
        (102.5, MemberVerdict.NOT_ALLOWED),  # 1/8 in above
        (102.625, MemberVerdict.NOT_ALLOWED),  # nothing above: it runs into what lies on the rim
    ],
)
def test_a_hole_in_a_rim_leaves_a_strip_on_either_side(height_in: float, verdict: MemberVerdict) -> None:
    # the 1/4 in that must stay is common practice: no print says how much
    rim = member(
        "rim-right", SolidKind.RIM, (149.5, -120.0, 96.625), (151.0, 0.0, 105.875), 1, "2x10", crossing=Crossing.RULE
    )
    hole = meets(rim, (1.0, 0.0, 0.0), (149.5, -8.75, height_in), 6.5)
    found = ruling(rim, rules.cut_of(rim, hole))
    assert found.verdict is verdict
    assert found.source == "common-practice"
    if height_in == 101.25:
        assert found.ours_in == pytest.approx(1.375)
        assert "1 3/8 in of wood left above and below the hole" in found.detail
    if verdict is MemberVerdict.NOT_ALLOWED:
        told = bench.one_of(rules.check(look(solids=(rim,), route=straight_up(penetrations=(hole,)))), "MBR-RIM")
        assert (told.state, told.must, told.limit) == (State.BROKEN, True, 0.25)
        assert told.measured == pytest.approx(105.875 - height_in - 3.25)


@pytest.mark.parametrize(
    ("other", "verdict"),
    [
        (
            member("joist-4", SolidKind.JOIST, (59.25, -140.0, 96.0), (60.75, 4.5, 103.25), 1, "2x8"),
            MemberVerdict.NOT_ALLOWED,
        ),
        (
            member("joist-5", SolidKind.JOIST, (75.25, -140.0, 96.0), (76.75, 4.5, 103.25), 1, "2x8"),
            MemberVerdict.WITHIN,
        ),
        (
            member("upper-stud-4", SolidKind.STUD, (61.0, 0.5, 105.5), (62.5, 6.0, 190.0), 2, "2x6"),
            MemberVerdict.NOT_ALLOWED,
        ),
        (
            member("upper-stud-5", SolidKind.STUD, (66.0, 0.5, 105.5), (67.5, 6.0, 190.0), 2, "2x6"),
            MemberVerdict.WITHIN,
        ),
    ],
)
def test_nothing_may_bear_on_the_rim_where_it_is_cut(other: Solid, verdict: MemberVerdict) -> None:
    # a joist's end in the hole means that two bays are cut; a stud above needs the rim under it
    rim = member("rim-hood", SolidKind.RIM, (0.0, 4.5, 96.0), (144.0, 6.0, 103.25), 0, "2x8", crossing=Crossing.RULE)
    frame = Frame((rim, other), (), (), Box((-10.0, -200.0, 0.0), (200.0, 10.0, 200.0)))
    found = ruling(rim, rules.cut_of(rim, meets(rim, Y, (60.0, 5.0, 99.625), 6.0)), frame=frame)
    assert found.verdict is verdict
    if verdict is MemberVerdict.NOT_ALLOWED:
        assert other.label in found.detail


def test_a_half_round_8_in_deep_out_of_a_10_in_joist() -> None:
    # Somebody cut the joist 2 in off the wall for the duct: 8 of 10 in. A sixth of the depth is 1.67 in.
    joist = member("joist-1", SolidKind.JOIST, (2.0, -150.0, 96.0), (4.0, 0.0, 106.0), 1, "2x10")
    at_the_side = rules.notch(8.0, 10.0, along_in=3.0, from_end_in=20.0, length_in=150.0)
    found = ruling(joist, at_the_side)
    assert found.verdict is MemberVerdict.NOT_ALLOWED
    assert found.measure == "notch"
    assert found.allowed_in == pytest.approx(10 / 6)
    assert found.ours_in == 8.0


def truss_scene() -> tuple[Frame, Solid]:
    scene = samples.scene(
        ceiling=Ceiling((Layer("gypsum board", 0.625),), None),
        roof=replace(
            samples.scene().roof, framing=MemberLayout(MemberKind.TRUSS, "2x4", 1.5, 3.5, 24.0, 8.5, RunDirection.ALONG)
        ),  # type: ignore[type-var]
    )
    frame = bench.framed(scene)
    return frame, next(s for s in frame.solids if s.kind is SolidKind.CHORD)


def test_a_truss_is_never_cut() -> None:
    # A truss stands a few inches in front of the wall, right in the hood duct's line.
    _, chord = truss_scene()
    found = ruling(chord, rules.severing(8.5, 3.5))
    assert found.verdict is MemberVerdict.DECIDED_ELSEWHERE
    assert "registered design" in found.rule
    context = look(solids=(chord,), route=straight_up(penetrations=(meets(chord, UP, (60.0, -8.0, 97.0), 8.5),)))
    (judged,) = (f for f in rules.check(context) if f.code == "MBR-ENGINEERED")
    assert (judged.state, judged.must) == (State.BROKEN, True)
    assert judged.ruling is not None


def stud_wall(stud_at: float) -> tuple[Frame, Solid]:
    """A 2x4 exterior wall with studs 16 in apart, one of them centred at `stud_at`."""
    scene = samples.scene(
        walls=tuple(
            replace(w, studs=samples.studs("2x4", depth=3.5, first=stud_at % 16), core_in=3.5, openings=())
            if w.side is WallSide.HOOD
            else w
            for w in samples.scene().walls
        )
    )
    frame = bench.framed(scene)
    solid = next(
        s for s in frame.solids
        if s.kind is SolidKind.STUD and s.side is WallSide.HOOD and isinstance(s.shape, Box) and s.shape.lo[0] < stud_at < s.shape.hi[0]
    )  # fmt: skip
    return frame, solid


def test_a_stud_dead_centre_in_a_3_by_10_opening_is_framed_like_a_window() -> None:
    # 2x4 studs at 16 in, one in the middle of a 3 1/4 x 10 in opening in a finished kitchen: header and sill reach
    # across to the neighbours, 2 x 16 - 1.5 = 30 1/2 in; exterior, so bearing.
    frame, stud = stud_wall(70.0)
    hole = rules.hole_box((70.0, 2.0, 72.0), 1, SectionSize(SectionShape.RECT, 10.0, 3.25), 0.0)
    found = ruling(stud, rules.cut_by(stud, hole, 1), frame=frame)
    assert found.verdict is MemberVerdict.NOT_ALLOWED
    pieces = {p.name: p for p in found.framing}
    assert pieces["header"].length_in == pytest.approx(30.5)
    assert pieces["header"].count == 2
    assert pieces["sill"].length_in == pytest.approx(30.5)
    assert isinstance(stud.shape, Box)
    # the stud runs from the bottom plate to the top plates; hole 72 +- 1 5/8, header 3 1/2 high, sill 1 1/2
    assert pieces["cripple above"].length_in == pytest.approx(stud.shape.hi[2] - (72 + 1.625 + 3.5))
    assert pieces["cripple below"].length_in == pytest.approx(72 - 1.625 - 1.5 - stud.shape.lo[2])
    assert pieces["trimmer"].length_in == pytest.approx(3.25)


def test_a_stud_bored_along_the_wall_is_another_question_than_one_cut_through() -> None:
    _, stud = stud_wall(70.0)
    along = rules.hole_box((70.0, 2.25, 72.0), 0, round_duct(1.25), 0.0)
    assert ruling(stud, rules.cut_by(stud, along, 0)).verdict is MemberVerdict.WITHIN
    # no hood duct passes through a bearing 2x4: 40 of 100 of 3 1/2 in is 1.4 in
    for section in (round_duct(6.0), flat(10.0, 3.25)):
        cut = rules.cut_by(stud, rules.hole_box((70.0, 2.25, 72.0), 0, section, 0.0), 0)
        assert ruling(stud, cut).verdict is MemberVerdict.NOT_ALLOWED


def test_a_furring_strip_on_brick_may_be_cut_with_no_header() -> None:
    # Structural brick, 2 in strips, plaster; one strip right behind the middle of the range.
    walls = tuple(
        replace(w, frame=WallFrame.MASONRY, core_in=9.0, openings=(), bearing=True, outside=(), inside=(Layer("furring gap", 0.75), Layer("plaster", 0.75)),
                studs=MemberLayout(MemberKind.FURRING, "1x2", 1.5, 0.75, 16.0, 6.0, RunDirection.ALONG))
        if w.side is WallSide.HOOD else w
        for w in samples.scene().walls
    )  # fmt: skip
    frame = bench.framed(samples.scene(walls=walls))
    strips = [s for s in frame.solids if s.kind is SolidKind.FURRING]
    assert strips
    found = ruling(strips[0], rules.severing(8.5, 0.75))
    assert found.verdict is MemberVerdict.ALLOWED
    assert {p.name for p in found.framing} == {"masonry anchor", "backing block"}
    assert "beyond both cuts" in found.detail
    brick = next(s for s in frame.solids if s.kind is SolidKind.MASONRY)
    assert rules.member_code(brick) == "MBR-MASONRY"


@pytest.mark.parametrize("size", [(10.5, 3.75), (6.5, 6.5)])
def test_brick_and_block_need_no_lintel_over_a_duct(size: tuple[float, float]) -> None:
    # 4 in brick and 4 in block; a 3 1/4 x 10 in slot or a 6 in round hole, each with sleeve and mortar in a hole 1 in larger.
    wall = Solid(
        "hood-core-1",
        SolidKind.MASONRY,
        "masonry",
        Box((0.0, 0.5, 0.0), (144.0, 8.5, 96.0)),
        Crossing.PASS,
        "t",
        None,
        "masonry",
    )
    found = ruling(wall, rules.cut_of(wall, meets(wall, Y, (70.0, 4.0, 80.0), size)))
    assert found.verdict is MemberVerdict.WITHIN
    (sleeve,) = found.framing
    assert sleeve.name == "sleeve"
    assert sleeve.size == "in a hole 1 in larger than the duct"
    wide = ruling(wall, rules.cut_of(wall, meets(wall, Y, (70.0, 4.0, 80.0), (20.0, 10.0))))
    assert wide.verdict is MemberVerdict.DECIDED_ELSEWHERE


def test_a_concrete_ceiling_is_cored_only_where_an_engineer_says_so() -> None:
    # 20 cm of concrete over the kitchen; the duct wants up.
    slab = Solid(
        "slab",
        SolidKind.SLAB,
        "concrete ceiling",
        Box((0.0, -120.0, 96.0), (144.0, 0.0, 103.87)),
        Crossing.NEVER,
        "t",
        None,
        "concrete",
    )
    found = ruling(slab, rules.cut_of(slab, meets(slab, UP, (60.0, -8.0, 100.0), 6.0)))
    assert found.verdict is MemberVerdict.DECIDED_ELSEWHERE
    assert "engineer" in found.rule


def test_a_joist_dead_centre_names_itself_its_hole_and_the_opening_it_would_need() -> None:
    # 2x8 joists at 16 in; the fourth stands right over the hood. 8 in duct straight up.
    layout = MemberLayout(MemberKind.SAWN, "2x8", 1.5, 7.25, 16.0, 70.0 % 16)
    scene = samples.scene(ceiling=replace(samples.scene().ceiling, joists=layout))
    frame = bench.framed(scene)
    joist = bench.find_solid(frame, SolidKind.JOIST, at=70.0)
    why = (WhyNot("straight up", (Blocker(joist.id, joist.label, 5.0, (70.0, -8.5, 100.0)),), None, None, None),)
    (found,) = rules.blocker_rulings(scene, frame, IRC, why)
    assert found.solid == joist.id
    assert found.verdict is MemberVerdict.NOT_ALLOWED
    assert found.allowed_in == pytest.approx(7.25 / 3)
    header = next(p for p in found.framing if p.name == "header")
    assert header.length_in == pytest.approx(2 * 16 - 1.5)
    assert header.size == "2x8"
    assert header.count == 2  # one on each side of the opening; up to 4 ft one ply does


def test_two_joists_at_24_in_need_a_doubled_header_only_above_4_ft() -> None:
    layout = MemberLayout(MemberKind.SAWN, "2x8", 1.5, 7.25, 24.0, 22.0)
    scene = samples.scene(ceiling=replace(samples.scene().ceiling, joists=layout))
    frame = bench.framed(scene)
    joist = bench.find_solid(frame, SolidKind.JOIST, at=70.0)
    found = ruling(joist, rules.severing(8.5, 7.25), frame=frame)
    header = next(p for p in found.framing if p.name == "header")
    assert header.length_in == pytest.approx(46.5)
    assert header.count == 2
    assert not [p for p in found.framing if p.name == "trimmer"]


def test_a_wider_cut_between_joists_needs_doubled_headers_and_trimmers() -> None:
    joists = tuple(
        member(f"joist-{n}", SolidKind.JOIST, (x - 0.75, -150.0, 96.0), (x + 0.75, 0.0, 105.25), 1, "2x10", number=n)
        for n, x in ((1, 10.0), (2, 40.0), (3, 70.0))
    )
    frame = Frame(joists, (), (), Box((0.0, -200.0, 0.0), (200.0, 10.0, 200.0)))
    found = ruling(joists[1], rules.severing(8.5, 9.25), frame=frame)
    pieces = {p.name: p for p in found.framing}
    assert pieces["header"].length_in == pytest.approx(58.5)  # 60 - 1.5: over 4 ft
    assert pieces["header"].count == 4
    assert pieces["trimmer"].length_in == pytest.approx(150.0)
    assert "framing anchor or 2x2 ledger" in pieces  # joists over 12 ft


def test_a_stack_up_inside_the_wall_ties_both_top_plates() -> None:
    # 3 1/4 x 10 in stack up a 2x4 exterior wall: 93 of 100 of each top plate.
    frame, _ = stud_wall(70.0)
    plates = [s for s in frame.solids if s.kind is SolidKind.PLATE and s.side is WallSide.HOOD and "top" in s.id]
    assert len(plates) == 2
    for solid in plates:
        assert isinstance(solid.shape, Box)
        middle = (78.0, (solid.shape.lo[1] + solid.shape.hi[1]) / 2, solid.shape.lo[2])
        found = ruling(solid, rules.cut_of(solid, meets(solid, UP, middle, (10.0, 3.25))))
        assert [p.name for p in found.framing] == ["plate tie"]
        assert found.ours_in == pytest.approx(3.25)


def test_a_rectangular_hole_lies_as_its_sides_say() -> None:
    # the same crossing, once with its wide side along the plate and once across it
    frame, _ = stud_wall(70.0)
    solid = next(s for s in frame.solids if s.kind is SolidKind.PLATE and "top" in s.id)
    along, across = (
        rules.cut_of(solid, meets(solid, UP, (78.0, 2.25, 95.0), size)) for size in ((10.0, 3.25), (3.25, 10.0))
    )
    assert along.along_in == 10.0
    assert across.along_in == 3.25


def test_a_rafter_in_the_way_of_a_plumb_duct_is_taken_right_through() -> None:
    frame = bench.framed(samples.scene())
    rafter = next(s for s in frame.solids if s.kind is SolidKind.RAFTER)
    lo = rafter.shape.start if not isinstance(rafter.shape, Box) else rafter.shape.lo[0]
    cut = rules.cut_by(rafter, rules.hole_box((lo + 0.75, -40.0, 118.0), 2, round_duct(8.0), 0.25), 2)
    assert cut.severs
    found = ruling(rafter, cut)
    assert found.verdict is MemberVerdict.NOT_ALLOWED
    assert found.source == "irc-r802-7-1"


def test_steel_and_glued_members_are_never_judged_by_the_rule_for_sawn_timber() -> None:
    for kind in (MemberKind.STEEL, MemberKind.ENGINEERED, MemberKind.OPEN_WEB, MemberKind.TRUSS):
        solid = member("thing", SolidKind.JOIST, (0.0, 0.0, 0.0), (1.5, 100.0, 12.0), 1, "", timber=kind)
        found = ruling(solid, rules.bore(1.0, 12.0))
        assert found.verdict is MemberVerdict.DECIDED_ELSEWHERE
        assert found.code == "MBR-ENGINEERED"


def test_a_place_without_a_framing_rule_of_its_own_is_told_so() -> None:
    joist = member("joist-1", SolidKind.JOIST, (0.0, 0.0, 0.0), (1.5, 144.0, 9.25), 1)
    found = member_verdict(joist, rules.bore(4.0, 9.25), rules.profile("england"))
    assert found is not None
    assert found.verdict is MemberVerdict.NOT_ALLOWED
    assert "framing rule is not known here" in found.detail
    assert "not known here" not in ruling(joist, rules.bore(4.0, 9.25)).detail


def test_no_hood_duct_passes_through_any_sawn_joist() -> None:
    # the least that hoods use, 3 1/4 x 10 in or 6 in round, against the deepest sawn joist
    for size in (3.25 + 0.5, 6.0):
        assert size > rules.hole_limit_in(9.25)
    assert rules.hole_limit_in(11.25) == pytest.approx(3.75)
    assert rules.hole_limit_in(11.25) < 6.0


def test_things_that_are_no_members_have_no_ruling() -> None:
    board = Solid("ceiling-1", SolidKind.BOARD, "board", Box((0.0, 0.0, 96.0), (10.0, 10.0, 96.5)), Crossing.PASS, "t")
    assert rules.member_code(board) == ""
    assert member_verdict(board, rules.bore(8.0, 10.0), IRC) is None
    ghost = replace(board, kind=SolidKind.CABINET, crossing=Crossing.GHOST)
    assert rules.member_code(ghost) == ""


def test_a_truss_shown_by_its_group_alone_is_engineered_whatever_its_part() -> None:
    web = Solid("truss-1-web-1", SolidKind.WEB, "web", Box((0.0, 0.0, 0.0), (1.5, 3.5, 40.0)), Crossing.NEVER, "t",
                Member(MemberKind.TRUSS, "2x4", 1.5, 3.5, 2))  # fmt: skip
    assert rules.member_code(web) == "MBR-ENGINEERED"


def test_every_cut_of_a_laid_route_gets_a_ruling() -> None:
    # straight up through a joist dead centre, as somebody proposed it
    layout = MemberLayout(MemberKind.SAWN, "2x8", 1.5, 7.25, 16.0, 70.0 % 16)
    plain = samples.scene(ceiling=replace(samples.scene().ceiling, joists=layout), duct=DuctChoice((samples.ROUND_8,)))
    scene = bench.built(bench.straight(70.0), bench.cap(), scene=plain)
    findings = bench.judge_built(scene)
    cut = bench.one_of(findings, "MBR-JOIST")
    assert (cut.state, cut.must) == (State.BROKEN, True)
    assert cut.ruling is not None
    assert cut.ruling.framing
    assert cut.where == (cut.ruling.solid,)
    assert "MBR-JOIST" in bench.broken_codes(findings)


def test_a_hole_longer_up_the_slope_takes_what_the_plumb_duct_takes() -> None:
    """At 12 in 12 a hole of 4 in is sqrt(2) times as long up the slope; seen along the duct it is 4 in in both."""
    frame = bench.framed(samples.scene())
    rafter = next(s for s in frame.solids if s.kind is SolidKind.RAFTER)
    box = bounds(rafter.shape)
    middle = ((box.lo[0] + box.hi[0]) / 2, (box.lo[1] + box.hi[1]) / 2, (box.lo[2] + box.hi[2]) / 2)
    level = meets(rafter, UP, middle, 4.0)
    askew = replace(level, shape="ellipse", hole_in=(4.0, 4.0 * math.sqrt(2)), stretch=(1.0, math.sqrt(2)))
    assert rules.cut_of(rafter, askew) == rules.cut_of(rafter, level)
