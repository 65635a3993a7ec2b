"""Whatever the numbers of a home are, its sheets may be printed: nothing outside, overlapping, struck or too small."""

from __future__ import annotations

import random
import tomllib
from pathlib import Path as File

import pytest

from routeviz import drawings
from routeviz.drawings.checking import Fault
from routeviz.drawings.lettering import box
from routeviz.drawings.primitives import Page, Path, Text
from routeviz.errors import RoutevizError
from routeviz.model.plan import Plan
from routeviz.pipeline import plan
from routeviz.rules import codes, profiles
from routeviz.scenefile import edit, loads

FOLDER = File(__file__).parents[2] / "scenes"
RECTANGLE = {"duct.sections": ["3-1/4 x 10 in"]}
HOMES = {
    "a ceiling 12 ft high": ("old_duct_in_the_way", {"kitchen.ceiling": "144 in"}),
    "a ceiling 16 ft high": ("out_the_back", {"kitchen.ceiling": "192 in"}),
    "a gable 20 ft high, studs close": (
        "cathedral_roof",
        {"kitchen.ceiling": "241 5/16 in", "walls.hood.studs.spacing": "12 13/16 in"},
    ),
    "a window half behind the hood": ("soffit_vent_cap", {"hood.width": "45 in", "hood.centre": "45 3/8 in"}),
    "a cabinet half behind the hood": ("gas_low_cabinets", {"hood.centre": "57 in"}),
    "a shelf behind the hood": ("gas_low_cabinets", {"obstacles.1.bottom": "100 in", "cooktop.height": "18 13/16 in"}),
    "joists close beside the duct": ("gas_low_cabinets", {"kitchen.width": "216 in", "hood.outlet.out": "12 3/4 in"}),
    "a cooktop far from the hood": ("joist_dead_centre", {"cooktop.centre": "124 in", **RECTANGLE}),
    "a cooktop past the section's end": ("side_wall_storey_above", {"cooktop.centre": "36 in"}),
    "studs of two walls in one conflict": ("garage_beyond", {"hood.centre": "51 1/16 in"}),
    "a hood beside a wide wall's corner": (
        "soffit_vent_cap",
        {"kitchen.width": "216 in", "kitchen.ceiling": "156 in", "hood.centre": "23 7/16 in", "cooktop.centre": "23 7/16 in"},
    ),
    "a vent far above the cap": (
        "soffit_vent_cap",
        {"kitchen.width": "168 in", "kitchen.ceiling": "168 in", "hood.centre": "118 9/16 in"},
    ),
    "a cap close under a window": (
        "out_the_back",
        {"kitchen.width": "168 in", "hood.centre": "119 5/8 in", "cooktop.centre": "119 5/8 in", **RECTANGLE},
    ),
    "a cap beside a wall below the roof": ("truss_in_front", {"kitchen.width": "216 in", **RECTANGLE}),
}  # fmt: skip
ON_TABLOID = ("a cap beside a wall below the roof",)  # where the cap meets the wall's name
NUMBERS = range(34, 46)  # of homes drawn by lot
PLACES = ("kitchen.ceiling", "kitchen.width", "walls.hood.studs.spacing", "ceiling.joists.spacing", "roof.framing.spacing",
          "hood.centre", "cooktop.centre", "cooktop.height", "cooktop.width", "hood.width", "hood.mount",
          "obstacles.0.left", "obstacles.0.width", "obstacles.0.bottom", "obstacles.1.left", "obstacles.1.bottom",
          "walls.hood.openings.0.left", "walls.hood.openings.0.sill", "walls.hood.openings.0.width")  # fmt: skip
VALUES = {
    "kitchen.width": (96.0, 120.0, 144.0, 171.0, 200.0, 240.0),
    "ceiling": (84.0, 90.0, 102.0, 114.0, 132.0, 150.0, 168.0, 192.0),
    "width": (12.0, 18.0, 30.0, 36.0, 45.0, 60.0),
    "spacing": (8.375, 9.625, 12.0, 12.8125, 14.375, 16.0, 19.1875, 24.0),
    "bottom": (54.0, 66.0, 79.5, 90.0, 100.0),
    "sill": (22.0, 36.0, 42.0, 60.0),
    "mount": (24.0, 27.0, 30.0, 33.0),
    "height": (30.0, 34.5, 36.0, 40.0),
}


def planned(home: str, changes: dict[str, object]) -> Plan:
    text = edit((FOLDER / f"{home}.toml").read_text(encoding="utf-8"), changes)
    return plan(loads(text, f"{home}.toml", profiles=profiles(), codes=codes()), alternatives=1)


def drawn_by_lot(number: int) -> Plan:
    """Give a shipped home with one to four of its numbers changed, the first of this lot that can be built."""
    lot = random.Random(number)
    files = sorted(FOLDER.glob("*.toml"))
    while True:
        file = lot.choice(files)
        there = [place for place in PLACES if says(tomllib.loads(file.read_text(encoding="utf-8")), place)]
        changes: dict[str, object] = {}
        for place in lot.sample(there, lot.randint(1, 4)):
            values = VALUES.get(place) or VALUES.get(place.rsplit(".", 1)[1], tuple(range(20, 130, 7)))
            changes[place] = f"{lot.choice(values)} in"
        try:
            return planned(file.stem, changes)
        except RoutevizError:
            continue


def says(table: object, place: str) -> bool:
    for key in place.split("."):
        try:
            table = table[int(key)] if isinstance(table, list) else table[key]  # type: ignore[index]
        except (KeyError, IndexError, TypeError):
            return False
    return True


def wrong(made: Plan, paper: str) -> list[Fault]:
    return [f for page in drawings.sheets(made, paper=paper, template=True) for f in drawings.faults(page)]


@pytest.mark.parametrize("kind", HOMES)
def test_the_sheets_of_an_unusual_home_may_be_printed(kind: str) -> None:
    made = planned(*HOMES[kind])
    assert wrong(made, "tabloid" if kind in ON_TABLOID else "letter") == []


@pytest.mark.parametrize("number", NUMBERS)
def test_the_sheets_of_a_home_drawn_by_lot_may_be_printed(number: int) -> None:
    made = drawn_by_lot(number)
    assert wrong(made, ("letter", "a4", "tabloid", "a3")[number % 4]) == []


def texts(page: Page) -> list[str]:
    return [t.text for t in page.items if isinstance(t, Text)]


@pytest.mark.parametrize(("ceiling", "scale"), [("97 1/8 in", "1/2 in = 1 ft"), ("192 in", "1/4 in = 1 ft")])
def test_a_high_room_is_drawn_smaller_and_says_so(ceiling: str, scale: str) -> None:
    """156 in from a cooktop 36 in high to the ceiling stand on paper as 156 x 25.4 / 48 = 82.55 mm."""
    page = drawings.sheets(planned("out_the_back", {"kitchen.ceiling": ceiling}), paper="letter")[0]
    assert f"looking at it from the room, {scale}" in texts(page)
    if ceiling == "192 in":
        assert "156 cooktop to ceiling" in texts(page)
        ends = [abs(i.points[0][1] - i.points[-1][1]) for i in page.items if isinstance(i, Path)]
        assert any(abs(e - 82.55) < 0.01 for e in ends)


def test_what_the_hood_hides_is_named_where_it_shows() -> None:
    """The window reaches from 16 in to 46 in, the hood over it from 45 3/8 - 22 1/2 = 22 7/8 in; it hides the shelf."""
    page = drawings.sheets(planned(*HOMES["a window half behind the hood"]), paper="letter")[0]
    assert "side window, opens" in texts(page)
    name = next(t for t in page.items if isinstance(t, Text) and t.text == "side window, opens")
    hood = next(i for i in page.items if isinstance(i, Path) and i.id == "hood")
    _, low, right, high = box(name)
    assert (
        right < min(x for x, _ in hood.points)
        or high < min(y for _, y in hood.points)
        or low > max(y for _, y in hood.points)
    )
    page = drawings.sheets(planned(*HOMES["a shelf behind the hood"]), paper="letter")[0]
    assert "spice shelf, behind the hood" in texts(page)
