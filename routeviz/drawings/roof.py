"""The roof from above: its eave, ridge and rakes, the walls below, and where the cap's centre stands from them."""

from __future__ import annotations

import math

from routeviz.drawings import palette as ink
from routeviz.drawings.house import View
from routeviz.drawings.primitives import Anchor, Point
from routeviz.drawings.sketch import Sketch
from routeviz.drawings.words import figure, length
from routeviz.model.scene import Scene
from routeviz.model.solids import ExitFace, RoofEdge

__all__ = ["draw_roof", "name_roof", "roof_distances", "roof_extent"]

_COURSE_IN = 8.0
_COURSE = "#d8d2c6"
_WALL_DASH = (1.6, 0.8)


def roof_extent(face: ExitFace) -> tuple[Point, Point]:
    """Give the low and high corners of what is known of a slope: out to its own edges, never less than the face."""
    ats = [[e.at_in for e in face.edges if e.axis == axis] for axis in (0, 1)]
    low, high = ([pick((*at, end)) for at, end in zip(ats, corner, strict=True)]
                 for pick, corner in ((min, face.lo), (max, face.hi)))  # fmt: skip
    return (low[0], low[1]), (high[0], high[1])


def draw_roof(sketch: Sketch, view: View, face: ExitFace, scene: Scene, cap: Point) -> None:
    """Draw the slope out to its own edges; dashed the walls below where the roof goes past them."""
    low, high = roof_extent(face)
    sketch.rect(view.at(*low), view.at(*high), 0.0, fill=ink.CABINET)
    axis = 0 if abs(face.plane[1]) > abs(face.plane[2]) else 1
    if abs(face.plane[1 + axis]) > 1e-9:
        _courses(sketch, view, axis, low, high)
        _slope_arrow(sketch, view, face, axis, scene, cap)
    for a, b in _walls_below(face):
        sketch.line(view.at(*a), view.at(*b), ink.FINE, colour=ink.INK2, dash=_WALL_DASH)
    for edge in face.edges:
        a, b = _ends(view, edge, low, high)
        weight, colour, dash = (ink.HEAVY, ink.INK, ()) if edge.hooks else (ink.FINE, ink.INK2, _WALL_DASH)
        sketch.line(a, b, weight, colour=colour, dash=dash)


def name_roof(sketch: Sketch, view: View, face: ExitFace) -> None:
    """Name the slope's edges along them, and say beside it what is dashed; for when cap and lines are drawn."""
    low, high = roof_extent(face)
    for edge in face.edges:
        _name_edge(sketch, view, edge, low, high)
    if any(_walls_below(face)):
        x, y = view.at(high[0], low[1])
        places = [((x + 3.0, y + k), Anchor.LEFT) for k in (1.0, 8.0, 15.0)]
        x, y = view.at(low[0], high[1])
        places += [((x, y + 2.0), Anchor.LEFT), ((x, view.at(*low)[1] - 4.0), Anchor.LEFT)]
        sketch.label(places, "dashed: outer face of the wall below", ink.LEAST, colour=ink.INK2, halo=ink.WHITE)


def _courses(sketch: Sketch, view: View, axis: int, low: Point, high: Point) -> None:
    at = low[axis] + _COURSE_IN
    while at < high[axis]:
        a, b = list(low), list(high)
        a[axis] = b[axis] = at
        sketch.ground_line(view.at(a[0], a[1]), view.at(b[0], b[1]), colour=_COURSE)
        at += _COURSE_IN


def _walls_below(face: ExitFace) -> list[tuple[Point, Point]]:
    """Give the outer faces of the walls that the roof passes over, as lines."""
    (u0, v0), (u1, v1) = face.lo, face.hi
    sides = (((u0, v0), (u0, v1)), ((u1, v0), (u1, v1)), ((u0, v0), (u1, v0)), ((u0, v1), (u1, v1)))
    return [
        side
        for side, edge in zip(sides, face.edges, strict=False)
        if edge.hooks
        and abs(edge.at_in - side[0][edge.axis]) > 1.0
        and not (edge.label == "ridge" and _ends_at_ridge(edge, face))
    ]


def _ends_at_ridge(edge: RoofEdge, face: ExitFace) -> bool:
    """Whether the slope itself ends there, with no wall below."""
    return min(abs(edge.at_in - face.lo[edge.axis]), abs(edge.at_in - face.hi[edge.axis])) < 1.0


def _ends(view: View, edge: RoofEdge, low: Point, high: Point) -> tuple[Point, Point]:
    a, b = list(low), list(high)
    a[edge.axis] = b[edge.axis] = edge.at_in
    return view.at(a[0], a[1]), view.at(b[0], b[1])


def _name_edge(sketch: Sketch, view: View, edge: RoofEdge, low: Point, high: Point) -> None:
    (x0, y0), (x1, y1) = _ends(view, edge, low, high)
    size, colour = (ink.SMALL, ink.INK) if edge.hooks else (ink.LEAST, ink.INK2)
    if edge.axis == 1:
        inner = -3.2 if edge.at_in > (low[1] + high[1]) / 2 else 1.4
        places = [((x0 + 2.0, y0 + inner), Anchor.LEFT), ((x1 - 2.0, y0 + inner), Anchor.RIGHT),
                  (((x0 + x1) / 2, y0 + inner), Anchor.MIDDLE)]  # fmt: skip
        sketch.label(places, edge.label, size, colour=colour, halo=ink.CABINET)
    else:
        inner = -1.2 if edge.at_in > (low[0] + high[0]) / 2 else 2.8
        places = [((x0 + inner, y0 + k * (y1 - y0)), Anchor.MIDDLE) for k in (0.5, 0.3, 0.7)]
        sketch.label(places, edge.label, size, colour=colour, turn=90, halo=ink.CABINET)


def _slope_arrow(sketch: Sketch, view: View, face: ExitFace, axis: int, scene: Scene, cap: tuple[float, float]) -> None:
    """Show which way water runs, with the pitch, away from the cap's dimensions."""
    down = -1.0 if face.plane[1 + axis] > 0 else 1.0
    wide = face.hi[0] - face.lo[0]
    u = face.lo[0] + next((s for s in (0.8, 0.5) if abs(face.lo[0] + s * wide - cap[0]) > 0.2 * wide), 0.25) * wide
    v = (face.lo[1] + face.hi[1]) / 2
    reach = 9.0
    tip, tail = [u, v], [u, v]
    tip[axis], tail[axis] = tip[axis] + down * reach, tail[axis] - down * reach
    (x0, y0), (x1, y1) = view.at(tail[0], tail[1]), view.at(tip[0], tip[1])
    sketch.line((x0, y0), (x1, y1), ink.FINE)
    long = math.hypot(x1 - x0, y1 - y0)
    ex, ey = (x1 - x0) / long, (y1 - y0) / long
    sketch.path(((x1, y1), (x1 - 2 * ex - 0.8 * ey, y1 - 2 * ey + 0.8 * ex), (x1 - 2 * ex + 0.8 * ey, y1 - 2 * ey - 0.8 * ex)),
                ink.FINE, fill=ink.INK, closed=True)  # fmt: skip
    pitch = scene.roof.pitch * 12 if scene.roof else abs(face.plane[1 + axis]) * 12
    words = f"falls {pitch:g} in 12"
    middle = ((x0 + x1) / 2, (y0 + y1) / 2)
    places = [((middle[0] + 2.0, middle[1] - 0.8), Anchor.LEFT), ((middle[0] - 2.0, middle[1] - 0.8), Anchor.RIGHT)]
    if abs(x1 - x0) > abs(y1 - y0):
        places = [((middle[0], middle[1] + k), Anchor.MIDDLE) for k in (1.4, -3.4)] + places
    sketch.label(places, words, ink.LEAST, colour=ink.INK2)


def roof_distances(sketch: Sketch, view: View, face: ExitFace, centre: Point, scene: Scene) -> None:
    """Dimension the cap's centre, level, from the slope's own edges; along the slope in words."""
    for axis in (0, 1):
        edges = [e for e in face.edges if e.axis == axis]
        chosen = edges if abs(face.plane[1 + axis]) > 1e-9 else _nearest(edges, centre[axis])
        for edge in [e for e in chosen if e.hooks] or _nearest(edges, centre[axis]):
            words = f"{figure(abs(centre[axis] - edge.at_in), scene)} to the {edge.label}"
            _dimension(sketch, view, edge, centre, words)
    _along_the_slope(sketch, view, face, centre, scene)


def _nearest(edges: list[RoofEdge], at: float) -> list[RoofEdge]:
    """Give the edge to measure from: one of the roof's own before the face of a wall below, then the nearer."""
    return sorted(edges, key=lambda e: (not e.hooks, abs(e.at_in - at)))[:1]


def _dimension(sketch: Sketch, view: View, edge: RoofEdge, centre: Point, words: str) -> None:
    u, v = centre
    if edge.axis == 0:
        y = view.at(0.0, view.region[1])[1] - 4.5
        sketch.dim_across(view.at(edge.at_in, 0)[0], view.at(u, 0)[0], y, words, from_y=(y, view.at(0, v - 9.0)[1]))
    else:
        x = view.at(view.region[0], 0.0)[0] - 3.0
        sketch.dim_up(view.at(0, edge.at_in)[1], view.at(0, v)[1], x, words, from_x=(x, view.at(u - 9.0, 0)[0]))


def _along_the_slope(sketch: Sketch, view: View, face: ExitFace, centre: Point, scene: Scene) -> None:
    """Say how a tape that hooks on ridge or eave reads."""
    said = []
    for edge in face.edges:
        slope = abs(face.plane[1 + edge.axis])
        if edge.hooks and slope > 1e-9:
            way = "up" if edge.label == "eave" else "down"
            along = abs(centre[edge.axis] - edge.at_in) * math.hypot(1.0, slope)
            said.append(f"{length(along, scene)} {way} the slope from the {edge.label}")
    px, py = view.at(*centre)
    for n, words in enumerate(said):
        places = [
            (px + a, py + b - 4.5 * n)
            for a in (10.0, -10.0, 14.0, -14.0, 22.0, -22.0, 32.0)
            for b in (9.0, 14.0, -9.0, -14.0, 20.0)
        ]
        sketch.note((px + 1.0, py), words, places, ink.SMALL, halo=ink.CABINET)
