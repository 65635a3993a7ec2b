"""A lesson as a moving picture: each step held as long as it takes to read, its question before its answer."""

from __future__ import annotations

import math
from collections.abc import Iterator, Mapping
from pathlib import Path

from PIL import Image, ImageDraw

from routeviz.folding import fold
from routeviz.model.lesson import Told, ToldStep
from routeviz.views import fonts
from routeviz.views.lessons.pictures import pictures
from routeviz.views.motion import write_film
from routeviz.views.palette import INK, INK_SOFT, PAPER, TEAL
from routeviz.views.stage import Stage

__all__ = ["film", "seconds_of"]

_WORDS_PER_SECOND = 2.6  # a slow reader
_LEAST_S = 4.0
_BAND_PX = 180


def seconds_of(words: str) -> float:
    """Give how long a text is held [s]."""
    return max(_LEAST_S, 1.5 + len(words.split()) / _WORDS_PER_SECOND)


def film(
    told: Told, bare: Mapping[str, Stage], barred: Mapping[str, Stage], path: Path, *, size: tuple[int, int] = (960, 540),
    per_second: int = 2,
) -> Path:  # fmt: skip
    """Write a lesson as a GIF or MP4 file, by the ending of its name.

    Raises
    ------
    MissingPartError
        If there is no OpenGL driver, or MP4 is asked for and its part is not installed.
    """
    whole = (size[0], size[1] + _BAND_PX)
    return write_film(_frames(told, bare, barred, size, per_second), path, whole, per_second)


def _frames(
    told: Told, bare: Mapping[str, Stage], barred: Mapping[str, Stage], size: tuple[int, int], per_second: int
) -> Iterator[Image.Image]:
    shots = pictures(told, bare, barred, size)
    for n, (step, shot) in enumerate(zip(told.steps, shots, strict=True), 1):
        for lines in _said(step):
            frame = _card(shot, f"{told.title}, {n} of {len(told.steps)}", step.title, lines)
            for _ in range(math.ceil(seconds_of(" ".join(lines)) * per_second)):
                yield frame


def _said(step: ToldStep) -> Iterator[list[str]]:
    """Give what stands under the picture, one screen after another."""
    yield [step.say]
    if step.asks:
        given = [f"{c.letter} {c.title}" for c in step.candidates] or [c.say for c in step.choices]
        yield [step.ask, " · ".join(given)]
        right = [c.title for c in step.candidates if c.broken] or [c.say for c in step.choices if c.right]
        yield ["; ".join(right) + ".", step.reveal]


def _card(shot: Image.Image, head: str, title: str, lines: list[str]) -> Image.Image:
    card = Image.new("RGB", (shot.width, shot.height + _BAND_PX), PAPER)
    card.paste(shot, (0, 0))
    draw = ImageDraw.Draw(card)
    y = shot.height + 12
    draw.text((24, y), head, INK_SOFT, fonts.text(15, head))
    draw.text((24, y + 21), title, INK, fonts.heading(24, title))
    y += 58
    for n, words in enumerate(lines):
        font = fonts.text_bold(18, words) if n == 0 and len(lines) > 1 else fonts.text(18, words)
        for line in fold(words, max(20, shot.width // 9)):
            if y > card.height - 26:
                return card
            draw.text((24, y), line, TEAL if n == 0 and len(lines) > 1 else INK, font)
            y += 23
    return card
