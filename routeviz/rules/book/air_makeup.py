"""A fan that needs makeup air."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from routeviz.model.finding import Finding, State
from routeviz.model.scene import Fan, RuleChoice
from routeviz.rules.bench import kitchen, look
from routeviz.rules.context import Context
from routeviz.rules.outcome import at_most, not_checked, settled
from routeviz.rules.registry import Rule, Scope


def judge(context: Context, rule: Rule) -> Iterator[Finding]:
    """Compare what the fan can move by its label with the place's threshold; strictly more needs makeup air."""
    rules, flow = context.scene.rules, context.scene.hood.fan.rated_cfm
    limit, narrowed = context.limit("makeup_flow"), context.limit("makeup_only_with_flue")
    if limit is None:
        if context.profile.asked("makeup_flow"):
            yield not_checked(rule, context, "makeup_flow", measured=flow, unit="cfm",
                              detail=f"this hood is labelled {context.flow(flow)}")  # fmt: skip
        return
    needs = (
        f"Provide about {context.flow(flow)} of makeup air into the kitchen, or a room open to it, through a damper that opens "
        "with the hood."
    )
    found = at_most(rule, limit, flow, remedy=needs)
    only_with_flue = narrowed is not None and narrowed.value is True
    if found.state is not State.BROKEN:
        exact = "exactly at the threshold, not more than it" if found.margin == 0 else found.detail
        yield replace(found, remedy="", detail=exact)
    elif rules.makeup_air:
        planned = f"makeup air is planned: about {context.flow(flow)}, through a damper that follows the fan"
        yield settled(found, State.FINE, planned)
    elif only_with_flue and rules.open_flue_appliance is False:
        yield settled(
            found, State.FINE, "no naturally drafted appliance in the house; many places ask for it all the same"
        )
    elif only_with_flue and rules.open_flue_appliance is None:
        yield not_checked(
            rule, context, "makeup_flow", limit=replace(limit, unit=""),
            detail=f"{context.flow(flow)} is more than {context.flow(limit.number)}; this edition asks for makeup air above that "
            "only where a naturally drafted appliance stands in the house, and the scene does not say whether one does; with "
            "one there, this fan can pull its flue gas back into the rooms",
            remedy="Look for a water heater, furnace, stove or fireplace that drafts by itself, and say it in the scene "
            f"(open_flue_appliance). If there is one: {needs[0].lower()}{needs[1:]}",
        )  # fmt: skip
    else:
        yield replace(found, detail=f"more than {context.flow(limit.number)}")


def _rated(cfm: float) -> Context:
    plain = kitchen(rules=RuleChoice("irc-2021", open_flue_appliance=True))
    return look(replace(plain, hood=replace(plain.hood, fan=Fan(cfm))))


RULE = Rule(
    code="AIR-MAKEUP",
    title="Makeup air",
    scope=Scope.SCENE,
    checks="The flow on the fan's label against the flow above which a code asks for makeup air.",
    why="What is blown out must come in somewhere; without a way it comes down chimneys and flues.",
    limits=("makeup_flow", "makeup_only_with_flue"),
    sources=(),
    applies="To every hood. Strictly more than the threshold needs it. Editions from 2018 on narrow it to houses with a naturally drafted appliance; where nobody says whether one is there, it is asked.",
    blind="How tight the house is; the threshold is no proof of safety.",
    judge=judge,
    passing_words="A fan of 390 cfm.",
    passing=lambda: _rated(390.0),
    failing_words="A fan of 600 cfm in a house with an open-flue appliance.",
    failing=lambda: _rated(600.0),
)
