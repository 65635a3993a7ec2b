"""How far a section reaches along each axis, and the rules that measure from its edges: flat ducts and side walls too."""

from __future__ import annotations

import math
from dataclasses import replace

import numpy as np
import pytest
import rulebench as bench
from hypothesis import given
from hypothesis import strategies as st
from scipy.spatial.transform import Rotation

from routeviz import rules
from routeviz.model.finding import Finding, State
from routeviz.model.route import Part, PartKind, Route
from routeviz.model.scene import Cover, OutdoorKind, SectionShape, SectionSize
from routeviz.model.solids import Box, Crossing, ExitFace, FaceKind, KeepOut, Solid, SolidKind, Vec3
from routeviz.rules.bench import duct, flat, joist, kitchen, look, meets, round_duct, straight_out, straight_up
from routeviz.rules.cuts import cut_of_part
from routeviz.rules.sections import half_along, half_sizes

UP: Vec3 = (0.0, 0.0, 1.0)
RIGHT: Vec3 = (1.0, 0.0, 0.0)
OUT: Vec3 = (0.0, 1.0, 0.0)


def rim(size: SectionSize) -> np.ndarray:
    """The outline of a section, in its own wide and narrow axes."""
    a, b = size.width_in / 2, size.height_in / 2
    if size.shape is SectionShape.RECT:
        return np.array([(u * a, v * b) for u in (-1, 1) for v in (-1, 1)])
    w = np.linspace(0, 2 * math.pi, 721)
    return np.column_stack([b * np.cos(w) + np.sign(np.cos(w)) * (a - b), b * np.sin(w)])


def vec(v: np.ndarray) -> Vec3:
    return float(v[0]), float(v[1]), float(v[2])


@given(
    st.sampled_from(list(SectionShape)), st.floats(3, 20), st.floats(0.2, 1.0), st.integers(0, 10**6),
    st.sampled_from([0.0, 22.5, 45.0, 90.0]), st.booleans(),
)  # fmt: skip
def test_half_sizes_are_those_of_the_turned_outline(
    shape: SectionShape, width: float, share: float, seed: int, angle: float, leaving: bool
) -> None:
    size = SectionSize(shape, width, width if shape is SectionShape.ROUND else width * share)
    wide, narrow, direction = (
        Rotation.from_quat(np.random.default_rng(seed).normal(size=4)).as_matrix().T
    )  # any duct, however it lies
    turn = Rotation.from_rotvec(math.radians(angle) * (0.6 * wide + 0.8 * narrow))
    part = Part("a", PartKind.ELBOW, (0.0, 0.0, 0.0), (1.0, 1.0, 1.0), vec(direction), vec(turn.apply(direction)), size,
                size, 9.0, angle, wide=vec(wide))  # fmt: skip
    points = rim(size) @ np.array([wide, narrow])
    wanted = np.abs(turn.apply(points) if leaving else points).max(axis=0)
    # the round rim is taken every half degree: its farthest point lies within r (1 - cos 0.25 deg) of the truth
    assert half_sizes(part, leaving=leaving) == pytest.approx(wanted, abs=20 * (1 - math.cos(math.radians(0.5))))


def test_a_section_that_nobody_turned_lies_level() -> None:
    size = flat(14.0, 3.25)
    assert half_sizes(duct(((0.0, 0.0, 0.0), (0.0, 0.0, 9.0)), section=size).parts[0]) == (7.0, 1.625, 0.0)
    assert half_sizes(duct(((0.0, 0.0, 0.0), (0.0, 9.0, 0.0)), section=size).parts[0]) == (7.0, 0.0, 1.625)
    assert half_sizes(duct(((0.0, 0.0, 0.0), (9.0, 0.0, 0.0)), section=size).parts[0]) == (0.0, 7.0, 1.625)


def turned(route: Route, wide: Vec3) -> Route:
    return replace(route, parts=tuple(replace(p, wide=wide) for p in route.parts))


@pytest.mark.parametrize(
    ("wide", "spare"),
    [
        (RIGHT, 12 / 2 - 14 / 2),  # the wide side along the wall: an inch over each side of a cover 12 in wide
        (OUT, 12 - 8 - 14 / 2),  # out from the wall: 8 in + 7 in of a cover 12 in deep
    ],
)
def test_a_flat_duct_wider_than_the_cover_does_not_fit(wide: Vec3, spare: float) -> None:
    plain = kitchen()
    scene = replace(plain, hood=replace(plain.hood, cover=Cover(12.0, 30.0, 12.0, 12.0)))
    route = turned(straight_up(section=flat(14.0, 3.25)), wide)
    found = bench.one_of(rules.check(look(scene, route=route)), "FIT-COVER-DUCT")
    assert (found.margin, found.state) == (spare, State.BROKEN)


# --- caps on any wall ---

FACES = {
    "hood": (1, 1, 6.5),
    "left": (0, -1, -6.5),
    "right": (0, 1, 126.5),
    "front": (1, -1, -126.5),
}


def beside(
    face: str, thing: KeepOut, *, at: float, up: float = 80.0, size: SectionSize | None = None
) -> tuple[Finding, ...]:
    """Judge a duct straight out through a wall, `at` along that wall, beside one outdoor thing."""
    axis, sign, plane = FACES[face]
    wall = ExitFace(f"face-{face}", f"the {face} wall", FaceKind.WALL, axis, sign, plane, (plane, 0.0, 0.0),
                    (-200.0, 0.0), (200.0, 110.0), (thing,))  # fmt: skip

    def point(away: float) -> Vec3:
        level = [0.0, 0.0, up]
        level[axis], level[1 - axis] = plane - sign * away, at
        return level[0], level[1], level[2]

    route = duct((point(6.5), point(0.0)), section=size or round_duct(8.0))
    route = replace(route, termination=replace(route.termination, face=wall.id))
    return rules.check(look(faces=(wall,), route=route))


@pytest.mark.parametrize("face", FACES)
def test_a_cap_right_over_a_walkway_is_over_it_on_every_wall(face: str) -> None:
    path = KeepOut("path", "path", OutdoorKind.WALKWAY.value, (-36.0, 0.0), (0.0, 1.0), 0.0)
    found = bench.one_of(beside(face, path, at=-8.75), "TRM-WALKWAY")
    assert found.measured == -8.75 - 4.0  # the cap's far edge would have to pass 0: 8 3/4 in and half of 8 in
    assert found.state is State.BROKEN


@pytest.mark.parametrize("face", FACES)
def test_a_cap_beside_a_walkway_is_measured_along_its_own_wall(face: str) -> None:
    path = KeepOut("path", "path", OutdoorKind.WALKWAY.value, (-90.0, 0.0), (-40.0, 1.0), 0.0)
    found = bench.one_of(beside(face, path, at=-8.75), "TRM-WALKWAY")
    assert found.measured == 40.0 - 8.75 - 4.0
    assert found.state is State.FINE


def test_a_walkway_on_a_roof_may_lie_on_either_side() -> None:
    path = KeepOut("deck", "deck", OutdoorKind.WALKWAY.value, (40.0, -90.0), (90.0, -30.0), 0.0)
    roof = ExitFace(
        "roof", "the roof", FaceKind.ROOF, 2, 1, 0.0, (150.0, 0.0, 0.0), (0.0, -120.0), (120.0, 0.0), (path,)
    )
    found = bench.one_of(rules.check(look(faces=(roof,), route=straight_up())), "TRM-WALKWAY")
    assert found.measured == 30.0 - 8.0 - 4.0  # the cap stands 8 in out from the wall, the deck begins 30 in out


@pytest.mark.parametrize("face", FACES)
def test_a_window_above_is_beside_a_flat_cap_by_its_wide_half(face: str) -> None:
    window = KeepOut("bed", "bed window", OutdoorKind.OPERABLE_WINDOW.value, (-80.0, 130.0), (-30.0, 170.0), 0.0)
    found = bench.one_of(beside(face, window, at=-8.75, size=flat(14.0, 3.25)), "TRM-ABOVE")
    assert found.measured == 30.0 - 8.75 - 7.0


@pytest.mark.parametrize("face", FACES)
def test_the_height_above_a_window_is_from_the_flat_cap_s_lower_edge(face: str) -> None:
    # a newer edition lets a cap stand near if it is high enough above: its lower edge counts, half of 3 1/4 in down
    intake = KeepOut("air", "air intake", OutdoorKind.MECHANICAL_INTAKE.value, (-20.0, 20.0), (0.0, 30.0), 0.0)
    found = bench.one_of(beside(face, intake, at=-8.75, size=flat(14.0, 3.25)), "TRM-INTAKE")
    assert found.measured == 80.0 - 1.625 - 30.0


# --- elbows, services and members ---


@pytest.mark.parametrize(("wide", "side"), [(RIGHT, 10.0), (OUT, 4.0)])
@pytest.mark.parametrize("angle", [22.5, 30.0, 45.0, 90.0])
def test_an_elbow_s_radius_is_counted_in_the_side_that_is_bent(angle: float, wide: Vec3, side: float) -> None:
    after = (math.sin(math.radians(angle)), 0.0, math.cos(math.radians(angle)))  # from up towards the right
    bend = Part("elbow-1", PartKind.ELBOW, (60.0, -8.0, 80.0), (62.0, -8.0, 86.0), UP, after, flat(10.0, 4.0),
                flat(10.0, 4.0), 9.0, angle, 10.0, (60.0, -8.0, 83.0), wide)  # fmt: skip
    route = straight_up(section=flat(10.0, 4.0))
    found = bench.one_of(rules.check(look(route=replace(route, parts=(bend, *route.parts)))), "ELB-TIGHT")
    assert found.measured == pytest.approx(10.0 / side)


@pytest.mark.parametrize(("wide", "reach"), [(RIGHT, 7.0), (UP, 1.625)])
def test_a_cable_reaches_into_a_flat_duct_by_the_half_that_it_must_leave_by(wide: Vec3, reach: float) -> None:
    # a cable up the whole wall can only be moved to one side
    cable = Solid("cable", SolidKind.SERVICE, "cable", Box((59.5, 0.5, 0.0), (60.5, 6.0, 96.0)), Crossing.RULE, "example",
                  material="cable")  # fmt: skip
    hole = meets(cable, OUT, (60.0, 3.0, 80.0), (14.0, 3.25))
    route = turned(straight_out(section=flat(14.0, 3.25), penetrations=(hole,)), wide)
    found = bench.one_of(rules.check(look(solids=(cable,), route=route)), "SVC-CLASH")
    assert found.measured == -reach


def test_a_flat_elbow_takes_out_of_a_joist_what_its_sides_reach() -> None:
    # up along x = 60, then right; the wide side of 14 in lies along y and stays there, 3 1/4 in lie in the turn
    bend = Part("elbow-1", PartKind.ELBOW, (60.0, -8.0, 90.0), (66.0, -8.0, 96.0), UP, RIGHT, flat(14.0, 3.25),
                flat(14.0, 3.25), 9.4, 90.0, 6.0, (60.0, -8.0, 96.0), OUT)  # fmt: skip
    assert half_along(bend, UP, leaving=True) == pytest.approx(1.625)
    cut = cut_of_part(joist(4, 60.0), bend)
    assert cut.box is not None
    assert cut.box.lo == pytest.approx((60.0 - 1.625, -15.0, 90.0))
    assert cut.box.hi == pytest.approx((66.0, -1.0, 96.0 + 1.625))
