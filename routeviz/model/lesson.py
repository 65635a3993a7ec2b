"""Lessons: a guided walk through one or more plans, as it is written and as it is told."""

from __future__ import annotations

from dataclasses import dataclass, field

from routeviz.model.solids import Vec3

__all__ = ["Candidate", "Choice", "Lesson", "LessonPlan", "Mark", "Said", "Step", "Told", "ToldChoice", "ToldStep"]


@dataclass(frozen=True, slots=True)
class Said:
    """A text of a lesson file with the place where it stands, so that what is wrong with it can be told there."""

    text: str
    field: str
    line: int | None


@dataclass(frozen=True, slots=True)
class LessonPlan:
    """One plan that a lesson shows: a scene, what is changed in it, and the codes of the findings that it breaks.

    The first plan of a lesson has the name "" and no changes. `scene` is a file beside the lesson's.
    """

    name: str
    scene: Said
    changes: tuple[tuple[str, object], ...]
    faults: tuple[Said, ...] | None  # None where the lesson says nothing about them
    at: Said  # where the plan stands in the file


@dataclass(frozen=True, slots=True)
class Choice:
    """One answer to a question. `right` is a condition on the plan, so that the plan decides and not the lesson."""

    say: Said
    right: Said
    because: Said | None


@dataclass(frozen=True, slots=True)
class Step:
    """One step as it is written: what to look at, what to say, what to ask, what to say afterwards."""

    title: Said
    say: Said
    at: Said  # where the step stands in the file
    plan: Said
    view: str
    show: tuple[Said, ...]  # ids of solids and parts, codes of findings, or a thing's plain name
    away: tuple[str, ...]  # layers taken away
    ask: Said | None
    choices: tuple[Choice, ...]
    find: bool  # the broken findings are to be found
    among: tuple[Said, ...]  # codes of findings that are listed beside them
    reveal: Said | None
    holds: tuple[Said, ...]  # conditions on the plan that the step's words lean on
    on_screen: Said | None = None  # said after `say` on the page alone: where to press, how to look round


@dataclass(frozen=True, slots=True)
class Lesson:
    """A lesson as it is written in its file."""

    file: str
    title: str
    about: str
    plans: tuple[LessonPlan, ...]
    steps: tuple[Step, ...]


@dataclass(frozen=True, slots=True)
class Mark:
    """A thing that is pointed at: its name and, for each of its bodies, points whose hull encloses it [in]."""

    label: str
    bodies: tuple[tuple[Vec3, ...], ...]


@dataclass(frozen=True, slots=True)
class ToldChoice:
    """One answer with what the plan decided about it."""

    say: str
    right: bool
    because: str


@dataclass(frozen=True, slots=True)
class Candidate:
    """One check in a list in which the broken ones are to be found; `needs` and `source` are shown afterwards."""

    letter: str
    code: str
    title: str
    measured: str
    broken: bool
    needs: str
    source: str
    place: Vec3 | None


@dataclass(frozen=True, slots=True)
class ToldStep:
    """One step with every number filled in from its plan."""

    title: str
    say: str
    plan: str
    view: str
    away: tuple[str, ...]
    marks: tuple[Mark, ...]
    ask: str
    choices: tuple[ToldChoice, ...]
    candidates: tuple[Candidate, ...]
    reveal: str
    covered: bool  # whether the findings are hidden until the question is answered
    on_screen: str = ""  # for the page alone

    @property
    def asks(self) -> bool:
        """Whether the step waits for an answer."""
        return bool(self.choices or self.candidates)


@dataclass(frozen=True, slots=True)
class Told:
    """A lesson ready to be shown."""

    name: str
    title: str
    about: str
    invented: bool
    steps: tuple[ToldStep, ...] = field(default_factory=tuple)
