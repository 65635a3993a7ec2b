"""The line of every value, in any layout that TOML allows."""

from __future__ import annotations

import re
import tomllib
from typing import Any

import pytest

from routeviz.errors import SceneError
from routeviz.scenefile import loads, starter
from routeviz.scenefile.lines import find_lines, line_of

AWKWARD = '''# comment
format = 1   # trailing
name = """two
lines"""
flag = true
[walls.hood]
studs = { size = "2x6", first = "3/4 in" } # inline
[[walls.hood.openings]]
name = "a"

[ceiling]
joists.size = "2x8"
at = [
  1,   # one
  2,
  { a = 1, b = 2 },
  [ 5,
    6 ],
]
after = 1
[walls.left]
beyond = "room"
[[walls.left.openings]]
left = 3
[hood]
[[spaces]]
name = "s"
[spaces.walls.front]
beyond = "outdoors"
[[spaces]]
"quoted key" = 3
empty = []
'''


def test_lines_of_an_awkward_file() -> None:
    lines = find_lines(AWKWARD)
    # counted by hand in the text above
    expected = {
        ("format",): 2,
        ("name",): 3,
        ("flag",): 5,
        ("walls", "hood"): 6,
        ("walls", "hood", "studs", "first"): 7,
        ("walls", "hood", "openings", 0): 8,
        ("walls", "hood", "openings", 0, "name"): 9,
        ("ceiling",): 11,
        ("ceiling", "joists", "size"): 12,
        ("ceiling", "at"): 13,
        ("ceiling", "at", 0): 14,
        ("ceiling", "at", 1): 15,
        ("ceiling", "at", 2, "b"): 16,
        ("ceiling", "at", 3, 1): 18,
        ("ceiling", "after"): 20,
        ("walls", "left"): 21,
        ("walls", "left", "openings", 0, "left"): 24,
        ("hood",): 25,
        ("spaces", 0): 26,
        ("spaces", 0, "walls", "front", "beyond"): 29,
        ("spaces", 1): 30,
        ("spaces", 1, "quoted key"): 31,
        ("spaces", 1, "empty"): 32,
    }
    assert {place: line_of(place, lines) for place in expected} == expected


def test_what_is_missing_points_to_the_nearest_table() -> None:
    lines = find_lines(AWKWARD)
    assert line_of(("hood", "outlet", "section"), lines) == 25
    assert line_of(("spaces", 1, "deep"), lines) == 30
    assert line_of(("ceiling", "at", 2, "c"), lines) == 16
    assert line_of(("kitchen",), lines) == 1


def _leaves(data: Any, path: tuple[str | int, ...] = ()) -> list[tuple[str | int, ...]]:
    pairs = data.items() if isinstance(data, dict) else enumerate(data) if isinstance(data, list) else None
    return [path] if pairs is None else [leaf for step, value in pairs for leaf in _leaves(value, (*path, step))]


def test_every_value_of_the_starter_has_a_line_that_holds_it() -> None:
    """Independent of the marking: the line found must contain the value's own text."""
    text = starter()
    data, lines, source = tomllib.loads(text), find_lines(text), text.split("\n")
    leaves = _leaves(data)
    assert len(leaves) > 150
    for place in leaves:
        value: Any = data
        for step in place:
            value = value[step]
        shown = str(value).lower() if isinstance(value, bool) else str(value)
        assert shown in source[lines[place] - 1], place


@pytest.mark.parametrize("key", ["width", "kind", "studs", "left", "rated", "across", "beyond", "direction"])
def test_the_reported_line_is_the_spoilt_line(key: str) -> None:
    source = starter().split("\n")
    spots = [n for n, line in enumerate(source) if re.match(rf"{key} = ", line)]
    assert spots
    for spot in spots:
        spoilt = [*source]
        spoilt[spot] = f"{key} = 1979-05-27"
        with pytest.raises(SceneError) as caught:
            loads("\n".join(spoilt))
        assert [m.line for m in caught.value.mistakes] == [spot + 1]


def test_marks_in_the_text_do_not_mislead() -> None:
    text = "# \ue0000; \ue000\ue0001;\nformat = 1\nname = '\ue0005;'\n"
    assert find_lines(text) == {("format",): 2, ("name",): 3}


SCATTERED = '''name = "rows that do not stand together"
[[obstacles]]
name = "first"
[hood]
curve = [
  ["0 cfm", "1 in wg"],
  [ "400 cfm", "0 in wg" ],
]
note = """
[not.a.header]
"""
[[obstacles]]
name = "second"
[[spaces]]
[[spaces.walls.front.openings]]
name = "a"
[duct]
stock = 1
[[spaces]]
[[spaces.walls.front.openings]]
name = "b"
[[obstacles]]
name = "third"
'''


def test_rows_of_a_list_of_tables_may_stand_anywhere() -> None:
    lines = find_lines(SCATTERED)
    # counted by hand in the text above
    expected = {
        ("obstacles", 0, "name"): 3,
        ("hood", "curve", 1, 0): 7,
        ("hood", "note"): 9,
        ("obstacles", 1): 12,
        ("obstacles", 1, "name"): 13,
        ("spaces", 0): 14,
        ("spaces", 0, "walls", "front", "openings", 0, "name"): 16,
        ("duct", "stock"): 18,
        ("spaces", 1): 19,
        ("spaces", 1, "walls", "front", "openings", 0, "name"): 21,
        ("obstacles", 2): 22,
        ("obstacles", 2, "name"): 23,
    }
    assert {path: lines.get(path) for path in expected} == expected
    assert find_lines(SCATTERED.replace("\n", "\r\n")) == lines
