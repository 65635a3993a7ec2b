"""Distances against closed forms, dense sampling and an independent mesh library."""

from __future__ import annotations

import math

import manifold3d
import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from routeviz.geometry import arc_distance, clip, contains, point_distance, segment_distance
from routeviz.model.solids import Box, Cylinder, Prism, Vec3

RAFTER = Prism(0, 13.25, 14.75, ((-132.0, 120.0), (0.0, 87.0), (0.0, 92.5), (-132.0, 125.5)))
number = st.floats(-20, 20).map(lambda v: round(v, 3))
point = st.tuples(number, number, number)


@st.composite
def boxes(draw: st.DrawFn) -> Box:
    lo = draw(point)
    size = draw(st.tuples(*[st.floats(0.5, 15).map(lambda v: round(v, 3))] * 3))
    return Box(lo, (lo[0] + size[0], lo[1] + size[1], lo[2] + size[2]))


def along(a: Vec3, b: Vec3, n: int = 4001) -> np.ndarray:
    t = np.linspace(0, 1, n)[:, None]
    return np.array(a) + t * (np.array(b) - np.array(a))


def sampled(box: Box, points: np.ndarray) -> float:
    outside = np.maximum(np.maximum(np.array(box.lo) - points, points - np.array(box.hi)), 0)
    return float(np.sqrt((outside**2).sum(1)).min())


@settings(max_examples=200, deadline=None)
@given(boxes(), point, point)
def test_segment_to_box_equals_dense_sampling(box: Box, a: Vec3, b: Vec3) -> None:
    found, on_line, on_box = segment_distance(box, a, b)
    dense = sampled(box, along(a, b))
    step = math.dist(a, b) / 4000
    assert found <= dense + 1e-9
    assert found >= dense - step - 1e-9
    if found > 0:
        assert math.dist(on_line, on_box) == pytest.approx(found, abs=1e-9)
        assert contains(box, on_box)


@settings(max_examples=100, deadline=None)
@given(boxes(), point, point)
def test_clip_agrees_with_membership(box: Box, a: Vec3, b: Vec3) -> None:
    t = clip(box, a, b)
    points = along(a, b, 1001)
    inside = np.all((points > np.array(box.lo) + 1e-9) & (points < np.array(box.hi) - 1e-9), axis=1)
    if t is None:
        assert not inside.any()
    else:
        where = np.linspace(0, 1, 1001)
        assert np.all(inside == ((where > t[0] + 1e-9) & (where < t[1] - 1e-9))) or inside.sum() == pytest.approx(
            (t[1] - t[0]) * 1000, abs=2
        )


def test_rafter_distance_is_the_textbook_point_to_line_distance() -> None:
    # lower edge: from (y, z) = (-132, 120) to (0, 87): slope -1/4; distance of (y, z) from it is |4 dz + dy| / sqrt(17)
    below: Vec3 = (14.0, -60.0, 80.0)
    vertical = 87.0 + 60.0 / 4 - 80.0
    assert point_distance(RAFTER, below) == pytest.approx(vertical * 4 / math.sqrt(17), abs=1e-12)


def test_tube_gap_matches_manifold_mesh_gap() -> None:
    bar = manifold3d.Manifold.cube((1.5, 100.0, 7.25)).translate((61.25, -100.0, 96.625))
    joist = Box((61.25, -100.0, 96.625), (62.75, 0.0, 103.875))
    tube = manifold3d.Manifold.cylinder(60.0, 4.0, 4.0, 720).translate((70.0, -8.5, 80.0))
    ours = segment_distance(joist, (70.0, -8.5, 80.0), (70.0, -8.5, 140.0))[0] - 4.0
    assert ours == pytest.approx(3.25, abs=1e-12)
    assert tube.min_gap(bar, 10.0) == pytest.approx(ours, abs=1e-3)


def test_elbow_arc_against_sampling() -> None:
    corner, before, after, radius = (0.0, 0.0, 0.0), (0.0, 0.0, 1.0), (0.0, 1.0, 0.0), 8.0
    block = Box((-1.0, 2.0, -6.0), (1.0, 3.0, -5.0))
    w = np.linspace(0, math.pi / 2, 200001)
    arc = np.stack([np.zeros_like(w), radius * (1 - np.cos(w)), -radius + radius * np.sin(w)], axis=1)
    found, _, _ = arc_distance(block, corner, before, after, radius)
    assert found == pytest.approx(sampled(block, arc), abs=1e-6)


def test_a_45_degree_arc_starts_and_ends_at_its_take_off() -> None:
    s = math.sqrt(0.5)
    cut = 8.0 * math.tan(math.pi / 8)
    for end in ((0.0, 0.0, -cut), (0.0, s * cut, s * cut)):
        tiny = Box(tuple(c - 1e-6 for c in end), tuple(c + 1e-6 for c in end))  # type: ignore[arg-type]
        assert arc_distance(tiny, (0.0, 0.0, 0.0), (0.0, 0.0, 1.0), (0.0, s, s), 8.0)[0] == pytest.approx(0, abs=1e-6)


def test_cylinder_closed_forms() -> None:
    pipe = Cylinder(0, 0.0, 10.0, (5.0, 5.0), 1.0)
    assert point_distance(pipe, (5.0, 5.0, 9.0)) == pytest.approx(3.0)
    assert point_distance(pipe, (13.0, 5.0, 10.0)) == pytest.approx(5.0)
    assert clip(pipe, (5.0, 5.0, 0.0), (5.0, 5.0, 10.0)) == pytest.approx((0.4, 0.6))
    assert clip(pipe, (5.0, 7.0, 0.0), (5.0, 7.0, 10.0)) is None
