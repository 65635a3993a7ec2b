"""The packet: every sheet in order, written as one PDF or as SVGs, never half."""

from __future__ import annotations

import os
import tempfile
from collections.abc import Callable, Sequence
from pathlib import Path

from routeviz.drawings import pdf, svg
from routeviz.drawings.air_sheet import air_sheets
from routeviz.drawings.front_sheet import front_sheet
from routeviz.drawings.lists import findings_sheets, holes_sheets, measure_sheets, order_sheets, parts_sheets
from routeviz.drawings.marking import marking_sheet
from routeviz.drawings.outside import outside_face, outside_sheet
from routeviz.drawings.plan_sheet import plan_sheet, wants_plan_sheet
from routeviz.drawings.primitives import Image, Page
from routeviz.drawings.section import section_planes, section_sheet
from routeviz.drawings.sheet import Paper, Sheet, finish, heading, new_sheet, paper_named
from routeviz.drawings.template import template_pages
from routeviz.model.plan import Option, Plan
from routeviz.model.takeoff import Sheet as Name

__all__ = ["packet", "sheets", "svgs"]

Progress = Callable[[int, int, str], None]


def sheets(
    plan: Plan, *, paper: str = "", template: bool = False, pictures: Sequence[Path] = (), drawn: str = ""
) -> tuple[Page, ...]:
    """Draw every sheet of a plan's best option; without a route the wall, the findings and what blocks.

    Parameters
    ----------
    paper : str
        letter, A4, tabloid or A3; empty: letter for scenes in inches, A4 for metric ones.
    template : bool
        Add full-size pages of the hood's screw pattern.
    pictures : sequence of Path
        PNG files, one to a sheet.
    drawn : str
        A date for the title strip; left out when empty, so that the same plan gives the same bytes.

    Raises
    ------
    ValueError
        If there is no such paper.
    """
    size = paper_named(paper or ("A4" if plan.scene.metric else "letter"))
    made = _drawings(plan, plan.best, size)
    made += _lists(plan, plan.best, size, made)
    made += [_picture(file, size) for file in pictures]
    extra = template_pages(plan, plan.best, size) if template and plan.best is not None else []
    count = len(made) + len(extra)
    pages = [finish(s, plan, n, count, drawn) for n, s in enumerate(made, start=1)]
    return (*pages, *extra)


def _drawings(plan: Plan, option: Option | None, paper: Paper) -> list[Sheet]:
    made = [front_sheet(plan, option, paper)]
    number = 4  # the first sheet carries 1 to 3
    if option is None:
        return made
    if wants_plan_sheet(plan, option):
        made.append(plan_sheet(plan, option, paper, str(number)))
        number += 1
    for plane in section_planes(option.route):
        made.append(section_sheet(plan, option, plane, paper, str(number)))
        number += 1
    face = outside_face(plan, option)
    if face is not None:
        made.append(outside_sheet(plan, option, face, paper, str(number)))
        number += 1
    made.append(marking_sheet(plan, option, paper, str(number)))
    return made


def _lists(plan: Plan, option: Option | None, paper: Paper, drawings: Sequence[Sheet]) -> list[Sheet]:
    """Make the lists; the order of work refers to sheets by number, so the others are counted first."""
    if option is None:
        return findings_sheets(plan, paper, "")
    before = [*parts_sheets(plan, option, paper, ""), *holes_sheets(plan, option, paper, "")]
    after = [
        *measure_sheets(plan, option, paper, ""),
        *findings_sheets(plan, paper, ""),
        *air_sheets(option, paper, ""),
    ]
    work = order_sheets(plan, option, paper, "", {})
    every = [*drawings, *before, *work, *after]
    where: dict[str, str] = {}
    for n, sheet in enumerate(every, start=1):
        where.setdefault(str(sheet.name), str(n))
    for inside in (Name.JOIST_PLAN, Name.PICTURE):
        where.setdefault(str(inside), "1")
    return [*before, *order_sheets(plan, option, paper, "", where), *after]


def _picture(file: Path, paper: Paper) -> Sheet:
    sheet = new_sheet(paper, Name.PICTURE, "Picture")
    heading(sheet, "", "Picture", "made by the program from the same plan")
    left, bottom, right, top = sheet.room
    sheet.sketch.items.append(Image(str(file), (left, bottom + 2.0), right - left, top - 10.0 - bottom - 2.0))
    return sheet


def packet(
    plan: Plan, path: Path, *, paper: str = "", template: bool = False, pictures: Sequence[Path] = (), drawn: str = "",
    progress: Progress | None = None,
) -> Path:  # fmt: skip
    """Write the packet as one PDF.

    The file appears complete or not at all: it is written beside its place under another name and then renamed, and
    an interrupt removes what was begun.

    Returns
    -------
    Path
        Where the packet is.
    """
    pages = sheets(plan, paper=paper, template=template, pictures=pictures, drawn=drawn)
    handle, name = tempfile.mkstemp(prefix=".packet-", suffix=".pdf", dir=path.parent)
    begun = Path(name)
    try:
        with os.fdopen(handle, "wb") as out:
            pdf.write(pages, out, title=f"{plan.scene.name}: install packet", progress=progress)
        begun.chmod(0o644)
        begun.replace(path)
    except BaseException:  # also an interrupt: nothing half written is left
        begun.unlink(missing_ok=True)
        raise
    return path


def svgs(plan: Plan, folder: Path, *, paper: str = "", template: bool = False, drawn: str = "") -> tuple[Path, ...]:
    """Write every sheet as an SVG into an existing folder; give the files in order."""
    written: list[Path] = []
    for n, page in enumerate(sheets(plan, paper=paper, template=template, drawn=drawn), start=1):
        name = str(page.name).replace(" ", "-")
        file = folder / f"{n:02d}-{name}.svg"
        text = svg.to_svg(page)
        begun = file.with_suffix(".svg.part")
        try:
            begun.write_text(text, encoding="utf-8")
            begun.replace(file)
        except BaseException:
            begun.unlink(missing_ok=True)
            raise
        written.append(file)
    return tuple(written)
