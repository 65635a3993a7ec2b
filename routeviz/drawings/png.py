"""Back end: one page to a PNG picture. Knows primitives, not kitchens.

Drawn three times too large and shrunk, so that edges are smooth. Texts are set in the package's own faces and keep
the width that the layout counted on.
"""

from __future__ import annotations

from functools import cache
from importlib.resources import files
from io import BytesIO
from itertools import pairwise
from math import dist
from typing import TYPE_CHECKING

from routeviz.drawings.lettering import box, width
from routeviz.drawings.primitives import Anchor, Disc, Face, Image, Page, Path, Point, Primitive, Text

if TYPE_CHECKING:
    from PIL.Image import Image as Picture
    from PIL.ImageDraw import ImageDraw
    from PIL.ImageFont import FreeTypeFont

__all__ = ["to_png"]

_LARGER = 3
_FACE = {
    Face.SERIF: "source-serif-4-latin-600-normal.woff",
    Face.SANS: "source-sans-3-latin-400-normal.woff",
    Face.BOLD: "source-sans-3-latin-600-normal.woff",
    Face.NARROW: "source-sans-3-latin-400-normal.woff",
    Face.NARROW_BOLD: "archivo-narrow-latin-700-normal.woff",
}


def to_png(page: Page, *, dots_per_inch: float = 200.0) -> bytes:
    """Paint a page; the same page gives the same picture.

    Parameters
    ----------
    dots_per_inch : float
        Of the finished picture.
    """
    from PIL import Image as Pillow
    from PIL import ImageDraw

    scale = dots_per_inch / 25.4 * _LARGER
    size = round(page.width * scale / _LARGER), round(page.height * scale / _LARGER)
    picture = Pillow.new("RGB", (size[0] * _LARGER, size[1] * _LARGER), "#ffffff")
    painter = _Painter(picture, ImageDraw.Draw(picture), scale, page.height)
    for item in page.items:
        painter.paint(item)
    out = BytesIO()
    picture.resize(size, Pillow.Resampling.BOX).save(out, "PNG", dpi=(dots_per_inch, dots_per_inch))
    return out.getvalue()


@cache
def _font(face: Face, pixels: int) -> FreeTypeFont:
    from PIL import ImageFont

    data = (files("routeviz") / "views" / "fonts_ofl" / _FACE[face]).read_bytes()
    return ImageFont.truetype(BytesIO(data), pixels)


class _Painter:
    def __init__(self, picture: Picture, draw: ImageDraw, scale: float, height: float) -> None:
        self.picture, self.draw, self.scale, self.height = picture, draw, scale, height

    def at(self, point: Point) -> Point:
        """Give the pixel of a place on the page [mm]."""
        return point[0] * self.scale, (self.height - point[1]) * self.scale

    def paint(self, item: Primitive) -> None:
        if isinstance(item, Text):
            self.text(item)
        elif isinstance(item, Path):
            self.path(item)
        elif isinstance(item, Disc):
            self.disc(item)
        else:
            self.image(item)

    def path(self, item: Path) -> None:
        points = [self.at(p) for p in item.points]
        if item.fill is not None:
            self.draw.polygon(points, fill=item.fill)
        if item.weight > 0:
            ring = [*points, points[0]] if item.closed else points
            self.stroke(ring, item)

    def stroke(self, points: list[Point], item: Path | Disc) -> None:
        wide = max(1, round(item.weight * self.scale))
        if not item.dash:
            self.draw.line(points, fill=item.ink, width=wide, joint="curve")
            return
        for piece in _dashes(points, [d * self.scale for d in item.dash]):
            self.draw.line(piece, fill=item.ink, width=wide, joint="curve")

    def disc(self, item: Disc) -> None:
        (x, y), r = self.at(item.centre), item.radius * self.scale
        self.draw.ellipse((x - r, y - r, x + r, y + r), fill=item.fill, outline=item.ink if item.weight > 0 else None,
                          width=max(1, round(item.weight * self.scale)))  # fmt: skip

    def image(self, item: Image) -> None:
        from PIL import Image as Pillow

        with Pillow.open(item.file) as found:
            share = min(item.width / found.width, item.height / found.height) * self.scale
            size = max(1, round(found.width * share)), max(1, round(found.height * share))
            x, y = self.at((item.at[0] + item.width / 2, item.at[1] + item.height / 2))
            self.picture.paste(found.convert("RGB").resize(size), (round(x - size[0] / 2), round(y - size[1] / 2)))

    def text(self, item: Text) -> None:
        from PIL import Image as Pillow
        from PIL import ImageDraw

        if item.halo is not None:
            left, bottom, right, top = box(item)
            self.draw.rectangle((*self.at((left - 0.3, top)), *self.at((right + 0.3, bottom))), fill=item.halo)
        if not item.text.strip():
            return
        font = _font(item.face, max(1, round(item.size * self.scale)))
        rise, drop = font.getmetrics()
        long = max(1, round(width(item.text, item.size, item.face) * self.scale))
        mask = Pillow.new("L", (max(1, round(font.getlength(item.text))), rise + drop), 0)
        ImageDraw.Draw(mask).text((0, 0), item.text, font=font, fill=255)
        mask = mask.resize((long, rise + drop), Pillow.Resampling.BICUBIC)
        back = {Anchor.LEFT: 0, Anchor.MIDDLE: long // 2, Anchor.RIGHT: long}[item.anchor]
        x, y = (round(v) for v in self.at(item.at))
        place = (x - back, y - rise)
        if item.turn:
            mask = mask.transpose(Pillow.Transpose.ROTATE_90)
            place = (x - rise, y - long + back)
        self.picture.paste(item.ink, place, mask)


def _dashes(points: list[Point], pattern: list[float]) -> list[list[Point]]:
    """Cut a polyline into the strokes of a dash pattern that alternates on and off."""
    pattern = pattern * (1 + len(pattern) % 2)
    found: list[list[Point]] = []
    which, left = 0, pattern[0]
    for a, b in pairwise(points):
        long, gone = dist(a, b), 0.0
        while long - gone > 1e-6:
            step = min(left, long - gone)
            if which % 2 == 0:
                found.append(
                    [(a[0] + (b[0] - a[0]) * t / long, a[1] + (b[1] - a[1]) * t / long) for t in (gone, gone + step)]
                )
            gone, left = gone + step, left - step
            if left <= 1e-6:
                which = (which + 1) % len(pattern)
                left = pattern[which]
    return found
