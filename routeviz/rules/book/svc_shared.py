"""A duct in the way of other air."""

from __future__ import annotations

from collections.abc import Iterator

from routeviz.model.finding import Finding
from routeviz.model.scene import ServiceKind
from routeviz.model.solids import Box, Crossing, Solid, SolidKind
from routeviz.rules.bench import OUT, look, meets, straight_out
from routeviz.rules.context import Context
from routeviz.rules.outcome import not_checked, yes_or_no
from routeviz.rules.registry import Rule, Scope
from routeviz.rules.touched import solid_of

_AIR_WAYS = {ServiceKind.RETURN_AIR.value, ServiceKind.DUCT.value, ServiceKind.FLUE.value}


def judge(context: Context, rule: Rule) -> Iterator[Finding]:
    """Look for return-air bays, other ducts and flues that the route enters."""
    limit = context.limit("own_duct")
    for crossing in context.the_route().penetrations:
        solid = solid_of(context.frame, crossing.solid)
        if solid is None or solid.kind is not SolidKind.SERVICE or solid.material not in _AIR_WAYS:
            continue
        detail = "a hood's duct shares nothing with another exhaust, a flue or the heating's air"
        title = f"{rule.title}: {solid.label}"
        if limit is None:
            yield not_checked(
                rule, context, "own_duct", where=(solid.id,), place=crossing.centre, detail=detail, title=title
            )
        else:
            yield yes_or_no(rule, limit, False, where=(solid.id,), place=crossing.centre, title=title, detail=detail,
                            remedy="Use another bay.")  # fmt: skip


def _bay(kind: str) -> Context:
    bay = Solid("hood-bay", SolidKind.SERVICE, f"{kind} bay", Box((52.0, 0.5, 4.0), (66.0, 6.0, 94.0)), Crossing.NEVER,
                "example", material=kind)  # fmt: skip
    return look(solids=(bay,), route=straight_out(penetrations=(meets(bay, OUT, (60.0, 3.0, 80.0), 8.5),)))


RULE = Rule(
    code="SVC-SHARED",
    title="Duct on its own",
    fault="Shared with other air",
    scope=Scope.ROUTE,
    checks="Whether the route enters a return-air bay, another duct or a flue.",
    why="Grease and smoke would go where the house breathes.",
    limits=("own_duct",),
    sources=(),
    applies="To services that carry air.",
    blind="Bays used for return air that the scene does not list.",
    judge=judge,
    passing_words="A bay with a cable.",
    passing=lambda: _bay("cable"),
    failing_words="A bay that carries return air.",
    failing=lambda: _bay("return air"),
)
