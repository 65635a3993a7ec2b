"""The line on which each value of a scene file stands.

tomlkit keeps the layout of a file but not its line numbers. So every value is replaced by a marker that is as many
lines high, every table header gets a marker comment, and the lines are counted in the text that comes out.
"""

from __future__ import annotations

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
    marks: list[tuple[Path, int]] = []
    try:
        document = tomlkit.parse(text)
        _mark(document, (), sign, marks)
        marked = document.as_string()
    except (TOMLKitError, ValueError, LookupError, TypeError, AttributeError, RecursionError):
        return {}
    lines: dict[Path, int] = {}
    for number, line in enumerate(marked.split("\n"), start=1):
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
