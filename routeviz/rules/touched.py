"""Which members a route cuts, with the ruling on each, and how a ruling reads as a finding."""

from __future__ import annotations

from collections.abc import Iterator

from routeviz.model.finding import Finding, MemberRuling, MemberVerdict, State
from routeviz.model.path import WhyNot
from routeviz.model.route import Part, Penetration, Route
from routeviz.model.scene import Scene
from routeviz.model.solids import Crossing, Frame, Solid, Vec3
from routeviz.rules.context import Context, close_amount
from routeviz.rules.cuts import Cut, cut_by, cut_of, cut_of_part, hole_box, main_axis, sleeve_in
from routeviz.rules.members import member_code, member_verdict
from routeviz.rules.outcome import EPSILON_IN, Named
from routeviz.rules.profiles import Profile
from routeviz.rules.sawn import doubled_in_a_row

__all__ = ["blocker_rulings", "cut_members", "part_at", "ruling_findings", "solid_of"]


def solid_of(frame: Frame, solid_id: str) -> Solid | None:
    """Give a solid by id, or None for things that are no solid (keep-outs, zones)."""
    try:
        return frame.solid(solid_id)
    except KeyError:
        return None


def part_at(route: Route, crossing: Penetration) -> Part | None:
    """Give the part that runs through a crossing, or None when none does."""
    axis = main_axis(crossing.direction)
    along = [p for p in route.parts if main_axis(p.direction) == axis and _between(p, crossing.centre, axis)]
    return next((p for p in along if p.wide is not None), along[0] if along else None)


def _between(part: Part, point: Vec3, axis: int) -> bool:
    lo, hi = sorted((part.start[axis], part.end[axis]))
    return lo - 1.0 <= point[axis] <= hi + 1.0


def cut_members(context: Context) -> Iterator[tuple[Solid, Cut]]:
    """Give every member that the route cuts, once, with what it takes out.

    These are the members that its centre line passes through and those that its body overlaps off its centre.
    """
    route, frame = context.the_route(), context.frame
    seen: set[str] = set()
    for crossing in route.penetrations:
        solid = solid_of(frame, crossing.solid)
        if solid is not None and member_code(solid) and solid.id not in seen:
            seen.add(solid.id)
            yield solid, cut_of(solid, crossing)
    parts = {p.id: p for p in route.parts}
    for close in route.near:
        solid, part = solid_of(frame, close.solid), parts.get(close.part)
        if solid is None or part is None or close.gap_in >= -EPSILON_IN or solid.id in seen or not member_code(solid):
            continue
        seen.add(solid.id)
        yield solid, cut_of_part(solid, part)


def _state(rule: Named, ruling: MemberRuling, solid: Solid) -> State:
    if ruling.verdict is MemberVerdict.NOT_ALLOWED:
        return State.BROKEN
    if ruling.verdict is MemberVerdict.DECIDED_ELSEWHERE:
        return State.BROKEN if solid.crossing is Crossing.NEVER else State.NOT_CHECKED
    if ruling.verdict is MemberVerdict.WITHIN:
        spare = 0.0  # where the rule is no number
        if ruling.allowed_in is not None and ruling.ours_in is not None:
            spare = ruling.allowed_in - ruling.ours_in
        if ruling.measure.startswith("wood left"):
            spare = -spare
        return State.CLOSE if spare < close_amount(rule.code, "in") - EPSILON_IN else State.FINE
    return State.FINE


def finding_of(rule: Named, ruling: MemberRuling, solid: Solid, place: Vec3 | None) -> Finding:
    """Give a ruling as a finding: the rule's number, ours, the spare and the way out."""
    edge = ruling.measure.startswith("wood left")
    known = ruling.allowed_in is not None and ruling.ours_in is not None
    ours = None if rule.code == "MBR-RIM" and not known else ruling.ours_in  # no number to set it against
    margin = None
    if ruling.allowed_in is not None and ruling.ours_in is not None:
        margin = ruling.ours_in - ruling.allowed_in if edge else ruling.allowed_in - ruling.ours_in
    state = _state(rule, ruling, solid)
    must = not (ruling.code == "MBR-RIM" and ruling.verdict is MemberVerdict.WITHIN)  # tolerated: a caution
    words = [f"{ruling.verdict.value}: {ruling.rule}", ruling.detail]
    # a cut along the whole section is broken however small the hole is: its number would read as spare
    if (state is State.BROKEN and margin is not None and margin >= 0) or state is State.NOT_CHECKED:
        margin, known = None, False
    return Finding(
        rule.code, f"Cut in {solid.label}", state, must, ours, ("at least" if edge else "at most") if known else "",
        ruling.allowed_in, margin, "in" if ours is not None else "", ruling.source, ruling.source_text,
        (solid.id,), place, "; ".join(w for w in words if w), ruling.remedy, ruling=ruling,
    )  # fmt: skip


def ruling_findings(context: Context, rule: Named) -> Iterator[Finding]:
    """Give the findings of one member rule on every member that the route cuts."""
    maker = context.scene.rules.maker
    ours = [(solid, cut) for solid, cut in cut_members(context) if member_code(solid) == rule.code]
    rows = doubled_in_a_row(ours, context.frame)
    for solid, cut in ours:
        ruling = member_verdict(
            solid, cut, context.profile, frame=context.frame, maker=maker, metric=context.scene.metric,
            in_a_row=rows.get(solid.id, 1),
        )  # fmt: skip
        if ruling is not None:
            yield finding_of(rule, ruling, solid, cut.place)


_WANTED_AXIS = {"straight up": 2, "straight back": 1}


def blocker_rulings(
    scene: Scene, frame: Frame, profile: Profile, why_not: tuple[WhyNot, ...]
) -> tuple[MemberRuling, ...]:
    """Say for every member that blocks a simpler route whether it may be cut for that route, each member once.

    Where the simpler route is told neither by direction nor by the blocker's axis, the duct is taken to run up.
    """
    found: dict[str, MemberRuling] = {}
    section = scene.duct.sections[0]
    for why in why_not:
        for blocker in (*why.blockers, *why.crossing):
            axis = _WANTED_AXIS.get(why.wanted, 2) if blocker.axis is None else blocker.axis
            solid = solid_of(frame, blocker.id)
            if solid is None or solid.id in found:
                continue
            hole = hole_box(blocker.at, axis, section, max(scene.duct.clearance_in, sleeve_in(solid) / 2))
            ruling = member_verdict(
                solid, cut_by(solid, hole, axis), profile, frame=frame, maker=scene.rules.maker, metric=scene.metric
            )
            if ruling is not None:
                found[solid.id] = ruling
    return tuple(found.values())
