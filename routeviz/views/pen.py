"""The pen of the stills: lines, boxes and words on a picture, the flags of findings and the sign of the verdict."""

from __future__ import annotations

import math
from collections.abc import Sequence

from PIL import Image, ImageDraw

from routeviz.model.finding import State, Verdict
from routeviz.views import fonts
from routeviz.views.palette import BAR, BAR_INK, CLOSE, INK, PAPER, TEAL

__all__ = ["FLAG_PX", "LEAST_PX", "Sheet", "bars", "flag_cloth", "pennant", "verdict_mark"]

LEAST_PX = 16  # nothing is written smaller: 7 pt where 1640 px are as wide as a letter page's frame, 255.4 mm
FLAG_PX = 31


class Sheet:
    """A drawing surface `scale` times larger than the finished picture; all measures are of the finished one."""

    def __init__(self, image: Image.Image, scale: int) -> None:
        self.image, self.scale = image, scale
        self.draw = ImageDraw.Draw(image, "RGBA")

    def _at(self, points: Sequence[tuple[float, float]]) -> list[tuple[float, float]]:
        return [(x * self.scale, y * self.scale) for x, y in points]

    def line(self, points: Sequence[tuple[float, float]], colour: str, width: float) -> None:
        """Draw a polyline."""
        self.draw.line(self._at(points), fill=colour, width=max(1, round(width * self.scale)), joint="curve")

    def polygon(
        self, points: Sequence[tuple[float, float]], fill: str, outline: str | None = None, width: float = 1
    ) -> None:
        """Draw a filled polygon."""
        self.draw.polygon(self._at(points), fill=fill, outline=outline, width=round(width * self.scale))

    def box(
        self, x: float, y: float, w: float, h: float, fill: str, outline: str | None = None, width: float = 1
    ) -> None:
        """Draw a filled rectangle from its upper left corner."""
        a = self._at([(x, y), (x + w, y + h)])
        self.draw.rectangle([*a[0], *a[1]], fill=fill, outline=outline, width=max(1, round(width * self.scale)))

    def disc(self, x: float, y: float, r: float, fill: str, outline: str | None = None, width: float = 1) -> None:
        """Draw a filled disc."""
        a = self._at([(x - r, y - r), (x + r, y + r)])
        self.draw.ellipse([*a[0], *a[1]], fill=fill, outline=outline, width=max(1, round(width * self.scale)))

    def write(
        self,
        x: float,
        y: float,
        words: str,
        font: fonts.Font,
        colour: str = INK,
        *,
        anchor: str = "la",
        halo: float = 0.0,
    ) -> None:
        """Write words; `anchor` as Pillow has it, `halo` a light rim round the letters [px]."""
        self.draw.text((x * self.scale, y * self.scale), words, colour, font, anchor=anchor,
                       stroke_width=round(halo * self.scale), stroke_fill="#f8f4ec")  # fmt: skip

    def length(self, words: str, font: fonts.Font) -> float:
        """Give the width of words [px]."""
        return self.draw.textlength(words, font) / self.scale


def bars(sheet: Sheet, outline: Sequence[tuple[float, float]]) -> None:
    """Fill an outline with slanted red and white bars."""
    scale = sheet.scale
    mask = Image.new("L", sheet.image.size, 0)
    ImageDraw.Draw(mask).polygon([(x * scale, y * scale) for x, y in outline], fill=255)
    x0, y0 = (round(min(p[i] for p in outline) * scale) for i in (0, 1))
    x1, y1 = (round(max(p[i] for p in outline) * scale) + 1 for i in (0, 1))
    fill = Image.new("RGB", (x1 - x0, y1 - y0), "#ffffff")
    pen = ImageDraw.Draw(fill)
    for k in range(-(y1 - y0), x1 - x0 + (y1 - y0), 8 * scale):
        pen.line([(k, y1 - y0), (k + (y1 - y0), 0)], fill=BAR, width=4 * scale)
    sheet.image.paste(fill, (x0, y0), mask.crop((x0, y0, x1, y1)))


def flag_cloth(x: float, y: float, *, size: float = FLAG_PX, pole: float = 0) -> tuple[float, float, float, float]:
    """Give the box of a flag's cloth whose foot stands at (x, y): left, top, right, bottom [px]."""
    k = size / 28
    top = y - 27 * k - pole
    return x, top, x + 32 * k, top + 21 * k


def pennant(
    sheet: Sheet, x: float, y: float, number: int, state: State, *, size: float = FLAG_PX, pole: float = 0
) -> None:
    """Draw a finding's flag whose foot stands at (x, y): barred swallow-tail when broken, plain square when close."""
    k = size / 28
    top = y - 27 * k - pole
    sheet.line([(x, y), (x, top)], INK, 2)
    if state is State.BROKEN:
        shape = [
            (x, top + k),
            (x + 32 * k, top + k),
            (x + 26 * k, top + 10.5 * k),
            (x + 32 * k, top + 20 * k),
            (x, top + 20 * k),
        ]
        bars(sheet, shape)
        sheet.line([*shape, shape[0]], BAR, 1.4)
        sheet.disc(x + 12 * k, top + 10.5 * k, 8.2 * k, "#ffffff", BAR, 1.3)
        sheet.write(
            x + 12 * k,
            top + 10.5 * k,
            str(number),
            fonts.narrow(max(LEAST_PX, round(13 * k)) * sheet.scale),
            BAR_INK,
            anchor="mm",
        )
        return
    shape = [(x, top + 2 * k), (x + 24 * k, top + 2 * k), (x + 24 * k, top + 19 * k), (x, top + 19 * k)]
    sheet.polygon(shape, PAPER)
    for (ax, ay), (bx, by) in zip(shape, [*shape[1:], shape[0]], strict=True):
        count = max(1, round(math.dist((ax, ay), (bx, by)) / 6))
        for q in range(count):
            t0, t1 = q / count, (q + 0.62) / count
            sheet.line(
                [(ax + (bx - ax) * t0, ay + (by - ay) * t0), (ax + (bx - ax) * t1, ay + (by - ay) * t1)], CLOSE, 1.8
            )
    sheet.write(
        x + 12 * k,
        top + 10.5 * k,
        str(number),
        fonts.narrow(max(LEAST_PX, round(13 * k)) * sheet.scale),
        INK,
        anchor="mm",
    )


def verdict_mark(sheet: Sheet, verdict: Verdict, x: float, y: float) -> None:
    """Draw a tick in a disc round (x, y) for a plan that works, a barred pennant for one that does not."""
    if verdict in (Verdict.WORKS, Verdict.TIGHT):
        sheet.disc(x, y, 28, TEAL)
        sheet.line([(x - 13, y + 1), (x - 4, y + 10), (x + 14, y - 10)], "#ffffff", 6.5)
    else:
        sheet.line([(x - 24, y - 30), (x - 24, y + 30)], INK, 3)
        shape = [(x - 24, y - 28), (x + 28, y - 28), (x + 18, y - 12), (x + 28, y + 4), (x - 24, y + 4)]
        bars(sheet, shape)
        sheet.line([*shape, shape[0]], BAR, 1.6)
