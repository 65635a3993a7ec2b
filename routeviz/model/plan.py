"""Everything known about one answer."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from routeviz.model.airflow import AirNeed, AirResult, MakeupAir
from routeviz.model.finding import Finding, MemberRuling, State, Verdict
from routeviz.model.path import Paths
from routeviz.model.route import Route
from routeviz.model.scene import Assumption, Scene
from routeviz.model.solids import Frame
from routeviz.model.takeoff import Mark, TakeOff

__all__ = ["SCHEMA_VERSION", "Option", "Plan", "broken_everywhere"]

SCHEMA_VERSION = 1


@dataclass(frozen=True, slots=True)
class Option:
    """One way out with all that follows from it."""

    route: Route
    findings: tuple[Finding, ...]
    air: AirResult
    takeoff: TakeOff
    need: AirNeed | None = None  # what the kitchen asks of the air; None without fan data
    makeup: MakeupAir | None = None


@dataclass(frozen=True, slots=True)
class Plan:
    """A scene's answer. `options` is empty when no route exists; the first is the best.

    `scene` is the scene as planned: its hood has a mounting height, given or chosen.
    `findings` belong to the scene itself (heights, cover fit, electrical) and hold for every option.
    """

    scene: Scene
    frame: Frame
    paths: Paths
    options: tuple[Option, ...]
    findings: tuple[Finding, ...]
    verdict: Verdict
    answer: str  # the one sentence
    second: str  # why not simpler, or why no other way
    assumptions: tuple[Assumption, ...]
    seconds: tuple[tuple[str, float], ...]  # time of each stage
    members: tuple[MemberRuling, ...] = ()  # what may be done to each member that blocks a simpler route
    marks: tuple[Mark, ...] = ()  # of the hood where it stands, when there is no route to count them with

    @property
    def best(self) -> Option | None:
        """Give the best option, or None when there is no route."""
        return self.options[0] if self.options else None

    @property
    def all_findings(self) -> tuple[Finding, ...]:
        """Give the scene's findings and the best option's, worst first."""
        order = {"broken": 0, "close": 1, "fine": 2, "not checked": 3, "does not apply": 4}
        every = self.findings + (self.options[0].findings if self.options else ())
        return tuple(sorted(every, key=lambda f: (order[f.state], not f.must, f.code)))

    @property
    def must_broken(self) -> tuple[Finding, ...]:
        """Give the broken must-findings that nobody has waived."""
        return tuple(f for f in self.all_findings if f.state is State.BROKEN and f.must and not f.waived)


def broken_everywhere(plans: Iterable[Plan]) -> dict[str, str]:
    """Give the must-findings that are broken wherever a hood has a way out: they say nothing of its place.

    Returns
    -------
    dict of str to str
        Code to title; empty where no plan has a way out.
    """
    every = [{f.code: f.title for f in plan.must_broken} for plan in plans if plan.best is not None]
    return {code: title for code, title in every[0].items() if all(code in e for e in every)} if every else {}
