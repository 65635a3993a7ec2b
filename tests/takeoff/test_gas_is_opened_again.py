"""The gas valve that is closed before the work is opened, leak-tested and lit before the last test."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import handmade
import pytest
import samples

from routeviz import pipeline, scenefile
from routeviz.model.scene import CooktopKind
from routeviz.takeoff import count

SCENES = Path(__file__).parents[2] / "scenes"


@pytest.mark.parametrize("kind", list(CooktopKind))
def test_only_where_gas_burns(kind: CooktopKind) -> None:
    plain = samples.scene()
    scene = replace(plain, cooktop=replace(plain.cooktop, kind=kind))
    steps = {s.id: s for s in count(handmade.up_route(), scene, handmade.frame(), handmade.findings()).steps}
    closed = "Close the gas valve" in steps["power"].text
    assert closed is ("gas" in steps) is (kind is CooktopKind.GAS)


@pytest.mark.parametrize("name", ["juniper_straight_up", "cathedral_roof", "gas_low_cabinets"])
def test_whatever_is_closed_is_opened_again_before_the_last_test(name: str) -> None:
    plan = pipeline.plan(scenefile.load(SCENES / f"{name}.toml"))
    assert plan.best is not None
    steps = plan.best.takeoff.steps
    order = [s.id for s in steps]
    (gas,) = [s for s in steps if s.id == "gas"]
    assert order.index("power") < order.index("gas") < order.index("test")
    assert order.index("connect") < order.index("gas")
    for words in ("Open the gas valve", "leak-test", "each joint that was touched", "relight the pilots"):
        assert words in gas.text
    assert "licensed trade" in gas.caution


def test_a_route_that_is_mended_gets_its_gas_back_too() -> None:
    home = scenefile.load(SCENES / "as_built_flex_in_attic.toml")
    plan = pipeline.plan(replace(home, cooktop=replace(home.cooktop, kind=CooktopKind.GAS)))
    assert plan.best is not None
    order = [s.id for s in plan.best.takeoff.steps]
    assert order.index("power") < order.index("gas") < order.index("test")
