"""The mounting-height window: which limit sets each end, and what is suggested. All numbers are plain arithmetic."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import pytest
import samples

from routeviz import pipeline, rules
from routeviz.model.finding import State
from routeviz.model.scene import (
    Above,
    AboveKind,
    Beam,
    Ceiling,
    CooktopKind,
    Cover,
    Kitchen,
    Layer,
    MakerLimits,
    MemberKind,
    Obstacle,
    ObstacleKind,
    Roof,
    RoofForm,
    RuleChoice,
    RunDirection,
    Scene,
    WallSide,
)

PLACE = rules.profile("irc-2021")


def hood(**changes: Any) -> Scene:
    return samples.scene(hood=replace(samples.scene().hood, **changes))


def test_the_sample_kitchen() -> None:
    # ceiling 96 - cooktop 36 - body 11 = 49; cover 16 to 34: 15 to 33; gas from 24; usual most 36
    window = rules.mounting_window(samples.scene(), PLACE)
    assert (window.low_in, window.high_in, window.suggested_in) == (24.0, 33.0, 30.0)
    assert window.low_by == "canopy over a gas cooktop"
    assert window.high_by == "chimney cover pushed in all the way"
    assert not window.empty
    assert window.spare_in == 9.0


def test_a_higher_room_is_bounded_by_the_cover_pulled_out() -> None:
    # 108 - 36 - 11 = 61; 61 - 34 = 27 up to min(36, 61 - 16)
    window = rules.mounting_window(samples.scene(kitchen=Kitchen(144.0, 132.0, 108.0)), PLACE)
    assert (window.low_in, window.high_in) == (27.0, 36.0)
    assert window.low_by == "chimney cover pulled out all the way"


def test_a_room_too_high_for_the_cover_leaves_no_height_but_still_a_suggestion() -> None:
    # 120 - 36 - 11 - 34 = 39 > 36
    window = rules.mounting_window(samples.scene(kitchen=Kitchen(144.0, 132.0, 120.0)), PLACE)
    assert window.empty
    assert window.spare_in == -3.0
    assert "chimney cover pulled out" in window.clash
    assert window.suggested_in == 30.0


def test_the_maker_moves_both_ends() -> None:
    scene = samples.scene(rules=RuleChoice("irc-2021", MakerLimits(hood_min_in=31.0, hood_max_in=32.0)))
    window = rules.mounting_window(scene, PLACE)
    assert (window.low_in, window.high_in, window.suggested_in) == (31.0, 32.0, 31.0)


def test_a_cabinet_over_the_hood_bounds_it_from_above() -> None:
    # cabinet underside 72: 72 - 36 - 11 = 25
    thing = Obstacle("wall-cabinet", ObstacleKind.CABINET, 55.0, 0.0, 72.0, 30.0, 12.0, 24.0)
    window = rules.mounting_window(samples.scene(obstacles=(thing,)), PLACE)
    assert (window.low_in, window.high_in, window.suggested_in) == (24.0, 25.0, 25.0)
    assert window.high_by == "hood body under the wall cabinet"


def test_the_kind_of_cooktop_counts_where_the_place_says_so() -> None:
    electric = samples.scene(cooktop=replace(samples.scene().cooktop, kind=CooktopKind.ELECTRIC))
    bound = next(b for b in rules.mounting_window(electric, PLACE).bounds if "electric" in b.by)
    assert (bound.value_in, bound.must, bound.source) == (24.0, False, "common-practice")
    gas = next(b for b in rules.mounting_window(samples.scene(), PLACE).bounds if "gas" in b.by)
    assert gas.must


def test_england_hangs_it_between_650_and_750_mm() -> None:
    window = rules.mounting_window(hood(cover=None), rules.profile("england"))
    # Approved Document F note on hood height (remembered): 650 to 750 mm where the maker is silent
    assert window.low_in * 25.4 == pytest.approx(650)
    assert window.high_in * 25.4 == pytest.approx(750)
    assert window.suggested_in * 25.4 == pytest.approx(700)


def test_the_given_height_is_not_read() -> None:
    assert rules.mounting_window(hood(mount_in=12.0), PLACE) == rules.mounting_window(hood(mount_in=None), PLACE)


def cathedral(form: RoofForm, **changes: Any) -> Scene:
    plain = samples.scene().roof
    assert plain is not None
    roof = replace(plain, form=form, pitch=0.5, **changes)
    return samples.scene(
        above=Above(AboveKind.ROOF), ceiling=Ceiling((Layer("gypsum board", 0.5),), None), roof=roof,
        kitchen=Kitchen(144.0, 132.0, 96.0),
    )  # fmt: skip


@pytest.mark.parametrize(
    ("scene", "ceiling"),
    [
        # hood at 70 in from the left of a 144 in wall; 6/12 pitch
        (cathedral(RoofForm.GABLE), 96.0),  # ridge along the wall: the height at the wall
        (cathedral(RoofForm.GABLE, ridge=RunDirection.OUT, ridge_at_in=72.0), 96.0 + 35.0 - 3.0),
        (
            cathedral(RoofForm.GABLE, ridge=RunDirection.OUT, ridge_at_in=40.0),
            96.0 + 37.0 - 3.0,
        ),  # the right wall alone is outdoors: it holds the roof, (144 - 70) / 2 in lower
        (cathedral(RoofForm.SHED, ridge=RunDirection.OUT, high_side=WallSide.RIGHT), 96.0 + 35.0 - 3.0),
        (cathedral(RoofForm.SHED, ridge=RunDirection.OUT, high_side=WallSide.LEFT), 96.0 + 37.0 - 3.0),
    ],
)
def test_a_sloped_ceiling_counts_where_the_hood_hangs(scene: Scene, ceiling: float) -> None:
    # at the low side of the body, 12 in wide: 6 in off its middle, 3 in lower
    scene = replace(scene, hood=replace(scene.hood, cover=Cover(10.0, 200.0, 12.0, 11.0)))
    window = rules.mounting_window(scene, PLACE)
    body = next(b for b in window.bounds if b.by == "hood body under the ceiling")
    assert body.value_in == pytest.approx(ceiling - 36.0 - 11.0)


def test_a_flat_roof_above_joists_changes_nothing() -> None:
    roof = samples.scene().roof
    assert isinstance(roof, Roof)
    flat = samples.scene(roof=replace(roof, form=RoofForm.FLAT))
    assert rules.mounting_window(flat, PLACE).high_in == 33.0


def over(
    kind: ObstacleKind, bottom_in: float, *, left_in: float = 55.0, out_in: float = 0.0, **changes: Any
) -> Obstacle:
    return Obstacle("old-thing", kind, left_in, out_in, bottom_in, 30.0, 12.0, 20.0, **changes)


@pytest.mark.parametrize("kind", [ObstacleKind.CABINET, ObstacleKind.SOFFIT, ObstacleKind.DUCT])
@pytest.mark.parametrize("hides", [False, True])
def test_whatever_hangs_over_the_hood_bounds_it_hollow_or_not(kind: ObstacleKind, hides: bool) -> None:
    # underside 74: 74 - 36 - 11 = 27; the height that is chosen leaves the hood room under it
    scene = hood(mount_in=None, cover=None)
    scene = replace(scene, obstacles=(over(kind, 74.0, hides_duct=hides),))
    window = rules.mounting_window(scene, PLACE)
    assert (window.high_in, window.suggested_in) == (27.0, 27.0)
    chosen = pipeline.plan(scene, alternatives=1)
    assert chosen.scene.hood.mount_in == 27.0
    (room,) = [f for f in chosen.findings if f.code == "FIT-ROOM"]
    assert room.state is not State.BROKEN


def test_a_beam_over_the_hood_bounds_it() -> None:
    # underside 80: 80 - 36 - 11 = 33
    beam = Beam("long-beam", MemberKind.SAWN, 3.5, 9.25, RunDirection.ALONG, 6.0, 80.0)
    scene = hood(cover=None)
    window = rules.mounting_window(replace(scene, ceiling=replace(scene.ceiling, beams=(beam,))), PLACE)
    assert (window.high_in, window.high_by) == (33.0, "hood body under the long beam")


@pytest.mark.parametrize(
    ("left_in", "out_in", "most"),
    [
        (78.0, 0.0, 31.0),  # beside the body, over the canopy's end (88 in), which is 2 in high: 69 - 36 - 2
        (55.0, -14.0, 36.0),  # behind the wall's face
        (89.0, 0.0, 36.0),  # beside the hood
        (55.0, 21.0, 36.0),  # in front of it
    ],
)
def test_only_what_is_over_it_bounds_it(left_in: float, out_in: float, most: float) -> None:
    scene = replace(hood(cover=None), obstacles=(over(ObstacleKind.CABINET, 69.0, left_in=left_in, out_in=out_in),))
    assert rules.mounting_window(scene, PLACE).high_in == most
