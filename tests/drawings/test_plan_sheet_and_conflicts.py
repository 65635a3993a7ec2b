"""The joist plan of a run over the ceiling says what is opened; a conflict's words stand clear of its lines."""

from __future__ import annotations

from functools import cache
from pathlib import Path as FilePath

import pytest

from routeviz.drawings.checking import faults
from routeviz.drawings.lettering import box
from routeviz.drawings.packet import sheets
from routeviz.drawings.primitives import Anchor, Page, Path, Text
from routeviz.drawings.sketch import Sketch
from routeviz.drawings.taken import crosses, letters, overlaps
from routeviz.model.opened import opened_along
from routeviz.pipeline import plan
from routeviz.scenefile import load

SCENES = FilePath(__file__).parents[2] / "scenes"


@cache
def _pages(name: str) -> tuple[Page, ...]:
    return sheets(plan(load(SCENES / f"{name}.toml")))


def _page(name: str, title: str) -> Page:
    return next(p for p in _pages(name) if p.title.startswith(title))


def _texts(page: Page) -> list[Text]:
    return [t for t in page.items if isinstance(t, Text)]


def test_the_joist_plan_draws_the_strip_that_is_opened() -> None:
    """The elbow goes in by the strip too: hood centre 72, a 6 in duct with 1/4 in round it begins at 72 - 3 1/4 = 68 3/4;
    the right wall stands at 144: 75 1/4 in. Joists' faces 1 1/2 and 16 out: 14 1/2."""
    page = _page("side_wall_storey_above", "Joist plan")
    words = [t.text for t in _texts(page)]
    assert "72 from the left wall" in words
    assert "ceiling hole 6 1/2 in round" in words
    assert "open the ceiling from below: 75 1/4 x 14 1/2 clear between the joists (patch to mid-joist)" in words
    (strip,) = [p for p in page.items if isinstance(p, Path) and p.id == "strip"]
    xs, ys = [p[0] for p in strip.points], [p[1] for p in strip.points]
    assert (max(xs) - min(xs)) / (max(ys) - min(ys)) == pytest.approx(75.25 / 14.5)
    collar = next(t for t in _texts(page) if t.text == "72 from the left wall")
    mm = (max(ys) - min(ys)) / 14.5
    assert collar.at[0] + 36 * mm == pytest.approx(min(xs) + (72 - 68.75) * mm)  # its middle stands at 36 in


def test_the_strip_on_the_plan_is_the_one_in_the_list_of_parts() -> None:
    found = plan(load(SCENES / "side_wall_storey_above.toml"))
    assert found.best is not None
    (line,) = [b for b in found.best.takeoff.buy if b.unit == "strip"]
    axis, low, high = opened_along([p for p in found.best.route.parts if p.id in line.parts], found.scene)
    assert (axis, low, high) == (0, 68.75, 144.0)
    assert line.note.endswith("from 68 3/4 in to 144 in from the left wall")


@pytest.mark.parametrize("name", ["stud_dead_centre", "joist_dead_centre"])
def test_each_moved_duct_says_its_shift(name: str) -> None:
    found = plan(load(SCENES / f"{name}.toml"))
    why = next(w for w in found.paths.why_not if w.shift_in is not None)
    assert why.shift_in is not None
    assert why.shift_other_in is not None
    words = [t.text for t in _texts(next(p for p in _pages(name) if "in the way" in p.title))]
    for shift in (why.shift_in, why.shift_other_in):
        assert f"free when {abs(shift):g} {'right' if shift > 0 else 'left'}" in words


@pytest.mark.parametrize("name", ["stud_dead_centre", "joist_dead_centre", "lot_line_close", "soffit_vent_cap"])
def test_no_fine_line_strikes_a_word_of_a_conflict(name: str) -> None:
    """Extension lines, leaders and dashed edges keep off the letters that have no ground of their own."""
    for page in (p for p in _pages(name) if "in the way" in p.title):
        assert faults(page) == ()
        lines = [p for p in page.items if isinstance(p, Path) and len(p.points) == 2 and 0 < p.weight < 0.3 and not p.closed
                 and p.ink not in ("#d8d2c6", "#7a5220", "#b52d15", "#5a554b")]  # fmt: skip
        for text in _texts(page):
            struck = [p for p in lines if crosses(letters(text), (*p.points[0], *p.points[1]))]
            assert not struck or text.halo is not None or text.size > 3.0, text.text


def test_a_label_rather_keeps_off_a_fine_line() -> None:
    """Two places: one under a hair line, one clear; with the clear one taken the halo stands on the line."""
    sketch = Sketch((0.0, 0.0, 100.0, 100.0))
    sketch.line((0.0, 50.8), (100.0, 50.8), 0.12)
    places = [((20.0, 50.0), Anchor.LEFT), ((20.0, 60.0), Anchor.LEFT)]
    first = sketch.label(places, "first", halo="#ffffff")
    second = sketch.label(places, "second", halo="#ffffff")
    assert first is not None
    assert second is not None
    assert first.at == (20.0, 60.0)
    assert second.at == (20.0, 50.0)
    assert not overlaps(box(first), box(second))


def test_a_number_stands_on_its_member_over_fine_lines() -> None:
    sketch = Sketch((0.0, 0.0, 100.0, 100.0))
    sketch.line((0.0, 50.8), (100.0, 50.8), 0.12)
    made = sketch.label([((20.0, 50.0), Anchor.LEFT), ((20.0, 60.0), Anchor.LEFT)], "4", over=True)
    assert made is not None
    assert made.at == (20.0, 50.0)


def test_the_isometric_shows_the_duct_in_the_wall() -> None:
    """Behind the wall two rims and the two edges between them are dashed."""
    page = _pages("out_the_back")[0]
    dashed = [
        p for p in page.items if isinstance(p, Path) and p.ink == "#12646b" and p.dash == (1.2, 0.7) and p.weight < 0.2
    ]
    assert len([p for p in dashed if p.closed]) == 2
    assert len([p for p in dashed if len(p.points) == 2 and not p.closed]) == 2
