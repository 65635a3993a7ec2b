"""Zones to regions: later zones overrule earlier ones, and what remains is cut into boxes and convex prisms."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

import numpy as np
import numpy.typing as npt
import shapely
from shapely.geometry import Polygon, box
from shapely.geometry.base import BaseGeometry

from routeviz.freespace.barriers import prism_region, region
from routeviz.model.freespace import Region, Ticks
from routeviz.model.solids import Box, Passage, Zone

__all__ = ["Place", "passage_regions", "places"]

_NONE = -1  # a cell in no zone: inside something solid, where only the solids decide
_SLIVER = 64.0 * 64.0  # pieces below this area [square ticks, 1/128 in on a side] are rounding


@dataclass(frozen=True, slots=True)
class Place:
    """A part of a zone that no later zone overrules."""

    zone: Zone
    region: Region


def _cuts(zones: tuple[Zone, ...], shapes: list[Region], lo: Ticks, hi: Ticks) -> list[npt.NDArray[np.int64]]:
    found: list[set[int]] = [{lo[a], hi[a]} for a in range(3)]
    for shape in shapes:
        for a in range(3):
            found[a] |= {v for v in (shape.lo[a], shape.hi[a]) if lo[a] < v < hi[a]}
    return [np.array(sorted(f), np.int64) for f in found]


def _merged(mask: npt.NDArray[np.bool_]) -> Iterator[tuple[slice, slice, slice]]:
    """Cover the true cells by few disjoint boxes: grow each along z, then x, then y."""
    left = mask.copy()
    while left.any():
        x, y, z = (int(v) for v in np.unravel_index(int(left.argmax()), left.shape))
        z2 = z + 1
        while z2 < left.shape[2] and left[x, y, z2]:
            z2 += 1
        x2 = x + 1
        while x2 < left.shape[0] and left[x2, y, z:z2].all():
            x2 += 1
        y2 = y + 1
        while y2 < left.shape[1] and left[x:x2, y2, z:z2].all():
            y2 += 1
        cells = (slice(x, x2), slice(y, y2), slice(z, z2))
        left[cells] = False
        yield cells


def _convex(shape: BaseGeometry) -> Iterator[Polygon]:
    """Cut a flat shape into convex pieces."""
    for part in shapely.get_parts(shape):
        if not isinstance(part, Polygon) or part.area < _SLIVER:
            continue
        if part.convex_hull.area - part.area < _SLIVER:
            yield part
        else:
            for triangle in shapely.get_parts(shapely.constrained_delaunay_triangles(part)):
                if triangle.area >= _SLIVER:
                    yield triangle


class _Raster:
    """All zones on the cells between their faces: which zone rules a cell, and which cells are cut by slopes."""

    def __init__(self, zones: tuple[Zone, ...], lo: Ticks, hi: Ticks) -> None:
        self.zones = zones
        self.shapes = [region(z.shape) for z in zones]
        self.cuts = _cuts(zones, self.shapes, lo, hi)
        self.rule = np.full([len(c) - 1 for c in self.cuts], _NONE, np.int16)
        self.sloped: dict[tuple[int, int, int], tuple[int, list[tuple[int, BaseGeometry]]]] = {}
        for number, shape in enumerate(self.shapes):
            self._paint(number, shape)

    def _cells(self, shape: Region) -> tuple[slice, ...]:
        return tuple(
            slice(int(np.searchsorted(c, shape.lo[a])), int(np.searchsorted(c, shape.hi[a])))
            for a, c in enumerate(self.cuts)
        )

    def _paint(self, number: int, shape: Region) -> None:
        cells = self._cells(shape)
        if shape.axis < 0:
            self.rule[cells] = number
            for key in [k for k in self.sloped if all(s.start <= i < s.stop for s, i in zip(cells, k, strict=True))]:
                del self.sloped[key]
            return
        outline = Polygon(shape.outline)
        flat = [a for a in range(3) if a != shape.axis]
        memo: dict[tuple[int, int], BaseGeometry | None] = {}
        for key in np.ndindex(*(s.stop - s.start for s in cells)):
            cell = tuple(k + s.start for k, s in zip(key, cells, strict=True))
            pair = (cell[flat[0]], cell[flat[1]])
            if pair not in memo:
                square = self._square(pair, flat)
                part = outline.intersection(square)
                memo[pair] = None if part.area < _SLIVER else square if square.area - part.area < _SLIVER else part
            self._mix((cell[0], cell[1], cell[2]), number, shape.axis, pair, flat, memo[pair])

    def _square(self, pair: tuple[int, int], flat: list[int]) -> Polygon:
        (i, j), (a, b) = pair, flat
        return box(self.cuts[a][i], self.cuts[b][j], self.cuts[a][i + 1], self.cuts[b][j + 1])

    def _mix(
        self, cell: tuple[int, int, int], number: int, axis: int, pair: tuple[int, int], flat: list[int],
        part: BaseGeometry | None,
    ) -> None:  # fmt: skip
        if part is None:
            return
        square = self._square(pair, flat)
        if part is square or part.equals(square):
            self.rule[cell] = number
            self.sloped.pop(cell, None)
            return
        before, pieces = self.sloped.get(cell, (axis, [(int(self.rule[cell]), square)]))
        if before != axis:  # slopes along two axes in one cell: the later zone takes the whole cell
            self.rule[cell] = number
            self.sloped.pop(cell, None)
            return
        rest = [(n, g.difference(part)) for n, g in pieces]
        self.sloped[cell] = (axis, [(n, g) for n, g in rest if g.area >= _SLIVER] + [(number, part)])

    def regions(self) -> Iterator[tuple[int, Region]]:
        plain = self.rule.copy()
        for cell in self.sloped:
            plain[cell] = _NONE
        for number in range(len(self.zones)):
            for cells in _merged(plain == number):
                lo = tuple(int(c[s.start]) for c, s in zip(self.cuts, cells, strict=True))
                hi = tuple(int(c[s.stop]) for c, s in zip(self.cuts, cells, strict=True))
                yield number, Region((lo[0], lo[1], lo[2]), (hi[0], hi[1], hi[2]))
        yield from self._prisms()

    def _prisms(self) -> Iterator[tuple[int, Region]]:
        """Give the sloped pieces, neighbours along the prism's axis joined."""
        open_ends: dict[tuple[object, ...], Region] = {}
        for cell, (axis, pieces) in sorted(self.sloped.items(), key=lambda item: (item[1][0], item[0][item[1][0]])):
            start, end = int(self.cuts[axis][cell[axis]]), int(self.cuts[axis][cell[axis] + 1])
            for number, shape in pieces:
                if number == _NONE:
                    continue
                for piece in _convex(shape):
                    made = prism_region(axis, start, end, piece)
                    key = (number, axis, made.outline or (made.lo, made.hi), start)
                    joined = open_ends.pop(key, None)
                    if joined is not None:
                        lo = list(made.lo)
                        lo[axis] = joined.lo[axis]
                        made = Region((lo[0], lo[1], lo[2]), made.hi, made.axis, made.outline)
                    open_ends[(*key[:3], end)] = made
        for found, made in open_ends.items():
            yield int(found[0]), made  # type: ignore[call-overload]


def places(zones: tuple[Zone, ...], bounds: Box) -> tuple[Place, ...]:
    """Cut zones into disjoint regions, later zones overruling earlier ones.

    Parameters
    ----------
    zones : tuple of Zone
        As in a frame.
    bounds : Box
        Nothing outside matters.

    Returns
    -------
    tuple of Place
        Together they fill the zones' union inside the bounds; outlines are exact up to one tick.
    """
    limit = region(bounds)
    raster = _Raster(zones, limit.lo, limit.hi)
    return tuple(Place(zones[n], r) for n, r in raster.regions())


def passage_regions(found: tuple[Place, ...], passage: Passage) -> tuple[Region, ...]:
    """Give the regions of one passage."""
    return tuple(p.region for p in found if p.zone.passage is passage)
