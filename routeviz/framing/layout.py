"""Where repeated members stand: the even or measured layout, with doubled and missing members."""

from __future__ import annotations

import math
from dataclasses import dataclass

from routeviz.model.scene import MemberLayout

__all__ = ["Slot", "slots", "without"]

_TOUCH = 1e-9  # members may touch; a shared face is no overlap


@dataclass(frozen=True, slots=True)
class Slot:
    """One place of a layout: its number counted from 1, its span along the layout and its plies."""

    number: int
    lo: float
    hi: float
    plies: int = 1

    @property
    def centre(self) -> float:
        """Give the centre line."""
        return (self.lo + self.hi) / 2


def slots(layout: MemberLayout, lo: float, hi: float) -> tuple[Slot, ...]:
    """Give the members of a layout that stand wholly between `lo` and `hi` [in from the reference edge].

    The first member is number 1 wherever it stands; members before it exist only if they are measured. Missing
    members keep their number free, so that "joist 5" stays joist 5.
    """
    if layout.at_in:
        centres = list(enumerate(sorted(layout.at_in), 1))
    else:
        if layout.spacing_in <= 0:
            return ()
        count = max(0, math.floor((hi - layout.first_in) / layout.spacing_in + 1e-9) + 1)
        centres = [(n + 1, layout.first_in + n * layout.spacing_in) for n in range(count)]
    found: list[Slot] = []
    for number, centre in centres:
        plies = 2 if number in layout.doubled else 1
        half = layout.width_in * plies / 2
        outside = centre - half < lo - _TOUCH or centre + half > hi + _TOUCH
        overlaps = bool(found) and centre - half < found[-1].hi - _TOUCH
        if number in layout.missing or outside or overlaps:
            continue
        found.append(Slot(number, centre - half, centre + half, plies))
    return tuple(found)


def without(span: tuple[float, float], taken: list[tuple[float, float]]) -> list[tuple[float, float]]:
    """Give what is left of a span after the taken spans are cut out, in order."""
    left, at = [], span[0]
    for lo, hi in sorted(taken):
        if lo > at + _TOUCH and lo < span[1]:
            left.append((at, lo))
        at = max(at, hi)
    if at < span[1] - _TOUCH:
        left.append((at, span[1]))
    return left
