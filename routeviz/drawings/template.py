"""The hood's screw pattern at full size, over as many pages as it takes."""

from __future__ import annotations

import math
from dataclasses import dataclass

from routeviz.drawings import palette as ink
from routeviz.drawings.house import View
from routeviz.drawings.primitives import Anchor, Face, Point
from routeviz.drawings.sheet import Paper, Sheet
from routeviz.drawings.sketch import Frame2, Sketch
from routeviz.drawings.supply import draw_supply, name_supply, supply_at, supply_meets
from routeviz.drawings.template_parts import draw_hole, draw_mark, draw_studs, name_hole, name_mark, name_rows, shows
from routeviz.drawings.wall_holes import wall_hole
from routeviz.drawings.words import length
from routeviz.model.plan import Option, Plan
from routeviz.model.scene import Scene
from routeviz.model.takeoff import Hole, Mark

__all__ = ["template_sheets"]

_OVERLAP_IN = 10.0 / 25.4
_LEFT, _LOW = 12.0, 32.0  # of the frame on the page, clear of the title strip [mm]
_BLOCK = (116.0, 29.0)  # the title, the arrow and the square to check the print by [mm]
_ROUND_HOLE_IN, _OVER_ROW_IN = 0.1, 0.65  # margins that keep a rear outlet's hole on one row of letter pages


@dataclass(frozen=True, slots=True)
class _Grid:
    """How the pattern is laid over pages: the lower left of the first frame and a frame's size, all [in]."""

    left: float
    low: float
    wide: float
    high: float
    across: int
    up: int

    def corner(self, column: int, row: int) -> tuple[float, float]:
        """Give the lower left of one page's frame."""
        return self.left + column * (self.wide - _OVERLAP_IN), self.low + row * (self.high - _OVERLAP_IN)


def template_sheets(plan: Plan, option: Option, paper: Paper, first: int) -> list[Sheet]:
    """Give the hood's screw pattern at full size on as many sheets as it takes, with a square to check the print by.

    Sheets overlap by 10 mm; the crosses at the corners of neighbours lie on one another. `first` is the number of the
    first of them in the packet.
    """
    marks = [m for m in option.takeoff.marks if m.row != "bracket"]
    if not marks:
        return []
    hole = wall_hole(option.takeoff.holes)
    grid = _grid(plan.scene, marks, hole, ((paper.width - 24.0) / 25.4, (paper.height - 44.0) / 25.4))
    places = [(column, row) for row in range(grid.up) for column in range(grid.across)]
    return [_template(paper, plan, marks, hole, grid, column, row, first + n) for n, (column, row) in enumerate(places)]


def _grid(scene: Scene, marks: list[Mark], hole: Hole | None, size: tuple[float, float]) -> _Grid:
    """Lay the pages so that marks and centre line keep away from their edges as far as the spare room allows.

    A hole in the wall is on them as a whole, unless that alone would ask for another row of pages.
    """
    xs, zs = [m.left_in for m in marks], [m.height_in for m in marks]
    u0, u1, v0, v1 = min(xs) - 1.0, max(xs) + 1.0, min(zs) - 1.5, max(zs) + 1.5
    bottom = scene.hood_bottom_in
    if bottom is not None and v0 - bottom < 6.0:
        v0 = bottom - 1.0
    if hole is not None:
        v0, v1 = _with_hole((v0, v1), max(zs), hole, size[1])
    step_u, step_v = size[0] - _OVERLAP_IN, size[1] - _OVERLAP_IN
    across, up = _count(u1 - u0, size[0]), _count(v1 - v0, size[1])
    spare = across * step_u + _OVERLAP_IN - (u1 - u0)
    wanted = [*xs, scene.hood.centre_in]

    def room(shift: float) -> float:
        """Give how far what is drawn keeps from the edges of the page where it stands best."""
        starts = [u0 - shift + column * step_u for column in range(across)]
        return min(max(min(x - a, a + size[0] - x) for a in starts) for x in wanted)

    shift = max((spare * k / 16 for k in range(17)), key=lambda s: (round(room(s), 6), -abs(s - spare / 2)))
    low = v0 - (up * step_v + _OVERLAP_IN - (v1 - v0)) / 2
    return _Grid(u0 - shift, low, size[0], size[1], across, up)


def _count(span: float, page: float) -> int:
    """Give how many pages of this length cover a span [in], each lapping over the one before."""
    return max(1, math.ceil((span - _OVERLAP_IN) / (page - _OVERLAP_IN) - 1e-9))


def _with_hole(ends: tuple[float, float], row: float, hole: Hole, page: float) -> tuple[float, float]:
    """Give the heights to show [in] with the duct's hole: all of it, or its centre, or without it."""
    middle, half = hole.centre[2], hole.size_in[1] / 2
    low, high = min(ends[0], middle - half - _ROUND_HOLE_IN), max(row + _OVER_ROW_IN, middle + half + _ROUND_HOLE_IN)
    centre = min(ends[0], middle - _OVER_ROW_IN), max(row + _OVER_ROW_IN, middle + _OVER_ROW_IN)
    fewest = _count(ends[1] - ends[0], page)
    return next((e for e in ((low, high), centre) if _count(e[1] - e[0], page) <= fewest), ends)


def _name(column: int, row: int) -> str:
    return f"{chr(ord('A') + row)}{column + 1}"


def _template(
    paper: Paper, plan: Plan, marks: list[Mark], hole: Hole | None, grid: _Grid, column: int, row: int, number: int
) -> Sheet:
    wide, high = grid.wide * 25.4, grid.high * 25.4
    sketch = Sketch((_LEFT + 0.5, _LOW + 0.5, _LEFT + wide - 0.5, _LOW + high - 0.5))
    name = _name(column, row)
    sheet = Sheet(paper, "template", f"Template {name}, full size", sketch, "full size")
    corner = grid.corner(column, row)
    origin = (_LEFT - corner[0] * 25.4, _LOW - corner[1] * 25.4)
    view = View(1, Frame2(origin, 25.4), (*corner, corner[0] + grid.wide, corner[1] + grid.high))
    scene = plan.scene
    sketch.rect((_LEFT, _LOW), (_LEFT + wide, _LOW + high), ink.HAIR, colour=ink.INK2)
    for x in (_LEFT + 5.0, _LEFT + wide - 5.0):
        for y in (_LOW + 5.0, _LOW + high - 5.0):
            sketch.line((x - 4, y), (x + 4, y), ink.HAIR)
            sketch.line((x, y - 4), (x, y + 4), ink.HAIR)
            sketch.reserve((x - 4.2, y - 4.2, x + 4.2, y + 4.2))
    here = [m for m in marks if shows(view, m.left_in, m.height_in)]
    if hole is not None:
        draw_hole(sketch, view, hole)
    for mark in here:
        draw_mark(sketch, view, mark)
    heights = [h for h in sorted({m.height_in for m in marks}) if corner[1] <= h <= corner[1] + grid.high]
    for height in heights:
        (x0, y), (x1, _) = view.at(view.region[0], height), view.at(view.region[2], height)
        sketch.line((x0, y), (x1, y), ink.HAIR)
        sketch.reserve((x0, y - 0.02, x1, y + 0.02))
    _template_lines(sketch, view, scene)
    spot = _block_spot(sketch, view, heights)
    head = (spot[0] - 1.0, spot[1] - 1.0, spot[0] + _BLOCK[0], spot[1] + _BLOCK[1])
    _block(sketch, spot, paper, (number, name, f"{grid.across} across, {grid.up} up"))
    draw_studs(sketch, view, plan.frame, head)
    _name_lines(sketch, view, scene)
    _neighbours(sketch, view, grid, column, row)
    for mark in here:
        name_mark(sketch, view, mark, scene)
    name_rows(sketch, view, scene, heights)
    if hole is not None:
        name_hole(sketch, view, hole, scene)
    at = supply_at(scene)
    if at is not None and shows(view, *at):
        draw_supply(sketch, view, plan)
        name_supply(sketch, view, plan, f"supply, {supply_meets(plan, marks)}", ink.BODY)
    return sheet


def _neighbours(sketch: Sketch, view: View, grid: _Grid, column: int, row: int) -> None:
    """Name the page that joins at each edge."""
    (x0, y0), (x1, y1) = view.at(view.region[0], view.region[1]), view.at(view.region[2], view.region[3])
    shares = (0.75, 0.25, 0.5, 0.9)
    for step, x in ((-1, x0 + 6.5), (1, x1 - 5.0)):
        if 0 <= column + step < grid.across:
            words = f"{_name(column + step, row)} joins here, cross on cross"
            places = [((x, y0 + k * (y1 - y0)), Anchor.MIDDLE) for k in shares]
            sketch.label(places, words, ink.LEAST, colour=ink.INK2, turn=90)
    for step, y in ((-1, y0 + 5.0), (1, y1 - 6.5)):
        if 0 <= row + step < grid.up:
            words = f"{_name(column, row + step)} joins here, cross on cross"
            sketch.label(
                [((x0 + k * (x1 - x0), y), Anchor.MIDDLE) for k in shares[::-1]], words, ink.LEAST, colour=ink.INK2
            )


def _template_lines(sketch: Sketch, view: View, scene: Scene) -> None:
    x, bottom = scene.hood.centre_in, scene.hood_bottom_in
    left, low, right, high = view.region
    if left <= x <= right:
        sketch.line(view.at(x, low), view.at(x, high), ink.MEDIUM, colour=ink.UP, dash=ink.CENTRE_DASH)
    if bottom is not None and low <= bottom <= high:
        sketch.line(view.at(left, bottom), view.at(right, bottom), ink.MEDIUM, colour=ink.UP, dash=ink.CENTRE_DASH)


def _name_lines(sketch: Sketch, view: View, scene: Scene) -> None:
    x, bottom = scene.hood.centre_in, scene.hood_bottom_in
    left, low, right, high = view.region
    if left <= x <= right:
        px, py = view.at(x, high)
        places = [
            ((px + a, py - b), anchor)
            for b in (24.0, 34.0, 50.0)
            for a, anchor in ((1.5, Anchor.LEFT), (-1.5, Anchor.RIGHT))
        ]
        sketch.label(places, f"centre line, {length(x, scene)} from the left wall", ink.BODY, colour=ink.UP)
    if bottom is not None and low <= bottom <= high:
        px, py = view.at(left, bottom)
        sketch.label([((px + 8.0, py + 1.2), Anchor.LEFT)], "mounting line", ink.BODY, colour=ink.UP)


def _block(sketch: Sketch, spot: Point, paper: Paper, named: tuple[int, str, str]) -> None:
    """Write the sheet's title with an arrow up and the square to check the print by, where nothing is drilled."""
    number, name, pages = named
    side, said = (20.0, "20 mm") if paper.metric else (25.4, "1 in")
    x, y = spot
    sketch.rect((x, y), (x + side, y + side), ink.MEDIUM)
    sketch.text((x + side / 2, y + side / 2 - 1.0), said, ink.BODY, Face.NARROW_BOLD, Anchor.MIDDLE)
    at = x + side + 5.0
    figure = sketch.text((at, y + side - 7.0), str(number), ink.NUMBER, Face.SERIF, colour=ink.UP)
    sketch.text(
        (at + (9.0 if len(figure.text) == 1 else 12.0), y + side - 6.0),
        f"Template {name}",
        ink.TITLE,
        Face.SERIF,
        halo=ink.WHITE,
    )
    words = (
        f"Full size. Pages: {pages}. Print at 100 %.",
        "Measure the square and the tape below:",
        f"each side is {said}. If not, do not use it.",
    )
    for n, line in enumerate(words):
        sketch.text((at, y + side - 12.0 - 4.2 * n), line, ink.BODY, halo=ink.WHITE)
    tip = x + _BLOCK[0] - 12.0
    sketch.path(
        ((tip - 1.5, y + 5.0), (tip - 1.5, y + 16.0), (tip - 5.0, y + 16.0), (tip, y + 24.0), (tip + 5.0, y + 16.0),
         (tip + 1.5, y + 16.0), (tip + 1.5, y + 5.0)), ink.MEDIUM, closed=True,
    )  # fmt: skip
    sketch.text((tip, y + 0.8), "this side up", ink.BODY, Face.BOLD, Anchor.MIDDLE)
    sketch.reserve((x, y, x + _BLOCK[0], y + _BLOCK[1]))


def _block_spot(sketch: Sketch, view: View, heights: list[float]) -> Point:
    """Give the place of the title block: the first corner or edge that no mark, line or hole runs through."""
    x0, y0, x1, y1 = sketch.bounds
    wide, high = _BLOCK
    lines = [view.at(0.0, h)[1] for h in heights]
    spots = [(x, y) for y in (y1 - high - 11.0, y0 + 11.0, (y0 + y1 - high) / 2)
             for x in (x0 + 11.0, x1 - wide - 11.0, (x0 + x1 - wide) / 2, *(x0 + 11.0 + 8.0 * k for k in range(18)))]  # fmt: skip

    def meets(spot: Point) -> int:
        box = (spot[0] - 1.0, spot[1] - 1.0, spot[0] + wide, spot[1] + high)
        crossed = any(box[1] < y < box[3] for y in lines)
        return 4 * (not sketch.taken.is_free(box)) + 2 * sketch.taken.is_struck(box) + crossed

    return min(spots, key=meets)
