"""Widths of lettering, line breaking, and the characters a sheet can show.

The sheets use the standard faces that every PDF reader has; the narrow ones are the sans set at 82 % of its width.
Their metrics come with reportlab, so a text is as wide here as on paper.
"""

from __future__ import annotations

import functools
import unicodedata

from routeviz.drawings.primitives import Anchor, Face, Point, Text
from routeviz.folding import pieces, unbound

__all__ = ["FONT", "NARROWING", "box", "fitted", "plain", "width", "wrapped"]

NARROWING = 0.82
FONT = {
    Face.SERIF: "Times-Bold",
    Face.SANS: "Helvetica",
    Face.BOLD: "Helvetica-Bold",
    Face.NARROW: "Helvetica",
    Face.NARROW_BOLD: "Helvetica-Bold",
}
_STRETCH = {Face.NARROW: NARROWING, Face.NARROW_BOLD: NARROWING}
_PLAIN = {
    "−": "–",
    "≥": "at least ",
    "≤": "at most ",
    "→": "to",
    "′": "'",
    "″": '"',
    "⌀": "dia. ",
    "\u2009": " ",
    "\u00a0": " ",
}
_UP, _DOWN = 0.74, 0.22  # of the size, above and below the base line


def plain(text: str) -> str:
    """Write a text with the characters of the standard faces (Windows-1252); others become their base letter or ?."""
    for sign, words in _PLAIN.items():
        text = text.replace(sign, words)
    text = " ".join(text.split())
    shown = []
    for letter in text:
        try:
            letter.encode("cp1252")
            shown.append(letter)
        except UnicodeEncodeError:
            base = unicodedata.normalize("NFKD", letter).encode("ascii", "ignore").decode()
            shown.append(base or "?")
    return "".join(shown)


@functools.lru_cache(maxsize=20000)
def width(text: str, size: float, face: Face = Face.SANS) -> float:
    """Give the width of a text [mm]."""
    from reportlab.pdfbase.pdfmetrics import stringWidth

    return float(stringWidth(text, FONT[face], size)) * _STRETCH.get(face, 1.0)


def box(text: Text) -> tuple[float, float, float, float]:
    """Give the box round a text on the page [mm]: left, bottom, right, top."""
    long = width(text.text, text.size, text.face)
    back = {Anchor.LEFT: 0.0, Anchor.MIDDLE: long / 2, Anchor.RIGHT: long}[text.anchor]
    x, y = text.at
    if text.turn == 90:
        return x - _UP * text.size, y - back, x + _DOWN * text.size, y - back + long
    return x - back, y - _DOWN * text.size, x - back + long, y + _UP * text.size


def wrapped(text: str, size: float, face: Face, room: float) -> list[str]:
    """Break a text into lines no wider than `room` [mm]; a word that is too long alone is broken inside."""
    lines: list[str] = []
    line = ""
    for word in pieces(plain(text), lambda one: width(one, size, face) <= room):
        trial = f"{line} {word}" if line else word
        if width(trial, size, face) <= room:
            line = trial
            continue
        if line:
            lines.append(line)
        while width(word, size, face) > room and len(word) > 1:
            n = next(k for k in range(len(word), 0, -1) if k == 1 or width(word[:k], size, face) <= room)
            lines.append(word[:n])
            word = word[n:]
        line = word
    kept = [*lines, line] if line or not lines else lines
    return [unbound(k) for k in kept]


def fitted(text: str, size: float, face: Face, room: float, least: float) -> tuple[str, float]:
    """Give a text that fits into `room` [mm]: smaller down to `least`, then cut with dots."""
    text = plain(text)
    while size > least and width(text, size, face) > room:
        size = max(least, size - 0.1)
    if width(text, size, face) <= room:
        return text, size
    while text and width(f"{text}...", size, face) > room:
        text = text[:-1].rstrip()
    return f"{text}...", size


def shifted(at: Point, dx: float, dy: float) -> Point:
    """Move a point."""
    return at[0] + dx, at[1] + dy
