"""What a route meets: the holes it needs, and the members near it with their clear gaps."""

from __future__ import annotations

import math
from collections.abc import Iterator
from itertools import pairwise

from routeviz.geometry import arc_distance, bounds, clip, contains, segment_distance
from routeviz.model.route import Near, Part, PartKind, Penetration
from routeviz.model.scene import SectionShape, SectionSize
from routeviz.model.solids import Box, Crossing, Frame, Prism, Solid, Vec3
from routeviz.routing.vectors import along, cross, scale, sub, unit

__all__ = ["NEAR_IN", "near", "penetrations"]

NEAR_IN = 12.0  # members farther than this from the duct's skin are not near
_LAID = (PartKind.STRAIGHT, PartKind.FLEX, PartKind.ELBOW, PartKind.TRANSITION)


def _arc(part: Part, steps: int = 24) -> list[Vec3]:
    """Give points on an elbow's centre-line arc."""
    turn = math.radians(part.angle_deg)
    inward = unit(tuple(a - d * math.cos(turn) for a, d in zip(part.turn_to, part.direction, strict=True)))  # type: ignore[arg-type]
    points = []
    for i in range(steps + 1):
        w = turn * i / steps
        p = along(part.start, part.direction, part.radius_in * math.sin(w))
        points.append(along(p, inward, part.radius_in * (1 - math.cos(w))))
    return points


def _lines(part: Part) -> list[tuple[Vec3, Vec3]]:
    points = _arc(part) if part.kind is PartKind.ELBOW else [part.start, part.end]
    return list(pairwise(points))


def penetrations(parts: tuple[Part, ...], frame: Frame, clearance_in: float) -> tuple[Penetration, ...]:
    """Give every hole that the route needs, in order from the hood.

    A hole is where the centre line passes through a solid that may be crossed. Solids that may never be cut
    are listed too when the duct runs through them (a route as built may do that).
    """
    found: list[Penetration] = []
    for part in parts:
        if part.kind not in _LAID:
            continue
        hits: list[tuple[float, Penetration]] = []
        lines = _lines(part)
        for solid in frame.solids:
            if solid.crossing is Crossing.GHOST or not _may_meet(solid, part):
                continue
            inside = [(i, t) for i, (a, b) in enumerate(lines) if (t := clip(solid.shape, a, b))]
            if not inside:
                continue
            (i, t), (j, s) = inside[0], inside[-1]
            enter = _at(lines[i], t[0])
            leave = _at(lines[j], s[1])
            hits.append((i + t[0], _hole(solid, part, enter, leave, frame, clearance_in)))
        found += [hole for _, hole in sorted(hits, key=lambda h: h[0])]
    return tuple(found)


def _may_meet(solid: Solid, part: Part) -> bool:
    box = bounds(solid.shape)
    reach = part.radius_in if part.kind is PartKind.ELBOW else 0.0
    return all(
        min(a, b) - reach <= h and max(a, b) + reach >= lo
        for a, b, lo, h in zip(part.start, part.end, box.lo, box.hi, strict=True)
    )


def _at(line: tuple[Vec3, Vec3], t: float) -> Vec3:
    a, b = line
    return (a[0] + t * (b[0] - a[0]), a[1] + t * (b[1] - a[1]), a[2] + t * (b[2] - a[2]))


def _hole(solid: Solid, part: Part, enter: Vec3, leave: Vec3, frame: Frame, clearance_in: float) -> Penetration:
    section = part.section
    through = math.dist(enter, leave)
    shape, size = _cut(solid, part, section)
    direction = part.direction if through == 0 else unit(sub(leave, enter))
    return Penetration(
        solid=solid.id,
        label=solid.label,
        material=solid.material or str(solid.kind),
        centre=enter,
        leave=leave,
        direction=direction,
        through_in=through,
        shape=shape,
        size_in=size,
        hole_in=(size[0] + 2 * clearance_in, size[1] + 2 * clearance_in),
        from_space=_space(frame, along(enter, direction, -0.5)),
        to_space=_space(frame, along(leave, direction, 0.5)),
    )


def _cut(solid: Solid, part: Part, section: SectionSize) -> tuple[str, tuple[float, float]]:
    """Shape and sides of the cut; a plumb round duct through a slope leaves an ellipse, long side along the slope."""
    slope = _slope(solid)
    if section.shape is SectionShape.ROUND:
        if slope and abs(part.direction[2]) > 0.99:
            return "ellipse", (section.width_in, section.width_in * math.sqrt(1 + slope * slope))
        return "round", (section.width_in, section.width_in)
    return str(section.shape), (section.width_in, section.height_in)


def _slope(solid: Solid) -> float:
    """Rise over run of a sloped board, 0 for level or plumb ones."""
    if not isinstance(solid.shape, Prism) or solid.shape.axis == 2:
        return 0.0
    outline = solid.shape.outline
    longest = max(zip(outline, (*outline[1:], outline[0]), strict=True), key=lambda e: math.dist(*e))
    (ax, ay), (bx, by) = longest
    return abs((by - ay) / (bx - ax)) if abs(bx - ax) > 1e-9 else 0.0


def _space(frame: Frame, point: Vec3) -> str:
    for zone in reversed(frame.zones):
        if contains(zone.shape, point):
            return zone.bay or zone.label
    return "outdoors"


def near(parts: tuple[Part, ...], frame: Frame) -> tuple[Near, ...]:
    """Give the solids that may not be cut within `NEAR_IN` of the duct's skin, nearest first."""
    best: dict[str, Near] = {}
    for part in parts:
        if part.kind not in _LAID:
            continue
        for solid in _close(part, frame):
            gap, p, q = _gap(part, solid)
            if gap <= NEAR_IN and (solid.id not in best or gap < best[solid.id].gap_in):
                toward = unit(sub(q, p)) if math.dist(p, q) > 1e-9 else (0.0, 0.0, 1.0)
                best[solid.id] = Near(solid.id, solid.label, gap, toward, q, part.id)
    return tuple(sorted(best.values(), key=lambda n: (round(n.gap_in, 6), n.solid)))


def _close(part: Part, frame: Frame) -> Iterator[Solid]:
    reach = NEAR_IN + max(part.section.width_in, part.section_out.width_in) + (part.radius_in if part.radius_in else 0)
    for solid in frame.solids:
        if solid.crossing is not Crossing.NEVER:
            continue
        box = bounds(solid.shape)
        if all(
            min(a, b) - reach <= h and max(a, b) + reach >= lo
            for a, b, lo, h in zip(part.start, part.end, box.lo, box.hi, strict=True)
        ):
            yield solid


def _gap(part: Part, solid: Solid) -> tuple[float, Vec3, Vec3]:
    """Clear gap from the duct's skin to a solid, with the points on centre line and solid."""
    section = part.section if part.section.width_in >= part.section_out.width_in else part.section_out
    if section.shape is SectionShape.ROUND:
        if part.kind is PartKind.ELBOW and part.corner is not None:
            far, p, q = arc_distance(solid.shape, part.corner, part.direction, part.turn_to, part.radius_in)
        else:
            far, p, q = segment_distance(solid.shape, part.start, part.end)
        return far - section.width_in / 2, p, q
    return _flat_gap(part, section, solid)


def _flat_gap(part: Part, section: SectionSize, solid: Solid) -> tuple[float, Vec3, Vec3]:
    """Gap of a rectangular or oval part: the least over its four edge lines, its middle and its sides' middles."""
    wide = part.wide or (1.0, 0.0, 0.0)
    best: tuple[float, Vec3, Vec3] | None = None
    for a, b in _lines(part):
        run = unit(sub(b, a))
        flat = unit(sub(wide, scale(run, sum(w * r for w, r in zip(wide, run, strict=True)))))
        thin = cross(run, flat)
        if isinstance(solid.shape, Box) and max(abs(c) for c in run) > 1 - 1e-9:
            return _box_gap(a, b, flat, thin, section, solid.shape)
        for i in (-1.0, 0.0, 1.0):
            for j in (-1.0, 0.0, 1.0):
                shift = tuple(
                    i * section.width_in / 2 * f + j * section.height_in / 2 * t
                    for f, t in zip(flat, thin, strict=True)
                )
                p, q = (tuple(c + s for c, s in zip(end, shift, strict=True)) for end in (a, b))
                found = segment_distance(solid.shape, p, q)  # type: ignore[arg-type]
                if best is None or found[0] < best[0]:
                    best = found
    assert best is not None
    return best


def _box_gap(a: Vec3, b: Vec3, flat: Vec3, thin: Vec3, section: SectionSize, box: Box) -> tuple[float, Vec3, Vec3]:
    """Gap of two axis-parallel boxes; negative by the least overlap when they meet."""
    half = [abs(f) * section.width_in / 2 + abs(t) * section.height_in / 2 for f, t in zip(flat, thin, strict=True)]
    lo = [min(p, q) - h for p, q, h in zip(a, b, half, strict=True)]
    hi = [max(p, q) + h for p, q, h in zip(a, b, half, strict=True)]
    apart = [max(bl - h, l - bh) for l, h, bl, bh in zip(lo, hi, box.lo, box.hi, strict=True)]  # noqa: E741
    gap = math.sqrt(sum(max(d, 0.0) ** 2 for d in apart)) if max(apart) > 0 else max(apart)
    middle: Vec3 = ((a[0] + b[0]) / 2, (a[1] + b[1]) / 2, (a[2] + b[2]) / 2)
    x, y, z = (min(max(m, low), high) for m, low, high in zip(middle, box.lo, box.hi, strict=True))
    near_line: Vec3 = (
        min(max(x, min(a[0], b[0])), max(a[0], b[0])),
        min(max(y, min(a[1], b[1])), max(a[1], b[1])),
        min(max(z, min(a[2], b[2])), max(a[2], b[2])),
    )
    return gap, near_line, (x, y, z)
