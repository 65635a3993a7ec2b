"""Parts of a route against exact geometry."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest
import samples
from hypothesis import given, settings
from hypothesis import strategies as st

from routeviz import framing, routing
from routeviz.model.path import Bend, Centreline
from routeviz.model.route import PartKind
from routeviz.model.scene import AsBuilt, AsBuiltFitting, SectionShape, SectionSize
from routeviz.model.solids import Vec3
from routeviz.routing.vectors import along, unit

SCENE = samples.scene()
FRAME = framing.frame(SCENE)
START: Vec3 = (70.0, -8.5, 78.5)


def line(points: tuple[Vec3, ...], radius: float = 8.0, face: str = "face-hood", offset: int = 0) -> Centreline:
    bends = []
    for a, b, c in zip(points, points[1:], points[2:], strict=False):
        before = unit((b[0] - a[0], b[1] - a[1], b[2] - a[2]))
        after = unit((c[0] - b[0], c[1] - b[1], c[2] - b[2]))
        angle = math.degrees(math.acos(sum(p * q for p, q in zip(before, after, strict=True))))
        bends.append(Bend(b, angle, radius, 8.0, offset))
    length = sum(math.dist(a, b) for a, b in zip(points, points[1:], strict=False))
    return Centreline(
        points, tuple(bends), samples.ROUND_8, (None,) * (len(points) - 1), face, len(bends), length, 0.0, ()
    )


def test_take_off_of_45_and_90() -> None:
    # derived: R tan(t/2); R = 8: 3.3137 in at 45 deg, 8 in at 90 deg
    assert routing.take_off_in(8.0, 45.0) == pytest.approx(3.3137, abs=5e-5)
    assert routing.take_off_in(8.0, 90.0) == pytest.approx(8.0, abs=1e-12)


def test_one_elbow_out_the_back() -> None:
    route = routing.realise(line((START, (70.0, -8.5, 88.0), (70.0, 7.1875, 88.0))), SCENE, FRAME)
    kinds = [p.kind for p in route.parts]
    assert kinds == [PartKind.STRAIGHT, PartKind.ELBOW, PartKind.STRAIGHT, PartKind.CAP]
    assert [p.length_in for p in route.parts] == pytest.approx([1.5, 8 * math.pi / 2, 15.6875 - 8, 0.0])
    assert route.words == "Up, then back between studs 5 and 6, out through the wall behind"
    names = [p.solid.rsplit("-", 1)[0] for p in route.penetrations]
    assert names == ["hood-inside-1", "hood-outside-1", "hood-outside-2"]
    assert [p.through_in for p in route.penetrations] == pytest.approx([0.5, 0.4375, 0.75])
    gaps = {n.label: n.gap_in for n in route.near}
    assert gaps["stud 5"] == pytest.approx(70 - 65.5 - 4)  # stud 5 is centred at 64.75: its right face at 65.5
    assert gaps["stud 6"] == pytest.approx(80 - 70 - 4)  # stud 6 at 80.75


def test_plumb_duct_leaves_an_ellipse_in_the_roof() -> None:
    roof = next(f for f in FRAME.faces if f.id == "roof-back")
    top = roof.plane[0] + roof.plane[2] * -8.5
    route = routing.realise(line((START, (70.0, -8.5, top + 8)), face="roof-back"), SCENE, FRAME)
    deck = next(p for p in route.penetrations if p.solid == "roof-1-back")
    assert deck.shape == "ellipse"
    assert deck.size_in == pytest.approx((8.0, 8.0 * math.sqrt(1 + 0.25**2)))
    assert {n.label: n.gap_in for n in route.near}["joist 4"] == pytest.approx(3.25)


def test_a_transition_sits_on_the_collar_when_sections_differ() -> None:
    scene = samples.scene(hood=replace(SCENE.hood, outlet=replace(SCENE.hood.outlet, section=samples.ROUND_6)))
    route = routing.realise(line((START, (70.0, -8.5, 100.0), (70.0, 7.1875, 100.0))), scene, FRAME)
    first = route.parts[0]
    assert (first.kind, first.length_in, first.section, first.section_out) == (
        PartKind.TRANSITION, scene.duct.transition_in, samples.ROUND_6, samples.ROUND_8,
    )  # fmt: skip


def test_an_elbow_that_does_not_fit_is_refused() -> None:
    with pytest.raises(ValueError, match="does not fit"):
        routing.realise(line((START, (70.0, -8.5, 82.0), (70.0, 7.1875, 82.0))), SCENE, FRAME)


@settings(max_examples=60, deadline=None)
@given(
    st.lists(st.tuples(st.sampled_from(range(6)), st.floats(20, 60)), min_size=1, max_size=5),
    st.floats(3, 9),
)
def test_parts_join_end_to_end_and_add_up(moves: list[tuple[int, float]], radius: float) -> None:
    directions = (
        (1.0, 0.0, 0.0),
        (-1.0, 0.0, 0.0),
        (0.0, 1.0, 0.0),
        (0.0, -1.0, 0.0),
        (0.0, 0.0, 1.0),
        (0.0, 0.0, -1.0),
    )
    points: list[Vec3] = [START]
    axis = -1
    for which, length in moves:
        if which // 2 == axis:
            continue
        axis = which // 2
        points.append(along(points[-1], directions[which], length))
    route = routing.realise(line(tuple(points), radius), SCENE, FRAME)
    at = points[0]
    for part in route.parts:
        assert math.dist(part.start, at) < 1e-9
        at = part.end
    assert math.dist(at, points[-1]) < 1e-9
    bends = len(points) - 2
    square = sum(math.dist(a, b) for a, b in zip(points, points[1:], strict=False))
    assert route.length_in == pytest.approx(square - bends * (2 * radius - radius * math.pi / 2))


def fittings(*rows: AsBuiltFitting) -> AsBuilt:
    return AsBuilt(rows, "galvanized steel")


def test_as_built_back_to_back_elbows_and_an_end_in_the_attic() -> None:
    built = fittings(
        AsBuiltFitting("straight", 10.0),
        AsBuiltFitting("elbow", angle_deg=90.0, turn="left"),
        AsBuiltFitting("elbow", angle_deg=90.0, turn="up"),
        AsBuiltFitting("flex", 6.0),
        AsBuiltFitting("open end"),
    )
    route = routing.realise_as_built(samples.scene(as_built=built), FRAME)
    assert route.straights_between_in == pytest.approx((0.0,))
    assert route.elbows == pytest.approx(2.0)
    assert route.termination.kind is None
    assert route.termination.space == "attic"
    assert route.parts[-1].start == pytest.approx((54.0, -8.5, 78.5 + 10 + 8 + 8 + 6))


def test_as_built_offset_shifts_by_what_is_said() -> None:
    # d = 2R(1 - cos t) + L sin t; with R = 8, t = 45 deg and a shift of 21.657 in the straight between is 24 in
    shift = 2 * 8 * (1 - math.sqrt(0.5)) + 24 * math.sqrt(0.5)
    built = fittings(
        AsBuiltFitting("offset", shift, 45.0, "right"), AsBuiltFitting("straight", 30.0), AsBuiltFitting("cap")
    )
    route = routing.realise_as_built(samples.scene(as_built=built), FRAME)
    straight = next(p for p in route.parts if p.kind is PartKind.STRAIGHT)
    assert straight.length_in == pytest.approx(24.0)
    assert route.parts[-1].start[0] == pytest.approx(70.0 + shift)
    assert route.elbows == pytest.approx(1.0)
    assert route.straights_between_in == ()


def test_as_built_flat_duct_turns_its_wide_side_with_the_elbow() -> None:
    """3 1/4 x 10 in: up with the wide side along the wall, right on edge (radius 10), then back on the flat (3 1/4)."""
    flat = SectionSize(SectionShape.RECT, 10.0, 3.25)
    plain = samples.scene()
    hood = replace(plain.hood, outlet=replace(plain.hood.outlet, section=flat))
    fittings = (AsBuiltFitting("straight", 10.0), AsBuiltFitting("elbow", turn="right"), AsBuiltFitting("straight", 10.0),
                AsBuiltFitting("elbow", turn="back"), AsBuiltFitting("straight", 10.0))  # fmt: skip
    scene = replace(plain, hood=hood, as_built=AsBuilt(fittings))
    parts = {p.id: p for p in routing.realise_as_built(scene, framing.frame(scene)).parts}
    assert parts["straight-1"].wide == (1.0, 0.0, 0.0)
    assert parts["elbow-2"].radius_in == 10.0
    assert parts["straight-3"].wide == pytest.approx((0.0, 0.0, -1.0))
    assert parts["elbow-4"].radius_in == 3.25
    assert parts["straight-5"].wide == pytest.approx((0.0, 0.0, -1.0))
