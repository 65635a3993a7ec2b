"""A wall from outdoors: where it ends and where it goes on, and sizes from what a tape can hook on."""

from __future__ import annotations

from routeviz.drawings import palette as ink
from routeviz.drawings.flat import Outline, clipped, cut, ends_of, outlines
from routeviz.drawings.house import View
from routeviz.drawings.primitives import Anchor, Point
from routeviz.drawings.sketch import Sketch
from routeviz.drawings.words import figure
from routeviz.model.plan import Plan
from routeviz.model.scene import AboveKind, Scene
from routeviz.model.solids import OPENING_KINDS, ExitFace, FaceKind, Frame, Solid, SolidKind, WallEnd
from routeviz.model.spoken import spoken

__all__ = ["draw_wall", "floor_of", "openings_on", "wall_distances", "wall_extent"]

_ROOFING = (SolidKind.DECK, SolidKind.COVERING)
_SKINS = (SolidKind.CLADDING, SolidKind.MASONRY)
_BRICK_IN = 8.0 / 3.0  # three courses in 8 in, joints included; common practice
_GOES_ON_IN = 6.0  # so far a wall is drawn past the end of what is known of it
_COURSE = "#d8d2c6"
_LIVED_IN = (AboveKind.STOREY, AboveKind.SLAB)
_SAME_IN = 1 / 16  # heights that differ by less are level with one another


def floor_of(face: ExitFace, scene: Scene) -> tuple[float, str]:
    """Give the height of the floor that heights on a face count from [in], and whose floor it is."""
    space = next((s for s in scene.spaces if s.id == face.owner), None)
    return (space.floor_in, f"{spoken(space.id)} floor") if space is not None else (0.0, "kitchen floor")


def wall_extent(face: ExitFace) -> tuple[Point, Point]:
    """Give the low and high corner of what is drawn of a wall's face [in]: out to its corners, else past what is known."""
    low, high = (
        end.at_in if end.hooks else at + sign * _GOES_ON_IN
        for end, at, sign in zip(_ends(face), (face.lo[0], face.hi[0]), (-1.0, 1.0), strict=True)
    )
    return (low, face.lo[1]), (high, face.hi[1])


def _ends(face: ExitFace) -> tuple[WallEnd, WallEnd]:
    if len(face.ends) == 2:
        return face.ends[0], face.ends[1]
    return WallEnd("end of what is known", face.lo[0], hooks=False), WallEnd(
        "end of what is known", face.hi[0], hooks=False
    )


def draw_wall(sketch: Sketch, view: View, face: ExitFace, plan: Plan) -> None:
    """Draw the wall's face under the roof's own line, with level courses and its openings, and the floor's level."""
    frame, (level, floor) = plan.frame, floor_of(face, plan.scene)
    rings = [
        ring
        for s in frame.solids
        if s.kind in _ROOFING
        for ring in cut(s.shape, face.axis, face.at_in - 0.3 * face.sign)
    ]
    step = _course_in(face, frame)
    for whole in _under_roof(face, level, rings):
        for piece in clipped(whole, view.region):
            sketch.path([view.at(*p) for p in piece], 0.0, fill=ink.CABINET, closed=True)
            low, high = min(p[1] for p in piece), max(p[1] for p in piece)
            for n in range(1, int(high / step) + 1 if step else 0):
                if low < n * step < high:
                    _course(sketch, view, piece, n * step)
            _edges(sketch, view, face, piece, plan.scene.above.kind)
    for ring in rings:
        for part in clipped(ring, view.region):
            sketch.path([view.at(*p) for p in part], ink.HAIR, fill=ink.ROOF, closed=True)
    kept = {t.id for t in face.keep_outs}
    for solid in openings_on(face, frame):
        (u0, u1), (v0, v1) = _span(solid, face)
        for piece in clipped(((u0, v0), (u1, v0), (u1, v1), (u0, v1)), view.region) if solid.id not in kept else ():
            sketch.path([view.at(*p) for p in piece], ink.MEDIUM, fill=ink.GLASS, closed=True, name=solid.id)
    a, b = view.at(view.region[0], level), view.at(view.region[2], level)
    sketch.line(a, b, ink.HEAVY)
    left, right = sorted((a[0], b[0]))
    sketch.hatch(((left, a[1]), (right, a[1]), (right, a[1] - 1.6), (left, a[1] - 1.6)), 1.6)
    place = ((left + 1.0, a[1] - 5.0), Anchor.LEFT)
    sketch.label([place], f"level of the {floor}; the ground lies lower", ink.LEAST, colour=ink.INK2)


def openings_on(face: ExitFace, frame: Frame) -> list[Solid]:
    """Give the windows and doors of the wall whose outer face it is."""
    along = 1 - face.axis
    found = []
    for solid in frame.solids:
        if solid.kind not in OPENING_KINDS:
            continue
        own = solid.side is face.side if face.side is not None else solid.space == face.owner
        low, high = ends_of(solid.shape, face.axis)
        inside = ends_of(solid.shape, along)[0] < face.hi[0] and ends_of(solid.shape, along)[1] > face.lo[0]
        if own and inside and low - 12.0 <= face.at_in <= high + 12.0:
            found.append(solid)
    return found


def _span(solid: Solid, face: ExitFace) -> tuple[tuple[float, float], tuple[float, float]]:
    return ends_of(solid.shape, 1 - face.axis), ends_of(solid.shape, 2)


def _edges(sketch: Sketch, view: View, face: ExitFace, piece: Outline, above: AboveKind) -> None:
    """Draw the wall's own edges firm, and a break line where it goes on: to the sides, and up where people live above."""
    left, _, right, top = view.region
    low, high = _ends(face)
    corners = {end.at_in for end in (low, high) if end.hooks}
    for a, b in zip(piece, (*piece[1:], piece[0]), strict=True):
        upright, level = abs(a[0] - b[0]) < 1e-6, abs(a[1] - b[1]) < 1e-6
        at_side = min(abs(a[0] - u) for u in (left, right, *wall_extent(face)[0][:1], *wall_extent(face)[1][:1])) < 1e-6
        open_side = upright and at_side and all(abs(a[0] - c) > 1e-6 for c in corners)
        cut_off = abs(a[1] - top) < 1e-6 and face.hi[1] > top + 1e-6
        goes_on = face.side is not None and above in _LIVED_IN and abs(a[1] - face.hi[1]) < 1e-6
        open_top = level and (cut_off or goes_on)
        if open_side or open_top:
            _broken(sketch, view.at(*a), view.at(*b))
        elif not (level and abs(a[1] - min(p[1] for p in piece)) < 1e-6):  # below lies the floor's line
            sketch.line(view.at(*a), view.at(*b), ink.MEDIUM)


def _broken(sketch: Sketch, a: Point, b: Point) -> None:
    """Draw the line with zigzags that says: it goes on."""
    (x, y), (dx, dy) = a, (b[0] - a[0], b[1] - a[1])
    long = max((dx * dx + dy * dy) ** 0.5, 1e-9)
    ex, ey = dx / long, dy / long
    count = max(1, int(long / 30.0))
    points = [a]
    for n in range(count):
        at = long * (n + 0.5) / count
        points += [(x + ex * (at + s) - ey * t, y + ey * (at + s) + ex * t) for s, t in ((-1.2, 0.0), (-0.4, 1.2), (0.4, -1.2), (1.2, 0.0))]  # fmt: skip
    sketch.path([*points, b], ink.FINE)
    sketch.taken.lines.append((*a, *b))  # no text over it, fine as it is


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


def _under_roof(face: ExitFace, floor: float, rings: list[Outline]) -> list[Outline]:
    """Take from the wall's rectangle what lies above the roof's underside."""
    from shapely import box, unary_union
    from shapely.geometry import MultiPoint

    (u0, v0), (u1, v1) = wall_extent(face)
    wall = box(u0, min(v0, floor), u1, v1)
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
        sketch.ground_line(view.at(a, level), view.at(b, level), colour=_COURSE)


# sizes ----------------------------------------------------------------------------------------------------------------
def wall_distances(sketch: Sketch, view: View, face: ExitFace, centre: Point, plan: Plan, half: float) -> float:
    """Dimension the cap's centre along the wall and up, from what there is outdoors; `half` is half the cap [in].

    Gives the side of the cap that stays free: -1 towards the low end, 1 towards the high one. Where nothing is cut, the
    height alone is said.
    """
    if plan.best is None:
        side = -1.0 if centre[0] < (view.region[0] + view.region[2]) / 2 else 1.0
        _above_floor(sketch, view, face, centre, plan.scene, side)
        return side
    side = _along(sketch, view, face, centre, plan)
    _above_floor(sketch, view, face, centre, plan.scene, side)
    _from_outdoors(sketch, view, face, centre, plan, (half, side))
    return side if openings_on(face, plan.frame) else -side


def _along(sketch: Sketch, view: View, face: ExitFace, centre: Point, plan: Plan) -> float:
    """Dimension along the wall: to the nearer corner, else to a jamb, else to a line that is measured indoors.

    Gives the side on which the height stands best: -1 at the low end, 1 at the high one.
    """
    u, v = centre
    left, _, right, _ = view.region
    scene, ends = plan.scene, _ends(face)
    below = v - 8.0
    corners = [e for e in ends if e.hooks and left <= e.at_in <= right]
    jambs = [
        (abs(u - at), at, s) for s in openings_on(face, plan.frame) for at in _span(s, face)[0] if left < at < right
    ]
    start: float | None = None
    end = min(corners or ends, key=lambda e: abs(u - e.at_in))
    if corners:
        at, words = end.at_in, f"{figure(abs(u - end.at_in), scene)} to the corner"
    elif jambs:
        gap, at, solid = min(jambs, key=lambda j: (j[0], j[1]))
        words, start = f"{figure(gap, scene)} to the jamb of the {_name(solid)}", _span(solid, face)[1][0]
    else:
        at, words = end.at_in, f"{figure(abs(u - end.at_in), scene)}, measured indoors"
    y = view.at(0.0, floor_of(face, scene)[0])[1] + 3.0
    inwards = view.at(at, 0)[0] > view.at(u, 0)[0]  # a short one's text stands on the wall, not over the other line
    from_y = (view.at(0, below)[1], y if start is None else view.at(0, start)[1])
    sketch.dim_across(view.at(u, 0)[0], view.at(at, 0)[0], y, words, from_y=from_y, left=inwards, halo=ink.CABINET)
    if not corners and not jambs:
        _line_indoors(sketch, view, face, end, (floor_of(face, scene)[0], v))
    return (-1.0 if at < u else 1.0) * (-1.0 if jambs and not corners else 1.0)


def _line_indoors(sketch: Sketch, view: View, face: ExitFace, end: WallEnd, levels: tuple[float, float]) -> None:
    """Draw and name the line indoors that a size outdoors counts from, since nothing marks it outdoors."""
    low, high = levels
    a, b = view.at(end.at_in, low), view.at(end.at_in, low + 0.5 * (high - low))
    sketch.line(a, b, ink.FINE, colour=ink.INK2, dash=ink.HIDDEN_DASH)
    more = "the house goes on" if face.side is not None else "the side wall's thickness comes on top"
    way = -1.0 if a[0] > (view.at(view.region[0], 0.0)[0] + view.at(view.region[2], 0.0)[0]) / 2 else 1.0
    places = [(b[0] + way * dx, b[1] - dy) for dy in (4.0, 9.0, 14.0) for dx in (5.0, 12.0, 20.0)]
    edge = view.at(view.region[0] if (way > 0) == (view.frame.flip > 0) else view.region[2], 0.0)[0]
    places += [(edge - way * dx, b[1] - dy) for dy in (0.0, 6.0, 12.0) for dx in (9.0, 14.0)]  # past the wall
    sketch.note((b[0], b[1] - 1.0), f"{end.label}; {more}", places, ink.LEAST, colour=ink.INK2, halo=ink.CABINET)


def _name(solid: Solid) -> str:
    return solid.label.partition(",")[0]


def _above_floor(sketch: Sketch, view: View, face: ExitFace, centre: Point, scene: Scene, side: float) -> None:
    u, v = centre
    level, floor = floor_of(face, scene)
    x = view.at(view.region[0] if side < 0 else view.region[2], 0.0)[0]
    x += -3.0 if x < view.at(u, 0.0)[0] else 3.0
    sketch.dim_up(view.at(0, level)[1], view.at(0, v)[1], x, f"{figure(v - level, scene)} above the {floor}",
                  from_x=view.at(u, 0)[0], right=x > view.at(u, 0)[0])  # fmt: skip


def _from_outdoors(
    sketch: Sketch, view: View, face: ExitFace, centre: Point, plan: Plan, place: tuple[float, float]
) -> None:
    """Dimension the height from an opening's head or sill, else from the wall's top, where either is shown."""
    (u, v), (half, side), scene = centre, place, plan.scene
    _, low, _, high = view.region
    found = [
        (abs(v - at), at, name, s)
        for s in openings_on(face, plan.frame)
        for at, name in zip(_span(s, face)[1], ("sill", "head"), strict=True)
        if low < at < high
    ]
    if found:
        gap, at, name, solid = min(found, key=lambda f: (f[0], f[1]))
        jamb = min(_span(solid, face)[0], key=lambda e: abs(u - e))
        way = 1.0 if jamb > u else -1.0
        x = view.at(jamb + way * 8.0, 0.0)[0]
        words = f"{figure(gap, scene)} {'above' if v > at else 'below'} the {name} of the {_name(solid)}"
        if gap < _SAME_IN:
            words = f"level with the {name} of the {_name(solid)}"
        _upright(sketch, view, (at, v), x, words, (x, view.at(u, 0.0)[0]), right=x > view.at(jamb, 0.0)[0])
        return
    if (
        face.kind is FaceKind.WALL
        and face.hi[1] <= high + 1e-6
        and any(k.kind == "eave" and k.lo[1] == face.hi[1] for k in face.keep_outs)
    ):
        x = view.at(u - side * (half + 6.0), 0.0)[0]
        words = f"{figure(face.hi[1] - v, scene)} below the top edge of the wall"
        _upright(sketch, view, (v, face.hi[1]), x, words, (view.at(u, 0.0)[0], x), right=x > view.at(u, 0.0)[0])


def _upright(
    sketch: Sketch,
    view: View,
    levels: tuple[float, float],
    x: float,
    words: str,
    from_x: tuple[float, float],
    *,
    right: bool,
) -> None:
    a, b = (view.at(0.0, level)[1] for level in levels)
    sketch.dim_up(a, b, x, words, from_x=from_x, right=right, halo=ink.CABINET)
