"""A fan too weak for the gas cooktop."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from routeviz.model.finding import Finding
from routeviz.model.scene import CooktopKind, Fan
from routeviz.rules.bench import kitchen, look
from routeviz.rules.context import Context
from routeviz.rules.outcome import at_least
from routeviz.rules.registry import Rule, Scope
from routeviz.units import parse_quantity, quantity_text


def judge(context: Context, rule: Rule) -> Iterator[Finding]:
    """Compare the labelled flow with the cooktop's total heat over a hundred."""
    top, limit = context.scene.cooktop, context.limit("flow_per_heat")
    heat = top.heat_btu_h or sum(b.heat_btu_h for b in top.burners)
    if limit is None or top.kind is not CooktopKind.GAS or not heat:
        return
    wanted = heat * limit.number
    own = replace(limit, value=wanted, unit="cfm", said=context.flow(wanted))
    yield at_least(rule, own, context.scene.hood.fan.rated_cfm, detail=_sum(context, heat, limit.number),
                   remedy=f"Take a hood of {context.flow(wanted)} or more.")  # fmt: skip


def _sum(context: Context, heat_btu_h: float, share: float) -> str:
    """Say how the wanted flow comes about, in the scene's units."""
    metric = context.scene.metric
    each = parse_quantity("1 kW", unit="btu/h") if metric else 1000.0
    name = "kW" if metric else "1000 Btu/h"
    power = quantity_text(heat_btu_h, "btu/h", metric=metric)
    return f"{power} in all; the trade takes {context.flow(share * each)} for each {name}"


def _heat(btu_h: float) -> Context:
    plain = kitchen()
    top = replace(plain.cooktop, kind=CooktopKind.GAS, heat_btu_h=btu_h)
    return look(replace(plain, cooktop=top, hood=replace(plain.hood, fan=Fan(400.0))))


RULE = Rule(
    code="AIR-HEAT",
    title="Fan for the heat",
    scope=Scope.SCENE,
    checks="The fan's labelled flow against the cooktop's total heat: 1 cfm for each 100 Btu/h.",
    why="More fire makes more rising air; what the fan does not take spills round the canopy.",
    limits=("flow_per_heat",),
    sources=(),
    applies="To gas cooktops whose heat the scene gives. A rule of the trade, no code.",
    blind="How many burners ever run at once.",
    judge=judge,
    passing_words="38000 Btu/h under a 400 cfm hood.",
    passing=lambda: _heat(38000.0),
    failing_words="60000 Btu/h under the same hood.",
    failing=lambda: _heat(60000.0),
)
