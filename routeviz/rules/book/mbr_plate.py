"""Plates that the duct cuts."""

from __future__ import annotations

from collections.abc import Iterator

from routeviz.model.finding import Finding
from routeviz.model.solids import Crossing, Solid, SolidKind, Vec3
from routeviz.rules.bench import UP, look, meets, member, straight_up
from routeviz.rules.context import Context
from routeviz.rules.registry import Rule, Scope
from routeviz.rules.touched import ruling_findings


def judge(context: Context, rule: Rule) -> Iterator[Finding]:
    """Judge every plate that the route cuts."""
    yield from ruling_findings(context, rule)


def _plate() -> Solid:
    return member("top-plate", SolidKind.PLATE, (0.0, 0.5, 94.5), (120.0, 4.0, 96.0), 0, "2x4", exterior=True,
                  crossing=Crossing.RULE)  # fmt: skip


def _run(direction: Vec3, size_in: tuple[float, float]) -> Context:
    hole = meets(_plate(), direction, (60.0, 2.25, 95.25), size_in)
    return look(solids=(_plate(),), route=straight_up(penetrations=(hole,)))


RULE = Rule(
    code="MBR-PLATE",
    title="Cut in a wall plate",
    scope=Scope.ROUTE,
    checks="How much of a plate's width the duct would cut, and whether that needs a steel tie.",
    why="The top plates tie the wall together; a cut one must be tied across.",
    limits=("member_cuts",),
    sources=("irc-r602-6-1",),
    tables=("plate",),
    applies="To every plate that the route passes through. A cut of more than half a bearing plate is allowed with a tie, which is told.",
    blind="Laps of the two top plates at the same place; panels that tie the whole wall side.",
    judge=judge,
    passing_words="A duct 3 1/4 in deep up through a 2x4 top plate, with a tie.",
    passing=lambda: _run(UP, (10.0, 3.25)),
    failing_words="The same duct laid along the plate.",
    failing=lambda: _run((1.0, 0.0, 0.0), (3.25, 3.25)),
)
