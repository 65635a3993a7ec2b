"""What a lesson points at fits the thing; letters stand clear over their places; what is told keeps to the plan."""

from __future__ import annotations

import itertools
import math
import re

import numpy as np
import pytest
import trimesh
from lessonbench import SHELF, told

from routeviz.model.finding import State
from routeviz.views import stage as stages
from routeviz.views.lessons.pointing import mark
from routeviz.views.lessons.poles import stand
from routeviz.views.viewpoints import Viewport, project, square

SLACK_IN = 0.35  # how far an outline may stand off the metal


def box(bodies):
    points = np.array([p for body in bodies for p in body])
    return points.min(axis=0), points.max(axis=0)


@pytest.mark.parametrize(
    ("lesson", "plan", "name", "parts"),
    [
        ("why-air-is-lost", "", "AIR-SPEED", ["elbow-1"]),
        ("why-air-is-lost", "hose", "DCT-SMOOTH", ["flex-3"]),
        ("why-air-is-lost", "", "duct", ["transition-1", "elbow-1", "straight-1"]),
        ("find-the-five-faults", "", "flex-3", ["flex-3"]),
        ("why-three-elbows", "", "elbow-2", ["elbow-2"]),
    ],
)
def test_an_outline_is_as_large_as_the_part(lesson, plan, name, parts):
    _, _, _, shown = told(lesson)
    found = mark(shown[plan], name)
    meshes = [shown[plan].piece(f"duct-{part}").mesh for part in parts]
    low, high = (np.array([m.bounds[k] for m in meshes]) for k in (0, 1))
    lo, hi = box(found.bodies)
    assert lo == pytest.approx(low.min(axis=0), abs=SLACK_IN)
    assert hi == pytest.approx(high.max(axis=0), abs=SLACK_IN)


def test_an_elbow_is_outlined_without_the_corner_inside_its_bend():
    _, _, _, shown = told("why-three-elbows")
    bodies = mark(shown[""], "elbow-1").bodies
    hulls = sum(trimesh.convex.convex_hull(np.array(b)).volume for b in bodies)
    # a quarter turn of a 6 in pipe on its centre line of 6 in radius: 9 pi sq in over 3 pi in; mitred bodies take a little more
    assert hulls == pytest.approx(9 * math.pi * 3 * math.pi, rel=0.15)


def test_an_open_end_is_outlined_by_its_own_rim():
    _, plans, _, shown = told("find-the-five-faults")
    lo, hi = box(mark(shown[""], "open-end").bodies)
    # 6 in round, running out from the wall
    assert (hi - lo)[[0, 2]] == pytest.approx([6.0, 6.0], abs=2 * SLACK_IN)
    assert (hi - lo)[1] < 2.0
    assert (lo + hi)[[0, 2]] / 2 == pytest.approx(np.array(plans[""].best.route.termination.point)[[0, 2]], abs=0.1)


def test_the_way_of_another_plan_is_shown_where_that_plan_has_it():
    _, plans, lesson, shown = told("why-three-elbows")
    step = next(s for s in lesson.steps if s.title == "The short way would end here")
    bodies = [b for m in step.marks for b in m.bodies]
    own = mark(shown["window-moved"], "duct").bodies
    assert set(own) <= set(bodies)
    width = plans[""].scene.kitchen.width_in
    assert box(own)[1][0] > width  # it goes on through the right wall
    assert mark(shown[""], "no-such-plan:duct", shown) is None


def test_letters_stand_apart_in_the_picture_and_none_on_anothers_line():
    feet = [(100.0, 100.0)] * 7 + [(130.0, 96.0), (20.0, 20.0)]
    spots = stand(feet, (400.0, 300.0), 13.0)
    for x, y in spots:
        assert 13 < x < 387
        assert 13 < y < 287
    for a, b in itertools.combinations(spots, 2):
        assert math.dist(a, b) >= 26
    assert spots[0][0] == 100.0
    assert spots[0][1] < 100  # straight over its place
    for spot, foot in zip(spots, feet, strict=True):
        for other, its in zip(spots, feet, strict=True):
            if math.dist(foot, its) > 13:
                steps = [np.array(foot) + t * (np.array(spot) - foot) for t in np.linspace(0, 1, 50)]
                assert min(math.dist(s, other) for s in steps) >= 13


def test_where_nothing_is_free_a_letter_stands_on_its_place():
    assert stand([(10.0, 10.0)], (20.0, 20.0), 13.0) == [(10.0, 10.0)]


def test_what_stands_outdoors_is_barred_where_it_is_too_near():
    _, plans, _, shown = told("where-the-cap-may-go")
    barred = {p.name for p in stages.build(plans[""]).pieces if p.name.endswith("-bars")}
    assert "outdoors-gas-regulator-bars" in barred
    assert not any(p.name.endswith("-bars") for p in shown[""].pieces)


def test_square_looks_straight_at_the_wall():
    _, plans, _, _ = told("which-member-may-be-cut")
    view = square(plans["strips"], aspect=1.5, port=Viewport())
    assert view.eye[0] == pytest.approx(view.target[0])
    assert view.eye[2] == pytest.approx(view.target[2])
    # level lines on the wall's face stay level, upright ones upright
    corners = project(view, np.array([[0, 0, 0], [144, 0, 0], [0, 0, 90], [144, 0, 90]], float), 1.5)
    assert corners[0, 1] == pytest.approx(corners[1, 1])
    assert corners[0, 0] == pytest.approx(corners[2, 0])


# -- words ----------------------------------------------------------------------------------------------------------------

MEASURE = re.compile(r"\d[\d /.]*\s*(?:in|ft|mm|cfm|%)\b")


@pytest.mark.parametrize("name", SHELF)
def test_measures_in_a_lessons_words_come_from_its_plans(name):
    written, _, _, _ = told(name)
    for step in written.steps:
        said = [step.title, step.say, step.ask, step.reveal, step.on_screen, *(c.because for c in step.choices)]
        for words in said:
            assert words is None or not MEASURE.search(re.sub(r"\{[^}]*\}", "", words.text)), words


@pytest.mark.parametrize("name", SHELF)
def test_no_sentence_goes_on_with_a_capital(name):
    _, _, lesson, _ = told(name)
    for step in lesson.steps:
        for words in (step.say, step.reveal, *(c.because for c in step.choices)):
            assert not re.search(r"[:,;] [A-Z][a-z]", words.replace("Source: Common", "")), words


def test_a_window_costs_two_elbows_inside_the_distance_that_the_rule_asks_for():
    _, _, lesson, _ = told("why-three-elbows")
    said = lesson.steps[-1].say
    assert "inside the 36 in that a cap keeps from it" in said  # IRC M1504.3: 3 ft
    assert "too near" not in said


def test_the_first_lesson_says_why_four_are_named_of_five():
    _, plans, lesson, _ = told("find-the-five-faults")
    broken = [f for f in plans[""].all_findings if f.state is State.BROKEN]
    assert (sum(f.must for f in broken), len(broken)) == (4, 5)
    assert "; 1 more" in plans[""].answer
    reveal = next(s.reveal for s in lesson.steps if s.candidates)
    assert "5 are broken. 4 of them must be cleared first." in reveal


def test_the_air_that_must_come_back_in_is_spoken_of():
    _, _, lesson, _ = told("why-air-is-lost")
    assert "come back in" in lesson.about
    step = next(s for s in lesson.steps if "come in" in s.title)
    assert "more than 400 cfm" in step.say  # IRC 2021 M1503.6
    assert [c.say for c in step.choices if c.right] == ["Yes"]
    assert "About 800 cfm" in step.reveal  # as the scene's fan is labelled
