"""A hood for another supply."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from routeviz.model.finding import Finding
from routeviz.model.scene import Electrical
from routeviz.rules.bench import kitchen, look
from routeviz.rules.context import Context
from routeviz.rules.outcome import exactly, not_checked
from routeviz.rules.registry import Rule, Scope


def judge(context: Context, rule: Rule) -> Iterator[Finding]:
    """Compare the hood's voltage and frequency with the place's supply."""
    power, hood = context.scene.hood.electrical, context.scene.hood
    if power is None:
        return
    bottom = context.scene.hood_bottom_in
    place = (hood.centre_in + power.across_in, 0.0, bottom + power.up_in) if bottom is not None else None
    for key, value, title in (("supply_volts", power.volts, "voltage"), ("supply_hertz", power.hertz, "frequency")):
        limit = context.limit(key)
        if limit is not None:
            yield exactly(rule, limit, value, where=("hood-body",), place=place, title=f"{rule.title}, {title}",
                          remedy="Take a hood made for this supply; an adapter will not do.")  # fmt: skip
        elif key == "supply_volts":
            yield not_checked(rule, context, key, place=place)


def _volts(volts: float) -> Context:
    plain = kitchen()
    return look(replace(plain, hood=replace(plain.hood, electrical=Electrical(0.0, 9.0, volts))))


RULE = Rule(
    code="PWR-SUPPLY",
    title="Supply for the hood",
    scope=Scope.SCENE,
    checks="The hood's voltage and frequency against the supply of the place.",
    why="A hood from elsewhere burns out or runs at the wrong speed.",
    limits=("supply_volts", "supply_hertz"),
    sources=(),
    applies="Where the scene describes the connection.",
    blind="Whether the circuit can carry the load.",
    judge=judge,
    passing_words="A 120 V hood in the United States.",
    passing=lambda: _volts(120.0),
    failing_words="A 230 V hood there.",
    failing=lambda: _volts(230.0),
)
