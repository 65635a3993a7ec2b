"""Solids to barriers: what a run may not overlap, and along which axes it may cross a sheet or a member squarely."""

from __future__ import annotations

import math
from typing import cast

import numpy as np
from shapely.geometry import Polygon

from routeviz.model.freespace import Barrier, BarrierKind, Region, Ticks
from routeviz.model.scene import WallSide
from routeviz.model.solids import Box, Crossing, Cylinder, Prism, Shape, Solid, SolidKind, Vec3
from routeviz.units import TICKS_PER_IN

__all__ = ["barrier", "down", "prism_region", "region", "up"]

_SHEETS = {SolidKind.BOARD, SolidKind.SHEATHING, SolidKind.CLADDING, SolidKind.MASONRY, SolidKind.FURRING}
_WALL_NORMAL = {WallSide.HOOD: 1, WallSide.FRONT: 1, WallSide.LEFT: 0, WallSide.RIGHT: 0}
_MITRE = 4.0  # how far a mitred corner may stand out, as a multiple of the growth


def down(length_in: float) -> int:
    """Give a length in whole ticks, rounded down; a stray 1e-6 tick of floating-point noise is forgiven."""
    return math.floor(length_in * TICKS_PER_IN + 1e-6)


def up(length_in: float) -> int:
    """Give a length in whole ticks, rounded up; a stray 1e-6 tick of floating-point noise is forgiven."""
    return math.ceil(length_in * TICKS_PER_IN - 1e-6)


def _box_region(lo: Vec3, hi: Vec3, grow_in: float) -> Region:
    return Region(
        (down(lo[0] - grow_in), down(lo[1] - grow_in), down(lo[2] - grow_in)),
        (up(hi[0] + grow_in), up(hi[1] + grow_in), up(hi[2] + grow_in)),
    )


def prism_region(axis: int, start: int, end: int, outline: Polygon) -> Region:
    """Give the convex hull of an outline [ticks] swept along `axis` as a region."""
    hull = cast(Polygon, outline.convex_hull)
    points = [(round(u), round(v)) for u, v in list(hull.exterior.coords)[:-1]]
    low, high = np.min(points, axis=0), np.max(points, axis=0)
    lo, hi = [0, 0, 0], [0, 0, 0]
    lo[axis], hi[axis] = start, end
    for other, a, b in zip([t for t in range(3) if t != axis], low, high, strict=True):
        lo[other], hi[other] = int(a), int(b)
    box = (
        len(points) == 4 and {p[0] for p in points} == {low[0], high[0]} and {p[1] for p in points} == {low[1], high[1]}
    )
    corner: Ticks = (lo[0], lo[1], lo[2])
    far: Ticks = (hi[0], hi[1], hi[2])
    return Region(corner, far) if box else Region(corner, far, axis, tuple(points))


def region(shape: Shape, grow_in: float = 0.0) -> Region:
    """Give a shape, grown on all sides, as a region: outlines become convex, round bars become their boxes.

    Both steps only ever enlarge it, so that the search is never optimistic.
    """
    if isinstance(shape, Box):
        return _box_region(shape.lo, shape.hi, grow_in)
    others = [t for t in range(3) if t != shape.axis]
    if isinstance(shape, Cylinder):
        lo, hi = [0.0, 0.0, 0.0], [0.0, 0.0, 0.0]
        lo[shape.axis], hi[shape.axis] = shape.start, shape.end
        for other, centre in zip(others, shape.centre, strict=True):
            lo[other], hi[other] = centre - shape.radius, centre + shape.radius
        return _box_region((lo[0], lo[1], lo[2]), (hi[0], hi[1], hi[2]), grow_in)
    outline = Polygon([(u * TICKS_PER_IN, v * TICKS_PER_IN) for u, v in shape.outline])
    hull = cast(Polygon, outline.convex_hull)
    if grow_in > 0:
        hull = hull.buffer(grow_in * TICKS_PER_IN + 1, join_style="mitre", mitre_limit=_MITRE)
    return prism_region(shape.axis, down(shape.start - grow_in), up(shape.end + grow_in), hull)


def _through(solid: Solid) -> int:
    """Give the axis along which a sheet or member is crossed squarely: the one through its thickness."""
    shape = solid.shape
    if solid.kind in _SHEETS and solid.side is not None:
        return _WALL_NORMAL[solid.side]
    if isinstance(shape, Prism):
        sides = cast(Polygon, Polygon(shape.outline).minimum_rotated_rectangle)
        corners = list(sides.exterior.coords)
        thin = min(math.dist(corners[0], corners[1]), math.dist(corners[1], corners[2]))
        return shape.axis if shape.end - shape.start < thin else 2
    if isinstance(shape, Cylinder):
        return shape.axis
    sizes = [b - a for a, b in zip(shape.lo, shape.hi, strict=True)]
    return min(range(3), key=lambda axis: (sizes[axis], -axis))


def barrier(solid: Solid, clearance_in: float) -> Barrier | None:
    """Give what a solid blocks, or None when it is no obstacle.

    Solids that are never crossed are grown by the larger of the duct's and their own clearance. Sheets and members
    that may be crossed stop runs only along their length and width; in a fire-rated wall they stop all.
    """
    if solid.crossing is Crossing.GHOST:
        return None
    if solid.rated or solid.crossing is Crossing.NEVER:
        grow = max(clearance_in, solid.clearance_in)
        lies = solid.member.axis if solid.member is not None and not solid.rated else None
        across = (lies not in (None, 0), lies not in (None, 1), lies not in (None, 2))
        stops = (True, True, True)
        return Barrier(solid.id, solid.label, BarrierKind.SOLID, region(solid.shape, grow), stops, across, up(grow))
    through = _through(solid)
    runs = (through != 0, through != 1, through != 2)
    kind = BarrierKind.SHEET if solid.crossing is Crossing.PASS else BarrierKind.MEMBER
    return Barrier(solid.id, solid.label, kind, region(solid.shape), runs)
