"""Flat decompositions: a rectangle with rectangular holes as few large rectangles."""

from __future__ import annotations

import itertools
from dataclasses import dataclass

from routeviz.framing.layout import without

__all__ = ["Rect", "pieces"]


@dataclass(frozen=True, slots=True)
class Rect:
    """A rectangle in two measures: along and up [in]."""

    s0: float
    s1: float
    z0: float
    z1: float

    def overlaps(self, other: Rect) -> bool:
        """Whether two rectangles share area (touching is no overlap)."""
        gap = 1e-9
        return (
            self.s0 < other.s1 - gap and other.s0 < self.s1 - gap
            and self.z0 < other.z1 - gap and other.z0 < self.z1 - gap
        )  # fmt: skip


def pieces(sheet: Rect, holes: list[Rect]) -> list[Rect]:
    """Cut holes out of a sheet and give the rest as rectangles: full-height strips beside holes, parts above and below.

    The pieces touch but never overlap; neighbours with the same heights are one piece.
    """
    inside = [h for h in holes if h.overlaps(sheet)]
    edges = sorted({sheet.s0, sheet.s1, *(min(max(e, sheet.s0), sheet.s1) for h in inside for e in (h.s0, h.s1))})
    strips: list[tuple[float, float, list[tuple[float, float]]]] = []
    for a, b in itertools.pairwise(edges):
        if b - a < 1e-9:
            continue
        middle = (a + b) / 2
        taken = [(h.z0, h.z1) for h in inside if h.s0 < middle < h.s1]
        heights = without((sheet.z0, sheet.z1), taken)
        if strips and strips[-1][2] == heights:
            strips[-1] = (strips[-1][0], b, heights)
        else:
            strips.append((a, b, heights))
    return [Rect(a, b, lo, hi) for a, b, heights in strips for lo, hi in heights]
