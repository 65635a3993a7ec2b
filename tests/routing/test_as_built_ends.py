"""Where a route as built ends: its lengths are believed before its word, except for what a tape cannot tell."""

from __future__ import annotations

import math
from dataclasses import replace
from pathlib import Path

import pytest
import samples
from rulebench import all_of, built, cap, elbow, judge_built, laid, open_end, straight

from routeviz import scenefile
from routeviz.model.finding import State
from routeviz.model.route import Route
from routeviz.model.scene import AsBuiltFitting, Scene
from routeviz.model.solids import FaceKind

SCENES = Path(__file__).parents[2] / "scenes"
COLLAR = 78.5  # cooking surface 36 + mount 30 + body 11 + collar 1 1/2
OUT = 8.5  # the collar's centre before the wall
ROOF = math.sqrt(1 + 0.25**2)  # roof lengths over plumb ones at 3/12


def lay(*fittings: AsBuiltFitting, scene: Scene | None = None) -> Route:
    return laid(built(*fittings, scene=scene))[0]


def said(*fittings: AsBuiltFitting, scene: Scene | None = None) -> tuple[State, str]:
    (found,) = all_of(judge_built(built(*fittings, scene=scene)), "TRM-OUTDOORS")
    return found.state, found.detail


def surface() -> float:
    """Give the height of the roof's surface over the riser, from the face itself."""
    _, frame = laid(built(straight(6.0), cap()))
    roof = next(f for f in frame.faces if f.id == "roof-back")
    return roof.plane[0] + roof.plane[2] * -OUT


@pytest.mark.parametrize(
    ("fittings", "place"),
    [
        ((straight(6.0),), "in the kitchen, inside the chimney cover"),  # 84 1/2 in up, the ceiling is at 96
        ((straight(2.0), elbow("front"), straight(30.0)), "in the kitchen"),
        ((straight(26.5),), "inside the attic"),  # 105 in up; the joists end at 103 7/8
        ((straight(2.0), elbow("left"), straight(90.0)), "in the room beyond the left wall"),
        ((straight(20.0),), "inside joist bay 4-5"),
    ],
)
def test_an_end_inside_the_house_is_no_end_outdoors(fittings: tuple[AsBuiltFitting, ...], place: str) -> None:
    state, detail = said(*fittings, cap("outdoors"))
    assert state is State.BROKEN
    assert detail.startswith(f"ends {place}; the list says outdoors")
    assert f", ends {place}" in lay(*fittings, cap("outdoors")).words


def test_an_end_in_the_garage_is_no_end_outdoors() -> None:
    """The garage is 240 in deep behind the hood wall; the rear outlet starts at the wall's face."""
    scene = replace(scenefile.load(SCENES / "garage_beyond.toml"), as_built=None)
    state, detail = said(straight(100.0), cap("outdoors"), scene=scene)
    assert state is State.BROKEN
    assert detail.startswith("ends in the garage; the list says outdoors; a garage is not outdoors")


@pytest.mark.parametrize("short", [-12.0, 0.0, 5.9, 6.3])  # 6.3 in plumb is inside rafters, deck and shingles
def test_an_end_at_the_roof_is_taken_as_stated(short: float) -> None:
    assert short < (5.5 + 0.5 + 0.375) * ROOF
    route = lay(straight(surface() - COLLAR - short), cap("outdoors"))
    assert route.termination.kind is FaceKind.ROOF
    assert route.termination.space == "outdoors"
    assert route.words.endswith("out through the roof")


def test_an_end_under_the_rafters_is_in_the_attic() -> None:
    layers = (5.5 + 0.5 + 0.375) * ROOF  # 6.57 in plumb
    assert lay(straight(surface() - COLLAR - layers - 0.1), cap("outdoors")).termination.space == "attic"
    assert lay(straight(surface() - COLLAR - layers + 0.1), cap("outdoors")).termination.space == "outdoors"


@pytest.mark.parametrize(("past_face", "space"), [(0.2, "outdoors"), (5.0, "outdoors"), (-1.0, "kitchen")])
def test_an_end_inside_an_outer_wall_is_taken_as_stated(past_face: float, space: str) -> None:
    """Riser 10 in, elbow of 8 in radius to the back, then straight: the finished face is 8 1/2 in from the riser."""
    route = lay(straight(4.0), elbow("back"), straight(OUT - 8.0 + past_face), cap("outdoors"))
    assert route.parts[-1].start[1] == pytest.approx(past_face)
    if space == "kitchen":
        assert route.termination.space == space
    else:
        assert (route.termination.kind, route.termination.space) == (FaceKind.WALL, space)


def test_an_end_far_outside_reads_as_outdoors() -> None:
    route = lay(straight(300.0), cap("outdoors"))
    assert route.termination.space == "outdoors"
    assert route.words == "As built: straight up between joists 4 and 5, ends outdoors"


def test_where_list_and_lengths_agree_nothing_is_said_of_it() -> None:
    for stated in ("attic", "vented attic", ""):
        route = lay(straight(30.0), open_end(stated))
        assert (route.termination.space, route.termination.stated) == ("attic", "")
        assert route.words.endswith("ends inside the attic")


def test_a_bad_end_that_the_frame_does_not_hold_is_believed() -> None:
    """Nobody says "crawl space" of a duct that ends well; the frame knows nothing below the floor."""
    down = (elbow("front"), straight(40.0), elbow("down"), straight(90.0))
    assert lay(*down, open_end("crawl")).termination.space == "crawl"
    assert said(*down, open_end("crawl"))[0] is State.BROKEN
    assert lay(*down, open_end()).termination.space == ""
    (found,) = all_of(judge_built(built(*down, open_end())), "TRM-OUTDOORS")
    assert found.state is State.NOT_CHECKED


def test_an_end_in_the_kitchen_wins_over_any_claim() -> None:
    route = lay(straight(6.0), open_end("attic"))
    assert (route.termination.space, route.termination.stated) == ("kitchen", "attic")
    assert samples.scene().kitchen.ceiling_in > route.termination.point[2]
