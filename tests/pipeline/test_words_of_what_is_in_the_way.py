"""What the second line says of each kind of thing in the way."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest
import samples
from cases.homes import beyond_hood_wall, only_wall, rear_outlet, round_duct

from routeviz import pipeline, scenefile
from routeviz.model.finding import Verdict
from routeviz.model.path import Blocker, Outcome, Paths, SearchFacts, WhyNot
from routeviz.model.scene import Cap, Scene, SpaceKind, WallSide
from routeviz.pipeline import plan
from routeviz.pipeline.answer import answer, second_line

SCENES = Path(__file__).parents[2] / "scenes"

FACTS = SearchFacts((1, 1, 1), 1, 3, 0.0)


@pytest.mark.parametrize(
    ("blocker", "said"),
    [
        (Blocker("storey", "room above", 0.0, (0, 0, 0), "zone"), "Not straight up: the room above is in the way."),
        (Blocker("above", "the flat above", 0.0, (0, 0, 0), "zone"), "Not straight up: the flat above is in the way."),
        (Blocker("", "there is no roof to leave through", 0.0, (0, 0, 0), "zone"),
         "Not straight up: there is no roof to leave through."),
        (Blocker("joist-4", "joist 4", 1.5, (0, 0, 0), "solid"), "Not straight up: joist 4 is 1 1/2 in into the duct."),
        (Blocker("joist-4", "joist 4", 0.0, (0, 0, 0), "solid"), "Not straight up: joist 4 is too close to the duct."),
        (Blocker("window", "side window", 20.25, (0, 0, 0), "keep-out"),
         "Not straight up: side window is 20 1/4 in too near for a cap."),
        (Blocker("lot-line-hood", "lot line", 34.2, (0, 0, 0), "keep-out"),
         "Not straight up: the lot line is too near for a cap."),
    ],
)  # fmt: skip
def test_the_reason_reads_as_a_sentence(blocker: Blocker, said: str) -> None:
    first = WhyNot(
        "straight back", (Blocker("stud-2", "stud 2", 1.0, (0, 0, 0), "solid"),), 4.0, None, None, verified=True
    )
    paths = Paths(
        Outcome.NONE_EXISTS, None, (), (), (first, WhyNot("straight up", (blocker,), None, None, None)), FACTS
    )
    assert said in second_line(samples.scene(), paths, ())


def rear(beyond: str = "outdoors", **changes: object) -> Scene:
    home = samples.scene(**changes)
    hood = replace(home.hood, outlet=replace(home.hood.outlet, place="rear", up_in=6.0))
    walls = tuple(replace(w, beyond=beyond) if w.side is WallSide.HOOD else w for w in home.walls)
    return replace(home, hood=hood, walls=walls)


@pytest.mark.parametrize(
    ("home", "said"),
    [
        (rear("room"), "no wall behind the hood that a duct may leave by has the open air beyond it"),
        (rear(cap=Cap(wall=False)), "the scene allows no cap on a wall"),
        (rear(), "no outer wall behind the hood has room for a cap"),
    ],
)
def test_where_no_face_lies_straight_back_that_is_told(home: Scene, said: str) -> None:
    for outcome in (Outcome.PROVEN, Outcome.NONE_EXISTS):
        assert second_line(home, Paths(outcome, None, (), (), (), FACTS), ()).startswith(f"Not straight back: {said}.")


def test_a_rear_outlet_with_no_wall_to_the_open_air_behind_it_says_so() -> None:
    """The porch's far wall is another room's: the only way out is to the left."""
    home = beyond_hood_wall(samples.scene(), SpaceKind.PORCH, deep_in=72.0, open_side=WallSide.LEFT)
    plan = pipeline.plan(only_wall(rear_outlet(home, round_duct(8.0), max_elbows=1)), alternatives=1)
    assert plan.best is not None
    assert plan.best.route.elbows == 1
    assert plan.second.startswith("Not straight back: no wall behind the hood")


@pytest.mark.parametrize(
    ("outcome", "said"),
    [
        (Outcome.PROVEN, "Nothing simpler exists. Proven."),
        (Outcome.BEST_FOUND, "Nothing simpler was found. Best found."),
    ],
)
def test_nothing_stands_before_proven_without_a_sentence(outcome: Outcome, said: str) -> None:
    option = next(o for o in pipeline.plan(samples.scene(), alternatives=1).options)
    turned = replace(option, route=replace(option.route, elbows=1))
    assert second_line(samples.scene(), Paths(outcome, None, (), (), (), FACTS), (turned,)) == said


def test_a_thing_that_a_roof_overlooks_is_too_near_by_no_one_length() -> None:
    blocker = Blocker("window", "side window", 0.0002, (0, 0, 0), "keep-out")
    why = WhyNot("straight up", (blocker,), None, None, None)
    told = second_line(samples.scene(), Paths(Outcome.BEST_FOUND, None, (), (), (why,), FACTS), ())
    assert "side window is too near for a cap" in told


JOIST = Blocker("joist-4", "joist 4", 0.5, (0, 0, 0), "solid")
ROOM = Blocker("storey", "room above", 6.0, (0, 0, 0), "zone")


def blocked(why: WhyNot) -> str:
    paths = Paths(Outcome.NONE_EXISTS, None, (), (), (why,), FACTS)
    return answer(samples.scene(), paths, (), (), Verdict.BLOCKED)


def test_a_closed_place_behind_a_member_is_what_blocks() -> None:
    """With the joist cut the room would still be there, so the joist is no cause."""
    why = WhyNot("straight up", (JOIST, ROOM), None, None, None)
    assert blocked(why) == "No way out exists with 3 elbows or fewer: the room above is in the way."
    freed = WhyNot("straight up", (JOIST, ROOM), 4.0, None, None, verified=True)  # past both
    assert blocked(freed).startswith(
        "No way out exists with 3 elbows or fewer: joist 4 is 1/2 in into the duct. Shift 4 in"
    )


def test_side_by_side_names_the_cause_that_the_plan_names() -> None:
    scene = scenefile.load(SCENES / "big_fan_small_duct.toml")
    roof = replace(scene, cap=replace(scene.cap, roof=True, wall=False))
    found = plan(roof, alternatives=1, counted=False)
    assert found.answer == "No way out exists with 3 elbows or fewer: the room above is in the way."
