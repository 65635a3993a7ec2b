"""A lesson on paper: a sheet for each step with its picture, words and question, and the answers on sheets of their own."""

from __future__ import annotations

import os
import tempfile
from collections.abc import Sequence
from pathlib import Path

from routeviz.drawings import palette as ink
from routeviz.drawings import pdf
from routeviz.drawings.flow import Flow, tick_box
from routeviz.drawings.lettering import wrapped
from routeviz.drawings.primitives import Face, Image, Page
from routeviz.drawings.sheet import Paper, Sheet, finish, heading, new_sheet, paper_named
from routeviz.model.lesson import Told, ToldStep
from routeviz.model.plan import Plan

__all__ = ["lesson_pdf", "lesson_sheets"]

_WORDS = 92.0  # the column beside the picture [mm]
_GAP = 6.0
_LINE = 1.42
_SHAPE = 1.5  # width over height of a picture


def lesson_sheets(told: Told, plan: Plan, pictures: Sequence[Path], *, paper: str = "") -> tuple[Page, ...]:
    """Draw a lesson's sheets.

    Parameters
    ----------
    told : Told
        The lesson, filled in from its plans.
    plan : Plan
        Its first plan; the title strip names its scene.
    pictures : sequence of Path
        A PNG file for each step, or none at all.
    paper : str
        As for the packet.
    """
    size = paper_named(paper or ("A4" if plan.scene.metric else "letter"))
    made = [
        _step(step, n, len(told.steps), told.title, size, pictures[n - 1] if pictures else None)
        for n, step in enumerate(told.steps, 1)
    ]
    made += _answers(told, size)
    return tuple(finish(sheet, plan, n, len(made), "") for n, sheet in enumerate(made, 1))


def _step(step: ToldStep, n: int, count: int, lesson: str, paper: Paper, picture: Path | None) -> Sheet:
    sheet = new_sheet(paper, "lesson", lesson)
    heading(sheet, str(n), step.title, f"{lesson}, step {n} of {count}")
    left, bottom, right, top = sheet.room
    column = right - _WORDS
    if picture is None:
        column = left
    else:
        wide = column - _GAP - left
        tall = min(wide / _SHAPE, top - 16.0 - bottom)
        sheet.sketch.items.append(Image(str(picture), (left, top - 14.0 - tall), wide, tall))
    y = _paragraph(sheet, step.say, column, right, top - 16.0, 3.7)
    if not step.asks:
        return sheet
    y = _paragraph(sheet, step.ask, column, right, y - 3.0, 3.7, Face.BOLD)
    rows = [f"{c.letter}  {c.title}{f', {c.measured}' if c.measured else ''}" for c in step.candidates]
    for row in rows or [c.say for c in step.choices]:
        tick_box(sheet.sketch, column, y - 2.2)
        y = _paragraph(sheet, row, column + 5.0, right, y, 3.3) - 1.6
    return sheet


def _paragraph(
    sheet: Sheet, words: str, left: float, right: float, top: float, size: float, face: Face = Face.SANS
) -> float:
    """Write lines from `top` down; give where the next may begin."""
    y = top
    for line in wrapped(words, size, face, right - left):
        sheet.sketch.text((left, y - size * 0.8), line, size, face)
        y -= size * _LINE
    return y


def _answers(told: Told, paper: Paper) -> list[Sheet]:
    flow = Flow(paper, "answers", "Answers", "", told.title)
    for n, step in enumerate(told.steps, 1):
        if not step.asks:
            continue
        flow.head(f"{n}  {step.title}")
        flow.paragraph(step.ask, ink.SMALL, colour=ink.INK2)
        for candidate in step.candidates:
            if candidate.broken:
                flow.paragraph(f"{candidate.letter}  {candidate.title}: {candidate.needs} {candidate.source}")
        for choice in step.choices:
            if choice.right:
                flow.paragraph(f"{choice.say}. {choice.because}".replace("?.", "?"))
        if step.reveal:
            flow.paragraph(step.reveal)
    return flow.sheets


def lesson_pdf(told: Told, plan: Plan, path: Path, pictures: Sequence[Path], *, paper: str = "") -> Path:
    """Write a lesson as one PDF, whole or not at all."""
    pages = lesson_sheets(told, plan, pictures, paper=paper)
    handle, name = tempfile.mkstemp(prefix=".lesson-", suffix=".pdf", dir=path.parent)
    begun = Path(name)
    try:
        with os.fdopen(handle, "wb") as out:
            pdf.write(pages, out, title=told.title)
        begun.chmod(0o644)
        begun.replace(path)
    except BaseException:  # also an interrupt: nothing half written is left
        begun.unlink(missing_ok=True)
        raise
    return path
