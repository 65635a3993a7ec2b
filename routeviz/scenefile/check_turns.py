"""Checks on the turns of a route as built: a duct turns to a side, neither straight on nor straight back."""

from __future__ import annotations

import math

from routeviz.model.solids import Vec3
from routeviz.model.turning import LEAVES, WAYS, may_turn, turned
from routeviz.scenefile.check_notes import Notes
from routeviz.scenefile.document import Document
from routeviz.scenefile.fields import is_blank

__all__ = ["check_turns"]

_GOES = {"front": "forward"}  # as a person says it of a duct


def check_turns(document: Document, notes: Notes) -> None:
    """Follow the list of fittings from the hood and check that each turn is one.

    Behind a turn that cannot be, the direction is known again only after a square elbow: until then nothing is said.
    """
    if document.as_built is None or is_blank(document.hood.outlet.place):
        return
    at: Vec3 | None = WAYS[LEAVES[document.hood.outlet.place]]
    for number, fitting in enumerate(document.as_built.fittings):
        if is_blank(fitting.part):
            at = None
        if fitting.part not in ("elbow", "offset"):
            continue
        toward = WAYS.get(fitting.turn)
        if at is not None and toward is not None and not may_turn(at, toward):
            notes.add(("as_built", "fittings", number, "turn"), *_said(at, fitting.turn))
            at = None
        elif fitting.part == "elbow":
            at = _after(at, toward, fitting.angle)


def _after(at: Vec3 | None, toward: Vec3 | None, angle_deg: float) -> Vec3 | None:
    """Give the direction after an elbow; None where it cannot be known."""
    if toward is None or not math.isfinite(angle_deg):
        return None
    if at is None:
        return toward if angle_deg == 90.0 else None
    return turned(at, toward, angle_deg)


def _said(at: Vec3, turn: str) -> tuple[str, str]:
    """Say what cannot be, and where the duct may turn instead."""
    goes = max(WAYS, key=lambda name: sum(a * b for a, b in zip(WAYS[name], at, strict=True)))
    sides = [name for name, way in WAYS.items() if may_turn(at, way)]
    told = [f"{_GOES[name]} ({name})" if name in _GOES else name for name in sides]
    going = _GOES.get(goes, goes)
    problem = f"the duct goes {going} here; {'that is no turn' if turn == goes else 'it cannot turn straight back'}"
    return problem, f"A duct that goes {going} turns {', '.join(told[:-1])} or {told[-1]}"
