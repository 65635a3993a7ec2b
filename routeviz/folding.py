"""Fold words into lines so that no figure is torn: "8" at a line's end and "1/2 in" below it read as another hole."""

from __future__ import annotations

import re
import textwrap
from collections.abc import Callable

__all__ = ["bound", "fold", "pieces", "unbound"]

_HARD = "\u00a0"  # a space that no line is broken at
_UNITS = (
    "in ft mm cm m cfm l l/s m3/h ft/min m/s Pa lb kg oz ga V Hz A W kW Btu/h btu/h deg degF degC R D cu sq thousandths"
)
_KEEP = re.compile(
    r"(?<=\d) (?=\d+/\d)"  # 8 1/2
    rf"|(?<=\d) (?=(?:{'|'.join(_UNITS.split())})(?![\w/]))"  # 8 1/2 in, 400 cfm
    r"|(?<=\d ft) (?=\d)"  # 3 ft 10 in
    r"|(?<= in) (?=wg\b)|(?<=\d cu) (?=ft\b)|(?<=\d sq) (?=ft\b)"
    r"|(?<=[\dntm]) (?=[x×] \d)|(?<=[\dntm] [x×]) (?=\d)"  # 1/4 x 3 in, 8 1/2 in × 9 1/2 in
)
_BESIDE_SIGN = re.compile(rf"{_HARD}(?=[x×]{_HARD})|(?<={_HARD}[x×]){_HARD}")


def bound(text: str) -> str:
    """Tie each figure to its fraction and its unit, and the sides of a section to each other, with hard spaces.

    Examples
    --------
    >>> unbound(bound("8 1/2 in")), bound("8 1/2 in").split(" ")
    ('8 1/2 in', ['8\\xa01/2\\xa0in'])
    """
    return _KEEP.sub(_HARD, text)


def unbound(text: str) -> str:
    """Write hard spaces as plain ones."""
    return text.replace(_HARD, " ")


def pieces(text: str, fits: Callable[[str], bool]) -> list[str]:
    """Part a text into what a line may be broken between, figures tied as `bound` does.

    What is tied and does not fit into a line of its own is let go: beside the sign of a section first, then everywhere.
    """
    found: list[str] = []
    for word in bound(text).split(" "):
        for piece in [word] if fits(word) else _BESIDE_SIGN.sub(" ", word).split(" "):
            found += [piece] if fits(piece) else unbound(piece).split(" ")
    return found


def fold(text: str, width: int, *, first: str = "", rest: str = "") -> list[str]:
    """Fold a paragraph into lines of at most `width` signs, a word that is longer alone excepted.

    Parameters
    ----------
    first, rest : str
        What stands before the first line, and before the others.
    """
    room = width - max(len(first), len(rest))
    kept = " ".join(pieces(text, lambda word: len(word) <= room))
    lines = textwrap.wrap(kept, width, initial_indent=first, subsequent_indent=rest, break_long_words=False)
    return [unbound(line) for line in lines]
