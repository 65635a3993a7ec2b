"""What a section shows of the layers that the duct passes: their holes, a sleeve, the cap's block, and their names."""

from __future__ import annotations

from routeviz.drawings import palette as ink
from routeviz.drawings.flat import Outline, clipped, cut, flat, outlines, span_at
from routeviz.drawings.house import View, duct_boxes
from routeviz.drawings.primitives import Point
from routeviz.drawings.sketch import Sketch
from routeviz.model.plan import Option, Plan
from routeviz.model.route import Penetration, Route
from routeviz.model.solids import Crossing, Solid
from routeviz.model.takeoff import Hole

__all__ = ["draw_opening", "name_layers"]

_BESIDE_IN = (2.0, 3.5, 1.0, 5.0)  # a leader meets a layer so far beside its hole


def _crossing(hole: Hole, route: Route) -> Penetration:
    """Give the penetration that a hole is for."""
    return min(route.penetrations, key=lambda p: sum((a - b) ** 2 for a, b in zip(p.centre, hole.centre, strict=True)))


def _run(hole: Hole, route: Route, axis: int) -> tuple[int, float]:
    """Give which flat axis the duct runs along in a view along `axis`, and half the hole across it [in]."""
    crossing = _crossing(hole, route)
    way = flat(crossing.direction, axis)
    along = 0 if abs(way[0]) > abs(way[1]) else 1
    sizes = crossing.level_in if crossing.sloped else hole.size_in
    if along == 0:
        return 0, sizes[1] / 2  # upright
    return 1, sizes[1 if axis == 0 else 0] / 2


def _pieces(solid: Solid, view: View, at: float) -> list[Outline]:
    return [piece for ring in cut(solid.shape, view.axis, at) for piece in clipped(ring, view.region)]


def draw_opening(sketch: Sketch, view: View, plan: Plan, option: Option, hole: Hole, at: float) -> None:
    """Draw a hole as it is cut: clear round the duct, lined by a sleeve in masonry, filled by a block in siding."""
    from shapely import box
    from shapely.geometry import Polygon

    solid = plan.frame.solid(hole.solid)
    if not any(abs(d) > 0.5 for d in flat(_crossing(hole, option.route).direction, view.axis)):
        return  # it runs towards the viewer
    along, half = _run(hole, option.route, view.axis)
    centre = flat(hole.centre, view.axis)[1 - along]
    far = 1e4
    strip = box(-far, centre - half, far, centre + half) if along == 0 else box(centre - half, -far, centre + half, far)
    block = "block" in hole.note
    for piece in _pieces(solid, view, at):
        for ring in outlines(Polygon(piece).intersection(strip)):
            points = [view.at(*p) for p in ring]
            sketch.path(points, ink.FINE if block else 0.0, fill=ink.TIMBER if block else ink.WHITE, closed=True,
                        name="mounting block" if block else "")  # fmt: skip
            if not block:
                _lined(sketch, view, ring, along, (centre - half, centre + half), sleeve="sleeve" in hole.note)


def _lined(sketch: Sketch, view: View, ring: Outline, along: int, sides: tuple[float, float], *, sleeve: bool) -> None:
    """Draw the sides of a hole, bold where a sleeve lines it."""
    for a, b in zip(ring, (*ring[1:], ring[0]), strict=True):
        if any(abs(a[1 - along] - s) < 1e-6 and abs(b[1 - along] - s) < 1e-6 for s in sides):
            sketch.path([view.at(*a), view.at(*b)], ink.HEAVY if sleeve else ink.HAIR, name="sleeve" if sleeve else "")


def name_layers(sketch: Sketch, view: View, plan: Plan, option: Option, at: float) -> None:
    """Name the layers the duct passes, once each, on the right; the leaders end inside the layers."""
    right = view.at(view.region[2], 0.0)[0]
    seen: set[str] = set()
    duct = duct_boxes(view, option.route)
    holes = option.takeoff.holes
    level = any(abs(_crossing(h, option.route).direction[2]) < 0.5 for h in holes)
    rightmost = sorted(holes, key=lambda h: -view.at(*flat(h.centre, view.axis))[0] if level else 0.0)
    for hole in rightmost:  # so that leaders that fan to the right do not cross
        solid = plan.frame.solid(hole.solid)
        if hole.layer in seen or (solid.member is not None and solid.crossing is Crossing.NEVER):
            continue
        beside = max(
            _run(h, option.route, view.axis)[1] for h in holes if h.group == hole.group
        )  # in one row, so that no leaders cross
        tip = _tip(solid, view, option.route, hole, beside, at)
        if tip is None:
            continue
        seen.add(hole.layer)
        base = right + 3.0 if right - tip[0] < 45.0 else tip[0] + 6.0  # far from the margin: beside the hole
        places = [(base + a, tip[1] + b) for b in _lifts(base > right, level) for a in (0.0, -8.0)]
        words = solid.material if solid.wall and solid.member is None and solid.material else hole.layer
        sketch.note(
            tip,
            f"{words}, sleeve" if "with a sleeve" in hole.note else words,
            places,
            ink.LEAST,
            halo=ink.WHITE,
            avoid=duct,
        )
        if "block" in hole.note:
            _name_block(sketch, view, option.route, hole, tip)


def _name_block(sketch: Sketch, view: View, route: Route, hole: Hole, beside: Point) -> None:
    """Name the block that a cap sits on, under the duct where the layers are named over it."""
    along, half = _run(hole, route, view.axis)
    centre = flat(hole.centre, view.axis)
    x, y = view.at(*centre)
    down = (half - 0.7) * view.scale
    tip = (beside[0], y - down) if along == 0 else (x - down, beside[1])
    places = [(tip[0] + a, tip[1] - b) for b in (5.0, 9.0, 13.0) for a in (9.0, 14.0, -9.0)]
    sketch.note(tip, "mounting block", places, ink.LEAST, halo=ink.WHITE)


def _tip(solid: Solid, view: View, route: Route, hole: Hole, half: float, at: float) -> Point | None:
    """Give the page place in the middle of a layer's thickness, beside its hole: above or right of it where there is any."""
    along = _run(hole, route, view.axis)[0]
    centre = flat(hole.centre, view.axis)
    for more in _BESIDE_IN:
        for side in (1.0, -1.0):
            across = centre[1 - along] + side * (half + more)
            for piece in _pieces(solid, view, at):
                span = span_at(piece, 1 - along, across)
                if span is not None and abs(sum(span) / 2 - centre[along]) < 24.0:
                    middle = sum(span) / 2
                    return view.at(middle, across) if along == 0 else view.at(across, middle)
    return None


def _lifts(in_margin: bool, level: bool) -> tuple[float, ...]:
    """Give how far above a leader's tip a layer's name may stand [mm], best first."""
    if not in_margin:
        return (7.0, 10.6, 14.2, 17.8, -16.0, -19.6)
    return (0.0, 3.6, 7.2, 10.8, 14.4) if level else (0.0, 3.6, -3.6, 7.2, -7.2, 10.8, -10.8, 14.4)
