"""Places in a scene file: tuples of keys and row numbers inside, dotted text for people.

A row of a list is called by its name where it has one (``obstacles.left-uppers.bottom``), else by its number
counted from 1 (``hood.fasteners.2.up``).
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

__all__ = ["Path", "descend", "read_path", "rows", "write_path"]

Path = tuple[str | int, ...]


def rows(value: Any) -> Sequence[Any] | None:
    """Give the rows of a list or array, None for anything else."""
    return value if isinstance(value, Sequence) and not isinstance(value, str | bytes) else None


def descend(data: Any, path: Path) -> Any:
    """Give what stands at `path`.

    Raises
    ------
    LookupError
        If nothing stands there.
    """
    for step in path:
        if isinstance(data, Mapping) and isinstance(step, str):
            data = data[step]
        elif isinstance(step, int) and (found := rows(data)) is not None:
            data = found[step]
        else:
            raise LookupError(step)
    return data


def write_path(path: Path, data: Any) -> str:
    """Write a place for people, with the names of rows as they stand in `data`."""
    words = []
    for n, step in enumerate(path):
        if isinstance(step, str):
            words.append(step)
            continue
        try:
            name = descend(data, (*path[: n + 1], "name"))
        except LookupError:
            name = None
        named = isinstance(name, str) and 0 < len(name) <= 40 and "." not in name
        words.append(name if named and isinstance(name, str) else str(step + 1))
    return ".".join(words)


def read_path(text: str, data: Any) -> Path | None:
    """Read a dotted place; rows by name or by number from 1. None if a row is not there; keys need not be."""
    path: Path = ()
    for word in text.strip().split("."):
        try:
            here = rows(descend(data, path))
        except LookupError:
            here = None
        if here is None:
            path += (word,)
            continue
        names = [row.get("name") if isinstance(row, Mapping) else None for row in here]
        if word in names:
            path += (names.index(word),)
        elif word.isascii() and word.isdigit() and 1 <= int(word[:6]) <= len(here):
            path += (int(word[:6]) - 1,)
        else:
            return None
    return path
