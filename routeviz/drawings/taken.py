"""What of a sheet is taken by texts and bold lines, and where a text still has room."""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field, replace
from itertools import groupby, pairwise

from routeviz.drawings import palette as ink
from routeviz.drawings.lettering import box
from routeviz.drawings.primitives import Anchor, Disc, Path, Point, Text

__all__ = ["Rect", "Taken", "bold_strokes", "crosses", "letters", "overlaps", "strokes"]

Rect = tuple[float, float, float, float]  # left, bottom, right, top
_AIR = 0.25  # least clear space between two texts [mm]
_SLACK = 0.3  # of a text's box is air round the letters [mm]
_TICK = 2.2  # a shorter stroke is a tick or a mark, not a line [mm]
_CIRCLE = 16  # sides of the polygon that stands for a circle where texts keep off it
_STEPS = (1.6, 1.2)  # of a text that looks for room, across and up [mm]
_WAYS = 16  # directions in which a note looks for room round its tip
_RINGS = tuple(5.0 + 3.0 * k for k in range(20))  # how far from its tip [mm]


@dataclass(slots=True)
class Taken:
    """The sheet's `bounds` [mm], the boxes of texts on it and the bold lines, each with its two ends."""

    bounds: Rect
    boxes: list[Rect] = field(default_factory=list)
    lines: list[Rect] = field(default_factory=list)
    thin: list[Rect] = field(default_factory=list)  # finer lines: texts rather keep off them too

    def add(self, item: Path | Disc) -> None:
        """Take note of an outline: bold ones keep texts away, fine ones where there is another place."""
        if item.weight >= ink.MEDIUM:
            self.lines += strokes(item)
        elif item.weight > 0:
            self.thin += strokes(item)

    def is_free(self, wanted: Rect) -> bool:
        """Whether a box overlaps no text yet and lies inside the sheet."""
        left, bottom, right, top = self.bounds
        if wanted[0] < left or wanted[1] < bottom or wanted[2] > right or wanted[3] > top:
            return False
        return all(not overlaps(wanted, b) for b in self.boxes)

    def is_struck(self, wanted: Rect) -> bool:
        """Whether a bold line or mark drawn so far runs through a box."""
        return any(crosses(wanted, line) for line in self.lines)

    def is_lined(self, wanted: Rect) -> bool:
        """Whether a fine line runs through a box."""
        return any(crosses(wanted, line) for line in self.thin)

    def first_clear(self, wanted: Sequence[Text], *, over: bool = False) -> Text | None:
        """Give the first text that nothing meets: rather no line at all, else no bold one in its box or its letters.

        Where it may stand `over` fine lines, these do not count.
        """
        free = [t for t in wanted if self.is_free(box(t))]
        clear = (t for t in free if not over and not self.is_struck(box(t)) and not self.is_lined(letters(t)))
        made = next(clear, None)
        if made is not None:
            return made
        made = next((t for t in free if not self.is_struck(box(t))), None)
        return made or next((t for t in free if not any(crosses(letters(t), s) for s in self.lines if _long(s))), None)

    def first_clear_block(self, wanted: Sequence[Sequence[Text]]) -> Sequence[Text]:
        """Give the first texts that belong together and that nothing meets, else that no bold line meets; else none."""
        free = [texts for texts in wanted if all(self.is_free(box(t)) and not self.is_struck(box(t)) for t in texts)]
        clear = (texts for texts in free if not any(self.is_lined(letters(t)) for t in texts))
        return next(clear, None) or next(iter(free), ())

    def nearest_clear(self, text: Text, roam: float) -> Text | None:
        """Move a text as little as gives it room, at most `roam` mm."""
        return self.first_clear([_moved(text, step) for step in _round(roam)]) if roam > 0 else None

    def led_clear(self, wanted: Iterable[Text], tip: Point, avoid: Sequence[Rect] = ()) -> Text | None:
        """Give the first clear text of those with a leader to `tip`.

        Rather off the boxes to `avoid`, then with the leader too, then where the leader meets no other text.
        """

        def poor(text: Text) -> tuple[bool, bool, bool]:
            lead = (*text.at, *tip)
            return (
                any(overlaps(box(text), a) for a in avoid),
                any(crosses(a, lead) for a in avoid),
                any(crosses(b, lead) for b in self.boxes),
            )

        for _, alike in groupby(sorted(wanted, key=poor), key=poor):  # a good leader before a text off every fine line
            made = self.first_clear(list(alike))
            if made is not None:
                return made
        return None

    def ring_clear(self, text: Text, tip: Point, avoid: Sequence[Rect] = ()) -> Text | None:
        """Put a text with a leader as near to its tip as there is room."""
        return self.led_clear(_beside(text, tip), tip, avoid)


def _beside(text: Text, tip: Point) -> Iterable[Text]:
    for reach in _RINGS:
        for k in range(_WAYS):
            turn = math.tau * (k + 0.5) / _WAYS
            at = tip[0] + reach * math.cos(turn), tip[1] + reach * math.sin(turn)
            yield replace(text, at=at, anchor=Anchor.LEFT if at[0] >= tip[0] else Anchor.RIGHT)


def _round(roam: float) -> list[Point]:
    """Give the steps of a text that looks for room, the shortest first."""
    across, up = (int(roam / step) for step in _STEPS)
    steps = [(a * _STEPS[0], b * _STEPS[1]) for a in range(-across, across + 1) for b in range(-up, up + 1)]
    return sorted((s for s in steps if math.hypot(*s) <= roam), key=lambda s: (round(math.hypot(*s), 6), s))


def _moved(text: Text, step: Point) -> Text:
    return replace(text, at=(text.at[0] + step[0], text.at[1] + step[1]))


def letters(text: Text) -> Rect:
    """Give the box that a text's letters fill [mm]; a line through it makes them hard to read."""
    left, low, right, high = box(text)
    return left + _SLACK, low + _SLACK, right - _SLACK, high - _SLACK


def overlaps(a: Rect, b: Rect, air: float = _AIR) -> bool:
    """Whether two boxes come closer than `air` mm."""
    return a[0] < b[2] + air and b[0] < a[2] + air and a[1] < b[3] + air and b[1] < a[3] + air


def strokes(item: Path | Disc) -> list[Rect]:
    """Give the straight pieces of an outline, each as its two ends; a circle as a polygon."""
    if isinstance(item, Disc):
        (x, y), r = item.centre, item.radius
        turns = [math.tau * k / _CIRCLE for k in range(_CIRCLE)]
        points: Sequence[Point] = [(x + r * math.cos(t), y + r * math.sin(t)) for t in turns]
    else:
        points = item.points
    ring = [*points, points[0]] if isinstance(item, Disc) or item.closed else points
    return [(*a, *b) for a, b in pairwise(ring)]


def bold_strokes(item: Path | Disc) -> list[Rect]:
    """Give the pieces of an outline that no text may be written over: bold, and longer than a tick."""
    return [s for s in strokes(item) if _long(s)] if item.weight >= ink.MEDIUM else []


def _long(stroke: Rect) -> bool:
    return math.dist(stroke[:2], stroke[2:]) > _TICK


def crosses(wanted: Rect, stroke: Rect) -> bool:
    """Whether a straight line runs through a box."""
    low, high = 0.0, 1.0
    for k in (0, 1):
        start, step = stroke[k], stroke[k + 2] - stroke[k]
        if abs(step) < 1e-9:
            if not wanted[k] < start < wanted[k + 2]:
                return False
            continue
        near, far = sorted(((wanted[k] - start) / step, (wanted[k + 2] - start) / step))
        low, high = max(low, near), min(high, far)
    return low < high
