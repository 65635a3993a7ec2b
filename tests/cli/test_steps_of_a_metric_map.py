"""The hood of a metric home moves by whole millimetres that people count in, that of another home by inches."""

from __future__ import annotations

from itertools import pairwise
from pathlib import Path

import pytest

from routeviz import pipeline
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
    for a, b in pairwise(found.heights_in):
        assert (b - a) * 25.4 == pytest.approx(3 * apart_mm, abs=1e-6)
