"""What is written into the packet's pictures: large enough on paper, where it can be seen, and off one another."""

from __future__ import annotations

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
from routeviz.views.marks import place_of, slack_dimensions
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
