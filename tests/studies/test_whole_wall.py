"""One field answers for every inch of the wall, and each inch agrees with a plan of its own."""

from __future__ import annotations

import json
from dataclasses import replace
from pathlib import Path

import pytest
import samples

from routeviz import airflow, pipeline, reports, scenefile, studies
from routeviz.cli import main
from routeviz.model.finding import Verdict
from routeviz.model.plan import Plan

SCENE = samples.scene()
POSITIONS = (20.0, 40.0, 54.0, 58.0, 66.0, 70.0, 86.0, 100.0)


@pytest.fixture(scope="module")
def row() -> tuple[Plan, ...]:
    return studies.wall_plans(SCENE, POSITIONS, (30.0,))[0]


def alone(x: float) -> Plan:
    shift = x - SCENE.hood.centre_in
    hood = replace(SCENE.hood, centre_in=x)
    cooktop = replace(SCENE.cooktop, centre_in=SCENE.cooktop.centre_in + shift)
    return pipeline.plan(replace(SCENE, hood=hood, cooktop=cooktop), alternatives=1)


def test_places_are_a_step_apart_and_go_through_the_scene_s_own() -> None:
    places = studies.places(SCENE, step_in=1.0)
    assert SCENE.hood.centre_in in places
    assert {round(b - a, 9) for a, b in zip(places, places[1:], strict=False)} == {1.0}
    assert places[0] - SCENE.hood.width_in / 2 >= 0
    assert places[-1] + SCENE.hood.width_in / 2 <= SCENE.kitchen.width_in


def test_bays_are_where_the_joists_leave_them(row: tuple[Plan, ...]) -> None:
    # joists at 14, 30, 46, 62, 78, 94 in: an 8 in duct with 1/4 in to spare goes straight up from 19 to 25, 35 to 41,
    # 51 to 57, 67 to 73 and 83 to 89 in
    straight = [p.scene.hood.centre_in for p in row if p.best and p.best.route.elbows == 0]
    assert straight == [20.0, 40.0, 54.0, 70.0, 86.0]


def test_the_window_leaves_no_place(row: tuple[Plan, ...]) -> None:
    # the hood is 36 in wide and the window begins at 112 in: from 94 in on it is in the way
    assert [p.verdict is Verdict.NO_PLACE for p in row] == [False] * 7 + [True]


@pytest.mark.parametrize("n", [0, 2, 3, 5])
def test_each_place_agrees_with_a_plan_of_its_own(row: tuple[Plan, ...], n: int) -> None:
    here, own = row[n], alone(POSITIONS[n])
    assert here.best is not None
    assert own.best is not None
    assert here.best.route.elbows == own.best.route.elbows
    assert here.best.route.termination.face == own.best.route.termination.face
    # a plan of its own may move the duct to the middle of its bay, for at most 3 in more
    assert abs(here.best.route.length_in - own.best.route.length_in) <= 3.0
    assert here.best.air.full.flow_cfm == pytest.approx(airflow.solve(here.best.route, here.scene).full.flow_cfm)
    assert {f.code for f in here.findings} == {f.code for f in own.findings}


def test_heights_move_the_hood_alone() -> None:
    low, high = (rows[0] for rows in studies.wall_plans(SCENE, (70.0,), (28.0, 32.0)))
    assert low.best is not None
    assert high.best is not None
    assert low.best.route.length_in - high.best.route.length_in == pytest.approx(4.0)


def test_progress_is_told() -> None:
    told: list[tuple[int, int]] = []
    studies.wall_plans(SCENE, (54.0, 70.0), (30.0,), progress=lambda done, of: told.append((done, of)))
    assert told == [(1, 2), (2, 2)]


def test_tape_fits_80_columns_and_names_stretches(row: tuple[Plan, ...]) -> None:
    text = reports.tape_text(row)
    assert max(len(line) for line in text.splitlines()) <= 80
    assert "joists" in text
    assert "no place for the hood" in text
    assert "Straight up between joists 4 and 5" in " ".join(text.split())


def test_tape_command_gives_json_for_machines(capsys: pytest.CaptureFixture[str]) -> None:
    scene = Path(__file__).parents[2] / "scenes" / "rear_outlet_straight_back.toml"
    assert main(["tape", str(scene), "--step", "8", "--json", "-"]) == 0
    places = json.loads(capsys.readouterr().out)
    own = scenefile.load(scene).hood.centre_in
    here = next(p for p in places if p["centre_in"] == own)
    assert (here["elbows"], here["verdict"]) == (0, "Works")
    assert here["length_in"] == pytest.approx(7.1875)
