"""Lines are broken between words, never inside a figure; each expected line is written out by hand."""

from __future__ import annotations

import re

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from routeviz.folding import bound, fold, pieces, unbound

HOLE = "centre 70 in from the left wall, 8 1/2 in out from the hood wall"


def test_a_hole_keeps_its_whole_number_with_its_fraction() -> None:
    width = len("centre 70 in from the left wall, 8 1/2")  # a plain fold would end the line with the 8, or with 1/2
    assert fold(HOLE, width) == ["centre 70 in from the left wall,", "8 1/2 in out from the hood wall"]
    assert fold(HOLE, width - 4) == ["centre 70 in from the left wall,", "8 1/2 in out from the hood wall"]


@pytest.mark.parametrize(
    "figure",
    [
        "8 1/2 in", "3 ft 10 in", "3 ft 10 1/2 in", "10 x 10 in", "1/4 x 3 in", "2 × 1/4 x 3 in", "#8 x 1/2 in", "6 mm",
        "8 1/2 in × 9 1/2 in", "0.25 in wg", "400 cfm", "167 l/s", "1327 ft/min", "13.2 m/s", "2.3 cu ft", "16 thousandths",
        "120 V", "90 Pa", "1.35 m", "1/2 in", "150 mm × 90 mm",
    ],
)  # fmt: skip
def test_a_figure_is_one_word(figure: str) -> None:
    assert " " not in bound(figure)
    assert unbound(bound(figure)) == figure
    assert bound(f"at {figure} from").split(" ") == ["at", bound(figure), "from"]


@pytest.mark.parametrize(
    "text", ["joist 4 and rafter 5", "392 of 400", "stud 4, 4", "steps 3 inside", "2 meters", "D1 above", "4 a year"]
)
def test_words_that_are_no_unit_may_part_from_their_number(text: str) -> None:
    assert bound(text) == text


def test_what_fits_no_line_is_let_go_at_the_sign_of_a_section_first() -> None:
    assert pieces("10 3/4 in × 12 1/2 in", lambda word: len(word) <= 9) == [
        "10\u00a03/4\u00a0in",
        "×",
        "12\u00a01/2\u00a0in",
    ]
    assert pieces("10 3/4 in", lambda word: len(word) <= 5) == ["10", "3/4", "in"]


def test_what_hangs_stands_under_the_words() -> None:
    assert fold("☐ 1 board patch of some size, 10 x 10 in", 32, first="  ", rest="    ") == [
        "  ☐ 1 board patch of some size,", "    10 x 10 in",
    ]  # fmt: skip


PIECES = st.sampled_from(
    ["8 1/2 in", "3 ft 10 in", "joist 4", "round", "1/4 x 3 in", "from the", "wall,", "400 cfm", "12", "6 mm"]
)
TORN = re.compile(r"(?<![^\s])\d[\d/]*\n(?:\d+/\d|in\b|ft\b|mm\b|cfm\b|x )|ft\n\d|x\n\d")


@settings(deadline=None)  # a busy machine is no fault
@given(st.lists(PIECES, min_size=1, max_size=12), st.integers(24, 60))
def test_any_text_keeps_its_words_its_width_and_its_figures(parts: list[str], width: int) -> None:
    text = " ".join(parts)
    lines = fold(text, width)
    assert " ".join(lines).split() == text.split()
    assert max(map(len, lines)) <= width
    if not re.search(r"\d \d", re.sub(r"\d \d/\d", "", text)):  # two figures side by side are no text
        assert not TORN.search("\n".join(lines)), lines
