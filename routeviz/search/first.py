"""Whether a first elbow fits anywhere on the first run: where none does, no number of elbows leads out.

With a straight run asked for behind it the same says whether a second fitting can be reached.

The first elbow's place is one number, so that even a sloped rafter forbids an exact interval of it. The elbow takes
only what is surely inside its true shape (its straight halves and its two ends, `Moves.tubes` and `legs`), so that
"nowhere" is a proof.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from routeviz.model.freespace import FreeSpace, Region
from routeviz.search.extent import along_range
from routeviz.search.moves import Body, Moves, State, Turn, lying
from routeviz.search.offsets import gaps

__all__ = ["bends_at_all"]

_FAR = 1 << 60


def bends_at_all(space: FreeSpace, table: Moves, *, priced: bool, straight: int = 0) -> bool:
    """Tell whether any elbow might have room on the first run.

    Parameters
    ----------
    space : FreeSpace
    table : Moves
    priced : bool
        Whether the open room may be used at a price.
    straight : int
        How much straight duct must have room behind the elbow [ticks].
    """
    starts = set(lying(space, table))
    return any(
        _fits(space, table, table.states[turn.source], turn, room=room, straight=straight)
        for turn in table.turns if table.states[turn.source] in starts
        for room in ({False, not priced} if _hides(space, table, turn) else {not priced})
    )  # fmt: skip


def _hides(space: FreeSpace, table: Moves, turn: Turn) -> bool:
    """Tell whether the cover hides this elbow: the one that turns straight back."""
    return space.start.covered and space.start.axis == 2 and table.states[turn.target][:2] == (1, 1)


def _fits(space: FreeSpace, table: Moves, state: State, turn: Turn, *, room: bool, straight: int) -> bool:
    """Tell whether one elbow and so much duct behind it might have room; `room` says that the open room is in the way."""
    axis, sign, start = state.axis, state.sign, space.start.point
    half = table.half(state)
    run: Body = ((-half[0], half[0]), (-half[1], half[1]), (-half[2], half[2]))
    stops = [b.region for b in space.barriers if b.runs[axis]]
    stops += [] if space.start.covered or not room else list(space.boxing)
    ahead = [
        span for span in _extents(space, stops, axis, run) if (span[1] if sign > 0 else -span[0]) > start[axis] * sign
    ]
    most = min(((low if sign > 0 else -high) for low, high in ahead), default=_FAR) * sign
    end = min(most, space.hi[axis]) if sign > 0 else max(most, space.lo[axis])
    least = start[axis] + sign * (space.limits.first + table.take_off[turn.kind])
    if (end - least) * sign < 0:
        return False
    low, high = sorted((least, end))
    everything = [b.region for b in space.barriers] + (list(space.boxing) if room else [])
    forbidden = [
        (a - part[axis][1], b - part[axis][0])
        for part in (table.tubes[turn.body], table.legs[0][turn.body], table.legs[1][turn.body])
        for a, b in _extents(space, everything, axis, part)
    ]  # fmt: skip
    if straight:
        target, begin = table.states[turn.target], table.take_off[turn.kind]
        behind = [(-h, h) for h in table.half(target)]
        behind[target.axis] = (begin, begin + straight) if target.sign > 0 else (-begin - straight, -begin)
        part = behind[0], behind[1], behind[2]
        stops = [b.region for b in space.barriers if b.runs[target.axis]] + (list(space.boxing) if room else [])
        forbidden += [(a - part[axis][1], b - part[axis][0]) for a, b in _extents(space, stops, axis, part)]
    return next(gaps(low, high, [f for f in forbidden if f[0] < f[1]]), None) is not None


def _extents(space: FreeSpace, regions: Sequence[Region], axis: int, part: Body) -> Iterator[tuple[int, int]]:
    """Give what regions take of the first run's axis where a body passes them, slopes rounded inwards."""
    lo = [v + p[0] for v, p in zip(space.start.point, part, strict=True)]
    hi = [v + p[1] for v, p in zip(space.start.point, part, strict=True)]
    sides = [t for t in range(3) if t != axis]
    for region in regions:
        if any(region.lo[t] >= hi[t] or region.hi[t] <= lo[t] for t in sides):
            continue
        if region.axis < 0:
            yield region.lo[axis], region.hi[axis]
        elif region.axis != axis:
            low, high, there = along_range(region, axis, lo, hi)
            if there and low + 1 < high - 1:
                yield low + 1, high - 1
