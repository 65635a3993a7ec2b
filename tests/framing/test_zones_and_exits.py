"""Where a duct may run and where it may leave: passages, bays, exit faces and what a cap keeps away from."""

from __future__ import annotations

from dataclasses import replace

import pytest
import samples

from routeviz.framing import frame
from routeviz.geometry import contains
from routeviz.model.scene import (
    Above,
    AboveKind,
    Layer,
    MemberKind,
    Obstacle,
    ObstacleKind,
    OutdoorKind,
    OutdoorThing,
    RoofForm,
    RunDirection,
    Space,
    SpaceKind,
    WallSide,
)
from routeviz.model.solids import Crossing, FaceKind, Passage, SolidKind


def zone_at(framed, point):
    return [z for z in framed.zones if contains(z.shape, point)][-1]


def face(framed, face_id):
    return next(f for f in framed.faces if f.id == face_id)


def garage(**changes):
    walls = tuple(samples.wall(s) for s in (WallSide.FRONT, WallSide.LEFT, WallSide.RIGHT))
    return replace(
        Space("garage", SpaceKind.GARAGE, WallSide.HOOD, 240.0, 0.0, 144.0, 0.0, 108.0, walls, True), **changes
    )


def behind_garage(**changes):
    walls = samples.scene().walls
    return samples.scene(walls=(samples.wall(WallSide.HOOD, "garage"), *walls[1:]), spaces=(garage(**changes),))


@pytest.mark.parametrize(
    ("point", "passage", "bay"),
    [
        ((70.0, -40.0, 50.0), Passage.BOXING, ""),  # the open room
        ((70.0, -8.5, 100.0), Passage.HIDDEN, "joist bay 4-5"),  # joists 4 and 5 stand at 62 and 78
        ((5.0, -60.0, 100.0), Passage.HIDDEN, "joist bay left wall-1"),
        ((143.5, -60.0, 100.0), Passage.HIDDEN, "joist bay 9-right wall"),
        ((70.0, 3.0, 70.0), Passage.HIDDEN, "stud bay 5-6"),  # studs 5 and 6 stand at 64 3/4 and 80 3/4
        ((145.9, -40.0, 50.0), Passage.HIDDEN, "right wall stud bay 3-4"),
        ((70.0, -8.5, 106.0), Passage.HIDDEN, "attic"),
        ((70.0, -5.0, 90.0), Passage.HIDDEN, "chimney cover"),
        ((70.0, 7.0, 130.0), Passage.OUTDOORS, ""),  # above the eave
    ],
)
def test_places_have_the_passage_a_person_would_say(point, passage, bay):
    zone = zone_at(frame(samples.scene()), point)
    assert (zone.passage, zone.bay) == (passage, bay)


def test_every_wall_outdoors_has_a_face_at_its_outer_side_and_no_other_has():
    framed = frame(samples.scene())
    hood = face(framed, "face-hood")
    assert (hood.label, hood.axis, hood.sign, hood.at_in) == ("the wall behind", 1, 1, 7.1875)
    assert face(framed, "face-right").at_in == 151.1875
    assert {f.id for f in framed.faces if f.kind is FaceKind.WALL} == {"face-hood", "face-right"}
    # rafters' underside 103 7/8 at y = 6 falls 1/4 x 16 to the eave's edge; 3/8 soffit board under it
    assert hood.hi[1] == pytest.approx(103.875 - 4.0 - 0.375)
    assert hood.lo[1] == 12.0
    assert face(framed, "face-right").hi[1] > 103.875  # the gable goes on


def test_roof_face_is_the_top_of_the_shingles():
    framed = frame(samples.scene())
    back = face(framed, "roof-back")
    a, b, c = back.plane
    shingles = framed.solid("roof-2-back").shape
    for x, y in ((3.0, -120.0), (70.0, -8.5), (140.0, 6.0)):
        z = a + b * x + c * y
        assert contains(shingles, (x, y, z))
        assert not contains(shingles, (x, y, z + 0.01))
    # 103.875 at y = 6 for the underside; rafter, deck and shingles 5 1/2 + 1/2 + 3/8 over cos(3/12)
    assert a + c * 6.0 == pytest.approx(103.875 + 6.375 * (1 + 1 / 16) ** 0.5)
    assert c == -0.25


def test_gable_end_under_a_ridge_along_the_wall_is_on_the_side():
    framed = frame(samples.scene())
    gable = face(framed, "gable-right")
    assert gable.label == "the gable end on the right"
    assert gable.owner == "attic"
    # the ridge line of the undersides: 103 7/8 + (132 + 6) / 4
    assert gable.hi[1] == pytest.approx(138.375)
    ridge_out = replace(samples.scene().roof, ridge=RunDirection.OUT, ridge_at_in=72.0)
    assert face(frame(samples.scene(roof=ridge_out)), "gable-hood").label == "the gable end behind"


def test_a_cap_on_a_gable_stays_under_the_slope():
    framed = frame(samples.scene())
    gable = face(framed, "gable-right")
    for y in (-130.0, -90.0, -40.0, 0.0, 5.0):
        underside = 103.875 + 0.25 * (6.0 - y)
        above = [
            k for k in gable.keep_outs if k.kind == "eave" and k.lo[0] <= y <= k.hi[0] and k.lo[1] <= underside + 0.1
        ]
        assert above
        assert all(k.hi[1] >= gable.hi[1] - 1e-9 for k in above)


def test_windows_become_keep_outs_with_the_wanted_distance():
    framed = frame(samples.scene(), {"operable window": 36.0, "lot line": 36.0, "soffit vent": 36.0})
    keep = {k.id: k for k in face(framed, "face-hood").keep_outs}
    window = keep["hood-sink-window"]
    assert (window.kind, window.lo, window.hi, window.distance_in) == (
        "operable window", (112.0, 44.0), (140.0, 80.0), 36.0)  # fmt: skip
    line = keep["lot-line-hood"]
    assert (line.away_in, line.distance_in) == (144.0, 36.0)
    assert not any(k.kind == "soffit vent" for k in keep.values())
    vented = replace(samples.scene().roof, soffit_vented=True)
    again = face(frame(samples.scene(roof=vented), {"soffit vent": 36.0}), "face-hood")
    assert [k.distance_in for k in again.keep_outs if k.kind == "soffit vent"] == [36.0]


def test_a_window_round_the_corner_stands_off_by_its_distance_behind_the_face():
    framed = frame(samples.scene(), {"operable window": 36.0})
    keep = next(k for k in face(framed, "face-right").keep_outs if k.label == "sink window round the corner")
    # its right edge at x = 140 is 11 3/16 from the right wall's outer face, and it lies in the plane y = 7 3/16
    assert (keep.lo[0], keep.hi[0], keep.away_in) == (7.1875, 7.1875, 11.1875)


def test_things_outdoors_stand_on_their_face():
    things = (
        OutdoorThing("fresh-air", OutdoorKind.MECHANICAL_INTAKE, "hood", 20.0, 60.0, 8.0, 8.0),
        OutdoorThing("chimney", OutdoorKind.OTHER, "roof", 50.0, 30.0, 16.0, 20.0),
    )
    framed = frame(samples.scene(outdoors=things), {"mechanical air intake": 120.0})
    intake = next(k for k in face(framed, "face-hood").keep_outs if k.id == "fresh-air")
    assert (intake.lo, intake.hi, intake.distance_in) == ((20.0, 60.0), (28.0, 68.0), 120.0)
    stack = next(k for k in face(framed, "roof-back").keep_outs if k.id == "chimney")
    assert (stack.lo, stack.hi) == ((50.0, -50.0), (66.0, -30.0))


def test_garage_beyond_is_no_outdoors_but_its_far_wall_leads_there():
    framed = frame(behind_garage())
    assert "face-hood" not in {f.id for f in framed.faces}
    far = face(framed, "face-garage-front")
    # kitchen wall 1/2 + 3 1/2 + 1/2, garage 240 clear, then 7 3/16 of wall
    assert (far.label, far.at_in, far.owner) == ("the garage's far wall", 4.5 + 240.0 + 7.1875, "garage")
    assert zone_at(framed, (70.0, 100.0, 50.0)).passage is Passage.HIDDEN
    assert zone_at(framed, (70.0, 100.0, 50.0)).bay == "garage"
    assert framed.bounds.hi[1] == far.at_in


def test_closed_space_has_no_way_out():
    framed = frame(behind_garage(duct_allowed=False))
    assert zone_at(framed, (70.0, 4.6, 50.0)).passage in (Passage.CLOSED, Passage.HIDDEN)
    assert [z.passage for z in framed.zones if z.id == "garage"] == [Passage.CLOSED]
    assert not any(f.owner == "garage" for f in framed.faces)
    assert framed.bounds.hi[1] == 4.5


def test_porch_before_a_part_of_the_wall_leaves_the_rest_open():
    walls = tuple(samples.wall(s) for s in (WallSide.FRONT, WallSide.LEFT, WallSide.RIGHT))
    porch = Space("porch", SpaceKind.PORCH, WallSide.HOOD, 72.0, 60.0, 60.0, 0.0, 84.0, walls, False)
    framed = frame(samples.scene(spaces=(porch,)))
    faces = [f for f in framed.faces if f.side is WallSide.HOOD and f.kind is FaceKind.WALL]
    covered = (60.0 - 7.1875, 120.0 + 7.1875)
    for f in faces:
        assert f.hi[0] <= covered[0] or f.lo[0] >= covered[1] or f.lo[1] >= 84.0
    assert sum((f.hi[0] - f.lo[0]) * (f.hi[1] - f.lo[1]) for f in faces) == pytest.approx(
        (151.1875 + 4.5) * (99.5 - 12.0) - (60.0 + 2 * 7.1875) * (84.0 - 12.0)
    )


def test_room_above_is_closed_but_a_chase_goes_through():
    chase = Obstacle("riser-chase", ObstacleKind.CHASE, 60.0, 0.0, 96.0, 16.0, 14.0, 116.0)
    above = Above(AboveKind.STOREY, 96.0, (Layer("plywood subfloor", 0.75),))
    framed = frame(samples.scene(above=above, obstacles=(chase,)))
    assert zone_at(framed, (100.0, -60.0, 150.0)).passage is Passage.CLOSED
    assert zone_at(framed, (66.0, -8.0, 150.0)).passage is Passage.HIDDEN
    assert framed.solid("floor-above-1").crossing is Crossing.PASS
    # subfloor on the joists: 103 7/8 + 3/4; 96 to the ceiling there, 1/2 board: the roof sits at 201 1/8
    assert framed.solid("rafter-1-back").shape.outline[1][1] == pytest.approx(201.125 - 0.25 * 16.0)
    hood = face(framed, "face-hood")
    assert hood.hi[1] == pytest.approx(201.125 - 4.0 - 0.375)
    assert zone_at(framed, (66.0, 3.0, 150.0)).passage is Passage.HIDDEN  # inside the wall upstairs


def test_concrete_ceiling_is_never_cut_and_the_flat_above_is_closed():
    scene = samples.scene()
    framed = frame(replace(scene, above=Above(AboveKind.SLAB), roof=None,
                           ceiling=replace(scene.ceiling, joists=None, slab_in=8.0)))  # fmt: skip
    assert framed.solid("slab").crossing is Crossing.NEVER
    assert {f.kind for f in framed.faces} == {FaceKind.WALL}
    assert not [s for s in framed.solids if s.kind is SolidKind.JOIST]


def test_trusses_have_chords_and_webs_that_are_never_cut():
    roof = samples.scene().roof
    trusses = replace(roof.framing, kind=MemberKind.TRUSS, size="2x4", depth_in=3.5, spacing_in=24.0)
    scene = samples.scene(roof=replace(roof, ridge_at_in=66.0, framing=trusses))
    framed = frame(replace(scene, ceiling=replace(scene.ceiling, joists=None)))
    chords = [s for s in framed.solids if s.kind is SolidKind.CHORD]
    assert {s.crossing for s in chords} == {Crossing.NEVER}
    assert {s.member.kind for s in chords} == {MemberKind.TRUSS}
    # centres 14, 38, ..., 134: six trusses, each with a bottom chord and two top chords
    assert len({s.member.number for s in chords}) == 6
    assert sum("bottom" in s.id for s in chords) == 6
    assert [s for s in framed.solids if s.kind is SolidKind.WEB]
    assert zone_at(framed, (50.0, -40.0, 98.0)).bay == "truss bay 2-3"  # trusses 2 and 3 stand at 38 and 62


def test_cathedral_ceiling_follows_the_rafters():
    scene = samples.scene()
    framed = frame(replace(scene, above=Above(AboveKind.ROOF), ceiling=replace(scene.ceiling, joists=None)))
    board = framed.solid("ceiling-1").shape
    for y in (-0.1, -60.0, -131.0):  # 96 at the hood wall, rising 3 in 12
        assert contains(board, (70.0, y, 96.0 - 0.25 * y + 0.01))
        assert not contains(board, (70.0, y, 96.0 - 0.25 * y - 0.01))
    assert zone_at(framed, (70.0, -120.0, 120.0)).passage is Passage.BOXING
    assert zone_at(framed, (70.0, -60.0, 96.0 + 15.0 + 3.0)).bay == "rafter bay 4-5"
    # the cover is 11 deep; over its front edge the ceiling is 11/4 higher than at the wall
    assert zone_at(framed, (70.0, -10.9, 98.6)).bay == "chimney cover"


def test_shed_roof_with_its_high_edge_behind_brings_a_face_above_the_plates():
    scene = samples.scene()
    framed = frame(replace(scene, roof=replace(scene.roof, form=RoofForm.SHED, high_side=WallSide.HOOD)))
    high = face(framed, "gable-hood")
    assert high.label == "the top of the wall behind"
    # low edge over the front partition's core at y = -136; underside at the outer face 7 3/16
    assert high.hi[1] == pytest.approx(103.875 + 0.25 * (136.0 + 7.1875))


def test_a_cabinet_that_hides_duct_is_hollow_and_its_panels_may_be_cut():
    cabinet = Obstacle("over-hood", ObstacleKind.CABINET, 52.0, 0.0, 78.0, 36.0, 12.0, 18.0, hides_duct=True)
    framed = frame(samples.scene(obstacles=(cabinet,)))
    panels = [s for s in framed.solids if s.id.startswith("over-hood-")]
    assert {s.label.split(" of ")[0] for s in panels} == {"top", "bottom", "left", "right", "front", "back"}
    assert {s.crossing for s in panels} == {Crossing.RULE}
    assert zone_at(framed, (56.0, -6.0, 85.0)).bay == "over hood"
    assert not any(contains(s.shape, (70.0, -6.0, 85.0)) for s in panels)
    solid = frame(samples.scene(obstacles=(replace(cabinet, hides_duct=False),))).solid("over-hood")
    assert solid.crossing is Crossing.NEVER


def test_strips_under_a_slab_leave_a_hidden_gap_and_a_bare_slab_none():
    scene = samples.scene()
    strips = replace(scene.ceiling.joists, kind=MemberKind.FURRING, size="2x4", depth_in=3.5)
    hung = replace(
        scene, above=Above(AboveKind.SLAB), roof=None, ceiling=replace(scene.ceiling, joists=strips, slab_in=8.0)
    )
    framed = frame(hung)
    assert framed.solid("slab").shape.lo[2] == 96.0 + 0.625 + 3.5
    assert framed.solid("ceiling-strip-4").crossing is Crossing.RULE
    assert zone_at(framed, (70.0, -40.0, 98.0)).passage is Passage.HIDDEN
    assert zone_at(framed, (70.0, -40.0, 101.0)).passage is Passage.CLOSED
    bare = frame(replace(hung, ceiling=replace(scene.ceiling, layers=(), joists=None, slab_in=8.0)))
    assert bare.solid("slab").shape.lo[2] == 96.0
