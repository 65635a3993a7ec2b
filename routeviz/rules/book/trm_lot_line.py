"""A cap too near the lot line."""

from __future__ import annotations

from collections.abc import Iterator

from routeviz.model.finding import Finding
from routeviz.model.scene import OutdoorKind
from routeviz.model.solids import KeepOut
from routeviz.rules.bench import hood_wall_face, look, straight_out
from routeviz.rules.context import Context
from routeviz.rules.distances import distance_findings
from routeviz.rules.registry import Rule, Scope


def judge(context: Context, rule: Rule) -> Iterator[Finding]:
    """Measure from the cap's opening to the lot line."""
    yield from distance_findings(context, rule, (OutdoorKind.LOT_LINE,), "lot_line",
                                 remedy=", to another wall or through the roof.")  # fmt: skip


def _away(line_in: float) -> Context:
    line = KeepOut("lot-line", "lot line", OutdoorKind.LOT_LINE.value, (0.0, 12.0), (120.0, 110.0), 36.0, line_in)
    return look(faces=(hood_wall_face(line),), route=straight_out())


RULE = Rule(
    code="TRM-LOT-LINE",
    title="Cap to the lot line",
    scope=Scope.ROUTE,
    checks="The distance from the opening of the cap to the lot line.",
    why="The neighbour gets the smell, and fire must not reach across.",
    limits=("lot_line",),
    sources=(),
    applies="Where the scene gives the distance to the lot line, to caps on walls and level to those on the roof.",
    blind="Where the line really is, and how it runs beyond the wall that it was measured from.",
    judge=judge,
    passing_words="A wall 10 ft inside the lot line.",
    passing=lambda: _away(120.0),
    failing_words="A wall 18 in inside the lot line.",
    failing=lambda: _away(18.0),
)
