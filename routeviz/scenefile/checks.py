"""Checks between the fields of a scene: does it fit together as a room."""

from __future__ import annotations

from typing import Any

from routeviz.scenefile.check_notes import Notes
from routeviz.scenefile.document import Document
from routeviz.scenefile.mistakes import Trouble

__all__ = ["cross_checks"]


def cross_checks(document: Document, raw: dict[str, Any]) -> list[Trouble]:
    """Give every mistake between fields. Blanks are "not a number" and never trip a check."""
    notes = Notes(document, raw)
    return notes.found
