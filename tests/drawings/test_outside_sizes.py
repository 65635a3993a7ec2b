"""Outdoors a size counts from something that is there: a corner, a jamb, a head; never from a wall indoors unsaid."""

from __future__ import annotations

from functools import cache
from pathlib import Path as FilePath

import pytest

from routeviz.drawings.packet import sheets
from routeviz.drawings.primitives import Page, Path, Text
from routeviz.pipeline import plan
from routeviz.scenefile import edit, load, loads

SCENES = FilePath(__file__).parents[2] / "scenes"


@cache
def _outside(name: str, changes: tuple[tuple[str, object], ...] = ()) -> Page:
    path = SCENES / f"{name}.toml"
    scene = (
        loads(edit(path.read_text(), {k: list(v) if isinstance(v, tuple) else v for k, v in changes}))
        if changes
        else load(path)
    )
    return next(p for p in sheets(plan(scene)) if p.title.startswith("Outside of"))


def _words(page: Page) -> list[str]:
    return [t.text for t in page.items if isinstance(t, Text)]


def test_where_the_house_goes_on_a_jamb_and_a_head_are_measured_from() -> None:
    """The window's left jamb is at 100 in, its head at 44 + 36 = 80; the cap at 56 3/4, 84 1/2 up."""
    words = _words(_outside("out_the_back"))
    assert "43 1/4 to the jamb of the sink window" in words
    assert "4 1/2 above the head of the sink window" in words
    assert "84 1/2 above the kitchen floor" in words
    assert not any("corner" in w for w in words)


def test_a_corner_outdoors_takes_in_the_next_walls_sheathing_and_siding() -> None:
    """56 3/4 in from the left wall's finished face, and 1/2 + 3 1/2 + 7/16 + 3/4 = 5 3/16 in of that wall: 61 15/16."""
    changes = (
        ("walls.left.beyond", "outdoors"),
        ("walls.left.outside", ("OSB sheathing 7/16 in", "wood lap siding 3/4 in")),
    )
    assert "61 15/16 to the corner" in _words(_outside("out_the_back", changes))


def test_without_corner_or_window_the_line_indoors_is_named() -> None:
    words = _words(_outside("old_duct_in_the_way"))
    assert "56 3/4, measured indoors" in words
    assert "inner face of the left wall; the house goes on" in words


def test_a_garages_heights_count_from_its_own_floor() -> None:
    """The garage's floor lies 6 in lower than the kitchen's; 73 in + 6 in = 79 in, as its holes are listed."""
    words = _words(_outside("garage_beyond"))
    assert "79 above the garage floor" in words
    assert "23 below the top edge of the wall" in words  # 96 - 73
    assert not any("kitchen floor" in w for w in words)


@pytest.mark.parametrize(
    ("name", "cuts"),
    [
        ("out_the_back", ["cut wood lap siding: 10 x 10 for the mounting block", "cut OSB sheathing: 6 1/2 round"]),
        ("garage_beyond", ["cut wood lap siding: 12 x 12 for the mounting block", "cut OSB sheathing: 8 1/2 round"]),
        ("metric_concrete_ceiling", ["cut cement render: 175 round", "cut masonry: 175 round"]),
    ],
)
def test_the_sheet_says_what_is_cut_there(name: str, cuts: list[str]) -> None:
    words = _words(_outside(name))
    assert [w for w in words if w.startswith("cut ")] == cuts


def test_the_zone_round_a_window_is_named_and_left_open_where_the_view_ends() -> None:
    """36 in round a window at 100 to 128 in reach past the wall's end at 136 1/2: no line closes it there."""
    page = _outside("out_the_back")
    assert "dashed: no cap within 36 in of the sink window" in _words(page)
    zone = [p for p in page.items if isinstance(p, Path) and p.dash == (1.0, 1.0)]
    assert zone
    assert not any(p.closed for p in zone)


def test_a_hole_through_a_slope_is_an_ellipse_that_is_longer_up_the_slope() -> None:
    """6 1/2 in round for the duct's clearance, 5 in 12: 6 1/2 * 13/12 = 7 1/24 in, printed to the sixteenth: 7 1/16."""
    page = next(p for p in sheets(plan(load(SCENES / "truss_in_front.toml"))) if p.title == "Roof from above")
    cuts = [w for w in _words(page) if w.startswith("cut ")]
    assert cuts == [
        "cut asphalt shingles: ellipse 7 1/16 up the slope x 6 1/2",
        "cut plywood deck: ellipse 7 1/16 up the slope x 6 1/2",
    ]


def test_advice_on_a_distance_stands_beside_it() -> None:
    """36 in to a soffit vent is advice alone: the search does not keep it, and the sheet still says what is advised."""
    moved = (("hood.centre", "84 3/4 in"), ("cooktop.centre", "84 3/4 in"))
    words = _words(_outside("soffit_vent_cap", moved))
    assert any("to the soffit vent, advised at least 36" in w for w in words), words
