"""Checks on the heel of a roof: whether the rafters stand on the walls, and stay over the room."""

from __future__ import annotations

from routeviz.model.roofline import stretch_of
from routeviz.model.scene import RunDirection
from routeviz.scenefile.check_notes import Notes
from routeviz.scenefile.document import Document
from routeviz.scenefile.house import LayoutTable, RoofTable, WallTable
from routeviz.scenefile.paths import Path

__all__ = ["check_heel"]

_PATH: Path = ("roof", "heel")
_PARTITION_IN = 3.5  # what a wall that is not described is taken to be
_SLIP_IN = 1 / 64


def check_heel(
    roof: RoofTable, document: Document, notes: Notes, *, on_rafters: bool, ridge: RunDirection | None
) -> None:
    """Check that the heel goes with what the roof stands on."""
    if roof.heel is None:
        return
    if on_rafters:
        notes.add(_PATH, "the ceiling is fixed to the rafters, so its own height says where they are", "Take it out")
        return
    if roof.framing is None:
        notes.add(_PATH, "nothing is said of rafters or trusses that it could belong to", "Add framing, or take it out")
        return
    pitch = roof.pitch or 0.0
    walls = document.walls
    ends = (walls.left, walls.right) if ridge is RunDirection.OUT else (walls.hood, walls.front)
    least = _deep(roof.framing) * stretch_of(pitch) - pitch * max(_core(wall) for wall in ends)
    if roof.heel < least - _SLIP_IN:
        problem = "so low a heel brings the rafters down into the room, below the wall plates' inner edge"
        notes.add(_PATH, problem, f"Write at least {notes.length(least)}, or check pitch and framing")


def _deep(layout: LayoutTable) -> float:
    return layout.depth if layout.depth is not None else layout.size.depth_in if layout.size is not None else 0.0


def _core(wall: WallTable | None) -> float:
    if wall is None:
        return _PARTITION_IN
    return wall.core if wall.core is not None else _deep(wall.studs) if wall.studs is not None else 0.0
