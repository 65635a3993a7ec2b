"""Where the duct ends and what it passes on its way: each test carries one situation's geometry in our own words."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import pytest
import rulebench as bench
import samples

from routeviz import rules
from routeviz.model.finding import Finding, State
from routeviz.model.scene import (
    CooktopKind,
    OutdoorKind,
    OutdoorThing,
    RuleChoice,
    Scene,
    Service,
    ServiceKind,
    Site,
    Space,
    SpaceKind,
    Wall,
    WallSide,
)
from routeviz.model.solids import ExitFace, FaceKind, KeepOut
from routeviz.rules.bench import hood_wall_face, keep_out, kitchen, look, round_duct, straight_out, straight_up

PLAIN = samples.scene()


def on_face(
    *things: KeepOut, profile: str = "irc-2021", scene: Scene | None = None, x: float = 60.0, z: float = 80.0
) -> tuple[Finding, ...]:
    """Judge a duct straight out through the hood wall beside outdoor things; its opening is 8 in round."""
    context = look(scene, faces=(hood_wall_face(*things),), route=straight_out(x=x, z=z), profile_name=profile)
    return rules.check(context)


def rear(to: str = "", *, scene: Scene | None = None, long_in: float = 60.0, **site: Any) -> Scene:
    """The sample kitchen with a rear outlet and a straight duct back, as somebody built it."""
    plain = scene or PLAIN
    hood = replace(plain.hood, outlet=replace(plain.hood.outlet, place="rear", up_in=8.0))
    return bench.built(bench.straight(long_in), bench.cap(to), scene=replace(plain, hood=hood, site=Site(**site)))


# --- places that are not outdoors ---


@pytest.mark.parametrize("kind", [CooktopKind.GAS, CooktopKind.ELECTRIC])
def test_ending_in_the_garage_is_not_outdoors_whatever_cooks(kind: CooktopKind) -> None:
    # The wall behind is the garage; the hood blows into it. With an electric range too.
    scene = rear("garage", scene=replace(PLAIN, cooktop=replace(PLAIN.cooktop, kind=kind)))
    found = bench.one_of(bench.judge_built(scene), "TRM-OUTDOORS")
    assert (found.state, found.must) == (State.BROKEN, True)
    assert "garage is not outdoors" in found.detail


@pytest.mark.parametrize("place", ["attic", "crawl", "porch", "shaft", "soffit", "room"])
def test_enclosed_places_are_not_outdoors(place: str) -> None:
    # A porch attic with vented soffits, a shaft, a soffit: all "almost outdoors", none of them is.
    found = bench.one_of(bench.judge_built(bench.built(bench.straight(30.0), bench.open_end(place))), "TRM-OUTDOORS")
    assert (found.state, found.must) == (State.BROKEN, True)


def test_ending_in_the_attic_is_found_without_being_told() -> None:
    # 30 in up from the collar at 78 1/2 in: in the attic, under the roof
    scene = bench.built(bench.straight(30.0), bench.open_end())
    found = bench.one_of(bench.judge_built(scene), "TRM-OUTDOORS")
    assert found.state is State.BROKEN
    assert "attic" in found.detail


def test_out_through_the_roof_is_outdoors() -> None:
    scene = bench.built(bench.straight(60.0), bench.cap())
    found = bench.one_of(bench.judge_built(scene), "TRM-OUTDOORS")
    assert found.state is State.FINE


def test_an_unknown_end_is_to_be_found_first() -> None:
    context = look(route=straight_up(termination=replace(straight_up().termination, space=""), as_built=True))
    found = bench.one_of(rules.check(context), "TRM-OUTDOORS")
    assert found.state is State.NOT_CHECKED
    assert "find its end" in found.remedy


def garage() -> Space:
    def wall(side: WallSide) -> Wall:
        return replace(samples.wall(side), openings=())

    return Space("garage", SpaceKind.GARAGE, WallSide.HOOD, 240.0, 0.0, 144.0, 0.0, 96.0,
                 (wall(WallSide.FRONT), wall(WallSide.LEFT), wall(WallSide.RIGHT)), True)  # fmt: skip


def beyond_garage() -> Scene:
    walls = tuple(
        replace(samples.wall(WallSide.HOOD, "garage"), openings=()) if w.side is WallSide.HOOD else w
        for w in PLAIN.walls
    )
    return replace(PLAIN, walls=walls, spaces=(garage(),))


def test_through_the_garage_to_the_outside_is_allowed_and_asks_for_steel() -> None:
    # 20 ft through the garage and out of its far wall, or ending inside it
    through = bench.judge_built(rear(scene=beyond_garage(), long_in=256.0))
    assert bench.one_of(through, "TRM-OUTDOORS").state is State.FINE
    steel = bench.one_of(through, "FIR-GARAGE")
    assert steel.state is State.NOT_CHECKED
    assert "garage" in steel.detail
    inside = bench.judge_built(rear(scene=beyond_garage(), long_in=100.0))
    assert bench.one_of(inside, "TRM-OUTDOORS").state is State.BROKEN
    plastic = replace(beyond_garage(), duct=replace(PLAIN.duct, material="PVC"))
    told = bench.judge_built(rear(scene=plastic, long_in=256.0))
    assert bench.one_of(told, "FIR-GARAGE").state is State.BROKEN


def test_a_cold_garage_asks_for_insulation_a_fall_and_a_damper() -> None:
    # Rear outlet into an unheated garage, winters of 0 degrees F, then out: insulate, fall outwards, damper at the cap.
    findings = bench.judge_built(rear(scene=beyond_garage(), long_in=256.0, cold_climate=True))
    wrap = bench.one_of(findings, "DCT-INSULATION")
    assert wrap.state is State.NOT_CHECKED
    assert "R-8" in wrap.remedy
    assert bench.one_of(findings, "DCT-SLOPE").state is State.NOT_CHECKED
    assert bench.one_of(findings, "DCT-DAMPER").state is State.FINE
    assert bench.one_of(findings, "DCT-LOW-POINT").state is State.FINE
    mild = bench.judge_built(rear(scene=beyond_garage(), long_in=256.0))
    assert bench.all_of(mild, "DCT-INSULATION") == ()


# --- distances ---


def test_a_cap_just_under_a_vented_soffit_beside_a_door() -> None:
    # 8 in under the soffit vent; a door 2 ft to one side.
    vent = keep_out("soffit-vent", OutdoorKind.SOFFIT_VENT.value, 0.0, 92.0, 120.0, 1.0)
    door = keep_out("back-door", OutdoorKind.DOOR.value, 88.0, 12.0, 32.0, 80.0)
    findings = on_face(vent, door)
    soffit = bench.one_of(findings, "TRM-SOFFIT-VENT")
    assert (soffit.measured, soffit.state, soffit.must) == (8.0, State.BROKEN, False)
    assert "solid soffit panels" in soffit.remedy
    told = bench.one_of(findings, "TRM-OPENING")
    assert (told.measured, told.margin, told.must) == (24.0, -12.0, True)
    moved = on_face(vent, door, x=36.0, z=40.0)
    assert bench.one_of(moved, "TRM-OPENING").state is State.FINE
    assert bench.one_of(moved, "TRM-SOFFIT-VENT").state is State.FINE


def test_fixed_sash_opening_sash_and_a_cap_above_in_the_newest_edition() -> None:
    # An opening sash 2 ft below the cap: 3 ft everywhere, but 1 ft in the 2024 edition when the cap is above it.
    window = keep_out("window", OutdoorKind.OPERABLE_WINDOW.value, 50.0, 32.0, 20.0, 20.0)
    older = bench.one_of(on_face(window, profile="irc-2021"), "TRM-OPENING")
    assert (older.measured, older.limit, older.state) == (24.0, 36.0, State.BROKEN)
    newer = bench.one_of(on_face(window, profile="irc-2024"), "TRM-OPENING")
    assert (newer.measured, newer.limit, newer.state) == (24.0, 12.0, State.FINE)
    beside = keep_out("window", OutdoorKind.OPERABLE_WINDOW.value, 88.0, 60.0, 20.0, 40.0)
    assert bench.one_of(on_face(beside, profile="irc-2024"), "TRM-OPENING").state is State.BROKEN
    fixed = keep_out("window", OutdoorKind.FIXED_WINDOW.value, 50.0, 32.0, 20.0, 20.0)
    assert bench.all_of(on_face(fixed, profile="washington"), "TRM-FIXED") == ()


def test_an_outdoor_unit_above_is_no_code_matter() -> None:
    unit = keep_out("heat-pump", OutdoorKind.UNIT.value, 50.0, 86.0, 30.0, 20.0)
    found = bench.one_of(on_face(unit), "TRM-UNIT")
    assert (found.state, found.must, found.source) == (State.BROKEN, False, "common-practice")


def test_a_window_onto_a_shaft_with_neighbours_above() -> None:
    # The cap beside one's own window, and three more windows above it: the own one is too near, the others get the smell.
    own = keep_out("own-window", OutdoorKind.OPERABLE_WINDOW.value, 74.0, 60.0, 24.0, 36.0)
    above = tuple(
        keep_out(f"upstairs-{n}", OutdoorKind.OPERABLE_WINDOW.value, 74.0, 60.0 + 108.0 * n, 24.0, 36.0)
        for n in (1, 2, 3)
    )
    findings = on_face(own, *above)
    assert [f.state for f in bench.all_of(findings, "TRM-OPENING")].count(State.BROKEN) == 1
    smell = bench.all_of(findings, "TRM-ABOVE")
    assert len(smell) == 3
    assert {(f.state, f.must) for f in smell} == {(State.CLOSE, False)}


@pytest.mark.parametrize("profile", ["irc-2015", "irc-2021", "washington"])
def test_a_wall_a_foot_and_a_half_inside_the_lot_line(profile: str) -> None:
    # The cap points at the neighbour's wall: 18 in to the line where 3 ft are wanted.
    line = KeepOut("lot-line", "lot line", OutdoorKind.LOT_LINE.value, (0.0, 12.0), (120.0, 110.0), 36.0, 18.0)
    found = bench.one_of(on_face(line, profile=profile), "TRM-LOT-LINE")
    assert (found.measured, found.margin, found.state) == (18.0, -18.0, State.BROKEN)


@pytest.mark.parametrize("profile", ["unknown", "ontario"])
def test_where_no_number_is_known_it_is_asked_not_guessed(profile: str) -> None:
    line = KeepOut("lot-line", "lot line", OutdoorKind.LOT_LINE.value, (0.0, 12.0), (120.0, 110.0), 36.0, 18.0)
    found = bench.one_of(on_face(line, profile=profile), "TRM-LOT-LINE")
    assert (found.state, found.measured, found.limit) == (State.NOT_CHECKED, 18.0, None)
    assert found.remedy.startswith("Ask the building department")


def test_a_framed_lot_line_is_measured_square_to_the_wall() -> None:
    # 12 ft behind the hood wall by the scene; a duct straight back, 8 in round
    hood_wall = replace(PLAIN.wall(WallSide.HOOD), lot_line_in=30.0, openings=())
    walls = (hood_wall, *PLAIN.walls[1:])
    findings = bench.judge_built(rear(scene=replace(PLAIN, walls=walls), long_in=7.1875))
    (found,) = (f for f in bench.all_of(findings, "TRM-LOT-LINE") if f.where[1].startswith("lot-line-hood"))
    assert (found.measured, found.state) == (30.0, State.BROKEN)


def test_windows_both_sides_and_a_flexible_hose() -> None:
    # The hood hangs between two kitchen windows that open, 40 in apart; a foil hose leads to the cap.
    left = keep_out("left-window", OutdoorKind.OPERABLE_WINDOW.value, 10.0, 40.0, 30.0, 40.0)
    right = keep_out("right-window", OutdoorKind.OPERABLE_WINDOW.value, 80.0, 40.0, 30.0, 40.0)
    both = bench.all_of(on_face(left, right), "TRM-OPENING")
    assert [f.state for f in both] == [State.BROKEN, State.BROKEN]
    assert {f.measured for f in both} == {16.0}
    hose = bench.judge_built(bench.built(bench.flex(24.0), bench.straight(36.0), bench.cap()))
    assert bench.one_of(hose, "DCT-SMOOTH").state is State.BROKEN


def test_a_gutter_keeps_the_flap_shut() -> None:
    # Eave corner: the gutter hangs 1 in above the opening, a cable a little to one side.
    gutter = keep_out("gutter", OutdoorKind.OTHER.value, 0.0, 85.0, 120.0, 5.0)
    found = bench.one_of(on_face(gutter), "TRM-FLAP")
    assert (found.measured, found.state) == (1.0, State.BROKEN)


def test_an_outdoor_thing_of_the_scene_reaches_the_rule_through_the_frame() -> None:
    thing = OutdoorThing("intake", OutdoorKind.MECHANICAL_INTAKE, "hood", 20.0, 74.0, 10.0, 8.0)
    findings = bench.judge_built(rear(scene=replace(PLAIN, outdoors=(thing,)), long_in=7.1875))
    found = bench.one_of(findings, "TRM-INTAKE")
    # outlet 70 in from the left, 8 in round: 66 - 30 = 36 in; hood bottom 66 + 8 in up
    assert (found.measured, found.limit, found.state) == (36.0, 120.0, State.BROKEN)


def test_snow_over_the_roof_cap() -> None:
    roof = ExitFace("roof", "the roof", FaceKind.ROOF, 2, 1, 0.0, (150.0, 0.0, 0.0), (0.0, -120.0), (120.0, 0.0))
    scene = replace(kitchen(), site=Site(snow_in=30.0, cold_climate=True))
    found = bench.one_of(rules.check(look(scene, faces=(roof,), route=straight_up())), "TRM-SNOW")
    assert (found.margin, found.state) == (8.0 - 30.0, State.BROKEN)
    assert "wall" in found.remedy


# --- rated walls, shafts, services ---


def test_a_rated_corridor_wall_is_flagged_and_refused() -> None:
    # 2x4 studs, one hour, 5/8 in board: duct up its stud bay to the roof.
    walls = tuple(replace(w, fire_rated=w.side is WallSide.HOOD, openings=()) for w in PLAIN.walls)
    findings = bench.judge_built(rear(scene=replace(PLAIN, walls=walls), long_in=20.0))
    found = bench.one_of(findings, "FIR-WALL")
    assert (found.state, found.must) == (State.BROKEN, True)
    assert "shaft" in found.remedy
    unsure = bench.judge_built(rear(scene=bench.placed(replace(PLAIN, walls=walls), "unknown"), long_in=20.0))
    assert bench.one_of(unsure, "FIR-WALL").state is State.NOT_CHECKED


def test_a_run_up_inside_a_rated_wall_is_found_by_its_plates() -> None:
    # the duct never comes out through the board of that wall: it goes up inside and leaves through the plates
    walls = tuple(replace(w, fire_rated=w.side is WallSide.HOOD, openings=()) for w in PLAIN.walls)
    scene = replace(PLAIN, walls=walls)
    frame = bench.framed(scene)
    plate = next(s for s in frame.solids if s.side is WallSide.HOOD and "plate-top" in s.id)
    from routeviz.rules.bench import UP, meets

    route = straight_up(penetrations=(meets(plate, UP, (60.0, 3.0, 95.0), 8.5),))
    context = rules.Context(scene, frame, rules.profile("irc-2021"), route)
    assert bench.one_of(rules.check(context), "FIR-WALL").state is State.BROKEN


def cabled(kind: ServiceKind, *, movable: bool) -> Scene:
    service = Service("old-run", kind, 68.0, 40.0, 3.0, 54.0, 1.0, movable)
    walls = tuple(replace(w, services=(service,), openings=()) if w.side is WallSide.HOOD else w for w in PLAIN.walls)
    return replace(PLAIN, walls=walls)


def test_cables_behind_the_hood_are_moved_first() -> None:
    # Cables run down the wall right where the duct goes out.
    findings = bench.judge_built(rear(scene=cabled(ServiceKind.CABLE, movable=True), long_in=7.1875))
    found = bench.one_of(findings, "SVC-CLASH")
    assert (found.state, found.must) == (State.BROKEN, True)
    assert "moved" in found.remedy
    fixed = bench.judge_built(rear(scene=cabled(ServiceKind.GAS, movable=False), long_in=7.1875))
    assert "may not be moved" in bench.one_of(fixed, "SVC-CLASH").remedy


def test_a_return_air_bay_is_not_shared() -> None:
    findings = bench.judge_built(rear(scene=cabled(ServiceKind.RETURN_AIR, movable=False), long_in=7.1875))
    found = bench.one_of(findings, "SVC-SHARED")
    assert (found.state, found.must) == (State.BROKEN, True)
    assert found.source == "irc-2021-m1503-3"


# --- air that must come back ---


def fan(cfm: float, **choice: Any) -> tuple[Finding, ...]:
    plain = kitchen()
    hood = replace(plain.hood, fan=replace(plain.hood.fan, rated_cfm=cfm))
    scene = replace(plain, hood=hood, rules=RuleChoice("irc-2021", **choice))
    return rules.check(look(scene))


def test_350_cfm_in_a_tight_house() -> None:
    # Below the threshold; a window is opened at full speed. Good enough only without an open flue.
    findings = fan(350.0, open_flue_appliance=False, tight_house=True)
    assert bench.one_of(findings, "AIR-MAKEUP").state is State.FINE
    assert bench.one_of(findings, "AIR-FLUE").state is State.FINE
    tight = bench.one_of(findings, "AIR-TIGHT")
    assert (tight.state, tight.must) == (State.BROKEN, False)


@pytest.mark.parametrize("cfm", [50.0, 150.0, 350.0])
def test_the_threshold_is_no_proof_of_safety(cfm: float) -> None:
    # An open-flue water heater and furnace: a small fan or a dryer already pulls their exhaust back.
    findings = fan(cfm, open_flue_appliance=True)
    assert bench.one_of(findings, "AIR-MAKEUP").state is State.FINE
    flue = bench.one_of(findings, "AIR-FLUE")
    assert (flue.state, flue.must) == (State.BROKEN, False)
    assert "carbon-monoxide alarm" in flue.remedy


def test_more_than_400_cfm_asks_for_a_damper_that_follows_the_fan() -> None:
    findings = fan(600.0, open_flue_appliance=True)
    needed = bench.one_of(findings, "AIR-MAKEUP")
    assert (needed.state, needed.must) == (State.BROKEN, True)
    assert "600 cfm" in needed.remedy
    assert "opens with the hood" in needed.remedy
    planned = bench.one_of(fan(600.0, makeup_air=True), "AIR-MAKEUP")
    assert planned.state is State.FINE
    assert "follows the fan" in planned.detail


def test_makeup_air_that_hangs_on_a_flue_nobody_spoke_of_is_asked() -> None:
    """The 2021 edition asks for it only with a naturally drafted appliance: unknown is neither broken nor fine."""
    found = bench.one_of(fan(600.0), "AIR-MAKEUP")
    assert (found.state, found.must) == (State.NOT_CHECKED, True)
    assert (found.measured, found.limit, found.margin) == (None, None, None)
    assert "600 cfm is more than 400 cfm" in found.detail
    assert "pull its flue gas back" in found.detail
    assert found.remedy.startswith("Look for a water heater, furnace, stove or fireplace")
    assert "provide about 600 cfm of makeup air" in found.remedy
    assert bench.one_of(fan(600.0, open_flue_appliance=True), "AIR-MAKEUP").state is State.BROKEN
    assert bench.one_of(fan(400.0), "AIR-MAKEUP").state is State.FINE


def test_where_makeup_air_is_wanted_at_any_flow_no_limit_of_nothing_is_told() -> None:
    for code, choice in (("AIR-FLUE", {"open_flue_appliance": True}), ("AIR-TIGHT", {"tight_house": True})):
        found = bench.one_of(fan(200.0, **choice), code)
        assert (found.state, found.measured, found.limit, found.margin) == (State.BROKEN, None, None, None)
        assert "makeup air needed for 200 cfm: none stated" in found.detail
        planned = bench.one_of(fan(200.0, makeup_air=True, **choice), code)
        assert planned.state is (State.CLOSE if code == "AIR-FLUE" else State.FINE)
        assert "planned" in planned.detail


def test_nothing_said_of_flues_is_asked() -> None:
    found = bench.one_of(fan(200.0), "AIR-FLUE")
    assert found.state is State.NOT_CHECKED
    assert "open flue" in found.detail


def test_round_and_flat_openings_have_their_own_edges() -> None:
    from routeviz.rules.bench import flat
    from routeviz.rules.distances import opening_gap_in

    window = keep_out("window", OutdoorKind.OPERABLE_WINDOW.value, 100.0, 60.0, 20.0, 40.0)
    centre = (60.0, 80.0)
    assert opening_gap_in(centre, round_duct(8.0), window) == 36.0
    assert opening_gap_in(centre, flat(10.0, 3.25), window) == 35.0
    assert opening_gap_in(centre, flat(10.0, 3.25), window, wide_first=False) == 40.0 - 1.625
