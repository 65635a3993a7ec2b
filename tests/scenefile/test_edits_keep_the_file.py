"""Edits change one value and nothing else of a person's file."""

from __future__ import annotations

import difflib
import tomllib
from pathlib import Path
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from routeviz.errors import SceneError
from routeviz.scenefile import edit, loads, starter

SCENES = Path(__file__).parents[2] / "scenes"


def changed(old: str, new: str) -> list[str]:
    return [line for line in difflib.ndiff(old.split("\n"), new.split("\n")) if line[0] in "+-"]


def test_a_value_with_its_comment() -> None:
    old = starter()
    new = edit(old, {"hood.centre": "66 3/4 in"})
    gone, come = changed(old, new)
    assert gone.startswith('- centre = "64 in" ')
    assert come.startswith('+ centre = "66 3/4 in" ')
    assert gone.index("# from the left") == come.index("# from the left")  # comments stay in their column
    assert loads(new).hood.centre_in == 66.75


def test_many_places_at_once() -> None:
    new = edit(
        starter(),
        {
            "assumed": ["roof.framing.first"],
            "walls.hood.studs.first": "1 in",
            "ceiling.joists.at": ("12 in", "27 1/2 in", "44 in"),
            "ceiling.joists.first": None,
            "ceiling.joists.spacing": None,
            "obstacles.left-uppers.bottom": "55 in",
            "hood.fasteners.2.up": "9 in",
            "roof.framing.doubled": [3],
            "walls.right.studs.first": 2,
            "cap.roof": False,
            "spaces.garage.walls.front.bearing": False,
        },
    )
    scene = loads(new)
    assert scene.walls[0].studs is not None
    assert scene.walls[0].studs.first_in == 1.0
    assert scene.ceiling.joists is not None
    assert scene.ceiling.joists.at_in == (12.0, 27.5, 44.0)
    assert scene.obstacles[0].bottom_in == 55.0
    assert [f.up_in for f in scene.hood.fasteners] == [10.5, 9.0]
    assert scene.roof is not None
    assert scene.roof.framing is not None
    assert scene.roof.framing.doubled == (3,)
    assert not scene.cap.roof
    assert not scene.spaces[0].walls[0].bearing
    assert [c for c in starter().split("\n") if c.startswith("# ")] == [
        c for c in new.split("\n") if c.startswith("# ")
    ]


def test_a_new_key_stands_right_after_the_last_of_its_table() -> None:
    new = edit(starter(), {"walls.front.lot_line": "3 ft", "site.snow": "12 in"})
    lines = new.split("\n")
    assert lines[lines.index('lot_line = "3 ft"') - 1] == "bearing = false"
    assert lines[lines.index('snow = "12 in"') - 1].startswith("cold_climate")


@pytest.mark.parametrize(
    ("text", "place", "value", "wanted"),
    [
        ('[hood]\nwidth = 3 # c\n', "hood.outlet.out", "8 in", '[hood]\nwidth = 3 # c\n\n[hood.outlet]\nout = "8 in"\n'),
        ("name = 'x'", "unit", "mm", "name = 'x'\nunit = \"mm\"\n"),
        ("# top\n[hood]\n", "name", "x", '# top\n[hood]\n'),
        ("[hood]\nfan = { rated = 1 } # f\n", "hood.fan.rated_at", 2, "[hood]\nfan = { rated = 1 , rated_at = 2} # f\n"),
        ("[ceiling]\nblocking = [\n  1, # a\n  2, # b\n]\n# end\n", "ceiling.slab", 8,
         "[ceiling]\nblocking = [\n  1, # a\n  2, # b\n]\nslab = 8\n# end\n"),
        ("[ceiling]\nblocking = [\n  1, # a\n  2, # b\n]\n", "ceiling.blocking.2", 7,
         "[ceiling]\nblocking = [\n  1, # a\n  7, # b\n]\n"),
        ("[hood]\r\nwidth = 3\r\n", "hood.depth", 4, "[hood]\r\nwidth = 3\r\ndepth = 4\r\n"),
    ],
)  # fmt: skip
def test_layouts(text: str, place: str, value: object, wanted: str) -> None:
    new = edit(text, {place: value})
    if place == "name":  # goes to the top, before the first table
        assert tomllib.loads(new) == {"name": "x", "hood": {}}
        assert "# top" in new
        return
    assert tomllib.loads(new) == tomllib.loads(wanted)
    assert new.replace(" ,", ",").replace("}", " }") == wanted.replace(" ,", ",").replace("}", " }")


@pytest.mark.parametrize(
    ("place", "words"),
    [
        ("hood.center", "Did you mean centre?"),
        ("obstacles.nothing.left", "Name a row"),
        ("hood.fasteners.9.up", "Name a row"),
        ("hood.centre.x", "is one value"),
        ("engine.power", "Known keys"),
        ("", "Known keys"),
    ],
)
def test_impossible_places_are_refused(place: str, words: str) -> None:
    with pytest.raises(SceneError, match=words.replace("?", r"\?")):
        edit(starter(), {"hood.width": "30 in", place: 3})


def test_text_that_is_no_toml_is_refused() -> None:
    with pytest.raises(SceneError, match="TOML"):
        edit("width = 7 ft", {"hood.width": 3})


def test_a_whole_table_is_not_overwritten() -> None:
    with pytest.raises(SceneError, match="one by one"):
        edit(starter(), {"hood.fan": {"rated": "300 cfm"}})


def _places(data: Any, path: tuple[str, ...] = ()) -> list[str]:
    if isinstance(data, dict):
        return [p for key, value in data.items() for p in _places(value, (*path, key))]
    if isinstance(data, list) and any(isinstance(v, dict) for v in data):
        return [p for n, value in enumerate(data, start=1) for p in _places(value, (*path, str(n)))]
    return [".".join(path)]


PLACES = _places(tomllib.loads(starter()))


@settings(max_examples=60, deadline=None)
@given(
    st.dictionaries(
        st.sampled_from(PLACES),
        st.one_of(st.integers(-9, 9), st.booleans(), st.text(max_size=8), st.lists(st.integers(0, 9), max_size=3)),
        min_size=1,
        max_size=3,
    )
)
def test_any_value_can_be_set_and_set_back(changes: dict[str, Any]) -> None:
    old = starter()
    data = tomllib.loads(old)
    new = edit(old, changes)
    assert tomllib.loads(new) != data or new == old or all(_get(data, p) == v for p, v in changes.items())
    for place, value in changes.items():
        assert _get(tomllib.loads(new), place) == value
    back = edit(new, {place: _get(data, place) for place in changes})
    assert tomllib.loads(back) == data
    assert len(back.split("\n")) == len(old.split("\n"))


def _get(data: Any, place: str) -> Any:
    for word in place.split("."):
        data = data[int(word) - 1] if isinstance(data, list) else data[word]
    return data
