"""Less air than the code asks for."""

from __future__ import annotations

from collections.abc import Iterator

from routeviz.model.airflow import AirStatus
from routeviz.model.finding import Finding
from routeviz.rules.bench import air, look, straight_up
from routeviz.rules.context import Context
from routeviz.rules.outcome import judge_number
from routeviz.rules.registry import Rule, Scope


def judge(context: Context, rule: Rule) -> Iterator[Finding]:
    """Compare the flow that this duct really lets through with the least for a kitchen."""
    if context.air is None or context.air.full.status is AirStatus.NO_FAN:
        return
    yield from judge_number(rule, context, "least_flow", context.air.full.flow_cfm, "cfm", detail=context.air.assumption,
                            remedy="Use a wider or straighter duct, or a stronger fan.")  # fmt: skip


def _flow(cfm: float) -> Context:
    return look(route=straight_up(), blow=air(cfm))


RULE = Rule(
    code="AIR-LEAST",
    title="Air delivered, least for a kitchen",
    scope=Scope.ROUTE,
    checks="The flow through this duct against the least that the place asks of a kitchen exhaust.",
    why="Below it, moisture and fumes stay in the house.",
    limits=("least_flow",),
    sources=(),
    applies="When the air was computed.",
    blind="How much of the smoke the canopy catches.",
    judge=judge,
    passing_words="350 cfm delivered.",
    passing=lambda: _flow(350.0),
    failing_words="80 cfm delivered.",
    failing=lambda: _flow(80.0),
)
