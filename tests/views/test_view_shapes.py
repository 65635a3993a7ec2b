"""Outlines to closed meshes: volumes by arithmetic, cuts where they belong."""

from __future__ import annotations

import numpy as np
import pytest
import shapely
from hypothesis import given
from hypothesis import strategies as st

from routeviz.model.solids import Box, Cylinder, Prism
from routeviz.views.shapes import Slab, barred, box, frustum, loft, rough_outline, slab_of


@pytest.mark.parametrize("axis", [0, 1, 2])
def test_prism_keeps_its_place_and_volume_along_every_axis(axis):
    outline = ((0.0, 0.0), (10.0, 0.0), (10.0, 2.0), (0.0, 6.0))  # a trapezium: 10 x (6 + 2) / 2 = 40
    mesh = slab_of(Prism(axis, 5.0, 8.0, outline)).mesh()
    assert mesh.is_watertight
    assert mesh.volume == pytest.approx(120.0)
    lo, hi = mesh.bounds
    assert (lo[axis], hi[axis]) == pytest.approx((5.0, 8.0))
    others = [a for a in range(3) if a != axis]
    assert [hi[a] for a in others] == pytest.approx([10.0, 6.0])


@pytest.mark.parametrize("along", [0, 1, 2])
def test_box_is_the_same_whichever_way_it_is_swept(along):
    mesh = slab_of(Box((1.0, 2.0, 3.0), (4.0, 8.0, 5.0)), along=along).mesh()
    assert mesh.bounds == pytest.approx(np.array([[1, 2, 3], [4, 8, 5]]))
    assert mesh.volume == pytest.approx(36.0)


def test_cylinder_is_a_bar_of_its_radius():
    mesh = slab_of(Cylinder(0, -2.0, 3.0, (10.0, 20.0), 1.5)).mesh()
    assert mesh.bounds == pytest.approx(np.array([[-2, 8.5, 18.5], [3, 11.5, 21.5]]))


def test_clip_cuts_square_to_any_axis():
    slab = slab_of(Box((0.0, 0.0, 0.0), (10.0, 10.0, 10.0)))
    for axis in range(3):
        kept = slab.clip(axis, 4.0, 7.0)
        assert kept is not None
        assert kept.mesh().volume == pytest.approx(300.0)
    assert slab.clip(1, 20.0, 30.0) is None
    assert slab.clip(0, -5.0, 0.0) is None


def test_minus_leaves_a_hole():
    slab = Slab(1, 0.0, 0.5, shapely.box(0, 0, 10, 10)).minus(shapely.box(4, 4, 6, 6))
    assert slab is not None
    mesh = slab.mesh()
    assert mesh.is_watertight
    assert mesh.volume == pytest.approx(48.0)
    assert Slab(1, 0.0, 0.5, shapely.box(0, 0, 1, 1)).minus(shapely.box(-1, -1, 2, 2)) is None


def test_frustum_volume():
    mesh = frustum((-18, 18, -20, 0, 0), (-6, 6, -12, 0, 9))
    # prismatoid: h / 6 (A1 + 4 Am + A2), with the middle section half way in both sides
    assert mesh.volume == pytest.approx(9 / 6 * (36 * 20 + 4 * 24 * 16 + 12 * 12))


def test_loft_with_one_skin_is_a_solid():
    square = np.array([[0, 0, 0], [2, 0, 0], [2, 2, 0], [0, 2, 0]], float)
    mesh = loft([square, square + np.array([0, 0, 5.0])])
    assert mesh.is_watertight
    assert mesh.volume == pytest.approx(20.0)


@given(x=st.floats(5, 60), width=st.floats(20, 90), seed=st.integers(0, 50))
def test_rough_edge_is_simple_and_strays_little(x, width, seed):
    cut = rough_outline(x, x + width, 60.0, 96.0, open_top=True, seed=seed)
    assert cut.is_valid
    assert cut.symmetric_difference(shapely.box(x, 60.0, x + width, 104.0)).area < 0.9 * cut.length


def test_bars_share_out_a_member_without_loss():
    joist = box(61.25, 62.75, -36.0, 4.5, 96.6, 103.9)
    red, white = barred(joist)
    assert red.is_watertight
    assert white.is_watertight
    assert red.volume + white.volume == pytest.approx(joist.volume, rel=1e-5)
    assert 0.4 < red.volume / joist.volume < 0.6
    assert red.bounds[1, 1] - red.bounds[0, 1] > 36  # over the whole length


def test_only_closed_meshes_are_barred():
    open_mesh = box(0, 1, 0, 1, 0, 1)
    open_mesh.update_faces(np.arange(len(open_mesh.faces)) > 0)
    with pytest.raises(ValueError, match="closed"):
        barred(open_mesh)
