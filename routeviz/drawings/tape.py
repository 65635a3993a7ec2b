"""The tape along the hood wall, drawn to scale between elevation and plan, and alone."""

from __future__ import annotations

from dataclasses import dataclass

from routeviz.drawings import palette as ink
from routeviz.drawings.lettering import width
from routeviz.drawings.primitives import Anchor, Face
from routeviz.drawings.sketch import Sketch

__all__ = ["TAPE_FOOT", "TAPE_HEIGHT", "draw_tape"]

TAPE_HEIGHT = 7.0
TAPE_FOOT = 1.5  # clear space that the pointer wants under the tape [mm]


@dataclass(frozen=True, slots=True)
class _Marks:
    """How a tape is divided: all in inches."""

    tick: float
    middle: int  # every how many ticks a longer one
    long: int  # every how many ticks the longest, with a bold figure
    figures: int  # every how many ticks a small figure
    unit: float  # what one step of the figures counts


def _marks(metric: bool, scale: float) -> _Marks:
    if metric:
        return _Marks(50 / 25.4, 2, 20, 4, 50.0) if scale >= 0.8 else _Marks(100 / 25.4, 5, 10, 10, 100.0)
    if scale >= 0.95:
        return _Marks(1.0, 6, 12, 6, 1.0)
    return _Marks(2.0, 3, 6, 6, 2.0)


def draw_tape(sketch: Sketch, left: float, base: float, length_in: float, scale: float, *, metric: bool, pointer_in: float | None,
              pointer_words: str = "", region: tuple[float, float] | None = None) -> None:  # fmt: skip
    """Draw the blade from the left wall: `left` is the page place of 0, `scale` millimetres for one inch.

    `pointer_in` sets the teal pointer with its figure, where the hood's centre is; `region` cuts the blade [in].
    """
    first, last = region or (0.0, length_in)
    first, last = max(0.0, first), min(length_in, last)
    x0, x1 = left + first * scale, left + last * scale
    sketch.rect((x0, base), (x1, base + TAPE_HEIGHT), ink.FINE, fill=ink.BLADE, colour=ink.BLADE_EDGE)
    if first == 0.0:
        top = base + TAPE_HEIGHT
        sketch.path(((x0, top + 1), (x0 - 1.2, top + 1), (x0 - 1.2, base - 2.5), (x0, base - 2.5), (x0, base)), ink.FINE,
                    fill=ink.HOOK)  # fmt: skip
    marks = _marks(metric, scale)
    n = 0
    while n * marks.tick <= length_in + 1e-9:
        at = n * marks.tick
        if first <= at <= last:
            _tick(sketch, left + at * scale, base, n, marks, x0, x1)
        n += 1
    if pointer_in is not None:
        _pointer(sketch, left + pointer_in * scale, base, pointer_words)


def _tick(sketch: Sketch, x: float, base: float, n: int, marks: _Marks, x0: float, x1: float) -> None:
    top = base + TAPE_HEIGHT
    is_long, is_middle = n % marks.long == 0, n % marks.middle == 0
    reach = 3.0 if is_long else 2.2 if is_middle else 1.3
    sketch.line((x, top), (x, top - reach), ink.FINE if is_long else ink.HAIR)
    face, size = (Face.NARROW_BOLD, 2.7) if is_long else (Face.NARROW, ink.LEAST)
    if n == 0 or not (is_long or n % marks.figures == 0):
        return
    words = f"{n * marks.unit:g}"
    half = width(words, size, face) / 2
    if x0 + 1.0 <= x - half and x + half <= x1 - 0.5:
        sketch.label([((x, base + 1.1), Anchor.MIDDLE)], words, size, face)


def _pointer(sketch: Sketch, x: float, base: float, words: str) -> None:
    top = base + TAPE_HEIGHT
    sketch.line((x, top - 2.4), (x, top + 1.5), ink.MEDIUM, colour=ink.UP)  # not through the figures
    sketch.line((x, base - TAPE_FOOT), (x, base + 0.7), ink.MEDIUM, colour=ink.UP)
    half = max(4.0, width(words, 3.0, Face.NARROW_BOLD) / 2 + 1.0)
    sketch.rect((x - half, top + 1.3), (x + half, top + 4.9), 0.0, fill=ink.UP)
    sketch.text((x, top + 2.1), words, 3.0, Face.NARROW_BOLD, Anchor.MIDDLE, colour=ink.WHITE)
