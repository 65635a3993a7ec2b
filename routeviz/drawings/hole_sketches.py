"""Small sketches for the hole schedule: the two edges, the hole, its figures; not to scale."""

from __future__ import annotations

from routeviz.drawings import palette as ink
from routeviz.drawings.lettering import fitted, width
from routeviz.drawings.primitives import Anchor, Face
from routeviz.drawings.sketch import Sketch
from routeviz.drawings.words import figure
from routeviz.model.scene import RoofForm, RunDirection, Scene, WallSide
from routeviz.model.takeoff import Hole

__all__ = ["SKETCH", "draw_hole_sketch"]

SKETCH = (76.0, 50.0)  # width and height of one sketch [mm]


def draw_hole_sketch(sketch: Sketch, at: tuple[float, float], letter: str, hole: Hole, scene: Scene) -> None:
    """Draw one group's hole from its two edges; `at` is the lower left corner."""
    x, y = at
    wall_seen = "floor" in hole.from_other_name
    left, right = x + 12.0, x + SKETCH[0] - 4.0
    low, high = y + 9.0, y + SKETCH[1] - 6.0
    edge_y = low if wall_seen else high
    centre = (left + 36.0, (low + high) / 2 + (2.0 if wall_seen else -2.0))
    sketch.line((left, low), (left, high), ink.HEAVY)
    sketch.hatch(((left - 1.6, low), (left, low), (left, high), (left - 1.6, high)), 1.4)
    sketch.line((left, edge_y), (right, edge_y), ink.HEAVY)
    band = edge_y - 1.6 if wall_seen else edge_y + 1.6
    sketch.hatch(((left, edge_y), (right, edge_y), (right, band), (left, band)), 1.4)
    _hole(sketch, centre, hole, across=_slopes_across(scene))
    reach = 9.5
    level = centre[1] + (reach if wall_seen else -reach)
    sketch.dim_across(
        left, centre[0], level, figure(hole.from_left_in, scene), from_y=(level, centre[1]), halo=ink.WHITE
    )
    aside = centre[0] + 14.0
    sketch.dim_up(
        edge_y,
        centre[1],
        aside,
        figure(hole.from_other_in, scene),
        from_x=(aside, centre[0]),
        right=True,
        halo=ink.WHITE,
    )
    words, size = fitted(f"{letter}  {hole.layer}", ink.BODY, Face.BOLD, SKETCH[0] - 6.0, ink.LEAST)
    sketch.text((x + 2.0, y + SKETCH[1] - 2.0), words, size, Face.BOLD)
    first = hole.from_left_name.removeprefix("from the ").removeprefix("out from the ")
    turned, turned_size = fitted(first, ink.LEAST, Face.SANS, high - low, ink.LEAST)
    if width(turned, turned_size) <= high - low:
        sketch.text((left - 2.6, (low + high) / 2), turned, turned_size, anchor=Anchor.MIDDLE, turn=90, colour=ink.INK2)
    other = hole.from_other_name.split(",")[0].removeprefix("out from the ").removeprefix("above the ")
    flat_words, flat_size = fitted(other, ink.LEAST, Face.SANS, right - left - 4.0, ink.LEAST)
    sketch.text(
        (right, band - 3.0 if wall_seen else band + 0.9), flat_words, flat_size, anchor=Anchor.RIGHT, colour=ink.INK2
    )


def _slopes_across(scene: Scene) -> bool:
    """Whether the roof falls along the hood wall, so that an ellipse is long from left to right."""
    roof = scene.roof
    if roof is None:
        return False
    if roof.form is RoofForm.SHED:
        return roof.high_side in (WallSide.LEFT, WallSide.RIGHT)
    return roof.ridge is RunDirection.OUT


def _hole(sketch: Sketch, centre: tuple[float, float], hole: Hole, *, across: bool) -> None:
    """Draw the hole's shape with sides in proportion, the longer one 13 mm; an ellipse is long up the slope."""
    scale = 6.5 / max(hole.size_in)
    w, h = hole.size_in[0] * scale, hole.size_in[1] * scale
    if hole.shape == "ellipse":
        w, h = (max(w, h), min(w, h)) if across else (min(w, h), max(w, h))
    if hole.shape == "round":
        sketch.disc(centre, w, ink.HEAVY, colour=ink.UP, fill=ink.STEEL_LIGHT)
    elif hole.shape == "ellipse":
        from math import cos, pi, sin

        ring = [(centre[0] + w * cos(k * pi / 24), centre[1] + h * sin(k * pi / 24)) for k in range(48)]
        sketch.path(ring, ink.HEAVY, colour=ink.UP, fill=ink.STEEL_LIGHT, closed=True)
    else:
        sketch.rect(
            (centre[0] - w, centre[1] - h),
            (centre[0] + w, centre[1] + h),
            ink.HEAVY,
            colour=ink.UP,
            fill=ink.STEEL_LIGHT,
        )
    sketch.line((centre[0] - 9.0, centre[1]), (centre[0] + 9.0, centre[1]), ink.HAIR, colour=ink.UP)
    sketch.line((centre[0], centre[1] - 9.0), (centre[0], centre[1] + 9.0), ink.HAIR, colour=ink.UP)
