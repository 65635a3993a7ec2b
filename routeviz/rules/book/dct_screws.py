"""Joints held by too few screws."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from routeviz.model.finding import Finding
from routeviz.model.scene import AsBuilt
from routeviz.rules.bench import kitchen, look, straight_up
from routeviz.rules.context import Context
from routeviz.rules.outcome import judge_number, not_checked
from routeviz.rules.registry import Rule, Scope


def judge(context: Context, rule: Rule) -> Iterator[Finding]:
    """Count the screws at each joint of a duct that is there already."""
    route, built = context.the_route(), context.scene.as_built
    if not route.as_built or built is None:
        return
    if built.screws_per_joint is None:
        limit = context.limit("joint_screws")
        yield not_checked(
            rule, context, "joint_screws", limit=limit, remedy="Count the screws at a joint that can be seen."
        )
        return
    yield from judge_number(rule, context, "joint_screws", float(built.screws_per_joint), "screws per joint",
                            detail="screws are fine in a dwelling's hood duct; keep them short and seal the joint",
                            remedy="Add short screws, equally spaced, and seal the joint.")  # fmt: skip


def _with(count: int) -> Context:
    scene = replace(kitchen(), as_built=AsBuilt((), screws_per_joint=count))
    return look(scene, route=straight_up(as_built=True))


RULE = Rule(
    code="DCT-SCREWS",
    title="Screws at each joint",
    scope=Scope.ROUTE,
    checks="How many screws hold each joint of a duct as built.",
    why="A joint that slips open blows grease and steam into the framing.",
    limits=("joint_screws",),
    sources=(),
    applies="To routes as built. The parts list of a planned route has its screws.",
    blind="Rivets, and joints that nobody can see. The ban on screws is for dryers and commercial grease duct.",
    judge=judge,
    passing_words="Three screws a joint.",
    passing=lambda: _with(3),
    failing_words="One screw a joint.",
    failing=lambda: _with(1),
)
