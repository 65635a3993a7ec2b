"""What a fix's button shows is the very plan that was made for the fix; a fix that clears nothing is no button."""

from __future__ import annotations

from pathlib import Path

import pytest

from routeviz import pipeline, studies
from routeviz.cli.scenes import load_scene
from routeviz.cli.walls import wall_map
from routeviz.model.finding import State
from routeviz.views import page as pages

pytestmark = [pytest.mark.browser, pytest.mark.slow]

SCENES = Path(__file__).parents[2] / "scenes"
_SAID = """(() => { const a = routeviz.answer(); return { x: a.x, h: a.h, cook: a.cook, verdict: a.verdict, text: a.text, elbows: a.elbows, length: a.length,
    ends: a.end.at, broken: a.findings.filter(f => f.state === 'broken').map(f => f.title).sort(), findings: a.findings.length }; })()"""


@pytest.fixture(scope="module")
def dead_centre(tmp_path_factory):
    plan = pipeline.plan(load_scene(SCENES / "joist_dead_centre.toml"))
    fixes = studies.fixes(plan)
    folder = tmp_path_factory.mktemp("fixes")
    file = pages.write(plan, folder / "plan.html", fixes=fixes, wall_map=wall_map(plan, 2.0))
    return plan, fixes, file, pages.write(plan, folder / "bare.html", fixes=fixes)


@pytest.mark.parametrize("with_map", [True, False])
def test_each_button_of_a_fix_shows_the_plan_that_was_made_for_it(open_page, dead_centre, with_map):
    plan, fixes, file, bare = dead_centre
    page = open_page(file if with_map else bare)
    assert len(fixes) == 3
    for number, fix in enumerate(fixes):
        page.tab.evaluate(f"routeviz.moveTo({plan.scene.hood.centre_in})")
        page.tab.locator("#finds .fix").nth(number).click()
        again, said = fix.again, page.tab.evaluate(_SAID)
        assert again is not None
        assert (said["x"], said["h"]) == (again.scene.hood.centre_in, again.scene.hood.mount_in)
        assert said["cook"] == again.scene.cooktop.centre_in
        assert (said["verdict"], said["text"]) == (again.verdict.value, again.answer)
        assert said["elbows"] == again.best.route.elbows
        assert said["length"] == pytest.approx(again.best.route.length_in, abs=1e-3)
        assert said["ends"] == pytest.approx(again.best.route.termination.point, abs=1e-3)
        broken = sorted(f.title for f in again.all_findings if f.state is State.BROKEN)
        assert said["broken"] == broken
        assert f"{len(broken)} broken" in fix.recheck
        assert page.tab.inner_text("#hangtxt") == f"{again.scene.hood.centre_in:g} in"
        went = again.scene.cooktop.centre_in != plan.scene.cooktop.centre_in
        assert ("The cooktop goes with the hood." in page.tab.inner_text(".say")) is went
        assert ("The cooktop stays where it is." in page.tab.inner_text(".say")) is not went
        assert page.tab.locator("#airbox").is_visible()
    page.tab.click("#goes button")
    assert page.answer()["x"] == plan.scene.hood.centre_in
    assert page.answer()["verdict"] == "Blocked"
    assert page.faults == []


def test_the_first_button_is_the_least_fix_and_the_tape_goes_on_from_there(open_page, dead_centre):
    _, fixes, file, _ = dead_centre
    page = open_page(file)
    assert page.tab.inner_text("#act").split("\n") == [fixes[0].words, fixes[0].recheck]
    page.tab.click("#act")
    assert page.answer()["x"] == 57
    page.tab.focus("#hang")
    page.tab.keyboard.press("ArrowLeft")
    assert page.answer()["x"] in (54, 56)  # the next place of the map, of which 57 is none
    assert "The cooktop goes with the hood." in page.tab.inner_text(".say")
    page.tab.evaluate("routeviz.moveTo(46)")  # blocked as well: a shift out of the map takes the cooktop along
    assert page.answer()["verdict"] == "Blocked"
    assert "the cooktop goes with the hood" in page.tab.inner_text("#act")
    assert page.faults == []


@pytest.mark.parametrize("name", ["truss_in_front", "big_fan_small_duct"])
def test_no_button_for_a_shift_that_clears_nothing(open_page, tmp_path, name):
    """Where a duct is too long or too small wherever the hood hangs, no shift is a fix."""
    plan = pipeline.plan(load_scene(SCENES / f"{name}.toml"))
    page = open_page(pages.write(plan, tmp_path / "plan.html", fixes=studies.fixes(plan), wall_map=wall_map(plan, 4.0)))
    assert any(f.state is State.BROKEN for f in plan.all_findings)
    assert page.tab.locator("#finds .fix").count() == 0
    assert page.tab.locator("#act").is_hidden()
    # anywhere along the wall: what is offered clears something that is broken there
    worthless = page.tab.evaluate(
        """(() => { const codes = a => a.findings.filter(f => f.state === 'broken').map(f => f.code); const bad = [];
        for (const x of routeviz.data().map.x) { routeviz.state.x = x; routeviz.update(); const here = routeviz.answer(), was = codes(here);
          for (const fix of here.fixes) { routeviz.state.x = fix.x; routeviz.update(); const now = codes(routeviz.answer());
            if (here.verdict.startsWith('Works') && was.every(c => now.includes(c))) bad.push([x, fix.x]); } }
        return bad; })()"""
    )
    assert worthless == []
    assert page.faults == []


def test_one_way_has_one_flow_wherever_it_is_said(open_page, dead_centre, tmp_path):
    """Rounded once: a flow just under a half is the same number in the answer, on the way's card and in the air."""
    from dataclasses import replace

    _, fixes, _, _ = dead_centre
    again = fixes[2].again
    option = again.best
    for flow in (387.46, 387.4999):  # once rounded to a tenth, either would be 388
        full = replace(option.air.full, flow_cfm=flow)
        made = replace(
            again, options=(replace(option, air=replace(option.air, points=(full, *option.air.points[1:]))),)
        )
        page = open_page(pages.write(made, tmp_path / "flow.html"))
        said = page.tab.inner_text("#alts"), page.tab.inner_text("#airsay"), page.tab.inner_text("#airfig")
        assert all("387 cfm" in s or "387 of" in s for s in said), said
        assert not any("388" in s for s in said)
        page.tab.click("#unit")
        assert all("183" in page.tab.inner_text(s) for s in ("h1", "#alts", "#airsay"))
        assert page.faults == []
