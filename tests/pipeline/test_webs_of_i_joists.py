"""The search cuts no I-joist; where its maker's chart allows a hole the answer says that no such way was looked for."""

from __future__ import annotations

from dataclasses import replace

import pytest
import samples

from routeviz import pipeline
from routeviz.model.path import Outcome
from routeviz.model.plan import Plan
from routeviz.model.scene import MakerLimits, MemberKind


def planned(chart_in: float | None, kind: MemberKind = MemberKind.I_JOIST, centre: float = 78.0) -> Plan:
    """An 8 in duct takes a hole of 8 1/2 in; at 78 in a joist stands over the hood, at 70 in none does."""
    home = samples.scene()
    joists = home.ceiling.joists
    assert joists is not None
    home = replace(
        home, ceiling=replace(home.ceiling, joists=replace(joists, kind=kind, depth_in=14.0)),
        hood=replace(home.hood, centre_in=centre), cooktop=replace(home.cooktop, centre_in=centre),
        rules=replace(home.rules, maker=MakerLimits(member_hole_in=chart_in, document="hole chart")),
    )  # fmt: skip
    return pipeline.plan(home, alternatives=1)


def test_it_says_so_where_the_chart_allows_the_hole() -> None:
    plan = planned(9.0)
    assert plan.best is not None
    assert plan.best.route.elbows > 0
    assert plan.paths.outcome is Outcome.BEST_FOUND
    assert "webs of I-joists" in plan.second
    assert "webs of I-joists" in plan.paths.facts.not_tried


@pytest.mark.parametrize(
    ("chart", "kind", "centre"),
    [(8.25, MemberKind.I_JOIST, 78.0), (None, MemberKind.I_JOIST, 78.0), (9.0, MemberKind.SAWN, 78.0),
     (9.0, MemberKind.I_JOIST, 70.0)],
)  # fmt: skip
def test_it_is_silent_where_no_such_way_could_be_better(chart: float | None, kind: MemberKind, centre: float) -> None:
    plan = planned(chart, kind, centre)
    assert "webs" not in plan.second + plan.paths.facts.not_tried
