"""Checks on the things outdoors: does the house have the face that each is said to be at."""

from __future__ import annotations

from routeviz.model.scene import WallSide
from routeviz.scenefile.check_notes import Notes
from routeviz.scenefile.document import Document
from routeviz.scenefile.fields import is_blank
from routeviz.scenefile.house import WallTable
from routeviz.scenefile.paths import Path

__all__ = ["check_outdoors"]


def check_outdoors(document: Document, notes: Notes) -> None:
    """Check that every thing outdoors is at a face with the open air before it; no other would keep a cap away."""
    known = _outer_faces(document, notes)
    remedy = f"Write one of: {', '.join(known)}" if known else "Take it out: no wall has outdoors beyond it"
    for n, thing in enumerate(document.outdoors):
        if not is_blank(thing.face) and thing.face not in known:
            notes.add(("outdoors", n, "face"), "the house has no such face outdoors", remedy)


def _outer_faces(document: Document, notes: Notes) -> tuple[str, ...]:
    """Name the faces with the open air before them: walls of the kitchen, the roof, walls of spaces.

    What could not be read counts as outdoors, so that one slip is told once.
    """

    def outer(wall: WallTable | None, path: Path) -> bool:
        if wall is None:
            return notes.is_set(path)
        return is_blank(wall.beyond) or wall.beyond == "outdoors"

    walls = [side.value for side in WallSide if outer(getattr(document.walls, side.value), ("walls", side.value))]
    roof = ["roof"] if document.roof is not None or notes.is_set(("roof",)) else []
    beyond = [
        f"{space.name}/{side}"
        for n, space in enumerate(document.spaces)
        for side in ("front", "left", "right")
        if outer(getattr(space.walls, side), ("spaces", n, "walls", side))
    ]
    return (*walls, *roof, *beyond)
