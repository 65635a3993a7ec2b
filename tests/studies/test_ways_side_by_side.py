"""A comparison's rows say what planning each of them says."""

from __future__ import annotations

from dataclasses import replace

import pytest
from samples import ROUND_6, ROUND_8, scene

from routeviz import pipeline, reports, studies
from routeviz.model.finding import State
from routeviz.model.plan import Plan
from routeviz.model.scene import DuctChoice, Fan, Scene, SectionShape, SectionSize
from routeviz.model.study import Way

TWO_DUCTS = scene(duct=DuctChoice((ROUND_8, ROUND_6)))


@pytest.fixture(scope="module")
def ways() -> tuple[Way, ...]:
    return studies.compare(TWO_DUCTS)


def ended(roof: bool, wall: bool) -> Scene:
    return replace(TWO_DUCTS, cap=replace(TWO_DUCTS.cap, roof=roof, wall=wall))


def agrees(way: Way, plan: Plan) -> None:
    states = [f.state for f in plan.all_findings if not f.waived]
    assert (way.verdict, way.answer, way.outcome) == (plan.verdict, plan.answer, plan.paths.outcome.value)
    assert (way.broken, way.close) == (states.count(State.BROKEN), states.count(State.CLOSE))
    if plan.best is None:
        assert (way.elbows, way.length_in, way.flow_cfm, way.holes, way.parts) == (None,) * 5
        return
    assert way.elbows == plan.best.route.elbows
    assert way.length_in == pytest.approx(sum(p.length_in for p in plan.best.route.parts))
    assert way.flow_cfm == pytest.approx(plan.best.air.full.flow_cfm)
    assert (way.holes, way.parts) == (len(plan.best.takeoff.holes), len(plan.best.takeoff.buy))


def test_the_rows_are_the_scenes_own_roof_wall_and_the_other_duct(ways: tuple[Way, ...]) -> None:
    assert [w.label for w in ways] == ["as the scene allows", "roof only", "wall only", "6 in round"]
    assert [w.note for w in ways] == ["8 in round duct", "", "", "as the scene allows"]


def test_each_row_agrees_with_its_plan(ways: tuple[Way, ...]) -> None:
    other = replace(TWO_DUCTS, duct=replace(TWO_DUCTS.duct, sections=(ROUND_6, ROUND_8)))
    for way, changed in zip(ways, (TWO_DUCTS, ended(True, False), ended(False, True), other), strict=True):
        agrees(way, pipeline.plan(changed, alternatives=1))


def test_no_single_way_beats_the_free_choice(ways: tuple[Way, ...]) -> None:
    free, roof, wall, _ = ways
    assert free.elbows is not None
    for way in (roof, wall):
        if way.elbows is not None:
            assert (free.boxed_in, free.elbows) <= (way.boxed_in, way.elbows)


def test_the_two_ends_are_where_they_say(ways: tuple[Way, ...]) -> None:
    assert "roof" in ways[1].answer
    assert "roof" not in ways[2].answer or ways[2].elbows is None


def test_a_way_that_the_scene_rules_out_says_so() -> None:
    """The first row obeys the scene's cap; a row that overrides it is marked where it is read."""
    rows = {way.label: way for way in studies.compare(ended(False, True))}
    marks = {label: way.note for label, way in rows.items() if label.endswith("only")}
    assert marks == {"roof only": "though the scene rules it out", "wall only": ""}
    assert "roof" not in rows["as the scene allows"].answer
    lines = reports.compare_text(tuple(rows.values()), metric=False).splitlines()
    at = next(n for n, line in enumerate(lines) if line.startswith("roof only"))
    assert lines[at + 1].strip() == "though the scene rules it out"


def test_rows_of_inch_and_metric_homes_stand_on_one_line(ways: tuple[Way, ...]) -> None:
    large = SectionSize(SectionShape.ROUND, 150 / 25.4, 150 / 25.4)
    metric_home = replace(TWO_DUCTS, metric=True, duct=DuctChoice((large,)))
    for rows, metric in ((ways, False), (studies.compare(metric_home), True)):
        lines = reports.compare_text(rows, metric=metric).splitlines()
        for way in rows:
            assert sum(line.startswith(f"{way.label:<20}{way.verdict}") for line in lines) == 1, way.label


def test_what_is_boxed_in_is_said_once(ways: tuple[Way, ...]) -> None:
    boxed = replace(ways[0], boxed_in=78.0, answer="Up, then left: one elbow, 7 ft 7 in, 6 ft 6 in boxed in the room.")
    assert reports.compare_text([boxed], metric=False).count("6 ft 6 in") == 1


def test_no_way_at_all_has_no_numbers() -> None:
    nowhere = studies.compare(ended(False, False))[0]
    assert nowhere.elbows is None
    assert nowhere.verdict == "Blocked"


def test_unknown_fan_gives_no_flow() -> None:
    plain = replace(TWO_DUCTS.hood, fan=Fan(0.0))
    way = studies.compare(replace(TWO_DUCTS, hood=plain))[0]
    assert way.flow_cfm is None
    assert "0 cfm" not in reports.compare_text([way], metric=False)


def test_a_long_name_has_a_line_of_its_own(ways: tuple[Way, ...]) -> None:
    long = replace(ways[0], label="3 1/4 in x 10 in stack", length_in=12 * 12 + 11.0, flow_cfm=1250.0)
    lines = reports.compare_text([long], metric=False).splitlines()
    assert "3 1/4 in x 10 in stack" in lines
    assert max(map(len, lines)) <= 80
    assert "12 ft 11 in" in lines[3]
    assert "1250 cfm" in lines[3]
