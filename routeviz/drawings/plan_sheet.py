"""The joist plan on a sheet of its own, for a duct that runs on over the ceiling."""

from __future__ import annotations

from routeviz.drawings.caps import draw_cap
from routeviz.drawings.ceiling_plan import draw_joist_plan
from routeviz.drawings.front_sheet import PLAN_DEPTH_IN
from routeviz.drawings.house import View, duct_reach, fits_scale
from routeviz.drawings.sheet import Paper, Sheet, heading, new_sheet, scale_name
from routeviz.drawings.sketch import Frame2
from routeviz.drawings.words import unit_note
from routeviz.model.plan import Option, Plan
from routeviz.model.scene import WallSide
from routeviz.model.takeoff import Sheet as Name

__all__ = ["plan_sheet", "wants_plan_sheet"]


def wants_plan_sheet(plan: Plan, option: Option) -> bool:
    """Whether the duct runs further than the first sheet's plan shows."""
    low, high = duct_reach(option.route, 0)
    aside = low < -8.0 or high > plan.scene.kitchen.width_in + 8.0
    out = -duct_reach(option.route, 1)[0]
    return out + 4.0 > PLAN_DEPTH_IN or aside


def plan_sheet(plan: Plan, option: Option, paper: Paper, number: str) -> Sheet:
    """Draw the ceiling's framing with the whole duct."""
    scene = plan.scene
    sheet = new_sheet(paper, Name.JOIST_PLAN, "Joist plan")
    left, bottom, right, top = sheet.room
    x0, x1 = duct_reach(option.route, 0)
    y0, y1 = duct_reach(option.route, 1)
    wall = scene.wall(WallSide.HOOD).thickness_in
    u0, u1 = min(x0 - 12.0, scene.hood.centre_in - 40.0), max(x1 + 12.0, scene.hood.centre_in + 40.0)
    v0, v1 = min(y0 - 12.0, -scene.hood.depth_in - 8.0), max(y1 + 8.0, wall + 2.0)
    room = (right - left - 24.0, top - 11.0 - bottom - 4.0)
    scale = fits_scale(u1 - u0, v1 - v0, room, (*paper.large[1:], *paper.scales))
    mm = 25.4 / scale
    sheet.scale = scale_name(scale)
    heading(sheet, number, "Joist plan", f"from above, the hood wall at the top, {sheet.scale}. {unit_note(scene)}")
    ox = left + 12.0 + max(0.0, (room[0] - (u1 - u0) * mm) / 2) - u0 * mm
    oy = bottom + 2.0 + max(0.0, (room[1] - (v1 - v0) * mm) / 2) - v0 * mm
    view = View(2, Frame2((ox, oy), mm), (u0, v0, u1, v1))
    draw_joist_plan(sheet.sketch, view, plan, option, whole=True)
    draw_cap(sheet.sketch, view, option.route, scene, plan.frame)
    return sheet
