"""``routeviz lesson``: a guided walk through a plan, with questions that the rules answer."""

from __future__ import annotations

import sys
import tempfile
from pathlib import Path
from typing import TYPE_CHECKING, Annotated, Literal

from cyclopts import Parameter

from routeviz.cli.files import folder_for, write_text
from routeviz.cli.lessonplans import lesson_fixes, lesson_plans

if TYPE_CHECKING:
    from collections.abc import Mapping

    from routeviz.model.lesson import Told
    from routeviz.model.plan import Plan
    from routeviz.views.lessons import Fact
    from routeviz.views.stage import Stage

__all__ = ["lesson"]


def lesson(
    file: str | None = None,
    /,
    *,
    out: Annotated[Path | None, Parameter(name=["--out", "-o"])] = None,
    pdf: bool = False,
    paper: Literal["letter", "a4", "tabloid", "a3"] | None = None,
    film: Literal["gif", "mp4"] | None = None,
    facts: Annotated[bool, Parameter(negative=())] = False,
) -> int:
    """Make a lesson into a page to step through; without a file, list the lessons that are shipped.

    Parameters
    ----------
    file
        Lesson file, or the name of a shipped lesson.
    out
        Folder for the files; without it, NAME_lesson in the present folder.
    pdf
        Write the lesson as a PDF too: a sheet for each step, the answers at the end.
    paper
        letter, a4, tabloid or a3; without it, letter for scenes in inches and a4 for metric ones.
    film
        Write it as a moving picture too: gif, or mp4 with the extra part "motion".
    facts
        Print what the lesson's plans say, by the names that its words may use, and write nothing.
    """
    from routeviz.views import lessons
    from routeviz.views import stage as stages

    if file is None:
        _list_shelf()
        return 0
    path = _path(file)
    if film:
        from routeviz.views.motion import require_parts

        require_parts(film)
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
    written_files = ["lesson.html"]
    if pdf:
        written_files.append(_pdf(told, plans, bare, folder, paper or ""))
    if film:
        lessons.film(told, bare, _barred(plans), folder / f"lesson.{film}")
        written_files.append(f"lesson.{film}")
    print(f"Written to {folder}: {', '.join(written_files)}", file=sys.stderr)  # noqa: T201
    return 0


def _barred(plans: Mapping[str, Plan]) -> dict[str, Stage]:
    from routeviz.views import stage as stages

    return {name: stages.build(plan) for name, plan in plans.items()}


def _pdf(told: Told, plans: Mapping[str, Plan], bare: Mapping[str, Stage], folder: Path, paper: str) -> str:
    """Write the PDF; without OpenGL it has no pictures, and one line says so."""
    from routeviz.drawings.lesson_sheets import lesson_pdf
    from routeviz.errors import MissingPartError
    from routeviz.views import lessons

    with tempfile.TemporaryDirectory(prefix="routeviz-") as scratch:
        try:
            pictures = lessons.write_pictures(told, bare, _barred(plans), Path(scratch))
        except MissingPartError as fault:
            print(f"No pictures in the PDF: {fault}", file=sys.stderr)  # noqa: T201
            pictures = ()
        lesson_pdf(told, plans[""], folder / "lesson.pdf", pictures, paper=paper)
    return "lesson.pdf"


def _path(file: str) -> Path:
    """Give the file of a lesson: its own, or that of a shipped one of that name."""
    from routeviz.errors import Mistake, SceneError
    from routeviz.views import lessons

    path = Path(file)
    if path.suffix or path.is_file():
        return path
    found = lessons.find(file)
    if found is None:
        shipped = ", ".join(each.name for each in lessons.shelf())
        problem = "there is no such file, and none of that name is shipped"
        raise SceneError((Mistake(file, None, "the lesson", "", problem, f"Shipped are: {shipped}"),))
    return found


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
