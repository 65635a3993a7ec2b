"""A route that exists or is proposed, given as fittings, becomes parts in space."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass, replace

from routeviz.model.route import Part, PartKind, Route, offsets_in
from routeviz.model.scene import AsBuiltFitting, Scene, SectionSize
from routeviz.model.solids import Frame, Vec3
from routeviz.model.turning import LEAVES, WAYS, turned
from routeviz.routing.boxing import boxed_length_in
from routeviz.routing.ending import ending
from routeviz.routing.realise import take_off_in
from routeviz.routing.touch import near, penetrations
from routeviz.routing.vectors import add, along, cross, dot, scale, sub, unit
from routeviz.routing.words import as_built_words

__all__ = ["realise_as_built"]


@dataclass(frozen=True, slots=True)
class _At:
    """How far the laying has come."""

    point: Vec3
    direction: Vec3
    section: SectionSize
    wide: Vec3 | None = None  # of a flat section


def realise_as_built(scene: Scene, frame: Frame) -> Route:
    """Lay the scene's as-built fittings end to end from the hood's outlet.

    Returns
    -------
    Route
        With `as_built` set; `termination.space` says where the duct really ends.

    Raises
    ------
    ValueError
        If the scene has no as-built route.
    """
    if scene.as_built is None:
        raise ValueError("the scene has no route as built")
    parts: list[Part] = []
    at = _start(scene)
    for number, fitting in enumerate(scene.as_built.fittings, 1):
        for part in _lay(fitting, at, scene, number):
            parts.append(part)
            at = _At(part.end, part.turn_to, part.section_out, _wide_after(part))
    termination = ending(scene, frame, at.point, at.direction)
    if not parts or parts[-1].kind not in (PartKind.CAP, PartKind.OPEN_END):
        parts.append(_end(PartKind.OPEN_END, at, "open-end", "nothing said of its end"))
    elbows = [p for p in parts if p.kind is PartKind.ELBOW]
    return Route(
        id="as built",
        centreline=None,
        parts=tuple(parts),
        section=parts[0].section_out,
        length_in=sum(p.length_in for p in parts),
        elbows=sum(p.angle_deg for p in elbows) / 90,
        straights_between_in=_between(tuple(parts)),
        boxed_in=boxed_length_in(tuple(parts), frame, scene),
        penetrations=penetrations(tuple(parts), frame, scene.duct.clearance_in),
        termination=termination,
        near=near(tuple(parts), frame),
        as_built=True,
        words=as_built_words(tuple(parts), termination, frame),
    )


def _start(scene: Scene) -> _At:
    hood, outlet = scene.hood, scene.hood.outlet
    bottom = scene.hood_bottom_in
    if bottom is None:
        raise ValueError("the hood's mounting height must be settled before a route is laid")
    x = hood.centre_in + outlet.across_in
    rear = outlet.place == "rear"
    point = (x, 0.0, bottom + outlet.up_in) if rear else (x, -outlet.out_in, bottom + hood.body_in + outlet.collar_in)
    direction = WAYS[LEAVES[outlet.place]]
    return _At(point, direction, outlet.section, _wide(direction, outlet.section))


def _wide(direction: Vec3, section: SectionSize) -> Vec3 | None:
    """Lay the wide side of a flat section along the hood wall; of one that runs along that wall, level out from it."""
    if section.is_round:
        return None
    return (1.0, 0.0, 0.0) if abs(direction[0]) < 0.5 else (0.0, 1.0, 0.0)


def _wide_after(part: Part) -> Vec3 | None:
    """Give the wide side after a part: elbows turn it with the duct, a change to a flat section begins anew."""
    if part.section_out.is_round or part.wide is None:
        return _wide(part.turn_to, part.section_out)
    normal = cross(part.direction, part.turn_to)
    if math.hypot(*normal) < 1e-9:
        return part.wide
    axis = unit(normal)
    before, after = cross(axis, part.direction), cross(axis, part.turn_to)
    return unit(add(scale(axis, dot(part.wide, axis)), scale(after, dot(part.wide, before))))


def _end(kind: PartKind, at: _At, name: str, note: str) -> Part:
    return Part(name, kind, at.point, at.point, at.direction, at.direction, at.section, at.section, 0.0, wide=at.wide,
                note=note)  # fmt: skip


def _lay(fitting: AsBuiltFitting, at: _At, scene: Scene, number: int) -> Iterator[Part]:
    material = scene.as_built.material if scene.as_built else ""
    kind = fitting.part
    if kind in ("straight", "flex"):
        to = along(at.point, at.direction, fitting.length_in)
        part = PartKind.STRAIGHT if kind == "straight" else PartKind.FLEX
        yield Part(f"{kind}-{number}", part, at.point, to, at.direction, at.direction, at.section, at.section,
                   fitting.length_in, wide=at.wide, material="flexible duct" if kind == "flex" else material)  # fmt: skip
    elif kind == "elbow":
        yield _elbow(at, WAYS[fitting.turn], fitting.angle_deg, scene, f"elbow-{number}", material)
    elif kind == "offset":
        first = _elbow(at, WAYS[fitting.turn], fitting.angle_deg, scene, f"elbow-{number}a", material)
        yield first
        length = _offset_straight(fitting, first)
        to = along(first.end, first.turn_to, length)
        if length > 0:
            yield Part(f"straight-{number}", PartKind.STRAIGHT, first.end, to, first.turn_to, first.turn_to, at.section,
                       at.section, length, wide=_wide_after(first), material=material)  # fmt: skip
        back = _At(to, first.turn_to, at.section, _wide_after(first))
        second = _elbow(back, at.direction, fitting.angle_deg, scene, f"elbow-{number}b", material)
        yield replace(second, turn_to=at.direction)
    elif kind == "reducer":
        to_section = fitting.to_section or at.section
        length = fitting.length_in or scene.duct.transition_in
        to = along(at.point, at.direction, length)
        yield Part(f"reducer-{number}", PartKind.TRANSITION, at.point, to, at.direction, at.direction, at.section,
                   to_section, length, wide=at.wide, material=material)  # fmt: skip
    elif kind == "cap":
        yield _end(PartKind.CAP, at, "cap", "with backdraft damper" if scene.cap.damper else "no damper")
    else:
        yield _end(PartKind.OPEN_END, at, "open-end", "no cap")


def _elbow(at: _At, toward: Vec3, angle_deg: float, scene: Scene, name: str, material: str) -> Part:
    """Turn by `angle_deg` in the plane of the present direction and `toward`."""
    after = turned(at.direction, toward, angle_deg)
    across = sub(after, scale(at.direction, dot(after, at.direction)))
    on_edge = at.wide is None or abs(dot(at.wide, unit(across))) > 0.5  # the wide side lies in the plane of the turn
    side = at.section.width_in if on_edge else at.section.height_in
    radius = scene.duct.elbow_radius_in or scene.duct.elbow_ratio * side
    cut = take_off_in(radius, min(angle_deg, 179.0))
    corner = along(at.point, at.direction, cut)
    return Part(name, PartKind.ELBOW, at.point, along(corner, after, cut), at.direction, after, at.section, at.section,
                radius * math.radians(angle_deg), angle_deg=angle_deg, radius_in=radius, corner=corner, wide=at.wide, material=material,
                note=scene.duct.elbow_construction)  # fmt: skip


def _offset_straight(fitting: AsBuiltFitting, first: Part) -> float:
    """Straight between two equal elbows so that the whole shift is `fitting.length_in`: d = 2R(1-cos t) + L sin t."""
    t = math.radians(fitting.angle_deg)
    return max(0.0, (fitting.length_in - 2 * first.radius_in * (1 - math.cos(t))) / math.sin(t))


def _between(parts: tuple[Part, ...]) -> tuple[float, ...]:
    """Give the straight duct between neighbouring elbows; the two elbows of one offset count as one fitting."""
    second = {b.id for _, b in offsets_in(parts)}
    found: list[float] = []
    run: float | None = None
    for part in parts:
        if part.kind is PartKind.ELBOW:
            if run is not None and part.id not in second:
                found.append(run)
            run = 0.0
        elif run is not None:
            run += part.length_in if part.kind is PartKind.STRAIGHT else 0.0
    return tuple(found)
