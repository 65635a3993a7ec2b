"""I-joists, trusses and other engineered members that the duct cuts."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from routeviz.model.finding import Finding
from routeviz.model.scene import MakerLimits, MemberKind, RuleChoice
from routeviz.model.solids import Solid, SolidKind
from routeviz.rules.bench import duct, kitchen, look, meets, member
from routeviz.rules.context import Context
from routeviz.rules.registry import Rule, Scope
from routeviz.rules.touched import ruling_findings


def judge(context: Context, rule: Rule) -> Iterator[Finding]:
    """Judge every engineered member that the route cuts."""
    yield from ruling_findings(context, rule)


def _i_joist() -> Solid:
    lo, hi = (59.0, -120.0, 96.0), (61.0, 0.0, 110.0)
    return member("i-joist-4", SolidKind.JOIST, lo, hi, 1, "14 in I-joist", timber=MemberKind.I_JOIST)


def _through(chart_in: float | None) -> Context:
    scene = replace(
        kitchen(), rules=RuleChoice("irc-2021", MakerLimits(member_hole_in=chart_in, document="hole chart"))
    )
    hole = meets(_i_joist(), (1.0, 0.0, 0.0), (60.0, -40.0, 103.0), 6.5)
    run = duct(((20.0, -40.0, 103.0), (126.5, -40.0, 103.0)), penetrations=(hole,))
    return look(scene, solids=(_i_joist(),), route=run)


RULE = Rule(
    code="MBR-ENGINEERED",
    title="Cut in an engineered member",
    scope=Scope.ROUTE,
    checks="Whether the route cuts an I-joist, truss, open-web joist, glued or steel member, and what its maker says; a hole in an I-joist must leave both flanges whole.",
    why="These members work only whole; their makers alone know where a hole does no harm.",
    limits=("member_cuts",),
    sources=("irc-r502-8-2", "irc-r802-7-2"),
    tables=("i_joist",),
    applies="To every engineered member that the route passes through or overlaps. The largest hole of the maker's chart and the depth of an I-joist's flange can be given in the scene.",
    blind="Distance to bearings and to other holes, which a chart also limits.",
    judge=judge,
    passing_words="A 6 1/2 in web hole where the maker's chart allows 7 in.",
    passing=lambda: _through(7.0),
    failing_words="The same hole with no chart at hand.",
    failing=lambda: _through(None),
)
