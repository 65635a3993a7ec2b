"""A strong fan in a tight house."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from routeviz.model.finding import Finding, State
from routeviz.model.scene import RuleChoice
from routeviz.rules.bench import kitchen, look
from routeviz.rules.context import Context
from routeviz.rules.outcome import at_most, settled
from routeviz.rules.registry import Rule, Scope


def judge(context: Context, rule: Rule) -> Iterator[Finding]:
    """In a house that the scene calls tight every cfm must be let in on purpose."""
    limit = context.limit("tight_flow")
    if limit is None or not context.scene.rules.tight_house:
        return
    found = at_most(rule, limit, context.scene.hood.fan.rated_cfm, detail="no code asks for it at this flow, but the house lets too little in",
                    remedy="Plan makeup air, or at least open a window whenever the hood runs.")  # fmt: skip
    yield settled(found, State.FINE, "makeup air is planned") if context.scene.rules.makeup_air else found


def _tight(makeup: bool) -> Context:
    return look(replace(kitchen(), rules=RuleChoice("irc-2021", tight_house=True, makeup_air=makeup)))


RULE = Rule(
    code="AIR-TIGHT",
    title="Fan in a tight house",
    scope=Scope.SCENE,
    checks="Whether a house that the scene calls tight has makeup air for the hood.",
    why="A tight house starves the fan, and the pressure pulls on every flue and drain.",
    limits=("tight_flow",),
    sources=(),
    applies="Where the scene says that the house is tight.",
    blind="How tight; a blower-door test tells.",
    judge=judge,
    passing_words="A tight house with makeup air.",
    passing=lambda: _tight(True),
    failing_words="A tight house without.",
    failing=lambda: _tight(False),
)
