"""An old hole that may be used again."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from routeviz.model.finding import Finding
from routeviz.model.oldholes import centre_of, met_by, size_in, web_in
from routeviz.model.route import Penetration
from routeviz.model.scene import Obstacle, ObstacleKind
from routeviz.model.spoken import spoken
from routeviz.rules.bench import OUT, hood_wall_solid, kitchen, look, meets, straight_out
from routeviz.rules.context import Context
from routeviz.rules.outcome import arithmetic, at_least, at_most, yes_or_no
from routeviz.rules.registry import Rule, Scope


def judge(context: Context, rule: Rule) -> Iterator[Finding]:
    """Compare each old hole with the hole that the route needs nearest to it: use, enlarge or close it."""
    for hole in context.scene.obstacles:
        if hole.kind is not ObstacleKind.HOLE:
            continue
        met = met_by(hole, context.the_route().penetrations)
        yield _unused(context, rule, hole) if met is None else _met(context, rule, hole, met[0], met[1])


def _title(rule: Rule, hole: Obstacle) -> str:
    name = spoken(hole.id)
    return rule.title if name == rule.title.lower() else f"{rule.title}: {name}"


def _unused(context: Context, rule: Rule, hole: Obstacle) -> Finding:
    """Tell of a hole that stays to be closed; what is left between it and the new one must be worth keeping."""
    least, web = context.limit("old_hole_web"), web_in(hole, context.the_route().penetrations)
    if least is not None and web is not None and web < least.number:
        return at_least(
            rule, least, web, where=(hole.id,), place=centre_of(hole), title=f"{_title(rule, hole)}, beside the new one",
            detail="so thin a strip between two holes holds neither screw nor sealant",
            remedy=f"Move the duct {context.length(least.number - web)} away from it, or cut both out as one opening and patch that.",
        )  # fmt: skip
    closed = yes_or_no(
        rule, arithmetic("old_hole", 0.0, must=False), True, where=(hole.id,), place=centre_of(hole), title=f"{_title(rule, hole)}, not used",
        detail="close it, insulate it and seal it on the outside",
    )  # fmt: skip
    return replace(closed, measured=size_in(hole), unit="in")


def _met(context: Context, rule: Rule, hole: Obstacle, off_in: float, crossing: Penetration) -> Finding:
    """Judge a hole that the new one meets: it must be wide enough, and its middle where the duct's is.

    One that is wide enough to hold the new hole wherever that sits is good too.
    """
    play, size, need = context.limit("reuse_shift"), size_in(hole), max(crossing.hole_in)
    where, place, title = (hole.id, crossing.solid), centre_of(hole), _title(rule, hole)
    enlarge = f"Enlarge it to {context.length(need)} round the new middle, and make good the rest."
    detail = f"the new duct's middle is {context.length(off_in)} off the old hole's"
    if play is not None and off_in > play.number and size < need + 2 * off_in:
        return at_most(rule, play, off_in, where=where, place=place, title=f"{title}, off the new duct's middle",
                       detail=f"{detail}; the hole is {context.length(size)}, {context.length(need)} are needed",
                       remedy=enlarge)  # fmt: skip
    return at_least(rule, arithmetic("hole", need, must=False), size, where=where, place=place, title=title, detail=detail,
                    remedy=enlarge)  # fmt: skip


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
    limits=("reuse_shift", "old_hole_web"),
    sources=("arithmetic",),
    applies="To holes that the scene lists.",
    blind="What the old hole looks like inside.",
    judge=judge,
    passing_words="An old hole of 9 1/2 in where 8 1/2 in are needed.",
    passing=lambda: _old(9.5),
    failing_words="An old 6 in hole at the same place.",
    failing=lambda: _old(6.0),
)
