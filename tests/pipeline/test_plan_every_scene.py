"""The main job on every scene: a plan always comes, its parts join, its numbers agree, its JSON fits the schema."""

from __future__ import annotations

import json
import math
import re
from functools import cache
from pathlib import Path

import jsonschema
import pytest

from routeviz import pipeline, reports, scenefile
from routeviz.geometry import segment_distance
from routeviz.model.finding import State, Verdict
from routeviz.model.path import Outcome
from routeviz.model.plan import Plan
from routeviz.model.route import PartKind
from routeviz.model.solids import Crossing

SCENES = sorted((Path(__file__).parents[2] / "scenes").glob("*.toml"))


@cache
def planned(path: Path) -> Plan:
    return pipeline.plan(scenefile.load(path))


AS_BUILT = [path for path in SCENES if scenefile.load(path).as_built]  # may meet anything: the rules judge them


@pytest.fixture(params=SCENES, ids=lambda p: p.stem)
def plan(request: pytest.FixtureRequest) -> Plan:
    return planned(request.param)


@pytest.fixture(params=[path for path in SCENES if path not in AS_BUILT], ids=lambda p: p.stem)
def searched(request: pytest.FixtureRequest) -> Plan:
    return planned(request.param)


def test_a_route_or_a_named_reason(plan: Plan) -> None:
    if plan.options:
        assert plan.scene.as_built or plan.paths.outcome in (Outcome.PROVEN, Outcome.BEST_FOUND)
    else:
        assert plan.paths.outcome in (Outcome.NONE_EXISTS, Outcome.LIMIT_REACHED, Outcome.BAD_START)
        assert plan.verdict in (Verdict.BLOCKED, Verdict.NO_PLACE)
        assert plan.paths.why_not, "nothing is named that blocks"
    assert plan.answer


def test_there_are_routes_to_look_at() -> None:
    """The tests below look at what there is: homes that work, and homes that are blocked by a finding or by the house."""
    plans = [planned(path) for path in SCENES]
    assert {plan.verdict for plan in plans} == {Verdict.WORKS, Verdict.TIGHT, Verdict.BLOCKED}
    found = [planned(path) for path in SCENES if path not in AS_BUILT and planned(path).options]
    assert len(found) >= 10
    routes = [option.route for plan in found for option in plan.options]
    assert all(route.parts for route in routes)
    assert any(part.kind is PartKind.STRAIGHT for route in routes if route.section.is_round for part in route.parts)
    assert any(route.straights_between_in for route in routes)
    assert all(any(s.crossing is Crossing.NEVER for s in plan.frame.solids) for plan in found)


def test_parts_join_and_lengths_add_up(plan: Plan) -> None:
    assert bool(plan.options) is not (plan.verdict in (Verdict.BLOCKED, Verdict.NO_PLACE) and bool(plan.paths.why_not))
    for option in plan.options:
        at = option.route.parts[0].start
        for part in option.route.parts:
            assert math.dist(at, part.start) < 1e-6
            at = part.end
        assert option.route.length_in == pytest.approx(sum(p.length_in for p in option.route.parts))


def test_a_searched_route_meets_nothing_that_may_not_be_cut(searched: Plan) -> None:
    """Straights against the exact solids, by distance alone: shares nothing with the search."""
    never = [s for s in searched.frame.solids if s.crossing is Crossing.NEVER]
    for option in searched.options:
        if not option.route.section.is_round:
            continue
        radius = option.route.section.width_in / 2
        for part in option.route.parts:
            if part.kind is not PartKind.STRAIGHT:
                continue
            for solid in never:
                assert segment_distance(solid.shape, part.start, part.end)[0] >= radius - 1e-6, solid.id


def test_elbow_rules_hold_for_searched_routes(searched: Plan) -> None:
    for option in searched.options:
        assert option.route.elbows <= searched.scene.duct.max_elbows + 1e-9
        assert all(s >= searched.scene.duct.min_straight_in - 1e-6 for s in option.route.straights_between_in)
        assert option.route.termination.space == "outdoors"


def test_json_fits_its_schema(plan: Plan) -> None:
    data = json.loads(reports.plan_json(plan))
    jsonschema.validate(data, reports.plan_schema())
    assert data["routes"] == [] or data["routes"][0]["route"]["termination"]["space"]


def test_text_fits_80_columns_and_says_the_verdict(plan: Plan) -> None:
    text = reports.plan_text(plan)
    assert max(len(line) for line in text.splitlines()) <= 80
    assert plan.verdict in text
    assert "licensed trades decide" in " ".join(text.split())
    for banned in ("error", "warning", "invalid"):
        assert banned not in text
    assert not re.search(r"\bNone\b(?! exists)", text)


def test_verdict_follows_from_findings(plan: Plan) -> None:
    broken_must = [f for f in plan.all_findings if f.state is State.BROKEN and f.must and not f.waived]
    if plan.verdict in (Verdict.WORKS, Verdict.TIGHT):
        assert plan.options
        assert not broken_must
    else:
        assert broken_must or not plan.options
    if plan.verdict is Verdict.WORKS:
        assert not any(f.state in (State.BROKEN, State.CLOSE) and not f.waived for f in plan.all_findings)


def test_planning_twice_gives_the_same_answer() -> None:
    path = SCENES[0]
    first, again = (reports.plan_dict(pipeline.plan(scenefile.load(path))) for _ in range(2))
    for data in (first, again):
        data.pop("seconds")
        data["search"]["facts"].pop("seconds")
    assert first == again
