"""A fan's curve is listed by rising flow, and its pressure falls once it has begun to fall."""

from __future__ import annotations

import re

import pytest

from routeviz.errors import Mistake, SceneError
from routeviz.scenefile import loads, starter

Pairs = list[tuple[str, str]]


def with_curve(pairs: Pairs) -> str:
    rows = "".join(f'  ["{flow} cfm", "{pressure} in wg"],\n' for flow, pressure in pairs)
    found = re.compile(r"^curve = \[.*$", re.MULTILINE).search(starter())
    assert found
    return starter()[: found.start()] + f"curve = [\n{rows}]" + starter()[found.end() :]


def found(pairs: Pairs) -> tuple[Mistake, ...]:
    try:
        loads(with_curve(pairs), "kitchen.toml")
    except SceneError as error:
        return error.mistakes
    return ()


@pytest.mark.parametrize(
    ("pairs", "wrong"),
    [
        ([("0", "1.0"), ("300", "0.7"), ("600", "0.1"), ("640", "0")], {}),
        ([("0", "0.8"), ("100", "0.9"), ("300", "0.5")], {}),  # up to a peak, then down: a real fan
        ([("0", "1.0"), ("300", "1.0"), ("400", "0.5")], {}),
        ([("0", "1.0"), ("300", "0.05"), ("600", "0.1"), ("640", "0")], {3: "rises again"}),
        (
            [("0", "1.0"), ("100", "0.5"), ("200", "0.6"), ("300", "0.4"), ("400", "0.5")],
            {3: "rises again", 5: "rises again"},
        ),
        ([("0", "1.0"), ("300", "0.7"), ("300", "0.5"), ("200", "0.3")], {3: "does not rise", 4: "does not rise"}),
    ],
)
def test_each_faulty_point_is_told_once_with_its_line(pairs: Pairs, wrong: dict[int, str]) -> None:
    text = with_curve(pairs)
    told = found(pairs)
    assert [m.field for m in told] == [f"hood.fan.curve.{n}" for n in wrong]
    for mistake, (n, words) in zip(told, wrong.items(), strict=True):
        flow, pressure = pairs[n - 1]
        assert words in mistake.problem
        assert f"{flow} cfm" in mistake.value
        assert f'["{flow} cfm", "{pressure} in wg"]' in text.split("\n")[(mistake.line or 0) - 1]
        assert mistake.remedy
