"""The packing against full enumeration, and its bound against the truth."""

from __future__ import annotations

import math
import random

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from routeviz.takeoff.stock import _linear_bound, pack


def fewest(lengths: list[float], stock: float, kerf: float) -> int:
    """Enumerate every partition (up to order of sections) and give the least number of sections."""
    best = len(lengths)

    def place(n: int, left: list[float]) -> None:
        nonlocal best
        if len(left) >= best and n < len(lengths):
            return
        if n == len(lengths):
            best = min(best, len(left))
            return
        for b in range(len(left)):
            if left[b] >= lengths[n] + kerf - 1e-9:
                left[b] -= lengths[n] + kerf
                place(n + 1, left)
                left[b] += lengths[n] + kerf
        left.append(stock - lengths[n])
        place(n + 1, left)
        left.pop()

    place(0, [])
    return best


def feasible(lengths: list[float], bins: tuple[int, ...], stock: float, kerf: float) -> bool:
    """Whether every section holds its pieces and the cuts between them."""
    for b in set(bins):
        inside = [length for length, where in zip(lengths, bins, strict=True) if where == b]
        if math.fsum(inside) + kerf * (len(inside) - 1) > stock + 1e-9:
            return False
    return True


@settings(max_examples=120, deadline=None)
@given(
    st.lists(st.integers(8 * 16, 60 * 16).map(lambda n: n / 16), min_size=1, max_size=8),
    st.sampled_from((0.0, 0.0625, 0.125)),
)
def test_equals_enumeration(lengths: list[float], kerf: float) -> None:
    packed = pack(lengths, 60.0, kerf)
    truth = fewest(lengths, 60.0, kerf)
    assert feasible(lengths, packed.bins, 60.0, kerf)
    assert packed.count == truth
    assert packed.bound <= truth
    assert packed.waste_in == pytest.approx(packed.count * 60.0 - math.fsum(lengths))


def test_improves_on_greedy_and_proves_it() -> None:
    # longest-first puts 30 + 24 together and needs three sections; 30 + 15 + 15 and 24 + 18 + 18 fill two exactly
    lengths = [30.0, 24.0, 18.0, 18.0, 15.0, 15.0]
    packed = pack(lengths, 60.0, 0.0)
    assert packed.count == packed.bound == 2
    assert feasible(lengths, packed.bins, 60.0, 0.0)


def test_three_of_a_kind_leave_no_room_for_a_shortcut() -> None:
    # seven pieces just over a third: two a section, so four sections; by length alone three would do
    packed = pack([20.5] * 7, 60.0, 0.0)
    assert packed.count == packed.bound == 4


def test_the_linear_bound_is_a_bound() -> None:
    draw = random.Random(7)
    for _ in range(20):
        lengths = [draw.randint(10, 55) for _ in range(7)]
        assert _linear_bound([n * 64 for n in lengths], 60 * 64) <= fewest([float(n) for n in lengths], 60.0, 0.0)


def test_forty_pieces_are_bounded_in_good_time() -> None:
    draw = random.Random(3)
    lengths = [draw.randint(40, 600) / 10 for _ in range(40)]
    packed = pack(lengths, 60.0, 0.0625)
    assert feasible(lengths, packed.bins, 60.0, 0.0625)
    assert packed.bound <= packed.count <= packed.bound + 1


def test_a_piece_longer_than_the_stock_is_refused() -> None:
    with pytest.raises(ValueError, match="longer than the stock"):
        pack([61.0], 60.0, 0.0)
    assert pack([], 60.0, 0.0).count == 0
