"""A picture for the client: the answer above, the room below, labels at its sides."""

from __future__ import annotations

import os
import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import TYPE_CHECKING

from PIL import Image

from routeviz.folding import fold
from routeviz.model.finding import State, Verdict
from routeviz.model.solids import Vec3
from routeviz.views import fonts, gl
from routeviz.views.lettering import Placed, Tag, arrange, keep_off
from routeviz.views.palette import BAR, BAR_INK, CLOSE, INK, INK_SOFT, LINE, LINE_STRONG, PAPER, PLASTER, TEAL
from routeviz.views.parts import Layer
from routeviz.views.pen import LEAST_PX, Sheet, pennant, verdict_mark
from routeviz.views.stage import Stage
from routeviz.views.stillmarks import Box, Marks, first_seen, within
from routeviz.views.viewpoints import Camera, Viewport, camera, hidden_by_hood, viewpoint_words

if TYPE_CHECKING:
    from routeviz.views.rendering import Shot

__all__ = ["Label", "compose", "render"]

BAND_PX, FOOT_PX, MARGIN_PX, GAP_PX = 120, 34, 22, 10
_PAD = 11
_TITLE_PX, _TEXT_PX = 18, 16
_FLAG_ROOM = 44  # of a label, for the flag before its words [px]
_KINDS = {"J": "joist", "T": "truss", "S": "stud", "F": "furring strip"}  # by the letter before a member's number
_ON_SKIN_IN = 1.0  # a place on a thing's skin may lie so far under it: round things are drawn with flat sides
_CAUTION = "A plan only: local code, the maker's instructions and licensed trades decide."


@dataclass(frozen=True)
class Label:
    """One label of a picture: words, the flag that it explains (0 for none), and places its leader may point at.

    Places `on_skin` come after the `anchors`, and are not looked for behind what covers them.
    """

    title: tuple[str, ...]
    text: tuple[str, ...]
    anchors: tuple[Vec3, ...]
    number: int = 0
    state: State | None = None
    on_skin: tuple[Vec3, ...] = ()


def _labels(stage: Stage, viewpoint: str) -> list[Label]:
    found = [
        Label(tuple(fold(f.title, 28)[:4]), (f.short,) if f.short else (), (f.place,) if f.place else (), f.number,
              f.state, f.on_skin)
        for f in stage.flags
        if f.state in (State.BROKEN, State.CLOSE)
    ]  # fmt: skip
    return found + [
        Label((n.title,), (n.text,), n.anchors, on_skin=n.on_skin) for n in stage.notes if viewpoint in n.views
    ]


def _measure(sheet: Sheet, label: Label) -> tuple[float, float]:
    s = sheet.scale
    wide = max(
        [sheet.length(line, fonts.text_bold(_TITLE_PX * s, line)) for line in label.title]
        + [sheet.length(line, fonts.text(_TEXT_PX * s, line)) for line in label.text]
    )
    return wide + 2 * _PAD + (_FLAG_ROOM if label.number else 0), 2 * 8 + 21 * len(label.title) + 19 * len(label.text)


def _draw_label(sheet: Sheet, label: Label, at: Placed) -> None:
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
        pennant(sheet, x, at.y + 38, label.number, label.state)
        x += _FLAG_ROOM
    s, y = sheet.scale, at.y + 7
    for line in label.title:
        colour = BAR_INK if label.state is State.BROKEN else INK
        sheet.write(x, y, line, fonts.text_bold(_TITLE_PX * s, line), colour)
        y += 21
    for line in label.text:
        sheet.write(x, y, line, fonts.text(_TEXT_PX * s, line), INK_SOFT)
        y += 19


def _folded(sheet: Sheet, words: str, font: fonts.Font, width: float) -> list[str]:
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


def _fit(sheet: Sheet, words: str, width: float) -> tuple[list[str], int]:
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


def _sentences(sheet: Sheet, words: str, font: fonts.Font, width: float) -> str:
    """Give as many whole sentences as fit in one line; a first one that does not fit is cut off."""
    kept = ""
    for sentence in re.split(r"(?<=[.?!]) ", words):
        longer = f"{kept} {sentence}".strip()
        if sheet.length(longer, font) > width:
            return kept or _folded(sheet, sentence, font, width)[0] + " …"
        kept = longer
    return kept


def _band(sheet: Sheet, stage: Stage, width: float) -> None:
    plan = stage.plan
    sheet.box(0, 0, width, BAND_PX, PLASTER)
    sheet.line([(0, BAND_PX), (width, BAND_PX)], LINE, 1)
    verdict_mark(sheet, plan.verdict, 62, 50)
    word_colour = TEAL if plan.verdict in (Verdict.WORKS, Verdict.TIGHT) else BAR_INK
    s = sheet.scale
    sheet.write(62, 98, plan.verdict.value, fonts.text_bold(LEAST_PX * s), word_colour, anchor="mm")
    room = width - 118 - 30
    lines, size = _fit(sheet, plan.answer, room)
    leading = size * 1.14
    y = 12 if len(lines) > 1 else 24
    for k, line in enumerate(lines):
        sheet.write(118, y + k * leading, line, fonts.heading(size * s, line), INK)
    font = fonts.text(17 * s, plan.second)
    below = y + leading * len(lines) + (5 if len(lines) > 1 else 10)
    sheet.write(119, below, _sentences(sheet, plan.second, font, room), font, INK_SOFT)


def _foot(sheet: Sheet, stage: Stage, viewpoint: str, kinds: frozenset[str], size: tuple[int, int]) -> None:
    """Say whose kitchen it is, from where it is seen, what the letters of its numbers mean, and what it is not."""
    scene, (width, height) = stage.plan.scene, size
    s = sheet.scale
    name = scene.name + (" (invented)" if scene.invented else "")
    sheet.box(0, height - FOOT_PX, width, FOOT_PX, PLASTER)
    sheet.line([(0, height - FOOT_PX), (width, height - FOOT_PX)], LINE, 1)
    y = height - FOOT_PX / 2
    bold, plain = fonts.text_bold(LEAST_PX * s, name), fonts.text(LEAST_PX * s)
    left = width - 3 * MARGIN_PX - sheet.length(_CAUTION, plain)
    key = ", ".join(f"{k} {word}" for k, word in _KINDS.items() if k in kinds)
    key = key and f"Numbers: {key}"
    apart = 2 * MARGIN_PX
    asked = sheet.length(key, plain) + apart if key else 0.0
    tries = (f"{name}, {viewpoint_words(stage.plan, viewpoint)}", name)
    words = next((w for w in tries if sheet.length(w, bold) + asked <= left), "")
    if not words:  # in a small picture the name is worth more than the key
        key, words = "", next((w for w in tries if sheet.length(w, bold) <= left), "")
    sheet.write(MARGIN_PX, y, words, bold, INK, anchor="lm")
    sheet.write(MARGIN_PX + sheet.length(words, bold) + apart, y, key, plain, INK_SOFT, anchor="lm")
    sheet.write(width - MARGIN_PX, y, _CAUTION, plain, INK_SOFT, anchor="rm")


def _tags(
    sheet: Sheet, labels: Sequence[Label], view: Camera, shot: Shot, viewpoint: str, size: tuple[int, int],
    off: Sequence[Box] = (),
) -> Iterator[Tag]:  # fmt: skip
    """Give the labels that this view shows, each with where its leader ends.

    The room shows every finding. Elsewhere a label without a leader would stand beside something that it does not
    speak of, and is left out. Where it can, none ends on the boxes `off` [px]: there a number will stand.
    """
    width, height = size
    covered = ((0, 0, width, BAND_PX), (0, height - FOOT_PX, width, height))
    boxes = [*off, *covered]
    shares = [((a - 6) / width, (b - 6) / height, (c + 6) / width, (d + 6) / height) for a, b, c, d in boxes]
    for key, label in enumerate(labels):
        tries = [
            first_seen(label.anchors, view, shot, width / height, off=shares),
            first_seen(label.on_skin, view, shot, width / height, through_in=_ON_SKIN_IN, off=shares),
        ]
        at, seen = min(tries, key=lambda t: 2 if not t[1] else t[0] is not None and within(t[0], shares))
        anchor = None if at is None else (at[0] * width, at[1] * height)
        if anchor is not None and not BAND_PX + 4 < anchor[1] < height - FOOT_PX - 4:
            anchor = None
        if seen and anchor is not None:
            yield Tag(key, *_measure(sheet, label), anchor)
        elif label.number and viewpoint == "room":  # what hides its place would be pointed at
            yield Tag(key, *_measure(sheet, label), None)


def _boxes(placed: Sequence[Placed]) -> list[Box]:
    return [(p.x, p.y, p.x + p.tag.width, p.y + p.tag.height) for p in placed]


def compose(
    stage: Stage, shot: Shot, view: Camera, viewpoint: str, size: tuple[int, int], *, scale: int
) -> Image.Image:
    """Lay the band, flags, labels and numbers over a drawn picture and bring it to its size."""
    image = Image.fromarray(shot.pixels)
    sheet = Sheet(image, scale)
    width, height = size
    labels = _labels(stage, viewpoint)
    room = (BAND_PX + 3, height - FOOT_PX - 3)
    numbers = (*stage.numbers, *stage.studs)
    written = Marks(sheet, view, shot, size, room).foresee(numbers, ())
    tags = list(_tags(sheet, labels, view, shot, viewpoint, size, written))
    top, bottom = BAND_PX + 14, height - FOOT_PX - 12
    placed = arrange(tags, width=width, top=top, bottom=bottom, margin=MARGIN_PX, gap=GAP_PX)
    distances = [d for d in stage.dimensions if viewpoint in d.views]
    figures = Marks(sheet, view, shot, size, room, _boxes(placed)).foresee(numbers, distances)
    placed = keep_off(placed, figures, top=top, bottom=bottom, gap=GAP_PX)
    for spot in placed:
        _draw_label(sheet, labels[spot.tag.key], spot)
    marks = Marks(sheet, view, shot, size, room, _boxes(placed))
    dots = [p.tag.anchor for p in placed if p.tag.anchor]
    # numbers first: a card names members by them, and says the distance too
    kinds = marks.numbers(numbers, stage.broken, dots)
    marks.dimensions(distances)
    flown = [(*p.tag.anchor, labels[p.tag.key]) for p in placed if p.tag.anchor and labels[p.tag.key].number]
    marks.flags([(x, y, label.number, label.state) for x, y, label in flown if label.state])
    _band(sheet, stage, width)
    _foot(sheet, stage, viewpoint, kinds, (width, height))
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
