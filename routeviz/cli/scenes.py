"""Reading a scene for a command: the file's own mistakes and unknown rule names together."""

from __future__ import annotations

from pathlib import Path

from routeviz.model.scene import Scene

__all__ = ["load_scene"]


def load_scene(path: Path) -> Scene:
    """Load a scene file with the known rule profiles and codes.

    Raises
    ------
    SceneError
        With every mistake in the file.
    """
    from routeviz import rules, scenefile

    return scenefile.load(path, profiles=rules.profiles(), codes=rules.codes())
