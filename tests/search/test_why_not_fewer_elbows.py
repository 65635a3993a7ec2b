"""Why not fewer elbows, in small hand-made rooms: what bars them, the least shift, the least lift, what to cut."""

from __future__ import annotations

import math
from dataclasses import replace

import samples
from search.test_search_find import ROOF, WALL, box, house, plan

from routeviz.freespace import carve
from routeviz.model.path import Paths
from routeviz.model.scene import Scene
from routeviz.model.solids import Crossing as Cross
from routeviz.model.solids import ExitFace, Frame, Member, MemberKind, Solid
from routeviz.model.solids import SolidKind as Kind
from routeviz.search import find
from routeviz.search.verify import verify

SLAB = box("slab", (-20, -116, 96.5), (164, 30, 119), Cross.NEVER, Kind.SLAB)


def member(solid: Solid, axis: int) -> Solid:
    return replace(solid, member=Member(MemberKind.SAWN, "2x8", 1.5, 7.25, axis))


def asked(frame: Frame, scene: Scene, **changes: object) -> Paths:
    space = carve(frame, replace(scene, duct=replace(scene.duct, **changes)), samples.ROUND_8, heights_in=(24.0, 36.0))  # type: ignore[arg-type]
    return find(space)


def test_two_elbows_name_the_joist_and_the_stud_that_fewer_would_need_cut() -> None:
    joist = member(box("joist", (69.25, -96, 112), (70.75, 0, 119), Cross.NEVER, Kind.JOIST), 1)
    stud = member(box("stud", (69.25, 0.5, 0), (70.75, 6, 96), Cross.NEVER, Kind.STUD), 2)
    found = asked(house(joist, stud), plan(offset_angles_deg=()))
    assert found.best is not None
    assert found.best.elbows == 2
    up, back = found.why_not
    assert (up.wanted, [b.id for b in up.crossing], up.elbows) == ("straight up", ["joist"], 0)
    assert (back.wanted, [b.id for b in back.crossing], back.elbows) == ("straight back", ["stud"], 1)
    assert (up.crossing[0].axis, back.crossing[0].axis) == (2, 1)
    # half the duct, the gap and half the member: 4 + 1/4 + 3/4
    assert {abs(up.shift_in or 0), abs(up.shift_other_in or 0), abs(back.shift_in or 0)} == {5.0}


def test_a_long_member_is_never_crossed_lengthwise() -> None:
    joist = member(box("joist", (0, -12, 96.5), (144, -5, 119), Cross.NEVER, Kind.JOIST), 2)
    found = asked(house(joist, faces=(ROOF,)), plan(offset_angles_deg=(), max_elbows=1))
    assert found.best is None
    assert [w.crossing for w in found.why_not] == [()]


def test_one_elbow_is_freed_by_hanging_the_hood_lower() -> None:
    """The elbow's corner is 8 in over the collar at 78.5 in; the cap's centre may be 91 - 6 = 85 in high: 1.5 in less."""
    low = replace(WALL, hi=(144.0, 91.0))
    found = asked(house(SLAB, faces=(low,)), plan(offset_angles_deg=()), boxing_allowed=False)
    assert found.best is None
    (why,) = [w for w in found.why_not if w.wanted == "with one elbow"]
    assert (why.lift_in, why.shift_in, why.verified) == (-1.5, None, True)
    assert [(b.kind, b.overlap_in) for b in why.blockers] == [("straight", 1.5)]
    assert why.points == ((70.0, -8.5, 77.0), (70.0, -8.5, 85.0), (70.0, 6.0, 85.0))


def test_one_elbow_to_the_side_is_freed_by_the_least_shift() -> None:
    """A post in the attic bars the way right from x = 66 on, 4 + 1/4 in from the duct's middle along y alone.

    The hood under it can go no straight way: the wall and the roof are closed. The duct turns right above the board,
    its corner 96.5 + 8 = 104.5 in up; the post stands on the board beside the hood, and is passed on its right.
    """
    right = ExitFace("face-right", "right", WALL.kind, 0, 1, 144.0, (144.0, 0, 0), (-96.0, 12.0), (0.0, 119.0))
    post = member(box("post", (60, -20, 96.5), (73, 0, 119), Cross.NEVER, Kind.BEAM), 1)
    scene = plan(offset_angles_deg=(), max_elbows=1)
    boxed = asked(house(post, faces=(right,)), scene)
    assert boxed.best is not None
    assert boxed.best.boxed_in == 144 - 70  # in the open room, under the ceiling
    assert [w.wanted for w in boxed.why_not] == ["straight up", "hidden with one elbow"]
    found = asked(house(post, faces=(right,)), scene, boxing_allowed=False)
    assert found.best is None
    (why,) = [w for w in found.why_not if w.wanted == "with one elbow"]
    # its riser clears the post by 1/4 in: 73 + 4 + 1/4 - 70
    assert (why.shift_in, why.verified) == (7.25, True)
    assert why.shift_other_in is None  # from the left the run meets the post
    assert [b.id for b in why.blockers] == ["post"]
    assert why.spare_in is not None
    assert why.spare_in > 0
    assert why.middle_in == why.shift_in + why.spare_in
    assert why.points[1][0] == 77.25


def test_weighed_plans_are_not_explained_further() -> None:
    low = replace(WALL, hi=(144.0, 91.0))
    space = carve(house(SLAB, faces=(low,)), plan(boxing_allowed=False), samples.ROUND_8, heights_in=(24.0, 36.0))
    assert all(w.wanted.startswith("straight") for w in find(space, explained=False).why_not)
    assert any(w.wanted == "with one elbow" for w in find(space).why_not)


def test_an_offset_is_freed_by_hanging_the_hood_lower() -> None:
    """A joist right over the board; the cover is wide enough to step past it, 4 + 1/4 + 3/4 = 5 in, below the board.

    Two 45s of 8 in radius take 8 tan 22.5 before the diagonal; its end, grown by the duct's half and by what the bend
    leaves its corner, 8 / cos 22.5 - 8, ends under the board at 96 in. The collar at 84.5 in is too high for that.
    """
    joist = member(box("joist", (69.25, -96, 96.5), (70.75, 0, 119), Cross.NEVER, Kind.JOIST), 1)
    scene = plan(offset_angles_deg=(45.0,), boxing_allowed=False)
    hood = replace(scene.hood, mount_in=36.0, cover=replace(scene.hood.cover, width_in=22.0))
    scene = replace(scene, hood=hood)
    frame = house(joist, faces=(ROOF,))
    found = asked(frame, scene)
    assert found.best is None
    (why,) = [w for w in found.why_not if w.wanted == "straight with one offset"]
    half = math.radians(22.5)
    highest = 96 - 8 * math.tan(half) - 5 - 4 - (8 / math.cos(half) - 8)
    assert why.lift_in == -math.ceil((84.5 - highest) * 4) / 4 == -1.5
    lower = replace(scene, hood=replace(hood, mount_in=36.0 + why.lift_in))
    again = asked(frame, lower)
    assert again.best is not None
    assert [b.angle_deg for b in again.best.bends] == [45, 45]
    assert verify(again.best, frame, lower) == ()
