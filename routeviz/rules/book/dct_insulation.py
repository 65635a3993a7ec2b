"""Bare duct in a cold place."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from routeviz.model.finding import Finding
from routeviz.model.scene import Site
from routeviz.rules.bench import kitchen, look, straight_up, zone
from routeviz.rules.context import Context
from routeviz.rules.outcome import judge_number, not_checked
from routeviz.rules.registry import Rule, Scope
from routeviz.rules.whereabouts import cold_run


def judge(context: Context, rule: Rule) -> Iterator[Finding]:
    """Measure the run through unheated places, and compare what is wrapped round it."""
    if not context.scene.site.cold_climate:
        return
    run = cold_run(context)
    if run < 1.0:
        return
    wrapped = context.scene.duct.insulation_r
    detail = f"{context.length(run)} of duct in unheated places: warm steam turns to water inside it"
    if wrapped is None:
        limit = context.limit("insulation_r")
        number = f"R-{limit.number:g}" if limit else "insulation"
        yield not_checked(rule, context, "insulation_r", limit=limit, detail=detail,
                          remedy=f"Wrap it with {number} and a vapour barrier outside; keep the joints within reach.")  # fmt: skip
        return
    yield from judge_number(
        rule, context, "insulation_r", wrapped, "R", detail=detail, remedy="Wrap it with more insulation."
    )


def _wrapped(r: float) -> Context:
    plain = kitchen()
    scene = replace(plain, site=Site(cold_climate=True), duct=replace(plain.duct, insulation_r=r))
    attic = zone("attic", (0.0, -120.0, 96.0), (120.0, 6.0, 140.0), "attic")
    return look(scene, zones=(attic,), route=straight_up())


RULE = Rule(
    code="DCT-INSULATION",
    title="Insulation in cold places",
    scope=Scope.ROUTE,
    checks="How much duct runs through attic, garage, porch or crawl space in a cold climate, and what is wrapped round it.",
    why="Steam condenses in a cold duct, runs back and drips from the hood.",
    limits=("insulation_r",),
    sources=(),
    applies="Where the scene says that the climate is cold. Codes ask it of supply and return ducts; for exhaust it is advice unless the place says more.",
    blind="How cold it gets, and how the insulation is closed at joints.",
    judge=judge,
    passing_words="R-8 round the duct in the attic.",
    passing=lambda: _wrapped(8.0),
    failing_words="R-4 round the same duct.",
    failing=lambda: _wrapped(4.0),
)
