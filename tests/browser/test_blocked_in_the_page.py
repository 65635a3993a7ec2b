"""What bars a place is said in the page as the plan of that place says it, in words for each kind of thing."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

from routeviz import pipeline, studies
from routeviz.cli.scenes import load_scene
from routeviz.cli.walls import wall_map
from routeviz.views import page as pages

pytestmark = [pytest.mark.browser, pytest.mark.slow]

SCENES = Path(__file__).parents[2] / "scenes"
_GO = (
    """([x, h]) => { routeviz.state.x = x; routeviz.state.h = h; routeviz.update(); return routeviz.answer().text; }"""
)


@pytest.mark.parametrize("name", ["lot_line_close", "soffit_vent_cap", "stud_dead_centre"])
def test_a_blocked_place_names_what_its_plan_names(open_page, tmp_path: Path, name: str) -> None:
    scene = load_scene(SCENES / f"{name}.toml")
    found = wall_map(pipeline.plan(scene), 8.0)
    page = open_page(pages.write(pipeline.plan(scene), tmp_path / "plan.html", wall_map=found))
    compared = 0
    for row, h in zip(studies.wall_plans(scene, found.positions_in, found.heights_in), found.heights_in, strict=True):
        for plan, x in zip(row, found.positions_in, strict=True):
            text = page.tab.evaluate(_GO, [x, h])
            said = re.match(r"Blocked: (.+?)\.", text)
            if said and plan.best is None and "None exists" in plan.answer:
                assert said.group(1) in plan.answer
                compared += 1
    assert compared > 2
    page.tab.evaluate(_GO, [scene.hood.centre_in, scene.hood.mount_in or found.heights_in[0]])
    assert page.tab.inner_text("#views [data-v='outside']") == "outside", "nobody stands at a cap that is not there"
    assert page.faults == []
