"""What stands on the template pages at full size: marks, studs, the duct's hole, and their words."""

from __future__ import annotations

import math

from routeviz.drawings import palette as ink
from routeviz.drawings.flat import clipped, ends_of
from routeviz.drawings.house import View
from routeviz.drawings.primitives import Anchor, Point
from routeviz.drawings.sketch import Sketch
from routeviz.drawings.taken import Rect
from routeviz.drawings.words import hole_size, length
from routeviz.model.scene import Scene, WallSide
from routeviz.model.solids import Frame, SolidKind
from routeviz.model.takeoff import Hole, Mark
from routeviz.units import drill_text

__all__ = ["draw_hole", "draw_mark", "draw_studs", "name_hole", "name_mark", "name_rows", "shows"]

_CIRCLE = 144  # sides of a round hole
_LEAST_SQUARE_IN = 4.0 / 25.4  # of a mark that is not drilled into wood


def shows(view: View, u: float, v: float) -> bool:
    """Whether a place [in] lies on this page."""
    left, low, right, high = view.region
    return left <= u <= right and low <= v <= high


def draw_studs(sketch: Sketch, view: View, frame: Frame, head: Rect) -> None:
    """Draw the edges of the studs behind, dashed and broken off round the page's head, each with its number at its foot."""
    left, low, right, _ = view.region
    for solid in frame.solids:
        if solid.side is not WallSide.HOOD or solid.space != "kitchen" or solid.kind is not SolidKind.STUD:
            continue
        (u0, u1), (v0, v1) = ends_of(solid.shape, 0), ends_of(solid.shape, 2)
        for piece in clipped(((u0, v0), (u1, v0), (u1, v1), (u0, v1)), view.region):
            for line in _outside_of(head, [view.at(*p) for p in piece]):
                sketch.path(line, ink.HAIR, colour=ink.TIMBER_EDGE, dash=ink.HIDDEN_DASH)
        middle = (u0 + u1) / 2
        if solid.member is not None and solid.member.number and left <= middle <= right and v0 <= low + 0.5:
            (x, y), words = view.at(middle, low), f"stud {solid.member.number}"
            sketch.label([((x, y + up), Anchor.MIDDLE) for up in (4.0, 12.0)], words, ink.BODY, colour=ink.TIMBER_EDGE)


def _outside_of(head: Rect, ring: list[Point]) -> list[list[Point]]:
    """Give what of a closed line lies outside a box [mm]."""
    from shapely import box
    from shapely.geometry import LinearRing

    left = LinearRing(ring).difference(box(*head))
    return [
        [(float(x), float(y)) for x, y in line.coords] for line in getattr(left, "geoms", [left]) if line.length > 0
    ]


def draw_mark(sketch: Sketch, view: View, mark: Mark) -> None:
    """Draw a mark at the size of its drill: a filled disc into wood, an open square elsewhere, as on the marking sheet."""
    x, y = view.at(mark.left_in, mark.height_in)
    reach = mark.pilot_in / 2 * 25.4
    if mark.wood:
        sketch.disc((x, y), reach, ink.MEDIUM, fill=ink.INK)
    else:
        reach = max(reach, _LEAST_SQUARE_IN / 2 * 25.4)
        sketch.rect((x - reach, y - reach), (x + reach, y + reach), ink.MEDIUM)
    inner = ink.WHITE if mark.wood else ink.INK
    for a, b, colour in ((-8.0, -reach, ink.INK), (-reach, reach, inner), (reach, 8.0, ink.INK)):
        sketch.line((x + a, y), (x + b, y), ink.FINE, colour=colour)
        sketch.line((x, y + a), (x, y + b), ink.FINE, colour=colour)
    sketch.reserve((x - reach - 0.5, y - 8.0, x + reach + 0.5, y + 8.0))


def draw_hole(sketch: Sketch, view: View, hole: Hole) -> None:
    """Draw what of the duct's hole lies on this page, with its centre."""
    from shapely import box
    from shapely.geometry import LinearRing

    u, v = hole.centre[0], hole.centre[2]
    a, b = hole.size_in[0] / 2, hole.size_in[1] / 2
    if hole.shape in ("round", "ellipse"):
        turns = [math.tau * k / _CIRCLE for k in range(_CIRCLE)]
        ring = LinearRing([(u + a * math.cos(t), v + b * math.sin(t)) for t in turns])
    else:
        ring = LinearRing([(u - a, v - b), (u + a, v - b), (u + a, v + b), (u - a, v + b)])
    shown = ring.intersection(box(*view.region))
    for line in getattr(shown, "geoms", [shown]):
        if line.length > 0:
            sketch.path([view.at(float(p[0]), float(p[1])) for p in line.coords], ink.HEAVY, colour=ink.UP)
    if shows(view, u, v):
        x, y = view.at(u, v)
        sketch.line((x - 8, y), (x + 8, y), ink.FINE, colour=ink.UP)
        sketch.line((x, y - 8), (x, y + 8), ink.FINE, colour=ink.UP)


def name_hole(sketch: Sketch, view: View, hole: Hole, scene: Scene) -> None:
    """Write the duct hole\'s size and the height of its centre."""
    u, v = hole.centre[0], hole.centre[2]
    if not shows(view, u, v):
        return
    x, y = view.at(u, v)
    words = f"duct hole, {hole_size(hole, scene)}, centre {length(v, scene)} above the floor"
    places = [((x + a, y + b), anchor) for b in (8.0, -11.0, 14.0, -17.0, 20.0, -23.0, 1.2)
              for a, anchor in ((3.0, Anchor.LEFT), (-3.0, Anchor.RIGHT), (10.0, Anchor.LEFT), (-10.0, Anchor.RIGHT))]  # fmt: skip
    sketch.label(places, words, ink.BODY, colour=ink.UP, halo=ink.WHITE)


def name_mark(sketch: Sketch, view: View, mark: Mark, scene: Scene) -> None:
    """Say what a mark is, what it holds in, its drill, and how far it stands from the centre line."""
    x, y = view.at(mark.left_in, mark.height_in)
    off = mark.left_in - scene.hood.centre_in
    side = "on the centre line"
    if abs(off) > 1 / 64:
        side = f"{length(abs(off), scene)} {'right' if off > 0 else 'left'} of the centre line"
    lines = (
        f"{mark.label}  {mark.holds.partition(';')[0]}, pilot {drill_text(mark.pilot_in, metric=scene.metric)}",
        side,
    )
    places = [((x + a, y + lift), anchor) for lift in (10.5, -9.5, 18.5, -17.5, 26.5, -25.5)
              for a, anchor in ((9.0, Anchor.LEFT), (-9.0, Anchor.RIGHT))]  # fmt: skip
    sketch.block(places, lines, 4.0, ink.BODY, halo=ink.WHITE)


def name_rows(sketch: Sketch, view: View, scene: Scene, heights: list[float]) -> None:
    """Write each row's height on its line."""
    left, _, right, _ = view.region
    for height in heights:
        (x0, y), (x1, _) = view.at(left, height), view.at(right, height)
        places = [((at, y + k), anchor) for k in (1.2, -3.4)
                  for at, anchor in ((x0 + 9.0, Anchor.LEFT), (x1 - 9.0, Anchor.RIGHT), ((x0 + x1) / 2 + 4.0, Anchor.LEFT),
                                     ((x0 + x1) / 2 - 4.0, Anchor.RIGHT))]  # fmt: skip
        sketch.label(places, f"{length(height, scene)} above the floor", ink.BODY)
