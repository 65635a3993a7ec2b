"""A duct longer than the table or the maker allows."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import replace

from routeviz import catalog
from routeviz.model.finding import Finding
from routeviz.rules.bench import air, look, straight_up
from routeviz.rules.context import Context
from routeviz.rules.outcome import at_most
from routeviz.rules.profiles import maker_limit
from routeviz.rules.registry import Rule, Scope


def judge(context: Context, rule: Rule) -> Iterator[Finding]:
    """Compare the code's length (straight duct plus a deduction per elbow) with its table, and ours with the maker's."""
    blow, table, most = context.air, context.limit("duct_length"), context.scene.rules.maker.max_equivalent_ft
    if blow is None:
        return
    elbow = context.quantity(catalog.table("ducts")["code_length"]["elbow_ft"], "ft")
    if most is not None:
        yield at_most(rule, maker_limit(context.scene, "max_equivalent", most, "ft"), blow.code_equivalent_ft,
                      title=f"{rule.title} by the maker", detail=f"straight duct plus {elbow} for each elbow; use the maker's own figures for his fittings if he gives them",
                      remedy="Shorten the run, take out an elbow, or use a wider duct.")  # fmt: skip
    allowed = blow.code_allowed_ft
    if table is not None and allowed is not None and not math.isinf(allowed):
        number = replace(table, value=allowed, unit="ft", said=f"{allowed:g} ft")
        yield at_most(rule, number, blow.code_equivalent_ft,
                      detail=f"by the code's table, {elbow} for each elbow; {table.note}",
                      remedy="Use a wider duct, or show the calculated flow.")  # fmt: skip


def _long(ft: float) -> Context:
    return look(route=straight_up(), blow=air(150.0, code_ft=ft, allowed_ft=112.0))


RULE = Rule(
    code="AIR-LENGTH",
    title="Length of the duct",
    scope=Scope.ROUTE,
    checks="The duct's length with 15 ft for each elbow, against the code's table for its diameter and the fan's flow, and against the maker's most.",
    why="A long narrow duct throttles the fan below what the code counts on.",
    limits=("duct_length",),
    sources=(),
    applies="Up to 300 cfm, where the table ends; above that only calculation or measurement counts. The table is advice, since a calculated or measured flow may stand in for it; the length that a maker gives is a must.",
    blind="Fittings other than elbows.",
    judge=judge,
    passing_words="6 in smooth duct, 150 cfm, 60 ft.",
    passing=lambda: _long(60.0),
    failing_words="The same duct, 130 ft.",
    failing=lambda: _long(130.0),
)
