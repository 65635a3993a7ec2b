"""An old hole that may be used again."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import replace

from routeviz.model.finding import Finding
from routeviz.model.route import Penetration
from routeviz.model.scene import Obstacle, ObstacleKind
from routeviz.rules.bench import OUT, hood_wall_solid, kitchen, look, meets, straight_out
from routeviz.rules.context import Context
from routeviz.rules.cuts import main_axis
from routeviz.rules.outcome import arithmetic, at_least, at_most, yes_or_no
from routeviz.rules.registry import Rule, Scope


def _size(hole: Obstacle) -> float:
    return hole.diameter_in if hole.diameter_in is not None else min(hole.width_in, hole.height_in)


def _centre(hole: Obstacle) -> tuple[float, float, float]:
    return (hole.left_in + hole.width_in / 2, -hole.out_in - hole.depth_in / 2, hole.bottom_in + hole.height_in / 2)


def _nearest(hole: Obstacle, crossings: tuple[Penetration, ...]) -> tuple[float, Penetration] | None:
    """Give the crossing in the hole's plane whose middle is nearest to it, and how far off it is."""
    middle = _centre(hole)
    thin = min(range(3), key=lambda a: (hole.width_in, hole.depth_in, hole.height_in)[a])
    found = []
    for crossing in crossings:
        axis = main_axis(crossing.direction)
        near = (
            min(crossing.centre[axis], crossing.leave[axis]) - 6.0
            <= middle[axis]
            <= max(crossing.centre[axis], crossing.leave[axis]) + 6.0
        )
        if axis == thin or (hole.diameter_in is not None and near):
            off = math.hypot(*(crossing.centre[a] - middle[a] for a in range(3) if a != axis))
            found.append((off, crossing))
    return min(found, key=lambda f: f[0]) if found else None


def judge(context: Context, rule: Rule) -> Iterator[Finding]:
    """Compare each old hole with the hole that the route needs nearest to it: use, enlarge or close it."""
    for hole in context.scene.obstacles:
        if hole.kind is not ObstacleKind.HOLE:
            continue
        met, size = _nearest(hole, context.the_route().penetrations), _size(hole)
        need = max(met[1].hole_in) if met is not None else 0.0
        if met is None or met[0] > (size + need) / 2:
            yield _unused(context, rule, hole)
        else:
            yield _met(context, rule, hole, met[0], met[1])


def _title(rule: Rule, hole: Obstacle) -> str:
    name = hole.id.replace("-", " ")
    return rule.title if name == rule.title.lower() else f"{rule.title}: {name}"


def _unused(context: Context, rule: Rule, hole: Obstacle) -> Finding:
    closed = yes_or_no(
        rule, arithmetic("old_hole", 0.0, must=False), True, where=(hole.id,), place=_centre(hole), title=_title(rule, hole),
        detail="not used: close it, insulate it and seal it on the outside",
    )  # fmt: skip
    return replace(closed, measured=_size(hole), unit="in")


def _met(context: Context, rule: Rule, hole: Obstacle, off_in: float, crossing: Penetration) -> Finding:
    """Judge a hole that the new one meets: it must be wide enough, and its middle where the duct's is.

    One that is wide enough to hold the new hole wherever that sits is good too.
    """
    play, size, need = context.limit("reuse_shift"), _size(hole), max(crossing.hole_in)
    where, place, title = (hole.id, crossing.solid), _centre(hole), _title(rule, hole)
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
