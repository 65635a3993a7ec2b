"""Members that carry nothing."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from routeviz.model.finding import Finding
from routeviz.model.scene import MemberKind
from routeviz.model.solids import Crossing, Solid, SolidKind
from routeviz.rules.bench import OUT, look, meets, member, straight_out
from routeviz.rules.context import Context
from routeviz.rules.registry import Rule, Scope
from routeviz.rules.touched import ruling_findings


def judge(context: Context, rule: Rule) -> Iterator[Finding]:
    """Judge every furring strip, blocking and panel that the route cuts."""
    yield from ruling_findings(context, rule)


def _strip() -> Solid:
    return member("furring-4", SolidKind.FURRING, (59.25, 0.5, 0.0), (60.75, 1.25, 96.0), 2, "1x2",
                  timber=MemberKind.FURRING, crossing=Crossing.RULE)  # fmt: skip


def _out(solid: Solid) -> Context:
    hole = meets(solid, OUT, (60.0, 1.0, 80.0), 8.5)
    return look(solids=(solid,), route=straight_out(penetrations=(hole,)))


RULE = Rule(
    code="MBR-FREE",
    title="Cut in a strip, blocking or panel",
    scope=Scope.ROUTE,
    checks="Whether furring strips, blocking, and panels of cabinets or soffits may be cut.",
    why="They carry nothing, so cutting one is allowed; what is left must be fixed again.",
    limits=("member_cuts",),
    sources=("common-practice",),
    applies="To furring strips, blocking, and things whose scene entry says that they may be cut.",
    blind="Blocking that an engineer asked for.",
    judge=judge,
    passing_words="A furring strip on a brick wall, behind the duct.",
    passing=lambda: _out(_strip()),
    failing_words="A cabinet panel that the scene says must stay whole.",
    failing=lambda: _out(
        replace(
            _strip(), id="panel", label="cabinet panel", kind=SolidKind.CABINET, crossing=Crossing.NEVER, member=None
        )
    ),
)
