"""What the tests of the live page share: its tools on real scene files, and planning that needs no process."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import view_plans

from routeviz import rules, scenefile, studies
from routeviz.model.scene import Scene
from routeviz.views.app import Desk, Pictures, Tools
from routeviz.views.app.planning import Shown

SCENES = Path(__file__).parents[1] / "scenes"
JUNIPER = (SCENES / "juniper_straight_up.toml").read_text(encoding="utf-8")


def read(text: str) -> Scene:
    return scenefile.loads(text, "scene.toml", profiles=rules.profiles(), codes=rules.codes())


def write(path: Path, text: str) -> None:
    path.write_text(text, encoding="utf-8")


def tools(**changes: object) -> Tools:
    """The desk's tools as the command gives them, but for writing."""
    made = Tools(
        read=read, edit=scenefile.edit, plain=scenefile.plain, add=scenefile.add_row, write=write,
        preview=lambda scene, marks, offset: studies.joists_as_json(studies.joist_preview(scene, studies.read_marks(marks), offset=offset)),
        schema=scenefile.json_schema(), choices={"rules.profile": rules.profiles()},
    )  # fmt: skip
    return replace(made, **changes)


def desk(folder: Path, text: str = JUNIPER, **changes: object) -> Desk:
    """A scene on the desk, and the same in its file."""
    path = folder / "kitchen.toml"
    write(path, text)
    return Desk(text, path, tools(**changes), on_disk=text)


class PlansAtOnce:
    """Stands in for the planning: every scene gets the same plan at once, without a process."""

    def __init__(self) -> None:
        self.shown, self.asked, self.stopped, self.closed = Shown(), [], 0, False
        self._pictures = Pictures()

    def ask(self, number: int, scene: Scene) -> None:
        if self.asked and self.asked[-1][0] == number:
            return
        self.asked.append((number, scene))
        plan = view_plans.plan(view_plans.scene())
        self.shown.plan, self.shown.change = plan, self._pictures.change(number, plan)
        self.shown.tell()

    def stop(self) -> None:
        self.stopped += 1

    def go_on(self) -> None:
        self.shown.tell()

    def close(self) -> None:
        self.closed = True
