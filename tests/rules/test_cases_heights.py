"""Heights, clearances and fit, as people meet them: each test carries one situation's geometry in our own words."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import pytest
import rulebench as bench
import samples

from routeviz import rules
from routeviz.model.finding import State
from routeviz.model.scene import (
    Above,
    AboveKind,
    Beam,
    Burner,
    Ceiling,
    CooktopKind,
    Cover,
    Kitchen,
    Layer,
    MakerLimits,
    MemberKind,
    Obstacle,
    ObstacleKind,
    Opening,
    OpeningKind,
    RoofForm,
    RuleChoice,
    RunDirection,
    Scene,
    WallSide,
)
from routeviz.rules.bench import cabinet

PLAIN = samples.scene()


def at(
    mount_in: float, *, kind: CooktopKind = CooktopKind.GAS, maker: MakerLimits | None = None, **changes: Any
) -> Scene:
    """The sample kitchen with its hood at another height."""
    return samples.scene(
        hood=replace(PLAIN.hood, mount_in=mount_in), cooktop=replace(PLAIN.cooktop, kind=kind),
        rules=RuleChoice("irc-2021", maker or MakerLimits()), **changes,
    )  # fmt: skip


@pytest.mark.parametrize("kind", list(CooktopKind))
def test_less_than_20_in_between_cooktop_and_hood(kind: CooktopKind) -> None:
    # A cooktop not 20 in under the hood, and wood above it lower than 30 in: both are told, as two figures.
    scene = at(19.5, kind=kind, obstacles=(cabinet("wood-cabinet", 60.0, 62.0, 20.0, 20.0),))
    findings = bench.judge_scene(scene)
    canopy = bench.one_of(findings, "HGT-CANOPY-LOW")
    assert canopy.state is State.BROKEN
    assert canopy.margin == pytest.approx(-4.5)
    above = bench.all_of(findings, "HGT-CABINET")
    assert [(f.measured, f.limit, f.state) for f in above] == [(26.0, 30.0, State.BROKEN)]
    assert above[0].must


def test_a_listed_appliance_too_low_tells_by_how_much_the_cabinet_must_shrink() -> None:
    # Gas; a 30 in cabinet brings the appliance to 18 in; 24 in are wanted: 6 in, so a 24 in cabinet does it.
    low = bench.one_of(bench.judge_scene(at(18.0)), "HGT-CANOPY-LOW")
    assert (low.state, low.margin) == (State.BROKEN, -6.0)
    assert "6 in higher" in low.remedy
    assert bench.one_of(bench.judge_scene(at(24.0)), "HGT-CANOPY-LOW").state is not State.BROKEN


def test_three_figures_stay_apart() -> None:
    # The range's manual: 42 in to bare wood; the place 30 in; an all-metal hood is wanted at 30 in, no cabinet above.
    maker = MakerLimits(cabinet_above_in=42.0)
    alone = bench.judge_scene(at(30.0, maker=maker))
    assert bench.one_of(alone, "HGT-CANOPY-LOW").state is State.FINE
    assert bench.all_of(alone, "HGT-CABINET") == ()
    wood = cabinet("wood-cabinet", 60.0, 36.0 + 41.0, 20.0, 10.0)
    (told, *_) = bench.all_of(bench.judge_scene(at(18.0, maker=maker, obstacles=(wood,))), "HGT-CABINET")
    assert (told.limit, told.state, told.source) == (42.0, State.BROKEN, "maker")


def gas_top(**changes: Any) -> Any:
    return replace(PLAIN.cooktop, width_in=36.0, **changes)


def test_both_readings_of_the_side_clearance_are_told_with_their_spare() -> None:
    # 36 in gas rangetop; its guide: 6 in sideways, 18 in up to side cabinets. Cabinets hang flush with it, 18 in up.
    # The owner reads that the zone ends 18 in up; the inspector reads that it goes on up to the hood.
    maker = MakerLimits(side_clearance_in=6.0, side_cabinet_up_in=18.0)
    flush = (cabinet("left-cabinet", 28.0, 54.0, 24.0, 30.0), cabinet("right-cabinet", 88.0, 54.0, 24.0, 30.0))
    scene = samples.scene(cooktop=gas_top(), obstacles=flush, rules=RuleChoice("irc-2021", maker))
    findings = bench.judge_scene(scene)
    up = bench.all_of(findings, "CLR-SIDE-UP")
    assert [(f.measured, f.limit, f.state) for f in up] == [(18.0, 18.0, State.CLOSE)] * 2
    to_the_hood = bench.all_of(findings, "CLR-SIDE")
    assert len(to_the_hood) == 2
    for found in to_the_hood:
        assert (found.measured, found.margin, found.state, found.must) == (0.0, -6.0, State.BROKEN, False)
        assert "read up to the hood" in found.title
        assert "there it is fine" in found.detail


def test_a_side_cabinet_that_hangs_lower_breaks_the_first_reading() -> None:
    low = (cabinet("left-cabinet", 28.0, 50.0, 24.0, 30.0),)
    maker = MakerLimits(side_clearance_in=6.0, side_cabinet_up_in=18.0)
    scene = samples.scene(cooktop=gas_top(), obstacles=low, rules=RuleChoice("irc-2021", maker))
    (found,) = bench.all_of(bench.judge_scene(scene), "CLR-SIDE")
    assert (found.state, found.must, found.margin) == (State.BROKEN, True, -6.0)


def test_a_quarter_inch_short_depends_on_what_it_is_measured_from() -> None:
    # Counter 35 1/4 in; side cabinets 17 3/4 in above it; from the burner tips it is 18 in.
    top = replace(PLAIN.cooktop, height_in=35.0, counter_in=35.25)
    scene = samples.scene(cooktop=top, obstacles=(cabinet("side-cabinet", 86.0, 53.0, 24.0, 30.0),))
    counter, tips = bench.all_of(bench.judge_scene(scene), "CLR-SIDE-UP")
    assert "counter" in counter.title
    assert (counter.measured, counter.margin, counter.state) == (17.75, -0.25, State.BROKEN)
    assert "cooking surface" in tips.title
    assert (tips.measured, tips.margin) == (18.0, 0.0)
    assert tips.state is not State.BROKEN


def test_side_rules_are_for_gas_unless_the_maker_speaks() -> None:
    scene = samples.scene(
        cooktop=replace(PLAIN.cooktop, kind=CooktopKind.INDUCTION), obstacles=(cabinet("tall", 85.0, 0.0, 24.0, 84.0),)
    )
    assert bench.all_of(bench.judge_scene(scene), "CLR-SIDE") == ()


def test_stone_beside_the_cooker_does_not_burn_but_bounds_the_canopy() -> None:
    # A gas cooker in an old stone fireplace 900 mm wide with a lintel 760 mm above the hob.
    stone = {"combustible": False, "out_in": 0.0, "depth_in": 24.0}
    left = replace(cabinet("left-cheek", 40.0, 0.0, 70.0 - 450 / 25.4 - 40.0, 100.0), kind=ObstacleKind.OTHER, **stone)  # type: ignore[arg-type]
    right = replace(cabinet("right-cheek", 70.0 + 450 / 25.4, 0.0, 20.0, 100.0), kind=ObstacleKind.OTHER, **stone)  # type: ignore[arg-type]
    scene = samples.scene(obstacles=(left, right))
    findings = bench.judge_scene(scene)
    assert bench.all_of(findings, "CLR-SIDE") == ()
    room = bench.all_of(findings, "FIT-ROOM")  # 36 in is 914 mm: it does not go in
    assert {f.state for f in room} == {State.BROKEN}
    smaller = replace(scene, hood=replace(scene.hood, width_in=600 / 25.4, cover=None))
    assert bench.one_of(bench.judge_scene(smaller), "FIT-ROOM").state is State.FINE


def test_three_inches_of_overhang_and_half_of_the_front_burners() -> None:
    # 36 in cooktop under a 42 in hood; a 30 in deep range wants a canopy 21 to 24 in deep.
    burners = (Burner(9.0, 6.0, 8.0), Burner(27.0, 6.0, 8.0), Burner(9.0, 18.0, 9.0), Burner(27.0, 18.0, 9.0))
    top = replace(PLAIN.cooktop, width_in=36.0, depth_in=24.0, back_in=3.0, burners=burners)
    deep = samples.scene(cooktop=top, hood=replace(PLAIN.hood, width_in=42.0, depth_in=24.0))
    findings = bench.judge_scene(deep)
    over = bench.one_of(findings, "FIT-OVERHANG")
    assert (over.measured, over.state) == (3.0, State.FINE)
    area, front = bench.all_of(findings, "FIT-COVERAGE")
    assert area.measured == pytest.approx(21 / 24)
    assert front.measured == pytest.approx(24.0 - (3.0 + 18.0))
    shallow = replace(deep, hood=replace(deep.hood, depth_in=18.0, width_in=36.0))
    told = bench.judge_scene(shallow)
    assert bench.one_of(told, "FIT-OVERHANG").state is State.BROKEN
    area, front = bench.all_of(told, "FIT-COVERAGE")
    assert (area.measured, area.state) == (pytest.approx(15 / 24), State.BROKEN)
    assert (front.margin, front.state) == (pytest.approx(-3.0), State.BROKEN)


def test_a_hood_off_the_middle_of_the_cooktop_loses_on_one_side() -> None:
    scene = samples.scene(hood=replace(PLAIN.hood, centre_in=74.0))
    found = bench.one_of(bench.judge_scene(scene), "FIT-OVERHANG")
    assert (found.measured, found.state) == (-1.0, State.BROKEN)
    assert "left" in found.detail


@pytest.mark.parametrize(
    ("ceiling", "room", "state"),
    # ceiling - (36 + 30 + 11) between 16 and 34 in
    [
        (96.0, 19.0, State.FINE),
        (108.0, 31.0, State.FINE),
        (120.0, 43.0, State.BROKEN),
        (92.0, 15.0, State.BROKEN),
        (93.0, 16.0, State.CLOSE),
    ],
)
def test_a_cover_for_an_8_ft_ceiling_in_higher_and_lower_rooms(ceiling: float, room: float, state: State) -> None:
    found = bench.one_of(bench.judge_scene(samples.scene(kitchen=Kitchen(144.0, 132.0, ceiling))), "FIT-COVER")
    assert (found.measured, found.state, found.must) == (room, state, False)
    if ceiling == 120.0:
        assert "extension" in found.remedy


def test_a_pitched_room_without_an_attic_asks_for_a_long_cover() -> None:
    # 60 in hood under an 18 ft pitched ceiling: cover length is the ceiling there less the hood's top.
    roof = replace(PLAIN.roof, form=RoofForm.GABLE, ridge=RunDirection.OUT, ridge_at_in=72.0, pitch=0.75)  # type: ignore[type-var]
    scene = samples.scene(
        kitchen=Kitchen(144.0, 132.0, 162.0), above=Above(AboveKind.ROOF), ceiling=Ceiling((Layer("board", 0.5),), None),
        roof=roof, hood=replace(PLAIN.hood, width_in=60.0, cover=Cover(40.0, 140.0, 14.0, 12.0)),
    )  # fmt: skip
    found = bench.one_of(bench.judge_scene(scene), "FIT-COVER")
    # at 70 in from the left: 162 + 0.75 x 70 = 214.5; top of the hood 77; the ridge at 72 in is over the cover, 7 in
    # either side of its middle: 2 in x 0.75 higher. 139 of 140 in.
    assert found.measured == pytest.approx(214.5 + 1.5 - 77.0)
    assert found.state is State.FINE


def test_a_cover_cannot_follow_a_duct_that_leaves_it() -> None:
    # The duct must step forward of a truss and back below the ceiling: 8 in round, cover 12 x 11 in.
    scene = bench.built(
        bench.straight(2.0), bench.elbow("front"), bench.straight(4.0), bench.elbow("up"), bench.straight(40.0), bench.cap(),
    )  # fmt: skip
    found = bench.one_of(bench.judge_built(scene), "FIT-COVER-DUCT")
    assert found.state is State.BROKEN
    # two elbows of radius 8 and 4 in between: 20 in forward of the outlet; half the duct is 4 in
    cover = scene.hood.cover
    assert cover is not None
    assert found.margin == pytest.approx(cover.depth_in - (scene.hood.outlet.out_in + 20.0) - 4.0)


# --- room for the hood ---


def test_a_cabinet_in_the_canopys_place_tells_the_least_shift() -> None:
    # canopy 52 to 88; cabinet from 85: 3 in in the way
    scene = samples.scene(obstacles=(cabinet("wall-cabinet", 85.0, 54.0, 24.0, 30.0),))
    found = bench.one_of(bench.judge_scene(scene), "FIT-ROOM")
    assert (found.state, found.margin) == (State.BROKEN, -3.0)
    assert found.detail == "the wall cabinet reaches 3 in into the hood's place."
    assert found.remedy.startswith("Shift the hood 3 in left")
    moved = replace(scene, hood=replace(scene.hood, centre_in=67.0))
    assert bench.one_of(bench.judge_scene(moved), "FIT-ROOM").state is not State.BROKEN


def test_the_offered_shift_clears_everything_at_once() -> None:
    # cabinets on both sides, and a second one further left: the nearest free place is beyond both
    things = (cabinet("near", 40.0, 54.0, 14.0, 30.0), cabinet("far", 86.0, 54.0, 30.0, 30.0))
    scene = samples.scene(kitchen=Kitchen(240.0, 132.0, 96.0), obstacles=things,
                          walls=tuple(replace(w, openings=()) for w in PLAIN.walls))  # fmt: skip
    found = bench.all_of(bench.judge_scene(scene), "FIT-ROOM")
    assert len(found) == 2
    for centre in _offered(found[0].remedy, 70.0):
        moved = replace(scene, hood=replace(scene.hood, centre_in=centre))
        assert bench.one_of(bench.judge_scene(moved), "FIT-ROOM").state is not State.BROKEN


def _offered(remedy: str, centre: float) -> list[float]:
    from routeviz.units import parse_length

    found = []
    for part in remedy.removeprefix("Shift the hood ").rstrip(".").split(" or "):
        length, way = part.rsplit(" ", 1)
        found.append(centre + parse_length(length) * (1 if way == "right" else -1))
    return found


def test_a_window_behind_the_hood_counts_only_where_heights_overlap() -> None:
    def with_window(sill: float, high: float) -> Scene:
        window = Opening("range-window", OpeningKind.WINDOW, True, 60.0, sill, 20.0, high)
        walls = tuple(replace(w, openings=(window,)) if w.side is WallSide.HOOD else w for w in PLAIN.walls)
        return samples.scene(walls=walls)

    # the hood's body reaches from 66 to 77 in
    assert bench.one_of(bench.judge_scene(with_window(42.0, 36.0)), "FIT-ROOM").state is State.BROKEN
    assert bench.one_of(bench.judge_scene(with_window(40.0, 26.0)), "FIT-ROOM").state is not State.BROKEN


def test_walls_ceiling_and_beams_count_too() -> None:
    left = bench.one_of(bench.judge_scene(samples.scene(hood=replace(PLAIN.hood, centre_in=15.0))), "FIT-ROOM")
    assert left.detail == "the left wall reaches 3 in into the hood's place."
    tall = samples.scene(hood=replace(PLAIN.hood, body_in=33.0, cover=None))
    under = bench.one_of(bench.judge_scene(tall), "FIT-ROOM")
    assert "the ceiling" in under.detail
    assert under.remedy == "Hang the hood lower, or choose a lower one."
    beam = Beam("kitchen-beam", MemberKind.SAWN, 6.0, 24.0, RunDirection.OUT, 70.0, 72.0)
    crossing = samples.scene(ceiling=replace(PLAIN.ceiling, beams=(beam,)))
    assert "the kitchen beam" in bench.one_of(bench.judge_scene(crossing), "FIT-ROOM").detail


def test_a_chase_or_an_old_hole_is_no_body() -> None:
    things = (
        Obstacle("riser", ObstacleKind.CHASE, 60.0, 0.0, 60.0, 20.0, 10.0, 40.0),
        Obstacle("old-hole", ObstacleKind.HOLE, 66.0, -6.0, 70.0, 8.0, 6.0, 8.0, diameter_in=8.0),
    )
    assert bench.one_of(bench.judge_scene(samples.scene(obstacles=things)), "FIT-ROOM").state is State.FINE


def test_random_hoods_agree_with_a_plain_overlap_test() -> None:
    import random

    rng = random.Random(4)
    for _ in range(200):
        left, width = rng.uniform(0, 120), rng.uniform(6, 40)
        bottom, high = rng.uniform(30, 90), rng.uniform(4, 40)
        centre = rng.uniform(20, 124)
        scene = samples.scene(
            hood=replace(PLAIN.hood, centre_in=centre, cover=None, canopy_in=11.0),
            obstacles=(cabinet("box", left, bottom, width, high),), kitchen=Kitchen(144.0, 132.0, 120.0),
            walls=tuple(replace(w, openings=()) for w in PLAIN.walls),
        )  # fmt: skip
        x = left < centre + 18 - 1e-6 and centre - 18 < left + width - 1e-6
        z = bottom < 77 - 1e-6 and bottom + high > 66 + 1e-6
        wall = centre < 18 - 1e-6 or centre > 144 - 18 + 1e-6
        broken = any(f.state is State.BROKEN for f in bench.all_of(bench.judge_scene(scene), "FIT-ROOM"))
        assert broken is ((x and z) or wall), (left, width, bottom, high, centre)


def test_unknown_place_says_what_to_ask_of_the_cabinet() -> None:
    scene = bench.placed(samples.scene(obstacles=(cabinet("wood", 60.0, 62.0, 20.0, 20.0),)), "unknown")
    found = bench.one_of(bench.judge_scene(scene), "HGT-CABINET")
    assert found.state is State.NOT_CHECKED
    assert found.remedy.startswith("Ask ")
    assert rules.profile("unknown").get("cabinet_unprotected") is None


@pytest.mark.parametrize(
    ("cover", "measured", "relation", "state"),
    [
        # 108 in at the low side and 128 in at the high side of a cover 20 in wide under 12 in 12: 198 - 80 = 118 in between
        (Cover(100.0, 120.0, 20.0, 16.0), 128.0, "at most", State.BROKEN),
        (Cover(100.0, 130.0, 20.0, 16.0), 128.0, "at most", State.FINE),
        (Cover(110.0, 140.0, 20.0, 16.0), 108.0, "at least", State.BROKEN),
        (Cover(100.0, 120.0, 4.0, 16.0), 120.0, "at most", State.CLOSE),  # 2 in off the middle
    ],
)
def test_a_cover_under_a_slope_is_judged_at_both_its_sides(
    cover: Cover, measured: float, relation: str, state: State
) -> None:
    roof = replace(PLAIN.roof, form=RoofForm.GABLE, ridge=RunDirection.OUT, ridge_at_in=120.0, pitch=1.0)  # type: ignore[type-var]
    scene = samples.scene(
        kitchen=Kitchen(240.0, 132.0, 128.0), above=Above(AboveKind.ROOF), ceiling=Ceiling((Layer("board", 0.5),), None),
        roof=roof, hood=replace(PLAIN.hood, cover=cover, body_in=14.0, mount_in=30.0),
    )  # fmt: skip
    found = bench.one_of(bench.judge_scene(scene), "FIT-COVER")  # 128 + 70 = 198 in over the hood's middle
    assert (found.measured, found.relation, found.state) == (pytest.approx(measured), relation, state)
