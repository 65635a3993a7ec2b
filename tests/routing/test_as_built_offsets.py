"""A route as built is measured as a planned one: offsets are one fitting, and boxing counts the same length."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

import pytest
import samples
from rulebench import all_of, built, cap, judge_built, laid, straight

from routeviz import pipeline, routing, scenefile
from routeviz.model.finding import State
from routeviz.model.route import Part, PartKind, offsets_in
from routeviz.model.scene import AsBuilt, AsBuiltFitting, Obstacle, ObstacleKind, Scene
from routeviz.model.turning import WAYS

COLLAR, CEILING, RADIUS = 78.5, 96.0, 8.0
SCENES = sorted((Path(__file__).parents[2] / "scenes").glob("*.toml"))


def elbow(turn: str, angle_deg: float = 90.0) -> AsBuiltFitting:
    return AsBuiltFitting("elbow", angle_deg=angle_deg, turn=turn)


def jog(angle_deg: float, between_in: float, way: str = "right") -> tuple[AsBuiltFitting, ...]:
    return elbow(way, angle_deg), straight(between_in), elbow("up", angle_deg)


@pytest.mark.parametrize("angle", [30.0, 45.0])
def test_two_elbows_that_undo_each_other_are_an_offset(angle: float) -> None:
    scene = built(straight(2.0), *jog(angle, 3.25), straight(30.0), cap("outdoors"))
    route, _ = laid(scene)
    assert route.straights_between_in == ()
    assert route.words == "As built: up with an offset right, out through the roof"
    assert route.elbows == pytest.approx(2 * angle / 90)
    assert all_of(judge_built(scene), "ELB-STRAIGHT") == ()


def test_two_offsets_keep_the_straight_between_them() -> None:
    scene = built(*jog(45.0, 2.0), straight(7.0), *jog(45.0, 3.0), straight(9.0), elbow("back"), cap())
    assert laid(scene)[0].straights_between_in == pytest.approx((7.0, 9.0))
    (short,) = all_of(judge_built(scene), "ELB-STRAIGHT")
    assert (short.state, short.measured) == (State.BROKEN, pytest.approx(7.0))
    assert short.where == ("elbow-3",)  # the second bend of the first offset, after which the short straight comes


@pytest.mark.parametrize(
    "fittings",
    [
        (elbow("right"), straight(5.0), elbow("up")),  # two 90s are two elbows
        (elbow("right", 45.0), straight(5.0), elbow("up", 30.0)),  # unequal
        (elbow("right", 45.0), straight(5.0), elbow("right", 45.0)),  # a 90 in two steps
        (elbow("right", 45.0), straight(5.0), elbow("back", 45.0)),  # turned out of the plane
    ],
)
def test_other_pairs_are_two_fittings(fittings: tuple[AsBuiltFitting, ...]) -> None:
    assert laid(built(straight(4.0), *fittings, straight(60.0), cap()))[0].straights_between_in == pytest.approx((5.0,))


def test_an_offset_beside_the_cover_is_boxed_whole_up_to_the_ceiling() -> None:
    """8 in duct in a cover 12 in wide: 2 in of room at its side, so an offset of 7 in leaves it.

    Corner to corner the offset is 4 take-offs and its straight; it rises by 2 R sin 45 + L cos 45.
    """
    length = 3.25
    route, _ = laid(built(straight(2.0), *jog(45.0, length), straight(60.0), cap("outdoors")))
    along = 4 * RADIUS * math.tan(math.radians(22.5)) + length
    rise = (2 * RADIUS + length) * math.sqrt(0.5)
    left = CEILING - (COLLAR + 2.0 + rise)
    assert left > 0
    assert route.boxed_in == pytest.approx(along + left)


def test_an_offset_inside_the_cover_and_a_run_back_need_no_boxing() -> None:
    shift = 1.5  # of 2 in
    angle = 15.0
    between = (shift - 2 * RADIUS * (1 - math.cos(math.radians(angle)))) / math.sin(math.radians(angle))
    assert between > 0
    assert laid(built(straight(2.0), *jog(angle, between), straight(60.0), cap()))[0].boxed_in == 0.0
    assert laid(built(straight(2.0), elbow("back"), straight(10.0), cap()))[0].boxed_in == 0.0


def test_a_run_into_the_room_is_boxed_from_its_corner() -> None:
    """Riser 2 in and elbow of 8 in to the left, 30 in straight: 8 + 30 in from the corner, all in the room."""
    scene = built(straight(2.0), elbow("left"), straight(30.0), cap("outdoors"))
    assert laid(scene)[0].boxed_in == pytest.approx(38.0)
    (found,) = all_of(judge_built(scene), "FIT-BOXING")
    assert (found.state, found.measured) == (State.BROKEN, pytest.approx(38.0))


def as_list(parts: tuple[Part, ...]) -> Iterator[AsBuiltFitting]:
    """Write a planned route down as a person would who measures it."""
    for part in parts:
        if part.kind is PartKind.STRAIGHT:
            yield straight(part.length_in)
        elif part.kind is PartKind.TRANSITION:
            yield AsBuiltFitting("reducer", part.length_in, to_section=part.section_out)
        elif part.kind is PartKind.ELBOW:
            ahead = [sum(a * b for a, b in zip(way, part.direction, strict=True)) for way in WAYS.values()]
            toward = [sum(a * b for a, b in zip(way, part.turn_to, strict=True)) for way in WAYS.values()]
            turns = {name: t for name, a, t in zip(WAYS, ahead, toward, strict=True) if abs(a) < 0.999}
            yield elbow(max(turns, key=lambda name: turns[name]), part.angle_deg)
        else:
            yield cap("outdoors")


def planned() -> Iterator[Scene]:
    yield from (scene for path in SCENES if not (scene := scenefile.load(path)).as_built)
    over = Obstacle("trunk", ObstacleKind.OTHER, 63.0, 0.0, CEILING, 13.0, 14.0, 14.0)
    closed = replace(samples.scene(obstacles=(over,)), cap=replace(samples.scene().cap, wall=False))
    yield closed


def test_a_planned_route_written_as_a_list_is_judged_as_the_plan() -> None:
    """The search's own measure of boxing and of straights against the one for lists, which shares no code with it."""
    boxed = offsets = 0
    for scene in planned():
        plan = pipeline.plan(scene, counted=False)
        for option in plan.options:
            listed = replace(plan.scene, as_built=AsBuilt(tuple(as_list(option.route.parts))))
            route = routing.realise_as_built(listed, plan.frame)
            assert route.boxed_in == pytest.approx(option.route.boxed_in, abs=0.01), scene.name
            assert route.straights_between_in == pytest.approx(option.route.straights_between_in, abs=0.01), scene.name
            assert route.words == f"As built: {option.route.words[0].lower()}{option.route.words[1:]}"
            assert route.termination.space == "outdoors"
            boxed += option.route.boxed_in > 0
            offsets += len(offsets_in(option.route.parts))
    assert boxed
    assert offsets
