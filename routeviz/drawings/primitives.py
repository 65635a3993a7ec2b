"""What a sheet is made of: frozen primitives in millimetres on a page, origin at the lower left.

The front end (the modules that know about kitchens) makes them; the back ends (`pdf`, `svg`) only write them down.
A drawing is compared and checked as primitives, never as pixels.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from enum import StrEnum

__all__ = ["Anchor", "Disc", "Face", "Image", "Page", "Path", "Point", "Primitive", "Text"]

Point = tuple[float, float]


class Face(StrEnum):
    """The lettering: serif for headings, sans for text, narrow for figures."""

    SERIF = "serif"
    SANS = "sans"
    BOLD = "bold"
    NARROW = "narrow"
    NARROW_BOLD = "narrow bold"


class Anchor(StrEnum):
    """Which point of a text stands at its place."""

    LEFT = "left"
    MIDDLE = "middle"
    RIGHT = "right"


@dataclass(frozen=True, slots=True)
class Path:
    """A polyline or polygon. `weight` is the line's width [mm], 0 for none; `dash` alternates on and off [mm]."""

    points: tuple[Point, ...]
    weight: float
    ink: str = "#24272b"
    fill: str | None = None
    closed: bool = False
    dash: tuple[float, ...] = ()
    id: str = ""  # of the solid, part or thing it shows


@dataclass(frozen=True, slots=True)
class Disc:
    """A circle with its centre and radius [mm]."""

    centre: Point
    radius: float
    weight: float
    ink: str = "#24272b"
    fill: str | None = None
    dash: tuple[float, ...] = ()
    id: str = ""


@dataclass(frozen=True, slots=True)
class Text:
    """One line of lettering; `size` is the height of the body [mm], 7 pt = 2.47 mm; `turn` is 0 or 90 degrees.

    `halo` paints the text's box first, so that it stays readable over lines.
    """

    at: Point
    text: str
    size: float
    face: Face = Face.SANS
    anchor: Anchor = Anchor.LEFT
    ink: str = "#24272b"
    turn: int = 0
    halo: str | None = None


@dataclass(frozen=True, slots=True)
class Image:
    """A picture file in a box, kept in proportion."""

    file: str
    at: Point  # lower left corner
    width: float
    height: float


Primitive = Path | Disc | Text | Image


@dataclass(frozen=True, slots=True)
class Page:
    """One sheet: its size [mm], what is on it, and the name it is known by in the steps."""

    name: str
    title: str
    width: float
    height: float
    items: tuple[Primitive, ...] = field(repr=False)
