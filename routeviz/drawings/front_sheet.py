"""The first sheet: hood wall, tape and joist plan on one axis; the answer and the picture beside them."""

from __future__ import annotations

from routeviz.drawings import palette as ink
from routeviz.drawings.ceiling_plan import draw_joist_plan
from routeviz.drawings.elevation import draw_elevation, highest_in, least_high_in
from routeviz.drawings.flags import flag_key, verdict_mark
from routeviz.drawings.house import View, fits_scale
from routeviz.drawings.isometric import draw_isometric
from routeviz.drawings.lettering import width, wrapped
from routeviz.drawings.primitives import Face
from routeviz.drawings.sheet import Paper, Sheet, heading, new_sheet, right_text, scale_name, section_title
from routeviz.drawings.sketch import Frame2, Sketch
from routeviz.drawings.tape import TAPE_FOOT, TAPE_HEIGHT, draw_tape
from routeviz.drawings.words import figure, hole_size, length, plan_name, unit_note
from routeviz.model.finding import Verdict
from routeviz.model.path import Blocker
from routeviz.model.plan import Option, Plan
from routeviz.model.scene import Scene, WallSide
from routeviz.model.takeoff import Hole, Mark
from routeviz.model.takeoff import Sheet as Name

__all__ = ["front_sheet", "front_view_scale"]

_RIGHT_COLUMN = 70.0
PLAN_DEPTH_IN = 26.0
_MOST_WIDE_IN = 220.0  # of the wall is shown; longer walls are cut off away from the hood
_LONG_ANSWER = 95


def front_sheet(plan: Plan, option: Option | None, paper: Paper) -> Sheet:
    """Draw the first sheet."""
    sheet = new_sheet(paper, Name.HOOD_WALL, f"Hood wall, {plan_name(plan).lower()}, picture")
    left, bottom, right, top = sheet.room
    column = right - _RIGHT_COLUMN
    scale, mm = front_view_scale(plan, option, paper)
    sheet.scale = scale_name(scale)
    under = f"looking at it from the room, {sheet.scale}"
    heading(sheet, "1", "Hood wall", under)
    if key := flag_key(plan):
        at = (left + 9.0 + width(under, ink.SMALL) + 5.0, top - 7.0)
        sheet.sketch.text(at, key, ink.SMALL, colour=ink.INK2)
    u0, u1 = _across(plan, option, (column - 10.0 - left) / mm)
    spare = column - 10.0 - left - (u1 - u0) * mm
    x_origin = left + 6.0 - u0 * mm + max(0.0, spare / 2 - 8.0)
    wall = plan.scene.wall(WallSide.HOOD).thickness_in
    plan_low = bottom + 1.0
    y_origin = plan_low + PLAN_DEPTH_IN * mm
    tape_base = y_origin + wall * mm + TAPE_FOOT
    low_y = tape_base + TAPE_HEIGHT + 7.0
    z_low = _lowest_in(plan)
    z_high = min(highest_in(plan, option), z_low + (top - 9.5 - low_y) / mm)
    sketch = sheet.sketch.left_of(column - 2.0)
    elevation = View(1, Frame2((x_origin, low_y - z_low * mm), mm), (u0, z_low, u1, z_high))
    draw_elevation(sketch, elevation, plan, option)
    below = View(2, Frame2((x_origin, y_origin), mm), (u0, -PLAN_DEPTH_IN, u1, wall))
    draw_joist_plan(sketch, below, plan, option)
    _plan_title(sheet, plan, left, y_origin)
    pointer = plan.scene.hood.centre_in
    draw_tape(sketch, x_origin, tape_base, plan.scene.kitchen.width_in, mm, metric=plan.scene.metric, pointer_in=pointer,
              pointer_words=figure(pointer, plan.scene), region=(u0, u1))  # fmt: skip
    _right_side(sheet, plan, option, column, right)
    return sheet


def front_view_scale(plan: Plan, option: Option | None, paper: Paper) -> tuple[float, float]:
    """Give the scale of the elevation (24 for 1 : 24) and its millimetres for one inch."""
    wide = min(plan.scene.kitchen.width_in + 16.0, _MOST_WIDE_IN)
    wall = plan.scene.wall(WallSide.HOOD).thickness_in
    tall = least_high_in(plan, option) + 3.0 - _lowest_in(plan) + PLAN_DEPTH_IN + wall
    room = (paper.width - 24.0 - _RIGHT_COLUMN - 10.0, paper.height - 19.5 - 31.0 - TAPE_HEIGHT - 8.5)
    scale = fits_scale(wide, 0.0, room, paper.scales[:3])
    if tall * 25.4 / scale > room[1]:  # a tall route or room: a smaller scale shows it whole
        scale = fits_scale(wide, tall, room, [s for s in paper.scales if s >= scale])
    return scale, 25.4 / scale


def _lowest_in(plan: Plan) -> float:
    """Give the height above the floor where the elevation is broken off below [in]."""
    return max(0.0, plan.scene.cooktop.height_in - 12.0)


def _across(plan: Plan, option: Option | None, room_in: float) -> tuple[float, float]:
    """Choose which part of the wall is shown [in]: all of it, or as much as fits round hood and duct."""
    wide = plan.scene.kitchen.width_in
    u0, u1 = -7.5, wide + 8.0
    if u1 - u0 <= room_in:
        return u0, u1
    places = [plan.scene.hood.centre_in]
    if option is not None:
        places += [p.end[0] for p in option.route.parts]
    middle = (min(places) + max(places)) / 2
    u0 = min(max(u0, middle - room_in / 2), u1 - room_in)
    return u0, u0 + room_in


def _plan_title(sheet: Sheet, plan: Plan, left: float, y_origin: float) -> None:
    sketch, words = sheet.sketch, plan_name(plan).split()
    base = max(y_origin - 14.0, sheet.room[1] + 0.5 + 4.0 * len(words))
    for n, word in enumerate(words):
        sketch.text((left - 4.0, base - 4.5 - 4.0 * n), word, ink.HEADING, Face.SERIF)


def _right_side(sheet: Sheet, plan: Plan, option: Option | None, column: float, right: float) -> None:
    sketch = sheet.sketch
    y = sheet.room[3] - 3.0
    room = right - column
    works = plan.verdict in (Verdict.WORKS, Verdict.TIGHT)
    indent = verdict_mark(sketch, column, y - 0.2, plan.verdict)
    sketch.text(
        (column + indent, y), plan.verdict.value, ink.HEADING, Face.BOLD, colour=ink.UP if works else ink.BAR_INK
    )
    y -= 5.6
    way, _, rest = plan.answer.rpartition(": ")
    if not way or "elbow" not in rest:
        way, rest = plan.answer, ""
    size = ink.TITLE if len(way) <= _LONG_ANSWER else 3.7
    for line in wrapped(way if way.endswith(".") else f"{way}.", size, Face.SERIF, room)[:6]:
        sketch.text((column, y), line, size, Face.SERIF)
        y -= size * 1.16
    for line in wrapped(f"{rest[:1].upper()}{rest[1:]}", 3.1, Face.SANS, room)[:3] if rest else []:
        sketch.text((column, y), line, 3.1, colour=ink.INK2)
        y -= 4.2
    for line in wrapped(plan.second, ink.SMALL, Face.SANS, room)[: 7 if option else 16] if plan.second else []:
        sketch.text((column, y), line, ink.SMALL, colour=ink.INK2)
        y -= 3.6
    bottom = _lists(sheet, plan, option, column, right) if option is not None else _why(sheet, plan, column, right)
    y -= 2.0
    sketch.text((column, y - 4.4), "Where it runs" if option else "The place", ink.HEADING, Face.SERIF)
    draw_isometric(sketch, plan, option, (column + 1.0, bottom + 2.0, right - 1.0, y - 8.0))


def _why(sheet: Sheet, plan: Plan, column: float, right: float) -> float:
    """Say what is in the way of each simpler route, and how little frees it; give the height where the list ends."""
    scene, room = plan.scene, right - column
    lines: list[str] = []
    for why in plan.paths.why_not:
        blockers = "; ".join(_met(b, scene) for b in why.told[:3])
        lines += wrapped(
            f"{why.wanted[:1].upper()}{why.wanted[1:]}: {blockers or 'no place'}.", ink.SMALL, Face.SANS, room
        )
        if why.shift_in is not None:
            way = "right" if why.shift_in > 0 else "left"
            tried = "searched again: free" if why.verified else "to be planned again"
            what = "hood and cooktop " if why.takes_cooktop else ""
            said = f"Shift {what}{length(abs(why.shift_in), scene)} {way} ({tried})."
            lines += wrapped(said, ink.SMALL, Face.SANS, room)
    if not lines:
        return sheet.room[1] + 2.0
    lines = lines[:22]
    y = sheet.room[1] + 2.0 + 3.7 * (len(lines) - 1)
    top = section_title(sheet, (column, y + 5.6), "What is in the way", right) + 5.6
    for n, line in enumerate(lines):
        sheet.sketch.text((column, y - 3.7 * n), line, ink.SMALL)
    return top + 4.0


def _met(bar: Blocker, scene: Scene) -> str:
    if bar.kind == "keep-out":
        return f"{bar.label}, too near for a cap"
    if bar.kind == "zone":
        return bar.label
    return f"{bar.label}, {length(bar.overlap_in, scene)} into the duct" if bar.overlap_in > 0 else bar.label


def _lists(sheet: Sheet, plan: Plan, option: Option, column: float, right: float) -> float:
    """Write the lists of the right column from below upwards; give the height where they end."""
    sketch = sheet.sketch
    scene = plan.scene
    y = sheet.room[1] + 2.0
    lines = _hole_words(option.takeoff.holes, plan)
    words = [w for line in lines for w in wrapped(line, ink.SMALL, Face.SANS, right - column)][:4]
    words += [unit_note(scene)]
    for line in reversed(words):
        sketch.text((column, y), line, ink.SMALL)
        y += 3.6
    y += 2.4
    texts = [
        wrapped(f"{m.what[:1].upper()}{m.what[1:]}: {m.assumed}", ink.SMALL, Face.SANS, right - column - 5.5)
        for m in option.takeoff.measure_first[:4]
    ]
    if texts:
        high = sum(3.5 * len(t) + 0.9 for t in texts)
        first = section_title(sheet, (column, y + high), "Measure these first", right)
        row = first + 0.4
        for lines_ in texts:
            sketch.rect((column + 0.3, row - 0.4), (column + 2.8, row + 2.1), ink.FINE)
            for n, line in enumerate(lines_):
                sketch.text((column + 5.0, row - 3.5 * n), line, ink.SMALL)
            row -= 3.5 * len(lines_) + 0.9
        y += high + 7.5
    marks = [m for m in option.takeoff.marks if m.row != "bracket"][:8]
    if marks:
        height = marks[0].height_in
        y += 4.3 * len(marks)
        first = section_title(sheet, (column, y), f"Screws, first line {length(height, scene)} above the floor", right)
        for n, mark in enumerate(marks):
            _screw_row(sketch, sheet, plan, column, right, first + 0.4 - n * 4.3, mark)
        y += 6.5
    return y


def _screw_row(sketch: Sketch, sheet: Sheet, plan: Plan, column: float, right: float, y: float, mark: Mark) -> None:  # fmt: skip
    if mark.wood:
        sketch.disc((column + 1.6, y + 0.9), 1.05, ink.FINE, fill=ink.INK)
    else:
        sketch.rect((column + 0.6, y - 0.1), (column + 2.6, y + 1.9), ink.MEDIUM, fill=ink.WHITE)
    right_text(sheet, (column + 13.5, y), figure(mark.left_in, plan.scene))
    what = "backing" if mark.backed else mark.holds.split(":")[0]
    words = f"{what}: screw" if mark.wood or mark.backed else f"{what}: anchor"
    sketch.text((column + 16.0, y), wrapped(words, ink.SMALL, Face.SANS, right - column - 16.0)[0], ink.SMALL)


def _hole_words(holes: tuple[Hole, ...], plan: Plan) -> list[str]:
    if not holes:
        return []
    first = holes[0]
    return [
        f"First hole, {first.layer}: {hole_size(first, plan.scene)}, centre {length(first.from_left_in, plan.scene)} "
        f"{first.from_left_name}, {length(first.from_other_in, plan.scene)} {first.from_other_name}."
    ]
