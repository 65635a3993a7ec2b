"""The tape as a drawing: bars stand where the framing lets them, pictures show them, and nothing runs into anything."""

from __future__ import annotations

import json
import xml.etree.ElementTree as ET
from io import BytesIO
from pathlib import Path

import pytest
from clirunning import SCENES, call
from PIL import Image

from routeviz import scenefile, studies
from routeviz.drawings import faults, palette, tape_page, to_png, to_svg
from routeviz.drawings.primitives import Page, Text
from routeviz.drawings.primitives import Path as Shape
from routeviz.drawings.tape_sheet import stretches
from routeviz.geometry import bounds
from routeviz.model.plan import Plan
from routeviz.model.solids import SolidKind

Rows = tuple[tuple[Plan, ...], ...]


@pytest.fixture(scope="module")
def maple() -> Rows:
    """Joists over the wall, one dead over the hood, roof only."""
    scene = scenefile.load(SCENES / "joist_dead_centre.toml")
    return studies.wall_plans(scene, studies.places(scene, step_in=2.0), studies.heights(scene, step_in=6.0))


@pytest.fixture(scope="module")
def page(maple: Rows) -> Page:
    scene = maple[0][0].scene
    return tape_page(maple, hood_at=(scene.hood.centre_in, maple[-1][0].scene.hood.mount_in or 0.0))


def bars(page: Page, fill: str) -> list[tuple[float, float, float, float]]:
    found = [i.points for i in page.items if isinstance(i, Shape) and i.closed and i.fill == fill]
    return [(p[0][0], p[0][1], p[2][0], p[2][1]) for p in found if p[2][1] - p[0][1] > 8.0]


def test_straight_ways_stand_between_joists(maple: Rows) -> None:
    """A place for straight up keeps the duct's radius and clearance off every joist: plain arithmetic."""
    plan = maple[0][0]
    reach = plan.scene.duct.sections[0].width_in / 2 + plan.scene.duct.clearance_in
    joists = [bounds(s.shape) for s in plan.frame.solids if s.kind is SolidKind.JOIST and s.space == "kitchen"]
    assert joists
    for row in maple:
        up = [s for s in stretches(row) if s.kind == "up"]
        assert len(up) >= 3
        for stretch in up:
            low, high = stretch.low + 1.0, stretch.high - 1.0  # half a step of 2 in
            assert all(high <= j.lo[0] - reach + 1e-6 or low >= j.hi[0] + reach - 1e-6 for j in joists)
        blocked = [s for s in stretches(row) if s.kind == "blocked"]
        assert all(s.by.startswith("J") for s in blocked)


def test_one_row_for_each_height_and_every_joist_with_its_number(maple: Rows, page: Page) -> None:
    words = [i.text for i in page.items if isinstance(i, Text)]
    assert words.count("above cooktop") == len(maple) >= 2
    heights = {round(row[0].scene.hood.mount_in or 0.0) for row in maple}
    assert {f"{h} in" for h in heights} <= set(words)
    rows = {round(bar[1], 3) for bar in bars(page, palette.UP)}
    assert len(rows) == len(maple)
    assert {"1", "2", "3", "4", "5"} <= set(words)
    assert "straight up, no elbow" in words


def test_bars_stand_over_their_inches(maple: Rows, page: Page) -> None:
    """The blade of the tape is the scale: its two ends are the side walls."""
    blade = next(i for i in page.items if isinstance(i, Shape) and i.fill == palette.BLADE)
    left, right = blade.points[0][0], blade.points[1][0]
    scale = (right - left) / maple[0][0].scene.kitchen.width_in
    drawn = sorted({(round(a, 2), round(c, 2)) for a, _, c, _ in bars(page, palette.UP)})
    wanted = {(round(left + s.low * scale + 0.1, 2), round(left + s.high * scale - 0.1, 2))
              for row in maple for s in stretches(row) if s.kind == "up"}  # fmt: skip
    assert set(drawn) == wanted


@pytest.mark.parametrize("name", ["stud_dead_centre", "metric_concrete_ceiling", "out_the_back"])
def test_nothing_runs_into_anything(name: str) -> None:
    scene = scenefile.load(SCENES / f"{name}.toml")
    rows = studies.wall_plans(scene, studies.places(scene, step_in=6.0), studies.heights(scene, step_in=6.0))
    assert faults(tape_page(rows, hood_at=(scene.hood.centre_in, 30.0))) == ()


def test_sheet_of_joists_has_no_faults_either(page: Page) -> None:
    assert faults(page) == ()


def test_the_picture_shows_the_bars(page: Page) -> None:
    picture = Image.open(BytesIO(to_png(page, dots_per_inch=100.0))).convert("RGB")
    assert picture.size == (round(page.width / 25.4 * 100), round(page.height / 25.4 * 100))
    teal = tuple(int(palette.UP[i : i + 2], 16) for i in (1, 3, 5))
    for a, b, _, d in bars(page, palette.UP):
        x, y = (a + 0.8) / 25.4 * 100, (page.height - (b + d) / 2) / 25.4 * 100
        assert picture.getpixel((round(x), round(y))) == teal
    assert picture.getpixel((3, 3)) == (255, 255, 255)
    assert to_png(page, dots_per_inch=100.0) == to_png(page, dots_per_inch=100.0)


def test_the_svg_is_well_formed_and_says_the_same(page: Page) -> None:
    root = ET.fromstring(to_svg(page))
    words = {e.text for e in root.iter("{http://www.w3.org/2000/svg}text")}
    assert words == {i.text for i in page.items if isinstance(i, Text)}


def test_the_command_draws_both(tmp_path: Path) -> None:
    svg, png = tmp_path / "tape.svg", tmp_path / "tape.png"
    said = call(
        "tape",
        SCENES / "lot_line_close.toml",
        "--step",
        12,
        "--height-step",
        12,
        "--svg",
        svg,
        "--png",
        png,
        "--json",
        "-",
    )
    assert said.code == 0
    assert all("centre_in" in place for place in json.loads(said.out))
    assert ET.parse(svg).getroot().tag.endswith("svg")
    with Image.open(png) as picture:
        assert picture.width > 2000
    assert call("tape", SCENES / "lot_line_close.toml", "--step", 12, "--svg", tmp_path / "no" / "t.svg").code != 0
