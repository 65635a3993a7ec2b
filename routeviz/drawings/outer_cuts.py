"""What is cut from outdoors: the hole of each outer layer with its size, on the drawing of wall or roof."""

from __future__ import annotations

from routeviz.drawings import palette as ink
from routeviz.drawings.flat import flat
from routeviz.drawings.house import View
from routeviz.drawings.lettering import box
from routeviz.drawings.primitives import Anchor, Text
from routeviz.drawings.sketch import Sketch
from routeviz.drawings.words import figure
from routeviz.model.plan import Plan
from routeviz.model.route import Route
from routeviz.model.scene import Scene
from routeviz.model.takeoff import Hole

__all__ = ["name_cuts"]


def name_cuts(sketch: Sketch, view: View, plan: Plan, route: Route, side: float) -> None:
    """Draw the hole of each outer layer dashed and say its size: what the one who stands here cuts.

    The words stand on the `side` of the cap that is free: -1 towards the low end, 1 towards the high one.
    """
    away = side * view.frame.flip
    holes = next((o.takeoff.holes for o in plan.options if o.route is route), ())
    outer = [h for h in holes if h.outside and _last(plan, h)]
    for hole in outer:
        _outline(sketch, view, hole)
    for n, hole in enumerate(reversed(outer)):  # the outermost first, so that no leader crosses a text
        x, y = view.at(*flat(hole.centre, view.axis))
        rim = max(hole.size_in) / 2 * view.scale
        down = 0.7 if hole.shape != "rectangular" else 1.0
        words = f"cut {plan.frame.solid(hole.solid).material or hole.layer}: {_size(hole, plan.scene)}"
        for way in (away, -away):
            tip = (x + way * down * rim, y - 0.7 * rim)
            places = [
                (tip[0] + way * a, tip[1] - b)
                for b in (5.0 + 4.5 * n, 10.0 + 4.5 * n, 16.0 + 4.5 * n, 22.0 + 4.5 * n)
                for a in (7.0, 14.0)
            ]
            if way == away and not any(
                sketch.taken.is_free(box(Text(p, words, ink.SMALL, anchor=_reads(way)))) for p in places
            ):
                continue
            sketch.note(tip, words, places, ink.SMALL, halo=ink.CABINET)
            break


def _reads(way: float) -> Anchor:
    return Anchor.LEFT if way > 0 else Anchor.RIGHT


def _last(plan: Plan, hole: Hole) -> bool:
    """Whether a hole is one of the way's last group, in the layers that are seen square on from outdoors."""
    return plan.best is None or hole.group == max(h.group for h in plan.best.takeoff.holes)


def _size(hole: Hole, scene: Scene) -> str:
    first, second = (figure(side, scene) for side in hole.size_in)
    if hole.shape == "rectangular":
        lies = f" ({hole.lies})" if hole.lies else ""
        return f"{first} x {second}{lies}" + (" for the mounting block" if "block" in hole.note else "")
    if hole.shape == "ellipse":
        long, short = (figure(side, scene) for side in sorted(hole.size_in, reverse=True))
        return f"ellipse {long} up the slope x {short}"
    return f"{first} {hole.shape}" if first == second else f"{first} x {second} {hole.shape}"


def _outline(sketch: Sketch, view: View, hole: Hole) -> None:
    u, v = flat(hole.centre, view.axis)
    if hole.shape == "round":
        sketch.disc(view.at(u, v), hole.size_in[0] / 2 * view.scale, ink.FINE, dash=ink.HIDDEN_DASH, name=hole.solid)
    elif hole.shape == "rectangular":
        a, b = (side / 2 for side in hole.size_in)
        sketch.rect(view.at(u - a, v - b), view.at(u + a, v + b), ink.FINE, dash=ink.HIDDEN_DASH, name=hole.solid)
