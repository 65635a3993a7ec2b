"""Backing behind the hood's screws where too few of them meet wood."""

from __future__ import annotations

from dataclasses import replace

from routeviz.catalog import table
from routeviz.geometry import bounds
from routeviz.model.backing import Backing, backing_of
from routeviz.model.members import together
from routeviz.model.scene import Scene, WallFrame, WallSide
from routeviz.model.solids import Frame, SolidKind
from routeviz.model.takeoff import BuyLine, Mark
from routeviz.takeoff.heavy import is_heavy, is_long
from routeviz.takeoff.marks import fastener_for, marks_in_wood
from routeviz.takeoff.words import own_in, size_text
from routeviz.units import length_text

__all__ = ["backed", "backing", "backing_lines", "backing_words", "in_bays", "needs_backing"]

_LEAST_IN_WOOD = 2  # screws of the hood; common practice
_UPRIGHT = (SolidKind.STUD, SolidKind.JACK, SolidKind.CRIPPLE)


def needs_backing(scene: Scene, marks: tuple[Mark, ...]) -> bool:
    """Whether backing must be let in for any screw; not in a solid wall."""
    return any(_gets_backing(mark, scene, marks) for mark in marks)


def _gets_backing(mark: Mark, scene: Scene, marks: tuple[Mark, ...]) -> bool:
    """Whether a screw in board alone is given wood: too few others hold, the hood is heavy, or the cover long."""
    if mark.wood or scene.wall(WallSide.HOOD).frame not in (WallFrame.WOOD, WallFrame.STEEL):
        return False
    if mark.row == "bracket":
        return is_long(scene)
    hood = [m for m in marks if m.row != "bracket"]
    return is_heavy(scene) or marks_in_wood(marks) < min(_LEAST_IN_WOOD, len(hood))


def in_bays(scene: Scene, frame: Frame, marks: tuple[Mark, ...]) -> tuple[Mark, ...]:
    """Give the marks with the ends of the backing that they go into [in], for the drawings."""
    return tuple(
        replace(m, bay_in=_bay(m, scene, frame), opening_in=_opening_in(scene)) if m.backed else m for m in marks
    )


def backed(scene: Scene, marks: tuple[Mark, ...]) -> tuple[Mark, ...]:
    """Give the marks as they are drilled: where backing is let in, the screws go into it without anchors."""

    def drilled(mark: Mark) -> Mark:
        row = table("stock")["fastener"]["bracket" if mark.row == "bracket" else "large"]
        screw, pilot_in = fastener_for(row, "screw", metric=scene.metric)
        holds = "backing, let in first"
        if mark.at_edge_of:
            holds += f"; it meets {mark.at_edge_of} here: plywood across both"
        return replace(mark, holds=holds, fastener=screw, pilot_in=pilot_in, backed=True, screw="")

    made = tuple(drilled(m) if _gets_backing(m, scene, marks) else m for m in marks)
    if not is_heavy(scene):
        return made
    return tuple(m if m.row == "bracket" else replace(m, holds=f"{m.holds}; the maker's fixing decides") for m in made)


def backing(scene: Scene, frame: Frame, marks: tuple[Mark, ...]) -> tuple[Backing, ...]:
    """Give the pieces from left to right: one for each bay, or for each row of screws that one piece cannot hold."""
    row = table("stock")["backing"]
    return backing_of(in_bays(scene, frame, backed(scene, marks)), float(row["deep_in"]), float(row["edge_in"]))


def _bay(mark: Mark, scene: Scene, frame: Frame) -> tuple[float, float]:
    """Give the faces of the studs on both sides of a mark; the room's corners where there is none.

    Above the wall's own studs, as in a gable that the scene does not frame, they are taken to stand over those below.
    """
    before, after = _studs_beside(mark, scene, frame, at_its_height=True)
    below = _studs_beside(mark, scene, frame, at_its_height=False)
    return (before if before > 0.0 else below[0], after if after < scene.kitchen.width_in else below[1])


def _studs_beside(mark: Mark, scene: Scene, frame: Frame, *, at_its_height: bool) -> tuple[float, float]:
    before, after = 0.0, scene.kitchen.width_in
    for solid in frame.solids:
        if solid.side is not WallSide.HOOD or solid.kind not in _UPRIGHT:
            continue
        box = bounds(solid.shape)
        if at_its_height and not box.lo[2] < mark.height_in < box.hi[2]:
            continue
        middle = (box.lo[0] + box.hi[0]) / 2
        if middle <= mark.left_in:
            before = max(before, box.hi[0])
        else:
            after = min(after, box.lo[0])
    return before, after


def _opening_in(scene: Scene) -> float:
    """Give how high the board is opened for a piece, its screws in the middle, and patched after [in]."""
    row = table("stock")
    return float(row["backing"]["deep_in"]) + 2 * own_in(row["patch"], "margin", metric=scene.metric)


def backing_lines(scene: Scene, frame: Frame, marks: tuple[Mark, ...]) -> list[BuyLine]:
    """Give the lumber, the plywood where a mark meets a stud's edge, and the board to patch over each piece."""
    row = table("stock")["backing"]
    alike: dict[float, list[Backing]] = {}
    every = backing(scene, frame, marks)
    for piece in every:
        alike.setdefault(piece.length_in, []).append(piece)
    lumber, boards = [], []
    for length_in, pieces in alike.items():
        names = " ".join(name for piece in pieces for name in piece.marks)
        size = str(row["size_metric" if scene.metric else "size"])
        long = length_text(length_in, metric=scene.metric)
        patch = size_text(length_in, _opening_in(scene), metric=scene.metric)
        cut = ", cut to the ceiling" if any(piece.meets_ceiling(scene) for piece in pieces) else ""
        lumber.append(
            BuyLine("backing between two studs", f"{size}, {long}", len(pieces), "each", f"behind marks {names}{cut}")
        )
        boards.append(BuyLine("board patch", patch, len(pieces), "each", f"over the backing of {names}{cut}"))
    edges = [name for piece in every for name in piece.at_edges]
    if edges:
        side = own_in(row, "across", metric=scene.metric)
        size = size_text(side, float(row["deep_in"]), metric=scene.metric)
        lumber.append(
            BuyLine("plywood across backing and stud", f"{size}, as thick as the board", len(edges), "each",
                    f"at marks {' '.join(edges)}, in place of the board there; screwed to both")
        )  # fmt: skip
    return [*lumber, *boards]


def backing_words(scene: Scene, frame: Frame, marks: tuple[Mark, ...]) -> str:
    """Say what is opened for the backing, where, and how it is let in."""
    every = backing(scene, frame, marks)
    rows: dict[str, list[str]] = {}
    for piece in sorted(every, key=lambda b: b.height_in):
        rows.setdefault(length_text(piece.height_in, metric=scene.metric), []).extend(piece.marks)
    heights = together(f"{height} ({' '.join(names)})" for height, names in rows.items())
    high = length_text(_opening_in(scene), metric=scene.metric)
    under = [name for piece in every if piece.meets_ceiling(scene) for name in piece.marks]
    least = f", at {together(under)} no higher than the ceiling" if under else ""
    text = (f"Open the board from stud to stud behind the open-square marks, {high} high, its middle {heights} above the floor{least}. "
            "Let the backing in "
            "flush with the studs' faces and fix it to both.")  # fmt: skip
    edges = [name for piece in every for name in piece.at_edges]
    if edges:
        half = length_text(own_in(table("stock")["backing"], "across", metric=scene.metric) / 2, metric=scene.metric)
        text += (f" At {together(edges)} the stud's edge is met: open the board {half} to both sides of the mark, past the stud, "
                 "and screw plywood, as thick as the board, across backing and stud.")  # fmt: skip
    return text
