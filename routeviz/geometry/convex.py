"""Distance between two convex sets given by their support points (Gilbert, Johnson and Keerthi).

The nearest point to the origin of the difference of both sets is approached by simplices; the sub-distance is solved
by orthogonal projection onto every face of the simplex, which is slow but keeps its accuracy on flat simplices. Each
step gives a lower and an upper bound of the distance; the search ends when they agree.
"""

from __future__ import annotations

import math
from collections.abc import Callable
from itertools import combinations

from routeviz.model.solids import Vec3

__all__ = ["Support", "closest"]

Support = Callable[[Vec3], Vec3]
_AGREE = 1e-11  # relative to the size of the sets
_STEPS = 200


def dot(a: Vec3, b: Vec3) -> float:
    """Give the scalar product."""
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2]


def minus(a: Vec3, b: Vec3) -> Vec3:
    """Give a - b."""
    return (a[0] - b[0], a[1] - b[1], a[2] - b[2])


def plus(a: Vec3, b: Vec3, share: float = 1.0) -> Vec3:
    """Give a + share * b."""
    return (a[0] + share * b[0], a[1] + share * b[1], a[2] + share * b[2])


def cross(a: Vec3, b: Vec3) -> Vec3:
    """Give the vector product."""
    return (a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0])


def _weights(points: tuple[Vec3, ...]) -> tuple[float, ...] | None:
    """Give the weights of the point nearest to the origin on the plane, line or point through `points`."""
    if len(points) == 1:
        return (1.0,)
    base = points[0]
    edges = [minus(p, base) for p in points[1:]]
    if len(edges) == 1:
        size = dot(edges[0], edges[0])
        if size == 0.0:
            return None
        t = -dot(base, edges[0]) / size
        return (1.0 - t, t)
    if len(edges) == 2:
        return _triangle_weights(base, edges[0], edges[1])
    volume = dot(cross(edges[0], edges[1]), edges[2])
    if volume == 0.0:
        return None
    s = -dot(cross(base, edges[1]), edges[2]) / volume
    t = -dot(cross(edges[0], base), edges[2]) / volume
    u = -dot(cross(edges[0], edges[1]), base) / volume
    return (1.0 - s - t - u, s, t, u)


def _triangle_weights(base: Vec3, a: Vec3, b: Vec3) -> tuple[float, ...] | None:
    normal = cross(a, b)
    size = dot(normal, normal)
    if size == 0.0:
        return None
    s = -dot(cross(base, b), normal) / size
    t = -dot(cross(a, base), normal) / size
    return (1.0 - s - t, s, t)


def _mix(points: tuple[Vec3, ...], weights: tuple[float, ...]) -> Vec3:
    x = sum(w * p[0] for w, p in zip(weights, points, strict=True))
    y = sum(w * p[1] for w, p in zip(weights, points, strict=True))
    z = sum(w * p[2] for w, p in zip(weights, points, strict=True))
    return (x, y, z)


def _nearest_face(points: list[Vec3]) -> tuple[tuple[int, ...], tuple[float, ...], Vec3]:
    """Give the face of a simplex whose nearest point to the origin is the nearest of all."""
    best: tuple[float, tuple[int, ...], tuple[float, ...], Vec3] | None = None
    for size in range(1, len(points) + 1):
        for face in combinations(range(len(points)), size):
            chosen = tuple(points[i] for i in face)
            weights = _weights(chosen)
            if weights is None or any(w < 0.0 for w in weights):
                continue
            at = _mix(chosen, weights)
            length = dot(at, at)
            if best is None or length < best[0]:
                best = (length, face, weights, at)
    assert best is not None  # single points always qualify
    return best[1], best[2], best[3]


def closest(first: Support, second: Support, toward: Vec3, size: float) -> tuple[float, Vec3, Vec3]:
    """Give the distance between two convex sets and a nearest point of each.

    Parameters
    ----------
    first, second : callable
        Give the point of the set that is farthest in a direction.
    toward : Vec3
        Any vector, best from the first set to the second.
    size : float
        A length of the order of the sets [in]; the bounds agree to 1e-11 of it.

    Returns
    -------
    distance : float
        0 when the sets meet.
    on_first, on_second : Vec3
        Nearest points; equal up to rounding when the sets meet.
    """
    agree = _AGREE * max(size, 1.0)
    pairs = [_pair(first, second, toward if dot(toward, toward) > 0 else (1.0, 0.0, 0.0))]
    v: Vec3 = minus(pairs[0][0], pairs[0][1])
    weights: tuple[float, ...] = (1.0,)
    lower = 0.0
    for _ in range(_STEPS):
        length = math.sqrt(dot(v, v))
        if length <= agree:
            length = 0.0
            break
        pair = _pair(first, second, (-v[0], -v[1], -v[2]))
        w = minus(*pair)
        lower = max(lower, dot(v, w) / length)
        if length - lower <= agree or pair in pairs:
            break
        trial = [*pairs, pair]
        face, new_weights, at = _nearest_face([minus(a, b) for a, b in trial])
        if dot(at, at) >= dot(v, v):  # no more progress within rounding
            break
        pairs, weights, v = [trial[i] for i in face], new_weights, at
        if len(pairs) == 4:
            length = 0.0
            break
    else:
        length = math.sqrt(dot(v, v))
    on_first = _mix(tuple(a for a, _ in pairs), weights)
    on_second = _mix(tuple(b for _, b in pairs), weights)
    return length, on_first, on_second


def _pair(first: Support, second: Support, direction: Vec3) -> tuple[Vec3, Vec3]:
    return first(direction), second((-direction[0], -direction[1], -direction[2]))
