"""The desktop window's sliders, without a window: what each moves in the scene, and what a plan makes of that."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest

from routeviz import pipeline
from routeviz.cli.scenes import load_scene
from routeviz.cli.show import dials_for, moved, setting_of

pytest.importorskip("pyvista", reason="the desktop window is drawn with pyvista")
SCENES = Path(__file__).parents[2] / "scenes"


def test_without_joists_the_slider_moves_the_rafters() -> None:
    scene = load_scene(SCENES / "cathedral_roof.toml")
    here = setting_of(scene)
    assert here.joist == 0.75, "the file says first = 3/4 in"
    dial = dials_for(scene, here)[-1]
    assert (dial.words, dial.low, dial.high) == ("First rafter", 0.0, 16.0)
    there = moved(scene, replace(here, joist=6.0))
    assert (there.roof.framing.first_in, there.ceiling) == (6.0, scene.ceiling)
    frame = pipeline.plan(there, alternatives=1, counted=False).frame
    lows = sorted({round(s.shape.start, 6) for s in frame.solids if s.kind.value == "rafter"})
    assert -(6.0 + 16.0) - 0.75 in lows, "counted out from the hood wall; a rafter is 1 1/2 in thick"


def test_with_joists_it_moves_the_joists_and_leaves_the_roof() -> None:
    scene = load_scene(SCENES / "juniper_straight_up.toml")
    here = setting_of(scene)
    assert dials_for(scene, here)[-1].words == "First joist"
    there = moved(scene, replace(here, joist=9.0))
    assert (there.ceiling.joists.first_in, there.roof) == (9.0, scene.roof)


def test_members_listed_one_by_one_have_no_slider() -> None:
    scene = load_scene(SCENES / "juniper_straight_up.toml")
    listed = replace(scene.ceiling.joists, at_in=(14.0, 30.0, 46.0))
    scene = replace(scene, ceiling=replace(scene.ceiling, joists=listed))
    here = setting_of(scene)
    assert here.joist is None
    assert [d.name for d in dials_for(scene, here)] == ["place", "height"]
