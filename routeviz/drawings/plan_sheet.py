"""The joist plan on a sheet of its own, for a duct that runs on over the ceiling."""

from __future__ import annotations

import math

from routeviz.drawings import palette as ink
from routeviz.drawings.caps import draw_cap
from routeviz.drawings.ceiling_plan import ceiling_hole, draw_joist_plan
from routeviz.drawings.flat import ends_of
from routeviz.drawings.front_sheet import PLAN_DEPTH_IN
from routeviz.drawings.house import View, duct_boxes, duct_reach, fits_scale
from routeviz.drawings.sheet import Paper, Sheet, heading, new_sheet, scale_name
from routeviz.drawings.sketch import Frame2, Sketch
from routeviz.drawings.words import figure, hole_size, plan_name, unit_note
from routeviz.model.opened import opened_along
from routeviz.model.plan import Option, Plan
from routeviz.model.route import Part, PartKind
from routeviz.model.scene import Scene, WallSide
from routeviz.model.solids import Frame, SolidKind
from routeviz.model.takeoff import Sheet as Name

__all__ = ["plan_sheet", "wants_plan_sheet"]


_WALL_SHOWN_IN = 110.0  # a hood nearer to the left wall is shown with it, so that a tape from there is drawn whole


def wants_plan_sheet(plan: Plan, option: Option) -> bool:
    """Whether the duct runs further than the first sheet's plan shows."""
    low, high = duct_reach(option.route, 0)
    aside = low < -8.0 or high > plan.scene.kitchen.width_in + 8.0
    out = -duct_reach(option.route, 1)[0]
    return out + 4.0 > PLAN_DEPTH_IN or aside


def plan_sheet(plan: Plan, option: Option, paper: Paper, number: str) -> Sheet:
    """Draw the ceiling's framing with the whole duct."""
    scene = plan.scene
    sheet = new_sheet(paper, Name.JOIST_PLAN, plan_name(plan))
    left, bottom, right, top = sheet.room
    x0, x1 = duct_reach(option.route, 0)
    y0, y1 = duct_reach(option.route, 1)
    wall = scene.wall(WallSide.HOOD).thickness_in
    u0, u1 = (
        min(x0 - 12.0, scene.hood.centre_in - 40.0, -4.0 if scene.hood.centre_in < _WALL_SHOWN_IN else x0),
        max(x1 + 12.0, scene.hood.centre_in + 40.0),
    )
    v0, v1 = min(y0 - 12.0, -scene.hood.depth_in - 8.0), max(y1 + 8.0, wall + 2.0)
    room = (right - left - 24.0, top - 11.0 - bottom - 12.0)  # a dimension stands below
    scale = fits_scale(u1 - u0, v1 - v0, room, (*paper.large[1:], *paper.scales))
    mm = 25.4 / scale
    sheet.scale = scale_name(scale)
    heading(sheet, number, plan_name(plan), f"from above, the hood wall at the top, {sheet.scale}. {unit_note(scene)}")
    ox = left + 12.0 + max(0.0, (room[0] - (u1 - u0) * mm) / 2) - u0 * mm
    oy = bottom + 10.0 + max(0.0, (room[1] - (v1 - v0) * mm) / 2) - v0 * mm
    view = View(2, Frame2((ox, oy), mm), (u0, v0, u1, v1))
    draw_joist_plan(sheet.sketch, view, plan, option, whole=True)
    draw_cap(sheet.sketch, view, option.route, scene, plan.frame)
    _from_left_wall(sheet.sketch, view, option, scene)
    _ceiling_hole(sheet.sketch, view, option, scene)
    _strips(sheet.sketch, view, plan, option)
    return sheet


def _from_left_wall(sketch: Sketch, view: View, option: Option, scene: Scene) -> None:
    """Dimension the collar from the left wall; where the wall lies outside the view, from the view's edge with a word."""
    x = option.route.parts[0].start[0]
    left, low, _, _ = view.region
    shown = left <= 0.0
    y = view.at(0.0, low)[1] - 4.0
    words = f"{figure(x, scene)} from the left wall{'' if shown else ', which lies further left'}"
    starts = (view.at(0.0, 0.0)[1] if shown else y, view.at(0.0, option.route.parts[0].start[1])[1])
    sketch.dim_across(view.at(max(left, 0.0), 0.0)[0], view.at(x, 0.0)[0], y, words, from_y=starts, below=True)


def _ceiling_hole(sketch: Sketch, view: View, option: Option, scene: Scene) -> None:
    """Draw the hole in the ceiling dashed and say its size."""
    at = ceiling_hole(option.route, scene)
    if at is None:
        return
    hole = min(
        option.takeoff.holes, key=lambda h: math.dist(h.centre[:2], at) + abs(h.centre[2] - scene.kitchen.ceiling_in)
    )
    x, y = view.at(*at)
    w, h = (side / 2 * view.scale for side in hole.size_in)
    if hole.shape == "round":
        sketch.disc((x, y), w, ink.FINE, dash=ink.HIDDEN_DASH, name="ceiling-hole")
    else:
        sketch.rect((x - w, y - h), (x + w, y + h), ink.FINE, dash=ink.HIDDEN_DASH, name="ceiling-hole")
    tip = (x - 0.7 * w, y - 0.7 * h)
    places = [(tip[0] - a, tip[1] - b) for b in (9.0, 13.0, 18.0) for a in (6.0, 12.0, 20.0)]
    sketch.note(
        tip,
        f"ceiling hole {hole_size(hole, scene)}",
        places,
        ink.LEAST,
        halo=ink.WHITE,
        avoid=duct_boxes(view, option.route),
    )


def _strips(sketch: Sketch, view: View, plan: Plan, option: Option) -> None:
    """Draw where the ceiling is opened to lay the duct in: over the run and its elbows, from member to member."""
    scene = plan.scene
    for line in option.takeoff.buy:
        if line.unit != "strip" or not line.note.startswith("ceiling"):
            continue
        parts = [p for p in option.route.parts if p.id in line.parts]
        run, low, high = opened_along(parts, scene)
        straight = next(p for p in parts if p.kind is PartKind.STRAIGHT)
        faces = _faces_beside(plan.frame, straight, run)
        if faces is None:
            continue
        (a, b), (c, d) = (low, high) if run == 0 else (-high, -low), faces  # a tape counts out from the hood wall
        corners = ((a, c), (b, c), (b, d), (a, d)) if run == 0 else ((c, a), (d, a), (d, b), (c, b))
        sketch.path([view.at(*p) for p in corners], ink.FINE, closed=True, dash=(2.4, 1.0), name="strip")
        x, y = view.at((3 * a + b) / 4, c) if run == 0 else view.at(c, (3 * a + b) / 4)
        size = f"{figure(high - low, scene)} x {figure(d - c, scene)}"
        words = f"open the ceiling from below: {size} clear between the joists (patch to mid-joist)"
        places = [(x + s * k, y - down) for down in (9.0, 13.0, 18.0) for k in (4.0, 10.0) for s in (-1, 1)]
        sketch.note((x, y), words, places, ink.LEAST, halo=ink.WHITE, avoid=duct_boxes(view, option.route))


def _faces_beside(frame: Frame, part: Part, run: int) -> tuple[float, float] | None:
    """Give the near faces of the ceiling's members on both sides of a run, across it [in]; None where one is missing."""
    at, reach = part.start[1 - run], (part.start[run] + part.end[run]) / 2
    beside = [
        ends_of(s.shape, 1 - run)
        for s in frame.solids
        if s.kind is SolidKind.JOIST and s.member is not None and s.member.axis == run
        and ends_of(s.shape, run)[0] < reach < ends_of(s.shape, run)[1]
    ]  # fmt: skip
    low, high = [b for _, b in beside if b <= at], [a for a, _ in beside if a >= at]
    return (max(low), min(high)) if low and high else None
