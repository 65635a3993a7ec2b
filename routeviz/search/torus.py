"""The true elbow: a quarter of a ring, set exactly against boxes.

The ring's centre line is an arc of radius R whose centre lies R inside the corner along both of the elbow's axes. In
coordinates with the arc's centre at 0 and the corner at (R, R), the nearest point of a box's rectangle to the arc is
at one of the arc's two ends or inside the quarter, where only the distance from the centre counts. The gap across
the bend's plane adds at a right angle.
"""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
import numpy.typing as npt

from routeviz.model.freespace import Ints, Region
from routeviz.search.masks import Bools, Corners, nearby
from routeviz.search.moves import Body

__all__ = ["arc_axes", "drop_free_corners", "ring_hits"]

Floats = npt.NDArray[np.float64]


def arc_axes(body: Body) -> tuple[tuple[int, int], tuple[int, int]]:
    """Give the two axes of an elbow's plane, each with the sign towards which the elbow leaves its corner."""
    legs = [(axis, 1 if hi > -lo else -1) for axis, (lo, hi) in enumerate(body) if hi != -lo]
    return legs[0], legs[1]


def _interval(points: Ints, region: Region, axis: int, sign: int, radius: int) -> tuple[Floats, Floats]:
    """Give a box's extent along one leg in coordinates with the arc's centre at 0 and the corner at the radius."""
    first = radius - sign * (region.lo[axis] - points[:, axis])
    second = radius - sign * (region.hi[axis] - points[:, axis])
    return np.minimum(first, second).astype(np.float64), np.maximum(first, second).astype(np.float64)


def _outside(at: float, lo: Floats, hi: Floats) -> Floats:
    return np.maximum(np.maximum(lo - at, at - hi), 0.0)


def ring_hits(points: Ints, body: Body, radius: int, half: int, region: Region) -> Bools:
    """Tell at which corners a round elbow comes closer to a box than its own half size.

    Parameters
    ----------
    points : int64 array of shape (n, 3)
        Corners of elbows [ticks].
    body : Body
        The elbow's box; says which way it leaves the corner.
    radius, half : int
        Centre-line radius and half the diameter [ticks].
    region : Region
        A box.
    """
    (u, su), (v, sv) = arc_axes(body)
    w = 3 - u - v
    u_lo, u_hi = _interval(points, region, u, su, radius)
    v_lo, v_hi = _interval(points, region, v, sv, radius)
    flat = np.minimum(
        np.hypot(_outside(radius, u_lo, u_hi), _outside(0.0, v_lo, v_hi)),
        np.hypot(_outside(0.0, u_lo, u_hi), _outside(radius, v_lo, v_hi)),
    )
    inside = (u_hi >= 0) & (v_hi >= 0)
    nearest = np.hypot(np.maximum(u_lo, 0), np.maximum(v_lo, 0))
    farthest = np.hypot(np.maximum(u_hi, 0), np.maximum(v_hi, 0))
    across_ring = np.maximum(np.maximum(nearest - radius, radius - farthest), 0.0)
    flat = np.where(inside, np.minimum(flat, across_ring), flat)
    gap = np.maximum(np.maximum(region.lo[w] - points[:, w], points[:, w] - region.hi[w]), 0)
    return np.hypot(flat, gap) < half


def drop_free_corners(
    bits: Corners, tubes: Corners, coordinates: Sequence[Ints], bodies: Sequence[Body],
    radius: int, half: int, regions: Sequence[Region],
) -> None:  # fmt: skip
    """Clear the bits at corners that only the box round an elbow blocks, not the elbow itself.

    Parameters
    ----------
    bits, tubes : unsigned arrays of the grid's shape
        What the boxes and what the straight halves alone block; `bits` is changed in place.
    regions : sequence of Region
        All that may block; slopes are left as the boxes see them.
    """
    doubt = bits & ~tubes
    for number, body in enumerate(bodies):
        bit = bits.dtype.type(1 << number)
        where = np.nonzero(doubt & bit)
        if not len(where[0]):
            continue
        points = np.stack([c[i] for c, i in zip(coordinates, where, strict=True)], axis=1)
        extent = np.array(body)
        hit = np.zeros(len(points), bool)
        low, high = points + extent[:, 0], points + extent[:, 1]
        bounds = np.stack([points.min(axis=0), points.max(axis=0)], axis=1)
        for region in nearby(list(bounds), [body], regions):
            near = ~hit & ((low < np.array(region.hi)) & (high > np.array(region.lo))).all(axis=1)
            if near.any():
                hit[near] |= True if region.axis >= 0 else ring_hits(points[near], body, radius, half, region)
        free = tuple(i[~hit] for i in where)
        bits[free] &= ~bit
