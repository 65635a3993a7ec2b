"""Members on a slope, flanges, doubled studs in a row, and the height of a header: numbers by hand and from print."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest

from routeviz import rules
from routeviz.model.finding import MemberVerdict, State
from routeviz.model.scene import MakerLimits, MemberKind, RuleChoice
from routeviz.model.solids import Box, Crossing, Frame, Member, Prism, Solid, SolidKind, Vec3
from routeviz.rules.bench import duct, kitchen, look, meets, member, round_duct
from routeviz.rules.members import member_verdict

IRC = rules.profile("irc-2021")
X: Vec3 = (1.0, 0.0, 0.0)
Y: Vec3 = (0.0, 1.0, 0.0)


def rafter(depth_in: float, rise: float, run: float, long_in: float = 120.0) -> Solid:
    """A rafter 1 1/2 in thick that climbs along x from (0, 0): its underside is z = x rise / run, its ends are plumb."""
    plumb = depth_in * math.hypot(rise, run) / run
    top = long_in * rise / run
    outline = ((0.0, 0.0), (long_in, top), (long_in, top + plumb), (0.0, plumb))
    about = Member(MemberKind.SAWN, f"{depth_in:g} deep", 1.5, depth_in, 0)
    return Solid("rafter-3", SolidKind.RAFTER, "rafter 3", Prism(1, 0.0, 1.5, outline), Crossing.NEVER, "t", about)


def level_bore(solid: Solid, size_in: float, at: tuple[float, float]) -> rules.Cut:
    """A round hole square through the rafter's thickness with its centre at (x, z)."""
    return rules.cut_of(solid, meets(solid, Y, (at[0], 0.75, at[1]), size_in))


# IRC R802.7.1: a third of the depth, a sixth for a notch, 2 in at both edges; dressed sizes from PS 20.
# A 12/12 roof's plumb cut is sqrt(2) deep, a 5/12 roof's 13/12 (5, 12 and 13 make a right triangle).
@pytest.mark.parametrize(("depth", "rise", "run"), [(9.25, 12.0, 12.0), (7.25, 5.0, 12.0), (5.5, 3.0, 4.0)])
def test_a_rafters_depth_is_taken_square_to_it(depth: float, rise: float, run: float) -> None:
    solid = rafter(depth, rise, run)
    plumb = depth * math.hypot(rise, run) / run
    middle = (60.0, 60.0 * rise / run + plumb / 2)
    cut = level_bore(solid, 2.0, middle)
    assert cut.depth_in == pytest.approx(depth)
    assert cut.left_in == pytest.approx(((depth - 2.0) / 2, (depth - 2.0) / 2))
    assert cut.size_in == pytest.approx(2.0)
    assert cut.length_in == pytest.approx(120.0 * math.hypot(rise, run) / run + plumb * rise / math.hypot(rise, run))
    plumb_duct = rules.cut_by(solid, rules.hole_box((60.0, 0.75, 70.0), 2, round_duct(8.0), 0.25), 2)
    assert (plumb_duct.severs, plumb_duct.depth_in) == (True, pytest.approx(depth))
    assert plumb_duct.size_in == 8.5


def test_a_4_in_bore_through_a_2x10_rafter_at_12_in_12_is_too_large() -> None:
    solid = rafter(9.25, 12.0, 12.0)
    found = member_verdict(solid, level_bore(solid, 4.0, (60.0, 60.0 + 9.25 * math.sqrt(2) / 2)), IRC)
    assert found is not None
    assert found.verdict is MemberVerdict.NOT_ALLOWED
    assert found.allowed_in == pytest.approx(9.25 / 3)  # 3.08; a third of the plumb cut would be 4.36
    assert found.source == "irc-r802-7-1"


def test_a_notch_in_a_rafter_is_measured_square_to_it_too() -> None:
    # the bore's centre lies on the underside: half of 4 in reaches in, square to the rafter
    solid = rafter(9.25, 12.0, 12.0)
    found = member_verdict(solid, level_bore(solid, 4.0, (60.0, 60.0)), IRC)
    assert found is not None
    assert (found.measure, found.verdict) == ("notch", MemberVerdict.NOT_ALLOWED)
    assert found.ours_in == pytest.approx(2.0)
    assert found.allowed_in == pytest.approx(9.25 / 6)


def test_2_in_at_a_rafters_edge_are_taken_square_to_it() -> None:
    # 3 in at 12 in 12: 2 in plumb over the underside are 2 / sqrt(2) = 1.41 in square to it
    solid = rafter(9.25, 12.0, 12.0)
    centre_up = (1.5 + 2.0 / math.sqrt(2)) * math.sqrt(2)
    found = member_verdict(solid, level_bore(solid, 3.0, (60.0, 60.0 + centre_up)), IRC)
    assert found is not None
    assert (found.measure, found.allowed_in) == ("wood left at the edge", 2.0)
    assert found.ours_in == pytest.approx(math.sqrt(2))
    assert found.verdict is MemberVerdict.NOT_ALLOWED


def test_an_oblong_hole_in_a_rafter_counts_with_its_corners() -> None:
    # 3 x 2 in at 3 in 4 (sine 0.6, cosine 0.8): 3 x 0.6 + 2 x 0.8 = 3.4 in across the rafter
    solid = rafter(11.25, 3.0, 4.0)
    middle = (60.0, 45.0 + 11.25 / 0.8 / 2)
    cut = rules.cut_of(solid, meets(solid, Y, (middle[0], 0.75, middle[1]), (3.0, 2.0)))
    assert cut.size_in == pytest.approx(3.4)
    assert cut.along_in == pytest.approx(3.0 * 0.8 + 2.0 * 0.6)


# --- the flange of an I-joist ---


def i_joist(depth_in: float) -> Solid:
    lo, hi = (59.0, -120.0, 96.0), (61.0, 0.0, 96.0 + depth_in)
    return member("joist-5", SolidKind.JOIST, lo, hi, 1, "I-joist", timber=MemberKind.I_JOIST)


@pytest.mark.parametrize(
    ("edge_in", "flange_in", "verdict"),
    [
        (0.5, None, MemberVerdict.NOT_ALLOWED),
        (1.49, None, MemberVerdict.NOT_ALLOWED),
        (1.5, None, MemberVerdict.WITHIN),  # 1 1/2 in: common practice, remembered
        (1.25, None, MemberVerdict.NOT_ALLOWED),
        (1.25, 1.125, MemberVerdict.WITHIN),  # as its maker says
        (1.0, 1.125, MemberVerdict.NOT_ALLOWED),
    ],
)
def test_a_web_hole_leaves_both_flanges_whole(edge_in: float, flange_in: float | None, verdict: MemberVerdict) -> None:
    maker = MakerLimits(member_hole_in=7.0, joist_flange_in=flange_in, document="hole chart, page 3")
    for low in (edge_in, 14.0 - 6.5 - edge_in):  # at the lower flange, at the upper one
        found = member_verdict(i_joist(14.0), rules.bore(6.5, 14.0, edge_in=low), IRC, maker=maker)
        assert found is not None
        assert found.verdict is verdict
        assert (found.measure, found.ours_in) == ("wood left at the edge", pytest.approx(edge_in))
        assert found.allowed_in == (1.5 if flange_in is None else flange_in)
        assert "its flange " in found.detail


def test_no_chart_excuses_a_cut_flange() -> None:
    found = member_verdict(i_joist(14.0), rules.bore(6.5, 14.0, edge_in=0.5), IRC)
    assert found is not None
    assert (found.verdict, found.source) == (MemberVerdict.NOT_ALLOWED, "irc-r502-8-2")


@pytest.mark.parametrize(("low_in", "state"), [(1.5, State.CLOSE), (1.0, State.BROKEN)])
def test_a_hole_that_just_leaves_the_flanges_is_tight(low_in: float, state: State) -> None:
    # 9 1/2 in joist, 6 1/2 in hole: 1 1/2 in above and below
    solid = i_joist(9.5)
    maker = MakerLimits(member_hole_in=7.0, document="hole chart, page 3")
    scene = kitchen(rules=RuleChoice("irc-2021", maker))
    at = 96.0 + low_in + 3.25
    run = duct(((20.0, -40.0, at), (126.5, -40.0, at)), penetrations=(meets(solid, X, (60.0, -40.0, at), 6.5),))
    (found,) = (f for f in rules.check(look(scene, solids=(solid,), route=run)) if f.code == "MBR-ENGINEERED")
    assert (found.state, found.relation, found.limit) == (state, "at least", 1.5)
    assert found.measured == pytest.approx(low_in)


def test_a_hole_at_the_edge_of_a_joist_is_close_though_it_is_small() -> None:
    # 2 in in a 2x12 with 2 1/8 in left below: 1 3/4 in under the third, 1/8 in over the edge rule
    joist = member("joist-2", SolidKind.JOIST, (0.0, -120.0, 0.0), (1.5, 0.0, 11.25), 1, "2x12")
    found = member_verdict(joist, rules.bore(2.0, 11.25, edge_in=2.125), IRC)
    assert found is not None
    assert (found.measure, found.ours_in, found.allowed_in) == ("wood left at the edge", 2.125, 2.0)
    assert found.verdict is MemberVerdict.WITHIN


# --- doubled studs in a row: IRC R602.6, not more than two successive doubled studs bored above 40 of 100 ---


def studs(*numbers: int, plies: int = 2) -> tuple[Solid, ...]:
    """2x6 studs of an exterior wall, 16 in apart, by number."""
    wide = 0.75 * plies
    return tuple(
        member(f"stud-{n}", SolidKind.STUD, (16.0 * n - wide, 0.5, 1.5), (16.0 * n + wide, 6.0, 94.5), 2, "2x6",
               number=n, plies=plies, exterior=True)
        for n in numbers
    )  # fmt: skip


def bored(walls: tuple[Solid, ...], size_in: float, through: tuple[int, ...]) -> dict[str, State]:
    """Run a round duct along the wall through these studs and give the state of each."""
    by_number = {s.member.number: s for s in walls if s.member is not None}
    holes = tuple(meets(by_number[n], X, (16.0 * n, 3.25, 70.0), size_in) for n in through)
    run = duct(((16.0 * through[0] - 8, 3.25, 70.0), (16.0 * through[-1] + 8, 3.25, 70.0)), penetrations=holes)
    found = rules.check(look(solids=walls, route=run))
    return {f.where[0]: f.state for f in found if f.code == "MBR-STUD"}


def test_two_successive_doubled_studs_may_be_bored_and_the_third_not() -> None:
    wall = studs(4, 5, 6, 7, 8)  # 2 1/2 of 5 1/2 in: 45 of 100
    assert bored(wall, 2.5, (5, 6)) == {"stud-5": State.FINE, "stud-6": State.FINE}
    assert bored(wall, 2.5, (5, 6, 7)) == {"stud-5": State.FINE, "stud-6": State.FINE, "stud-7": State.BROKEN}
    assert bored(wall, 2.5, (7, 6, 5)) == {"stud-7": State.FINE, "stud-6": State.FINE, "stud-5": State.BROKEN}
    assert bored(wall, 2.5, (4, 5, 6, 7)) == {
        "stud-4": State.FINE, "stud-5": State.FINE, "stud-6": State.BROKEN, "stud-7": State.BROKEN,
    }  # fmt: skip


def test_a_stud_between_that_is_left_whole_parts_the_row_and_a_missing_one_does_not() -> None:
    assert State.BROKEN not in bored(studs(4, 5, 6, 7, 8), 2.5, (4, 5, 7, 8)).values()
    assert bored(studs(4, 5, 7, 8), 2.5, (4, 5, 7))["stud-7"] is State.BROKEN  # 6 is not there


def test_bores_that_a_single_stud_may_have_are_not_counted() -> None:
    wall = studs(4, 5, 6, 7)  # 2.2 in is 40 of 100
    assert State.BROKEN not in bored(wall, 2.2, (4, 5, 6, 7)).values()


# --- the opening round a cut stud ---


@pytest.mark.parametrize(("nominal", "deep_in"), [("2x4", 3.5), ("2x6", 5.5)])
def test_a_header_on_edge_is_as_high_as_its_stuff_is_deep(nominal: str, deep_in: float) -> None:
    # PS 20: a 2x6 is 5 1/2 in. Stud from 1 1/2 to 93 5/8 in, hole from 68 3/4 to 77 1/4 in:
    # 93 5/8 - 77 1/4 - 5 1/2 = 10 7/8 above, 68 3/4 - 1 1/2 - 1 1/2 = 65 3/4 below
    three = tuple(
        member(f"stud-{n}", SolidKind.STUD, (16.0 * n - 0.75, 0.5, 1.5), (16.0 * n + 0.75, 0.5 + deep_in, 93.625), 2,
               nominal, number=n, exterior=True)
        for n in (1, 2, 3)
    )  # fmt: skip
    frame = Frame(three, (), (), Box((-10.0, -10.0, 0.0), (100.0, 20.0, 120.0)))
    cut = rules.cut_of(three[1], meets(three[1], Y, (32.0, 2.0, 73.0), 8.5))
    found = member_verdict(three[1], cut, IRC, frame=frame)
    assert found is not None
    pieces = {p.name: p for p in found.framing}
    assert pieces["cripple above"].length_in == pytest.approx(93.625 - 77.25 - deep_in)
    assert pieces["cripple below"].length_in == pytest.approx(65.75)
    assert pieces["header"].length_in == pytest.approx(32.0 - 1.5)


# --- masonry: 16 in need no lintel (common practice), and the hole for sleeve and mortar is 1 in larger than the duct ---


@pytest.mark.parametrize(
    ("wide_in", "verdict"), [(15.0, MemberVerdict.WITHIN), (15.25, MemberVerdict.DECIDED_ELSEWHERE)]
)
def test_the_lintel_is_asked_for_by_the_sleeves_hole(wide_in: float, verdict: MemberVerdict) -> None:
    # a duct of 15 1/4 in would pass with its clearance alone (15 3/4 in), and does not with its sleeve (16 1/4 in)
    wall = Solid(
        "hood-core-1", SolidKind.MASONRY, "masonry", Box((0.0, 0.5, 0.0), (120.0, 8.5, 96.0)), Crossing.PASS, "t"
    )
    size, hole = (wide_in, 4.0), (wide_in + 0.5, 4.5)
    found = member_verdict(
        wall, rules.cut_of(wall, replace(meets(wall, Y, (60.0, 4.0, 80.0), size), hole_in=hole)), IRC
    )
    assert found is not None
    assert (found.ours_in, found.verdict) == (wide_in + 1.0, verdict)
