"""The framed scene: tagged solids, zones where a duct may run, and faces where it may leave.

One right-handed frame for everything [in]: x to the right along the hood wall from the finished left wall,
y through the hood wall (its finished face is y = 0, the room has y < 0), z up from the finished floor.
"""

from __future__ import annotations

from dataclasses import dataclass, field, replace
from enum import StrEnum

from routeviz.model.scene import MemberKind, Obstacle, Tolerances, WallSide

__all__ = [
    "JOIST_KINDS", "OPENING_KINDS", "RAFTER_KINDS", "STUD_KINDS", "Box", "Crossing", "Cylinder", "ExitFace", "FaceKind",
    "Frame", "KeepOut", "Member", "Passage", "Prism", "Shape", "Solid", "SolidKind", "Vec3", "WallEnd", "Zone",
    "obstacle_box", "tolerance_in",
]  # fmt: skip

Vec3 = tuple[float, float, float]


@dataclass(frozen=True, slots=True)
class Box:
    """An axis-parallel box [in]."""

    lo: Vec3
    hi: Vec3

    def __post_init__(self) -> None:
        """Refuse boxes without volume."""
        if any(a >= b for a, b in zip(self.lo, self.hi, strict=True)):
            raise ValueError(f"box without volume: {self.lo} to {self.hi}")


@dataclass(frozen=True, slots=True)
class Prism:
    """A polygon swept along one axis [in]: a rafter, a roof plane, a sloped board.

    `outline` is a simple polygon in the two other axes, in axis order (axis 0: y, z; axis 1: x, z; axis 2: x, y).
    """

    axis: int
    start: float
    end: float
    outline: tuple[tuple[float, float], ...]

    def __post_init__(self) -> None:
        """Refuse prisms without length or outline."""
        if self.start >= self.end or len(self.outline) < 3:
            raise ValueError("prism without volume")


@dataclass(frozen=True, slots=True)
class Cylinder:
    """A straight round bar or pipe [in] along one axis; `centre` is in the two other axes, in axis order."""

    axis: int
    start: float
    end: float
    centre: tuple[float, float]
    radius: float


Shape = Box | Prism | Cylinder


class SolidKind(StrEnum):
    """What a solid is in the house."""

    STUD = "stud"
    PLATE = "plate"
    JACK = "jack stud"
    HEADER = "header"
    SILL = "sill"
    CRIPPLE = "cripple"
    JOIST = "joist"
    RIM = "rim"
    BLOCKING = "blocking"
    RAFTER = "rafter"
    RIDGE = "ridge"
    CHORD = "truss chord"
    WEB = "truss web"
    BEAM = "beam"
    FURRING = "furring strip"
    BOARD = "board"
    SHEATHING = "sheathing"
    CLADDING = "cladding"
    MASONRY = "masonry"
    SLAB = "slab"
    SUBFLOOR = "subfloor"
    DECK = "roof deck"
    COVERING = "roof covering"
    EAVE = "eave soffit"
    GLAZING = "window"
    DOOR = "door"
    CABINET = "cabinet"
    SOFFIT = "soffit"
    SERVICE = "service"
    OBSTACLE = "obstacle"
    COOKTOP = "cooktop"
    COUNTER = "counter"
    HOOD = "hood"
    COVER = "chimney cover"
    FLOOR = "floor"


JOIST_KINDS = (SolidKind.JOIST, SolidKind.RIM, SolidKind.BLOCKING, SolidKind.BEAM)
RAFTER_KINDS = (SolidKind.RAFTER, SolidKind.RIDGE, SolidKind.CHORD, SolidKind.WEB)
STUD_KINDS = (SolidKind.STUD, SolidKind.JACK, SolidKind.CRIPPLE, SolidKind.PLATE, SolidKind.SILL, SolidKind.HEADER)
OPENING_KINDS = (SolidKind.GLAZING, SolidKind.DOOR)


def obstacle_box(thing: Obstacle) -> Box:
    """Give an obstacle's box in the house frame."""
    return Box((thing.left_in, -thing.out_in - thing.depth_in, thing.bottom_in),
               (thing.left_in + thing.width_in, -thing.out_in, thing.bottom_in + thing.height_in))  # fmt: skip


class Crossing(StrEnum):
    """How a duct may meet a solid."""

    PASS = "pass"  # crossed at no cost and reported as a hole: board, sheathing, cladding, deck, subfloor
    RULE = "rule"  # crossed where its own cutting rule allows, and reported: plates, rim, blocking, furring
    NEVER = "never"  # a wall for the search: joists, bearing studs, rafters, trusses, beams, services
    GHOST = "ghost"  # drawn and measured but no obstacle: cooktop, hood, cover, zones


@dataclass(frozen=True, slots=True)
class Member:
    """What the cutting rules need to know of a framing member."""

    kind: MemberKind
    nominal: str
    width_in: float
    depth_in: float
    axis: int  # it runs along x (0), y (1) or z (2)
    number: int = 0  # counted from 1 in its group; 0 for single members
    plies: int = 1
    bearing: bool = True
    exterior: bool = False


@dataclass(frozen=True, slots=True)
class Solid:
    """One tagged solid. `origin` is the scene field that it comes from, such as ``ceiling.joists``."""

    id: str  # unique, stable: "joist-4"
    kind: SolidKind
    label: str  # for people: "joist 4"
    shape: Shape
    crossing: Crossing
    origin: str
    member: Member | None = None
    material: str = ""
    clearance_in: float = 0.0
    side: WallSide | None = None  # the kitchen wall it belongs to
    space: str = "kitchen"
    combustible: bool = False
    protected: bool = False
    wall: str = ""  # the wall it is a part of, in words, gable and upper storey included: "the wall behind"
    rated: bool = False  # whether that wall is fire-rated


def tolerance_in(solid: Solid, given: Tolerances) -> float:
    """Give how far a solid may be off [in], by the scene's own statement.

    Where a scene lists members decides, not what they are called: bottom chords and strips that are the ceiling's
    joists were measured with the joists, strips on a wall with its studs.
    """
    if solid.origin == "ceiling.joists" or solid.kind in JOIST_KINDS:
        return given.joists_in
    if solid.kind in RAFTER_KINDS:
        return given.rafters_in
    if solid.kind in STUD_KINDS or solid.origin.endswith(".studs"):
        return given.studs_in
    return given.openings_in if solid.kind in OPENING_KINDS else given.other_in


class Passage(StrEnum):
    """What it means for a duct to be in a zone."""

    HIDDEN = "hidden"  # free: bays, attic, chase, soffit, cabinet, inside the cover, inside a wall
    BOXING = "boxing"  # open air of the kitchen: needs boxing, ranks below any hidden route
    CLOSED = "closed"  # other rooms
    OUTDOORS = "outdoors"  # the duct ends here; nothing runs on outside


@dataclass(frozen=True, slots=True)
class Zone:
    """A region of space and what a duct may do there. Later zones in a Frame overrule earlier ones."""

    id: str
    label: str
    passage: Passage
    shape: Box | Prism
    space: str = "kitchen"
    bay: str = ""  # "joist bay 4-5"


class FaceKind(StrEnum):
    """What kind of face a duct leaves through."""

    WALL = "wall"
    ROOF = "roof"
    GABLE = "gable"


@dataclass(frozen=True, slots=True)
class KeepOut:
    """A rectangle on a face where no cap may sit, with its distance and what it protects."""

    id: str  # of the outdoor thing or solid
    label: str
    kind: str  # an OutdoorKind value, or "edge", "eave"
    lo: tuple[float, float]  # of the thing itself, in the face's two axes, in axis order
    hi: tuple[float, float]
    distance_in: float  # wanted between thing and the cap's opening; 0 when only the body counts
    away_in: float = 0.0
    above_in: float | None = None  # so far over its top the cap's opening may be at any distance
    heights_in: tuple[float, float] | None = None  # of a thing that a roof overlooks: from the floor to both its ends


@dataclass(frozen=True, slots=True)
class RoofEdge:
    """A line on a roof from which a place is measured, square to one of the two level axes.

    An eave, rake, ridge or high edge can be found on the roof. Where the roof goes on over another space, only the
    outer face of the wall below is known, and no tape hooks on it.
    """

    label: str  # "eave", "rake", "ridge", "high edge", or "outer face of the left wall below"
    axis: int  # 0: its place is along x; 1: along y
    at_in: float
    hooks: bool  # it is the roof's own


@dataclass(frozen=True, slots=True)
class WallEnd:
    """An upright end of a wall's outer face, or the line indoors that stands for one.

    Where the next wall is outdoors too there is a corner, and a tape hooks on its finished outer face. Where the house
    goes on, outdoors shows no corner: only the inner face of the wall that meets it indoors is known.
    """

    label: str  # "corner with the left wall", or "inner face of the left wall"
    at_in: float  # along the wall's face, in the house frame
    hooks: bool  # there is a corner outdoors


@dataclass(frozen=True, slots=True)
class ExitFace:
    """An outer face where a duct may end outdoors.

    The duct runs along `axis` in direction `sign` and ends at the plane. Walls and gables: the plane is
    ``coordinate = at_in``. Roofs: it leaves upwards (axis 2) and the surface is
    ``z = plane[0] + plane[1] * x + plane[2] * y``.
    `lo` and `hi` bound the usable part in the two other axes, in axis order.
    """

    id: str
    label: str
    kind: FaceKind
    axis: int
    sign: int
    at_in: float
    plane: tuple[float, float, float]
    lo: tuple[float, float]
    hi: tuple[float, float]
    keep_outs: tuple[KeepOut, ...] = ()
    space: str = "outdoors"
    side: WallSide | None = None
    owner: str = "kitchen"  # the space whose wall or roof it is
    edges: tuple[RoofEdge, ...] = ()  # of a roof: low and high along x, then along y
    ends: tuple[WallEnd, ...] = ()  # of a wall: low, high

    def seen_from(self, point: Vec3) -> tuple[KeepOut, ...]:
        """Give the keep-outs as they count for a cap whose opening has its centre at a point.

        What a roof overlooks stands off by the height between, which a slope makes another one at every place.
        """
        return tuple(
            replace(k, away_in=max(point[2] - k.heights_in[1], k.heights_in[0] - point[2], 0.0)) if k.heights_in else k
            for k in self.keep_outs
        )


@dataclass(frozen=True, slots=True)
class Frame:
    """A framed scene: all solids, zones and exit faces, and the bounds of the space worth searching."""

    solids: tuple[Solid, ...]
    zones: tuple[Zone, ...]
    faces: tuple[ExitFace, ...]
    bounds: Box
    _index: dict[str, Solid] = field(init=False, default_factory=dict, compare=False, repr=False)

    def __post_init__(self) -> None:
        """Index the solids; ids are unique."""
        self._index.update((s.id, s) for s in self.solids)
        if len(self._index) != len(self.solids):
            seen: set[str] = set()
            twice = [s.id for s in self.solids if s.id in seen or seen.add(s.id)]  # type: ignore[func-returns-value]
            raise ValueError(f"solid ids are not unique: {twice}")

    def solid(self, solid_id: str) -> Solid:
        """Give a solid by id.

        Raises
        ------
        KeyError
            If there is none.
        """
        return self._index[solid_id]
