"""Backing behind the hood's screws where too few of them meet wood."""

from __future__ import annotations

from dataclasses import dataclass, replace

from routeviz.catalog import table
from routeviz.geometry import bounds
from routeviz.model.scene import Scene, WallFrame, WallSide
from routeviz.model.solids import Frame, SolidKind
from routeviz.model.takeoff import BuyLine, Mark
from routeviz.takeoff.heavy import is_heavy, is_long
from routeviz.takeoff.marks import fastener_for, marks_in_wood
from routeviz.takeoff.words import size_text
from routeviz.units import length_text

__all__ = ["Backing", "backed", "backing", "backing_lines", "in_bays", "needs_backing"]

_LEAST_IN_WOOD = 2  # screws of the hood; common practice
_UPRIGHT = (SolidKind.STUD, SolidKind.JACK, SolidKind.CRIPPLE)


@dataclass(frozen=True, slots=True)
class Backing:
    """A piece of lumber between two studs [in], and the marks that it holds."""

    left_in: float
    right_in: float
    marks: tuple[str, ...]

    @property
    def length_in(self) -> float:
        """Give its length: the clear distance between the studs."""
        return self.right_in - self.left_in


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
    return tuple(replace(m, bay_in=_bay(m, scene, frame)) if m.backed else m for m in marks)


def backed(scene: Scene, marks: tuple[Mark, ...]) -> tuple[Mark, ...]:
    """Give the marks as they are drilled: where backing is let in, the screws go into it without anchors."""

    def drilled(mark: Mark) -> Mark:
        row = table("stock")["fastener"]["bracket" if mark.row == "bracket" else "large"]
        screw, pilot_in = fastener_for(row, "screw", metric=scene.metric)
        holds = "backing, let in first"
        if mark.at_edge_of:
            holds += f"; it meets {mark.at_edge_of} here: screw a board across both"
        return replace(mark, holds=holds, fastener=screw, pilot_in=pilot_in, backed=True)

    return tuple(drilled(m) if _gets_backing(m, scene, marks) else m for m in marks)


def backing(scene: Scene, frame: Frame, marks: tuple[Mark, ...]) -> tuple[Backing, ...]:
    """Give the pieces from left to right: one for each bay in which a screw meets no wood, and one for each bracket screw."""
    bays: dict[tuple[float, float, float], list[str]] = {}
    for mark in marks:
        if _gets_backing(mark, scene, marks):
            up = round(mark.height_in, 3) if mark.row == "bracket" else 0.0  # high above the hood's own
            bays.setdefault((*_bay(mark, scene, frame), up), []).append(mark.label)
    return tuple(Backing(a, b, tuple(names)) for (a, b, _), names in sorted(bays.items()))


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


def backing_lines(scene: Scene, frame: Frame, marks: tuple[Mark, ...]) -> list[BuyLine]:
    """Give the lumber, and the board to patch over each piece."""
    row = table("stock")["backing"]
    margin = float(table("stock")["patch"]["margin_in"])
    alike: dict[float, list[Backing]] = {}
    for piece in backing(scene, frame, marks):
        alike.setdefault(piece.length_in, []).append(piece)
    lumber, boards = [], []
    for length_in, pieces in alike.items():
        names = " ".join(name for piece in pieces for name in piece.marks)
        size = str(row["size_metric" if scene.metric else "size"])
        long = length_text(length_in, metric=scene.metric)
        patch = size_text(length_in, float(row["deep_in"]) + 2 * margin, metric=scene.metric)
        lumber.append(
            BuyLine("backing between two studs", f"{size}, {long}", len(pieces), "each", f"behind marks {names}")
        )
        boards.append(BuyLine("board patch", patch, len(pieces), "each", f"over the backing of {names}"))
    return [*lumber, *boards]
