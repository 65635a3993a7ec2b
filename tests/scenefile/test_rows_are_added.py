"""A new row keeps the rest of a file; an empty kitchen is a scene that plans."""

from __future__ import annotations

import tomllib
from pathlib import Path

import pytest

from routeviz import pipeline, rules, scenefile
from routeviz.errors import SceneError
from routeviz.model.finding import Verdict

SCENES = sorted((Path(__file__).parents[2] / "scenes").glob("*.toml"))
PIPE = {
    "name": "new-pipe",
    "kind": "pipe",
    "left": "4 in",
    "bottom": "80 in",
    "width": "2 in",
    "depth": "2 in",
    "height": "9 in",
}
WINDOW = {"name": "new-window", "kind": "window", "left": "2 in", "sill": "60 in", "width": "6 in", "height": "8 in"}


@pytest.mark.parametrize("file", SCENES, ids=lambda f: f.stem)
@pytest.mark.parametrize(("place", "row"), [("obstacles", PIPE), ("walls.hood.openings", WINDOW)])
def test_a_row_is_added_and_nothing_else_changes(file: Path, place: str, row: dict[str, str]) -> None:
    text = file.read_text(encoding="utf-8")
    new = scenefile.add_row(text, place, row)
    wanted, here = tomllib.loads(text), tomllib.loads(new)
    at = wanted
    for step in place.split(".")[:-1]:
        at = at[step]
    at.setdefault(place.split(".")[-1], []).append(row)
    assert here == wanted
    kept = iter(new.splitlines())
    assert all(line in kept for line in text.rstrip().splitlines()), "every line is still there, in order"


def test_a_row_into_a_list_on_one_line() -> None:
    text = 'obstacles = [{ name = "a" }]  # mine\n'
    assert tomllib.loads(scenefile.add_row(text, "obstacles", {"name": "b"}))["obstacles"] == [
        {"name": "a"},
        {"name": "b"},
    ]
    assert "# mine" in scenefile.add_row(text, "obstacles", {"name": "b"})


def test_a_row_into_a_table_on_one_line() -> None:
    text = 'walls = { hood = { beyond = "room" } }\n'
    new = tomllib.loads(scenefile.add_row(text, "walls.hood.openings", WINDOW))
    assert new["walls"]["hood"] == {"beyond": "room", "openings": [WINDOW]}


@pytest.mark.parametrize("place", ["hood", "nowhere", "obstacles.7", "kitchen.width", ""])
def test_only_lists_of_tables_take_rows(place: str) -> None:
    with pytest.raises(SceneError):
        scenefile.add_row(SCENES[0].read_text(encoding="utf-8"), place, PIPE)


def test_an_empty_kitchen_plans_and_every_number_in_it_is_guessed() -> None:
    text = scenefile.blank()
    scene = scenefile.loads(text, profiles=rules.profiles(), codes=rules.codes())
    assert pipeline.plan(scene, alternatives=1).verdict is Verdict.WORKS
    guessed = {a.field for a in scene.assumptions}

    def numbers(table: dict, at: str = "") -> set[str]:
        found = set()
        for key, value in table.items():
            here = f"{at}{key}"
            if isinstance(value, dict):
                found |= numbers(value, f"{here}.")
            elif isinstance(value, str) and any(c.isdigit() for c in value):
                found.add(here)
        return found

    assert numbers(tomllib.loads(text)) <= guessed
