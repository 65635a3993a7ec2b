"""The hood's screw pattern at full size, over as many pages as it takes."""

from __future__ import annotations

import math
from dataclasses import dataclass

from routeviz.drawings import palette as ink
from routeviz.drawings.house import View
from routeviz.drawings.primitives import Anchor, Face, Page
from routeviz.drawings.sheet import Paper
from routeviz.drawings.sketch import Frame2, Sketch
from routeviz.drawings.words import length
from routeviz.model.plan import Option, Plan
from routeviz.model.scene import Scene
from routeviz.model.takeoff import Mark
from routeviz.units import drill_text

__all__ = ["template_pages"]

_OVERLAP_IN = 10.0 / 25.4


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


def template_pages(plan: Plan, option: Option, paper: Paper) -> list[Page]:
    """Give the hood's screw pattern at full size on as many pages as it takes, with a square to check the print by.

    Pages overlap by 10 mm; the crosses at the corners of neighbours lie on one another.
    """
    marks = [m for m in option.takeoff.marks if m.row != "bracket"]
    if not marks:
        return []
    grid = _grid(plan.scene, marks, ((paper.width - 24.0) / 25.4, (paper.height - 44.0) / 25.4))
    return [
        _template(paper, plan.scene, marks, grid, column, row)
        for row in range(grid.up)
        for column in range(grid.across)
    ]


def _grid(scene: Scene, marks: list[Mark], size: tuple[float, float]) -> _Grid:
    """Lay the pages so that marks and centre line keep away from their edges as far as the spare room allows."""
    xs, zs = [m.left_in for m in marks], [m.height_in for m in marks]
    u0, u1, v0, v1 = min(xs) - 1.0, max(xs) + 1.0, min(zs) - 1.5, max(zs) + 1.5
    bottom = scene.hood_bottom_in
    if bottom is not None and v0 - bottom < 6.0:
        v0 = bottom - 1.0
    step_u, step_v = size[0] - _OVERLAP_IN, size[1] - _OVERLAP_IN
    across, up = max(1, math.ceil((u1 - u0) / step_u - 1e-9)), max(1, math.ceil((v1 - v0) / step_v - 1e-9))
    spare = across * step_u + _OVERLAP_IN - (u1 - u0)
    wanted = [*xs, scene.hood.centre_in]

    def room(shift: float) -> float:
        """Give how far what is drawn keeps from the edges of the page where it stands best."""
        starts = [u0 - shift + column * step_u for column in range(across)]
        return min(max(min(x - a, a + size[0] - x) for a in starts) for x in wanted)

    shift = max((spare * k / 16 for k in range(17)), key=lambda s: (round(room(s), 6), -abs(s - spare / 2)))
    low = v0 - (up * step_v + _OVERLAP_IN - (v1 - v0)) / 2
    return _Grid(u0 - shift, low, size[0], size[1], across, up)


def _name(column: int, row: int) -> str:
    return f"{chr(ord('A') + row)}{column + 1}"


def _template(paper: Paper, scene: Scene, marks: list[Mark], grid: _Grid, column: int, row: int) -> Page:
    left, low = 12.0, 32.0
    wide, high = grid.wide * 25.4, grid.high * 25.4
    sketch = Sketch((left + 0.5, low + 0.5, left + wide - 0.5, low + high - 0.5))
    corner = grid.corner(column, row)
    origin = (left - corner[0] * 25.4, low - corner[1] * 25.4)
    view = View(1, Frame2(origin, 25.4), (*corner, corner[0] + grid.wide, corner[1] + grid.high))
    sketch.rect((left, low), (left + wide, low + high), ink.HAIR, colour=ink.INK2)
    for x in (left + 5.0, left + wide - 5.0):
        for y in (low + 5.0, low + high - 5.0):
            sketch.line((x - 4, y), (x + 4, y), ink.HAIR)
            sketch.line((x, y - 4), (x, y + 4), ink.HAIR)
            sketch.reserve((x - 4.2, y - 4.2, x + 4.2, y + 4.2))
    here = [m for m in marks if _shows(view, m.left_in, m.height_in)]
    for mark in here:
        _cross(sketch, view, mark)
    _template_lines(sketch, view, scene)
    _neighbours(sketch, view, grid, column, row)
    for mark in here:
        _mark_words(sketch, view, mark, scene)
    _rows(sketch, view, scene, sorted({m.height_in for m in marks}))
    _check_square(sketch, paper, _name(column, row), f"{grid.across} across, {grid.up} up")
    title = f"Template {_name(column, row)}, full size"
    return Page("template", title, paper.width, paper.height, tuple(sketch.items))


def _shows(view: View, u: float, v: float) -> bool:
    left, low, right, high = view.region
    return left <= u <= right and low <= v <= high


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


def _cross(sketch: Sketch, view: View, mark: Mark) -> None:
    x, y = view.at(mark.left_in, mark.height_in)
    reach = mark.pilot_in / 2 * 25.4
    sketch.line((x - 8, y), (x + 8, y), ink.FINE)
    sketch.line((x, y - 8), (x, y + 8), ink.FINE)
    sketch.disc((x, y), reach, ink.MEDIUM)
    sketch.reserve((x - reach - 0.5, y - 8.0, x + reach + 0.5, y + 8.0))


def _mark_words(sketch: Sketch, view: View, mark: Mark, scene: Scene) -> None:
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
    for n, words in enumerate(lines):
        lift = 10.5 - 4.0 * n
        places = [((x + a, y + b), anchor) for b in (lift, lift - 20.0, lift + 8.0)
                  for a, anchor in ((9.0, Anchor.LEFT), (-9.0, Anchor.RIGHT))]  # fmt: skip
        sketch.label(places, words, ink.BODY)


def _rows(sketch: Sketch, view: View, scene: Scene, heights: list[float]) -> None:
    """Draw each row's line with its height."""
    left, low, right, high = view.region
    for height in heights:
        if not low <= height <= high:
            continue
        (x0, y), (x1, _) = view.at(left, height), view.at(right, height)
        sketch.line((x0, y), (x1, y), ink.HAIR)
        places = [((at, y + k), anchor) for k in (1.2, -3.4)
                  for at, anchor in ((x0 + 9.0, Anchor.LEFT), (x1 - 9.0, Anchor.RIGHT), ((x0 + x1) / 2 + 4.0, Anchor.LEFT),
                                     ((x0 + x1) / 2 - 4.0, Anchor.RIGHT))]  # fmt: skip
        sketch.label(places, f"{length(height, scene)} above the floor", ink.BODY)


def _template_lines(sketch: Sketch, view: View, scene: Scene) -> None:
    x, bottom = scene.hood.centre_in, scene.hood_bottom_in
    left, low, right, high = view.region
    if left <= x <= right:
        sketch.line(view.at(x, low), view.at(x, high), ink.MEDIUM, colour=ink.UP, dash=ink.CENTRE_DASH)
        px, py = view.at(x, high)
        places = [
            ((px + a, py - b), anchor)
            for b in (24.0, 34.0, 50.0)
            for a, anchor in ((1.5, Anchor.LEFT), (-1.5, Anchor.RIGHT))
        ]
        sketch.label(places, f"centre line, {length(x, scene)} from the left wall", ink.BODY, colour=ink.UP)
    if bottom is not None and low <= bottom <= high:
        sketch.line(view.at(left, bottom), view.at(right, bottom), ink.MEDIUM, colour=ink.UP, dash=ink.CENTRE_DASH)
        px, py = view.at(left, bottom)
        sketch.label([((px + 8.0, py + 1.2), Anchor.LEFT)], "mounting line", ink.BODY, colour=ink.UP)


def _check_square(sketch: Sketch, paper: Paper, name: str, words: str) -> None:
    side, said = (20.0, "20 mm") if paper.metric else (25.4, "1 in")
    x, y = 12.0, 5.0
    sketch.rect((x, y), (x + side, y + side), ink.MEDIUM)
    sketch.text((x + side / 2, y + side / 2 - 1.0), said, ink.BODY, Face.NARROW_BOLD, Anchor.MIDDLE)
    sketch.text((x + side + 5.0, y + side - 5.0), f"Template {name}", ink.TITLE, Face.SERIF)
    sketch.text((x + side + 5.0, y + side - 10.0), f"Full size. Pages: {words}. Print at 100 %.", ink.BODY)
    sketch.text(
        (x + side + 5.0, y + side - 14.5),
        f"Before use measure the square: each side is {said}. If not, do not use the page.",
        ink.BODY,
    )
