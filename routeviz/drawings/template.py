"""The hood's screw pattern at full size, over as many pages as it takes."""

from __future__ import annotations

import math

from routeviz.drawings import palette as ink
from routeviz.drawings.house import View
from routeviz.drawings.marking import drill_text
from routeviz.drawings.primitives import Anchor, Face, Page
from routeviz.drawings.sheet import Paper
from routeviz.drawings.sketch import Frame2, Sketch
from routeviz.drawings.words import length
from routeviz.model.plan import Option, Plan
from routeviz.model.scene import Scene
from routeviz.model.takeoff import Mark

__all__ = ["template_pages"]


def template_pages(plan: Plan, option: Option, paper: Paper) -> list[Page]:
    """Give the hood's screw pattern at full size on as many pages as it takes, with a square to check the print by.

    Pages overlap by 10 mm; the crosses at the corners of neighbours lie on one another.
    """
    scene = plan.scene
    marks = [m for m in option.takeoff.marks if m.row != "bracket"]
    if not marks:
        return []
    xs, zs = [m.left_in for m in marks], [m.height_in for m in marks]
    u0, u1, v0, v1 = min(xs) - 1.0, max(xs) + 1.0, min(zs) - 1.5, max(zs) + 1.5
    bottom = scene.hood_bottom_in
    if bottom is not None and v0 - bottom < 6.0:
        v0 = bottom - 1.0
    wide, high = paper.width - 24.0, paper.height - 44.0
    step_u, step_v = (wide - 10.0) / 25.4, (high - 10.0) / 25.4
    across, up = max(1, math.ceil((u1 - u0) / step_u - 1e-9)), max(1, math.ceil((v1 - v0) / step_v - 1e-9))
    u0 -= (across * step_u - (u1 - u0)) / 2
    pages = []
    for row in range(up):
        for column in range(across):
            name = f"{chr(ord('A') + row)}{column + 1}"
            corner = (u0 + column * step_u, v0 + row * step_v)
            pages.append(_template(paper, scene, marks, corner, name, f"{across} across, {up} up", (wide, high)))
    return pages


def _template(
    paper: Paper,
    scene: Scene,
    marks: list[Mark],
    corner: tuple[float, float],
    name: str,
    words: str,
    size: tuple[float, float],
) -> Page:
    sketch = Sketch((3.0, 3.0, paper.width - 3.0, paper.height - 3.0))
    left, low = 12.0, 32.0
    view = View(1, Frame2((left - corner[0] * 25.4, low - corner[1] * 25.4), 25.4), (corner[0], corner[1],
                corner[0] + size[0] / 25.4, corner[1] + size[1] / 25.4))  # fmt: skip
    sketch.rect((left, low), (left + size[0], low + size[1]), ink.HAIR, colour=ink.INK2)
    for x in (left + 5.0, left + size[0] - 5.0):
        for y in (low + 5.0, low + size[1] - 5.0):
            sketch.line((x - 4, y), (x + 4, y), ink.HAIR)
            sketch.line((x, y - 4), (x, y + 4), ink.HAIR)
    _template_lines(sketch, view, scene)
    for height in sorted({m.height_in for m in marks}):
        if view.region[1] <= height <= view.region[3]:
            sketch.line(view.at(view.region[0], height), view.at(view.region[2], height), ink.HAIR)
            x, y = view.at(view.region[0], height)
            words_ = f"{length(height, scene)} above the floor"
            sketch.label([((x + 3.0, y + 1.2), Anchor.LEFT), ((x + 3.0, y - 3.4), Anchor.LEFT)], words_, ink.BODY)
    for mark in marks:
        if view.region[0] <= mark.left_in <= view.region[2] and view.region[1] <= mark.height_in <= view.region[3]:
            x, y = view.at(mark.left_in, mark.height_in)
            sketch.line((x - 8, y), (x + 8, y), ink.FINE)
            sketch.line((x, y - 8), (x, y + 8), ink.FINE)
            sketch.disc((x, y), mark.pilot_in / 2 * 25.4, ink.MEDIUM)
            label = f"{mark.label}  {mark.holds}, pilot {drill_text(mark.pilot_in, scene)}"
            places = [((x + 4.0, y + 6.0), Anchor.LEFT), ((x - 4.0, y + 6.0), Anchor.RIGHT), ((x + 4.0, y - 9.0), Anchor.LEFT),
                      ((x - 4.0, y - 9.0), Anchor.RIGHT)]  # fmt: skip
            sketch.label(places, label, ink.BODY)
    _check_square(sketch, paper, name, words)
    return Page("template", f"Template {name}, full size", paper.width, paper.height, tuple(sketch.items))


def _template_lines(sketch: Sketch, view: View, scene: Scene) -> None:
    x, bottom = scene.hood.centre_in, scene.hood_bottom_in
    left, low, right, high = view.region
    if left <= x <= right:
        sketch.line(view.at(x, low), view.at(x, high), ink.MEDIUM, colour=ink.UP, dash=ink.CENTRE_DASH)
        px, py = view.at(x, high)
        sketch.label(
            [((px - 1.5, py - 24.0), Anchor.RIGHT), ((px + 1.5, py - 24.0), Anchor.LEFT)]
            if (px - view.at(left, high)[0]) > (view.at(right, high)[0] - px)
            else [((px + 1.5, py - 24.0), Anchor.LEFT), ((px - 1.5, py - 24.0), Anchor.RIGHT)],
            "centre line",
            ink.BODY,
            colour=ink.UP,
        )
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
