"""Duct pieces as exact bodies, and the gap between a piece and a solid.

A straight piece is its section swept along a line with flat ends; an elbow is its section swept along an arc. A round
elbow is the quarter of a torus that it is, not the box around it.
"""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import dataclass
from functools import lru_cache

from routeviz.geometry.convex import Support, closest, cross, dot, minus, plus
from routeviz.geometry.measure import bounds, narrow, nearest_point, plane_axes
from routeviz.geometry.shapes import convex_parts, lift
from routeviz.model.scene import SectionShape, SectionSize
from routeviz.model.solids import Box, Cylinder, Prism, Shape, Vec3

__all__ = ["Elbow", "Gap", "Piece", "Straight", "gap", "meets", "piece_bounds"]

_SAMPLES = 24  # along an arc, before its minima are narrowed down


@dataclass(frozen=True, slots=True)
class Straight:
    """A straight duct piece with flat ends. `wide` is the unit direction of the wide side, None for round."""

    start: Vec3
    end: Vec3
    section: SectionSize
    wide: Vec3 | None = None


@dataclass(frozen=True, slots=True)
class Elbow:
    """An elbow: it starts at `start` in `direction`, leaves in `turn_to` (unit vectors) on a centre line of `radius`.

    `wide` is the unit direction of the wide side at the start; it is square to `direction` and turns with the duct.
    """

    start: Vec3
    direction: Vec3
    turn_to: Vec3
    radius: float
    section: SectionSize
    wide: Vec3 | None = None


Piece = Straight | Elbow


@dataclass(frozen=True, slots=True)
class Gap:
    """The clear distance [in] between a duct piece and a solid, and where.

    `gap_in` is negative when they overlap: minus how far the solid reaches into the section, measured towards the
    centre line (round and oval) or square to the side that it would have to leave by (rectangular). A solid that
    holds the centre line itself reaches in by the whole half section.
    """

    gap_in: float
    on_duct: Vec3
    on_solid: Vec3


def _unit(v: Vec3) -> Vec3:
    length = math.sqrt(dot(v, v))
    return (v[0] / length, v[1] / length, v[2] / length) if length > 0 else (0.0, 0.0, 1.0)


def _across(direction: Vec3, wide: Vec3 | None) -> tuple[Vec3, Vec3]:
    """Give the unit directions of the wide and the narrow side of a section."""
    if wide is None:
        least = min(range(3), key=lambda i: abs(direction[i]))
        wide = (float(least == 0), float(least == 1), float(least == 2))
    narrow = _unit(cross(direction, wide))
    return _unit(cross(narrow, direction)), narrow


def _section_reach(section: SectionSize, p: float, q: float) -> tuple[float, float]:
    """Give the section's farthest point along (p, q) in its own wide and narrow axes."""
    a, b = section.width_in / 2, section.height_in / 2
    if section.shape is SectionShape.RECT:
        return math.copysign(a, p) if p else 0.0, math.copysign(b, q) if q else 0.0
    length = math.hypot(p, q)
    r, flat = (a, 0.0) if section.is_round else (b, a - b)
    if length == 0.0:
        return 0.0, 0.0
    return r * p / length + (math.copysign(flat, p) if p else 0.0), r * q / length


def _swept(start: Vec3, end: Vec3, section: SectionSize, wide: Vec3, narrow: Vec3) -> Support:
    def support(d: Vec3) -> Vec3:
        base = end if dot(minus(end, start), d) > 0 else start
        u, v = _section_reach(section, dot(d, wide), dot(d, narrow))
        return plus(plus(base, wide, u), narrow, v)

    return support


def _solid_support(shape: Box | Prism | Cylinder) -> Support:
    """Give the support of a convex solid."""
    if isinstance(shape, Box):
        lo, hi = shape.lo, shape.hi
        return lambda d: (hi[0] if d[0] > 0 else lo[0], hi[1] if d[1] > 0 else lo[1], hi[2] if d[2] > 0 else lo[2])
    axis, start, end = shape.axis, shape.start, shape.end
    u, v = plane_axes(axis)
    if isinstance(shape, Prism):
        outline = shape.outline
        return lambda d: lift(
            axis, end if d[axis] > 0 else start, max(outline, key=lambda p: p[0] * d[u] + p[1] * d[v])
        )
    (cu, cv), r = shape.centre, shape.radius

    def round_support(d: Vec3) -> Vec3:
        length = math.hypot(d[u], d[v])
        flat = (cu, cv) if length == 0.0 else (cu + r * d[u] / length, cv + r * d[v] / length)
        return lift(axis, end if d[axis] > 0 else start, flat)

    return round_support


def _parts(shape: Shape) -> tuple[Shape, ...]:
    return convex_parts(shape) if isinstance(shape, Prism) else (shape,)


@lru_cache(maxsize=1024)
def _arc(elbow: Elbow) -> tuple[float, Vec3, Vec3, Vec3]:
    """Give an elbow's angle [rad], its arc's centre, the unit vector from it to the start, and the arc's own axis."""
    angle = math.acos(min(1.0, max(-1.0, dot(elbow.direction, elbow.turn_to))))
    inward = _unit(plus(elbow.turn_to, elbow.direction, -math.cos(angle)))
    centre = plus(elbow.start, inward, elbow.radius)
    return angle, centre, (-inward[0], -inward[1], -inward[2]), cross(inward, elbow.direction)


def _arc_point(elbow: Elbow, theta: float) -> tuple[Vec3, Vec3]:
    """Give the centre line's point and direction after turning by `theta` [rad]."""
    _, centre, out, _ = _arc(elbow)
    c, s = math.cos(theta), math.sin(theta)
    spoke = plus((out[0] * c, out[1] * c, out[2] * c), elbow.direction, s)
    along = plus((elbow.direction[0] * c, elbow.direction[1] * c, elbow.direction[2] * c), out, -s)
    return plus(centre, spoke, elbow.radius), along


def _slice(elbow: Elbow, theta: float) -> tuple[Vec3, Support]:
    """Give the flat section of an elbow at an angle: its centre and its support."""
    point, along = _arc_point(elbow, theta)
    wide, narrow = _across(elbow.direction, elbow.wide)
    turned = _turn(elbow, wide, theta), _turn(elbow, narrow, theta)
    return point, _swept(point, point, elbow.section, *turned) if elbow.wide else _swept(
        point, point, elbow.section, *_across(along, None)
    )


def _turn(elbow: Elbow, v: Vec3, theta: float) -> Vec3:
    """Turn a direction with the duct from the elbow's start to an angle."""
    _, _, out, _ = _arc(elbow)
    p, q = dot(v, elbow.direction), dot(v, out)
    rest = plus(plus(v, elbow.direction, -p), out, -q)
    c, s = math.cos(theta), math.sin(theta)
    return plus(plus(rest, elbow.direction, p * c + q * s), out, q * c - p * s)


def piece_bounds(piece: Piece) -> Box:
    """Give a box around a duct piece; tight for straights, and for elbows of up to 90 degrees from axis to axis."""
    if isinstance(piece, Straight):
        direction = _unit(minus(piece.end, piece.start))
        supports = [_swept(piece.start, piece.end, piece.section, *_across(direction, piece.wide))]
        slack = 0.0
    else:
        angle = _arc(piece)[0]
        supports = [_slice(piece, angle * i / 8)[1] for i in range(9)]
        reach = piece.radius + math.hypot(piece.section.width_in, piece.section.height_in) / 2
        slack = reach * (1 - math.cos(angle / 16)) if not _axis_turn(piece) else 0.0
    lo, hi = [0.0] * 3, [0.0] * 3
    for i in range(3):
        unit = (float(i == 0), float(i == 1), float(i == 2))
        back = (-unit[0], -unit[1], -unit[2])
        hi[i] = max(s(unit)[i] for s in supports) + slack
        lo[i] = min(s(back)[i] for s in supports) - slack
    return Box((lo[0], lo[1], lo[2]), (hi[0], hi[1], hi[2]))


def _axis_turn(elbow: Elbow) -> bool:
    return all(max(abs(c) for c in v) > 1.0 - 1e-12 for v in (elbow.direction, elbow.turn_to))


def gap(piece: Piece, shape: Shape) -> Gap:
    """Give the exact clear distance between a duct piece and a solid, with the nearest points.

    Parameters
    ----------
    piece : Straight or Elbow
        The duct's outer body, without any clearance.
    shape : Box, Prism or Cylinder
        The solid.

    Returns
    -------
    Gap
        Distance to about 1e-9 in; see `Gap` for what a negative one means.
    """
    found = (
        _straight_gap(piece, part) if isinstance(piece, Straight) else _elbow_gap(piece, part) for part in _parts(shape)
    )
    return min(found, key=lambda g: g.gap_in)


def meets(piece: Piece, shape: Shape, *, clearance: float = 0.0) -> bool:
    """Whether a duct piece comes nearer to a solid than `clearance` [in]; touching is not meeting."""
    near, own = bounds(shape), piece_bounds(piece)
    if any(own.lo[i] - clearance >= near.hi[i] or near.lo[i] >= own.hi[i] + clearance for i in range(3)):
        return False
    return gap(piece, shape).gap_in < clearance - 1e-7


def _size(shape: Shape, at: Vec3) -> float:
    box = bounds(shape)
    return max(max(abs(v - at[i]) for v in (box.lo[i], box.hi[i])) for i in range(3))


def _apart(piece: Straight, axis: int, box: Box) -> Gap | None:
    """Give the gap of a round piece along an axis to a box beside or beyond it; None where it needs a closer look."""
    u, v = (i for i in range(3) if i != axis)
    start, end = sorted((piece.start[axis], piece.end[axis]))
    across = [min(max(piece.start[i], box.lo[i]), box.hi[i]) for i in (u, v)]
    away = math.hypot(across[0] - piece.start[u], across[1] - piece.start[v])
    radius = piece.section.width_in / 2
    beyond = max(box.lo[axis] - end, start - box.hi[axis])
    if away <= radius or beyond > 0.0:
        return None
    on_duct, on_solid = [0.0] * 3, [0.0] * 3
    on_duct[axis] = on_solid[axis] = (max(start, box.lo[axis]) + min(end, box.hi[axis])) / 2
    for i, at in zip((u, v), across, strict=True):
        on_solid[i] = at
        on_duct[i] = piece.start[i] + (at - piece.start[i]) * radius / away
    return Gap(away - radius, (on_duct[0], on_duct[1], on_duct[2]), (on_solid[0], on_solid[1], on_solid[2]))


def _straight_gap(piece: Straight, shape: Shape) -> Gap:
    direction = _unit(minus(piece.end, piece.start))
    if piece.section.is_round and isinstance(shape, Box) and max(map(abs, direction)) == 1.0:
        beside = _apart(piece, next(i for i in range(3) if direction[i]), shape)
        if beside is not None:
            return beside
    wide, narrow = _across(direction, piece.wide)
    body = _swept(piece.start, piece.end, piece.section, wide, narrow)
    middle = plus(piece.start, minus(piece.end, piece.start), 0.5)
    toward, size = minus(nearest_point(shape, middle), middle), _size(shape, middle)
    distance, on_duct, on_solid = closest(body, _solid_support(shape), toward, size)
    if distance > 0.0:
        return Gap(distance, on_duct, on_solid)
    if piece.section.shape is SectionShape.RECT:
        depth = _leave(piece.section, wide, narrow, middle, _solid_support(shape))
        return Gap(-depth, on_duct, on_solid)
    thin, radius = _core(piece.section)
    core = _swept(piece.start, piece.end, thin, wide, narrow)
    inner, on_core, on_solid = closest(core, _solid_support(shape), toward, size)
    return Gap(min(0.0, inner - radius), on_core, on_solid)


def _core(section: SectionSize) -> tuple[SectionSize, float]:
    """Give what a round or oval section grows from by a radius: a point or a line as a section without height."""
    flat = 0.0 if section.is_round else section.width_in - section.height_in
    return SectionSize(SectionShape.RECT, flat, 0.0), section.height_in / 2


def _leave(section: SectionSize, wide: Vec3, narrow: Vec3, at: Vec3, solid: Support) -> float:
    """Give the least move square to the duct that takes a solid out of a rectangular section."""
    found = []
    for side, half in ((wide, section.width_in / 2), (narrow, section.height_in / 2)):
        back = (-side[0], -side[1], -side[2])
        found.append(half - dot(minus(solid(back), at), side))  # the solid leaves towards +side
        found.append(half + dot(minus(solid(side), at), side))
    return max(0.0, min(found))


def _minima(f: Callable[[float], float], span: float) -> list[float]:
    """Give the places of the least values of a function on [0, span]: sampled, then narrowed by golden section."""
    values = [f(span * i / _SAMPLES) for i in range(_SAMPLES + 1)]
    found = []
    for i, value in enumerate(values):
        left, right = values[max(i - 1, 0)], values[min(i + 1, _SAMPLES)]
        if value <= left and value <= right:
            a, b = span * max(i - 1, 0) / _SAMPLES, span * min(i + 1, _SAMPLES) / _SAMPLES
            found.append(narrow(f, a, b, within=1e-9))
    return [*found, 0.0, span]


def _elbow_gap(elbow: Elbow, shape: Shape) -> Gap:
    angle = _arc(elbow)[0]
    if elbow.section.is_round:
        return _round_elbow_gap(elbow, shape, angle)

    solid = _solid_support(shape)

    def at(theta: float) -> tuple[float, Vec3, Vec3]:
        point, body = _slice(elbow, theta)
        return closest(body, solid, minus(nearest_point(shape, point), point), _size(shape, point))

    best = min((at(t) for t in _minima(lambda t: at(t)[0], angle)), key=lambda found: found[0])
    if best[0] > 0.0:
        return Gap(*best)
    return _deepest(elbow, shape, angle, best)


def _deepest(elbow: Elbow, shape: Shape, angle: float, touch: tuple[float, Vec3, Vec3]) -> Gap:
    """Give the overlap of a solid with a rectangular or oval elbow: the largest over its sections."""
    solid, deepest = _solid_support(shape), 0.0
    for i in range(_SAMPLES + 1):
        theta = angle * i / _SAMPLES
        point, body = _slice(elbow, theta)
        if closest(body, solid, minus(nearest_point(shape, point), point), _size(shape, point))[0] == 0.0:
            wide, narrow = _across(elbow.direction, elbow.wide)
            depth = _leave(elbow.section, _turn(elbow, wide, theta), _turn(elbow, narrow, theta), point, solid)
            deepest = max(deepest, depth)
    return Gap(-deepest, touch[1], touch[2])


def _round_elbow_gap(elbow: Elbow, shape: Shape, angle: float) -> Gap:
    """Give the gap to a torus: inside the arc a ball round the centre line decides, at its ends the flat disc."""
    radius = elbow.section.width_in / 2

    def away(theta: float) -> float:
        point = _arc_point(elbow, theta)[0]
        return math.dist(point, nearest_point(shape, point))

    found = []
    for narrowed in _minima(away, angle):
        theta = 0.0 if narrowed < 1e-6 else angle if narrowed > angle - 1e-6 else narrowed
        point, along = _arc_point(elbow, theta)
        on_solid = nearest_point(shape, point)
        reach = minus(on_solid, point)
        distance = math.sqrt(dot(reach, reach))
        beyond = (theta == 0.0 and dot(reach, along) < -1e-9) or (theta == angle and dot(reach, along) > 1e-9)
        if not beyond:
            on_duct = plus(point, reach, min(1.0, radius / distance)) if distance > 0 else point
            found.append(Gap(distance - radius, on_duct, on_solid))
        else:
            disc = _swept(point, point, elbow.section, *_across(along, None))
            flat = closest(disc, _solid_support(shape), reach, _size(shape, point))
            found.append(Gap(*flat) if flat[0] > 0.0 else Gap(min(0.0, distance - radius), flat[1], flat[2]))
    return min(found, key=lambda g: g.gap_in)
