"""A route made of real parts."""

from __future__ import annotations

import math
from dataclasses import dataclass
from enum import StrEnum
from itertools import pairwise

from routeviz.model.path import Centreline
from routeviz.model.scene import SectionSize
from routeviz.model.solids import FaceKind, Vec3

__all__ = ["Allowance", "Near", "Part", "PartKind", "Penetration", "Route", "Termination", "offsets_in"]


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
    `size_in` the duct's two sides there: level then upright in a wall, along the hood wall then out from it in a ceiling
    or floor (for a round duct plumb through a sloped roof the second is the long one, along the slope).
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
    stated: str = ""  # what a list of fittings says of its end, where the measures say otherwise


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

    @property
    def capped(self) -> bool:
        """Whether a cap closes it; a duct that was found as built may just end."""
        return any(part.kind is PartKind.CAP for part in self.parts)


_SAME_WAY = 1e-6  # directions that differ by less are one


def offsets_in(parts: tuple[Part, ...]) -> tuple[tuple[Part, Part], ...]:
    """Give the pairs of elbows that make an offset: equal turns under 90 degrees, the second taking back the first.

    Nothing but straight duct of one section lies between the two. An offset counts as one fitting.
    """
    found: list[tuple[Part, Part]] = []
    bends = [i for i, part in enumerate(parts) if part.kind is PartKind.ELBOW]
    taken = -1  # the last elbow that belongs to an offset already
    for i, j in pairwise(bends):
        a, b = parts[i], parts[j]
        alike = a.angle_deg < 90.0 and math.isclose(a.angle_deg, b.angle_deg, abs_tol=1e-6)
        plain = all(p.kind is PartKind.STRAIGHT for p in parts[i + 1 : j])
        if i > taken and alike and plain and math.dist(b.turn_to, a.direction) < _SAME_WAY:
            found.append((a, b))
            taken = j
    return tuple(found)
