"""In the unit that the scene is not written in: no line mixes both, and words that keep the scene's unit say so."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

from routeviz import pipeline, studies
from routeviz.cli.scenes import load_scene
from routeviz.cli.walls import wall_map
from routeviz.views import page as pages

pytestmark = [pytest.mark.browser, pytest.mark.slow]

SCENES = Path(__file__).parents[2] / "scenes"
_INCHES = re.compile(r"\d (?:in|ft|cfm|fpm|ft/min)\b")
_METRIC = re.compile(r"\d (?:mm|m|l/s|m/s|Pa)\b")
_TABLE = re.compile(r"Table|Section|\d{4}")  # a source keeps the numbers of its title


@pytest.mark.parametrize(
    ("name", "label"),
    [
        ("juniper_straight_up", "In inches, as the scene is written."),
        ("joist_dead_centre", "In inches, as the scene is written."),
        ("gas_low_cabinets", "In inches, as the scene is written."),
        ("metric_concrete_ceiling", "In millimetres, as the scene is written."),
    ],
)
def test_no_line_mixes_units(open_page, tmp_path, name, label):
    plan = pipeline.plan(load_scene(SCENES / f"{name}.toml"))
    page = open_page(pages.write(plan, tmp_path / "plan.html", fixes=studies.fixes(plan), wall_map=wall_map(plan, 4.0)))
    kept = _METRIC if plan.scene.metric else _INCHES
    tab = page.tab
    tab.evaluate("document.querySelectorAll('details').forEach(d => { d.open = true; })")
    assert not any(p.is_visible() for p in tab.locator(".asis").all()), "in its own unit nothing needs to be said"
    tab.click("#unit")
    assert kept.search(tab.inner_text("h1") + tab.inner_text("#alts") + tab.inner_text("#where")) is None
    lines = [line for line in tab.inner_text("main").splitlines() if not _TABLE.search(line)]
    mixed = [line for line in lines if _INCHES.search(line) and _METRIC.search(line)]
    assert mixed == []
    # whatever still has the scene's unit stands in a block, or a line, that says so
    silent = tab.evaluate(
        """pattern => [...document.querySelectorAll('main li, main p, main button')].filter(e => e.offsetParent && !e.querySelector('li, p, button')).filter(e => new RegExp(pattern).test(e.innerText))
        .filter(e => !/as the scene is written/.test(e.innerText)).filter(e => { const block = e.closest('section, #taken'); const says = block && [...block.querySelectorAll('.asis')].some(p => p.offsetParent); return !says; }).map(e => e.innerText.slice(0, 90))""",
        kept.pattern,
    )
    assert silent == []
    assert label in tab.inner_text("#measures, #taken >> nth=0") + tab.inner_text("#taken")
    tab.click("#unit")
    assert not any(p.is_visible() for p in tab.locator(".asis").all())
    assert page.faults == []


def test_a_metric_home_steps_by_50_mm(open_page, tmp_path):
    plan = pipeline.plan(load_scene(SCENES / "metric_concrete_ceiling.toml"))
    page = open_page(pages.write(plan, tmp_path / "plan.html", wall_map=wall_map(plan, 2.0)))
    assert page.tab.locator(".step [data-nudge]").all_inner_texts() == ["− 50 mm", "+ 50 mm"]
    before = page.answer()["x"]
    page.tab.click(".step [data-nudge='1']")
    assert (page.answer()["x"] - before) * 25.4 == pytest.approx(50, abs=0.01)
    assert page.faults == []


def test_dashed_blocks_stand_in_the_key(open_page, tmp_path):
    """On the tape of the first home some places are dashed, for a run that is boxed in; on the other none is."""
    for name, dashed in (("juniper_straight_up", True), ("big_fan_small_duct", False)):
        plan = pipeline.plan(load_scene(SCENES / f"{name}.toml"))
        page = open_page(pages.write(plan, tmp_path / f"{name}.html", wall_map=wall_map(plan, 4.0)))
        assert (page.tab.locator("#tape .zn rect[stroke-dasharray]").count() > 0) is dashed
        assert ("boxed in the room" in page.tab.inner_text("#key")) is dashed
        assert page.faults == []


def test_a_shift_is_converted_from_its_number(open_page, tmp_path):
    plan = pipeline.plan(load_scene(SCENES / "joist_dead_centre.toml"))
    page = open_page(pages.write(plan, tmp_path / "plan.html", fixes=studies.fixes(plan)))
    page.tab.click("#unit")
    assert page.tab.inner_text("#act").startswith("Shift 127 mm left")
    words = page.tab.locator("#finds .fix b").all_inner_texts()
    assert words[1].startswith("Shift 51 mm left, and step the duct aside left")
    assert words[2] == "Shift hood and cooktop 127 mm left"
    assert page.faults == []
