"""The paper: sizes, the title strip that is a tape blade with true inches, headings."""

from __future__ import annotations

from dataclasses import dataclass

from routeviz.drawings import palette as ink
from routeviz.drawings.lettering import fitted
from routeviz.drawings.primitives import Anchor, Face, Page
from routeviz.drawings.sketch import Sketch
from routeviz.model.plan import Plan

__all__ = ["PAPERS", "Paper", "Sheet", "paper_named", "picture_room"]

_EDGE = 12.0
_STRIP = (9.0, 22.0)
_CAUTION = 5.5  # height of the line of caution over the strip [mm]
CAUTION = "Before cutting: lay a tape on the ticks below; they are true {unit}. Power off; expect wires, pipes and gas."
UNMEASURED = "Nothing on this sheet is to scale."  # a lesson is looked at, and nothing is cut by it


@dataclass(frozen=True, slots=True)
class Paper:
    """A paper size [mm], lying, with the scales drawn on it: the first that fits is used."""

    name: str
    width: float
    height: float
    scales: tuple[float, ...]
    metric: bool
    large: tuple[float, ...] = ()  # for single drawings with a sheet to themselves


PAPERS = {
    "letter": Paper("letter", 279.4, 215.9, (24.0, 32.0, 48.0, 64.0, 96.0, 192.0), False, (12.0, 16.0)),
    "a4": Paper("A4", 297.0, 210.0, (25.0, 30.0, 40.0, 50.0, 75.0, 100.0, 200.0), True, (10.0, 15.0, 20.0)),
    "tabloid": Paper("tabloid", 431.8, 279.4, (24.0, 32.0, 48.0, 64.0, 96.0, 192.0), False, (12.0, 16.0)),
    "a3": Paper("A3", 420.0, 297.0, (25.0, 30.0, 40.0, 50.0, 75.0, 100.0, 200.0), True, (10.0, 15.0, 20.0)),
}
_SCALE_NAME = {
    12.0: "1 in = 1 ft", 16.0: "3/4 in = 1 ft", 24.0: "1/2 in = 1 ft", 32.0: "3/8 in = 1 ft", 48.0: "1/4 in = 1 ft",
    64.0: "3/16 in = 1 ft", 96.0: "1/8 in = 1 ft", 192.0: "1/16 in = 1 ft",
}  # fmt: skip


def paper_named(name: str) -> Paper:
    """Give a paper by its name: letter, A4, tabloid or A3.

    Raises
    ------
    ValueError
        If there is no such paper; the message lists them.
    """
    try:
        return PAPERS[name.strip().lower()]
    except KeyError:
        known = ", ".join(p.name for p in PAPERS.values())
        raise ValueError(f"no paper named {name!r}; there are {known}") from None


def scale_name(scale: float) -> str:
    """Write a scale: ``1/2 in = 1 ft`` or ``1 : 25``."""
    return _SCALE_NAME.get(scale, f"1 : {scale:g}")


@dataclass(slots=True)
class Sheet:
    """A page being drawn; `room` is what the title strip leaves."""

    paper: Paper
    name: str
    title: str
    sketch: Sketch
    scale: str = ""

    @property
    def room(self) -> tuple[float, float, float, float]:
        """Left, bottom, right, top of the free part [mm]."""
        return _EDGE, _STRIP[1] + 8.0, self.paper.width - _EDGE, self.paper.height - 10.0


def picture_room(paper: Paper) -> tuple[float, float]:
    """Give the width and height that a picture has to itself on a sheet of this paper [mm]."""
    left, bottom, right, top = new_sheet(paper, "", "").room
    return right - left, top - 10.0 - bottom - 2.0


def new_sheet(paper: Paper, name: str, title: str) -> Sheet:
    """Begin a sheet."""
    bounds = (_EDGE - 6.0, _STRIP[1] + _CAUTION, paper.width - _EDGE, paper.height - 3.0)
    return Sheet(paper, name, title, Sketch(bounds))


def heading(sheet: Sheet, number: str, title: str, under: str = "", at: tuple[float, float] | None = None) -> None:
    """Write a drawing's number and title, with the line below it."""
    x, top = at or (sheet.room[0], sheet.room[3])
    sketch = sheet.sketch
    indent = 0.0
    if number:
        made = sketch.text((x, top - 7.0), number, ink.NUMBER, Face.SERIF, colour=ink.UP)
        indent = 9.0 if len(made.text) == 1 else 12.0
    sketch.text((x + indent, top - 3.6), title, 4.4, Face.SERIF)
    if under:
        sketch.text((x + indent, top - 7.0), under, ink.SMALL, colour=ink.INK2)


def finish(sheet: Sheet, plan: Plan, number: int, count: int, drawn: str, *, caution: str = CAUTION) -> Page:
    """Add the title strip, with a line of caution over it, and close the sheet."""
    strip = Sketch(sheet.sketch.bounds)
    _strip(strip, sheet, plan, f"{number} of {count}", drawn, caution)
    items = (*sheet.sketch.items, *strip.items)
    return Page(sheet.name, sheet.title, sheet.paper.width, sheet.paper.height, items)


def _strip(sketch: Sketch, sheet: Sheet, plan: Plan, number: str, drawn: str, caution: str) -> None:
    left, right = _EDGE, sheet.paper.width - _EDGE
    low, high = _STRIP
    metric = sheet.paper.metric
    sketch.text(
        (left, high + 3.2), caution.format(unit="centimetres" if metric else "inches"), ink.LEAST, colour=ink.INK2
    )
    sketch.rect((left, low), (right, high), ink.MEDIUM, fill=ink.BLADE, colour=ink.BLADE_EDGE)
    hook = ((left, high + 1.2), (left - 1.8, high + 1.2), (left - 1.8, low - 3.4), (left, low - 3.4), (left, low))
    sketch.path(hook, ink.MEDIUM, fill=ink.HOOK)
    _true_ticks(sketch, left, right, high, metric)
    wide = right - left
    fields = [
        (0.016, 0.215, "job", plan.scene.name, 3.5, Face.SERIF),
        (0.24, 0.26, "shows", sheet.title, 3.2, Face.BOLD),
        (
            0.51,
            0.155,
            "scale",
            f"{sheet.scale}, {sheet.paper.name}" if sheet.scale else f"none, {sheet.paper.name}",
            3.2,
            Face.BOLD,
        ),
        *([(0.672, 0.085, "drawn", drawn, 3.0, Face.BOLD)] if drawn else []),
        (0.765, 0.155, "plan only", "code, maker, trades decide", 2.8, Face.BOLD),
        (0.932, 0.06, "sheet", number, 3.0, Face.BOLD),
    ]
    for place, share, name, value, size, face in fields:
        x = left + place * wide
        words, height = fitted(value, size, face, share * wide, ink.LEAST)
        sketch.text((x, low + 5.6), name, ink.LEAST, colour=ink.INK2)
        sketch.text((x, low + 1.8), words, height, face)


def _true_ticks(sketch: Sketch, left: float, right: float, high: float, metric: bool) -> None:
    """Draw the ticks that are true on paper: eighths of an inch, or fives of a centimetre's millimetres."""
    step, whole, half = (1.0, 10, 5) if metric else (25.4 / 8, 8, 4)
    n = 0
    while left + n * step <= right + 1e-9:
        x = left + n * step
        long = 2.6 if n % whole == 0 else 1.8 if n % half == 0 else 1.1
        sketch.line((x, high), (x, high - long), ink.FINE if n % whole == 0 else ink.HAIR)
        if n and n % whole == 0 and x < right - 8.0:
            sketch.text((x + 0.6, high - 3.4), str(n // whole), ink.LEAST, Face.NARROW, colour=ink.INK2)
        n += 1


def section_title(sheet: Sheet, at: tuple[float, float], title: str, right: float) -> float:
    """Write a list's title with the line under it; give the y of the first row."""
    sheet.sketch.text(at, title, ink.BODY, Face.BOLD)
    sheet.sketch.line((at[0], at[1] - 1.6), (right, at[1] - 1.6), ink.MEDIUM)
    return at[1] - 5.6


def right_text(sheet: Sheet, at: tuple[float, float], words: str) -> None:
    """Write figures that end at `at`."""
    sheet.sketch.text(at, words, ink.BODY, Face.NARROW_BOLD, Anchor.RIGHT)
