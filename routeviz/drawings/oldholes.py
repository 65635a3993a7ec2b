"""Old holes in a wall or roof seen square on: dashed, each with its name and what becomes of it."""

from __future__ import annotations

from routeviz.drawings import palette as ink
from routeviz.drawings.flat import flat
from routeviz.drawings.house import View
from routeviz.drawings.sketch import Sketch
from routeviz.model.oldholes import axis_of, centre_of, size_in, to_close
from routeviz.model.route import Route
from routeviz.model.scene import Obstacle, ObstacleKind, Scene
from routeviz.model.spoken import spoken

__all__ = ["draw_old_holes"]

_DASH = (1.2, 0.7)


def draw_old_holes(sketch: Sketch, view: View, scene: Scene, route: Route | None, reach: tuple[float, float]) -> None:
    """Draw the old holes along the view's axis that lie in its region and between the `reach` of depths [in]."""
    closed = {old.hole.id: old for old in to_close(scene, route)} if route is not None else {}
    left, low, right, high = view.region
    for hole in scene.obstacles:
        if hole.kind is not ObstacleKind.HOLE or axis_of(hole) != view.axis:
            continue
        centre = centre_of(hole)
        deep = (hole.width_in, hole.depth_in, hole.height_in)[view.axis] / 2
        u, v = flat(centre, view.axis)
        inside = centre[view.axis] - deep <= reach[1] and centre[view.axis] + deep >= reach[0]
        if not inside or not (left <= u <= right and low <= v <= high):
            continue
        _outline(sketch, view, hole, (u, v))
        name = spoken(hole.id)
        old = closed.get(hole.id)
        words = name if old is None else f"{name}: close it" if old.whole else f"{name}: close the rest"
        x, y = view.at(u, v)
        rim = size_in(hole) / 2 * view.scale
        places = [(x + side * (rim + a), y + b) for a in (4.0, 8.0, 13.0, 20.0) for b in (-7.0, 5.0, -11.0, 8.0, -3.5, -15.0)
                  for side in (-1.0, 1.0)]  # fmt: skip
        sketch.note((x, y - rim), words, places, ink.LEAST, halo=ink.WALL)


def _outline(sketch: Sketch, view: View, hole: Obstacle, at: tuple[float, float]) -> None:
    if hole.diameter_in is not None:
        sketch.disc(view.at(*at), hole.diameter_in / 2 * view.scale, ink.FINE, dash=_DASH, name=hole.id)
        return
    half = [side / 2 for k, side in enumerate((hole.width_in, hole.depth_in, hole.height_in)) if k != view.axis]
    corners = [(at[0] + a * half[0], at[1] + b * half[1]) for a, b in ((-1, -1), (1, -1), (1, 1), (-1, 1))]
    sketch.path([view.at(*p) for p in corners], ink.FINE, closed=True, dash=_DASH, name=hole.id)
