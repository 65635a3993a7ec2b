"""What to measure before cutting: the numbers where the plan has the least room."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace

from routeviz.geometry import bounds
from routeviz.model.finding import Finding, State
from routeviz.model.members import together
from routeviz.model.route import Near, Route
from routeviz.model.scene import Scene
from routeviz.model.solids import (
    JOIST_KINDS,
    OPENING_KINDS,
    RAFTER_KINDS,
    STUD_KINDS,
    Frame,
    Solid,
    SolidKind,
    tolerance_in,
)
from routeviz.model.takeoff import MeasureFirst
from routeviz.takeoff.measure_hood import before_it_hangs, one_row_each
from routeviz.takeoff.within import Within, within
from routeviz.units import length_text

__all__ = ["measure_first", "ranked"]

_EDGE = {(0, 1): "left edge", (0, -1): "right edge", (1, 1): "face towards the room", (1, -1): "face towards the hood wall", (2, 1): "underside",
         (2, -1): "top"}  # fmt: skip
_MOST_SLACK_IN = 12.0
_MOST_LINES = 6
_BY_TAPE = (
    "HGT-CANOPY",
    "HGT-CABINET",
    "CLR-SIDE",
    "FIT-COVER",
    "FIT-ROOM",
    "TRM-",
)  # findings about what a tape reads
_THINGS = (SolidKind.CABINET, SolidKind.SOFFIT, SolidKind.SERVICE, SolidKind.OBSTACLE)


def measure_first(
    route: Route, scene: Scene, frame: Frame, findings: tuple[Finding, ...] = ()
) -> tuple[MeasureFirst, ...]:
    """Rank what to measure: what nobody measured, then by the slack that is left when a number is as far off as it may be.

    Solids beside the duct come from the gaps the route measured; heights and distances from findings that hold
    with a margin.
    """
    found = [m for n in _nearest(route, frame) if (m := _beside(n, scene, frame)) is not None]
    beside = {solid_id for m in found for solid_id in m.ids}
    found += [m for m in _heights(findings, scene, hangs=route.as_built) if not (set(m.ids) & beside)]
    return ranked(_merged(found))[:_MOST_LINES]


def ranked(lines: Iterable[MeasureFirst]) -> tuple[MeasureFirst, ...]:
    """Put first what nobody measured, then what has the least room."""
    return tuple(sorted(lines, key=lambda m: (not m.assumed_only, m.slack_in - m.tolerance_in, m.what)))


def _nearest(route: Route, frame: Frame) -> list[Near]:
    """The least gap to each solid that is fixed in the house (not to what the duct passes through)."""
    passed = {p.solid for p in route.penetrations}
    least: dict[str, Near] = {}
    for near in route.near:
        if near.solid in passed or near.gap_in > _MOST_SLACK_IN:
            continue
        if near.solid not in least or near.gap_in < least[near.solid].gap_in:
            least[near.solid] = near
    wanted = (*JOIST_KINDS, *RAFTER_KINDS, *STUD_KINDS, *OPENING_KINDS, *_THINGS)
    return [n for n in least.values() if frame.solid(n.solid).kind in wanted]


def _merged(found: list[MeasureFirst]) -> list[MeasureFirst]:
    """Join members that stand in line, such as a joist under its rafter: one tape reading answers for both."""
    alike: dict[tuple[str, str, float], list[MeasureFirst]] = {}
    for item in found:
        label, _, edge = item.what.rpartition(", ")
        alike.setdefault((edge if label else item.what, item.assumed, item.slack_in), []).append(item)
    return [_as_one(items) for items in alike.values()]


def _as_one(items: list[MeasureFirst]) -> MeasureFirst:
    """Say of members in line what is said of one of them; the least sure of them decides."""
    first = items[0]
    if len(items) == 1:
        return first
    edge = first.what.rpartition(", ")[2]
    return replace(
        first, what=f"{together(i.what.rpartition(', ')[0] for i in items)}, {edge}",
        ids=tuple(name for i in items for name in i.ids), tolerance_in=max(i.tolerance_in for i in items),
        assumed_only=any(i.assumed_only for i in items),
    )  # fmt: skip


def _beside(near: Near, scene: Scene, frame: Frame) -> MeasureFirst | None:
    solid = frame.solid(near.solid)
    axis = max(range(3), key=lambda k: abs(near.toward[k]))
    if abs(near.toward[axis]) < 0.999:
        return None  # no single face to hook a tape on
    sign = 1 if near.toward[axis] > 0 else -1
    box = bounds(solid.shape)
    lo, hi = box.lo, box.hi
    edge = lo[axis] if sign > 0 else hi[axis]
    slack = near.gap_in - max(scene.duct.clearance_in, solid.clearance_in)
    beyond = within(solid.space, scene, frame)
    if beyond is not None:
        value, limit = (beyond.measured(axis, at) for at in (edge, edge - sign * slack))
        reference, side = beyond.words(axis), beyond.side(axis, sign)
    else:
        value, limit, reference = _as_measured(axis, sign, edge, slack)
        side = "face away from the room" if axis == 1 and sign < 0 < edge else _EDGE[axis, sign]
    if limit < 0 < value:
        return None  # it would have to stand on the other side of its own wall
    change = _towards(axis, sign, edge, beyond)
    return MeasureFirst(
        what=f"{solid.label}, {side}",
        assumed=f"{length_text(value, metric=scene.metric)} {reference}",
        slack_in=slack,
        changes_at=f"{change} than {length_text(limit, metric=scene.metric)}",
        ids=(solid.id, near.part),
        tolerance_in=tolerance_in(solid, scene.tolerances),
        assumed_only=_assumed(solid, scene),
    )


def _towards(axis: int, sign: int, edge: float, beyond: Within | None) -> str:
    """Tell whether the tape reads more or less where a thing stands nearer to the duct, going to it along the axis."""
    against = beyond.sense[axis] < 0 if beyond is not None else axis == 1 and edge <= 0
    return "less" if (sign > 0) != against else "more"


def _as_measured(axis: int, sign: int, edge: float, slack: float) -> tuple[float, float, str]:
    """Give the edge, the place where it would meet the duct's clearance, and the words for the reference edge."""
    limit = edge - sign * slack
    if axis == 0:
        return edge, limit, "from the left wall"
    if axis == 2:
        return edge, limit, "above the floor"
    if edge <= 0:
        return -edge, -limit, "out from the hood wall"
    return edge, limit, "behind the hood wall's face"


def _assumed(solid: Solid, scene: Scene) -> bool:
    """Whether the scene field that the solid comes from, or one inside it, was assumed.

    A guessed centre in a list of centres concerns the one member that stands there.
    """
    origin = solid.origin
    at = f"{origin}.at."
    own = f"{at}{solid.member.number}" if solid.member is not None else at
    return bool(origin) and any(
        a.field == own
        or a.field == origin
        or (a.field.startswith(f"{origin}.") and not a.field.startswith(at))
        or origin.startswith(f"{a.field}.")
        for a in scene.assumptions
    )


def _heights(findings: tuple[Finding, ...], scene: Scene, *, hangs: bool) -> list[MeasureFirst]:
    found: list[MeasureFirst] = []
    for finding in findings:
        if (
            not finding.code.startswith(_BY_TAPE)
            or finding.unit != "in"
            or finding.margin is None
            or finding.measured is None
            or finding.limit is None
        ):
            continue
        if finding.state not in (State.FINE, State.CLOSE) or finding.margin > _MOST_SLACK_IN or finding.margin < 0:
            continue
        beyond = {"at least": "less than", "at most": "more than"}.get(finding.relation)
        if beyond is None or finding.ruling is not None:
            continue
        line = MeasureFirst(
            what=finding.title,
            assumed=length_text(finding.measured, metric=scene.metric),
            slack_in=finding.margin,
            changes_at=f"{beyond} {length_text(finding.limit, metric=scene.metric)}",
            ids=finding.where,
            tolerance_in=scene.tolerances.other_in,
        )
        found.append(line if hangs else before_it_hangs(finding, line, scene))
    return one_row_each(found)
