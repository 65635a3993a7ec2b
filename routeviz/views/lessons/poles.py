"""Where letters and flags stand in a picture: over their places, each with a line to its own, none over another."""

from __future__ import annotations

import math
from collections.abc import Sequence

__all__ = ["stand"]

Spot = tuple[float, float]
_ROWS, _COLUMNS = 14, 8


def _off(point: Spot, a: Spot, b: Spot) -> float:
    """Give how far a point is from a line between two others [px]."""
    dx, dy = b[0] - a[0], b[1] - a[1]
    long = dx * dx + dy * dy
    t = 0.0 if long == 0 else min(1.0, max(0.0, ((point[0] - a[0]) * dx + (point[1] - a[1]) * dy) / long))
    return math.hypot(point[0] - a[0] - t * dx, point[1] - a[1] - t * dy)


def stand(feet: Sequence[Spot], size: tuple[float, float], radius: float) -> list[Spot]:
    """Give for each place the centre of its disc: as near over it as is free.

    Discs keep off each other and off the places, and where there is room also off the lines from other places; where
    nothing is free a disc stands on its place.

    Parameters
    ----------
    feet : sequence of (float, float)
        The places, from the top left [px].
    size : (float, float)
        Width and height of the picture [px].
    radius : float
        Radius of a disc [px].
    """
    step = 2 * radius + 2
    steps = [(col, row) for col in range(-_COLUMNS, _COLUMNS + 1) for row in (*range(1, _ROWS), *range(-_ROWS, 0))]
    steps.sort(key=lambda s: (abs(s[1]) + 1.3 * abs(s[0]) + (3 if s[1] < 0 else 0), s))
    found: list[Spot] = []
    for foot in feet:
        tries = [(foot[0] + col * step, foot[1] - (row + 0.2) * step) for col, row in steps]
        free = [t for t in tries if _free(t, feet, found, size, radius)]
        clear = (t for t in free if not _crosses(t, foot, feet, found, radius))
        found.append(next(clear, free[0] if free else foot))
    return found


def _free(spot: Spot, feet: Sequence[Spot], found: Sequence[Spot], size: tuple[float, float], radius: float) -> bool:
    x, y = spot
    inside = radius < x < size[0] - radius and radius < y < size[1] - radius
    return (
        inside
        and all(math.dist(spot, other) >= 2 * radius for other in found)
        and all(math.dist(spot, foot) >= radius for foot in feet)
    )


def _crosses(spot: Spot, foot: Spot, feet: Sequence[Spot], found: Sequence[Spot], radius: float) -> bool:
    """Whether a disc's line runs over the disc of another place, or the other way round; the same place may share it."""
    others = [(other, its) for other, its in zip(found, feet, strict=False) if math.dist(its, foot) > radius / 2]
    return any(_off(o, foot, spot) < radius + 2 or _off(spot, its, o) < radius + 2 for o, its in others)
