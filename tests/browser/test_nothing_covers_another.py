"""Tags, flags and buttons keep off each other, and nothing is written on what is not there."""

from __future__ import annotations

from pathlib import Path

import pytest
import view_plans

from routeviz import pipeline, studies
from routeviz.cli.scenes import load_scene
from routeviz.cli.walls import wall_map
from routeviz.views import page as pages

pytestmark = [pytest.mark.browser, pytest.mark.slow]

SCENES = Path(__file__).parents[2] / "scenes"
_OVER = """([one, other]) => { const boxes = q => [...document.querySelectorAll(q)].map(e => e.getBoundingClientRect()).filter(r => r.width);
  return boxes(one).flatMap(a => boxes(other).filter(b => a.left < b.right - 1 && b.left < a.right - 1 && a.top < b.bottom - 1 && b.top < a.bottom - 1).map(b => [a.left, a.top, b.left, b.top])); }"""


@pytest.fixture(scope="module")
def homes(tmp_path_factory):
    folder, made = tmp_path_factory.mktemp("homes"), {}

    def home(name):
        if name not in made:
            plan = pipeline.plan(load_scene(SCENES / f"{name}.toml"))
            made[name] = pages.write(
                plan, folder / f"{name}.html", fixes=studies.fixes(plan), wall_map=wall_map(plan, 4.0)
            )
        return made[name]

    return home


@pytest.mark.parametrize("width", [1440, 1024, 390])
def test_the_hoods_tag_never_covers_the_step_buttons(open_page, tmp_path, width):
    at = view_plans.scene()
    page = open_page(
        pages.write(view_plans.plan(at), tmp_path / "p.html", wall_map=view_plans.wall_map(at)), size=(width, 900)
    )
    for x in (0, 62, 100, 110, 118, 120, 124, 126, 130, 137, 144):
        page.tab.evaluate(f"routeviz.moveTo({x})")
        assert page.tab.evaluate(_OVER, ["#hangtxt, #hang svg", ".step button"]) == [], x
    # and the buttons are what is pressed there
    page.tab.evaluate("routeviz.moveTo(124)")
    page.tab.locator(".step [data-nudge='-1']").click(timeout=3000)
    assert page.answer()["x"] == 123
    assert page.faults == []


@pytest.mark.parametrize("width", [1440, 1024])
@pytest.mark.parametrize("name", ["side_wall_storey_above", "gas_low_cabinets", "big_fan_small_duct"])
def test_flags_keep_off_words_and_buttons(open_page, homes, name, width):
    page = open_page(homes(name), size=(width, 900))
    assert page.tab.locator(".pin").count() >= 1
    for other in (".step button", ".vt .lim text", "#ht", "#key"):
        assert page.tab.evaluate(_OVER, [".pin", other]) == [], other
    pins = page.tab.evaluate(
        "[...document.querySelectorAll('.pin')].map(e => [...Object.values(e.getBoundingClientRect().toJSON())].slice(0, 4))"
    )
    for i, (ax, ay, aw, ah) in enumerate(pins):
        for bx, by, bw, bh in pins[i + 1 :]:
            assert not (ax < bx + bw - 1 and bx < ax + aw - 1 and ay < by + bh - 1 and by < ay + ah - 1)
    assert page.faults == []


@pytest.mark.parametrize("width", [1440, 1024, 800, 390])
@pytest.mark.parametrize("name", ["joist_dead_centre", "gas_low_cabinets"])
def test_nothing_jumps_while_the_hood_is_dragged(open_page, homes, name, width):
    page = open_page(homes(name), size=(width, 844))
    page.tab.wait_for_timeout(200)
    tops = page.tab.evaluate(
        """(() => { const found = []; for (const x of [routeviz.state.x, ...routeviz.data().map.x]) { routeviz.moveTo(x);
        found.push(['#stage', '#pic'].map(q => Math.round(document.querySelector(q).getBoundingClientRect().top)).join()); } return [...new Set(found)]; })()"""
    )
    assert len(tops) == 1
    count = page.tab.locator("#finds button.fix").count()
    page.tab.evaluate("routeviz.moveTo(routeviz.data().scene.hood.x)")
    for number in range(count):
        page.tab.evaluate(f"document.querySelectorAll('#finds button.fix')[{number}]?.click()")
        top = page.tab.evaluate(
            "['#stage', '#pic'].map(q => Math.round(document.querySelector(q).getBoundingClientRect().top)).join()"
        )
        assert top == tops[0]
        page.tab.evaluate("routeviz.moveTo(routeviz.data().scene.hood.x)")
    assert page.faults == []


def test_every_flags_pole_stands_on_its_place_and_carries_its_flag(open_page, homes):
    page = open_page(homes("gas_low_cabinets"))
    found = page.tab.evaluate(
        """(() => { const pic = document.querySelector('#pic').getBoundingClientRect(), poles = [...document.querySelectorAll('#flags .poles path')].map(p => p.getAttribute('d').match(/-?[0-9.]+/g).map(Number));
        return [...document.querySelectorAll('.pin')].map((e, i) => {
        const f = routeviz.answer().findings.find(f => e.getAttribute('aria-label') === `Flag ${f.n}: ${f.title}`), q = routeviz.picture().project(...f.place), r = e.getBoundingClientRect(), [x, foot, head] = poles[i];
        return { across: q[0] - x, down: q[1] - foot, left: pic.left + x - r.left, right: r.right - pic.left - x, off: Math.min(Math.abs(pic.top + head - r.bottom), Math.abs(pic.top + head - r.top)) }; }); })()"""
    )
    assert len(found) >= 6
    for pole in found:
        assert pole["across"] == pytest.approx(0, abs=1)
        assert pole["down"] == pytest.approx(0, abs=1)
        assert min(pole["left"], pole["right"]) > -2, "it meets its own flag"
        assert pole["off"] < 3


@pytest.mark.parametrize("width", [1440, 1024, 390])
def test_the_cut_can_be_set_by_hand(open_page, homes, width):
    page = open_page(homes("joist_dead_centre"), size=(width, 900))
    slider = page.tab.locator("#cut").bounding_box()
    assert slider["width"] >= 200, "one pixel for each of its steps"
    for choice in ("y", "x", "z"):
        page.tab.select_option("#cutaxis", choice)
        room = page.tab.evaluate(
            """(() => { const s = document.querySelector('#cutaxis'), c = document.createElement('canvas').getContext('2d'); c.font = getComputedStyle(s).font;
            return s.getBoundingClientRect().width - c.measureText(s.selectedOptions[0].text).width; })()"""
        )
        assert room >= 22, "all its words, and the arrow beside them"
    assert page.tab.evaluate("document.documentElement.scrollWidth") <= width
    assert page.faults == []


def test_what_is_cut_away_or_taken_away_leaves_no_numbers_and_flags(open_page, homes):
    page = open_page(homes("joist_dead_centre"))
    count = "[document.querySelectorAll('.jn').length, document.querySelectorAll('.pin').length]"
    page.tab.evaluate("document.querySelector('#finds .fix').click()")  # a duct beside joist 4, which is close
    numbers, flags = page.tab.evaluate(count)
    assert (numbers, flags) == (9, 2)
    assert page.tab.locator(".slack").count() == 1
    page.tab.evaluate("document.querySelector('#layers').open = true")
    page.tab.uncheck("#layers input[name=FRAMING]")
    page.tab.wait_for_timeout(200)
    assert page.tab.evaluate(count)[0] == 0
    assert page.tab.locator(".slack").count() == 0
    page.tab.check("#layers input[name=FRAMING]")
    page.tab.wait_for_timeout(200)
    assert page.tab.evaluate(count) == [numbers, flags]
    # cut from the left as far as 60 in: joists 1 to 3 and the flag of joist 4's finding, which stands to the left, go
    page.tab.select_option("#cutaxis", "x")
    page.tab.evaluate("cut.value = 50; cut.dispatchEvent(new Event('input'))")
    page.tab.wait_for_timeout(200)
    left = page.tab.evaluate("[...document.querySelectorAll('.jn')].map(n => n.textContent)")
    at = page.tab.evaluate("parseFloat(document.querySelector('#cutv').textContent)")
    kept = page.tab.evaluate(f"routeviz.data().numbers.filter(n => n[1][0] > {at}).map(n => n[0])")
    assert left == kept
    assert 0 < len(left) < numbers
    stands = page.tab.evaluate(
        f"routeviz.answer().findings.filter(f => f.place && f.state !== 'open' && f.state !== 'fine' && f.place[0] > {at}).length"
    )
    assert page.tab.locator(".pin").count() == stands
    assert page.faults == []
