"""The grid with everything marked on it: free runs, room for elbows, boxed lengths, and the lines of events."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
import numpy.typing as npt

from routeviz.model.freespace import Barrier, BarrierKind, FreeSpace, Ints, Region
from routeviz.search.lines import Lines, lines
from routeviz.search.masks import Bools, block_corners, block_runs
from routeviz.search.moves import Body, Moves
from routeviz.search.terms import Terms

__all__ = ["Corners", "Lattice", "Rail", "corners", "lattice", "rail"]

Corners = npt.NDArray[np.uint32]


@dataclass(frozen=True)
class Rail:
    """One kind of run on a grid: its axis, the blocked grid edges, and the boxed length up to each grid point.

    `boxed` has the grid's shape, or is None where nothing is boxed [ticks].
    """

    axis: int
    place: Ints
    blocked: Bools
    boxed: Ints | None

    def cost(self, terms: Terms) -> Ints:
        """Give the cost coordinate: length plus the price of what is boxed."""
        if self.boxed is None:
            return self.place
        shape = [1, 1, 1]
        shape[self.axis] = len(self.place)
        return self.place.reshape(shape) + self.boxed * terms.weight

    def walls(self) -> npt.NDArray[np.int32]:
        """Give, per grid point, how many blocked edges lie before it on its line."""
        shape = list(self.blocked.shape)
        shape[self.axis] += 1
        found = np.zeros(shape, np.int32)
        inner = [slice(None)] * 3
        inner[self.axis] = slice(1, None)
        np.cumsum(self.blocked, axis=self.axis, out=found[tuple(inner)], dtype=np.int32)
        return found


def _stops(barrier: Barrier, axis: int, terms: Terms) -> bool:
    if not barrier.runs[axis] or barrier.id in terms.ignore:
        return False
    return not (terms.relaxed and barrier.region.axis in (0, 1) and axis != 2)


def rail(
    space: FreeSpace, coordinates: Sequence[Ints], axis: int, half: Sequence[int], terms: Terms, *,
    boxing: Sequence[Region] | None = None, outdoors: bool = True,
) -> Rail:  # fmt: skip
    """Mark where a run along `axis` may lie.

    Parameters
    ----------
    space : FreeSpace
    coordinates : three int64 arrays
    axis : int
    half : three int
        Half sizes across the run; 0 along it.
    terms : Terms
    boxing : sequence of Region, optional
        What counts as the open room; the space's own by default.
    outdoors : bool
        Whether the open air stops the run; it does not stop a last run.
    """
    shape = [len(c) for c in coordinates]
    shape[axis] = max(shape[axis] - 1, 0)
    blocked = np.zeros(shape, bool)
    for barrier in space.barriers:
        if _stops(barrier, axis, terms) and (outdoors or barrier.kind is not BarrierKind.OUTDOORS):
            block_runs(blocked, coordinates, axis, half, barrier.region)
    regions = space.boxing if boxing is None else boxing
    if not regions or not terms.priced:
        for region in regions:
            block_runs(blocked, coordinates, axis, half, region)
        return Rail(axis, coordinates[axis], blocked, None)
    touched = np.zeros(shape, bool)
    for region in regions:
        block_runs(touched, coordinates, axis, half, region)
    full = [len(c) for c in coordinates]
    boxed = np.zeros(full, np.int64)
    steps = [1, 1, 1]
    steps[axis] = shape[axis]
    inner = [slice(None)] * 3
    inner[axis] = slice(1, None)
    np.cumsum(touched * np.diff(coordinates[axis]).reshape(steps), axis=axis, out=boxed[tuple(inner)])
    return Rail(axis, coordinates[axis], blocked, boxed)


def corners(
    space: FreeSpace, coordinates: Sequence[Ints], bodies: Sequence[Body], terms: Terms, *, boxing: bool = True
) -> Corners:
    """Mark, per grid point, which elbow bodies have no room there (bit = number of the body).

    In the open room an elbow has no room unless boxing is priced; then it has, where its own straight halves lie in
    the open room too, so that no elbow peeps out of a hidden place for free.
    """
    bits = np.zeros([len(c) for c in coordinates], np.uint32)
    for barrier in space.barriers:
        if barrier.id in terms.ignore or (terms.relaxed and barrier.region.axis in (0, 1)):
            continue
        for number, body in enumerate(bodies):
            block_corners(bits, coordinates, body, number, barrier.region)
    if not boxing or not space.boxing:
        return bits
    touched = np.zeros_like(bits)
    for region in space.boxing:
        for number, body in enumerate(bodies):
            block_corners(touched, coordinates, body, number, region)
    if terms.priced:
        inside = np.zeros_like(bits)
        for region in space.boxing:
            for number, body in enumerate(bodies):
                block_corners(inside, coordinates, _core(body), number, region)
        touched &= ~inside
    return bits | touched


def _core(body: Body) -> Body:
    """Give the part of an elbow's body that its two tubes share: the smaller extent on both sides."""
    x, y, z = ((-min(-lo, hi), min(-lo, hi)) for lo, hi in body)
    return x, y, z


@dataclass(frozen=True)
class Lattice:
    """A marked grid.

    `alive` numbers the events: flat grid indices of the points where an elbow has room. `number` is the inverse,
    -1 elsewhere. `bits` are the bodies without room at each event. `rails` and `tracks` go with the states.
    """

    space: FreeSpace
    table: Moves
    terms: Terms
    coordinates: tuple[Ints, Ints, Ints]
    alive: Ints
    number: npt.NDArray[np.int32]
    bits: Corners
    rails: tuple[Rail, ...]
    tracks: tuple[Lines, ...]

    @property
    def shape(self) -> tuple[int, int, int]:
        """Give the grid's shape."""
        a, b, c = (len(x) for x in self.coordinates)
        return a, b, c

    def point(self, event: int) -> tuple[int, int, int]:
        """Give an event's grid indices."""
        a, b, c = np.unravel_index(int(self.alive[event]), self.shape)
        return int(a), int(b), int(c)


def lattice(space: FreeSpace, table: Moves, coordinates: tuple[Ints, Ints, Ints], terms: Terms) -> Lattice:
    """Mark the grid for one section and one set of terms."""
    bodies = table.tubes if terms.relaxed else table.bodies
    bits = corners(space, coordinates, bodies, terms)
    nothing = np.uint32((1 << len(bodies)) - 1)
    events = bits != nothing
    alive = np.flatnonzero(events)
    number = np.full(bits.shape, -1, np.int32)
    number.ravel()[alive] = np.arange(len(alive), dtype=np.int32)
    made: dict[tuple[int, tuple[int, int, int]], tuple[Rail, Lines]] = {}
    rails, tracks = [], []
    for state in table.states:
        key = state.axis, table.half(state)
        if key not in made:
            found = rail(space, coordinates, state.axis, key[1], terms)
            track = lines(
                state.axis, coordinates[state.axis], found.blocked, found.cost(terms), events, number, terms.limit
            )
            made[key] = found, track
        rails.append(made[key][0])
        tracks.append(made[key][1])
    return Lattice(
        space, table, terms, coordinates, alive, number, bits.ravel()[alive], tuple(rails), tuple(tracks)
    )
