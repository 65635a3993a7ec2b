"""A canopy that leaves the burners uncovered."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from shapely import box

from routeviz.model.finding import Finding
from routeviz.rules.bench import kitchen, look
from routeviz.rules.context import Context
from routeviz.rules.outcome import judge_number
from routeviz.rules.registry import Rule, Scope


def judge(context: Context, rule: Rule) -> Iterator[Finding]:
    """Lay the canopy's outline over the cooktop's, and over the middle of its front burners."""
    hood, top = context.scene.hood, context.scene.cooktop
    left = top.centre_in - top.width_in / 2
    cooking = box(left, top.back_in, left + top.width_in, top.back_in + top.depth_in)
    canopy = box(hood.centre_in - hood.width_in / 2, 0.0, hood.centre_in + hood.width_in / 2, hood.depth_in)
    share = cooking.intersection(canopy).area / cooking.area
    place = (hood.centre_in, -hood.depth_in, context.scene.hood_bottom_in or top.height_in + 30.0)
    yield from judge_number(rule, context, "cover_share", share, "of the cooking area", where=("hood-canopy", "cooktop"), place=place,
                            remedy="Take a deeper canopy.")  # fmt: skip
    if top.burners:
        front = max(b.from_back_in for b in top.burners)
        reach = hood.depth_in - (top.back_in + front)
        yield from judge_number(rule, context, "front_burner_reach", reach, "in", where=("hood-canopy", "cooktop"), place=place,
                                title="Canopy over the front burners",
                                remedy=f"Take a canopy {context.length(hood.depth_in - reach)} deep or more.")  # fmt: skip


def _deep(depth_in: float) -> Context:
    plain = kitchen()
    return look(replace(plain, hood=replace(plain.hood, depth_in=depth_in)))


RULE = Rule(
    code="FIT-COVERAGE",
    title="Cooking area under the canopy",
    scope=Scope.SCENE,
    checks="Which part of the cooking area lies under the canopy, and whether it reaches the middle of the front burners.",
    why="What is not under the canopy is mostly not caught; front burners are used most and caught worst.",
    limits=("cover_share", "front_burner_reach"),
    sources=(),
    applies="Always; burners only where the scene lists them.",
    blind="How strongly each burner is used.",
    judge=judge,
    passing_words="A canopy 20 in deep over a cooktop 21 in deep that stands 2 in off the wall.",
    passing=lambda: _deep(20.0),
    failing_words="A canopy 15 in deep over the same cooktop.",
    failing=lambda: _deep(15.0),
)
