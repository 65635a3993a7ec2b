"""Bounds, containment, nearest points, clips, stairs and meshes against shapely, trimesh and plain arithmetic."""

from __future__ import annotations

import math
import random

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from shapely import Point, Polygon
from shapely.geometry import LineString

from routeviz.geometry import bounds, boxes_overlap, clip, contains, convex_parts, mesh, nearest_point, stair_boxes
from routeviz.model.solids import Box, Cylinder, Prism

RAFTER = Prism(0, 10.0, 11.5, ((0.0, 100.0), (96.0, 148.0), (96.0, 154.0), (0.0, 106.0)))
L_SHAPE = ((0.0, 0.0), (10.0, 0.0), (10.0, 4.0), (4.0, 4.0), (4.0, 10.0), (0.0, 10.0))
SHAPES = [
    Box((1.0, 2.0, 3.0), (4.0, 6.0, 8.0)),
    RAFTER,
    Prism(1, -5.0, 5.0, L_SHAPE),
    Prism(2, 0.0, 12.0, tuple(reversed(L_SHAPE))),
    Cylinder(0, -3.0, 9.0, (2.0, 1.0), 4.0),
    Cylinder(1, -3.0, 9.0, (2.0, 1.0), 0.5),
    Cylinder(2, -3.0, 9.0, (2.0, 1.0), 4.0),
]
VOLUMES = [60.0, 1.5 * 96 * 6, 10.0 * 64, 12.0 * 64, 12 * math.pi * 16, 12 * math.pi * 0.25, 12 * math.pi * 16]
coordinate = st.floats(-200, 200, allow_nan=False)


@pytest.mark.parametrize(("shape", "volume"), list(zip(SHAPES, VOLUMES, strict=True)))
def test_meshes_are_closed_and_turn_their_faces_outwards(shape, volume):
    body = mesh(shape)
    assert body.is_watertight
    assert body.is_winding_consistent
    round_loss = (math.sin(2 * math.pi / 48) * 48 / 2) / math.pi if isinstance(shape, Cylinder) else 1.0
    # elementary solid geometry; the 48-gon inscribed in a circle has area 24 sin(7.5 deg) r^2
    assert body.volume == pytest.approx(volume * round_loss, rel=1e-9)


@pytest.mark.parametrize("shape", SHAPES)
def test_bounds_are_those_of_the_mesh(shape):
    box, body = bounds(shape), mesh(shape)
    tolerance = 0.02 if isinstance(shape, Cylinder) else 1e-9
    assert body.bounds[0] == pytest.approx(box.lo, abs=tolerance)
    assert body.bounds[1] == pytest.approx(box.hi, abs=tolerance)


@pytest.mark.parametrize("shape", SHAPES)
def test_containment_agrees_with_winding_numbers_of_the_mesh(shape):
    box, body, rng = bounds(shape), mesh(shape), random.Random(4)
    points = [tuple(rng.uniform(box.lo[i] - 2, box.hi[i] + 2) for i in range(3)) for _ in range(300)]
    inside = _winding_inside(body, points)
    agree = [contains(shape, p) == found for p, found in zip(points, inside, strict=True)]
    # only points in the sliver between circle and 48-gon may differ
    assert sum(agree) >= (297 if isinstance(shape, Cylinder) else 300)
    assert any(inside)


def _winding_inside(body, points):
    """Tell inside from outside by the solid angle of all triangles (van Oosterom and Strackee)."""
    import numpy as np

    triangles = np.asarray(body.triangles)
    found = []
    for p in points:
        a, b, c = (triangles[:, i] - np.asarray(p) for i in range(3))
        la, lb, lc = (np.linalg.norm(v, axis=1) for v in (a, b, c))
        top = np.einsum("ij,ij->i", a, np.cross(b, c))
        bottom = la * lb * lc + np.einsum("ij,ij->i", a, b) * lc + np.einsum("ij,ij->i", b, c) * la
        bottom += np.einsum("ij,ij->i", c, a) * lb
        found.append(abs(np.sum(2 * np.arctan2(top, bottom))) > 2 * math.pi)
    return found


@given(st.tuples(coordinate, coordinate, coordinate))
@settings(max_examples=150, deadline=None)
def test_nearest_point_of_a_rafter_is_the_one_shapely_finds(point):
    flat = Polygon(RAFTER.outline).distance(Point(point[1], point[2]))
    along = max(0.0, 10.0 - point[0], point[0] - 11.5)
    at = nearest_point(RAFTER, point)
    assert math.dist(at, point) == pytest.approx(math.hypot(flat, along), abs=1e-9)
    assert contains(RAFTER, at)


@given(st.tuples(coordinate, coordinate), st.tuples(coordinate, coordinate))
@settings(max_examples=200, deadline=None)
def test_clip_of_a_rafter_is_that_of_shapely(a, b):
    line, length = LineString([a, b]), math.dist(a, b)
    inside = line.intersection(Polygon(RAFTER.outline)).length
    found = clip(RAFTER, (11.0, *a), (11.0, *b))
    assert ((found[1] - found[0]) * length if found else 0.0) == pytest.approx(inside, abs=1e-6)


def test_clip_gives_the_fractions_where_a_riser_enters_and_leaves_a_sloped_deck():
    # z = 100 + u / 2 below, 106 + u / 2 above; at u = 48 from 124 to 130: a riser from 96 to 196 is in from 0.28 to 0.34
    assert clip(RAFTER, (10.5, 48.0, 96.0), (10.5, 48.0, 196.0)) == pytest.approx((0.28, 0.34))
    assert clip(RAFTER, (12.0, 48.0, 96.0), (12.0, 48.0, 196.0)) is None


def test_clip_of_a_cylinder_is_its_chord():
    pipe = Cylinder(1, 0.0, 10.0, (0.0, 0.0), 5.0)
    # a chord 3 off the centre of a circle of radius 5 is 8 long
    assert clip(pipe, (-10.0, 5.0, 3.0), (10.0, 5.0, 3.0)) == pytest.approx((0.3, 0.7))
    assert clip(pipe, (0.0, -10.0, 3.0), (0.0, 30.0, 3.0)) == pytest.approx((0.25, 0.5))
    assert clip(pipe, (0.0, -10.0, 5.1), (0.0, 30.0, 5.1)) is None


def test_convex_parts_fill_the_prism_without_overlap():
    parts = convex_parts(Prism(1, 0.0, 1.0, L_SHAPE))
    flats = [Polygon(p.outline) for p in parts]
    assert sum(f.area for f in flats) == pytest.approx(64.0)
    assert all(f.convex_hull.area == pytest.approx(f.area) for f in flats)
    assert all(a.intersection(b).area < 1e-9 for i, a in enumerate(flats) for b in flats[:i])
    assert convex_parts(RAFTER) == (RAFTER,)


@pytest.mark.parametrize("shape", [RAFTER, SHAPES[2], SHAPES[3]])
@pytest.mark.parametrize("step", [0.7, 6.0, 1000.0])
def test_stair_boxes_leave_nothing_of_a_prism_out(shape, step):
    stairs, rng, box = stair_boxes(shape, step=step), random.Random(7), bounds(shape)
    inside = 0
    for _ in range(800):
        point = tuple(rng.uniform(box.lo[i], box.hi[i]) for i in range(3))
        if contains(shape, point):
            inside += 1
            assert any(contains(b, point) for b in stairs)
    assert inside > 50


def test_stair_boxes_have_exactly_the_footprint_of_a_rafter():
    stairs = stair_boxes(RAFTER, step=5.0)
    assert sum((b.hi[1] - b.lo[1]) * (b.hi[0] - b.lo[0]) for b in stairs) == pytest.approx(96.0 * 1.5)
    assert min(b.lo[1] for b in stairs) == 0.0
    assert max(b.hi[1] for b in stairs) == 96.0
    # a tread of 4.8 in rises 2.4 in at 6/12, so each box is 6 + 2.4 high
    assert {round(b.hi[2] - b.lo[2], 9) for b in stairs} == {8.4}
    assert len(stairs) == 20


def test_a_level_prism_needs_one_box():
    assert stair_boxes(Prism(0, 0.0, 1.0, ((0.0, 0.0), (90.0, 0.0), (90.0, 2.0), (0.0, 2.0)))) == (
        Box((0.0, 0.0, 0.0), (1.0, 90.0, 2.0)),
    )


def test_touching_boxes_do_not_overlap():
    a, b = Box((0.0, 0.0, 0.0), (1.0, 1.0, 1.0)), Box((1.0, 0.0, 0.0), (2.0, 1.0, 1.0))
    assert not boxes_overlap(a, b)
    assert boxes_overlap(a, b, margin=0.25)
    assert boxes_overlap(a, Box((0.5, 0.5, 0.5), (2.0, 2.0, 2.0)))
