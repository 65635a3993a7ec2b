"""A canopy too high to catch the smoke."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from routeviz.model.finding import Finding
from routeviz.rules.bench import kitchen, look
from routeviz.rules.context import Context
from routeviz.rules.outcome import judge_number
from routeviz.rules.registry import Rule, Scope


def judge(context: Context, rule: Rule) -> Iterator[Finding]:
    """Measure from the cooking surface up to the hood's underside."""
    scene = context.scene
    mount, bottom = scene.hood.mount_in, scene.hood_bottom_in
    if mount is None or bottom is None:
        return
    limit = context.limit("canopy_max")
    over = mount - limit.number if limit is not None else 0.0
    yield from judge_number(
        rule, context, "canopy_max", mount, "in", least=False, where=("hood-canopy", "cooktop"),
        place=(scene.hood.centre_in, -scene.hood.depth_in / 2, bottom),
        remedy=f"Hang the hood {context.length(over)} lower, or choose a wider, stronger one." if over > 0 else "",
    )  # fmt: skip


def _at(mount_in: float) -> Context:
    plain = kitchen()
    return look(replace(plain, hood=replace(plain.hood, mount_in=mount_in)))


RULE = Rule(
    code="HGT-CANOPY-HIGH",
    title="Canopy within reach of the smoke",
    fault="Canopy out of the smoke's reach",
    scope=Scope.SCENE,
    checks="The height of the hood's underside above the cooking surface, against the most that still catches the smoke.",
    why="Smoke spreads as it rises; a canopy hung high lets it past its rim.",
    limits=("canopy_max",),
    sources=(),
    applies="When the mounting height is given or chosen. The maker's height in the scene comes before the usual one.",
    blind="How wide the plume really is: draughts, the cook, and the fan's strength.",
    judge=judge,
    passing_words="A hood 30 in above the cooktop.",
    passing=lambda: _at(30.0),
    failing_words="A hood 40 in above the cooktop.",
    failing=lambda: _at(40.0),
)
