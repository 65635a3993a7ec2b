"""Back end: pages to one PDF. Knows primitives, not kitchens."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from io import BytesIO
from pathlib import Path as File
from typing import Any, BinaryIO

from routeviz.drawings.lettering import FONT, NARROWING, box
from routeviz.drawings.primitives import Anchor, Disc, Face, Image, Page, Path, Primitive, Text

__all__ = ["write"]

_MM = 72 / 25.4
_NARROW = (Face.NARROW, Face.NARROW_BOLD)


def write(
    pages: Sequence[Page], out: BinaryIO, *, title: str, progress: Callable[[int, int, str], None] | None = None
) -> None:
    """Write the pages. The same pages give the same bytes: no date, no random id.

    Parameters
    ----------
    progress : callable, optional
        Called with (pages done, pages in all, name of the page just done).
    """
    from reportlab.pdfgen import canvas

    made: Any = canvas.Canvas(out, invariant=1, pageCompression=1)
    made.setTitle(title)
    made.setAuthor("routeviz")
    made.setSubject("Kitchen exhaust duct: drawings, parts and order of work. Plan only.")
    for done, page in enumerate(pages, start=1):
        made.setPageSize((page.width * _MM, page.height * _MM))
        made.scale(_MM, _MM)
        made.setLineCap(0)
        made.setLineJoin(1)
        made.bookmarkPage(f"sheet-{done}")
        made.addOutlineEntry(page.title, f"sheet-{done}", 0)
        for item in page.items:
            _draw(made, item)
        made.showPage()
        if progress is not None:
            progress(done, len(pages), page.name)
    made.save()


def _draw(made: Any, item: Primitive) -> None:
    if isinstance(item, Text):
        _text(made, item)
    elif isinstance(item, Image):
        from reportlab.lib.utils import ImageReader

        picture = ImageReader(BytesIO(File(item.file).read_bytes()))  # named by what is in it, not by where it lay
        made.drawImage(picture, item.at[0], item.at[1], item.width, item.height, preserveAspectRatio=True, anchor="c")
    elif isinstance(item, Path):
        _pen(made, item)
        line = made.beginPath()
        line.moveTo(*item.points[0])
        for point in item.points[1:]:
            line.lineTo(*point)
        if item.closed:
            line.close()
        made.drawPath(line, stroke=int(item.weight > 0), fill=int(item.fill is not None))
    else:
        _pen(made, item)
        made.circle(*item.centre, item.radius, stroke=int(item.weight > 0), fill=int(item.fill is not None))


def _pen(made: Any, item: Path | Disc) -> None:
    from reportlab.lib.colors import HexColor

    made.setLineWidth(item.weight)
    made.setStrokeColor(HexColor(item.ink))
    if item.fill is not None:
        made.setFillColor(HexColor(item.fill))
    made.setDash(list(item.dash) if item.dash else [])


def _text(made: Any, item: Text) -> None:
    from reportlab.lib.colors import HexColor

    if item.halo is not None:
        left, bottom, right, top = box(item)
        made.setFillColor(HexColor(item.halo))
        made.rect(left - 0.3, bottom, right - left + 0.6, top - bottom, stroke=0, fill=1)
    made.saveState()
    made.translate(*item.at)
    made.rotate(item.turn)
    long = box(item)[3] - box(item)[1] if item.turn else box(item)[2] - box(item)[0]
    back = {Anchor.LEFT: 0.0, Anchor.MIDDLE: long / 2, Anchor.RIGHT: long}[item.anchor]
    line = made.beginText(-back, 0)
    line.setFont(FONT[item.face], item.size)
    line.setHorizScale(100 * NARROWING if item.face in _NARROW else 100)
    line.setFillColor(HexColor(item.ink))
    line.textOut(item.text)
    made.drawText(line)
    made.restoreState()
