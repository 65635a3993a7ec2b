"""Flags, notes and dimensions: what the picture says, and where."""

from __future__ import annotations

import numpy as np

from routeviz.model.finding import State
from routeviz.model.plan import Plan
from routeviz.model.route import Near, PartKind, Route
from routeviz.model.solids import FaceKind, SolidKind, Vec3
from routeviz.units import length_text, quantity_text
from routeviz.views.caps import cap_top
from routeviz.views.furnishing import hood_bottom
from routeviz.views.parts import Dimension, Flag, Note
from routeviz.views.words import finding_short, route_title

__all__ = ["broken_ids", "flags", "notes", "place_of", "slack_dimensions"]

EVERYWHERE = frozenset({"room", "ceiling", "along", "outside"})
INSIDE = frozenset({"room", "ceiling", "along"})
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
                          _view_at(plan, place)))  # fmt: skip
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
    twins = [n for n in framing if abs(n.gap_in - tight.gap_in) < 1 / 32 and n.solid != tight.solid]
    also = f", and of {twins[0].label}" if twins else ""
    title = f"{length_text(tight.gap_in, metric=metric)} clear"
    return [Note(title, f"of {tight.label}{also}", (tight.at,), INSIDE)]


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
    return tuple(found)


def _cap_words(plan: Plan, route: Route) -> str:
    """Say from where the cap is measured."""
    x, y, z = route.termination.point
    metric = plan.scene.metric
    if route.termination.kind is FaceKind.ROOF:
        return f"{length_text(x, metric=metric)} from the left wall, {length_text(-y, metric=metric)} out"
    return f"centre {length_text(z, metric=metric)} above the floor"


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
        end = near.at
        start = tuple(e - t * near.gap_in for e, t in zip(end, near.toward, strict=True))
        found.append(Dimension(start, end, length_text(near.gap_in, metric=plan.scene.metric), INSIDE))  # type: ignore[arg-type]
    return tuple(found)
