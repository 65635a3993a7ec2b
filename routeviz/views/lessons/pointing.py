"""What a lesson points at: bodies that enclose a member, a part of the duct, or the place of a finding."""

from __future__ import annotations

from collections.abc import Iterator

import numpy as np
import trimesh

from routeviz.model.lesson import Mark
from routeviz.model.solids import ExitFace, KeepOut, Vec3
from routeviz.model.spoken import spoken
from routeviz.views.marks import place_of
from routeviz.views.parts import Layer, Piece
from routeviz.views.stage import Stage

__all__ = ["mark", "names"]

_THINGS = {"hood": Layer.HOOD, "cover": Layer.COVER, "roof": Layer.ROOF}
_MOST = 40
_ROUND_A_PLACE_IN = 5.0


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
    yield from (p.name.removeprefix("duct-") for p in stage.pieces if p.name.startswith("duct-"))
    yield from dict.fromkeys(k.id for face in stage.plan.frame.faces for k in face.keep_outs if k.id)
    yield from dict.fromkeys(f.code for f in stage.flags)


def _hull(pieces: list[Piece]) -> tuple[Vec3, ...]:
    points = np.vstack([p.mesh.vertices for p in pieces])
    if len(points) > 8:
        points = np.asarray(trimesh.convex.convex_hull(points, qhull_options="QJ").vertices)
    if len(points) > _MOST:
        points = trimesh.bounds.corners([points.min(axis=0), points.max(axis=0)])
    return tuple((round(float(x), 2), round(float(y), 2), round(float(z), 2)) for x, y, z in sorted(points.tolist()))


def _round(place: Vec3) -> tuple[Vec3, ...]:
    r = _ROUND_A_PLACE_IN
    return tuple(
        (place[0] + a * r, place[1] + b * r, place[2] + c * r) for a in (-1, 1) for b in (-1, 1) for c in (-1, 1)
    )


def _on_face(face: ExitFace, item: KeepOut) -> tuple[Vec3, ...]:
    """Give a thing outdoors as a box that stands 4 in off the face."""
    found = []
    for u in (item.lo[0], item.hi[0]):
        for z in (item.lo[1], item.hi[1]):
            for off in (face.at_in, face.at_in + 4 * face.sign):
                found.append((off, u, z) if face.axis == 0 else (u, off, z))
    return tuple(found)


def mark(stage: Stage, name: str) -> Mark | None:
    """Give what a name points at, None where nothing in the picture has it."""
    pieces = _pieces(stage, name)
    if pieces:
        if name in ("duct", "cap", "cooktop", *_THINGS):
            return Mark(name, tuple(_hull([p]) for p in pieces))
        return Mark(pieces[0].label, (_hull(pieces),))
    best = stage.plan.best
    for part in best.route.parts if best is not None else ():
        if part.id == name:  # an open end has no body
            return Mark(spoken(name), (_round(part.end),))
    seen = [(item, face) for face in stage.plan.frame.faces for item in face.keep_outs if item.id == name]
    if seen:  # other faces see it too, from round the corner or from above
        item, face = min(seen, key=lambda pair: (pair[0].heights_in is not None, pair[0].away_in))
        return Mark(item.label, (_on_face(face, item),))
    for finding in stage.plan.all_findings:
        if finding.code == name:
            place = place_of(stage.plan, finding.where, finding.place)
            if place is not None:
                return Mark(finding.title, (_round(place),))
    return None
