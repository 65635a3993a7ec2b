"""Sections along the duct: upright cuts through the house in the planes the duct runs in."""

from __future__ import annotations

from dataclasses import dataclass
from itertools import pairwise

from routeviz.drawings import palette as ink
from routeviz.drawings.caps import cap_foot_in, cap_size_in, draw_cap
from routeviz.drawings.elevation import break_line, number_members
from routeviz.drawings.flags import draw_flags
from routeviz.drawings.flat import clipped, ends_of, flat
from routeviz.drawings.hood import draw_collar, draw_hood_front, draw_hood_side
from routeviz.drawings.house import OWN, View, draw_cut, draw_duct, duct_boxes, fits_scale
from routeviz.drawings.passed import draw_opening, name_layers
from routeviz.drawings.primitives import Anchor, Face
from routeviz.drawings.sheet import Paper, Sheet, heading, new_sheet, scale_name
from routeviz.drawings.sketch import Frame2, Sketch
from routeviz.drawings.words import figure, length, to_ceiling, unit_note
from routeviz.model.overhead import ceiling_over_hood_in
from routeviz.model.plan import Option, Plan
from routeviz.model.route import Part, PartKind, Route
from routeviz.model.scene import Scene
from routeviz.model.solids import SolidKind
from routeviz.model.spoken import spoken
from routeviz.model.takeoff import Sheet as Name

__all__ = ["Cut", "section_planes", "section_sheet"]

_FURNITURE = (SolidKind.COOKTOP, SolidKind.COUNTER)
_SHORT_IN = 24.0
_NAMED = (SolidKind.OBSTACLE, SolidKind.SERVICE, SolidKind.CABINET, SolidKind.SOFFIT)


@dataclass(frozen=True, slots=True)
class Cut:
    """An upright plane: square to `axis` (0: seen along the wall, 1: seen from the room) at a coordinate [in]."""

    axis: int
    at: float

    @property
    def words(self) -> str:
        """Say how one looks at it."""
        return "seen from the right" if self.axis == 0 else "seen from the room"


def section_planes(route: Route) -> tuple[Cut, ...]:
    """Choose the planes: one for each level direction the duct runs in, and the riser's own when it only goes up."""
    found: list[Cut] = []
    for part in route.parts:
        if part.kind is not PartKind.STRAIGHT or part.length_in <= 0:
            continue
        for run, across in ((1, 0), (0, 1)):
            if abs(part.direction[run]) > 0.3 and abs(part.direction[across]) < 0.3:
                plane = Cut(across, part.start[across])
                if all(abs(c.at - plane.at) > 0.5 or c.axis != plane.axis for c in found):
                    found.append(plane)
    return tuple(found) or (Cut(0, route.parts[0].start[0]),)


def section_sheet(plan: Plan, option: Option, plane: Cut, paper: Paper, number: str) -> Sheet:
    """Draw one section as large as the scale allows; the kitchen's lower part is broken off."""
    title = "Section along the duct" if plane.axis == 0 else "Section along the wall"
    sheet = new_sheet(paper, Name.SECTION, title)
    left, bottom, right, top = sheet.room
    u0, u1, v0, v1 = _region(plan, option, plane)
    room = (right - left - 46.0, top - 9.5 - bottom - 4.0)
    scale = fits_scale(u1 - u0, v1 - v0, room, (*paper.large, *paper.scales))
    mm = 25.4 / scale
    sheet.scale = scale_name(scale)
    heading(sheet, number, title, f"{plane.words}, {sheet.scale}. {unit_note(plan.scene)}")
    x0 = left + 24.0 + max(0.0, (room[0] - (u1 - u0) * mm) / 2 - 10.0)
    y0 = bottom + 3.0 + max(0.0, (room[1] - (v1 - v0) * mm) / 2)
    view = View(plane.axis, Frame2((x0 - u0 * mm, y0 - v0 * mm), mm), (u0, v0, u1, v1))
    _draw(sheet.sketch, view, plan, option, plane)
    return sheet


def _region(plan: Plan, option: Option, plane: Cut) -> tuple[float, float, float, float]:
    """Give left, right, low and high of the section [in]."""
    scene, route = plan.scene, option.route
    if plane.axis == 0:
        us = [-scene.cooktop.depth_in - scene.cooktop.back_in - 8.0, 16.0]
    else:
        us = [
            scene.hood.centre_in - scene.hood.width_in / 2 - 10.0,
            scene.hood.centre_in + scene.hood.width_in / 2 + 10.0,
        ]
    vs = [scene.cooktop.height_in - 8.0, ceiling_over_hood_in(scene) + 14.0]
    for part in route.parts:
        half = max(part.section.width_in, part.section.height_in) / 2
        for end in (part.start, part.end):
            u, v = flat(end, plane.axis)
            us += [u - half - 7.0, u + half + 7.0]
            vs += [v - half - 5.0, v + half + 5.0]
    tip_u, _ = flat(route.termination.point, plane.axis)
    cap = cap_size_in(route, scene)
    us += [tip_u - cap, tip_u + cap]
    if route.termination.direction[2] > 0.5:
        vs.append(cap_foot_in(route, plan.frame) + scene.cap.roof_stub_in + 9.0)
    return min(us), max(us), min(vs), max(vs)


def _draw(sketch: Sketch, view: View, plan: Plan, option: Option, plane: Cut) -> None:
    scene, frame, route = plan.scene, plan.frame, option.route
    for solid in frame.solids:
        if solid.kind not in OWN and solid.kind not in _FURNITURE:
            draw_cut(sketch, view, solid, plane.at)
    _cooktop(sketch, view, scene, plane)
    inside = view.region[1] < (scene.hood_bottom_in or -1.0)
    if inside:
        (draw_hood_side if plane.axis == 0 else draw_hood_front)(sketch, view, scene)
    for hole in option.takeoff.holes:
        draw_opening(sketch, view, plan, option, hole, plane.at)
    if inside:
        draw_collar(sketch, view, scene, route)
    draw_duct(sketch, view, route)
    draw_cap(sketch, view, route, scene, frame)
    break_line(sketch, view, view.region[1])
    number_members(sketch, view, frame, SolidKind.JOIST, plane.at, plane.axis)
    number_members(sketch, view, frame, SolidKind.RAFTER, plane.at, plane.axis)
    _centre_line(sketch, view, route)
    _upright_dimensions(sketch, view, plan, option)
    _level_dimensions(sketch, view, plan, option, plane)
    _part_labels(sketch, view, option, scene, plane)
    _names(sketch, view, plan, option, plane)
    draw_flags(sketch, view, plan, plane.at)


def _cooktop(sketch: Sketch, view: View, scene: Scene, plane: Cut) -> None:
    cook = scene.cooktop
    if plane.axis == 0:
        a, b = -cook.back_in - cook.depth_in, -cook.back_in
        slab = (-cook.back_in - cook.depth_in - 2.0, 0.0)
    else:
        a, b = cook.centre_in - cook.width_in / 2, cook.centre_in + cook.width_in / 2
        slab = (max(view.region[0], 0.0), min(view.region[2], scene.kitchen.width_in))
    for (u0, u1), below, above, fill in ((slab, 1.5, 0.0, ink.STONE), ((a, b), 0.2, 0.5, ink.DARK)):
        low, high = cook.height_in - below, cook.height_in + above
        for piece in clipped(((u0, low), (u1, low), (u1, high), (u0, high)), view.region):
            sketch.path([view.at(*p) for p in piece], ink.FINE, fill=fill, closed=True)


def _centre_line(sketch: Sketch, view: View, route: Route) -> None:
    points = [flat(route.parts[0].start, view.axis)]
    for part in route.parts:
        if part.corner is not None:
            points.append(flat(part.corner, view.axis))
        points.append(flat(part.end, view.axis))
    for a, b in pairwise(points):
        if abs(a[0] - b[0]) + abs(a[1] - b[1]) > 1e-6:
            sketch.line(view.at(*a), view.at(*b), ink.HAIR, colour=ink.UP, dash=ink.CENTRE_DASH)


def _in_plane(part: Part, plane: Cut) -> bool:
    return abs(part.start[plane.axis] - plane.at) < 1.0 and abs(part.end[plane.axis] - plane.at) < 1.0


def _part_labels(sketch: Sketch, view: View, option: Option, scene: Scene, plane: Cut) -> None:
    """Name each straight by its piece numbers and length, each elbow by its angle."""
    duct = duct_boxes(view, option.route)
    for part in option.route.parts:
        if part.length_in <= 0 or not _in_plane(part, plane):
            continue
        if part.kind is PartKind.STRAIGHT:
            names = [c.id for c in option.takeoff.cuts if c.part == part.id]
            words = f"{'+'.join(names)}  {length(part.length_in, scene)}"
        elif part.kind is PartKind.ELBOW:
            words = f"elbow {part.angle_deg:.0f}°, R {figure(part.radius_in, scene)}"
        else:
            words = part.kind.value
        middle = [(a + b) / 2 for a, b in zip(part.start, part.end, strict=True)]
        u, v = view.at(*flat(middle, plane.axis))
        reach = max(part.section.width_in, part.section.height_in) / 2 * view.scale
        level = abs(part.direction[2]) < 0.5 and part.kind is PartKind.STRAIGHT
        if level and part.length_in < _SHORT_IN:  # beside the wall, not across it
            edge = view.at(view.region[2], 0.0)[0] + 3.0
            under = (u, v - reach + 0.4)
            if edge - u < 60.0 and sketch.note(
                under,
                words,
                [(edge, v - reach - k) for k in (7.0, 11.0, 15.0)],
                ink.SMALL,
                colour=ink.UP,
                halo=ink.WHITE,
            ):
                continue
        aside = [
            (u + s * (reach + a), v + b) for a in (7.0, 12.0, 18.0) for b in (0.0, 4.0, -4.0, 8.0) for s in (-1, 1)
        ]
        over = [(u + a, v + s * (reach + b)) for b in (5.0, 9.0, 13.0) for s in (1, -1) for a in (3.0, -24.0, 12.0)]
        places = over if level else aside
        sketch.note((u, v), words, places, ink.SMALL, colour=ink.UP, halo=ink.WHITE, avoid=duct)


def _upright_dimensions(sketch: Sketch, view: View, plan: Plan, option: Option) -> None:
    """Dimension heights from the cooktop upwards: underside, ceiling, where the duct turns or leaves."""
    scene = plan.scene
    x = view.at(view.region[0], 0.0)[0] - 4.0
    cook, ceiling = scene.cooktop.height_in, ceiling_over_hood_in(scene)
    bottom = scene.hood_bottom_in
    stops = [cook]
    if bottom is not None:
        stops += [bottom, bottom + scene.hood.body_in]
    stops.append(ceiling)
    turns = [p.corner[2] for p in option.route.parts if p.corner is not None]
    end = option.route.termination.point[2]
    stops += [*turns, end]
    kept: list[float] = []
    for stop in sorted(s for s in stops if view.region[1] <= s <= view.region[3]):
        if not kept or stop - kept[-1] > 0.05:
            kept.append(stop)
    edge = view.at(view.region[0], 0.0)[0]
    for a, b in pairwise(kept):
        sketch.dim_up(view.at(0, a)[1], view.at(0, b)[1], x, figure(b - a, scene), from_x=edge - 1.0)
    outer = x - 9.0  # beyond the figures of short dimensions
    sketch.dim_up(view.at(0, cook)[1], view.at(0, ceiling)[1], outer, f"{figure(ceiling - cook, scene)} {to_ceiling(scene)}",
                  from_x=x - 1.0)  # fmt: skip


def _level_dimensions(sketch: Sketch, view: View, plan: Plan, option: Option, plane: Cut) -> None:
    """Dimension across: riser from the finished hood wall, or from the left wall; lengths of level runs."""
    scene, route = plan.scene, option.route
    first = route.parts[0]
    y = view.at(0.0, view.region[3])[1] + 2.5
    u = flat(first.start, plane.axis)[0]
    if plane.axis == 0 and u < -0.5:
        bottom = scene.hood_bottom_in
        level = view.at(0.0, (bottom if bottom is not None else scene.kitchen.ceiling_in) - 5.0)[1]
        sketch.dim_across(view.at(u, 0)[0], view.at(0.0, 0)[0], level, figure(-u, scene),
                          from_y=(view.at(0, first.start[2])[1], level), below=True, halo=ink.WHITE)  # fmt: skip
    ends = [u] + [flat(p.corner, plane.axis)[0] for p in route.parts if p.corner is not None and _near_plane(p, plane)]
    ends.append(flat(route.termination.point, plane.axis)[0])
    for a, b in pairwise(ends):
        if abs(a - b) > 1.0:
            sketch.dim_across(view.at(a, 0)[0], view.at(b, 0)[0], y, figure(abs(a - b), scene), from_y=y)


def _near_plane(part: Part, plane: Cut) -> bool:
    return part.corner is not None and abs(part.corner[plane.axis] - plane.at) < 1.0


def _names(sketch: Sketch, view: View, plan: Plan, option: Option, plane: Cut) -> None:
    """Name the layers the duct passes, what else stands in the cut, the room and the spaces beyond it."""
    name_layers(sketch, view, plan, option, plane.at)
    _things(sketch, view, plan, plane)
    label_wall(sketch, view, plan, plane)


def _things(sketch: Sketch, view: View, plan: Plan, plane: Cut) -> None:
    """Name what stands in the cut besides the house: old holes, pipes, shelves, cabinets."""
    left, low, right, high = view.region
    for solid in plan.frame.solids:
        if (
            solid.kind not in _NAMED
            or not ends_of(solid.shape, plane.axis)[0] < plane.at < ends_of(solid.shape, plane.axis)[1]
        ):
            continue
        (u0, u1), (v0, v1) = (ends_of(solid.shape, k) for k in range(3) if k != plane.axis)
        u, v = (
            0.85 * max(u0, left) + 0.15 * min(u1, right),
            (max(v0, low) + min(v1, high)) / 2,
        )  # a flag points at the middle
        if not (left < u < right and low < v < high):
            continue
        x, y = view.at(u, v)
        places = [(x + a, y + b) for a in (12.0, -12.0, 20.0, -20.0) for b in (-9.0, -14.0, 7.0, 12.0)]
        sketch.note((x, y), solid.label.removeprefix("other "), places, ink.LEAST, halo=ink.WHITE)


def _spaces(sketch: Sketch, view: View, plan: Plan, plane: Cut) -> None:
    """Draw floor and ceiling of each space beyond the kitchen that the cut meets, and name it."""
    names = {s.id: spoken(s.id) for s in plan.scene.spaces}
    for zone in plan.frame.zones:
        if zone.id not in names:
            continue
        low, high = ends_of(zone.shape, plane.axis)
        (u0, u1), (v0, v1) = (ends_of(zone.shape, k) for k in range(3) if k != plane.axis)
        u0, u1 = max(u0, view.region[0]), min(u1, view.region[2])
        if not low < plane.at < high or u1 - u0 < 1.0:
            continue
        for level, words in ((v0, "floor"), (v1, "ceiling")):
            if view.region[1] <= level <= view.region[3]:
                sketch.line(view.at(u0, level), view.at(u1, level), ink.MEDIUM)
                x, y = view.at(u1, level)
                sketch.label(
                    [((x - 3.0, y + 1.4), Anchor.RIGHT)], f"{names[zone.id]} {words}", ink.LEAST, colour=ink.INK2
                )
        x, y = view.at((u0 + u1) / 2, max(v0, view.region[1]) + 10.0)
        sketch.label([((x, y), Anchor.MIDDLE)], names[zone.id], ink.SMALL, colour=ink.INK2)


def label_wall(sketch: Sketch, view: View, plan: Plan, plane: Cut) -> None:
    """Say where the room is, and draw and name what lies beyond its walls."""
    _spaces(sketch, view, plan, plane)
    level = plan.scene.cooktop.height_in + 4.0
    if plane.axis == 0:
        u, v = view.at(view.region[0] + 2.0, level)
        sketch.label(
            [((u, v), Anchor.LEFT), ((u, v + 4.0), Anchor.LEFT)], "kitchen", ink.SMALL, Face.SANS, colour=ink.INK2
        )
