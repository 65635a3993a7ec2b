"""READ: scene files to scenes and back, every mistake at once with file, line, value and remedy."""

from __future__ import annotations

from routeviz.scenefile.adding import add_row
from routeviz.scenefile.editing import edit
from routeviz.scenefile.reading import load, loads, plain
from routeviz.scenefile.starter import blank, json_schema, starter

__all__ = ["add_row", "blank", "edit", "json_schema", "load", "loads", "plain", "starter"]
