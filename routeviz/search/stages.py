"""How far to look: the small grids first, the dear terms last, and a bound beside every answer.

A hood's routes with at most two elbows lie in two planes through the collar, so they cost next to nothing. Only when
these give no hidden route is the whole space searched, and only then is the open room priced. Beside each exact search
stands a relaxed one (`Terms.relaxed`), which can only be better than the truth: when both agree, the answer is proven;
when even the relaxed one finds nothing, there is nothing.
"""

from __future__ import annotations

from dataclasses import dataclass, field

from routeviz.errors import LimitError
from routeviz.model.freespace import FreeSpace
from routeviz.search.bends import elbow_with_offset
from routeviz.search.coordinates import Ground
from routeviz.search.first import bends_at_all
from routeviz.search.lattice import MOST_EVENTS
from routeviz.search.layers import Layers
from routeviz.search.solve import Cost, Solution, above, prepare, solve_on, solve_straight
from routeviz.search.stepped import least_with_offset, offsets_at_all, straight_with_offset, straight_with_two
from routeviz.search.terms import Terms
from routeviz.search.trace import Trace

__all__ = ["PLANAR", "Found", "Looker"]

PLANAR = 2  # routes with so many elbows lie in a plane through the collar
_FULL = 3  # the default closure
_MOST_WHOLE = 900_000  # elbow places of one hood's whole space; more would take longer than anyone waits


@dataclass(frozen=True)
class Found:
    """A best cost with the field that has it, and the route when it did not come from a field."""

    cost: Cost
    solution: Solution
    made: Trace | None = None

    def route(self) -> Trace | None:
        """Give the route."""
        start = self.solution.grid.space.start.point
        return self.made if self.made is not None else self.solution.route(start, self.cost[1])


def _settled(found: list[Found], bound: Cost | None) -> bool:
    """Tell whether a bound proves what was found, or that there is nothing."""
    return bound is None or (bool(found) and found[0].cost <= bound)


@dataclass
class Looker:
    """Searches one space step by step and keeps what it has computed."""

    space: FreeSpace
    grounds: dict[Terms, Ground] = field(default_factory=dict)
    fields: dict[tuple[Terms, int, int], Solution] = field(default_factory=dict)
    limit: str = ""  # what was not searched for want of room

    def _field(self, terms: Terms, elbows: int, plane: int) -> Solution:
        key = terms, elbows, plane
        if key not in self.fields:
            most = MOST_EVENTS if plane >= 0 else _MOST_WHOLE
            self.fields[key] = solve_on(self.ground(terms), elbows, plane=plane, most=most)
        return self.fields[key]

    def ground(self, terms: Terms) -> Ground:
        """Give what all grids of these terms share."""
        if terms not in self.grounds:
            self.grounds[terms] = prepare(self.space, terms, [self.space.start.point])
        return self.grounds[terms]

    def straight(self) -> Found | None:
        """Give the hidden way without an elbow; nothing is better, and it is found without the larger grids."""
        solution = solve_straight(self.space)
        cost = solution.cost(self.space.start.point, 0)
        return None if cost is None else Found(cost, solution)

    def planar(self, terms: Terms) -> list[Solution]:
        """Give the two fields that hold all routes with at most two elbows."""
        return [self._field(terms, PLANAR, t) for t in range(3) if t != self.space.start.axis]

    def whole(self, terms: Terms, elbows: int) -> Solution:
        """Give the field of the whole space, closed for so many elbows."""
        return self._field(terms, max(elbows, _FULL), -1)

    def costs(self, terms: Terms, elbows: int, at_least: int = 0) -> list[Found]:
        """Give the best cost for each number of elbows from `at_least` to `elbows`, best first."""
        found = []
        for k in range(at_least, elbows + 1):
            fields = self.planar(terms) if k <= PLANAR else [self.whole(terms, elbows)]
            costs = [(cost, n) for n, f in enumerate(fields) if (cost := f.cost(self.space.start.point, k)) is not None]
            if costs:
                cost, n = min(costs)
                found.append(Found(cost, fields[n]))
        return sorted(found, key=lambda f: f.cost)

    def with_offset(self, *, priced: bool) -> list[Found]:
        """Give the best straight way out with one offset."""
        if self.space.limits.elbows < 1 or not self.space.offsets:
            return []
        ground = self.ground(Terms(priced=priced))
        return self._made(straight_with_offset(ground.space, ground.table, priced=priced), priced=priced)

    def _made(self, found: tuple[Cost, Trace] | None, *, priced: bool) -> list[Found]:
        """Give a route that came from no field as something found."""
        return [] if found is None else [Found(found[0], self.planar(Terms(priced=priced))[0], found[1])]

    def with_elbow_and_offset(self) -> list[Found]:
        """Give the best hidden way out of one elbow and one offset."""
        if self.space.limits.elbows < 2 or not self.space.offsets:
            return []
        ground = self.ground(Terms())
        return self._made(elbow_with_offset(ground.space, ground.table), priced=False)

    def with_two_offsets(self, found: list[Found]) -> list[Found]:
        """Give the best hidden straight way out with two offsets in turn, where it beats what was found."""
        if self.space.limits.elbows < 2 or not self.space.offsets:
            return []
        ground = self.ground(Terms())
        beat = (found[0].cost[2],) if found else ()
        return self._made(straight_with_two(ground.space, ground.table, *beat), priced=False)

    def bends(self, *, priced: bool, straight: int = 0) -> bool:
        """Tell whether any elbow, and so much duct behind it, might fit on the first run; a proof where it says no."""
        space = above(self.space, self.space.start.point[2])
        return bends_at_all(space, self.ground(Terms(priced=priced)).table, priced=priced, straight=straight)

    def goes_on(self, *, priced: bool) -> bool:
        """Tell whether a second fitting of any kind might be reached; a proof where it says no."""
        ground, straight = self.ground(Terms(priced=priced)), self.space.limits.between
        return self.bends(priced=priced, straight=straight) or offsets_at_all(
            ground.space, ground.table, priced=priced, straight=straight
        )

    def reaches_further(self, *, priced: bool) -> bool:
        """Tell whether a duct can get as far as a second elbow at all, on relaxed terms."""
        for base in self.planar(Terms(priced=priced, relaxed=True, legs=True)):
            everywhere = Layers(base.grid, base.layers.out, anywhere=True)
            if Solution(base.grid, everywhere, base.launches).cost(self.space.start.point, PLANAR) is not None:
                return True
        return False

    def bound(self, *, priced: bool, elbows: int, sharp: bool = False) -> Cost | None:
        """Give a cost that no route with at most `elbows` elbows can beat; None when there is none at all.

        The sharp bound costs more and is never less.
        """
        relaxed = self.costs(Terms(priced=priced, relaxed=True, legs=sharp), elbows)
        return relaxed[0].cost if relaxed else None

    def exact(self, *, priced: bool, elbows: int, at_least: int, bound: Cost | None) -> list[Found]:
        """Search with boxes round the elbows; where the bound says that more may be had, with true elbows too."""
        found = self.costs(Terms(priced=priced), elbows, at_least)
        if bound is None or at_least > PLANAR or (found and found[0].cost <= bound):
            return found
        return sorted(found + self.costs(Terms(priced=priced, rings=True), elbows, at_least), key=lambda f: f.cost)

    def _or_offset(self, bound: Cost | None) -> Cost | None:
        """Give the bound, or what an offset alone might cost at the least, where that is less."""
        if self.space.limits.elbows < 1 or not self.space.offsets:
            return bound
        ground = self.ground(Terms())
        least = least_with_offset(ground.space, ground.table)
        return min((c for c in (bound, least) if c is not None), default=None)

    def _sharper(self, bound: Cost, *, priced: bool, elbows: int) -> Cost | None:
        """Give the sharp bound, or the one that is there where the sharp one's grid would be too large."""
        try:
            return self.bound(priced=priced, elbows=elbows, sharp=True)
        except LimitError:
            return bound

    def look(self, *, priced: bool) -> tuple[list[Found], Cost | None]:
        """Search on hidden or priced terms, no deeper than needed.

        Returns
        -------
        list of Found
            Best first; empty when nothing was found.
        Cost or None
            The bound that goes with it.
        """
        limit = self.space.limits.elbows
        bends = self.bends(priced=priced)
        if bends or priced:
            plain = self.costs(Terms(priced=priced), min(limit, PLANAR) if bends else 0)
        else:
            plain = [straight] if (straight := self.straight()) is not None else []
        if plain and plain[0].cost[:2] == (0, 0):
            return plain, plain[0].cost  # nothing has less than no elbow and nothing boxed
        bound = self.bound(priced=priced, elbows=min(limit, PLANAR)) if bends else plain[0].cost if plain else None
        if not _settled(plain, bound):
            bound = self.bound(priced=priced, elbows=min(limit, PLANAR), sharp=True)
        found = self.exact(priced=priced, elbows=min(limit, PLANAR), at_least=0, bound=bound) if bends else plain
        found = sorted(found + self.with_offset(priced=priced), key=lambda f: f.cost)
        if not priced and (not found or found[0].cost[1] >= PLANAR):
            found = sorted(found + self.with_elbow_and_offset(), key=lambda f: f.cost)
            found = sorted(found + self.with_two_offsets(found), key=lambda f: f.cost)
        if found and priced:  # a last resort: nothing is added to save some boxing
            return found, bound if limit <= PLANAR and not (self.space.offsets and limit == PLANAR) else None
        if found:
            return found, self._or_offset(bound)
        deep = range(_FULL, limit + 1) if limit >= _FULL and bends and self.reaches_further(priced=priced) else ()
        for depth in deep:
            try:
                bound = self.bound(priced=priced, elbows=depth)
                if bound is not None:
                    found = self.exact(priced=priced, elbows=depth, at_least=depth, bound=bound)
                    if not _settled(found, bound):
                        bound = self._sharper(bound, priced=priced, elbows=depth)
            except LimitError as limit:
                self.limit = str(limit)
                break
            if found:
                break
        return found, bound
