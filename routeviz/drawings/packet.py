"""The packet: every sheet in order, written as one PDF or as SVGs, never half."""

from __future__ import annotations

import os
import tempfile
from collections.abc import Callable, Sequence
from pathlib import Path

from routeviz.drawings import pdf, svg
from routeviz.drawings.air_sheet import air_sheets
from routeviz.drawings.conflict import conflict_sheets
from routeviz.drawings.conflict_words import free_places
from routeviz.drawings.findings_sheet import findings_sheets
from routeviz.drawings.front_sheet import front_sheet
from routeviz.drawings.lists import (
    TEMPLATE,
    has_cut_list,
    holes_sheets,
    is_mended,
    measure_sheets,
    order_sheets,
    parts_sheets,
)
from routeviz.drawings.marking import marking_sheet
from routeviz.drawings.outside import outside_face, outside_sheet
from routeviz.drawings.plan_sheet import plan_sheet, wants_plan_sheet
from routeviz.drawings.primitives import Image, Page
from routeviz.drawings.section import section_planes, section_sheet
from routeviz.drawings.sheet import Paper, Sheet, finish, heading, new_sheet, paper_named, picture_room
from routeviz.drawings.template import template_sheets
from routeviz.model.plan import Option, Plan
from routeviz.model.study import Fix
from routeviz.model.takeoff import Sheet as Name

__all__ = ["packet", "sheets", "svgs", "take_place"]

Progress = Callable[[int, int, str], None]
Pictures = Sequence[tuple[str, Path]]


def sheets(
    plan: Plan, *, paper: str = "", template: bool = False, pictures: Pictures = (), fixes: Sequence[Fix] = (),
    drawn: str = "",
) -> tuple[Page, ...]:  # fmt: skip
    """Draw every sheet of a plan's best option; without a route the wall, the findings and what blocks.

    Parameters
    ----------
    paper : str
        letter, A4, tabloid or A3; empty: letter for scenes in inches, A4 for metric ones.
    template : bool
        Add full-size pages of the hood's screw pattern.
    pictures : sequence of (str, Path)
        Titles and PNG files of the 3D view, one to a sheet.
    fixes : sequence of Fix
        What would clear a blocked plan, each planned again; printed on the sheet of findings.
    drawn : str
        A date for the title strip; left out when empty, so that the same plan gives the same bytes.

    Raises
    ------
    ValueError
        If there is no such paper.
    """
    size = paper_named(paper or ("A4" if plan.scene.metric else "letter"))
    made = _drawings(plan, plan.best, size, fixes)
    made += [_picture(title, file, size, str(n)) for n, (title, file) in enumerate(pictures, start=len(made) + 1)]
    extra = len(template_sheets(plan, plan.best, size, 1)) if template and plan.best is not None else 0
    made += _lists(plan, plan.best, size, made, fixes, extra)
    if extra and plan.best is not None:
        made += template_sheets(plan, plan.best, size, len(made) + 1)
    return tuple(finish(s, plan, n, len(made), drawn) for n, s in enumerate(made, start=1))


def _drawings(plan: Plan, option: Option | None, paper: Paper, fixes: Sequence[Fix]) -> list[Sheet]:
    """Draw the drawings; the figure at each one's head is its sheet's number, the only count there is."""
    made = [front_sheet(plan, option, paper)]

    def number() -> str:
        return str(len(made) + 1)

    if option is None:
        made += conflict_sheets(plan, fixes, paper, len(made) + 1)
        if plan.scene.hood_bottom_in is not None:
            made.append(marking_sheet(plan, None, paper, number(), free_places(plan)))
        return made
    if wants_plan_sheet(plan, option):
        made.append(plan_sheet(plan, option, paper, number()))
    for plane in section_planes(option.route):
        made.append(section_sheet(plan, option, plane, paper, number()))
    face = outside_face(plan, option.route)
    if face is not None:
        made.append(outside_sheet(plan, option.route, face, paper, number()))
    if option.takeoff.marks or not is_mended(option):  # else the hood hangs, and nothing of it is marked
        made.append(marking_sheet(plan, option, paper, number()))
    return made


def _lists(
    plan: Plan, option: Option | None, paper: Paper, drawings: Sequence[Sheet], fixes: Sequence[Fix], templates: int
) -> list[Sheet]:
    """Make the lists; the order of work refers to sheets by number, so the others are counted first."""
    if option is None:
        return findings_sheets(plan, paper, str(len(drawings) + 1), fixes)

    def made(where: dict[str, str]) -> list[Sheet]:
        found: list[Sheet] = []
        kinds: tuple[Callable[[str], list[Sheet]], ...] = (
            lambda n: parts_sheets(plan, option, paper, n),
            lambda n: holes_sheets(plan, option, paper, n),
            lambda n: order_sheets(plan, option, paper, n, where),
            lambda n: measure_sheets(plan, option, paper, n),
            lambda n: findings_sheets(plan, paper, n, fixes),
            lambda n: air_sheets(option, plan.scene, paper, n),
        )
        for sheets_of in kinds:
            found += sheets_of(str(len(drawings) + len(found) + 1))
        return found

    where: dict[str, str] = {}
    every = [*drawings, *made({})]
    for n, sheet in enumerate(every, start=1):
        where.setdefault(str(sheet.name), str(n))
        if has_cut_list(sheet):
            where.setdefault(str(Name.CUTS), str(n))
    where.setdefault(str(Name.CUTS), where.get(str(Name.PARTS), ""))
    if templates:  # they follow the last sheet
        first = len(every) + 1
        where[TEMPLATE] = str(first) if templates == 1 else f"{first} to {len(every) + templates}"
    for inside in (Name.JOIST_PLAN, Name.PICTURE):
        where.setdefault(str(inside), "1")
    return made(where)


def _picture(title: str, file: Path, paper: Paper, number: str) -> Sheet:
    sheet = new_sheet(paper, "picture", title)
    heading(
        sheet,
        number,
        title,
        "the 3D view of the same plan; not to scale. Numbers as on the first sheet",
    )
    wide, high = picture_room(paper)
    sheet.sketch.items.append(Image(str(file), (sheet.room[0], sheet.room[1] + 2.0), wide, high))
    return sheet


def packet(
    plan: Plan, path: Path, *, paper: str = "", template: bool = False, pictures: Pictures = (), fixes: Sequence[Fix] = (),
    drawn: str = "", progress: Progress | None = None,
) -> Path:  # fmt: skip
    """Write the packet as one PDF.

    The file appears complete or not at all: it is written beside its place under another name and then renamed, and
    an interrupt removes what was begun.

    Returns
    -------
    Path
        Where the packet is.
    """
    pages = sheets(plan, paper=paper, template=template, pictures=pictures, fixes=fixes, drawn=drawn)
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


def svgs(
    plan: Plan, folder: Path, *, paper: str = "", template: bool = False, pictures: Pictures = (),
    fixes: Sequence[Fix] = (), drawn: str = "",
) -> tuple[Path, ...]:  # fmt: skip
    """Write every sheet as an SVG into an existing folder; give the files in order.

    All sheets are made first and then take their places together, so that an interrupt leaves either the old ones or
    the new ones; sheets of an earlier packet that no longer exist are taken away.
    """
    pages = sheets(plan, paper=paper, template=template, pictures=pictures, fixes=fixes, drawn=drawn)
    named = [(folder / f"{n:02d}-{str(p.name).replace(' ', '-')}.svg", svg.to_svg(p)) for n, p in enumerate(pages, 1)]
    with tempfile.TemporaryDirectory(prefix=".sheets-", dir=folder) as scratch:
        begun = [(Path(scratch) / file.name, file) for file, _ in named]
        for (part, _), (_, text) in zip(begun, named, strict=True):
            part.write_text(text, encoding="utf-8")
        for part, file in begun:
            part.replace(file)
    _sweep(folder, {file.name for file, _ in named})
    return tuple(file for file, _ in named)


def take_place(files: Sequence[Path], folder: Path) -> None:
    """Move finished sheets into the folder of an earlier packet; of its SVGs those go that have no successor."""
    for file in files:
        file.replace(folder / file.name)
    names = {file.name for file in files}
    if any(name.endswith(".svg") for name in names):
        _sweep(folder, names)


def _sweep(folder: Path, kept: set[str]) -> None:
    """Take away the sheets that an earlier packet left under names of ours."""
    ours = {str(n).replace(" ", "-") for n in Name} | {"template", "picture"}
    for file in folder.glob("[0-9][0-9]-*.svg"):
        if file.name not in kept and file.stem[3:] in ours:
            file.unlink()
