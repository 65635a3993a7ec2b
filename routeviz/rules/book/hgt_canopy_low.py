"""A canopy too low over the cooktop."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from routeviz.model.finding import Finding
from routeviz.model.scene import CooktopKind
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
    limit = context.limit(context.canopy_key)
    short = limit.number - mount if limit is not None else 0.0
    yield from judge_number(
        rule, context, context.canopy_key, mount, "in", where=("hood-canopy", "cooktop"),
        place=(scene.hood.centre_in, -scene.hood.depth_in / 2, bottom),
        remedy=f"Hang the hood {context.length(short)} higher." if short > 0 else "",
    )  # fmt: skip


def _at(mount_in: float) -> Context:
    plain = kitchen()
    cooktop = replace(plain.cooktop, kind=CooktopKind.GAS)
    return look(replace(plain, cooktop=cooktop, hood=replace(plain.hood, mount_in=mount_in)))


RULE = Rule(
    code="HGT-CANOPY-LOW",
    title="Canopy above the cooktop",
    scope=Scope.SCENE,
    checks="The height of the hood's underside above the cooking surface, against the least for this kind of cooktop.",
    why="A canopy too near the flame overheats its filters and grease, and cooks hit their heads on it.",
    limits=("canopy_over_gas", "canopy_over_electric", "canopy_over_induction"),
    sources=(),
    applies="When the mounting height is given or chosen. The maker's height in the scene comes before the place's.",
    blind="Pan supports that stand higher than the given cooking surface; a hood listed for less.",
    judge=judge,
    passing_words="A hood 30 in above a gas cooktop.",
    passing=lambda: _at(30.0),
    failing_words="A hood 22 in above a gas cooktop.",
    failing=lambda: _at(22.0),
)
