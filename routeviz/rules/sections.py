"""What rules ask of a run of parts: areas, sides and words of sections, low points, first and last straights."""

from __future__ import annotations

import math
from collections.abc import Sequence

from routeviz.geometry.convex import cross, dot, plus
from routeviz.model.route import Part, PartKind
from routeviz.model.scene import SectionShape, SectionSize
from routeviz.model.solids import Vec3
from routeviz.units import length_text

__all__ = [
    "area_in2",
    "equal_round_in",
    "half_along",
    "half_sizes",
    "low_points",
    "run_after_last_elbow",
    "run_before_first_elbow",
    "section_words",
]

_LEVEL_IN = 0.5  # a fall of less is not a low point
_LAID = (PartKind.STRAIGHT, PartKind.FLEX, PartKind.ELBOW, PartKind.TRANSITION)


def area_in2(section: SectionSize) -> float:
    """Give the area of a section [in2]; an oval has half-circles at its narrow ends.

    Examples
    --------
    >>> from routeviz.model.scene import SectionShape
    >>> area_in2(SectionSize(SectionShape.RECT, 10.0, 3.25))
    32.5
    """
    wide, narrow = section.width_in, section.height_in
    if section.shape is SectionShape.ROUND:
        return math.pi * wide * wide / 4
    if section.shape is SectionShape.OVAL:
        return (wide - narrow) * narrow + math.pi * narrow * narrow / 4
    return wide * narrow


def equal_round_in(section: SectionSize) -> float:
    """Give the diameter of the round duct with the same area [in].

    Examples
    --------
    >>> from routeviz.model.scene import SectionShape
    >>> round(equal_round_in(SectionSize(SectionShape.RECT, 10.0, 3.25)), 3)
    6.433
    """
    return math.sqrt(4 * area_in2(section) / math.pi)


def half_along(part: Part, toward: Vec3, *, leaving: bool = False) -> float:
    """Give how far a part's section reaches from its centre line along a unit direction [in].

    The section is taken where the duct enters the part, or where it leaves it; an elbow turns the wide side with
    the duct. The wide side of a flat section that nobody told lies level: along x, or along y of a run along x.

    Examples
    --------
    >>> from routeviz.model.scene import SectionShape
    >>> size, up, wide = SectionSize(SectionShape.RECT, 14.0, 3.25), (0.0, 0.0, 1.0), (1.0, 0.0, 0.0)
    >>> riser = Part("a", PartKind.STRAIGHT, (0.0, 0.0, 0.0), (0.0, 0.0, 9.0), up, up, size, size, 9.0, wide=wide)
    >>> half_along(riser, (1.0, 0.0, 0.0)), half_along(riser, (0.0, 1.0, 0.0)), half_along(riser, up)
    (7.0, 1.625, 0.0)
    """
    direction, section = (part.turn_to, part.section_out) if leaving else (part.direction, part.section)
    wide = part.wide or ((1.0, 0.0, 0.0) if abs(part.direction[0]) < 0.9 else (0.0, 1.0, 0.0))
    if leaving:  # turned as the duct is; square to the run at the start, so that only its share along the turn changes
        both = plus(part.direction, part.turn_to)
        wide = plus(wide, both, -dot(wide, part.turn_to) / max(1e-9, 1.0 + dot(part.direction, part.turn_to)))
    p, q = abs(dot(wide, toward)), abs(dot(cross(direction, wide), toward))
    a, b = section.width_in / 2, section.height_in / 2
    if section.shape is SectionShape.RECT:
        return a * p + b * q
    return b * math.hypot(p, q) + (a - b) * p


def half_sizes(part: Part, *, leaving: bool = False) -> Vec3:
    """Give how far a part's section reaches from its centre line along x, y and z [in], as `half_along` does."""
    x, y, z = (half_along(part, axis, leaving=leaving) for axis in ((1.0, 0.0, 0.0), (0.0, 1.0, 0.0), (0.0, 0.0, 1.0)))
    return (x, y, z)


def section_words(section: SectionSize, metric: bool) -> str:
    """Write a section for a person: ``8 in round``, ``3 1/4 in x 10 in``."""
    wide = length_text(section.width_in, metric=metric)
    if section.is_round:
        return f"{wide} round"
    return f"{length_text(section.height_in, metric=metric)} x {wide}"


def low_points(parts: Sequence[Part]) -> tuple[Vec3, ...]:
    """Give the lowest place of every stretch where the duct goes down and later up again."""
    points = [p.start for p in parts if p.kind in _LAID]
    last = [p.end for p in parts if p.kind in _LAID]
    points += last[-1:]
    found: list[Vec3] = []
    if not points:
        return ()
    high, low = points[0][2], points[0]
    for point in points[1:]:
        if point[2] < low[2]:
            low = point
        elif point[2] > low[2] + _LEVEL_IN and high > low[2] + _LEVEL_IN:
            found.append(low)
            high, low = point[2], point
        if point[2] > high:
            high = point[2]
        if point[2] >= high:
            low = point
    return tuple(found)


def run_before_first_elbow(parts: Sequence[Part]) -> tuple[float, Part] | None:
    """Give the duct between the hood and the first elbow [in], and that elbow; None without elbows."""
    run = 0.0
    for part in parts:
        if part.kind is PartKind.ELBOW:
            return run, part
        if part.kind is not PartKind.TRANSITION:
            run += part.length_in
    return None


def run_after_last_elbow(parts: Sequence[Part]) -> tuple[float, Part] | None:
    """Give the duct between the last elbow and the cap [in], and that elbow; None without elbows."""
    return run_before_first_elbow(tuple(reversed(parts)))
