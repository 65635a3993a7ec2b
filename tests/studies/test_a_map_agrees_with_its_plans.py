"""What a map of the wall says of a place is what a plan of that place says, members that the duct crosses included."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest

from routeviz import pipeline, scenefile, studies
from routeviz.model.finding import State

SCENES = Path(__file__).parents[2] / "scenes"


@pytest.mark.parametrize("name", ["side_wall_storey_above", "out_the_back", "juniper_straight_up", "truss_in_front"])
def test_a_place_breaks_no_more_on_the_map_than_when_planned(name: str) -> None:
    scene = scenefile.load(SCENES / f"{name}.toml")
    (mount,) = studies.heights(scene)
    places = studies.places(scene, step_in=16.0)
    (row,) = studies.wall_plans(scene, places, (mount,))
    compared = 0
    for x, found in zip(places, row, strict=True):
        along = x - scene.hood.centre_in
        hood, cooktop = (
            replace(scene.hood, centre_in=x),
            replace(scene.cooktop, centre_in=scene.cooktop.centre_in + along),
        )
        here = pipeline.plan(replace(scene, hood=hood, cooktop=cooktop), alternatives=1, counted=False)
        if found.best is None or here.best is None:
            continue
        broken = [{f.code for f in p.all_findings if f.state is State.BROKEN and f.must} for p in (found, here)]
        assert broken[0] == broken[1], f"{x} in"
        compared += 1
    assert compared > 2


def test_a_rim_keeps_wood_at_every_place_of_the_map() -> None:
    """A 6 1/2 in hole in a rim 9 1/4 in deep: what is left on the lesser side is at least the asked 1/4 in, everywhere."""
    scene = scenefile.load(SCENES / "side_wall_storey_above.toml")
    (row,) = studies.wall_plans(scene, studies.places(scene, step_in=8.0), studies.heights(scene))
    through = [p for p in row if p.best is not None and p.best.route.termination.face == "face-right"]
    assert len(through) > 8
    for plan in through:
        rim = next(p for p in plan.best.route.penetrations if "rim" in p.solid)
        lo, hi = plan.frame.solid(rim.solid).shape.lo[2], plan.frame.solid(rim.solid).shape.hi[2]
        left = min(rim.centre[2] - 3.25 - lo, hi - rim.centre[2] - 3.25)
        assert left >= 0.25
