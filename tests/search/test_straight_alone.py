"""A straight way found on the small grid is the one that the whole field finds, wherever the hood stands."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest

from routeviz import framing, freespace, pipeline, rules, search
from routeviz.cli.scenes import load_scene
from routeviz.units import ticks

SCENES = Path(__file__).parents[2] / "scenes"


@pytest.mark.parametrize(
    ("name", "straight"),
    [("joist_dead_centre", (True, False)), ("rear_outlet_straight_back", (True, False)), ("cathedral_roof", (True, False)),
     ("metric_concrete_ceiling", (False,))],
)  # fmt: skip
def test_the_small_grid_and_the_field_agree(name: str, straight: tuple[bool, ...]) -> None:
    scene = load_scene(SCENES / f"{name}.toml")
    profile = rules.profile(scene.rules.profile)
    scene = pipeline.settle(scene, profile)
    space = freespace.carve(framing.frame(scene, rules.keep_away(profile)), scene, scene.duct.sections[0])
    x, y, z = space.start.point
    seen = set()
    for shift in range(-24, 25, 8):
        here = replace(space, start=replace(space.start, point=(x + ticks(shift), y, z)))
        quick = search.find(here, others=0, explained=False)
        whole = search.find(here, others=1, explained=False)
        assert (quick.best, quick.outcome) == (whole.best, whole.outcome), shift
        seen.add(quick.best is not None and quick.best.elbows == 0)
    assert seen == set(straight)
