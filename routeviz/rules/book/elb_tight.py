"""Elbows of too small a radius."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import replace

from routeviz.geometry.convex import dot, plus
from routeviz.model.finding import Finding
from routeviz.model.route import Part, PartKind
from routeviz.model.solids import Vec3
from routeviz.rules.bench import duct, look
from routeviz.rules.context import Context
from routeviz.rules.outcome import judge_number
from routeviz.rules.registry import Rule, Scope
from routeviz.rules.sections import half_along


def _inward(part: Part) -> Vec3:
    """Give the unit direction from an elbow's start to the middle of its arc."""
    square = plus(part.turn_to, part.direction, -dot(part.turn_to, part.direction))
    return plus((0.0, 0.0, 0.0), square, 1 / math.sqrt(dot(square, square)))


def judge(context: Context, rule: Rule) -> Iterator[Finding]:
    """Compare each elbow's centre-line radius with the duct's side in the plane of its turn; the tightest counts."""
    found = []
    for part in context.the_route().parts:
        if part.kind is PartKind.ELBOW and part.radius_in > 0:
            side = 2 * half_along(part, _inward(part))
            found.append((part.radius_in / side, part))
    if found:
        ratio, part = min(found, key=lambda f: f[0])
        yield from judge_number(rule, context, "elbow_ratio", ratio, "times the duct", where=(part.id,), place=part.corner or part.start,
                                remedy="Use long-radius elbows.")  # fmt: skip


def _with(radius_in: float) -> Context:
    route = duct(((60.0, -8.0, 77.5), (60.0, -8.0, 101.0), (110.0, -8.0, 101.0)))
    parts = tuple(replace(p, radius_in=radius_in) if p.angle_deg else p for p in route.parts)
    return look(route=replace(route, parts=parts))


RULE = Rule(
    code="ELB-TIGHT",
    title="Elbow radius",
    scope=Scope.ROUTE,
    checks="The centre-line radius of the tightest elbow, in duct widths.",
    why="A tight elbow loses two or three times the air of a gentle one.",
    limits=("elbow_ratio",),
    sources=(),
    applies="To every elbow whose radius is known.",
    blind="Vanes, and how smooth the elbow is inside.",
    judge=judge,
    passing_words="An 8 in elbow of 8 in radius.",
    passing=lambda: _with(8.0),
    failing_words="An 8 in elbow of 5 in radius.",
    failing=lambda: _with(5.0),
)
