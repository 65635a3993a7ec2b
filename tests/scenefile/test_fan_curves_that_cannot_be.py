"""A fan's curve is listed by rising flow, and its pressure falls once it has begun to fall."""

from __future__ import annotations

import re

import pytest

from routeviz.errors import Mistake, SceneError
from routeviz.scenefile import loads, starter

Pairs = list[tuple[str, str]]


def with_curve(pairs: Pairs) -> str:
    rows = "".join(f'  ["{flow} cfm", "{pressure} in wg"],\n' for flow, pressure in pairs)
    whole = re.sub(r'^rated = "400 cfm"', 'rated = "600 cfm"', starter(), count=1, flags=re.MULTILINE)
    assert whole != starter()
    found = re.compile(r"^curve = \[.*$", re.MULTILINE).search(whole)
    assert found
    return whole[: found.start()] + f"curve = [\n{rows}]" + whole[found.end() :]


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


CURVE: Pairs = [("0", "0.9"), ("200", "0.7"), ("400", "0.1"), ("420", "0")]


def rated(flow: str, at: str, pairs: Pairs) -> str:
    text = re.sub(r"^rated = .*$", f'rated = "{flow}"', with_curve(pairs), count=1, flags=re.MULTILINE)
    return re.sub(r"^rated_at = .*$", f'rated_at = "{at}"' if at else "", text, count=1, flags=re.MULTILINE)


@pytest.mark.parametrize(
    ("flow", "at", "pairs", "problem"),
    [
        ("400 cfm", "0.1 in wg", CURVE, ""),
        ("420 cfm", "0.1 in wg", CURVE, ""),
        ("900 cfm", "0.1 in wg", CURVE, "the curve gives 400 cfm at 0.10 in wg"),
        ("300 cfm", "0.1 in wg", CURVE, "the curve gives 400 cfm at 0.10 in wg"),
        ("300 cfm", "0.4 in wg", CURVE, ""),  # half way from 200 cfm at 0.7 to 400 cfm at 0.1
        ("150 cfm", "0.4 in wg", CURVE, "the curve gives 300 cfm at 0.40 in wg"),
        ("400 cfm", "1.5 in wg", CURVE, "the curve never reaches 1.50 in wg"),
        ("900 cfm", "", CURVE, "the curve ends at 420 cfm"),
        ("430 cfm", "", CURVE, ""),
        ("200 cfm", "0.1 in wg", [("0", "0.9"), ("300", "0.5")], "the curve gives 300 cfm at a higher pressure"),
        ("600 cfm", "0.1 in wg", [("0", "0.9"), ("300", "0.5")], ""),  # it lies beyond the last point read off
    ],
)
def test_a_label_far_from_the_curve_is_told_with_its_line(flow: str, at: str, pairs: Pairs, problem: str) -> None:
    text = rated(flow, at, pairs)
    try:
        loads(text, "kitchen.toml")
        told: tuple[Mistake, ...] = ()
    except SceneError as error:
        told = error.mistakes
    assert len(told) == bool(problem)
    for mistake in told:
        assert mistake.field == "hood.fan.rated"
        assert flow in mistake.value
        assert mistake.problem.startswith(problem)
        assert f'rated = "{flow}"' in text.split("\n")[(mistake.line or 0) - 1]
        assert "take the curve out" in mistake.remedy
