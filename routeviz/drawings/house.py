"""How each solid looks where a view cuts it, and how ducts look in any view."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from routeviz.drawings import palette as ink
from routeviz.drawings.flat import Outline, clipped, cut, duct_outlines, ends_of, outlines, polylines
from routeviz.drawings.primitives import Point
from routeviz.drawings.sketch import Frame2, Sketch
from routeviz.drawings.taken import Rect
from routeviz.model.overhead import ceiling_at_in
from routeviz.model.roofline import follows_rafters
from routeviz.model.route import Part, PartKind, Route
from routeviz.model.scene import Scene, WallSide
from routeviz.model.solids import JOIST_KINDS, RAFTER_KINDS, STUD_KINDS, Box, Prism, Solid, SolidKind

__all__ = ["View", "behind_board", "ceiling_line", "covers", "draw_cut", "draw_duct", "duct_boxes", "fits_scale"]

_TIMBER = (*STUD_KINDS, *JOIST_KINDS, *RAFTER_KINDS, SolidKind.FURRING)
_SHEET_FILL = {
    SolidKind.BOARD: ink.BOARD, SolidKind.SHEATHING: ink.SHEATHING, SolidKind.CLADDING: ink.CABINET,
    SolidKind.SUBFLOOR: ink.SHEATHING, SolidKind.DECK: ink.SHEATHING, SolidKind.COVERING: ink.ROOF,
    SolidKind.EAVE: ink.BOARD, SolidKind.GLAZING: ink.GLASS, SolidKind.DOOR: ink.CABINET, SolidKind.CABINET: ink.CABINET,
    SolidKind.SOFFIT: ink.CABINET, SolidKind.COUNTER: ink.STONE, SolidKind.COOKTOP: ink.DARK, SolidKind.FLOOR: ink.STONE,
    SolidKind.SERVICE: ink.STEEL_DARK, SolidKind.OBSTACLE: ink.CABINET, SolidKind.MASONRY: ink.MASONRY,
    SolidKind.SLAB: ink.MASONRY,
}  # fmt: skip
_HATCHED = (SolidKind.MASONRY, SolidKind.SLAB)
OWN = (SolidKind.HOOD, SolidKind.COVER)


@dataclass(frozen=True, slots=True)
class View:
    """A flat window into the world along an axis: its region [in] and where it stands on the page."""

    axis: int
    frame: Frame2
    region: tuple[float, float, float, float]  # left, bottom, right, top [in]

    def at(self, u: float, v: float) -> Point:
        """Give the page place of a flat point."""
        return self.frame(u, v)

    @property
    def scale(self) -> float:
        """Millimetres on paper for one inch."""
        return self.frame.scale


def fits_scale(wide_in: float, high_in: float, room: tuple[float, float], steps: Iterable[float]) -> float:
    """Give the first scale of `steps` (24 for 1 : 24) at which a drawing fits into `room` [mm]; the last if none does."""
    chosen = 24.0
    for chosen in steps:
        if wide_in * 25.4 / chosen <= room[0] and high_in * 25.4 / chosen <= room[1]:
            break
    return chosen


def ceiling_line(scene: Scene, left: float, right: float) -> list[tuple[float, float]]:
    """Give the ceiling's line at the hood wall from `left` to `right` [in]: level, or with the slope and the ridge."""
    at = [left, right]
    if scene.roof is not None and left < scene.roof.ridge_at_in < right:
        at.insert(1, scene.roof.ridge_at_in)
    return [(x, ceiling_at_in(scene, x)) for x in at]


def behind_board(solid: Solid, scene: Scene) -> bool:
    """Whether a solid is a part of the hood wall that the room's ceiling does not hide, a gable's under a slope included."""
    return solid.side is WallSide.HOOD and (solid.space == "kitchen" or follows_rafters(scene))


def draw_cut(sketch: Sketch, view: View, solid: Solid, at: float) -> bool:
    """Draw what the view's plane cuts of a solid; True when it is on the sheet."""
    shown = False
    for outline in cut(solid.shape, view.axis, at):
        for piece in clipped(outline, view.region):
            _draw_material(sketch, view, solid, piece)
            shown = True
    return shown


def draw_seen(sketch: Sketch, view: View, solid: Solid, *, fill: str | None, colour: str, dash: tuple[float, ...] = (),
              weight: float = ink.FINE) -> bool:  # fmt: skip
    """Draw the outline of a solid seen along the view's axis (boxes, prisms along it; others by the box round them)."""
    reach = [ends_of(solid.shape, k) for k in range(3)]
    (u0, u1), (v0, v1) = (reach[k] for k in range(3) if k != view.axis)
    ring: Outline = ((u0, v0), (u1, v0), (u1, v1), (u0, v1))
    if isinstance(solid.shape, Prism) and solid.shape.axis == view.axis:
        ring = solid.shape.outline
    shown = False
    for piece in clipped(ring, view.region):
        sketch.path(
            [view.at(*p) for p in piece], weight, colour=colour, fill=fill, closed=True, dash=dash, name=solid.id
        )
        shown = True
    return shown


def _draw_material(sketch: Sketch, view: View, solid: Solid, outline: Outline) -> None:
    points = [view.at(*p) for p in outline]
    if solid.kind in _TIMBER:
        sketch.path(points, ink.FINE, colour=ink.TIMBER_EDGE, fill=ink.TIMBER, closed=True, name=solid.id)
        if _end_on(solid, view.axis) and len(points) == 4:
            _framers_x(sketch, points)
        return
    fill = _SHEET_FILL.get(solid.kind, ink.CABINET)
    thin = min(_spread(points)) < 1.2
    sketch.path(points, ink.HAIR if thin else ink.FINE, fill=fill, closed=True, name=solid.id)
    if solid.kind in _HATCHED:
        sketch.hatch(points)


def _spread(points: list[Point]) -> tuple[float, float]:
    return (
        max(p[0] for p in points) - min(p[0] for p in points),
        max(p[1] for p in points) - min(p[1] for p in points),
    )


def _end_on(solid: Solid, axis: int) -> bool:
    """Whether a member runs along the view's axis, so that its end shows."""
    if solid.member is not None:
        return solid.member.axis == axis
    return (
        isinstance(solid.shape, Box)
        and max(range(3), key=lambda k: ends_of(solid.shape, k)[1] - ends_of(solid.shape, k)[0]) == axis
    )


def _framers_x(sketch: Sketch, points: list[Point]) -> None:
    for a, b in ((points[0], points[2]), (points[1], points[3])):
        sketch.ground_line(a, b, colour=ink.TIMBER_EDGE)


def draw_duct(
    sketch: Sketch, view: View, route: Route, *, hidden: bool = False, before: Iterable[Solid] = (), at: float = 0.0,
    within: View | None = None,
) -> None:  # fmt: skip
    """Draw the duct's parts: steel with a teal edge, or dashed where something hides it.

    Of the solids `before` it, those that the view's plane `at` cuts and that stand nearer to the viewer hide it as well,
    as far as they are drawn `within` a part of the view.
    """
    standing = tuple(before)
    for part in route.parts:
        if part.length_in <= 0:
            continue
        cover = covers(part, within or view, standing, at)
        for outline in duct_outlines(part, view.axis):
            for piece in clipped(outline, view.region):
                points = [view.at(*p) for p in piece]
                if hidden:
                    sketch.path(points, ink.FINE, colour=ink.UP, closed=True, dash=ink.DUCT_DASH, name=part.id)
                elif cover:
                    _partly_hidden(sketch, view, piece, cover, part.id)
                else:
                    sketch.path(points, ink.HEAVY, colour=ink.UP, fill=ink.STEEL, closed=True, name=part.id)


def covers(part: Part, view: View, before: Iterable[Solid], at: float) -> list[Outline]:
    """Give what the plane cuts of members that stand between the viewer and a part [in].

    One looks from the room at the hood wall, from the right along it, and down from above.
    """
    k = view.axis
    towards = -1.0 if k == 1 else 1.0  # where along the axis the viewer is
    middle = towards * (part.start[k] + part.end[k]) / 2
    found: list[Outline] = []
    for solid in before:
        if solid.member is not None and min(towards * e for e in ends_of(solid.shape, k)) >= middle:
            found += [piece for ring in cut(solid.shape, k, at) for piece in clipped(ring, view.region)]
    return found


def _partly_hidden(sketch: Sketch, view: View, outline: Outline, cover: list[Outline], name: str) -> None:
    """Draw what is seen of a part filled, and its edges dashed behind what covers it."""
    from shapely import unary_union
    from shapely.geometry import LinearRing, Polygon

    shade = unary_union([Polygon(ring) for ring in cover])
    for ring in outlines(Polygon(outline).difference(shade)):
        sketch.path([view.at(*p) for p in ring], 0.0, fill=ink.STEEL, closed=True, name=name)
    edge = LinearRing(outline)
    seen, behind = edge.difference(shade), edge.intersection(shade)
    for line in polylines(seen):
        sketch.path([view.at(*p) for p in line], ink.HEAVY, colour=ink.UP, name=name)
    for line in polylines(behind):
        sketch.path([view.at(*p) for p in line], ink.MEDIUM, colour=ink.UP, dash=ink.DUCT_DASH, name=name)


def duct_boxes(view: View, route: Route) -> list[Rect]:
    """Give the boxes on the page that the duct's parts cover; marks and names keep off them where there is room."""
    boxes: list[Rect] = []
    for part in route.parts:
        corners = (
            [view.at(*p) for outline in duct_outlines(part, view.axis) for p in outline] if part.length_in > 0 else []
        )
        if corners:
            xs, ys = [p[0] for p in corners], [p[1] for p in corners]
            boxes.append((min(xs), min(ys), max(xs), max(ys)))
    return boxes


def duct_reach(route: Route, axis: int) -> tuple[float, float]:
    """Give how far the duct reaches along an axis [in]."""
    ends: list[float] = []
    for part in route.parts:
        half = max(part.section.width_in, part.section.height_in) / 2
        for at, way in ((part.start, part.direction), (part.end, part.turn_to)):
            reach = half * (1 - abs(way[axis])) if part.kind is not PartKind.CAP else half
            ends += [at[axis] - reach, at[axis] + reach]
    return min(ends), max(ends)
