"""A plan without a route goes to the site too: what is in the way at true scale, what frees it, and nothing to cut yet."""

from __future__ import annotations

import math
from dataclasses import replace
from functools import cache
from pathlib import Path as File

import pytest
import samples
from cases.homes import with_wall

from routeviz.drawings import faults, sheets
from routeviz.drawings.conflict_words import STOP, free_places
from routeviz.drawings.primitives import Page, Path, Text
from routeviz.drawings.wished import wishes
from routeviz.model.path import Blocker, WhyNot
from routeviz.model.plan import Plan
from routeviz.model.scene import Opening, OpeningKind, WallSide
from routeviz.pipeline import plan
from routeviz.scenefile import load
from routeviz.units import length_text

SCENES = File(__file__).parents[2] / "scenes"
BLOCKED = ("joist_dead_centre", "stud_dead_centre", "soffit_vent_cap", "lot_line_close")


@cache
def planned(name: str) -> Plan:
    return plan(load(SCENES / f"{name}.toml"), alternatives=1)


def pages(name: str) -> dict[str, list[Page]]:
    found: dict[str, list[Page]] = {}
    for page in sheets(planned(name)):
        found.setdefault(page.name, []).append(page)
    return found


def said(page: Page) -> str:
    return " ".join(t.text for t in page.items if isinstance(t, Text))


@pytest.mark.parametrize("name", BLOCKED)
def test_the_conflict_and_the_marks_are_drawn_with_a_stop_on_each(name: str) -> None:
    found = pages(name)
    assert found["what is in the way"]
    (marking,) = found["marking"]
    for page in (*found["what is in the way"], marking):
        assert STOP in said(page)
        assert faults(page) == ()
    assert all(mark.label in said(marking) for mark in planned(name).marks)
    assert len(planned(name).marks) >= 3


def test_a_plan_with_a_route_has_no_such_sheet() -> None:
    made = plan(samples.scene(), alternatives=1)
    assert made.marks == ()  # they are counted with the route
    assert all(STOP not in said(page) for page in sheets(made))


def test_a_joist_dead_over_the_hood() -> None:
    """Joist 4's middle stands at 62 in: half its 1 1/2 in, the duct's radius and its clearance make 5 in either way."""
    made = planned("joist_dead_centre")
    (page,) = pages("joist_dead_centre")["what is in the way"]
    text = said(page)
    assert "Joist 4: edges 61 1/4 and 62 3/4 in from the left wall, 1 1/2 in into the duct" in text
    assert "1 1/2 in the way" in text
    assert "8 1/2 duct and clearance" in text  # 8 and a quarter on each side
    least = 0.75 + made.scene.duct.sections[0].width_in / 2 + made.scene.duct.clearance_in
    assert least == 5.0
    assert "moved so far, it is free" in text
    assert "5 left" in text
    assert "5 right" in text
    assert {62.0 - least, 62.0 + least} <= {at for at, _ in free_places(made)}


def test_the_section_is_true_to_its_scale() -> None:
    """3/4 in = 1 ft is 1 : 16, so a 1 1/2 in joist is 2.38 mm wide and the 8 in duct 12.7 mm."""
    (page,) = pages("joist_dead_centre")["what is in the way"]
    assert "3/4 in = 1 ft" in said(page)

    def wide(item: Path) -> float:
        return max(x for x, _ in item.points) - min(x for x, _ in item.points)

    joist = next(p for p in page.items if isinstance(p, Path) and p.id == "joist-4")
    assert wide(joist) == pytest.approx(1.5 * 25.4 / 16)
    duct = next(p for p in page.items if isinstance(p, Path) and p.id == "wished-2")
    assert wide(duct) == pytest.approx(8.0 * 25.4 / 16)
    middle = [(min(x for x, _ in p.points) + max(x for x, _ in p.points)) / 2 for p in (joist, duct)]
    assert middle[0] == pytest.approx(middle[1])  # dead centre


def test_a_stud_dead_behind_the_outlet() -> None:
    """A duct 10 in wide: 3/4 + 5 + 1/4 = 6 in either way from the stud's middle at 48 3/4 in."""
    (page,) = pages("stud_dead_centre")["what is in the way"]
    text = said(page)
    assert "Stud 4: edges 48 and 49 1/2 in from the left wall" in text
    assert "6 left" in text
    assert "Hood centre 54 3/4 in from the left wall: 6 in right" in text


def test_a_window_too_near_for_a_cap() -> None:
    """The opening's edge at 56 3/4 - 3 in, the window's at 38 in: 15 3/4 in of the 36 in that are wanted."""
    (page,) = pages("soffit_vent_cap")["what is in the way"]
    assert "Side window: 15 3/4 in from the cap's opening, at least 36 in is wanted: 20 1/4 in short" in said(page)
    front = pages("soffit_vent_cap")["hood wall"][0]
    assert "side window, too near for a cap" in " ".join(said(front).split())


def test_a_lot_line_behind_the_wall() -> None:
    """18 in of 36 in from the wall's face, as it is drawn: told from the scene, whatever the search needs to go round it."""
    up, back = pages("lot_line_close")["what is in the way"]
    assert "The room above is closed to the duct." in said(up)
    assert "Lot line: 18 in from the wall's face, at least 36 in is wanted: 18 in short" in said(back)
    assert "18: at least 36 is wanted" in said(back)
    assert "ask the building department" in said(back)


def test_a_window_that_the_roof_overlooks() -> None:
    """Drawn on the roof with the distance in space: 20 in beside, 15 11/16 in from the wall, 26 1/16 in below the cap."""
    roof = replace(samples.scene().roof, overhang_in=0.0)
    window = Opening("high-window", OpeningKind.WINDOW, True, 90.0, 60.0, 28.0, 32.0)
    home = with_wall(samples.scene(roof=roof), WallSide.HOOD, openings=(window,))
    home = replace(home, cap=replace(home.cap, wall=False, roof_stub_in=4.0), duct=replace(home.duct, max_elbows=0))
    made = plan(home, alternatives=1)
    page = next(p for p in sheets(made) if p.name == "what is in the way")
    up = 103.875 + 14.5 / 4 + 6.375 * math.hypot(1.0, 0.25) + 4.0 - 92.0
    gap = math.hypot(math.hypot(20.0, 8.5 + 7.1875) - 4.0, up)
    assert f"{length_text(gap, metric=False)} from the cap's opening, at least 36 in is wanted" in said(page)
    assert faults(page) == ()


def test_what_has_no_place_is_not_drawn() -> None:
    made = planned("lot_line_close")
    nowhere = WhyNot("straight up", (Blocker("", "there is no roof to leave through", 0.0, (0.0, 0.0, 0.0), "zone"),),
                     None, None, None)  # fmt: skip
    bare = replace(made, paths=replace(made.paths, why_not=(nowhere,)))
    assert wishes(bare) == ()
    assert [p.name for p in sheets(bare)][:2] == ["hood wall", "marking"]
