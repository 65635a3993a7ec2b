"""READ: scene files to scenes and back, every mistake at once with file, line, value and remedy."""

from __future__ import annotations

from routeviz.scenefile.editing import edit
from routeviz.scenefile.reading import load, loads
from routeviz.scenefile.starter import json_schema, starter

__all__ = ["edit", "json_schema", "load", "loads", "starter"]
