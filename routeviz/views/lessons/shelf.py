"""The lessons that come with routeviz, by name."""

from __future__ import annotations

import tomllib
from dataclasses import dataclass
from importlib.resources import files
from pathlib import Path

__all__ = ["Shelved", "find", "shelf"]


@dataclass(frozen=True, slots=True)
class Shelved:
    """A lesson on the shelf: the name to call it by, its title and what it teaches."""

    name: str
    title: str
    about: str
    path: Path


def shelf() -> tuple[Shelved, ...]:
    """Give the lessons that are shipped, in order of their names."""
    found = []
    folder = Path(str(files("routeviz.views.lessons").joinpath("book")))
    for path in sorted(folder.glob("*.toml")):
        data = tomllib.loads(path.read_text(encoding="utf-8"))
        if "step" in data:
            found.append(Shelved(path.stem.replace("_", "-"), data["title"], data.get("about", ""), path))
    return tuple(found)


def find(name: str) -> Path | None:
    """Give the file of a shipped lesson, None where there is none of that name."""
    wanted = name.replace("_", "-").casefold()
    return next((s.path for s in shelf() if s.name == wanted), None)
