"""What rules ask of a run of parts: areas, words for sections, low points, first and last straights."""

from __future__ import annotations

import math
from collections.abc import Sequence

from routeviz.model.route import Part, PartKind
from routeviz.model.scene import SectionShape, SectionSize
from routeviz.model.solids import Vec3
from routeviz.units import length_text

__all__ = [
    "area_in2",
    "equal_round_in",
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
