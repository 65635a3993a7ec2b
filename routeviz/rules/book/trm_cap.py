"""A duct with no cap."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from routeviz.model.finding import Finding
from routeviz.model.route import PartKind
from routeviz.model.scene import SpaceKind
from routeviz.rules.bench import look, straight_up
from routeviz.rules.context import Context
from routeviz.rules.outcome import arithmetic, yes_or_no
from routeviz.rules.registry import Rule, Scope


def judge(context: Context, rule: Rule) -> Iterator[Finding]:
    """Look for a cap at the end of a duct that ends outdoors."""
    route = context.the_route()
    if route.termination.space != SpaceKind.OUTDOORS:
        return
    limit = replace(arithmetic("cap", 0.0, ""), source="common-practice", must=False)
    capped = route.capped
    yield yes_or_no(rule, limit, capped, where=(route.parts[-1].id,), place=route.termination.point,
                    remedy="Fit a cap made for hoods, with a damper and no screen.")  # fmt: skip


def _open() -> Context:
    route = straight_up(as_built=True)
    end = replace(route.parts[-1], kind=PartKind.OPEN_END, id="open-end")
    return look(route=replace(route, parts=(*route.parts[:-1], end)))


RULE = Rule(
    code="TRM-CAP",
    title="Cap at the end",
    fault="No cap at the end",
    scope=Scope.ROUTE,
    checks="Whether a cap closes the end of the duct against rain and animals.",
    why="An open end takes in rain, birds and wind.",
    limits=(),
    sources=("common-practice",),
    applies="To routes that end outdoors.",
    blind="Screens inside the cap: a hood cap has none, grease would clog it.",
    judge=judge,
    passing_words="A duct with a cap.",
    passing=lambda: look(route=straight_up()),
    failing_words="A duct that just ends.",
    failing=lambda: _open(),
)
