"""Members of one row are named as the trade counts them, and a bay is named once."""

from __future__ import annotations

import doctest
from dataclasses import replace

import handmade
import pytest
import samples
from search.test_search_find import WALL, box, house

from routeviz.model import members
from routeviz.model.members import together
from routeviz.model.path import Bend, Centreline
from routeviz.model.route import Allowance, Near
from routeviz.model.scene import MemberKind
from routeviz.model.solids import Box, Crossing, Member, Solid, SolidKind
from routeviz.reports.room import room_text
from routeviz.routing.words import in_words
from routeviz.takeoff.measure import measure_first


def test_the_examples_hold() -> None:
    assert doctest.testmod(members).attempted == 2
    assert doctest.testmod(members).failed == 0


@pytest.mark.parametrize(
    ("labels", "said"),
    [
        (["right wall stud 10", *(f"right wall stud {n}" for n in range(2, 10))], "right wall studs 2 to 10"),
        (["joist 5", "joist 4"], "joists 4 and 5"),
        (["joist 1", "joist 2", "joist 4", "joist 6", "joist 7", "joist 8"], "joists 1, 2, 4 and 6 to 8"),
        (["rafter 4, back slope", "rafter 5, back slope"], "rafters 4 and 5, back slope"),
        (["rafter 4, back slope", "rafter 5, front slope"], "rafter 4, back slope and rafter 5, front slope"),
        (["truss 2", "truss 3"], "trusses 2 and 3"),
        (["joist 4", "rafter 4"], "joist 4 and rafter 4"),
        (["front wall stud 1", "right wall stud 1", "beam"], "front wall stud 1, right wall stud 1 and beam"),
        (["hood 2", "hood 3"], "hood 2 and hood 3"),  # no row that is counted along a wall
        (["stud 3", "stud 3"], "stud 3"),
        (["beam"], "beam"),
        ([], ""),
    ],
)
def test_rows_are_named_once(labels: list[str], said: str) -> None:
    assert together(labels) == said


def test_a_row_of_studs_is_one_line_to_measure() -> None:
    """Nine studs of a side wall stand with their faces in one plane: one reading of the tape answers for all."""
    studs = [
        Solid(f"right-stud-{n}", SolidKind.STUD, f"right wall stud {n}",
              Box((80.0, -16.0 * n - 1.5, 0.0), (83.5, -16.0 * n, 96.0)), Crossing.NEVER, "test")
        for n in range(2, 11)
    ]  # fmt: skip
    framed = handmade.frame()
    framed = replace(framed, solids=(*framed.solids, *studs))
    near = tuple(
        Near(s.id, s.label, 2.0, (1.0, 0.0, 0.0), (80.0, -8.5, 90.0), "straight-1")
        for s in sorted(studs, key=lambda s: s.id)  # as text "10" comes before "2"
    )
    (found,) = measure_first(replace(handmade.up_route(), near=near), samples.scene(), framed)
    assert found.what == "right wall studs 2 to 10, left edge"
    assert len(found.ids) == 18  # each stud and the part beside it


def test_room_to_spare_names_a_row_once() -> None:
    near = tuple(
        Allowance(f"stud-{n}", f"stud {n}", 0, sign, 2.0, 0.5, "run") for n, sign in ((4, 1), (5, -1), (6, -1), (7, -1))
    )
    lines = room_text(replace(handmade.up_route(), allowances=near), metric=False, width=200)
    assert lines[1].endswith("spare: stud 4, 2 in to the right · studs 5 to 7, 2 in to the left")


def test_a_bay_is_named_by_the_first_run_in_it() -> None:
    joists = tuple(
        replace(box(f"joist {n}", (x, -96, 96.5), (x + 1.5, 0, 104), Crossing.NEVER, SolidKind.JOIST),
                member=Member(MemberKind.SAWN, "2x8", 1.5, 7.25, 1, n))
        for n, x in ((4, 62.0), (5, 78.0))
    )  # fmt: skip
    points = ((70.0, -50.0, 78.0), (70.0, -50.0, 100.0), (70.0, 6.0, 100.0))
    line = Centreline(
        points, (Bend(points[1], 90.0, 8.0, 8.0),), samples.ROUND_8, (None, None), "face-hood", 1.0, 78.0, 0.0, ()
    )
    assert in_words(line, house(*joists), WALL) == "Up between joists 4 and 5, then back, out through the wall behind"
