"""What is written into the packet's pictures: large enough on paper, where it can be seen, and off one another."""

from __future__ import annotations

import math
from dataclasses import replace
from pathlib import Path

import numpy as np
import pytest
import view_plans
from PIL import Image

from routeviz import pipeline
from routeviz.cli import packet as command
from routeviz.cli.scenes import load_scene
from routeviz.drawings import paper_named, picture_room
from routeviz.geometry import bounds
from routeviz.model.finding import State
from routeviz.model.route import Near
from routeviz.views import pen, still
from routeviz.views.caps import cap_pieces
from routeviz.views.marks import notes, place_of, places_on, slack_dimensions
from routeviz.views.parts import Dimension, MemberNumber
from routeviz.views.rendering import Shot
from routeviz.views.stage import build
from routeviz.views.stillmarks import Marks
from routeviz.views.viewpoints import Camera, camera, project
from routeviz.views.words import route_title

SCENES = Path(__file__).parents[2] / "scenes"


def planned(name):
    return pipeline.plan(load_scene(SCENES / f"{name}.toml"), alternatives=1)


@pytest.mark.parametrize("paper", ["letter", "a4", "tabloid", "a3"])
def test_nothing_in_a_packets_picture_is_smaller_than_seven_points(paper):
    """A point is 1/72 in; the picture is as wide as the sheet leaves room."""
    wide, _ = picture_room(paper_named(paper))
    points = pen.LEAST_PX * wide / command._PICTURE_PX / 25.4 * 72
    assert points >= 7.0
    assert min(still._TITLE_PX, still._TEXT_PX) >= pen.LEAST_PX


def marks(depth=np.inf):
    """A camera 100 in off that sees 100 tan 20 = 36.4 in up and down, before an empty or a walled picture."""
    view = Camera((0.0, -100.0, 0.0), (0.0, 0.0, 0.0), 40.0)
    shot = Shot(np.zeros((100, 160, 3), np.uint8), np.full((100, 160), depth))
    sheet = pen.Sheet(Image.new("RGB", (1600, 1000)), 1)
    return Marks(sheet, view, shot, (1600, 1000), (120.0, 960.0))


def test_a_distance_that_something_hides_is_not_drawn():
    """The distance lies 100 in off; a wall at 90 in hides it, one at 99 in is the thing itself."""
    size = Dimension((-6.0, 0.0, 0.0), (6.0, 0.0, 0.0), "12 in", frozenset({"along"}))
    for depth, drawn in ((np.inf, True), (99.0, True), (90.0, False)):
        made = marks(depth)
        made.dimensions([size])
        assert bool(made.taken) is drawn


def test_a_distance_seen_from_its_end_is_not_drawn():
    """The eye looks along y from 100 in off. A line 30 degrees off that way has half its length across the sight,
    one 60 degrees off has 0.87 of it: only where 0.6 is left does a line seem to measure what it measures.
    """
    for degrees, drawn in ((90, True), (60, True), (30, False), (10, False)):
        x, y = 6 * math.sin(math.radians(degrees)), 6 * math.cos(math.radians(degrees))
        made = marks()
        made.dimensions([Dimension((-x, -y, 0.0), (x, y, 0.0), "12 in", frozenset())])
        assert bool(made.taken) is drawn, degrees


def test_numbers_come_before_figures_and_both_are_foreseen_where_they_stand():
    """The number stands on the line of the distance: it is kept, and the card alone says the distance."""
    number = MemberNumber("5", (0.0, 0.0, 0.0), "joist-5", "J", (), 4.0, 0.0)
    size = Dimension((-6.0, 0.0, 0.0), (6.0, 0.0, 0.0), "12 in", frozenset())
    made = marks()
    assert made.numbers([number], frozenset()) == {"J"}
    made.dimensions([size])
    assert len(made.figures) == 1
    assert marks().foresee([number], [size]) == made.figures
    beside = replace(size, start=(10.0, 0.0, 0.0), end=(22.0, 0.0, 0.0))
    assert len(marks().foresee([number], [beside])) == 2


def test_a_number_makes_way_for_a_leaders_dot():
    """Written about (800, 540) it would cover a dot at (808, 540); it stands aside, no farther than 18 px."""
    number = MemberNumber("5", (0.0, 0.5, -1.5), "joist-5", "J", (), 4.0, 40.0)
    made = marks()
    made.numbers([number], frozenset(), [(808.0, 540.0)])
    ((left, top, right, bottom),) = made.figures
    assert top < 540.0 < bottom
    assert right < 803.0
    assert 800.0 - 18.0 <= (left + right) / 2 < 800.0


def test_a_part_is_flagged_on_its_skin_where_its_own_place_is_hidden():
    """Flex from y = -14.5 to -74.5 on the axis x = 64, z = 111.5, 6 in round: the finding's place is its start on the axis.

    The places on its skin lie 0.98 x 3 in off that axis, so that a leader ends on it.
    """
    places = np.array(places_on(planned("as_built_flex_in_attic"), ("flex-3",)))
    assert len(places) >= 10
    assert np.hypot(places[:, 0] - 64.0, places[:, 2] - 111.5) == pytest.approx(2.94)
    assert places[:, 1].min() > -74.5
    assert places[:, 1].max() < -14.5
    assert places[0, 1] == pytest.approx(-44.5)


def test_places_beside_an_elbow_follow_its_arc_and_those_of_a_reducer_its_slope():
    """The arc goes round y = -2.5, z = 85.5 with 6 in; the reducer from 8 in to 6 in is 7 in wide halfway up at 82.5."""
    plan = planned("big_fan_small_duct")
    elbow = np.array(places_on(plan, ("elbow-1",)))
    beside = elbow[np.abs(np.abs(elbow[:, 0] - 56.75) - 2.94) < 1e-6]
    assert len(beside) == 10
    assert np.hypot(beside[:, 1] + 2.5, beside[:, 2] - 85.5) == pytest.approx(6.0)
    front = places_on(plan, ("transition-1",))[0]
    assert front == pytest.approx((56.75, -8.5 - 0.98 * 3.5, 82.5))


def test_a_broken_part_in_full_view_has_a_leader():
    """Its place is 40 in behind a wall 90 in off; a place on its skin is on that wall. Another is under a board."""
    view = Camera((0.0, -100.0, 0.0), (0.0, 0.0, 0.0), 40.0)
    shot = Shot(np.zeros((100, 160, 3), np.uint8), np.full((100, 160), 90.0))
    sheet = pen.Sheet(Image.new("RGB", (1600, 1000)), 1)
    hidden, covered, seen = (0.0, 30.0, 0.0), (5.0, -8.0, 0.0), (5.0, -9.5, 0.0)

    def anchors(*skin):
        label = still.Label(("flex",), (), (hidden,), 3, State.BROKEN, skin)
        return [t.anchor for t in still._tags(sheet, [label], view, shot, "room", (1600, 1000))]

    assert anchors() == [None]
    assert anchors(covered) == [None]
    (at,) = anchors(covered, seen)
    assert at is not None
    # 5 in right at 90.5 in off, of 90.5 tan 20 = 32.94 in to the upper edge, 500 px
    assert at == pytest.approx((800 + 5 / (90.5 * math.tan(math.radians(20))) * 500, 500.0))


def test_a_leader_ends_beside_a_number_where_it_can():
    view = Camera((0.0, -100.0, 0.0), (0.0, 0.0, 0.0), 40.0)
    shot = Shot(np.zeros((100, 160, 3), np.uint8), np.full((100, 160), np.inf))
    sheet = pen.Sheet(Image.new("RGB", (1600, 1000)), 1)
    label = still.Label(("clear",), (), ((0.0, 0.0, 0.0),), on_skin=((5.0, 0.0, 0.0),))
    number = (785.0, 489.0, 815.0, 511.0)
    for off, x in (((), 0.0), ((number,), 5.0)):
        (tag,) = still._tags(sheet, [label], view, shot, "room", (1600, 1000), off)
        assert tag.anchor == pytest.approx((800 + x / (100 * math.tan(math.radians(20))) * 500, 500.0))


@pytest.mark.parametrize(
    ("scene", "words"),
    [
        ("side_wall_storey_above", "of joists 1 and 2"),
        ("cathedral_roof", "of rafters 1 and 2, left slope"),
        ("truss_in_front", "of truss 1 bottom chord, and of truss 1 top chord, left slope"),
    ],
)
def test_a_card_names_the_members_that_a_duct_keeps_off(scene, words):
    assert words in {n.text for n in notes(planned(scene))}


def test_the_zone_without_caps_is_a_film_on_the_wall_with_its_name():
    """The skin's face is at 7 3/16 in; the sink window begins at 100 in, 36 in are kept: the film ends at 64 in.

    The cap's edge is at 56 3/4 + 3 in; seen from anywhere before the wall, a film 1/8 in over it covers none of it.
    """
    plan = planned("rear_outlet_straight_back")
    stage = build(plan)
    low, high = stage.piece("zone-hood-sink-window").mesh.bounds
    assert low[0] == pytest.approx(64.0)
    assert 7.1875 < low[1] < high[1] < 7.1875 + 0.15
    (note,) = [n for n in stage.notes if n.title == "No cap within 36 in"]
    assert note.text == "of the sink window"
    assert note.views == {"outside"}
    for x, y, z in note.anchors:
        assert y == pytest.approx(high[1])
        assert 64.0 < x < 100.0
        assert low[2] < z < high[2]
    view = camera(plan, stage.cut, "outside", aspect=1.6)
    seen = project(view, np.array(note.anchors), 1.6)
    assert ((seen[:, :2] > 0.05) & (seen[:, :2] < 0.95)).all(axis=1).any()


def test_the_foot_explains_only_the_letters_that_were_written(monkeypatch):
    stage = build(planned("furring_strip_brick"))
    sheet = pen.Sheet(Image.new("RGB", (1640, 1000)), 1)
    said = []
    monkeypatch.setattr(sheet, "write", lambda x, y, words, *a, **k: said.append(words))
    for kinds, key in (("JF", "Numbers: J joist, F furring strip"), ("S", "Numbers: S stud"), ("", "")):
        said.clear()
        still._foot(sheet, stage, "room", frozenset(kinds), (1640, 1000))
        assert said == ["Quince Street kitchen (invented), the whole room", key, still._CAUTION]


def test_flags_keep_in_the_picture_off_figures_and_off_one_another():
    made = marks()
    made.dimensions([Dimension((-6.0, 0.0, 0.0), (6.0, 0.0, 0.0), "12 in", frozenset())])
    before = len(made.taken)
    feet = [
        (800.0, 530.0, 1, State.BROKEN),
        (800.0, 530.0, 2, State.BROKEN),
        (806.0, 533.0, 3, State.CLOSE),
        (500.0, 130.0, 4, State.BROKEN),
    ]
    made.flags(feet)
    cloths = made.taken[before:]
    assert len(cloths) == 4
    for n, a in enumerate(cloths[:3]):
        for b in [*made.taken[:before], *cloths[n + 1 :]]:
            assert not (a[0] < b[2] and b[0] < a[2] and a[1] < b[3] and b[1] < a[3])
    assert all(c[1] > 120.0 for c in cloths[:3])


def test_a_studs_number_is_written_where_the_stud_is_bared():
    """A stud's face 100 in off is seen by itself, not through a board half an inch before it."""
    number = MemberNumber("4", (0.0, 0.0, 0.0), "stud-4", "S", (), 0.3, 0.0)
    for depth, shown in ((100.0, True), (99.5, False)):
        made = marks(depth)
        made.numbers([number], frozenset())
        assert bool(made.taken) is shown


def test_studs_and_joists_are_told_apart_in_a_picture():
    stage = build(planned("stud_dead_centre"))
    assert {n.kind for n in stage.numbers} == {"J"}
    assert {n.kind for n in stage.studs} == {"S"}
    assert "4" in {n.text for n in stage.studs if n.solid in stage.broken}


def test_only_gaps_straight_beside_the_duct_are_dimensioned():
    """Of a riser: beside it yes; behind it, slanting, and along it no."""
    plan = view_plans.plan()
    route = plan.best.route
    part = next(p for p in route.parts if abs(p.direction[2]) > 0.9 and p.length_in > 10)
    member = next(s for s in plan.frame.solids if s.member is not None)
    middle = tuple((a + b) / 2 for a, b in zip(part.start, part.end, strict=True))
    ways = {"beside": (1.0, 0.0, 0.0), "behind": (0.0, 1.0, 0.0), "slanting": (0.8, 0.6, 0.0), "along": (0.0, 0.0, 1.0)}
    for words, toward in ways.items():
        near = Near(member.id, member.label, 3.25, toward, middle, part.id)
        only = replace(plan.best, route=replace(route, near=(near,)))
        found = slack_dimensions(replace(plan, options=(only,)))
        assert len(found) == (1 if words == "beside" else 0)


def test_a_thing_in_the_room_is_flagged_on_the_side_that_is_seen():
    plan = planned("gas_low_cabinets")
    place = place_of(plan, ("hood-canopy",), None)
    assert place is not None
    assert place[1] == pytest.approx(bounds(plan.frame.solid("hood-canopy").shape).lo[1])


def test_a_flashings_cone_follows_the_roofs_slope():
    """On a roof that rises 12 in 12 every point of the cone's foot lies a tenth of an inch over the covering."""
    plan = planned("cathedral_roof")
    route = plan.best.route
    face = next(f for f in plan.frame.faces if f.id == route.termination.face)
    cone = cap_pieces(plan, route)[1].mesh
    over = (
        cone.vertices[:, 2] - face.plane[0] - cone.vertices[:, 0] * face.plane[1] - cone.vertices[:, 1] * face.plane[2]
    )
    assert abs(face.plane[1]) + abs(face.plane[2]) == pytest.approx(1.0)
    assert over.min() == pytest.approx(0.1, abs=1e-6)
    assert (np.abs(over - 0.1) < 1e-6).sum() >= 48
    assert cone.is_watertight


def test_an_offset_is_called_what_is_bought_for_it():
    assert route_title(planned("truss_in_front").best.route, metric=False) == "6 in round, one offset (two 30° elbows)"
    assert route_title(planned("big_fan_small_duct").best.route, metric=False) == "6 in round, one elbow"
    assert route_title(planned("juniper_straight_up").best.route, metric=False) == "8 in round, no elbow"


def test_a_blocked_rear_outlet_is_looked_at_where_its_way_is():
    """From outdoors with the skin away, as for a duct that runs straight back; stud 4 and the outlet are in the picture."""
    plan = planned("stud_dead_centre")
    assert command._second_view(plan)[0] == "along"
    stage = build(plan)
    view = camera(plan, stage.cut, "along", aspect=1.6)
    assert view.eye[1] > plan.scene.walls[0].thickness_in
    x, z = plan.scene.hood.centre_in, plan.scene.hood_bottom_in + plan.scene.hood.outlet.up_in
    seen = project(view, np.array([[x, 2.0, z]]), 1.6)[0]
    assert 0.2 < seen[0] < 0.8
    assert 0.2 < seen[1] < 0.8


def test_under_a_slope_the_ceilings_view_frames_the_hole_and_the_room_its_ridge():
    """The hole lies at the ceiling over the hood, 198 in up where the walls are lower; the ridge is the roof's highest line."""
    plan = planned("cathedral_roof")
    stage = build(plan)
    hole = plan.best.takeoff.holes[0].centre
    seen = project(camera(plan, stage.cut, "ceiling", aspect=1.6), np.array([hole]), 1.6)[0]
    assert 0.2 < seen[0] < 0.8
    assert 0.1 < seen[1] < 0.9
    ridge = max(
        p.mesh.bounds[1][2]
        for p in stage.pieces
        if p.solid and plan.frame.solid(p.solid).kind.value in ("rafter", "ridge board", "ridge")
    )
    at = project(
        camera(plan, stage.cut, "room", aspect=1.6), np.array([[plan.scene.roof.ridge_at_in, -6.0, ridge]]), 1.6
    )[0]
    assert 0.0 < at[1] < 1.0


def test_the_house_has_no_corner_where_another_room_lies_beside_the_kitchen():
    """The left wall, 4 1/2 in thick, is shared with a room: the skin goes on past it as the same sheet, ending torn."""
    stage = build(planned("rear_outlet_straight_back"))
    left = stage.piece("skin-past-left")
    (x0, y0, z0), (x1, y1, z1) = left.mesh.bounds
    assert x1 == pytest.approx(-4.5)
    assert x0 == pytest.approx(-4.5 - 72.0, abs=2.0)
    assert (y0, y1, z0, z1) == pytest.approx((6.4375, 7.1875, 0.0, 106.625))
    assert left.layer.value == "house outside"
    assert left.mesh.is_watertight
    alone = build(planned("juniper_straight_up"))
    beyond = {w.side.value: w.beyond for w in alone.plan.scene.walls}
    for side in ("left", "right"):
        named = {p.name for p in alone.pieces}
        assert (f"skin-past-{side}" in named) == (beyond["hood"] == "outdoors" and beyond[side] == "room")
