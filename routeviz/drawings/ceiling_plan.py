"""The joist plan: seen from above, the hood wall at the top, the room below it."""

from __future__ import annotations

import math

from routeviz.drawings import palette as ink
from routeviz.drawings.flags import barred, in_the_way
from routeviz.drawings.flat import clipped, cut, ends_of
from routeviz.drawings.hood import draw_hood_top
from routeviz.drawings.house import View, draw_cut, draw_duct, draw_seen, duct_reach
from routeviz.drawings.lettering import box
from routeviz.drawings.primitives import Anchor, Face
from routeviz.drawings.sketch import Sketch
from routeviz.drawings.words import figure
from routeviz.model.overhead import ceiling_at_in
from routeviz.model.plan import Option, Plan
from routeviz.model.route import Near, Route
from routeviz.model.scene import MemberKind, Scene, WallSide
from routeviz.model.solids import Frame, Solid, SolidKind

__all__ = ["ceiling_hole", "draw_joist_plan", "joist_level_in", "wall_level_in"]

_APART = 0.8  # clear space beside the number of a stud [mm]
_NUMBERED = (SolidKind.STUD, SolidKind.FURRING)
_CEILING = (SolidKind.JOIST, SolidKind.RIM, SolidKind.BLOCKING, SolidKind.BEAM, SolidKind.CHORD)


def joist_level_in(plan: Plan) -> float:
    """Give the height at which the ceiling's members are cut [in]: the middle of the joists."""
    ceiling = plan.scene.kitchen.ceiling_in
    joists = [s for s in plan.frame.solids if s.kind in (SolidKind.JOIST, SolidKind.CHORD) and s.member is not None]
    near = [s for s in joists if ends_of(s.shape, 2)[0] < ceiling + 12.0]
    if not near:
        return ceiling + 2.0
    low, high = ends_of(near[0].shape, 2)
    return (low + high) / 2


def wall_level_in(plan: Plan) -> float:
    """Give the height at which the hood wall is cut [in]: over the hood, but where the jacks of its openings still stand."""
    scene = plan.scene
    level = min(scene.kitchen.ceiling_in - 12.0, (scene.hood_bottom_in or 66.0) + scene.hood.body_in + 2.0)
    jacks = [
        s for s in plan.frame.solids if s.kind is SolidKind.JACK and s.side is WallSide.HOOD and s.space == "kitchen"
    ]
    return min([level, *(ends_of(s.shape, 2)[1] - 1.0 for s in jacks)])


def draw_joist_plan(sketch: Sketch, view: View, plan: Plan, option: Option | None, *, whole: bool = False) -> None:
    """Draw wall studs, joists, the hole and its distances. `whole` writes more distances."""
    scene, frame = plan.scene, plan.frame
    left, low, right, high = view.region
    wall = scene.wall(WallSide.HOOD)
    sketch.rect(view.at(max(left, 0.0), 0.0), view.at(min(right, scene.kitchen.width_in), min(high, wall.thickness_in)),
                ink.MEDIUM, fill="#f3ece0")  # fmt: skip
    probe = wall_level_in(plan)
    for solid in frame.solids:
        if (
            solid.side is WallSide.HOOD
            and solid.space == "kitchen"
            and solid.kind not in (SolidKind.GLAZING, SolidKind.DOOR)
        ):
            draw_cut(sketch, view, solid, probe)
            _bar(sketch, view, plan, solid, probe)
    level = joist_level_in(plan)
    room = View(view.axis, view.frame, (left, low, right, min(high, 0.0) if not whole else high))
    over = [s for s in frame.solids if s.kind in _CEILING and (s.side is None or whole)]
    for solid in over:
        draw_cut(sketch, room, solid, level)
        _bar(sketch, room, plan, solid, level)
    if not any(s.kind in _CEILING and s.side is None for s in frame.solids):
        _rafters(sketch, room, frame, scene)
    draw_hood_top(sketch, view, scene)
    if option is not None:
        draw_duct(sketch, view, option.route, before=over, at=level, within=room)
        for solid in frame.solids:
            if (
                solid.member is not None
                and solid.side is WallSide.HOOD
                and solid.id in {h.solid for h in option.takeoff.holes}
            ):
                draw_seen(sketch, view, solid, fill=None, colour=ink.TIMBER_EDGE, dash=ink.HIDDEN_DASH)
    _numbers(sketch, view, frame, probe, level)
    if option is not None:
        _distances(sketch, view, option.route, scene, frame)
    x, y = view.at(scene.hood.centre_in - scene.hood.width_in / 2 + 1.0, -scene.hood.depth_in + 1.2)
    right_x = view.at(scene.hood.centre_in + scene.hood.width_in / 2 - 1.0, 0)[0]
    if view.region[1] <= -scene.hood.depth_in:
        lifts = (0.0, 4.0, 8.0, 12.0)
        places = [
            (at, anchor) for k in lifts for at, anchor in (((x, y + k), Anchor.LEFT), ((right_x, y + k), Anchor.RIGHT))
        ]
        sketch.label(places, "hood", ink.LEAST, colour=ink.INK2, halo=ink.WHITE)


def _bar(sketch: Sketch, view: View, plan: Plan, solid: Solid, level: float) -> None:
    """Bar a member that a plan without a route names as blocking."""
    if solid.id in in_the_way(plan):
        for outline in cut(solid.shape, 2, level):
            for piece in clipped(outline, view.region):
                barred(sketch, [view.at(*p) for p in piece])


def _rafters(sketch: Sketch, view: View, frame: Frame, scene: Scene) -> None:
    """Where there are no joists, show the rafters as they lie over the room, hidden."""
    for solid in frame.solids:
        if solid.kind in (SolidKind.RAFTER, SolidKind.RIDGE) and ends_of(solid.shape, 2)[1] > scene.kitchen.ceiling_in:
            shown = draw_seen(sketch, view, solid, fill=None, colour=ink.TIMBER_EDGE, dash=ink.HIDDEN_DASH)
            member = solid.member
            if shown and member is not None and member.number and member.axis in (0, 1):
                _rafter_number(sketch, view, solid, member.number, member.axis)


def _rafter_number(sketch: Sketch, view: View, solid: Solid, number: int, axis: int) -> None:
    """Write a rafter's number on it, once for both slopes."""
    left, low, right, high = view.region
    ends, across = ends_of(solid.shape, axis), sum(ends_of(solid.shape, 1 - axis)) / 2
    at = max(ends[0], (left, low)[axis])
    if (axis == 0 and not low < across < high) or (axis == 1 and not left < across < right):
        return
    if axis == 0 and ends[0] > left + 24.0:  # the slope on the right has the same number
        return
    x, y = view.at(at + 9.0, across) if axis == 0 else view.at(across, at + 3.0)
    words = f"rafter {number}" if axis == 0 else str(number)
    on = [((x, y - 0.9), Anchor.MIDDLE)]
    if sketch.label(on, words, ink.LEAST, Face.NARROW_BOLD, halo=ink.WHITE, over=True) is None:
        places = [(x + a, y - b) for b in (4.5, 7.5) for a in (2.0, 6.0, -3.0)]
        sketch.note((x - 4.0, y), words, places, ink.LEAST, face=Face.NARROW_BOLD)


def _numbers(sketch: Sketch, view: View, frame: Frame, probe: float, level: float) -> None:
    left, low, right, _ = view.region
    for solid in frame.solids:
        if solid.member is None or not solid.member.number:
            continue
        (x0, x1), (y0, y1), (z0, z1) = (ends_of(solid.shape, k) for k in range(3))
        middle = (x0 + x1) / 2
        if not left <= middle <= right:
            continue
        if solid.kind in _NUMBERED and solid.side is WallSide.HOOD and z0 < probe < z1:
            _stud_number(sketch, view, solid)
        elif solid.kind in (SolidKind.JOIST, SolidKind.CHORD) and z0 < level < z1:
            _joist_number(sketch, view, solid, (x0, x1), (y0, y1), low)


def _stud_number(sketch: Sketch, view: View, solid: Solid) -> None:
    """Write a number on its stud or strip; where two stand too close, beside the wall with a leader."""
    (x0, x1), (y0, y1) = ends_of(solid.shape, 0), ends_of(solid.shape, 1)
    x, y = view.at((x0 + x1) / 2, (y0 + y1) / 2)
    number = str(solid.member.number) if solid.member is not None else ""
    made = sketch.label(
        [((x, y - 0.9), Anchor.MIDDLE)], number, ink.LEAST, Face.NARROW_BOLD, halo=ink.TIMBER, over=True
    )
    if made is None:
        face = view.at(0.0, 0.0)[1]
        places = [(x + s * a, face - b) for b in (4.0, 7.0) for a in (1.5, 4.0) for s in (1, -1)]
        made = sketch.note((x, y), number, places, ink.LEAST, face=Face.NARROW_BOLD)
    if made is not None:  # two numbers side by side must not read as one
        left_of, under, right_of, over = box(made)
        sketch.reserve((left_of - _APART, under, right_of + _APART, over))


def _joist_number(
    sketch: Sketch, view: View, solid: Solid, across: tuple[float, float], along: tuple[float, float], low: float
) -> None:
    member = solid.member
    if member is None:
        return
    words = f"truss {member.number}" if member.kind is MemberKind.TRUSS else str(member.number)
    if member.axis == 1:
        x, y = view.at(sum(across) / 2, max(low, along[0]) + 1.5)
    else:
        x, y = view.at(max(view.region[0], across[0]) + 6.0, sum(along) / 2)
        if sum(along) / 2 < low:
            return
        y -= 0.9
    sketch.label([((x, y), Anchor.MIDDLE), ((x, y + 3.2), Anchor.MIDDLE)], words, ink.LEAST, Face.NARROW_BOLD,
                 halo=ink.TIMBER, over=True)  # fmt: skip


def _distances(sketch: Sketch, view: View, route: Route, scene: Scene, frame: Frame) -> None:
    first = route.parts[0]
    x, y = first.start[0], first.start[1]
    px, py = view.at(x, y)
    half = first.section.width_in / 2
    reach = (half + 1.5) * view.scale
    sketch.line((px - reach, py), (px + reach, py), ink.HAIR, colour=ink.UP)
    sketch.line((px, py - reach), (px, py + reach), ink.HAIR, colour=ink.UP)
    if y < -0.5:
        _out_from_wall(sketch, view, route, scene)
    for sign in (-1.0, 1.0):
        beside = [n for n in route.near if n.toward[0] * sign > 0.99 and 0 < n.gap_in <= 24.0]
        joists = [n for n in beside if frame.solid(n.solid).kind in _CEILING]
        if not joists:
            continue
        near: Near = min(joists, key=lambda n: n.gap_in)
        level = view.at(0.0, max(view.region[1] + 6.0, y - half - 3.5))[1]
        face = near.at[0]
        if view.region[0] <= face <= view.region[2]:
            sketch.dim_across(view.at(face - sign * near.gap_in, 0)[0], view.at(face, 0)[0], level, figure(near.gap_in, scene),
                              from_y=(py, level), below=True, left=sign < 0, halo=ink.WHITE)  # fmt: skip


def _out_from_wall(sketch: Sketch, view: View, route: Route, scene: Scene) -> None:
    """Dimension the collar from the hood wall; where the duct shifts under the ceiling, the ceiling's hole too."""
    x, y = route.parts[0].start[0], route.parts[0].start[1]
    reach = (route.parts[0].section.width_in / 2 + 1.5) * view.scale
    hole = ceiling_hole(route, scene)
    apart = hole is not None and math.dist((x, y), hole) > 1 / 16
    rows = [("collar ", (x, y))] if apart else [("", (x, y))]
    if hole is not None and apart:
        px, py = view.at(*hole)
        sketch.line((px - reach, py), (px + reach, py), ink.HAIR, colour=ink.UP)
        sketch.line((px, py - reach), (px, py + reach), ink.HAIR, colour=ink.UP)
        if hole[1] < -0.5:
            rows.append(("hole ", hole))
    side = 1.0 if duct_reach(route, 0)[1] < x + scene.hood.width_in / 2 - 5.0 else -1.0  # not where the duct runs
    for n, (name, at) in enumerate(rows):
        turn = side if n == 0 else -side
        edge = view.at(x + turn * (scene.hood.width_in / 2 - 3.0), 0.0)
        px, py = view.at(*at)
        starts = (px + turn * reach, edge[0])
        sketch.dim_up(
            py, edge[1], edge[0], f"{name}{figure(-at[1], scene)}", from_x=starts, right=turn > 0, halo=ink.WHITE
        )


def ceiling_hole(route: Route, scene: Scene) -> tuple[float, float] | None:
    """Give the centre of the hole in the kitchen's ceiling, from the left wall and through the hood wall [in]."""
    up = [p for p in route.penetrations if p.direction[2] > 0.5 and p.centre[1] < 0.0]
    first = min(up, key=lambda p: p.centre[2], default=None)
    if first is None or first.centre[2] > ceiling_at_in(scene, first.centre[0]) + 1.0:
        return None
    return first.centre[0], first.centre[1]
