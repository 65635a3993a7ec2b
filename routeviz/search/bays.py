"""Which named hidden places a run lies in, in order."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field

import numpy as np

from routeviz.model.freespace import FreeSpace, Ints, Ticks

__all__ = ["Bays", "Pieces"]

Names = tuple[str, ...]


@dataclass(frozen=True, eq=False)
class Pieces:
    """A line cut where its place changes: `names[n]` lies between `cuts[n]` and `cuts[n + 1]`, "" where none is named."""

    cuts: Ints
    names: Names

    def each(self, begins: Ints, ends: Ints, sign: int) -> list[tuple[int, int]]:
        """Give, for many straights in one direction, the numbers of the first and the last piece that they pass."""
        if sign > 0:
            near, far = np.searchsorted(self.cuts, begins, "right"), np.searchsorted(self.cuts, ends)
        else:
            near, far = np.searchsorted(self.cuts, begins), np.searchsorted(self.cuts, ends, "right")
        return list(zip((near - 1).tolist(), (far - 1).tolist(), strict=True))

    def passed(self, near: int, far: int, sign: int) -> Names:
        """Name what lies from one piece to another, in the order it is passed, no name twice in a row."""
        found: list[str] = []
        for n in range(near, far + sign, sign):
            name = self.names[n] if 0 <= n < len(self.names) else ""
            if name and (not found or found[-1] != name):
                found.append(name)
        return tuple(found)


@dataclass
class Bays:
    """The named hidden places of a space; later ones overrule earlier ones."""

    names: Names
    lo: Ints  # of shape (count, 3)
    hi: Ints
    _known: dict[tuple[int, int, int], Pieces] = field(default_factory=dict, repr=False)
    _codes: dict[Names, int] = field(default_factory=dict, repr=False)
    _spans: dict[tuple[Pieces, int, int, int], int] = field(default_factory=dict, repr=False)

    @staticmethod
    def of(space: FreeSpace) -> Bays:
        """Give a space's bays."""
        lo = np.array([r.lo for _, r in space.bays], np.int64).reshape(-1, 3)
        hi = np.array([r.hi for _, r in space.bays], np.int64).reshape(-1, 3)
        return Bays(tuple(name for name, _ in space.bays), lo, hi)

    def line(self, axis: int, point: Sequence[int]) -> Pieces:
        """Cut the line along `axis` through a point where its place changes; remembered."""
        u, v = (t for t in range(3) if t != axis)
        key = axis, point[u], point[v]
        if key not in self._known:
            on = np.ones(len(self.names), bool)
            for t in (u, v):
                on &= (self.lo[:, t] <= point[t]) & (point[t] <= self.hi[:, t])
            which = np.flatnonzero(on)
            low, high = self.lo[which, axis], self.hi[which, axis]
            cuts = np.unique(np.concatenate([low, high]))
            names = [""] * max(len(cuts) - 1, 0)
            spans = np.searchsorted(cuts, low).tolist(), np.searchsorted(cuts, high).tolist()
            for n, first, last in zip(which.tolist(), *spans, strict=True):
                names[first:last] = [self.names[n]] * (last - first)
            self._known[key] = Pieces(cuts, tuple(names))
        return self._known[key]

    def run(self, a: Ticks, b: Ticks) -> Names:
        """Name the places that a straight passes; a diagonal counts as the longer of its two steps."""
        axis = max(range(3), key=lambda t: abs(a[t] - b[t]))
        sign = 1 if b[axis] >= a[axis] else -1
        return self.named(int(self.codes(axis, a, np.array([a[axis]]), np.array([b[axis]]), sign)[0]))

    def codes(self, axis: int, point: Sequence[int], begins: Ints, ends: Ints, sign: int) -> Ints:
        """Give a number per straight on the line along `axis` through a point; the same number, the same places."""
        pieces = self.line(axis, point)
        found = []
        for near, far in pieces.each(begins, ends, sign):
            key = pieces, near, far, sign
            if key not in self._spans:
                self._spans[key] = self._codes.setdefault(pieces.passed(near, far, sign), len(self._codes))
            found.append(self._spans[key])
        return np.array(found, np.int64)

    def named(self, code: int) -> Names:
        """Give the places that a number stands for."""
        return list(self._codes)[code]

    def edges(self, axis: int) -> Iterator[int]:
        """Give the last coordinates on both sides of every place's two ends along an axis."""
        for v in np.unique(np.concatenate([self.lo[:, axis], self.hi[:, axis]])).tolist():
            yield from (v - 1, v, v + 1)
