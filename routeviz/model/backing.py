"""Lumber let in between two studs for the screws that would meet none: which marks share a piece, and where it lies."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from routeviz.model.overhead import ceiling_at_in
from routeviz.model.scene import Scene
from routeviz.model.takeoff import Mark

__all__ = ["Backing", "backing_of"]


@dataclass(frozen=True, slots=True)
class Backing:
    """A piece of lumber between two studs [in], its screws in the middle of it, and the marks that it holds."""

    left_in: float
    right_in: float
    height_in: float  # of its middle above the floor
    deep_in: float  # of the lumber, upright on the wall
    opening_in: float  # how high the board is opened for it
    marks: tuple[str, ...]
    at_edges: tuple[str, ...] = ()  # marks at the edge of a stud, which a board across both holds

    @property
    def length_in(self) -> float:
        """Give its length: the clear distance between the studs."""
        return self.right_in - self.left_in

    @property
    def low_in(self) -> float:
        """Give the height of its lower edge."""
        return self.height_in - self.deep_in / 2

    @property
    def high_in(self) -> float:
        """Give the height of its upper edge."""
        return self.height_in + self.deep_in / 2

    @property
    def opened_in(self) -> tuple[float, float]:
        """Give from where to where the board is opened, were there no ceiling."""
        return self.height_in - self.opening_in / 2, self.height_in + self.opening_in / 2

    def meets_ceiling(self, scene: Scene) -> bool:
        """Whether the opening would go past the ceiling over it."""
        return any(self.opened_in[1] > ceiling_at_in(scene, x) for x in (self.left_in, self.right_in))


def backing_of(marks: Sequence[Mark], deep_in: float, edge_in: float) -> tuple[Backing, ...]:
    """Give the pieces for the marks that go into backing, from left to right.

    Screws of one bay at unlike heights share a piece where lumber so deep leaves `edge_in` above and below them.
    """
    bays: dict[tuple[float, float], list[list[Mark]]] = {}
    for mark in sorted((m for m in marks if m.bay_in is not None), key=lambda m: m.height_in):
        rows = bays.setdefault(mark.bay_in or (0.0, 0.0), [])
        if rows and mark.height_in - rows[-1][0].height_in <= deep_in - 2 * edge_in + 1e-9:
            rows[-1].append(mark)
        else:
            rows.append([mark])
    found = [_piece(left, right, row, deep_in) for (left, right), rows in bays.items() for row in rows]
    return tuple(sorted(found, key=lambda b: (b.left_in, b.right_in, -b.height_in)))


def _piece(left_in: float, right_in: float, row: list[Mark], deep_in: float) -> Backing:
    middle = (row[0].height_in + row[-1].height_in) / 2
    held = sorted(row, key=lambda m: m.label)
    edges = tuple(m.label for m in held if m.at_edge_of)
    return Backing(left_in, right_in, middle, deep_in, held[0].opening_in, tuple(m.label for m in held), edges)
