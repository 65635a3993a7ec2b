"""A fan that needs makeup air."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from routeviz.model.finding import Finding, State
from routeviz.model.scene import Fan
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
            found = not_checked(rule, context, "makeup_flow", detail=f"this hood is labelled {context.flow(flow)}")
            yield replace(found, measured=flow, unit="cfm")
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
    else:
        asked = only_with_flue and rules.open_flue_appliance is None
        ask = (
            "; this edition asks for it only with a naturally drafted appliance in the house: say whether there is one"
        )
        yield replace(found, detail=f"more than {context.flow(limit.number)}{ask if asked else ''}")


def _rated(cfm: float) -> Context:
    plain = kitchen()
    return look(replace(plain, hood=replace(plain.hood, fan=Fan(cfm))))


RULE = Rule(
    code="AIR-MAKEUP",
    title="Makeup air",
    scope=Scope.SCENE,
    checks="The flow on the fan's label against the flow above which a code asks for makeup air.",
    why="What is blown out must come in somewhere; without a way it comes down chimneys and flues.",
    limits=("makeup_flow", "makeup_only_with_flue"),
    sources=(),
    applies="To every hood. Strictly more than the threshold needs it. Editions from 2018 on narrow it to houses with a naturally drafted appliance.",
    blind="How tight the house is; the threshold is no proof of safety.",
    judge=judge,
    passing_words="A fan of 390 cfm.",
    passing=lambda: _rated(390.0),
    failing_words="A fan of 600 cfm.",
    failing=lambda: _rated(600.0),
)
