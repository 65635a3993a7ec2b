"""The hood of a metric home moves by whole millimetres that people count in, that of another home by inches."""

from __future__ import annotations

import json
from itertools import pairwise
from pathlib import Path

import pytest

from routeviz import cli, pipeline
from routeviz.cli.scenes import load_scene
from routeviz.cli.walls import wall_map

SCENES = Path(__file__).parents[2] / "scenes"


@pytest.mark.parametrize(
    ("name", "step_in", "apart_mm"),
    [("metric_concrete_ceiling", 2.0, 50.0), ("metric_concrete_ceiling", 6.0, 150.0), ("out_the_back", 6.0, 152.4)],
)
def test_places_stand_evenly_in_the_homes_own_unit(name: str, step_in: float, apart_mm: float) -> None:
    found = wall_map(pipeline.plan(load_scene(SCENES / f"{name}.toml")), step_in)
    assert found is not None
    assert len(found.positions_in) > 8
    for a, b in pairwise(found.positions_in):
        assert (b - a) * 25.4 == pytest.approx(apart_mm, abs=1e-6)
    even = found.heights_in  # besides, the ends of the legal window
    own = load_scene(SCENES / f"{name}.toml").hood.mount_in or even[0]
    steps = [(h - own) * 25.4 / (3 * apart_mm) for h in even]
    assert all(abs(s - round(s)) < 1e-6 for s in steps[1:-1])
    assert all(b > a for a, b in pairwise(even))


@pytest.mark.parametrize(
    ("name", "args", "apart_mm", "head"),
    [
        ("metric_concrete_ceiling", (), 25.0, "tape mm"),
        ("metric_concrete_ceiling", ("--step", "2"), 50.0, "tape mm"),
        ("out_the_back", ("--step", "2"), 50.8, "tape in"),
    ],
)
def test_the_tape_in_the_terminal_steps_likewise(
    name: str, args: tuple[str, ...], apart_mm: float, head: str, capsys: pytest.CaptureFixture[str]
) -> None:
    scene = str(SCENES / f"{name}.toml")
    assert cli.main(["tape", scene, *args, "--json", "-"]) == 0
    places = [place["centre_in"] for place in json.loads(capsys.readouterr().out)]
    assert len(places) > 8
    for a, b in pairwise(places):
        assert (b - a) * 25.4 == pytest.approx(apart_mm, abs=0.006)  # places are written to 1/10000 in
    assert cli.main(["tape", scene, *args]) == 0
    ruler = next(line for line in capsys.readouterr().out.splitlines() if "tape" in line)
    assert ruler.split("0", 1)[0].strip() == head
    step = 500 if head == "tape mm" else 12
    marks = [int(text) for text in ruler.removeprefix(ruler[: ruler.index("0")]).replace("─", " ").split()]
    assert marks == [step * n for n in range(len(marks))]  # none is cut off at the end
