"""What stands between the viewer and the duct hides it: dashed there, solid where it is seen."""

from __future__ import annotations

from pathlib import Path as FilePath

import pytest
from shapely.geometry import LineString, box

from routeviz.drawings.ceiling_plan import ceiling_hole
from routeviz.drawings.packet import sheets
from routeviz.drawings.palette import HEADING
from routeviz.drawings.primitives import Page, Path, Text
from routeviz.model.plan import Plan
from routeviz.pipeline import plan
from routeviz.scenefile import load

SCENES = FilePath(__file__).parents[2] / "scenes"


@pytest.fixture(scope="module")
def truss() -> Plan:
    return plan(load(SCENES / "truss_in_front.toml"))


@pytest.fixture(scope="module")
def first(truss: Plan) -> Page:
    return sheets(truss)[0]


def _lines(page: Page, name: str) -> list[Path]:
    return [p for p in page.items if isinstance(p, Path) and p.id == name and p.weight > 0]


def test_the_riser_is_dashed_behind_the_bottom_chord_in_the_elevation(first: Page) -> None:
    """The truss stands 7 1/4 to 8 3/4 in out from the wall, the duct 1 to 7 in: it runs behind the truss."""
    chord = max(
        _lines(first, "truss-1-bottom"), key=lambda p: max(y for _, y in p.points)
    )  # the elevation is above the plan
    xs, ys = [p[0] for p in chord.points], [p[1] for p in chord.points]
    inside = box(min(xs), min(ys) + 0.1, max(xs), max(ys) - 0.1)
    met = [p for p in _lines(first, "straight-2") if LineString(p.points).intersection(inside).length > 0.05]
    assert met
    assert all(p.dash and p.fill is None for p in met)
    above = [p for p in _lines(first, "straight-2") if not p.dash and min(y for _, y in p.points) >= max(ys) - 0.01]
    assert above, "between the chords the duct is seen"


def test_a_ceiling_of_trusses_alone_has_a_truss_plan(first: Page) -> None:
    words = [t.text for t in first.items if isinstance(t, Text) and t.size == HEADING]
    assert "Truss" in words
    assert "Joist" not in words
    assert first.title == "Hood wall, truss plan, picture"


def test_nothing_filled_covers_the_truss(first: Page) -> None:
    """The riser's steel ends where the members cover it."""
    from shapely.geometry import Polygon

    chord = max(_lines(first, "truss-1-bottom"), key=lambda p: max(y for _, y in p.points))
    steel = [p for p in first.items if isinstance(p, Path) and p.id == "straight-2" and p.fill is not None]
    assert steel
    assert all(Polygon(p.points).intersection(Polygon(chord.points)).area < 0.01 for p in steel)


def test_the_plan_dimensions_both_the_collar_and_the_ceiling_hole(truss: Plan, first: Page) -> None:
    """The collar is 8 1/2 in out from the wall, the hole in the ceiling 4 in: who cuts under the collar cuts under the truss."""
    words = [t.text for t in first.items if isinstance(t, Text)]
    assert "collar 8 1/2" in words
    assert "hole 4" in words
    assert "truss 1" in words
    assert truss.best is not None
    assert ceiling_hole(truss.best.route, truss.scene) == (50.0, -4.0)
