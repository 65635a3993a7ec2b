"""A duct turns to a side: a list of fittings that says otherwise is refused, every slip with its line."""

from __future__ import annotations

import math
import re

import pytest
from hypothesis import given
from hypothesis import strategies as st

from routeviz.errors import Mistake, SceneError
from routeviz.model.turning import WAYS, may_turn, turned
from routeviz.scenefile import loads, starter

OPPOSITE = {"up": "down", "down": "up", "left": "right", "right": "left", "back": "front", "front": "back"}


def fittings(*rows: tuple[str, str, float]) -> str:
    text = "".join(
        f'[[as_built.fittings]]\npart = "{part}"\nturn = "{turn}"\nangle = {angle}\nlength = 20\n'
        for part, turn, angle in rows
    )
    return starter().rstrip("\n") + "\n" + text


def found(text: str) -> tuple[Mistake, ...]:
    try:
        loads(text, "kitchen.toml")
    except SceneError as error:
        return error.mistakes
    return ()


def rear(text: str) -> str:
    text = re.sub(r'^place = "top"', 'place = "rear"', text, count=1, flags=re.MULTILINE)
    return re.sub(r'^out = "8 1/2 in"', 'up = "6 in"', text, count=1, flags=re.MULTILINE)


@pytest.mark.parametrize("part", ["elbow", "offset"])
@pytest.mark.parametrize("turn", ["up", "down"])
def test_a_riser_turns_neither_up_nor_down(part: str, turn: str) -> None:
    text = fittings((part, turn, 45))
    (slip,) = found(text)
    line = 1 + text.split("\n").index(f'turn = "{turn}"')
    assert (slip.file, slip.line, slip.field, slip.value) == (
        "kitchen.toml",
        line,
        "as_built.fittings.1.turn",
        f'"{turn}"',
    )
    assert "goes up" in slip.problem
    assert slip.remedy == "A duct that goes up turns left, right, back or forward (front)"


@pytest.mark.parametrize("way", ["left", "right", "back", "front"])
def test_every_way_refuses_itself_and_its_opposite(way: str) -> None:
    for turn in WAYS:
        slips = found(fittings(("elbow", way, 90), ("elbow", turn, 90)))
        wrong = turn in (way, OPPOSITE[way])
        assert [s.field for s in slips] == (["as_built.fittings.2.turn"] if wrong else []), (way, turn)


def test_a_rear_outlet_begins_straight_back() -> None:
    assert found(rear(fittings(("elbow", "up", 90)))) == ()
    (slip,) = found(rear(fittings(("elbow", "front", 90))))
    assert slip.remedy == "A duct that goes back turns up, down, left or right"


def test_all_slips_come_at_once() -> None:
    """Behind the first slip the way is known again after a square elbow."""
    slips = found(fittings(("elbow", "down", 90), ("elbow", "left", 90), ("elbow", "right", 90)))
    assert [s.field for s in slips] == ["as_built.fittings.1.turn", "as_built.fittings.3.turn"]


def test_a_duct_on_the_slant_may_turn_any_way() -> None:
    for turn in WAYS:
        assert found(fittings(("elbow", "right", 45), ("elbow", turn, 45))) == ()


@given(st.sampled_from(sorted(WAYS)), st.sampled_from(sorted(WAYS)), st.floats(5, 90))
def test_a_turn_keeps_its_angle_and_its_plane(at: str, to: str, angle: float) -> None:
    if to in (at, OPPOSITE[at]):
        assert not may_turn(WAYS[at], WAYS[to])
        with pytest.raises(ValueError, match="cannot turn"):
            turned(WAYS[at], WAYS[to], angle)
        return
    after = turned(WAYS[at], WAYS[to], angle)
    assert math.dist(after, (0, 0, 0)) == pytest.approx(1.0)
    for way, part in ((at, math.cos(math.radians(angle))), (to, math.sin(math.radians(angle)))):
        assert sum(a * b for a, b in zip(after, WAYS[way], strict=True)) == pytest.approx(part, abs=1e-9)
