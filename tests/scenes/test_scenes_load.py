"""Every example scene loads, says what it shows, and is an invented home whose parts fit together."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

from routeviz.model.scene import AboveKind, Scene
from routeviz.scenefile import load

FILES = sorted((Path(__file__).parents[2] / "scenes").glob("*.toml"))
NAMED = {
    "as_built_flex_in_attic", "big_fan_small_duct", "cathedral_roof", "garage_beyond", "gas_low_cabinets",
    "joist_dead_centre", "juniper_straight_up", "metric_concrete_ceiling", "out_the_back", "rear_outlet_straight_back",
    "side_wall_storey_above", "soffit_vent_cap", "stud_dead_centre", "truss_in_front",
}  # fmt: skip


@pytest.fixture(params=FILES, ids=lambda file: file.stem)
def file(request: pytest.FixtureRequest) -> Path:
    found: Path = request.param
    return found


@pytest.fixture
def scene(file: Path) -> Scene:
    return load(file)


def test_the_named_scenes_are_there() -> None:
    assert {file.stem for file in FILES} >= NAMED


def test_a_comment_on_top_says_what_it_shows_and_the_right_value(file: Path) -> None:
    top = file.read_text(encoding="utf-8").split("\nformat = ")[0]
    assert top.startswith("# Shows: ")
    assert "\n# Right value: " in top
    assert all(line.startswith("#") or not line for line in top.split("\n"))


def test_invented_named_and_told(scene: Scene, file: Path) -> None:
    assert scene.invented
    assert scene.file == file.name
    assert scene.name
    assert scene.about


def test_names_of_homes_are_their_own() -> None:
    names = [load(file).name for file in FILES]
    assert len(names) == len(set(names))


def test_nothing_real_and_no_private_path(file: Path) -> None:
    assert not re.search(r"/(work|tmp|root|home)/|https?:|www\.|@", file.read_text(encoding="utf-8"))


def test_hood_body_stays_under_the_ceiling_and_cover_spans_the_rest(scene: Scene) -> None:
    bottom, cover = scene.hood_bottom_in, scene.hood.cover
    assert bottom is not None
    gap = scene.kitchen.ceiling_in - bottom - scene.hood.body_in
    assert gap >= 0
    cathedral = scene.above.kind is AboveKind.ROOF  # the ceiling over the hood is higher than at the eave
    if cover is not None and not cathedral:
        assert cover.min_in <= gap <= cover.max_in


def test_top_outlet_stands_inside_its_cover(scene: Scene) -> None:
    outlet, cover = scene.hood.outlet, scene.hood.cover
    if cover is None or outlet.place != "top":
        return
    half = outlet.section.height_in / 2
    assert half <= outlet.out_in <= cover.depth_in - half
    assert abs(outlet.across_in) + outlet.section.width_in / 2 <= cover.width_in / 2


def test_hood_hangs_over_its_cooktop(scene: Scene) -> None:
    assert scene.hood.centre_in == scene.cooktop.centre_in
    assert scene.hood.width_in >= scene.cooktop.width_in
