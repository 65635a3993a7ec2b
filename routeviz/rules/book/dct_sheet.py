"""Sheet metal too thin."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from routeviz import catalog
from routeviz.model.finding import Finding
from routeviz.model.scene import SectionSize
from routeviz.rules.bench import kitchen, look, straight_up
from routeviz.rules.context import Context
from routeviz.rules.outcome import as_bought, at_least, in_thousandths, not_checked
from routeviz.rules.registry import Rule, Scope


def _key(section: SectionSize) -> str:
    """Name the limit that the duct's width asks for."""
    rows = catalog.table("rules")["sheet"]["round" if section.is_round else "rectangular"]
    if section.width_in < rows["narrow_below_in"]:
        return "sheet_narrow"
    return "sheet_middle" if section.width_in <= rows["middle_to_in"] else "sheet_wide"


def judge(context: Context, rule: Rule) -> Iterator[Finding]:
    """Compare the sheet's thickness with the least for the duct's width."""
    key = _key(context.the_route().section)
    limit, sheet = context.limit(key), context.scene.duct.sheet_in
    if limit is None:
        if context.profile.asked("sheet_narrow"):
            yield not_checked(rule, context, "sheet_narrow")
    elif sheet is None:
        yield not_checked(
            rule,
            context,
            key,
            limit=in_thousandths(limit),
            remedy=f"Buy duct of {limit.note} ({context.sheet(limit.number)}) or thicker.",
        )
    else:
        yield at_least(
            rule,
            as_bought(limit, sheet),
            sheet * 1000,
            remedy=f"Use {limit.note} ({context.sheet(limit.number)}) or thicker.",
        )


def _laid(sheet_in: float) -> Context:
    plain = kitchen()
    return look(replace(plain, duct=replace(plain.duct, sheet_in=sheet_in)), route=straight_up())


RULE = Rule(
    code="DCT-SHEET",
    title="Sheet thickness",
    scope=Scope.ROUTE,
    checks="The thickness of the duct's sheet metal against the least for its width.",
    why="Thin sheet crushes, rusts through and opens at its joints.",
    limits=("sheet_narrow", "sheet_middle", "sheet_wide"),
    sources=(),
    applies="When the scene gives the thickness; else it says what to buy.",
    blind="Thinner sheet that a pressure class would allow.",
    judge=judge,
    passing_words="8 in duct of 0.016 in sheet.",
    passing=lambda: _laid(0.016),
    failing_words="8 in duct of 0.010 in sheet.",
    failing=lambda: _laid(0.010),
)
