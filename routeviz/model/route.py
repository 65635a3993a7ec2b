"""A route made of real parts."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

from routeviz.model.path import Centreline
from routeviz.model.scene import SectionSize
from routeviz.model.solids import FaceKind, Vec3

__all__ = ["Allowance", "Near", "Part", "PartKind", "Penetration", "Route", "Termination"]


class PartKind(StrEnum):
    """What a part of a duct is."""

    COLLAR = "collar"
    TRANSITION = "transition"
    STRAIGHT = "straight"
    ELBOW = "elbow"
    FLEX = "flex"
    DAMPER = "damper"
    CAP = "cap"
    OPEN_END = "open end"


@dataclass(frozen=True, slots=True)
class Part:
    """One part, in order from the hood. `start` and `end` are centre-line points [in].

    `length_in` is along the centre line (arc length for elbows). `turn_to` is the unit direction after the part.
    `wide` is the unit direction of the wide side of a rectangular or oval section at its start.
    """

    id: str
    kind: PartKind
    start: Vec3
    end: Vec3
    direction: Vec3
    turn_to: Vec3
    section: SectionSize
    section_out: SectionSize
    length_in: float
    angle_deg: float = 0.0
    radius_in: float = 0.0
    corner: Vec3 | None = None  # where an elbow's straights would meet
    wide: Vec3 | None = None
    material: str = ""
    note: str = ""


@dataclass(frozen=True, slots=True)
class Penetration:
    """A hole that the route needs in one solid or layer.

    `centre` is where the centre line enters it, `through_in` how much of it the duct passes,
    `size_in` the duct's two sides there (for a plumb duct through a sloped roof the long side is along the slope).
    """

    solid: str
    label: str
    material: str
    centre: Vec3
    leave: Vec3
    direction: Vec3
    through_in: float
    shape: str  # "round", "rectangular", "oval" or "ellipse"
    size_in: tuple[float, float]
    hole_in: tuple[float, float]  # with clearance
    from_space: str = ""
    to_space: str = ""


@dataclass(frozen=True, slots=True)
class Termination:
    """Where and how the duct ends."""

    face: str
    kind: FaceKind | None  # None: it does not end at an outer face
    space: str  # "outdoors" is the only good answer
    point: Vec3
    direction: Vec3
    label: str


@dataclass(frozen=True, slots=True)
class Near:
    """A solid near the route: clear gap [in] between duct surface and solid, and where."""

    solid: str
    label: str
    gap_in: float
    toward: Vec3  # unit direction from the duct to the solid
    at: Vec3
    part: str


@dataclass(frozen=True, slots=True)
class Allowance:
    """How far a solid near the route may be off before the duct meets it, along an axis that it is measured by."""

    solid: str
    label: str
    axis: int
    sign: int  # which way it would be off: towards +1 or -1 along the axis
    travel_in: float
    tolerance_in: float  # what the scene says it may be off by
    part: str

    @property
    def holds(self) -> bool:
        """Whether the duct stays clear with the solid as far off as the scene says."""
        return self.travel_in >= self.tolerance_in - 1e-6


@dataclass(frozen=True, slots=True)
class Route:
    """A duct as it would be built."""

    id: str  # "A", "B", ...
    centreline: Centreline | None  # None for a route as built
    parts: tuple[Part, ...]
    section: SectionSize
    length_in: float  # true centre-line length over all parts
    elbows: float  # 90-degree equivalents
    straights_between_in: tuple[float, ...]  # straight duct between consecutive elbows
    boxed_in: float
    penetrations: tuple[Penetration, ...]
    termination: Termination
    near: tuple[Near, ...]
    as_built: bool = False
    words: str = ""  # the way and the exit in words
    allowances: tuple[Allowance, ...] = ()  # of what is near, the least room first
