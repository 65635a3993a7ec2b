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
from routeviz.drawings.sheet import UNMEASURED, Paper, Sheet, finish, heading, new_sheet, paper_named
from routeviz.model.lesson import Told, ToldStep
from routeviz.model.plan import Plan

__all__ = ["lesson_pdf", "lesson_sheets"]

_GAP = 6.0
_LINE = 1.42
_SHAPE = 2.1  # width over height of a picture
_SAY, _ASK, _ANSWER = 4.9, 4.4, 4.2  # heights of the lettering [mm]: 14, 12 1/2 and 12 points
_BOX = 5.5  # from a tick box to its answer [mm]
_SAID = 0.36  # of the width is the text's, where a question stands beside it


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
    return tuple(finish(s, plan, n, len(made), "", caution=UNMEASURED) for n, s in enumerate(made, 1))


def _step(step: ToldStep, n: int, count: int, lesson: str, paper: Paper, picture: Path | None) -> Sheet:
    """Draw a step: its picture as large as the words below it leave room for."""
    sheet = new_sheet(paper, "lesson", lesson)
    heading(sheet, str(n), step.title, f"{lesson}, step {n} of {count}")
    left, bottom, right, top = sheet.room
    top -= 13.0
    if picture is not None:
        high = _words(new_sheet(paper, "", ""), step, top)  # laid out once to see how high it is
        tall = min((right - left) / _SHAPE, top - bottom - high - _GAP)
        wide = tall * _SHAPE
        middle = (left + right) / 2
        sheet.sketch.items.append(Image(str(picture), (middle - wide / 2, top - tall), wide, tall))
        top -= tall + _GAP
    _words(sheet, step, top)
    return sheet


def _words(sheet: Sheet, step: ToldStep, top: float) -> float:
    """Write a step's words from `top` down, its question beside them; give how high they are [mm]."""
    left, _, right, _ = sheet.room
    if not step.asks:
        return top - _paragraph(sheet, step.say, left, right, top, _SAY)
    column = left + _SAID * (right - left)
    said = _paragraph(sheet, step.say, left, column - _GAP, top, _ASK)
    y = _paragraph(sheet, step.ask, column, right, top, _ASK, Face.BOLD) - 1.0
    rows = [f"{c.letter}  {c.title}{f', {c.measured}' if c.measured else ''}" for c in step.candidates]
    columns = [rows[: (len(rows) + 1) // 2], rows[(len(rows) + 1) // 2 :]] if rows else [[c.say for c in step.choices]]
    wide = (right - column) / len(columns)
    low = said
    for k, each in enumerate(columns):
        at, x = y, column + k * wide
        for row in each:
            tick_box(sheet.sketch, x, at - _ANSWER * 0.7)
            at = _paragraph(sheet, row, x + _BOX, x + wide - 2.0, at, _ANSWER) - 1.6
        low = min(low, at)
    return top - low


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
        flow.gap(1.6)
        flow.paragraph(step.ask, _ANSWER, colour=ink.INK2)
        for candidate in step.candidates:
            if candidate.broken:
                flow.paragraph(f"{candidate.letter}  {candidate.title}. {candidate.needs} {candidate.source}", _ANSWER)
        for choice in step.choices:
            if choice.right:
                flow.paragraph(f"{choice.say}. {choice.because}".replace("?.", "?"), _ANSWER)
        if step.reveal:
            flow.paragraph(step.reveal, _ANSWER)
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
