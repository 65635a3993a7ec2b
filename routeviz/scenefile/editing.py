"""Changed values back into a scene file, with its comments and layout kept."""

from __future__ import annotations

import copy
import tomllib
from collections.abc import Mapping
from difflib import get_close_matches
from typing import Any

import tomlkit
import tomlkit.items
from tomlkit.container import OutOfOrderTableProxy
from tomlkit.exceptions import TOMLKitError

from routeviz.errors import Mistake, SceneError
from routeviz.scenefile.document import Document
from routeviz.scenefile.lines import find_lines
from routeviz.scenefile.mistakes import known_keys
from routeviz.scenefile.paths import Path, descend, read_path, rows
from routeviz.scenefile.reading import parse_toml

__all__ = ["edit"]


def edit(text: str, changes: Mapping[str, object]) -> str:
    """Write changed values into the text of a scene file; everything else stays as it was.

    Parameters
    ----------
    text : str
        A scene file. It may have mistakes, but must be TOML.
    changes : mapping of str to object
        For each place (``hood.centre``, ``walls.hood.studs.first``, ``obstacles.left-uppers.bottom``,
        ``hood.fasteners.2.up``) the new value: text, number, bool, list or table; None takes the key out.
        Keys and tables that are not there yet are added.

    Returns
    -------
    str
        The new text. It is not checked as a scene: read it with `loads`.

    Raises
    ------
    SceneError
        If the text is not TOML, or a place is not one that a scene file can have; then nothing is changed.

    Examples
    --------
    >>> edit('[hood]\\ncentre = "70 in"  # over the range\\n', {"hood.centre": "66 3/4 in"})
    '[hood]\\ncentre = "66 3/4 in"  # over the range\\n'
    """
    wanted = copy.deepcopy(parse_toml(text, "scene"))
    mistakes = [m for place in changes if (m := _impossible(place, wanted)) is not None]
    if mistakes:
        raise SceneError(tuple(mistakes))
    try:
        for place, change in changes.items():
            path, value = read_path(place, wanted), _plain(change)
            if path is None:
                raise LookupError(place)
            text = _write(text, path, value, wanted)
            _set_plain(wanted, path, value)
            if tomllib.loads(text) != wanted:
                raise ValueError(place)
    except (TOMLKitError, ValueError, LookupError, TypeError) as fault:
        problem = f"could not be written back ({fault})"
        raise SceneError(
            (Mistake("scene", None, ", ".join(changes), "", problem, "Change the file by hand"),)
        ) from None
    return text


def _plain(value: object) -> Any:
    if isinstance(value, Mapping):
        return {str(key): _plain(inner) for key, inner in value.items()}
    found = rows(value)
    return value if found is None else [_plain(inner) for inner in found]


def _impossible(place: str, raw: dict[str, Any]) -> Mistake | None:
    """Say why a scene file cannot have this place; None if it can."""
    path = read_path(place, raw)
    if path is None:
        return Mistake("scene", None, place, "", "there is no such row", "Name a row that the file has")
    for depth, step in enumerate(path):
        known = known_keys(Document, path[:depth])
        if isinstance(step, int) or step in known or (not known and _is_table(raw, path[:depth])):
            continue
        near = get_close_matches(step, known, n=1)
        remedy = f"Known keys: {', '.join(known)}" if known else f"{'.'.join(map(str, path[:depth]))} is one value"
        remedy = f"Did you mean {near[0]}?" if near else remedy
        return Mistake("scene", None, place, "", "a scene file has no such place", remedy)
    return None


def _is_table(raw: dict[str, Any], path: Path) -> bool:
    try:
        return isinstance(descend(raw, path), Mapping)
    except LookupError:
        return False


def _set_plain(data: Any, path: Path, value: Any) -> None:
    for step in path[:-1]:
        if isinstance(step, str) and step not in data:
            if value is None:
                return
            data[step] = {}
        data = data[step]
    if value is not None:
        data[path[-1]] = value
    elif isinstance(path[-1], int) or path[-1] in data:
        del data[path[-1]]


def _write(text: str, path: Path, value: Any, before: dict[str, Any]) -> str:
    """Give the text with one value set; `before` is the plain data of `text`."""
    try:
        old = descend(before, path)
    except LookupError:
        return text if value is None else _add(text, path, value, before)
    document = tomlkit.parse(text)
    parent = _find(document, path[:-1])
    if value is None:
        del parent[path[-1]]
        return document.as_string()
    if isinstance(old, Mapping) or isinstance(value, Mapping) or _has_tables(old):
        raise ValueError(f"{'.'.join(map(str, path))} is a table; change its keys one by one")
    item = parent[path[-1]]
    new = _item(value)
    if isinstance(item, tomlkit.items.Item) and isinstance(path[-1], str):
        wide = len(item.as_string()) - len(new.as_string()) + len(item.trivia.comment_ws)
        comment, indent, trail = item.trivia.comment, item.trivia.indent, item.trivia.trail
        parent[path[-1]] = new
        kept = new.trivia
        kept.comment_ws, kept.comment, kept.indent, kept.trail = item.trivia.comment_ws, comment, indent, trail
        if comment and "\n" not in item.as_string():
            kept.comment_ws = " " * max(1, wide)
    else:
        parent[path[-1]] = new
    return document.as_string()


def _has_tables(value: Any) -> bool:
    return bool(isinstance(value, list) and any(isinstance(row, Mapping) for row in value))


def _find(document: Any, path: Path) -> Any:
    for step in path:
        document = document[step]
    return document


def _item(value: Any) -> tomlkit.items.Item:
    """Give a value as it is written on one line; tables in braces."""
    if isinstance(value, Mapping):
        table = tomlkit.inline_table()
        for key, inner in value.items():
            table.append(key, _item(inner))
        return table
    if isinstance(value, list):
        array = tomlkit.array()
        for inner in value:
            array.append(_item(inner))
        return array
    item: tomlkit.items.Item = tomlkit.item(value)
    return item


def _add(text: str, path: Path, value: Any, before: dict[str, Any]) -> str:
    """Add a key after the last key of its table, or a new table at the end of the file."""
    parent, last = path[:-1], path[-1]
    if isinstance(last, int):
        raise LookupError("a row")
    line = f"{last} = {_item(value).as_string()}"
    end = "\r\n" if "\r\n" in text else "\n"
    if _is_table(before, parent):
        place = _line_after(text, parent, before)
        if place is not None:
            lines = text.splitlines(keepends=True)
            if place and not lines[place - 1].endswith("\n"):
                lines[place - 1] += end
            return "".join((*lines[:place], line + end, *lines[place:]))
    elif all(isinstance(step, str) for step in parent) and not _inside_inline(text, parent):
        ended = text if text.endswith("\n") or not text else text + end
        header = "[" + ".".join(str(step) for step in parent) + "]"
        return f"{ended}{end if ended else ''}{header}{end}{line}{end}"
    document = tomlkit.parse(text)
    here: Any = document
    for step in parent:
        if isinstance(step, str) and step not in here:
            here[step] = tomlkit.inline_table() if isinstance(here, tomlkit.items.InlineTable) else tomlkit.table()
        here = here[step]
    here[last] = _item(value)
    return document.as_string()


def _inside_inline(text: str, path: Path) -> bool:
    here: Any = tomlkit.parse(text)
    for step in path:
        if isinstance(here, tomlkit.items.InlineTable):
            return True
        if step not in here:
            return False
        here = here[step]
    return isinstance(here, tomlkit.items.InlineTable)


def _has_header(item: Any) -> bool:
    return isinstance(item, tomlkit.items.Table | tomlkit.items.AoT | OutOfOrderTableProxy)


def _line_after(text: str, parent: Path, before: dict[str, Any]) -> int | None:
    """Give how many lines stand up to the last own key of a table; None if it has no header of its own."""
    lines = find_lines(text)
    if parent and (parent not in lines or isinstance(_find(tomlkit.parse(text), parent), tomlkit.items.InlineTable)):
        return None
    table = _find(tomlkit.parse(text), parent)
    own = [(*parent, key) for key in descend(before, parent) if not _has_header(table[key])]
    last = max((lines[p] for p in own if p in lines), default=lines.get(parent, 0))
    source = text.splitlines()
    for end in range(last, len(source) + 1):  # a value may be several lines high: take lines until they parse alone
        body = "\n".join(source[max(last - 1, 0) : end])
        if not parent and not last:
            return 0
        try:
            tomllib.loads(body)
        except ValueError:
            continue
        return end
    return None
