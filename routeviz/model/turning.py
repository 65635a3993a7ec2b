"""The six ways that a fitting may be told to turn, and where a duct points after a turn."""

from __future__ import annotations

import math

Vec3 = tuple[float, float, float]  # as in `model.solids`, which rests on the scene

__all__ = ["LEAVES", "WAYS", "may_turn", "turned"]

WAYS: dict[str, Vec3] = {
    "up": (0.0, 0.0, 1.0),
    "down": (0.0, 0.0, -1.0),
    "left": (-1.0, 0.0, 0.0),
    "right": (1.0, 0.0, 0.0),
    "back": (0.0, 1.0, 0.0),
    "front": (0.0, -1.0, 0.0),
}
LEAVES = {"top": "up", "rear": "back"}  # which way a duct begins, by the outlet's place
_SIDEWAYS = 1e-9  # less than this is no direction to turn to


def _across(direction: Vec3, toward: Vec3) -> Vec3 | None:
    """Give the unit direction square to `direction` in the plane of both; None where the two lie on one line."""
    side = sum(d * t for d, t in zip(direction, toward, strict=True))
    x, y, z = (t - side * d for d, t in zip(direction, toward, strict=True))
    size = math.hypot(x, y, z)
    return None if size < _SIDEWAYS else (x / size, y / size, z / size)


def may_turn(direction: Vec3, toward: Vec3) -> bool:
    """Whether a duct that points in `direction` can turn to `toward`: straight on and straight back are no turns."""
    return _across(direction, toward) is not None


def turned(direction: Vec3, toward: Vec3, angle_deg: float) -> Vec3:
    """Give the unit direction after a turn of `angle_deg` from `direction` to the side of `toward`.

    Raises
    ------
    ValueError
        If both lie on one line, so that there is no side to turn to.

    Examples
    --------
    >>> turned((0.0, 0.0, 1.0), (1.0, 0.0, 0.0), 90.0)
    (1.0, 0.0, 0.0)
    """
    across = _across(direction, toward)
    if across is None:
        raise ValueError("a duct cannot turn to where it already points, nor straight back")
    turn = math.radians(angle_deg)
    after = [d * math.cos(turn) + a * math.sin(turn) for d, a in zip(direction, across, strict=True)]
    x, y, z = (round(v, 12) + 0.0 for v in after)
    size = math.hypot(x, y, z)
    return x / size, y / size, z / size
