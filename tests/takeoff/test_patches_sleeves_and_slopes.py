"""What is made good round the duct: patches, strips, sleeves; and a cover under a ceiling that slopes."""

from __future__ import annotations

from dataclasses import replace

import handmade
import pytest
import samples

from routeviz.model.finding import Finding, MemberRuling, MemberVerdict, State
from routeviz.model.route import Penetration, Route
from routeviz.model.scene import AboveKind, Cover, RoofForm, RunDirection, Scene
from routeviz.model.solids import Box, Crossing, Frame, Solid, SolidKind
from routeviz.model.takeoff import BuyLine
from routeviz.takeoff import count
from routeviz.takeoff.cover import cover_gap_in
from routeviz.takeoff.marks import hood_marks
from routeviz.takeoff.strips import behind_board


def bought(
    item: str, route: Route, scene: Scene, frame: Frame | None = None, findings: tuple[Finding, ...] = ()
) -> list[BuyLine]:
    return [b for b in count(route, scene, frame or handmade.frame(), findings).buy if item in b.item]


def covered(cover: Cover | None, **changes: object) -> Scene:
    plain = samples.scene(**changes)
    return replace(plain, hood=replace(plain.hood, cover=cover))


# patches --------------------------------------------------------------------------------------------------------------
def test_a_hole_in_board_is_patched_two_inches_past_it_all_round() -> None:
    # hole 8 in and a quarter on each side; 2 in past the hole on each side (common practice)
    (patch,) = bought("board patch", handmade.back_route(), covered(None))
    assert (patch.size, patch.note) == ("12 1/2 x 12 1/2 in", "wallboard 1/2 in, round the duct")


@pytest.mark.parametrize(("wide", "patches"), [(12.0, 0), (8.5, 0), (8.4375, 1)])
def test_what_the_cover_is_wide_enough_to_hide_needs_none(wide: float, patches: int) -> None:
    scene = covered(Cover(16.0, 34.0, wide, 13.0))
    assert len(bought("board patch", handmade.back_route(), scene)) == patches


@pytest.mark.parametrize(("deep", "patches"), [(13.0, 0), (12.75, 0), (12.5, 1)])
def test_a_hole_in_the_ceiling_must_lie_behind_the_covers_front(deep: float, patches: int) -> None:
    # centre 8 1/2 in out, half the hole 4 1/4 in: 12 3/4 in
    scene = covered(Cover(16.0, 34.0, 12.0, deep))
    assert len(bought("board patch", handmade.up_route(), scene)) == patches


def test_the_cover_hides_nothing_on_the_walls_far_side() -> None:
    """Behind the kitchen lies a room: its board is 4 in further back, and nobody hangs a hood there."""
    back, framed = handmade.back_route(), handmade.frame()
    board = Solid(
        "far-board", SolidKind.BOARD, "far board", Box((0.0, 6.0, 0.0), (144.0, 6.5, 96.0)), Crossing.PASS, "test"
    )
    near = back.penetrations[0]
    far = replace(near, solid="far-board", centre=(70.0, 6.0, 88.5), leave=(70.0, 6.5, 88.5))
    route = replace(back, penetrations=(near, far))
    (patch,) = bought("board patch", route, samples.scene(), replace(framed, solids=(*framed.solids, board)))
    assert patch.parts == ("far-board",)


# strips ---------------------------------------------------------------------------------------------------------------
def run_at(y: float, z: float) -> Route:
    """Give a level run of 30 in along the hood wall."""
    return replace(handmade.up_route(), parts=(handmade.straight("run", (70.0, y, z), (100.0, y, z)),), penetrations=())


def above(kind: AboveKind) -> Scene:
    plain = samples.scene()
    return replace(plain, above=replace(plain.above, kind=kind))


@pytest.mark.parametrize(
    ("y", "z", "kind", "where"),
    [
        (3.0, 80.0, AboveKind.ATTIC, "wallboard, in front of the duct"),
        (-8.5, 100.0, AboveKind.STOREY, "ceiling board, under the duct"),
        (-8.5, 100.0, AboveKind.ATTIC, ""),  # it is laid from the attic
        (-8.5, 121.0, AboveKind.STOREY, ""),  # in the room above
        (-8.5, 80.0, AboveKind.STOREY, ""),  # in the kitchen's own air
    ],
)
def test_board_is_opened_where_the_duct_is_laid_behind_it(y: float, z: float, kind: AboveKind, where: str) -> None:
    assert [s.where for s in behind_board(run_at(y, z), above(kind))] == ([where] if where else [])


def test_a_riser_in_the_wall_is_laid_behind_board_too() -> None:
    riser = replace(run_at(3.0, 80.0), parts=(handmade.straight("riser", (70.0, 3.0, 70.0), (70.0, 3.0, 90.0)),))
    assert len(behind_board(riser, samples.scene())) == 1


def test_a_strip_goes_from_member_to_member_along_the_run() -> None:
    (wall,) = bought("board to open", run_at(3.0, 80.0), samples.scene())
    assert (wall.size, wall.unit, wall.parts) == ("16 x 30 in", "strip", ("run",))
    storey = above(AboveKind.STOREY)
    joists = storey.ceiling.joists
    assert joists is not None
    wider = replace(storey, ceiling=replace(storey.ceiling, joists=replace(joists, spacing_in=24.0)))
    (ceiling,) = bought("board to open", run_at(-8.5, 100.0), wider)
    assert ceiling.size == "24 x 30 in"


# sleeves --------------------------------------------------------------------------------------------------------------
def brick_wall(
    *, duct: tuple[float, float] = (8.0, 8.0), hole: tuple[float, float] = (8.5, 8.5)
) -> tuple[Route, Frame]:
    """Give the wall of brick from the board's back to 7 3/16 in, and the way through it."""
    framed = handmade.frame()
    brick = Solid(
        "brick", SolidKind.MASONRY, "brick", Box((0.0, 0.5, 0.0), (144.0, 7.1875, 104.0)), Crossing.PASS, "test"
    )
    shape = "round" if duct[0] == duct[1] else "rectangular"

    def passed(solid: str, label: str, a: float, b: float) -> Penetration:
        return Penetration(
            solid, label, label, (70.0, a, 88.5), (70.0, b, 88.5), (0.0, 1.0, 0.0), b - a, shape, duct, hole
        )

    route = replace(
        handmade.back_route(),
        penetrations=(passed("wall-board", "wallboard", 0.0, 0.5), passed("brick", "brick", 0.5, 7.1875)),
    )
    return route, replace(framed, solids=(*framed.solids, brick))


@pytest.mark.parametrize(
    ("duct", "hole", "sleeve"),
    [
        # the hole is the duct and an inch, and a quarter of mortar lies all round the sleeve (common practice)
        ((8.0, 8.0), (8.5, 8.5), "8 1/2 in round"),
        ((8.0, 8.0), (9.5, 9.5), "9 in round"),  # never less than the clearance asks for
        ((10.0, 3.25), (10.5, 3.75), "10 1/2 x 3 3/4 in rectangular"),
    ],
)
def test_the_sleeve_leaves_its_mortar_in_the_hole(
    duct: tuple[float, float], hole: tuple[float, float], sleeve: str
) -> None:
    route, framed = brick_wall(duct=duct, hole=hole)
    (line,) = bought("sleeve", route, samples.scene(), framed)
    assert line.size == f"{sleeve}, 6 11/16 in long"  # 7 3/16 less 1/2


def test_plaster_on_masonry_is_cut_as_wide_as_the_hole_behind_it() -> None:
    route, framed = brick_wall()
    board, brick = count(route, samples.scene(), framed).holes
    assert board.size_in == brick.size_in == (9.0, 9.0)
    assert board.note == "as wide as the hole behind it"
    assert board.group == brick.group  # one core bit from one centre


def test_board_that_stands_off_the_masonry_keeps_its_own_hole() -> None:
    route, framed = brick_wall()
    brick = replace(route.penetrations[1], centre=(70.0, 2.0, 88.5), through_in=5.1875)
    board, _ = count(replace(route, penetrations=(route.penetrations[0], brick)), samples.scene(), framed).holes
    assert (board.size_in, board.note) == ((8.5, 8.5), "")


def test_a_sleeve_tells_what_the_finding_rules_and_is_set_before_the_duct_is_cut() -> None:
    route, framed = brick_wall()
    ruling = MemberRuling(
        "brick", "brick", MemberVerdict.DECIDED_ELSEWHERE, "MBR-MASONRY", "", "hole", None, None, "x", "x"
    )
    found = Finding("MBR-MASONRY", "brick", State.FINE, True, None, "", None, None, "", "x", "x", ruling=ruling)
    (line,) = bought("sleeve", route, samples.scene(), framed, (found,))
    assert line.note.startswith("brick: engineer or maker decides; ")
    names = [s.id for s in count(route, samples.scene(), framed).steps]
    assert names.index("outside") < names.index("sleeve") < names.index("cut-duct")
    assert "sleeve" not in [s.id for s in count(handmade.back_route(), samples.scene(), handmade.frame()).steps]


# slopes ---------------------------------------------------------------------------------------------------------------
def under_a_slope(centre_in: float, cover: Cover) -> Scene:
    """Give a ceiling that follows the rafters: 96 in at the left wall, 6 in 12 up to a ridge at 72 in."""
    plain = samples.scene()
    assert plain.roof is not None
    roof = replace(plain.roof, form=RoofForm.GABLE, ridge=RunDirection.OUT, ridge_at_in=72.0, pitch=0.5)
    hood = replace(plain.hood, centre_in=centre_in, cover=cover)
    return replace(plain, hood=hood, roof=roof, above=replace(plain.above, kind=AboveKind.ROOF),
                   ceiling=replace(plain.ceiling, joists=None))  # fmt: skip


def test_a_cover_under_a_slope_is_cut_to_it() -> None:
    # over 40 in the ceiling is 96 + 20 = 116; underside 66, body 11: 39 in; a 12 in cover is 6 x 1/2 = 3 in off on each side
    scene = under_a_slope(40.0, Cover(16.0, 48.0, 12.0, 13.0))
    assert cover_gap_in(scene) == 42.0
    (line,) = bought("chimney cover", handmade.up_route(), scene)
    assert line.item == "chimney cover, as supplied"
    assert line.size == "42 in"
    assert line.note.endswith("its top is cut to the slope: 36 in on the left and 42 in on the right")
    (step,) = (s for s in count(handmade.up_route(), scene, handmade.frame()).steps if s.id == "cover")
    assert step.text.startswith("Cut the cover's top to the slope, 36 in on the left and 42 in on the right;")


@pytest.mark.parametrize(
    ("centre", "item", "more"),
    [
        # at 46 in its sides are 39 and 45 in: the high side of a cover up to 44 in wants 1 in more, its middle (42) not
        (46.0, "chimney cover extension", "extension for 1 in more"),
        (40.0, "chimney cover, as supplied", "pull out to this height"),
        # at 12 in: 22 and 28 in; the low side of a cover from 23 in is 1 in too short, its middle (25) not
        (12.0, "chimney cover, cut", "cut 1 in off"),
    ],
)
def test_the_high_side_is_too_long_or_the_low_one_too_short_first(centre: float, item: str, more: str) -> None:
    (line,) = bought("chimney cover", handmade.up_route(), under_a_slope(centre, Cover(23.0, 44.0, 12.0, 13.0)))
    assert line.item == item
    assert more in line.note


def test_a_cover_astride_the_ridge_is_lower_on_both_sides() -> None:
    scene = under_a_slope(72.0, Cover(16.0, 48.0, 12.0, 13.0))
    assert cover_gap_in(scene) == 55.0  # 96 + 36 - 77
    (line,) = bought("chimney cover", handmade.up_route(), scene)
    assert line.item == "chimney cover extension"
    assert "extension for 7 in more" in line.note
    assert line.note.endswith("52 in on the left and 52 in on the right, 55 in under the ridge")


def test_a_bracket_lies_along_the_slope() -> None:
    # screws 1 1/2 in inside a 12 in cover: 35 1/2 and 44 1/2 in; 6 in 12 rises 4 1/2 in between them. They sit 1 in square
    # under the bracket's edge: sqrt(1 + 1/4) in plumb
    scene = under_a_slope(40.0, Cover(16.0, 48.0, 12.0, 13.0))
    brackets = [m for m in hood_marks(scene, handmade.frame()) if m.row == "bracket"]
    assert [m.left_in for m in brackets] == [35.5, 44.5]
    under = 0.125 + 1.25**0.5
    assert [m.height_in for m in brackets] == pytest.approx([96.0 + 17.75 - under, 96.0 + 22.25 - under])
    assert "along its slope" in brackets[0].piece
    (step,) = (s for s in count(handmade.up_route(), scene, handmade.frame()).steps if s.id == "bracket")
    assert "along its slope" in step.text


def test_under_a_ridge_a_bracket_is_level_and_its_lower_side_decides() -> None:
    scene = under_a_slope(71.0, Cover(16.0, 60.0, 12.0, 13.0))  # screws at 66 1/2 and 75 1/2 in, the ridge at 72
    brackets = [m for m in hood_marks(scene, handmade.frame()) if m.row == "bracket"]
    assert {m.height_in for m in brackets} == {96.0 + 33.25 - 0.125 - 1.0}
    assert "slope" not in brackets[0].piece
