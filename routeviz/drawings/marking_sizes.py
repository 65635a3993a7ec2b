"""Sizes and names on the marked wall: screws and supply from the two lines, the backing between its studs."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from routeviz.catalog import table
from routeviz.drawings import palette as ink
from routeviz.drawings.flat import Outline, clipped, outlines
from routeviz.drawings.house import View, ceiling_line
from routeviz.drawings.lettering import width
from routeviz.drawings.primitives import Anchor, Face, Point
from routeviz.drawings.sketch import Sketch
from routeviz.drawings.supply import supply_at
from routeviz.drawings.taken import Rect
from routeviz.drawings.words import figure
from routeviz.model.overhead import ceiling_at_in
from routeviz.model.plan import Plan
from routeviz.model.scene import Scene
from routeviz.model.takeoff import Mark

__all__ = ["Piece", "backing_pieces", "draw_backing", "draw_sizes", "name_backing", "name_marks"]

_FIRST, _NEXT = 4.8, 4.6  # from a row of marks to its dimensions, and from one to the next [mm]
_NEAR_IN = 7.0  # a supply so near a row is dimensioned with it
_DASH = (2.2, 0.9)
_LUMBER = "#f7ecd4"


@dataclass(frozen=True, slots=True)
class Piece:
    """A piece of backing on the wall's face [in], and the marks that go into it."""

    left: float
    low: float
    right: float
    high: float
    marks: tuple[str, ...]


def backing_pieces(scene: Scene, marks: Sequence[Mark]) -> tuple[Piece, ...]:
    """Give where backing is let in: between two studs, its middle at its screws.

    Screws of one bay at unlike heights share a piece where one board holds them all.
    """
    row = table("stock")["backing"]
    deep, most = float(row["deep_in"]), float(row["deep_in"]) - 2 * float(row["edge_in"])
    bays: dict[tuple[float, float], list[list[Mark]]] = {}
    for mark in sorted((m for m in marks if m.bay_in is not None), key=lambda m: m.height_in):
        groups = bays.setdefault(mark.bay_in or (0.0, 0.0), [])
        if groups and mark.height_in - groups[-1][0].height_in <= most + 1e-9:
            groups[-1].append(mark)
        else:
            groups.append([mark])
    found = []
    for (left, right), groups in sorted(bays.items()):
        for group in groups:
            heights = [m.height_in for m in group]
            middle = (min(heights) + max(heights)) / 2
            found.append(Piece(left, middle - deep / 2, right, middle + deep / 2, tuple(m.label for m in group)))
    return tuple(found)


def draw_backing(sketch: Sketch, view: View, scene: Scene, marks: Sequence[Mark]) -> None:
    """Draw each piece of backing dashed, cut to a sloped ceiling."""
    for piece in backing_pieces(scene, marks):
        shown = _under_ceiling(piece, scene)
        for ring in clipped(shown, view.region) if shown else ():
            points = [view.at(*p) for p in ring]
            sketch.path(points, ink.FINE, fill=_LUMBER, colour=ink.TIMBER_EDGE, closed=True, dash=_DASH)


def _under_ceiling(piece: Piece, scene: Scene) -> Outline:
    """Give a piece's outline, without what would stand over the ceiling."""
    from shapely import box
    from shapely.geometry import Polygon

    line = ceiling_line(scene, piece.left, piece.right)
    foot = min(piece.low, *(v for _, v in line)) - 1.0  # a steep ceiling comes down past the piece
    room = Polygon([(piece.left, foot), (piece.right, foot), *reversed(line)])
    rings = outlines(box(piece.left, piece.low, piece.right, piece.high).intersection(room))
    return rings[0] if rings else ()


def name_backing(sketch: Sketch, views: Sequence[View], scene: Scene, marks: Sequence[Mark]) -> None:
    """Write in each piece of backing what it is, beside it only where it is full; its length stands in the table."""
    size = str(table("stock")["backing"]["size_metric" if scene.metric else "size"])
    for piece in backing_pieces(scene, marks):
        view = next((v for v in views if v.region[1] <= piece.low + 2.0 and piece.low + 2.0 <= v.region[3]), None)
        if view is None:
            continue
        a, c = max(piece.left, view.region[0]), min(piece.right, view.region[2])
        (x0, y0), (x1, y1) = view.at(a, piece.low), view.at(c, piece.high)
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


def name_marks(sketch: Sketch, view: View, scene: Scene, marks: Sequence[Mark]) -> None:
    """Write each mark's name on its side away from the centre line, where no dimension runs."""
    for mark in marks:
        x, y = view.at(mark.left_in, mark.height_in)
        away = [(1.6, Anchor.LEFT), (-1.6, Anchor.RIGHT)]
        if mark.left_in < scene.hood.centre_in:
            away.reverse()
        places = [((x + a, y + b), anchor) for a, anchor in away for b in (1.5, -3.2)]
        sketch.label(places, mark.label, ink.SMALL, Face.NARROW_BOLD, halo=ink.WALL, tip=(x, y))


def draw_sizes(sketch: Sketch, views: Sequence[View], plan: Plan, marks: Sequence[Mark]) -> None:
    """Dimension screws and supply from the centre line, and the rows from the mounting line."""
    if plan.scene.hood_bottom_in is None:
        return
    rows = sorted({m.height_in for m in marks})
    _ups(
        sketch,
        views[0],
        plan.scene,
        [h for h in rows if any(m.row != "bracket" for m in marks if m.height_in == h)],
        marks,
    )
    supply = supply_at(plan.scene)
    for view in views:
        for height in (h for h in rows if view.region[1] <= h <= view.region[3]):
            row = [m for m in marks if m.height_in == height]
            places = [m.left_in for m in row]
            if supply is not None and row[0].row != "bracket" and abs(height - supply[1]) <= _NEAR_IN:
                _across(sketch, view, plan.scene, height, places, supply)
                supply = None
            else:
                _across(sketch, view, plan.scene, height, places, None, down=row[0].row == "bracket")
    if supply is not None:
        _across(sketch, views[0], plan.scene, supply[1], [], supply)


def _ups(sketch: Sketch, view: View, scene: Scene, rows: Sequence[float], marks: Sequence[Mark]) -> None:
    """Dimension the rows of screws up from the mounting line, beside the drawing; the supply where it is."""
    bottom = scene.hood_bottom_in or 0.0
    edge = view.at(view.region[0], 0.0)[0]
    for n, height in enumerate(rows):
        first = min((m.left_in for m in marks if m.height_in == height), default=scene.hood.centre_in)
        sketch.dim_up(view.at(0, bottom)[1], view.at(0, height)[1], edge - 3.0 - 5.5 * n, figure(height - bottom, scene),
                      from_x=(edge, view.at(first, 0)[0]))  # fmt: skip
    supply = supply_at(scene)
    if supply is not None and abs(supply[1] - bottom) > 1 / 64:
        x, y = view.at(*supply)
        sketch.dim_up(view.at(0, bottom)[1], y, x, figure(supply[1] - bottom, scene), right=supply[0] > scene.hood.centre_in,
                      halo=ink.WALL)  # fmt: skip


def _across(
    sketch: Sketch, view: View, scene: Scene, height: float, places: Sequence[float], supply: tuple[float, float] | None,
    *, down: bool = False,
) -> None:  # fmt: skip
    """Dimension places of one row from the centre line, the nearest first; the supply after them."""
    x, base = scene.hood.centre_in, view.at(0.0, height)[1]
    side = -1 if down else 1
    level: dict[bool, int] = {}
    ends = [(p, height) for p in sorted(places, key=lambda p: abs(p - x))]
    sizes: list[tuple[float, float, str, float]] = []
    for left, at in [*ends, *([supply] if supply is not None else [])]:
        if abs(left - x) < 1 / 64:
            continue
        n = level.get(left > x, 0)
        level[left > x] = n + 1
        y = base + side * (_FIRST + _NEXT * n)
        sizes.append((view.at(left, 0)[0], y, figure(abs(left - x), scene), view.at(0.0, at)[1]))
    sketch.dims_from(view.at(x, 0)[0], sizes, below=down, halo=ink.WALL)
