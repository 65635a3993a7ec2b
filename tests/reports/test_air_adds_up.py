"""What the terminal says of the air adds up, and says at which flow each speed holds."""

from __future__ import annotations

import math
import re
from dataclasses import replace
from functools import cache
from pathlib import Path

import handmade
import pytest
from clirunning import SCENES

from routeviz import pipeline, reports, scenefile
from routeviz.model.airflow import SizeAdvice
from routeviz.model.plan import Plan
from routeviz.reports.air import air_text
from routeviz.units import split_text

HOMES = ("juniper_straight_up", "out_the_back", "metric_concrete_ceiling")
FT_PER_M = 1 / 0.3048


@cache
def planned(name: str) -> Plan:
    return pipeline.plan(scenefile.load(Path(SCENES / f"{name}.toml")), alternatives=1)


def air_section(plan: Plan) -> str:
    return reports.plan_text(plan, width=400).split("\nAir\n")[1].split("\n\n")[0]


@pytest.mark.parametrize("name", HOMES)
def test_the_parts_add_up_to_what_is_said_of_all(name: str) -> None:
    text = air_section(planned(name))
    unit, least = ("Pa", 1.0) if planned(name).scene.metric else ("in wg", 0.01)
    parts = [float(p) for p in re.findall(rf"^  \S.*? +(\d+\.\d+) {unit}(?: █*)?$", text, re.MULTILINE)]
    assert planned(name).best is not None
    assert len(parts) == len(planned(name).best.air.losses)  # type: ignore[union-attr]
    told = re.search(rf"lose (\S+) {unit} together: the fan holds (\S+) {unit}, .* the other (\S+) {unit}\.", text)
    assert told is not None
    every, held, speed = (float(t) for t in told.groups())
    assert every == pytest.approx(held + speed, abs=1e-9)
    # half of the last figure of the sum, and half of each part's last
    assert math.fsum(parts) == pytest.approx(every, abs=least / 2 + len(parts) * least / 20)
    assert f"the fan holds {told[2]} {unit} (solved)" in text


@pytest.mark.parametrize("name", HOMES)
def test_both_speeds_name_their_flow(name: str) -> None:
    plan = planned(name)
    assert plan.best is not None
    section, label = plan.best.route.section, plan.scene.hood.fan.rated_cfm
    assert section.is_round
    area_ft2 = math.pi / 4 * (section.width_in / 12) ** 2
    text = reports.plan_text(plan, width=400)
    number = r"([\d.]+) (?:ft/min|m/s)"
    shown = (re.search(rf"Air speed at the labelled flow: {number}", text), re.search(rf"At that flow: {number}", text))
    for found, flow in zip(shown, (label, plan.best.air.full.flow_cfm), strict=True):
        assert found is not None
        fpm = flow / area_ft2
        metric = plan.scene.metric
        assert float(found[1]) == pytest.approx(fpm / FT_PER_M / 60 if metric else fpm, abs=0.051 if metric else 0.51)


def test_nothing_is_said_where_the_speed_is_worth_nothing() -> None:
    # by hand: the fan holds 0.41 in wg and the parts lose 0.08 in wg, so there is nothing left for the air's speed
    assert handmade.air().together(metric=False) == ""
    air = replace(handmade.air(), points=(replace(handmade.air().full, static_inwg=0.05),))
    assert air.together(metric=False).startswith("The parts lose 0.08 in wg together: the fan holds 0.05 in wg")
    assert air.together(metric=False).endswith("the other 0.03 in wg.")


@pytest.mark.parametrize(("whole", "part"), [(0.2149, 0.1351), (0.3849, 0.2651), (1.005, 0.335), (0.1, 0.2)])
def test_split_figures_add_up_as_written(whole: float, part: float) -> None:
    figures = [float(t.split()[0].replace("−", "-")) for t in split_text(whole, part, "in wg")]
    assert round(figures[0] * 100) == round(figures[1] * 100) + round(figures[2] * 100)


def test_a_duct_that_loses_says_so_in_words() -> None:
    """Among changes that gain, one of the scene's own list that loses is not told by a sign alone."""
    advice = (
        SizeAdvice("10 in round", 424.0, 35.0, 777.0),
        SizeAdvice("smooth elbows", 389.4, 0.4, 1115.0),
        SizeAdvice("6 in round", 310.0, -79.0, 1579.0),
    )
    for metric, gain, loss in ((False, "+35 cfm", "79 cfm"), (True, "+17 l/s", "37 l/s")):  # 0.47195 l/s to a cfm
        lines = air_text(replace(handmade.air(), advice=advice), 80, metric).splitlines()
        arrows = [line.split(": ") for line in lines if line.startswith("  → ")]
        assert [told.partition(" (")[2] for _, told in arrows] == [f"{gain})", "no gain)", f"a loss of {loss})"]
