"""What a lesson points at: bodies that enclose a member, a part of the duct, or the place of a finding."""

from __future__ import annotations

import math
from collections.abc import Iterator, Mapping
from itertools import pairwise

import numpy as np
import numpy.typing as npt
import trimesh

from routeviz.model.lesson import Mark
from routeviz.model.route import Part, PartKind
from routeviz.model.solids import ExitFace, KeepOut, Vec3
from routeviz.model.spoken import spoken
from routeviz.views.ducts import ring, wide_sides
from routeviz.views.marks import place_of
from routeviz.views.parts import Layer, Piece
from routeviz.views.stage import Stage

__all__ = ["mark", "names"]

_THINGS = {"hood": Layer.HOOD, "cover": Layer.COVER, "roof": Layer.ROOF}
_MOST = 40
_ROUND_A_PLACE_IN = 4.0
_RIM_IN = 1.0  # an open end is shown by the last of its duct
_BODIES_OF_AN_ELBOW = 4  # a bend is not convex; each quarter of it nearly is

Array = npt.NDArray[np.float64]
Bodies = tuple[tuple[Vec3, ...], ...]


def _pieces(stage: Stage, name: str) -> list[Piece]:
    if name == "duct":
        return [p for p in stage.pieces if p.name.startswith(("duct-", "wanted"))]
    if name == "cap":
        return [p for p in stage.pieces if p.name.startswith("cap-") and p.layer is Layer.DUCT]
    if name == "cooktop":
        return [p for p in stage.pieces if p.solid == "cooktop" or p.name.startswith("cook")]
    if name in _THINGS:
        return [p for p in stage.pieces if p.layer is _THINGS[name]]
    return [p for p in stage.pieces if name in (p.solid, p.name.removeprefix("duct-"), p.name.removesuffix("-bars"))]


def names(stage: Stage) -> Iterator[str]:
    """Give every name that can be pointed at."""
    yield from (thing for thing in ("duct", "cap", "cooktop", *_THINGS) if _pieces(stage, thing))
    yield from dict.fromkeys(p.solid for p in stage.pieces if p.solid)
    best = stage.plan.best
    yield from (p.id for p in (best.route.parts if best is not None else ()))
    yield from dict.fromkeys(k.id for face in stage.plan.frame.faces for k in face.keep_outs if k.id)
    yield from dict.fromkeys(f.code for f in stage.flags)


def _directions(count: int) -> Array:
    """Give unit vectors spread evenly over the sphere, shape (count, 3)."""
    k = np.arange(count) + 0.5
    turn, height = math.pi * (1 + math.sqrt(5)) * k, 1 - 2 * k / count
    across = np.sqrt(1 - height**2)
    found: Array = np.c_[across * np.cos(turn), across * np.sin(turn), height]
    return found


def _listed(points: Array) -> tuple[Vec3, ...]:
    kept = {(round(float(x), 2), round(float(y), 2), round(float(z), 2)) for x, y, z in points.tolist()}
    return tuple(sorted(kept))


def _hull(points: Array) -> tuple[Vec3, ...]:
    """Give few points that enclose the others: all corners, or of a rounded thing the farthest each way."""
    if len(points) > 8:
        points = np.asarray(trimesh.convex.convex_hull(points, qhull_options="QJ").vertices)
    if len(points) > _MOST:
        corner = trimesh.bounds.corners([points.min(axis=0), points.max(axis=0)])
        ways = np.vstack([_directions(2 * _MOST), corner - corner.mean(axis=0)])
        points = points[np.unique(np.argmax(points @ ways.T, axis=0))]
    return _listed(points)


def _of(pieces: list[Piece]) -> tuple[Vec3, ...]:
    return _hull(np.vstack([p.mesh.vertices for p in pieces]))


def _elbow_at(part: Part, share: float) -> tuple[Array, Array]:
    """Give a point of an elbow's centre line [in] and the direction there, so far along it; both of shape (3,)."""
    d, t = np.array(part.direction), np.array(part.turn_to)
    axis = np.cross(d, t) / np.linalg.norm(np.cross(d, t))
    inwards, turn = np.cross(axis, d), math.radians(part.angle_deg) * share
    at = np.array(part.start) + part.radius_in * (inwards * (1 - math.cos(turn)) + d * math.sin(turn))
    return at, d * math.cos(turn) + inwards * math.sin(turn)


def _duct(stage: Stage, name: str = "") -> Bodies:
    """Give the bodies of the best route's parts of a name, of all of them without one; an open end is the last of its duct."""
    best = stage.plan.best
    found = []
    parts = best.route.parts if best is not None else ()
    for part, wide in zip(parts, wide_sides(parts), strict=True):
        if name not in ("", part.id) or part.kind is PartKind.CAP:
            continue
        a, b, d = np.array(part.start), np.array(part.end), np.array(part.direction)
        sections = part.section, part.section_out
        if part.kind is PartKind.OPEN_END:
            ends = [(b - d * _RIM_IN, d, sections[0]), (b + d * _RIM_IN / 2, d, sections[0])]
        elif part.length_in < 1e-6:
            continue
        elif part.kind is PartKind.ELBOW:
            shares = np.linspace(0.0, 1.0, _BODIES_OF_AN_ELBOW + 1)
            ends = [(*_elbow_at(part, float(share)), sections[0]) for share in shares]
        else:
            ends = [(a, d, sections[0]), (b, d, sections[1])]
        rings = [ring(at, along, wide, section, grow=0.2)[::3] for at, along, section in ends]
        found += [_listed(np.vstack(pair)) for pair in pairwise(rings)]
    return tuple(found)


def _round(place: Vec3) -> tuple[Vec3, ...]:
    return _listed(np.array(place) + _ROUND_A_PLACE_IN * _directions(_MOST))


def _on_face(face: ExitFace, item: KeepOut) -> tuple[Vec3, ...]:
    """Give a thing outdoors as a box that stands 4 in off the face."""
    found = []
    for u in (item.lo[0], item.hi[0]):
        for z in (item.lo[1], item.hi[1]):
            for off in (face.at_in, face.at_in + 4 * face.sign):
                found.append((off, u, z) if face.axis == 0 else (u, off, z))
    return tuple(found)


def mark(stage: Stage, name: str, others: Mapping[str, Stage] | None = None) -> Mark | None:
    """Give what a name points at, None where nothing in the picture has it.

    With the name of another plan before it, ``wide:cap``, it is where that plan has the thing.
    """
    plan, _, own = name.rpartition(":")
    if plan:
        other = (others or {}).get(plan)
        return mark(other, own) if other is not None else None
    if name in ("duct", "cap", "cooktop", *_THINGS):
        whole = _duct(stage) if name == "duct" else ()
        bodies = whole or tuple(_of([p]) for p in _pieces(stage, name))
        return Mark(name, bodies) if bodies else None
    return _thing(stage, name) or _finding(stage, name)


def _thing(stage: Stage, name: str) -> Mark | None:
    """Give a part of the duct, a framed solid, or a thing outdoors."""
    part = _duct(stage, name)
    if part:
        return Mark(spoken(name), part)
    pieces = _pieces(stage, name)
    if pieces:
        return Mark(pieces[0].label, (_of(pieces),))
    seen = [(item, face) for face in stage.plan.frame.faces for item in face.keep_outs if item.id == name]
    if seen:  # other faces see it too, from round the corner or from above
        item, face = min(seen, key=lambda pair: (pair[0].heights_in is not None, pair[0].away_in))
        return Mark(item.label, (_on_face(face, item),))
    return None


def _finding(stage: Stage, code: str) -> Mark | None:
    """Give what a finding speaks of: the things that it names, else the place where it stands."""
    for finding in stage.plan.all_findings:
        if finding.code != code:
            continue
        named = [m for m in (_thing(stage, where) for where in finding.where) if m is not None]
        if named:
            return Mark(finding.title, tuple(b for m in named for b in m.bodies))
        place = place_of(stage.plan, finding.where, finding.place)
        if place is not None:
            return Mark(finding.title, (_round(place),))
    return None
