"""Caps in any flat view: on a roof, on a wall from the side, on a wall from the front."""

from __future__ import annotations

import math

from routeviz.drawings import palette as ink
from routeviz.drawings.flat import flat
from routeviz.drawings.house import View
from routeviz.drawings.sketch import Sketch
from routeviz.model.route import Route
from routeviz.model.scene import Scene
from routeviz.model.solids import FaceKind, Frame

__all__ = ["cap_foot_in", "cap_size_in", "draw_cap"]


def cap_size_in(route: Route, scene: Scene) -> float:
    """Give the side of a wall cap's flange, or the width of a roof cap [in]."""
    wide = max(route.parts[-1].section.width_in, route.parts[-1].section.height_in)
    if scene.cap.wall_flange_in is not None and abs(route.termination.direction[2]) < 0.5:
        return scene.cap.wall_flange_in
    return wide + 4.0


def cap_foot_in(route: Route, frame: Frame) -> float:
    """Give the height of the roof's surface under the route's end [in]; of the end itself on walls."""
    x, y, z = route.termination.point
    face = next((f for f in frame.faces if f.id == route.termination.face), None)
    if face is None or face.kind is not FaceKind.ROOF:
        return z
    return min(z, face.plane[0] + face.plane[1] * x + face.plane[2] * y)


def draw_cap(sketch: Sketch, view: View, route: Route, scene: Scene, frame: Frame) -> None:
    """Draw the cap where the route ends; nothing for an open end."""
    if not route.capped:
        return
    u, v = flat(route.termination.point, view.axis)
    reach = cap_size_in(route, scene) / 2
    left, low, right, high = view.region
    over = scene.cap.roof_stub_in + 5.0 if route.termination.direction[2] > 0.5 and view.axis != 2 else reach
    foot = cap_foot_in(route, frame) if view.axis != 2 else v
    if not (left <= u <= right and low <= foot and max(v, foot + over) <= high + 2.0):
        return
    way = route.termination.direction
    axis = max(range(3), key=lambda k: abs(way[k]))
    if axis == view.axis:
        _front(sketch, view, u, v, route, scene)
    elif axis == 2:
        _roof_side(sketch, view, (u, cap_foot_in(route, frame)), _slope(route, frame, view.axis), route, scene)
    else:
        _wall_side(sketch, view, (u, v), flat(way, view.axis), route, scene)


def _front(sketch: Sketch, view: View, u: float, v: float, route: Route, scene: Scene) -> None:
    half = cap_size_in(route, scene) / 2
    section = route.parts[-1].section
    if abs(route.termination.direction[2]) > 0.5:
        sketch.disc(view.at(u, v), half * view.scale, ink.MEDIUM, fill=ink.STEEL)
    else:
        sketch.rect(view.at(u - half, v - half), view.at(u + half, v + half), ink.MEDIUM, fill=ink.STEEL)
    if section.is_round:
        sketch.disc(view.at(u, v), section.width_in / 2 * view.scale, ink.HEAVY, fill=ink.STEEL_LIGHT, colour=ink.UP)
    else:
        wide = route.parts[-1].wide or (1.0, 0.0, 0.0)
        along = flat(wide, view.axis)
        w, h = section.width_in / 2, section.height_in / 2
        du, dv = (w, h) if abs(along[0]) > 0.5 else (h, w)
        sketch.rect(view.at(u - du, v - dv), view.at(u + du, v + dv), ink.HEAVY, fill=ink.STEEL_LIGHT, colour=ink.UP)
    sketch.line(view.at(u - half - 1.5, v), view.at(u + half + 1.5, v), ink.HAIR, colour=ink.UP)
    sketch.line(view.at(u, v - half - 1.5), view.at(u, v + half + 1.5), ink.HAIR, colour=ink.UP)


def _slope(route: Route, frame: Frame, axis: int) -> float:
    """Give how much the roof under the cap rises for each inch to the right in a view along an axis."""
    face = next((f for f in frame.faces if f.id == route.termination.face), None)
    return face.plane[2 if axis == 0 else 1] if face is not None and face.kind is FaceKind.ROOF else 0.0


def _roof_side(sketch: Sketch, view: View, at: tuple[float, float], slope: float, route: Route, scene: Scene) -> None:
    """Draw a roof's cap from the side: the flashing lies on the roof, the stub stands plumb."""
    u, v = at
    r = max(route.parts[-1].section.width_in, route.parts[-1].section.height_in) / 2
    stub = scene.cap.roof_stub_in
    flat_in = 1.0 / math.hypot(1.0, slope)  # of an inch along the roof

    def shape(points: tuple[tuple[float, float], ...]) -> None:
        sketch.path([view.at(u + a, v + b) for a, b in points], ink.MEDIUM, fill=ink.STEEL, closed=True, name="cap")

    foot, neck = (r + 5.0) * flat_in, r + 1.6
    foot = max(foot, neck + 0.5)
    shape(((-foot, -slope * foot), (foot, slope * foot), (neck, slope * neck + 1.2), (-neck, -slope * neck + 1.2)))
    low = slope * (r + 0.5)
    shape(((-r - 0.5, 1.2 - low), (r + 0.5, 1.2 + low), (r + 0.5, stub), (-r - 0.5, stub)))
    top = stub + 0.4
    shape(((-r - 3.4, top), (r + 3.4, top), (r + 3.4, top + 1), (1, top + 3.8), (-1, top + 3.8), (-r - 3.4, top + 1)))


def _wall_side(
    sketch: Sketch, view: View, at: tuple[float, float], way: tuple[float, float], route: Route, scene: Scene
) -> None:
    """Draw a wall's cap seen from its side or from above; `way` is the direction out, flat."""
    half = cap_size_in(route, scene) / 2
    across = abs(way[0]) > abs(way[1])
    sign = 1.0 if way[0 if across else 1] > 0 else -1.0
    r = half - 2.0

    def shape(points: tuple[tuple[float, float], ...]) -> None:
        sketch.path(
            [view.at(at[0] + sign * a, at[1] + b) if across else view.at(at[0] + b, at[1] + sign * a) for a, b in points],
            ink.MEDIUM, fill=ink.STEEL, closed=True, name="cap",
        )  # fmt: skip

    shape(((0, -half), (0.5, -half), (0.5, half), (0, half)))
    if view.axis == 2:
        shape(((0.5, r), (0.5, -r), (5.0, -r), (5.0, r)))
    else:
        shape(((0.5, r), (0.5, -r), (2.0, -r), (4.6, -r - 1.2), (5.2, -r), (2.2, r)))
