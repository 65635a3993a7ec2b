"""The air tables themselves: every row has a source, a range round its value, and runs the way physics does."""

from __future__ import annotations

import subprocess
import sys
from collections.abc import Iterator
from itertools import pairwise
from typing import Any

import pytest
from airflow.ducts import round_duct

from routeviz.airflow import fittings
from routeviz.airflow.code_length import allowed_ft
from routeviz.catalog import source, table
from routeviz.model.scene import SectionShape, SectionSize
from routeviz.model.source import Seen


def rows(value: Any, path: str = "") -> Iterator[tuple[str, dict[str, Any]]]:
    if isinstance(value, dict):
        if any(
            not isinstance(v, dict | list) or (isinstance(v, list) and v and not isinstance(v[0], dict))
            for v in value.values()
        ):
            yield path, value
        for key, inner in value.items():
            yield from rows(inner, f"{path}/{key}")
    elif isinstance(value, list):
        for number, inner in enumerate(value):
            yield from rows(inner, f"{path}[{number}]")


ALL = [(name, path, row) for name in ("ducts", "fittings", "fans", "air_needs") for path, row in rows(table(name))]


@pytest.mark.parametrize(("name", "path", "row"), ALL, ids=[f"{n}{p}" for n, p, _ in ALL])
def test_every_row_names_a_source_that_says_how_it_is_known(name: str, path: str, row: dict[str, Any]) -> None:
    found = source(row["source"])
    assert isinstance(found.seen, Seen), (name, path)
    assert found.document
    if "c_low" in row:
        assert 0.0 <= row["c_low"] <= row["c"] <= row["c_high"]
    elif "low" in row and "high" in row:
        assert 0.0 < row["low"] <= 1.0 <= row["high"]


@pytest.mark.parametrize("kind", fittings.CONSTRUCTIONS)
@pytest.mark.parametrize("shape", [SectionShape.ROUND, SectionShape.RECT, SectionShape.OVAL])
def test_elbows_lose_less_with_a_larger_radius_and_more_with_a_larger_angle(kind: str, shape: SectionShape) -> None:
    section = round_duct(6) if shape is SectionShape.ROUND else SectionSize(shape, 10.0, 3.25)
    for plane in (section.width_in, section.height_in):
        by_radius = [fittings.elbow(section, r / 50, 90.0, kind, plane_in=plane).usual for r in range(150)]
        by_angle = [fittings.elbow(section, 1.0, float(a), kind, plane_in=plane).usual for a in range(181)]
        if kind != "mitre":
            assert all(b <= a + 1e-12 for a, b in pairwise(by_radius))
        assert all(b >= a for a, b in pairwise(by_angle))
        assert max(abs(b - a) for a, b in pairwise(by_radius)) < 0.08
        assert max(abs(b - a) for a, b in pairwise(by_angle)) < 0.03
        assert by_angle[0] == 0.0


def test_gored_elbows_rank_by_their_pieces() -> None:
    for ratio in (0.5, 0.75, 1.0, 1.25, 1.5, 2.0, 3.0):
        smooth, five, four, three = (
            fittings.elbow(round_duct(8), ratio, 90.0, kind).usual
            for kind in ("smooth", "5-piece", "4-piece", "3-piece")
        )
        assert smooth < five < four < three


def test_short_elbows_are_derived_and_say_so() -> None:
    """4- and 5-piece at R/D 0.5: the 3-piece entry 0.98 times 0.50/0.54 and 0.46/0.54."""
    four, five = (fittings.elbow(round_duct(8), 0.5, 90.0, kind) for kind in ("4-piece", "5-piece"))
    assert four.usual == pytest.approx(0.98 * 0.50 / 0.54, abs=0.005)
    assert five.usual == pytest.approx(0.98 * 0.46 / 0.54, abs=0.006)
    assert source(four.source).seen is source(five.source).seen is Seen.DERIVED


def test_outside_the_tables_the_range_widens_and_the_note_says_so() -> None:
    inside, below = (fittings.elbow(round_duct(8), ratio, 90.0, "smooth") for ratio in (0.5, 0.3))
    assert inside.note == ""
    assert "below the table" in below.note
    assert below.high / below.usual > inside.high / inside.usual
    flat = fittings.elbow(SectionSize(SectionShape.RECT, 20.0, 2.0), 1.0, 90.0, "smooth", plane_in=20.0)
    assert "outside the table" in flat.note
    assert "outside the table" in fittings.contraction(20.0, 30.0).note
    assert "outside the table" in fittings.elbow(round_duct(8), 0.0, 120.0, "mitre").note


@pytest.mark.parametrize(("ratio", "angle"), [(1.0, -1.0), (1.0, 181.0), (-0.1, 90.0)])
def test_impossible_elbows_are_refused(ratio: float, angle: float) -> None:
    with pytest.raises(ValueError, match=r"degrees|negative"):
        fittings.elbow(round_duct(8), ratio, angle, "smooth")


def test_pairs_never_lose_less_when_closer() -> None:
    for crossed in (0.0, 0.5, 1.0):
        for ratio in (0.0, 0.5, 1.0, 2.0):
            found = [fittings.pair_ratio(s / 10, crossed, ratio) for s in range(150)]
            for usual, low, high in found:
                assert 1.0 <= low <= usual <= high
            assert all(b[0] <= a[0] + 1e-12 for a, b in pairwise(found))
    assert fittings.pair_ratio(1.8, 0.0, 0.0)[0] == pytest.approx(1.83)  # Idelchik, Z of sharp elbows, remembered


def test_nothing_changes_nothing_is_lost() -> None:
    assert fittings.transition(round_duct(6), round_duct(6), 6.0).usual == 0.0
    same_area = SectionSize(SectionShape.RECT, 28.274333882 / 4, 4.0)
    shape = fittings.transition(round_duct(6), same_area, 6.0)
    assert 0.0 < shape.usual <= 0.06
    assert "round to rectangular" in shape.note


def test_longer_transitions_lose_less() -> None:
    for after in (5.0, 8.0):
        found = [
            fittings.transition(round_duct(6), round_duct(after), length).usual for length in (0.0, 1.0, 3.0, 12.0)
        ]
        assert all(b <= a for a, b in pairwise(found))


def test_code_table_allows_less_for_smaller_or_fuller_ducts() -> None:
    for flex in (False, True):
        for flow in (50, 80, 100, 125, 150, 200, 250, 300):
            lengths = [allowed_ft(d, flow, flex=flex)[0] or 0.0 for d in (2, 3, 4, 5, 6, 7, 8, 9)]
            assert lengths == sorted(lengths)
        for diameter in (3, 4, 5, 6, 7, 8):
            lengths = [allowed_ft(diameter, q, flex=flex)[0] or 0.0 for q in (50, 80, 100, 125, 150, 200, 250, 300)]
            assert lengths == sorted(lengths, reverse=True)
    assert allowed_ft(6.9, 150)[0] == 112.0  # the next smaller diameter
    assert allowed_ft(6.0, 126)[0] == 112.0  # the next larger flow
    assert allowed_ft(6.0, 301)[0] is None


def test_loading_the_stage_brings_no_heavy_library() -> None:
    code = "import sys, routeviz.airflow\nprint([m for m in ('fluids', 'scipy', 'numpy', 'pint') if m in sys.modules])"
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True, timeout=60)
    assert done.stdout.strip() == "[]"
