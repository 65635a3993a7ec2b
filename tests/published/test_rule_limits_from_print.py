"""Limits of the rules against print, to the edge: just inside and just outside. The source stands beside each check."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import pytest

from routeviz import rules
from routeviz.model.finding import Finding, MemberRuling, MemberVerdict, State
from routeviz.model.scene import CooktopKind, Fan, MakerLimits, MemberKind, OutdoorKind, RuleChoice, Scene, SectionSize
from routeviz.model.solids import Crossing, Solid, SolidKind
from routeviz.rules.bench import (
    UP,
    air,
    cabinet,
    duct,
    flat,
    hood_wall_face,
    keep_out,
    kitchen,
    look,
    meets,
    member,
    round_duct,
    straight_out,
    straight_up,
    zone,
)
from routeviz.rules.distances import opening_gap_in
from routeviz.rules.members import member_verdict

IRC = rules.profile("irc-2021")
DEPTH = {"2x4": 3.5, "2x6": 5.5, "2x8": 7.25, "2x10": 9.25, "2x12": 11.25}  # PS 20, dry
ALLOWED = (MemberVerdict.ALLOWED, MemberVerdict.WITHIN)


def joist(size: str) -> Solid:
    return member("joist-1", SolidKind.JOIST, (0.0, 0.0, 0.0), (1.5, 144.0, DEPTH[size]), 1, size)


def stud(size: str = "2x4", *, plies: int = 1, bearing: bool = True, exterior: bool = False) -> Solid:
    return member("stud-1", SolidKind.STUD, (0.0, 0.0, 0.0), (1.5 * plies, DEPTH[size], 92.625), 2, size, plies=plies,
                  bearing=bearing, exterior=exterior)  # fmt: skip


def ruled(solid: Solid, cut: rules.Cut) -> MemberRuling:
    found = member_verdict(solid, cut, IRC)
    assert found is not None
    return found


def one(findings: tuple[Finding, ...], code: str) -> Finding:
    (found,) = (f for f in findings if f.code == code)
    return found


def judged(code: str, scene: Scene, profile: str = "irc-2021", **more: Any) -> tuple[Finding, ...]:
    rule = next(r for r in rules.all_rules() if r.code == code)
    return rule.judged(look(scene, profile_name=profile, **more))


# --- framing: IRC R502.8.1, R802.7.1, R602.6, R602.6.1, R502.10, R802.9 ---


@pytest.mark.parametrize(
    ("size", "hole"),
    # a third of the dressed depth, and 2 in left at both edges: IRC R502.8.1; arithmetic
    [("2x4", 0.0), ("2x6", 1.5), ("2x8", 7.25 / 3), ("2x10", 9.25 / 3), ("2x12", 3.75)],
)
def test_largest_hole_in_a_joist(size: str, hole: float) -> None:
    assert rules.hole_limit_in(DEPTH[size]) == pytest.approx(hole)
    if hole:
        assert ruled(joist(size), rules.bore(hole, DEPTH[size])).verdict is MemberVerdict.WITHIN
    over = ruled(joist(size), rules.bore(hole + 0.01, DEPTH[size]))
    assert over.verdict is MemberVerdict.NOT_ALLOWED
    assert over.allowed_in == pytest.approx(hole)


@pytest.mark.parametrize(("hole", "passes"), [(3.0, True), (3.25, False)])
def test_a_2x10_joist_takes_3_in_but_not_3_1_4(hole: float, passes: bool) -> None:
    # IRC R502.8.1: 9.25 / 3 = 3.083
    found = ruled(joist("2x10"), rules.bore(hole, 9.25))
    assert (found.verdict in ALLOWED) is passes
    assert found.allowed_in == pytest.approx(3.083, abs=0.001)
    assert found.source == "irc-r502-8-1"


@pytest.mark.parametrize(("edge", "passes"), [(2.0, True), (1.9, False)])
def test_a_hole_keeps_2_in_from_the_edge(edge: float, passes: bool) -> None:
    # IRC R502.8.1 and R802.7.1: 2 in to top and bottom
    found = ruled(joist("2x12"), rules.bore(3.0, 11.25, edge_in=edge))
    assert (found.verdict in ALLOWED) is passes


@pytest.mark.parametrize(
    ("size", "limit"),
    # a sixth of the depth: IRC R502.8.1; a trade thread prints 1.54 for 2x10
    [("2x6", 0.917), ("2x8", 1.208), ("2x10", 1.542), ("2x12", 1.875)],
)
def test_deepest_notch_near_the_end_third_of_a_joist(size: str, limit: float) -> None:
    deep = DEPTH[size] / 6
    good = ruled(joist(size), rules.notch(deep, DEPTH[size], along_in=1.0, from_end_in=30.0, length_in=144.0))
    assert good.verdict is MemberVerdict.WITHIN
    assert good.allowed_in == pytest.approx(limit, abs=0.001)
    bad = ruled(joist(size), rules.notch(deep + 0.02, DEPTH[size], along_in=1.0, from_end_in=30.0, length_in=144.0))
    assert bad.verdict is MemberVerdict.NOT_ALLOWED


def test_no_notch_in_the_middle_third() -> None:
    # IRC R502.8.1
    middle = rules.notch(0.5, 9.25, along_in=1.0, from_end_in=72.0, length_in=144.0)
    assert ruled(joist("2x10"), middle).verdict is MemberVerdict.NOT_ALLOWED


def test_a_notch_is_no_longer_than_a_third_of_the_depth() -> None:
    # IRC R502.8.1: 9.25 / 3 = 3.083
    for along, passes in ((3.0, True), (3.2, False)):
        cut = rules.notch(1.0, 9.25, along_in=along, from_end_in=30.0, length_in=144.0)
        assert (ruled(joist("2x10"), cut).verdict in ALLOWED) is passes


@pytest.mark.parametrize(
    ("size", "printed"),
    # a quarter of the depth at the end: IRC R502.8.1; a trade table prints these rounded down to 1/8 in
    [("2x6", 1.375), ("2x8", 1.75), ("2x10", 2.25), ("2x12", 2.75)],
)
def test_deepest_notch_at_the_end_of_a_joist(size: str, printed: float) -> None:
    cut = rules.notch(DEPTH[size] / 4, DEPTH[size], along_in=2.0, from_end_in=1.0, length_in=144.0)
    found = ruled(joist(size), cut)
    assert found.verdict is MemberVerdict.WITHIN
    assert found.allowed_in == pytest.approx(printed, abs=1 / 16 + 0.001)


def test_the_end_notch_of_a_2x12() -> None:
    # IRC R502.8.1: 11.25 / 4
    cut = rules.notch(1.0, 11.25, along_in=2.0, from_end_in=1.0, length_in=144.0)
    assert ruled(joist("2x12"), cut).allowed_in == pytest.approx(2.8125)


@pytest.mark.parametrize(
    ("solid", "hole", "passes"),
    [
        (stud(), 1.4, True),  # IRC R602.6, WAC 296-150C-1000: 40 of 100 of 3 1/2 in
        (stud(), 1.5, False),
        (stud(plies=2), 2.1, True),  # doubled: 60 of 100
        (stud(plies=2), 2.2, False),
        (stud(bearing=False), 2.1, True),  # partition: 60 of 100
        (stud(bearing=False), 2.2, False),
        (stud(bearing=False, exterior=True), 1.5, False),  # an exterior wall counts as bearing
        (stud("2x6"), 2.2, True),
        (stud("2x6"), 2.25, False),
    ],
)
def test_bores_in_studs(solid: Solid, hole: float, passes: bool) -> None:
    found = ruled(solid, rules.bore(hole, DEPTH[solid.member.nominal if solid.member else ""]))
    assert (found.verdict in ALLOWED) is passes
    assert found.source == "irc-r602-6"


@pytest.mark.parametrize(("edge", "passes"), [(0.625, True), (0.62, False), (0.7, True)])
def test_a_bore_keeps_at_least_five_eighths_from_the_edge(edge: float, passes: bool) -> None:
    # one print of the 2018 IRC says "not more than 5/8 in"; R602.6 and WAC 296-150C-1000 mean not less
    found = ruled(stud(), rules.bore(1.25, 3.5, edge_in=edge))
    assert (found.verdict in ALLOWED) is passes


@pytest.mark.parametrize(
    ("bearing", "limit"),
    [(True, 0.875), (False, 1.4)],  # IRC R602.6: a quarter of 3 1/2 in, or 40 of 100
)
def test_notches_in_studs(bearing: bool, limit: float) -> None:
    assert ruled(stud(bearing=bearing), rules.notch(limit, 3.5)).verdict is MemberVerdict.WITHIN
    assert ruled(stud(bearing=bearing), rules.notch(limit + 0.01, 3.5)).verdict is MemberVerdict.NOT_ALLOWED


@pytest.mark.parametrize(
    ("span_in", "plies", "trimmers", "hangers"),
    # UBC 2517(h)4, IRC R502.10 and R802.9: single up to 4 ft, double above, hangers above 6 ft
    [(47, 1, 1, False), (48, 1, 1, False), (49, 2, 2, False), (72, 2, 2, False), (73, 2, 2, True)],
)
def test_headers_by_span(span_in: float, plies: int, trimmers: int, hangers: bool) -> None:
    found = rules.header_rule(span_in)
    assert (found.plies, found.trimmers, found.hangers) == (plies, trimmers, hangers)


def plate(width: float = 3.5, *, bearing: bool = True, exterior: bool = False) -> Solid:
    return member("plate-top-1", SolidKind.PLATE, (0.0, 0.0, 94.5), (120.0, width, 96.0), 0, "2x4", bearing=bearing,
                  exterior=exterior, crossing=Crossing.RULE)  # fmt: skip


def through_plate(solid: Solid, size: tuple[float, float], y: float) -> MemberRuling:
    return ruled(solid, rules.cut_of(solid, meets(solid, UP, (60.0, y, 95.0), size)))


def test_a_stack_through_a_2x4_plate_needs_a_tie() -> None:
    # IRC R602.6.1: more than half; 3.25 of 3.5 is 93 of 100
    found = through_plate(plate(), (10.0, 3.25), 1.75)
    assert found.verdict is MemberVerdict.WITHIN
    assert found.ours_in == pytest.approx(3.25)
    (tie,) = found.framing
    assert tie.name == "plate tie"
    assert tie.size.startswith("16 gage x 1 1/2 in")
    assert tie.length_in == pytest.approx(10.0 + 2 * 6.0)  # 6 in past the opening on each side


@pytest.mark.parametrize(("across", "ties"), [(1.75, 0), (1.8, 1)])
def test_the_tie_begins_above_half_the_width(across: float, ties: int) -> None:
    assert len(through_plate(plate(), (4.0, across), 1.75).framing) == ties


def test_a_partition_plate_needs_no_tie_and_an_exterior_one_does() -> None:
    assert through_plate(plate(bearing=False), (10.0, 3.25), 1.75).framing == ()
    assert len(through_plate(plate(bearing=False, exterior=True), (10.0, 3.25), 1.75).framing) == 1


# --- makeup air: IRC 2015 M1503.4, "in excess of" ---


def fan(cfm: float, **choice: Any) -> Scene:
    plain = kitchen()
    return replace(plain, hood=replace(plain.hood, fan=Fan(cfm)), rules=RuleChoice("irc-2015", **choice))


@pytest.mark.parametrize(("cfm", "state"), [(400.0, State.FINE), (401.0, State.BROKEN)])
def test_makeup_air_is_strictly_more_than_400(cfm: float, state: State) -> None:
    assert one(judged("AIR-MAKEUP", fan(cfm), "irc-2015"), "AIR-MAKEUP").state is state


def test_the_2018_narrowing_is_a_variant_that_asks_for_the_appliance() -> None:
    # 2018+ M1503.6 asks only with a naturally drafted appliance; known from a summary
    def state(edition: str, flue: bool | None) -> State:
        return one(judged("AIR-MAKEUP", fan(600.0, open_flue_appliance=flue), edition), "AIR-MAKEUP").state

    assert state("irc-2021", False) is State.FINE
    assert state("irc-2021", True) is State.BROKEN
    assert state("irc-2021", None) is State.NOT_CHECKED  # nobody said whether one is there
    assert state("irc-2015", False) is State.BROKEN


def test_the_source_of_makeup_air_moves_with_the_edition() -> None:
    # a summary dated 2024 still prints M1503.4: a wrong number
    text = {
        name: rules.profile(name).limits["makeup_flow"].source_text for name in ("irc-2015", "irc-2021", "irc-2024")
    }
    assert "M1503.4" in text["irc-2015"]
    assert "M1503.6" in text["irc-2021"]
    assert "M1503.6" in text["irc-2024"]


# --- termination: IRC 2015 M1506.3, 2018+ M1504.3, WAC 51-51-1504 ---


def near_window(
    gap_in: float, profile: str = "irc-2015", kind: OutdoorKind = OutdoorKind.OPERABLE_WINDOW
) -> tuple[Finding, ...]:
    thing = keep_out("window", kind.value, 64.0 + gap_in, 60.0, 30.0, 40.0)
    code = "TRM-FIXED" if kind is OutdoorKind.FIXED_WINDOW else "TRM-OPENING"
    return judged(code, kitchen(), profile, faces=(hood_wall_face(thing),), route=straight_out())


@pytest.mark.parametrize("profile", ["irc-2015", "irc-2021", "washington"])
def test_2_ft_11_to_an_opening_window_is_an_inch_short(profile: str) -> None:
    (found,) = near_window(35.0, profile)
    assert found.state is State.BROKEN
    assert found.margin == pytest.approx(-1.0)
    assert near_window(36.0, profile)[0].state is not State.BROKEN


def test_fixed_glass_counts_in_2015_and_not_in_washington() -> None:
    fixed = OutdoorKind.FIXED_WINDOW
    assert near_window(20.0, "irc-2015", fixed)[0].state is State.BROKEN
    assert near_window(20.0, "washington", fixed) == ()


@pytest.mark.parametrize(("above", "state"), [(36.0, State.CLOSE), (35.0, State.BROKEN), (0.0, State.BROKEN)])
def test_an_intake_6_ft_away_passes_only_3_ft_below(above: float, state: State) -> None:
    # WAC 51-51-1504: 10 ft, unless the outlet is 3 ft or more above the intake
    opening_bottom = 80.0 - 4.0
    intake = keep_out(
        "intake", OutdoorKind.MECHANICAL_INTAKE.value, 64.0 + 72.0, opening_bottom - above - 8.0, 8.0, 8.0
    )
    (found,) = judged("TRM-INTAKE", kitchen(), "washington", faces=(hood_wall_face(intake),), route=straight_out())
    assert found.state is state


def test_an_intake_below_the_cap_does_not_help_when_the_cap_is_the_lower_one() -> None:
    intake = keep_out("intake", OutdoorKind.MECHANICAL_INTAKE.value, 136.0, 100.0, 8.0, 8.0)
    (found,) = judged("TRM-INTAKE", kitchen(), "washington", faces=(hood_wall_face(intake),), route=straight_out())
    assert found.state is State.BROKEN
    assert found.limit == 120.0


def test_corners_are_measured_straight() -> None:
    # 3-4-5: the window's corner 24 in right and 32 in up of a point opening is 40 in away
    thing = keep_out("window", OutdoorKind.OPERABLE_WINDOW.value, 84.0, 112.0, 30.0, 20.0)
    section = straight_out().section
    assert opening_gap_in((60.0, 80.0), section, thing) == pytest.approx(40.0 - 4.0)


# --- heights: UMC 1998 906.1, NKBA guideline 18, IRC M1901.1, Ontario 9.10.22 ---


def under(
    height_in: float, *, protected: bool = False, burns: bool = True, profile: str = "irc-2021", **hood: Any
) -> tuple[Finding, ...]:
    plain = kitchen(
        obstacles=(cabinet("wall-cabinet", 45.0, 36.0 + height_in, 30.0, 12.0, protected=protected, combustible=burns),)
    )
    return judged("HGT-CABINET", replace(plain, hood=replace(plain.hood, **hood)), profile)


def test_29_9_in_to_a_bare_cabinet_and_24_in_to_a_protected_one() -> None:
    assert under(29.9)[0].state is State.BROKEN
    assert under(30.0)[0].state is not State.BROKEN
    assert under(24.0, protected=True)[0].state is not State.BROKEN
    assert under(23.9, protected=True)[0].state is State.BROKEN


def test_a_metal_hood_as_wide_as_the_cooktop_shields_the_wood_above_it() -> None:
    # hood 24 in above the cooktop and 3 in high: 27 in; a cabinet 28 in up has its quarter inch of air
    strict, loose = under(28.0, mount_in=24.0, body_in=3.0)[::-1]
    assert loose.limit == 24.0
    assert loose.state is not State.BROKEN
    assert (strict.limit, strict.state, strict.must) == (30.0, State.BROKEN, False)
    narrow = under(28.0, mount_in=24.0, body_in=3.0, width_in=28.0)
    assert [f.limit for f in narrow] == [30.0]
    touching = under(27.0, mount_in=24.0, body_in=3.0)
    assert [f.limit for f in touching] == [30.0]


@pytest.mark.parametrize(("mm", "state"), [(749, State.BROKEN), (750, State.CLOSE)])
def test_ontario_750_mm_to_framing(mm: float, state: State) -> None:
    # Ontario Building Code 9.10.22
    found = under(mm / 25.4, profile="ontario")[0]
    assert found.state is state


@pytest.mark.parametrize(("reach_mm", "limit_mm"), [(125, 600), (124, 750)])
def test_ontario_600_mm_where_a_metal_hood_reaches_125_mm_beyond(reach_mm: float, limit_mm: float) -> None:
    # Ontario Building Code 9.10.22: cabinet 12 in deep, hood at 600 mm
    found = under(800 / 25.4, profile="ontario", mount_in=600 / 25.4, body_in=3.0, depth_in=12.0 + reach_mm / 25.4)[0]
    assert found.limit is not None
    assert found.limit * 25.4 == pytest.approx(limit_mm)


def test_600_mm_passes_exactly_under_such_a_hood() -> None:
    # hood body 0 would be needed to hang at the same height; a board 600 mm up that does not burn is the same limit
    found = under(600 / 25.4, profile="ontario", burns=False)[0]
    assert found.state is not State.BROKEN
    assert under(599 / 25.4, profile="ontario", burns=False)[0].state is State.BROKEN


def test_the_clearance_is_cited_where_the_code_keeps_it() -> None:
    # M1503.2 is equipment listing or duct material, not clearance
    text = rules.profile("irc-2021").limits["cabinet_unprotected"].source_text
    assert "M1901.1" in text


def test_the_code_makes_no_difference_between_gas_and_electric_for_cabinets() -> None:
    plain = kitchen(obstacles=(cabinet("wall-cabinet", 45.0, 65.0, 30.0, 12.0),))
    for kind in CooktopKind:
        found = judged("HGT-CABINET", replace(plain, cooktop=replace(plain.cooktop, kind=kind)))
        assert found[0].limit == 30.0


# --- what is no rule ---


def test_no_least_duct_size_is_enforced_as_code() -> None:
    # summaries claim 3 1/4 x 10 or 6 in round; the M1503 text that was seen has none
    found = {name: rules.profile(name).get("duct_least") for name in rules.profiles()}
    assert any(limit is not None for limit in found.values())
    assert [name for name, limit in found.items() if limit is not None and limit.must] == []


def test_the_ban_on_screws_is_for_commercial_grease_duct() -> None:
    # NFPA 96 7.6.2 does not apply to a dwelling; three screws are asked for: IMC 603.4.1
    limit = rules.profile("irc-2021").limits["joint_screws"]
    assert (limit.number, limit.must) == (3.0, True)


def test_attic_insulation_is_advice_for_exhaust() -> None:
    # 2015 IECC R403.3.1 speaks of supply and return; NREL 6.6002.4 gives R-8 for exhaust as a work specification
    limit = rules.profile("irc-2021").limits["insulation_r"]
    assert (limit.number, limit.must) == (8.0, False)


def test_england_takes_30_at_the_hob() -> None:
    # two pages swap the figures; Approved Document F table 1.1: 30 l/s with a hood at the hob
    assert rules.profile("england").limits["least_flow"].said == "30 l/s"


# --- lengths: IRC table M1506.2 / M1504.2, 15 ft for each elbow ---


@pytest.mark.parametrize(
    ("allowed", "equivalent", "state"),
    [
        (112.0, 112.0, State.CLOSE),  # 6 in smooth, 150 cfm, no elbow
        (112.0, 113.0, State.BROKEN),
        (112.0, 67.0 + 45.0, State.CLOSE),  # 67 ft of duct and three elbows
        (112.0, 68.0 + 45.0, State.BROKEN),
        (4.0, 1.0 + 15.0, State.BROKEN),  # 5 in smooth, 200 cfm: no elbow fits
        (0.0, 1.0, State.BROKEN),  # 5 in smooth, 250 cfm: not allowed
    ],
)
def test_the_codes_length_table(allowed: float, equivalent: float, state: State) -> None:
    blow = air(150.0, code_ft=equivalent, allowed_ft=allowed)
    (found,) = judged("AIR-LENGTH", kitchen(), "irc-2015", route=straight_up(), blow=blow)
    assert found.state is state


def test_the_table_ends_at_300_cfm_and_says_nothing_above() -> None:
    blow = air(390.0, code_ft=500.0, allowed_ft=None)
    assert judged("AIR-LENGTH", kitchen(), "irc-2015", route=straight_up(), blow=blow) == ()
    endless = air(100.0, code_ft=500.0, allowed_ft=float("inf"))
    assert judged("AIR-LENGTH", kitchen(), "irc-2015", route=straight_up(), blow=endless) == ()


# --- sheet: IMC table 603.4, round at 1 in wg, rectangular at 1/2 in wg ---


@pytest.mark.parametrize(
    ("section", "least"),
    [
        (round_duct(8.0), 0.013),
        (round_duct(12.0), 0.016),
        (round_duct(14.0), 0.016),
        (round_duct(16.0), 0.019),
        (flat(10.0, 3.25), 0.013),
        (flat(12.0, 3.25), 0.016),
        (flat(14.0, 3.25), 0.019),
    ],
)
def test_thickness_of_the_sheet(section: SectionSize, least: float) -> None:
    plain = kitchen()
    for sheet, state in ((least, State.FINE), (least - 0.0002, State.BROKEN)):
        scene = replace(plain, duct=replace(plain.duct, sheet_in=sheet))
        (found,) = judged("DCT-SHEET", scene, route=straight_up(section=section))
        assert found.limit == pytest.approx(least * 1000)
        assert found.state is state
    (untold,) = judged("DCT-SHEET", plain, route=straight_up(section=section))
    assert untold.state is State.NOT_CHECKED
    assert f"{least:g} in" in untold.remedy


# a metric home is told the limit to the hundredth of a millimetre: 0.013, 0.016 and 0.019 in are 0.33, 0.41 and 0.48 mm
@pytest.mark.parametrize(
    ("section", "mm"), [(round_duct(8.0), 0.33), (round_duct(12.0), 0.41), (round_duct(16.0), 0.48)]
)
def test_sheet_bought_by_the_millimetre_passes_by_its_own_figure(section: SectionSize, mm: float) -> None:
    plain = kitchen(metric=True)
    (told,) = judged("DCT-SHEET", plain, route=straight_up(section=section))
    assert f"{mm} mm" in told.remedy
    for thick, state in ((mm, State.FINE), (mm - 0.01, State.BROKEN)):
        scene = replace(plain, duct=replace(plain.duct, sheet_in=thick / 25.4))
        (found,) = judged("DCT-SHEET", scene, route=straight_up(section=section))
        assert found.state is state


# IRC R302.5.2 (remembered): No. 26 gage, 0.48 mm; 0.019 in is the same gage's figure in IMC table 603.4
@pytest.mark.parametrize(
    ("sheet_in", "state"),
    [(0.019, State.FINE), (0.48 / 25.4, State.FINE), (0.47 / 25.4, State.BROKEN), (0.0187, State.BROKEN)],
)
def test_26_gage_through_the_garage_by_either_figure(sheet_in: float, state: State) -> None:
    plain = kitchen()
    scene = replace(plain, duct=replace(plain.duct, sheet_in=sheet_in))
    beyond = zone("garage", (0.0, 6.5, 0.0), (120.0, 240.0, 96.0), "garage")
    found = judged("FIR-GARAGE", scene, zones=(beyond,), route=duct(((60.0, 0.0, 80.0), (60.0, 246.0, 80.0))))
    assert [f.state for f in found] == [state]


# --- the other limits, by name ---


@pytest.mark.parametrize(
    ("profile", "key", "value"),
    [
        ("irc-2021", "overhang", 3.0),  # magazine advice: 3 in each side
        ("irc-2021", "canopy_max", 36.0),  # common practice; some makers allow up to 36 in
        ("irc-2021", "side_cabinet_up", 18.0),  # common practice
        ("irc-2021", "side_clearance", 6.0),  # common practice
        ("irc-2021", "straight_between", 24.0),  # trade wish; no code gives a number
        ("irc-2021", "elbow_ratio", 1.0),  # NREL 601011: turn radius at least 1 D
        ("irc-2021", "insulation_r", 8.0),  # NREL 6.6002.4
        ("irc-2021", "flow_per_heat", 0.01),  # trade rule: total heat / 100
        ("irc-2021", "intake_mechanical", 120.0),  # IRC M1504.3
        ("irc-2021", "intake_mechanical_above", 36.0),  # IRC M1504.3
        ("irc-2021", "lot_line", 36.0),  # IRC M1504.3
        ("irc-2021", "least_flow", 100.0),  # IRC table M1505.4.4, intermittent
        ("irc-2015", "least_flow", 100.0),  # IRC table M1507.4
        ("irc-2021", "garage_sheet", 0.019),  # IRC R302.5.2, 26 gage: remembered
        ("irc-2021", "supply_volts", 120.0),  # US practice: remembered
        ("england", "supply_hertz", 50.0),  # remembered
    ],
)
def test_limits_by_name(profile: str, key: str, value: float) -> None:
    assert rules.profile(profile).limits[key].number == value


def test_40000_btu_per_hour_ask_for_400_cfm() -> None:
    # trade rule: 40 000 / 100
    plain = kitchen()
    top = replace(plain.cooktop, kind=CooktopKind.GAS, heat_btu_h=40000.0)
    for cfm, state in ((400.0, State.CLOSE), (399.0, State.BROKEN), (420.0, State.FINE)):
        scene = replace(plain, cooktop=top, hood=replace(plain.hood, fan=Fan(cfm)))
        (found,) = judged("AIR-HEAT", scene)
        assert (found.limit, found.state) == (400.0, state)


def test_a_joist_chart_allows_nothing_in_a_glued_beam() -> None:
    # IRC R502.8.2: only the beam's own maker or a registered design
    beam = member("beam", SolidKind.BEAM, (0.0, 0.0, 0.0), (144.0, 3.5, 14.0), 0, "glued", timber=MemberKind.ENGINEERED)
    found = member_verdict(beam, rules.bore(3.0, 14.0), IRC, maker=MakerLimits(member_hole_in=6.0))
    assert found is not None
    assert found.verdict is MemberVerdict.DECIDED_ELSEWHERE
