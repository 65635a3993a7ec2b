"""Moving pictures: cameras that move evenly, files that hold every frame."""

from __future__ import annotations

import math
import sys

import numpy as np
import pytest
import view_plans
from PIL import Image

from routeviz.errors import MissingPartError
from routeviz.views import gl, motion
from routeviz.views.stage import build


@pytest.fixture
def _driver():
    if gl.driver() is None:
        pytest.skip(f"no OpenGL driver; on Debian: apt-get install {gl.PACKAGES}")


def test_air_path_is_as_long_as_the_route_says():
    at = view_plans.scene()
    for route in (view_plans.straight_up(at), view_plans.out_the_back(at), view_plans.offset_up(at)):
        path = motion.air_path(view_plans.plan(at, (route,)))
        assert path[0] == pytest.approx(route.parts[0].start)
        assert path[-1] == pytest.approx(route.termination.point)
        long = np.linalg.norm(np.diff(path, axis=0), axis=1).sum()
        assert long == pytest.approx(route.length_in, rel=0.002)  # chords of short arcs


def test_air_cannot_be_followed_without_a_route():
    with pytest.raises(ValueError, match="without a route"):
        motion.air_path(view_plans.blocked())


def test_a_turn_ends_where_it_began_and_keeps_its_distance():
    stage = build(view_plans.plan())
    cameras = motion.turn_cameras(stage, 24, aspect=1.6)
    away = [math.dist(c.eye[:2], c.target[:2]) for c in cameras]
    assert max(away) - min(away) < 1e-6
    steps = [math.dist(a.eye, b.eye) for a, b in zip(cameras, [*cameras[1:], cameras[0]], strict=True)]
    assert max(steps) < 0.35 * away[0]
    assert all(c.eye[1] < stage.cut.front_in for c in cameras)  # never through a wall


def test_a_flight_moves_from_hood_to_cap_without_a_jump():
    plan = view_plans.plan(routes=(view_plans.offset_up(view_plans.scene()),))
    cameras = motion.flight_cameras(plan, 40)
    heights = [c.target[2] for c in cameras]
    assert heights == sorted(heights)
    assert max(math.dist(a.eye, b.eye) for a, b in zip(cameras, cameras[1:], strict=False)) < 6


def test_a_flight_goes_out_through_the_wall_and_ends_before_the_cap():
    at = view_plans.scene()
    plan = view_plans.plan(at, (view_plans.out_the_back(at),))
    cameras = motion.flight_cameras(plan, 60)
    wall = plan.scene.walls[0].thickness_in
    cap = plan.best.route.termination.point
    assert cameras[0].eye[1] < -20  # in the room
    assert cameras[-1].eye[1] > wall + 20  # outdoors
    assert cameras[-1].target == pytest.approx(cap)
    steps = [math.dist(a.eye, b.eye) for a, b in zip(cameras, cameras[1:], strict=False)]
    assert max(steps) < 8
    looked = [c.target[1] for c in cameras]
    assert looked == sorted(looked)  # never back along the duct


def test_air_is_shown_all_along_the_duct_and_moves():
    at = view_plans.scene()
    plan = view_plans.plan(at, (view_plans.out_the_back(at),))
    path = motion.air_path(plan)
    dots = motion.air_dots(plan, 0.0)
    assert dots[0] == pytest.approx(path[0])
    inside = dots[dots[:, 1] <= path[-1][1]]
    assert max(np.linalg.norm(path - d, axis=1).min() for d in inside) < 1.0
    assert dots[-1][1] > path[-1][1] + 5  # and out of the cap
    later = motion.air_dots(plan, 0.4)
    assert np.linalg.norm(later[0] - path[0]) == pytest.approx(2.0, abs=0.01)  # 0.4 of the 5 in between two dots
    assert motion.air_dots(plan, 1.0) == pytest.approx(dots)


def test_other_files_are_refused_before_anything_is_drawn(tmp_path):
    with pytest.raises(ValueError, match=r"\.gif or an \.mp4"):
        motion.turntable(build(view_plans.plan()), tmp_path / "x.avi")
    assert list(tmp_path.iterdir()) == []


@pytest.mark.gl
@pytest.mark.usefixtures("_driver")
def test_gif_holds_different_frames(tmp_path):
    target = motion.turntable(build(view_plans.plan()), tmp_path / "t.gif", size=(160, 100), frames=5, per_second=10)
    assert [f.name for f in tmp_path.iterdir()] == ["t.gif"]
    with Image.open(target) as film:
        assert film.size == (160, 100)
        assert film.n_frames == 5
        assert film.info["duration"] == 100
        shots = []
        for k in range(5):
            film.seek(k)
            shots.append(np.asarray(film.convert("RGB"), int))
    assert np.abs(shots[0] - shots[1]).mean() > 2


@pytest.mark.gl
@pytest.mark.usefixtures("_driver")
def test_mp4_without_its_part_names_it(tmp_path, monkeypatch):
    monkeypatch.setattr(motion, "find_spec", lambda name: None)
    monkeypatch.delitem(sys.modules, "imageio_ffmpeg", raising=False)
    with pytest.raises(MissingPartError, match=r"routeviz\[motion\]"):
        motion.turntable(build(view_plans.plan()), tmp_path / "t.mp4", size=(160, 100), frames=2)
    assert list(tmp_path.iterdir()) == []
    assert "imageio_ffmpeg" not in sys.modules
