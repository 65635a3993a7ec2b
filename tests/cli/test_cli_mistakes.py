"""Whatever a person mistypes or hands over, they get plain lines and exit code 2, and nothing is written."""

from __future__ import annotations

import re
import shutil
import tempfile
from pathlib import Path

import pytest
from clirunning import SCENES, call, files_in
from hypothesis import given, settings
from hypothesis import strategies as st

SIX = Path(__file__).parents[1] / "scenefile" / "six_mistakes.toml"
WITH_SCENE = ("plan", "check", "compare", "packet")
JOIST = SCENES / "joist_dead_centre.toml"
QUICK = SCENES / "juniper_straight_up.toml"


@pytest.mark.parametrize(
    ("line", "told"),
    [
        (("plann",), 'Did you mean "plan"'),
        (("plan",), "SCENE is missing"),
        (("plan", "x.toml", "y.toml"), "'y.toml' is more than this command takes"),
        (("plan", "x.toml", "--wys", "3"), "Did you mean --ways"),
        (("plan", "x.toml", "--ways", "two"), "--ways cannot be 'two'; it takes a whole number"),
        (("plan", "x.toml", "--ways", "0"), "it must be at least 1"),
        (("plan", "x.toml", "--apply"), "--apply is missing its value"),
        (("plan", "x.toml", "--picture=maybe"), "it takes yes or no"),
        (("plan", "x.toml", "--out", "a", "--out", "b"), "--out is given more than once"),
        (("packet", "x.toml", "--paper", "poster"), "it takes letter or"),
        (("schema", "wall"), "it takes scene or plan"),
        (("check", "-q", "x.toml"), "-q"),
        (("explain", "FIT-ROOM", "FIT-COVER"), "'FIT-COVER' is more"),
        (("new", "a.toml", "b.toml"), "'b.toml' is more"),
        (("--bogus",), "--bogus"),
    ],
    ids=lambda v: " ".join(v) if isinstance(v, tuple) else "",
)
def test_a_mistyped_command_is_one_plain_line(here: Path, line: tuple[str, ...], told: str) -> None:
    said = call(*line)
    assert said.code == 2
    assert said.out == ""
    assert said.err.count("\n") == 1
    assert told in said.err
    assert re.search(r"See: routeviz ?\w* --help$", said.err.strip())
    assert files_in(here) == set()


@pytest.mark.parametrize("command", WITH_SCENE)
def test_six_mistakes_are_six_lines_with_line_numbers(here: Path, command: str) -> None:
    shutil.copy(SIX, here / "kitchen.toml")
    said = call(command, "kitchen.toml")
    lines = said.err.splitlines()
    assert said.code == 2
    assert said.out == ""
    numbers = [int(re.match(r"kitchen\.toml:(\d+): [\w.-]+.*: .+\. .+", line)[1]) for line in lines[:-1]]  # type: ignore[index]
    assert numbers == sorted(numbers)
    assert len(set(numbers)) == 6
    assert '"8 feet high"' in said.err, "the value stands in the message"
    assert lines[-1] == "6 things to mend; nothing was written."
    assert files_in(here) == {"kitchen.toml"}


@pytest.mark.parametrize("command", WITH_SCENE)
def test_a_missing_file_or_a_folder_is_told(here: Path, command: str) -> None:
    missing = call(command, "nowhere.toml")
    assert (missing.code, missing.out) == (2, "")
    assert missing.err.startswith("nowhere.toml: ")
    (here / "house").mkdir()
    folder = call(command, "house")
    assert (folder.code, folder.out) == (2, "")
    assert "folder" in folder.err
    assert files_in(here) == {"house"}


def test_a_name_that_no_disk_takes() -> None:
    said = call("check", "n" * 300 + ".toml")
    assert (said.code, said.out) == (2, "")


def test_unknown_profile_is_told_with_the_others(here: Path) -> None:
    (here / "k.toml").write_text(SCENES.joinpath("joist_dead_centre.toml").read_text().replace("irc-2021", "irc-1902"))
    said = call("check", "k.toml")
    assert said.code == 2
    assert "irc-1902" in said.err
    assert "irc-2021" in said.err, "the known ones are named"


def test_unknown_rule_names_the_nearest() -> None:
    said = call("explain", "FIT-RUM")
    assert said.code == 2
    assert "FIT-ROOM" in said.err


def test_a_file_that_is_there_is_never_overwritten(here: Path) -> None:
    (here / "kitchen.toml").write_text("mine")
    said = call("new")
    assert said.code == 2
    assert "kitchen.toml is there already" in said.err
    assert (here / "kitchen.toml").read_text() == "mine"


def test_new_in_a_folder_that_is_not_there(here: Path) -> None:
    said = call("new", "house/kitchen.toml")
    assert said.code == 2
    assert "house" in said.err
    assert files_in(here) == set()


@pytest.mark.parametrize("command", ["plan", "packet"])
def test_an_output_folder_that_is_a_file(here: Path, command: str) -> None:
    (here / "taken").write_text("mine")
    said = call(command, QUICK, "--out", "taken")
    assert said.code == 2
    assert "taken" in said.err
    assert "Choose another" in said.err
    assert (here / "taken").read_text() == "mine"
    assert files_in(here) == {"taken"}


@pytest.mark.parametrize("target", ["taken/plan.json", "folder", "nowhere/plan.json", "n" * 300])
def test_a_json_file_that_cannot_be_written(here: Path, target: str) -> None:
    (here / "taken").write_text("mine")
    (here / "folder").mkdir()
    said = call("plan", QUICK, "--json", target)
    assert said.code == 2
    assert said.err.startswith("routeviz: cannot write ")
    assert files_in(here) == {"taken", "folder"}, "no temporary file is left"


@pytest.mark.parametrize(
    "content",
    [
        b"",
        b"\0" * 400,
        bytes(range(256)) * 8,
        b"\xff\xfe" + "name = 'x'".encode("utf-16-le"),
        b"[hood]\n[hood]\n",
        b"a = " + b"[" * 3000,
        b"a." * 3000 + b"b = 1",
        b'name = "never closed',
        b"format = 99999999999999999999999999",
        b"\xef\xbb\xbfformat = 1\n",
    ],
    ids=["empty", "nul", "all bytes", "utf-16", "twice", "brackets", "dots", "open quote", "huge number", "mark"],
)
def test_noise_is_answered_in_plain_lines(here: Path, content: bytes) -> None:
    (here / "noise.toml").write_bytes(content)
    said = call("plan", "noise.toml")
    assert (said.code, said.out) == (2, "")
    assert said.err.startswith("noise.toml")
    assert said.err.rstrip().endswith("nothing was written.")
    assert files_in(here) == {"noise.toml"}


@settings(max_examples=25, deadline=None, derandomize=True)
@given(st.data())
def test_a_scene_with_bytes_knocked_about(data: st.DataObject) -> None:
    """A true scene with a few bytes changed: either it still plans as a scene, or it is told; never a traceback."""
    content = bytearray(JOIST.read_bytes())
    for _ in range(data.draw(st.integers(1, 6))):
        content[data.draw(st.integers(0, len(content) - 1))] = data.draw(st.integers(0, 255))
    with tempfile.TemporaryDirectory() as folder:
        file = Path(folder) / "knocked.toml"
        file.write_bytes(content)
        said = call("check", file)
    assert said.code in (0, 2)
    assert (said.err == "") == (said.code == 0)


@pytest.mark.parametrize(
    ("text", "line", "told"),
    [
        ("[walls.hood]\n[walls.hood]\n", 2, "the table [walls.hood] stands twice"),
        ("format = 1\nformat = 2\n", 2, "this key stands twice"),
        ("fan = { rated = 1, rated = 2 }\n", 1, "the key rated stands twice between the braces"),
        ('fan = { rated = 1 }\n[fan]\nx = ""\n', 2, "stands twice"),
        ("width = 12 ft\n", 1, "something more stands behind the value"),
        ("width 12\n", 1, "= is missing after the key"),
        ("width = wide\n", 1, "text needs quotes"),
        ("[walls\n", 1, "] is missing at the end of the header"),
        ('name = "C:\\x"\n', 1, "backslash"),
        ('name = "open\nx = 1\n', 1, "the line ends before the quotes are closed"),
        ('name = "open', 1, "the quotes are never closed"),
        ("= 4\n", 1, "a line begins with a key"),
        ("at = [1, 2\nx = 3\n", 2, "is missing|never closed"),
    ],
    ids=lambda v: repr(v)[:24],
)
def test_what_is_not_toml_is_told_in_plain_words(here: Path, text: str, line: int, told: str) -> None:
    (here / "k.toml").write_text(text)
    said = call("check", "k.toml")
    assert said.code == 2
    assert said.err.startswith(f"k.toml:{line}: ")
    assert any(words in said.err for words in told.split("|")), said.err
    assert said.err.count("\n") == 2, "one mistake and the closing line"
