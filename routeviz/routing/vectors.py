"""The few vector operations that fittings need, on plain tuples."""

from __future__ import annotations

import math

from routeviz.model.solids import Vec3

__all__ = ["add", "along", "cross", "distance", "dot", "scale", "sub", "unit"]


def add(a: Vec3, b: Vec3) -> Vec3:
    """Give a + b."""
    return (a[0] + b[0], a[1] + b[1], a[2] + b[2])


def sub(a: Vec3, b: Vec3) -> Vec3:
    """Give a - b."""
    return (a[0] - b[0], a[1] - b[1], a[2] - b[2])


def scale(a: Vec3, k: float) -> Vec3:
    """Give k a."""
    return (a[0] * k, a[1] * k, a[2] * k)


def dot(a: Vec3, b: Vec3) -> float:
    """Give the inner product."""
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2]


def cross(a: Vec3, b: Vec3) -> Vec3:
    """Give the cross product."""
    return (a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0])


def distance(a: Vec3, b: Vec3) -> float:
    """Give the distance between two points."""
    return math.dist(a, b)


def unit(a: Vec3) -> Vec3:
    """Give a in unit length; clean zeros stay exact.

    Raises
    ------
    ValueError
        If `a` has no length.
    """
    size = math.sqrt(dot(a, a))
    if size == 0:
        raise ValueError("a direction needs a length")
    return (a[0] / size + 0.0, a[1] / size + 0.0, a[2] / size + 0.0)


def along(p: Vec3, direction: Vec3, length: float) -> Vec3:
    """Give the point `length` from `p` in `direction`."""
    return add(p, scale(direction, length))
