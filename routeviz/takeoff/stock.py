"""Cutting stock: pieces from as few sections as possible, with a bound that proves it.

Greedy first. When its count is above the plain bounds, the linear relaxation over cutting patterns (column
generation, pricing by a knapsack) gives a stronger bound, and the assignment model tries for a few seconds to
reach it or to show that it cannot be reached. A count that meets its bound is proven.
"""

from __future__ import annotations

import math
from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any

__all__ = ["Packing", "pack"]

_UNIT = 64.0  # whole units of 1/64 in: rounded up to fit, rounded down for a bound
_SECONDS = 3.0
_INFEASIBLE = 2  # scipy.optimize.milp status


@dataclass(frozen=True, slots=True)
class Packing:
    """Which section each piece comes from, counted from 1, and how many are needed at least."""

    bins: tuple[int, ...]
    bound: int
    waste_in: float

    @property
    def count(self) -> int:
        """Give the number of sections used."""
        return max(self.bins, default=0)


def pack(lengths_in: Sequence[float], stock_in: float, kerf_in: float) -> Packing:
    """Assign every piece to a stock section; a cut loses `kerf_in` except where a piece uses up its section.

    Parameters
    ----------
    lengths_in : sequence of float
        Cut lengths [in], each at most `stock_in`.

    Raises
    ------
    ValueError
        If a piece is longer than a section.

    Notes
    -----
    n pieces from one section lose n - 1 or n kerfs. With every piece one kerf longer and the section one kerf
    longer, n - 1 kerfs fit exactly when the pieces do.

    Examples
    --------
    >>> pack([40.0, 30.0, 19.0, 30.0], 60.0, 0.0).count
    2
    """
    if any(length > stock_in + 1e-9 for length in lengths_in):
        raise ValueError(f"a piece is longer than the stock length of {stock_in} in")
    if not lengths_in:
        return Packing((), 0, 0.0)
    room = stock_in + kerf_in
    sizes = [length + kerf_in for length in lengths_in]
    best = _greedy(sizes, room)
    bound = _plain_bound(sizes, room)
    if max(best) + 1 > bound:
        best, bound = _improve(sizes, room, best, bound)
    order = {old: new for new, old in enumerate(dict.fromkeys(best), start=1)}
    bins = tuple(order[b] for b in best)
    return Packing(bins, bound, max(bins) * stock_in - math.fsum(lengths_in))


def _greedy(sizes: Sequence[float], room: float) -> list[int]:
    """Longest first into the fullest section that still has room."""
    left: list[float] = []
    where = [0] * len(sizes)
    for i in sorted(range(len(sizes)), key=lambda k: (-sizes[k], k)):
        fits = [(left[b], b) for b in range(len(left)) if left[b] >= sizes[i] - 1e-9]
        if fits:
            b = min(fits)[1]
        else:
            b = len(left)
            left.append(room)
        left[b] -= sizes[i]
        where[i] = b
    return where


def _plain_bound(sizes: Sequence[float], room: float) -> int:
    """Least number by total length, and by pieces of which no two share a section, with what must go beside them."""
    bound = math.ceil(math.fsum(sizes) / room - 1e-9)
    for least in {0.0, *(s for s in sizes if s <= room / 2)}:
        alone = [s for s in sizes if s > room - least]
        large = [s for s in sizes if room / 2 + 1e-9 < s <= room - least]
        small = [s for s in sizes if least <= s <= room / 2]
        over = math.fsum(small) - (len(large) * room - math.fsum(large))
        bound = max(bound, len(alone) + len(large) + max(0, math.ceil(over / room - 1e-9)))
    return bound


def _improve(sizes: Sequence[float], room: float, best: list[int], bound: int) -> tuple[list[int], int]:
    low = [math.floor(s * _UNIT + 1e-6) for s in sizes]
    bound = max(bound, _linear_bound(low, math.ceil(room * _UNIT - 1e-6)))
    while max(best) + 1 > bound:
        packed, impossible = _assign(sizes, room, bound)
        if packed is not None:
            return packed, bound
        if not impossible:
            break  # out of time: the count stays "best found"
        bound += 1
    return best, bound


def _linear_bound(sizes: Sequence[int], room: int) -> int:
    """Column generation over cutting patterns; the linear bound, rounded up."""
    import numpy as np
    from scipy.optimize import linprog

    need = Counter(sizes)
    kinds = sorted(need, reverse=True)
    patterns: list[dict[int, int]] = [{k: min(need[k], room // k)} for k in kinds]
    while True:
        matrix = np.array([[p.get(k, 0) for p in patterns] for k in kinds], dtype=float)
        found: Any = linprog(
            np.ones(len(patterns)), A_ub=-matrix, b_ub=[-need[k] for k in kinds], bounds=(0, None), method="highs"
        )
        price = [max(0.0, -float(d)) for d in found.ineqlin.marginals]
        value, pattern = _knapsack(kinds, price, [need[k] for k in kinds], room)
        if value <= 1 + 1e-9 or pattern in patterns:
            # any prices, scaled so that no pattern is worth more than 1, bound the count from below
            total = math.fsum(p * need[k] for p, k in zip(price, kinds, strict=True)) / max(1.0, value)
            return math.ceil(total - 1e-6)
        patterns.append(pattern)


def _knapsack(
    kinds: Sequence[int], price: Sequence[float], most: Sequence[int], room: int
) -> tuple[float, dict[int, int]]:
    """Give the most valuable pattern; one row for each kind of piece over all whole lengths of the section."""
    import numpy as np

    best = np.zeros(room + 1)
    taken: list[Any] = []
    for kind, worth, many in zip(kinds, price, most, strict=True):
        row, count = best.copy(), np.zeros(room + 1, dtype=int)
        for n in range(1, min(many, room // kind) + 1):
            shifted = np.full(room + 1, -1.0)
            shifted[n * kind :] = best[: room + 1 - n * kind] + n * worth
            better = shifted > row + 1e-12
            row[better], count[better] = shifted[better], n
        best = row
        taken.append(count)
    pattern: dict[int, int] = {}
    left = room
    for kind, count in zip(reversed(kinds), reversed(taken), strict=True):
        n = int(count[left])
        if n:
            pattern[kind] = n
            left -= n * kind
    return float(best[room]), pattern


def _assign(sizes: Sequence[float], room: float, count: int) -> tuple[list[int] | None, bool]:
    """Ask the assignment model for a packing in `count` sections; and whether there is provably none."""
    import numpy as np
    from scipy.optimize import Bounds, LinearConstraint, milp
    from scipy.sparse import lil_matrix

    n = len(sizes)
    rows = lil_matrix((n + count, n * count))
    for i in range(n):
        for b in range(count):
            rows[i, i * count + b] = 1.0
            rows[n + b, i * count + b] = sizes[i]
    upper = np.ones(n * count)
    for i in range(min(n, count)):  # piece i lies in one of the first i + 1 sections: no mirrored copies
        upper[i * count + i + 1 : (i + 1) * count] = 0
    least = np.concatenate([np.ones(n), np.full(count, -np.inf)])
    limit = np.concatenate([np.ones(n), np.full(count, room + 1e-9)])
    found: Any = milp(
        np.zeros(n * count),
        constraints=LinearConstraint(rows.tocsr(), least, limit),
        integrality=np.ones(n * count, dtype=np.int64),
        bounds=Bounds(0, upper),
        options={"time_limit": _SECONDS},
    )
    if found.x is None:
        return None, found.status == _INFEASIBLE
    chosen = np.asarray(found.x).reshape(n, count)
    return [int(b) for b in chosen.argmax(axis=1)], False
