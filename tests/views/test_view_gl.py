"""A machine without a driver gets a sentence that names the packages, never a crash."""

from __future__ import annotations

import subprocess
import sys

import pytest
import view_plans

from routeviz.errors import MissingPartError
from routeviz.views import gl, still
from routeviz.views.stage import build


@pytest.fixture(autouse=True)
def _forget():
    gl.driver.cache_clear()
    yield
    gl.driver.cache_clear()


def test_a_child_that_dies_means_no_driver(monkeypatch):
    died = subprocess.CompletedProcess([], -11, stdout="", stderr="")
    monkeypatch.setattr(subprocess, "run", lambda *a, **k: died)
    assert gl.driver() is None


def test_a_child_that_draws_another_colour_means_no_driver(monkeypatch):
    wrong = subprocess.CompletedProcess([], 0, stdout='driver:{"red": false, "name": "x"}\n', stderr="")
    monkeypatch.setattr(subprocess, "run", lambda *a, **k: wrong)
    assert gl.driver() is None


def test_a_child_that_hangs_means_no_driver(monkeypatch):
    def hang(*_a, **_k):
        raise subprocess.TimeoutExpired("x", 1)

    monkeypatch.setattr(subprocess, "run", hang)
    assert gl.driver() is None


def test_egl_is_asked_first_and_a_chosen_window_class_is_the_only_one_tried(monkeypatch):
    asked = []

    def fail(*_a, env, **_k):
        asked.append(env.get("VTK_DEFAULT_OPENGL_WINDOW", ""))
        return subprocess.CompletedProcess([], 1, stdout="", stderr="")

    monkeypatch.setattr(subprocess, "run", fail)
    monkeypatch.delenv("VTK_DEFAULT_OPENGL_WINDOW", raising=False)
    gl.driver()
    assert asked == ["vtkEGLRenderWindow", "", "vtkOSOpenGLRenderWindow"]
    asked.clear()
    gl.driver.cache_clear()
    monkeypatch.setenv("VTK_DEFAULT_OPENGL_WINDOW", "vtkOSOpenGLRenderWindow")
    gl.driver()
    assert asked == ["vtkOSOpenGLRenderWindow"]


def test_the_first_driver_that_draws_is_taken_and_remembered(monkeypatch):
    calls = []

    def run(*_a, **_k):
        calls.append(1)
        return subprocess.CompletedProcess([], 0, stdout='noise\ndriver:{"red": true, "name": "soft"}\n', stderr="")

    monkeypatch.setattr(subprocess, "run", run)
    monkeypatch.delenv("VTK_DEFAULT_OPENGL_WINDOW", raising=False)
    assert gl.driver() == gl.Driver("vtkEGLRenderWindow", "soft")
    assert gl.driver() is gl.driver()
    assert len(calls) == 1


def test_a_still_without_a_driver_names_the_packages_and_writes_nothing(monkeypatch, tmp_path):
    monkeypatch.setattr(gl, "driver", lambda *a, **k: None)
    with pytest.raises(MissingPartError, match="libegl1 libgl1-mesa-dri"):
        still.render(build(view_plans.plan()), tmp_path / "x.png")
    assert list(tmp_path.iterdir()) == []


def test_pages_and_models_load_no_3d_library():
    code = (
        "import sys; import routeviz.views.page, routeviz.views.gltf, routeviz.views.still, routeviz.views.stage\n"
        "print([m for m in sys.modules if m.split('.')[0] in ('vtk', 'vtkmodules', 'pyvista', 'matplotlib')])"
    )
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)
    assert done.stdout.strip() == "[]"
