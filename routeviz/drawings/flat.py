"""From space to flat: cuts through solids, and outlines of ducts seen along an axis.

Flat coordinates are the two other axes in axis order: along x (y, z), along y (x, z), along z (x, y).
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from functools import cache
from itertools import pairwise
from typing import Any

from routeviz.model.route import Part, PartKind
from routeviz.model.scene import SectionSize
from routeviz.model.solids import Box, Cylinder, Prism, Shape, Vec3

__all__ = [
    "Outline",
    "arc_points",
    "clipped",
    "clipped_line",
    "cut",
    "duct_outlines",
    "ends_of",
    "flat",
    "outlines",
    "polylines",
]

Outline = tuple[tuple[float, float], ...]
_STEPS = 12  # pieces of an elbow's arc, and of a quarter of a circle


def flat(point: Sequence[float], axis: int) -> tuple[float, float]:
    """Drop one axis of a point."""
    a, b = ((1, 2), (0, 2), (0, 1))[axis]
    return point[a], point[b]


def ends_of(shape: Shape, axis: int) -> tuple[float, float]:
    """Give how far a shape reaches along an axis [in]."""
    if isinstance(shape, Box):
        return shape.lo[axis], shape.hi[axis]
    if axis == shape.axis:
        return shape.start, shape.end
    k = 0 if axis == ((1, 2), (0, 2), (0, 1))[shape.axis][0] else 1
    if isinstance(shape, Cylinder):
        return shape.centre[k] - shape.radius, shape.centre[k] + shape.radius
    return min(p[k] for p in shape.outline), max(p[k] for p in shape.outline)


def cut(shape: Shape, axis: int, at: float) -> list[Outline]:
    """Give what a plane ``coordinate[axis] = at`` cuts out of a shape [in]; empty when it misses."""
    low, high = ends_of(shape, axis)
    if not low < at < high:
        return []
    if isinstance(shape, Box):
        (u0, v0), (u1, v1) = flat(shape.lo, axis), flat(shape.hi, axis)
        return [((u0, v0), (u1, v0), (u1, v1), (u0, v1))]
    if shape.axis == axis:
        return [shape.outline if isinstance(shape, Prism) else _circle(shape.centre, shape.radius)]
    return _lengthwise(shape, axis, at)


def _lengthwise(shape: Prism | Cylinder, axis: int, at: float) -> list[Outline]:
    """Cut a prism or bar along its length: a rectangle for each stretch inside its outline."""
    others = ((1, 2), (0, 2), (0, 1))[shape.axis]
    k = others.index(axis)
    if isinstance(shape, Cylinder):
        half = math.sqrt(max(0.0, shape.radius**2 - (at - shape.centre[k]) ** 2))
        spans = [(shape.centre[1 - k] - half, shape.centre[1 - k] + half)]
    else:
        hits = []
        for p, q in zip(shape.outline, (*shape.outline[1:], shape.outline[0]), strict=True):
            if (p[k] <= at) != (q[k] <= at):
                hits.append(p[1 - k] + (at - p[k]) / (q[k] - p[k]) * (q[1 - k] - p[1 - k]))
        hits.sort()
        spans = list(zip(hits[::2], hits[1::2], strict=False))
    made: list[Outline] = []
    for low, high in spans:
        corners: list[Vec3] = []
        for along, other in ((shape.start, low), (shape.end, low), (shape.end, high), (shape.start, high)):
            point = [0.0, 0.0, 0.0]
            point[shape.axis], point[others[1 - k]], point[axis] = along, other, at
            corners.append((point[0], point[1], point[2]))
        made.append(tuple(flat(c, axis) for c in corners))
    return made


@cache
def _unit_circle() -> Outline:
    steps = 4 * _STEPS
    return tuple((math.cos(2 * math.pi * n / steps), math.sin(2 * math.pi * n / steps)) for n in range(steps))


def _circle(centre: tuple[float, float], radius: float) -> Outline:
    return tuple((centre[0] + radius * u, centre[1] + radius * v) for u, v in _unit_circle())


def clipped(outline: Outline, region: tuple[float, float, float, float]) -> list[Outline]:
    """Give what of a polygon lies in a rectangle (left, bottom, right, top) [in]."""
    if all(region[0] <= u <= region[2] and region[1] <= v <= region[3] for u, v in outline):
        return [outline]
    from shapely import box, make_valid
    from shapely.geometry import Polygon

    shape = Polygon(outline)
    inside = (shape if shape.is_valid else make_valid(shape)).intersection(box(*region))
    return outlines(inside)


def clipped_line(
    a: tuple[float, float], b: tuple[float, float], region: tuple[float, float, float, float]
) -> tuple[tuple[float, float], tuple[float, float]] | None:
    """Give what of a straight line lies in a rectangle (left, bottom, right, top) [in]; None when it misses."""
    low, high = 0.0, 1.0
    for k in (0, 1):
        step = b[k] - a[k]
        if step == 0.0:
            if not region[k] <= a[k] <= region[k + 2]:
                return None
            continue
        ends = sorted(((region[k] - a[k]) / step, (region[k + 2] - a[k]) / step))
        low, high = max(low, ends[0]), min(high, ends[1])
    if low >= high:
        return None
    first, last = ((a[0] + t * (b[0] - a[0]), a[1] + t * (b[1] - a[1])) for t in (low, high))
    return first, last


def outlines(shape: Any) -> list[Outline]:
    """Give the outer rings of whatever shapely made."""
    if shape.is_empty:
        return []
    if shape.geom_type == "Polygon":
        return [tuple((float(u), float(v)) for u, v in shape.exterior.coords[:-1])] if shape.area > 1e-9 else []
    if hasattr(shape, "geoms"):
        return [ring for part in shape.geoms for ring in outlines(part)]
    return []


def polylines(shape: Any) -> list[Outline]:
    """Give the open lines of whatever shapely made, pieces that touch joined."""
    from shapely import line_merge

    if shape.is_empty:
        return []
    merged = line_merge(shape) if shape.geom_type == "MultiLineString" else shape
    parts = merged.geoms if hasattr(merged, "geoms") else [merged]
    lines = (p for p in parts if p.geom_type in ("LineString", "LinearRing") and p.length > 1e-6)
    return [tuple((float(u), float(v)) for u, v in line.coords) for line in lines]


def arc_points(part: Part, steps: int = _STEPS) -> list[Vec3]:
    """Give points along a part's centre line: both ends of a straight, a fine polyline of an elbow."""
    if part.kind is not PartKind.ELBOW or part.radius_in <= 0 or part.angle_deg <= 0:
        return [part.start, part.end]
    turn = math.radians(part.angle_deg)
    d, e = part.direction, part.turn_to
    inward = [(b - a * math.cos(turn)) / math.sin(turn) for a, b in zip(d, e, strict=True)]
    centre = [s + part.radius_in * n for s, n in zip(part.start, inward, strict=True)]
    found: list[Vec3] = []
    for k in range(steps + 1):
        t = turn * k / steps
        p = [
            c - part.radius_in * math.cos(t) * n + part.radius_in * math.sin(t) * a
            for c, n, a in zip(centre, inward, d, strict=True)
        ]
        found.append((p[0], p[1], p[2]))
    return found


def duct_outlines(part: Part, axis: int) -> list[Outline]:
    """Give the outline of a part seen along an axis [in].

    The outline of a round tube is its flattened centre line, fattened by its radius, with its end circles.
    """
    from shapely import unary_union
    from shapely.geometry import LineString, Polygon

    points = arc_points(part)
    seen = [flat(p, axis) for p in points]
    pieces: list[Any] = []
    if part.kind is PartKind.TRANSITION:
        ends = _section(part.start, part.direction, part.section, part.wide, axis) + _section(
            part.end, part.turn_to, part.section_out, part.wide, axis
        )
        return outlines(_hull(ends))
    if part.kind is PartKind.ELBOW and len(points) > 2:
        rims = _rims(part, points, axis)
        return outlines(unary_union([_hull([*a, *b]) for a, b in pairwise(rims)]))
    if math.dist(seen[0], seen[-1]) > 1e-6:
        half = _half_side(part, axis)
        pieces.append(LineString(seen).buffer(half, cap_style="flat", join_style="round", quad_segs=_STEPS))
    for place, way in ((part.start, part.direction), (part.end, part.turn_to)):
        rim = _section(place, way, part.section, _wide_at(part, way), axis)
        disc = _hull(rim)
        if disc.geom_type == "Polygon" and disc.area > 1e-6:
            pieces.append(disc)
    valid = [p for p in pieces if isinstance(p, Polygon) or p.geom_type.endswith("Polygon")]
    return outlines(unary_union(valid)) if valid else []


def _rims(part: Part, points: Sequence[Vec3], axis: int) -> list[list[tuple[float, float]]]:
    """Give an elbow's flattened sections along its arc, each square to the duct there: its ends lie as they are cut."""
    turn = math.radians(part.angle_deg)
    inward = [(b - a * math.cos(turn)) / math.sin(turn) for a, b in zip(part.direction, part.turn_to, strict=True)]
    found = []
    for k, at in enumerate(points):
        t = turn * k / (len(points) - 1)
        way = [math.cos(t) * a + math.sin(t) * n for a, n in zip(part.direction, inward, strict=True)]
        level = [math.cos(t) * n - math.sin(t) * a for a, n in zip(part.direction, inward, strict=True)]
        wide = part.wide
        if wide is not None and abs(sum(a * b for a, b in zip(wide, inward, strict=True))) > 0.5:
            wide = (level[0], level[1], level[2])  # the wide side turns with the elbow unless it is its axis
        found.append(_section(at, (way[0], way[1], way[2]), part.section, wide, axis))
    return found


def span_at(outline: Outline, k: int, at: float) -> tuple[float, float] | None:
    """Give where the line ``coordinate[k] = at`` lies inside an outline, along the other axis [in]; None when it misses."""
    hits = []
    for p, q in zip(outline, (*outline[1:], outline[0]), strict=True):
        if (p[k] <= at) != (q[k] <= at):
            hits.append(p[1 - k] + (at - p[k]) / (q[k] - p[k]) * (q[1 - k] - p[1 - k]))
    return (min(hits), max(hits)) if len(hits) > 1 else None


def _hull(points: Sequence[tuple[float, float]]) -> Any:
    from shapely.geometry import MultiPoint

    return MultiPoint(points).convex_hull


def _wide_at(part: Part, way: Vec3) -> Vec3 | None:
    """Give the wide side's direction where the duct runs in `way`: it turns with an elbow unless it is its axis."""
    wide = part.wide
    if wide is None or part.kind is not PartKind.ELBOW or way == part.direction:
        return wide
    share = sum(a * b for a, b in zip(wide, part.direction, strict=True))
    if abs(sum(a * b for a, b in zip(wide, part.turn_to, strict=True))) < 1e-9 and abs(share) < 1e-9:
        return wide
    turn = math.radians(part.angle_deg)
    inward = [(b - a * math.cos(turn)) / math.sin(turn) for a, b in zip(part.direction, part.turn_to, strict=True)]
    v = [math.cos(turn) * n - math.sin(turn) * a for n, a in zip(inward, part.direction, strict=True)]
    return v[0], v[1], v[2]


def _across(way: Vec3, wide: Vec3 | None) -> tuple[Vec3, Vec3]:
    """Give two unit directions across a run: along the wide side, and square to it."""
    if wide is None:
        k = min(range(3), key=lambda n: abs(way[n]))
        seed = [1.0 if n == k else 0.0 for n in range(3)]
        share = sum(a * b for a, b in zip(seed, way, strict=True))
        raw = [s - share * w for s, w in zip(seed, way, strict=True)]
        size = math.hypot(*raw)
        wide = (raw[0] / size, raw[1] / size, raw[2] / size)
    narrow = (
        way[1] * wide[2] - way[2] * wide[1],
        way[2] * wide[0] - way[0] * wide[2],
        way[0] * wide[1] - way[1] * wide[0],
    )
    return wide, narrow


def _section(at: Vec3, way: Vec3, size: SectionSize, wide: Vec3 | None, axis: int) -> list[tuple[float, float]]:
    """Give the flattened rim of a section."""
    a, b = _across(way, wide)
    if size.is_round:
        rim: Sequence[tuple[float, float]] = [(u * size.width_in / 2, v * size.width_in / 2) for u, v in _unit_circle()]
    else:
        w, h = size.width_in / 2, size.height_in / 2
        rim = ((-w, -h), (w, -h), (w, h), (-w, h))
    return [flat([p + u * m + v * n for p, m, n in zip(at, a, b, strict=True)], axis) for u, v in rim]


def _half_side(part: Part, axis: int) -> float:
    """Half of the side that shows across the run in a view along `axis` [in]."""
    if part.section.is_round:
        return part.section.width_in / 2
    seen = flat(part.direction, axis)
    long = math.hypot(*seen)
    if long < 1e-9:
        seen, long = flat(part.turn_to, axis), math.hypot(*flat(part.turn_to, axis))
    across = (-seen[1] / long, seen[0] / long)
    rim = _section((0.0, 0.0, 0.0), part.direction, part.section, part.wide, axis)
    return max(abs(u * across[0] + v * across[1]) for u, v in rim)
