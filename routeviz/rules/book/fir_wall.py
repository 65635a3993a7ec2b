"""A fire-rated wall that the duct passes through."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from routeviz.model.finding import Finding
from routeviz.rules.bench import OUT, hood_wall_solid, kitchen, look, meets, straight_out
from routeviz.rules.context import Context
from routeviz.rules.outcome import not_checked, yes_or_no
from routeviz.rules.registry import Rule, Scope
from routeviz.rules.touched import solid_of

_BOARD_IN = 0.625  # one layer of the board that shafts are closed with


def judge(context: Context, rule: Rule) -> Iterator[Finding]:
    """Look for fire-rated walls among all that the route passes through, plates included."""
    limit, told = context.limit("fire_wall"), set()
    for crossing in context.the_route().penetrations:
        solid = solid_of(context.frame, crossing.solid)
        if solid is None or not solid.rated or solid.wall in told:
            continue
        told.add(solid.wall)
        title = f"{rule.title}: {solid.wall}"
        detail = "routeviz does not route through a rated wall on its own: its rating needs a listed system or a shaft"
        if limit is None:
            yield not_checked(
                rule, context, "fire_wall", where=(crossing.solid,), place=crossing.centre, title=title, detail=detail
            )
        else:
            yield yes_or_no(rule, limit, False, where=(crossing.solid,), place=crossing.centre, title=title, detail=detail,
                            remedy=f"Go another way, or furr out a shaft beside the wall, {context.length(_shaft_in(context))} "
                            f"deep for the duct, its gaps and {context.length(_BOARD_IN)} board, and have it approved.")  # fmt: skip


def _shaft_in(context: Context) -> float:
    """Give how far a shaft for the duct stands out from a wall [in]: its flat side, a gap on both sides, the board."""
    section = context.the_route().section
    return min(section.width_in, section.height_in) + 2 * context.scene.duct.clearance_in + _BOARD_IN


def _through(rated: bool) -> Context:
    board = replace(hood_wall_solid(), rated=rated)
    return look(
        kitchen(),
        solids=(board,),
        route=straight_out(penetrations=(meets(board, OUT, (60.0, 0.25, 80.0), 8.5),)),
    )


RULE = Rule(
    code="FIR-WALL",
    title="Fire-rated wall",
    fault="Through a fire-rated wall",
    scope=Scope.ROUTE,
    checks="Whether the route passes through a wall that the scene calls fire-rated.",
    why="A hole in a rated wall lets fire through; only a listed way of closing it keeps the rating.",
    limits=("fire_wall",),
    sources=(),
    applies="To every wall that the scene marks as fire-rated, of the kitchen and of spaces beyond.",
    blind="Ratings that the scene does not mention, such as between dwellings.",
    judge=judge,
    passing_words="A duct through an ordinary wall.",
    passing=lambda: _through(False),
    failing_words="A duct through a fire-rated wall.",
    failing=lambda: _through(True),
)
