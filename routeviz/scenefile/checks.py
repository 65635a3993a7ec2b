"""Checks between the fields of a scene: does it fit together as a room."""

from __future__ import annotations

from dataclasses import dataclass
from difflib import get_close_matches
from typing import Any

from routeviz.scenefile.check_equipment import check_equipment
from routeviz.scenefile.check_house import check_house
from routeviz.scenefile.check_notes import Notes
from routeviz.scenefile.check_outdoors import check_outdoors
from routeviz.scenefile.document import Document
from routeviz.scenefile.fields import is_blank
from routeviz.scenefile.mistakes import Trouble, known_keys
from routeviz.scenefile.paths import descend, read_path

__all__ = ["Known", "cross_checks"]


@dataclass(frozen=True, slots=True)
class Known:
    """Words that only the caller knows; an empty list checks nothing."""

    profiles: tuple[str, ...] = ()
    codes: tuple[str, ...] = ()


def cross_checks(document: Document, raw: dict[str, Any], known: Known) -> list[Trouble]:
    """Give every mistake between fields. Blanks are "not a number" and never trip a check."""
    notes = Notes(document, raw)
    check_house(document, notes)
    check_equipment(document, notes)
    check_outdoors(document, notes)
    _check_assumed(document, raw, notes)
    _check_known(document, known, notes)
    return notes.found


def _check_assumed(document: Document, raw: dict[str, Any], notes: Notes) -> None:
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


def _check_known(document: Document, known: Known, notes: Notes) -> None:
    profile = document.rules.profile
    if known.profiles and not is_blank(profile) and profile not in known.profiles:
        remedy = _nearest(profile, known.profiles, f"Write one of: {', '.join(known.profiles)}")
        notes.add(("rules", "profile"), "there is no rule profile of this name", remedy)
    for number, waiver in enumerate(document.rules.waivers):
        if known.codes and not is_blank(waiver.code) and waiver.code not in known.codes:
            remedy = _nearest(waiver.code, known.codes, "Copy the code from the findings of a plan")
            notes.add(("rules", "waivers", number, "code"), "no finding has this code", remedy)


def _nearest(word: str, words: tuple[str, ...], otherwise: str) -> str:
    folded = {w.casefold(): w for w in words}
    near = get_close_matches(word.casefold(), list(folded), n=1, cutoff=0.5)
    return f"Did you mean {folded[near[0]]}? {otherwise}" if near else otherwise


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
