"""Cuts, outlines and hatches against plain geometry; the checker against sheets that are wrong on purpose."""

from __future__ import annotations

import math

import handmade
import pytest
import samples
from hypothesis import given, settings
from hypothesis import strategies as st
from shapely.geometry import Polygon

from routeviz.drawings import faults
from routeviz.drawings.flat import arc_points, clipped, cut, duct_outlines
from routeviz.drawings.isometric_order import project
from routeviz.drawings.lettering import box, plain, width, wrapped
from routeviz.drawings.primitives import Anchor, Disc, Face, Page, Path, Text
from routeviz.drawings.sketch import Sketch, hatch_lines
from routeviz.model.solids import Box, Cylinder, Prism, Vec3


def test_cuts_through_a_box_a_rafter_and_a_pipe() -> None:
    assert cut(Box((0.0, 0.0, 0.0), (2.0, 3.0, 4.0)), 0, 1.0) == [((0.0, 0.0), (3.0, 0.0), (3.0, 4.0), (0.0, 4.0))]
    assert cut(Box((0.0, 0.0, 0.0), (2.0, 3.0, 4.0)), 0, 2.0) == []  # the face itself is not inside
    rafter = Prism(0, 10.0, 11.5, ((0.0, 100.0), (12.0, 106.0), (12.0, 110.0), (0.0, 104.0)))
    (ring,) = cut(rafter, 1, 6.0)  # halfway up the slope: 103 to 107
    assert Polygon(ring).bounds == pytest.approx((10.0, 103.0, 11.5, 107.0))
    pipe = Cylinder(0, 0.0, 20.0, (5.0, 50.0), 2.0)
    (ring,) = cut(pipe, 1, 6.0)  # one inch off its axis: half chord sqrt(3)
    assert Polygon(ring).bounds == pytest.approx((0.0, 50.0 - math.sqrt(3), 20.0, 50.0 + math.sqrt(3)))
    (ring,) = cut(pipe, 0, 10.0)
    assert Polygon(ring).area == pytest.approx(math.pi * 4, rel=0.01)


def test_an_elbow_from_the_side_is_a_quarter_ring() -> None:
    up: Vec3 = (0.0, 0.0, 1.0)
    along: Vec3 = (1.0, 0.0, 0.0)
    part = handmade.elbow("elbow-1", (0.0, 0.0, 8.0), up, along, 8.0)
    (side,) = duct_outlines(part, 1)
    # Guldin in the plane: band of width d along an arc of R x pi/2
    assert Polygon(side).area == pytest.approx(8.0 * 8.0 * math.pi / 2, rel=0.01)
    points = arc_points(part)
    assert points[0] == pytest.approx(part.start)
    assert points[-1] == pytest.approx(part.end)
    assert all(math.dist(p, (8.0, 0.0, 0.0)) == pytest.approx(8.0) for p in points)


def test_a_riser_from_above_is_its_circle() -> None:
    (ring,) = duct_outlines(handmade.straight("s", (70.0, -8.5, 80.0), (70.0, -8.5, 110.0)), 2)
    assert Polygon(ring).bounds == pytest.approx((66.0, -12.5, 74.0, -4.5))
    (front,) = duct_outlines(handmade.straight("s", (70.0, -8.5, 80.0), (70.0, -8.5, 110.0)), 1)
    assert Polygon(front).bounds == pytest.approx((66.0, 80.0, 74.0, 110.0))


def test_clipping_keeps_what_is_inside() -> None:
    (ring,) = clipped(((0.0, 0.0), (10.0, 0.0), (10.0, 10.0), (0.0, 10.0)), (5.0, -5.0, 20.0, 4.0))
    assert Polygon(ring).area == pytest.approx(20.0)
    assert clipped(((0.0, 0.0), (1.0, 0.0), (1.0, 1.0)), (5.0, 5.0, 6.0, 6.0)) == []


def test_the_picture_is_isometric() -> None:
    """One inch along each axis is equally long, 120 degrees apart; left and right are as seen from the room."""
    origin = project((0.0, 0.0, 0.0))
    axes = [tuple(a - b for a, b in zip(project(p), origin, strict=True)) for p in ((1, 0, 0), (0, -1, 0), (0, 0, 1))]
    assert [math.hypot(*a) for a in axes] == pytest.approx([1.0, 1.0, 1.0])
    assert axes[0][0] > 0 > axes[1][0]  # right is right; the room comes towards the viewer at the left
    for a, b in ((0, 1), (1, 2), (0, 2)):
        assert axes[a][0] * axes[b][0] + axes[a][1] * axes[b][1] == pytest.approx(-0.5)


@settings(deadline=None)
@given(st.floats(0.4, 3.0), st.floats(0.0, 180.0))
def test_hatches_cover_a_square_evenly(step: float, angle: float) -> None:
    square = ((0.0, 0.0), (20.0, 0.0), (20.0, 20.0), (0.0, 20.0))
    lines = hatch_lines(square, step, angle)
    total = sum(math.dist(a, b) for a, b in lines)
    assert total * step == pytest.approx(400.0, rel=0.2, abs=45.0)  # lines x spacing is the area
    assert all(-1e-6 <= v <= 20.0 + 1e-6 for line in lines for p in line for v in p)


def test_lines_are_broken_where_they_fit_and_figures_stay_whole() -> None:
    lines = wrapped("joist 4, right edge: 62 3/4 in from the left wall", 2.6, Face.SANS, 40.0)
    assert all(width(line, 2.6, Face.SANS) <= 40.0 for line in lines)
    assert any("62 3/4 in" in line for line in lines)
    assert " ".join(lines) == "joist 4, right edge: 62 3/4 in from the left wall"
    assert all(width(x, 2.6) <= 10.0 for x in wrapped("w" * 40, 2.6, Face.SANS, 10.0))


def test_letters_no_standard_face_has_are_replaced() -> None:
    assert plain("−1/2 × 3 ≥ 2, Küche") == "–1/2 × 3 at least 2, Küche"
    assert plain("Zürich žluť кухня") == "Zürich žlut ?????"


def page(*items: Text | Path) -> Page:
    return Page("x", "x", 100.0, 100.0, items)


def test_the_checker_finds_what_is_wrong() -> None:
    good = Text((10.0, 50.0), "good", 2.6)
    assert faults(page(good)) == ()
    assert [f.kind for f in faults(page(Text((10.0, 50.0), "small", 2.4)))] == ["small"]
    assert [f.kind for f in faults(page(Text((96.0, 50.0), "over the edge", 2.6)))] == ["outside"]
    assert [f.kind for f in faults(page(good, Text((12.0, 51.0), "on it", 2.6)))] == ["overlap"]
    assert [f.kind for f in faults(page(good, Text((10.0, 55.0), "turned", 2.6, turn=90)))] == []
    assert [f.kind for f in faults(page(Path(((1.0, 1.0), (50.0, 50.0)), 0.2)))] == ["outside"]


def kinds(*items: Text | Path | Disc) -> list[str]:
    return [f.kind for f in faults(Page("x", "x", 100.0, 100.0, items))]


def test_the_checker_finds_a_bold_line_through_a_text() -> None:
    """The text stands on a base line at 50; half of its height above it is 50.9 mm."""
    word = Text((40.0, 50.0), "struck", 2.6)
    bold, thin = 0.35, 0.2
    assert kinds(word, Path(((30.0, 50.9), (70.0, 50.9)), bold)) == ["struck"]
    assert kinds(word, Path(((30.0, 50.9), (70.0, 50.9)), thin)) == []  # dimension and hidden lines may
    assert kinds(word, Path(((41.0, 40.0), (42.0, 60.0)), bold)) == ["struck"]
    assert kinds(word, Path(((30.0, 49.0), (70.0, 49.0)), bold)) == []  # an underline
    assert kinds(word, Path(((41.0, 50.0), (42.0, 51.5)), bold)) == []  # a tick of 1.8 mm
    assert (
        kinds(word, Path(((30.0, 45.0), (70.0, 45.0), (70.0, 56.0), (30.0, 56.0)), bold, closed=True)) == []
    )  # a frame
    assert kinds(word, Path(((30.0, 45.0), (70.0, 45.0), (52.0, 56.0)), bold, closed=True)) == [
        "struck"
    ]  # its last side
    assert kinds(Text((40.0, 50.0), " ", 2.6), Path(((30.0, 50.9), (70.0, 50.9)), bold)) == []
    assert kinds(word, Disc((42.0, 44.0), 7.0, bold)) == ["struck"]
    assert kinds(word, Disc((42.0, 51.0), 20.0, bold)) == []  # all round it


def test_labels_take_the_first_free_place() -> None:
    sketch = Sketch((0.0, 0.0, 100.0, 100.0))
    first = sketch.label([((50.0, 50.0), Anchor.MIDDLE)], "here", 2.6)
    second = sketch.label([((50.0, 50.5), Anchor.MIDDLE), ((50.0, 60.0), Anchor.MIDDLE)], "there", 2.6)
    assert first is not None
    assert second is not None
    assert second.at == (50.0, 60.0)
    assert sketch.label([((50.0, 50.0), Anchor.MIDDLE), ((200.0, 50.0), Anchor.LEFT)], "nowhere", 2.6) is None
    left, bottom, right, top = box(first)
    assert right - left == pytest.approx(width("here", 2.6))
    assert top - bottom == pytest.approx(2.6 * 0.96)
    assert samples.ROUND_8.is_round
