"""A duct that does not end outdoors."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from routeviz.model.finding import Finding
from routeviz.model.route import Termination
from routeviz.model.scene import SpaceKind
from routeviz.rules.bench import UP, look, straight_up
from routeviz.rules.context import Context
from routeviz.rules.outcome import not_checked, yes_or_no
from routeviz.rules.registry import Rule, Scope
from routeviz.rules.whereabouts import space_kind

_WHY = {
    SpaceKind.GARAGE: "a garage is not outdoors: fire, smoke and carbon monoxide pass both ways",
    SpaceKind.ATTIC: "an attic is not outdoors, vented or not: grease and water stay in it",
    SpaceKind.PORCH: "a roofed porch or its attic is not outdoors",
    SpaceKind.CRAWL: "a crawl space is not outdoors",
    SpaceKind.SHAFT: "a shared shaft is not outdoors",
}


def judge(context: Context, rule: Rule) -> Iterator[Finding]:
    """Look at where the duct really ends."""
    end, limit = context.the_route().termination, context.limit("discharge_outdoors")
    if not end.space:
        yield not_checked(rule, context, "discharge_outdoors", limit=limit, place=end.point, must=True,
                          detail="nobody knows where the duct ends", remedy="Follow the duct and find its end first.")  # fmt: skip
        return
    out, kind = end.space == SpaceKind.OUTDOORS, space_kind(context, end.space)
    why = _WHY.get(kind, "") if kind else ""
    said = f"ends {end.label}{f'; the list says {end.stated}' if end.stated else ''}"
    detail = end.label if out else f"{said}; {why}" if why else said
    if limit is None:
        if not out:
            yield not_checked(rule, context, "discharge_outdoors", place=end.point, detail=detail)
        return
    found = yes_or_no(rule, limit, out, where=("cap",), place=end.point, detail=detail,
                      remedy="Carry the duct on, sealed, through a wall or the roof to the open air.")  # fmt: skip
    if out:
        yield found
        return
    title = _ends(end, found.title)
    told = title.lower() == said.lower()  # the title says where it ends already
    yield replace(found, title=title, detail=(why or "that is not outdoors") if told else detail)


def _ends(end: Termination, otherwise: str) -> str:
    """Name a wrong end by where it is, where that can be said."""
    where = end.label.partition(",")[0]
    return f"Ends {where}" if where.startswith(("in ", "inside ", "between ")) else otherwise


def _ending(space: str) -> Context:
    point = (60.0, -8.0, 120.0)
    return look(
        route=straight_up(termination=Termination("", None, space, point, UP, f"inside the {space}"), as_built=True)
    )


RULE = Rule(
    code="TRM-OUTDOORS",
    title="Ends outdoors",
    fault="Does not end outdoors",
    scope=Scope.ROUTE,
    checks="Whether the duct ends in the open air.",
    why="Grease and steam in an attic rot and burn; fumes in a garage or crawl space come back in.",
    limits=("discharge_outdoors",),
    sources=("irc-2015-m1501-1",),
    applies="To every route. Attics, soffits, ridge vents, crawl spaces, garages, porches and shafts do not count as outdoors.",
    blind="Ductless hoods, which some places allow with other ventilation.",
    judge=judge,
    passing_words="A duct through the roof.",
    passing=lambda: look(route=straight_up()),
    failing_words="A duct that ends in the attic.",
    failing=lambda: _ending("attic"),
)
