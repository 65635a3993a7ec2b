"""The heel of a roof is read, and refused where it cannot be."""

from __future__ import annotations

from pathlib import Path

import pytest

from routeviz import pipeline, scenefile
from routeviz.errors import Mistake, SceneError

SCENES = Path(__file__).parents[2] / "scenes"


def text(name: str, heel: str, *changes: tuple[str, str]) -> str:
    found = (SCENES / f"{name}.toml").read_text(encoding="utf-8")
    for old, new in (*changes, ("\noverhang = ", f'\nheel = "{heel}"\noverhang = ')):
        assert found.count(old) == 1
        found = found.replace(old, new)
    return found


def refused(home: str) -> Mistake:
    with pytest.raises(SceneError) as told:
        scenefile.loads(home)
    (mistake,) = told.value.mistakes
    assert mistake.field == "roof.heel"
    return mistake


def test_rafters_may_come_down_to_the_plates_inner_edge_and_no_lower() -> None:
    # 2x6 at 3 in 12 on 2x6 studs: 5 1/2 x 1.0308 - 5 1/2 / 4 = 4.294
    roof = scenefile.loads(text("juniper_straight_up", "4 5/16 in")).roof
    assert roof is not None
    assert roof.heel_in == 4.3125
    told = refused(text("juniper_straight_up", "4 1/4 in"))
    assert "down into the room" in told.problem
    assert "4 19/64 in" in told.remedy  # 4.2969, to the nearest sixty-fourth


def test_a_ceiling_on_the_rafters_has_no_heel() -> None:
    assert "fixed to the rafters" in refused(text("cathedral_roof", "12 in")).problem


def test_a_roof_without_rafters_has_no_heel() -> None:
    framing = 'framing = { kind = "sawn", size = "2x6", spacing = "16 in", first = "14 in" }\n'
    flat = ('form = "gable"\npitch = "3/12"\nridge = "along"\nridge_at = "132 in"', 'form = "flat"')
    assert "rafters or trusses" in refused(text("juniper_straight_up", "12 in", (framing, ""), flat)).problem


def test_between_joists_whose_ends_are_cut_to_low_rafters() -> None:
    plan = pipeline.plan(scenefile.loads(text("juniper_straight_up", "4 5/16 in")), alternatives=1)
    assert plan.best is not None
    assert plan.best.route.words == "Straight up between joists 4 and 5, out through the roof"


def test_the_duct_is_cut_shorter_under_a_lower_roof() -> None:
    # taken: 7 1/4 and 5 1/2 x 1.0308 plumb; the heel of 8 in brings the roof down by the rest
    high = pipeline.plan(scenefile.load(SCENES / "juniper_straight_up.toml"), alternatives=1).best
    low = pipeline.plan(scenefile.loads(text("juniper_straight_up", "8 in")), alternatives=1).best
    assert high is not None
    assert low is not None
    down = 7.25 + 5.5 * (1 + 1 / 16) ** 0.5 - 8.0
    assert high.takeoff.cuts[-1].cut_in - low.takeoff.cuts[-1].cut_in == pytest.approx(down, abs=1e-3)  # whole ticks
