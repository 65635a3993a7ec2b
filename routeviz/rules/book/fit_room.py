"""A hood that something on the wall is in the way of."""

from __future__ import annotations

from collections.abc import Iterator

from routeviz.model.finding import Finding
from routeviz.rules.bench import cabinet, kitchen, look
from routeviz.rules.context import Context
from routeviz.rules.outcome import arithmetic, at_least
from routeviz.rules.registry import Rule, Scope
from routeviz.rules.room import free_places, in_the_way, room_beside


def judge(context: Context, rule: Rule) -> Iterator[Finding]:
    """Look for overlaps of the hood's canopy and body with what is on the wall; else tell the room beside it."""
    scene = context.scene
    bottom = scene.hood_bottom_in
    if bottom is None:
        return
    limit = context.limit("hood_room") or arithmetic("hood_room", 0.0)
    x, place = scene.hood.centre_in, (scene.hood.centre_in, -scene.hood.depth_in / 2, bottom)
    clashes = tuple(in_the_way(scene))
    if not clashes:
        room, name, thing = room_beside(scene)
        yield at_least(rule, limit, room, where=("hood-canopy", *((thing,) if thing else ())), place=place,
                       detail=f"the nearest thing is {name}")  # fmt: skip
        return
    left, right = free_places(scene)
    ways = [
        f"{context.length(x - left)} left" if left is not None else "",
        f"{context.length(right - x)} right" if right is not None else "",
    ]
    shifts = [
        v for v in (x - left if left is not None else None, right - x if right is not None else None) if v is not None
    ]
    if len(shifts) == 2 and shifts[1] < shifts[0]:
        ways.reverse()
    told = [w for w in ways if w]
    remedy = (
        f"Shift the hood {' or '.join(told)}." if told else "There is no room for it along this wall at this height."
    )
    for clash in clashes:
        if clash.across:
            detail = f"{clash.words} reaches {context.length(clash.overlap_in)} into the hood's place."
        else:
            detail = f"{clash.words} is {context.length(clash.overlap_in)} too low for it."
        yield at_least(rule, limit, -clash.overlap_in, where=("hood-canopy", clash.id), place=place,
                       title=f"{rule.title}: {clash.words}", detail=detail,
                       remedy=remedy if clash.across else "Hang the hood lower, or choose a lower one.")  # fmt: skip


def _beside(left_in: float) -> Context:
    return look(kitchen(obstacles=(cabinet("wall-cabinet", left_in, 54.0, 24.0, 30.0),)))


RULE = Rule(
    code="FIT-ROOM",
    title="Room for the hood",
    fault="No room for the hood",
    scope=Scope.SCENE,
    checks="Whether the canopy and the body share a place with side walls, cabinets, beams, windows, doors or the ceiling.",
    why="The first thing that goes wrong is that the hood does not go where it was drawn.",
    limits=("hood_room",),
    sources=("arithmetic",),
    applies="When the mounting height is given or chosen. Windows and doors of the hood wall count where heights overlap.",
    blind="Handles, trims, tiles and things that the scene does not list.",
    judge=judge,
    passing_words="A wall cabinet 3 in to the right of the canopy.",
    passing=lambda: _beside(81.0),
    failing_words="A wall cabinet that reaches 3 in into the canopy's place.",
    failing=lambda: _beside(75.0),
)
