"""A growing drawing: shapes, dimensions and labels that keep out of each other's way."""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field, replace

from routeviz.drawings import palette as ink
from routeviz.drawings.lettering import box, plain, width
from routeviz.drawings.primitives import Anchor, Disc, Face, Path, Point, Primitive, Text
from routeviz.drawings.taken import Rect, Taken

__all__ = ["Frame2", "Sketch"]

_LONG_OVER = 8.0  # a text that stands out of its dimension by more goes beside it [mm]


@dataclass(frozen=True, slots=True)
class Frame2:
    """Where a flat piece of the world stands on the page: inches times `scale` from `origin` [mm], and its clip box."""

    origin: Point  # page place of the world's (0, 0)
    scale: float  # mm on paper for one inch; may differ in sign for a mirrored view
    flip: int = 1  # -1: the first world axis runs to the left (seen from outside)

    def __call__(self, u: float, v: float) -> Point:
        """Give the page place [mm] of a world point [in]."""
        return self.origin[0] + self.flip * u * self.scale, self.origin[1] + v * self.scale


@dataclass(slots=True)
class Sketch:
    """Collects primitives; `bounds` is the part of the page that may be drawn on [mm]."""

    bounds: Rect
    items: list[Primitive] = field(default_factory=list)
    taken: Taken = field(init=False)

    def __post_init__(self) -> None:
        self.taken = Taken(self.bounds)

    def left_of(self, x: float) -> Sketch:
        """Give the part of the same drawing whose labels keep left of `x`, beside a column of text."""
        return self.within((*self.bounds[:2], x, self.bounds[3]))

    def within(self, inner: Rect) -> Sketch:
        """Give the part of the same drawing whose labels keep inside a box."""
        (a, b, c, d), (left, low, right, high) = self.bounds, inner
        part = Sketch((max(a, left), max(b, low), min(c, right), min(d, high)), self.items)
        part.taken = Taken(part.bounds, self.taken.boxes, self.taken.lines, self.taken.thin)
        return part

    # shapes -------------------------------------------------------------------------------------------------------
    def path(
        self, points: Sequence[Point], weight: float = ink.MEDIUM, *, colour: str = ink.INK, fill: str | None = None,
        closed: bool = False, dash: tuple[float, ...] = (), name: str = "",
    ) -> None:  # fmt: skip
        """Draw a polyline or polygon."""
        made = Path(tuple(points), weight, colour, fill, closed, dash, name)
        self.items.append(made)
        self.taken.add(made)

    def line(
        self, a: Point, b: Point, weight: float = ink.FINE, *, colour: str = ink.INK, dash: tuple[float, ...] = ()
    ) -> None:
        """Draw a straight line."""
        self.path((a, b), weight, colour=colour, dash=dash)

    def rect(
        self, a: Point, b: Point, weight: float = ink.MEDIUM, *, fill: str | None = None, colour: str = ink.INK,
        dash: tuple[float, ...] = (), name: str = "",
    ) -> None:  # fmt: skip
        """Draw a rectangle from two opposite corners."""
        self.path(((a[0], a[1]), (b[0], a[1]), (b[0], b[1]), (a[0], b[1])), weight, colour=colour, fill=fill, closed=True,
                  dash=dash, name=name)  # fmt: skip

    def disc(
        self, centre: Point, radius: float, weight: float = ink.FINE, *, fill: str | None = None, colour: str = ink.INK,
        dash: tuple[float, ...] = (), name: str = "",
    ) -> None:  # fmt: skip
        """Draw a circle."""
        made = Disc(centre, radius, weight, colour, fill, dash, name)
        self.items.append(made)
        self.taken.add(made)

    def cross(self, a: Point, b: Point, *, colour: str = ink.TIMBER_EDGE) -> None:
        """Draw the framer's X over the end of a member."""
        self.line(a, b, ink.HAIR, colour=colour)
        self.line((a[0], b[1]), (b[0], a[1]), ink.HAIR, colour=colour)

    def hatch(
        self, outline: Sequence[Point], step: float = 1.6, *, colour: str = ink.INK2, angle: float = 45.0
    ) -> None:
        """Fill a polygon with parallel hair lines `step` mm apart."""
        for a, b in hatch_lines(outline, step, angle):
            self.ground_line(a, b, colour=colour)

    def ground_line(self, a: Point, b: Point, *, colour: str) -> None:
        """Draw a hair line of a ground, such as a hatch or a course of siding, over which texts may stand."""
        self.items.append(Path((a, b), ink.HAIR, colour))

    # texts --------------------------------------------------------------------------------------------------------
    def text(
        self, at: Point, words: str, size: float = ink.SMALL, face: Face = Face.SANS, anchor: Anchor = Anchor.LEFT, *,
        colour: str = ink.INK, turn: int = 0, halo: str | None = None,
    ) -> Text:  # fmt: skip
        """Write a text where the caller knows there is room."""
        return self._write(Text(at, plain(words), size, face, anchor, colour, turn, halo))

    def label(
        self, places: Iterable[tuple[Point, Anchor]], words: str, size: float = ink.SMALL, face: Face = Face.SANS, *,
        colour: str = ink.INK, turn: int = 0, halo: str | None = None, roam: float = 0.0, tip: Point | None = None,
        over: bool = False,
    ) -> Text | None:  # fmt: skip
        """Write a text at the first of the places where it meets neither a text, a bold line nor the sheet's edge.

        Where all are taken it looks on round the first, up to `roam` mm away, then with a leader to `tip`; None where it
        finds no room. A name that stands on its thing goes `over` fine lines.
        """
        words = plain(words)
        wanted = [Text(at, words, size, face, anchor, colour, turn, halo) for at, anchor in places]
        made = self.taken.first_clear(wanted, over=over)
        if made is None and wanted:
            made = self.taken.nearest_clear(wanted[0], roam)
        if made is None and tip is not None:
            return self.note(tip, words, (), size, face=face, colour=colour, halo=halo)
        return self._write(made) if made is not None else None

    def block(
        self, places: Iterable[tuple[Point, Anchor]], lines: Sequence[str], step: float, size: float, *, halo: str | None = None
    ) -> bool:  # fmt: skip
        """Write lines under one another, `step` mm apart, at the first place where all of them have room together.

        A place is where the first line begins. Rather no line at all runs through, then no bold one, as with a label.
        """
        blocks = [[Text((x, y - n * step), plain(words), size, Face.SANS, anchor, ink.INK, 0, halo)
                   for n, words in enumerate(lines)] for (x, y), anchor in places]  # fmt: skip
        made = self.taken.first_clear_block(blocks)
        for text in made:
            self._write(text)
        return bool(made)

    def note(
        self, tip: Point, words: str, places: Iterable[Point], size: float = ink.SMALL, *, face: Face = Face.SANS,
        colour: str = ink.INK, halo: str | None = None, short: str = "", avoid: Sequence[Rect] = (),
    ) -> Text | None:  # fmt: skip
        """Write a text at the first clear place with a leader to `tip`; it reads away from the tip.

        Where all are taken the `short` words are tried, then they stand as near to the tip as there is room. Boxes to
        `avoid` are written over, or led through, only where nothing else is left.
        """
        lead = [Text(tip, plain(w), size, face, Anchor.LEFT, colour, 0, halo) for w in (words, short) if w]
        spots = [(p, Anchor.LEFT if p[0] >= tip[0] else Anchor.RIGHT) for p in places]
        made = None
        for text in lead:
            made = made or self.taken.led_clear([replace(text, at=p, anchor=a) for p, a in spots], tip, avoid)
        made = made or self.taken.ring_clear(lead[-1], tip, avoid)
        if made is None:
            return None
        side = -0.7 if made.anchor is Anchor.LEFT else 0.7
        self.line((made.at[0] + side, made.at[1] + 0.3 * size), tip, ink.FINE, colour=colour)
        return self._write(made)

    def _write(self, made: Text) -> Text:
        self.items.append(made)
        self.reserve(box(made))
        return made

    def reserve(self, taken: Rect) -> None:
        """Keep texts out of a box."""
        self.taken.boxes.append(taken)

    # dimensions ---------------------------------------------------------------------------------------------------
    def tick(self, at: Point) -> None:
        """Draw the slanted tick at the end of a dimension."""
        ends = ((at[0] - 0.75, at[1] - 0.75), (at[0] + 0.75, at[1] + 0.75))
        self.items.append(Path(ends, ink.MEDIUM, ink.INK))

    def dim_across(
        self, x0: float, x1: float, y: float, words: str, *, from_y: float | tuple[float, float] | None = None,
        below: bool = False, left: bool = False, halo: str | None = None,
    ) -> None:  # fmt: skip
        """Draw a level dimension between two page places, its text above (or below).

        When it is too short the text stands beside it, on the right or, with `left`, rather on the left.
        """
        a, b = sorted((x0, x1))
        self.line((a, y), (b, y), ink.FINE)
        starts = from_y if isinstance(from_y, tuple) else (from_y, from_y)
        for x, start in zip((x0, x1), starts, strict=True):
            self.tick((x, y))
            if start is not None:
                self.line((x, start), (x, y + (1.0 if y >= start else -1.0)), ink.HAIR)
        size, middle = ink.LEAST, (a + b) / 2
        first, second = _over_and_under(y, size)[:: -1 if below else 1]
        over_by = width(plain(words), size, Face.NARROW_BOLD) - (b - a)
        beside = [((b + 1.4, y - 0.3 * size), Anchor.LEFT), ((a - 1.4, y - 0.3 * size), Anchor.RIGHT)]
        beside = beside[::-1] if left else beside
        places = [((middle, first), Anchor.MIDDLE)]
        places += [((middle, second), Anchor.MIDDLE)] if over_by <= 1.0 else []
        places = [*beside, *places] if over_by > _LONG_OVER else [*places, *beside]
        places += [((middle, first + k * size * (-1 if below else 1)), Anchor.MIDDLE) for k in (1.1, 2.2, 3.3)]
        places += [((middle, second - k * size * (-1 if below else 1)), Anchor.MIDDLE) for k in (0, 1.1, 2.2)]
        self.label(places, words, size, Face.NARROW_BOLD, halo=halo, tip=(middle, y))
        self.reserve((a, y - 0.02, b, y + 0.02))

    def dims_from(
        self, x0: float, sizes: Sequence[tuple[float, float, str, float]], *, below: bool = False, halo: str | None = None
    ) -> None:  # fmt: skip
        """Draw level dimensions from one line at `x0` to both sides: each to a place, at a height, its words, and from where
        its end's line rises [mm].

        All lines are drawn before a figure is written. A figure stays on its own side, slid along its line, or past its end
        where the line is too short.
        """
        for x1, y, _, start in sizes:
            self.line((x0, y), (x1, y), ink.FINE)
            self.tick((x0, y))
            self.tick((x1, y))
            self.line((x1, start), (x1, y + (1.0 if y >= start else -1.0)), ink.HAIR)
            a, b = sorted((x0, x1))
            self.reserve((a, y - 0.02, b, y + 0.02))
        size = ink.LEAST
        for x1, y, words, _ in sizes:
            way, spare = (1.0 if x1 > x0 else -1.0), abs(x1 - x0) - width(plain(words), size, Face.NARROW_BOLD) - 1.2
            slides = (
                [(x0 + x1) / 2 + way * spare / 2 * k / 4 for k in (0, 1, -1, 2, -2, 3, -3, 4, -4)] if spare >= 0 else []
            )
            levels = _over_and_under(y, size)[:: -1 if below else 1]
            anchor = Anchor.LEFT if way > 0 else Anchor.RIGHT
            places = [((x, level), Anchor.MIDDLE) for level in levels for x in slides]
            places += [((x1 + way * 1.4, y - 0.3 * size + k), anchor) for k in (0.0, 2.8, -2.8)]
            self.label(places, words, size, Face.NARROW_BOLD, halo=halo, tip=((x0 + x1) / 2, y))

    def dim_up(
        self, y0: float, y1: float, x: float, words: str, *, from_x: float | tuple[float, float] | None = None,
        right: bool = False, halo: str | None = None,
    ) -> None:  # fmt: skip
        """Draw a plumb dimension, its text to the left (or right) reading upwards, or beside it when it is too short."""
        a, b = sorted((y0, y1))
        self.line((x, a), (x, b), ink.FINE)
        starts = from_x if isinstance(from_x, tuple) else (from_x, from_x)
        for y, start in zip((y0, y1), starts, strict=True):
            self.tick((x, y))
            if start is not None:
                self.line((start, y), (x + (1.0 if x >= start else -1.0), y), ink.HAIR)
        size = ink.LEAST
        left_at, right_at = x - 0.9, x + 0.85 * size + 0.2
        first, second = (right_at, left_at) if right else (left_at, right_at)
        fits = width(plain(words), size, Face.NARROW_BOLD) <= b - a - 0.8  # clear of what the ends stand on
        if not (fits and self._turned(a, b, (first, second), words, size, halo)):
            self._beside_line(x, a, b, words, size, right, halo)
        self.reserve((x - 0.02, a, x + 0.02, b))

    def _turned(
        self, a: float, b: float, sides: tuple[float, float], words: str, size: float, halo: str | None
    ) -> bool:
        """Write a plumb dimension's text along its line, in the middle or at a quarter."""
        middle, quarter = (a + b) / 2, (b - a) / 4
        places = [((at, middle), Anchor.MIDDLE) for at in sides]
        places += [((at, middle + k), Anchor.MIDDLE) for at in sides for k in (quarter, -quarter)]
        return self.label(places, words, size, Face.NARROW_BOLD, turn=90, halo=halo) is not None

    def _beside_line(
        self, x: float, a: float, b: float, words: str, size: float, right: bool, halo: str | None
    ) -> None:
        """Write a plumb dimension's text level, beside its line or past its ends."""
        level = (a + b) / 2 - 0.3 * size
        flat = [((x + 1.4, level), Anchor.LEFT), ((x - 1.4, level), Anchor.RIGHT)]
        flat = flat if right else flat[::-1]
        flat += [((x, b + 1.6), Anchor.MIDDLE), ((x, a - 1.6 - 0.74 * size), Anchor.MIDDLE)]
        flat += [((p[0], p[1] + k), n) for k in (2.8, -2.8, 5.6, -5.6) for p, n in flat[:2]]
        self.label(flat, words, size, Face.NARROW_BOLD, halo=halo, tip=(x, (a + b) / 2))


def _over_and_under(y: float, size: float) -> tuple[float, float]:
    """Give the base lines of a text over and under a level dimension [mm]."""
    return y + 1.0, y - 0.85 * size - 0.3


def hatch_lines(outline: Sequence[Point], step: float, angle: float) -> list[tuple[Point, Point]]:
    """Give the parallel lines inside a polygon (even-odd), exactly clipped."""
    turn = math.radians(angle)
    along, across = (math.cos(turn), math.sin(turn)), (-math.sin(turn), math.cos(turn))
    local = [(p[0] * along[0] + p[1] * along[1], p[0] * across[0] + p[1] * across[1]) for p in outline]
    low, high = min(v for _, v in local), max(v for _, v in local)
    found: list[tuple[Point, Point]] = []
    for k in range(math.floor(low / step) + 1, math.ceil(high / step)):
        level = k * step
        hits = []
        for (u0, v0), (u1, v1) in zip(local, [*local[1:], local[0]], strict=True):
            if (v0 <= level) != (v1 <= level):
                hits.append(u0 + (level - v0) / (v1 - v0) * (u1 - u0))
        hits.sort()
        for a, b in zip(hits[::2], hits[1::2], strict=False):
            if b - a > 0.05:
                found.append(
                    ((a * along[0] + level * across[0], a * along[1] + level * across[1]),
                     (b * along[0] + level * across[0], b * along[1] + level * across[1]))
                )  # fmt: skip
    return found
