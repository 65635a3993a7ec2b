"""A shaft that others share."""

from __future__ import annotations

from collections.abc import Iterator

from routeviz.model.finding import Finding
from routeviz.model.scene import SpaceKind
from routeviz.rules.bench import look, straight_up, zone
from routeviz.rules.context import Context
from routeviz.rules.outcome import not_checked, yes_or_no
from routeviz.rules.registry import Rule, Scope
from routeviz.rules.whereabouts import lengths_by_space, space_kind


def judge(context: Context, rule: Rule) -> Iterator[Finding]:
    """Look for a shaft among the spaces that the route runs in or ends in."""
    route, limit = context.the_route(), context.limit("shared_shaft")
    spaces = [*lengths_by_space(context), route.termination.space]
    shafts = [s for s in dict.fromkeys(spaces) if s and space_kind(context, s) is SpaceKind.SHAFT]
    for shaft in shafts:
        detail = "a shaft that several dwellings share needs rated walls, its own fan and a fire engineer"
        if limit is None:
            yield not_checked(rule, context, "shared_shaft", place=route.termination.point, detail=detail)
        else:
            yield yes_or_no(rule, limit, False, place=route.termination.point, title=f"{rule.title}: {shaft}", detail=detail,
                            remedy="Ask the building's owner; plan a duct of your own, or a hood without one.")  # fmt: skip


def _in(space: str) -> Context:
    tall = zone(space, (40.0, -40.0, 96.0), (80.0, 6.0, 160.0), space)
    return look(zones=(tall,), route=straight_up())


RULE = Rule(
    code="FIR-SHARED",
    title="Shared shaft",
    fault="In a shared shaft",
    scope=Scope.ROUTE,
    checks="Whether the route uses a shaft.",
    why="Grease duct in a shared shaft carries fire and smoke from one dwelling to the next.",
    limits=("shared_shaft",),
    sources=(),
    applies="To spaces that the scene calls a shaft.",
    blind="What the building permits; this tool plans houses.",
    judge=judge,
    passing_words="A duct through an attic.",
    passing=lambda: _in("attic"),
    failing_words="A duct up a shaft.",
    failing=lambda: _in("shaft"),
)
