"""Stills: framed, labelled, drawn. Tests that draw need an OpenGL driver and say so when there is none."""

from __future__ import annotations

import os
from itertools import combinations
from pathlib import Path

import numpy as np
import pytest
import view_plans
from PIL import Image

from routeviz import pipeline
from routeviz.cli.scenes import load_scene
from routeviz.model.finding import State
from routeviz.views import gl, pen, still
from routeviz.views.lettering import overlap
from routeviz.views.parts import Layer
from routeviz.views.rendering import Shot
from routeviz.views.stage import build
from routeviz.views.viewpoints import NAMES, Camera, Viewport, camera, project

GOLDEN = Path(__file__).parent.parent / "golden"
SCENES = Path(__file__).parents[2] / "scenes"


@pytest.fixture(scope="session")
def _driver():
    if gl.driver() is None:
        pytest.skip(f"no OpenGL driver; on Debian: apt-get install {gl.PACKAGES}")
    gl.require()


def kitchens():
    at = view_plans.scene()
    return {
        "straight up": view_plans.plan(),
        "out the back": view_plans.plan(
            routes=(view_plans.out_the_back(at),), findings=(view_plans.window_finding(34.0),)
        ),
        "blocked": view_plans.blocked(),
    }


@pytest.mark.parametrize("viewpoint", list(NAMES))
@pytest.mark.parametrize("kitchen", ["straight up", "out the back", "blocked"])
def test_every_viewpoint_stands_outside_of_what_it_looks_at(kitchen, viewpoint):
    stage = build(kitchens()[kitchen])
    view = camera(stage.plan, stage.cut, viewpoint, aspect=1.6)
    away = np.linalg.norm(np.subtract(view.eye, view.target))
    assert 20 < away < 1200
    assert (view.eye[1] > 0) == (viewpoint == "outside")
    assert view.eye[2] > 0


@pytest.mark.parametrize(("name", "behind"), [("rear_outlet_straight_back", True), ("out_the_back", False)])
def test_a_duct_behind_the_hood_is_looked_at_from_outdoors(name, behind):
    stage = build(pipeline.plan(load_scene(SCENES / f"{name}.toml"), alternatives=1))
    view = camera(stage.plan, stage.cut, "along", aspect=1.6)
    assert (view.eye[1] > 0) is behind
    duct = np.vstack([p.mesh.vertices for p in stage.pieces if p.layer is Layer.DUCT])
    seen = project(view, duct, 1.6)
    assert (seen[:, :2] > 0).all()
    assert (seen[:, :2] < 1).all()


def test_no_label_stands_without_a_leader_but_in_the_room():
    """A camera 100 in off sees 100 tan 20 = 36.4 in up and down; the foot covers the lowest 34 of 1000 px."""
    view = Camera((0.0, -100.0, 0.0), (0.0, 0.0, 0.0), 40.0)
    shot = Shot(np.zeros((100, 160, 3), np.uint8), np.full((100, 160), np.inf))
    sheet = pen.Sheet(Image.new("RGB", (1600, 1000)), 1)
    middle, foot, beside = ((x, 0.0, z) for x, z in ((10.0, 0.0), (10.0, -0.97 * 36.4), (90.0, 0.0)))
    labels = [still.Label((w,), (), at, 1, State.BROKEN) for w, at in
              (("seen", (middle,)), ("under the foot", (foot,)), ("out of the picture", (beside,)), ("no place", ()))]  # fmt: skip

    def shown(viewpoint):
        tags = still._tags(sheet, labels, view, shot, viewpoint, (1600, 1000))
        return {labels[t.key].title[0]: t.anchor is not None for t in tags}

    assert shown("along") == {"seen": True}
    assert shown("room") == {"seen": True, "under the foot": False, "out of the picture": False, "no place": False}


@pytest.mark.parametrize("aspect", [0.7, 1.6, 2.4])
def test_the_room_just_fills_its_part_of_the_picture(aspect):
    stage = build(view_plans.plan())
    port = Viewport(0.2, 0.15, 0.8, 0.95)
    view = camera(stage.plan, stage.cut, "room", aspect=aspect, port=port)
    hood = stage.piece("hood-band").mesh.vertices
    cap = np.vstack([p.mesh.vertices for p in stage.pieces if p.name.startswith("cap-")])
    walls = np.vstack([p.mesh.vertices for p in stage.pieces if p.name in ("cut-left", "cut-right")])
    seen = project(view, np.vstack([hood, cap, walls]), aspect)
    assert seen[:, 0].min() > 0.19
    assert seen[:, 0].max() < 0.81
    assert seen[:, 1].min() > 0.13
    assert seen[:, 1].max() < 0.97
    assert max(np.ptp(seen[:, 0]) / 0.6, np.ptp(seen[:, 1]) / 0.8) > 0.93


def test_projection_puts_right_on_the_right_and_up_above():
    stage = build(view_plans.plan())
    view = camera(stage.plan, stage.cut, "room", aspect=1.6)
    left, right, low, high = project(view, np.array([[10, 0, 60], [130, 0, 60], [70, 0, 20], [70, 0, 90]]), 1.6)
    assert left[0] < right[0]
    assert high[1] < low[1]


def test_an_unknown_viewpoint_lists_the_ones_there_are():
    stage = build(view_plans.plan())
    with pytest.raises(ValueError, match="room, ceiling, along, outside"):
        camera(stage.plan, stage.cut, "cellar", aspect=1.6)


@pytest.mark.gl
@pytest.mark.usefixtures("_driver")
@pytest.mark.parametrize(
    ("kitchen", "viewpoint"), [("straight up", "room"), ("blocked", "ceiling"), ("out the back", "outside")]
)
def test_stills_are_drawn_whole(tmp_path, kitchen, viewpoint, monkeypatch):
    placed = []
    arrange = still.arrange
    monkeypatch.setattr(still, "arrange", lambda *a, **k: placed.extend(arrange(*a, **k)) or placed)
    target = still.render(build(kitchens()[kitchen]), tmp_path / "x.png", viewpoint, size=(800, 500), occlusion=False)
    with Image.open(target) as image:
        assert image.size == (800, 500)
        pixels = np.asarray(image.convert("RGB"), int)
    assert [f.name for f in tmp_path.iterdir()] == ["x.png"]
    body = pixels[130:460, 200:600]
    assert body.std() > 15  # something is there
    assert placed
    for a, b in combinations(placed, 2):
        assert not overlap(a, b)
    for p in placed:
        assert p.x >= 0
        assert p.x + p.tag.width <= 800
        assert p.y > still.BAND_PX
        assert p.y + p.tag.height < 500 - still.FOOT_PX


@pytest.mark.gl
@pytest.mark.usefixtures("_driver")
def test_xray_shows_the_framing_through_the_board(tmp_path):
    from routeviz.views.rendering import shoot

    stage = build(view_plans.plan())
    view = camera(stage.plan, stage.cut, "room", aspect=1.6)
    plain = shoot(stage, view, (320, 200), scale=1, occlusion=False)
    glass = shoot(stage, view, (320, 200), scale=1, occlusion=False, xray=True)
    spot = project(view, np.array([[16.75, -0.1, 70.0]]), 1.6)[0]  # a stud behind the board, above the cabinet's side
    row, column = int(spot[1] * 200), int(spot[0] * 320)
    assert np.isfinite(plain.depth[row, column])
    assert np.abs(plain.pixels.astype(int) - glass.pixels.astype(int)).mean() > 4


@pytest.mark.gl
@pytest.mark.usefixtures("_driver")
def test_depth_tells_how_far_off_a_surface_is():
    from routeviz.views.rendering import shoot

    stage = build(view_plans.plan())
    view = camera(stage.plan, stage.cut, "room", aspect=1.6)
    shot = shoot(stage, view, (320, 200), scale=1, occlusion=False, without=frozenset({Layer.ZONES, Layer.OUTER}))
    u, v, depth = project(view, np.array([[58.0, -20.0, 67.0]]), 1.6)[0]  # on the hood's front
    assert shot.depth[int(v * 200), int(u * 320)] == pytest.approx(depth, abs=1.0)
    assert np.isinf(shot.depth[2, 2])


@pytest.mark.gl
@pytest.mark.usefixtures("_driver")
@pytest.mark.parametrize(
    ("kitchen", "viewpoint"), [("straight up", "room"), ("blocked", "ceiling"), ("out the back", "along")]
)
def test_pictures_are_as_they_were_looked_at(kitchen, viewpoint):
    """Golden pictures were looked at by eye; drawn without soft shade they repeat closely on any software driver."""
    from routeviz.views.rendering import shoot

    stage = build(kitchens()[kitchen])
    view = camera(stage.plan, stage.cut, viewpoint, aspect=1.6)
    shot = shoot(stage, view, (240, 150), scale=2, occlusion=False, without=frozenset({Layer.OUTER}))
    image = Image.fromarray(shot.pixels).resize((240, 150), Image.Resampling.LANCZOS)
    file = GOLDEN / f"{kitchen.replace(' ', '_')}_{viewpoint}.png"
    if os.environ.get("ROUTEVIZ_DRAW_GOLDEN"):  # to draw them anew, then look at each before it is committed
        image.save(file, optimize=True)
    with Image.open(file) as golden:
        off = np.abs(np.asarray(image, int) - np.asarray(golden.convert("RGB"), int))
    assert off.mean() < 0.8, f"{file.name}: mean difference {off.mean():.2f} of 255"
    assert (off.max(axis=2) > 40).mean() < 0.005
    # the same as numbers: the hood's front edge, and a joist's cut end, stand where their measures put them
    scene = stage.plan.scene
    spots = [[scene.hood.centre_in + s * 12, -scene.hood.depth_in, scene.hood_bottom_in + 1.0] for s in (-1, 0, 1)]
    if viewpoint == "ceiling":
        low, high = next(p.mesh.bounds for p in stage.pieces if p.solid == "joist-3")
        spots = [[(low[0] + high[0]) / 2, low[1], (low[2] + high[2]) / 2]]
    seen = [p for p in project(view, np.array(spots), 1.6) if 0 < p[0] < 1 and 0 < p[1] < 1]
    for u, v, depth in seen:
        assert shot.depth[int(v * shot.depth.shape[0]), int(u * shot.depth.shape[1])] == pytest.approx(depth, abs=1.0)
    assert seen
