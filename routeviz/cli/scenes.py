"""Reading a scene for a command: the file's own mistakes and unknown rule names together."""

from __future__ import annotations

from pathlib import Path

from routeviz.model.scene import Scene

__all__ = ["load_scene", "load_text"]


def load_scene(path: Path) -> Scene:
    """Load a scene file with the known rule profiles and codes.

    Raises
    ------
    SceneError
        With every mistake in the file.
    """
    from routeviz import rules, scenefile

    return scenefile.load(path, profiles=rules.profiles(), codes=rules.codes())


def load_text(text: str, path: Path) -> Scene:
    """Read the text of a scene file that is not on the disk yet; `path` stands for it in messages.

    Raises
    ------
    SceneError
        With every mistake in the text.
    """
    from routeviz import rules, scenefile

    return scenefile.loads(text, path.name, profiles=rules.profiles(), codes=rules.codes())
