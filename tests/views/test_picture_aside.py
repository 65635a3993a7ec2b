"""A picture drawn in a process of its own: whole, given up without a trace, or refused in words."""

from __future__ import annotations

from pathlib import Path

import pytest
import view_plans
from PIL import Image

from routeviz.errors import MissingPartError
from routeviz.views import gl
from routeviz.views.aside import Drawing


@pytest.mark.gl
@pytest.mark.skipif(gl.driver() is None, reason=f"no OpenGL driver: apt-get install {gl.PACKAGES}")
def test_the_picture_is_there_when_it_is_finished(tmp_path: Path) -> None:
    with Drawing(view_plans.plan(), tmp_path / "plan.png") as drawing:
        drawing.finished()
    with Image.open(tmp_path / "plan.png") as picture:
        assert picture.size == (1600, 1000)
        assert len(picture.getcolors(maxcolors=1 << 24) or []) > 100


def test_a_picture_that_nobody_waits_for_leaves_nothing(tmp_path: Path) -> None:
    with Drawing(view_plans.plan(), tmp_path / "plan.png") as drawing:
        assert drawing is not None
    assert list(tmp_path.iterdir()) == []


def test_a_machine_without_a_driver_is_told_which_packages_bring_one(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setenv("VTK_DEFAULT_OPENGL_WINDOW", "vtkNoSuchWindow")
    with (
        Drawing(view_plans.plan(), tmp_path / "plan.png") as drawing,
        pytest.raises(MissingPartError, match="apt-get install"),
    ):
        drawing.finished()
    assert list(tmp_path.iterdir()) == []


def test_a_picture_that_cannot_be_written_says_so(tmp_path: Path) -> None:
    with (
        Drawing(view_plans.plan(), tmp_path / "no-such-folder" / "plan.png") as drawing,
        pytest.raises((RuntimeError, MissingPartError), match=r"no-such-folder|OpenGL"),
    ):
        drawing.finished()
