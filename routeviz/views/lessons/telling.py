"""A lesson and its plans become what is shown: every number filled in, every answer judged, every claim checked."""

from __future__ import annotations

from collections.abc import Mapping
from difflib import get_close_matches

from routeviz.errors import Mistake, SceneError
from routeviz.model.finding import Finding, State
from routeviz.model.lesson import Candidate, Lesson, Said, Step, Told, ToldChoice, ToldStep
from routeviz.model.plan import Plan
from routeviz.units import quantity_text
from routeviz.views.lessons.conditions import Facts, UnfitError, filled, holds
from routeviz.views.lessons.facts import Fact
from routeviz.views.lessons.pointing import mark, names
from routeviz.views.marks import place_of
from routeviz.views.stage import Stage

__all__ = ["tell"]

_LISTED = (State.BROKEN, State.CLOSE, State.FINE)


def tell(lesson: Lesson, stages: Mapping[str, Stage], facts: Mapping[str, Mapping[str, Fact]], *, name: str) -> Told:
    """Fill a lesson in from its plans.

    Parameters
    ----------
    lesson : Lesson
        The lesson as it is written.
    stages : mapping
        The stage of each of its plans, by the plan's name.
    facts : mapping
        What each plan says, by the plan's name.
    name : str
        What the lesson is called in file names.

    Raises
    ------
    SceneError
        With everything that the plans do not bear out: a fault that is not there or not named, a condition that does
        not hold, a question with no right answer, a name that no plan knows.
    """
    teller = _Teller(lesson, stages, facts)
    told = teller.tell(name)
    if teller.mistakes:
        raise SceneError(tuple(sorted(teller.mistakes, key=lambda m: m.line or 0)))
    return told


class _Teller:
    def __init__(self, lesson: Lesson, stages: Mapping[str, Stage], facts: Facts) -> None:
        self.lesson, self.stages, self.facts = lesson, stages, facts
        self.mistakes: list[Mistake] = []

    def wrong(self, at: Said, problem: str, remedy: str) -> None:
        shown = f'"{at.text}"' if at.text and len(at.text) < 60 else ""
        self.mistakes.append(Mistake(self.lesson.file, at.line, at.field, shown, problem, remedy))

    def fill(self, said: Said | None, plan: str) -> str:
        if said is None:
            return ""
        try:
            return filled(said.text, plan, self.facts)
        except UnfitError as fault:
            self.wrong(said, fault.problem, fault.remedy)
            return said.text

    def judge(self, said: Said, plan: str) -> tuple[bool, str] | None:
        try:
            return holds(said.text, plan, self.facts)
        except UnfitError as fault:
            self.wrong(said, fault.problem, fault.remedy)
            return None

    def tell(self, name: str) -> Told:
        self._faults()
        steps = self.lesson.steps
        told = tuple(self._step(s, covered=self._covered(n)) for n, s in enumerate(steps))
        invented = self.stages[""].plan.scene.invented
        return Told(name, self.lesson.title, self.lesson.about, invented, told)

    def _covered(self, n: int) -> bool:
        """Whether the plan of a step is still asked about, by the step itself or by a later one.

        Where faults are to be found, all that comes before tells of none. A step that tells the plan's answer in its own
        words has nothing left to cover.
        """
        step, later = self.lesson.steps[n], self.lesson.steps[n + 1 :]
        if step.choices or step.find or any(s.find for s in later):
            return True
        return "{answer}" not in step.say.text and any(s.choices and s.plan.text == step.plan.text for s in later)

    def _faults(self) -> None:
        """Hold the faults that the lesson names against those that the rules find."""
        for plan in self.lesson.plans:
            if plan.faults is None:
                continue
            named = {s.text for s in plan.faults}
            broken = {f.code: f for f in self.stages[plan.name].plan.all_findings if f.state is State.BROKEN}
            for said in plan.faults:
                if said.text not in broken:
                    known = ", ".join(sorted(broken)) or "none"
                    self.wrong(said, "the plan does not break this", f"It breaks: {known}")
            for code in sorted(set(broken) - named):
                at = plan.faults[0] if plan.faults else plan.at
                at = Said("", at.field.rsplit(".", 1)[0] if plan.faults else f"{at.field}.faults", at.line)
                self.wrong(at, f"the plan breaks {code} too ({broken[code].title})", f'Add "{code}" or mend the scene')

    def _step(self, step: Step, *, covered: bool) -> ToldStep:
        plan = step.plan.text
        stage = self.stages[plan]
        for said in step.holds:
            judged = self.judge(said, plan)
            if judged is not None and not judged[0]:
                self.wrong(said, f"this does not hold: {judged[1]}", "Change the words, or the scene")
        choices = self._choices(step, plan)
        candidates = self._candidates(step, stage.plan) if step.find else ()
        marks = []
        for said in step.show:
            found = mark(stage, said.text, self.stages)
            if found is None:
                near = get_close_matches(said.text, list(names(stage)), n=3, cutoff=0.5)
                meant = (
                    f"Did you mean {' or '.join(near)}?" if near else "Name a member, a part, a code, duct, cap or hood"
                )
                self.wrong(said, "nothing in the picture has this name", meant)
            else:
                marks.append(found)
        return ToldStep(
            title=self.fill(step.title, plan), say=self.fill(step.say, plan), plan=plan, view=step.view, away=step.away,
            marks=tuple(marks), ask=self.fill(step.ask, plan) or ("Which of these are broken?" if step.find else ""),
            choices=choices, candidates=candidates, reveal=self.fill(step.reveal, plan), covered=covered,
            on_screen=self.fill(step.on_screen, plan),
        )  # fmt: skip

    def _choices(self, step: Step, plan: str) -> tuple[ToldChoice, ...]:
        told = []
        known = True
        for choice in step.choices:
            judged = self.judge(choice.right, plan)
            known = known and judged is not None
            right = judged is not None and judged[0]
            told.append(ToldChoice(self.fill(choice.say, plan), right, self.fill(choice.because, plan)))
        count = sum(c.right for c in told)
        if told and known and count != 1:
            problem = "no answer is right by this plan" if count == 0 else f"{count} answers are right by this plan"
            self.wrong(step.ask or step.at, problem, "Exactly one condition of the answers must hold")
        return tuple(told)

    def _candidates(self, step: Step, plan: Plan) -> tuple[Candidate, ...]:
        """List the broken findings among others, in an order that tells nothing."""
        codes = {f.code for f in plan.all_findings if f.state is State.BROKEN}
        known = {f.code for f in plan.all_findings if f.state in _LISTED}
        for said in step.among:
            if said.text not in known:
                near = get_close_matches(said.text, known, n=1, cutoff=0.5)
                meant = f"Did you mean {near[0]}? " if near else ""
                self.wrong(
                    said, "no check of this plan has this code", f"{meant}Codes here: {', '.join(sorted(known))}"
                )
            codes.add(said.text)
        if not any(f.state is State.BROKEN for f in plan.all_findings):
            self.wrong(step.at, "nothing is broken in this plan, so there is nothing to find", "Show another plan")
        listed = sorted(
            (f for f in plan.all_findings if f.code in codes and f.state in _LISTED), key=lambda f: (f.asked, f.code)
        )
        return tuple(_candidate(plan, f, chr(ord("A") + n)) for n, f in enumerate(listed[:26]))


def _candidate(plan: Plan, finding: Finding, letter: str) -> Candidate:
    metric = plan.scene.metric

    def said(value: float | None) -> str:
        return "" if value is None else quantity_text(value, finding.unit, metric=metric)

    needs = _sentence(finding.detail)
    if finding.limit is not None:
        needs = f"Needs {finding.relation} {said(finding.limit)}.".replace("  ", " ")
    return Candidate(
        letter, finding.code, finding.asked, said(finding.measured), finding.state is State.BROKEN, needs,
        _sentence(finding.source_text), place_of(plan, finding.where, finding.place),
    )  # fmt: skip


def _sentence(text: str) -> str:
    return text and f"{text[0].upper()}{text[1:].rstrip('.')}."
