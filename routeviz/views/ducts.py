"""Parts of a duct as sheet metal: straights, gored elbows, transitions, bands and seams [in]."""

from __future__ import annotations

import math
import re
from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
import numpy.typing as npt

from routeviz.model.route import Part, PartKind
from routeviz.model.scene import SectionShape, SectionSize
from routeviz.model.solids import Vec3
from routeviz.views.shapes import Mesh, loft

__all__ = ["Metal", "band", "gore_count", "metal", "ring", "section_outline", "wide_sides"]

Array = npt.NDArray[np.float64]

SHEET_IN = 0.12  # drawn wall of the duct; thick enough to be seen in a cut
SIDES = 48


@dataclass(frozen=True)
class Metal:
    """What one part looks like: a closed mesh and the closed polylines of its seams."""

    mesh: Mesh
    seams: list[Array]


def section_outline(section: SectionSize, *, grow: float = 0.0) -> Array:
    """Give the section as `SIDES` points around its centre, wide side along u; shape (n, 2).

    All shapes have the same count of points in the same order, so a transition can join any two of them.
    """
    half_wide, half_high = section.width_in / 2 + grow, section.height_in / 2 + grow
    if section.shape is SectionShape.RECT:
        quarter = SIDES // 4
        t = (np.arange(quarter) / quarter)[:, None]
        corners = np.array([[1, -1], [1, 1], [-1, 1], [-1, -1]]) * [half_wide, half_high]
        sides = [corners[k] * (1 - t) + corners[(k + 1) % 4] * t for k in range(4)]
        return np.roll(np.vstack(sides), -(quarter // 2), axis=0)
    if section.shape is SectionShape.OVAL:
        # two half circles, each with its end points and its middle, joined by the flats
        halves = []
        for sign, count in ((1, SIDES // 2 + 1), (-1, SIDES // 2 - 1)):
            turn = np.linspace(-math.pi / 2, math.pi / 2, count)
            arc = np.c_[np.cos(turn) * half_high + half_wide - half_high, np.sin(turn) * half_high]
            halves.append(sign * arc)
        return np.roll(np.vstack(halves), -(SIDES // 4), axis=0)
    angle = np.arange(SIDES) * 2 * math.pi / SIDES
    circle: Array = np.c_[np.cos(angle), np.sin(angle)] * half_wide
    return circle


def _unit(v: Array) -> Array:
    unit: Array = v / np.linalg.norm(v)
    return unit


def _frame(direction: Array, wide: Array | None) -> tuple[Array, Array]:
    """Give u (wide side) and v so that u, v, direction are right-handed."""
    if wide is not None and np.linalg.norm(wide - direction * (wide @ direction)) > 1e-6:
        u = _unit(wide - direction * (wide @ direction))
    else:
        axis = np.eye(3)[int(np.argmin(np.abs(direction)))]
        u = _unit(np.cross(axis, direction))
    return u, np.cross(direction, u)


def ring(at: Array, direction: Array, wide: Array | None, section: SectionSize, *, grow: float = 0.0) -> Array:
    """Place a section square to `direction` at a point; shape (n, 3)."""
    u, v = _frame(direction, wide)
    flat = section_outline(section, grow=grow)
    placed: Array = at + flat[:, :1] * u + flat[:, 1:] * v
    return placed


def gore_count(construction: str, angle_deg: float) -> int:
    """Give how many gores an elbow shows: the named piece count for 90 degrees, in proportion for less, at least 2.

    Examples
    --------
    >>> gore_count("4-piece", 90), gore_count("4-piece", 45), gore_count("5-piece", 90)
    (4, 3, 5)
    """
    found = re.match(r"\s*(\d+)", construction)
    at_90 = int(found[1]) if found else 4
    return max(2, math.floor((at_90 - 1) * angle_deg / 90 + 0.5) + 1)


def _turned(vector: Array, axis: Array, angle: float) -> Array:
    cos, sin = math.cos(angle), math.sin(angle)
    turned: Array = vector * cos + np.cross(axis, vector) * sin + axis * (axis @ vector) * (1 - cos)
    return turned


def _along(part: Part, stations: Sequence[tuple[float, SectionSize]], wide: Array) -> list[list[Array]]:
    a, b, d = np.array(part.start), np.array(part.end), np.array(part.direction)
    return [[ring(a + (b - a) * t, d, wide, s, grow=g) for t, s in stations] for g in (0.0, -SHEET_IN)]


def _straight(part: Part, wide: Array) -> Metal:
    outer, inner = _along(part, ((0.0, part.section), (1.0, part.section)), wide)
    return Metal(loft(outer, inner), [])


def _transition(part: Part, wide: Array) -> Metal:
    stations = ((0.0, part.section), (0.18, part.section), (0.82, part.section_out), (1.0, part.section_out))
    outer, inner = _along(part, stations, wide)
    return Metal(loft(outer, inner), [outer[1], outer[2]])


def _elbow(part: Part, wide: Array) -> Metal:
    """Mitred gores whose joints stand on the arc; a rectangular elbow bends smoothly instead."""
    before, after = np.array(part.direction), np.array(part.turn_to)
    axis = _unit(np.cross(before, after))
    angle = math.radians(part.angle_deg)
    inwards = np.cross(axis, before)
    centre = np.array(part.start) + inwards * part.radius_in
    smooth = part.section.shape is SectionShape.RECT
    pieces = 12 if smooth else gore_count(part.note, part.angle_deg)
    half = angle / (pieces - 1) / 2
    turns = [0.0, *(half * (2 * k - 1) for k in range(1, pieces)), angle]

    def rings(grow: float) -> list[Array]:
        """Give the rings of points [in], each of shape (n, 3), with the section wider by `grow` [in] on each side."""
        found = []
        for turn in turns:
            # joints lie outside the arc so that each gore touches it; a mitre is longer across the bend
            stretch = 1.0 if turn in (0.0, angle) else 1 / math.cos(half)
            radial = _turned(-inwards, axis, turn)
            spot = centre + radial * part.radius_in
            flat = ring(spot, _turned(before, axis, turn), _turned(wide, axis, turn), part.section, grow=grow)
            away = (flat - centre) @ radial
            found.append(flat + (away * (stretch - 1))[:, None] * radial)
        return found

    outer = rings(0.0)
    return Metal(loft(outer, rings(-SHEET_IN)), [] if smooth else outer[1:-1])


def metal(part: Part, wide: Array) -> Metal | None:
    """Give a part as sheet metal; None for a cap or an open end, which have no length of duct.

    `wide` is a unit vector across the part at its start (the wide side, or any for round).
    """
    if part.length_in < 1e-6 or part.kind in (PartKind.CAP, PartKind.OPEN_END):
        return None
    if part.kind is PartKind.ELBOW:
        return _elbow(part, wide)
    if part.section != part.section_out:
        return _transition(part, wide)
    return _straight(part, wide)


def band(at: Vec3, direction: Vec3, wide: Array, section: SectionSize, width_in: float) -> Metal:
    """Give the raised band where two parts are joined."""
    middle, d = np.array(at), np.array(direction)
    ends = [middle - d * width_in / 2, middle + d * width_in / 2]
    outer, inner = ([ring(p, d, wide, section, grow=g) for p in ends] for g in (0.22, -SHEET_IN))
    return Metal(loft(outer, inner), list(outer))


def wide_sides(parts: Sequence[Part]) -> list[Array]:
    """Give for each part a unit vector across it at its start, of shape (3,), carried round the elbows without twist."""
    found: list[Array] = []
    carried: Array | None = None
    for part in parts:
        direction = np.array(part.direction)
        given = np.array(part.wide) if part.wide is not None else carried
        side = _frame(direction, given)[0]
        found.append(side)
        carried = side
        if part.kind is PartKind.ELBOW:
            axis = _unit(np.cross(direction, np.array(part.turn_to)))
            carried = _turned(side, axis, math.radians(part.angle_deg))
    return found
