"""The desktop window, opened on a screen of its own (Xvfb) in another process, its sliders moved as a mouse would."""

from __future__ import annotations

import json
import os
import shutil
import subprocess
import sys
from pathlib import Path

import numpy as np
import pytest
from PIL import Image

from routeviz import pipeline
from routeviz.cli.scenes import load_scene
from routeviz.errors import MissingPartError
from routeviz.model.finding import State
from routeviz.views.screen import require_screen
from routeviz.views.stage import build
from routeviz.views.window import listed

SCENE = Path(__file__).parent.parent.parent / "scenes" / "juniper_straight_up.toml"
CHILD = """
import json, sys
from pathlib import Path
from routeviz import pipeline
from routeviz.cli.scenes import load_scene
from routeviz.cli.show import dials_for, moved
from routeviz.errors import MissingPartError
from routeviz.views.screen import require_screen
try:
    require_screen()
except MissingPartError as fault:
    print(json.dumps({"missing": str(fault)}))
    sys.exit(0)
from routeviz.views.window import Setting, Window, listed
plan = pipeline.plan(load_scene(Path(sys.argv[1])), alternatives=1)
here = Setting(plan.scene.hood.centre_in, plan.scene.hood.mount_in, plan.scene.ceiling.joists.first_in)
asked = []
def replan(setting):
    asked.append(setting)
    if setting.height > 31:
        return "This height is refused for the test."
    return pipeline.plan(moved(plan.scene, setting), alternatives=1)
window = Window(plan, here, dials_for(plan.scene, here), replan)
window.open(wait=False)
said = []
def tell():
    texts = [a.GetInput() for a in window.plotter.actors.values() if a.IsA("vtkTextActor")]
    flags = window._marks.GetActors2D().GetNumberOfItems() + window._marks.GetViewProps().GetNumberOfItems()
    said.append({"setting": [window.setting.place, window.setting.height, window.setting.joist],
                 "answer": " ".join(texts[0].split()), "listed": listed(window.plan, window.stage), "flags": flags,
                 "beside": {name: words for words, _, _, _, name in window._texts()}, "second": window.plan.second,
                 "verdict": window.plan.verdict.value, "dials": [[d.name, d.low, d.high] for d in window.dials]})
def drag(name, value):
    slider = window._sliders[name]
    slider.GetRepresentation().SetValue(value)
    slider.InvokeEvent("EndInteractionEvent")
    tell()
tell()
window.plotter.screenshot(sys.argv[2])
drag("place", 62.07)
window.plotter.screenshot(sys.argv[3])
drag("joist", 6.0)
drag("height", 36.0)
drag("place", 62.0)
window.stand("ceiling")
window.close()
print(json.dumps({"said": said, "asked": len(asked)}))
"""


@pytest.fixture(scope="module")
def opened(tmp_path_factory):
    if shutil.which("Xvfb") is None:
        pytest.skip("no Xvfb; on Debian: apt-get install xvfb")
    folder = tmp_path_factory.mktemp("window")
    reading, writing = os.pipe()
    server = subprocess.Popen(
        ["Xvfb", "-displayfd", str(writing), "-screen", "0", "1400x1000x24", "-nolisten", "tcp"], pass_fds=[writing],
        stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL,
    )  # fmt: skip
    os.close(writing)
    try:
        with os.fdopen(reading) as number:
            display = number.readline().strip()
        assert display, "Xvfb gave no display"
        env = {k: v for k, v in os.environ.items() if k != "VTK_DEFAULT_OPENGL_WINDOW"} | {"DISPLAY": f":{display}"}
        files = [folder / "first.png", folder / "moved.png"]
        done = subprocess.run(
            [sys.executable, "-c", CHILD, str(SCENE), *map(str, files)], env=env, capture_output=True, text=True,
            timeout=240, check=False,
        )  # fmt: skip
        assert done.returncode == 0, done.stderr[-2000:]
        data = json.loads(done.stdout.strip().splitlines()[-1])
    finally:
        server.terminate()
        server.wait(timeout=20)
    if "missing" in data:
        pytest.skip(data["missing"])
    return data, files


@pytest.mark.gl
@pytest.mark.slow
def test_the_sliders_move_hood_and_joists_and_the_answer_follows(opened):
    data, _ = opened
    first, there, joists, refused, again = data["said"]
    # worked out on top of the scene: at 70 in straight up between joists 4 and 5; at 62 in joist 4 stands in the duct
    assert first["setting"] == [70.0, 30.0, 14.0]
    assert first["answer"].startswith("Works. Straight up between joists 4 and 5")
    assert there["setting"] == [62.0, 30.0, 14.0]  # a slider stops at quarters of an inch
    assert "Straight up" not in there["answer"]
    assert there["flags"] > 0
    assert "broken" in there["listed"] or "close" in there["listed"]
    assert joists["setting"] == [62.0, 30.0, 6.0]  # joists at 54 and 70 in; the rafters still stand at 62 in
    assert joists["answer"] != there["answer"]
    assert refused["answer"] == "This height is refused for the test."
    assert again["answer"] == "This height is refused for the test."  # the setting is still refused
    for told in data["said"]:
        lines = told["beside"]["second"].splitlines() + told["beside"]["findings"].splitlines()
        assert max(map(len, lines)) <= 32, "the column beside the picture is as wide as 32 signs"
        assert len(lines) < 36, "and as high as 36 lines"
        assert " ".join(told["beside"]["second"].split()) == told["second"], "nothing is cut"
    assert [d[0] for d in first["dials"]] == ["place", "height", "joist"]
    assert first["dials"][0][1:] == [18.0, 126.0]  # half of the 36 in hood from each end of 144 in


@pytest.mark.gl
@pytest.mark.slow
def test_the_window_shows_the_kitchen_and_the_sliders(opened):
    _, files = opened
    first, moved = (np.asarray(Image.open(f).convert("RGB"), int) for f in files)
    assert first.shape == moved.shape
    middle = first[200:700, 400:1150]
    assert middle.std() > 20
    assert np.abs(first - moved).mean() > 1
    height = first.shape[0]
    row = moved[round(height * (1 - 0.085)), :]  # where the sliders' tubes lie
    assert (np.abs(row - row[2]).sum(axis=1) > 60).mean() > 0.5


@pytest.fixture(scope="module")
def blocked():
    plan = pipeline.plan(load_scene(SCENE.with_name("joist_dead_centre.toml")), alternatives=1)
    return plan, build(plan)


def test_a_blocked_plan_names_what_is_in_the_way(blocked):
    # the scene's own head: joist 4 stands right over the hood, and rafter 4 of the back slope above it
    plan, stage = blocked
    assert plan.best is None
    assert listed(plan, stage).split() == ["In", "the", "way:", "joist", "4", "and", "rafter", "4,", "back", "slope"]


def test_only_a_plan_with_a_route_says_that_nothing_is_broken(blocked):
    plan = pipeline.plan(load_scene(SCENE), alternatives=1)
    stage = build(plan)
    assert listed(plan, stage) == "Nothing is broken or close."
    assert "Nothing" not in listed(*blocked)


def test_more_findings_than_fit_are_counted():
    plan = pipeline.plan(load_scene(SCENE.with_name("gas_low_cabinets.toml")), alternatives=1)
    stage = build(plan)
    flagged = [f for f in stage.flags if f.state in (State.BROKEN, State.CLOSE)]
    assert len(flagged) == 8
    whole = listed(plan, stage, most=80).splitlines()
    assert [int(line.split()[0]) for line in whole if line[:1].isdigit()] == [f.number for f in flagged]
    for most in range(3, len(whole)):
        lines = listed(plan, stage, most=most).splitlines()
        shown = sum(line[:1].isdigit() for line in lines)
        assert len(lines) <= most
        assert lines[-1] == f"and {8 - shown} more"
        assert lines[:-1] == whole[: len(lines) - 1]


def test_without_a_screen_one_line_says_what_is_missing(monkeypatch):
    if not sys.platform.startswith("linux"):
        pytest.skip("other systems always have a screen")
    monkeypatch.delenv("DISPLAY", raising=False)
    with pytest.raises(MissingPartError) as fault:
        require_screen()
    assert "\n" not in str(fault.value)
    assert "DISPLAY is not set" in str(fault.value)


def test_a_screen_that_cannot_be_drawn_on_is_told_apart(monkeypatch):
    if not sys.platform.startswith("linux"):
        pytest.skip("other systems always have a screen")
    monkeypatch.setenv("DISPLAY", ":4242")  # nobody is there
    with pytest.raises(MissingPartError, match=r"cannot be drawn on with OpenGL.*apt-get install libgl1"):
        require_screen()


def test_the_command_ends_with_one_line_and_no_traceback():
    env = {k: v for k, v in os.environ.items() if k != "DISPLAY"}
    done = subprocess.run(
        [sys.executable, "-m", "routeviz", "show", str(SCENE)], env=env, capture_output=True, text=True, timeout=120,
        check=False,
    )  # fmt: skip
    assert done.returncode == 2
    assert done.stdout == ""
    assert len(done.stderr.strip().splitlines()) == 1
    assert done.stderr.startswith("routeviz: No screen was found")
