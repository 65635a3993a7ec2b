"""Duct that touches wood."""

from __future__ import annotations

from collections.abc import Iterator

from routeviz.model.finding import Finding
from routeviz.rules.bench import joist, look, near, straight_up
from routeviz.rules.context import Context
from routeviz.rules.outcome import EPSILON_IN, judge_number
from routeviz.rules.registry import Rule, Scope
from routeviz.rules.touched import solid_of


def judge(context: Context, rule: Rule) -> Iterator[Finding]:
    """Take the least clear gap between the duct and a piece of timber that it does not pass through."""
    route = context.the_route()
    crossed = {p.solid for p in route.penetrations}
    found = []
    for close in route.near:
        solid = solid_of(context.frame, close.solid)
        if solid is None or solid.member is None or not solid.combustible or solid.id in crossed:
            continue
        if close.gap_in >= -EPSILON_IN:
            found.append(close)
    if not found:
        return
    least = min(found, key=lambda n: n.gap_in)
    yield from judge_number(
        rule, context, "duct_to_wood", max(0.0, least.gap_in), "in", where=(least.solid,), place=least.at,
        title=f"{rule.title}: {least.label}", remedy="Shift the duct off the wood a little.",
    )  # fmt: skip


RULE = Rule(
    code="CLR-DUCT",
    title="Duct beside wood",
    scope=Scope.ROUTE,
    checks="The least clear gap between the duct's surface and timber beside it.",
    why="No code for homes asks for a separation, but duct that touches wood rattles, and cannot be straightened later.",
    limits=("duct_to_wood",),
    sources=(),
    applies="To members near the route that it does not pass through. Overlaps are judged by the member rules.",
    blind="Insulation thickness, hangers and flanges.",
    judge=judge,
    passing_words="A duct 2 in clear of a joist.",
    passing=lambda: look(solids=(joist(4, 66.75),), route=straight_up(near=(near(joist(4, 66.75), 2.0),))),
    failing_words="A duct that touches a joist.",
    failing=lambda: look(solids=(joist(4, 64.75),), route=straight_up(near=(near(joist(4, 64.75), 0.0),))),
)
