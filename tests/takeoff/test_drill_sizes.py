"""A drill is named by a size that is sold, the same in the terminal, on the sheets and in the order of work."""

from __future__ import annotations

import re
from dataclasses import replace
from fractions import Fraction

import handmade
import pytest
import samples

from routeviz import reports
from routeviz.catalog import table
from routeviz.drawings import sheets
from routeviz.drawings.primitives import Text
from routeviz.takeoff import count
from routeviz.units import drill_text

FASTENERS = table("stock")["fastener"]


@pytest.mark.parametrize("kind", sorted(FASTENERS))
def test_every_drill_of_the_stock_table_is_written_without_rounding(kind: str) -> None:
    row = FASTENERS[kind]
    inches = [row[k] for k in row if k.startswith("pilot_") and k.endswith("_in")]
    metric = [row["metric"][k] for k in row["metric"] if k.startswith("pilot_")]
    assert len(inches) >= 2
    assert len(metric) >= 3
    for size in inches:
        written = drill_text(size).removesuffix(" in")
        assert Fraction(written) == Fraction(size)
    for size in metric:
        assert drill_text(size / 25.4, metric=True) == f"{size} mm"


def test_terminal_sheet_and_steps_name_the_same_drill() -> None:
    # common practice: 5/32 in for a #10 screw into the plate; a sixteenth would make it 3/16 in, the screw's own core
    plan = handmade.plan()
    assert plan.best is not None
    bracket = [m for m in plan.best.takeoff.marks if m.row == "bracket"]
    assert {m.pilot_in for m in bracket} == {5 / 32}
    text = " ".join(reports.plan_text(plan).split())
    for mark in bracket:
        line = re.search(rf"{mark.label}: .*?pilot (\S+) in", text)
        assert line is not None
        assert line[1] == "5/32"
    page = next(p for p in sheets(plan) if p.name == "marking")
    assert "5/32 in" in [item.text for item in page.items if isinstance(item, Text)]
    (step,) = [s for s in plan.best.takeoff.steps if s.id == "bracket"]
    assert step.text.endswith("pilots 5/32 in.")


def test_where_marks_differ_the_step_names_every_drill() -> None:
    scene = samples.scene()
    # 72 3/4 in is the middle between studs 5 and 6: two screws meet them, the third needs an anchor
    rows = tuple(replace(scene.hood.fasteners[0], across_in=a) for a in (-8.0, 0.0, 8.0))
    scene = replace(scene, hood=replace(scene.hood, centre_in=72.75, fasteners=rows))
    (step,) = [s for s in count(handmade.up_route(), scene, handmade.frame()).steps if s.id == "screws"]
    assert step.text.startswith("Drill the pilots, 3/16 in and 7/16 in as marked; set anchors")
