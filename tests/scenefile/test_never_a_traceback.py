"""Whatever stands in a file, reading it gives a scene or a SceneError, never anything else."""

from __future__ import annotations

from pathlib import Path

import pytest
from hypothesis import HealthCheck, example, given, settings
from hypothesis import strategies as st

from routeviz.errors import SceneError
from routeviz.model.scene import Scene
from routeviz.scenefile import load, loads, starter

SCENES = Path(__file__).parents[2] / "scenes"
GOOD = (starter(), (SCENES / "juniper_straight_up.toml").read_text(encoding="utf-8"))

ODD_VALUES = st.sampled_from(
    ['""', "nan", "inf", "-inf", "1e400", "0", "-1", "true", "[]", "{}", "[[]]", "[1, 2, 3]", "{ a = 1 }", "1979-05-27",
     "07:32:00", '"9**9**9 cfm"', '"1/0 in"', '"½ in"', "'7'' 6\"'", '"x"', '" x "', '"round"', '"3 x 4 x 5 in"', '"2x"',
     '"\\u0000"', '"٣ in"', '"1e99 in"', '"' + "9" * 500 + '"', "9" * 400, "0x7fffffffffffffffffff", '"-"', '"a.b"',
     '"1 degC"', '"400 furlongs"', '"/"', '"6/12/"', '"outdoors"', '"kitchen"', '"""a\nb"""', "'''\n'''"]
)  # fmt: skip


def read(text: str) -> Scene | SceneError:
    try:
        return loads(text)
    except SceneError as fault:
        result = fault
    last = text.count("\n") + 1
    assert result.mistakes
    assert all(m.problem and m.remedy and m.field for m in result.mistakes)
    assert all(m.line is None or 1 <= m.line <= last for m in result.mistakes)
    return result


@st.composite
def mutated(draw: st.DrawFn) -> str:
    """A good scene with a few lines spoilt: values replaced, lines dropped, doubled, moved or cut."""
    lines = draw(st.sampled_from(GOOD)).split("\n")
    for _ in range(draw(st.integers(1, 4))):
        n = draw(st.integers(0, len(lines) - 1))
        way = draw(st.sampled_from(["value", "value", "value", "drop", "double", "move", "cut", "key", "insert"]))
        if way == "value" and "=" in lines[n]:
            lines[n] = lines[n].split("=")[0] + "= " + draw(ODD_VALUES)
        elif way == "drop":
            del lines[n]
        elif way == "double":
            lines.insert(n, lines[n])
        elif way == "move":
            lines.insert(draw(st.integers(0, len(lines) - 1)), lines.pop(n))
        elif way == "cut":
            lines[n] = lines[n][: draw(st.integers(0, max(len(lines[n]), 1)))]
        elif way == "key":
            lines[n] = "x" + lines[n]
        else:
            lines[n] += draw(st.text(max_size=5))
    return "\n".join(lines)


@settings(max_examples=250, deadline=None, suppress_health_check=[HealthCheck.too_slow])
@given(mutated())
@example("[" * 5000)
@example("a = " + "[" * 5000)
@example("format = 1\n" * 2)
@example("walls = 3\n")
@example("[walls]\nhood = []\n")
@example("[[hood]]\n[[hood]]\n")
@example('spaces = ["a"]\nobstacles = {}\n')
@example("[hood.fan]\ncurve = [[1, 2, 3], [4], 5, {}]\n")
def test_spoilt_scenes_load_or_give_mistakes(text: str) -> None:
    read(text)


@settings(max_examples=60, deadline=None)
@given(st.text(max_size=200))
def test_any_text_loads_or_gives_mistakes(text: str) -> None:
    assert isinstance(read(text), SceneError)


@settings(max_examples=40, deadline=None, suppress_health_check=[HealthCheck.function_scoped_fixture])
@given(data=st.binary(max_size=200))
@example(data=b"\xff\xfe")
@example(data=b"")
@example(data=b"name = '\xe9'\n")
def test_any_bytes_give_mistakes(tmp_path: Path, data: bytes) -> None:
    file = tmp_path / "scene.toml"
    file.write_bytes(data)
    with pytest.raises(SceneError):
        load(file)


@pytest.mark.parametrize("good", GOOD)
def test_byte_order_mark_and_windows_line_ends_are_read(good: str, tmp_path: Path) -> None:
    file = tmp_path / "scene.toml"
    file.write_bytes(b"\xef\xbb\xbf" + good.replace("\n", "\r\n").encode())
    plain = tmp_path / "plain" / "scene.toml"
    plain.parent.mkdir()
    plain.write_text(good, encoding="utf-8")
    assert load(file) == load(plain)


class TestFilesThatCannotBeRead:
    def mistake(self, path: object) -> str:
        with pytest.raises(SceneError) as caught:
            load(path)  # type: ignore[arg-type]
        assert len(caught.value.mistakes) == 1
        return str(caught.value)

    def test_missing(self, tmp_path: Path) -> None:
        assert "there is no such file" in self.mistake(tmp_path / "nothing.toml")

    def test_folder(self, tmp_path: Path) -> None:
        assert "this is a folder" in self.mistake(tmp_path)

    def test_empty(self, tmp_path: Path) -> None:
        (tmp_path / "a.toml").write_bytes(b"# nothing\n")
        assert "says nothing" in self.mistake(tmp_path / "a.toml")

    def test_not_utf8_names_the_line(self, tmp_path: Path) -> None:
        (tmp_path / "a.toml").write_bytes(b"format = 1\nname = '\xe9'\n")
        text = self.mistake(tmp_path / "a.toml")
        assert text.startswith("a.toml:2: ")
        assert "UTF-8" in text

    def test_impossible_name(self) -> None:
        assert "cannot be read" in self.mistake("a\0b.toml")

    def test_too_long_name(self) -> None:
        assert "cannot be read" in self.mistake("a" * 5000)

    def test_huge_file(self, tmp_path: Path) -> None:
        (tmp_path / "a.toml").write_bytes(b"#" * 4_000_001)
        assert "too large" in self.mistake(tmp_path / "a.toml")

    def test_toml_fault_names_line(self) -> None:
        with pytest.raises(SceneError) as caught:
            loads('format = 1\nname = "x"\nwidth = 7 ft\n')
        (mistake,) = caught.value.mistakes
        assert mistake.line == 3
        assert "TOML" in mistake.problem
