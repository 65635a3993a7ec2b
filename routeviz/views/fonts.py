"""Faces for pictures. Four small open faces are shipped; words in other scripts fall back on a wider face."""

from __future__ import annotations

import functools
from importlib.resources import files
from importlib.util import find_spec
from io import BytesIO
from pathlib import Path

from PIL import ImageFont

__all__ = ["Font", "heading", "narrow", "text", "text_bold"]

Font = ImageFont.FreeTypeFont

_SHIPPED = {
    "heading": "source-serif-4-latin-600-normal.woff",
    "text": "source-sans-3-latin-400-normal.woff",
    "text bold": "source-sans-3-latin-600-normal.woff",
    "narrow": "archivo-narrow-latin-700-normal.woff",
}
_WIDE = {
    "heading": "DejaVuSerif-Bold.ttf",
    "text": "DejaVuSans.ttf",
    "text bold": "DejaVuSans-Bold.ttf",
    "narrow": "DejaVuSans-Bold.ttf",
}
_BEYOND_LATIN = frozenset("−×…’‘“”–—")


@functools.cache
def _shipped(role: str, size: int) -> Font:
    data = files("routeviz.views").joinpath("fonts_ofl", _SHIPPED[role]).read_bytes()
    return ImageFont.truetype(BytesIO(data), size)


@functools.cache
def _wide(role: str, size: int) -> Font:
    """Give a face with many scripts: the system's, the plotting library's, or the shipped one when there is none."""
    name = _WIDE[role]
    spec = find_spec("matplotlib")
    places = [name]
    if spec is not None and spec.origin is not None:
        places.append(str(Path(spec.origin).parent / "mpl-data" / "fonts" / "ttf" / name))
    for place in places:
        try:
            return ImageFont.truetype(place, size)
        except OSError:
            continue
    return _shipped(role, size)


def _face(role: str, size: int, words: str) -> Font:
    latin = all(ord(c) < 0x100 or c in _BEYOND_LATIN for c in words)
    return _shipped(role, size) if latin else _wide(role, size)


def heading(size: int, words: str = "") -> Font:
    """Give the face of sentences, able to write `words`."""
    return _face("heading", size, words)


def text(size: int, words: str = "") -> Font:
    """Give the face of notes, able to write `words`."""
    return _face("text", size, words)


def text_bold(size: int, words: str = "") -> Font:
    """Give the face of titles on labels, able to write `words`."""
    return _face("text bold", size, words)


def narrow(size: int, words: str = "") -> Font:
    """Give the face of figures, able to write `words`."""
    return _face("narrow", size, words)
