"""A new row for a list of tables in a scene file, such as one more thing in the way."""

from __future__ import annotations

import copy
import tomllib
from collections.abc import Mapping
from typing import Any

import tomlkit
import tomlkit.items

from routeviz.errors import Mistake, SceneError
from routeviz.scenefile.document import Document
from routeviz.scenefile.editing import edit
from routeviz.scenefile.mistakes import known_keys
from routeviz.scenefile.paths import Path, descend, read_path, rows
from routeviz.scenefile.reading import parse_toml

__all__ = ["add_row"]


def add_row(text: str, place: str, row: Mapping[str, object]) -> str:
    """Write one more row of a list of tables into the text of a scene file; everything else stays as it was.

    Parameters
    ----------
    text : str
        A scene file. It may have mistakes, but must be TOML.
    place : str
        The list: ``obstacles``, ``outdoors``, ``walls.hood.openings``.
    row : mapping of str to object
        The new row's keys with their values.

    Returns
    -------
    str
        The new text. It is not checked as a scene: read it with `loads`.

    Raises
    ------
    SceneError
        If the text is not TOML, or the place is not a list of tables.
    """
    raw = parse_toml(text, "scene")
    path = read_path(place, raw)
    if path is None or not known_keys(Document, path):
        remedy = "Name a list of tables, such as obstacles"
        raise SceneError((Mistake("scene", None, place, "", "a scene file has no such list", remedy),))
    try:
        held: Any = rows(descend(raw, path))
    except LookupError:
        held = ()
    if held is None:
        raise SceneError((Mistake("scene", None, place, "", "this is one table, not a list", "Change its keys"),))
    wanted = copy.deepcopy(raw)
    _put(wanted, path, dict(row))
    if not held:
        block = f"{text.rstrip()}\n\n[[{place}]]\n" + "".join(
            f"{k} = {tomlkit.item(v).as_string()}\n" for k, v in row.items()
        )
        return block if _says(block, wanted) else edit(text, {place: [dict(row)]})
    document = tomlkit.parse(text)
    here: Any = document
    for step in path:
        here = here[step]
    new: Any = tomlkit.table() if isinstance(here, tomlkit.items.AoT) else tomlkit.inline_table()
    for key, value in row.items():
        new.append(key, tomlkit.item(value))
    if isinstance(here, tomlkit.items.AoT):
        new.add(tomlkit.nl())
    here.append(new)
    return document.as_string()


def _put(raw: dict[str, Any], path: Path, row: dict[str, object]) -> None:
    here: Any = raw
    for step in path[:-1]:
        here = here.setdefault(step, {}) if isinstance(step, str) else here[step]
    here.setdefault(path[-1], []).append(row)


def _says(text: str, wanted: dict[str, Any]) -> bool:
    try:
        return tomllib.loads(text) == wanted
    except tomllib.TOMLDecodeError:
        return False
