"""The linear programmes behind centring, against scipy's own interface."""

from __future__ import annotations

import doctest

import numpy as np
import pytest
from scipy.optimize import linprog

from routeviz.search import linear
from routeviz.search.linear import least_cost


@pytest.mark.parametrize("seed", range(40))
def test_random_programmes_cost_the_same_as_by_scipy(seed: int) -> None:
    rng = np.random.default_rng(seed)
    n, m = int(rng.integers(2, 7)), int(rng.integers(1, 8))
    cost = rng.normal(size=n)
    matrix, side = rng.normal(size=(m, n)), rng.normal(size=m) + 1.0
    low, high = np.full(n, -4.0), np.full(n, 5.0)
    equal = [({0: 1.0, 1: 1.0}, 0.5)] if seed % 2 else []
    rows = [({k: float(v) for k, v in enumerate(row)}, float(b)) for row, b in zip(matrix, side, strict=True)]
    ours = least_cost(cost, low, high, upper=rows, equal=equal)
    theirs = linprog(
        cost, A_ub=matrix, b_ub=side, A_eq=[[1.0, 1.0] + [0.0] * (n - 2)] if equal else None,
        b_eq=[0.5] if equal else None, bounds=list(zip(low, high, strict=True)),
    )  # fmt: skip
    assert (ours is None) == (theirs.status != 0)
    if ours is not None:
        assert float(cost @ ours) == pytest.approx(float(theirs.fun), abs=1e-7)
        assert (matrix @ ours <= side + 1e-7).all()


def test_no_solution_and_no_finite_one_are_none() -> None:
    assert least_cost(np.array([1.0]), [0.0], [1.0], upper=[({0: -1.0}, -2.0)]) is None
    assert least_cost(np.array([-1.0]), [0.0], [float("inf")], upper=[({0: -1.0}, 0.0)]) is None


def test_doctests() -> None:
    assert doctest.testmod(linear).failed == 0
