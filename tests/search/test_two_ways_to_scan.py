"""Lines and slabs answer the same scans, and each run's events are those of plain counting along the line."""

from __future__ import annotations

from collections.abc import Iterator

import numpy as np
import pytest

from routeviz.search.lines import lines
from routeviz.search.slabs import slabs
from routeviz.search.terms import Terms


@pytest.mark.parametrize("axis", [0, 1, 2])
@pytest.mark.parametrize("share", [0.03, 0.5, 1.0])
def test_both_scans_agree_with_each_other_and_with_counting(axis: int, share: float) -> None:
    rng = np.random.default_rng(3 + axis)
    shape, terms = (9, 7, 8), Terms()
    place = np.cumsum(rng.integers(1, 6, shape[axis])) - 12
    edges = [n - (t == axis) for t, n in enumerate(shape)]
    blocked = rng.random(edges) < 0.2
    events = rng.random(shape) < share
    alive = np.flatnonzero(events).astype(np.int32)
    number = np.full(shape, -1, np.int32)
    number.ravel()[alive] = np.arange(len(alive))
    wanted = [(sign, lag) for sign in (1, -1) for lag in (1, 4, 40)]
    sparse = lines(axis, place, blocked, None, events, number, terms, wanted)
    dense = slabs(axis, place, blocked, alive, number, terms, wanted, np.empty(number.size + 1, np.int32))
    value = rng.integers(0, 1000, len(alive)).astype(np.int32)
    value[rng.random(len(alive)) < 0.3] = terms.none
    columns, walls = np.moveaxis(number, axis, 0), np.moveaxis(blocked, axis, 0)
    for sign, lag in wanted:
        expected = [
            min(
                (int(value[other]) + abs(int(place[j] - place[i])) for j, other in enumerate(column.tolist())
                 if other >= 0 and (j - i) * sign > 0 and abs(place[j] - place[i]) >= lag
                 and not walls[(slice(min(i, j), max(i, j)), *line)].any()),
                default=terms.none,
            )
            for i, line, column in _places(alive, shape, axis, columns)
        ]  # fmt: skip
        for track in (sparse, dense):
            found = track.scan(value, sign, [lag])[0]
            assert np.array_equal(np.where(found < terms.limit, found, terms.none), np.minimum(expected, terms.none))
    for i, line, column in list(_places(alive, shape, axis, columns))[::17]:
        flat = line[0] * columns.shape[2] + line[1]
        for sign in (1, -1):
            reached = [
                other for j, other in enumerate(column.tolist())
                if other >= 0 and (j - i) * sign > 0 and not walls[(slice(min(i, j), max(i, j)), *line)].any()
            ]  # fmt: skip
            for track in (sparse, dense):
                ahead = track.reach(flat, i, sign)
                assert ahead.names.tolist() == reached
                assert ahead.length.tolist() == ahead.cost.tolist() == np.abs(place[ahead.at] - place[i]).tolist()
    assert (sparse.scan(value, 1, [1])[0] < terms.limit).any() or share < 0.1


def _places(
    alive: np.ndarray, shape: tuple[int, ...], axis: int, columns: np.ndarray
) -> Iterator[tuple[int, tuple[int, int], np.ndarray]]:
    """Give each event's index along the axis, its line, and the numbers on that line."""
    for flat in alive.tolist():
        point = list(np.unravel_index(flat, shape))
        i = int(point.pop(axis))
        line = int(point[0]), int(point[1])
        yield i, line, columns[:, line[0], line[1]]
