"""What a stage is made of: pieces with a mesh, and the marks that stand in the picture."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field
from enum import StrEnum

import numpy as np
import numpy.typing as npt

from routeviz.model.finding import State
from routeviz.model.solids import Vec3
from routeviz.views.shapes import Mesh

__all__ = ["Dimension", "Flag", "Group", "Layer", "MemberNumber", "Note", "Piece"]

Polyline = npt.NDArray[np.float64]


class Layer(StrEnum):
    """What can be taken away from the picture; the words are shown to people."""

    BOARD = "wall and ceiling board"
    FRAMING = "framing"
    SKIN = "outer skin"
    ROOF = "roof"
    OUTER = "house outside"  # what is cut off for the view inside, drawn only for who stands outdoors
    KITCHEN = "kitchen"
    HOOD = "hood"
    COVER = "chimney cover"
    DUCT = "duct"
    ZONES = "clearances"
    BEYOND = "beyond the wall"


class Group(StrEnum):
    """What moves with what when the hood is moved."""

    FIXED = "fixed"
    HOOD = "hood"  # along the wall and up and down
    COVER = "cover"  # with the hood, and stretched to the ceiling
    COOK = "cook"  # along the wall
    ROUTE = "route"  # drawn anew for each place


@dataclass(frozen=True, eq=False)
class Piece:
    """One named thing in the picture.

    `solid` is the id of the framed solid that it shows ("" for none), `lines` are polylines drawn on it: seams,
    end grain, joints. `smooth` asks for rounded shading.
    """

    name: str
    label: str
    layer: Layer
    material: str
    mesh: Mesh
    group: Group = Group.FIXED
    solid: str = ""
    lines: Sequence[Polyline] = field(default_factory=tuple)
    smooth: bool = False


@dataclass(frozen=True)
class Note:
    """A label with a leader; `views` names where it is shown.

    The first anchor that can be seen is used, through what thinly covers it too; else the first of the places
    `on_skin`, which are seen by themselves or not at all.
    """

    title: str
    text: str
    anchors: tuple[Vec3, ...]
    views: frozenset[str]
    on_skin: tuple[Vec3, ...] = ()


@dataclass(frozen=True)
class Flag:
    """A finding at its place: broken and close ones are numbered, worst first, the same in every view.

    `on_skin` are places on the skin of what it names, for a still in which its own place is hidden.
    """

    number: int
    state: State
    code: str
    title: str
    short: str
    place: Vec3 | None
    view: str
    on_skin: tuple[Vec3, ...] = ()


@dataclass(frozen=True)
class Dimension:
    """A distance drawn in the picture between two points."""

    start: Vec3
    end: Vec3
    text: str
    views: frozenset[str]


@dataclass(frozen=True)
class MemberNumber:
    """The number under a joist's end or on a bared stud, so that the picture and the tape count alike.

    In a still `kind`, the first letter of what it is, stands before it, and it takes the first of its places that is
    seen, `through_in` of whatever lies before it [in], and is written `under_px` below it.
    """

    text: str
    place: Vec3
    solid: str
    kind: str = ""
    also: tuple[Vec3, ...] = ()
    through_in: float = 4.0
    under_px: float = 21.0
