"""Checks on repeated members: studs, joists, rafters."""

from __future__ import annotations

import itertools
import math

from routeviz.scenefile.check_notes import Notes
from routeviz.scenefile.house import LayoutTable
from routeviz.scenefile.paths import Path

__all__ = ["check_layout"]


def check_layout(table: LayoutTable, path: Path, reach: float, what: str, notes: Notes) -> None:
    """Check one layout.

    Parameters
    ----------
    table : LayoutTable
        The layout.
    path : tuple
        Where it stands.
    reach : float
        Length of the room across the members [in]; "not a number" when it is not known.
    what : str
        What one of them is called: ``joist``.
    notes : Notes
        Where mistakes go.
    """
    width = _size(table, path, what, notes)
    if table.at:
        _check_measured(table, path, width, what, notes)
    else:
        _check_even(table, path, width, reach, what, notes)
    _check_numbers(table, path, reach, what, notes)


def _size(table: LayoutTable, path: Path, what: str, notes: Notes) -> float:
    for key in ("width", "depth"):
        if table.size is None and getattr(table, key) is None:
            if table.width is None and table.depth is None:
                notes.missing((*path, "size"), f'Add size = "2x8", or width and depth of one {what}')
                break
            notes.missing((*path, key), f'Add {key} = "1 1/2 in" (or size = "2x8" in place of both)')
    if table.width is not None:
        return table.width
    return table.size.width_in if table.size else math.nan


def _check_measured(table: LayoutTable, path: Path, width: float, what: str, notes: Notes) -> None:
    for key in ("first", "spacing"):
        if getattr(table, key) is not None:
            notes.add((*path, key), "given twice: at already lists every centre", f"Keep either at or {key}")
    for number, (a, b) in enumerate(itertools.pairwise(table.at), start=1):
        if b <= a:
            notes.add((*path, "at", number), "not in order", "List the centres from small to large, each once")
        elif b - a < width:
            notes.add(
                (*path, "at", number),
                f"only {notes.length(b - a)} from the one before, less than one {what} is wide",
                "Check the two centres; a doubled one is listed once and numbered under doubled",
            )


def _check_even(table: LayoutTable, path: Path, width: float, reach: float, what: str, notes: Notes) -> None:
    if table.spacing is None:
        notes.missing((*path, "spacing"), 'Add spacing = "16 in" (centre to centre), or list the centres under at')
    elif table.spacing <= width:
        notes.add(
            (*path, "spacing"),
            f"not more than one {what} is wide ({notes.length(width)})",
            f"Write the distance from the centre of one {what} to the centre of the next",
        )
    if table.first is None:
        notes.missing((*path, "first"), f'Add first = "3/4 in" (centre of the first {what}), or list all under at')
    elif table.spacing is not None and table.first > table.spacing + width:
        notes.add(
            (*path, "first"),
            f"more than one spacing ({notes.length(table.spacing)}) away, so a {what} before it would be left out",
            "Give the centre of the first one inside the room, or say which numbers are not there (missing)",
        )
    elif table.first < -width:
        notes.add((*path, "first"), "stands before the reference edge", "Count from the left end, or the hood wall")
    elif table.first > reach:
        notes.add((*path, "first"), f"beyond the room, which is {notes.length(reach)}", "Check the number")


def _count(table: LayoutTable, reach: float) -> float:
    if table.at:
        return len(table.at)
    if table.first is None or table.spacing is None or not table.spacing > 0:
        return math.nan
    return math.floor((reach - table.first) / table.spacing) + 2 if math.isfinite(reach + table.first) else math.nan


def _check_numbers(table: LayoutTable, path: Path, reach: float, what: str, notes: Notes) -> None:
    count = _count(table, reach)
    for key in ("doubled", "missing"):
        numbers = getattr(table, key)
        for n, number in enumerate(numbers):
            if number > count:
                notes.add((*path, key, n), f"there are only {count:g} of them", f"Count each {what} from 1")
            elif number in numbers[:n]:
                notes.add((*path, key, n), "listed twice", "List each one once")
    for n, number in enumerate(table.missing):
        if number in table.doubled:
            notes.add((*path, "missing", n), "listed as doubled and as missing", "Keep it in one of the two lists")
