"""One hood in small hand-made rooms: every expected number is arithmetic on the numbers written here."""

from __future__ import annotations

from dataclasses import replace

import pytest
import samples

from routeviz.freespace import StartError, carve
from routeviz.model.path import Outcome
from routeviz.model.scene import Cap, DuctChoice, Scene
from routeviz.model.solids import (
    Box,
    Crossing,
    ExitFace,
    FaceKind,
    Frame,
    KeepOut,
    Passage,
    Solid,
    SolidKind,
    Zone,
)  # fmt: skip
from routeviz.search import find, verify

ROUND_8 = samples.ROUND_8
WALL = ExitFace("face-hood", "the wall behind", FaceKind.WALL, 1, 1, 6.0, (6.0, 0, 0), (0.0, 12.0), (144.0, 94.0))
ROOF = ExitFace("roof", "the roof", FaceKind.ROOF, 2, 1, 0.0, (120.0, 0.0, 0.0), (0.0, -96.0), (144.0, 0.0))


def box(name: str, lo: tuple[float, ...], hi: tuple[float, ...], crossing: Crossing, kind: SolidKind) -> Solid:
    return Solid(name, kind, name, Box(tuple(lo), tuple(hi)), crossing, "test")  # type: ignore[arg-type]


def zone(name: str, passage: Passage, lo: tuple[float, ...], hi: tuple[float, ...], bay: str = "") -> Zone:
    return Zone(name, name, passage, Box(tuple(lo), tuple(hi)), bay=bay)  # type: ignore[arg-type]


def house(*more: Solid, faces: tuple[ExitFace, ...] = (ROOF, WALL)) -> Frame:
    """A 144 x 96 in room, 96 in high, a 6 in wall behind it, an attic of 24 in under a flat roof at 120 in."""
    return Frame(
        solids=(
            box("board", (0, -96, 96), (144, 0, 96.5), Crossing.PASS, SolidKind.BOARD),
            box("deck", (0, -96, 119), (144, 6, 120), Crossing.PASS, SolidKind.DECK),
            box("wall-board", (0, 0, 0), (144, 0.5, 96), Crossing.PASS, SolidKind.BOARD),
            *more,
        ),
        zones=(
            zone("out", Passage.OUTDOORS, (-20, -116, 0), (164, 30, 140)),
            zone("wall", Passage.HIDDEN, (0, 0, 0), (144, 6, 96)),
            zone("attic", Passage.HIDDEN, (0, -96, 96), (144, 6, 120), "attic"),
            zone("kitchen", Passage.BOXING, (0, -96, 0), (144, 0, 96)),
        ),
        faces=faces,
        bounds=Box((-20, -116, 0), (164, 30, 140)),
    )


def plan(**changes: object) -> Scene:
    duct = DuctChoice((ROUND_8,), min_straight_in=12.0, clearance_in=0.25)
    return samples.scene(duct=replace(duct, **changes))


def test_straight_up_through_the_roof() -> None:
    scene = plan()
    found = find(carve(house(faces=(ROOF,)), scene, ROUND_8))
    assert found.outcome is Outcome.PROVEN
    assert found.best is not None
    assert found.best.elbows == 0
    collar = 36 + 30 + 11 + 1.5
    assert found.best.points == ((70.0, -8.5, collar), (70.0, -8.5, 128.0))
    assert found.best.length_in == 128 - collar
    assert found.best.boxed_in == 0
    assert found.best.bays == ("attic",)


def test_straight_up_needs_no_elbow_even_where_the_wall_is_nearer() -> None:
    found = find(carve(house(), plan(), ROUND_8))
    assert found.best is not None
    assert (found.best.face, found.best.elbows) == ("roof", 0)
    assert [f[0] for f in found.front] == [0, 1]
    assert found.front[1][2] == 8 + (8.5 + 6)  # up to the elbow's corner, then through the wall


def test_other_ways_differ_in_face_or_direction() -> None:
    right = ExitFace("face-right", "right", FaceKind.WALL, 0, 1, 144.0, (144.0, 0, 0), (-96.0, 12.0), (0.0, 119.0))
    found = find(carve(house(faces=(ROOF, WALL, right)), plan(), ROUND_8))
    assert found.best is not None
    kinds = [(c.face, c.elbows) for c in (found.best, *found.alternatives)]
    assert kinds[:3] == [("roof", 0), ("face-hood", 1), ("face-right", 1)]
    assert len(set(kinds)) == len(kinds) <= 4
    up, back, side = found.best, *found.alternatives[:2]
    assert side.length_in == (96.5 + 8 - 78.5) + (144 - 70)  # above the ceiling board the elbow just clears it
    assert up.boxed_in == back.boxed_in == side.boxed_in == 0


def test_a_joist_over_the_hood_turns_the_duct_back_through_the_wall() -> None:
    joist = box("joist", (69.25, -96, 96.5), (70.75, 0, 104), Crossing.NEVER, SolidKind.JOIST)
    found = find(carve(house(joist), plan(), ROUND_8))
    assert found.best is not None
    assert (found.best.face, found.best.elbows, found.best.boxed_in) == ("face-hood", 1, 0)
    assert found.best.points[1] == (70.0, -8.5, 78.5 + 8)
    assert found.best.length_in == 8 + 8.5 + 6


def test_a_stud_behind_sends_it_round_in_the_attic() -> None:
    joist = box("joist", (69.25, -20, 112), (70.75, 0, 119), Crossing.NEVER, SolidKind.JOIST)
    stud = box("stud", (69.25, 0.5, 0), (70.75, 6, 96), Crossing.NEVER, SolidKind.STUD)
    found = find(carve(house(joist, stud), plan(offset_angles_deg=()), ROUND_8))
    assert found.best is not None
    assert (found.best.face, found.best.elbows) == ("roof", 2)
    # up, sideways or out by two take-offs and 12 in, up: the least side step is 8 + 12 + 8
    assert found.best.length_in == (128 - 78.5) + 28
    assert found.best.slack_in >= 0


def test_two_equal_bends_step_round_a_joist() -> None:
    joist = box("joist", (69.25, -96, 112), (70.75, 0, 119), Crossing.NEVER, SolidKind.JOIST)
    found = find(carve(house(joist, faces=(ROOF,)), plan(offset_angles_deg=(45.0,)), ROUND_8))
    assert found.best is not None
    assert (found.best.face, found.best.elbows, found.best.boxed_in) == ("roof", 1, 0)
    assert [b.angle_deg for b in found.best.bends] == [45, 45]
    assert len({b.offset_id for b in found.best.bends}) == 1
    # half the duct, half the joist and the gap: 4 + 3/4 + 1/4; two 45s of 8 in radius shift at least 2 x 8 x (1 - cos 45)
    shift = abs(found.best.points[-1][0] - 70)
    assert shift == 5.0 > 16 * (1 - 0.5**0.5)
    below = 128 - 78.5 - 5
    assert found.best.length_in == pytest.approx(below + 5 * 2**0.5, abs=1e-3)
    # the second bend ends below the joist less its gap, or the diagonal would run into it
    assert found.best.points[2][2] < 112


def test_an_elbow_and_an_offset_go_where_neither_goes_alone() -> None:
    """A stud behind the hood and a slab above: the duct turns back and steps past the stud, its bends behind the board.

    Half the duct, half the stud and the gap: 4 + 3/4 + 1/4 = 5 in. A wall 28 in deep holds the two bends.
    """
    slab = box("slab", (-20, -116, 96.5), (164, 30, 119), Crossing.NEVER, SolidKind.SLAB)
    stud = box("stud", (69.25, 22, 0), (70.75, 28, 96), Crossing.NEVER, SolidKind.STUD)
    deep = replace(WALL, at_in=28.0)
    frame = replace(house(slab, stud, faces=(deep,)))
    zones = tuple(replace(z, shape=Box((0, 0, 0), (144, 28, 96))) if z.id == "wall" else z for z in frame.zones)
    scene = plan(offset_angles_deg=(45.0,), boxing_allowed=False, min_straight_in=4.0)
    frame = replace(frame, zones=zones)
    found = find(carve(frame, scene, ROUND_8))
    assert found.best is not None
    assert (found.best.elbows, found.best.boxed_in) == (2, 0)
    assert [b.angle_deg for b in found.best.bends] == [90, 45, 45]
    assert abs(found.best.points[-1][0] - 70) == 5.0
    assert found.best.points[1] == (70.0, -8.5, 86.5)
    assert verify(found.best, frame, scene) == ()


def test_the_open_room_needs_boxing_and_says_how_much() -> None:
    scene = plan()
    slab = box("slab", (0, -96, 96.5), (144, 0, 104), Crossing.NEVER, SolidKind.SLAB)
    stud = box("stud", (69.25, 0.5, 0), (70.75, 6, 96), Crossing.NEVER, SolidKind.STUD)
    found = find(carve(house(slab, stud), replace(scene, duct=replace(scene.duct, offset_angles_deg=())), ROUND_8))
    assert found.best is not None
    assert (found.best.face, found.best.elbows) == ("face-hood", 2)
    # sideways in the room between two elbows, then straight back: 28 in along the wall and 8.5 in back to it
    assert found.best.boxed_in == 28 + 8.5
    assert find(carve(house(slab, stud), plan(boxing_allowed=False), ROUND_8)).outcome is Outcome.NONE_EXISTS


def test_a_slab_and_no_wall_cap_leave_no_way() -> None:
    scene = replace(plan(), cap=Cap(wall=False))
    slab = box("slab", (-20, -116, 96.5), (164, 30, 104), Crossing.NEVER, SolidKind.SLAB)
    found = find(carve(house(slab), scene, ROUND_8))
    assert found.outcome is Outcome.NONE_EXISTS
    assert found.best is None
    assert "offsets in ways with three or more elbows" in found.facts.not_tried


def test_where_no_fitting_has_room_nothing_is_left_out() -> None:
    """A slab 6 in over the collar: an elbow needs 8 + 4 in, and an offset's diagonal alone more than 6."""
    slab = box("slab", (-20, -116, 84.5), (164, 30, 104), Crossing.NEVER, SolidKind.SLAB)
    found = find(carve(house(slab), plan(offset_angles_deg=(45.0,)), ROUND_8))
    assert found.outcome is Outcome.NONE_EXISTS
    assert found.facts.not_tried == ""


def test_a_keep_out_moves_the_cap_by_its_distance() -> None:
    window = KeepOut("window", "the window", "operable window", (60.0, 40.0), (90.0, 80.0), 36.0)
    face = replace(WALL, keep_outs=(window,), hi=(144.0, 200.0))
    frame = replace(house(faces=(face,)))
    found = find(carve(frame, plan(min_straight_in=4.0), ROUND_8))
    assert found.best is not None
    end = found.best.points[-1]
    dx, dz = max(60 - end[0], end[0] - 90, 0), max(40 - end[2], end[2] - 80, 0)
    assert (dx * dx + dz * dz) ** 0.5 >= 36 + 4


def test_the_hood_inside_a_beam_is_a_bad_start() -> None:
    beam = box("beam", (60, -20, 70), (80, 0, 96), Crossing.NEVER, SolidKind.BEAM)
    assert find(carve(house(beam), plan(), ROUND_8)).outcome is Outcome.BAD_START


def test_a_hood_without_a_height_is_refused_in_words() -> None:
    scene = plan()
    with pytest.raises(StartError, match="mounting height"):
        carve(house(), replace(scene, hood=replace(scene.hood, mount_in=None)), ROUND_8)
