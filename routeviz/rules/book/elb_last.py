"""An elbow too near the cap."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from routeviz.model.finding import Finding
from routeviz.rules.bench import duct, kitchen, look
from routeviz.rules.context import Context
from routeviz.rules.outcome import at_least, wished
from routeviz.rules.registry import Rule, Scope
from routeviz.rules.sections import run_after_last_elbow


def judge(context: Context, rule: Rule) -> Iterator[Finding]:
    """Measure the straight duct between the last elbow and the cap."""
    wanted, found = context.scene.duct.last_run_in, run_after_last_elbow(context.the_route().parts)
    if wanted <= 0 or found is None:
        return
    length, elbow = found
    yield at_least(
        rule,
        wished("last_run", wanted),
        length,
        where=(elbow.id,),
        place=elbow.end,
        remedy="Move the last elbow farther from the cap.",
    )


def _with(run_in: float) -> Context:
    plain = kitchen()
    scene = replace(plain, duct=replace(plain.duct, last_run_in=12.0))
    return look(scene, route=duct(((60.0, -8.0, 77.5), (60.0, -8.0, 101.0), (68.0 + run_in, -8.0, 101.0))))


RULE = Rule(
    code="ELB-LAST",
    title="Straight before the cap",
    scope=Scope.ROUTE,
    checks="The straight duct between the last elbow and the cap, against what the scene wants.",
    why="Air that whirls into a cap flutters its flap.",
    limits=(),
    sources=("common-practice",),
    applies="When the scene asks for a last run and the route has an elbow.",
    blind="The make of the cap.",
    judge=judge,
    passing_words="20 in after the last elbow, 12 in wanted.",
    passing=lambda: _with(20.0),
    failing_words="4 in after the last elbow, 12 in wanted.",
    failing=lambda: _with(4.0),
)
