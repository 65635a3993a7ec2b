"""Run one thing in a process of its own and tell how long it took and how much memory the process held at its peak."""

from __future__ import annotations

import sys
import time
from collections.abc import Callable
from concurrent.futures import ProcessPoolExecutor
from dataclasses import dataclass
from multiprocessing import get_context
from pathlib import Path
from typing import Any

__all__ = ["Measured", "apart", "fastest", "peak_megabytes"]


@dataclass(frozen=True)
class Measured:
    """An answer, the least wall-clock time it took [s], and the peak memory of its process [MB]."""

    answer: Any
    seconds: float
    megabytes: float


def peak_megabytes() -> float:
    """Give the most memory that this process has held since its program began."""
    status = Path("/proc/self/status")  # what resource.getrusage tells includes the process it was forked from
    if status.exists():
        return int(status.read_text().split("VmHWM:")[1].split()[0]) / 1024
    import resource

    return resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / (1024**2 if sys.platform == "darwin" else 1024)


def fastest(times: int, run: Callable[..., Any], *arguments: Any) -> Measured:
    """Run something several times here and keep the fastest."""
    best = float("inf")
    for _ in range(times):
        began = time.perf_counter()
        answer = run(*arguments)
        best = min(best, time.perf_counter() - began)
    return Measured(answer, best, peak_megabytes())


def apart(times: int, run: Callable[..., Any], *arguments: Any) -> Measured:
    """Do the same in a new process, so that its peak memory is its own."""
    with ProcessPoolExecutor(1, mp_context=get_context("spawn")) as pool:
        return pool.submit(fastest, times, run, *arguments).result()
