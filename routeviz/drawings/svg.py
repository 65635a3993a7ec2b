"""Back end: one page to an SVG that stands alone. Knows primitives, not kitchens."""

from __future__ import annotations

import base64
from pathlib import Path as File
from xml.sax.saxutils import escape, quoteattr

from routeviz.drawings.lettering import box, width
from routeviz.drawings.primitives import Anchor, Disc, Face, Image, Page, Path, Primitive, Text

__all__ = ["to_svg"]

_FAMILY = {
    Face.SERIF: "'Times New Roman',Times,'Liberation Serif',serif",
    Face.SANS: "Helvetica,Arial,'Liberation Sans',sans-serif",
    Face.BOLD: "Helvetica,Arial,'Liberation Sans',sans-serif",
    Face.NARROW: "'Arial Narrow','Liberation Sans Narrow',Helvetica,Arial,sans-serif",
    Face.NARROW_BOLD: "'Arial Narrow','Liberation Sans Narrow',Helvetica,Arial,sans-serif",
}
_HEAVY = (Face.SERIF, Face.BOLD, Face.NARROW_BOLD)
_ANCHOR = {Anchor.LEFT: "start", Anchor.MIDDLE: "middle", Anchor.RIGHT: "end"}


def to_svg(page: Page) -> str:
    """Write a page as SVG in true millimetres; texts stay texts and keep their width in any face."""
    lines = [
        f'<svg xmlns="http://www.w3.org/2000/svg" width="{_n(page.width)}mm" height="{_n(page.height)}mm" '
        f'viewBox="0 0 {_n(page.width)} {_n(page.height)}">',
        f"<title>{escape(page.title)}</title>",
        f'<rect width="{_n(page.width)}" height="{_n(page.height)}" fill="#ffffff"/>',
    ]
    lines += [_element(item, page.height) for item in page.items]
    return "\n".join([*lines, "</svg>", ""])


def _n(value: float) -> str:
    """Write a length with 3 decimals at most and no needless zeros."""
    text = f"{value:.3f}".rstrip("0").rstrip(".")
    return "0" if text in ("", "-0") else text


def _element(item: Primitive, height: float) -> str:
    if isinstance(item, Text):
        return _text(item, height)
    if isinstance(item, Image):
        data = base64.b64encode(File(item.file).read_bytes()).decode()
        top = height - item.at[1] - item.height
        return (f'<image x="{_n(item.at[0])}" y="{_n(top)}" width="{_n(item.width)}" height="{_n(item.height)}" '
                f'href="data:image/png;base64,{data}"/>')  # fmt: skip
    if isinstance(item, Disc):
        x, y = item.centre
        return f'<circle cx="{_n(x)}" cy="{_n(height - y)}" r="{_n(item.radius)}"{_pen(item)}/>'
    points = " ".join(f"{_n(x)},{_n(height - y)}" for x, y in item.points)
    return f'<{"polygon" if item.closed else "polyline"} points="{points}"{_pen(item)}/>'


def _pen(item: Path | Disc) -> str:
    pen = f' fill="{item.fill or "none"}"'
    if item.weight > 0:
        pen += f' stroke="{item.ink}" stroke-width="{_n(item.weight)}" stroke-linejoin="round"'
    if item.dash:
        pen += f' stroke-dasharray="{" ".join(_n(d) for d in item.dash)}"'
    if item.id:
        pen += f" data-of={quoteattr(item.id)}"
    return pen


def _text(item: Text, height: float) -> str:
    x, y = item.at[0], height - item.at[1]
    long = width(item.text, item.size, item.face)
    turn = f' transform="rotate(-90 {_n(x)} {_n(y)})"' if item.turn else ""
    weight = ' font-weight="bold"' if item.face in _HEAVY else ""
    halo = ""
    if item.halo is not None:
        left, bottom, right, top = box(item)
        halo = (f'<rect x="{_n(left - 0.3)}" y="{_n(height - top)}" width="{_n(right - left + 0.6)}" '
                f'height="{_n(top - bottom)}" fill="{item.halo}"/>')  # fmt: skip
    fit = f' textLength="{_n(long)}" lengthAdjust="spacingAndGlyphs"' if item.text else ""
    return (f'{halo}<text x="{_n(x)}" y="{_n(y)}" font-family="{_FAMILY[item.face]}" font-size="{_n(item.size)}"{weight} '
            f'text-anchor="{_ANCHOR[item.anchor]}" fill="{item.ink}"{fit}{turn}>{escape(item.text)}</text>')  # fmt: skip
