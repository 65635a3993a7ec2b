"""A roof cap that the snow covers."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from routeviz.model.finding import Finding
from routeviz.model.scene import Site
from routeviz.model.solids import FaceKind
from routeviz.rules.bench import kitchen, look, straight_up
from routeviz.rules.context import Context
from routeviz.rules.outcome import judge_number, not_checked
from routeviz.rules.registry import Rule, Scope


def judge(context: Context, rule: Rule) -> Iterator[Finding]:
    """Compare the duct's height above the roof with the snow that lies there."""
    end, site = context.the_route().termination, context.scene.site
    if end.kind is not FaceKind.ROOF:
        return
    stub = context.scene.cap.roof_stub_in
    if site.snow_in is None:
        if site.cold_climate:
            yield not_checked(rule, context, "roof_above_snow", limit=context.limit("roof_above_snow"), measured=stub, unit="in",
                              place=end.point, remedy="Ask how deep the snow lies on roofs here; keep the cap above it.")  # fmt: skip
        return
    yield from judge_number(
        rule, context, "roof_above_snow", stub - site.snow_in, "in", where=("cap",), place=end.point,
        detail=f"the duct stands {context.length(stub)} above the roof, the snow {context.length(site.snow_in)}; sliding snow tears caps off metal roofs",
        remedy=f"Carry the duct {context.length(max(0.0, site.snow_in - stub))} higher above the roof, or leave through a wall.",
    )  # fmt: skip


def _snow(snow_in: float) -> Context:
    return look(replace(kitchen(), site=Site(snow_in=snow_in)), route=straight_up())


RULE = Rule(
    code="TRM-SNOW",
    title="Roof cap above the snow",
    scope=Scope.ROUTE,
    checks="The height of the duct's end above the roof, against the depth of snow that the scene gives.",
    why="A covered cap stops the hood; sliding snow tears it off.",
    limits=("roof_above_snow",),
    sources=(),
    applies="To roof caps where the scene gives the snow or says that the climate is cold.",
    blind="Drifts behind ridges and chimneys, and how slippery the roof is.",
    judge=judge,
    passing_words="2 in of snow under an 8 in stub.",
    passing=lambda: _snow(2.0),
    failing_words="24 in of snow over the same stub.",
    failing=lambda: _snow(24.0),
)
