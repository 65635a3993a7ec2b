"""The live page shows an answer before all of its plan is known: both must say the same, for every example home."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import live_tools
import numpy as np
import pytest

from routeviz import pipeline
from routeviz.cli import livework
from routeviz.model.route import Route
from routeviz.views.app import Answered, Job
from routeviz.views.app.pictures import stage_of

SCENES = sorted(live_tools.SCENES.glob("*.toml"))


@pytest.mark.slow
@pytest.mark.parametrize("path", SCENES, ids=lambda p: p.stem)
def test_the_answer_is_that_of_the_whole_plan_and_so_is_its_picture(path: Path) -> None:
    scene = live_tools.read(path.read_text(encoding="utf-8"))
    first, change = livework.quick()(Job(1, scene), lambda topic, said: None)
    whole = pipeline.plan(scene)
    assert (first.verdict, first.answer) == (whole.verdict, whole.answer)
    if change.whole:
        assert first.second == whole.second
    else:
        assert first.best.route == _bare(whole.best.route)
        one, other = ({p.name: p.mesh for p in stage_of(plan).pieces} for plan in (first, whole))
        assert one.keys() == other.keys()
        for name, mesh in one.items():
            np.testing.assert_array_equal(mesh.vertices, other[name].vertices)


def _bare(route: Route) -> Route:
    return replace(route, allowances=())  # what near things leave over is worked out with the parts


@pytest.mark.slow
def test_what_follows_is_said_in_order() -> None:
    """All of the plan, then its fixes, then the wall; nothing is said twice, and a whole plan is not planned again."""
    text = (live_tools.SCENES / "juniper_straight_up.toml").read_text(encoding="utf-8")
    scene = live_tools.read(text)
    first = pipeline.plan(scene, alternatives=1, counted=False)
    said: list[tuple[str, object]] = []
    work = livework.deep()
    work(Answered(scene, first, whole=False), lambda topic, found: said.append((topic, found)))
    assert [topic for topic, _ in said if topic != "doing"] == ["whole", "fixes", "wall"]
    plan, data = dict(said)["whole"]
    assert data["plan"]["answer"] == plan.answer == first.answer
    assert len(plan.options) > 1
    assert plan.options[0].takeoff.buy
