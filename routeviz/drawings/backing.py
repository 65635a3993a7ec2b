"""Backing on the marking sheet: where the lumber lies, and what it is called."""

from __future__ import annotations

from collections.abc import Sequence

from routeviz.catalog import table
from routeviz.drawings import palette as ink
from routeviz.drawings.flat import Outline, clipped, outlines
from routeviz.drawings.house import View, ceiling_line
from routeviz.drawings.lettering import width
from routeviz.drawings.primitives import Anchor, Point
from routeviz.drawings.sketch import Sketch
from routeviz.drawings.taken import Rect
from routeviz.model.backing import Backing, backing_of
from routeviz.model.overhead import ceiling_at_in
from routeviz.model.scene import Scene
from routeviz.model.takeoff import Mark

__all__ = ["backing_pieces", "draw_backing", "name_backing"]

_DASH = (2.2, 0.9)
_LUMBER = "#f7ecd4"


def backing_pieces(marks: Sequence[Mark]) -> tuple[Backing, ...]:
    """Give where backing is let in, from the lumber that the catalogue names."""
    row = table("stock")["backing"]
    return backing_of(marks, float(row["deep_in"]), float(row["edge_in"]))


def draw_backing(sketch: Sketch, view: View, scene: Scene, marks: Sequence[Mark]) -> None:
    """Draw each piece of backing dashed, cut to a sloped ceiling."""
    for piece in backing_pieces(marks):
        shown = _under_ceiling(piece, scene)
        for ring in clipped(shown, view.region) if shown else ():
            points = [view.at(*p) for p in ring]
            sketch.path(points, ink.FINE, fill=_LUMBER, colour=ink.TIMBER_EDGE, closed=True, dash=_DASH)


def _under_ceiling(piece: Backing, scene: Scene) -> Outline:
    """Give a piece's outline, without what would stand over the ceiling."""
    from shapely import box
    from shapely.geometry import Polygon

    line = ceiling_line(scene, piece.left_in, piece.right_in)
    foot = min(piece.low_in, *(v for _, v in line)) - 1.0  # a steep ceiling comes down past the piece
    room = Polygon([(piece.left_in, foot), (piece.right_in, foot), *reversed(line)])
    rings = outlines(box(piece.left_in, piece.low_in, piece.right_in, piece.high_in).intersection(room))
    return rings[0] if rings else ()


def name_backing(sketch: Sketch, views: Sequence[View], scene: Scene, marks: Sequence[Mark]) -> None:
    """Write in each piece of backing what it is, beside it only where it is full; its length stands in the table."""
    size = str(table("stock")["backing"]["size_metric" if scene.metric else "size"])
    for piece in backing_pieces(marks):
        view = next((v for v in views if v.region[1] <= piece.low_in + 2.0 and piece.low_in + 2.0 <= v.region[3]), None)
        if view is None:
            continue
        a, c = max(piece.left_in, view.region[0]), min(piece.right_in, view.region[2])
        (x0, y0), (x1, y1) = view.at(a, piece.low_in), view.at(c, piece.high_in)
        at = (x0 + x1) / 2
        named = (
            sketch.label(_inside(view, scene, (x0, y0, x1, y1), width(words, ink.LEAST)), words, ink.LEAST,
                         colour=ink.TIMBER_EDGE, halo=_LUMBER)
            for words in (f"{size} backing", size)
        )  # fmt: skip
        if any(named):
            continue
        below = [((at, y0 - 2.9), Anchor.MIDDLE), ((x0, y0 - 2.9), Anchor.LEFT), ((x1, y0 - 2.9), Anchor.RIGHT)]
        sketch.label([*below, ((at, y0 - 6.0), Anchor.MIDDLE), ((at, y1 + 1.0), Anchor.MIDDLE)], f"{size} backing", ink.LEAST,
                     colour=ink.TIMBER_EDGE, halo=_LUMBER, tip=(at, y0))  # fmt: skip


def _inside(view: View, scene: Scene, piece: Rect, wide: float) -> list[tuple[Point, Anchor]]:
    """Give the places for a text so wide inside a piece and under the ceiling [mm], the lowest first."""
    x0, y0, x1, y1 = piece
    spare = x1 - x0 - wide - 1.6
    if spare < 0:
        return []
    (ox, oy), scale = view.frame.origin, view.scale
    found: list[tuple[Point, Anchor]] = []
    for step in range(int((y1 - y0 - ink.LEAST - 1.4) / 1.5) + 1):
        y = y0 + 1.0 + 1.5 * step
        for k in (0.5, 0.0, 1.0, 0.25, 0.75):
            x = x0 + 0.8 + k * spare
            roof = min(ceiling_at_in(scene, (e - ox) / scale) for e in (x, x + wide))
            if (y + ink.LEAST - oy) / scale < roof:
                found.append(((x, y), Anchor.LEFT))
    return found
