"""Sizes and names on the marked wall: screws and supply from the two lines, the backing between its studs."""

from __future__ import annotations

from collections.abc import Sequence

from routeviz.drawings import palette as ink
from routeviz.drawings.house import View
from routeviz.drawings.primitives import Anchor, Face
from routeviz.drawings.sketch import Sketch
from routeviz.drawings.supply import supply_at
from routeviz.drawings.words import figure
from routeviz.model.plan import Plan
from routeviz.model.scene import Scene
from routeviz.model.takeoff import Mark

__all__ = ["draw_sizes", "name_marks"]

_FIRST, _NEXT = 4.8, 4.6  # from a row of marks to its dimensions, and from one to the next [mm]
_NEAR_IN = 7.0  # a supply so near a row is dimensioned with it


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
