"""A flue that the hood can pull backwards."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from routeviz.model.finding import Finding, State
from routeviz.model.scene import RuleChoice
from routeviz.rules.bench import kitchen, look
from routeviz.rules.context import Context
from routeviz.rules.outcome import not_checked, yes_or_no
from routeviz.rules.registry import Rule, Scope


def judge(context: Context, rule: Rule) -> Iterator[Finding]:
    """Ask for naturally drafted appliances; with one, any exhaust is a danger until it is tested."""
    rules, limit = context.scene.rules, context.limit("makeup_with_flue")
    if limit is None:
        return
    if rules.open_flue_appliance is None:
        yield not_checked(rule, context, "makeup_with_flue", limit=limit, detail="is there a water heater, furnace, stove or fireplace with an open flue?",
                          remedy="Look for a draft hood or an open fireplace; if there is one, have the draft tested with all fans on.")  # fmt: skip
    elif not rules.open_flue_appliance:
        yield yes_or_no(rule, limit, True, detail="the scene says that there is none")
    elif rules.makeup_air:
        planned = yes_or_no(rule, limit, True, detail="makeup air is planned; the draft is still to be tested")
        yield replace(planned, state=State.CLOSE, remedy=_TEST)
    else:
        flow = context.flow(context.scene.hood.fan.rated_cfm)
        yield yes_or_no(rule, limit, False, detail=f"makeup air needed for {flow}: none stated; {limit.note}",
                        remedy=f"{_TEST} Give the hood makeup air.")  # fmt: skip


_TEST = "Have the draft tested with all fans on, and fit a carbon-monoxide alarm."


def _flue(there: bool) -> Context:
    return look(replace(kitchen(), rules=RuleChoice("irc-2021", open_flue_appliance=there)))


RULE = Rule(
    code="AIR-FLUE",
    title="Open flues in the house",
    fault="Open flue without makeup air",
    scope=Scope.SCENE,
    checks="Whether an appliance with an open flue stands in the house, whatever the size of the fan.",
    why="A fan far below any code threshold can pull carbon monoxide back down a flue, above all in a tightened house.",
    limits=("makeup_with_flue",),
    sources=(),
    applies="To every hood. With makeup air planned it stays close until the draft is tested.",
    blind="The pressure in the house; only a test with all fans on tells.",
    judge=judge,
    passing_words="A house with no open flue.",
    passing=lambda: _flue(False),
    failing_words="A house with an open-flue water heater.",
    failing=lambda: _flue(True),
)
