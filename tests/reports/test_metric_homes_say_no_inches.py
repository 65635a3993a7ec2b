"""A home measured in millimetres is told in millimetres: by the terminal, on every sheet and in the comparison."""

from __future__ import annotations

import re
from collections.abc import Iterator
from functools import cache
from typing import Any

import pytest
from clirunning import SCENES

from routeviz import catalog, drawings, pipeline, reports, rules, studies
from routeviz.drawings.primitives import Text
from routeviz.model.plan import Plan
from routeviz.model.solids import SolidKind
from routeviz.rules.bench import joist, member
from routeviz.scenefile import loads
from routeviz.units import told

NOT_METRIC = re.compile(
    r"\d[ -](?:in|inch|inches|ft|feet|foot)\b|\d\s?[\"”″]|thousandths of an inch|\bin wg\b|\bcfm\b|\d lb\b|\bBtu"
)
NO_LENGTH = (  # what the pattern meets and is no length
    r"\d+ in 12\b",  # a roof's pitch is a ratio
    r"\bat least \d+ in each\b",  # screws, counted
    r"\b\d+ in the way\b",  # places of a hood, counted
)
SIZES = {  # the same lumber by a trade name, by its real sides, and by its sides in inches
    "trade": 'size = "2x8"',
    "sides": "width = 38, depth = 184",
    "inches": 'size = "1-1/2 x 7-1/4 in"',
}
HOMES = {
    "metric_concrete_ceiling": "trade", "joist_dead_centre": "sides", "stud_dead_centre": "trade",
    "juniper_straight_up": "inches", "as_built_flex_in_attic": "trade", "furring_strip_brick": "trade",
}  # fmt: skip


def metric(name: str, joists: str) -> str:
    """Give a scene as somebody would write it who counts in millimetres."""
    text = (SCENES / f"{name}.toml").read_text(encoding="utf-8")
    text = re.sub(r'^unit = ".*?"', 'unit = "mm"', text, flags=re.MULTILINE)
    return re.sub(r'^(joists = .*?)size = "2x8"', rf"\1{SIZES[joists]}", text, flags=re.MULTILINE)


@cache
def planned(name: str) -> Plan:
    return pipeline.plan(loads(metric(name, HOMES[name]), f"{name}.toml"), alternatives=1)


def odd(text: str) -> list[str]:
    for words in NO_LENGTH:
        text = re.sub(words, "", text)
    return [text[max(0, m.start() - 40) : m.end() + 10] for m in NOT_METRIC.finditer(text)]


def texts(value: Any) -> Iterator[str]:
    """Give every text in a record, however deep, but for the names of units."""
    if isinstance(value, dict):
        for key, inner in value.items():
            if key != "unit":  # says what a number is counted in, for machines
                yield from texts(inner)
    elif isinstance(value, list):
        for inner in value:
            yield from texts(inner)
    elif isinstance(value, str):
        yield value


@pytest.mark.parametrize("name", HOMES)
def test_neither_plan_nor_packet_nor_comparison_says_inches(name: str) -> None:
    plan = planned(name)
    assert plan.scene.metric
    told = {
        "plan": reports.plan_text(plan, fixes=studies.fixes(plan, most=1), width=2000),
        "every finding": "\n".join(texts(reports.plan_dict(plan))),
        "sheets": "\n".join(
            t.text for p in drawings.sheets(plan, template=True) for t in p.items if isinstance(t, Text)
        ),
        "comparison": reports.compare_text(studies.compare(plan.scene), metric=True, width=2000),
    }
    for where, text in told.items():
        assert " mm" in text, where
        assert odd(text) == [], where


@pytest.mark.parametrize(("joists", "words"), [("trade", "2x8"), ("sides", "38 x 184 mm"), ("inches", "38 x 184 mm")])
def test_lumber_is_named_by_its_trade_size_or_its_real_sides(joists: str, words: str) -> None:
    # 1 1/2 in are 38.1 mm, 7 1/4 in 184.15 mm; people are told whole millimetres
    scene = loads(metric("joist_dead_centre", joists))
    assert scene.ceiling.joists is not None
    assert scene.ceiling.joists.size == words


def test_an_inch_home_names_real_sides_in_inches() -> None:
    text = metric("joist_dead_centre", "inches").replace('unit = "mm"', 'unit = "in"')
    scene = loads(text)
    assert scene.ceiling.joists is not None
    assert scene.ceiling.joists.size == "1 1/2 x 7 1/4 in"


POST = member("stud-5", SolidKind.STUD, (59.25, 0.5, 1.5), (60.75, 6.0, 94.5), 2, "2x6", exterior=True)
PLATE = member("top-plate", SolidKind.PLATE, (0.0, 0.5, 93.0), (120.0, 6.0, 94.5), 0, "2x6")
BEAM = member("beam", SolidKind.BEAM, (0.0, -40.0, 96.0), (120.0, -37.0, 107.25), 0, "2x12", plies=2)


@pytest.mark.parametrize(
    ("solid", "cut", "said"),
    [
        # a third of 9 1/4 in is 78.3 mm, 2 in are 50.8 mm, a sixth is 39.2 mm
        (joist(4, 60.0), rules.bore(2.0, 9.25), "78 mm: a third of the depth, with 51 mm left"),
        (joist(4, 60.0), rules.bore(2.0, 9.25, edge_in=0.5), "51 mm of wood at both edges"),
        (joist(4, 60.0), rules.notch(1.0, 9.25), "of the depth, 39 mm"),
        # 40 of 100 parts of 5 1/2 in are 55.9 mm, 5/8 in are 15.9 mm, a quarter is 34.9 mm
        (POST, rules.bore(2.0, 5.5), "55 mm, 16 mm from its edges"),
        (POST, rules.bore(1.0, 5.5, edge_in=0.25), "16 mm of wood at both edges"),
        (POST, rules.notch(1.0, 5.5), "a notch of at most 34 mm"),
        (PLATE, rules.bore(4.0, 5.5), "102 mm of 140 mm is cut"),  # 4 in of 5 1/2 in
        (BEAM, rules.bore(6.0, 11.25), "a cable hole of 19 mm"),  # 3/4 in
    ],
)
def test_a_ruling_on_a_member_counts_as_the_scene_does(solid: Any, cut: Any, said: str) -> None:
    irc = rules.profile("irc-2021")
    found = rules.member_verdict(solid, cut, irc, metric=True)
    assert found is not None
    words = f"{found.rule}; {found.detail}; {'; '.join(f'{p.size} {p.note}' for p in found.framing)}"
    assert said in words
    assert odd(words) == []
    plain = rules.member_verdict(solid, cut, irc)
    assert plain is not None
    assert " mm" not in f"{plain.rule}{plain.detail}"


def test_no_note_of_a_profile_has_a_length_outside_braces() -> None:
    notes = [
        row["note"]
        for name in (*rules.profiles(), "common")
        for row in catalog.table(f"profiles/{name}").get("limits", {}).values()
        if "note" in row
    ]
    assert any("{" in note for note in notes)
    for note in notes:
        assert odd(re.sub(r"\{.*?\}", "", note)) == []
        assert odd(told(note, metric=True)) == []
