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
    paths: list[Path] = []
    try:
        document = tomlkit.parse(text)
        _mark(document, (), sign, paths)
        marked = document.as_string()
    except (TOMLKitError, ValueError, LookupError, TypeError, AttributeError, RecursionError):
        return {}
    lines: dict[Path, int] = {}
    for number, line in enumerate(marked.split("\n"), start=1):
        for piece in line.split(sign)[1:]:
            digits = piece.split(";")[0]
            lines.setdefault(paths[int(digits)], number)
    return lines


def _children(node: Any) -> Iterator[tuple[str | int, Any]]:
    if isinstance(node, Mapping):
        yield from ((str(key), value) for key, value in list(node.items()))
    else:
        yield from enumerate(list(rows(node) or ()))


def _mark(node: Any, path: Path, sign: str, paths: list[Path]) -> None:
    for step, value in _children(node):
        here = (*path, step)
        if isinstance(value, Table):
            paths.append(here)
            value.trivia.comment_ws, value.trivia.comment = " ", f"# {sign}{len(paths) - 1};"
            _mark(value, here, sign, paths)
        elif isinstance(value, AoT | Array | InlineTable | Mapping):
            _mark(value, here, sign, paths)
        elif isinstance(value, Item):
            paths.append(here)
            node[step] = _marker(f"{sign}{len(paths) - 1};", value.as_string().count("\n"))


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
