"""The outside: the wall as seen from outdoors, or the roof from above, with the cap and its distances."""

from __future__ import annotations

import math

from routeviz.drawings import palette as ink
from routeviz.drawings.caps import cap_size_in, draw_cap
from routeviz.drawings.flat import Outline, clipped, cut, ends_of, flat, outlines
from routeviz.drawings.house import View, fits_scale
from routeviz.drawings.lettering import width
from routeviz.drawings.oldholes import draw_old_holes
from routeviz.drawings.primitives import Anchor, Point
from routeviz.drawings.roof import draw_roof, name_roof, roof_distances, roof_extent
from routeviz.drawings.sheet import Paper, Sheet, heading, new_sheet, scale_name
from routeviz.drawings.sketch import Frame2, Sketch
from routeviz.drawings.words import figure, unit_note
from routeviz.model.plan import Plan
from routeviz.model.route import Route
from routeviz.model.scene import OutdoorKind, Scene
from routeviz.model.solids import ExitFace, FaceKind, Frame, KeepOut, SolidKind, Vec3
from routeviz.model.takeoff import Sheet as Name

__all__ = ["draw_outside", "outside_face", "outside_sheet"]

_EDGES = ("edge", "eave")
_ROOFING = (SolidKind.DECK, SolidKind.COVERING)
_SKINS = (SolidKind.CLADDING, SolidKind.MASONRY)
_BRICK_IN = 8.0 / 3.0  # three courses in 8 in, joints included; common practice
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
        _wall(sketch, view, face, plan.frame)
    shown = [(t, seen) for t in _things(face, route.termination.point) if (seen := _seen(view, t))]
    for thing, seen in shown:
        _draw_thing(sketch, view, thing, seen)
    draw_cap(sketch, view, route, plan.scene, plan.frame)
    for thing, seen in shown:
        _name_thing(sketch, thing, seen)
    if roof:
        name_roof(sketch, view, face)
    middle = face.at_in if not roof else route.termination.point[2]
    draw_old_holes(sketch, view, plan.scene, route, (middle - _SKIN_IN, middle + _SKIN_IN))
    _distances(sketch, view, face, route, plan.scene)
    return view


def _flip(face: ExitFace) -> int:
    """Which way the first axis runs for someone who looks at the wall from outdoors."""
    return 1 if (face.axis == 0) == (face.sign > 0) else -1


def _region(face: ExitFace, route: Route, scene: Scene) -> tuple[float, float, float, float]:
    u, v = flat(route.termination.point, face.axis)
    u0, v0, u1, v1 = face.lo[0], face.lo[1], face.hi[0], face.hi[1]
    if face.kind is FaceKind.ROOF:
        (u0, v0), (u1, v1) = roof_extent(face)
    if face.kind is not FaceKind.ROOF:
        v0, v1 = min(v0, 0.0), min(v1, v + _OVER_IN)
        u0, u1 = max(u0, u - _FAR_IN), min(u1, u + _FAR_IN)
        too_near = [t for t in _things(face, route.termination.point) if _gap(u, v, route, t) < t.distance_in]
        v1 = max([v1, *(t.lo[1] + 2.0 for t in too_near)])
        for thing in face.seen_from(route.termination.point):
            if thing.kind not in _EDGES and _gap(u, v, route, thing) < _FAR_IN:
                u0, u1 = min(u0, max(thing.lo[0], u0 - 60.0)), max(u1, min(thing.hi[0], u1 + 60.0))
    half = cap_size_in(route, scene)
    return min(u0, u - half) - 2.0, min(v0, v - half) - 1.0, max(u1, u + half) + 2.0, max(v1, v + half) + 2.0


def _wall(sketch: Sketch, view: View, face: ExitFace, frame: Frame) -> None:
    """Draw the wall's face under the roof's own line, with level courses, and the ground."""
    rings = [
        ring
        for s in frame.solids
        if s.kind in _ROOFING
        for ring in cut(s.shape, face.axis, face.at_in - 0.3 * face.sign)
    ]
    wall = [part for whole in _under_roof(face, rings) for part in clipped(whole, view.region)]
    for piece in wall:
        sketch.path([view.at(*p) for p in piece], ink.MEDIUM, fill=ink.CABINET, closed=True)
        low, high = min(p[1] for p in piece), max(p[1] for p in piece)
        step = _course_in(face, frame)
        for n in range(1, int(high / step) + 1 if step else 0):
            if low < n * step < high:
                _course(sketch, view, piece, n * step)
    for ring in rings:
        for part in clipped(ring, view.region):
            sketch.path([view.at(*p) for p in part], ink.HAIR, fill=ink.ROOF, closed=True)
    a, b = view.at(view.region[0], 0.0), view.at(view.region[2], 0.0)
    sketch.line(a, b, ink.HEAVY)
    left, right = sorted((a[0], b[0]))
    sketch.hatch(((left, a[1]), (right, a[1]), (right, a[1] - 1.6), (left, a[1] - 1.6)), 1.6)
    place = ((left + 1.0, a[1] - 5.0), Anchor.LEFT)
    sketch.label([place], "level of the kitchen floor; the ground lies lower", ink.LEAST, colour=ink.INK2)


def _course_in(face: ExitFace, frame: Frame) -> float:
    """Give the height of one course of what covers the wall [in]: boards, bricks, or 0 for a smooth skin."""
    skin = ""
    for solid in frame.solids:
        low, high = ends_of(solid.shape, face.axis)
        if solid.kind in _SKINS and abs((high if face.sign > 0 else low) - face.at_in) < 0.02:
            skin = solid.label
            break
    if "siding" in skin or "log" in skin:
        return 8.0
    return _BRICK_IN if "brick" in skin or "masonry" in skin else 0.0


def _under_roof(face: ExitFace, rings: list[Outline]) -> list[Outline]:
    """Take from the wall's rectangle what lies above the roof's underside."""
    from shapely import box, unary_union
    from shapely.geometry import MultiPoint

    wall = box(face.lo[0], min(face.lo[1], 0.0), face.hi[0], face.hi[1])
    above = [MultiPoint([*ring, *((u, v + 400.0) for u, v in ring)]).convex_hull for ring in rings]
    left = wall.difference(unary_union(above)) if above else wall
    pieces = outlines(left)
    return [p for p in pieces if min(v for _, v in p) < 1.0] or pieces


def _course(sketch: Sketch, view: View, outline: Outline, level: float) -> None:
    hits = []
    for (u0, v0), (u1, v1) in zip(outline, (*outline[1:], outline[0]), strict=True):
        if (v0 <= level) != (v1 <= level):
            hits.append(u0 + (level - v0) / (v1 - v0) * (u1 - u0))
    hits.sort()
    for a, b in zip(hits[::2], hits[1::2], strict=False):
        sketch.line(view.at(a, level), view.at(b, level), ink.HAIR, colour="#d8d2c6")


def _seen(view: View, thing: KeepOut) -> tuple[Point, Point] | None:
    """Give two corners on the page of what a view shows of a thing the cap keeps away from."""
    left, low, right, high = view.region
    a = (max(thing.lo[0], left), max(thing.lo[1], low))
    b = (min(thing.hi[0], right), min(thing.hi[1], high))
    if a[0] > b[0] or a[1] > b[1]:
        return None
    return view.at(*a), view.at(*b)


def _draw_thing(sketch: Sketch, view: View, thing: KeepOut, seen: tuple[Point, Point]) -> None:
    """Draw a thing with the wanted distance dashed round it."""
    if thing.distance_in > 0:
        _kept_clear(sketch, view, thing)
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


def _kept_clear(sketch: Sketch, view: View, thing: KeepOut) -> None:
    from shapely import box
    from shapely.geometry import LineString

    reach = math.sqrt(max(0.0, thing.distance_in**2 - thing.away_in**2))
    if reach <= 0:
        return
    if thing.hi[0] > thing.lo[0] and thing.hi[1] > thing.lo[1]:
        shape = box(*thing.lo, *thing.hi).buffer(reach, quad_segs=12)
    else:
        shape = LineString((thing.lo, thing.hi)).buffer(reach, quad_segs=12)
    inside = shape.intersection(box(*view.region))
    for ring in outlines(inside):
        sketch.path([view.at(*p) for p in ring], ink.FINE, colour=ink.INK2, closed=True, dash=(1.0, 1.0))


def _gap(u: float, v: float, route: Route, thing: KeepOut) -> float:
    du = max(thing.lo[0] - u, 0.0, u - thing.hi[0])
    dv = max(thing.lo[1] - v, 0.0, v - thing.hi[1])
    return math.hypot(math.hypot(du, dv), thing.away_in)


def _things(face: ExitFace, at: Vec3) -> list[KeepOut]:
    """Give what stands on the face itself as seen from a cap: neither its edges nor a lot line."""
    return [t for t in face.seen_from(at) if t.kind not in _EDGES and t.kind != OutdoorKind.LOT_LINE.value]


def _distances(sketch: Sketch, view: View, face: ExitFace, route: Route, scene: Scene) -> None:
    u, v = flat(route.termination.point, face.axis)
    section = route.parts[-1].section_out
    for thing in sorted(_things(face, route.termination.point), key=lambda t: (_gap(u, v, route, t), t.id))[:6]:
        if _gap(u, v, route, thing) <= _FAR_IN:
            _to_thing(
                sketch, view, (u, v), max(section.width_in, section.height_in) / 2, section.is_round, thing, scene
            )
    if face.kind is FaceKind.ROOF:
        roof_distances(sketch, view, face, (u, v), scene)
    else:
        _wall_edges(sketch, view, face, (u, v), scene)


def _to_thing(sketch: Sketch, view: View, centre: tuple[float, float], half: float, is_round: bool, thing: KeepOut,
              scene: Scene) -> None:  # fmt: skip
    """Dimension from the edge of the opening to the nearest edge of a thing that is shown."""
    del is_round
    near = (min(max(centre[0], thing.lo[0]), thing.hi[0]), min(max(centre[1], thing.lo[1]), thing.hi[1]))
    apart = math.dist(centre, near)
    left, low, right, high = view.region
    if apart <= half or not (left <= near[0] <= right and low <= near[1] <= high):
        return
    rim = tuple(c + (n - c) * half / apart for c, n in zip(centre, near, strict=True))
    a, b = view.at(rim[0], rim[1]), view.at(*near)
    sketch.line(a, b, ink.FINE)
    sketch.tick(a)
    sketch.tick(b)
    gap = math.hypot(apart - half, thing.away_in)
    words = figure(gap, scene)
    if thing.distance_in > 0:
        short = gap < thing.distance_in - 1e-9
        words += (
            f", broken: at least {figure(thing.distance_in, scene)}"
            if short
            else f" (at least {figure(thing.distance_in, scene)})"
        )
    middle = ((a[0] + b[0]) / 2, (a[1] + b[1]) / 2)
    places = [((middle[0] + dx, middle[1] + dy), anchor) for dy in (1.2, -3.2, 4.5, -6.5, 8.0)
              for dx, anchor in ((0.0, Anchor.MIDDLE), (1.5, Anchor.LEFT), (-1.5, Anchor.RIGHT))]  # fmt: skip
    sketch.label(places, words, ink.SMALL, halo=ink.WHITE, tip=middle)


def _wall_edges(sketch: Sketch, view: View, face: ExitFace, centre: tuple[float, float], scene: Scene) -> None:
    """Dimension the cap's centre from the nearer corner of the wall and from the floor's level."""
    u, v = centre
    corner = face.lo[0] if u - face.lo[0] <= face.hi[0] - u else face.hi[0]
    y = view.at(0.0, 0.0)[1] + 3.0
    inwards = view.at(corner, 0)[0] > view.at(u, 0)[0]  # a short one's text stands on the wall, not over the other line
    sketch.dim_across(view.at(u, 0)[0], view.at(corner, 0)[0], y, f"{figure(abs(u - corner), scene)} to the corner",
                      from_y=(view.at(0, v - 8.0)[1], y), left=inwards, halo=ink.CABINET)  # fmt: skip
    far = view.region[0] if corner == face.lo[0] else view.region[2]
    x = view.at(far, 0.0)[0]
    x += -3.0 if x < view.at(u, 0.0)[0] else 3.0
    sketch.dim_up(view.at(0, 0)[1], view.at(0, v)[1], x, f"{figure(v, scene)} above the kitchen floor", from_x=view.at(u, 0)[0],
                  right=x > view.at(u, 0)[0])  # fmt: skip
