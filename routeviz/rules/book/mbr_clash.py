"""Things that share a place with the duct, and members that it barely clears."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from routeviz.model.finding import Finding, State
from routeviz.model.route import Near
from routeviz.model.solids import Crossing, Solid, SolidKind, tolerance_in
from routeviz.rules.bench import joist, look, near, straight_up
from routeviz.rules.context import Context
from routeviz.rules.members import member_code
from routeviz.rules.outcome import EPSILON_IN, arithmetic, at_least
from routeviz.rules.registry import Rule, Scope
from routeviz.rules.touched import solid_of


def _blocks(solid: Solid) -> bool:
    return solid.crossing is Crossing.NEVER and solid.kind is not SolidKind.SERVICE


def judge(context: Context, rule: Rule) -> Iterator[Finding]:
    """Find overlaps that no member rule judges, and the member whose spare is least against its tolerance."""
    limit, fine = arithmetic("clear", 0.0), []
    crossed = {p.solid for p in context.the_route().penetrations}
    for close in context.the_route().near:
        solid = solid_of(context.frame, close.solid)
        if solid is None or not _blocks(solid):
            continue
        if close.gap_in < -EPSILON_IN:
            if not member_code(solid):
                found = at_least(rule, limit, close.gap_in, where=(solid.id,), place=close.at, remedy="Shift the duct past it.",
                                 title=f"Duct clear of {solid.label}")  # fmt: skip
                yield replace(found, title=f"Duct runs into {solid.label}", wish=found.title)
        elif solid.id not in crossed:
            fine.append((close.gap_in - tolerance_in(solid, context.scene.tolerances), close, solid))
    if fine:
        yield _nearest(context, rule, *min(fine, key=lambda f: f[0])[1:])


def _nearest(context: Context, rule: Rule, close: Near, solid: Solid) -> Finding:
    tolerance = tolerance_in(solid, context.scene.tolerances)
    found = at_least(rule, arithmetic("clear", 0.0), max(0.0, close.gap_in), where=(solid.id,), place=close.at,
                     title=f"Duct clear of {solid.label}")  # fmt: skip
    if close.gap_in < tolerance - EPSILON_IN:
        off = context.length(tolerance)
        return replace(
            found, state=State.CLOSE, detail=f"its place may be off by {off}", remedy="Measure it before cutting."
        )
    return replace(found, state=State.FINE, detail="the nearest thing that may not be cut", remedy="")


def _gap(gap_in: float) -> Context:
    pipe = replace(joist(4, 66.0), id="pipe", label="water pipe", kind=SolidKind.OBSTACLE, member=None)
    loose = replace(pipe, kind=SolidKind.GLAZING)
    return look(solids=(loose,), route=straight_up(near=(near(loose, gap_in),)))


RULE = Rule(
    code="MBR-CLASH",
    title="Duct clear of what must stay whole",
    scope=Scope.ROUTE,
    checks="Whether the duct overlaps something that may not be cut, and whether the nearest such thing is clear by more than it may be off.",
    why="Two things cannot share one place, and a member measured to half an inch may stand half an inch nearer.",
    limits=(),
    sources=("arithmetic",),
    applies="To every solid near the route. Cuts in framing members are judged by the rules of their kind.",
    blind="Things that the scene does not list.",
    judge=judge,
    passing_words="A duct 3 in clear of a window.",
    passing=lambda: _gap(3.0),
    failing_words="A duct 1 in into the same window.",
    failing=lambda: _gap(-1.0),
)
