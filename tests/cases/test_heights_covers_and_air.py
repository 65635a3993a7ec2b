"""Heights, chimney covers and the air that must come back: whole scenes, from the tape to the parts list.

The limits themselves are tested beside the rules; here the same number must stand in the finding, in the take-off and
in the air figures.
"""

from __future__ import annotations

from dataclasses import replace

import pytest
import samples
from cases.homes import (
    MM,
    blind,
    bought,
    built,
    cap,
    found,
    framed,
    labelled,
    one,
    only_roof,
    round_duct,
    straight,
    thing,
    with_duct,
    with_hood,
)

from routeviz import airflow, pipeline, rules
from routeviz.model.finding import Finding, State
from routeviz.model.scene import (
    Above,
    AboveKind,
    Ceiling,
    CooktopKind,
    Cover,
    Layer,
    MakerLimits,
    ObstacleKind,
    RuleChoice,
    RunDirection,
    Scene,
)


def scene_findings(scene: Scene) -> tuple[Finding, ...]:
    return rules.check_scene(scene, framed(scene), rules.profile(scene.rules.profile))


# --- chimney covers ---


@pytest.mark.parametrize(
    ("ceiling_in", "part", "state"),
    # cooktop 36, gap 30, body 11: 77 in; the cover goes from 16 to 34 in
    [(96.0, "chimney cover, as supplied", State.FINE), (90.0, "chimney cover, cut", State.BROKEN),
     (120.0, "chimney cover extension", State.BROKEN)],
)  # fmt: skip
def test_the_cover_reaches_the_ceiling_or_is_cut_or_extended(ceiling_in: float, part: str, state: State) -> None:
    home = samples.scene()
    home = replace(home, kitchen=replace(home.kitchen, ceiling_in=ceiling_in))
    plan = built(home, straight(60.0), cap())
    told = one(plan, "FIT-COVER")
    assert told.measured == pytest.approx(ceiling_in - 77.0)
    assert told.state is state
    assert len(bought(plan, part)) == 1


def cathedral(cover_max_in: float = 34.0) -> Scene:
    """No attic: the ceiling follows the rafters up from 96 in at the left wall to a ridge 150 in to the right, 8/12."""
    home = blind(samples.scene())
    assert home.roof is not None
    assert home.roof.framing is not None
    kitchen = replace(home.kitchen, width_in=300.0)
    roof = replace(home.roof, ridge=RunDirection.OUT, ridge_at_in=150.0, pitch=8 / 12,
                   framing=replace(home.roof.framing, first_in=17.0, spacing_in=24.0))  # fmt: skip
    home = replace(
        home,
        kitchen=kitchen,
        roof=roof,
        above=Above(AboveKind.ROOF),
        ceiling=Ceiling((Layer("gypsum board", 0.5),), None),
    )
    home = with_hood(with_duct(home, round_duct(8.0), max_elbows=1), width_in=60.0, weight_lb=330.0, centre_in=132.0,
                     cover=Cover(30.0, cover_max_in, 14.0, 14.0))  # fmt: skip
    return only_roof(replace(home, cooktop=replace(home.cooktop, centre_in=132.0, width_in=48.0)))


def test_under_a_pitched_roof_the_cover_is_as_long_as_the_ceiling_is_high_there() -> None:
    """96 + 8/12 of 139 in is 188 2/3 in over the cover's high side, 77 in to the top of its body: 111 2/3 in of cover."""
    plan = pipeline.plan(cathedral(), alternatives=1)
    assert plan.best is not None
    assert plan.best.route.elbows == 0.0
    told = one(plan, "FIT-COVER")
    assert told.measured == pytest.approx(96.0 + 139.0 * 8 / 12 - 77.0)
    assert told.state is State.BROKEN
    assert bought(plan, "chimney cover") == ("111 11/16 in",)
    long_enough = pipeline.plan(cathedral(cover_max_in=113.0), alternatives=1)
    assert one(long_enough, "FIT-COVER").state is State.FINE


# --- heights ---


def over_range_appliance(cabinet_in: float) -> Scene:
    """A 16 in high appliance hung under a wall cabinet whose top is at 102 in; gas, 24 in wanted."""
    cabinet = thing("wall-cabinet", ObstacleKind.CABINET, 55.0, 0.0, 102.0 - cabinet_in, 30.0, 13.0, cabinet_in)
    home = samples.scene(obstacles=(cabinet,))
    home = replace(home, kitchen=replace(home.kitchen, ceiling_in=108.0))
    mount = 102.0 - cabinet_in - 16.0 - 36.0
    maker = MakerLimits(hood_min_in=24.0, document="the appliance's listing")
    home = with_hood(home, width_in=30.0, depth_in=16.0, body_in=16.0, canopy_in=16.0, mount_in=mount, cover=None)
    return replace(home, rules=RuleChoice("irc-2021", maker))


def test_the_cabinet_shrinks_by_what_the_height_is_short() -> None:
    """A 30 in cabinet leaves 20 in; a 26 in one would do exactly, a 24 in one with 2 in to spare."""
    low = scene_findings(over_range_appliance(30.0))
    height = one(low, "HGT-CANOPY-LOW", "")
    assert (height.measured, height.limit, height.state) == (20.0, 24.0, State.BROKEN)
    window = one(low, "HGT-WINDOW")
    assert window.margin == pytest.approx(-4.0)
    assert "4 in" in window.remedy
    exact = scene_findings(over_range_appliance(26.0))
    assert one(exact, "HGT-WINDOW").margin == pytest.approx(0.0)
    assert one(exact, "HGT-CANOPY-LOW").state is not State.BROKEN
    assert one(scene_findings(over_range_appliance(24.0)), "HGT-WINDOW").margin == pytest.approx(2.0)


@pytest.mark.parametrize("kind", [CooktopKind.ELECTRIC, CooktopKind.GAS])
def test_two_surfaces_two_figures(kind: CooktopKind) -> None:
    """19 in to the hood, 28 in to the wooden cabinet: both are told, each against its own limit."""
    cabinet = thing("wood-cabinet", ObstacleKind.CABINET, 48.0, 0.0, 64.0, 10.0, 12.0, 20.0)
    home = samples.scene(obstacles=(cabinet,))
    home = with_hood(replace(home, cooktop=replace(home.cooktop, kind=kind)), mount_in=19.0, width_in=24.0)
    told = scene_findings(home)
    canopy = found(told, "HGT-CANOPY-LOW")
    assert {f.state for f in canopy} == {State.BROKEN}
    assert {f.measured for f in canopy} == {19.0}
    wood = [f for f in found(told, "HGT-CABINET") if f.limit == 30.0]
    assert [(f.measured, f.state) for f in wood] == [(28.0, State.BROKEN)]


@pytest.mark.parametrize(("maker_mm", "states"), [(None, []), (100.0, [State.BROKEN]), (40.0, [State.CLOSE])])
def test_beside_stone_only_the_maker_sets_a_distance(maker_mm: float | None, states: list[State]) -> None:
    """A gas cooker in an old fireplace, its cheek 50 mm away: stone does not burn, so no code counts it."""
    right = 70.0 + 15.0 + 50 * MM
    cheek = thing("stone-cheek", ObstacleKind.OTHER, right, 0.0, 0.0, 20.0, 17.7, 100.0, combustible=False)
    maker = MakerLimits(side_clearance_in=None if maker_mm is None else maker_mm * MM, document="the cooker's leaflet")
    home = replace(blind(samples.scene(obstacles=(cheek,))), metric=True, rules=RuleChoice("irc-2021", maker))
    home = with_hood(home, width_in=30.0)
    told = found(scene_findings(home), "CLR-SIDE")
    assert [f.state for f in told] == states
    for finding in told:
        assert finding.source_text == "the cooker's leaflet"
        assert finding.measured == pytest.approx(50 * MM)


# --- air that must come back ---


def test_350_cfm_needs_no_makeup_air_by_code_and_is_warned_of_all_the_same() -> None:
    calm = scene_findings(
        replace(labelled(samples.scene(), 350.0), rules=RuleChoice("irc-2021", open_flue_appliance=False))
    )
    assert one(calm, "AIR-MAKEUP").state is State.FINE
    assert one(calm, "AIR-FLUE").state is State.FINE
    for risk, code in (({"open_flue_appliance": True}, "AIR-FLUE"), ({"tight_house": True}, "AIR-TIGHT")):
        told = scene_findings(replace(labelled(samples.scene(), 350.0), rules=RuleChoice("irc-2021", **risk)))
        assert one(told, "AIR-MAKEUP").state is State.FINE
        assert (one(told, code).state, one(told, code).must) == (State.BROKEN, False)


@pytest.mark.parametrize("planned", [None, True])
def test_above_the_threshold_the_damper_follows_the_fan_and_is_bought(planned: bool | None) -> None:
    """The hood has no terminals for it: a relay or a pressure switch links the damper to the fan."""
    home = replace(labelled(samples.scene(), 600.0), rules=RuleChoice("irc-2015", makeup_air=planned))
    plan = built(home, straight(45.0), cap())
    told = one(plan, "AIR-MAKEUP")
    assert told.limit == 400.0
    assert told.state is (State.FINE if planned else State.BROKEN)
    assert "damper" in told.detail + told.remedy
    assert bought(plan, "makeup-air damper")
    assert bought(plan, "interlock")


def test_400_cfm_exactly_buys_no_damper() -> None:
    plan = built(labelled(samples.scene(), 400.0), straight(45.0), cap())
    assert not bought(plan, "makeup-air damper")


@pytest.mark.parametrize("cfm", [50.0, 150.0, 390.0])
def test_a_small_fan_can_pull_a_flue_back(cfm: float) -> None:
    """Two fans and a dryer already did: staying under the threshold proves nothing."""
    home = replace(labelled(samples.scene(), cfm), rules=RuleChoice("irc-2021", open_flue_appliance=True))
    plan = built(home, straight(45.0), cap())
    assert one(plan, "AIR-MAKEUP").state is State.FINE
    flue = one(plan, "AIR-FLUE")
    assert flue.state is State.BROKEN
    assert "carbon-monoxide alarm" in flue.remedy
    assert plan.best is not None
    assert plan.best.makeup is not None
    assert not plan.best.makeup.needed
    assert any("carbon monoxide" in caution for caution in plan.best.makeup.cautions)


def test_287_cfm_at_3_pa_come_through_a_foot_square() -> None:
    """Q = 2610 A sqrt(dp), A in ft2 and dp in in wg: 1 ft2."""
    air = airflow.makeup_air(samples.scene(), 400.0, 287.0, source="irc-2021-m1503-6", pressure_pa=3.0)
    assert air.square_in == pytest.approx(12.0, abs=0.05)
    assert air.opening_in2 / 144 == pytest.approx(1.0, abs=0.01)
