"""Lists that flow over as many sheets as they need: titles, paragraphs, tables with wrapped cells."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, field

from routeviz.drawings import palette as ink
from routeviz.drawings.lettering import wrapped
from routeviz.drawings.primitives import Anchor, Face
from routeviz.drawings.sheet import Paper, Sheet, heading, new_sheet
from routeviz.drawings.sketch import Sketch

__all__ = ["Cell", "Column", "Flow", "settled"]

_LEAD, _TIGHT_LEAD = 3.7, 3.3
_AIR = 1.9
_TIGHT_AIR = 0.9  # when that keeps a table on its sheet
_LONELY = 60.0  # a last sheet with less on it is not worth a sheet [mm]
_SHORTER = (25.0, 45.0, 65.0)
_KEEP = 17.0  # a table's titles and its first row


@dataclass(frozen=True, slots=True)
class Column:
    """A column: its title, its share of the width, its face; figures stand right."""

    title: str
    share: float
    face: Face = Face.SANS
    right: bool = False


@dataclass(frozen=True, slots=True)
class Cell:
    """A cell that is not plain text: `mark` draws at (x, y) and the words follow after `indent` [mm]."""

    words: str
    mark: Callable[[Sketch, float, float], None] | None = None
    indent: float = 0.0
    bold: bool = False


@dataclass(slots=True)
class Flow:
    """Writes downwards; a new sheet begins when the room is used up."""

    paper: Paper
    name: str
    title: str
    number: str = ""  # of its first sheet; the ones after count on
    under: str = ""
    tight: bool = False  # lines and rows closer together
    short: float = 0.0  # left free at the foot of each sheet [mm]
    sheets: list[Sheet] = field(default_factory=list)
    y: float = 0.0

    @property
    def is_lonely(self) -> bool:
        """Whether the last of several sheets holds next to nothing."""
        return len(self.sheets) > 1 and self.sheet.room[3] - 14.0 - self.y < _LONELY

    @property
    def sheet(self) -> Sheet:
        """Give the sheet being written."""
        if not self.sheets:
            self._begin()
        return self.sheets[-1]

    def _begin(self) -> None:
        goes_on = " (goes on)" if self.sheets else ""
        made = new_sheet(self.paper, self.name, f"{self.title}{goes_on}")
        number = str(int(self.number) + len(self.sheets)) if self.number else ""
        heading(made, number, f"{self.title}{goes_on}", self.under)
        self.sheets.append(made)
        self.y = made.room[3] - 14.0

    @property
    def left(self) -> float:
        """Left edge [mm]."""
        return self.sheet.room[0]

    @property
    def right(self) -> float:
        """Right edge [mm]."""
        return self.sheet.room[2]

    def need(self, height: float) -> None:
        """Begin a new sheet if less than `height` is left."""
        if self._low > self.y - height:
            self._begin()

    @property
    def _lead(self) -> float:
        return _TIGHT_LEAD if self.tight else _LEAD

    @property
    def _low(self) -> float:
        return self.sheet.room[1] + 2.0 + self.short

    def head(self, title: str, keep: float = _KEEP) -> None:
        """Write a list's title with its line; `keep` is the room wanted below it on the same sheet [mm]."""
        self.need(keep + 9.4)
        self.y -= 1.6 if self.tight else 3.2
        self.sheet.sketch.text((self.left, self.y), title, ink.HEADING, Face.SERIF)
        self.y -= 2.0
        self.sheet.sketch.line((self.left, self.y), (self.right, self.y), ink.MEDIUM)
        self.y -= 4.2

    def paragraph(self, words: str, size: float = ink.BODY, *, colour: str = ink.INK, face: Face = Face.SANS) -> None:
        """Write a paragraph over the whole width."""
        for line in wrapped(words, size, face, self.right - self.left):
            self.need(self._lead)
            self.sheet.sketch.text((self.left, self.y), line, size, face, colour=colour)
            self.y -= size * 1.32
        self.y -= 1.4

    def gap(self, height: float = 3.0) -> None:
        """Leave room."""
        self.y -= height

    def table(self, columns: Sequence[Column], rows: Sequence[Sequence[str | Cell]], size: float = ink.BODY) -> None:
        """Write a table; its titles are repeated on every sheet, and a row is never torn."""
        edges = self._edges(columns)
        made = [[c if isinstance(c, Cell) else Cell(c) for c in row] for row in rows]
        wrapped_rows = [
            [
                self._lines(c, col, edges[k], edges[k + 1], size)
                for k, (c, col) in enumerate(zip(cells, columns, strict=True))
            ]
            for cells in made
        ]
        self.need(_KEEP)
        self._titles(columns, edges)
        air = self._air([max(len(x) for x in lines) for lines in wrapped_rows])
        for cells, lines in zip(made, wrapped_rows, strict=True):
            height = max(len(x) for x in lines) * self._lead + air
            before = len(self.sheets)
            self.need(height)
            if len(self.sheets) != before:
                self._titles(columns, edges)
            self._row(columns, cells, lines, edges, size)
            self.y -= height
            self.sheet.sketch.line(
                (self.left, self.y + self._lead - 0.75),
                (self.right, self.y + self._lead - 0.75),
                ink.HAIR,
                colour="#b9ad99",
            )
        self.y -= 1.0

    def _air(self, counts: Sequence[int]) -> float:
        """Give the air under each row [mm]: less where the last rows alone would ask for a sheet of their own."""
        if self.tight:
            return _TIGHT_AIR
        room = self.y - self._low
        high = sum(counts) * self._lead
        if high + len(counts) * _AIR > room >= high + len(counts) * _TIGHT_AIR:
            return (room - high) / len(counts)
        return _AIR

    def _edges(self, columns: Sequence[Column]) -> list[float]:
        total = sum(c.share for c in columns)
        wide = self.right - self.left
        edges = [self.left]
        for column in columns:
            edges.append(edges[-1] + wide * column.share / total)
        return edges

    def _titles(self, columns: Sequence[Column], edges: Sequence[float]) -> None:
        for column, a, b in zip(columns, edges, edges[1:], strict=False):
            if column.right:
                self.sheet.sketch.text((b - 2.5, self.y), column.title, ink.LEAST, anchor=Anchor.RIGHT, colour=ink.INK2)
            else:
                self.sheet.sketch.text((a, self.y), column.title, ink.LEAST, colour=ink.INK2)
        self.y -= 1.4
        self.sheet.sketch.line((self.left, self.y), (self.right, self.y), ink.FINE)
        self.y -= 4.0

    @staticmethod
    def _lines(cell: Cell, column: Column, a: float, b: float, size: float) -> list[str]:
        face = Face.BOLD if cell.bold else column.face
        return wrapped(cell.words, size, face, b - a - 2.5 - cell.indent)

    def _row(
        self,
        columns: Sequence[Column],
        cells: Sequence[Cell],
        lines: Sequence[list[str]],
        edges: Sequence[float],
        size: float,
    ) -> None:
        sketch = self.sheet.sketch
        for k, (column, cell) in enumerate(zip(columns, cells, strict=True)):
            face = Face.BOLD if cell.bold else column.face
            if cell.mark is not None:
                cell.mark(sketch, edges[k], self.y)
            for n, line in enumerate(lines[k]):
                if not line:
                    continue
                at_y = self.y - n * self._lead
                if column.right:
                    sketch.text((edges[k + 1] - 2.5, at_y), line, size, face, Anchor.RIGHT)
                else:
                    sketch.text((edges[k] + cell.indent, at_y), line, size, face)


def settled(
    write: Callable[[Flow], None], paper: Paper, name: str, title: str, number: str = "", under: str = ""
) -> list[Sheet]:
    """Write a list so that its last sheet is worth having.

    With less air between rows if that saves the last sheet; else earlier sheets end sooner and the last one gets more.
    """
    plain = Flow(paper, name, title, number, under)
    write(plain)
    if not plain.is_lonely:
        return plain.sheets
    for tight, short in ((True, 0.0), *((False, s) for s in _SHORTER)):
        other = Flow(paper, name, title, number, under, tight, short)
        write(other)
        if len(other.sheets) < len(plain.sheets) or (len(other.sheets) == len(plain.sheets) and not other.is_lonely):
            return other.sheets
    return plain.sheets


def tick_box(sketch: Sketch, x: float, y: float) -> None:
    """Draw a box to tick off by hand."""
    sketch.rect((x + 0.2, y - 0.4), (x + 2.8, y + 2.2), ink.FINE)
