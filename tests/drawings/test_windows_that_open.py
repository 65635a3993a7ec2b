"""The elevation says of a window whether it opens, whatever it is called."""

from __future__ import annotations

from dataclasses import replace
from functools import cache
from pathlib import Path

import pytest

from routeviz import drawings, pipeline
from routeviz.drawings.primitives import Text
from routeviz.scenefile import load

SCENE = Path(__file__).parents[2] / "scenes" / "rear_outlet_straight_back.toml"


@cache
def elevation(name: str, opens: bool) -> list[str]:
    """The words on the elevation of a kitchen whose one window beside the hood has this name."""
    scene = load(SCENE)
    walls = tuple(
        replace(w, openings=tuple(replace(o, id=name, operable=opens) for o in w.openings)) for w in scene.walls
    )
    assert sum(len(w.openings) for w in walls) == 1
    plan = pipeline.plan(replace(scene, walls=walls), alternatives=1, counted=False)
    page = next(p for p in drawings.sheets(plan) if p.name == "hood wall")
    return [t.text for t in page.items if isinstance(t, Text)]


@pytest.mark.parametrize(
    ("name", "words"),
    [
        ("sink-window", "sink window"),
        ("over-sink", "window over sink"),
        ("over_sink", "window over sink"),
        ("east", "window east"),
    ],
)
def test_a_window_that_opens_says_so(name: str, words: str) -> None:
    assert f"{words}, opens" in elevation(name, True)
    assert words in elevation(name, False)
    assert not [t for t in elevation(name, False) if "opens" in t and words in t]
