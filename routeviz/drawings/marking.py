"""The marking sheet: centre line, mounting line, every screw with what it meets."""

from __future__ import annotations

from itertools import pairwise

from routeviz.drawings import palette as ink
from routeviz.drawings.elevation import break_line
from routeviz.drawings.flat import clipped, clipped_line, ends_of, flat
from routeviz.drawings.hood import draw_marks
from routeviz.drawings.house import View, ceiling_line, draw_seen, fits_scale
from routeviz.drawings.primitives import Anchor, Face
from routeviz.drawings.sheet import Paper, Sheet, heading, new_sheet, scale_name, section_title
from routeviz.drawings.sketch import Frame2, Sketch
from routeviz.drawings.words import figure, length, unit_note
from routeviz.model.overhead import ceiling_at_in, ceiling_over_hood_in
from routeviz.model.plan import Option, Plan
from routeviz.model.scene import Scene, WallFrame, WallSide
from routeviz.model.solids import Solid, SolidKind
from routeviz.model.takeoff import Mark
from routeviz.model.takeoff import Sheet as Name
from routeviz.units import inch_text, mm_text

__all__ = ["drill_text", "marking_sheet"]

_FRAMING = (
    SolidKind.STUD, SolidKind.JACK, SolidKind.CRIPPLE, SolidKind.PLATE, SolidKind.HEADER, SolidKind.SILL, SolidKind.BLOCKING,
)  # fmt: skip
_COLUMN = 104.0
_SOLID_WALLS = ("masonry wall", "concrete wall")


def marking_sheet(plan: Plan, option: Option, paper: Paper, number: str) -> Sheet:
    """Draw the wall behind the hood at a larger scale, with a table of all marks."""
    scene = plan.scene
    sheet = new_sheet(paper, Name.MARKING, "Marking the wall")
    left, bottom, right, top = sheet.room
    u0, v0, u1, v1 = _region(scene, option)
    room = (right - left - _COLUMN - 22.0, top - 9.5 - bottom - 10.0)
    scale = fits_scale(u1 - u0, v1 - v0, room, (*paper.large, *paper.scales))
    mm = 25.4 / scale
    sheet.scale = scale_name(scale)
    heading(sheet, number, "Marking the wall", f"from the room, {sheet.scale}. {unit_note(scene)}")
    x0 = left + 15.0
    y0 = bottom + 5.0 + max(0.0, (room[1] - (v1 - v0) * mm) / 2)
    view = View(1, Frame2((x0 - u0 * mm, y0 - v0 * mm), mm), (u0, v0, u1, v1))
    _wall(sheet.sketch, view, plan)
    _lines(sheet.sketch, view, plan)
    _holes(sheet.sketch, view, option)
    draw_marks(sheet.sketch, view, option.takeoff.marks, names=True)
    _dimensions(sheet.sketch, view, scene, option)
    _electrical(sheet.sketch, view, scene)
    _table(sheet, plan, option, right - _COLUMN, right)
    return sheet


def _region(scene: Scene, option: Option) -> tuple[float, float, float, float]:
    bottom = scene.hood_bottom_in or scene.cooktop.height_in + 30.0
    x, half = scene.hood.centre_in, scene.hood.width_in / 2
    xs = [x - half - 6.0, x + half + 6.0, *(m.left_in + s for m in option.takeoff.marks for s in (-6.0, 6.0))]
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
        if solid.side is not WallSide.HOOD or solid.space != "kitchen" or solid.kind not in _FRAMING:
            continue
        fill = "#f1e2c4"
        if draw_seen(sketch, clip, solid, fill=fill, colour=ink.TIMBER_EDGE, dash=ink.HIDDEN_DASH, weight=ink.HAIR):
            _stud_number(sketch, view, solid)
    for (u0, v0), (u1, v1) in pairwise(line):
        if clip_line := clipped_line((u0, v0), (u1, v1), view.region):
            sketch.line(view.at(*clip_line[0]), view.at(*clip_line[1]), ink.HEAVY)
    break_line(sketch, view, low)


def _stud_number(sketch: Sketch, view: View, solid: Solid) -> None:
    middle = sum(ends_of(solid.shape, 0)) / 2
    low = view.region[1]
    if solid.kind is not SolidKind.STUD or solid.member is None or not solid.member.number:
        return
    if view.region[0] <= middle <= view.region[2] and ends_of(solid.shape, 2)[0] <= low + 6.0:
        x, y = view.at(middle, low)
        sketch.label(
            [((x, y + 2.0), Anchor.MIDDLE)], str(solid.member.number), ink.SMALL, Face.NARROW_BOLD, halo="#f1e2c4"
        )


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


def _holes(sketch: Sketch, view: View, option: Option) -> None:
    """Draw holes in the wall's board full, so that marks and holes can be seen together."""
    for hole in option.takeoff.holes:
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


def _dimensions(sketch: Sketch, view: View, scene: Scene, option: Option) -> None:
    """Dimension each screw from the centre line, each row from the mounting line."""
    bottom = scene.hood_bottom_in
    marks = option.takeoff.marks
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


def drill_text(size_in: float, scene: Scene) -> str:
    """Write a drill's size: 32nds of an inch, or whole millimetres."""
    return mm_text(size_in) if scene.metric else inch_text(size_in, denominator=32)


def _table(sheet: Sheet, plan: Plan, option: Option, left: float, right: float) -> None:
    scene, sketch = plan.scene, sheet.sketch
    y = section_title(sheet, (left, sheet.room[3] - 14.0), "Marks", right)
    heads = ((0.0, "", Anchor.LEFT), (22.0, "from left", Anchor.RIGHT), (37.0, "above floor", Anchor.RIGHT), (40.0, "goes into", Anchor.LEFT),
             (74.0, "pilot", Anchor.LEFT), (88.0, "leave proud", Anchor.LEFT))  # fmt: skip
    for dx, words, anchor in heads:
        sketch.text((left + dx, y), words, ink.LEAST, anchor=anchor, colour=ink.INK2)
    y -= 4.6
    for mark in option.takeoff.marks:
        if y < sheet.room[1] + 30.0:
            break
        y = _mark_row(sketch, mark, scene, left, right, y)
    y -= 2.0
    for words in _notes(plan, option):
        for line in _wrapped(words, right - left):
            if y < sheet.room[1] + 1.0:
                return
            sketch.text((left, y), line, ink.SMALL)
            y -= 3.6
        y -= 1.0


def _wrapped(words: str, room: float) -> list[str]:
    from routeviz.drawings.lettering import wrapped

    return wrapped(words, ink.SMALL, Face.SANS, room)


def _mark_row(sketch: Sketch, mark: Mark, scene: Scene, left: float, right: float, y: float) -> float:
    if mark.wood:
        sketch.disc((left + 1.4, y + 0.9), 1.05, ink.FINE, fill=ink.INK)
    else:
        sketch.rect((left + 0.4, y - 0.1), (left + 2.4, y + 1.9), ink.MEDIUM, fill=ink.WHITE)
    sketch.text((left + 4.0, y), mark.label, ink.BODY, Face.BOLD)
    sketch.text((left + 22.0, y), figure(mark.left_in, scene), ink.BODY, Face.NARROW_BOLD, Anchor.RIGHT)
    sketch.text((left + 37.0, y), figure(mark.height_in, scene), ink.BODY, Face.NARROW_BOLD, Anchor.RIGHT)
    holds = _wrapped(mark.holds, 33.0)
    for n, line in enumerate(holds):
        sketch.text((left + 40.0, y - 3.5 * n), line, ink.SMALL)
    sketch.text((left + 74.0, y), drill_text(mark.pilot_in, scene), ink.SMALL, Face.NARROW_BOLD)
    sketch.text((left + 88.0, y), length(mark.stand_off_in, scene) if mark.stand_off_in else "tight", ink.SMALL)
    low = y - 3.5 * len(holds)
    sketch.text((left + 40.0, low), mark.fastener, ink.LEAST, colour=ink.INK2)
    low -= 1.5
    sketch.line((left, low), (right, low), ink.HAIR, colour="#b9ad99")
    return low - 4.0


def _notes(plan: Plan, option: Option) -> list[str]:
    wood = sum(1 for m in option.takeoff.marks if m.wood and m.row != "bracket")
    hood = sum(1 for m in option.takeoff.marks if m.row != "bracket")
    notes = [
        "Filled disc: screw into wood. Open square: anchor. Pilots and sizes are common practice; the fastener's maker decides.",
    ]
    if plan.scene.wall(WallSide.HOOD).frame in (WallFrame.WOOD, WallFrame.STEEL):
        notes.append("Find every stud again with a magnet or a fine nail before drilling; then mark from both lines.")
    if hood and all(m.holds in _SOLID_WALLS for m in option.takeoff.marks):
        notes.insert(
            0,
            f"The whole {plan.scene.wall(WallSide.HOOD).frame.value} wall holds: drill for the anchors, never into a joint.",
        )
    elif hood:
        backing = "" if wood >= min(2, hood) else (
            " Let backing into the wall first: anchors alone do not carry a hood. The open squares then take screws.")  # fmt: skip
        notes.insert(0, f"{wood} of {hood} hood screws meet wood.{backing}")
    if any(m.row == "bracket" for m in option.takeoff.marks):
        notes.append(
            "Bracket screws stand where brackets of this width usually have them: use the bracket's own holes."
        )
    return notes
