"""The marking sheet: centre line, mounting line, every screw with what it meets."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from routeviz.drawings import palette as ink
from routeviz.drawings.elevation import break_line
from routeviz.drawings.flat import clipped, clipped_line, ends_of, flat
from routeviz.drawings.hood import draw_marks
from routeviz.drawings.house import View, behind_board, ceiling_line, draw_seen, fits_scale
from routeviz.drawings.marking_table import draw_table
from routeviz.drawings.primitives import Anchor, Face
from routeviz.drawings.sheet import Paper, Sheet, heading, new_sheet, scale_name
from routeviz.drawings.sketch import Frame2, Sketch
from routeviz.drawings.words import figure, length, unit_note
from routeviz.model.overhead import ceiling_at_in, ceiling_over_hood_in
from routeviz.model.plan import Option, Plan
from routeviz.model.scene import Scene, WallSide
from routeviz.model.solids import STUD_KINDS, Frame, SolidKind
from routeviz.model.takeoff import Hole, Mark
from routeviz.model.takeoff import Sheet as Name

__all__ = ["marking_sheet"]

_FRAMING = (*STUD_KINDS, SolidKind.BLOCKING)
_COLUMN = 104.0
_STUD = "#f1e2c4"


def marking_sheet(
    plan: Plan, option: Option | None, paper: Paper, number: str, free: Sequence[tuple[float, str]] = ()
) -> Sheet:
    """Draw the wall behind the hood at a larger scale, with a table of all marks.

    Without a route (`option` None) it shows the marks where the hood stands now and, from `free`, the places of its
    centre that would free a way, and says that nothing is drilled yet.
    """
    scene = plan.scene
    marks, holes = (plan.marks, ()) if option is None else (option.takeoff.marks, option.takeoff.holes)
    sheet = new_sheet(paper, Name.MARKING, "Marking the wall")
    left, bottom, right, top = sheet.room
    u0, v0, u1, v1 = _region(scene, marks, free)
    room = (right - left - _COLUMN - 22.0, top - 9.5 - bottom - 10.0)
    scale = fits_scale(u1 - u0, v1 - v0, room, (*paper.large, *paper.scales))
    mm = 25.4 / scale
    sheet.scale = scale_name(scale)
    heading(sheet, number, "Marking the wall", f"from the room, {sheet.scale}. {unit_note(scene)}")
    x0 = left + 15.0
    y0 = bottom + 5.0 + max(0.0, (room[1] - (v1 - v0) * mm) / 2)
    view = View(1, Frame2((x0 - u0 * mm, y0 - v0 * mm), mm), (u0, v0, u1, v1))
    sketch = sheet.sketch.left_of(right - _COLUMN - 2.0)
    _wall(sketch, view, plan)
    _lines(sketch, view, plan)
    _stud_numbers(sketch, view, plan.frame)
    _holes(sketch, view, holes)
    draw_marks(sketch, view, marks, names=True)
    _dimensions(sketch, view, scene, marks)
    _electrical(sketch, view, scene)
    _free_lines(sketch, view, scene, free)
    draw_table(sheet, plan, marks, free, (right - _COLUMN, right), stop=option is None)
    return sheet


def _region(
    scene: Scene, marks: Sequence[Mark], free: Sequence[tuple[float, str]]
) -> tuple[float, float, float, float]:
    bottom = scene.hood_bottom_in or scene.cooktop.height_in + 30.0
    x, half = scene.hood.centre_in, scene.hood.width_in / 2
    xs = [x - half - 6.0, x + half + 6.0, *(m.left_in + s for m in marks for s in (-6.0, 6.0))]
    xs += [at + s for at, _ in free for s in (-3.0, 3.0)]
    left, right = max(min(xs), -1.0), min(max(xs), scene.kitchen.width_in + 1.0)
    return left, bottom - 5.0, right, ceiling_over_hood_in(scene) + 1.5


def _wall(sketch: Sketch, view: View, plan: Plan) -> None:
    left, low, right, _ = view.region
    a, b = max(left, 0.0), min(right, plan.scene.kitchen.width_in)
    line = ceiling_line(plan.scene, a, b)
    for piece in clipped(((a, low), (b, low), *reversed(line)), view.region):
        sketch.path([view.at(*p) for p in piece], 0.0, fill=ink.WALL, closed=True)
    clip = View(view.axis, view.frame, (left, low, right, min(view.region[3], max(v for _, v in line))))
    for solid in plan.frame.solids:
        if not behind_board(solid, plan.scene) or solid.kind not in _FRAMING:
            continue
        draw_seen(sketch, clip, solid, fill=_STUD, colour=ink.TIMBER_EDGE, dash=ink.HIDDEN_DASH, weight=ink.HAIR)
    for (u0, v0), (u1, v1) in pairwise(line):
        if clip_line := clipped_line((u0, v0), (u1, v1), view.region):
            sketch.line(view.at(*clip_line[0]), view.at(*clip_line[1]), ink.HEAVY)
    break_line(sketch, view, low)


def _stud_numbers(sketch: Sketch, view: View, frame: Frame) -> None:
    """Number the studs at their feet, clear of the mounting line."""
    left, low, right, _ = view.region
    for solid in frame.solids:
        if solid.side is not WallSide.HOOD or solid.space != "kitchen" or solid.kind is not SolidKind.STUD:
            continue
        middle = sum(ends_of(solid.shape, 0)) / 2
        if solid.member is None or not solid.member.number or ends_of(solid.shape, 2)[0] > low + 6.0:
            continue
        if left <= middle <= right:
            x, y = view.at(middle, low)
            places = [((x, y + up), Anchor.MIDDLE) for up in (2.0, 0.6, -2.9, 3.6, 5.2, 6.8)]
            sketch.label(places, str(solid.member.number), ink.SMALL, Face.NARROW_BOLD, halo=_STUD)


def _lines(sketch: Sketch, view: View, plan: Plan) -> None:
    """Draw the hood's centre line, the mounting line and the hood's outline."""
    scene = plan.scene
    x, half = scene.hood.centre_in, scene.hood.width_in / 2
    left, low, right, high = view.region
    sketch.line(view.at(x, low), view.at(x, high - 1.0), ink.FINE, colour=ink.UP, dash=ink.CENTRE_DASH)
    bottom = scene.hood_bottom_in
    if bottom is None:
        return
    sketch.line(view.at(left, bottom), view.at(right, bottom), ink.MEDIUM, colour=ink.UP, dash=ink.CENTRE_DASH)
    top = bottom + scene.hood.body_in
    outline = [(x - half, bottom), (x + half, bottom), (x + half, bottom + scene.hood.canopy_in)]
    neck = scene.hood.cover.width_in / 2 if scene.hood.cover else scene.hood.outlet.section.width_in / 2 + 2.0
    neck = min(half, neck)
    outline += [(x + neck, top), (x - neck, top), (x - half, bottom + scene.hood.canopy_in)]
    sketch.path([view.at(*p) for p in outline], ink.FINE, colour=ink.INK2, closed=True, dash=(1.6, 0.8))
    if scene.hood.cover is not None:
        for side in (-neck, neck):
            sketch.line(
                view.at(x + side, top),
                view.at(x + side, min(high, ceiling_at_in(scene, x + side))),
                ink.FINE,
                colour=ink.INK2,
                dash=(1.6, 0.8),
            )
    px, py = view.at(left, bottom)
    far = view.at(right, bottom)[0] - 1.0
    places = [
        ((at, py + k), anchor) for k in (-3.4, 1.4) for at, anchor in ((px + 1.0, Anchor.LEFT), (far, Anchor.RIGHT))
    ]
    sketch.label(places, f"mounting line, {length(bottom, scene)} above the floor", ink.SMALL,
                 colour=ink.UP, halo=ink.WALL)  # fmt: skip
    cx, cy = view.at(x, low)
    sketch.label([((cx + a, cy + b), Anchor.LEFT if a > 0 else Anchor.RIGHT) for b in (2.0, 5.6, -4.2, 9.0) for a in (1.2, -1.2)],
                 f"centre, {length(x, scene)} from the left wall", ink.SMALL, colour=ink.UP, halo=ink.WALL)  # fmt: skip


def _holes(sketch: Sketch, view: View, holes: Sequence[Hole]) -> None:
    """Draw holes in the wall's board full, so that marks and holes can be seen together."""
    for hole in holes:
        u, v = flat(hole.centre, 1)
        if abs(hole.centre[1]) > 0.05 or not (
            view.region[0] <= u <= view.region[2] and view.region[1] <= v <= view.region[3]
        ):
            continue
        if hole.shape == "round":
            sketch.disc(view.at(u, v), hole.size_in[0] / 2 * view.scale, ink.MEDIUM, colour=ink.UP)
        else:
            w, h = hole.size_in[0] / 2, hole.size_in[1] / 2
            sketch.rect(view.at(u - w, v - h), view.at(u + w, v + h), ink.MEDIUM, colour=ink.UP)
        x, y = view.at(u, v)
        sketch.line((x - 3, y), (x + 3, y), ink.HAIR, colour=ink.UP)
        sketch.line((x, y - 3), (x, y + 3), ink.HAIR, colour=ink.UP)
        return


def _dimensions(sketch: Sketch, view: View, scene: Scene, marks: Sequence[Mark]) -> None:
    """Dimension each screw from the centre line, each row from the mounting line."""
    bottom = scene.hood_bottom_in
    if bottom is None or not marks:
        return
    x = scene.hood.centre_in
    rows = sorted({m.height_in for m in marks})
    edge = view.at(view.region[0], 0.0)[0]
    for n, height in enumerate(h for h in rows if any(m.row != "bracket" for m in marks if m.height_in == h)):
        at = edge - 3.0 - 5.5 * n
        first = min((m.left_in for m in marks if m.height_in == height), default=x)
        sketch.dim_up(
            view.at(0, bottom)[1],
            view.at(0, height)[1],
            at,
            figure(height - bottom, scene),
            from_x=(edge, view.at(first, 0)[0]),
        )
    for height in rows:
        row = sorted((m for m in marks if m.height_in == height), key=lambda m: abs(m.left_in - x))
        base = view.at(0.0, height)[1]
        for n, mark in enumerate(row):
            if abs(mark.left_in - x) < 1 / 64:
                continue
            level = base + (4.8 + 4.6 * (n // 2)) * (1 if mark.row != "bracket" else -1)
            sketch.dim_across(view.at(x, 0)[0], view.at(mark.left_in, 0)[0], level, figure(abs(mark.left_in - x), scene),
                              from_y=(level, base), halo=ink.WALL)  # fmt: skip


def _electrical(sketch: Sketch, view: View, scene: Scene) -> None:
    supply, bottom = scene.hood.electrical, scene.hood_bottom_in
    if supply is None or bottom is None:
        return
    x, y = view.at(scene.hood.centre_in + supply.across_in, bottom + supply.up_in)
    sketch.rect((x - 1.2, y - 1.2), (x + 1.2, y + 1.2), ink.FINE, fill=ink.WHITE)
    sketch.line((x - 1.2, y - 1.2), (x + 1.2, y + 1.2), ink.FINE)
    sketch.line((x - 1.2, y + 1.2), (x + 1.2, y - 1.2), ink.FINE)
    places = [(x + a, y + b) for b in (-4.5, -8.0, 4.5, -12.0) for a in (-5.0, 5.0, -9.0, 9.0)]
    sketch.note((x, y), "supply", places, ink.LEAST, halo=ink.WALL)


def _free_lines(sketch: Sketch, view: View, scene: Scene, free: Sequence[tuple[float, str]]) -> None:
    """Draw, from the mounting line up, where the hood's centre line would stand if it is moved to a free place."""
    low, high = scene.hood_bottom_in or view.region[1], view.region[3]
    for at, _ in free:
        sketch.line(view.at(at, low), view.at(at, high - 1.0), ink.FINE, colour=ink.INK2, dash=ink.CENTRE_DASH)
        x, y = view.at(at, high)
        places = [((x + a, y + b), Anchor.MIDDLE) for b in (1.0, 4.0) for a in (0.0, 4.0, -4.0)]
        sketch.label(places, f"or {figure(at, scene)}", ink.LEAST, Face.NARROW_BOLD, colour=ink.INK2, halo=ink.WHITE)
