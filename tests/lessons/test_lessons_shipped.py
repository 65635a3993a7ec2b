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
