"""The live page in a real browser, with the program behind it: edits, undo, slips, saving, two pages, the program's end."""

from __future__ import annotations

import contextlib
import os
import random
import re
import signal
import statistics
import subprocess
import sys
import time
import tomllib
from collections.abc import Iterator
from pathlib import Path

import pytest
from conftest_live import Live, Program

from routeviz import pipeline, rules, scenefile, studies
from routeviz.views import page as pages

pytestmark = [pytest.mark.browser, pytest.mark.slow]

SCENES = Path(__file__).parents[2] / "scenes"
JUNIPER = (SCENES / "juniper_straight_up.toml").read_text(encoding="utf-8")
FIRST = "[data-path='ceiling.joists.first']"


def planned(text: str):
    return pipeline.plan(scenefile.loads(text, "x.toml", profiles=rules.profiles(), codes=rules.codes()))


@pytest.fixture(scope="module")
def program(tmp_path_factory) -> Iterator[Program]:
    folder = tmp_path_factory.mktemp("live")
    (folder / "kitchen.toml").write_text(JUNIPER, encoding="utf-8")
    with Program(folder, "kitchen.toml") as running:
        yield running


@pytest.fixture(scope="module")
def opened(browser, program: Program) -> Iterator[Live]:
    with Live(browser, program) as page:
        yield page


@pytest.fixture
def live(opened: Live, program: Program) -> Iterator[Live]:
    """The page of a program that has the example home as its file says it, with nothing changed."""
    (program.folder / "kitchen.toml").write_text(JUNIPER, encoding="utf-8")
    opened.send("load")
    opened.settled(JUNIPER)
    yield opened
    faults, opened.faults = opened.faults, []
    assert faults == []


def test_it_is_the_same_page_with_its_numbers_open(live: Live) -> None:
    assert live.tab.inner_text("h1") == planned(JUNIPER).answer
    assert live.tab.input_value(FIRST) == "14 in"
    assert live.tab.input_value("[data-path='cooktop.kind']") == "gas"
    assert live.tab.locator("#save").is_disabled()
    assert "kitchen.toml: saved" in live.tab.inner_text("#deskbar")
    live.until("!!document.querySelector('body[data-map=\"1\"]')", 60)  # the whole wall follows


def test_a_changed_number_gives_the_plan_of_the_changed_scene(live: Live) -> None:
    live.type(FIRST, "9")
    text = scenefile.edit(JUNIPER, {"ceiling.joists.first": "9 in"})
    live.settled(text)
    assert live.tab.inner_text("h1") == planned(text).answer
    assert live.tab.input_value(FIRST) == "9 in", "a bare number takes the unit of what stood there"
    # joists at 9, 25, ... and the picture's own joist stands where the tape's does
    joists = live.tab.evaluate("routeviz.data().tape.joists.map(j => (j.a + j.b) / 2)")
    assert joists[:3] == [9, 25, 41]
    drawn = live.tab.evaluate("routeviz.picture().boxOf('ceiling-joist-1') || routeviz.picture().boxOf('joist-1')")
    assert (drawn[0] + drawn[1]) / 2 == pytest.approx(9, abs=0.01)
    assert live.tab.locator("#save").is_enabled()


def test_choices_steps_and_the_slider(live: Live) -> None:
    live.tab.select_option("[data-path='cooktop.kind']", "induction")
    live.settled(scenefile.edit(JUNIPER, {"cooktop.kind": "induction"}))
    live.tab.focus(FIRST)
    live.tab.keyboard.press("ArrowUp")
    live.tab.keyboard.press("Shift+ArrowUp")
    live.until("document.querySelector(\"[data-path='ceiling.joists.first']\").value === '15 1/4 in'", 30)
    live.tab.locator(".slide").evaluate("e => { e.value = 6; e.dispatchEvent(new Event('input', { bubbles: true })); }")
    live.until("document.querySelector(\"[data-path='ceiling.joists.first']\").value === '6 in'", 30)
    live.settled(scenefile.edit(JUNIPER, {"cooktop.kind": "induction", "ceiling.joists.first": "6 in"}))


def test_undo_and_redo_by_key_and_button(live: Live) -> None:
    live.type("[data-path='kitchen.ceiling']", "8 ft 4 in")
    changed = scenefile.edit(JUNIPER, {"kitchen.ceiling": "8 ft 4 in"})
    live.settled(changed)
    live.tab.locator("h1").click()
    live.tab.keyboard.press("Control+z")
    live.settled(JUNIPER)
    assert live.tab.input_value("[data-path='kitchen.ceiling']") == "8 ft"
    assert live.tab.inner_text("h1") == planned(JUNIPER).answer
    live.tab.keyboard.press("Control+Shift+z")
    live.settled(changed)
    live.tab.click("#undo")
    live.settled(JUNIPER)
    live.tab.click("#redo")
    live.settled(changed)
    assert live.tab.locator("#redo").is_disabled()


def test_every_slip_is_told_at_its_number_and_the_plan_stays(live: Live) -> None:
    answer = live.tab.inner_text("h1")
    live.type(FIRST, "a foot")
    live.until("document.querySelectorAll('#measured .msg').length === 1", 30)
    live.type("[data-path='kitchen.width']", "3 in")
    live.until("document.querySelectorAll('#measured .msg').length === 2", 30)
    for path, words in (("ceiling.joists.first", "not a length"), ("kitchen.width", "must be at least 24 in")):
        field = live.tab.locator(f"[data-path='{path}']")
        assert field.get_attribute("aria-invalid") == "true"
        assert words in live.tab.inner_text(f"#{field.get_attribute('aria-describedby')}")
    assert live.tab.inner_text("h1") == answer
    assert live.text() == JUNIPER
    live.type("[data-path='kitchen.width']", "13 ft")  # one is mended and taken, the other still waits
    live.settled(scenefile.edit(JUNIPER, {"kitchen.width": "13 ft"}))
    live.until("document.querySelectorAll('#measured .msg').length === 1", 30)
    assert live.tab.input_value(FIRST) == "a foot"
    live.type(FIRST, "15 in")
    live.settled(scenefile.edit(JUNIPER, {"kitchen.width": "13 ft", "ceiling.joists.first": "15 in"}))
    assert live.tab.locator("#measured .msg").count() == 0


def test_a_slip_holds_back_nothing_that_comes_after_it(live: Live, program: Program) -> None:
    """One refused width: spacing, height and ceiling are taken, saved without it, and taken back one by one."""
    steps = [JUNIPER]
    for path, typed, taken in (
        ("ceiling.joists.spacing", "19.2", "19.2 in"),
        ("cooktop.width", "banana", None),
        ("hood.mount", "33 in", "33 in"),
        ("kitchen.ceiling", "9 ft", "9 ft"),
    ):
        live.type(f"[data-path='{path}']", typed)
        if taken:
            steps.append(scenefile.edit(steps[-1], {path: taken}))
            live.settled(steps[-1])
    assert live.tab.get_attribute("[data-path='cooktop.width']", "aria-invalid") == "true"
    assert "One value is refused and waits" in live.tab.inner_text("#measured .refused")
    live.tab.click("#save")
    live.until(
        "document.querySelector('#saved').textContent === 'kitchen.toml: saved, without 1 value that is refused'", 30
    )
    assert (program.folder / "kitchen.toml").read_text(encoding="utf-8") == steps[-1]
    assert live.tab.input_value("[data-path='cooktop.width']") == "banana"
    for text in reversed(steps[:-1]):
        live.tab.click("#undo")
        live.settled(text)
        assert live.tab.input_value("[data-path='cooktop.width']") == "banana", "only one step is taken back"
    live.tab.click("#measured .refused .quiet")
    live.until("document.querySelectorAll('#measured .refused').length === 0", 30)
    assert live.tab.input_value("[data-path='cooktop.width']") == "30 in"


def test_undo_takes_a_slip_back_first_when_it_came_last(live: Live) -> None:
    live.type("[data-path='hood.mount']", "33 in")
    text = scenefile.edit(JUNIPER, {"hood.mount": "33 in"})
    live.settled(text)
    live.type("[data-path='cooktop.width']", "banana")
    live.until("document.querySelectorAll('#measured .msg').length === 1", 30)
    live.tab.click("#undo")
    live.until("document.querySelectorAll('#measured .msg').length === 0", 30)
    assert live.tab.input_value("[data-path='cooktop.width']") == "30 in"
    assert live.text() == text
    live.tab.click("#undo")
    live.settled(JUNIPER)


def test_a_bare_number_says_what_it_was_read_as(live: Live) -> None:
    live.type("[data-path='kitchen.width']", "3.6 m")
    live.settled(scenefile.edit(JUNIPER, {"kitchen.width": "3.6 m"}))
    live.type("[data-path='kitchen.width']", "144")
    live.until("document.querySelectorAll('#measured .msg').length === 1", 30)
    assert "Read as 144 m, for 3.6 m stood there: must be at most" in live.tab.inner_text("#measured .msg")
    live.tab.click("#undo")
    live.until("document.querySelectorAll('#measured .msg').length === 0", 30)


def test_everything_that_is_written_in_a_field_can_be_read(live: Live) -> None:
    live.tab.evaluate("document.querySelectorAll('#measured details:not([open]) > summary').forEach(s => s.click())")
    live.until("!!document.querySelector(\"[data-path='hood.fan.curve']\")")
    assert "420 cfm" in live.tab.input_value("[data-path='hood.fan.curve']")
    clipped = live.tab.evaluate(
        "[...document.querySelectorAll('#measured .val')].filter(e => e.offsetParent && (e.scrollWidth > e.clientWidth + 1 || e.scrollHeight > e.clientHeight + 3)).map(e => e.dataset.path)"
    )
    assert clipped == []
    said = live.tab.inner_text("#measured")
    assert "Its supply enters" in said
    assert not re.search(r"^right of the hood's centre line", said, re.MULTILINE)


def _planners(program: int) -> list[int]:
    """The processes that plan for the program: the children of the server that starts them."""
    parents = {}
    for entry in Path("/proc").iterdir():
        if entry.name.isdigit():
            with contextlib.suppress(OSError):
                parents[int(entry.name)] = int((entry / "stat").read_text().rpartition(")")[2].split()[1])
    return [p for p, parent in parents.items() if parents.get(parent) == program]


@pytest.mark.skipif(not Path("/proc/self/stat").exists(), reason="needs /proc to find the planning's processes")
def test_where_planning_fails_the_old_answer_is_covered(browser, tmp_path: Path) -> None:
    (tmp_path / "kitchen.toml").write_text(JUNIPER, encoding="utf-8")
    with Program(tmp_path, "kitchen.toml") as program, Live(browser, program) as page:
        page.until("document.body.dataset.map === '1' && !document.body.dataset.doing", 90)
        old = page.tab.inner_text("h1")
        stopped = _planners(program.process.pid)
        assert len(stopped) == 2
        for process in stopped:
            os.kill(process, signal.SIGSTOP)
        page.type(FIRST, "15 in")
        page.until("document.body.dataset.doing === 'planning'", 30)
        for process in stopped:
            os.kill(process, signal.SIGKILL)
        page.until("document.querySelector('#word').textContent === 'Not planned'", 30)
        assert old not in page.tab.inner_text(".say")
        assert page.tab.inner_text("h1").startswith("This was not planned: The planning stopped by itself")
        assert page.tab.locator("#mark .ok").count() == 0
        assert page.tab.locator("#act").is_hidden()
        assert float(page.tab.evaluate("getComputedStyle(document.querySelector('#stage')).opacity")) < 0.6
        page.type(FIRST, "15 1/4 in")
        text = scenefile.edit(JUNIPER, {"ceiling.joists.first": "15 1/4 in"})
        page.settled(text)
        page.until("document.querySelector('#word').textContent !== 'Not planned'", 30)
        assert page.tab.inner_text("h1") == planned(text).answer
        assert page.tab.evaluate("getComputedStyle(document.querySelector('#stage')).opacity") == "1"
        assert page.faults == []


def test_a_slip_can_be_taken_back(live: Live) -> None:
    live.type(FIRST, "nowhere")
    live.until("document.querySelectorAll('#measured .msg').length === 1", 30)
    live.tab.click("#measured .refused .quiet")
    live.until("document.querySelectorAll('#measured .msg').length === 0", 30)
    assert live.tab.input_value(FIRST) == "14 in"


def test_saving_keeps_comments_and_survives_a_reload(live: Live, program: Program) -> None:
    live.type(FIRST, "15 1/4")
    text = scenefile.edit(JUNIPER, {"ceiling.joists.first": "15 1/4 in"})
    live.settled(text)
    live.tab.click("#save")
    live.until("document.querySelector('#saved').textContent.endsWith(': saved')", 30)
    assert (program.folder / "kitchen.toml").read_text(encoding="utf-8") == text
    assert text.startswith("# Shows:")
    live.tab.reload()
    live.ready()
    assert live.tab.input_value(FIRST) == "15 1/4 in"
    assert live.tab.inner_text("h1") == planned(text).answer
    assert live.tab.locator("#undo").is_enabled()


def test_a_second_page_follows(live: Live, browser, program: Program) -> None:
    with Live(browser, program) as other:
        live.type("[data-path='cooktop.width']", "36 in")
        text = scenefile.edit(JUNIPER, {"cooktop.width": "36 in"})
        live.settled(text)
        other.settled(text)
        assert other.tab.input_value("[data-path='cooktop.width']") == "36 in"
        assert other.tab.inner_text("h1") == live.tab.inner_text("h1")
        other.tab.click("#undo")
        live.settled(JUNIPER)
        assert live.tab.input_value("[data-path='cooktop.width']") == "30 in"
        assert other.faults == []


def test_a_file_changed_by_something_else_is_offered(live: Live, program: Program) -> None:
    live.type(FIRST, "15 in")
    live.settled(scenefile.edit(JUNIPER, {"ceiling.joists.first": "15 in"}))
    theirs = JUNIPER.replace('width = "12 ft"', 'width = "13 ft"', 1)
    (program.folder / "kitchen.toml").write_text(theirs, encoding="utf-8")
    live.until("document.querySelector('#notice').textContent.includes('was changed by something else')", 30)
    live.tab.click("#save")
    live.tab.wait_for_timeout(300)
    assert (program.folder / "kitchen.toml").read_text(encoding="utf-8") == theirs, "not written over unasked"
    live.tab.click("text=Take up what is in the file")
    live.settled(theirs)
    assert live.tab.input_value("[data-path='kitchen.width']") == "13 ft"
    live.tab.click("#undo")
    live.settled(scenefile.edit(JUNIPER, {"ceiling.joists.first": "15 in"}))
    assert live.tab.locator("#notice").is_hidden()


def test_hanging_the_hood_where_it_was_dragged(live: Live) -> None:
    live.until("document.body.dataset.map === '1'", 60)
    live.tab.evaluate("routeviz.moveTo(54)")
    live.until("document.querySelector('#trying').textContent.includes('You are trying the hood at 54 in')")
    live.tab.click("text=Hang it here")
    text = scenefile.edit(JUNIPER, {"cooktop.centre": "54 in", "hood.centre": "54 in"})
    live.settled(text)
    assert live.tab.inner_text("h1") == planned(text).answer
    assert live.tab.locator("#trying").is_hidden()


def test_dragging_the_hood_pushes_nothing_aside(live: Live) -> None:
    live.until("document.body.dataset.map === '1'", 60)
    where = "[routeviz.state.x, document.querySelector('#stage').getBoundingClientRect().top, document.querySelector('#pic').getBoundingClientRect().top]"
    _, *before = live.tab.evaluate(where)
    live.tab.evaluate("routeviz.moveTo(54)")
    live.until("!document.querySelector('#trying').hidden")
    x, *after = live.tab.evaluate(where)
    assert x == 54
    assert after == before
    live.tab.click("#trying >> text=Back")
    live.until("document.querySelector('#trying').hidden")


def test_marks_of_the_stud_finder(live: Live) -> None:
    marks = "13 1/4, 29, 45 1/8, 61, 70 1/2"
    live.tab.click("#finder summary")
    live.tab.fill("#marks", marks)
    live.until("document.querySelector('#marksay').textContent.includes('joist 5 is 1 1/2 in into the duct')", 30)
    found = studies.joist_preview(scenefile.loads(JUNIPER), studies.read_marks(marks), offset=False)
    said = live.tab.inner_text("#marksay")
    shifts = [s for s in (found.shift_left_in, found.shift_right_in) if s is not None]
    assert shifts
    assert f"{abs(min(shifts, key=abs)):g} in" in said or "/" in said.split("Least shift:")[1].split(" in ")[0]
    assert "An opening would need 2 × header 2x8" in said
    assert "4 more joists were carried on" in said
    live.until(
        "document.querySelector('#marksay').textContent.includes('Offset: ') && !document.querySelector('#marksay').textContent.includes('looking for')",
        60,
    )
    assert live.text() == JUNIPER, "nothing is taken until it is said"
    live.tab.click("text=Take these joists")
    live.settled(scenefile.edit(JUNIPER, dict(found.changes)))
    assert live.tab.input_value("[data-path='ceiling.joists.at']").startswith(
        "13 1/4 in, 29 in, 45 1/8 in, 61 in, 70 1/2 in"
    )


def test_the_page_reckons_bays_as_the_program_does(open_page, tmp_path) -> None:
    """Opened from disk, with no program behind it: the same joists, bays and, for joists alone, the same shifts."""
    bare = scenefile.edit(JUNIPER, {"above.kind": "storey"})  # no rafters above, so joists alone decide
    page = open_page(pages.write(planned(bare), tmp_path / "plan.html"))
    drawn = random.Random(7)
    for _ in range(25):
        at, marks = drawn.uniform(4, 20), []
        while at < 140 and len(marks) < 6:
            marks.append(round(at * 8) / 8)
            at += drawn.choice((12, 16, 16, 16, 19.2, 24, 32, 40)) + drawn.uniform(-1.5, 1.5)
        mine = page.tab.evaluate(f"routeviz.bays({marks})")
        ours = studies.joist_preview(scenefile.loads(bare), tuple(marks))
        assert [j["at"] for j in mine["joists"]] == pytest.approx([j.centre_in for j in ours.joists], abs=1e-6)
        assert [(b["fits"], b["here"]) for b in mine["bays"]] == [(b.fits, b.here) for b in ours.bays]
        assert [b["lo"] for b in mine["bays"]] == pytest.approx([b.low_in for b in ours.bays], abs=1e-6)
        blocked = [name for name, _ in ours.blockers if name.startswith("joist")]
        assert [name for name, _ in mine["blockers"]] == blocked
    page.tab.click("#finder summary")
    page.tab.fill("#marks", "13 1/4, 29, 45 1/8, about 61")
    assert "“about 61” is not a length" in page.tab.inner_text("#marksay")
    page.tab.fill("#marks", "13 1/4, 29, 45 1/8, 61, 70 1/2")
    assert "joist 5 is 1 1/2 in into the duct" in page.tab.inner_text("#marksay")
    assert page.tab.locator("#measured").is_hidden()
    assert page.tab.locator("#deskbar").is_hidden()
    assert page.faults == []


def test_every_number_of_a_scene_can_be_reached(live: Live, program: Program) -> None:
    """The starter scene says nearly everything that a scene can say; each of its values has its field."""
    text = scenefile.starter()
    (program.folder / "kitchen.toml").write_text(text, encoding="utf-8")
    live.until("document.querySelector('#notice').textContent.includes('was changed')", 30)
    live.tab.click("text=Take up what is in the file")
    live.settled(text, seconds=90)
    for _ in range(4):  # folds inside folds
        live.tab.evaluate(
            "document.querySelectorAll('#measured details:not([open]) > summary').forEach(s => s.click())"
        )
        live.tab.wait_for_timeout(200)
    reached = set(live.tab.evaluate("[...document.querySelectorAll('#measured [data-path]')].map(n => n.dataset.path)"))

    def leaves(value: object, at: str) -> set[str]:
        if isinstance(value, dict):
            return {leaf for key, inner in value.items() for leaf in leaves(inner, f"{at}.{key}" if at else key)}
        if isinstance(value, list) and value and isinstance(value[0], dict):
            names = [row.get("name", str(n)) for n, row in enumerate(value, 1)]
            return {leaf for name, row in zip(names, value, strict=True) for leaf in leaves(row, f"{at}.{name}")}
        return {at}

    wanted = {p for p in leaves(tomllib.loads(text), "") if not p.endswith(".name") and "." in p}
    assert len(wanted) > 150
    assert wanted - reached == set()
    nameless = live.tab.evaluate(
        "[...document.querySelectorAll('#measured input, #measured select, #measured button')].filter(e => !(e.getAttribute('aria-label') || e.innerText.trim() || (e.labels && e.labels.length))).length"
    )
    assert nameless == 0


@pytest.mark.parametrize("scheme", ["light", "dark"])
def test_the_panels_text_has_contrast(browser, program: Program, scheme: str) -> None:
    """WCAG 2.2 success criterion 1.4.3: 4.5 to 1, numbers in their tinted fields included."""
    measure = """() => { const lin = v => (v /= 255) <= .04045 ? v / 12.92 : ((v + .055) / 1.055) ** 2.4, lum = ([r, g, b]) => .2126 * lin(r) + .7152 * lin(g) + .0722 * lin(b);
      const parse = c => { const n = (c.match(/[\\d.]+/g) || []).map(Number); return /^color\\(srgb/.test(c) ? [n[0] * 255, n[1] * 255, n[2] * 255, n[3] ?? 1] : [n[0], n[1], n[2], n[3] ?? 1]; };
      const ground = e => { const layers = []; for (; e; e = e.parentElement) { const c = parse(getComputedStyle(e).backgroundColor); layers.push(c); if (c[3] === 1) break; } return layers.reverse().reduce((under, [r, g, b, a]) => under ? [r, g, b].map((v, i) => v * a + under[i] * (1 - a)) : [r, g, b], null); };
      return [...document.querySelectorAll('#measured p, #measured .val, #measured h3, #measured summary, #deskbar button:not(:disabled), #saved, #finder summary, #finder label')].filter(e => e.offsetParent).map(e => {
        const a = lum(parse(getComputedStyle(e).color)), b = lum(ground(e)), ratio = (Math.max(a, b) + .05) / (Math.min(a, b) + .05); return [ratio, e.className + ' ' + e.textContent.slice(0, 30)]; }).sort((a, b) => a[0] - b[0])[0]; }"""
    with Live(browser, program, scheme=scheme) as page:
        ratio, where = page.tab.evaluate(measure)
        assert ratio >= 4.5, where


def test_on_a_phone_numbers_are_large_enough_to_touch(browser, program: Program) -> None:
    with Live(browser, program, size=(390, 844), touch=True) as page:
        page.tab.wait_for_timeout(300)
        assert page.tab.evaluate("document.documentElement.scrollWidth") <= 390
        for button in page.tab.locator("#deskbar button").all():
            assert button.bounding_box()["height"] >= 40
        assert all(f.bounding_box()["height"] >= 24 for f in page.tab.locator("#measured .val").all())  # WCAG 2.5.8
        assert page.faults == []


def test_how_long_it_takes_from_hand_to_picture(live: Live, capsys) -> None:
    """Times are printed; the limits here are those that no load of other work on the machine excuses.

    A picture counts when its pixels can be read back, so the drawing itself is in the time, not only its being asked for.
    """
    live.until("document.body.dataset.map === '1' && !document.body.dataset.doing", 90)
    drawn = """const gl = routeviz.picture().canvas.getContext('webgl2'), pixel = new Uint8Array(4);
        const drawn = () => new Promise(done => routeviz.live.drawn = done).then(() => gl.readPixels(0, 0, 1, 1, gl.RGBA, gl.UNSIGNED_BYTE, pixel));"""
    hood = live.tab.evaluate(
        f"""async () => {{ {drawn} const times = []; for (const x of [62, 54, 46, 58, 66, 74, 80, 50, 60, 70]) {{ const t = performance.now(); routeviz.moveTo(x); await drawn(); times.push(performance.now() - t); }} return times; }}"""
    )
    live.tab.evaluate("routeviz.moveTo(70)")
    joists = []
    for first in ("13 in", "12 in", "11 in", "10 in", "9 in"):
        before = live.tab.evaluate("document.body.dataset.plan || '0'")
        t = live.tab.evaluate(
            f"""async () => {{ {drawn} const field = document.querySelector("{FIRST}"), t = performance.now(); field.value = '{first}'; field.dispatchEvent(new Event('change'));
            for (;;) {{ await drawn(); if (routeviz.data().live.number > {before} && Math.abs(routeviz.data().tape.joists[0].a + 0.75 - parseFloat('{first}')) < 0.01) return performance.now() - t; }} }}"""
        )
        joists.append(t)
    with capsys.disabled():
        print(
            f"\nfrom hand to picture: hood move {statistics.median(hood):.0f} ms (median of {len(hood)}), "
            f"joist layout {statistics.median(joists):.0f} ms (median of {len(joists)}; first {joists[0]:.0f})"
        )
    assert statistics.median(hood) < 1_000
    assert statistics.median(joists) < 4_000


def test_the_program_ends_and_the_page_stays(browser, tmp_path: Path) -> None:
    (tmp_path / "kitchen.toml").write_text(JUNIPER, encoding="utf-8")
    with Program(tmp_path, "kitchen.toml") as program, Live(browser, program) as page:
        page.until("document.body.dataset.map === '1' && !document.body.dataset.doing", 90)
        page.type(FIRST, "14 1/2")
        text = scenefile.edit(JUNIPER, {"ceiling.joists.first": "14 1/2 in"})
        page.settled(text)
        page.until("document.body.dataset.map === '1' && !document.body.dataset.doing", 90)
        page.expects_refusals = True  # the browser itself notes every request that is refused
        program.process.send_signal(signal.SIGKILL)
        page.until("document.body.dataset.live === 'gone'", 30)
        assert "has ended" in page.tab.inner_text("#notice")
        assert page.tab.locator(FIRST).is_disabled()
        page.tab.focus("#hang")
        page.tab.keyboard.press("ArrowLeft")
        page.until("routeviz.answer().x === 68")
        assert page.tab.inner_text("#word") in ("Works", "Works, tight", "Blocked")
        with page.tab.expect_download() as download:
            page.tab.click("text=Keep the scene as a file")
        assert Path(download.value.path()).read_text(encoding="utf-8") == text
        assert (tmp_path / "kitchen.toml").read_text(encoding="utf-8") == JUNIPER
        assert page.faults == []


def test_ctrl_c_ends_it_and_keeps_what_was_not_saved(browser, tmp_path: Path) -> None:
    (tmp_path / "kitchen.toml").write_text(JUNIPER, encoding="utf-8")
    with Program(tmp_path, "kitchen.toml") as program, Live(browser, program) as page:
        page.type(FIRST, "15 in")
        text = scenefile.edit(JUNIPER, {"ceiling.joists.first": "15 in"})
        page.settled(text)
        page.expects_refusals = True
        program.process.send_signal(signal.SIGINT)
        assert program.process.wait(20) == 0
        said = program.process.stderr.read()
        page.until("document.body.dataset.live === 'gone'", 30)
        assert page.faults == []
    kept = tmp_path / "kitchen_unsaved.toml"
    assert re.search(r"What was not saved is kept in .*kitchen_unsaved\.toml", said)
    assert kept.read_text(encoding="utf-8") == text
    assert "Traceback" not in said


def test_from_nothing_to_a_saved_plan_by_answering_questions(browser, tmp_path: Path) -> None:
    begun = time.monotonic()
    with Program(tmp_path) as program, Live(browser, program) as page:
        assert page.tab.inner_text("#measured > h2") == "A few questions"
        assert page.tab.locator(".ask > li").count() == 7
        assert page.tab.locator(".ask > li.answered").count() == 0
        assert page.tab.inner_text("#word") == "Works", "there is a plan from the first moment"
        guessed = page.tab.evaluate("routeviz.data().plan.assumptions.length")
        assert guessed > 50
        assert f"{guessed} of its numbers are guessed" in page.tab.inner_text(".answer")
        page.type("[data-path='kitchen.depth']", "nothing")  # what is refused is not answered
        page.until("document.querySelectorAll('.ask .msg').length === 1", 30)
        page.tab.locator(".ask > li .quiet").first.click()
        page.until("document.querySelectorAll('.ask > li .quiet').length === 6", 30)
        assert page.tab.locator(".ask > li.answered").count() == 0
        assert "answered" not in page.tab.inner_text(".ask > li >> nth=0")
        page.type("[data-path='kitchen.depth']", "11 ft")
        page.until("document.querySelectorAll('.ask > li.answered').length === 1", 30)
        for path, typed in (
            ("kitchen.width", "11 ft 6 in"),
            ("cooktop.centre", "66 in"),
            ("ceiling.joists.first", "10"),
        ):
            page.type(f"[data-path='{path}']", typed)
        page.tab.select_option("[data-path='above.kind']", "storey")
        page.tab.select_option("[data-path='rules.profile']", "irc-2021")
        for _ in range(7):
            left = page.tab.locator(".ask > li:not(.answered) .quiet")
            if not left.count():
                break
            count = left.count()
            left.first.click()
            page.until(f"document.querySelectorAll('.ask > li:not(.answered)').length < {count}", 30)
        assert page.tab.locator(".ask > li.answered").count() == 7
        page.tab.click("#save")
        page.until("document.querySelector('#saved').textContent === 'kitchen.toml: saved'", 30)
        text = (tmp_path / "kitchen.toml").read_text(encoding="utf-8")
        page.settled(text)
        assert page.tab.inner_text("h1") == planned(text).answer
        assert page.faults == []
    said = tomllib.loads(text)
    assert (said["kitchen"]["width"], said["above"]["kind"], said["cooktop"]["centre"]) == (
        "11 ft 6 in",
        "storey",
        "66 in",
    )
    assert not {"kitchen.width", "cooktop.kind", "ceiling.joists.spacing"} & set(said["assumed"])
    assert time.monotonic() - begun < 300


def test_rafters_that_nobody_measured_stay_over_the_joists(browser, tmp_path: Path) -> None:
    with Program(tmp_path) as program, Live(browser, program) as page:
        page.type("[data-path='ceiling.joists.first']", "10 in")
        page.until("!document.querySelector('[data-path=\"ceiling.joists.first\"]').classList.contains('taken')", 30)
        page.tab.click("#save")
        page.until("document.querySelector('#saved').textContent === 'kitchen.toml: saved'", 30)
        said = tomllib.loads((tmp_path / "kitchen.toml").read_text(encoding="utf-8"))
        assert (said["ceiling"]["joists"]["first"], said["roof"]["framing"]["first"]) == ("10 in", "10 in")
        assert "roof.framing.first" in said["assumed"]
        assert "ceiling.joists.first" not in said["assumed"]
        assert page.faults == []


def test_what_a_choice_brings_with_it_is_guessed_and_not_measured(browser, tmp_path: Path) -> None:
    """A slab has a thickness that nobody gave yet, and no joists; back under an attic the joists are guessed again."""
    with Program(tmp_path) as program, Live(browser, program) as page:
        page.tab.select_option("[data-path='above.kind']", "slab")
        page.until("document.querySelector('[data-path=\"ceiling.slab\"]') !== null", 30)
        asked = page.tab.locator(".ask > li", has_text="How thick is the concrete?")
        assert asked.locator(".quiet").count() == 1, "it can be agreed to"
        assert page.tab.locator(".ask > li", has_text="joists").count() == 0
        page.tab.click("#save")
        page.until("document.querySelector('#saved').textContent === 'kitchen.toml: saved'", 30)
        said = tomllib.loads((tmp_path / "kitchen.toml").read_text(encoding="utf-8"))
        assert said["ceiling"]["slab"] == "8 in"
        assert "ceiling.slab" in said["assumed"]
        assert not [place for place in said["assumed"] if place.startswith("ceiling.joists") or place == "above.kind"]
        asked.locator(".quiet").click()
        page.until(
            "[...document.querySelectorAll('.ask > li.answered b')].some(b => b.textContent.includes('concrete'))", 30
        )
        page.tab.select_option("[data-path='above.kind']", "attic")
        page.until("document.querySelector('[data-path=\"ceiling.joists.size\"]') !== null", 30)
        page.tab.click("#save")
        page.until("document.querySelector('#saved').textContent === 'kitchen.toml: saved'", 30)
        said = tomllib.loads((tmp_path / "kitchen.toml").read_text(encoding="utf-8"))
        joists = {"ceiling.joists.size", "ceiling.joists.spacing", "ceiling.joists.first", "ceiling.joists.direction"}
        assert joists <= set(said["assumed"])
        assert not [place for place in said["assumed"] if place.startswith("ceiling.slab")]
        assert page.faults == []


def test_a_scene_with_mistakes_is_told_in_the_terminal(tmp_path: Path) -> None:
    (tmp_path / "kitchen.toml").write_text(JUNIPER.replace('ceiling = "8 ft"', 'ceiling = "high"'), encoding="utf-8")
    done = subprocess.run(
        [sys.executable, "-m", "routeviz", "app", "kitchen.toml", "--no-browser"],
        cwd=tmp_path, capture_output=True, text=True, timeout=60, env={**os.environ, "PYTHONUTF8": "1"},
    )  # fmt: skip
    assert done.returncode == 2
    assert "kitchen.toml:" in done.stderr
    assert "kitchen.ceiling" in done.stderr
