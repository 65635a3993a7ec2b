"""What the second line says of each kind of thing in the way."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest
import samples

from routeviz import scenefile
from routeviz.model.finding import Verdict
from routeviz.model.path import Blocker, Outcome, Paths, SearchFacts, WhyNot
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


JOIST = Blocker("joist-4", "joist 4", 0.5, (0, 0, 0), "solid")
ROOM = Blocker("storey", "room above", 6.0, (0, 0, 0), "zone")


def blocked(why: WhyNot) -> str:
    paths = Paths(Outcome.NONE_EXISTS, None, (), (), (why,), FACTS)
    return answer(samples.scene(), paths, (), (), Verdict.BLOCKED)


def test_a_closed_place_behind_a_member_is_what_blocks() -> None:
    """With the joist cut the room would still be there, so the joist is no cause."""
    why = WhyNot("straight up", (JOIST, ROOM), None, None, None)
    assert blocked(why) == "None exists with 3 elbows or fewer: the room above is in the way."
    freed = WhyNot("straight up", (JOIST, ROOM), 4.0, None, None, verified=True)  # past both
    assert blocked(freed).startswith("None exists with 3 elbows or fewer: joist 4 is 1/2 in into the duct. Shift 4 in")


def test_side_by_side_names_the_cause_that_the_plan_names() -> None:
    scene = scenefile.load(SCENES / "big_fan_small_duct.toml")
    roof = replace(scene, cap=replace(scene.cap, roof=True, wall=False))
    found = plan(roof, alternatives=1, counted=False)
    assert found.answer == "None exists with 3 elbows or fewer: the room above is in the way."
