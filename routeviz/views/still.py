"""A picture for the client: the answer above, the room below, labels at its sides."""

from __future__ import annotations

import math
import os
import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import TYPE_CHECKING

import numpy as np
from PIL import Image, ImageDraw

from routeviz.folding import fold
from routeviz.model.finding import State, Verdict
from routeviz.model.solids import Vec3
from routeviz.views import fonts, gl
from routeviz.views.lettering import Placed, Tag, arrange
from routeviz.views.palette import BAR, BAR_INK, CLOSE, INK, INK_SOFT, LINE, LINE_STRONG, PAPER, PLASTER, TEAL
from routeviz.views.parts import Layer
from routeviz.views.stage import Stage
from routeviz.views.viewpoints import Camera, Viewport, camera, hidden_by_hood, project, viewpoint_words

if TYPE_CHECKING:
    from routeviz.views.rendering import Shot

__all__ = ["Label", "compose", "render"]

BAND_PX, FOOT_PX, MARGIN_PX, GAP_PX = 120, 34, 22, 10
_PAD = 11
_TITLE_PX, _TEXT_PX = 18, 16
_CAUTION = "A plan only: local code, the maker's instructions and licensed trades decide."


@dataclass(frozen=True)
class Label:
    """One label of a picture: words, the flag that it explains (0 for none), and places its leader may point at."""

    title: tuple[str, ...]
    text: tuple[str, ...]
    anchors: tuple[Vec3, ...]
    number: int = 0
    state: State | None = None


def _labels(stage: Stage, viewpoint: str) -> list[Label]:
    found = [
        Label(tuple(fold(f.title, 28)[:2]), (f.short,) if f.short else (), (f.place,) if f.place else (), f.number,
              f.state)
        for f in stage.flags
        if f.state in (State.BROKEN, State.CLOSE)
    ]  # fmt: skip
    return found + [Label((n.title,), (n.text,), n.anchors) for n in stage.notes if viewpoint in n.views]


def _seen(points: Sequence[Vec3], view: Camera, shot: Shot, aspect: float) -> tuple[tuple[float, float] | None, bool]:
    """Choose the first place that nothing hides, else the first in the picture: shares of the picture, and if seen."""
    if not points:
        return None, False
    height, width = shot.depth.shape
    spots = project(view, np.array(points), aspect)
    inside = [s for s in spots if 0.01 < s[0] < 0.99 and 0.01 < s[1] < 0.99 and s[2] > 0]
    for u, v, depth in inside:
        if shot.depth[min(int(v * height), height - 1), min(int(u * width), width - 1)] >= depth - 4.0:
            return (float(u), float(v)), True
    return ((float(inside[0][0]), float(inside[0][1])), False) if inside else (None, False)


class _Sheet:
    """A drawing surface `scale` times larger than the finished picture; all measures are of the finished one."""

    def __init__(self, image: Image.Image, scale: int) -> None:
        self.image, self.scale = image, scale
        self.draw = ImageDraw.Draw(image, "RGBA")

    def _at(self, points: Sequence[tuple[float, float]]) -> list[tuple[float, float]]:
        return [(x * self.scale, y * self.scale) for x, y in points]

    def line(self, points: Sequence[tuple[float, float]], colour: str, width: float) -> None:
        self.draw.line(self._at(points), fill=colour, width=max(1, round(width * self.scale)), joint="curve")

    def polygon(
        self, points: Sequence[tuple[float, float]], fill: str, outline: str | None = None, width: float = 1
    ) -> None:
        self.draw.polygon(self._at(points), fill=fill, outline=outline, width=round(width * self.scale))

    def box(
        self, x: float, y: float, w: float, h: float, fill: str, outline: str | None = None, width: float = 1
    ) -> None:
        a = self._at([(x, y), (x + w, y + h)])
        self.draw.rectangle([*a[0], *a[1]], fill=fill, outline=outline, width=max(1, round(width * self.scale)))

    def disc(self, x: float, y: float, r: float, fill: str, outline: str | None = None, width: float = 1) -> None:
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
        self.draw.text((x * self.scale, y * self.scale), words, colour, font, anchor=anchor,
                       stroke_width=round(halo * self.scale), stroke_fill="#f8f4ec")  # fmt: skip

    def length(self, words: str, font: fonts.Font) -> float:
        return self.draw.textlength(words, font) / self.scale


def _bars(sheet: _Sheet, outline: Sequence[tuple[float, float]]) -> None:
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


def _pennant(
    sheet: _Sheet, x: float, y: float, number: int, state: State, *, size: float = 26, pole: float = 0
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
        _bars(sheet, shape)
        sheet.line([*shape, shape[0]], BAR, 1.4)
        sheet.disc(x + 12 * k, top + 10.5 * k, 8.2 * k, "#ffffff", BAR, 1.3)
        sheet.write(
            x + 12 * k, top + 10.5 * k, str(number), fonts.narrow(round(13 * k * sheet.scale)), BAR_INK, anchor="mm"
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
    sheet.write(x + 12 * k, top + 10.5 * k, str(number), fonts.narrow(round(13 * k * sheet.scale)), INK, anchor="mm")


def _measure(sheet: _Sheet, label: Label) -> tuple[float, float]:
    s = sheet.scale
    wide = max(
        [sheet.length(line, fonts.text_bold(_TITLE_PX * s, line)) for line in label.title]
        + [sheet.length(line, fonts.text(_TEXT_PX * s, line)) for line in label.text]
    )
    return wide + 2 * _PAD + (38 if label.number else 0), 2 * 8 + 21 * len(label.title) + 19 * len(label.text)


def _draw_label(sheet: _Sheet, label: Label, at: Placed) -> None:
    leader = at.leader
    if leader is not None:
        sheet.line(leader, "#fcf9f3", 4)
        sheet.line(leader, INK, 1.6)
        if not label.number:
            sheet.disc(*leader[1], 4, PAPER, INK, 1.8)
    edge = {State.BROKEN: BAR, State.CLOSE: CLOSE}.get(label.state, LINE_STRONG) if label.state else LINE_STRONG
    sheet.box(at.x, at.y, at.tag.width, at.tag.height, PAPER, edge, 1.4 if label.state else 1)
    x = at.x + _PAD
    if label.number and label.state:
        _pennant(sheet, x, at.y + 36, label.number, label.state, size=25, pole=0)
        x += 38
    s, y = sheet.scale, at.y + 7
    for line in label.title:
        colour = BAR_INK if label.state is State.BROKEN else INK
        sheet.write(x, y, line, fonts.text_bold(_TITLE_PX * s, line), colour)
        y += 21
    for line in label.text:
        sheet.write(x, y, line, fonts.text(_TEXT_PX * s, line), INK_SOFT)
        y += 19


def _verdict_mark(sheet: _Sheet, verdict: Verdict, x: float, y: float) -> None:
    if verdict in (Verdict.WORKS, Verdict.TIGHT):
        sheet.disc(x, y, 28, TEAL)
        sheet.line([(x - 13, y + 1), (x - 4, y + 10), (x + 14, y - 10)], "#ffffff", 6.5)
    else:
        sheet.line([(x - 24, y - 30), (x - 24, y + 30)], INK, 3)
        shape = [(x - 24, y - 28), (x + 28, y - 28), (x + 18, y - 12), (x + 28, y + 4), (x - 24, y + 4)]
        _bars(sheet, shape)
        sheet.line([*shape, shape[0]], BAR, 1.6)


def _folded(sheet: _Sheet, words: str, font: fonts.Font, width: float) -> list[str]:
    """Fold words into lines no wider than this."""
    lines, line = [], ""
    for word in words.split():
        trial = f"{line} {word}".strip()
        if line and sheet.length(trial, font) > width:
            lines.append(line)
            line = word
        else:
            line = trial
    return [*lines, line]


def _fit(sheet: _Sheet, words: str, width: float) -> tuple[list[str], int]:
    """Give a sentence in one line, or else in two of like length, as large as fits; the last size cuts it off."""
    for lines, sizes in ((1, (32, 29, 27)), (2, (32, 29, 27, 24, 21))):
        for size in sizes:
            font = fonts.heading(size * sheet.scale, words)
            if len(_folded(sheet, words, font, width)) <= lines:
                shares = (0.5, 0.55, 0.6, 0.7, 0.8, 0.9, 1.0)
                tries = (_folded(sheet, words, font, width * share) for share in shares)
                return next(t for t in tries if len(t) <= lines), size
    folded = _folded(sheet, words, font, width)
    return [folded[0], folded[1] + " …"], size


def _sentences(sheet: _Sheet, words: str, font: fonts.Font, width: float) -> str:
    """Give as many whole sentences as fit in one line; a first one that does not fit is cut off."""
    kept = ""
    for sentence in re.split(r"(?<=[.?!]) ", words):
        longer = f"{kept} {sentence}".strip()
        if sheet.length(longer, font) > width:
            return kept or _folded(sheet, sentence, font, width)[0] + " …"
        kept = longer
    return kept


def _band(sheet: _Sheet, stage: Stage, width: float) -> None:
    plan = stage.plan
    sheet.box(0, 0, width, BAND_PX, PLASTER)
    sheet.line([(0, BAND_PX), (width, BAND_PX)], LINE, 1)
    _verdict_mark(sheet, plan.verdict, 62, 50)
    word_colour = TEAL if plan.verdict in (Verdict.WORKS, Verdict.TIGHT) else BAR_INK
    s = sheet.scale
    sheet.write(62, 98, plan.verdict.value, fonts.text_bold(14 * s), word_colour, anchor="mm")
    room = width - 118 - 30
    lines, size = _fit(sheet, plan.answer, room)
    leading = size * 1.14
    y = 12 if len(lines) > 1 else 24
    for k, line in enumerate(lines):
        sheet.write(118, y + k * leading, line, fonts.heading(size * s, line), INK)
    font = fonts.text(17 * s, plan.second)
    below = y + leading * len(lines) + (5 if len(lines) > 1 else 10)
    sheet.write(119, below, _sentences(sheet, plan.second, font, room), font, INK_SOFT)


def _foot(sheet: _Sheet, stage: Stage, viewpoint: str, width: float, height: float) -> None:
    scene = stage.plan.scene
    s = sheet.scale
    name = scene.name + (" (invented)" if scene.invented else "")
    sheet.box(0, height - FOOT_PX, width, FOOT_PX, PLASTER)
    sheet.line([(0, height - FOOT_PX), (width, height - FOOT_PX)], LINE, 1)
    y = height - FOOT_PX / 2
    bold, plain = fonts.text_bold(15 * s, name), fonts.text(15 * s)
    left = width - 3 * MARGIN_PX - sheet.length(_CAUTION, plain)
    words = next(
        (w for w in (f"{name}, {viewpoint_words(stage.plan, viewpoint)}", name) if sheet.length(w, bold) <= left), ""
    )
    sheet.write(MARGIN_PX, y, words, bold, INK, anchor="lm")
    sheet.write(width - MARGIN_PX, y, _CAUTION, plain, INK_SOFT, anchor="rm")


def _numbers(sheet: _Sheet, stage: Stage, view: Camera, shot: Shot, size: tuple[int, int]) -> None:
    """Write the numbers under the joists' ends, where the ends are seen and there is room."""
    spots = []
    for number in stage.numbers:
        x, y, z = number.place
        at, seen = _seen(((x, y - 0.5, z + 1.5),), view, shot, size[0] / size[1])
        if at is not None and seen and BAND_PX + 10 < at[1] * size[1] < size[1] - FOOT_PX - 40:
            spots.append((at[0] * size[0], at[1] * size[1], number))
    last = -1e9
    for x, y, number in sorted(spots, key=lambda t: (t[0], t[1])):
        if x - last > 26:
            colour = BAR_INK if number.solid in stage.broken else INK
            sheet.write(x, y + 21, number.text, fonts.narrow(18 * sheet.scale), colour, anchor="mm", halo=2.5)
            last = x


def _dimensions(sheet: _Sheet, stage: Stage, view: Camera, viewpoint: str, size: tuple[int, int]) -> None:
    """Draw the clear distances, as long as each has room for its figure and does not lie on another."""
    aspect = size[0] / size[1]
    font = fonts.narrow(15 * sheet.scale)
    taken: list[tuple[float, float, float]] = []
    for dimension in stage.dimensions:
        if viewpoint not in dimension.views:
            continue
        ends = project(view, np.array([dimension.start, dimension.end]), aspect)[:, :2] * size
        a, b = ((float(e[0]), float(e[1])) for e in ends)
        long = math.dist(a, b)
        words = dimension.text.removesuffix(" in").removesuffix(" mm")
        x, y, half = (a[0] + b[0]) / 2, (a[1] + b[1]) / 2, sheet.length(words, font) / 2 + 3
        inside = all(0 < px < size[0] and BAND_PX + 16 < py < size[1] - FOOT_PX for px, py in (a, b))
        crowded = any(abs(x - u) < half + w and abs(y - v) < 24 for u, v, w in taken)
        if long < 16 or not inside or crowded:
            continue
        taken.append((x, y, half))
        sheet.line([a, b], "#f8f4ec", 4)
        sheet.line([a, b], INK, 1.6)
        nx, ny = -(b[1] - a[1]) / long * 6, (b[0] - a[0]) / long * 6
        for px, py in (a, b):
            sheet.line([(px - nx, py - ny), (px + nx, py + ny)], INK, 1.6)
        sheet.write(x, y - 13, words, font, INK, anchor="mm", halo=3)


def _tags(
    sheet: _Sheet, labels: Sequence[Label], view: Camera, shot: Shot, viewpoint: str, size: tuple[int, int]
) -> Iterator[Tag]:
    """Give the labels that this view shows, each with where its leader ends.

    The room shows every finding. Elsewhere a label without a leader would stand beside something that it does not
    speak of, and is left out.
    """
    width, height = size
    for key, label in enumerate(labels):
        at, seen = _seen(label.anchors, view, shot, width / height)
        anchor = None if at is None else (at[0] * width, at[1] * height)
        if anchor is not None and not BAND_PX + 4 < anchor[1] < height - FOOT_PX - 4:
            anchor = None
        if (seen and anchor is not None) or (label.number and viewpoint == "room"):
            yield Tag(key, *_measure(sheet, label), anchor)


def compose(
    stage: Stage, shot: Shot, view: Camera, viewpoint: str, size: tuple[int, int], *, scale: int
) -> Image.Image:
    """Lay the band, flags, labels and numbers over a drawn picture and bring it to its size."""
    image = Image.fromarray(shot.pixels)
    sheet = _Sheet(image, scale)
    width, height = size
    _numbers(sheet, stage, view, shot, size)
    _dimensions(sheet, stage, view, viewpoint, size)
    labels = _labels(stage, viewpoint)
    tags = list(_tags(sheet, labels, view, shot, viewpoint, size))
    placed = arrange(tags, width=width, top=BAND_PX + 14, bottom=height - FOOT_PX - 12, margin=MARGIN_PX, gap=GAP_PX)
    for spot in placed:
        _draw_label(sheet, labels[spot.tag.key], spot)
    stands: list[tuple[float, float]] = []
    for spot in placed:
        label = labels[spot.tag.key]
        if label.number and label.state and spot.tag.anchor:
            x, y = spot.tag.anchor
            lift = 0.0  # a flag whose place is taken flies from a taller pole
            while any(abs(x - u) < 36 and abs(y - lift - v) < 24 for u, v in stands):
                lift += 25
            stands.append((x, y - lift))
            _pennant(sheet, x, y, label.number, label.state, size=27, pole=16 + lift)
    _band(sheet, stage, width)
    _foot(sheet, stage, viewpoint, width, height)
    return image.resize(size, Image.Resampling.LANCZOS)


def render(
    stage: Stage, path: Path | str, viewpoint: str = "room", *, size: tuple[int, int] = (1600, 1000), xray: bool = False,
    occlusion: bool = True,
) -> Path:  # fmt: skip
    """Draw a stage from a named viewpoint into a PNG file.

    Parameters
    ----------
    stage : Stage
        What to draw.
    path : Path or str
        Where to write; a file that is there is replaced once the picture is whole.
    viewpoint : str
        "room", "ceiling", "along" or "outside".
    size : tuple of int
        Width and height of the picture [px].
    xray : bool
        Draw board, skin and cabinets as glass.
    occlusion : bool
        Soft shade in corners; pictures that are compared go without.

    Returns
    -------
    Path
        The written file.

    Raises
    ------
    MissingPartError
        If this machine has no OpenGL driver; the message names the packages that bring it.
    ValueError
        If there is no viewpoint of that name.
    """
    width, height = size
    aspect = width / height
    sides = 0.185 if viewpoint == "room" else 0.16
    port = Viewport(sides, (BAND_PX + 14) / height, 1 - sides, 1 - (FOOT_PX + 8) / height)
    view = camera(stage.plan, stage.cut, viewpoint, aspect=aspect, port=port)
    gl.require()
    from routeviz.views.rendering import shoot

    without = {Layer.COVER} if viewpoint == "along" else set()
    if viewpoint == "along" and hidden_by_hood(stage.plan):
        without |= {Layer.SKIN, Layer.ROOF, Layer.ZONES}
    if viewpoint != "outside":
        without.add(Layer.OUTER)
    shot = shoot(stage, view, size, scale=2, occlusion=occlusion, xray=xray, without=frozenset(without))
    image = compose(stage, shot, view, viewpoint, size, scale=2)
    target = Path(path)
    partial = target.with_name(f".{target.name}.{os.getpid()}.part")
    try:
        image.save(partial, format="PNG", optimize=False)
        os.replace(partial, target)
    finally:
        partial.unlink(missing_ok=True)
    return target
