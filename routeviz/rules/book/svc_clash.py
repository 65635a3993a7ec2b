"""Cables, pipes and ducts in the way."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from routeviz.model.finding import Finding
from routeviz.model.route import Penetration
from routeviz.model.solids import Box, Crossing, Solid, SolidKind
from routeviz.rules.bench import OUT, look, meets, near, straight_out
from routeviz.rules.context import Context
from routeviz.rules.cuts import extent, main_axis
from routeviz.rules.outcome import arithmetic, at_least
from routeviz.rules.registry import Rule, Scope
from routeviz.rules.sections import half_sizes
from routeviz.rules.touched import part_at, solid_of

_TELL_IN = 3.0  # services nearer than this are told even when they are clear


def _reach(context: Context, crossing: Penetration) -> float:
    """Give the half side of the duct [in] along which a service that it meets has the least way out of it."""
    solid, part = solid_of(context.frame, crossing.solid), part_at(context.the_route(), crossing)
    if solid is None or part is None:
        return min(crossing.size_in) / 2
    (lo, hi), middle, half = extent(solid.shape), crossing.centre, half_sizes(part)
    across = [a for a in range(3) if a != main_axis(crossing.direction)]
    way = min(across, key=lambda a: half[a] + min(middle[a] - lo[a], hi[a] - middle[a]))
    return half[way]


def judge(context: Context, rule: Rule) -> Iterator[Finding]:
    """Measure from the duct to every service, whose own clearance counts too."""
    route, told = context.the_route(), set()
    gaps = {n.solid: (n.gap_in, n.at) for n in route.near}
    for crossing in route.penetrations:
        gaps.setdefault(crossing.solid, (-_reach(context, crossing), crossing.centre))
    for name, (gap, place) in gaps.items():
        solid = solid_of(context.frame, name)
        if solid is None or solid.kind is not SolidKind.SERVICE or name in told:
            continue
        told.add(name)
        wanted = (context.limit("service_gap") or arithmetic("service_gap", 0.0)).number + solid.clearance_in
        if gap > wanted + _TELL_IN:
            continue
        limit = replace(context.limit("service_gap") or arithmetic("service_gap", 0.0), value=wanted)
        movable = solid.crossing is Crossing.RULE
        remedy = (
            "Have it moved by the licensed trade before the hole is cut."
            if movable
            else "Shift the duct past it; it may not be moved."
        )
        yield at_least(rule, limit, gap, where=(name,), place=place, title=f"{rule.title}: {solid.label}", remedy=remedy,
                       detail="power, gas or water off before cutting near it")  # fmt: skip


def _cable() -> Solid:
    return Solid("hood-cable-1", SolidKind.SERVICE, "cable 1", Box((59.5, 0.5, 40.0), (60.5, 6.0, 94.0)), Crossing.RULE,
                 "example", material="cable")  # fmt: skip


def _clear() -> Context:
    return look(solids=(_cable(),), route=straight_out(x=80.0, near=(near(_cable(), 2.0),)))


def _through() -> Context:
    return look(solids=(_cable(),), route=straight_out(penetrations=(meets(_cable(), OUT, (60.0, 3.0, 80.0), 8.5),)))


RULE = Rule(
    code="SVC-CLASH",
    title="Service in the way",
    scope=Scope.ROUTE,
    checks="The gap between the duct and cables, pipes, gas lines and return-air bays.",
    why="A saw finds them otherwise.",
    limits=("service_gap",),
    sources=(),
    applies="To every service that the scene lists near the route, with its own clearance.",
    blind="What is inside the wall and not in the scene. Look before you cut.",
    judge=judge,
    passing_words="A cable 2 in beside the hole.",
    passing=lambda: _clear(),
    failing_words="A cable right behind the hole.",
    failing=lambda: _through(),
)
