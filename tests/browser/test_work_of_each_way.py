"""What to measure, to cut and to do belongs to the way and the place that is shown, or is not shown at all."""

from __future__ import annotations

from pathlib import Path

import pytest

from routeviz import pipeline
from routeviz.cli.scenes import load_scene
from routeviz.cli.walls import wall_map
from routeviz.views import page as pages

pytestmark = [pytest.mark.browser, pytest.mark.slow]

SCENES = Path(__file__).parents[2] / "scenes"
_LISTS = ("#rulings", "#measure", "#steps")


@pytest.fixture(scope="module")
def two_ways(tmp_path_factory):
    plan = pipeline.plan(load_scene(SCENES / "juniper_straight_up.toml"))
    return plan, pages.write(plan, tmp_path_factory.mktemp("work") / "plan.html", wall_map=wall_map(plan, 4.0))


def _labels(option, plan) -> list[str]:
    """The members that a way's own findings or a simpler way judge."""
    judged = {f.ruling.solid: f.ruling for f in (*plan.findings, *option.findings) if f.ruling is not None}
    return [r.label for r in {**{m.solid: m for m in plan.members}, **judged}.values()]


def test_every_way_has_its_own_lists(open_page, two_ways):
    plan, file = two_ways
    page = open_page(file)
    assert len(plan.options) > 1
    firsts = []
    for number, option in enumerate(plan.options):
        page.tab.locator("#alts .alt").nth(number).click()
        names = page.tab.locator("#measure b").all_inner_texts()
        assert [n.lower() for n in names] == [m.what.lower() for m in option.takeoff.measure_first]
        steps = page.tab.locator("#steps li label > span").all_inner_texts()
        assert len(steps) == len(option.takeoff.steps)
        for said, step in zip(steps, option.takeoff.steps, strict=True):
            assert said.startswith(step.text)
        assert sorted(page.tab.locator("#rulings > li > b").all_inner_texts()) == sorted(_labels(option, plan))
        firsts.append(names)
    assert firsts[0] != firsts[1], "the ways differ, so that the lists could be mixed up"
    # a tick stays while another way is looked at
    page.tab.locator("#alts .alt").nth(0).click()
    page.tab.locator("#steps input").nth(1).check()
    page.tab.locator("#alts .alt").nth(1).click()
    page.tab.locator("#alts .alt").nth(0).click()
    assert page.tab.locator("#steps input").nth(1).is_checked()
    assert not page.tab.locator("#steps input").nth(0).is_checked()
    assert page.faults == []


def test_a_hold_is_what_must_be_so_before_going_on(open_page, two_ways):
    plan, file = two_ways
    page = open_page(file)
    said = page.tab.inner_text("#steps")
    held = [s.hold for s in plan.best.takeoff.steps if s.hold]
    assert held
    assert said.count("Go on only when: ") == len(held)
    assert "First:" not in said
    assert "Go on only when: air leaves outdoors" in said
    assert "Go on only when: every number within its limit" in said


def test_elsewhere_the_lists_are_hidden_and_all_three_say_so(open_page, two_ways):
    _, file = two_ways
    page = open_page(file)
    shown = [s for s in _LISTS if page.tab.locator(f"{s} > li").count()]
    assert len(shown) >= 2
    page.tab.evaluate("routeviz.moveTo(routeviz.data().map.x.find(x => x > routeviz.state.x + 10))")
    for name in shown:
        section = page.tab.locator(f"section:has(> {name})")
        assert page.tab.locator(f"{name} > li").count() == 0
        assert "Worked out for way A with the hood at 70 in" in section.inner_text()
        assert "plan again for this place" in section.inner_text()
    page.tab.evaluate("routeviz.moveTo(routeviz.data().scene.hood.x)")
    for name in shown:
        assert page.tab.locator(f"{name} > li").count() > 0
        assert "Worked out for" not in page.tab.locator(f"section:has(> {name})").inner_text()
    assert page.faults == []
