"""A hood too heavy, or a cover too long, to hang like any other."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from routeviz import catalog
from routeviz.model.finding import Finding, State
from routeviz.model.overhead import cover_room_in
from routeviz.model.scene import Cover, Kitchen
from routeviz.rules.bench import kitchen, look
from routeviz.rules.context import Context
from routeviz.rules.outcome import not_checked
from routeviz.rules.profiles import Limit
from routeviz.rules.registry import Rule, Scope


def _usual(key: str, unit: str) -> Limit:
    row = catalog.table("rules")["heavy"]
    return Limit(key, float(row[key]), unit, False, str(row["source"]), f"{row[key]:g} {unit}")


def judge(context: Context, rule: Rule) -> Iterator[Finding]:
    """Ask for the fixing of a heavy hood, and for what holds a long cover; nothing of others."""
    hood, room = context.scene.hood, cover_room_in(context.scene)
    weight = _usual("hood_over_lb", "lb")
    if hood.weight_lb > weight.number:
        said = context.quantity(hood.weight_lb, "lb")
        yield not_checked(
            rule, context, "heavy_hood", limit=replace(weight, unit=""), measured=hood.weight_lb, unit="lb", where=("hood-canopy",),
            title="Fixing of a heavy hood", detail=f"more than {context.quantity(weight.number, 'lb')}, and the scene does not give its maker's fixing",
            remedy=f"Fix it as its maker says for {said}: a screw into framing or blocking at every mark, none into board "
            "alone; raise it with a lift, or with more than two people.",
        )  # fmt: skip
    long = _usual("cover_over_in", "in")
    if room is not None and room[1] > long.number:
        yield not_checked(
            rule, context, "long_cover", limit=replace(long, unit=""), measured=room[1], unit="in", where=("cover",), title="Fixing of a long cover",
            detail=f"more than {context.length(long.number)} of cover: its own weight and a knock pull at the bracket",
            remedy="Set framing or blocking behind its bracket, and stays into framing on the way up.",
        )  # fmt: skip


def _heavy(weight_lb: float) -> Context:
    plain = kitchen()
    return look(replace(plain, hood=replace(plain.hood, weight_lb=weight_lb)))


def _tall() -> Context:
    plain = kitchen(kitchen=Kitchen(120.0, 120.0, 168.0))
    return look(replace(plain, hood=replace(plain.hood, weight_lb=330.0, cover=Cover(60.0, 100.0, 12.0, 12.0))))


RULE = Rule(
    code="FIT-HEAVY",
    title="Fixing of a heavy hood",
    scope=Scope.SCENE,
    checks="Whether the hood weighs more than 100 lb or its cover stands higher than 6 ft.",
    why="Two screws that hold a light hood for years let a heavy one down, on whoever stands under it.",
    limits=(),
    sources=("common-practice",),
    applies="To hoods above that weight and covers above that height. Only the maker knows how they are fixed, so it is asked.",
    blind="What the wall is worth where the screws go, and the maker's own fixing.",
    judge=judge,
    passing_words="A hood of 55 lb.",
    passing=lambda: _heavy(55.0),
    failing_words="A hood of 330 lb under a cover 92 in high.",
    failing=_tall,
    fails_as=State.NOT_CHECKED,
)
