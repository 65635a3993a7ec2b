"""The hood wall seen from the room; ceiling and roof cut where the duct goes up."""

from __future__ import annotations

from routeviz.drawings import palette as ink
from routeviz.drawings.caps import cap_foot_in, draw_cap
from routeviz.drawings.flags import barred, draw_flags, in_the_way
from routeviz.drawings.flat import clipped, cut, ends_of, flat
from routeviz.drawings.hood import draw_collar, draw_hood_front, draw_marks
from routeviz.drawings.house import OWN, View, behind_board, ceiling_line, draw_cut, draw_duct, draw_seen
from routeviz.drawings.oldholes import draw_old_holes
from routeviz.drawings.primitives import Anchor, Face
from routeviz.drawings.sketch import Sketch
from routeviz.drawings.things import draw_things, name_things
from routeviz.drawings.words import figure, length, to_ceiling
from routeviz.model.overhead import ceiling_at_in, ceiling_over_hood_in
from routeviz.model.plan import Option, Plan
from routeviz.model.roofline import follows_rafters
from routeviz.model.route import Near, Route
from routeviz.model.scene import Scene, WallSide
from routeviz.model.solids import STUD_KINDS, Frame, SolidKind

__all__ = ["break_line", "draw_elevation", "highest_in", "least_high_in", "number_members"]

_HIDDEN = (*STUD_KINDS, SolidKind.BLOCKING, SolidKind.SERVICE, SolidKind.FURRING)
_IN_FRONT = (SolidKind.CABINET, SolidKind.SOFFIT, SolidKind.OBSTACLE, SolidKind.GLAZING, SolidKind.DOOR)


def highest_in(plan: Plan, option: Option | None) -> float:
    """Give the height above the floor that the elevation should reach [in]: the cap, or a joist's depth over the ceiling."""
    ceiling = ceiling_over_hood_in(plan.scene)
    over = [ends_of(s.shape, 2)[1] for s in plan.frame.solids if s.kind in (SolidKind.JOIST, SolidKind.SLAB)]
    top = max([ceiling + 4.0, *over]) + 6.0
    if option is not None:
        top = max(top, _duct_top_in(plan, option.route) + 7.0)
    return top


def least_high_in(plan: Plan, option: Option | None) -> float:
    """Give the height that must not be cut off: the top of the cap or of the duct, at least the ceiling [in]."""
    ceiling = ceiling_over_hood_in(plan.scene)
    return ceiling if option is None else max(ceiling, _duct_top_in(plan, option.route))


def _duct_top_in(plan: Plan, route: Route) -> float:
    up = route.termination.direction[2] > 0.5
    half = max(route.parts[-1].section.width_in, route.parts[-1].section.height_in) / 2
    reach = max(max(p.start[2], p.end[2]) for p in route.parts)
    return max(reach, cap_foot_in(route, plan.frame) + plan.scene.cap.roof_stub_in + 4.5) if up else reach + half


def draw_elevation(sketch: Sketch, view: View, plan: Plan, option: Option | None) -> None:
    """Draw wall, hidden studs, what stands before them, hood, duct, cap, marks and the dimensions."""
    scene, frame = plan.scene, plan.frame
    left, low, right, high = view.region
    top = high if follows_rafters(scene) else min(scene.kitchen.ceiling_in, high)
    a, b = max(left, 0.0), min(right, scene.kitchen.width_in)
    for piece in clipped(((a, low), (b, low), *reversed(ceiling_line(scene, a, b))), view.region):
        sketch.path([view.at(*p) for p in piece], 0.0, fill=ink.WALL, closed=True)
    for solid in frame.solids:
        if behind_board(solid, scene) and solid.kind in _HIDDEN:
            clip = View(view.axis, view.frame, (a, low, b, top))
            draw_seen(sketch, clip, solid, fill=None, colour=ink.TIMBER_EDGE, dash=ink.HIDDEN_DASH, weight=ink.HAIR)
            if solid.id in in_the_way(plan):
                (x0, x1), (z0, z1) = ends_of(solid.shape, 0), ends_of(solid.shape, 2)
                for piece in clipped(((x0, z0), (x1, z0), (x1, z1), (x0, z1)), clip.region):
                    barred(sketch, [view.at(*p) for p in piece])
    plane = option.route.parts[0].start[1] if option else -scene.hood.outlet.out_in
    plane = min(plane, -0.25)
    _cut_house(sketch, view, frame, plane, in_the_way(plan))
    draw_things(sketch, view, scene, frame)
    draw_hood_front(sketch, view, scene)
    if option is not None:
        _duct(sketch, view, option.route, scene, frame, plane)
    break_line(sketch, view, low)
    for x in (a, b):
        sketch.line(view.at(x, low), view.at(x, min(ceiling_at_in(scene, x), high)), ink.HEAVY)
    wall = scene.wall(WallSide.HOOD).thickness_in
    draw_old_holes(sketch, view, scene, option.route if option else None, (0.0, wall))
    if option is not None:
        draw_marks(sketch, view, option.takeoff.marks)
    _dimensions(sketch, view, plan, option)
    name_things(sketch, view, scene, frame)  # their names have all of the thing to find room in
    number_members(sketch, view, frame, SolidKind.JOIST, plane)
    draw_flags(sketch, view, plan)


def _cut_house(sketch: Sketch, view: View, frame: Frame, plane: float, blocked: set[str]) -> None:
    for solid in frame.solids:
        if solid.kind in _IN_FRONT or solid.kind in OWN or solid.kind in (SolidKind.COOKTOP, SolidKind.COUNTER):
            continue
        draw_cut(sketch, view, solid, plane)
        if solid.id in blocked:
            for outline in cut(solid.shape, view.axis, plane):
                for piece in clipped(outline, view.region):
                    barred(sketch, [view.at(*p) for p in piece])


def _duct(sketch: Sketch, view: View, route: Route, scene: Scene, frame: Frame, plane: float) -> None:
    left, low, right, high = view.region
    ceiling = ceiling_over_hood_in(scene)
    below = View(view.axis, view.frame, (left, low, right, min(high, ceiling)))
    draw_collar(sketch, view, scene, route, hidden=True)
    draw_duct(sketch, below, route, hidden=True)
    if high > ceiling:
        draw_duct(
            sketch, View(view.axis, view.frame, (left, ceiling, right, high)), route, before=frame.solids, at=plane
        )
    if abs(route.termination.direction[view.axis]) < 0.5:  # a cap on the hood wall lies behind it
        draw_cap(sketch, view, route, scene, frame)
    else:
        _hole_behind(sketch, view, route)


def _hole_behind(sketch: Sketch, view: View, route: Route) -> None:
    """Mark where the duct goes through the hood wall: dashed, with its centre."""
    section = route.parts[-1].section
    u, v = flat(route.termination.point, view.axis)
    reach = max(section.width_in, section.height_in) / 2 + 2.0
    sketch.line(view.at(u - reach, v), view.at(u + reach, v), ink.HAIR, colour=ink.UP)
    sketch.line(view.at(u, v - reach), view.at(u, v + reach), ink.HAIR, colour=ink.UP)


def break_line(sketch: Sketch, view: View, level: float) -> None:
    """Draw the zigzag of a view that goes on, level across it."""
    left, _, right, _ = view.region
    points = [view.at(left, level)]
    x = left + 8.0
    while x + 3.0 < right:
        u, v = view.at(x, level)
        points += [(u, v), (u + 0.8, v + 1.2), (u + 1.6, v - 1.2), (u + 2.4, v)]
        x += 18.0
    sketch.path([*points, view.at(right, level)], ink.FINE)


def number_members(sketch: Sketch, view: View, frame: Frame, kind: SolidKind, plane: float, axis: int = 1) -> None:
    """Write the numbers of members seen end-on, above, beside or below them."""
    for solid in frame.solids:
        if solid.kind is not kind or solid.member is None or not solid.member.number or solid.member.axis != axis:
            continue
        rings = cut(solid.shape, axis, plane)
        if not rings:
            continue
        u = sum(p[0] for p in rings[0]) / len(rings[0])
        v = max(p[1] for p in rings[0])
        if not (view.region[0] <= u <= view.region[2] and view.region[1] <= v <= view.region[3]):
            continue
        (x, y), foot = view.at(u, v), view.at(u, min(p[1] for p in rings[0]))[1]
        half = (max(p[0] for p in rings[0]) - u) * view.scale
        aside = [((x + side * (half + 0.9), y - down), anchor) for down in (2.0, 5.0)
                 for side, anchor in ((1, Anchor.LEFT), (-1, Anchor.RIGHT))]  # fmt: skip
        places = [((x, y + 0.9), Anchor.MIDDLE), *aside, ((x, foot - 2.6), Anchor.MIDDLE)]
        sketch.label(places, str(solid.member.number), ink.SMALL, Face.NARROW_BOLD, halo=ink.WHITE)


def _dimensions(sketch: Sketch, view: View, plan: Plan, option: Option | None) -> None:
    scene = plan.scene
    left, low, right, high = view.region
    cook, hood = scene.cooktop, scene.hood
    bottom = scene.hood_bottom_in
    x = hood.centre_in
    top_line = high - 0.5
    sketch.line(view.at(x, low + 4.0), view.at(x, top_line), ink.HAIR, colour=ink.UP, dash=ink.CENTRE_DASH)
    px, py = view.at(x, top_line)
    ends = [((px + 1.2, py - 2.0), Anchor.LEFT), ((px - 1.2, py - 2.0), Anchor.RIGHT)]
    sketch.label(ends, "hood centre", ink.LEAST, colour=ink.UP, halo=ink.WHITE, tip=(px, py))
    ceiling = ceiling_over_hood_in(scene)
    edge_x = view.at(max(left, 0.0), 0.0)[0]
    y0, y1 = view.at(0.0, cook.height_in)[1], view.at(0.0, ceiling)[1]
    sketch.dim_up(
        y0,
        y1,
        view.at(left, 0.0)[0] - 2.4,
        f"{figure(ceiling - cook.height_in, scene)} {to_ceiling(scene)}",
        from_x=edge_x,
    )
    if bottom is None:
        return
    half = hood.width_in / 2
    side = x + half + 4.0 if x + half + 14.0 < right else x - half - 4.0
    edge = x + half if side > x else x - half
    sketch.dim_up(y0, view.at(0.0, bottom)[1], view.at(side, 0.0)[0], figure(bottom - cook.height_in, scene),
                  from_x=view.at(edge, 0.0)[0], right=side > x, halo=ink.WALL)  # fmt: skip
    y_hood = view.at(0.0, bottom)[1]
    words = f"underside {length(bottom, scene)} above the floor"
    tip = view.at(x - half if side > x else x + half, bottom)
    way = -1 if side > x else 1
    beside_hood = [(tip[0] + way * k, y_hood + d) for k in (5.0, 9.0, 14.0) for d in (-4.5, -8.0, -12.0)]
    under_hood = [(tip[0] - way * k, y_hood + d) for d in (-6.0, -9.5, -13.0) for k in (3.0, 6.0)]
    short = f"underside {figure(bottom, scene)}"
    sketch.note(tip, words, [*beside_hood, *under_hood], ink.LEAST, halo=ink.WALL, short=short)
    if option is None:
        return
    upper = [m for m in option.takeoff.marks if m.row != "bracket"]
    for height in dict.fromkeys(m.height_in for m in upper):
        row = [m for m in upper if m.height_in == height]
        mark = max(row, key=lambda m: m.left_in) if side > x else min(row, key=lambda m: m.left_in)
        tip = view.at(mark.left_in, height)
        way = 1 if side > x else -1
        places = [
            (tip[0] + way * a, tip[1] + d)
            for a in (14.0, 20.0, 8.0, 28.0, 4.0)
            for d in (4.0, 7.0, -4.0, 10.0, -8.0, 14.0, 18.0)
        ]
        words, short = f"screws {length(height, scene)} above the floor", f"screws {figure(height, scene)}"
        sketch.note(tip, words, places, ink.LEAST, halo=ink.WALL, short=short)
    _clear_distances(sketch, view, option.route, scene, plan.frame)


def _clear_distances(sketch: Sketch, view: View, route: Route, scene: Scene, frame: Frame) -> None:
    """Draw the clear distance to the nearest member on each side of the riser, in the attic if it has headroom."""
    found: list[tuple[float, Near]] = []
    for sign in (-1.0, 1.0):
        beside = [n for n in route.near if n.toward[0] * sign > 0.99 and 0 < n.gap_in <= 24.0]
        members = [n for n in beside if frame.solid(n.solid).member is not None and n.at[2] > scene.kitchen.ceiling_in]
        if members:
            found.append(
                (
                    sign,
                    min(
                        members,
                        key=lambda n: (round(n.gap_in, 6), frame.solid(n.solid).kind is not SolidKind.JOIST, n.at[2]),
                    ),
                )
            )
    if not found:
        return
    tops = [ends_of(frame.solid(n.solid).shape, 2)[1] for _, n in found]
    level = max(tops) + 3.5
    open_above = level < view.region[3] - 4.0 and _headroom(frame, route, max(tops)) >= 9.0
    for (sign, near), top in zip(found, tops, strict=True):
        face = near.at[0]
        edge = face - sign * near.gap_in
        if min(edge, face) < view.region[0] or max(edge, face) > view.region[2]:
            continue
        x0, x1 = view.at(edge, 0)[0], view.at(face, 0)[0]
        words = figure(near.gap_in, scene)
        if open_above:
            y = view.at(0.0, level)[1]
            sketch.dim_across(x0, x1, y, words, from_y=(y, view.at(0.0, top)[1]), left=sign < 0)
        elif view.region[1] < near.at[2] < view.region[3]:
            middle = view.at(0.0, near.at[2])[1]
            sketch.line((x0, middle), (x1, middle), ink.FINE)
            sketch.tick((x0, middle))
            sketch.tick((x1, middle))
            tip = ((x0 + x1) / 2, middle)
            board = view.at(0.0, scene.kitchen.ceiling_in)[1]
            places = [(tip[0] + sign * a, board - b) for b in (5.5, 9.0, 13.0) for a in (9.0, 12.0, 18.0)]
            sketch.note(tip, f"{words} clear of {near.label}", places, ink.LEAST, colour=ink.UP, halo=ink.WALL)


def _headroom(frame: Frame, route: Route, over: float) -> float:
    """Give the clear height over the joists where the duct goes up [in]."""
    y = route.parts[0].start[1]
    under = [v for s in frame.solids if s.kind is SolidKind.RAFTER for ring in cut(s.shape, 1, y) for _, v in ring]
    return (min(under) if under else over + 48.0) - over
