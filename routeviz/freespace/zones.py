"""Zones to regions: later zones overrule earlier ones, and what remains is cut into boxes and convex prisms."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from functools import lru_cache

import numpy as np
import numpy.typing as npt
import shapely
from shapely.geometry import Polygon
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


def _cuts(shapes: list[Region], lo: Ticks, hi: Ticks) -> list[npt.NDArray[np.int64]]:
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


_Corners = tuple[tuple[int, int], ...]


def _corners(piece: Polygon) -> _Corners:
    return tuple(sorted((round(u), round(v)) for u, v in piece.exterior.coords[:-1]))


@dataclass(frozen=True)
class _Cut:
    """A cell that slopes cut up: the pieces of its cross-section, each with the zone that rules it."""

    axis: int
    pieces: tuple[tuple[int, BaseGeometry], ...]


class _Raster:
    """All zones on the cells between their faces: which zone rules a cell, and which cells are cut by slopes."""

    def __init__(self, zones: tuple[Zone, ...], lo: Ticks, hi: Ticks) -> None:
        self.zones = zones
        self.shapes = [region(z.shape) for z in zones]
        self.cuts = _cuts(self.shapes, lo, hi)
        self.rule = np.full([len(c) - 1 for c in self.cuts], _NONE, np.int16)
        self.sloped: dict[tuple[int, int, int], _Cut] = {}
        self.is_cut = np.zeros(self.rule.shape, bool)
        for number, shape in enumerate(self.shapes):
            self._paint(number, shape)

    def _paint(self, number: int, shape: Region) -> None:
        cells = tuple(
            slice(int(np.searchsorted(c, shape.lo[a])), int(np.searchsorted(c, shape.hi[a])))
            for a, c in enumerate(self.cuts)
        )
        if shape.axis < 0:
            self._take(number, cells)
            return
        u, v = (a for a in range(3) if a != shape.axis)
        sides = [self.cuts[a][cells[a].start : cells[a].stop + 1] for a in (u, v)]
        squares = shapely.box(sides[0][:-1, None], sides[1][:-1], sides[0][1:, None], sides[1][1:])
        parts = shapely.intersection(Polygon(shape.outline), squares)
        areas = shapely.area(parts)
        whole = shapely.area(squares) - areas < _SLIVER
        for i, j in np.argwhere(areas >= _SLIVER).tolist():
            column = list(cells)
            column[u], column[v] = (slice(cells[a].start + k, cells[a].start + k + 1) for a, k in ((u, i), (v, j)))
            if whole[i, j]:
                self._take(number, tuple(column))
            else:
                self._cut(number, shape.axis, tuple(column), squares[i, j], parts[i, j])

    def _take(self, number: int, cells: tuple[slice, ...]) -> None:
        """Give whole cells to a zone."""
        self.rule[cells] = number
        for key in np.argwhere(self.is_cut[cells]):
            del self.sloped[tuple(int(k) + s.start for k, s in zip(key, cells, strict=True))]
        self.is_cut[cells] = False

    def _cut(self, number: int, axis: int, column: tuple[slice, ...], square: Polygon, part: BaseGeometry) -> None:
        """Give part of the cross-section of a column of cells to a zone; cells with the same past share the answer."""
        done: dict[tuple[int, int], _Cut] = {}
        for key in np.ndindex(*(s.stop - s.start for s in column)):
            x, y, z = (k + s.start for k, s in zip(key, column, strict=True))
            before = self.sloped.get((x, y, z))
            if before is not None and before.axis != axis:  # slopes along two axes: the later zone takes the cell
                self._take(number, (slice(x, x + 1), slice(y, y + 1), slice(z, z + 1)))
                continue
            self.is_cut[x, y, z] = True
            past = (-1, id(before)) if before is not None else (int(self.rule[x, y, z]), 0)
            if past not in done:
                pieces = before.pieces if before is not None else ((past[0], square),)
                rest = tuple((n, left) for n, g in pieces if (left := g.difference(part)).area >= _SLIVER)
                done[past] = _Cut(axis, (*rest, (number, part)))
            self.sloped[x, y, z] = done[past]

    def regions(self) -> Iterator[tuple[int, Region]]:
        """Give disjoint regions with the number of the zone that rules each."""
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
        """Give the sloped pieces, neighbours with the same cross-section joined along the prism's axis."""
        shapes: dict[int, list[tuple[int, Polygon, _Corners]]] = {}
        spans: dict[tuple[int, int, _Corners], list[tuple[int, int]]] = {}
        outlines: dict[_Corners, Polygon] = {}
        for cell, cut in sorted(self.sloped.items(), key=lambda item: item[0][item[1].axis]):
            if id(cut) not in shapes:
                shapes[id(cut)] = [(n, p, _corners(p)) for n, g in cut.pieces if n != _NONE for p in _convex(g)]
            ends = self.cuts[cut.axis]
            start, end = int(ends[cell[cut.axis]]), int(ends[cell[cut.axis] + 1])
            for number, piece, corners in shapes[id(cut)]:
                outlines.setdefault(corners, piece)
                found = spans.setdefault((number, cut.axis, corners), [])
                if found and found[-1][1] == start:
                    found[-1] = found[-1][0], end
                else:
                    found.append((start, end))
        for (number, axis, corners), stretches in spans.items():
            for start, end in stretches:
                yield number, prism_region(axis, start, end, outlines[corners])


@lru_cache(maxsize=4)
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
        Together they fill the zones' union inside the bounds; outlines are exact up to one tick. Kept for the next
        questions about the same house: a hood that is moved leaves its zones as they are.
    """
    limit = region(bounds)
    raster = _Raster(zones, limit.lo, limit.hi)
    return tuple(Place(zones[n], r) for n, r in raster.regions())


def passage_regions(found: tuple[Place, ...], passage: Passage) -> tuple[Region, ...]:
    """Give the regions of one passage."""
    return tuple(p.region for p in found if p.zone.passage is passage)
