"""Makeup air is judged by the most that the hood is known to move: "capable of exhausting in excess of 400 cfm"."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest
import samples

from routeviz import airflow, pipeline, rules
from routeviz.model.airflow import capable_cfm
from routeviz.model.finding import Finding, State
from routeviz.model.scene import Fan, RuleChoice, Scene
from routeviz.rules.bench import air, kitchen, look, straight_up
from routeviz.takeoff.building import needs_makeup


def labelled(fan: Fan, profile: str = "irc-2015") -> Scene:
    plain = kitchen()
    return replace(plain, hood=replace(plain.hood, fan=fan), rules=RuleChoice(profile))


def told(scene: Scene, *, fan_cfm: float | None = None, duct_cfm: float | None = None) -> list[Finding]:
    blow = None if duct_cfm is None else air(duct_cfm)
    route = None if duct_cfm is None else straight_up()
    context = replace(look(scene, route=route, blow=blow), fan_cfm=fan_cfm)
    return [f for f in rules.check(context) if f.code == "AIR-MAKEUP"]


def test_a_fan_rated_at_a_quarter_inch_moves_more_at_a_tenth() -> None:
    # p = s (1 - (Q / free)^2) with s = 0.8 in wg (assumed, common practice) through 390 cfm at 0.25 in wg:
    # Q(0.1) = 390 sqrt((0.8 - 0.1) / (0.8 - 0.25)) = 440 cfm
    scene = labelled(Fan(390.0, 0.25))
    flow = airflow.fan_cfm(scene)
    assert flow == pytest.approx(390.0 * math.sqrt(0.70 / 0.55))
    (found,) = told(scene, fan_cfm=flow)
    assert (found.state, found.limit) == (State.BROKEN, 400.0)
    assert found.measured == pytest.approx(flow)
    assert "by the fan's curve at 0.10 in wg" in found.detail
    assert "the label says 390 cfm" in found.detail
    assert "about 440 cfm" in found.remedy


@pytest.mark.parametrize(("points", "flow"), [
    (((0.0, 0.9), (300.0, 0.5), (410.0, 0.1), (430.0, 0.0)), 410.0),  # a printed point
    (((0.0, 0.9), (300.0, 0.5), (405.0, 0.2)), 405.0),  # the curve ends above 0.1 in wg: at least its last flow
])  # fmt: skip
def test_a_printed_curve_speaks_before_a_smaller_label(points: tuple[tuple[float, float], ...], flow: float) -> None:
    scene = labelled(Fan(390.0, None, points))
    assert airflow.fan_cfm(scene) == pytest.approx(flow)
    (found,) = told(scene, fan_cfm=airflow.fan_cfm(scene))
    assert found.state is State.BROKEN


def test_a_label_larger_than_the_curve_still_counts() -> None:
    scene = labelled(Fan(420.0, 0.0, ((0.0, 0.9), (300.0, 0.5), (380.0, 0.1), (420.0, 0.0))))
    assert airflow.fan_cfm(scene) == pytest.approx(380.0)
    (found,) = told(scene, fan_cfm=380.0)
    assert (found.state, found.measured) == (State.BROKEN, 420.0)
    assert "curve" not in found.detail


def test_exactly_400_by_label_and_by_curve_asks_for_nothing() -> None:
    scene = labelled(Fan(400.0, 0.1))
    (found,) = told(scene, fan_cfm=airflow.fan_cfm(scene), duct_cfm=387.0)
    assert (found.state, found.measured) == (State.FINE, 400.0)
    assert "exactly at the threshold" in found.detail


def test_a_duct_that_lets_more_through_than_the_rating_is_told_apart() -> None:
    scene = labelled(Fan(390.0, 0.1))
    by_label, by_duct = sorted(told(scene, fan_cfm=390.0, duct_cfm=412.0), key=lambda f: f.measured or 0.0)
    assert (by_label.measured, by_label.state) == (390.0, State.FINE)
    assert (by_duct.measured, by_duct.state) == (412.0, State.BROKEN)
    assert "what this duct lets through" in by_duct.detail
    assert [f.measured for f in told(scene, fan_cfm=390.0, duct_cfm=399.0)] == [390.0]
    assert [f.measured for f in told(scene, fan_cfm=440.0, duct_cfm=450.0)] == [440.0]  # once is enough


def test_the_whole_plan_judges_and_buys_by_the_same_flow() -> None:
    home = samples.scene()
    home = replace(home, hood=replace(home.hood, fan=Fan(390.0, 0.25)), rules=RuleChoice("irc-2015"))
    plan = pipeline.plan(home)
    (found,) = (f for f in plan.all_findings if f.code == "AIR-MAKEUP")
    assert found.state is State.BROKEN
    assert plan.best is not None
    assert plan.best.makeup is not None
    assert plan.best.makeup.needed
    assert plan.best.makeup.capacity_cfm == pytest.approx(390.0 * math.sqrt(0.70 / 0.55))
    assert needs_makeup(home, plan.findings)
    (damper,) = (b for b in plan.best.takeoff.buy if b.item.startswith("makeup-air damper"))
    assert damper.size == "440 cfm"


def test_the_greatest_of_the_three_is_named() -> None:
    assert capable_cfm(390.0, 380.0, 385.0) == (390.0, "label")
    assert capable_cfm(390.0, 440.0, 422.0) == (440.0, "curve")
    assert capable_cfm(390.0, 391.0, 422.0) == (422.0, "duct")
    assert capable_cfm(0.0, None, None) == (0.0, "label")
