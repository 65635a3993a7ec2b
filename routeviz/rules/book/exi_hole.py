"""An old hole that may be used again."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from routeviz.model.finding import Finding
from routeviz.model.oldholes import centre_of, met_by, size_in
from routeviz.model.scene import Obstacle, ObstacleKind
from routeviz.rules.bench import OUT, hood_wall_solid, kitchen, look, meets, straight_out
from routeviz.rules.context import Context
from routeviz.rules.outcome import arithmetic, at_least, yes_or_no
from routeviz.rules.registry import Rule, Scope


def judge(context: Context, rule: Rule) -> Iterator[Finding]:
    """Compare each old hole with the hole that the route needs nearest to it: use, enlarge or close it."""
    limit = context.limit("reuse_shift")
    play = limit.number if limit is not None else 1.0
    for hole in context.scene.obstacles:
        if hole.kind is not ObstacleKind.HOLE:
            continue
        met, size, name = met_by(hole, context.the_route().penetrations), size_in(hole), hole.id.replace("-", " ")
        title, place = rule.title if name == rule.title.lower() else f"{rule.title}: {name}", centre_of(hole)
        if met is None:
            yield yes_or_no(rule, arithmetic("old_hole", 0.0, must=False), True, where=(hole.id,), place=place,
                            title=f"{title}, not used", detail="close it, insulate it and seal it on the outside")  # fmt: skip
            continue
        need = max(met[1].hole_in)
        off = context.length(met[0])
        own = replace(arithmetic("hole", need + (2 * met[0] if met[0] > play else 0.0), must=False), note="")
        yield at_least(rule, own, size, where=(hole.id, met[1].solid), place=place, title=title,
                       detail=f"the new duct's middle is {off} off the old hole's",
                       remedy=f"Enlarge it to {context.length(need)} round the new middle, and make good the rest.")  # fmt: skip


def _old(diameter_in: float) -> Context:
    hole = Obstacle("old-hole", ObstacleKind.HOLE, 60.0 - diameter_in / 2, -6.5, 80.0 - diameter_in / 2, diameter_in, 6.5,
                    diameter_in, diameter_in=diameter_in)  # fmt: skip
    board = hood_wall_solid()
    route = straight_out(penetrations=(meets(board, OUT, (60.0, 0.25, 80.0), 8.5),))
    return look(kitchen(obstacles=(hole,)), solids=(board,), route=route)


RULE = Rule(
    code="EXI-HOLE",
    title="Old hole",
    scope=Scope.ROUTE,
    checks="Whether an existing hole fits the new duct, must be enlarged, or stays to be closed.",
    why="An old hole is worth using when it fits; enlarging it wrongly costs more than a new one.",
    limits=("reuse_shift",),
    sources=("arithmetic",),
    applies="To holes that the scene lists.",
    blind="What the old hole looks like inside.",
    judge=judge,
    passing_words="An old hole of 9 1/2 in where 8 1/2 in are needed.",
    passing=lambda: _old(9.5),
    failing_words="An old 6 in hole at the same place.",
    failing=lambda: _old(6.0),
)
