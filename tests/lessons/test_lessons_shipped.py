"""The lessons that come with routeviz: what they name as broken is what the rules find, and their words are filled in."""

from __future__ import annotations

import re

import pytest
from lessonbench import SHELF, told

from routeviz.model.finding import State
from routeviz.views import lessons


@pytest.mark.parametrize("name", SHELF)
def test_what_a_lesson_calls_broken_is_exactly_what_the_rules_find(name):
    written, plans, _, _ = told(name)
    named = [p for p in written.plans if p.faults is not None]
    assert named, "a lesson says of one plan at least what it breaks"
    for plan in named:
        found = {f.code for f in plans[plan.name].all_findings if f.state is State.BROKEN}
        assert {s.text for s in plan.faults} == found


@pytest.mark.parametrize("name", SHELF)
def test_every_word_is_filled_in_and_every_question_has_one_right_answer(name):
    _, plans, lesson, _ = told(name)
    assert 4 <= len(lesson.steps) <= 10
    assert lesson.about
    assert any(step.asks for step in lesson.steps)
    for step in lesson.steps:
        words = [step.title, step.say, step.ask, step.reveal, *(w for c in step.choices for w in (c.say, c.because))]
        assert not any(re.search(r"[{}]|\.\.|\bnan\b|None(?! exists)", w) for w in words), words
        assert step.plan in plans
        if step.choices:
            assert sum(c.right for c in step.choices) == 1
        if step.candidates:
            broken = {c.code for c in step.candidates if c.broken}
            assert broken == {f.code for f in plans[step.plan].all_findings if f.state is State.BROKEN}
            assert len(step.candidates) > len(broken)
            assert [c.letter for c in step.candidates] == sorted(c.letter for c in step.candidates)


@pytest.mark.parametrize("name", SHELF)
def test_a_step_before_the_faults_are_found_tells_none_of_them(name):
    _, _, lesson, _ = told(name)
    last = max((n for n, s in enumerate(lesson.steps) if s.candidates), default=-1)
    if name == "find-the-five-faults":
        assert last >= 0
    assert all(step.covered for step in lesson.steps[: last + 1])


@pytest.mark.parametrize("name", SHELF)
def test_a_plan_is_covered_as_long_as_something_is_asked_about_it(name):
    _, plans, lesson, _ = told(name)
    for n, asking in enumerate(lesson.steps):
        if asking.asks:
            assert asking.covered
            assert plans[asking.plan].answer not in asking.say
            before = [s for s in lesson.steps[:n] if s.plan == asking.plan]
            assert all(s.covered or plans[asking.plan].answer in s.say for s in before)
    assert not lesson.steps[-1].covered or lesson.steps[-1].asks


@pytest.mark.parametrize(
    ("name", "covered"),
    [  # by hand, from the files: the last question about the first plan stands in the step that is named last
        ("which-member-may-be-cut", [0, 1]),
        ("why-air-is-lost", [0, 1, 2]),
        ("why-three-elbows", [0, 1]),
    ],
)
def test_the_first_plan_is_covered_until_its_last_question(name, covered):
    _, _, lesson, _ = told(name)
    assert [n for n, s in enumerate(lesson.steps) if s.plan == "" and s.covered] == covered


def test_the_words_before_a_question_do_not_answer_it():
    _, _, lesson, _ = told("why-three-elbows")
    assert "room above" in lesson.steps[1].reveal
    assert not any("room above" in s.say for s in lesson.steps[:2])
    # nor does the list in which the faults are to be found: each check bears the name that it has when it is fine
    _, plans, lesson, _ = told("find-the-five-faults")
    asked = next(s for s in lesson.steps if s.candidates)
    faults = {f.title for f in plans[""].all_findings if f.wish}
    assert {"Flexible duct, not smooth inside", "No backdraft damper", "Ends inside the attic"} <= faults
    assert not faults & {c.title for c in asked.candidates}


def test_how_far_the_hood_is_moved_is_told_by_both_places():
    _, _, lesson, _ = told("where-the-cap-may-go")
    moved = next(s.say for s in lesson.steps if s.plan == "along")
    assert "from 56 3/4 in to 88 3/4 in along the wall" in moved  # as both scenes give the hood's centre


def test_what_stands_outdoors_is_drawn_where_the_scene_puts_it():
    _, _, _, stages = told("where-the-cap-may-go")
    meter = next(p for p in stages[""].pieces if p.solid == "gas-regulator")
    low, high = meter.mesh.bounds
    wall = stages[""].plan.scene.walls[0].thickness_in
    assert (low[0], high[0]) == (70.0, 80.0)  # left = 70 in, width = 10 in
    assert (low[2], high[2]) == (70.0, 82.0)  # bottom = 70 in, height = 12 in
    assert low[1] == pytest.approx(wall)


def test_five_lessons_are_on_the_shelf():
    assert set(SHELF) == {
        "find-the-five-faults", "which-member-may-be-cut", "where-the-cap-may-go", "why-air-is-lost", "why-three-elbows",
    }  # fmt: skip
    for each in SHELF.values():
        assert lessons.find(each.name) == each.path
        assert lessons.find(each.name.replace("-", "_")) == each.path
    assert lessons.find("no-such-lesson") is None


def test_the_five_faults_are_five():
    written, plans, _, _ = told("find-the-five-faults")
    assert len(written.plans[0].faults) == 5
    assert sum(f.state is State.BROKEN for f in plans[""].all_findings) == 5
    assert not any(f.state is State.BROKEN for f in plans["mended"].all_findings)
