"""Planning behind the page: first the answer and the picture, then all that follows from it. The newest scene wins."""

from __future__ import annotations

import threading
from collections.abc import Callable
from dataclasses import dataclass, field, replace
from typing import Any

from routeviz.model.plan import Plan
from routeviz.model.scene import Scene
from routeviz.views.app.pictures import Change
from routeviz.views.app.runner import Bench, Runner

__all__ = ["Answered", "Job", "Planning", "Shown"]

_FOLLOWS = "other ways, fixes and the whole wall"
_QUICK_PATIENCE_S = 1.5  # an answer that is nearly there is worth more than one begun anew


@dataclass(frozen=True)
class Job:
    """One scene to plan; `number` is its revision on the desk."""

    number: int
    scene: Scene


@dataclass(frozen=True)
class Answered:
    """A scene and its answer; `whole` says whether the plan has everything that a plan can have."""

    scene: Scene
    plan: Plan
    whole: bool


@dataclass
class Shown:
    """What is known of the scene on the desk, and what is being worked out."""

    plan: Plan | None = None
    change: Change | None = None
    fixes: list[dict[str, Any]] | None = None
    wall: dict[str, Any] | None = None
    wall_of: int = 0  # the plan to which fixes and wall belong
    doing: str = ""
    part: float | None = None  # of what is being done, from 0 to 1
    stopped: bool = False
    trouble: str = ""
    news: int = 1
    seen: threading.RLock = field(default_factory=threading.RLock)
    told: Callable[[], object] = lambda: None  # called whenever there is news

    def tell(self) -> None:
        """Say that there is news."""
        self.news += 1
        self.told()


class Planning:
    """Two processes: one for the answer, one for what takes longer."""

    def __init__(self, quick: Callable[[], Bench], deep: Callable[[], Bench]) -> None:
        """Start both processes.

        Parameters
        ----------
        quick : callable
            Makes the bench that turns a `Job` into a pair of Plan and `Change`.
        deep : callable
            Makes the bench that turns an `Answered` into what follows. It says "whole" with the Plan and the page's data
            where the answer was not all of it, then "fixes" and "wall".
        """
        self.shown = Shown()
        self._wanted = Job(0, None)  # type: ignore[arg-type]
        self._quick = Runner(quick, self._heard_quick, patience_s=_QUICK_PATIENCE_S)
        self._deep = Runner(deep, self._heard_deep, patience_s=0.0, gives_way=True)

    def ask(self, number: int, scene: Scene) -> None:
        """Plan a scene; whatever is still going on for an older one ends."""
        with self.shown.seen:
            if number == self._wanted.number:
                return
            self._wanted = Job(number, scene)
            self.shown.stopped = False
        self._deep.stop()
        self._quick.give(number, self._wanted)
        self._note("planning")

    def stop(self) -> None:
        """End what is being worked out; what is shown stays."""
        self._deep.stop()
        self._quick.stop()
        with self.shown.seen:
            stopped = bool(self.shown.doing)
        self._note("", stopped=stopped)

    def go_on(self) -> None:
        """Take up again what was stopped."""
        with self.shown.seen:
            plan, change, wanted = self.shown.plan, self.shown.change, self._wanted
            self.shown.stopped = False
        if plan is not None and change is not None and change.number == wanted.number:
            self._deep.give(change.number, Answered(wanted.scene, plan, change.whole))
            self._note(_FOLLOWS)
        elif wanted.number:
            self._quick.give(wanted.number, wanted)
            self._note("planning")

    def close(self) -> None:
        """End both processes."""
        self._quick.close()
        self._deep.close()

    def _note(self, doing: str, *, stopped: bool = False, part: float | None = None, trouble: str = "") -> None:
        with self.shown.seen:
            self.shown.doing, self.shown.part, self.shown.trouble = doing, part, trouble
            self.shown.stopped = stopped
            self.shown.tell()

    def _heard_quick(self, number: int, topic: str, said: Any) -> None:
        newest = number == self._wanted.number
        if topic == "done":
            plan, change = said
            with self.shown.seen:
                self.shown.plan, self.shown.change, self.shown.trouble = plan, change, ""
                self.shown.fixes = self.shown.wall = None
                self.shown.wall_of = number
                self.shown.doing = _FOLLOWS if newest else self.shown.doing
                self.shown.tell()
            if newest:
                self._deep.give(number, Answered(self._wanted.scene, plan, change.whole))
        elif topic == "failed" and newest:
            self._note("", trouble=str(said))
        elif topic == "doing" and newest:
            self._note(str(said))

    def _heard_deep(self, number: int, topic: str, said: Any) -> None:
        with self.shown.seen:
            if number != self.shown.wall_of or number != self._wanted.number:
                return
            if topic == "whole" and self.shown.change is not None:
                self.shown.plan, data = said
                self.shown.change = replace(self.shown.change, data=data, whole=True)
            elif topic == "fixes":
                self.shown.fixes = said
            elif topic == "wall":
                self.shown.wall = said
            elif topic == "doing":
                self.shown.doing, self.shown.part = said
            elif topic in ("done", "failed"):
                self.shown.doing, self.shown.part = "", None
                self.shown.trouble = str(said) if topic == "failed" else ""
            else:
                return
            self.shown.tell()
