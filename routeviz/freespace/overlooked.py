"""Where a cap on a sloped roof is too near a thing that the roof overlooks, such as a window under the eave.

On a slope the height over the thing is another one at every place, so what is kept clear is no rectangle with rounded
corners. It is covered by level bands, each as long as its worst place asks for: never less than what is wanted, and
more by no more than a band is deep. Where a straight way up would leave, a band of no depth keeps it exact.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Iterator
from itertools import pairwise

from routeviz.freespace.barriers import down, up
from routeviz.model.freespace import KeepClear
from routeviz.model.solids import ExitFace, KeepOut
from routeviz.units import TICKS_PER_IN

__all__ = ["overlooked"]

_BAND_IN, _MOST_BANDS = 2.0, 12
_HALVINGS = 60
_SEAM = 2  # ticks between the exact band and the next ones; its own reach covers them


def overlooked(
    keep: KeepOut, face: ExitFace, half_in: float, stub_in: float, lo: tuple[int, int], hi: tuple[int, int], line: int
) -> Iterator[KeepClear]:
    """Give what is kept clear round a thing that has heights of its own.

    Parameters
    ----------
    keep : KeepOut
        The thing.
    face : ExitFace
        The roof.
    half_in, stub_in : float
        Half the opening, and how high it stands over the roof [in].
    lo, hi : tuple of int
        Between which places the opening's centre may be at all [ticks].
    line : int
        The y at which a straight way up would leave [ticks].
    """
    far = keep.distance_in + half_in
    first, last = max(lo[1], down(keep.lo[1] - far)), min(hi[1], up(keep.hi[1] + far))
    if keep.distance_in <= 0 or first > last:
        return
    count = min(_MOST_BANDS, max(1, math.ceil((last - first) / TICKS_PER_IN / _BAND_IN)))
    cuts = [first + (last - first) * n // count for n in range(count + 1)]
    bands = [(a, b, 1) for a, b in pairwise(sorted({*cuts, line} if first <= line <= last else cuts))]
    if first <= line <= last:
        bands = [(a + _SEAM * (a == line), b - _SEAM * (b == line), reach) for a, b, reach in bands]
        bands = [*(band for band in bands if band[0] <= band[1]), (line, line, _SEAM)]
    for low, high, reach in bands:
        if _excused(keep, face, stub_in, (lo[0], hi[0]), (low, high)):
            continue
        span = _below(_gap(keep, face, half_in, stub_in, low, high), keep.distance_in, lo[0], hi[0])
        if span is not None:
            yield KeepClear(keep.id, keep.label, (span[0], low), (span[1], high), reach, 0)


def _excused(
    keep: KeepOut, face: ExitFace, stub_in: float, across: tuple[int, int], band: tuple[int, int]
) -> bool:  # fmt: skip
    """Tell whether all of a band lies so far over the thing that its distance does not matter."""
    if keep.above_in is None or keep.heights_in is None:
        return False
    height, *slopes = face.plane
    least = sum(
        min(slope * end / TICKS_PER_IN for end in ends) for slope, ends in zip(slopes, (across, band), strict=True)
    )
    return height + stub_in + least >= keep.heights_in[1] + keep.above_in


def _gap(
    keep: KeepOut, face: ExitFace, half_in: float, stub_in: float, low: int, high: int
) -> Callable[[float], float]:
    """Give the least distance from the opening to the thing over a band, by the place along x [in]; it is convex."""
    y0, y1 = low / TICKS_PER_IN, high / TICKS_PER_IN
    beside = max(keep.lo[1] - y1, y0 - keep.hi[1], 0.0)
    bottom, top = keep.heights_in or (0.0, 0.0)
    height, along, across = face.plane
    ends = sorted((across * y0, across * y1))

    def gap(x: float) -> float:
        flat = max(math.hypot(max(keep.lo[0] - x, x - keep.hi[0], 0.0), beside) - half_in, 0.0)
        z = height + stub_in + along * x
        return math.hypot(flat, max(z + ends[0] - top, bottom - z - ends[1], 0.0))

    return gap


def _below(gap: Callable[[float], float], wanted: float, lo: int, hi: int) -> tuple[int, int] | None:
    """Give the ends between which a convex gap is less than what is wanted [ticks], rounded outwards."""
    a, b = lo / TICKS_PER_IN, hi / TICKS_PER_IN
    low, high = a, b
    for _ in range(_HALVINGS):
        third = (high - low) / 3
        if gap(low + third) <= gap(high - third):
            high -= third
        else:
            low += third
    least = (low + high) / 2
    if gap(least) >= wanted:
        return None
    return down(_edge(gap, wanted, least, a)), up(_edge(gap, wanted, least, b))


def _edge(gap: Callable[[float], float], wanted: float, inside: float, end: float) -> float:
    """Give the place towards an end where what is wanted is reached, on the far side of it; the end if it never is."""
    if gap(end) < wanted:
        return end
    for _ in range(_HALVINGS):
        middle = (inside + end) / 2
        if gap(middle) < wanted:
            inside = middle
        else:
            end = middle
    return end
