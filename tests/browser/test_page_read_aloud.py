"""The page as a screen reader meets it: names, roles, order of headings, and what is said when the hood moves."""

from __future__ import annotations

import re

import pytest
import view_plans
from namedcontrols import unnamed

from routeviz.views import page as pages

pytestmark = [pytest.mark.browser, pytest.mark.slow]


@pytest.fixture(scope="module")
def with_map(tmp_path_factory):
    at = view_plans.scene()
    routes = (view_plans.straight_up(at), view_plans.out_the_back(at), view_plans.offset_up(at))
    return pages.write(
        view_plans.plan(at, routes), tmp_path_factory.mktemp("page") / "map.html", wall_map=view_plans.wall_map(at)
    )


@pytest.fixture(scope="module")
def blocked(tmp_path_factory):
    return pages.write(view_plans.blocked(), tmp_path_factory.mktemp("page") / "blocked.html")


@pytest.mark.parametrize("kind", ["with_map", "blocked"])
@pytest.mark.parametrize("width", [1440, 390])
def test_no_control_is_without_a_name(open_page, request, kind, width):
    page = open_page(request.getfixturevalue(kind), size=(width, 844))
    page.tab.evaluate("document.querySelectorAll('details').forEach(d => { d.open = true; })")
    page.tab.wait_for_timeout(100)
    assert unnamed(page) == []
    page.tab.evaluate("document.querySelector('main').append(document.createElement('button'))")
    assert len(unnamed(page)) == 1  # one without a name would be seen


def test_what_is_said_after_a_move_is_the_new_answer_and_only_once(open_page, with_map):
    page = open_page(with_map)
    live = page.tab.locator("#live")
    assert live.get_attribute("aria-live") == "polite"
    page.until("document.querySelector('#live').textContent.startsWith('Works. ')")
    page.tab.evaluate(
        "window.heard = []; new MutationObserver(() => heard.push(document.querySelector('#live').textContent))"
        ".observe(document.querySelector('#live'), {childList: true, characterData: true, subtree: true})"
    )
    page.tab.focus("#hang")
    page.tab.evaluate(  # as fast as a held key repeats, however busy the machine is
        "for (let i = 0; i < 8; i++) document.querySelector('#hang').dispatchEvent("
        "new KeyboardEvent('keydown', { key: 'ArrowLeft', bubbles: true, cancelable: true }))"
    )
    page.until("window.heard.length > 0")
    page.tab.wait_for_timeout(700)
    heard = page.tab.evaluate("window.heard")
    answer = page.answer()
    assert heard == [f"{answer['verdict']}. {answer['text']}"]  # eight steps, one sentence
    assert answer["x"] == 62
    said = page.tab.get_attribute("#hang", "aria-valuetext")
    assert said == f"62 in from the left wall. {answer['verdict']}. {answer['text']}"
    assert page.tab.locator("#live").evaluate("n => getComputedStyle(n).display") != "none"


def test_the_tree_has_one_title_landmarks_and_no_level_left_out(open_page, with_map):
    page = open_page(with_map)
    heard = page.tab.locator("body").aria_snapshot()
    for landmark in ("banner", "main", 'navigation "Page"', 'region "The tape and the picture"', "complementary"):
        assert landmark in heard, landmark
    levels = [int(n) for n in re.findall(r"heading .*\[level=(\d)\]", heard)]
    assert levels[0] == 1
    assert levels.count(1) == 1
    assert all(b <= a + 1 for a, b in zip(levels, levels[1:], strict=False))
    assert 'group "Picture of the hood wall' in heard
    assert re.search(r'button "square to the wall" \[pressed\]', heard)
    assert re.search(r'combobox "Cut the picture"', heard)
    assert re.search(r'slider "How far to cut"', heard)


def test_flags_and_findings_say_state_number_and_what_is_spare(open_page, blocked):
    page = open_page(blocked)
    heard = page.tab.locator("body").aria_snapshot()
    assert view_plans.blocked().answer in heard
    for button in page.tab.locator("#finds .go").all():
        assert re.match(r"(Broken|Close) \d+: .+", button.get_attribute("aria-label"))
    for pin in page.tab.locator(".pin").all():
        assert re.match(r"Flag \d+: .+", pin.get_attribute("aria-label"))


def test_every_step_of_the_tab_key_can_be_seen(open_page, with_map):
    page = open_page(with_map)
    seen = set()
    for _ in range(14):
        page.tab.keyboard.press("Tab")
        ring = page.tab.evaluate(
            "(n => [n.id || n.textContent.slice(0, 20), getComputedStyle(n).outlineStyle, n.getClientRects().length])(document.activeElement)"
        )
        seen.add(ring[0])
        assert ring[1] != "none", ring
        assert ring[2] > 0, ring
    assert {"hang", "theme", "print"} <= seen
