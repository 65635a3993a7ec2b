"""What a section shows: true ends, a collar, holes as they are cut, flashing on its slope, leaders inside their layers."""

from __future__ import annotations

from functools import cache
from pathlib import Path as FilePath

import pytest
from shapely.geometry import Point, Polygon

from routeviz.drawings.ceiling_plan import wall_level_in
from routeviz.drawings.flat import duct_outlines
from routeviz.drawings.packet import sheets
from routeviz.drawings.primitives import Page, Path, Text
from routeviz.model.plan import Plan
from routeviz.model.route import Part, PartKind
from routeviz.model.scene import SectionShape, SectionSize
from routeviz.model.solids import Vec3
from routeviz.pipeline import plan
from routeviz.scenefile import load

SCENES = FilePath(__file__).parents[2] / "scenes"
ROUND_6 = SectionSize(SectionShape.ROUND, 6.0, 6.0)


@cache
def _plan(name: str) -> Plan:
    return plan(load(SCENES / f"{name}.toml"))


@cache
def _pages(name: str) -> tuple[Page, ...]:
    return sheets(_plan(name))


def _page(name: str, title: str) -> Page:
    return next(p for p in _pages(name) if p.title.startswith(title))


def _shapes(page: Page, name: str) -> list[Path]:
    return [p for p in page.items if isinstance(p, Path) and p.id == name]


def _words(page: Page) -> list[str]:
    return [t.text for t in page.items if isinstance(t, Text)]


def test_an_elbow_ends_square_to_the_duct() -> None:
    """Radius 6 in, 6 in round, from up to back: its lower end is level from y = -11.5 to -5.5, its far end plumb."""
    up: Vec3 = (0.0, 0.0, 1.0)
    back: Vec3 = (0.0, 1.0, 0.0)
    elbow = Part("elbow-1", PartKind.ELBOW, (0.0, -8.5, 78.5), (0.0, -2.5, 84.5), up, back, ROUND_6, ROUND_6, 9.42, 90.0, 6.0,
                 (0.0, -8.5, 84.5))  # fmt: skip
    (ring,) = duct_outlines(elbow, 0)
    low = sorted(y for y, z in ring if abs(z - 78.5) < 1e-9)
    far = sorted(z for y, z in ring if abs(y + 2.5) < 1e-9)
    assert low[0] == pytest.approx(-11.5)
    assert low[-1] == pytest.approx(-5.5)
    assert (far[0], far[-1]) == pytest.approx((81.5, 87.5))
    assert min(z for _, z in ring) == pytest.approx(78.5)
    assert max(y for y, _ in ring) == pytest.approx(-2.5)


def test_the_collar_joins_hood_and_duct() -> None:
    """The duct begins 1 1/2 in over the hood: at 1/2 in = 1 ft that is 1.5 * 25.4 / 24 mm of collar, as wide as the duct."""
    (collar,) = _shapes(_page("truss_in_front", "Section along the duct"), "collar")
    xs, ys = [p[0] for p in collar.points], [p[1] for p in collar.points]
    assert max(ys) - min(ys) == pytest.approx(1.5 * 25.4 / 24, abs=0.001)
    assert max(xs) - min(xs) == pytest.approx(6.0 * 25.4 / 24)


def test_flashing_lies_on_the_slope() -> None:
    """A roof of 6 in 12 falls towards the eave behind the hood wall: half an inch for each inch to the right."""
    page = _page("gas_low_cabinets", "Section along the duct")
    flashing = _shapes(page, "cap")[0]
    (x0, y0), (x1, y1) = flashing.points[:2]
    roof = _plan("gas_low_cabinets").scene.roof
    assert roof is not None
    assert (y1 - y0) / (x1 - x0) == pytest.approx(-roof.pitch)


@pytest.mark.parametrize(
    "name", ["gas_low_cabinets", "garage_beyond", "side_wall_storey_above", "metric_concrete_ceiling"]
)
def test_leaders_end_inside_the_layers_they_name(name: str) -> None:
    """The end of a leader lies in the drawn outline of a layer of that name."""
    found = _plan(name)
    assert found.best is not None
    checked = 0
    for page in (p for p in _pages(name) if p.title.startswith("Section")):
        paths = [p for p in page.items if isinstance(p, Path)]
        texts = [t for t in page.items if isinstance(t, Text)]
        solids = [(h.layer, found.frame.solid(h.solid)) for h in found.best.takeoff.holes]
        for text in texts:
            named = {s.id for layer, s in solids if text.text in (layer, s.material, f"{s.material}, sleeve")}
            drawn = [Polygon(p.points) for p in paths if p.closed and p.id in named]
            tips = [p.points[1] for p in paths
                    if len(p.points) == 2 and not p.dash and abs(p.points[0][1] - text.at[1] - 0.3 * text.size) < 1e-6
                    and abs(abs(p.points[0][0] - text.at[0]) - 0.7) < 1e-6]  # fmt: skip
            if drawn:
                checked += 1
                assert len(tips) == 1, text.text
                assert any(shape.contains(Point(tips[0])) for shape in drawn), text.text
    assert checked >= 2


def test_sleeve_and_mounting_block_are_drawn() -> None:
    """A sleeve has two sides and goes through the masonry alone, where its mortar holds it."""
    assert len(_shapes(_page("metric_concrete_ceiling", "Section along the duct"), "sleeve")) == 2
    assert len(_shapes(_page("furring_strip_brick", "Section along the duct"), "sleeve")) == 2
    block = _shapes(_page("garage_beyond", "Section along the duct"), "mounting block")
    assert block
    ys = [p[1] for p in block[0].points]
    assert max(ys) - min(ys) == pytest.approx(12.0 * 25.4 / 24)  # the block is 12 x 12 in, at 1/2 in = 1 ft


def test_the_garage_is_named_and_has_its_ceiling() -> None:
    words = _words(_page("garage_beyond", "Section along the duct"))
    assert "garage" in words
    assert "garage ceiling" in words


@pytest.mark.parametrize("name", ["garage_beyond", "side_wall_storey_above", "cathedral_roof", "out_the_back"])
def test_nothing_stands_past_the_frame(name: str) -> None:
    """The title strip ends 12 mm from the right edge: no label goes past it."""
    from routeviz.drawings.lettering import box

    for page in _pages(name):
        texts = [t for t in page.items if isinstance(t, Text)]
        assert max(box(t)[2] for t in texts) <= page.width - 12.0 + 1e-6, page.title


def test_jack_studs_show_in_the_plan() -> None:
    """The window's head is at 80 in: the wall is cut below it, where the jacks still stand."""
    assert wall_level_in(_plan("rear_outlet_straight_back")) < 80.0
    page = _pages("rear_outlet_straight_back")[0]
    jacks = {
        s.id
        for s in _plan("rear_outlet_straight_back").frame.solids
        if s.kind.value == "jack stud" and s.space == "kitchen"
    }
    assert jacks
    assert all(any(p.fill for p in _shapes(page, j)) for j in jacks)


def test_furring_strips_have_their_numbers() -> None:
    """At 16 in from 7 1/4 in, eight strips stand on 132 in of wall; the one the duct passes shows dashed under it."""
    page = _pages("furring_strip_brick")[0]
    strips = [s for s in _plan("furring_strip_brick").frame.solids if s.id.startswith("hood-furring-")]
    numbers = [w for w in _words(page) if w.isdigit()]
    joists = [s for s in _plan("furring_strip_brick").frame.solids if s.id.startswith("joist-")]
    assert all(numbers.count(str(s.member.number)) >= 2 for s in strips if s.member and s.member.number <= len(joists))
    assert any(p.dash for p in _shapes(page, "hood-furring-4"))


def test_rafters_that_are_measured_have_their_numbers_in_the_plan() -> None:
    words = _words(_pages("cathedral_roof")[0])
    assert "rafter 1" in words
    assert "rafter 2" in words


@pytest.mark.parametrize("name", ["metric_concrete_ceiling", "big_fan_small_duct", "cathedral_roof"])
def test_what_another_duct_gives_adds_up_as_printed(name: str) -> None:
    """Flow now + gain = flow then, in the figures on the sheet."""
    found = _plan(name).best
    assert found is not None
    factor = 0.47194744320 if _plan(name).scene.metric else 1.0
    now = round(found.air.points[0].flow_cfm * factor)
    page = _page(name, "Air")
    texts = [t for t in page.items if isinstance(t, Text)]
    rows = [t for t in texts if t.text[:1] in "+–" and t.text[1:].isdigit()]
    assert len(rows) == len(found.air.advice)
    for row in rows:
        flows = [t for t in texts if abs(t.at[1] - row.at[1]) < 1e-6 and t.text.isdigit()]
        assert int(flows[0].text) - now == int(row.text.replace("–", "-"))
