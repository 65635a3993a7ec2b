"""The marking sheet: centre line, mounting line, every screw with what it meets, the supply, the duct's hole."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from routeviz.drawings import palette as ink
from routeviz.drawings.backing import draw_backing, name_backing
from routeviz.drawings.elevation import break_line
from routeviz.drawings.flat import clipped, clipped_line, ends_of
from routeviz.drawings.hood import draw_marks
from routeviz.drawings.house import View, behind_board, ceiling_line, draw_seen, fits_scale
from routeviz.drawings.marking_sizes import draw_sizes, name_marks
from routeviz.drawings.marking_table import draw_table
from routeviz.drawings.oldholes import draw_old_holes
from routeviz.drawings.primitives import Anchor, Face
from routeviz.drawings.sheet import Paper, Sheet, heading, new_sheet, scale_name
from routeviz.drawings.sketch import Frame2, Sketch
from routeviz.drawings.supply import draw_supply, name_supply, supply_at
from routeviz.drawings.taken import Rect
from routeviz.drawings.wall_holes import draw_wall_hole, name_wall_hole, wall_hole
from routeviz.drawings.words import figure, length, unit_note
from routeviz.model.overhead import ceiling_at_in
from routeviz.model.plan import Option, Plan
from routeviz.model.scene import Scene, WallSide
from routeviz.model.solids import STUD_KINDS, Frame, SolidKind
from routeviz.model.takeoff import Hole, Mark
from routeviz.model.takeoff import Sheet as Name

__all__ = ["marking_sheet"]

_FRAMING = (*STUD_KINDS, SolidKind.BLOCKING, SolidKind.FURRING)
_COLUMN = 104.0
_STUD = "#f1e2c4"
_TALLEST_IN = 72.0  # a wall that shows more is broken between hood and ceiling
_POLES = (1.6, 4.6, 7.6)  # over the ceiling stands the name of another place for the centre line [mm]
_GAP = 9.0  # between the two pieces of a broken wall [mm]


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
    hole = wall_hole(holes)
    regions = _regions(scene, marks, free, hole)
    u0, u1 = min(r[0] for r in regions), max(r[2] for r in regions)
    tall = sum(r[3] - r[1] for r in regions)
    room = (right - left - _COLUMN - 22.0, top - 13.5 - bottom - 10.0 - _GAP * (len(regions) - 1))
    scale = fits_scale(u1 - u0, tall, room, (*paper.large, *paper.scales))
    mm = 25.4 / scale
    sheet.scale = scale_name(scale)
    heading(sheet, number, "Marking the wall", f"from the room, {sheet.scale}. {unit_note(scene)}")
    x0 = left + 15.0
    low = bottom + 7.0 + max(0.0, (room[1] - tall * mm) / 2)
    views: list[View] = []
    for region in regions:
        views.append(View(1, Frame2((x0 - u0 * mm, low - region[1] * mm), mm), region))
        low += (region[3] - region[1]) * mm + _GAP
    sketch = sheet.sketch.left_of(right - _COLUMN - 2.0)
    wall = scene.wall(WallSide.HOOD).thickness_in
    at, lowest = supply_at(scene), views[0]
    for view in views:
        _wall(sketch, view, plan, cut_above=view is not views[-1])
        draw_backing(sketch, view, scene, marks)
        _lines(sketch, view, plan)
        _free_lines(sketch, view, scene, free)
        draw_marks(sketch, view, _within(view, marks))
    if hole is not None:
        draw_wall_hole(sketch, lowest, hole)
    if at is not None:
        draw_supply(sketch, lowest, plan)
    _stud_numbers(sketch, lowest, plan.frame)
    for view in views:
        name_marks(sketch, view, scene, _within(view, marks))
    draw_sizes(sketch, views, plan, marks)
    for view in views:
        _name_lines(sketch, view, scene)
        _name_free(sketch, view, scene, free)
    name_backing(sketch, views, scene, marks)
    if hole is not None:
        name_wall_hole(sketch, lowest, hole, scene)
    draw_old_holes(sketch, lowest, scene, option.route if option else None, (0.0, wall))
    if at is not None:
        name_supply(sketch, lowest, plan, "supply")
    draw_table(sheet, plan, marks, free, (right - _COLUMN, right), stop=option is None)
    return sheet


def _within(view: View, marks: Sequence[Mark]) -> list[Mark]:
    return [m for m in marks if view.region[1] <= m.height_in <= view.region[3]]


def _regions(scene: Scene, marks: Sequence[Mark], free: Sequence[tuple[float, str]], hole: Hole | None) -> list[Rect]:
    """Give the pieces of the wall that are shown [in], from below: one, or two where the ceiling is high.

    All marks and the duct's hole lie in them, and the ceiling over all that is shown, whether level or sloped.
    """
    bottom = scene.hood_bottom_in or scene.cooktop.height_in + 30.0
    x, half = scene.hood.centre_in, scene.hood.width_in / 2
    xs = [x - half - 6.0, x + half + 6.0, *(m.left_in + s for m in marks for s in (-6.0, 6.0))]
    xs += [at + s for at, _ in free for s in (-3.0, 3.0)]
    wide = scene.kitchen.width_in
    left, right = max(min(xs), -1.0), min(max(xs), wide + 1.0)
    high = _ceiling_in(scene, left, right)
    if high - bottom + 5.0 <= _TALLEST_IN:
        return [(left, bottom - 5.0, right, high + 1.5)]
    tops = [bottom + scene.hood.body_in, *(m.height_in for m in marks if m.row != "bracket")]
    hood_top = max([*tops, *([hole.centre[2] + hole.size_in[1] / 2] if hole is not None else [])]) + 7.0
    brackets = [m for m in marks if m.row == "bracket"]
    reach = (
        max([scene.hood.cover.width_in / 2 if scene.hood.cover else 6.0, *(abs(m.left_in - x) for m in brackets)]) + 8.0
    )
    a, b = max(x - reach, 0.0, left), min(x + reach, wide, right)
    foot = min([ceiling_at_in(scene, a), ceiling_at_in(scene, b), *(m.height_in for m in brackets)]) - 7.0
    return [(left, bottom - 5.0, right, hood_top), (a, max(foot, hood_top), b, _ceiling_in(scene, a, b) + 1.5)]


def _ceiling_in(scene: Scene, left: float, right: float) -> float:
    return max(v for _, v in ceiling_line(scene, max(left, 0.0), min(right, scene.kitchen.width_in)))


def _wall(sketch: Sketch, view: View, plan: Plan, *, cut_above: bool) -> None:
    left, low, right, high = view.region
    a, b = max(left, 0.0), min(right, plan.scene.kitchen.width_in)
    line = ceiling_line(plan.scene, a, b)
    for piece in clipped(((a, low), (b, low), *reversed(line)), view.region):
        sketch.path([view.at(*p) for p in piece], 0.0, fill=ink.WALL, closed=True)
    clip = View(view.axis, view.frame, (left, low, right, min(high, max(v for _, v in line))))
    for solid in plan.frame.solids:
        if not behind_board(solid, plan.scene) or solid.kind not in _FRAMING:
            continue
        draw_seen(sketch, clip, solid, fill=_STUD, colour=ink.TIMBER_EDGE, dash=ink.HIDDEN_DASH, weight=ink.HAIR)
    for (u0, v0), (u1, v1) in pairwise(line):
        if clip_line := clipped_line((u0, v0), (u1, v1), view.region):
            sketch.line(view.at(*clip_line[0]), view.at(*clip_line[1]), ink.HEAVY)
    break_line(sketch, view, low)
    if cut_above:
        break_line(sketch, view, high)


def _stud_numbers(sketch: Sketch, view: View, frame: Frame) -> None:
    """Number the studs and strips in one row under their feet."""
    left, low, right, _ = view.region
    for solid in frame.solids:
        if (
            solid.side is not WallSide.HOOD
            or solid.space != "kitchen"
            or solid.kind not in (SolidKind.STUD, SolidKind.FURRING)
        ):
            continue
        middle = sum(ends_of(solid.shape, 0)) / 2
        if solid.member is None or not solid.member.number or ends_of(solid.shape, 2)[0] > low + 6.0:
            continue
        if left <= middle <= right:
            x, y = view.at(middle, low)
            places = [((x, y - 3.9), Anchor.MIDDLE), ((x, y - 6.4), Anchor.MIDDLE)]
            sketch.label(places, str(solid.member.number), ink.SMALL, Face.NARROW_BOLD, halo=_STUD)


def _neck_in(scene: Scene) -> float:
    """Give half the hood's width at its top [in]."""
    neck = scene.hood.cover.width_in / 2 if scene.hood.cover else scene.hood.outlet.section.width_in / 2 + 2.0
    return min(scene.hood.width_in / 2, neck)


def _lines(sketch: Sketch, view: View, plan: Plan) -> None:
    """Draw the hood's centre line, the mounting line and the outline of hood and cover."""
    scene = plan.scene
    x, half = scene.hood.centre_in, scene.hood.width_in / 2
    left, low, right, high = view.region
    _upright(sketch, view, x, low, ceiling_at_in(scene, x), ink.UP, ink.CENTRE_DASH)
    bottom = scene.hood_bottom_in
    if bottom is None:
        return
    top, neck = bottom + scene.hood.body_in, _neck_in(scene)
    if scene.hood.cover is not None:
        for side in (-neck, neck):
            _upright(sketch, view, x + side, max(low, top), ceiling_at_in(scene, x + side), ink.INK2, (1.6, 0.8))
    if not low <= bottom <= high:
        return
    sketch.line(view.at(left, bottom), view.at(right, bottom), ink.MEDIUM, colour=ink.UP, dash=ink.CENTRE_DASH)
    outline = [(x - half, bottom), (x + half, bottom), (x + half, bottom + scene.hood.canopy_in)]
    outline += [(x + neck, top), (x - neck, top), (x - half, bottom + scene.hood.canopy_in)]
    sketch.path([view.at(*p) for p in outline], ink.FINE, colour=ink.INK2, closed=True, dash=(1.6, 0.8))


def _upright(
    sketch: Sketch, view: View, u: float, low: float, high: float, colour: str, dash: tuple[float, ...]
) -> None:
    """Draw what of an upright line lies in the view."""
    a, b = max(low, view.region[1]), min(high, view.region[3])
    if a < b and view.region[0] <= u <= view.region[2]:
        sketch.line(view.at(u, a), view.at(u, b), ink.FINE, colour=colour, dash=dash)


def _name_lines(sketch: Sketch, view: View, scene: Scene) -> None:
    """Write on the mounting line and at the foot of the centre line what they are."""
    bottom, (left, low, right, high) = scene.hood_bottom_in, view.region
    if bottom is None or not low <= bottom <= high:
        return
    px, py = view.at(left, bottom)
    far = view.at(right, bottom)[0] - 1.0
    places = [
        ((at, py + k), anchor) for k in (-3.4, 1.4) for at, anchor in ((px + 1.0, Anchor.LEFT), (far, Anchor.RIGHT))
    ]
    sketch.label(places, f"mounting line, {length(bottom, scene)} above the floor", ink.SMALL,
                 colour=ink.UP, halo=ink.WALL)  # fmt: skip
    cx, cy = view.at(scene.hood.centre_in, low)
    sketch.label([((cx + a, cy + b), Anchor.LEFT if a > 0 else Anchor.RIGHT) for b in (2.0, 5.6, 9.0) for a in (1.2, -1.2)],
                 f"centre, {length(scene.hood.centre_in, scene)} from the left wall", ink.SMALL, colour=ink.UP, halo=ink.WALL)  # fmt: skip


def _free_lines(sketch: Sketch, view: View, scene: Scene, free: Sequence[tuple[float, str]]) -> None:
    """Draw under the mounting line, and over the ceiling, where the centre line would stand if the hood is moved.

    Only there: within the wall they would run through the marks, or read as places for them.
    """
    bottom = scene.hood_bottom_in
    for at, _ in free:
        if bottom is not None:
            _upright(sketch, view, at, bottom - 2.5, bottom, ink.INK2, ())
            (x, foot), (_, y) = view.at(at, bottom - 2.5), view.at(at, bottom)
            sketch.reserve((x - 0.1, foot, x + 0.1, y))
        x, y = view.at(at, ceiling_at_in(scene, at))
        sketch.reserve((x - 0.1, y, x + 0.1, y + _POLES[-1]))


def _name_free(sketch: Sketch, view: View, scene: Scene, free: Sequence[tuple[float, str]]) -> None:
    """Name each such place over the ceiling, as a flag on its pole."""
    for at, _ in free:
        top = ceiling_at_in(scene, at)
        if not view.region[1] <= top <= view.region[3]:
            continue
        x, y = view.at(at, top)
        sides = [(0.7, Anchor.LEFT), (-0.7, Anchor.RIGHT)]
        if at < scene.hood.centre_in:
            sides.reverse()
        places = [((x + a, y + b), anchor) for b in _POLES for a, anchor in sides]
        made = sketch.label(
            places, f"or centre {figure(at, scene)}", ink.LEAST, Face.NARROW_BOLD, colour=ink.INK2, halo=ink.WHITE
        )
        foot = made.at[1] if made is not None else y
        sketch.line((x, y), (x, foot + ink.LEAST), ink.FINE, colour=ink.INK2)
