"""What --help prints at 80 columns, and where a person is sent who has no scene yet."""

from __future__ import annotations

import itertools
import re

import pytest
from clirunning import call

from routeviz.cli.app import app
from routeviz.scenefile.document import FittingTable

COMMANDS = sorted(name for name in app if not name.startswith("-"))
ROW = re.compile(r"^│ (.*) │$")


@pytest.fixture(autouse=True)
def _eighty(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv("COLUMNS", "80")


def test_the_commands_are_found() -> None:
    assert {"plan", "check", "app", "tape"} <= set(COMMANDS)


@pytest.mark.parametrize("command", COMMANDS)
def test_no_line_of_help_breaks_before_it_is_full(command: str) -> None:
    """A break inside a description, where the next word would have fitted, comes from the source and not from the terminal."""
    rows = [found[1] for line in call(command, "--help").out.splitlines() if (found := ROW.match(line))]
    for row, after in itertools.pairwise(rows):
        column = len(after) - len(after.lstrip())
        if column < 4 or not row.strip():  # a new entry
            continue
        assert len(row.rstrip()) + 1 + len(after.split()[0]) > len(row), (row, after)


def test_check_says_how_a_route_is_given() -> None:
    told = " ".join(call("check", "--help").out.split())
    assert "[as_built]" in told
    assert "[[as_built.fittings]]" in told
    fields = FittingTable.model_json_schema()["properties"]
    for part in fields["part"]["enum"]:
        assert part in told, part
    for turn in fields["turn"]["enum"]:
        assert turn in told, turn


def test_the_list_of_commands_has_one_sentence_each() -> None:
    told = " ".join(call("--help").out.replace("│", " ").split())
    assert "Judge a scene: its route as built, or the best one found. compare" in told


def test_who_has_no_scene_is_told_the_command_that_writes_one() -> None:
    said = call("plan", "nosuch.toml")
    assert "routeviz new" in said.err
    assert call("new", "kitchen.toml").code == 0
