"""An old duct that may be used again."""

from __future__ import annotations

from collections.abc import Iterator

from routeviz.model.finding import Finding
from routeviz.model.scene import Obstacle, ObstacleKind, SpaceKind
from routeviz.model.spoken import spoken
from routeviz.rules.bench import kitchen, look
from routeviz.rules.context import Context
from routeviz.rules.outcome import arithmetic, at_least, not_checked, yes_or_no
from routeviz.rules.registry import Rule, Scope
from routeviz.rules.sections import equal_round_in, section_words
from routeviz.rules.whereabouts import space_kind


def judge(context: Context, rule: Rule) -> Iterator[Finding]:
    """Look at the end and the size of each old duct."""
    outlet = context.scene.hood.outlet.section
    for thing in context.scene.obstacles:
        if thing.kind is not ObstacleKind.DUCT:
            continue
        name = spoken(thing.id)
        place = (thing.left_in + thing.width_in / 2, -thing.out_in - thing.depth_in / 2, thing.bottom_in)
        if not thing.ends_at:
            yield not_checked(rule, context, "discharge_outdoors", limit=context.limit("discharge_outdoors"), where=(thing.id,), place=place,
                              title=f"{rule.title}: {name}, its end", detail="nobody knows where it ends",
                              remedy="Follow it, or blow smoke into it, before anything is joined to it.")  # fmt: skip
        elif space_kind(context, thing.ends_at) is not SpaceKind.OUTDOORS:
            limit = context.limit("discharge_outdoors") or arithmetic("discharge_outdoors", 0.0, "")
            yield yes_or_no(rule, limit, False, where=(thing.id,), place=place, title=f"{rule.title}: {name}, its end",
                            detail=f"it ends in the {thing.ends_at}", remedy="Do not use it, or carry it on to the open air.")  # fmt: skip
        if thing.diameter_in is not None:
            need = equal_round_in(outlet)
            limit = arithmetic("old_duct", need, must=False)
            yield at_least(rule, limit, thing.diameter_in, where=(thing.id,), place=place, title=f"{rule.title}: {name}, its size",
                           detail=f"the hood's outlet is {section_words(outlet, context.scene.metric)}",
                           remedy="Tear it out and lay a wider one, or choose a hood with a smaller outlet and fan.")  # fmt: skip


def _old(diameter_in: float) -> Context:
    old = Obstacle(
        "old-duct", ObstacleKind.DUCT, 56.0, 4.0, 84.0, 8.0, 8.0, 60.0, diameter_in=diameter_in, ends_at="outdoors"
    )
    return look(kitchen(obstacles=(old,)))


RULE = Rule(
    code="EXI-DUCT",
    title="Old duct",
    scope=Scope.SCENE,
    checks="Where an existing duct ends and whether it is as wide as the hood's outlet.",
    why="A strong new hood on a narrow old duct is loud and weak, and an unknown end may be an attic.",
    limits=("discharge_outdoors",),
    sources=("arithmetic",),
    applies="To ducts that the scene lists as existing.",
    blind="Grease, dents and open joints inside.",
    judge=judge,
    passing_words="An old 8 in duct that ends outdoors, for an 8 in outlet.",
    passing=lambda: _old(8.0),
    failing_words="An old 6 in duct for the same hood.",
    failing=lambda: _old(6.0),
)
