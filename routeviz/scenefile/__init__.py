"""READ: scene files to scenes and back, every mistake at once with file, line, value and remedy."""

from __future__ import annotations

from routeviz.scenefile.reading import load, loads

__all__ = ["load", "loads"]
