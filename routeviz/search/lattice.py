"""The grid with everything marked on it: free runs, room for elbows, boxed lengths, and the lines of events."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field
from functools import cached_property

import numpy as np

from routeviz.errors import LimitError
from routeviz.model.freespace import Barrier, BarrierKind, FreeSpace, Ints, Region
from routeviz.search.lines import Lines, lines
from routeviz.search.masks import Bools, Corners, Small, add_up, block_corners, block_runs, count_runs
from routeviz.search.moves import Body, Moves
from routeviz.search.slabs import Slabs, slabs
from routeviz.search.terms import Terms
from routeviz.search.torus import drop_free_corners

MOST_EVENTS = 3_200_000  # elbow places; about 700 MB at the peak

_SCARCE = 12  # where no more than one grid point in so many is an event, events are sorted into lines
Track = Lines | Slabs

__all__ = ["MOST_EVENTS", "Lattice", "Rail", "Track", "corners", "lattice", "rail"]


@dataclass(frozen=True)
class Rail:
    """One kind of run on a grid: its axis, the blocked grid edges, and the boxed length up to each grid point.

    `boxed` has the grid's shape, or is None where nothing is boxed [ticks]. On crossing terms it counts the members
    that begin on the way there.
    """

    axis: int
    place: Ints
    blocked: Bools
    boxed: Small | None


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
    stops = [
        b.region for b in space.barriers
        if _stops(b, axis, terms) and not terms.crosses(b, axis) and (outdoors or b.kind is not BarrierKind.OUTDOORS)
    ]  # fmt: skip
    regions = list(space.boxing if boxing is None else boxing)
    if terms.crossing:
        members = [b.region for b in space.barriers if terms.crosses(b, axis) and _stops(b, axis, terms)]
        return Rail(axis, coordinates[axis], block_runs(coordinates, axis, half, stops + regions),
                    count_runs(coordinates, axis, half, members))  # fmt: skip
    if not regions or not terms.priced:
        return Rail(axis, coordinates[axis], block_runs(coordinates, axis, half, stops + regions), None)
    touched = block_runs(coordinates, axis, half, regions)
    boxed = np.zeros([len(c) for c in coordinates], np.int32)
    steps = [1, 1, 1]
    steps[axis] = touched.shape[axis]
    inner = [slice(None)] * 3
    inner[axis] = slice(1, None)
    widths = np.diff(coordinates[axis]).astype(np.int32)
    boxed[tuple(inner)] = touched * widths.reshape(steps)
    add_up(boxed, axis)
    return Rail(axis, coordinates[axis], block_runs(coordinates, axis, half, stops), boxed)


def corners(
    space: FreeSpace, coordinates: Sequence[Ints], table: Moves, terms: Terms, *, boxing: bool = True
) -> Corners:
    """Mark, per grid point, which elbow bodies have no room there (bit = number of the body).

    In the open room an elbow has no room unless boxing is priced; then it has, where its own straight halves lie in
    the open room too, so that no elbow peeps out of a hidden place for free.
    """
    bodies, *legs = table.parts(relaxed=terms.relaxed, legs=terms.legs)
    stops = [
        b.region for b in space.barriers
        if b.id not in terms.ignore and not (terms.relaxed and b.region.axis in (0, 1))
    ]  # fmt: skip
    room = list(space.boxing) if boxing else []
    if room and not terms.priced:
        stops += room
    bits = block_corners(coordinates, bodies, stops)
    for part in legs:
        bits |= block_corners(coordinates, part, stops)
    section = space.section
    if terms.rings and section.size.is_round and not terms.relaxed:
        tubes = block_corners(coordinates, table.tubes, stops)
        drop_free_corners(bits, tubes, coordinates, bodies, section.radius_high, section.half_high, stops)
    if room and terms.priced:
        peeping = block_corners(coordinates, bodies, room)
        peeping &= ~block_corners(coordinates, [_core(body) for body in bodies], room)
        bits |= peeping
    return bits


def _core(body: Body) -> Body:
    """Give the part of an elbow's body that its two tubes share: the smaller extent on both sides."""
    x, y, z = ((-min(-lo, hi), min(-lo, hi)) for lo, hi in body)
    return x, y, z


@dataclass(frozen=True)
class Lattice:
    """A marked grid.

    `alive` numbers the events: flat grid indices of the points where an elbow has room. `events` marks them, `number`
    is the inverse, -1 elsewhere. `bits` tells, per event, which elbow bodies have no room. `rails` go with the states.
    `flat` is the axis along which elbows share a collar's coordinate, -1 where they need not.
    """

    space: FreeSpace
    table: Moves
    terms: Terms
    coordinates: tuple[Ints, Ints, Ints]
    alive: Small
    events: Bools
    number: Small
    bits: Small
    rails: tuple[Rail, ...]
    flat: int
    _tracks: dict[tuple[int, tuple[int, int, int]], Track] = field(default_factory=dict, repr=False)

    @property
    def shape(self) -> tuple[int, int, int]:
        """Give the grid's shape."""
        a, b, c = (len(x) for x in self.coordinates)
        return a, b, c

    def point(self, event: int) -> tuple[int, int, int]:
        """Give an event's grid indices."""
        a, b, c = np.unravel_index(int(self.alive[event]), self.shape)
        return int(a), int(b), int(c)

    def fits(self, body: int, event: int) -> bool:
        """Tell whether an elbow's body has room at an event."""
        return not int(self.bits[event]) >> body & 1

    @cached_property
    def barred(self) -> int:
        """Give the bits of the bodies that lack room at some event; the others fit at all of them."""
        return int(np.bitwise_or.reduce(self.bits, initial=0))

    def track(self, number: int) -> Track:
        """Give the events ready to be scanned for the runs of a state; made when first asked for."""
        state, found = self.table.states[number], self.rails[number]
        key = state.axis, self.table.half(state)
        if key not in self._tracks:
            kinds = range(len(self.table.take_off))
            wanted = [(sign, self.table.lag(a, b)) for sign in (1, -1) for a in kinds for b in kinds]
            if self.terms.dear or len(self.alive) * _SCARCE <= self.number.size:
                self._tracks[key] = lines(
                    state.axis, found.place, found.blocked, found.boxed, self.events, self.number, self.terms, wanted
                )
            else:
                self._tracks[key] = slabs(
                    state.axis, found.place, found.blocked, self.alive, self.number, self.terms, wanted, self._work
                )
        return self._tracks[key]

    @cached_property
    def _work(self) -> Small:
        """Room for one scan, shared by all tracks."""
        return np.empty(self.number.size + 1, np.int32)


def lattice(
    space: FreeSpace, table: Moves, coordinates: tuple[Ints, Ints, Ints], terms: Terms,
    plane: tuple[int, Ints] | None = None,
    most: int = MOST_EVENTS,
) -> Lattice:  # fmt: skip
    """Mark the grid for one section and one set of terms.

    With `plane`, elbows may sit only at these coordinates along that axis. More than `most` places where an elbow
    could sit raise a LimitError.
    """
    nothing = (1 << len(table.bodies)) - 1
    if plane is None:
        bits = corners(space, coordinates, table, terms)
    else:
        part, here = list(coordinates), [slice(None)] * 3
        part[plane[0]] = plane[1]
        here[plane[0]] = np.searchsorted(coordinates[plane[0]], plane[1])  # type: ignore[call-overload]
        inside = corners(space, part, table, terms)
        bits = np.full([len(c) for c in coordinates], nothing, inside.dtype)
        bits[tuple(here)] = inside
    events = bits != nothing
    count = int(np.count_nonzero(events))
    if count > most:
        raise LimitError(
            f"An elbow could sit at {count / 1e6:.1f} million places, more than {most / 1e6:.1f} million. "
            "Allow fewer elbows, or take out solids that are far from any route"
        )
    alive = np.flatnonzero(events).astype(np.int32)
    number = np.full(bits.shape, -1, np.int32)
    number.ravel()[alive] = np.arange(len(alive), dtype=np.int32)
    made: dict[tuple[int, tuple[int, int, int]], Rail] = {}
    for state in table.states:
        key = state.axis, table.half(state)
        if key not in made:
            made[key] = rail(space, coordinates, state.axis, key[1], terms)
    return Lattice(
        space, table, terms, coordinates, alive, events, number, bits.ravel()[alive].astype(np.int32),
        tuple(made[state.axis, table.half(state)] for state in table.states), -1 if plane is None else plane[0],
    )  # fmt: skip
