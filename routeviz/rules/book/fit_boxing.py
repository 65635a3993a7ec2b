"""Duct in the open room."""

from __future__ import annotations

from collections.abc import Iterator

from routeviz.model.finding import Finding
from routeviz.rules.bench import look, straight_up
from routeviz.rules.context import Context
from routeviz.rules.outcome import judge_number
from routeviz.rules.registry import Rule, Scope
from routeviz.rules.whereabouts import boxed_run


def judge(context: Context, rule: Rule) -> Iterator[Finding]:
    """Measure the run in the open air of the kitchen."""
    length, place = boxed_run(context)
    yield from judge_number(
        rule, context, "boxed_run", length, "in", least=False, place=place,
        remedy="Box it in and finish the boxing, or move the hood to where the duct can go up hidden.",
    )  # fmt: skip


RULE = Rule(
    code="FIT-BOXING",
    title="Duct in the open room",
    scope=Scope.ROUTE,
    checks="How much duct runs in the open air of the kitchen and would have to be boxed in.",
    why="Boxing costs room, money and looks; a hidden way is better when there is one.",
    limits=("boxed_run",),
    sources=(),
    applies="To every route. Duct inside the chimney cover, a cabinet, a soffit or a chase is hidden.",
    blind="Taste: some like the duct to be seen.",
    judge=judge,
    passing_words="A duct straight up inside the cover.",
    passing=lambda: look(route=straight_up()),
    failing_words="A duct with 40 in in the open room.",
    failing=lambda: look(route=straight_up(boxed_in=40.0)),
)
