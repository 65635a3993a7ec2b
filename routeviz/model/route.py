"""A route made of real parts."""

from __future__ import annotations

import math
from dataclasses import dataclass
from enum import StrEnum
from itertools import pairwise

from routeviz.model.path import Centreline
from routeviz.model.scene import SectionSize
from routeviz.model.solids import FaceKind, Vec3
from routeviz.units import elbows_text

__all__ = [
    "Allowance",
    "Near",
    "Part",
    "PartKind",
    "Penetration",
    "Route",
    "Termination",
    "level_stretches",
    "offsets_in",
]


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

    `centre` is where the centre line enters it, `through_in` how much of it the duct passes.

    `size_in` are the duct's two sides as they lie in the layer's face, in the order of the house's axes: level then upright
    in a wall; along the hood wall (x) then out from it (y) in a ceiling, floor or roof, whatever the duct's own wide side and
    whichever way a roof falls. `hole_in` are the same sides with the clearance all round. On a slope the side that runs up
    it is longer than level by its `stretch`: a round duct leaves an ellipse there, long in x under a ridge that runs out
    from the hood wall, long in y under one along it.
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
    stretch: tuple[float, float] = (1.0, 1.0)  # length up the slope over level length, for each side

    @property
    def level_in(self) -> tuple[float, float]:
        """Give the hole's two sides as they lie level, seen along a plumb duct [in]."""
        return self.hole_in[0] / self.stretch[0], self.hole_in[1] / self.stretch[1]

    @property
    def sloped(self) -> bool:
        """Whether the duct passes it askew, through a slope."""
        return max(self.stretch) > 1.0

    def lined_in(self, more_in: float) -> tuple[float, float]:
        """Give the hole for a lining so much larger than the duct [in], never less than the duct's clearance."""
        first, second = (max(hole, duct + more_in) for hole, duct in zip(self.hole_in, self.size_in, strict=True))
        return first, second


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

    @property
    def turns(self) -> str:
        """Say by how many elbows and offsets it turns: an offset counts as one elbow, and two are bought for it.

        "one elbow", "one offset of two 30° elbows", "one elbow and two offsets of two 45° elbows each".
        """
        pairs = offsets_in(self.parts)
        if not pairs:
            return elbows_text(self.elbows)
        paired = {part.id for pair in pairs for part in pair}
        plain = sum(p.angle_deg for p in self.parts if p.kind is PartKind.ELBOW and p.id not in paired) / 90
        angles = " or ".join(f"{a:g}°" for a in sorted({first.angle_deg for first, _ in pairs}))
        said = f"one offset of two {angles} elbows"
        if len(pairs) > 1:
            said = f"{elbows_text(len(pairs)).split()[0]} offsets of two {angles} elbows each"
        return f"{elbows_text(plain)} and {said}" if plain else said


_SAME_WAY = 1e-6  # directions that differ by less are one
_LEVEL = 0.01  # rise over length of what counts as level
_RIGID = (PartKind.STRAIGHT, PartKind.ELBOW, PartKind.TRANSITION)


def level_stretches(parts: tuple[Part, ...]) -> tuple[tuple[Part, ...], ...]:
    """Give the stretches of rigid duct that run level, elbows that turn level between their straights included."""
    found: list[list[Part]] = []
    whole = False  # the stretch goes on
    for part in parts:
        if part.length_in == 0.0:
            continue
        level = part.kind in _RIGID and max(abs(part.direction[2]), abs(part.turn_to[2])) < _LEVEL
        if level and whole:
            found[-1].append(part)
        elif level:
            found.append([part])
        whole = level
    return tuple(tuple(stretch) for stretch in found)


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
