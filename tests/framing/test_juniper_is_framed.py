"""The sample kitchen framed: positions worked out by hand from its tape measures.

Hood wall 144 in long: 1/2 board, 5 1/2 studs, 7/16 sheathing, 3/4 siding: outer face at 7 3/16. Left wall: an inner
partition 1/2 + 3 1/2 + 1/2 = 4 1/2. Ceiling 96 + 5/8 board, 2x8 joists. Dressed sizes: PS 20.
"""

from __future__ import annotations

from dataclasses import replace

import pytest
import samples

from routeviz.catalog import table
from routeviz.framing import frame
from routeviz.geometry import bounds, contains
from routeviz.model.scene import Opening, OpeningKind, RunDirection, WallSide
from routeviz.model.solids import Box, Crossing, Solid, SolidKind


@pytest.fixture(scope="module")
def framed():
    return frame(samples.scene())


def ids(solids, start: str) -> list[str]:
    return [s.id for s in solids if s.id.startswith(start)]


def lo_hi(solid: Solid, axis: int) -> tuple[float, float]:
    box = bounds(solid.shape)
    return box.lo[axis], box.hi[axis]


def test_studs_stand_at_sixteen_inches_from_the_first_one(framed):
    # centres 3/4, 16 3/4, 32 3/4, ...; 112 3/4 and 128 3/4 fall into the window
    centres = {
        s.member.number: sum(lo_hi(s, 0)) / 2 for s in framed.solids if s.id.startswith("hood-stud-") and s.member
    }
    expected = {n: 0.75 + 16 * (n - 1) for n in (1, 2, 3, 4, 5, 6, 7, 10)}
    assert {n: centres[n] for n in expected} == expected
    assert 8 not in centres
    assert 9 not in centres
    # the frame of the hood wall ends at the outer side of the right wall's studs, 144 + 1/2 + 5 1/2 = 150
    assert lo_hi(framed.solid("hood-stud-11"), 0) == (148.5, 150.0)


def test_stud_labels_are_short_on_the_hood_wall_and_named_elsewhere(framed):
    assert framed.solid("hood-stud-5").label == "stud 5"
    assert framed.solid("left-stud-3").label == "left wall stud 3"
    assert framed.solid("hood-stud-5").member.nominal == "2x6"
    assert framed.solid("hood-stud-5").side is WallSide.HOOD


def test_members_have_dressed_sizes(framed):
    dressed = table("timber")["dressed"]
    stud, joist, rafter = framed.solid("hood-stud-5"), framed.solid("joist-4"), framed.solid("rafter-4-back")
    assert lo_hi(stud, 0)[1] - lo_hi(stud, 0)[0] == dressed["2"]
    assert lo_hi(stud, 1)[1] - lo_hi(stud, 1)[0] == dressed["6"]
    assert lo_hi(joist, 0)[1] - lo_hi(joist, 0)[0] == dressed["2"]
    assert lo_hi(joist, 2)[1] - lo_hi(joist, 2)[0] == dressed["8"]
    assert rafter.member.depth_in == dressed["6"]


def test_plates_lie_under_and_over_the_studs(framed):
    bottom, top = framed.solid("hood-plate-bottom"), framed.solid("hood-plate-top-2")
    stud = framed.solid("hood-stud-5")
    assert lo_hi(bottom, 2) == (0.0, 1.5)
    assert lo_hi(top, 2) == (95.125, 96.625)  # the joists bear on it, 5/8 board above the finished ceiling
    assert lo_hi(framed.solid("hood-plate-top-1"), 2) == (93.625, 95.125)
    assert lo_hi(stud, 2) == (1.5, 93.625)
    assert {s.crossing for s in framed.solids if s.kind is SolidKind.PLATE} == {Crossing.RULE}


def test_layers_of_the_hood_wall_are_in_order_from_the_room(framed):
    assert lo_hi(framed.solid("hood-inside-1-1"), 1) == (0.0, 0.5)
    assert lo_hi(framed.solid("hood-stud-5"), 1) == (0.5, 6.0)
    assert lo_hi(framed.solid("hood-outside-1-1"), 1) == (6.0, 6.4375)
    assert lo_hi(framed.solid("hood-outside-2-1"), 1) == (6.4375, 7.1875)
    kinds = [framed.solid(f"hood-{k}-1").kind for k in ("inside-1", "outside-1", "outside-2")]
    assert kinds == [SolidKind.BOARD, SolidKind.SHEATHING, SolidKind.CLADDING]
    assert not framed.solid("hood-inside-1-1").combustible
    assert framed.solid("hood-outside-2-1").combustible


def test_window_is_framed_and_its_layers_are_cut_out(framed):
    jack, king = framed.solid("hood-sink-window-jack-1"), framed.solid("hood-sink-window-king-1")
    header, sill = framed.solid("hood-sink-window-header"), framed.solid("hood-sink-window-sill")
    assert lo_hi(jack, 0) == (110.5, 112.0)
    assert lo_hi(king, 0) == (109.0, 110.5)
    assert lo_hi(header, 0) == (110.5, 141.5)  # bears on both jacks
    assert lo_hi(header, 2)[0] == 80.0  # 44 sill + 36 high
    assert lo_hi(sill, 2) == (42.5, 44.0)
    assert ids(framed.solids, "hood-sink-window-cripple") == [
        "hood-sink-window-cripple-8-above", "hood-sink-window-cripple-8",
        "hood-sink-window-cripple-9-above", "hood-sink-window-cripple-9",
    ]  # fmt: skip
    middle = (126.0, 0.25, 62.0)
    sheets = [s for s in framed.solids if s.kind in (SolidKind.BOARD, SolidKind.SHEATHING, SolidKind.CLADDING)]
    assert not any(contains(s.shape, middle, tolerance_in=0.0) for s in sheets)
    assert framed.solid("hood-sink-window").crossing is Crossing.NEVER


def test_joists_run_out_at_sixteen_inches_from_fourteen(framed):
    joists = [s for s in framed.solids if s.kind is SolidKind.JOIST]
    assert [sum(lo_hi(j, 0)) / 2 for j in joists] == [14.0 + 16 * n for n in range(9)]
    assert lo_hi(joists[3], 2) == (96.625, 103.875)
    # from the far side of the front wall's studs to the rim: -(132 + 1/2 + 3 1/2) to 6 - 1 1/2
    assert lo_hi(joists[3], 1) == (-136.0, 4.5)
    assert joists[3].member.axis == 1
    assert lo_hi(framed.solid("rim-hood"), 1) == (4.5, 6.0)


def test_nothing_of_the_joists_reaches_into_the_kitchen(framed):
    room = Box((0.01, -131.99, 0.01), (143.99, -0.01, 95.99))
    members = [solid for solid in framed.solids if solid.member is not None]
    assert len([solid for solid in members if solid.kind is SolidKind.JOIST]) == 9  # 14 + 16 k up to 142 in of 144
    for solid in members:
        box = bounds(solid.shape)
        assert any(box.lo[i] >= room.hi[i] or box.hi[i] <= room.lo[i] for i in range(3)), solid.id


def test_rafters_rise_from_the_eave_line_at_three_in_twelve(framed):
    rafter = framed.solid("rafter-4-back")
    heights = dict(rafter.shape.outline[:2])
    (tail, low), (peak, high) = sorted(heights.items(), reverse=True)
    assert (high - low) / (tail - peak) == pytest.approx(0.25)
    # the underside meets the joists' top, 96 5/8 + 7 1/4, over the outer face of the studs at y = 6
    assert low + 0.25 * (tail - 6.0) == pytest.approx(103.875)
    assert tail == 6.0 + 16.0  # the overhang counts from the core
    # vertical depth of a 2x6 at 3/12: 5 1/2 x sqrt(1 + (1/4)^2) = 5.669...
    plumb = rafter.shape.outline[3][1] - rafter.shape.outline[0][1]
    assert plumb == pytest.approx(5.5 * (1 + 0.25**2) ** 0.5)


def test_left_of_the_scene_is_left_in_the_frame():
    near_left = Opening("small-window", OpeningKind.WINDOW, True, 6.0, 44.0, 20.0, 30.0)
    scene = samples.scene(walls=(samples.wall(WallSide.HOOD, openings=(near_left,)), *samples.scene().walls[1:]))
    framed = frame(replace(scene, hood=replace(scene.hood, centre_in=40.0)))
    glass, hood = bounds(framed.solid("hood-small-window").shape), bounds(framed.solid("hood-canopy").shape)
    left, right = bounds(framed.solid("left-stud-1").shape), bounds(framed.solid("right-stud-1").shape)
    assert left.hi[0] <= glass.lo[0] < glass.hi[0] < hood.hi[0] < right.lo[0]
    # x to the right, y away through the wall, z up is right-handed: x cross y points up
    front = bounds(framed.solid("front-stud-1").shape)
    assert front.hi[1] < hood.lo[1] < hood.hi[1] <= glass.lo[1]
    floor, joist = bounds(framed.solid("floor").shape), bounds(framed.solid("joist-1").shape)
    assert floor.hi[2] < hood.lo[2] < joist.lo[2]


def test_side_wall_measures_count_out_from_the_hood_wall():
    door = Opening("side-door", OpeningKind.DOOR, True, 90.0, 0.0, 32.0, 80.0)
    walls = samples.scene().walls
    framed = frame(samples.scene(walls=(*walls[:2], samples.wall(WallSide.RIGHT, openings=(door,)), walls[3])))
    leaf = bounds(framed.solid("right-side-door").shape)
    assert (leaf.lo[1], leaf.hi[1]) == (-122.0, -90.0)
    plates = sorted(lo_hi(framed.solid(i), 1) for i in ids(framed.solids, "right-plate-bottom"))
    assert plates == [(-132.5, -122.0), (-90.0, 0.5)]  # no plate across the door


def test_joists_along_the_wall_are_numbered_from_the_hood_wall():
    ceiling = samples.scene().ceiling
    joists = replace(ceiling.joists, direction=RunDirection.ALONG, first_in=12.0, doubled=(2,), missing=(4,))
    framed = frame(samples.scene(ceiling=replace(ceiling, joists=joists)))
    assert lo_hi(framed.solid("joist-1"), 1) == (-12.75, -11.25)
    assert lo_hi(framed.solid("joist-2"), 1) == (-29.5, -26.5)  # two plies, 3 in
    assert framed.solid("joist-2").member.plies == 2
    assert lo_hi(framed.solid("joist-3"), 1) == (-44.75, -43.25)
    assert "joist-4" not in ids(framed.solids, "joist-")
    assert lo_hi(framed.solid("joist-5"), 1) == (-76.75, -75.25)
    # from the far side of the left partition's studs to the rim on the right wall
    assert lo_hi(framed.solid("joist-1"), 0) == (-4.0, 148.5)


def test_measured_centres_replace_the_even_layout():
    ceiling = samples.scene().ceiling
    joists = replace(ceiling.joists, at_in=(15.0, 29.5, 47.0))
    framed = frame(samples.scene(ceiling=replace(ceiling, joists=joists)))
    centres = [sum(lo_hi(s, 0)) / 2 for s in framed.solids if s.kind is SolidKind.JOIST]
    assert centres == [15.0, 29.5, 47.0]
