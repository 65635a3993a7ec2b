"""Lessons in a real browser, opened from disk with the network refused; stepped by mouse, by keyboard and by ear."""

from __future__ import annotations

import re

import pytest
from lessonbench import told
from namedcontrols import unnamed

from routeviz.views import lessons

pytestmark = [pytest.mark.browser, pytest.mark.slow]


@pytest.fixture(scope="module")
def faults(tmp_path_factory):
    _, _, lesson, bare = told("find-the-five-faults")
    file = tmp_path_factory.mktemp("lesson") / "faults.html"
    file.write_text(lessons.compose(lesson, bare), encoding="utf-8")
    return file, lesson


@pytest.fixture(scope="module")
def members(tmp_path_factory):
    _, _, lesson, bare = told("which-member-may-be-cut")
    file = tmp_path_factory.mktemp("lesson") / "members.html"
    file.write_text(lessons.compose(lesson, bare), encoding="utf-8")
    return file, lesson


def to_step(page, n):
    while page.tab.evaluate("routeviz.lesson().at") < n:
        page.tab.click("#lesson .next")


def tree(page):
    return page.tab.locator("body").aria_snapshot()


def test_nothing_is_told_before_the_faults_are_found(open_page, faults):
    file, lesson = faults
    page = open_page(file)
    find = next(n for n, s in enumerate(lesson.steps) if s.candidates)
    for n in range(find + 1):
        to_step(page, n)
        assert page.tab.inner_text("#lesson h2") == lesson.steps[n].title
        assert page.tab.locator(".pin").count() == 0
        heard = tree(page)
        for told_too_soon in ("must be cleared", "Blocked", "Broken", "short", "M1503.3"):
            assert told_too_soon not in heard, (n, told_too_soon)
        assert page.tab.evaluate("routeviz.answer().findings.length") == 0
    assert page.faults == []


def test_marking_in_list_and_picture_is_one_and_is_judged(open_page, faults):
    file, lesson = faults
    page = open_page(file)
    n, step = next((n, s) for n, s in enumerate(lesson.steps) if s.candidates)
    to_step(page, n)
    broken = [c.letter for c in step.candidates if c.broken]
    fine = next(c.letter for c in step.candidates if not c.broken)
    page.until("document.querySelectorAll('.letter').length > 3")
    in_picture = page.tab.locator(".letter").all_inner_texts()
    clicked = next(c for c in broken if c in in_picture)
    page.tab.locator(".letter", has_text=re.compile(f"^{clicked}$")).dispatch_event("click")
    assert page.tab.is_checked(f"#lesson input[value={clicked}]")
    for letter in [*[b for b in broken if b != clicked][:-1], fine]:
        page.tab.check(f"#lesson input[value={letter}]")
    page.tab.click("#lesson .check")
    said = page.tab.inner_text("#lesson .reveal")
    assert said.startswith(f"{len(broken) - 1} of {len(broken)} found, 1 that is not broken.")
    assert page.tab.locator("#lesson .opt.right").count() == len(broken)
    assert page.tab.locator("#lesson .opt em", has_text="Broken: not found").count() == 1
    assert page.tab.locator("#lesson .opt em", has_text="Not broken").count() == 1
    page.until("document.querySelector('#lessonlive').textContent.includes('of 5 found')")
    assert page.tab.locator(".pin.broken").count() > 0
    assert page.tab.locator("#finds .find.broken").count() >= 4
    page.tab.click("#lesson .back")
    page.tab.click("#lesson .next")
    assert page.tab.inner_text("#lesson .reveal") == said  # what was answered stays answered
    assert page.faults == []


def test_another_plan_of_the_lesson_is_another_answer(open_page, faults):
    file, lesson = faults
    page = open_page(file)
    n = next(n for n, s in enumerate(lesson.steps) if s.plan == "mended")
    to_step(page, n)
    page.until("routeviz.answer().verdict === 'Works'")
    assert page.tab.evaluate("routeviz.answer().elbows") == 0
    page.tab.click("#lesson .back")
    page.until("routeviz.lesson().plan === ''")
    page.until("routeviz.answer().elbows === 1")
    assert page.faults == []


def test_a_lesson_is_stepped_and_answered_with_keys_alone(open_page, members):
    file, lesson = members
    page = open_page(file)
    page.tab.keyboard.press("ArrowRight")
    assert page.tab.evaluate("routeviz.lesson().at") == 1
    assert page.tab.evaluate("document.activeElement.textContent") == lesson.steps[1].title
    page.tab.keyboard.press("Tab")
    page.tab.keyboard.press("Space")  # the first answer
    right = next(i for i, c in enumerate(lesson.steps[1].choices) if c.right)
    for _ in range(right):
        page.tab.keyboard.press("ArrowDown")
    assert page.tab.evaluate("routeviz.lesson().at") == 1  # arrows choose here, and do not turn the page
    for _ in range(3):
        page.tab.keyboard.press("Tab")
        if page.tab.evaluate("document.activeElement.textContent") == "Check":
            break
    page.tab.keyboard.press("Enter")
    assert page.tab.inner_text("#lesson .reveal").startswith("Right.")
    assert page.tab.evaluate("document.activeElement.textContent") == "Next"
    page.tab.keyboard.press("Enter")
    assert page.tab.evaluate("routeviz.lesson().at") == 2
    page.tab.keyboard.press("ArrowLeft")
    assert page.tab.evaluate("routeviz.lesson().at") == 1
    assert page.faults == []


def test_what_is_pointed_at_is_outlined_where_it_stands(open_page, members):
    file, lesson = members
    page = open_page(file)
    assert lesson.steps[0].marks
    page.until("document.querySelectorAll('#pointing .pb').length === 1")
    path = page.tab.get_attribute("#pointing .pb", "d")
    drawn = [tuple(map(float, p.split())) for p in re.findall(r"[ML]([\d.-]+ [\d.-]+)", path)]
    body = lesson.steps[0].marks[0].bodies[0]
    seen = page.tab.evaluate(f"{[list(p) for p in body]}.map(p => routeviz.picture().project(...p))")
    assert min(x for x, _ in drawn) == pytest.approx(min(p[0] for p in seen), abs=0.2)
    assert max(y for _, y in drawn) == pytest.approx(max(p[1] for p in seen), abs=0.2)
    assert page.faults == []


@pytest.mark.parametrize("scheme", ["light", "dark"])
def test_on_a_phone_picture_and_buttons_stay_in_sight(open_page, faults, scheme):
    file, lesson = faults
    page = open_page(file, size=(390, 844), scheme=scheme, touch=True)
    n = next(n for n, s in enumerate(lesson.steps) if s.candidates)
    page.tab.evaluate("scrollTo(0, 400)")
    to_step(page, n)
    assert page.tab.evaluate("scrollY") == 0  # a new step is read from its beginning
    page.tab.locator("#lesson .opt").nth(6).scroll_into_view_if_needed()
    page.tab.wait_for_timeout(200)
    assert page.tab.evaluate("document.documentElement.scrollWidth") <= 390
    picture, walk = page.tab.locator("#pic").bounding_box(), page.tab.locator("#lesson .walk").bounding_box()
    assert picture["y"] >= -1
    assert picture["height"] > 200
    assert walk["y"] + walk["height"] <= 845
    for button in page.tab.locator("#lesson .walk button").all():
        assert button.bounding_box()["height"] >= 40
    page.tab.click("#lesson .check")
    page.until("document.querySelectorAll('.pin.broken').length > 0")
    # the bars of a flag are a pattern that must be laid out somewhere to be painted
    assert page.tab.evaluate("document.querySelector('#p-bad').closest('svg').getClientRects().length") > 0
    assert page.faults == []


def test_a_lesson_reads_as_headings_a_question_and_named_controls(open_page, members):
    file, lesson = members
    page = open_page(file)
    to_step(page, 1)
    heard = tree(page)
    assert f'heading "{lesson.title}" [level=1]' in heard
    assert f'heading "{lesson.steps[1].title}" [level=2]' in heard
    assert f'group "{lesson.steps[1].ask}"' in heard
    for choice in lesson.steps[1].choices:
        assert f'radio "{choice.say}"' in heard
    assert 'button "Check"' in heard
    assert f'region "Lesson: {lesson.title}"' in heard
    assert unnamed(page) == []


@pytest.fixture(scope="module")
def air(tmp_path_factory):
    _, _, lesson, bare = told("why-air-is-lost")
    file = tmp_path_factory.mktemp("lesson") / "air.html"
    file.write_text(lessons.compose(lesson, bare), encoding="utf-8")
    return file, lesson


def test_each_letter_has_a_line_to_its_own_place(open_page, faults):
    file, lesson = faults
    page = open_page(file)
    n, step = next((n, s) for n, s in enumerate(lesson.steps) if s.candidates)
    to_step(page, n)
    page.until("document.querySelectorAll('.letter').length > 3")
    path = page.tab.get_attribute("#poles .pk", "d")
    lines = [tuple(map(float, m)) for m in re.findall(r"M([\d.-]+) ([\d.-]+)L([\d.-]+) ([\d.-]+)", path)]
    letters = page.tab.locator(".letter").all_inner_texts()
    assert len(lines) == len(letters)
    places = {c.letter: c.place for c in step.candidates}
    for letter, (x, y, u, v) in zip(letters, lines, strict=True):
        seen = page.tab.evaluate(f"routeviz.picture().project(...{[float(v) for v in places[letter]]})")
        assert (x, y) == pytest.approx(seen[:2], abs=0.2)
        disc = page.tab.locator(".letter", has_text=re.compile(f"^{letter}$")).bounding_box()
        box = page.tab.locator("#pic").bounding_box()
        assert disc["x"] + disc["width"] / 2 - box["x"] == pytest.approx(u, abs=2)
        assert disc["y"] + disc["height"] / 2 - box["y"] == pytest.approx(v, abs=2)
    spots = [line[2:] for line in lines]
    assert all(abs(a[0] - b[0]) + abs(a[1] - b[1]) > 20 for i, a in enumerate(spots) for b in spots[:i])
    assert page.faults == []


def test_flags_are_written_over_the_outline(open_page, faults):
    file, _ = faults
    page = open_page(file)
    to_step(page, 4)
    page.until("document.querySelectorAll('.pin.broken').length > 0")
    assert page.tab.evaluate(
        "!!(document.querySelector('#pointing').compareDocumentPosition(document.querySelector('#flags')) & Node.DOCUMENT_POSITION_FOLLOWING)"
    )


@pytest.mark.parametrize("step", [2, 3, 4])
def test_on_a_phone_no_flag_leaves_the_picture(open_page, faults, step):
    file, _ = faults
    page = open_page(file, size=(390, 844), touch=True)
    to_step(page, step)
    if page.tab.locator("#lesson .check").count():
        page.tab.click("#lesson .check")
    page.until("document.querySelectorAll('.pin.broken').length > 2")
    picture = page.tab.locator("#pic").bounding_box()
    for pin in page.tab.locator(".pin.broken").all():
        box = pin.bounding_box()
        assert box["x"] >= picture["x"] - 1
        assert box["x"] + box["width"] <= picture["x"] + picture["width"] + 1


def test_on_a_phone_what_is_revealed_and_the_view_chosen_are_in_sight(open_page, faults):
    file, lesson = faults
    page = open_page(file, size=(390, 844), touch=True)
    to_step(page, next(n for n, s in enumerate(lesson.steps) if s.candidates))
    page.tab.click("#lesson .check")
    page.tab.wait_for_timeout(300)
    told_box, walk = (page.tab.locator(q).bounding_box() for q in ("#lesson .reveal", "#lesson .walk"))
    assert told_box["y"] + told_box["height"] <= walk["y"] + 1
    chip = page.tab.locator("#views [aria-pressed=true]").bounding_box()
    assert chip["x"] >= 0
    assert chip["x"] + chip["width"] <= 391


def test_at_the_end_it_can_be_begun_again_with_nothing_answered(open_page, faults):
    file, lesson = faults
    page = open_page(file)
    to_step(page, len(lesson.steps) - 1)
    page.tab.click("#lesson .check")
    assert page.tab.evaluate("document.activeElement.textContent") == "Begin again"
    page.tab.click("#lesson .again")
    assert page.tab.evaluate("routeviz.lesson().at") == 0
    to_step(page, next(n for n, s in enumerate(lesson.steps) if s.candidates))
    assert page.tab.locator("#lesson .check").count() == 1
    assert page.faults == []


def test_in_the_other_unit_the_text_says_in_which_it_is_written(open_page, air):
    file, _ = air
    page = open_page(file)
    note = page.tab.locator("#lesson .asis")
    assert not note.is_visible()
    page.tab.click("#unit")
    assert note.is_visible()
    assert note.inner_text() == "This text has its numbers in inches and cfm, as the scene is written."
    page.tab.click("#unit")
    assert not note.is_visible()
    assert page.faults == []


def test_an_answer_that_the_step_says_itself_is_not_said_again(open_page, faults):
    file, lesson = faults
    page = open_page(file)
    n = next(n for n, s in enumerate(lesson.steps) if s.plan == "mended")
    to_step(page, n)
    page.until("routeviz.answer().verdict === 'Works'")
    assert page.tab.evaluate("routeviz.answer().text") in lesson.steps[n].say
    assert not page.tab.locator("#sentence").is_visible()
    assert page.tab.locator("#word").is_visible()
    to_step(page, n)
    page.tab.click("#lesson .back")
    page.until("routeviz.lesson().plan === ''")
    assert page.tab.locator("#sentence").is_visible()


def test_a_share_is_flagged_with_what_it_is_a_share_of(open_page, air):
    file, lesson = air
    page = open_page(file)
    to_step(page, next(n for n, s in enumerate(lesson.steps) if s.title == "How fast it runs"))
    page.until("document.querySelectorAll('.pin.broken').length === 2")
    # 6 in round over 8 in round: 36 / 64 = 0.56
    assert "0.56 of the outlet's area" in " ".join(page.tab.locator(".pin span").all_inner_texts())
