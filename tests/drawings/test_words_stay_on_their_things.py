"""Figures, names and heads stand on what they belong to: on their half, in their piece, on the wall, off the studs."""

from __future__ import annotations

import re
from functools import cache
from pathlib import Path as File

import pytest

from routeviz.drawings import sheets
from routeviz.drawings.lettering import box
from routeviz.drawings.primitives import Anchor, Page, Path, Text
from routeviz.drawings.sketch import Sketch
from routeviz.drawings.taken import crosses, overlaps
from routeviz.pipeline import plan
from routeviz.scenefile import load

SCENES = File(__file__).parents[2] / "scenes"
STUDDED = ["juniper_straight_up", "cathedral_roof", "big_fan_small_duct", "side_wall_storey_above"]
LUMBER, WALL, CENTRE, STUD_EDGE, GREY = "#f7ecd4", "#faf6ee", "#12646b", "#7a5220", "#5a554b"
INCH = 25.4 / 12  # of the marking sheets at 1 in = 1 ft [mm]


@cache
def pages(name: str) -> tuple[Page, ...]:
    return sheets(plan(load(SCENES / f"{name}.toml"), alternatives=1), template=True)


def page_of(name: str, sheet: str = "marking") -> Page:
    return next(p for p in pages(name) if p.name == sheet)


def texts(page: Page) -> list[Text]:
    return [t for t in page.items if isinstance(t, Text)]


def paths(page: Page) -> list[Path]:
    return [p for p in page.items if isinstance(p, Path)]


def plumb(page: Page) -> list[tuple[float, float, float, Path]]:
    """Give the plumb lines of a page: x, low, high."""
    found = [p for p in paths(page) if len(p.points) == 2 and abs(p.points[0][0] - p.points[1][0]) < 1e-6]
    return [(p.points[0][0], *sorted((p.points[0][1], p.points[1][1])), p) for p in found]


def centre_line(page: Page) -> float:
    return next(x for x, _, _, p in plumb(page) if p.ink == CENTRE and p.dash)


@pytest.mark.parametrize(
    ("name", "figures"),
    [
        ("juniper_straight_up", ("10 1/2", "5 1/2", "4 1/2")),
        ("truss_in_front", ("8", "4 1/2")),
        ("joist_dead_centre", ("8", "5 1/2")),
        ("cathedral_roof", ("8", "8 1/2")),
        ("side_wall_storey_above", ("8", "4 1/2")),
    ],
)
def test_each_figure_of_a_pair_stands_on_its_own_half(name: str, figures: tuple[str, ...]) -> None:
    """Screws stand as far left of the centre line as right of it: each half has its own figure."""
    page = page_of(name)
    x = centre_line(page)
    for figure in figures:
        boxes = [box(t) for t in texts(page) if t.text == figure and t.turn == 0 and t.halo == WALL]
        assert len(boxes) == 2, figure
        left, right = sorted(boxes)
        assert left[2] < x < right[0], figure


def test_a_figure_slides_along_its_line_and_never_past_the_centre() -> None:
    """Both lines are drawn first; a post stands in the left one's middle, and the right one is too short for its words."""
    sketch = Sketch((0.0, 0.0, 100.0, 100.0))
    sketch.line((35.0, 0.0), (35.0, 100.0), 0.5)
    sketch.dims_from(50.0, [(20.0, 40.0, "10 1/2", 30.0), (52.0, 40.0, "1 1/2", 30.0)])
    long, short = (next(t for t in sketch.items if isinstance(t, Text) and t.text == w) for w in ("10 1/2", "1 1/2"))
    a, b = box(long), box(short)
    assert a[0] > 20.0
    assert a[2] < 50.0
    assert not a[0] < 35.0 < a[2]
    assert b[0] > 52.0


@pytest.mark.parametrize("name", ["truss_in_front", "cathedral_roof", "joist_dead_centre", "side_wall_storey_above"])
def test_backing_is_named_in_its_piece(name: str) -> None:
    page = page_of(name)
    pieces = [(min(x), min(y), max(x), max(y)) for p in paths(page) if p.fill == LUMBER
              for x, y in [tuple(zip(*p.points, strict=True))]]  # fmt: skip
    names = [box(t) for t in texts(page) if t.halo == LUMBER]
    assert len(names) == len(pieces) >= 2
    for a, b, c, d in pieces:
        assert sum(a < n[0] and b < n[1] and n[2] < c and n[3] < d for n in names) == 1


def test_another_place_for_the_centre_is_no_place_for_a_screw() -> None:
    """Told over the ceiling, and ticked under the mounting line, where the supply 5 in left has its dimension above it."""
    page = page_of("joist_dead_centre")
    words = [t.text for t in texts(page)]
    assert [w for w in words if w.startswith("or ")] == ["or centre 54", "or centre 57", "or centre 67"]
    x = centre_line(page)
    ceiling = max(p.points[0][1] for p in paths(page) if len(p.points) == 2 and p.weight == 0.55
                  and p.points[0][1] == p.points[1][1] and p.points[0][0] < x < p.points[1][0])  # fmt: skip
    mounting = next(
        p.points[0][1] for p in paths(page) if p.ink == CENTRE and p.dash and p.points[0][1] == p.points[1][1]
    )
    for off in (-8.0, -5.0, 5.0):  # 54, 57 and 67 beside 62
        mine = [(low, high) for at, low, high, p in plumb(page) if abs(at - x - off * INCH) < 1e-6 and p.ink == GREY]
        assert len(mine) == 2
        tick, pole = sorted(mine)
        assert tick[1] == pytest.approx(mounting)
        assert pole[0] == pytest.approx(ceiling)


@pytest.mark.parametrize("name", STUDDED)
def test_no_stud_runs_through_the_head_of_a_template(name: str) -> None:
    """The square to check the print by, the title, its figure and the arrow stand clear of every dashed edge."""
    studs = 0
    for page in (p for p in pages(name) if p.name == "template"):
        (square,) = [
            p
            for p in paths(page)
            if p.closed and len(p.points) == 4 and p.points[1][0] - p.points[0][0] == pytest.approx(25.4)
        ]
        (x0, y0), (up,) = square.points[0], [t for t in texts(page) if t.text == "this side up"]
        head = x0, y0, box(up)[2], y0 + 25.4
        edges = [p for p in paths(page) if p.ink == STUD_EDGE]
        studs += len(edges)
        strokes = [(*a, *b) for p in edges for a, b in zip(p.points, p.points[1:], strict=False)]
        assert not any(crosses(head, s) for s in strokes)
    assert studs


@pytest.mark.parametrize(
    "name", [*STUDDED, "furring_strip_brick", "metric_concrete_ceiling", "rear_outlet_straight_back"]
)
def test_a_marks_two_lines_stand_together_on_the_template(name: str) -> None:
    named = 0
    for page in (p for p in pages(name) if p.name == "template"):
        for first in (t for t in texts(page) if re.match(r"S\d+ ", t.text)):
            under = [t for t in texts(page) if "of the centre line" in t.text or t.text == "on the centre line"]
            assert any(
                t.anchor is first.anchor and t.at == pytest.approx((first.at[0], first.at[1] - 4.0)) for t in under
            )
            named += 1
    assert (
        named == len([t for t in texts(page_of(name)) if re.fullmatch(r"S\d+", t.text)]) / 2
    )  # there on wall and in table


def test_a_block_of_lines_moves_as_one() -> None:
    """At the first place the second line, 4 mm lower, would stand on another text: both go to the second place."""
    sketch = Sketch((0.0, 0.0, 100.0, 100.0))
    other = sketch.text((10.0, 46.0), "taken")
    places = [((10.0, 50.0), Anchor.LEFT), ((10.0, 70.0), Anchor.LEFT)]
    assert sketch.block(places, ("first", "second"), 4.0, 2.5)
    first, second = (t for t in sketch.items if isinstance(t, Text) and t is not other)
    assert (first.at, second.at) == ((10.0, 70.0), (10.0, 66.0))
    assert not overlaps(box(second), box(other))
    assert not sketch.block(places[:1], ("first", "second"), 4.0, 2.5)


@pytest.mark.parametrize("name", ["out_the_back", "rear_outlet_straight_back", "old_duct_in_the_way"])
def test_the_holes_words_end_with_the_wall_that_is_shown(name: str) -> None:
    page = page_of(name)
    wall = [x for p in paths(page) if p.fill == WALL for x, _ in p.points]
    left, _, right, _ = box(next(t for t in texts(page) if t.text.startswith("duct hole, ")))
    assert min(wall) < left
    assert right < max(wall)


@pytest.mark.parametrize(
    ("name", "goes_on"),
    [
        ("metric_concrete_ceiling", True),
        ("out_the_back", True),
        ("side_wall_storey_above", True),
        ("garage_beyond", False),
    ],
)
def test_a_wall_under_another_flat_or_storey_is_broken_off_on_top(name: str, goes_on: bool) -> None:
    """A line with zigzags says that it goes on; the garage ends with its own top edge, whatever the kitchen has above it."""
    page = page_of(name, "outside")
    level = [p for p in paths(page) if len(p.points) > 4 and not p.closed and p.points[0][1] == p.points[-1][1]]
    zigzags = [p for p in level if p.points[-1][0] - p.points[0][0] > 50.0 or p.points[0][0] - p.points[-1][0] > 50.0]
    assert bool(zigzags) is goes_on


@pytest.mark.parametrize("name", ["metric_concrete_ceiling", "out_the_back"])
def test_an_elbow_in_the_room_is_named_in_the_room(name: str) -> None:
    """On its free left side, not in the wall's hatching right of the finished face."""
    page = page_of(name, "section along the duct")
    (words,) = [t for t in texts(page) if t.text.startswith("elbow ")]
    face = min(x for p in paths(page) if p.id == "hood-inside-1-1" for x, _ in p.points)
    elbow = min(x for p in paths(page) if p.id == "elbow-1" for x, _ in p.points)
    assert box(words)[2] < elbow < face
