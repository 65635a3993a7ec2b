"""What is written into a column of a sheet keeps its figures whole, as narrow as columns are."""

from __future__ import annotations

import re

import pytest

from routeviz.drawings.lettering import width, wrapped
from routeviz.drawings.primitives import Face

WORDS = (
    "gypsum board: round 8 1/2 in, centre 70 in from the left wall, 8 1/2 in out from the hood wall",
    "wood lap siding: rectangular 10 in × 9 1/2 in, centre 56 3/4 in from the left wall; 1/4 x 3 in wood screw",
    "it takes 3 ft 10 in of duct, 400 cfm and 0.25 in wg; an 8 mm plug for a 6 mm screw",
)
TORN = re.compile(r"(?<![\w/])\d[\d/]*\n(?:\d+/\d|[x×] |(?:in|ft|mm|cfm)\b)|\d ft\n\d|\d [x×]\n|\bin\nwg\b")
LONGEST = "10 in × 9 1/2 in,"


@pytest.mark.parametrize("words", WORDS)
@pytest.mark.parametrize("face", [Face.SANS, Face.NARROW, Face.BOLD])
def test_no_figure_is_torn_in_a_column_that_holds_the_longest(words: str, face: Face) -> None:
    least = width(LONGEST, 3.0, face) + 0.01
    for step in range(60):
        room = least + step
        lines = wrapped(words, 3.0, face, room)
        assert " ".join(lines) == words
        assert max(width(line, 3.0, face) for line in lines) <= room
        assert not TORN.search("\n".join(lines)), lines


def test_in_a_narrower_column_a_section_parts_at_its_sign_and_no_word_is_broken_inside() -> None:
    room = width("9 1/2 in,", 3.0) + 0.01
    assert wrapped("10 in × 9 1/2 in,", 3.0, Face.SANS, room) == ["10 in ×", "9 1/2 in,"]
    room = max(width("in,", 3.0), width("10", 3.0)) + 0.01  # then even a number parts from its unit, whole
    assert wrapped("10 in,", 3.0, Face.SANS, room) == ["10", "in,"]
