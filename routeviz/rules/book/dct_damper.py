"""No backdraft damper."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from routeviz.model.finding import Finding
from routeviz.model.route import PartKind
from routeviz.rules.bench import kitchen, look, straight_up
from routeviz.rules.context import Context
from routeviz.rules.outcome import not_checked, yes_or_no
from routeviz.rules.registry import Rule, Scope


def judge(context: Context, rule: Rule) -> Iterator[Finding]:
    """Look for a damper in the run or in the cap."""
    route, limit = context.the_route(), context.limit("damper")
    capped = route.capped
    has = any(p.kind is PartKind.DAMPER for p in route.parts) or (capped and context.scene.cap.damper)
    place = route.termination.point
    if limit is None:
        if not has:
            yield not_checked(rule, context, "damper", where=("cap",), place=place)
        return
    yield yes_or_no(
        rule, limit, has, where=("cap",), place=place, remedy="Fit a cap with a damper that closes by itself."
    )


def _damped(damper: bool) -> Context:
    plain = kitchen()
    return look(replace(plain, cap=replace(plain.cap, damper=damper)), route=straight_up())


RULE = Rule(
    code="DCT-DAMPER",
    title="Backdraft damper",
    fault="No backdraft damper",
    scope=Scope.ROUTE,
    checks="Whether a damper closes the duct when the fan is off.",
    why="Without one, cold air, rain and insects come down the duct.",
    limits=("damper",),
    sources=(),
    applies="To every route. A damper in the hood alone is not counted.",
    blind="Whether an old damper still closes.",
    judge=judge,
    passing_words="A cap with a damper.",
    passing=lambda: _damped(True),
    failing_words="A cap without one.",
    failing=lambda: _damped(False),
)
