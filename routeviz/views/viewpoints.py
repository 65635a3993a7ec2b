"""Where to stand: named cameras that frame a plan, worked out from its own measures."""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np
import numpy.typing as npt

from routeviz.model.overhead import ceiling_over_hood_in, ceiling_span_in
from routeviz.model.plan import Plan
from routeviz.model.roofline import follows_rafters
from routeviz.model.solids import FaceKind, Vec3
from routeviz.views.caps import cap_top
from routeviz.views.furnishing import hood_bottom
from routeviz.views.house import CutAway

__all__ = ["NAMES", "Camera", "Viewport", "camera", "hidden_by_hood", "project", "square", "viewpoint_words"]

Array = npt.NDArray[np.float64]

_LEVEL_IN = 3.0  # a duct that rises more than this is seen above the hood

NAMES = {
    "room": "the whole room",
    "ceiling": "up into the ceiling",
    "along": "along the route",
    "outside": "outside at the cap",
}


@dataclass(frozen=True)
class Camera:
    """A camera in the house frame [in]; `angle_deg` is the vertical angle of view."""

    eye: Vec3
    target: Vec3
    angle_deg: float
    up: Vec3 = (0.0, 0.0, 1.0)


@dataclass(frozen=True)
class Viewport:
    """The part of the picture that the subject may fill, as shares of its width and height from the top left."""

    left: float = 0.0
    top: float = 0.0
    right: float = 1.0
    bottom: float = 1.0


def viewpoint_words(plan: Plan, viewpoint: str) -> str:
    """Say where a named camera stands; nobody stands at a cap that is not there."""
    best = plan.best
    if viewpoint != "outside" or (best is not None and best.route.capped):
        return NAMES[viewpoint]
    return "outside" if best is None or best.route.termination.kind is None else "outside at the open end"


def _basis(eye: Array, target: Array, up: Array) -> tuple[Array, Array, Array]:
    forward = (target - eye) / np.linalg.norm(target - eye)
    right = np.cross(forward, up)
    right /= np.linalg.norm(right)
    return right, np.cross(right, forward), forward


def project(camera: Camera, points: Array, aspect: float) -> Array:
    """Give where points fall in the picture: shares of width and height from the top left, and the depth [in]; (n, 3)."""
    eye, target = np.array(camera.eye), np.array(camera.target)
    right, up, forward = _basis(eye, target, np.array(camera.up))
    away = np.atleast_2d(points) - eye
    depth = away @ forward
    half = np.tan(math.radians(camera.angle_deg) / 2) * np.maximum(depth, 1e-6)
    seen: Array = np.c_[(away @ right / (half * aspect) + 1) / 2, (1 - away @ up / half) / 2, depth]
    return seen


def _frame(points: Array, direction: Vec3, angle_deg: float, aspect: float, port: Viewport) -> Camera:
    """Stand in a direction so far off that all points just fit in the viewport."""
    towards = np.array(direction) / np.linalg.norm(direction)
    target = points.mean(axis=0)
    distance = 3 * float(np.ptp(points, axis=0).max())
    for _ in range(60):
        eye = target + towards * distance
        camera = Camera(_vec(eye), _vec(target), angle_deg)
        seen = project(camera, points, aspect)
        lo, hi = seen[:, :2].min(axis=0), seen[:, :2].max(axis=0)
        want_lo, want_hi = np.array([port.left, port.top]), np.array([port.right, port.bottom])
        ratio = float(np.max((hi - lo) / (want_hi - want_lo)))
        off = (lo + hi) / 2 - (want_lo + want_hi) / 2
        right, up, _forward = _basis(eye, target, np.array([0.0, 0.0, 1.0]))
        height = 2 * math.tan(math.radians(angle_deg) / 2) * distance
        target = target + right * off[0] * height * aspect - up * off[1] * height
        distance *= 1 + (ratio - 1) * 0.8
    eye = target + towards * distance
    return Camera(_vec(eye), _vec(target), angle_deg)


def _vec(v: Array) -> Vec3:
    return float(v[0]), float(v[1]), float(v[2])


def _corners(lo: Vec3, hi: Vec3) -> Array:
    return np.array([[x, y, z] for x in (lo[0], hi[0]) for y in (lo[1], hi[1]) for z in (lo[2], hi[2])])


def hidden_by_hood(plan: Plan) -> bool:
    """Tell whether the whole duct lies behind the hood, so that it is seen only from outdoors, with the skin away."""
    if plan.best is None:
        return plan.scene.hood.outlet.place == "rear"
    parts = plan.best.route.parts
    ends = [p for part in parts for p in (part.start, part.end)]
    rise = max(z for _, _, z in ends) - min(z for _, _, z in ends)
    return plan.best.route.termination.direction[1] > 0.5 and rise < _LEVEL_IN


def _duct_points(plan: Plan, about: float = 0.0) -> Array:
    """Give the corners of a box about the duct, with so much room [in] beside it and above."""
    scene, best = plan.scene, plan.best
    x, bottom = scene.hood.centre_in, hood_bottom(plan)
    if best is None and scene.hood.outlet.place == "rear":
        z, wall = bottom + scene.hood.outlet.up_in, scene.walls[0].thickness_in
        return _corners((x - 14.0 - about, 0.0, z - 8.0 - about), (x + 14.0 + about, wall + 3.0, z + 8.0 + about))
    if best is None:
        top = scene.kitchen.ceiling_in + 20
        return _corners((x - 10, -18.0, bottom + scene.hood.body_in), (x + 10, 0.0, top))
    points = np.array([p for part in best.route.parts for p in (part.start, part.end)])
    reach = best.route.section.width_in
    room = np.array([about, 0.0, about])
    lo, hi = points.min(axis=0) - reach - room, points.max(axis=0) + reach + room
    return _corners(_vec(lo), _vec(hi))


def _outside(plan: Plan, aspect: float, port: Viewport) -> Camera:
    best = plan.best
    width = plan.scene.kitchen.width_in
    if best is None or best.route.termination.kind is None:
        back = plan.scene.walls[0].thickness_in
        points = _corners((0, back, 10), (width, back, plan.scene.kitchen.ceiling_in))
        return _frame(points, (-0.5, 1.0, 0.2), 34, aspect, port)
    end = best.route.termination
    x, y, z = end.point
    lean = -0.55 if x > width / 2 else 0.55
    if end.kind is FaceKind.ROOF:
        points = _corners((x - 42, y - 14, z - 14), (x + 42, y + 26, cap_top(plan, best.route)))
        side = 1.0 if y > -plan.scene.kitchen.depth_in / 2 else -1.0
        return _frame(points, (lean, side, 0.55), 32, aspect, port)
    out = np.array(end.direction)
    across = np.cross(out, [0, 0, 1.0])
    spread = np.array([[s * 46, v] for s in (-1, 1) for v in (-34, 30)])
    points = np.array([np.array(end.point) + across * s + np.array([0, 0, v]) for s, v in spread])
    direction = out + across * (0.6 if lean > 0 else -0.6) * (1 if across[0] >= 0 else -1) + np.array([0, 0, 0.22])
    return _frame(points, _vec(direction), 34, aspect, port)


def square(plan: Plan, *, aspect: float, port: Viewport) -> Camera:
    """Stand straight in front of the hood wall, so that lengths along it and up it are seen alike."""
    width, high = plan.scene.kitchen.width_in, plan.scene.kitchen.ceiling_in + 12
    return _frame(_corners((0.0, 0.0, 0.0), (width, 0.0, high)), (0.0, -1.0, 0.0), 20, aspect, port)


def camera(plan: Plan, cut: CutAway, viewpoint: str, *, aspect: float, port: Viewport | None = None) -> Camera:
    """Give a named camera for a plan.

    Parameters
    ----------
    viewpoint : str
        One of `NAMES`: "room", "ceiling", "along", "outside".
    aspect : float
        Width of the picture over its height.
    port : Viewport
        Where in the picture the subject may stand; the whole picture when left out.

    Raises
    ------
    ValueError
        If there is no viewpoint of that name.
    """
    port = port or Viewport()
    scene, best = plan.scene, plan.best
    width, ceiling, x = scene.kitchen.width_in, scene.kitchen.ceiling_in, scene.hood.centre_in
    top = max(ceiling + 16, cap_top(plan, best.route) if best is not None else ceiling + 30)
    if cut.top_in < 1e5:
        top = max(top, cut.top_in)
    side = 1.0 if x <= width / 2 + 12 else -1.0
    if viewpoint == "room":
        points = _corners((-6, cut.front_in, 2), (width + 6, 0, ceiling + 8))
        peak = [best.route.termination.point if best is not None else (x, 0, top)]
        points = np.vstack([points, [(peak[0][0], peak[0][1], top)]])
        if follows_rafters(scene) and scene.roof is not None:  # the ridge too, where it is over the room
            low, high = ceiling_span_in(scene, (0.0, width), (0.0, scene.kitchen.depth_in))
            u = min(max(scene.roof.ridge_at_in, 0.0), width)
            points = np.vstack([points, [(u if high > low else x, 0.0, high + 16.0)]])
        return _frame(points, (0.22 * side, -1.0, 0.05), 32, aspect, port)
    if viewpoint == "ceiling":
        near, over = max(cut.front_in, -40), ceiling_over_hood_in(scene)
        if over > ceiling + 1.0:  # under a slope the hole and the rafters beside it lie high over the wall
            points = _corners((x - 30, near, over - 30), (x + 30, 0, min(top, over + 30)))
            return _frame(points, (0.16 * side, -1.0, -0.2), 40, aspect, port)
        points = _corners((x - 38, near, ceiling - 14), (x + 38, 0, min(top, ceiling + 26)))
        return _frame(points, (0.16 * side, -1.0, -0.34), 40, aspect, port)
    if viewpoint == "along" and hidden_by_hood(plan):
        return _frame(_duct_points(plan, about=9.0), (0.62 * side, 1.0, 0.42), 36, aspect, port)
    if viewpoint == "along":
        # a run that soon goes out through the wall behind is short: its studs and the hood say where it is
        about = 5.0 if best is not None and best.route.termination.direction[1] > 0.5 else 0.0
        return _frame(_duct_points(plan, about=about), (-0.5 * side, -1.0, 0.22), 36, aspect, port)
    if viewpoint == "outside":
        return _outside(plan, aspect, port)
    raise ValueError(f"no viewpoint {viewpoint!r}; there are {', '.join(NAMES)}")
