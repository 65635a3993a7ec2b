"""Holes in the hood wall seen from the room: the one that the duct takes, with its size and name."""

from __future__ import annotations

from collections.abc import Sequence

from routeviz.drawings import palette as ink
from routeviz.drawings.house import View
from routeviz.drawings.sketch import Sketch
from routeviz.drawings.words import figure, hole_size
from routeviz.model.scene import Scene
from routeviz.model.takeoff import Hole

__all__ = ["draw_wall_hole", "name_wall_hole", "wall_hole"]

_ON_FACE_IN = 0.05  # so near the finished face a hole is in the board


def wall_hole(holes: Sequence[Hole]) -> Hole | None:
    """Give the hole in the finished face of the hood wall; None where the duct leaves another way."""
    return next((h for h in holes if abs(h.centre[1]) <= _ON_FACE_IN), None)


def draw_wall_hole(sketch: Sketch, view: View, hole: Hole) -> None:
    """Draw the duct's hole full, with its centre; its words come later, when every line is drawn."""
    u, v = hole.centre[0], hole.centre[2]
    a, b = hole.size_in[0] / 2, hole.size_in[1] / 2
    if hole.shape == "round":
        sketch.disc(view.at(u, v), a * view.scale, ink.MEDIUM, colour=ink.UP, name=hole.solid)
    else:
        sketch.rect(view.at(u - a, v - b), view.at(u + a, v + b), ink.MEDIUM, colour=ink.UP, name=hole.solid)
    x, y = view.at(u, v)
    sketch.line((x - 3, y), (x + 3, y), ink.HAIR, colour=ink.UP)
    sketch.line((x, y - 3), (x, y + 3), ink.HAIR, colour=ink.UP)


def name_wall_hole(sketch: Sketch, view: View, hole: Hole, scene: Scene) -> None:
    """Write the hole's size and the height of its centre beside it, on the wall that is shown."""
    x, y = view.at(hole.centre[0], hole.centre[2])
    rim = hole.size_in[0] / 2 * view.scale
    size, up = hole_size(hole, scene), f"{figure(hole.centre[2], scene)} up"
    places = [
        (x + side * (rim + a), y + b)
        for b in (2.0, -4.0, 6.0, -8.0, 10.0, -12.0)
        for a in (4.0, 8.0, 14.0)
        for side in (1, -1)
    ]
    tip, words = (x + rim * 0.7, y - rim * 0.7), f"duct hole, {size}, centre {up}"
    wall = sketch.within((*view.at(*view.region[:2]), *view.at(*view.region[2:])))
    if not wall.note(tip, words, places, ink.LEAST, colour=ink.UP, halo=ink.WALL, short=f"duct hole, {size}, {up}"):
        sketch.note(tip, words, places, ink.LEAST, colour=ink.UP, halo=ink.WALL)
