"""The framed house as pieces: walls cut open, joists and rafters cut off square, layers joined without seams."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace
from itertools import pairwise

import numpy as np
import shapely
from shapely.geometry.base import BaseGeometry

from routeviz.geometry import bounds
from routeviz.model.plan import Plan
from routeviz.model.scene import SpaceKind, WallSide
from routeviz.model.solids import RAFTER_KINDS, Box, FaceKind, Prism, Solid, SolidKind
from routeviz.views.parts import Layer, MemberNumber, Piece, Polyline
from routeviz.views.shapes import Slab, box, rough_outline, slab_of
from routeviz.views.timbers import member_slab

__all__ = ["CutAway", "cut_away", "house_pieces", "laps", "member_numbers", "sheet_material", "stud_numbers"]

_MEMBERS = {
    SolidKind.STUD: "stud", SolidKind.PLATE: "stud", SolidKind.JACK: "stud", SolidKind.HEADER: "stud",
    SolidKind.SILL: "stud", SolidKind.CRIPPLE: "stud", SolidKind.JOIST: "joist", SolidKind.RIM: "stud",
    SolidKind.BLOCKING: "joist", SolidKind.RAFTER: "rafter", SolidKind.RIDGE: "rafter", SolidKind.CHORD: "rafter",
    SolidKind.WEB: "rafter", SolidKind.BEAM: "beam", SolidKind.FURRING: "furring",
}  # fmt: skip
_SHEETS = {
    SolidKind.BOARD: "plaster", SolidKind.SHEATHING: "sheathing", SolidKind.CLADDING: "cladding",
    SolidKind.MASONRY: "masonry", SolidKind.SLAB: "concrete", SolidKind.SUBFLOOR: "subfloor",
    SolidKind.DECK: "sheathing", SolidKind.COVERING: "covering a", SolidKind.EAVE: "trim",
}  # fmt: skip
_ELSEWHERE = {
    SolidKind.CABINET, SolidKind.SOFFIT, SolidKind.SERVICE, SolidKind.OBSTACLE, SolidKind.COOKTOP, SolidKind.COUNTER,
    SolidKind.HOOD, SolidKind.COVER, SolidKind.FLOOR, SolidKind.GLAZING, SolidKind.DOOR,
}  # fmt: skip
_ON_FACE_IN = 0.3  # thinner than any board: what is written on a stud is seen on it or not at all
_SILENT_ABOVE_IN = 14.0  # of a storey above, this much is drawn over its floor


@dataclass(frozen=True)
class CutAway:
    """Where the picture is cut open.

    `front_in` is the plane y = front_in in the room beyond which nothing is drawn; `duct_in` the plane in front of which members along the wall would hide the duct; `roof_in` where deck and covering end already, so that
    the cap is seen over them; `top_in` the height above which nothing of the house is drawn; `open_x` the stretch of the hood wall and ceiling whose board is taken off, from
    `open_z` up.
    """

    front_in: float
    duct_in: float
    roof_in: float
    top_in: float
    open_x: tuple[float, float]
    open_z: float
    draw_front: bool
    through: frozenset[str]  # ids of solids that the route passes, whose space is drawn whole


def _route_bounds(plan: Plan) -> tuple[Polyline, Polyline] | None:
    best = plan.best
    if best is None or not best.route.parts:
        return None
    points = np.array([p for part in best.route.parts for p in (part.start, part.end)])
    return points.min(axis=0), points.max(axis=0)


def _free_stretch(plan: Plan, wanted: tuple[float, float]) -> tuple[float, float]:
    """Keep the opening in the board off windows, doors and cabinets of the hood wall, where the hood allows."""
    scene = plan.scene
    lo, hi = wanted
    left, right = scene.hood.centre_in - scene.hood.width_in / 2, scene.hood.centre_in + scene.hood.width_in / 2
    spans = [(o.left_in - 3, o.left_in + o.width_in + 3) for o in scene.wall(WallSide.HOOD).openings]
    spans += [
        (t.left_in, t.left_in + t.width_in)
        for t in scene.obstacles
        if -6 < t.out_in < 6 and t.bottom_in < scene.kitchen.ceiling_in - 12
    ]
    for a, b in spans:
        if b <= left + 1:
            lo = max(lo, b + 2.5)
        elif a >= right - 1:
            hi = min(hi, a - 2.5)
    width = scene.kitchen.width_in
    return max(lo, 5.0), min(hi, width - 5.0)


def _first_web(plan: Plan) -> float:
    """Give how far out the first web of trusses that run out from the wall ends [in], a little more; 0 without such trusses.

    Cut off in front of it, a truss would look like a joist with a rafter over it.
    """
    ends = [
        -bounds(s.shape).lo[1] for s in plan.frame.solids
        if s.kind is SolidKind.WEB and s.member is not None and s.member.axis == 1
    ]  # fmt: skip
    return min(ends, default=-6.0) + 6.0


def cut_away(plan: Plan, *, reach: tuple[float, float] | None = None) -> CutAway:
    """Choose where to cut the picture open so that the hood, the duct and all that it meets can be seen.

    Parameters
    ----------
    plan : Plan
        The plan to show.
    reach : tuple of float, optional
        Least and greatest hood centre that the picture must serve [in]; the hood's own place when left out.
    """
    scene = plan.scene
    places = reach or (scene.hood.centre_in, scene.hood.centre_in)
    half = scene.hood.width_in / 2 + 18
    lo, hi = _free_stretch(plan, (places[0] - half, places[1] + half))
    depth = max(36.0, scene.hood.depth_in + 12)
    bounds_of = _route_bounds(plan)
    far = scene.kitchen.depth_in
    through: frozenset[str] = frozenset()
    top = scene.kitchen.ceiling_in + 40 if scene.above.kind.value in ("storey", "slab") else 1e6
    if scene.above.kind.value in ("storey", "slab"):
        floor = max((s.shape.hi[2] for s in plan.frame.solids if s.kind in (SolidKind.SUBFLOOR, SolidKind.SLAB)
                     and isinstance(s.shape, Box)), default=scene.kitchen.ceiling_in)  # fmt: skip
        top = floor + _SILENT_ABOVE_IN
    if bounds_of is not None and plan.best is not None:
        low, high = bounds_of
        radius = plan.best.route.section.width_in
        depth = max(depth, -low[1] + radius + 6)
        lo, hi = min(lo, max(3.0, low[0] - radius)), max(hi, min(scene.kitchen.width_in - 3, high[0] + radius))
        through = frozenset(p.solid for p in plan.best.route.penetrations)
        top = max(top, high[2] + 10)
    sides = {plan.frame.solid(i).side for i in through if i in plan.frame._index}
    bottom = (scene.hood_bottom_in or scene.cooktop.height_in + 30) - 5
    depth = max(depth, _first_web(plan))
    front = -min(depth, far)
    roof = front
    if plan.best is not None and plan.best.route.termination.kind is FaceKind.ROOF:
        roof = max(front, plan.best.route.termination.point[1] - plan.best.route.section.width_in - 5)
    elif plan.best is None:
        roof = max(front, -scene.hood.depth_in - 4)
    near = -scene.hood.outlet.out_in - scene.duct.sections[0].width_in / 2
    if bounds_of is not None:
        near = min(near, float(bounds_of[0][1]) - 4)
    return CutAway(front, near - 1.0, roof, top, (lo, hi), bottom, WallSide.FRONT in sides, through)


def _layer(solid: Solid) -> Layer:
    if solid.space not in ("kitchen", "attic", "outdoors"):
        return Layer.BEYOND
    if solid.kind in RAFTER_KINDS:
        return Layer.FRAMING
    if solid.kind in (SolidKind.DECK, SolidKind.COVERING, SolidKind.EAVE):
        return Layer.ROOF
    if solid.kind in _MEMBERS:
        return Layer.FRAMING
    if solid.kind in (SolidKind.BOARD, SolidKind.SUBFLOOR, SolidKind.SLAB):
        return Layer.BOARD
    return Layer.SKIN


def _wanted(solid: Solid, plan: Plan, cut: CutAway) -> bool:
    """Whether a solid is drawn at all."""
    if solid.kind in _ELSEWHERE:
        return False
    if _is_front(solid):
        return cut.draw_front
    if solid.space in ("kitchen", "attic"):
        return True
    kinds = {s.id: s.kind for s in plan.scene.spaces}
    if kinds.get(solid.space) in (SpaceKind.GARAGE, SpaceKind.PORCH, SpaceKind.ROOM, SpaceKind.CRAWL):
        return solid.kind in _MEMBERS or solid.id in cut.through
    return True


def _clip(slab: Slab, solid: Solid, cut: CutAway) -> Slab | None:
    kept: Slab | None = slab
    if not cut.draw_front and not _is_front(solid):
        front = _roof_edge(solid, cut) if solid.kind in (SolidKind.DECK, SolidKind.COVERING) else cut.front_in
        kept = slab.clip(1, max(front, cut.front_in), 1e6)
    return None if kept is None else kept.clip(2, -1e6, cut.top_in)


def _is_front(solid: Solid) -> bool:
    return solid.side is WallSide.FRONT and solid.space in ("kitchen", "attic")


def _roof_edge(solid: Solid, cut: CutAway) -> float:
    """Give where a roof sheet is cut: the deck reaches a little past the covering."""
    return max(cut.front_in, cut.roof_in - (3.5 if solid.kind is SolidKind.DECK else 0.0))


def _cut_off(solid: Solid, slab: Slab, cut: CutAway) -> Iterator[Piece]:
    """Give what the cut takes off the outer skin and the roof's covering, for who looks at them from outdoors."""
    outer = solid.kind in (SolidKind.COVERING, SolidKind.CLADDING, SolidKind.MASONRY)
    if not outer or cut.draw_front or slab.axis == 2 or solid.space not in ("kitchen", "attic"):
        return
    covering = solid.kind is SolidKind.COVERING
    rest = slab.clip(1, -1e6, _roof_edge(solid, cut) if covering else cut.front_in)
    if rest is None:
        return
    if covering:
        for piece in _courses(solid, rest):
            yield replace(piece, name=f"{piece.name}-outer", layer=Layer.OUTER)
        return
    yield Piece(f"{solid.id}-outer", solid.label, Layer.OUTER, sheet_material(solid), rest.mesh(), solid=solid.id,
                lines=laps(rest, solid.side) if "siding" in solid.material else ())  # fmt: skip


def _opened(slab: Slab, solid: Solid, plan: Plan, cut: CutAway) -> list[Slab]:
    """Take the board off where the framing should be seen."""
    if solid.kind is not SolidKind.BOARD or solid.space != "kitchen":
        return [slab]
    x0, x1 = cut.open_x
    if solid.side is WallSide.HOOD and slab.axis == 1:
        edge = rough_outline(x0, x1, cut.open_z, plan.scene.kitchen.ceiling_in + 4, open_top=True)
        return [s for s in [slab.minus(edge)] if s is not None]
    if solid.side is None:
        return [s for s in (slab.clip(0, -1e6, x0 - 9), slab.clip(0, x1 + 9, 1e6)) if s is not None]
    found: Slab | None = slab
    for hole in plan.best.route.penetrations if plan.best is not None else ():
        axis = int(np.argmax(np.abs(hole.direction)))
        if found is not None and hole.solid == solid.id and axis == slab.axis:
            u, v = (hole.centre[a] for a in (0, 1, 2) if a != axis)
            grow = max(hole.size_in) / 2 + 7
            found = found.minus(rough_outline(u - grow, u + grow, v - grow, v + grow, open_top=False))
    return [] if found is None else [found]


def _sheet_slab(solid: Solid) -> Slab:
    """Sweep a sheet along its thinnest side, so that sheets in one plane can be joined."""
    if isinstance(solid.shape, Box):
        sizes = [b - a for a, b in zip(solid.shape.lo, solid.shape.hi, strict=True)]
        return slab_of(solid.shape, along=int(np.argmin(sizes)))
    return slab_of(solid.shape)


def _key(solid: Solid, slab: Slab) -> tuple[str, ...]:
    """Sheets with one key lie in one plane and are drawn as one; roof slopes stay apart."""
    if solid.kind in (SolidKind.DECK, SolidKind.COVERING):
        return (solid.id,)
    place = (str(slab.axis), f"{slab.start:.4f}", f"{slab.end:.4f}")
    return (solid.kind.value, str(solid.side), solid.space, solid.material, *place)


def sheet_material(solid: Solid) -> str:
    """Name the finish of a sheet of board, skin or roof."""
    if solid.kind is SolidKind.MASONRY and "concrete" in solid.material:
        return "concrete"
    if solid.kind is SolidKind.MASONRY and "log" in solid.material:
        return "beam"
    return _SHEETS[solid.kind]


def _sheets(plan: Plan, cut: CutAway) -> Iterator[Piece]:
    planes: dict[tuple[str, ...], list[tuple[Solid, Slab]]] = {}
    for solid in plan.frame.solids:
        if solid.kind in _SHEETS and _wanted(solid, plan, cut):
            slab = _sheet_slab(solid)
            planes.setdefault(_key(solid, slab), []).append((solid, slab))
    for found in planes.values():
        first, slab = found[0]
        outline: BaseGeometry = shapely.union_all([s.outline for _, s in found])
        whole = replace(slab, outline=shapely.set_precision(outline, 1e-6).simplify(1e-6))
        yield from _cut_off(first, whole, cut)
        clipped = _clip(whole, first, cut)
        for k, kept in enumerate([] if clipped is None else _opened(clipped, first, plan, cut)):
            name = first.id if k == 0 else f"{first.id}-part-{k + 1}"
            if first.kind is SolidKind.COVERING and kept.axis != 2:
                yield from _courses(first, kept)
                continue
            siding = first.kind is SolidKind.CLADDING and "siding" in first.material
            yield Piece(name, first.label, _layer(first), sheet_material(first), kept.mesh(), solid=first.id,
                        lines=laps(kept, first.side) if siding else ())  # fmt: skip


def laps(slab: Slab, side: WallSide | None) -> tuple[Polyline, ...]:
    """Give the level lines of lap siding on its outer face."""
    if slab.axis == 2:
        return ()
    other = 0 if slab.axis == 1 else 1
    outer = slab.start - 0.04 if side in (WallSide.LEFT, WallSide.FRONT) else slab.end + 0.04
    u0, z0, u1, z1 = slab.outline.bounds
    lines = []
    for z in np.arange(z0 + 5, z1, 5.0):
        seen = slab.outline.intersection(shapely.LineString([(u0 - 1, z), (u1 + 1, z)]))
        for line in getattr(seen, "geoms", [seen]):
            if line.geom_type == "LineString" and line.length > 0.5:
                ends = np.zeros((2, 3))
                ends[:, other] = [c[0] for c in line.coords]
                ends[:, 2] = z
                ends[:, slab.axis] = outer
                lines.append(ends)
    return tuple(lines)


def _courses(solid: Solid, slab: Slab) -> Iterator[Piece]:
    """Show a roof covering as overlapping courses from the eave up."""
    u0, _, u1, _ = slab.outline.bounds
    count = max(1, round((u1 - u0) / 5.6))
    edges = np.linspace(u0, u1, count + 1)
    slope_axis = 1 if slab.axis == 0 else 0
    for k, (a, b) in enumerate(pairwise(edges)):
        part = slab.clip(slope_axis, float(a), float(b))
        if part is None:
            continue
        lift = _lapped(part.outline)
        yield Piece(f"{solid.id}-course-{k + 1}", solid.label, Layer.ROOF, "covering b" if k % 2 else "covering a",
                    replace(part, outline=lift).mesh(), solid=solid.id)  # fmt: skip


def _lapped(outline: BaseGeometry) -> BaseGeometry:
    """Raise the lower end of a course so that it lies over the next one."""
    u0, _, u1, _ = outline.bounds
    ends = {}
    for u in (u0, u1):
        cut = outline.intersection(shapely.LineString([(u, -1e4), (u, 1e4)]))
        ends[u] = (cut.bounds[1], cut.bounds[3])
    low = min(ends, key=lambda u: ends[u][1])
    points = [(u0, ends[u0][0]), (u1, ends[u1][0]), (u1, ends[u1][1] + (0.45 if u1 == low else 0.0)),
              (u0, ends[u0][1] + (0.45 if u0 == low else 0.0))]  # fmt: skip
    return shapely.Polygon(points)


def _cut_through(slab: Slab, axis: int, at: float) -> list[tuple[float, float, float, float]]:
    """Give what a member that runs along `axis` shows where it is cut at a place: (across, across, z, z) of each part."""
    across = 1 - axis
    if slab.axis == 2:
        return []
    u0, _, u1, _ = slab.outline.bounds
    place = at if slab.axis == across else u0 + 1e-6
    sides = (slab.start, slab.end) if slab.axis == across else (u0, u1)
    seen = slab.outline.intersection(shapely.LineString([(place, -1e4), (place, 1e4)]))
    return [(*sides, p.bounds[1], p.bounds[3]) for p in getattr(seen, "geoms", [seen]) if p.length > 1e-6]


def _crosses(slab: Slab, axis: int, at: float, drawn_at: float) -> tuple[Polyline, ...]:
    """Give the framer's X over each part of a member's end."""
    found = []
    for a0, a1, z0, z1 in _cut_through(slab, axis, at):
        for ends in (((a0, z0), (a1, z1)), ((a1, z0), (a0, z1))):
            found.append(np.array([[drawn_at, a, z] if axis == 0 else [a, drawn_at, z] for a, z in ends]))
    return tuple(found)


def _end_grain(solid: Solid, slab: Slab) -> tuple[Polyline, ...]:
    """Give the framer's X on the end that faces the room, where a member is seen end-on."""
    if solid.member is None or solid.member.axis != 1 or slab.axis == 2:
        return ()
    y = slab.start if slab.axis == 1 else slab.outline.bounds[0]
    return _crosses(slab, 1, y + 1e-6, y - 0.06)


def _hides(solid: Solid, cut: CutAway) -> bool:
    """Whether a ceiling member that runs along the wall stands between the viewer and the duct."""
    if solid.member is None or solid.member.axis != 0 or solid.space not in ("kitchen", "attic"):
        return False
    ceiling = solid.kind in (SolidKind.JOIST, SolidKind.BLOCKING, SolidKind.CHORD, SolidKind.RAFTER, SolidKind.WEB)
    return ceiling and bounds(solid.shape).hi[1] < cut.duct_in


def _stubs(solid: Solid, slab: Slab, cut: CutAway) -> Iterator[tuple[Slab, tuple[Polyline, ...]]]:
    """Cut a member that hides the duct back to both sides of the opening, with end grain on the cut."""
    for low, high in ((-1e6, cut.open_x[0] - 9), (cut.open_x[1] + 9, 1e6)):
        part = slab.clip(0, low, high)
        if part is not None:
            x, inwards = (high, -1) if low < -1e5 else (low, 1)
            shown = solid.kind in (SolidKind.JOIST, SolidKind.BLOCKING)
            yield part, _crosses(part, 0, x + inwards * 1e-6, x - inwards * 0.06) if shown else ()


def _members(plan: Plan, cut: CutAway) -> Iterator[Piece]:
    for solid in plan.frame.solids:
        if solid.kind not in _MEMBERS or not _wanted(solid, plan, cut):
            continue
        kept = _clip(member_slab(solid, plan), solid, cut)
        if kept is None:
            continue
        material = "steel member" if "steel" in solid.material else _MEMBERS[solid.kind]
        shown = list(_stubs(solid, kept, cut)) if _hides(solid, cut) else [(kept, _end_grain(solid, kept))]
        for k, (part, lines) in enumerate(shown):
            name = solid.id if k == 0 else f"{solid.id}-part-{k + 1}"
            yield Piece(name, solid.label, _layer(solid), material, part.mesh(), solid=solid.id, lines=lines)


def _cut_caps(plan: Plan, cut: CutAway) -> Iterator[Piece]:
    """Paint the cut through the side walls as one calm surface."""
    scene = plan.scene
    if cut.draw_front:
        return
    width = scene.kitchen.width_in
    for side, x0, x1 in (
        (WallSide.LEFT, -scene.wall(WallSide.LEFT).thickness_in, 0.0),
        (WallSide.RIGHT, width, width + scene.wall(WallSide.RIGHT).thickness_in),
    ):
        if cut.front_in <= -scene.kitchen.depth_in:
            continue
        mesh = box(x0, x1, cut.front_in - 0.08, cut.front_in - 0.02, 0.0, scene.kitchen.ceiling_in)
        yield Piece(f"cut-{side}", f"cut through the {side} wall", Layer.BOARD, "cut wall", mesh)


def house_pieces(plan: Plan, cut: CutAway) -> list[Piece]:
    """Give walls, ceiling, framing and roof as pieces, cut open as `cut` says."""
    return [*_sheets(plan, cut), *_members(plan, cut), *_cut_caps(plan, cut)]


def member_numbers(plan: Plan, cut: CutAway) -> list[MemberNumber]:
    """Give the numbers that stand under the ends of joists (or trusses) that run out from the hood wall."""
    found = []
    for solid in plan.frame.solids:
        member = solid.member
        if (
            solid.kind not in (SolidKind.JOIST, SolidKind.CHORD) or member is None or member.axis != 1
            or not member.number or solid.space != "kitchen" or isinstance(solid.shape, Prism)
        ):  # fmt: skip
            continue
        shape = solid.shape
        if not isinstance(shape, Box) or not solid.origin.startswith("ceiling"):
            continue
        place = ((shape.lo[0] + shape.hi[0]) / 2, max(shape.lo[1], cut.front_in), shape.lo[2])
        found.append(MemberNumber(str(member.number), place, solid.id, solid.label[:1].upper()))
    return found


def stud_numbers(plan: Plan) -> list[MemberNumber]:
    """Give the numbers of the hood wall's studs and strips, to be written on them where they are bared."""
    found = []
    bottom = plan.scene.hood_bottom_in or plan.scene.cooktop.height_in + 30
    for solid in plan.frame.solids:
        if (
            solid.kind not in (SolidKind.STUD, SolidKind.FURRING)
            or solid.side is not WallSide.HOOD
            or solid.space != "kitchen"
        ):
            continue
        if solid.member is None or not solid.member.number or not isinstance(solid.shape, Box):
            continue
        lo, hi = solid.shape.lo, solid.shape.hi
        heights = np.arange(hi[2] - 6.0, max(lo[2], bottom + 4.0), -4.0)
        places = [((lo[0] + hi[0]) / 2, y, float(z)) for y in (lo[1] - 0.02, hi[1] + 0.02) for z in heights]
        if places:
            found.append(MemberNumber(str(solid.member.number), places[0], solid.id, solid.label[:1].upper(), tuple(places[1:]),
                                      _ON_FACE_IN, 0.0))  # fmt: skip
    return found
