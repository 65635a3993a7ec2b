"""What a plan without a route puts in the installer's hands: the conflict at true scale, and what frees it."""

from __future__ import annotations

from collections.abc import Sequence

from routeviz.drawings import palette as ink
from routeviz.drawings.caps import draw_cap
from routeviz.drawings.conflict_words import COLUMN, draw_column, shifts
from routeviz.drawings.elevation import break_line, number_members
from routeviz.drawings.flags import barred
from routeviz.drawings.flat import clipped, cut, duct_outlines, ends_of, flat
from routeviz.drawings.hood import draw_hood_front, draw_hood_side, draw_hood_top
from routeviz.drawings.house import OWN, View, draw_cut, draw_duct, fits_scale
from routeviz.drawings.outside import draw_outside
from routeviz.drawings.primitives import Anchor
from routeviz.drawings.sheet import Paper, Sheet, heading, new_sheet, scale_name
from routeviz.drawings.sketch import Frame2, Sketch
from routeviz.drawings.wished import Wish, wishes
from routeviz.drawings.words import figure, unit_note
from routeviz.model.overhead import ceiling_at_in
from routeviz.model.plan import Plan
from routeviz.model.scene import OutdoorKind, Scene
from routeviz.model.solids import KeepOut, SolidKind
from routeviz.model.study import Fix
from routeviz.model.takeoff import Sheet as Name

__all__ = ["conflict_sheets"]

_ROWS = 17.0  # of dimensions above and below the drawing [mm]
_ABOVE_IN = 8.0
_FURNITURE = (SolidKind.COOKTOP, SolidKind.COUNTER)


def conflict_sheets(plan: Plan, fixes: Sequence[Fix], paper: Paper, first: int) -> list[Sheet]:
    """Draw each straight way with what bars it: members and rooms in a section, things outdoors on the wall's face."""
    made: list[Sheet] = []
    for wish in wishes(plan):
        thing = _thing_outdoors(wish)
        number = str(first + len(made))
        made.append(_section(plan, wish, paper, number) if thing is None else _outside(plan, wish, paper, number))
        draw_column(made[-1], plan, wish, fixes)
    return made


def _thing_outdoors(wish: Wish) -> KeepOut | None:
    """Give the thing on the wall's face that bars a cap; a lot line is no thing on the face."""
    ids = {b.id for b in wish.bars if b.kind == "keep-out"}
    things = wish.face.keep_outs if wish.face else ()
    return next((t for t in things if t.id in ids and t.kind != OutdoorKind.LOT_LINE.value), None)


def _outside(plan: Plan, wish: Wish, paper: Paper, number: str) -> Sheet:
    """Draw the wall from outside with a cap where the duct would come out."""
    face = wish.face
    assert face is not None
    sheet = new_sheet(paper, Name.CONFLICT, f"{wish.why.wanted.capitalize()}: what is in the way")
    view = draw_outside(sheet, plan, wish.route, face, number, column=COLUMN + 4.0)
    u, v = flat(wish.route.termination.point, face.axis)
    half = wish.route.section.width_in / 2
    moved = sorted(shifts(wish, plan.scene), key=lambda s: view.at(u + s[0], v)[0])
    for n, (shift, _) in enumerate(moved):
        if view.region[0] <= u + shift <= view.region[2]:
            centre = view.at(u + shift, v)
            sheet.sketch.disc(centre, half * view.scale, ink.FINE, colour=ink.UP, dash=ink.DUCT_DASH)
            way = -1.0 if 2 * n < len(moved) else 1.0  # to the outer side, so that no leader crosses a text
            tip = (centre[0] + 0.7 * way * half * view.scale, centre[1] - 0.7 * half * view.scale)
            places = [(tip[0] + way * a, tip[1] - k) for k in (6.0, 10.0, 15.0) for a in (3.0, 8.0)]
            words = f"free at {figure(plan.scene.hood.centre_in + shift, plan.scene)}"
            sheet.sketch.note(tip, words, places, ink.LEAST, colour=ink.UP, halo=ink.CABINET)
    return sheet


# the section ----------------------------------------------------------------------------------------------------------
def _section(plan: Plan, wish: Wish, paper: Paper, number: str) -> Sheet:
    """Cut the house where the duct would run: upright for a way up, level for a way back."""
    title = f"{wish.why.wanted.capitalize()}: what is in the way"
    sheet = new_sheet(paper, Name.CONFLICT, title)
    left, bottom, right, top = sheet.room
    axis, at = _plane(plan, wish)
    u0, v0, u1, v1 = _region(plan, wish, axis)
    room = (right - left - COLUMN - 16.0, top - 9.5 - bottom - 2 * _ROWS)
    scale = fits_scale(u1 - u0, v1 - v0, room, (*paper.large, *paper.scales))
    mm = 25.4 / scale
    sheet.scale = scale_name(scale)
    seen = ("seen from the right", "seen from the room", "seen from above, the hood wall at the top")[axis]
    heading(sheet, number, title, f"{seen}, {sheet.scale}. {unit_note(plan.scene)}")
    x0 = left + 6.0 + max(0.0, (room[0] - (u1 - u0) * mm) / 2) - u0 * mm
    y0 = bottom + _ROWS + max(0.0, (room[1] - (v1 - v0) * mm) / 2) - v0 * mm
    view = View(axis, Frame2((x0, y0), mm), (u0, v0, u1, v1))
    _draw(sheet.sketch.left_of(right - COLUMN - 2.0), view, plan, wish, at)
    return sheet


def _plane(plan: Plan, wish: Wish) -> tuple[int, float]:
    """Choose the cut: square to the first member in the way, else as the way itself asks."""
    end = wish.route.termination.point
    if not wish.up:
        return 2, end[2]
    solids = [plan.frame.solid(b.id) for b in wish.bars if b.kind == "solid"]
    along = next((s.member.axis for s in solids if s.member is not None), 1)
    axis = along if along in (0, 1) else 1
    return axis, end[axis] if axis == 0 else min(end[1], -0.25)


def _region(plan: Plan, wish: Wish, axis: int) -> tuple[float, float, float, float]:
    """Give left, low, right and high of the section [in]: hood, duct, what bars it, and the places that free it."""
    scene, hood, end = plan.scene, plan.scene.hood, wish.route.termination.point
    reach = max([14.0, *(abs(s) + wish.route.section.width_in / 2 + 3.0 for s, _ in shifts(wish, scene))])
    sides = (hood.centre_in - max(reach, hood.width_in / 2 + 3.0), hood.centre_in + max(reach, hood.width_in / 2 + 3.0))
    if axis == 2:
        far = end[1] + 8.0
        line = _lot_line(wish)
        if line is not None:
            far = end[1] + line.away_in + 6.0
        return sides[0], -hood.depth_in - 3.0, sides[1], far
    bottom = (scene.hood_bottom_in or 0.0) - 2.0
    tops = [ends_of(plan.frame.solid(b.id).shape, 2)[1] for b in wish.bars if b.kind == "solid"]
    over = scene.cap.roof_stub_in + _ABOVE_IN if wish.face else 0.0
    high = max(end[2] + over, *(t for t in tops if t < end[2] + 24.0), ceiling_at_in(scene, end[0]) + _ABOVE_IN)
    if axis == 1:
        return sides[0], bottom, sides[1], high
    return -hood.depth_in - 4.0, bottom, scene.walls[0].thickness_in + 6.0, high


def _lot_line(wish: Wish) -> KeepOut | None:
    """Give the lot line behind the wall, where it bars the way; one to the side is told in words."""
    ids = {b.id for b in wish.bars if b.kind == "keep-out"}
    things = wish.face.keep_outs if wish.face else ()
    lines = (t for t in things if t.id in ids and t.kind == OutdoorKind.LOT_LINE.value)
    return next((line for line in lines if line.away_in > 0), None)


def _draw(sketch: Sketch, view: View, plan: Plan, wish: Wish, at: float) -> None:
    scene, frame = plan.scene, plan.frame
    ids = {b.id for b in wish.bars}
    for solid in frame.solids:
        if solid.kind in OWN or solid.kind in _FURNITURE:
            continue
        draw_cut(sketch, view, solid, at)
        if solid.id in ids:
            for outline in cut(solid.shape, view.axis, at):
                for piece in clipped(outline, view.region):
                    barred(sketch, [view.at(*p) for p in piece])
    _closed(sketch, view, plan, ids)
    (draw_hood_side, draw_hood_front, draw_hood_top)[view.axis](sketch, view, scene)
    if view.axis != 2:
        break_line(sketch, view, view.region[1])
    for shift, _ in shifts(wish, scene) if view.axis != 0 else ():
        _ghost(sketch, view, wish, shift)
    draw_duct(sketch, view, wish.route, hidden=True)
    _clearance(sketch, view, wish, scene)
    draw_cap(sketch, view, wish.route, scene, frame)
    _overlaps(sketch, view, plan, wish)
    if view.axis != 0:
        _shift_rows(sketch, view, wish, scene)
    _lot_line_sizes(sketch, view, wish, scene)
    for kind in (SolidKind.STUD,) if view.axis == 2 else (SolidKind.JOIST, SolidKind.RAFTER):
        number_members(sketch, view, frame, kind, at, view.axis)  # after the centre line, so that it strikes none
    for shift, _ in shifts(wish, scene) if view.axis != 0 else ():
        _name_ghost(sketch, view, wish, shift, scene)
    _names(sketch, view, plan, wish, at)


def _closed(sketch: Sketch, view: View, plan: Plan, ids: set[str]) -> None:
    """Hatch a place that is closed for good, such as a room above, and name it."""
    for zone in plan.frame.zones:
        if zone.id not in ids:
            continue
        (u0, u1), (v0, v1) = (ends_of(zone.shape, k) for k in range(3) if k != view.axis)
        for piece in clipped(((u0, v0), (u1, v0), (u1, v1), (u0, v1)), view.region):
            sketch.hatch([view.at(*p) for p in piece], 2.4, colour=ink.BAR)
            (x0, y0), (x1, y1) = (view.at(pick(p[0] for p in piece), pick(p[1] for p in piece)) for pick in (min, max))
            places = [
                ((x0, y1 + 1.5), Anchor.LEFT),
                ((x1, y1 + 1.5), Anchor.RIGHT),
                (((x0 + x1) / 2, (y0 + y1) / 2), Anchor.MIDDLE),
            ]
            sketch.label(places, f"{zone.label}: closed", ink.SMALL, halo=ink.WHITE)


def _ghost(sketch: Sketch, view: View, wish: Wish, shift: float) -> None:
    """Draw the duct where it would be free, hair thin."""
    for part in wish.route.parts:
        if part.length_in <= 0:
            continue
        for outline in duct_outlines(part, view.axis):
            for piece in clipped(tuple((u + shift, v) for u, v in outline), view.region):
                sketch.path([view.at(*p) for p in piece], ink.HAIR, colour=ink.UP, closed=True, dash=(0.8, 0.8))


def _name_ghost(sketch: Sketch, view: View, wish: Wish, shift: float, scene: Scene) -> None:
    """Say which shift a hair-thin duct stands for, at its outer edge."""
    part = [p for p in wish.route.parts if p.length_in > 0][-1]
    (u0, v0), (u1, v1) = flat(part.start, view.axis), flat(part.end, view.axis)
    side = 1.0 if shift > 0 else -1.0
    edge, level = u1 + shift + side * wish.route.section.width_in / 2, v0 + 0.25 * (v1 - v0)
    if not view.region[0] <= edge <= view.region[2] or abs(u1 - u0) > 1.0:
        return
    tip = view.at(edge, level)
    places = [(tip[0] + side * a, tip[1] + b) for b in (-3.0, -8.0, 4.0, 9.0, -13.0) for a in (6.0, 11.0, 18.0)]
    words = f"free when {figure(abs(shift), scene)} {'right' if shift > 0 else 'left'}"
    sketch.note(tip, words, places, ink.LEAST, colour=ink.UP, halo=ink.WHITE)


def _clearance(sketch: Sketch, view: View, wish: Wish, scene: Scene) -> None:
    """Draw the clearance that the duct wants on both sides of its last straight."""
    part = [p for p in wish.route.parts if p.length_in > 0][-1]
    half = _half(wish, scene, view.axis)
    across = 1 if view.axis == 0 else 0
    (a, b), (u0, v0, u1, v1) = sorted((part.start[2 if wish.up else 1], part.end[2 if wish.up else 1])), view.region
    for side in (-half, half):
        u = part.end[across] + side
        if u0 <= u <= u1:
            ends = view.at(u, max(a, v0)), view.at(u, min(b, v1))
            sketch.line(*ends, ink.HAIR, colour=ink.UP, dash=(0.5, 0.7))


def _half(wish: Wish, scene: Scene, axis: int) -> float:
    """Half the duct with its clearance, across the view [in]."""
    section = wish.route.section
    side = section.width_in if axis != 0 else section.height_in
    return side / 2 + scene.duct.clearance_in


def _overlaps(sketch: Sketch, view: View, plan: Plan, wish: Wish) -> None:
    """Dimension the duct with its clearance, and how far each member reaches into it; rows above the drawing."""
    scene, across = plan.scene, 1 if view.axis == 0 else 0
    centre = wish.route.termination.point[across]
    half = _half(wish, scene, view.axis)
    bare = half - scene.duct.clearance_in
    top = view.at(0.0, view.region[3])[1]
    x0, x1 = view.at(centre - half, 0.0)[0], view.at(centre + half, 0.0)[0]
    words = f"{figure(2 * half, scene)} duct and clearance"
    sketch.dim_across(x0, x1, top + 3.5, words, from_y=top)
    drawn: list[tuple[float, float]] = []
    for bar in wish.bars:
        if bar.kind != "solid":
            continue
        low, high = ends_of(plan.frame.solid(bar.id).shape, across)
        a, b = max(low, centre - bare), min(high, centre + bare)
        if a >= b:
            a, b = max(low, centre - half), min(high, centre + half)
        if a >= b or any(abs(a - p) + abs(b - q) < 0.1 for p, q in drawn):
            continue
        drawn.append((a, b))
        tip = view.at(0.0, min(ends_of(plan.frame.solid(bar.id).shape, 2 if view.axis != 2 else 1)[1], view.region[3]))
        sketch.dim_across(view.at(a, 0.0)[0], view.at(b, 0.0)[0], top + 9.5, f"{figure(b - a, scene)} in the way",
                          from_y=(tip[1], top + 9.5), halo=ink.WHITE)  # fmt: skip


def _shift_rows(sketch: Sketch, view: View, wish: Wish, scene: Scene) -> None:
    """Dimension from the hood's centre to each place that frees the way; rows below the drawing, the least first."""
    low = view.at(0.0, view.region[1])[1]
    x = wish.route.termination.point[0]
    sketch.line((view.at(x, 0.0)[0], low), view.at(x, view.region[3]), ink.HAIR, colour=ink.UP, dash=ink.CENTRE_DASH)
    sides = {-1: 0, 1: 0}
    for shift, _ in sorted(shifts(wish, scene), key=lambda s: abs(s[0])):
        side = 1 if shift > 0 else -1
        y = low - 5.0 - 5.5 * sides[side]
        sides[side] += 1
        words = f"{figure(abs(shift), scene)} {'right' if shift > 0 else 'left'}"
        sketch.dim_across(
            view.at(x, 0.0)[0], view.at(x + shift, 0.0)[0], y, words, from_y=low, left=side < 0, halo=ink.WHITE
        )
    if any(sides.values()):
        below = view.at(x, 0.0)[0], low - 5.0 - 5.5 * max(sides.values())
        sketch.label([(below, Anchor.MIDDLE)], "moved so far, it is free", ink.LEAST, colour=ink.INK2, halo=ink.WHITE)


def _lot_line_sizes(sketch: Sketch, view: View, wish: Wish, scene: Scene) -> None:
    """Draw the lot line behind the wall, with the distance that is there and the one that is wanted."""
    line, end = _lot_line(wish), wish.route.termination.point
    if line is None or view.axis != 2:
        return
    a, b = view.at(view.region[0], end[1] + line.away_in), view.at(view.region[2], end[1] + line.away_in)
    sketch.line(a, b, ink.MEDIUM, colour=ink.BAR, dash=ink.CENTRE_DASH)
    sketch.label([((a[0] + 1.0, a[1] + 1.2), Anchor.LEFT)], "lot line", ink.SMALL, halo=ink.WHITE)
    x = view.at(end[0] + wish.route.section.width_in / 2 + 8.0, 0.0)[0]
    words = f"{figure(line.away_in, scene)}: at least {figure(line.distance_in, scene)} is wanted"
    sketch.dim_up(view.at(0.0, end[1])[1], a[1], x, words, from_x=x, right=True, halo=ink.WHITE)


def _names(sketch: Sketch, view: View, plan: Plan, wish: Wish, at: float) -> None:
    """Name the members in the way."""
    for bar in wish.bars:
        if bar.kind != "solid":
            continue
        solid = plan.frame.solid(bar.id)
        pieces = [p for ring in cut(solid.shape, view.axis, at) for p in clipped(ring, view.region)]
        if not pieces:
            continue
        right = max(p[0] for p in pieces[0])
        middle = sum(p[1] for p in pieces[0]) / len(pieces[0])
        x, y = view.at(right, middle)
        places = [
            (x + s * a, y + b) for a in (9.0, 14.0, 20.0, 28.0) for b in (5.0, -5.0, 9.0, -9.0, 0.0) for s in (1, -1)
        ]
        sketch.note((x, y), solid.label.partition(",")[0], places, ink.SMALL, halo=ink.WHITE)
