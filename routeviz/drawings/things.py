"""What stands before the hood wall or in it: drawn first, named when every line is drawn."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence

from routeviz.drawings import palette as ink
from routeviz.drawings.flat import ends_of
from routeviz.drawings.hood import hood_front_boxes
from routeviz.drawings.house import View, draw_seen
from routeviz.drawings.lettering import box
from routeviz.drawings.primitives import Anchor, Face, Point, Text
from routeviz.drawings.sketch import Sketch
from routeviz.drawings.taken import Rect, overlaps
from routeviz.model.scene import ObstacleKind, Scene, WallSide
from routeviz.model.solids import Frame, Solid, SolidKind

__all__ = ["draw_things", "name_things"]

_NEAR_WALL_IN = 30.0
_NAMED = (SolidKind.CABINET, SolidKind.SOFFIT, SolidKind.OBSTACLE)
_STEP = 3.0  # of a name that looks for room inside its thing [mm]
_CLEAR = 4.0  # from the hood that a leader's tip wants [mm]
_INSET = 0.5  # least space between a name and the edge of its thing [mm]


def draw_things(sketch: Sketch, view: View, scene: Scene, frame: Frame) -> None:
    """Draw windows, doors, cabinets, soffits, obstacles, counter and cooktop."""
    for solid in _shown(scene, frame):
        on_wall = solid.side is WallSide.HOOD
        if solid.kind is SolidKind.GLAZING and on_wall:
            _window(sketch, view, solid)
        elif (solid.kind is SolidKind.DOOR and on_wall) or (solid.kind in _NAMED and (on_wall or solid.side is None)):
            draw_seen(sketch, view, solid, fill=ink.CABINET, colour=ink.INK, weight=ink.MEDIUM)
        elif solid.kind is SolidKind.COUNTER:
            draw_seen(sketch, view, solid, fill=ink.STONE, colour=ink.INK, weight=ink.MEDIUM)
        elif solid.kind is SolidKind.COOKTOP:
            draw_seen(sketch, view, solid, fill=ink.DARK, colour=ink.INK)
    cook = scene.cooktop
    half = cook.width_in / 2
    sketch.rect(view.at(cook.centre_in - half, cook.height_in - 0.2), view.at(cook.centre_in + half, cook.height_in + 0.6),
                ink.FINE, fill=ink.DARK)  # fmt: skip


def _shown(scene: Scene, frame: Frame) -> Iterator[Solid]:
    holes = {t.id for t in scene.obstacles if t.kind is ObstacleKind.HOLE}  # drawn dashed, over what hides them
    for solid in frame.solids:
        low, high = ends_of(solid.shape, 1)
        if (
            solid.id not in holes
            and solid.space == "kitchen"
            and low >= -_NEAR_WALL_IN - 40.0
            and high >= -_NEAR_WALL_IN
        ):
            yield solid


def _window(sketch: Sketch, view: View, solid: Solid) -> None:
    if not draw_seen(sketch, view, solid, fill=ink.GLASS, colour=ink.INK, weight=ink.MEDIUM):
        return
    (x0, x1), (z0, z1) = ends_of(solid.shape, 0), ends_of(solid.shape, 2)
    left, low, right, high = view.region
    if x0 + 2 < right and x1 - 2 > left and z1 < high:
        a, b = view.at(max(left, x0 + 1.6), max(low, z0 + 1.6)), view.at(min(right, x1 - 1.6), min(high, z1 - 1.6))
        sketch.rect(a, b, ink.FINE)


def name_things(sketch: Sketch, view: View, scene: Scene, frame: Frame) -> None:
    """Write the names of windows, cabinets, soffits and obstacles: inside what the hood leaves of them, or beside."""
    hidden = [_on_page(view, r) for r in hood_front_boxes(scene)]
    for solid in _shown(scene, frame):
        if solid.kind is SolidKind.GLAZING and solid.side is WallSide.HOOD:
            opens = any(
                o.operable and solid.id == f"{WallSide.HOOD}-{o.id}" for o in scene.wall(WallSide.HOOD).openings
            )
            _name(sketch, view, solid, f"{solid.label}{', opens' if opens else ''}", hidden)
        elif solid.kind in _NAMED and solid.side in (None, WallSide.HOOD):
            _name(sketch, view, solid, solid.label.removeprefix("other "), hidden)


def _name(sketch: Sketch, view: View, solid: Solid, words: str, hidden: Sequence[Rect]) -> None:
    (x0, x1), (z0, z1) = ends_of(solid.shape, 0), ends_of(solid.shape, 2)
    left, low, right, high = view.region
    x0, x1, z0, z1 = max(x0, left), min(x1, right), max(z0, low), min(z1, high)
    if x0 >= x1 or z0 >= z1:
        return
    room = _on_page(view, (x0, z0, x1, z1))
    fill = ink.GLASS if solid.kind is SolidKind.GLAZING else ink.CABINET
    spots = _spots(room)
    for turn in (0, 90):
        dx, dy = (0.0, -0.8) if turn == 0 else (0.8, 0.0)
        places = [(x + dx, y + dy) for x, y in spots]
        inside = [(p, Anchor.MIDDLE) for p in places if _fits(box(_text(p, words, turn)), room, hidden)]
        if inside and sketch.label(inside, words, ink.LEAST, colour=ink.INK2, turn=turn, halo=fill):
            return
    tip = max(spots, key=lambda p: min([_CLEAR, *(_apart(p, h) for h in hidden)]))
    if any(_apart(tip, h) <= 0.0 for h in hidden):
        tip, words = spots[0], f"{words}, behind the hood"
    places = [
        (tip[0] + s * a, tip[1] + b) for a in (8.0, 13.0, 19.0, 26.0) for b in (-6.0, 6.0, -10.0, 10.0) for s in (1, -1)
    ]
    sketch.note(tip, words, places, ink.LEAST, colour=ink.INK2, halo=ink.WALL, avoid=hidden)


def _apart(at: Point, room: Rect) -> float:
    """Give how far a point lies from a box [mm]; 0 inside."""
    return math.hypot(max(room[0] - at[0], 0.0, at[0] - room[2]), max(room[1] - at[1], 0.0, at[1] - room[3]))


def _text(at: Point, words: str, turn: int) -> Text:
    return Text(at, words, ink.LEAST, Face.SANS, Anchor.MIDDLE, ink.INK2, turn)


def _fits(wanted: Rect, room: Rect, hidden: Sequence[Rect]) -> bool:
    inside = (
        room[0] + _INSET <= wanted[0]
        and room[1] + _INSET <= wanted[1]
        and wanted[2] <= room[2] - _INSET
        and wanted[3] <= room[3] - _INSET
    )
    return inside and not any(overlaps(wanted, h) for h in hidden)


def _spots(room: Rect) -> list[Point]:
    """Give places all over a box, its middle first."""
    middle = (room[0] + room[2]) / 2, (room[1] + room[3]) / 2
    across, up = int((room[2] - room[0]) / 2 / _STEP), int((room[3] - room[1]) / 2 / _STEP)
    steps = [(a * _STEP, b * _STEP) for a in range(-across, across + 1) for b in range(-up, up + 1)]
    steps.sort(key=lambda s: (s[0] ** 2 + s[1] ** 2, s))
    return [(middle[0] + a, middle[1] + b) for a, b in steps]


def _on_page(view: View, region: Rect) -> Rect:
    return (*view.at(region[0], region[1]), *view.at(region[2], region[3]))
