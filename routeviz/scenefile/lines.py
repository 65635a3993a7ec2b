"""The line on which each value of a scene file stands.

tomlkit keeps the layout of a file but not its line numbers, and gathers the rows of a list of tables wherever they
stand. So each table is read by itself, every value is replaced by a marker that is as many lines high, and the lines
are counted in the text that comes out.
"""

from __future__ import annotations

import tomllib
from collections.abc import Iterator, Mapping
from typing import Any

import tomlkit
from tomlkit.exceptions import TOMLKitError
from tomlkit.items import AoT, Array, InlineTable, Item, Table

from routeviz.scenefile.paths import Path, rows

__all__ = ["find_lines", "line_of"]


def find_lines(text: str) -> dict[Path, int]:
    """Give the line of every value and table header, counted from 1; empty if tomlkit cannot read the text."""
    sign = "\ue000"
    while sign in text:
        sign += "\ue000"
    lines: dict[Path, int] = {}
    counts: dict[Path, int] = {}
    try:
        for first, header, body in _blocks(text):
            path = _path(header, counts)
            if header:
                lines.setdefault(path, first)
            for inside, line in _values(body, sign).items():
                lines.setdefault((*path, *inside), first + line - (0 if header else 1))
    except (TOMLKitError, tomllib.TOMLDecodeError, ValueError, LookupError, TypeError, AttributeError, RecursionError):
        return {}
    return lines


def _blocks(text: str) -> Iterator[tuple[int, str, str]]:
    """Give every table of a file as it stands there: the header's line, the header, and what follows it.

    What stands before the first header has none, and its first line is 1. A line that begins with a bracket is a
    header unless it belongs to a list or text that is still open.
    """
    first, header, body = 1, "", ""
    for number, line in enumerate(text.split("\n"), start=1):
        if line.lstrip().startswith("[") and _whole(body):
            yield first, header, body
            first, header, body = number, line, ""
        else:
            body += line + "\n"
    yield first, header, body


def _whole(body: str) -> bool:
    try:
        tomllib.loads(body)
    except tomllib.TOMLDecodeError:
        return False
    return True


def _path(header: str, counts: dict[Path, int]) -> Path:
    """Give the place that a header names; `counts` holds how many rows each list of tables has so far."""
    if not header:
        return ()
    names: list[str] = []
    node: Any = tomllib.loads(header.strip())
    many = header.lstrip().startswith("[[")
    while node:
        names.append(next(iter(node)))
        node = node[names[-1]]
        node = node[0] if isinstance(node, list) else node
    path: Path = ()
    for depth, name in enumerate(names, start=1):
        path = (*path, name)
        if many and depth == len(names):
            counts[path] = counts.get(path, 0) + 1
        if path in counts:
            path = (*path, counts[path] - 1)
    return path


def _values(body: str, sign: str) -> dict[Path, int]:
    """Give the line of every value in text without headers."""
    marks: list[tuple[Path, int]] = []
    document = tomlkit.parse(body)
    _mark(document, (), sign, marks)
    lines: dict[Path, int] = {}
    for number, line in enumerate(document.as_string().split("\n"), start=1):
        for piece in line.split(sign)[1:]:
            path, height = marks[int(piece.split(";")[0])]
            lines.setdefault(path, number - height)
    return lines


def _children(node: Any) -> Iterator[tuple[str | int, Any]]:
    if isinstance(node, Mapping):
        yield from ((str(key), value) for key, value in list(node.items()))
    else:
        yield from enumerate(list(rows(node) or ()))


def _mark(node: Any, path: Path, sign: str, marks: list[tuple[Path, int]]) -> None:
    """Mark every value under `node`; `marks` keeps each place with the lines between its start and its mark."""
    for step, value in _children(node):
        here = (*path, step)
        mark = f"{sign}{len(marks)};"
        if isinstance(value, Table | InlineTable | Array):
            marks.append((here, value.as_string().count("\n") if isinstance(value, Array) else 0))
            value.trivia.comment_ws, value.trivia.comment = " ", f"# {mark}"
            _mark(value, here, sign, marks)
        elif isinstance(value, AoT | Mapping):
            _mark(value, here, sign, marks)
        else:
            marks.append((here, 0))
            node[step] = _marker(mark, value.as_string().count("\n") if isinstance(value, Item) else 0)


def _marker(mark: str, height: int) -> Item:
    return tomlkit.string(mark + "\n" * height, multiline=True) if height else tomlkit.string(mark)


def line_of(path: Path, lines: Mapping[Path, int]) -> int | None:
    """Give the line of a place: its own, else that of its first content, else that of the nearest parent."""
    for depth in range(len(path), 0, -1):
        here = path[:depth]
        if here in lines:
            return lines[here]
        inside = [line for found, line in lines.items() if found[:depth] == here]
        if inside:
            return min(inside)
    return 1 if lines else None
