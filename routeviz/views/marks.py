"""Flags, notes and dimensions: what the picture says, and where."""

from __future__ import annotations

import math
import re

import numpy as np

from routeviz.model.finding import State
from routeviz.model.plan import Plan
from routeviz.model.route import Near, Part, PartKind, Route
from routeviz.model.solids import FaceKind, Solid, SolidKind, Vec3
from routeviz.units import length_text, quantity_text
from routeviz.views.caps import cap_top
from routeviz.views.furnishing import hood_bottom
from routeviz.views.parts import Dimension, Flag, Note
from routeviz.views.words import finding_short, route_title
from routeviz.views.zones import zone_notes

__all__ = ["broken_ids", "flags", "notes", "place_of", "places_on", "slack_dimensions"]

EVERYWHERE = frozenset({"room", "ceiling", "along", "outside"})
INSIDE = frozenset({"room", "ceiling", "along"})
_SHEETS = {
    SolidKind.FLOOR, SolidKind.BOARD, SolidKind.SHEATHING, SolidKind.CLADDING, SolidKind.MASONRY, SolidKind.SLAB,
    SolidKind.DECK, SolidKind.COVERING, SolidKind.EAVE, SolidKind.SUBFLOOR,
}  # fmt: skip # their middle says nothing of where in them a finding is
# who stands in the room sees a thing's front first, then its sides; outdoors its back
_ROUND = ((0.0, -1.0, 0.0), (1.0, 0.0, 0.0), (-1.0, 0.0, 0.0), (0.0, 0.0, -1.0), (0.0, 0.0, 1.0), (0.0, 1.0, 0.0))
_UNDER = 0.98  # of the way from the axis to the skin: round parts are drawn with flat sides
_STRAIGHT = 0.99  # of a direction that follows an axis
_NEVER_BARRED = {
    SolidKind.HOOD, SolidKind.COVER, SolidKind.COOKTOP, SolidKind.COUNTER, SolidKind.FLOOR, SolidKind.GLAZING,
    SolidKind.DOOR, SolidKind.BOARD, SolidKind.SHEATHING, SolidKind.CLADDING, SolidKind.DECK, SolidKind.COVERING,
    SolidKind.EAVE, SolidKind.SUBFLOOR,
}  # fmt: skip


def _middle(plan: Plan, solid_id: str) -> Vec3 | None:
    """Give the middle of a member, or of the side that a thing in the room turns to who stands there."""
    solid = plan.frame._index.get(solid_id)
    if solid is None:
        return None
    from routeviz.geometry import bounds

    box = bounds(solid.shape)
    x, y, z = ((a + b) / 2 for a, b in zip(box.lo, box.hi, strict=True))
    return (x, y if solid.member is not None else box.lo[1], z)


def place_of(plan: Plan, where: tuple[str, ...], place: Vec3 | None) -> Vec3 | None:
    """Give the place of a finding: its own, or the middle of the first thing it names."""
    if place is not None:
        return place
    for solid_id in where:
        found = _middle(plan, solid_id)
        if found is not None:
            return found
    if plan.best is not None:
        for part in plan.best.route.parts:
            if part.id in where:
                return part.corner or tuple((np.array(part.start) + np.array(part.end)) / 2)
    return None


def places_on(plan: Plan, where: tuple[str, ...]) -> tuple[Vec3, ...]:
    """Give places on the skin of the duct's parts, members and things that a finding names, the middle first [in].

    Its own place may be hidden, or lie deep in the thing, where the thing itself is in full view.
    """
    found: list[Vec3] = []
    parts = {p.id: p for p in plan.best.route.parts} if plan.best is not None else {}
    for name in where:
        if name in parts:
            found += _on_part(parts[name])
        solid = plan.frame._index.get(name)
        if solid is not None and solid.kind not in _SHEETS:
            found += _on_solid(solid)
    return tuple(found)


def _on_part(part: Part) -> list[Vec3]:
    """Give places round a part of the duct at its middle, then towards its ends."""
    if part.length_in < 0.5:
        return []
    start, end = np.array(part.start), np.array(part.end)
    corner = (start + end) / 2 if part.corner is None else np.array(part.corner)
    turn = math.cos(math.radians(part.angle_deg) / 2)  # with this weight of its corner, the curve is the elbow's arc
    found = []
    for t in (0.5, 0.3, 0.7, 0.15, 0.85):
        shares = np.array([(1 - t) ** 2, 2 * t * (1 - t) * turn, t**2])
        axis = shares @ np.array([start, corner, end]) / shares.sum()
        way = (1 - t) * (corner - start) + t * (end - corner)
        for side in _ROUND:
            if abs(np.dot(side, way)) < 0.8 * np.linalg.norm(way):  # not into the part before or after it
                x, y, z = axis + np.array(side) * _half_in(part, t, side) * _UNDER
                found.append((float(x), float(y), float(z)))
    return found


def _half_in(part: Part, t: float, side: Vec3) -> float:
    """Give how far a part's skin is from its axis on one side, at a share of its length [in]."""
    flat = part.wide is not None and abs(np.dot(side, part.wide)) < 0.7
    first, last = (s.height_in if flat else s.width_in for s in (part.section, part.section_out))
    return ((1 - t) * first + t * last) / 2


def _on_solid(solid: Solid) -> list[Vec3]:
    """Give places along the sides of a member, or of a thing as it stands along the wall."""
    from routeviz.geometry import bounds

    box, axis = bounds(solid.shape), solid.member.axis if solid.member is not None else 0
    lo, hi = np.array(box.lo), np.array(box.hi)
    found = []
    for t in (0.5, 0.3, 0.7, 0.1, 0.9):
        for side in _ROUND:
            if abs(side[axis]) < 0.5:
                at = (lo + hi) / 2 + np.array(side) * (hi - lo) / 2
                at[axis] = lo[axis] + t * (hi[axis] - lo[axis])
                found.append((float(at[0]), float(at[1]), float(at[2])))
    return found


def _view_at(plan: Plan, place: Vec3 | None) -> str:
    if place is None:
        return "room"
    hood_wall = plan.scene.walls[0].thickness_in
    ceiling = plan.scene.kitchen.ceiling_in
    best = plan.best
    if best is not None and best.route.termination.kind is not None:
        away = np.linalg.norm(np.array(place) - np.array(best.route.termination.point))
        if away < 14:
            return "outside"
    if place[1] >= hood_wall - 0.5 or place[0] < -3 or place[0] > plan.scene.kitchen.width_in + 3:
        return "outside"
    return "ceiling" if place[2] > ceiling - 6 else "near"


def flags(plan: Plan) -> tuple[Flag, ...]:
    """Give a flag for every finding with a state that people act on; numbers count broken, close, then fine."""
    shown = [f for f in plan.all_findings if f.state in (State.BROKEN, State.CLOSE, State.FINE)]
    metric = plan.scene.metric
    found = []
    for number, finding in enumerate(shown, 1):
        place = place_of(plan, finding.where, finding.place)
        found.append(Flag(number, finding.state, finding.code, finding.title, finding_short(finding, metric=metric), place,
                          _view_at(plan, place), places_on(plan, finding.where)))  # fmt: skip
    return tuple(found)


def broken_ids(plan: Plan) -> frozenset[str]:
    """Give the ids of solids that a broken finding names, or that block the wanted duct when there is no route."""
    ids = {i for f in plan.all_findings if f.state is State.BROKEN and not f.waived for i in f.where}
    told = plan.paths.told_first
    if plan.best is None and told is not None:
        ids |= {b.id for b in told.blockers if b.kind == "solid"}
    return frozenset(i for i in ids if i in plan.frame._index and plan.frame.solid(i).kind not in _NEVER_BARRED)


def _duct_anchors(route: Route) -> tuple[Vec3, ...]:
    """Give places on the duct, the middle of the longest parts first."""
    parts = [p for p in route.parts if p.length_in > 1 and p.kind is not PartKind.TRANSITION]
    parts.sort(key=lambda p: (-p.length_in, p.id))
    spots: list[Vec3] = []
    for part in parts:
        a, b = np.array(part.start), np.array(part.end)
        side = route.section.width_in / 2
        for t in (0.5, 0.7, 0.3, 0.85, 0.15):
            middle = a + (b - a) * t
            spots.append((float(middle[0]), float(middle[1]) - side * 0.9, float(middle[2])))
    return tuple(spots)


def _near_notes(plan: Plan, route: Route) -> list[Note]:
    metric = plan.scene.metric
    framing = [n for n in route.near if n.gap_in < 12 and _is_member(plan, n)]
    if not framing:
        return []
    tight = min(framing, key=lambda n: (n.gap_in, n.solid))
    twins = [n for n in framing if abs(n.gap_in - tight.gap_in) < 1 / 32 and n.solid != tight.solid][:1]
    title = f"{length_text(tight.gap_in, metric=metric)} clear"
    pair = (tight, *twins)
    # where the gap is; else on its twin, or on the duct beside them, since a member before the duct may be cut away
    places = [n.at for n in twins] + [_skin(n) for n in pair]
    return [Note(title, f"of {_both(*(n.label for n in pair))}", (tight.at,), INSIDE, tuple(places))]


def _skin(near: Near) -> Vec3:
    """Give the end of a gap that lies on the duct."""
    return tuple(e - t * near.gap_in for e, t in zip(near.at, near.toward, strict=True))  # type: ignore[return-value]


def _both(first: str, second: str = "") -> str:
    """Name one or two members: "joist 4", "joists 4 and 5", "rafters 1 and 2, left slope", "joist 4, and of stud 5"."""
    if not second:
        return first
    a, b = (re.fullmatch(r"(.*[a-z]) (\d+)(|, .*)", words) for words in (first, second))
    if a and b and (a[1], a[3]) == (b[1], b[3]):
        return f"{a[1]}{'es' if a[1].endswith('s') else 's'} {a[2]} and {b[2]}{a[3]}"
    return f"{first}, and of {second}"


def _is_member(plan: Plan, near: Near) -> bool:
    solid = plan.frame._index.get(near.solid)
    return solid is not None and solid.member is not None


def notes(plan: Plan) -> tuple[Note, ...]:
    """Give the labels of a plan: duct, nearest member, mounting height, cap."""
    scene, best = plan.scene, plan.best
    metric = scene.metric
    found: list[Note] = []
    if best is not None:
        route = best.route
        length = length_text(route.length_in, metric=metric, long=True)
        reach = f"{length} from hood to {'cap' if route.capped else 'its end'}"
        found.append(Note(route_title(route, metric=metric), reach, _duct_anchors(route), EVERYWHERE))
        found += _near_notes(plan, route)
        kind = route.termination.kind
        if kind is not None:
            x, y, z = route.termination.point
            top = (x, y, cap_top(plan, route) - 2.5) if kind is FaceKind.ROOF else (x, y + 3, z)
            found.append(
                Note(
                    f"{'Cap on' if route.capped else 'Open end at'} {route.termination.label}",
                    _cap_words(plan, route),
                    (top,),
                    frozenset({"outside", "room"} if kind is FaceKind.ROOF else {"outside"}),
                )
            )
    mount = hood_bottom(plan) - scene.cooktop.height_in
    limit = next((f for f in plan.all_findings if f.unit == "in" and f.measured is not None and abs(f.measured - mount) < 1e-6
                  and f.limit is not None and f.relation == "at least"), None)  # fmt: skip
    text = (
        f"at least {quantity_text(limit.limit, 'in', metric=metric)}"
        if limit is not None and limit.limit is not None
        else "cooktop to hood"
    )
    left = (scene.cooktop.centre_in - scene.cooktop.width_in / 2, -scene.cooktop.back_in - scene.cooktop.depth_in,
            scene.cooktop.height_in + mount * 0.55)  # fmt: skip
    found.append(Note(f"{length_text(mount, metric=metric)} above the cooktop", text, (left,), frozenset({"room"})))
    return (*found, *zone_notes(plan))


def _cap_words(plan: Plan, route: Route) -> str:
    """Say from where the cap is measured."""
    x, y, z = route.termination.point
    metric = plan.scene.metric
    if route.termination.kind is FaceKind.ROOF:
        return f"{length_text(x, metric=metric)} from the left wall, {length_text(-y, metric=metric)} out"
    floor = "kitchen floor" if plan.scene.spaces else "floor"  # another space has one of its own
    return f"centre {length_text(z, metric=metric)} above the {floor}"


def _square(route: Route, near: Near, axis: int) -> bool:
    """Whether a gap can be dimensioned in a picture: straight across the duct and beside it, neither slanting nor behind."""
    part = next((p for p in route.parts if p.id == near.part), None)
    if part is None or abs(near.toward[axis]) < _STRAIGHT:
        return False
    along = max(abs(part.direction[axis]), abs(part.turn_to[axis]))
    behind = (
        axis == 1 and abs(part.direction[0]) < _STRAIGHT
    )  # only a run along the wall has its sides at front and back
    return along < 1 - _STRAIGHT and not behind


def slack_dimensions(plan: Plan) -> tuple[Dimension, ...]:
    """Give the clear distance each side of the duct where it passes between members."""
    best = plan.best
    if best is None:
        return ()
    found: list[Dimension] = []
    taken: set[tuple[int, int]] = set()
    for near in sorted(best.route.near, key=lambda n: (n.gap_in, n.solid)):
        axis = int(np.argmax(np.abs(near.toward)))
        if not _square(best.route, near, axis):
            continue
        sign = 1 if near.toward[axis] > 0 else -1
        if near.gap_in > 12 or near.gap_in < 0.01 or axis == 2 or (axis, sign) in taken or not _is_member(plan, near):
            continue
        taken.add((axis, sign))
        found.append(Dimension(_skin(near), near.at, length_text(near.gap_in, metric=plan.scene.metric), INSIDE))
    return tuple(found)
