"""Where no hidden way exists, looking only for boxed ways gives the same answer as looking for all."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest

from routeviz import pipeline
from routeviz.cli.scenes import load_scene
from routeviz.model.path import Outcome

SCENES = Path(__file__).parents[2] / "scenes"


@pytest.mark.parametrize(("name", "a_way"), [("soffit_vent_cap", True), ("stud_dead_centre", False)])
def test_hidden_ways_need_not_be_looked_for_twice(name: str, a_way: bool) -> None:
    scene = load_scene(SCENES / f"{name}.toml")
    assert not scene.duct.boxing_allowed
    assert pipeline.plan(scene, counted=False).paths.outcome is Outcome.NONE_EXISTS
    boxed = replace(scene, duct=replace(scene.duct, boxing_allowed=True))
    whole = pipeline.plan(boxed, alternatives=1, counted=False).paths
    alone = pipeline.plan(boxed, alternatives=1, counted=False, hidden=False).paths
    assert (whole.best is not None) is a_way
    assert (alone.best, alone.outcome, alone.front, alone.why_not) == (
        whole.best,
        whole.outcome,
        whole.front,
        whole.why_not,
    )
