"""On what terms a field is computed."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
import numpy.typing as npt

from routeviz.model.freespace import Barrier

__all__ = ["Costs", "Terms"]

Costs = npt.NDArray[np.int64 | np.int32]


@dataclass(frozen=True)
class Terms:
    """What counts as in the way, and what is only dear.

    `priced`: runs in the open room are allowed at a price that outweighs every length; else they are blocked.
    `relaxed`: a lower bound: elbows take only the room of their straight halves, and sloped prisms stop no level run
    and no elbow. (Rounded corners of keep-outs stay exact: straight above or beside a collar their edge is a grid
    coordinate, elsewhere a route could gain a fraction of an inch there at most.)
    `legs`: with `relaxed`, elbows take the room of what is surely inside their two ends too: a sharper bound on a
    larger grid.
    `rings`: round elbows take the room of their true shape, not of the box round it.
    `crossing`: a run may cross framing members as if they were cut, at a price a member that outweighs every length;
    elbows may not sit in one, and the open room stays closed.
    `ignore`: ids of solids that count as not there.
    """

    priced: bool = False
    relaxed: bool = False
    legs: bool = False
    rings: bool = False
    crossing: bool = False
    ignore: frozenset[str] = frozenset()
    weight: int = 1 << 27  # a boxed tick, or a member crossed, costs as much as this many ticks of length

    @property
    def dear(self) -> bool:
        """Whether anything but length has a price."""
        return self.priced or self.crossing

    @property
    def limit(self) -> int:
        """Larger than any cost of a route."""
        return 1 << 52 if self.dear else 1 << 28

    @property
    def none(self) -> int:
        """The cost of no way; twice this still fits."""
        return 1 << 61 if self.dear else 1 << 29

    @property
    def costs(self) -> type[np.int64 | np.int32]:
        """The type that holds costs: lengths alone fit into half the memory."""
        return np.int64 if self.dear else np.int32

    def crosses(self, barrier: Barrier, axis: int) -> bool:
        """Tell whether a run along `axis` may cross this member at a price."""
        return self.crossing and barrier.across[axis]
