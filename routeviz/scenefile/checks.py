"""Checks between the fields of a scene: does it fit together as a room."""

from __future__ import annotations

from difflib import get_close_matches
from typing import Any

from routeviz.scenefile.check_equipment import check_equipment
from routeviz.scenefile.check_house import check_house
from routeviz.scenefile.check_notes import Notes
from routeviz.scenefile.document import Document
from routeviz.scenefile.fields import is_blank
from routeviz.scenefile.mistakes import Trouble, known_keys
from routeviz.scenefile.paths import descend, read_path

__all__ = ["cross_checks"]


def cross_checks(document: Document, raw: dict[str, Any]) -> list[Trouble]:
    """Give every mistake between fields. Blanks are "not a number" and never trip a check."""
    notes = Notes(document, raw)
    check_house(document, notes)
    check_equipment(document, notes)
    check_assumed(document, raw, notes)
    return notes.found


def check_assumed(document: Document, raw: dict[str, Any], notes: Notes) -> None:
    """Check that every key listed as guessed is a key of the file."""
    for number, text in enumerate(document.assumed):
        if is_blank(text):
            continue
        path = read_path(text, raw)
        if path is not None and _is_there(raw, path):
            continue
        if path is not None and path[-1] in known_keys(Document, path[:-1]):
            problem, remedy = "the file gives no value for it", "Take it out: what is left out is listed by itself"
        else:
            word = text.split(".")[-1]
            near = get_close_matches(word, _all_keys(raw), n=1)
            problem = "no such key in this file"
            remedy = (f"Did you mean {near[0]}? " if near else "") + 'Write it like "ceiling.joists.first"'
        notes.add(("assumed", number), problem, remedy)


def _is_there(raw: dict[str, Any], path: tuple[str | int, ...]) -> bool:
    try:
        descend(raw, path)
    except LookupError:
        return False
    return True


def _all_keys(data: Any) -> list[str]:
    if isinstance(data, dict):
        return [*data, *(key for value in data.values() for key in _all_keys(value))]
    return [key for value in data for key in _all_keys(value)] if isinstance(data, list) else []
