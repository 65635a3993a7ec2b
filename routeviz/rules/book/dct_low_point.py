"""A place where grease and water collect."""

from __future__ import annotations

from collections.abc import Iterator

from routeviz.model.finding import Finding
from routeviz.rules.bench import duct, look, straight_up
from routeviz.rules.context import Context
from routeviz.rules.outcome import judge_number
from routeviz.rules.registry import Rule, Scope
from routeviz.rules.sections import low_points


def judge(context: Context, rule: Rule) -> Iterator[Finding]:
    """Count the places where the duct goes down and then up again."""
    found = low_points(context.the_route().parts)
    yield from judge_number(rule, context, "low_points", float(len(found)), "low points", least=False, place=found[0] if found else None,
                            remedy="Lay the run so that it rises, or falls all the way to the cap.")  # fmt: skip


def _sag() -> Context:
    points = ((60.0, -8.0, 77.5), (60.0, -8.0, 110.0), (60.0, -50.0, 110.0), (60.0, -50.0, 90.0), (100.0, -50.0, 90.0),
              (100.0, -50.0, 150.0))  # fmt: skip
    return look(route=duct(points))


RULE = Rule(
    code="DCT-LOW-POINT",
    title="No low point",
    fault="Low point in the duct",
    scope=Scope.ROUTE,
    checks="Whether the duct goes down and later up again.",
    why="Grease and water collect in a trap, drip back or smell, and in the worst case burn.",
    limits=("low_points",),
    sources=(),
    applies="To every route.",
    blind="Sags between hangers, and a run that was laid falling back to the hood.",
    judge=judge,
    passing_words="A duct straight up.",
    passing=lambda: look(route=straight_up()),
    failing_words="Up, across, down, across and up again.",
    failing=lambda: _sag(),
)
