"""Whether a window can be opened and drawn in here, found out in a child process."""

from __future__ import annotations

import os
import subprocess
import sys

from routeviz.errors import MissingPartError

__all__ = ["require_screen"]

_BACKEND = "VTK_DEFAULT_OPENGL_WINDOW"
_CHILD = """
import os
from vtkmodules.vtkRenderingCore import vtkRenderWindow, vtkRenderer
import vtkmodules.vtkRenderingOpenGL2
from vtkmodules.vtkCommonCore import vtkUnsignedCharArray
window = vtkRenderWindow()
if window.GetClassName() in ("vtkEGLRenderWindow", "vtkOSOpenGLRenderWindow"):
    os._exit(3)  # the screen could not be reached, and drawing went elsewhere
window.SetSize(16, 16)
renderer = vtkRenderer()
renderer.SetBackground(1, 0, 0)
window.AddRenderer(renderer)
window.Render()
pixels = vtkUnsignedCharArray()
window.GetPixelData(0, 0, 7, 7, 0, pixels, 0)
os._exit(0 if pixels.GetNumberOfValues() and pixels.GetValue(0) == 255 else 4)
"""
_ELSE = "routeviz plan SCENE makes the same picture as a page for the browser."


def require_screen(timeout_s: float = 30.0) -> None:
    """See to it that a window can be opened, and that pictures of this process are drawn in windows.

    Raises
    ------
    MissingPartError
        If there is no screen, or its OpenGL driver does not draw; one line says which.
    """
    if sys.platform.startswith("linux") and not os.environ.get("DISPLAY"):
        raise MissingPartError(f"No screen was found (DISPLAY is not set), so no window was opened. {_ELSE}")
    env = {name: value for name, value in os.environ.items() if name != _BACKEND}
    try:
        done = subprocess.run(  # fixed program, no shell
            [sys.executable, "-c", _CHILD], env=env, capture_output=True, timeout=timeout_s, check=False
        )
        drawn = done.returncode == 0
    except (subprocess.TimeoutExpired, OSError):
        drawn = False
    if not drawn:
        raise MissingPartError(
            "The screen cannot be drawn on with OpenGL, so no window was opened. On Debian: "
            f"apt-get install libgl1 libgl1-mesa-dri. {_ELSE}"
        )
    os.environ.pop(_BACKEND, None)
