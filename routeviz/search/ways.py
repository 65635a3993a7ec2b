"""The last run: from where, and at what cost, a straight run reaches an exit.

For each exit and each pair of coordinates across it there is one end and one free stretch behind the end. Walls read
the stretch from the grid. Roofs compute it in closed form, column by column: a riser's square is set against the
exact slopes of rafters and ridges, so that a plumb run through a roof is exact at any pitch.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import pairwise

import numpy as np

from routeviz.model.freespace import BarrierKind, Exit, FreeSpace, Ints, Region
from routeviz.search.lattice import Rail
from routeviz.search.masks import Bools, Small, count_runs, overlaps_outline, points_inside
from routeviz.search.slabs import split
from routeviz.search.terms import Costs, Terms

__all__ = ["Way", "cost_to_leave", "ways"]


@dataclass(frozen=True)
class Way:
    """One exit for runs along one rail; arrays over the grid coordinates of the two other axes.

    `end` is where the duct ends, `back` the last coordinate behind it from which the run is free, `boxed` the boxed
    length up to the end, `allowed` whether a cap may sit there [ticks].
    """

    exit: Exit
    end: Ints
    back: Ints
    boxed: Ints | None
    allowed: Bools


def ways(
    space: FreeSpace, coordinates: Sequence[Ints], found: Rail, half: Sequence[int], sign: int, terms: Terms,
    boxing: Sequence[Region],
) -> list[Way]:  # fmt: skip
    """Give the ways out for runs along a rail in direction `sign`.

    `boxing` lists the regions that stop the run (when boxing is not priced).
    """
    others = [t for t in range(3) if t != found.axis]
    u, v = coordinates[others[0]][:, None], coordinates[others[1]][None, :]
    made = []
    for face in space.exits:
        if face.axis != found.axis or face.sign != sign:
            continue
        allowed = face.allows(u, v)
        if not allowed.any():
            continue
        end = np.broadcast_to(face.end(u, v), allowed.shape)
        if face.flat and face.axis != 2:
            at = int(np.searchsorted(found.place, int(face.end(u[:1], v[:, :1])[0, 0])))
            if at >= len(found.place) or found.place[at] != end[0, 0]:
                continue
            back = _behind(found, at, sign)
            boxed = None if found.boxed is None else np.take(found.boxed, at, axis=found.axis).astype(np.int64)
            if terms.crossing and boxed is not None and sign < 0:
                boxed -= _members_at(space, coordinates, terms, found.axis, int(end[0, 0]), half)
        else:
            back = _column_floor(space, terms, end, (u[:, 0], v[0]), half, [] if terms.priced else boxing)
            if terms.crossing:
                boxed = _crossed_up_to(space, terms, int(found.place[0]), end, (u[:, 0], v[0]), half)
            else:
                boxed = None if found.boxed is None else _boxed_up_to(found, end)
        made.append(Way(face, end, back, boxed, allowed))
    return made


def _members_at(
    space: FreeSpace, coordinates: Sequence[Ints], terms: Terms, axis: int, plane: int, half: Sequence[int]
) -> Ints:  # fmt: skip
    """Count, per line, the members that a run which ends at a plane stands in: they begin on the far side of it."""
    members = [
        b.region for b in space.barriers
        if terms.crosses(b, axis) and b.id not in terms.ignore and b.region.lo[axis] < plane < b.region.hi[axis]
    ]  # fmt: skip
    thin = [np.array([plane, plane + 1], np.int64) if t == axis else c for t, c in enumerate(coordinates)]
    found: Ints = np.take(count_runs(thin, axis, half, members), 1, axis=axis).astype(np.int64)
    return found


def _behind(found: Rail, at: int, sign: int) -> Ints:
    """Give the last free coordinate behind a plane, per line."""
    walls = np.moveaxis(found.blocked, found.axis, 0)
    still = np.ones(walls.shape[1:], bool)
    free = np.zeros(walls.shape[1:], np.int64)
    for wall in walls[:at][::-1] if sign > 0 else walls[at:]:
        still &= ~wall
        if not still.any():
            break
        free += still
    back: Ints = found.place[at - sign * free]
    return back


def _boxed_up_to(found: Rail, end: Ints) -> Ints:
    """Give the boxed length of each column up to an end between grid coordinates."""
    assert found.boxed is not None
    boxed = np.moveaxis(found.boxed, found.axis, -1)
    at = np.clip(np.searchsorted(found.place, end, "right") - 1, 0, len(found.place) - 1)
    after = np.minimum(at + 1, len(found.place) - 1)
    here, there = (np.take_along_axis(boxed, i[..., None], -1)[..., 0].astype(np.int64) for i in (at, after))
    total: Ints = here + np.where(there > here, np.maximum(end - found.place[at], 0), 0)
    return total


def _span(region: Region, half: Sequence[int], v: Ints, side: int) -> tuple[Ints, Ints]:
    """Give the lowest and highest z of a prism over each square's width, along the outline's flat axis."""
    corners = np.array(region.outline, np.float64)
    order = np.lexsort((corners[:, 1], corners[:, 0]))
    flats = np.unique(corners[:, 0])
    lo, hi = np.maximum(v - half[side], flats[0]), np.minimum(v + half[side], flats[-1])
    ring = np.vstack([corners, corners[:1]])

    def chain(pick: str) -> tuple[np.ndarray, np.ndarray]:
        """Give the outline's lower or upper corners: flat coordinates and heights of shape (n,) [ticks]."""
        heights = []
        for flat in flats:
            crossing = [c[1] for c in corners[order] if c[0] == flat]
            for (u1, z1), (u2, z2) in pairwise(ring):
                if min(u1, u2) < flat < max(u1, u2):
                    crossing.append(z1 + (z2 - z1) * (flat - u1) / (u2 - u1))
            heights.append(min(crossing) if pick == "low" else max(crossing))
        return flats, np.array(heights)

    def extreme(pick: str) -> Ints:
        """Give the lowest or highest height over each square's width [ticks], of the shape of `v`."""
        at, heights = chain(pick)
        peak = at[int(np.argmin(heights) if pick == "low" else np.argmax(heights))]
        where = np.clip(peak, lo, hi)
        height = np.interp(where, at, heights)
        whole = np.floor(height + 1e-6) if pick == "low" else np.ceil(height - 1e-6)
        return np.asarray(whole, np.int64)

    return extreme("low"), extreme("high")


def _over_columns(
    regions: Sequence[Region], across: tuple[Ints, Ints], half: Sequence[int]
) -> Iterator[tuple[slice, slice, Bools, Ints, Ints]]:
    """Give, per region, the columns it stands over: two index ranges, whether it is there, its lowest and highest z."""
    x, y = across
    for region in regions:
        i = points_inside(x, region.lo[0] - half[0], region.hi[0] + half[0])
        j = points_inside(y, region.lo[1] - half[1], region.hi[1] + half[1])
        if i.stop <= i.start or j.stop <= j.start:
            continue
        low: Ints = np.array(region.lo[2])
        high: Ints = np.array(region.hi[2])
        hit: Bools = np.array(True)
        if region.axis == 2:
            hit = overlaps_outline(region, x[i] - half[0], x[i] + half[0], y[j] - half[1], y[j] + half[1])
        elif region.axis in (0, 1):
            side = 1 - region.axis
            low, high = _span(region, half, (x[i], y[j])[side], side)
            low, high = (low[:, None], high[:, None]) if side == 0 else (low[None, :], high[None, :])
        yield i, j, hit, low, high


def _column_floor(
    space: FreeSpace, terms: Terms, end: Ints, across: tuple[Ints, Ints], half: Sequence[int],
    boxing: Sequence[Region],
) -> Ints:  # fmt: skip
    """Give, per column, the lowest z from which a riser is free up to its end; above the end where it is not."""
    floor = np.full(end.shape, space.lo[2], np.int64)
    stops = [
        b.region for b in space.barriers
        if b.runs[2] and b.kind is not BarrierKind.OUTDOORS and b.id not in terms.ignore and not terms.crosses(b, 2)
    ]  # fmt: skip
    for i, j, hit, low, high in _over_columns([*stops, *boxing], across, half):
        part, top = floor[i, j], end[i, j]
        below = hit & (low < top)
        part[...] = np.where(below, np.maximum(part, np.where(high >= top, top + 1, high)), part)
    return floor


def _crossed_up_to(
    space: FreeSpace, terms: Terms, lowest: int, end: Ints, across: tuple[Ints, Ints], half: Sequence[int]
) -> Ints:  # fmt: skip
    """Count, per column, the members between the lowest coordinate of the grid and the column's end."""
    found = np.zeros(end.shape, np.int64)
    members = [b.region for b in space.barriers if terms.crosses(b, 2) and b.id not in terms.ignore]
    for i, j, hit, low, high in _over_columns(members, across, half):
        found[i, j] += hit & (low < end[i, j]) & (high > lowest)
    return found


def cost_to_leave(
    made: Sequence[Way], found: Rail, shape: tuple[int, int, int], points: Small, sign: int, lag: int, terms: Terms
) -> Costs:
    """Give the least cost of a last run from grid points, `terms.none` where no exit lies straight ahead.

    Parameters
    ----------
    made : sequence of Way
        The ways out along the rail.
    found : Rail
    shape : three int
        The grid's shape.
    points : int32 array
        Flat grid indices.
    lag : int
        Least length of the run.
    """
    best = np.full(len(points), terms.none, terms.costs)
    exits = [_Leave(way, sign, lag, terms) for way in made]
    for start in range(0, len(points) if exits else 0, _AT_ONCE):
        flat, least = points[start : start + _AT_ONCE], best[start : start + _AT_ONCE]
        line, index = split(flat, shape, found.axis)
        for leave in exits:
            leave.apply(least, flat, line, index, found, terms.weight)
    return best


_AT_ONCE = 1 << 14  # points, so that all they need stays in the processor's cache


class _Leave:
    """A way out as arrays over lines: between which coordinates a last run may begin, and what its end costs."""

    def __init__(self, way: Way, sign: int, lag: int, terms: Terms) -> None:
        self.sign = sign
        bounds = way.back.ravel(), (way.end - sign * lag).ravel()
        self.lo, self.hi = bounds if sign > 0 else bounds[::-1]
        self.total = (way.end if way.boxed is None else way.end + way.boxed * np.int64(terms.weight)).ravel()
        self.open = way.allowed.ravel() & (self.lo <= self.hi)

    def apply(self, least: Costs, flat: Small, line: Small, index: Small, found: Rail, weight: int) -> None:
        """Lower the costs of some points, given flat, by line and by index along it."""
        some = np.flatnonzero(self.open[line])
        lines = line[some]
        at = found.place[index[some]]
        inside = (at >= self.lo[lines]) & (at <= self.hi[lines])
        some, lines, at = some[inside], lines[inside], at[inside]
        if found.boxed is not None:
            at = at + found.boxed.ravel()[flat[some]] * np.int64(weight)
        least[some] = np.minimum(least[some], (self.total[lines] - at) * self.sign)
