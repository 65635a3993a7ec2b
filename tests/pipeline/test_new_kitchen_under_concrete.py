"""An empty kitchen whose ceiling is said to be concrete is planned, with the roof that its file still describes."""

from __future__ import annotations

import tomllib
from importlib.resources import files

from routeviz.pipeline import plan
from routeviz.scenefile import edit, loads


def test_a_new_kitchen_under_a_slab_goes_out_through_the_wall():
    blank = (files("routeviz.scenefile") / "blank.toml").read_text(encoding="utf-8")
    guessed = [place for place in tomllib.loads(blank)["assumed"] if not place.startswith(("ceiling.joists", "above"))]
    slab = edit(blank, {"assumed": guessed, "ceiling.joists": None, "above.kind": "slab", "ceiling.slab": "8 in"})
    found = plan(loads(slab), alternatives=1, counted=False)
    assert found.best is not None
    # concrete is never cut, so the duct turns once, back through the wall, under the ceiling at 96 in
    assert found.best.route.elbows == 1
    assert found.best.route.parts[-1].end[2] < 96.0
    assert "concrete ceiling" in found.second
    assert not [a for a in found.assumptions if a.field.startswith(("ceiling.joists", "roof."))]
