"""What is said of a thing that hangs too low: a move that has room, never more of it than there is."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest

from routeviz import pipeline, scenefile, studies
from routeviz.model.scene import Obstacle, ObstacleKind, Scene
from routeviz.rules.raising import may_be_raised

HOME = Path(__file__).parents[2] / "scenes" / "gas_low_cabinets.toml"
TAKEN = "Take it away, or hang it clear of the cooktop and the hood."


def home(**shelf: object) -> Scene:
    """The burners at 35 in, the hood from 65 to 76 in, a shelf 1 in thick at 57 in: 30 in over the burners is 65 in."""
    scene = scenefile.load(HOME)
    return replace(scene, obstacles=tuple(replace(o, **shelf) if o.id == "spice-shelf" else o for o in scene.obstacles))  # type: ignore[arg-type]


def remedy(scene: Scene, code: str) -> str:
    return next(f.remedy for f in pipeline.scene_findings(scene) if f.code == code)


def test_a_shelf_is_not_sent_into_the_hoods_body() -> None:
    scene = home()
    assert remedy(scene, "HGT-CABINET") == TAKEN
    # 13 in is more than the shelf's 1 in, and more than the hood's body of 11 in
    assert remedy(scene, "HGT-WINDOW") == TAKEN.replace("it", "the spice shelf", 1)
    assert {fix.words for fix in studies.fixes(pipeline.plan(scene))} == {"Take away the spice shelf"}


def test_a_tall_one_under_the_ceiling_is_shortened() -> None:
    # 7 in of 36 in are cut off below; moved up whole it would end at 65 + 36 = 101 in, over the ceiling at 96 in
    tall = home(bottom_in=58.0, height_in=36.0, left_in=40.0, width_in=13.0)
    assert remedy(tall, "HGT-CABINET") == "Shorten it by 7 in."


def test_what_has_room_may_be_shortened_or_raised() -> None:
    # the uppers hang from 53 to 89 in, 1/4 in too low; the ceiling is at 96 in
    said = {f.remedy for f in pipeline.scene_findings(home()) if f.code == "CLR-SIDE-UP" and (f.margin or 0) < 0}
    assert said == {"Shorten or raise it by 1/4 in, or keep it farther from the cooktop."}


def test_its_underside_is_protected_only_where_it_hangs_high_enough_for_that() -> None:
    # 24 in over the burners is the least for protected wood: 35 + 24 = 59 in
    assert "protect" not in remedy(home(bottom_in=58.5), "HGT-CABINET")
    assert remedy(home(bottom_in=59.5), "HGT-CABINET").endswith(", or protect its underside.")


@pytest.mark.parametrize(
    ("up_in", "free"),
    [
        (7.0, True),  # 64 to 65 in: under the hood
        (8.0, False),  # 65 to 66 in: in its canopy
        (18.75, False),  # 75 3/4 in: the body ends at 76 in
        (19.0, False),  # over the body, but the cover is there
    ],
)
def test_where_a_shelf_has_room(up_in: float, free: bool) -> None:
    scene = home()
    shelf = next(o for o in scene.obstacles if o.id == "spice-shelf")
    assert may_be_raised(scene, shelf, up_in) is free
    bare = replace(scene, hood=replace(scene.hood, cover=None))
    assert may_be_raised(bare, shelf, up_in) is (free or up_in == 19.0)


def test_what_is_built_in_is_not_shortened() -> None:
    soffit = Obstacle("soffit", ObstacleKind.SOFFIT, 58.0, 0.0, 60.0, 24.0, 12.0, 36.0)
    scene = replace(home(), obstacles=(soffit,))
    said = [f.remedy for f in pipeline.scene_findings(scene) if f.code == "HGT-CABINET"]
    assert said == ["Set cooktop and hood clear of it, or protect its underside."]  # 25 in over the burners
