"""A fan that needs makeup air."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from routeviz.model.airflow import capable_cfm
from routeviz.model.finding import Finding, State
from routeviz.model.scene import Fan, RuleChoice
from routeviz.rules.bench import kitchen, look
from routeviz.rules.context import Context
from routeviz.rules.outcome import at_most, not_checked, settled
from routeviz.rules.registry import Rule, Scope


def judge(context: Context, rule: Rule) -> Iterator[Finding]:
    """Compare the most that the fan is known to move with the place's threshold; strictly more needs makeup air."""
    flow, by = capable_cfm(context.scene.hood.fan.rated_cfm, context.fan_cfm)
    said = "" if by == "label" else f"by the fan's curve at {context.quantity(0.1, 'in wg')}; {_label(context)}"
    yield from _judged(context, rule, flow, said)


def judge_route(context: Context, rule: Rule) -> Iterator[Finding]:
    """Judge by what the duct lets through, where that alone passes the threshold."""
    limit, label = context.limit("makeup_flow"), context.scene.hood.fan.rated_cfm
    if limit is None or context.air is None or capable_cfm(label, context.fan_cfm)[0] > limit.number:
        return
    flow, by = capable_cfm(label, context.fan_cfm, context.air.full.flow_cfm)
    if by == "duct" and flow > limit.number:
        yield from _judged(context, rule, flow, f"what this duct lets through; {_label(context)}")


def _label(context: Context) -> str:
    flow = context.scene.hood.fan.rated_cfm
    return f"the label says {context.flow(flow)}" if flow > 0 else "no label flow is given"


def _judged(context: Context, rule: Rule, flow: float, said: str) -> Iterator[Finding]:
    rules = context.scene.rules
    limit, narrowed = context.limit("makeup_flow"), context.limit("makeup_only_with_flue")
    if limit is None:
        if context.profile.asked("makeup_flow"):
            yield not_checked(rule, context, "makeup_flow", measured=flow, unit="cfm",
                              detail=_with(said, f"this hood moves {context.flow(flow)}" if said else f"this hood is labelled {context.flow(flow)}"))  # fmt: skip
        return
    needs = (
        f"Provide about {context.flow(flow)} of makeup air into the kitchen, or a room open to it, through a damper that opens "
        "with the hood."
    )
    found = at_most(rule, limit, flow, remedy=needs)
    only_with_flue = narrowed is not None and narrowed.value is True
    if found.state is not State.BROKEN:
        exact = "exactly at the threshold, not more than it" if found.margin == 0 else found.detail
        yield replace(found, remedy="", detail=_with(said, exact))
    elif rules.makeup_air:
        planned = f"makeup air is planned: about {context.flow(flow)}, through a damper that follows the fan"
        yield settled(found, State.FINE, _with(said, planned))
    elif only_with_flue and rules.open_flue_appliance is False:
        yield settled(
            found, State.FINE,
            _with(said, "no naturally drafted appliance in the house; many places ask for it all the same"),
        )  # fmt: skip
    elif only_with_flue and rules.open_flue_appliance is None:
        yield not_checked(
            rule, context, "makeup_flow", limit=replace(limit, unit=""),
            detail=_with(said, f"{context.flow(flow)} is more than {context.flow(limit.number)}; this edition asks for makeup air above that "
            "only where a naturally drafted appliance stands in the house, and the scene does not say whether one does; with "
            "one there, this fan can pull its flue gas back into the rooms"),
            remedy="Look for a water heater, furnace, stove or fireplace that drafts by itself, and say it in the scene "
            f"(open_flue_appliance). If there is one: {needs[0].lower()}{needs[1:]}",
        )  # fmt: skip
    else:
        yield replace(found, detail=_with(said, f"more than {context.flow(limit.number)}"))


def _with(said: str, words: str) -> str:
    """Say by what the flow was judged, where it is not the label's."""
    return "; ".join(w for w in (said, words) if w)


def _rated(cfm: float) -> Context:
    plain = kitchen(rules=RuleChoice("irc-2021", open_flue_appliance=True))
    return look(replace(plain, hood=replace(plain.hood, fan=Fan(cfm))))


RULE = Rule(
    code="AIR-MAKEUP",
    title="Makeup air",
    scope=Scope.SCENE,
    checks="The most that the fan is known to move (its label, its curve at 0.1 in wg, or what the duct lets through) against the flow above which a code asks for makeup air.",
    why="What is blown out must come in somewhere; without a way it comes down chimneys and flues.",
    limits=("makeup_flow", "makeup_only_with_flue"),
    sources=(),
    applies="To every hood. Strictly more than the threshold needs it. Editions from 2018 on narrow it to houses with a naturally drafted appliance; where nobody says whether one is there, it is asked.",
    blind="How tight the house is; the threshold is no proof of safety.",
    judge=judge,
    judge_route=judge_route,
    passing_words="A fan of 390 cfm.",
    passing=lambda: _rated(390.0),
    failing_words="A fan of 600 cfm in a house with an open-flue appliance.",
    failing=lambda: _rated(600.0),
)
