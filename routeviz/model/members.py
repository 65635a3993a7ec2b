"""How several members are named together: "joists 4 and 5", "right wall studs 2 to 10"."""

from __future__ import annotations

import re
from collections.abc import Iterable
from itertools import groupby

__all__ = ["together"]

_NUMBERED = re.compile(r"(.*?)(\d+)((?:, | over ).*|)")
_MANY = {"truss": "trusses"}
_COUNTED = ("stud", "joist", "rafter", "truss", "plate", "strip", "cripple", "jack", "web")


def together(labels: Iterable[str]) -> str:
    """Name members once each, numbers of one row as the trade counts them; other things stay in their places.

    Examples
    --------
    >>> together(["right wall stud 10", "right wall stud 2", "right wall stud 3", "right wall stud 4"])
    'right wall studs 2 to 4 and 10'
    >>> together(["joist 5", "joist 4", "rafter 4, back slope", "duct riser"])
    'joists 4 and 5, rafter 4, back slope and duct riser'
    """
    rows: dict[tuple[str, str], list[int]] = {}
    for label in dict.fromkeys(labels):
        found = _NUMBERED.fullmatch(label)
        stem = found[1].rstrip() if found else ""
        if found and stem.rpartition(" ")[2] in _COUNTED:
            rows.setdefault((stem, found[3]), []).append(int(found[2]))
        else:
            rows.setdefault((label, ""), [])
    return _and([_row(stem, numbers, tail) for (stem, tail), numbers in rows.items()])


def _row(stem: str, numbers: list[int], tail: str) -> str:
    if not numbers:
        return stem
    head, _, last = stem.rpartition(" ")
    noun = last if len(numbers) == 1 else _MANY.get(last, f"{last}s")
    return f"{head} {noun} {_and(_spans(sorted(numbers)))}{tail}".lstrip()


def _spans(numbers: list[int]) -> list[str]:
    """Give runs of three and more as "2 to 10", others one by one."""
    said: list[str] = []
    for _, run in groupby(enumerate(numbers), key=lambda at: at[1] - at[0]):
        row = [number for _, number in run]
        said += [f"{row[0]} to {row[-1]}"] if len(row) > 2 else [str(number) for number in row]
    return said


def _and(words: list[str]) -> str:
    return " and ".join([", ".join(words[:-1]), words[-1]] if len(words) > 1 else words)
