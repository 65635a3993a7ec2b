"""Holes are where the route is; marks say what is behind the board."""

from __future__ import annotations

import math
import re
from dataclasses import replace

import handmade
import pytest
import samples

from routeviz import reports
from routeviz.drawings import sheets
from routeviz.drawings.primitives import Text
from routeviz.model.scene import WallFrame, WallSide
from routeviz.model.solids import Box, SolidKind
from routeviz.takeoff import assumptions, count
from routeviz.takeoff.holes import hole_schedule
from routeviz.takeoff.marks import hood_marks


def test_ceiling_and_roof_holes_from_two_walls() -> None:
    holes = hole_schedule(handmade.up_route(), samples.scene(), handmade.frame())
    assert [h.layer for h in holes] == ["ceiling board", "roof deck", "asphalt shingles"]
    assert all((h.from_left_in, h.from_other_in, h.from_centre_in) == (70.0, 8.5, 0.0) for h in holes)
    assert {h.from_left_name for h in holes} == {"from the left wall"}
    assert holes[0].from_other_name == "out from the hood wall"
    assert "plumb" in holes[1].from_other_name
    # drilled from one centre: deck and shingles; the ceiling is 17 in lower
    assert [h.group for h in holes] == [1, 2, 2]
    assert "long side runs up the slope" in holes[1].note
    # ridge 132 in out, hole 8 1/2 in out, slope factor of 3 in 12: sqrt(1 + 1/16)
    assert "127 5/16 in down the slope" in holes[2].outside
    assert math.isclose((132.0 - 8.5) * math.sqrt(1 + 1 / 16), 127.3, abs_tol=0.05)
    # joists at 62 3/4 and 77 1/4; an 8 1/2 in hole at 70 has its edges at 65 3/4 and 74 1/4
    assert holes[0].member == "edge 3 in clear of joists 4 and 5"
    # the roof's hole lies between the rafters, though the joists stand in line with them 17 in lower
    assert [h.member for h in holes[1:]] == ["edge 3 in clear of rafters 4 and 5"] * 2


def test_wall_holes_from_left_wall_and_floor() -> None:
    holes = hole_schedule(handmade.back_route(), samples.scene(), handmade.frame())
    assert [(h.from_left_in, h.from_other_in, h.from_other_name) for h in holes] == [
        (70.0, 88.5, "above the floor")
    ] * 3
    assert len({h.group for h in holes}) == 1
    assert holes[0].outside == ""
    assert "from outside" in holes[2].outside


def test_hole_centres_lie_on_the_route() -> None:
    for route in (handmade.up_route(), handmade.back_route()):
        for hole in hole_schedule(route, samples.scene(), handmade.frame()):
            on_line = min(
                math.dist(hole.centre, p.start) + math.dist(hole.centre, p.end) - p.length_in
                for p in route.parts
                if p.kind.value == "straight"
            )
            assert on_line < 1 / 16


def test_marks_agree_with_the_framing() -> None:
    frame, scene = handmade.frame(), samples.scene()
    marks = hood_marks(scene, frame)
    assert [(m.label, m.left_in, m.height_in) for m in marks[:4]] == [
        ("S1", 59.5, 75.5), ("S2", 64.5, 75.5), ("S3", 75.5, 75.5), ("S4", 80.5, 75.5),
    ]  # fmt: skip
    wood = [s.shape for s in frame.solids if s.kind in (SolidKind.STUD, SolidKind.PLATE) and isinstance(s.shape, Box)]
    for x in [n / 4 for n in range(4 * 50, 4 * 100)]:
        moved = replace(scene, hood=replace(scene.hood, centre_in=x, fasteners=(scene.hood.fasteners[0],)))
        mark = hood_marks(moved, frame)[0]
        inside = any(b.lo[0] + 0.25 <= x - 10.5 <= b.hi[0] - 0.25 and b.lo[2] <= 75.5 <= b.hi[2] for b in wood)
        assert mark.wood == inside, x
        # common practice: 3/16 in into wood, 7/16 in for the anchor of a large screw, hanging screws 1/4 in proud
        assert mark.pilot_in == (0.1875 if inside else 0.4375)
        assert mark.stand_off_in == 0.25
        assert mark.holds.startswith("stud") if inside else mark.holds.startswith("board only")


def test_bracket_screws_are_an_inch_under_its_edge() -> None:
    bracket = [m for m in hood_marks(samples.scene(), handmade.frame()) if m.row == "bracket"]
    # common practice: edge 1/8 in below the ceiling at 96 in, screws 1 in under it, pilot 5/32 in into the plate
    assert [(m.left_in, m.height_in, m.pilot_in, m.wood) for m in bracket] == [
        (65.5, 94.875, 0.15625, True), (74.5, 94.875, 0.15625, True),
    ]  # fmt: skip


@pytest.mark.parametrize(
    ("kind", "holds", "wood"), [(WallFrame.MASONRY, "masonry wall", False), (WallFrame.LOG, "log wall", True)]
)
def test_solid_walls(kind: WallFrame, holds: str, wood: bool) -> None:
    scene = samples.scene()
    walls = (replace(samples.wall(WallSide.HOOD), frame=kind, studs=None), *scene.walls[1:])
    mark = hood_marks(replace(scene, walls=walls), handmade.frame())[0]
    assert (mark.holds, mark.wood) == (holds, wood)
    assert ("masonry anchor" in mark.fastener) != wood


def test_no_mounting_height_no_marks() -> None:
    scene = samples.scene(hood=replace(samples.scene().hood, mount_in=None))
    taken = count(handmade.up_route(), scene, handmade.frame())
    assert taken.marks == ()
    assert not any(s.id == "screws" for s in taken.steps)


def test_where_the_brackets_edge_lies_is_said_and_its_screws_are_drawn_lower() -> None:
    plan = handmade.plan()
    assert plan.best is not None
    said = "bracket's top edge 1/8 in below the ceiling"
    assert {m.piece for m in plan.best.takeoff.marks} == {"", said}
    text = " ".join(reports.plan_text(plan).split())
    for mark in (m for m in plan.best.takeoff.marks if m.row == "bracket"):
        assert re.search(rf"{mark.label}: \S+( \S+)? in from the left wall, 94 7/8 in up; .*?; {said}", text)
    (step,) = [s for s in plan.best.takeoff.steps if s.id == "bracket"]
    assert "its top edge 1/8 in below the ceiling" in step.text
    page = next(p for p in sheets(plan) if p.name == "marking")
    words = " ".join(item.text for item in page.items if isinstance(item, Text))
    assert f"B{said[1:]}, its screws" in words
    assert "94 7/8" in words
    assert "95 7/8" not in words


def test_what_is_taken_for_the_bracket_stands_among_the_assumptions() -> None:
    (found,) = assumptions(samples.scene())
    assert found.value.endswith("below the ceiling, its screws 1 in under that edge")
    bare = samples.scene()
    assert assumptions(replace(bare, hood=replace(bare.hood, cover=None))) == ()
