"""What the isometric is made of: pieces that know the box round them and how to paint themselves."""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence
from dataclasses import dataclass

from routeviz.drawings import palette as ink
from routeviz.drawings.primitives import Point
from routeviz.drawings.sketch import Sketch
from routeviz.model.solids import Vec3

__all__ = ["Crop", "Picture", "Piece", "far_first", "project"]

Crop = tuple[tuple[float, float], tuple[float, float], tuple[float, float]]
_COS = math.sqrt(0.75)


def project(point: Sequence[float]) -> Point:
    """Give the flat place [in] of a point: x runs right and down, the room comes left and down, z up."""
    x, room, z = point[0], -point[1], point[2]
    return _COS * (x - room), z - 0.5 * (x + room)


@dataclass(frozen=True, slots=True)
class Piece:
    """Something to paint: the box round it, for the order, and how."""

    lo: Vec3
    hi: Vec3
    paint: Callable[[], None]


@dataclass(slots=True)
class Picture:
    """Where the picture stands on the page."""

    sketch: Sketch
    origin: Point
    scale: float

    def at(self, point: Sequence[float]) -> Point:
        """Give the page place [mm] of a point [in]."""
        u, v = project(point)
        return self.origin[0] + u * self.scale, self.origin[1] + v * self.scale

    def face(self, corners: Sequence[Sequence[float]], fill: str, weight: float = ink.FINE, colour: str = ink.TIMBER_EDGE,
             name: str = "") -> None:  # fmt: skip
        """Paint a flat face from its corners."""
        self.sketch.path([self.at(c) for c in corners], weight, colour=colour, fill=fill, closed=True, name=name)


def far_first(pieces: Sequence[Piece]) -> list[Piece]:
    """Order pieces so that what is behind comes first; the viewer is right of, in front of and above everything."""
    count = len(pieces)
    boxes = [_screen(p) for p in pieces]
    waits: list[set[int]] = [set() for _ in range(count)]
    for i in range(count):
        for j in range(i + 1, count):
            if not _meet(boxes[i], boxes[j]):
                continue
            if _behind(pieces[i], pieces[j]):
                waits[j].add(i)
            elif _behind(pieces[j], pieces[i]):
                waits[i].add(j)
    depth = [p.lo[0] + p.hi[0] - p.lo[1] - p.hi[1] + p.lo[2] + p.hi[2] for p in pieces]
    left = set(range(count))
    order: list[Piece] = []
    while left:
        ready = [k for k in left if not (waits[k] & left)] or list(left)
        chosen = min(ready, key=lambda k: (depth[k], k))
        order.append(pieces[chosen])
        left.remove(chosen)
    return order


def _behind(a: Piece, b: Piece) -> bool:
    e = 1e-6
    return a.hi[0] <= b.lo[0] + e or a.lo[1] >= b.hi[1] - e or a.hi[2] <= b.lo[2] + e


def _screen(piece: Piece) -> tuple[float, float, float, float]:
    flat = [
        project((x, y, z))
        for x in (piece.lo[0], piece.hi[0])
        for y in (piece.lo[1], piece.hi[1])
        for z in (piece.lo[2], piece.hi[2])
    ]
    return min(p[0] for p in flat), min(p[1] for p in flat), max(p[0] for p in flat), max(p[1] for p in flat)


def _meet(a: tuple[float, float, float, float], b: tuple[float, float, float, float]) -> bool:
    return a[0] < b[2] and b[0] < a[2] and a[1] < b[3] and b[1] < a[3]
