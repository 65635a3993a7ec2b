"""Whether this machine can draw in 3D, found out in a child process because a missing driver ends the process."""

from __future__ import annotations

import functools
import json
import os
import subprocess
import sys
from dataclasses import dataclass

from routeviz.errors import MissingPartError

__all__ = ["PACKAGES", "Driver", "driver", "require"]

PACKAGES = "libegl1 libgl1-mesa-dri"
_BACKEND = "VTK_DEFAULT_OPENGL_WINDOW"
_MARK = "driver:"
_CHILD = f"""
import json, os, sys
from vtkmodules.vtkRenderingCore import vtkRenderWindow, vtkRenderer
import vtkmodules.vtkRenderingOpenGL2
from vtkmodules.vtkCommonCore import vtkUnsignedCharArray
window = vtkRenderWindow()
window.SetOffScreenRendering(1)
window.SetSize(16, 16)
renderer = vtkRenderer()
renderer.SetBackground(1, 0, 0)
window.AddRenderer(renderer)
window.Render()
pixels = vtkUnsignedCharArray()
window.GetPixelData(0, 0, 15, 15, 1, pixels, 0)
red = pixels.GetNumberOfValues() == 768 and pixels.GetValue(0) == 255
lines = [line for line in window.ReportCapabilities().splitlines() if "renderer string" in line]
name = lines[0].split(":", 1)[1].strip() if lines else ""
print({_MARK!r} + json.dumps({{"red": red, "name": name}}), flush=True)
os._exit(0)
"""


@dataclass(frozen=True, slots=True)
class Driver:
    """An off-screen OpenGL driver that drew a red picture: the window class to ask for ("" for the default) and its name."""

    backend: str
    name: str


def _try(backend: str, timeout_s: float) -> Driver | None:
    env = dict(os.environ)
    if backend:
        env[_BACKEND] = backend
    try:
        done = subprocess.run(  # fixed program, no shell
            [sys.executable, "-c", _CHILD], env=env, capture_output=True, text=True, timeout=timeout_s, check=False
        )
    except (subprocess.TimeoutExpired, OSError):
        return None
    said = [line for line in done.stdout.splitlines() if line.startswith(_MARK)]
    if done.returncode != 0 or not said:
        return None
    answer = json.loads(said[0].removeprefix(_MARK))
    return Driver(backend, answer["name"]) if answer["red"] else None


@functools.cache
def driver(timeout_s: float = 30.0) -> Driver | None:
    """Find a driver that draws off screen, or None. Asked once per process; takes about half a second.

    The window class that the environment names is the only one tried; else EGL first, which needs no screen.
    """
    given = os.environ.get(_BACKEND, "")
    for backend in (given,) if given else ("vtkEGLRenderWindow", "", "vtkOSOpenGLRenderWindow"):
        found = _try(backend, timeout_s)
        if found is not None:
            return found
    return None


def require() -> Driver:
    """Give the driver and make it the one that pictures are drawn with.

    Raises
    ------
    MissingPartError
        If there is none; the message names the Debian packages that bring it.
    """
    found = driver()
    if found is None:
        raise MissingPartError(
            f"No OpenGL driver was found, so no picture was drawn. On Debian: apt-get install {PACKAGES}. "
            "Everything else works without it, the 3D page too."
        )
    if found.backend:
        os.environ.setdefault(_BACKEND, found.backend)
    return found
