"""What a duct takes of the cabinets that hide it."""

from __future__ import annotations

import math
from itertools import pairwise

from routeviz.geometry import clip
from routeviz.model.route import Part, PartKind, Route
from routeviz.model.scene import ObstacleKind, Scene
from routeviz.model.solids import Box, obstacle_box
from routeviz.model.spoken import spoken
from routeviz.model.takeoff import CabinetSpace

__all__ = ["cabinet_space"]

_LAID = (PartKind.STRAIGHT, PartKind.ELBOW, PartKind.TRANSITION, PartKind.FLEX)


def cabinet_space(route: Route, scene: Scene) -> tuple[CabinetSpace, ...]:
    """Give what the duct, boxed in with square corners, takes of each cabinet that it runs through.

    The boxing is the duct's sides plus the scene's clearance all round, along the centre line with its corners square.
    Exact geometry of the given sizes.
    """
    found = []
    for thing in scene.obstacles:
        if thing.kind is not ObstacleKind.CABINET or not thing.hides_duct:
            continue
        box = obstacle_box(thing)
        lost = math.fsum(_girth_in2(part, scene) * _inside_in(part, box) for part in route.parts if part.kind in _LAID)
        if lost > 0:
            whole = thing.width_in * thing.depth_in * thing.height_in
            label = spoken(thing.id)
            found.append(CabinetSpace(thing.id, label, min(lost, whole), whole))
    return tuple(found)


def _girth_in2(part: Part, scene: Scene) -> float:
    """Give the area of the boxing across the run [in2]; a part that changes its section needs room for the larger."""
    gap = 2 * scene.duct.clearance_in
    return max((s.width_in + gap) * (s.height_in + gap) for s in (part.section, part.section_out))


def _inside_in(part: Part, box: Box) -> float:
    """Give how much of a part's centre line, with its corner square, lies in the box [in]."""
    points = [part.start, part.corner, part.end] if part.corner is not None else [part.start, part.end]
    inside = 0.0
    for a, b in pairwise(points):
        met = clip(box, a, b) if math.dist(a, b) > 0 else None
        if met is not None:
            inside += (met[1] - met[0]) * math.dist(a, b)
    return inside
