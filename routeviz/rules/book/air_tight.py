"""A strong fan in a tight house."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from routeviz.model.finding import Finding
from routeviz.model.scene import RuleChoice
from routeviz.rules.bench import kitchen, look
from routeviz.rules.context import Context
from routeviz.rules.outcome import yes_or_no
from routeviz.rules.registry import Rule, Scope


def judge(context: Context, rule: Rule) -> Iterator[Finding]:
    """In a house that the scene calls tight every cfm must be let in on purpose."""
    rules, limit = context.scene.rules, context.limit("makeup_in_tight_house")
    if limit is None or not rules.tight_house:
        return
    flow = context.flow(context.scene.hood.fan.rated_cfm)
    yield yes_or_no(
        rule, limit, rules.makeup_air is True,
        detail="makeup air is planned" if rules.makeup_air else f"makeup air needed for {flow}: none stated; {limit.note}",
        remedy="Plan makeup air, or at least open a window whenever the hood runs.",
    )  # fmt: skip


def _tight(makeup: bool) -> Context:
    return look(replace(kitchen(), rules=RuleChoice("irc-2021", tight_house=True, makeup_air=makeup)))


RULE = Rule(
    code="AIR-TIGHT",
    title="Fan in a tight house",
    fault="Tight house without makeup air",
    scope=Scope.SCENE,
    checks="Whether a house that the scene calls tight has makeup air for the hood.",
    why="A tight house starves the fan, and the pressure pulls on every flue and drain.",
    limits=("makeup_in_tight_house",),
    sources=(),
    applies="Where the scene says that the house is tight.",
    blind="How tight; a blower-door test tells.",
    judge=judge,
    passing_words="A tight house with makeup air.",
    passing=lambda: _tight(True),
    failing_words="A tight house without.",
    failing=lambda: _tight(False),
)
