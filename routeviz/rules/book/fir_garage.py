"""A duct through the garage."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from routeviz.model.finding import Finding
from routeviz.model.scene import SpaceKind
from routeviz.rules.bench import duct, kitchen, look, zone
from routeviz.rules.context import Context
from routeviz.rules.outcome import as_bought, at_least, in_thousandths, not_checked, yes_or_no
from routeviz.rules.registry import Rule, Scope
from routeviz.rules.whereabouts import lengths_by_space, space_kind
from routeviz.units import length_text


def judge(context: Context, rule: Rule) -> Iterator[Finding]:
    """Measure the run in a garage and look at what it is made of."""
    run = sum(v for s, v in lengths_by_space(context).items() if space_kind(context, s) is SpaceKind.GARAGE)
    if run < 1.0:
        return
    limit, sheet, material = context.limit("garage_sheet"), context.scene.duct.sheet_in, context.scene.duct.material
    about = length_text(run, metric=context.scene.metric, long=True)  # followed to about an inch: no finer is said
    detail = f"about {about} through the garage, sealed, with no opening there"
    if limit is None:
        yield not_checked(rule, context, "garage_sheet", detail=detail)
        return
    steel = "steel" in material.lower()
    if not steel:
        yield yes_or_no(
            rule, limit, False, detail=f"{detail}; {material} is not steel", remedy="Use steel duct in the garage."
        )
    elif sheet is None:
        yield not_checked(rule, context, "garage_sheet", limit=in_thousandths(limit), detail=detail,
                          remedy=f"Buy duct of {context.sheet(limit.number)} sheet or thicker for this stretch; seal it where it passes the wall.")  # fmt: skip
    else:
        yield at_least(
            rule,
            as_bought(limit, sheet),
            sheet * 1000,
            detail=detail,
            remedy=f"Use {context.sheet(limit.number)} sheet or thicker for this stretch.",
        )


def _thick(sheet_in: float) -> Context:
    plain = kitchen()
    scene = replace(plain, duct=replace(plain.duct, sheet_in=sheet_in))
    beyond = zone("garage", (0.0, 6.5, 0.0), (120.0, 240.0, 96.0), "garage")
    return look(scene, zones=(beyond,), route=duct(((60.0, 0.0, 80.0), (60.0, 246.0, 80.0))))


RULE = Rule(
    code="FIR-GARAGE",
    title="Duct through the garage",
    scope=Scope.ROUTE,
    checks="The sheet and material of duct that runs through a garage.",
    why="The wall to the garage keeps fire and fumes out of the house; a thin or open duct breaks it.",
    limits=("garage_sheet",),
    sources=(),
    applies="To routes that run through a garage. A route that ends in one is broken by another rule.",
    blind="The fire stopping where the duct passes the wall.",
    judge=judge,
    passing_words="26 gage steel through the garage.",
    passing=lambda: _thick(0.0217),
    failing_words="30 gage steel through the garage.",
    failing=lambda: _thick(0.013),
)
