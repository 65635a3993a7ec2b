"""No mounting height suits every limit."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from routeviz.model.finding import Finding
from routeviz.model.scene import Kitchen
from routeviz.model.spoken import spoken
from routeviz.rules.bench import kitchen, look
from routeviz.rules.context import Context
from routeviz.rules.outcome import arithmetic, at_least
from routeviz.rules.raising import raised_words
from routeviz.rules.registry import Rule, Scope
from routeviz.rules.window import Bound, mounting_window


def judge(context: Context, rule: Rule) -> Iterator[Finding]:
    """Compare the highest of the lower limits with the lowest of the upper ones."""
    window = mounting_window(context.scene, context.profile)
    low = max((b for b in window.bounds if b.lower), key=lambda b: b.value_in, default=None)
    high = min((b for b in window.bounds if not b.lower), key=lambda b: b.value_in)
    if low is None:
        return
    must = low.must and high.must
    spare = high.value_in - low.value_in
    yield at_least(
        rule, arithmetic("mounting_window", 0.0, must=must), spare, where=("hood-canopy",), remedy=_way_out(context, high, -spare),
        detail=f"from {context.length(low.value_in)} ({low.by}) to {context.length(high.value_in)} ({high.by})",
    )  # fmt: skip


def _way_out(context: Context, high: Bound, short: float) -> str:
    """Say by how much one of the two limits would have to give."""
    if short <= 0:
        return ""
    much, hood = context.length(short), context.scene.hood
    lower = f"choose a hood {much} lower" if short < hood.body_in else ""  # there must be something left of it
    if high.by.startswith("hood body under "):
        name = high.by.removeprefix("hood body under ")
        if name == "the ceiling":
            return f"{lower[0].upper()}{lower[1:]}." if lower else "Choose a much lower hood, or another kind."
        thing = next((o for o in context.scene.obstacles if f"the {spoken(o.id)}" == name), None)
        moved = raised_words(context, thing, short, name) if thing is not None else f"Hang the hood clear of {name}"
        return f"{moved}{f', or {lower}' if lower else ''}."
    if high.by.startswith("chimney cover"):
        return f"Cut the cover by {much}, or choose one that is shorter."
    return f"Order an extension of {much} or more for the cover, or choose another one."


def _under(ceiling_in: float) -> Context:
    plain = kitchen()
    return look(replace(plain, kitchen=Kitchen(120.0, 120.0, ceiling_in)))


RULE = Rule(
    code="HGT-WINDOW",
    title="Room for a mounting height",
    fault="No room for a mounting height",
    scope=Scope.SCENE,
    checks="Whether one mounting height suits the least and the most height, the ceiling and the reach of the cover.",
    why="When the limits cross, every height breaks one of them; better known before the hood is bought.",
    limits=("canopy_over_gas", "canopy_over_electric", "canopy_over_induction", "canopy_max"),
    sources=("arithmetic",),
    applies="Always. The window is a must only when both limits that cross are.",
    blind="Covers that can be cut or lengthened with a part that the scene does not list.",
    judge=judge,
    passing_words="An 8 ft ceiling with a cover of 16 to 30 in.",
    passing=lambda: _under(96.0),
    failing_words="A 10 ft ceiling that the same cover cannot reach from any usual height.",
    failing=lambda: _under(120.0),
)
