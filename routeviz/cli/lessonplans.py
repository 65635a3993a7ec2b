"""Planning everything that a lesson shows."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import replace
from pathlib import Path
from typing import TYPE_CHECKING

from routeviz.cli.scenes import load_scene, load_text
from routeviz.errors import Mistake, SceneError

if TYPE_CHECKING:
    from routeviz.model.lesson import Lesson, LessonPlan
    from routeviz.model.plan import Plan
    from routeviz.model.scene import Scene
    from routeviz.model.study import Fix

__all__ = ["lesson_fixes", "lesson_plans"]


def lesson_plans(path: Path, *, say: Callable[[str], None] = lambda words: None) -> tuple[Lesson, dict[str, Plan]]:
    """Read a lesson and plan everything that it shows; plans by name, the first one's is "".

    Raises
    ------
    SceneError
        With every mistake of the lesson, or else of the scenes that it shows.
    """
    from routeviz import pipeline
    from routeviz.scenefile.lesson import load_lesson

    lesson = load_lesson(path)
    scenes: dict[str, Scene] = {}
    mistakes: list[Mistake] = []
    for plan in lesson.plans:
        try:
            scenes[plan.name] = _scene(path, plan)
        except SceneError as fault:
            mistakes += [_pointed(m, lesson, plan) for m in fault.mistakes]
    if mistakes:
        raise SceneError(tuple(dict.fromkeys(mistakes)))
    found = {}
    for name, scene in scenes.items():
        say(f"planning {name or scene.name}")
        found[name] = pipeline.plan(scene, alternatives=2)
    return lesson, found


def lesson_fixes(lesson: Lesson, plans: Mapping[str, Plan]) -> dict[str, tuple[Fix, ...]]:
    """Give the fixes of a lesson's plans, worked out only where its words speak of one."""
    from routeviz import studies

    texts = [
        t.text
        for s in lesson.steps
        for t in (
            s.title,
            s.say,
            s.on_screen,
            s.ask,
            s.reveal,
            *s.holds,
            *(x for c in s.choices for x in (c.say, c.right, c.because)),
        )
        if t is not None
    ]
    if not any("fix." in text for text in texts):
        return dict.fromkeys(plans, ())
    return {name: studies.fixes(plan) for name, plan in plans.items()}


def _scene(path: Path, plan: LessonPlan) -> Scene:
    from routeviz import scenefile
    from routeviz.scenefile.reading import read_text

    file = path.parent / plan.scene.text
    if not plan.changes:
        return load_scene(file)
    changes = {place: None if value == "" else value for place, value in plan.changes}
    return load_text(scenefile.edit(read_text(file), changes), file)


def _pointed(mistake: Mistake, lesson: Lesson, plan: LessonPlan) -> Mistake:
    """Let a mistake that lies in the lesson point at the lesson: a scene that is not there, a change that cannot be."""
    if mistake.problem == "there is no such file":
        return Mistake(
            lesson.file, plan.scene.line, plan.scene.field, f'"{plan.scene.text}"', mistake.problem,
            "Name a scene file that lies beside the lesson",
        )  # fmt: skip
    if not plan.changes:
        return mistake
    where = f"{plan.at.field.rsplit('.', 1)[0]}.set, {mistake.field}"
    return replace(mistake, file=lesson.file, line=plan.at.line, field=where)
