"""Brick, block and concrete that the duct passes through."""

from __future__ import annotations

from collections.abc import Iterator

from routeviz.model.finding import Finding, State
from routeviz.model.solids import Box, Crossing, Solid, SolidKind
from routeviz.rules.bench import OUT, look, meets, straight_out
from routeviz.rules.context import Context
from routeviz.rules.registry import Rule, Scope
from routeviz.rules.touched import ruling_findings


def judge(context: Context, rule: Rule) -> Iterator[Finding]:
    """Judge every masonry wall and slab that the route passes through."""
    yield from ruling_findings(context, rule)


def _wall() -> Solid:
    return Solid("hood-core-1", SolidKind.MASONRY, "masonry", Box((0.0, 0.5, 0.0), (120.0, 8.5, 96.0)), Crossing.PASS,
                 "example", None, "masonry")  # fmt: skip


def _out(wide_in: float) -> Context:
    hole = meets(_wall(), OUT, (60.0, 4.0, 80.0), (wide_in, 4.0))
    return look(solids=(_wall(),), route=straight_out(penetrations=(hole,)))


RULE = Rule(
    code="MBR-MASONRY",
    title="Hole in masonry or concrete",
    scope=Scope.ROUTE,
    checks="Whether the hole in brick or block needs a lintel, and who decides about a slab.",
    why="Bricks over a narrow hole carry themselves by arching; over a wide one they fall.",
    limits=("member_cuts",),
    sources=("common-practice",),
    tables=("masonry",),
    applies="To masonry and log walls and to concrete slabs that the route passes through.",
    blind="Cracked or soft masonry, loads right above, and reinforcement in concrete.",
    judge=judge,
    passing_words="A 3 1/4 x 10 in duct through brick and block.",
    passing=lambda: _out(10.5),
    failing_words="A hole 20 in wide through the same wall.",
    failing=lambda: _out(20.0),
    fails_as=State.NOT_CHECKED,
)
