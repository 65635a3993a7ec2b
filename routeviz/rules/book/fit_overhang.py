"""A canopy not wide enough for its cooktop."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from routeviz.model.finding import Finding
from routeviz.rules.bench import kitchen, look
from routeviz.rules.context import Context
from routeviz.rules.outcome import judge_number
from routeviz.rules.registry import Rule, Scope


def judge(context: Context, rule: Rule) -> Iterator[Finding]:
    """Measure how far the canopy reaches beyond the cooktop on its poorer side."""
    hood, top = context.scene.hood, context.scene.cooktop
    spare = (hood.width_in - top.width_in) / 2
    off = hood.centre_in - top.centre_in
    least = spare - abs(off)
    side = "left" if off > 1e-9 else "right" if off < -1e-9 else "each"
    limit = context.limit("overhang")
    want = top.width_in + 2 * limit.number if limit else 0.0
    remedy = f"Take a canopy {context.length(want)} wide" + (
        ", or centre it over the cooktop." if abs(off) > 1e-9 else "."
    )
    yield from judge_number(
        rule, context, "overhang", least, "in", where=("hood-canopy", "cooktop"), detail=f"on {side} side" if side == "each" else f"on the {side}",
        place=(hood.centre_in, -hood.depth_in, context.scene.hood_bottom_in or top.height_in + 30.0), remedy=remedy,
    )  # fmt: skip


def _wide(width_in: float) -> Context:
    plain = kitchen()
    return look(replace(plain, hood=replace(plain.hood, width_in=width_in)))


RULE = Rule(
    code="FIT-OVERHANG",
    title="Canopy beyond the cooktop",
    scope=Scope.SCENE,
    checks="How far the canopy reaches beyond the cooktop at each side; the poorer side counts.",
    why="The plume widens as it rises; a canopy as narrow as the cooktop lets its edges escape.",
    limits=("overhang",),
    sources=(),
    applies="Always.",
    blind="Draughts, and how high the hood hangs; a higher one needs more.",
    judge=judge,
    passing_words="A 36 in canopy centred over a 30 in cooktop.",
    passing=lambda: _wide(36.0),
    failing_words="A 30 in canopy over a 30 in cooktop.",
    failing=lambda: _wide(30.0),
)
