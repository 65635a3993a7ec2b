"""The benchmark's parts on tiny instances: all libraries give the same answers. Nothing here is judged by its time."""

from __future__ import annotations

import numpy as np
import pytest
from bench import apart, houses, open_grids


@pytest.mark.parametrize("least", [1, 3])
def test_three_maps_of_one_grid_are_the_same(least: int) -> None:
    shape = (14, 11, 12)
    ours = open_grids.by_field(shape, least)
    reached = np.isfinite(ours)
    assert 0 < reached.sum() < ours.size
    for other in (open_grids.by_scipy, open_grids.by_networkx):
        theirs = other(shape, least)
        assert np.array_equal(theirs[reached], ours[reached])
        inside = np.isfinite(theirs) & ~reached  # such a way begins inside a solid
        assert all(
            any(all(r.lo[t] < p[t] < r.hi[t] for t in range(3)) for r in open_grids.solids(shape))
            for p in zip(*np.unravel_index(np.flatnonzero(inside), shape), strict=True)
        )


def test_one_field_and_one_place_at_a_time_are_the_same() -> None:
    field = houses.house_costs(2, True, 9)
    assert np.array_equal(field[:, [1, 4, 7]], houses.place_by_place(2, True, 9, (1, 4, 7)))
    assert (field >= 0).any()


def test_a_layer_and_a_copy_of_its_arrays_take_time() -> None:
    layer, copy, events = houses.layer_and_copy(2, 1, 9)
    assert layer > 0
    assert copy > 0
    assert events > 1000


def test_walls_queries_and_centring_run() -> None:
    made, mapped = houses.wall_and_queries("out_the_back", 1, 2, 40)
    assert (mapped.places, mapped.heights) == (
        96,
        2,
    )  # a wall of 132 in less a hood of 36, an inch apart
    assert 0 < mapped.ways <= mapped.asked == 5
    assert made.seconds > mapped.query_seconds
    _, elbows = houses.centring("out_the_back", 1)
    assert elbows == 1  # straight back


def test_the_air_of_a_map_is_timed_both_ways() -> None:
    quick, full, ways = houses.flows("out_the_back")
    assert min(quick, full) > 0
    assert 0 < ways <= 96


def test_a_process_of_its_own_tells_time_and_memory() -> None:
    made = apart.apart(2, open_grids.by_field, (6, 5, 8), 1)
    assert np.array_equal(made.answer, open_grids.by_field((6, 5, 8), 1))
    assert made.seconds > 0
    assert made.megabytes > 20
