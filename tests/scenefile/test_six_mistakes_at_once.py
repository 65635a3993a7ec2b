"""A file with six different mistakes gives six messages, each with its line."""

from __future__ import annotations

from pathlib import Path

import pytest

from routeviz.errors import Mistake, SceneError
from routeviz.scenefile import load

FILE = Path(__file__).with_name("six_mistakes.toml")


@pytest.fixture(scope="module")
def mistakes() -> tuple[Mistake, ...]:
    with pytest.raises(SceneError) as caught:
        load(FILE)
    return caught.value.mistakes


def _line(start: str) -> int:
    """Count lines the plain way, by the text of the line."""
    return next(n for n, line in enumerate(FILE.read_text().splitlines(), start=1) if line.startswith(start))


def test_six_mistakes_in_file_order_with_lines_and_fields(mistakes: tuple[Mistake, ...]) -> None:
    expected = [
        (_line("ceiling = "), "kitchen.ceiling"),
        (_line("beyond = "), "walls.hood.beyond"),
        (_line('width = "28 in"'), "walls.hood.openings.sink-window.width"),
        (_line("widht"), "hood.widht"),
        (_line("cover = "), "hood.cover.min"),
        (_line("[[rules.waivers]]"), "rules.waivers.1.reason"),
    ]
    assert [(m.line, m.field) for m in mistakes] == expected


def test_each_says_value_problem_and_remedy_in_plain_words(mistakes: tuple[Mistake, ...]) -> None:
    ceiling, beyond, window, width, cover, waiver = mistakes
    assert ceiling.value == '"8 feet high"'
    assert "7' 6 1/2\"" in ceiling.remedy
    assert "outdoors, room" in beyond.remedy
    assert "reaches to 158 in, but the wall ends at 144 in" in window.problem  # 130 + 28 against 12 ft
    assert width.remedy.startswith("Did you mean width?")
    assert "more than the longest height (16 in)" in cover.problem
    assert waiver.problem == "missing"
    assert waiver.remedy.startswith("Add reason = ")


def test_every_message_begins_with_file_and_line(mistakes: tuple[Mistake, ...]) -> None:
    assert all(str(m).startswith(f"six_mistakes.toml:{m.line}: ") for m in mistakes)
