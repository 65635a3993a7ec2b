"""Gaps between duct pieces and solids against closed forms, dense sampling, quadratic programs and manifold3d."""

from __future__ import annotations

import math
import random

import numpy as np
import pytest
from scipy.optimize import minimize

from routeviz.geometry import Elbow, Straight, gap, meets, mesh, nearest_point, piece_bounds
from routeviz.model.scene import SectionShape, SectionSize
from routeviz.model.solids import Box, Cylinder, Prism

FLAT = SectionSize(SectionShape.RECT, 10.0, 3.25)
OVAL = SectionSize(SectionShape.OVAL, 10.0, 3.25)


def round_duct(diameter):
    return SectionSize(SectionShape.ROUND, diameter, diameter)


def random_box(rng, reach=40.0):
    lo = [rng.uniform(-reach, reach) for _ in range(3)]
    return Box(tuple(lo), tuple(v + rng.uniform(0.5, 30.0) for v in lo))


def random_rafter(rng):
    axis, pitch = rng.randrange(3), rng.uniform(-1.2, 1.2)
    u, z, run, depth = rng.uniform(-40, 40), rng.uniform(-40, 40), rng.uniform(5, 60), rng.uniform(3, 10)
    outline = ((u, z), (u + run, z + pitch * run), (u + run, z + pitch * run + depth), (u, z + depth))
    start = rng.uniform(-40, 40)
    return Prism(axis, start, start + 1.5, outline)


def random_unit(rng):
    v = np.array([rng.gauss(0, 1) for _ in range(3)])
    return tuple((v / np.linalg.norm(v)).tolist())


def test_axis_parallel_tube_and_box_have_a_closed_form():
    rng = random.Random(1)
    clear = 0
    for _ in range(400):
        box, axis, radius = random_box(rng), rng.randrange(3), rng.uniform(1, 6)
        start = [rng.uniform(-50, 50) for _ in range(3)]
        end = list(start)
        end[axis] += rng.uniform(1, 60)
        nearest = gap(Straight(tuple(start), tuple(end), round_duct(2 * radius)), box)
        found = nearest.gap_in
        along = max(0.0, box.lo[axis] - end[axis], start[axis] - box.hi[axis])
        flat = math.hypot(*(max(0.0, box.lo[i] - start[i], start[i] - box.hi[i]) for i in range(3) if i != axis))
        expected = math.hypot(along, max(0.0, flat - radius))
        if expected > 0:
            clear += 1
            assert found == pytest.approx(expected, abs=2e-9)
            assert math.dist(nearest.on_duct, nearest.on_solid) == pytest.approx(expected, abs=2e-9)
            assert all(lo - 1e-9 <= p <= hi + 1e-9 for lo, p, hi in zip(box.lo, nearest.on_solid, box.hi, strict=True))
            from_axis = math.hypot(*(nearest.on_duct[i] - start[i] for i in range(3) if i != axis))
            assert from_axis <= radius + 1e-9
            assert start[axis] - 1e-9 <= nearest.on_duct[axis] <= end[axis] + 1e-9
        else:
            assert found == pytest.approx(max(-radius, flat - radius) if along == 0 and flat else -radius, abs=1e-9)
    assert clear > 200


def _program(corners_a, corners_b):
    """Give the distance of two convex hulls by a quadratic program over corner weights (scipy's SLSQP)."""
    n, m = len(corners_a), len(corners_b)

    def apart(w):
        return w[:n] @ corners_a - w[n:] @ corners_b

    answer = minimize(
        lambda w: apart(w) @ apart(w),
        np.concatenate([np.full(n, 1 / n), np.full(m, 1 / m)]),
        jac=lambda w: 2 * np.concatenate([corners_a @ apart(w), -corners_b @ apart(w)]),
        bounds=[(0, 1)] * (n + m),
        constraints=[
            {"type": "eq", "fun": lambda w: w[:n].sum() - 1},
            {"type": "eq", "fun": lambda w: w[n:].sum() - 1},
        ],
        method="SLSQP",
        options={"ftol": 1e-15, "maxiter": 500},
    )
    return math.sqrt(max(answer.fun, 0.0))


def test_slanting_rectangular_duct_agrees_with_a_quadratic_program():
    rng = random.Random(2)
    for _ in range(40):
        shape = random_rafter(rng) if rng.random() < 0.6 else random_box(rng)
        direction = random_unit(rng)
        wide = np.cross(direction, random_unit(rng))
        wide /= np.linalg.norm(wide)
        start = np.array([rng.uniform(-50, 50) for _ in range(3)])
        end = start + np.array(direction) * rng.uniform(5, 40)
        narrow = np.cross(direction, wide)
        corners = np.array(
            [p + a * 5 * wide + b * 1.625 * narrow for p in (start, end) for a in (-1, 1) for b in (-1, 1)]
        )
        found = gap(Straight(tuple(start.tolist()), tuple(end.tolist()), FLAT, tuple(wide.tolist())), shape)
        expected = _program(corners, np.asarray(mesh(shape).vertices))
        # the program gives an upper bound; its own stopping rule leaves it some 1e-5 above the least
        assert expected - 2e-4 <= max(found.gap_in, 0.0) <= expected + 5e-9
        if found.gap_in > 0:
            assert math.dist(found.on_duct, found.on_solid) == pytest.approx(found.gap_in, abs=1e-9)


@pytest.mark.parametrize("section", [round_duct(8.0), OVAL])
def test_slanting_duct_is_never_nearer_nor_farther_than_manifold3d_says(section):
    manifold3d = pytest.importorskip("manifold3d")
    rng, clear = random.Random(3), 0
    sides = 720
    for _ in range(12):
        shape, direction = random_rafter(rng), np.array(random_unit(rng))
        wide = np.cross(direction, random_unit(rng))
        wide /= np.linalg.norm(wide)
        narrow = np.cross(direction, wide)
        start = np.array([rng.uniform(-40, 40) for _ in range(3)])
        end = start + direction * 30.0
        angles = np.linspace(0, 2 * np.pi, sides, endpoint=False)
        flat = (section.width_in - section.height_in) / 2
        u = section.height_in / 2 * np.cos(angles) + np.sign(np.cos(angles).round(12)) * flat
        v = section.height_in / 2 * np.sin(angles)
        ring = u[:, None] * wide + v[:, None] * narrow
        hull = manifold3d.Manifold.hull_points(np.concatenate([start + ring, end + ring]).astype(np.float32))
        body = mesh(shape)
        solid = manifold3d.Manifold(manifold3d.Mesh(body.vertices.astype(np.float32), body.faces.astype(np.uint32)))
        expected = hull.min_gap(solid, 500.0)
        piece = Straight(tuple(start.tolist()), tuple(end.tolist()), section, tuple(wide.tolist()))
        found = max(0.0, gap(piece, shape).gap_in)
        clear += found > 0
        assert found == pytest.approx(expected, abs=2e-4)  # 720 sides of a 4 in radius are 4e-5 in short; 32-bit floats
    assert clear > 5


def torus_distance(elbow, point):
    """Give the distance of a point to a round elbow from cylinder coordinates about its axis, ends clamped."""
    direction, turn = np.array(elbow.direction), np.array(elbow.turn_to)
    angle = math.acos(float(direction @ turn))
    inward = turn - math.cos(angle) * direction
    inward /= np.linalg.norm(inward)
    centre = np.array(elbow.start) + elbow.radius * inward
    away = np.array(point) - centre
    x, y, z = float(away @ -inward), float(away @ direction), float(away @ np.cross(inward, direction))
    theta, r = math.atan2(y, x), elbow.section.width_in / 2
    if 0 <= theta <= angle:
        return max(0.0, math.hypot(math.hypot(x, y) - elbow.radius, z) - r)
    best = math.inf
    for end in (0.0, angle):  # the flat disc at each end
        across = x * math.cos(end) + y * math.sin(end) - elbow.radius
        along = -x * math.sin(end) + y * math.cos(end)
        best = min(best, math.hypot(along, max(0.0, math.hypot(across, z) - r)))
    return best


def sampled(elbow, shape, count=13):
    """Give the least torus distance over a grid of points on the surface of a shape, with the grid's pitch."""
    body = mesh(shape)
    best, pitch = math.inf, 0.0
    for a, b, c in np.asarray(body.triangles):
        pitch = max(pitch, max(np.linalg.norm(b - a), np.linalg.norm(c - a)) / count)
        for i in range(count + 1):
            for j in range(count + 1 - i):
                best = min(best, torus_distance(elbow, a + (b - a) * i / count + (c - a) * j / count))
    return best, pitch


@pytest.mark.parametrize("turn", [(0.0, 1.0, 0.0), (math.sin(0.7), 0.0, math.cos(0.7))])
def test_round_elbow_is_the_torus_it_is(turn):
    rng, clear = random.Random(5), 0
    elbow = Elbow((0.0, 0.0, 0.0), (0.0, 0.0, 1.0), turn, 12.0, round_duct(8.0))
    for _ in range(25):
        lo = [rng.uniform(-16, 16) for _ in range(3)]
        box = Box(tuple(lo), tuple(v + rng.uniform(0.5, 6) for v in lo))
        found = gap(elbow, box)
        upper, pitch = sampled(elbow, box)
        assert found.gap_in <= upper + 1e-9
        if found.gap_in > 0:
            clear += 1
            # the nearest point lies on the box, and the closed form there gives the very distance
            assert math.dist(nearest_point(box, found.on_solid), found.on_solid) < 1e-9
            assert torus_distance(elbow, found.on_solid) == pytest.approx(found.gap_in, abs=1e-9)
            assert found.gap_in >= upper - pitch
    assert clear > 10


def test_inner_throat_of_an_elbow_leaves_the_two_straight_tubes():
    # centre-line radius R in a duct of radius r: at 45 degrees the throat stands (R - r) from the arc's centre, so a
    # post at the corner of both tubes' inner sides is sqrt(2)(R - r) - (R - r) = 0.4142 (R - r) inside the elbow
    elbow = Elbow((0.0, 0.0, 0.0), (0.0, 0.0, 1.0), (1.0, 0.0, 0.0), 12.0, round_duct(8.0))
    corner = Box((4.0, -1.0, 8.0 - 6.0), (12.0 - 4.0 + 2.0, 1.0, 8.0))
    found = gap(elbow, corner).gap_in
    assert found < 0
    clear = Box((12.0 - 1.0, -1.0, 0.0), (12.0 + 1.0, 1.0, 0.5))
    # the arc's centre is (12, 0, 0); the throat is 8 in from it; the post's corner (11, 0.5) is hypot(1, .5) from it
    assert gap(elbow, clear).gap_in == pytest.approx(8.0 - math.hypot(1.0, 0.5), abs=1e-9)


def test_rectangular_elbow_keeps_its_four_sides():
    elbow = Elbow((0.0, 0.0, 0.0), (0.0, 0.0, 1.0), (1.0, 0.0, 0.0), 5.0, FLAT, (0.0, 1.0, 0.0))
    # wide side across the bend: heel at 5 + 1.625 from the arc's centre (5, 0, 0), sides at y = 5
    beside = Box((-10.0, 6.0, -10.0), (20.0, 7.0, 20.0))
    assert gap(elbow, beside).gap_in == pytest.approx(1.0, abs=1e-9)
    at_heel = Box((-20.0, -1.0, 6.0), (-2.0, 1.0, 9.0))
    assert gap(elbow, at_heel).gap_in == pytest.approx(math.hypot(7.0, 6.0) - 6.625, abs=1e-7)
    hard = Elbow((0.0, 0.0, 0.0), (0.0, 0.0, 1.0), (1.0, 0.0, 0.0), 12.0, FLAT, (1.0, 0.0, 0.0))
    # wide side in the plane of the bend: the throat is 12 - 5 from the arc's centre (12, 0, 0)
    assert gap(hard, Box((11.0, -1.0, 0.0), (12.5, 1.0, 0.5))).gap_in == pytest.approx(
        7 - math.hypot(1.0, 0.5), abs=1e-7
    )


def test_overlap_says_how_far_a_joist_reaches_into_the_duct():
    joist = Box((61.25, -136.0, 96.0), (62.75, 6.0, 103.25))
    riser = Straight((66.0, -8.5, 70.0), (66.0, -8.5, 150.0), round_duct(8.0))
    assert gap(riser, joist).gap_in == pytest.approx(62.0 - 62.75)  # duct's left side at 62, joist's right at 62.75
    boxy = Straight((66.0, -8.5, 70.0), (66.0, -8.5, 150.0), FLAT, (1.0, 0.0, 0.0))
    assert gap(boxy, joist).gap_in == pytest.approx(61.0 - 62.75)
    through = Straight((62.0, -8.5, 70.0), (62.0, -8.5, 150.0), round_duct(8.0))
    assert gap(through, joist).gap_in == pytest.approx(-4.0)


def test_pipe_beside_pipe_is_centre_distance_less_both_radii():
    riser = Straight((0.0, 0.0, 0.0), (0.0, 0.0, 50.0), round_duct(8.0))
    assert gap(riser, Cylinder(2, 10.0, 90.0, (6.0, 8.0), 2.0)).gap_in == pytest.approx(10 - 4 - 2, abs=1e-9)
    # a pipe that crosses at right angles 9 in off
    assert gap(riser, Cylinder(0, -40.0, 40.0, (9.0, 25.0), 1.5)).gap_in == pytest.approx(9 - 4 - 1.5, abs=1e-9)


def test_touching_is_not_meeting():
    riser = Straight((0.0, 0.0, 0.0), (0.0, 0.0, 50.0), round_duct(8.0))
    post = Box((4.0, -1.0, 0.0), (6.0, 1.0, 50.0))
    assert not meets(riser, post)
    assert meets(riser, post, clearance=0.25)
    assert not meets(riser, Box((4.25, -1.0, 0.0), (6.0, 1.0, 50.0)), clearance=0.25)
    assert not meets(riser, Box((0.0, -1.0, 51.0), (6.0, 1.0, 60.0)), clearance=0.25)
    assert meets(riser, Box((3.99, -1.0, 0.0), (6.0, 1.0, 50.0)))


@pytest.mark.parametrize("section", [round_duct(6.0), FLAT, OVAL])
def test_bounds_hold_every_section_of_a_piece(section):
    rng = random.Random(9)
    for _ in range(20):
        direction = random_unit(rng)
        side = np.cross(direction, random_unit(rng))
        side = tuple((side / np.linalg.norm(side)).tolist())
        bend = rng.uniform(0.2, math.pi / 2)
        turn = tuple(math.cos(bend) * d + math.sin(bend) * s for d, s in zip(direction, side, strict=True))
        elbow = Elbow((1.0, 2.0, 3.0), direction, turn, 9.0, section, None if section.is_round else side)
        box = piece_bounds(elbow)
        outside = Box((box.hi[0], -60.0, -60.0), (box.hi[0] + 1.0, 60.0, 60.0))
        assert gap(elbow, outside).gap_in >= -1e-9


def test_one_elbow_between_axes_has_tight_bounds():
    box = piece_bounds(Elbow((0.0, 0.0, 0.0), (0.0, 0.0, 1.0), (1.0, 0.0, 0.0), 8.0, round_duct(8.0)))
    assert box.lo == pytest.approx((-4.0, -4.0, 0.0))
    assert box.hi == pytest.approx((8.0, 4.0, 12.0))
