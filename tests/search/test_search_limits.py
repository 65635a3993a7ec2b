"""What is too large for the memory ends with a sentence that says how large and what to do, before memory is taken."""

from __future__ import annotations

import tracemalloc

import pytest
from framed_house import collars, framed_house

from routeviz.errors import LimitError
from routeviz.search import coordinates, field
from routeviz.search.solve import prepare, solve, solve_on
from routeviz.search.terms import Terms


def test_a_grid_of_too_many_points_is_refused_before_it_is_made() -> None:
    space = framed_house(elbows=6)
    tracemalloc.start()
    try:
        with pytest.raises(
            LimitError, match=r"would have (\d+) million points, more than 16 million\. Allow fewer elbows"
        ):
            solve(space, Terms(), 6, list(collars()))
        assert tracemalloc.get_traced_memory()[1] < 50e6
    finally:
        tracemalloc.stop()


def test_too_many_elbow_places_are_refused(monkeypatch: pytest.MonkeyPatch) -> None:
    base = prepare(framed_house(), Terms(), list(collars()[:9]))
    with pytest.raises(
        LimitError, match=r"could sit at 0\.\d million places, more than 0\.1 million.*far from any route"
    ):
        solve_on(base, 3, most=100_000)
    monkeypatch.setattr(coordinates, "MOST_POINTS", 1000)
    with pytest.raises(LimitError, match="more than 0 million"):
        solve_on(base, 3)


def test_a_map_of_too_many_places_says_so() -> None:
    shifts = [n / 64 for n in range(-4000, 4000)]
    with pytest.raises(
        LimitError, match=r"^8000 places at 13 heights are too many for one map\. .* ask for fewer places"
    ):
        field(framed_house(), shifts, [float(n) for n in range(13)])
