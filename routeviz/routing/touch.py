"""What a route meets: the holes it needs, and the members near it with their clear gaps."""

from __future__ import annotations

import math
from itertools import pairwise

from routeviz.geometry import Elbow, Piece, Straight, bounds, clip, contains, gap, piece_bounds
from routeviz.model.route import Near, Part, PartKind, Penetration
from routeviz.model.scene import SectionShape
from routeviz.model.solids import Box, Crossing, Frame, Prism, Solid, Vec3
from routeviz.routing.vectors import along, distance, dot, scale, sub, unit

__all__ = ["NEAR_IN", "near", "penetrations", "route_pieces"]

NEAR_IN = 8.0  # members farther than this from the duct's skin are not near
_LAID = (PartKind.STRAIGHT, PartKind.FLEX, PartKind.ELBOW, PartKind.TRANSITION)
_TOUCH_IN = 1e-6  # touching is not cutting


def penetrations(parts: tuple[Part, ...], frame: Frame, clearance_in: float) -> tuple[Penetration, ...]:
    """Give every hole or notch that the route needs, in order from the hood.

    Sheets and masonry are cut where the centre line passes. Framing members are listed as soon as the duct's
    body cuts into them, whether the centre line meets them or not; that holds for members that may never be cut
    too (a route as built may do that).
    """
    found: list[Penetration] = []
    for part in parts:
        if part.kind not in _LAID or part.length_in == 0:
            continue
        lines, around = _lines(part), piece_bounds(_piece(part))
        hits = [
            hit
            for solid in frame.solids
            if solid.crossing is not Crossing.GHOST
            and _apart(around, bounds(solid.shape)) == 0.0
            and (hit := _hit(solid, part, lines, frame, clearance_in))
        ]
        found += [hole for _, hole in sorted(hits, key=lambda h: h[0])]
    return _once(found)


def _once(holes: list[Penetration]) -> tuple[Penetration, ...]:
    """Keep the deepest cut where two parts meet inside one solid; cuts apart from each other stay two holes."""
    kept: list[Penetration] = []
    for hole in sorted(holes, key=lambda h: -h.through_in):
        if not any(k.solid == hole.solid and distance(k.centre, hole.centre) < max(hole.size_in) for k in kept):
            kept.append(hole)
    return tuple(hole for hole in holes if hole in kept)


def _lines(part: Part, steps: int = 24) -> list[tuple[Vec3, Vec3]]:
    """Give a part's centre line as short straight pieces."""
    if part.kind is not PartKind.ELBOW:
        return [(part.start, part.end)]
    turn = math.radians(part.angle_deg)
    inward = unit(sub(part.turn_to, scale(part.direction, math.cos(turn))))
    points = []
    for i in range(steps + 1):
        w = turn * i / steps
        p = along(part.start, part.direction, part.radius_in * math.sin(w))
        points.append(along(p, inward, part.radius_in * (1 - math.cos(w))))
    return list(pairwise(points))


def _hit(
    solid: Solid, part: Part, lines: list[tuple[Vec3, Vec3]], frame: Frame, clearance_in: float
) -> tuple[float, Penetration] | None:
    inside = [(i, t) for i, (a, b) in enumerate(lines) if (t := clip(solid.shape, a, b))]
    if inside:
        (i, t), (j, s) = inside[0], inside[-1]
        enter, leave = _at(lines[i], t[0]), _at(lines[j], s[1])
        if part.kind is PartKind.ELBOW and solid.crossing is Crossing.PASS:
            enter, leave = _straightened(part, enter, leave, clearance_in)
        return i + t[0], _hole(solid, part, enter, leave, frame, clearance_in)
    if solid.crossing is Crossing.PASS or gap(_piece(part), solid.shape).gap_in >= -_TOUCH_IN:
        return None
    enter, leave = _beside(solid, lines)
    return distance(part.start, enter) / max(part.length_in, 1e-9), _hole(
        solid, part, enter, leave, frame, clearance_in
    )


def _straightened(part: Part, enter: Vec3, leave: Vec3, clearance_in: float) -> tuple[Vec3, Vec3]:
    """Give the line by which an elbow that stands in a sheet's hole passes it: the hole is cut for its straight."""
    for at, way in ((part.start, part.direction), (part.end, part.turn_to)):
        ends = [along(at, way, dot(sub(p, at), way)) for p in (enter, leave)]
        if max(distance(*pair) for pair in zip(ends, (enter, leave), strict=True)) <= clearance_in:
            return ends[0], ends[1]
    return enter, leave


def _at(line: tuple[Vec3, Vec3], t: float) -> Vec3:
    a, b = line
    return (a[0] + t * (b[0] - a[0]), a[1] + t * (b[1] - a[1]), a[2] + t * (b[2] - a[2]))


def _beside(solid: Solid, lines: list[tuple[Vec3, Vec3]]) -> tuple[Vec3, Vec3]:
    """Give where a centre line that passes beside a member comes abreast of it and leaves it."""
    box = bounds(solid.shape)
    start, end = lines[0][0], lines[-1][1]
    axis = max(range(3), key=lambda i: abs(end[i] - start[i]))
    span = end[axis] - start[axis]
    ends = sorted(min(1.0, max(0.0, (v - start[axis]) / span)) if span else 0.0 for v in (box.lo[axis], box.hi[axis]))
    return _at((start, end), ends[0]), _at((start, end), ends[1])


def _hole(solid: Solid, part: Part, enter: Vec3, leave: Vec3, frame: Frame, clearance_in: float) -> Penetration:
    through = distance(enter, leave)
    shape, level, stretch = _cut(solid, part)
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
        size_in=(level[0] * stretch[0], level[1] * stretch[1]),
        hole_in=((level[0] + 2 * clearance_in) * stretch[0], (level[1] + 2 * clearance_in) * stretch[1]),
        from_space=_space(frame, along(enter, direction, -0.5)),
        to_space=_space(frame, along(leave, direction, 0.5)),
        stretch=stretch,
    )


def _cut(solid: Solid, part: Part) -> tuple[str, tuple[float, float], tuple[float, float]]:
    """Shape of the cut, its level sides along the axes that it lies across, and how much longer a slope makes each."""
    section, stretch = part.section, (1.0, 1.0)
    if abs(part.direction[2]) > 0.99 and isinstance(solid.shape, Prism) and solid.shape.axis != 2:
        slope = _slope_factor(solid)  # the prism runs along the eave, so it is the other level axis that slopes
        stretch = (1.0, slope) if solid.shape.axis == 0 else (slope, 1.0)
    if section.shape is SectionShape.ROUND:
        return ("ellipse" if max(stretch) > 1 else "round"), (section.width_in, section.width_in), stretch
    wide, high = section.width_in, section.height_in
    across = [axis for axis in range(3) if axis != max(range(3), key=lambda k: abs(part.direction[k]))]
    turned = part.wide is not None and abs(part.wide[across[1]]) > 0.5
    return str(section.shape), ((high, wide) if turned else (wide, high)), stretch


def _slope_factor(solid: Solid) -> float:
    """Length along a sloped board over its level length; 1 for level or plumb ones."""
    if not isinstance(solid.shape, Prism) or solid.shape.axis == 2:
        return 1.0
    outline = solid.shape.outline
    (ax, ay), (bx, by) = max(zip(outline, (*outline[1:], outline[0]), strict=True), key=lambda e: math.dist(*e))
    return math.hypot(1.0, (by - ay) / (bx - ax)) if abs(bx - ax) > 1e-9 else 1.0


def _space(frame: Frame, point: Vec3) -> str:
    for zone in reversed(frame.zones):
        if contains(zone.shape, point):
            return zone.bay or zone.label
    return "outdoors"


def _piece(part: Part) -> Piece:
    section = part.section if part.section.width_in >= part.section_out.width_in else part.section_out
    wide = None if section.is_round else part.wide or _level(part.direction)
    if part.kind is PartKind.ELBOW:
        return Elbow(part.start, part.direction, part.turn_to, part.radius_in, section, wide)
    return Straight(part.start, part.end, section, wide)


def _level(direction: Vec3) -> Vec3:
    """Give a level direction square to a run, for a flat section whose turn nobody told."""
    return (1.0, 0.0, 0.0) if abs(dot(direction, (1.0, 0.0, 0.0))) < 0.9 else (0.0, 1.0, 0.0)


def route_pieces(parts: tuple[Part, ...]) -> list[tuple[str, Piece]]:
    """Give the bodies of the parts that take room, with the parts' ids."""
    return [(part.id, _piece(part)) for part in parts if part.kind in _LAID and part.length_in > 0]


def near(parts: tuple[Part, ...], frame: Frame) -> tuple[Near, ...]:
    """Give the solids that may not be cut within `NEAR_IN` of the duct's skin, nearest first."""
    best: dict[str, Near] = {}
    laid = [part for part in parts if part.kind in _LAID and part.length_in > 0]
    for part in sorted(laid, key=lambda p: p.kind is PartKind.ELBOW):  # straights are quick and often settle it
        piece = _piece(part)
        around = piece_bounds(piece)
        for solid in frame.solids:
            if solid.crossing is not Crossing.NEVER:
                continue
            limit = best[solid.id].gap_in if solid.id in best else NEAR_IN
            if _apart(around, bounds(solid.shape)) > limit:
                continue
            found = gap(piece, solid.shape)
            if found.gap_in <= NEAR_IN and (solid.id not in best or found.gap_in < best[solid.id].gap_in):
                away = sub(found.on_solid, found.on_duct)
                toward = unit(away) if dot(away, away) > 1e-18 else (0.0, 0.0, 1.0)
                best[solid.id] = Near(solid.id, solid.label, found.gap_in, toward, found.on_solid, part.id)
    return tuple(sorted(best.values(), key=lambda n: (round(n.gap_in, 6), n.solid)))


def _apart(a: Box, b: Box) -> float:
    """Give the distance of two boxes; never more than that of what is in them."""
    return math.hypot(*(max(bl - ah, al - bh, 0.0) for al, ah, bl, bh in zip(a.lo, a.hi, b.lo, b.hi, strict=True)))
