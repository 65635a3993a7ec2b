"""A flexible hose looks like one: ribbed along its whole length, and barred where it is what is broken."""

from __future__ import annotations

from pathlib import Path

import numpy as np
import pytest

from routeviz import pipeline
from routeviz.cli.scenes import load_scene
from routeviz.model.route import PartKind
from routeviz.views import page as pages

pytestmark = [pytest.mark.browser, pytest.mark.slow]

SCENES = Path(__file__).parents[2] / "scenes"


def test_a_hose_is_ribbed_and_barred(open_page, tmp_path):
    plan = pipeline.plan(load_scene(SCENES / "as_built_flex_in_attic.toml"))
    hose = next(p for p in plan.best.route.parts if p.kind is PartKind.FLEX)
    pipe = next(p for p in plan.best.route.parts if p.kind is PartKind.STRAIGHT)
    page = open_page(pages.write(plan, tmp_path / "plan.html"))
    page.tab.evaluate("routeviz.picture().go('along')")
    page.tab.wait_for_timeout(500)

    def touched(part, count):
        """Points of the part's skin, each the corner nearest to a point of the picture over its axis."""
        a, b = np.array(part.start), np.array(part.end)
        spots = [(a + (b - a) * t).tolist() for t in np.linspace(0.15, 0.85, count)]
        found = page.tab.evaluate(
            """spots => spots.map(s => { const p = routeviz.picture(), [x, y] = p.project(...s); return p.pick(x, y); })""",
            spots,
        )
        found = [f for f in found if f]
        axis = (b - a) / np.linalg.norm(b - a)
        off = [np.linalg.norm((np.array(f["at"]) - a) - axis * ((np.array(f["at"]) - a) @ axis)) for f in found]
        return [f["label"] for f in found], off

    labels, off = touched(hose, 40)
    assert set(labels) == {"flexible hose"}
    radius = hose.section.width_in / 2
    assert max(off) == pytest.approx(radius, abs=0.02)
    assert min(off) < radius - 0.25, "between the ribs it is narrower"
    labels, off = touched(pipe, 5)
    assert min(off) > radius - 0.05 or "straight" not in labels, "sheet metal stays smooth"
    # bars: what the finding calls broken is red and white
    colours = page.tab.evaluate(
        """([a, b]) => { const p = routeviz.picture(); p.draw(); const c = p.canvas, gl = c.getContext('webgl2'), k = c.width / c.clientWidth, seen = [];
        for (let i = 1; i < 60; i++) { const s = a.map((v, n) => v + (b[n] - v) * i / 60), [x, y] = p.project(...s), px = new Uint8Array(4); gl.readPixels(x * k, c.height - y * k, 1, 1, gl.RGBA, gl.UNSIGNED_BYTE, px); seen.push([...px].slice(0, 3)); }
        return seen; }""",
        [list(hose.start), list(hose.end)],
    )
    red = sum(r > 120 and g < 90 and b < 90 for r, g, b in colours)
    white = sum(min(c) > 150 for c in colours)
    assert red >= 10
    assert white >= 10
    assert page.tab.locator("#alts .sfx").count() == 1
    assert page.faults == []
