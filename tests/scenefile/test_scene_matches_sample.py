"""The first scene file says the same as the kitchen made by hand in samples.py."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import samples

from routeviz.scenefile import load

SCENES = Path(__file__).parents[2] / "scenes"


def test_juniper_file_is_the_kitchen_made_by_hand() -> None:
    scene = load(SCENES / "juniper_straight_up.toml")
    by_hand = replace(samples.scene(), file=scene.file, assumptions=scene.assumptions)
    assert scene == by_hand
