"""A frame whose hood moved is the frame of the scene with the hood there."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest

from routeviz import scenefile
from routeviz.framing import frame, moved

SCENES = sorted((Path(__file__).parents[2] / "scenes").glob("*.toml"))


@pytest.mark.parametrize("path", SCENES, ids=lambda p: p.stem)
@pytest.mark.parametrize(("shift", "lift"), [(-7.25, 0.0), (11.5, 3.0), (0.0, -2.0)])
def test_moving_the_hood_in_a_frame_is_framing_the_moved_scene(path: Path, shift: float, lift: float) -> None:
    scene = scenefile.load(path)
    hood = replace(scene.hood, centre_in=scene.hood.centre_in + shift, mount_in=(scene.hood.mount_in or 30.0) + lift)
    there = replace(scene, hood=hood, cooktop=replace(scene.cooktop, centre_in=scene.cooktop.centre_in + shift))
    wanted = {"lot line": 36.0, "window": 120.0}
    assert moved(frame(scene, wanted), there) == frame(there, wanted)
    assert frame(there, wanted) != frame(scene, wanted)


@pytest.mark.parametrize("into", ["left", "right"])
def test_a_cooktop_moved_into_the_corner_leaves_no_counter_beside_it(into: str) -> None:
    """What was framed before is not remembered: the counter on that side is gone."""
    scene = scenefile.load(SCENES[0])
    half = scene.cooktop.width_in / 2
    centre = half if into == "left" else scene.kitchen.width_in - half
    there = replace(
        scene,
        hood=replace(scene.hood, centre_in=centre),
        cooktop=replace(scene.cooktop, centre_in=centre),
    )
    framed = moved(frame(scene), there)
    assert framed == frame(there)
    with pytest.raises(KeyError):
        framed.solid(f"counter-{into}")
