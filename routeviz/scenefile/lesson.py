"""From a lesson file to a lesson, or to every mistake at once."""

from __future__ import annotations

import math
from collections.abc import Mapping
from pathlib import Path as FilePath
from typing import Annotated, Any, Final

from pydantic import Field, ValidationError  # noqa: TID251 - this is the door

from routeviz.errors import Mistake, SceneError
from routeviz.model.lesson import Choice as Answer
from routeviz.model.lesson import Lesson, LessonPlan, Said, Step
from routeviz.scenefile.fields import Choice, Name, Number, Reader, Words, YesNo, unreadable
from routeviz.scenefile.lines import find_lines, line_of
from routeviz.scenefile.mistakes import trouble_from, without_misspelt
from routeviz.scenefile.paths import Path, write_path
from routeviz.scenefile.reading import parse_toml, read_text
from routeviz.scenefile.tables import Table, asked, optional

__all__ = ["AWAY", "VIEWS", "load_lesson", "loads_lesson"]

FORMAT: Final = 1
VIEWS: Final = ("square", "room", "ceiling", "along", "outside")
AWAY: Final = ("board", "framing", "skin", "roof", "kitchen", "hood", "cover", "duct")
_Said = Annotated[str, Words(may_be_empty=False)]


class Changes(Reader):
    """A table of scene-file places and their new values."""

    def read(self, value: Any, info: Any) -> dict[str, object]:
        """Read a table whose keys are quoted places."""
        if not isinstance(value, Mapping):
            raise unreadable("a table is needed here", 'Write it like set = { "hood.mount" = "30 in" }')
        nested = next((k for k, v in value.items() if isinstance(v, Mapping) and "." not in k), None)
        if nested is not None and nested in ("hood", "duct", "ceiling", "walls", "cooktop", "kitchen", "roof"):
            raise unreadable("places of the scene need quotes", 'Write it like set = { "hood.mount" = "30 in" }')
        return dict(value)

    def schema(self) -> dict[str, Any]:
        """A table."""
        return {"type": "object"}


class ChoiceTable(Table):
    """One answer to a question."""

    say: _Said = asked("the answer in words", "Yes: it may be bored")
    right: _Said = asked("when it is the right one, as a condition on the plan", "elbows = 3")
    because: _Said | None = optional("what is said when it was chosen", "a third of the depth is the limit")


class StepTable(Table):
    """One step of a lesson."""

    title: _Said = asked("a few words over the step", "Look up")
    say: _Said = asked("what is said; {elbows} and the like are filled in from the plan", "The duct has {elbows}.")
    on_screen: _Said | None = optional(
        "what is said after that on the page alone, not on paper", "Walk round with the buttons."
    )
    plan: Annotated[str, Words()] = optional("the name of the plan that is shown; left out: the first", "mended", "")
    view: Annotated[str, Choice(VIEWS)] = optional("where to stand", "ceiling", "room")
    show: tuple[_Said, ...] = optional(
        "what to point at: ids of members or parts, codes, or names; another plan's with its name before it, as in wide:cap",
        ["joist-4"],
        (),
    )
    away: tuple[Annotated[str, Choice(AWAY)], ...] = optional("layers taken away", ["board"], ())
    ask: _Said | None = optional("a question", "May joist 4 be cut?")
    choice: tuple[ChoiceTable, ...] = optional("the answers to choose from", [], ())
    find: Annotated[bool, YesNo()] = optional("the broken findings are to be found", True, False)
    among: tuple[_Said, ...] = optional("codes of findings to list beside the broken ones", ["HGT-CANOPY-LOW"], ())
    reveal: _Said | None = optional("what is said once it was answered", "It may not: {member.joist-4.rule}")
    holds: tuple[_Said, ...] = optional("conditions on the plan that the words lean on", ["elbows = 3"], ())


class PlanTable(Table):
    """Another plan that the lesson shows."""

    name: Annotated[str, Name()] = asked("the name by which steps call it", "mended")
    scene: Annotated[str, Words()] = optional("another scene file beside the lesson's", "other.toml", "")
    set: Annotated[dict[str, object], Changes()] = optional("what is changed in it", {"hood.mount": "30 in"}, {})
    faults: tuple[_Said, ...] | None = optional("codes of the findings that it breaks, all of them", [])


class LessonTable(Table):
    """A lesson file."""

    format: Annotated[int, Number(FORMAT, FORMAT, whole=True)] = asked("version of this file format", FORMAT)
    title: _Said = asked("what the lesson is called", "Find the five faults")
    about: Annotated[str, Words()] = optional("what it teaches, in one sentence", "reading a plan", "")
    scene: _Said = asked("the scene file that it stands on, beside the lesson's", "scene.toml")
    faults: tuple[_Said, ...] | None = optional(
        "codes of the findings that the scene breaks, all of them", ["DCT-SMOOTH"]
    )
    plan: tuple[PlanTable, ...] = optional("other plans that it shows", [], ())
    step: tuple[StepTable, ...] = Field(description="the steps, in order", examples=[[]])


def load_lesson(path: str | FilePath) -> Lesson:
    """Read a lesson file.

    Raises
    ------
    SceneError
        With every mistake of the file at once, each with its line and remedy; also when the file cannot be read.
    """
    place = FilePath(path)
    return loads_lesson(read_text(place, "lesson"), place.name or str(path))


def loads_lesson(text: str, name: str = "lesson.toml") -> Lesson:
    """Read a lesson from text; `name` stands for the file in messages.

    Raises
    ------
    SceneError
        With every mistake at once.
    """
    raw = parse_toml(text, name)
    lines = find_lines(text)
    try:
        table = LessonTable.model_validate(raw, context={"unit": "in"})
    except ValidationError as fault:
        troubles = without_misspelt([trouble_from(d, LessonTable, raw) for d in fault.errors(include_url=False)])
        found = [Mistake(name, line_of(t.path, lines), t.field, t.value, t.problem, t.remedy) for t in troubles]
        raise SceneError(tuple(sorted(found, key=lambda m: m.line or math.inf))) from None
    reader = _Builder(name, raw, lines)
    lesson = reader.lesson(table)
    if reader.mistakes:
        raise SceneError(tuple(sorted(reader.mistakes, key=lambda m: m.line or math.inf)))
    return lesson


class _Builder:
    """Makes the lesson's records and gathers what does not fit together."""

    def __init__(self, name: str, raw: dict[str, Any], lines: dict[Path, int]) -> None:
        self.name, self.raw, self.lines = name, raw, lines
        self.mistakes: list[Mistake] = []

    def said(self, text: str, *path: str | int) -> Said:
        return Said(text, write_path(path, self.raw), line_of(path, self.lines))

    def maybe(self, text: str | None, *path: str | int) -> Said | None:
        return None if text is None else self.said(text, *path)

    def each(self, texts: tuple[str, ...], *path: str | int) -> tuple[Said, ...]:
        return tuple(self.said(text, *path, n) for n, text in enumerate(texts))

    def wrong(self, at: Said, problem: str, remedy: str) -> None:
        shown = f'"{at.text}"' if len(at.text) < 60 and at.text else ""
        self.mistakes.append(Mistake(self.name, at.line, at.field, shown, problem, remedy))

    def lesson(self, table: LessonTable) -> Lesson:
        scene = self.said(table.scene, "scene")
        faults = None if table.faults is None else self.each(table.faults, "faults")
        plans = [LessonPlan("", scene, (), faults, scene)]
        plans += [self._plan(n, p, scene) for n, p in enumerate(table.plan)]
        names = [p.name for p in plans]
        for n, plan in enumerate(plans):
            if plan.name in names[:n]:
                self.wrong(plan.at, "two plans have this name", "Give each its own")
        steps = tuple(self._step(n, s, names) for n, s in enumerate(table.step))
        if not steps:
            self.mistakes.append(
                Mistake(
                    self.name,
                    1,
                    "step",
                    "",
                    "a lesson without steps",
                    'Add [[step]] with title = "..." and say = "..."',
                )
            )
        return Lesson(self.name, table.title, table.about, tuple(plans), steps)

    def _plan(self, n: int, table: PlanTable, first: Said) -> LessonPlan:
        scene = self.said(table.scene, "plan", n, "scene") if table.scene else first
        faults = None if table.faults is None else self.each(table.faults, "plan", n, "faults")
        at = self.said(table.name, "plan", n, "name")
        if not table.scene and not table.set:
            self.wrong(
                at, "this plan is the same as the first", 'Say what differs, like set = { "hood.mount" = "30 in" }'
            )
        return LessonPlan(table.name, scene, tuple(table.set.items()), faults, at)

    def _step(self, n: int, table: StepTable, names: list[str]) -> Step:
        here = ("step", n)
        at = self.said("", *here)
        plan = self.said(table.plan, *here, "plan")
        if table.plan not in names:
            known = ", ".join(names[1:]) or "none"
            self.wrong(plan, "no plan has this name", f"Write one of: {known}; or leave it out for the first")
        self._question(at, table)
        choices = tuple(
            Answer(
                self.said(c.say, *here, "choice", k, "say"),
                self.said(c.right, *here, "choice", k, "right"),
                self.maybe(c.because, *here, "choice", k, "because"),
            )
            for k, c in enumerate(table.choice)
        )
        return Step(
            title=self.said(table.title, *here, "title"), say=self.said(table.say, *here, "say"), at=at, plan=plan,
            view=table.view, show=self.each(table.show, *here, "show"), away=table.away,
            ask=self.maybe(table.ask, *here, "ask"), choices=choices, find=table.find,
            among=self.each(table.among, *here, "among"), reveal=self.maybe(table.reveal, *here, "reveal"),
            holds=self.each(table.holds, *here, "holds"), on_screen=self.maybe(table.on_screen, *here, "on_screen"),
        )  # fmt: skip

    def _question(self, at: Said, table: StepTable) -> None:
        if table.find and table.choice:
            self.wrong(at, "a step asks to find or to choose, not both", "Make two steps of it")
        elif table.ask is not None and not table.find and len(table.choice) < 2:
            self.wrong(
                at, "a question needs two answers or more", 'Add [[step.choice]] with say = "..." and right = "..."'
            )
        elif table.choice and table.ask is None:
            self.wrong(at, "answers without a question", 'Add ask = "..."')
        elif table.among and not table.find:
            self.wrong(at, "among belongs to a step that asks to find", "Add find = true, or take among out")
        elif table.reveal is not None and not (table.find or table.choice):
            self.wrong(at, "reveal belongs to a step that asks", "Put its words into say, or add a question")
