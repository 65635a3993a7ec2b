"""A centre line becomes parts: straights, elbows with their true arcs, a transition, the cap."""

from __future__ import annotations

import math
from itertools import pairwise

from routeviz.model.path import Bend, Centreline
from routeviz.model.route import Part, PartKind, Route, Termination
from routeviz.model.scene import Scene, SectionSize
from routeviz.model.solids import Frame, Vec3
from routeviz.routing.touch import near, penetrations
from routeviz.routing.vectors import along, distance, sub, unit
from routeviz.routing.words import in_words
from routeviz.units import TICKS_PER_IN

__all__ = ["realise", "take_off_in"]

_ROUNDING_IN = 2.0 / TICKS_PER_IN  # what whole ticks leave between two elbows is no piece of duct
_AXES: tuple[Vec3, Vec3, Vec3] = ((1.0, 0.0, 0.0), (0.0, 1.0, 0.0), (0.0, 0.0, 1.0))


def take_off_in(radius_in: float, angle_deg: float) -> float:
    """Give an elbow's take-off: from the corner of the centre lines to the end of the fitting [in].

    T = R tan(t/2). Exact geometry.

    Examples
    --------
    >>> round(take_off_in(8, 90), 6)
    8.0
    """
    return radius_in * math.tan(math.radians(angle_deg) / 2)


def realise(line: Centreline, scene: Scene, frame: Frame, *, name: str = "A") -> Route:
    """Turn a centre line into a route of real parts.

    Parameters
    ----------
    line : Centreline
        From the hood's collar to an exit face.
    name : str
        Id of the route: "A", "B", ...

    Returns
    -------
    Route
        Parts in order from the hood, with the holes it needs and the members near it.

    Raises
    ------
    ValueError
        If the bends do not fit on the line (a defect of the search, not of the scene).
    """
    parts = _parts(line, scene)
    face = next(f for f in frame.faces if f.id == line.face)
    end = parts[-1]
    termination = Termination(face.id, face.kind, face.space, end.end, end.direction, face.label)
    elbows = [p for p in parts if p.kind is PartKind.ELBOW]
    return Route(
        id=name,
        centreline=line,
        parts=parts,
        section=line.section,
        length_in=sum(p.length_in for p in parts),
        elbows=line.elbows,
        straights_between_in=_between(line, elbows),
        boxed_in=line.boxed_in,
        penetrations=penetrations(parts, frame, scene.duct.clearance_in),
        termination=termination,
        near=near(parts, frame),
        words=in_words(line, frame, face),
    )


def _between(line: Centreline, elbows: list[Part]) -> tuple[float, ...]:
    """Straight duct between consecutive elbows; the two elbows of one offset count as one fitting."""
    return tuple(
        distance(a.end, b.start)
        for (a, bend_a), (b, bend_b) in pairwise(zip(elbows, line.bends, strict=True))
        if not (bend_a.offset_id and bend_a.offset_id == bend_b.offset_id)
    )


def _wide(line: Centreline, run: int) -> Vec3 | None:
    axis = line.wide_axis[run] if line.wide_axis else None
    return None if axis is None else _AXES[axis]


def _parts(line: Centreline, scene: Scene) -> tuple[Part, ...]:
    duct, section = scene.duct, line.section
    directions = [unit(sub(b, a)) for a, b in pairwise(line.points)]
    if len(line.bends) != len(directions) - 1:
        raise ValueError("every inner point of a centre line is a bend")
    parts: list[Part] = []
    at = line.points[0]
    transition = scene.transition_in(section)
    if transition:
        to = along(at, directions[0], transition)
        parts.append(
            Part("transition-1", PartKind.TRANSITION, at, to, directions[0], directions[0], scene.hood.outlet.section,
                 section, transition, wide=_wide(line, 0), material=duct.material)
        )  # fmt: skip
        at = to
    straight = 0
    for run, direction in enumerate(directions):
        bend = line.bends[run] if run < len(line.bends) else None
        corner = line.points[run + 1]
        cut = take_off_in(bend.radius_in, bend.angle_deg) if bend else 0.0
        end = along(corner, direction, -cut)
        gap = sum(d * (e - a) for d, e, a in zip(direction, end, at, strict=True))
        if gap < -1e-6:
            raise ValueError(f"elbow {run + 1} does not fit: {-gap:.4f} in short")
        if gap > _ROUNDING_IN:
            straight += 1
            parts.append(
                Part(f"straight-{straight}", PartKind.STRAIGHT, at, end, direction, direction, section, section,
                     distance(at, end), wide=_wide(line, run), material=duct.material)
            )  # fmt: skip
        if bend:
            part = _elbow(bend, run + 1, end, direction, directions[run + 1], section, _wide(line, run), scene)
            parts.append(part)
            at = part.end
    face_end, last = line.points[-1], directions[-1]
    parts.append(
        Part("cap", PartKind.CAP, face_end, face_end, last, last, section, section, 0.0,
             wide=_wide(line, len(directions) - 1), note="with backdraft damper" if scene.cap.damper else "no damper")
    )  # fmt: skip
    return tuple(parts)


def _elbow(
    bend: Bend,
    number: int,
    start: Vec3,
    before: Vec3,
    after: Vec3,
    section: SectionSize,
    wide: Vec3 | None,
    scene: Scene,
) -> Part:
    cut = take_off_in(bend.radius_in, bend.angle_deg)
    return Part(
        id=f"elbow-{number}",
        kind=PartKind.ELBOW,
        start=start,
        end=along(bend.at, after, cut),
        direction=before,
        turn_to=after,
        section=section,
        section_out=section,
        length_in=bend.radius_in * math.radians(bend.angle_deg),
        angle_deg=bend.angle_deg,
        radius_in=bend.radius_in,
        corner=bend.at,
        wide=wide,
        material=scene.duct.material,
        note=scene.duct.elbow_construction,
    )
