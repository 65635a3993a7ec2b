"""Old holes beside the holes that a route needs: which serve, which are left over and must be closed."""

from __future__ import annotations

import math
from dataclasses import dataclass

from routeviz.model.route import Penetration, Route
from routeviz.model.scene import Obstacle, ObstacleKind, Scene
from routeviz.model.solids import Vec3
from routeviz.model.spoken import spoken

__all__ = ["ToClose", "axis_of", "centre_of", "met_by", "size_in", "to_close", "web_in"]

_RIM_IN = 1.0  # so much of an old hole round the new one is closed with the gap round the duct


@dataclass(frozen=True, slots=True)
class ToClose:
    """An old hole of which all, or what the new hole leaves of it, has to be closed."""

    hole: Obstacle
    whole: bool

    @property
    def name(self) -> str:
        """Give its name as people say it."""
        name = spoken(self.hole.id)
        return name if "hole" in name else f"old hole {name}"


def size_in(hole: Obstacle) -> float:
    """Give an old hole's width [in]: its diameter, or its lesser side."""
    return hole.diameter_in if hole.diameter_in is not None else min(_sides(hole)[k] for k in _across(hole))


def centre_of(hole: Obstacle) -> Vec3:
    """Give the middle of an old hole."""
    return (hole.left_in + hole.width_in / 2, -hole.out_in - hole.depth_in / 2, hole.bottom_in + hole.height_in / 2)


def axis_of(hole: Obstacle) -> int:
    """Give the axis that an old hole runs along: where it is not as wide as it is thick, else its shortest side."""
    sides = _sides(hole)
    if hole.diameter_in is not None and max(sides) - min(sides) > 1e-6:
        return max(range(3), key=lambda k: abs(sides[k] - (hole.diameter_in or 0.0)))
    return min(range(3), key=lambda k: sides[k])


def _sides(hole: Obstacle) -> tuple[float, float, float]:
    return hole.width_in, hole.depth_in, hole.height_in


def _across(hole: Obstacle) -> tuple[int, ...]:
    return tuple(k for k in range(3) if k != axis_of(hole))


def met_by(hole: Obstacle, crossings: tuple[Penetration, ...]) -> tuple[float, Penetration] | None:
    """Give the crossing in the hole's plane whose middle is nearest to it, and how far off it is [in].

    None where the new hole does not reach the old one.
    """
    reached = [f for f in _beside(hole, crossings) if f[0] <= (size_in(hole) + max(f[1].hole_in)) / 2]
    return min(reached, key=lambda f: f[0], default=None)


def web_in(hole: Obstacle, crossings: tuple[Penetration, ...]) -> float | None:
    """Give what is left between an old hole and the new one nearest to it, edge to edge [in]; None where no new one is."""
    return min((off - (size_in(hole) + max(c.hole_in)) / 2 for off, c in _beside(hole, crossings)), default=None)


def _beside(hole: Obstacle, crossings: tuple[Penetration, ...]) -> list[tuple[float, Penetration]]:
    """Give the crossings in the hole's plane, each with how far its middle is off the hole's [in]."""
    middle, thin = centre_of(hole), min(range(3), key=lambda a: _sides(hole)[a])
    found = []
    for crossing in crossings:
        axis = max(range(3), key=lambda k: (abs(crossing.direction[k]), k))
        ends = sorted((crossing.centre[axis], crossing.leave[axis]))
        near = ends[0] - 6.0 <= middle[axis] <= ends[1] + 6.0
        if axis == thin or (hole.diameter_in is not None and near):
            off = math.hypot(*(crossing.centre[a] - middle[a] for a in range(3) if a != axis))
            found.append((off, crossing))
    return found


def to_close(scene: Scene, route: Route) -> tuple[ToClose, ...]:
    """Give the old holes that the route leaves open, wholly or in part."""
    found = []
    for hole in scene.obstacles:
        if hole.kind is not ObstacleKind.HOLE:
            continue
        met = met_by(hole, route.penetrations)
        if met is None:
            found.append(ToClose(hole, whole=True))
        elif met[0] + size_in(hole) / 2 > max(met[1].hole_in) / 2 + _RIM_IN:
            found.append(ToClose(hole, whole=False))
    return tuple(found)
