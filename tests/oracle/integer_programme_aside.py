"""The integer programme in a process of its own.

Its solver and the one that centres routes each bring their own build of one and the same library, and whichever is
loaded second finds the other's. So this process never loads the first.
"""

from __future__ import annotations

import functools
import multiprocessing
from concurrent.futures import ProcessPoolExecutor

from routeviz.model.freespace import FreeSpace, Ticks

__all__ = ["least_length"]


@functools.cache
def _worker() -> ProcessPoolExecutor:
    return ProcessPoolExecutor(1, mp_context=multiprocessing.get_context("spawn"))


def _solved(space: FreeSpace, collar: Ticks, elbows: int) -> int | None:
    from oracle.integer_programme import least_length as solve

    return solve(space, collar, elbows)


def least_length(space: FreeSpace, collar: Ticks, elbows: int) -> int | None:
    """Give the least length of a route with exactly so many elbows, or None where there is provably none."""
    return _worker().submit(_solved, space, collar, elbows).result()
