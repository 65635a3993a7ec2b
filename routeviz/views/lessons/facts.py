"""What a plan says, by name: the numbers and sentences that a lesson's words and conditions take from it.

A name is made of words with dots: ``elbows``, ``TRM-OPENING.measured``, ``member.joist-4.allowed``, ``loss.1.label``.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from routeviz.model.airflow import AirStatus
from routeviz.model.finding import Finding, MemberRuling, State
from routeviz.model.plan import Plan
from routeviz.model.route import PartKind
from routeviz.model.study import Fix
from routeviz.units import elbows_text, flow_text, length_text, quantity_text
from routeviz.views.words import finding_short, section_words

__all__ = ["Fact", "facts_of"]


@dataclass(frozen=True, slots=True)
class Fact:
    """One thing that a plan says: its value, its unit ("" for none), and how it is written for a person."""

    value: float | str
    unit: str
    text: str


Named = Iterator[tuple[str, Fact]]


def _word(text: str) -> Fact:
    return Fact(text, "", text)


def _count(value: float) -> Fact:
    return Fact(float(value), "", f"{value:g}")


class _Teller:
    def __init__(self, plan: Plan) -> None:
        self.plan, self.metric = plan, plan.scene.metric

    def long(self, value: float, *, feet: bool = False) -> Fact:
        return Fact(value, "in", length_text(value, metric=self.metric, long=feet))

    def flow(self, value: float) -> Fact:
        return Fact(value, "cfm", flow_text(value, metric=self.metric))

    def quantity(self, value: float, unit: str) -> Fact:
        return Fact(value, unit, quantity_text(value, unit, metric=self.metric))

    def whole(self) -> Named:
        """What is said of the plan as a whole."""
        plan, scene = self.plan, self.plan.scene
        yield "name", _word(scene.name)
        yield "verdict", _word(plan.verdict.value)
        yield "answer", _word(plan.answer)
        yield "second", _word(plan.second)
        yield "outcome", _word(plan.paths.outcome.value)
        yield "ways", _count(len(plan.options))
        yield "place", self.long(scene.hood.centre_in)
        if scene.hood.mount_in is not None:
            yield "height", self.long(scene.hood.mount_in)
        for state in (State.BROKEN, State.CLOSE, State.FINE):
            yield state.value, _count(sum(f.state is state and not f.waived for f in plan.all_findings))
        broken = [f for f in plan.all_findings if f.state is State.BROKEN and not f.waived]
        yield "broken.must", _count(sum(f.must for f in broken))
        yield "broken.advised", _count(sum(not f.must for f in broken))

    def route(self) -> Named:
        """What is said of the best way out; nothing where there is none."""
        best = self.plan.best
        if best is None:
            return
        route, air = best.route, best.air
        yield "elbows", Fact(route.elbows, "", elbows_text(route.elbows))
        yield "bends", _count(sum(p.kind is PartKind.ELBOW for p in route.parts))
        yield "length", self.long(route.length_in, feet=True)
        yield "boxed", self.long(route.boxed_in, feet=True)
        yield "words", _word(route.words)
        yield "section", _word(section_words(route.section, metric=self.metric))
        kind = route.termination.kind
        yield "exit", _word("indoors" if kind is None else kind.value)
        yield "exit.label", _word(route.termination.label)
        if air.full.status is AirStatus.NO_FAN:
            return
        yield "flow", self.flow(air.full.flow_cfm)
        yield "flow.low", self.flow(air.full.low_cfm)
        yield "flow.high", self.flow(air.full.high_cfm)
        yield "rated", self.flow(air.label_cfm)
        yield "lost", self.flow(air.label_cfm - air.full.flow_cfm)
        yield "speed", self.quantity(air.full.velocity_fpm, "ft/min")
        for n, bar in enumerate(sorted(air.bars, key=lambda b: (-b.loss_inwg, b.part)), 1):
            yield f"loss.{n}.label", _word(bar.label)
            yield f"loss.{n}.name", _word(bar.label.split(",")[0])
            yield f"loss.{n}.part", _word(bar.part)
            yield f"loss.{n}", self.quantity(bar.loss_inwg, "in wg")
            yield f"loss.{n}.share", Fact(bar.share, "", f"{round(100 * bar.share)} %")

    def findings(self) -> Named:
        """What is said of each check; the worst of a code has the code alone, the others a number after it."""
        seen: dict[str, int] = {}
        for finding in self.plan.all_findings:
            seen[finding.code] = count = seen.get(finding.code, 0) + 1
            yield from self._finding(finding.code if count == 1 else f"{finding.code}.{count}", finding)
            if finding.ruling is not None:
                yield from self._member(f"member.{finding.ruling.solid}", finding.ruling)

    def _finding(self, name: str, finding: Finding) -> Named:
        yield name, _word(finding.state.value)
        yield f"{name}.weight", _word("must" if finding.must else "advised")
        yield f"{name}.title", _word(finding.title)
        yield f"{name}.source", _word(finding.source_text)
        yield f"{name}.detail", _word(finding.detail)
        yield f"{name}.remedy", _word(finding.remedy)
        yield f"{name}.short", _word(finding_short(finding, metric=self.metric))
        for key, value in (("measured", finding.measured), ("limit", finding.limit), ("spare", finding.margin)):
            if value is not None:
                yield f"{name}.{key}", self.quantity(value, finding.unit)

    def _member(self, name: str, ruling: MemberRuling) -> Named:
        yield name, _word(ruling.verdict.value)
        yield f"{name}.label", _word(ruling.label)
        yield f"{name}.rule", _word(ruling.rule)
        yield f"{name}.source", _word(ruling.source_text)
        yield f"{name}.detail", _word(ruling.detail)
        yield f"{name}.remedy", _word(ruling.remedy)
        for key, value in (("allowed", ruling.most_in(metric=self.plan.scene.metric)), ("ours", ruling.ours_in)):
            if value is not None:
                yield f"{name}.{key}", self.long(value)

    def simpler(self) -> Named:
        """What is in the way of simpler routes, and what may be done to it."""
        for ruling in self.plan.members:
            yield from self._member(f"member.{ruling.solid}", ruling)
        for n, why in enumerate(self.plan.paths.why_not, 1):
            name = "simpler" if n == 1 else f"simpler.{n}"
            yield name, _word(why.wanted)
            for key, shift in (("shift", why.shift_in), ("other", why.shift_other_in), ("middle", why.middle_in)):
                if shift is not None:
                    yield f"{name}.{key}", self.long(abs(shift))
                    yield f"{name}.{key}.side", _word("left" if shift < 0 else "right")
            for k, blocker in enumerate(why.blockers, 1):
                yield f"{name}.blocker.{k}", _word(blocker.label)
                yield f"{name}.blocker.{k}.id", _word(blocker.id)
                yield f"{name}.blocker.{k}.into", self.long(blocker.overlap_in)


def facts_of(plan: Plan, fixes: Sequence[Fix] = ()) -> dict[str, Fact]:
    """Give everything that a lesson may say of a plan, by name.

    Parameters
    ----------
    plan : Plan
        The plan.
    fixes : sequence of Fix
        Its fixes, named ``fix.1``, ``fix.2``; each was planned again.
    """
    teller = _Teller(plan)
    found: dict[str, Fact] = {}
    for named in (teller.whole(), teller.route(), teller.findings(), teller.simpler()):
        for name, fact in named:
            found.setdefault(name, fact)
    for n, fix in enumerate(fixes, 1):
        found[f"fix.{n}"] = _word(fix.words)
        found[f"fix.{n}.answer"] = _word(fix.answer)
        found[f"fix.{n}.recheck"] = _word(fix.recheck)
    return found
