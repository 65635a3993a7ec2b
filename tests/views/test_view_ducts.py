"""Sheet metal drawn from parts: closed, of the right size, with the joints where a tinner puts them."""

from __future__ import annotations

import math
from itertools import product

import numpy as np
import pytest
import samples
import view_plans

from routeviz.model.route import Part, PartKind
from routeviz.model.scene import SectionShape, SectionSize
from routeviz.views.ducts import SHEET_IN, SIDES, band, gore_count, metal, section_outline, wide_sides

RECT = SectionSize(SectionShape.RECT, 10.0, 3.25)
OVAL = SectionSize(SectionShape.OVAL, 9.6, 6.0)
SECTIONS = (samples.ROUND_8, RECT, OVAL)


def straight(section: SectionSize, length: float = 10.0) -> Part:
    return Part(
        "s",
        PartKind.STRAIGHT,
        (0, 0, 0),
        (0, 0, length),
        (0, 0, 1),
        (0, 0, 1),
        section,
        section,
        length,
        wide=(1, 0, 0),
    )


def elbow(section: SectionSize, angle: float = 90.0, radius: float = 8.0, note: str = "4-piece") -> Part:
    """From straight up towards +y."""
    a = math.radians(angle)
    to = (0.0, math.sin(a), math.cos(a))
    end = (0.0, radius * (1 - math.cos(a)), radius * math.sin(a))
    return Part("e", PartKind.ELBOW, (0, 0, 0), end, (0, 0, 1), to, section, section, radius * a, angle, radius,
                wide=(1, 0, 0), note=note)  # fmt: skip


def side(part: Part) -> np.ndarray:
    return wide_sides((part,))[0]


@pytest.mark.parametrize("section", SECTIONS)
def test_outline_has_the_sections_own_size(section):
    flat = section_outline(section)
    assert flat.shape == (SIDES, 2)
    assert np.ptp(flat, axis=0) == pytest.approx([section.width_in, section.height_in], abs=0.01)


def test_outline_of_a_flat_oval_has_two_straight_sides():
    flat = section_outline(OVAL)
    top = flat[np.isclose(flat[:, 1], 3.0)]
    # a 9.6 x 6 oval is a 3.6 in wide strip with half circles of radius 3: its flat is 3.6 in long
    assert np.ptp(top[:, 0]) == pytest.approx(3.6)


@pytest.mark.parametrize(("part", "section"), tuple(product((straight, elbow), SECTIONS)))
def test_parts_are_closed_and_face_outward(part, section):
    made = part(section)
    mesh = metal(made, side(made)).mesh
    assert mesh.is_watertight
    assert mesh.is_winding_consistent
    assert mesh.volume > 0


def test_straight_holds_the_sheet_that_its_section_says():
    mesh = metal(straight(RECT), side(straight(RECT))).mesh
    inner = (10.0 - 2 * SHEET_IN) * (3.25 - 2 * SHEET_IN)
    assert mesh.volume == pytest.approx((10.0 * 3.25 - inner) * 10.0)


@pytest.mark.parametrize("angle", [30.0, 45.0, 90.0])
@pytest.mark.parametrize("section", SECTIONS)
def test_elbow_ends_square_on_both_neighbours(section, angle):
    part = elbow(section, angle)
    points = np.asarray(metal(part, side(part)).mesh.vertices)
    end, out = np.array(part.end), np.array(part.turn_to)
    last = points[np.abs((points - end) @ out) < 1e-9]
    assert len(last) == 2 * SIDES
    assert ((points - end) @ out).max() < 1e-9
    assert (last.min(axis=0) + last.max(axis=0)) / 2 == pytest.approx(end, abs=1e-9)


def test_four_piece_elbow_shows_three_joints_between_tangent_gores():
    part = elbow(samples.ROUND_8)
    seams = metal(part, side(part)).seams
    assert len(seams) == 3
    centre = np.array([0.0, 8.0, 0.0])
    # joints at 15, 45 and 75 degrees; a gore that touches the arc has its joint at R / cos 15 from the centre
    for seam, degrees in zip(seams, (15, 45, 75), strict=True):
        off = seam.mean(axis=0) - centre
        assert math.degrees(math.atan2(off[2], -off[1])) == pytest.approx(degrees)
        assert np.linalg.norm(off) == pytest.approx(8.0 / math.cos(math.radians(15)))
        # the cut is flat, and as long across the bend as a mitre of an 8 in pipe is: 8 / cos 15
        assert np.abs((seam - seam.mean(axis=0)) @ np.cross([1, 0, 0], off / np.linalg.norm(off))).max() < 1e-9
        assert np.ptp(seam @ (off / np.linalg.norm(off))) == pytest.approx(8.0 / math.cos(math.radians(15)))


def test_gores_follow_the_construction_and_the_angle():
    assert [gore_count("4-piece", a) for a in (90, 45, 30)] == [4, 3, 2]
    assert gore_count("5-piece", 90) == 5
    assert gore_count("stamped", 90) == 4


def test_transition_joins_a_rectangle_to_a_circle():
    part = Part(
        "t", PartKind.TRANSITION, (0, 0, 0), (0, 0, 6), (0, 0, 1), (0, 0, 1), RECT, samples.ROUND_6, 6.0, wide=(1, 0, 0)
    )
    made = metal(part, side(part))
    assert made.mesh.is_watertight
    points = np.asarray(made.mesh.vertices)
    assert np.ptp(points[points[:, 2] < 1e-9], axis=0)[:2] == pytest.approx([10.0, 3.25])
    assert np.ptp(points[points[:, 2] > 6 - 1e-9], axis=0)[:2] == pytest.approx([6.0, 6.0])


def test_wide_side_turns_with_an_elbow_in_its_own_plane():
    up = straight(RECT)
    # bend towards +x, the way of the wide side: afterwards the wide side stands upright (pointing down)
    bend = Part("e", PartKind.ELBOW, (0, 0, 10), (8, 0, 18), (0, 0, 1), (1, 0, 0), RECT, RECT, 4 * math.pi, 90.0, 8.0)
    run = Part("r", PartKind.STRAIGHT, (8, 0, 18), (20, 0, 18), (1, 0, 0), (1, 0, 0), RECT, RECT, 12.0)
    first, second, third = wide_sides((up, bend, run))
    assert first == pytest.approx([1, 0, 0])
    assert second == pytest.approx([1, 0, 0])
    assert abs(third[2]) == pytest.approx(1.0)


def test_band_is_closed_and_narrow():
    made = band((0, 0, 5), (0, 0, 1), np.array([1.0, 0, 0]), samples.ROUND_8, 1.1)
    assert made.mesh.is_watertight
    assert made.mesh.extents[2] == pytest.approx(1.1)


def test_cap_and_open_end_have_no_length_of_duct():
    route = view_plans.straight_up(view_plans.scene())
    assert metal(route.parts[-1], np.array([1.0, 0, 0])) is None
