"""What is written into a still where it stands: clear distances, the numbers of members, the flags of findings.

Each keeps off what is there already: labels, figures, other flags and the places that they point at.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field
from typing import TYPE_CHECKING

import numpy as np

from routeviz.model.finding import State
from routeviz.model.solids import Vec3
from routeviz.views import fonts
from routeviz.views.palette import BAR_INK, INK
from routeviz.views.parts import Dimension, MemberNumber
from routeviz.views.pen import Sheet, flag_cloth, pennant
from routeviz.views.viewpoints import Camera, project

if TYPE_CHECKING:
    from routeviz.views.rendering import Shot

__all__ = ["Box", "Marks", "first_seen", "within"]

_NUMBER_PX, _SIZE_PX = 18, 17
_ASIDE = (0.0, 26.0, 52.0, 78.0)  # how much taller a flag's pole may grow [px]
_BESIDE = (0.0, -10.0, 10.0, -18.0, 18.0)  # how far aside a number may stand for a leader's dot [px]
_THROUGH_IN = 4.0  # a place so far behind a surface still counts as seen: it lies in the thing

_LEAST_ASLANT = 0.6  # sine between line of sight and a distance: below it, the distance is seen too much from its end

Box = tuple[float, float, float, float]  # left, top, right, bottom [px]
Spot = tuple[float, float]  # [px]


def first_seen(
    points: Sequence[Vec3], view: Camera, shot: Shot, aspect: float, *, through_in: float = _THROUGH_IN,
    off: Sequence[Box] = (),
) -> tuple[Spot | None, bool]:  # fmt: skip
    """Choose the first place that nothing hides, else the first in the picture: shares of the picture, and if seen.

    A place that is seen but lies in one of the boxes `off`, which are shares of the picture too, comes only after
    the others.
    """
    if not points:
        return None, False
    height, width = shot.depth.shape
    spots = project(view, np.array(points), aspect)
    inside = [s for s in spots if 0.01 < s[0] < 0.99 and 0.01 < s[1] < 0.99 and s[2] > 0]
    seen = [
        (float(u), float(v)) for u, v, depth in inside
        if shot.depth[min(int(v * height), height - 1), min(int(u * width), width - 1)] >= depth - through_in
    ]  # fmt: skip
    if seen:
        return next((s for s in seen if not within(s, off)), seen[0]), True
    return ((float(inside[0][0]), float(inside[0][1])), False) if inside else (None, False)


def within(spot: Spot, boxes: Sequence[Box]) -> bool:
    """Whether a spot lies in one of the boxes."""
    return any(_overlap((*spot, *spot), box) for box in boxes)


def _overlap(a: Box, b: Box) -> bool:
    return a[0] < b[2] and b[0] < a[2] and a[1] < b[3] and b[1] < a[3]


@dataclass
class Marks:
    """A picture that is written into; `room` is what the band above and the foot leave of it [px]."""

    sheet: Sheet
    view: Camera
    shot: Shot
    size: tuple[int, int]
    room: tuple[float, float]  # its upper and lower edge
    taken: list[Box] = field(default_factory=list)
    figures: list[Box] = field(default_factory=list)  # of what is taken, the numbers and figures

    def _free(self, wanted: Box) -> bool:
        inside = (
            wanted[0] > 2 and wanted[2] < self.size[0] - 2 and self.room[0] < wanted[1] and wanted[3] < self.room[1]
        )
        return inside and not any(_overlap(wanted, b) for b in self.taken)

    @property
    def _aspect(self) -> float:
        return self.size[0] / self.size[1]

    def _figures(self, wanted: Sequence[Dimension]) -> Iterator[tuple[Spot, Spot, str, Spot]]:
        """Give the distances that can be seen and have room for their figure: both ends, the figure and its middle."""
        font = fonts.narrow(_SIZE_PX * self.sheet.scale)
        for dimension in wanted:
            if self._foreshortened(dimension):
                continue
            ends = project(self.view, np.array([dimension.start, dimension.end]), self._aspect)[:, :2] * self.size
            a, b = ((float(e[0]), float(e[1])) for e in ends)
            middle = tuple((p + q) / 2 for p, q in zip(dimension.start, dimension.end, strict=True))
            _, seen = first_seen((middle,), self.view, self.shot, self._aspect)  # type: ignore[arg-type]
            words = dimension.text.removesuffix(" in").removesuffix(" mm")
            x, half = (a[0] + b[0]) / 2, self.sheet.length(words, font) / 2 + 3
            line = (min(a[0], b[0]), min(a[1], b[1]) - 6, max(a[0], b[0]), max(a[1], b[1]) + 6)
            if math.dist(a, b) < 16 or not seen or not self._free(line):
                continue
            for y in ((a[1] + b[1]) / 2 - 13, (a[1] + b[1]) / 2 + 15):  # over the line, else under it
                figure = (x - half, y - 11.0, x + half, y + 10.0)
                if self._free(figure):
                    self.taken += [figure, line]
                    self.figures.append(figure)
                    yield a, b, words, (x, y)
                    break

    def _foreshortened(self, dimension: Dimension) -> bool:
        """Whether who stands here sees a distance so much from its end that its line would seem to measure another."""
        along = np.subtract(dimension.end, dimension.start)
        sight = np.add(dimension.start, dimension.end) / 2 - np.array(self.view.eye)
        aslant = np.linalg.norm(np.cross(along, sight)) / (np.linalg.norm(along) * np.linalg.norm(sight))
        return bool(aslant < _LEAST_ASLANT)

    def dimensions(self, wanted: Sequence[Dimension]) -> None:
        """Draw the clear distances that can be seen, as long as each has room for its figure."""
        font = fonts.narrow(_SIZE_PX * self.sheet.scale)
        for a, b, words, (x, y) in self._figures(wanted):
            long = math.dist(a, b)
            self.sheet.line([a, b], "#f8f4ec", 4)
            self.sheet.line([a, b], INK, 1.6)
            nx, ny = -(b[1] - a[1]) / long * 6, (b[0] - a[0]) / long * 6
            for px, py in (a, b):
                self.sheet.line([(px - nx, py - ny), (px + nx, py + ny)], INK, 1.6)
            self.sheet.write(x, y, words, font, INK, anchor="mm", halo=3)

    def _numbered(
        self, wanted: Sequence[MemberNumber], dots: Sequence[Box] = ()
    ) -> Iterator[tuple[MemberNumber, str, Spot]]:
        """Give the numbers that have room, as written, and the middle of each, a little aside of a leader's dot."""
        font = fonts.narrow(_NUMBER_PX * self.sheet.scale)
        for number in wanted:
            words = f"{number.kind}{number.text}"
            half = self.sheet.length(words, font) / 2 + 3
            for place in (number.place, *number.also):
                if number.under_px:  # just before the cut end, over its lower edge
                    place = (place[0], place[1] - 0.5, place[2] + 1.5)
                at, seen = first_seen((place,), self.view, self.shot, self._aspect, through_in=number.through_in)
                if at is None or not seen:
                    continue
                middle, y = at[0] * self.size[0], at[1] * self.size[1] + number.under_px
                spots = {
                    middle + aside: (middle + aside - half, y - 11, middle + aside + half, y + 11) for aside in _BESIDE
                }
                free = [x for x, box in spots.items() if self._free(box)]
                clear = [x for x in free if not any(_overlap(spots[x], dot) for dot in dots)]
                if middle in free:
                    x = clear[0] if clear else middle
                    self.taken.append(spots[x])
                    self.figures.append(spots[x])
                    yield number, words, (x, y)
                    break

    def numbers(
        self, wanted: Sequence[MemberNumber], broken: frozenset[str], dots: Sequence[Spot] = ()
    ) -> frozenset[str]:
        """Write the numbers of joists under their ends and of bared studs on them, J4 and S4, where there is room.

        They leave the `dots` at the ends of leaders to be seen. Gives the letters that stand before them.
        """
        font = fonts.narrow(_NUMBER_PX * self.sheet.scale)
        kinds = set()
        for number, words, (x, y) in self._numbered(wanted, [(x - 5, y - 5, x + 5, y + 5) for x, y in dots]):
            kinds.add(number.kind)
            colour = BAR_INK if number.solid in broken else INK
            self.sheet.write(x, y, words, font, colour, anchor="mm", halo=2.5)
        return frozenset(kinds)

    def foresee(self, numbers: Sequence[MemberNumber], dimensions: Sequence[Dimension]) -> list[Box]:
        """Give where numbers and figures will stand, without writing them, so that leaders can keep off them."""
        for _ in (*self._numbered(numbers), *self._figures(dimensions)):
            pass
        return self.figures

    def flags(self, wanted: Sequence[tuple[float, float, int, State]]) -> None:
        """Plant flags at (x, y) with their numbers: on a taller pole, or beside it, where the place over it is taken."""
        feet = [(x - 5, y - 5, x + 5, y + 5) for x, y, _, _ in wanted]
        for n, (x, y, number, state) in enumerate(wanted):
            others = [foot for k, foot in enumerate(feet) if k != n and foot != feet[n]]
            spots = [(x + aside, pole) for pole in _ASIDE for aside in (0.0, 40.0, -40.0, 80.0, -80.0)]
            free = [
                (at, pole) for at, pole in spots
                if self._free(cloth := _grown(flag_cloth(at, y, pole=16 + pole)))
                and not any(_overlap(cloth, foot) for foot in others)
            ]  # fmt: skip
            at, pole = free[0] if free else (x, 0.0)
            if at != x:
                self.sheet.line([(x, y), (at, y - 16 - pole)], INK, 2)
                y_foot = y - 16 - pole
                pennant(self.sheet, at, y_foot, number, state)
            else:
                pennant(self.sheet, x, y, number, state, pole=16 + pole)
            self.taken.append(flag_cloth(at, y, pole=16 + pole))


def _grown(box: Box) -> Box:
    return box[0] - 2, box[1] - 2, box[2] + 2, box[3] + 2
