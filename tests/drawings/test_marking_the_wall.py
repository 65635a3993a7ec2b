"""The marking sheet and the template of shipped homes: supply, backing, holes, nothing cut off, nothing struck."""

from __future__ import annotations

from pathlib import Path as File

import pytest

from routeviz.drawings import sheets
from routeviz.drawings.backing import backing_pieces
from routeviz.drawings.primitives import Disc, Page, Path, Text
from routeviz.drawings.supply import supply_at, supply_meets
from routeviz.pipeline import plan
from routeviz.scenefile import load

SCENES = File(__file__).parents[2] / "scenes"


def page_of(name: str, sheet: str = "marking") -> Page:
    pages = sheets(plan(load(SCENES / f"{name}.toml"), alternatives=1), template=True)
    return next(p for p in pages if p.name == sheet)


def words_of(page: Page) -> str:
    return " ".join(t.text for t in page.items if isinstance(t, Text))


def figures_at_row(page: Page, name: str) -> list[str]:
    """Give the figures in the table's row of a name."""
    row = max((t for t in page.items if isinstance(t, Text) and t.text == name), key=lambda t: t.at[0])
    return [t.text for t in page.items if isinstance(t, Text) and abs(t.at[1] - row.at[1]) < 0.01 and t is not row]


def test_the_supply_has_its_place_in_the_table_and_meets_what_stands_there() -> None:
    """5 in left of a centre at 70 in and 9 in above an underside at 65 in: 65 and 74; stud 5 reaches from 64 to 65 1/2."""
    home = plan(load(SCENES / "gas_low_cabinets.toml"), alternatives=1)
    assert supply_at(home.scene) == (65.0, 74.0)
    assert supply_meets(home, home.best.takeoff.marks) == "meets stud 5: bring it in beside it"
    row = figures_at_row(page_of("gas_low_cabinets"), "supply")
    assert row[:2] == ["65", "74"]
    assert row[2].startswith("meets stud 5")


def test_a_supply_between_the_studs_is_told_clear() -> None:
    """A supply at 51 3/4 in stands between stud 4 (48 to 49 1/2) and stud 5 (64 to 65 1/2)."""
    home = plan(load(SCENES / "old_duct_in_the_way.toml"), alternatives=1)
    assert supply_at(home.scene) == (51.75, 75.0)
    assert supply_meets(home, home.best.takeoff.marks) == "clear of the framing"
    assert (
        supply_meets(plan(load(SCENES / "metric_concrete_ceiling.toml"), alternatives=1), ())
        == "masonry wall behind it"
    )


def test_a_supply_in_the_backing_is_told_alike_on_table_and_template() -> None:
    """The rim home's supply at 67 in, 75 up lies in the piece for S2: from 65 1/2 to 80 in, and 7 1/4 in high round 75 1/2."""
    home = plan(load(SCENES / "side_wall_storey_above.toml"), alternatives=1)
    assert supply_at(home.scene) == (67.0, 75.0)
    pages = sheets(home, template=True)
    told = [t.text for p in pages for t in p.items if isinstance(t, Text) and "in the backing" in t.text]
    assert len(told) == 2
    assert not [t.text for p in pages for t in p.items if isinstance(t, Text) and "clear of the framing" in t.text]


def test_backing_is_drawn_between_its_studs_and_told_in_the_table() -> None:
    """S1 at 62 in stands between stud 4 (to 49 1/2) and stud 5 (from 64): a 2x8, 7 1/4 in high round 74 1/2 in; the board is opened 2 in more each way."""
    home = plan(load(SCENES / "gas_low_cabinets.toml"), alternatives=1)
    assert home.best is not None
    first, second = backing_pieces(home.best.takeoff.marks)
    assert (first.left_in, first.right_in, first.marks) == (49.5, 64.0, ("S1",))
    assert (first.low_in, first.high_in) == (70.875, 78.125)
    assert (second.left_in, second.right_in) == (65.5, 80.0)
    words = words_of(page_of("gas_low_cabinets"))
    assert "S1 49 1/2 to 64 in from the left wall (14 1/2 long)" in words
    assert "Open the board there from 68 7/8 to 80 1/8 in above the floor." in words


def test_a_wall_under_a_steep_ceiling_is_shown_with_all_of_its_marks() -> None:
    """The cathedral's ceiling rises 12 in 12: under B2 at 86 1/2 in it must be drawn, and over the cover's right side."""
    page = page_of("cathedral_roof")
    slope = [p for p in page.items if isinstance(p, Path) and len(p.points) == 2 and p.weight == 0.55 and p.ink == "#24272b"
             and p.points[0][0] != p.points[1][0] and p.points[0][1] != p.points[1][1]]  # fmt: skip
    assert len(slope) == 1
    (x0, y0), (x1, y1) = slope[0].points
    assert abs((y1 - y0) / (x1 - x0)) == pytest.approx(1.0)
    column = page.width - 12.0 - 104.0
    for name in ("B1", "B2"):
        at = min((t for t in page.items if isinstance(t, Text) and t.text == name), key=lambda t: t.at[0]).at
        assert x0 < at[0] < x1 < column
    fill = [p for p in page.items if isinstance(p, Path) and p.fill == "#faf6ee"]
    assert len(fill) == 2  # the wall by the hood and the wall under the ceiling


def test_the_mounting_line_and_a_studs_number_never_run_together() -> None:
    page = page_of("stud_dead_centre")
    numbers = [t for t in page.items if isinstance(t, Text) and t.halo == "#f1e2c4"]
    assert {t.text for t in numbers} == {"3", "4", "5"}
    assert len({t.at[1] for t in numbers}) == 1  # one row under the wall


def test_holes_are_drawn_and_named_on_the_marked_wall() -> None:
    """A 6 in duct's hole is 6 1/2 in; its centre stands 73 in above the floor, the old one lower and dashed."""
    page = page_of("old_duct_in_the_way")
    words = words_of(page)
    assert "duct hole, 6 1/2 in round, 73 up" in words  # shorter where the wall that is shown ends
    assert "old hole" in words
    assert [d for d in page.items if isinstance(d, Disc) and d.dash and d.radius > 5.0]


@pytest.mark.parametrize("name", ["old_duct_in_the_way", "rear_outlet_straight_back", "furring_strip_brick"])
def test_a_rear_outlets_hole_lies_on_the_template(name: str) -> None:
    """Its rim stands 3 1/4 in under its centre and the centre 2 1/2 in under the line of screws, inch for inch."""
    page = page_of(name, "template")
    rim = [q for p in page.items if isinstance(p, Path) and p.ink == "#12646b" and len(p.points) > 20 for q in p.points]
    row = next(p for p in page.items if isinstance(p, Path) and len(p.points) == 2 and p.points[0][1] == p.points[1][1]
               and p.points[1][0] - p.points[0][0] > 200.0 and p.weight == 0.12)  # fmt: skip
    low = min(y for _, y in rim)
    assert (row.points[0][1] - low) / 25.4 == pytest.approx(2.5 + 3.25, abs=0.002)


def test_a_hole_in_a_slope_is_told_level_and_along_the_tape() -> None:
    """Twelve in twelve: 78 in level are 78 times the root of two along the ceiling, 110.309 in."""
    words = words_of(page_of("cathedral_roof", "holes"))
    assert "78 in level (110" in words
    assert "5/16 along the slope)" in words
    assert "along the slope" not in words_of(page_of("old_duct_in_the_way", "holes"))


def test_the_verdict_is_told_by_its_sign_and_the_flags_have_a_key() -> None:
    """A blocked plan's word is red beside a barred pennant, one that works teal beside a tick; unplaced findings are named."""
    blocked, works = page_of("gas_low_cabinets", "hood wall"), page_of("juniper_straight_up", "hood wall")
    word = next(t for t in blocked.items if isinstance(t, Text) and t.text == "Blocked")
    assert word.ink == "#8e1f0c"
    assert next(t for t in works.items if isinstance(t, Text) and t.text == "Works").ink == "#12646b"
    bars = [p for p in blocked.items if isinstance(p, Path) and p.ink == "#b52d15" and p.closed]
    assert any(abs(p.points[0][1] - word.at[1]) < 1.0 and p.points[0][0] < word.at[0] for p in bars)
    assert "numbers as under Findings and sources" in words_of(blocked)
    assert "Findings and sources" not in words_of(works)
    assert "2 and 5 without a place" in words_of(page_of("as_built_flex_in_attic", "hood wall"))
    flown = [t.text for t in blocked.items if isinstance(t, Text) and t.ink == "#24272b" and t.text in "12345678" and t.size == 2.5
             and t.face == "narrow bold"]  # fmt: skip
    assert set("12345678") <= set(flown)
