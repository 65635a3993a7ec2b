"""An elbow too soon after the hood."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from routeviz.model.finding import Finding
from routeviz.rules.bench import duct, kitchen, look
from routeviz.rules.context import Context
from routeviz.rules.outcome import at_least, wished
from routeviz.rules.registry import Rule, Scope
from routeviz.rules.sections import run_before_first_elbow


def judge(context: Context, rule: Rule) -> Iterator[Finding]:
    """Measure the straight duct between the hood's collar and the first elbow."""
    wanted, found = context.scene.duct.first_run_in, run_before_first_elbow(context.the_route().parts)
    if wanted <= 0 or found is None:
        return
    length, elbow = found
    yield at_least(
        rule,
        wished("first_run", wanted),
        length,
        where=(elbow.id,),
        place=elbow.start,
        remedy="Move the first elbow farther from the hood.",
    )


def _with(rise_in: float) -> Context:
    plain = kitchen()
    scene = replace(plain, duct=replace(plain.duct, first_run_in=18.0))
    top = 77.5 + rise_in + 8.0
    return look(scene, route=duct(((60.0, -8.0, 77.5), (60.0, -8.0, top), (110.0, -8.0, top))))


RULE = Rule(
    code="ELB-FIRST",
    title="Straight after the hood",
    scope=Scope.ROUTE,
    checks="The straight duct between the collar and the first elbow, against what the scene wants.",
    why="An elbow on the collar disturbs the air at the fan and makes it loud.",
    limits=(),
    sources=("common-practice",),
    applies="When the scene asks for a first run and the route has an elbow.",
    blind="How the fan takes it.",
    judge=judge,
    passing_words="24 in before the first elbow, 18 in wanted.",
    passing=lambda: _with(24.0),
    failing_words="6 in before the first elbow, 18 in wanted.",
    failing=lambda: _with(6.0),
)
