"""``routeviz lesson``: a guided walk through a plan, with questions that the rules answer."""

from __future__ import annotations

import sys
from pathlib import Path
from typing import TYPE_CHECKING, Annotated

from cyclopts import Parameter

from routeviz.cli.files import folder_for, write_text
from routeviz.cli.lessonplans import lesson_fixes, lesson_plans

if TYPE_CHECKING:
    from collections.abc import Mapping

    from routeviz.views.lessons import Fact

__all__ = ["lesson"]


def lesson(
    file: str | None = None,
    /,
    *,
    out: Annotated[Path | None, Parameter(name=["--out", "-o"])] = None,
    facts: Annotated[bool, Parameter(negative=())] = False,
) -> int:
    """Make a lesson into a page to step through; without a file, list the lessons that are shipped.

    Parameters
    ----------
    file
        Lesson file, or the name of a shipped lesson.
    out
        Folder for the files; without it, NAME_lesson in the present folder.
    facts
        Print what the lesson's plans say, by the names that its words may use, and write nothing.
    """
    from routeviz.views import lessons
    from routeviz.views import stage as stages

    if file is None:
        _list_shelf()
        return 0
    path = Path(file)
    if not path.suffix and not path.is_file():
        path = lessons.find(file) or path
    written, plans = lesson_plans(path)
    fixes = lesson_fixes(written, plans)
    said = {name: lessons.facts_of(plan, fixes[name]) for name, plan in plans.items()}
    if facts:
        _print_facts(said)
        return 0
    bare = {name: stages.build(plan, bars=False) for name, plan in plans.items()}
    told = lessons.tell(written, bare, said, name=path.stem)
    folder = folder_for(path, out or Path(f"{path.stem}_lesson"))
    write_text(folder / "lesson.html", lessons.compose(told, bare))
    print(f"Written to {folder}: lesson.html", file=sys.stderr)  # noqa: T201
    return 0


def _list_shelf() -> None:
    from routeviz import reports
    from routeviz.views import lessons

    for each in lessons.shelf():
        print(each.name)  # noqa: T201
        print(reports.wrap(f"{each.title}. {each.about}", indent="    "))  # noqa: T201
    print("\nMake one into a page: routeviz lesson NAME")  # noqa: T201


def _print_facts(said: Mapping[str, Mapping[str, Fact]]) -> None:
    for plan, facts in said.items():
        for name, fact in facts.items():
            print(f"{plan}:{name} = {fact.text}" if plan else f"{name} = {fact.text}")  # noqa: T201
