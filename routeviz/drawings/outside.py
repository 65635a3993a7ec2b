"""The outside: the wall as seen from outdoors, or the roof from above, with the cap and its distances."""

from __future__ import annotations

import math

from routeviz.drawings import palette as ink
from routeviz.drawings.caps import cap_size_in, draw_cap
from routeviz.drawings.flat import Outline, flat, polylines
from routeviz.drawings.house import View, fits_scale
from routeviz.drawings.lettering import width
from routeviz.drawings.oldholes import draw_old_holes
from routeviz.drawings.outer_cuts import name_cuts
from routeviz.drawings.primitives import Anchor, Point
from routeviz.drawings.roof import draw_roof, name_roof, roof_distances, roof_extent
from routeviz.drawings.sheet import Paper, Sheet, heading, new_sheet, scale_name
from routeviz.drawings.sketch import Frame2, Sketch
from routeviz.drawings.wall_outside import draw_wall, floor_of, wall_distances, wall_extent
from routeviz.drawings.words import figure, length, unit_note
from routeviz.model.plan import Plan
from routeviz.model.route import Route
from routeviz.model.scene import OutdoorKind, Scene
from routeviz.model.solids import ExitFace, FaceKind, KeepOut, Vec3
from routeviz.model.takeoff import Sheet as Name

__all__ = ["draw_outside", "outside_face", "outside_sheet"]

_EDGES = ("edge", "eave")
_OVER_IN = 48.0  # of the wall above the cap is shown
_SKIN_IN = 2.0  # an old hole that comes so near to the face is one in it
_ROAM = 12.0  # a name may stand so far from its thing [mm]
_FAR_IN = 150.0  # things further from the cap are not dimensioned


def outside_face(plan: Plan, route: Route) -> ExitFace | None:
    """Give the outer face where the duct ends, or None."""
    return next((f for f in plan.frame.faces if f.id == route.termination.face), None)


def outside_sheet(plan: Plan, route: Route, face: ExitFace, paper: Paper, number: str) -> Sheet:
    """Draw the face from outside; a roof from above, the hood wall's side at the top of the sheet."""
    roof = face.kind is FaceKind.ROOF
    title = "Roof from above" if roof else f"Outside of {face.label}"
    sheet = new_sheet(paper, Name.OUTSIDE, title)
    draw_outside(sheet, plan, route, face, number)
    return sheet


def draw_outside(
    sheet: Sheet, plan: Plan, route: Route, face: ExitFace, number: str, *, title: str = "", column: float = 0.0
) -> View:
    """Draw face, things, cap and distances under a heading; the right `column` [mm] of the sheet stays free."""
    roof, paper, title = face.kind is FaceKind.ROOF, sheet.paper, title or sheet.title
    left, bottom, right, top = sheet.room
    right -= column
    u0, v0, u1, v1 = _region(face, route, plan.scene)
    room = (right - left - 30.0, top - 9.5 - bottom - 12.0)
    scale = fits_scale(u1 - u0, v1 - v0, room, paper.scales)
    mm = 25.4 / scale
    sheet.scale = scale_name(scale)
    how = "hood wall at the top; sizes across a slope are level" if roof else "seen from outdoors"
    if not roof and plan.best is not None:
        how += "; the centre is drilled through from inside, these sizes check it"
    heading(sheet, number, title, f"{how}, {sheet.scale}. {unit_note(plan.scene)}")
    flip = 1 if roof else _flip(face)
    wide, high = (u1 - u0) * mm, (v1 - v0) * mm
    x0 = left + 14.0 + max(0.0, (room[0] - wide) / 2)
    y0 = bottom + 9.0 + max(0.0, (room[1] - high) / 2)
    origin = (x0 - u0 * mm if flip > 0 else x0 + u1 * mm, y0 - v0 * mm)
    view = View(face.axis, Frame2(origin, mm, flip), (u0, v0, u1, v1))
    sketch = sheet.sketch.left_of(right + 4.0)
    if roof:
        draw_roof(sketch, view, face, plan.scene, flat(route.termination.point, face.axis))
    else:
        draw_wall(sketch, view, face, plan)
    shown = [(t, seen) for t in _things(face, route.termination.point) if (seen := _seen(view, t))]
    for thing, seen in shown:
        _draw_thing(sketch, view, face, thing, seen)
    draw_cap(sketch, view, route, plan.scene, plan.frame)
    for thing, seen in shown:
        _name_thing(sketch, thing, seen)
    middle = face.at_in if not roof else route.termination.point[2]
    draw_old_holes(sketch, view, plan.scene, route, (middle - _SKIN_IN, middle + _SKIN_IN))
    _distances(sketch, view, face, route, plan)
    if roof:
        name_roof(sketch, view, face)  # after the dimensions, so that none strikes a name
    return view


def _flip(face: ExitFace) -> int:
    """Which way the first axis runs for someone who looks at the wall from outdoors."""
    return 1 if (face.axis == 0) == (face.sign > 0) else -1


def _region(face: ExitFace, route: Route, scene: Scene) -> tuple[float, float, float, float]:
    u, v = flat(route.termination.point, face.axis)
    (u0, v0), (u1, v1) = roof_extent(face) if face.kind is FaceKind.ROOF else wall_extent(face)
    if face.kind is not FaceKind.ROOF:
        v0, v1 = min(v0, floor_of(face, scene)[0]), min(v1, v + _OVER_IN)
        u0, u1 = max(u0, u - _FAR_IN), min(u1, u + _FAR_IN)
        too_near = [t for t in _things(face, route.termination.point) if _gap(u, v, route, t) < t.distance_in]
        v1 = max([v1, *(t.lo[1] + 2.0 for t in too_near)])
        for thing in face.seen_from(route.termination.point):
            if thing.kind not in _EDGES and _gap(u, v, route, thing) < _FAR_IN:
                u0, u1 = min(u0, max(thing.lo[0], u0 - 60.0)), max(u1, min(thing.hi[0], u1 + 60.0))
    half = cap_size_in(route, scene)
    return min(u0, u - half) - 2.0, min(v0, v - half) - 1.0, max(u1, u + half) + 2.0, max(v1, v + half) + 2.0


def _seen(view: View, thing: KeepOut) -> tuple[Point, Point] | None:
    """Give two corners on the page of what a view shows of a thing the cap keeps away from."""
    left, low, right, high = view.region
    a = (max(thing.lo[0], left), max(thing.lo[1], low))
    b = (min(thing.hi[0], right), min(thing.hi[1], high))
    if a[0] > b[0] or a[1] > b[1]:
        return None
    return view.at(*a), view.at(*b)


def _draw_thing(sketch: Sketch, view: View, face: ExitFace, thing: KeepOut, seen: tuple[Point, Point]) -> None:
    """Draw a thing with the wanted distance dashed round it."""
    if thing.distance_in > 0:
        _kept_clear(sketch, view, face, thing)
    (x0, y0), (x1, y1) = seen
    if min(abs(x1 - x0), abs(y1 - y0)) > 0.2 * view.scale:
        sketch.rect(*seen, ink.MEDIUM, fill=ink.GLASS, name=thing.id)
    else:
        sketch.line(*seen, ink.HEAVY)


def _name_thing(sketch: Sketch, thing: KeepOut, seen: tuple[Point, Point]) -> None:
    """Name a thing inside or beside it."""
    (x0, y0), (x1, y1) = seen
    x, y = (x0 + x1) / 2, (y0 + y1) / 2
    places = [((x, y - 0.8), Anchor.MIDDLE)] if width(thing.label, ink.SMALL) < abs(x1 - x0) - 1 else []
    places += [((x, max(y0, y1) + 1.2), Anchor.MIDDLE), ((x, min(y0, y1) - 3.0), Anchor.MIDDLE)]
    places += [((max(x0, x1) + 1.5, y), Anchor.LEFT), ((min(x0, x1) - 1.5, y), Anchor.RIGHT)]
    sketch.label(places, thing.label, ink.SMALL, roam=_ROAM)


def _name_zone(sketch: Sketch, view: View, face: ExitFace, thing: KeepOut, scene: Scene) -> None:
    """Say what the dashed line round a thing means, at the line's end that is highest on the sheet."""
    lines = _zone(view, face, thing)
    if not lines:
        return
    x, y = max((view.at(*p) for p in max(lines, key=len)), key=lambda p: (p[1], p[0]))
    words = f"dashed: no cap within {length(thing.distance_in, scene)} of the {thing.label}"
    places = [(x + s * a, y + b) for b in (5.0, 9.0, -6.0, -11.0, 13.0) for a in (5.0, 12.0, 20.0) for s in (-1, 1)]
    sketch.note((x, y), words, places, ink.LEAST, colour=ink.INK2, halo=ink.CABINET)


def _kept_clear(sketch: Sketch, view: View, face: ExitFace, thing: KeepOut) -> None:
    for line in _zone(view, face, thing):
        sketch.path([view.at(*p) for p in line], ink.FINE, colour=ink.INK2, dash=(1.0, 1.0))


def _zone(view: View, face: ExitFace, thing: KeepOut) -> list[Outline]:
    """Give the line round a thing within which no cap may sit, as far as the view shows it; open where it goes on."""
    from shapely import box
    from shapely.geometry import LineString

    reach = math.sqrt(max(0.0, thing.distance_in**2 - thing.away_in**2))
    if reach <= 0:
        return []
    if thing.hi[0] > thing.lo[0] and thing.hi[1] > thing.lo[1]:
        shape = box(*thing.lo, *thing.hi).buffer(reach, quad_segs=12)
    else:
        shape = LineString((thing.lo, thing.hi)).buffer(reach, quad_segs=12)
    left, low, right, high = view.region
    if face.kind is not FaceKind.ROOF:  # no cap sits past the wall
        (u0, _), (u1, v1) = wall_extent(face)
        left, right, high = max(left, u0), min(right, u1), min(high, v1)
    room = box(left, low, right, high)
    return polylines(shape.exterior.intersection(room))


def _gap(u: float, v: float, route: Route, thing: KeepOut) -> float:
    du = max(thing.lo[0] - u, 0.0, u - thing.hi[0])
    dv = max(thing.lo[1] - v, 0.0, v - thing.hi[1])
    return math.hypot(math.hypot(du, dv), thing.away_in)


def _things(face: ExitFace, at: Vec3) -> list[KeepOut]:
    """Give what stands on the face itself as seen from a cap: neither its edges nor a lot line."""
    return [t for t in face.seen_from(at) if t.kind not in _EDGES and t.kind != OutdoorKind.LOT_LINE.value]


def _distances(sketch: Sketch, view: View, face: ExitFace, route: Route, plan: Plan) -> None:
    """Draw every dimension's line before the words of any, so that no word is struck through."""
    u, v = flat(route.termination.point, face.axis)
    section = route.parts[-1].section_out
    half = max(section.width_in, section.height_in) / 2
    near = sorted(_things(face, route.termination.point), key=lambda t: (_gap(u, v, route, t), t.id))[:6]
    shown = [t for t in near if _gap(u, v, route, t) <= _FAR_IN]
    lines = [(t, made) for t in shown if (made := _line_to(sketch, view, (u, v), half, t)) is not None]
    if face.kind is FaceKind.ROOF:
        roof_distances(sketch, view, face, (u, v), plan.scene)
        side = 1.0
    else:
        side = wall_distances(sketch, view, face, (u, v), plan, cap_size_in(route, plan.scene) / 2)
    for thing in shown:
        _name_zone(sketch, view, face, thing, plan.scene)
    for thing, (a, b, gap) in lines:
        _say_distance(sketch, a, b, _distance_words(thing, gap, plan))
    name_cuts(sketch, view, plan, route, side)


def _line_to(
    sketch: Sketch, view: View, centre: tuple[float, float], half: float, thing: KeepOut
) -> tuple[Point, Point, float] | None:
    """Draw the line from the edge of the opening to the nearest edge of a thing that is shown; give its ends and the gap."""
    near = (min(max(centre[0], thing.lo[0]), thing.hi[0]), min(max(centre[1], thing.lo[1]), thing.hi[1]))
    apart = math.dist(centre, near)
    left, low, right, high = view.region
    if apart <= half or not (left <= near[0] <= right and low <= near[1] <= high):
        return None
    rim = tuple(c + (n - c) * half / apart for c, n in zip(centre, near, strict=True))
    a, b = view.at(rim[0], rim[1]), view.at(*near)
    sketch.line(a, b, ink.FINE)
    sketch.tick(a)
    sketch.tick(b)
    return a, b, math.hypot(apart - half, thing.away_in)


def _distance_words(thing: KeepOut, gap: float, plan: Plan) -> str:
    scene, words = plan.scene, figure(gap, plan.scene)
    if thing.distance_in <= 0:  # what the search does not keep; advice may still ask for it
        asked = [
            f.limit for f in plan.all_findings if f.code.startswith("TRM-") and f.unit == "in" and thing.id in f.where
        ]
        least = next((f", advised at least {figure(v, scene)}" for v in asked if v is not None), "")
        return f"{words} to the {thing.label}{least}"
    least = figure(thing.distance_in, scene)
    words += f", broken: at least {least}" if gap < thing.distance_in - 1e-9 else f" (at least {least})"
    return f"{words}, through the air" if thing.away_in > _SKIN_IN else words


def _say_distance(sketch: Sketch, a: Point, b: Point, words: str) -> None:
    """Write a distance on its line where that is long enough, else beside it with a leader."""
    middle = ((a[0] + b[0]) / 2, (a[1] + b[1]) / 2)
    if width(words, ink.SMALL) < abs(a[0] - b[0]) - 1.0 or abs(a[1] - b[1]) > 12.0:
        places = [((middle[0] + dx, middle[1] + dy), anchor) for dy in (1.2, -3.2, 4.5, -6.5, 8.0)
                  for dx, anchor in ((0.0, Anchor.MIDDLE), (1.5, Anchor.LEFT), (-1.5, Anchor.RIGHT))]  # fmt: skip
        sketch.label(places, words, ink.SMALL, halo=ink.WHITE, tip=middle)
        return
    spots = [
        (middle[0] + s * dx, middle[1] + dy)
        for dy in (-9.0, 9.0, -14.0, 14.0, -20.0, 20.0)
        for dx in (4.0, 12.0)
        for s in (1, -1)
    ]
    sketch.note(middle, words, spots, ink.SMALL, halo=ink.WHITE)
