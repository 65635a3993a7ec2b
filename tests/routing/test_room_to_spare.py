"""How far things near the duct may be off: by arithmetic on the numbers written here, and an elbow by sampling it."""

from __future__ import annotations

import math
from dataclasses import replace

import numpy as np
import pytest
import samples
from search.test_search_find import ROOF, WALL, box, house, plan

from routeviz.freespace import carve
from routeviz.model.route import Allowance
from routeviz.model.scene import Scene, Tolerances
from routeviz.model.solids import Crossing, Cylinder, ExitFace, Frame, Member, MemberKind, Solid, SolidKind
from routeviz.reports.room import room_text
from routeviz.routing import allowances, realise
from routeviz.search import find


def joist(name: str, left: float, axis: int = 1) -> Solid:
    made = box(name, (left, -96, 96.5), (left + 1.5, 0, 104), Crossing.NEVER, SolidKind.JOIST)
    return replace(made, member=Member(MemberKind.SAWN, "2x8", 1.5, 7.25, axis))


def measured(*more: Solid, faces: tuple[ExitFace, ...] = (ROOF,), **given: float) -> tuple[Allowance, ...]:
    scene: Scene = replace(plan(), tolerances=Tolerances(**given))
    frame: Frame = house(*more, faces=faces)
    best = find(carve(frame, scene, samples.ROUND_8)).best
    assert best is not None
    return allowances(realise(best, scene, frame), frame, scene)


def test_a_joist_may_be_off_across_its_row_by_the_gap_beside_the_duct() -> None:
    """The duct is 8 in wide about x = 70: a joist from 76 on stands 2 in off, one up to 65 stands 1 in off."""
    found = measured(joist("right", 76.0), joist("left", 63.5), joists_in=0.5)
    assert [(a.solid, a.axis, a.sign, a.tolerance_in) for a in found] == [("left", 0, 1, 0.5), ("right", 0, -1, 0.5)]
    assert [a.travel_in for a in found] == pytest.approx([1.0, 2.0], abs=1e-3)
    assert all(a.holds for a in found)


def test_past_a_corner_the_round_duct_gives_more_room_than_its_width() -> None:
    """A post from 2 1/2 in beside the middle on: there the duct is sqrt(4^2 - 2.5^2) in wide to that side."""
    post = box("post", (76, -6, 96.5), (80, -2, 104), Crossing.NEVER, SolidKind.OBSTACLE)
    (found,) = measured(post)
    assert (found.axis, found.sign) == (0, -1)
    assert found.travel_in == pytest.approx(6 - math.sqrt(16 - 6.25), abs=1e-3)
    assert found.holds  # nothing is said of tolerances: the measures count as exact


def test_a_pipe_meets_it_from_its_own_side() -> None:
    pipe = Solid("pipe", SolidKind.SERVICE, "pipe", Cylinder(1, -96.0, 0.0, (78.0, 110.0), 1.0), Crossing.NEVER, "test")
    (found,) = measured(pipe, other_in=4.0)
    assert (found.axis, found.sign) == (0, -1)
    assert found.travel_in == pytest.approx(78 - 1 - 74, abs=1e-3)
    assert not found.holds


def test_a_thing_to_keep_away_from_counts_up_to_its_distance() -> None:
    hot = replace(joist("hot", 76.0), clearance_in=1.5)
    (found,) = measured(hot)
    assert found.travel_in == pytest.approx(0.5, abs=1e-3)


def test_what_can_never_meet_the_duct_is_left_out() -> None:
    beyond = box("beyond", (76, -96, 96.5), (77.5, -40, 104), Crossing.NEVER, SolidKind.JOIST)
    lengthwise = replace(beyond, member=Member(MemberKind.SAWN, "2x8", 1.5, 7.25, 1))
    assert measured(lengthwise) == ()


def test_over_an_elbow_it_is_what_sampling_the_bend_finds() -> None:
    """The elbow's corner is 8 in over the collar at 78.5 in; a box over its outside comes down until it meets the bend."""
    over = box("over", (69, -12, 95), (72, -9, 96), Crossing.NEVER, SolidKind.OBSTACLE)
    found = measured(over, faces=(WALL,))
    (down,) = [a for a in found if a.axis == 2]
    turn, round_ = np.meshgrid(np.linspace(0, math.pi / 2, 4001), np.linspace(0, 2 * math.pi, 1441))
    far = 8 - 4 * np.cos(round_)  # from the bend's centre at y = -8.5 + 8, z = 86.5 - 8
    x, y, z = 70 + 4 * np.sin(round_), -0.5 - far * np.cos(turn), 78.5 + far * np.sin(turn)
    under = (x >= 69) & (x <= 72) & (y >= -12) & (y <= -9)
    assert down.sign == -1
    assert down.travel_in == pytest.approx(95 - z[under].max(), abs=5e-3)


def test_the_text_names_the_measurement_that_decides() -> None:
    scene = replace(plan(), tolerances=Tolerances(joists_in=1.25))
    frame = house(joist("joist 5", 76.0), joist("joist 4", 63.5), faces=(ROOF,))
    best = find(carve(frame, scene, samples.ROUND_8)).best
    assert best is not None
    route = realise(best, scene, frame)
    lines = "\n".join(room_text(replace(route, allowances=allowances(route, frame, scene)), metric=False))
    assert "joist 4 decides: 1 in to the right" in " ".join(lines.split())
    assert max(map(len, lines.splitlines())) <= 80
    held = replace(scene, tolerances=Tolerances(joists_in=1.0))
    assert (
        "Clear of everything" in room_text(replace(route, allowances=allowances(route, frame, held)), metric=False)[0]
    )
