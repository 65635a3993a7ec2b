"""One warm process that does the newest of the jobs it is given.

Planning is long arithmetic that nothing can interrupt from within, so it runs in a process of its own that may be ended
at any moment without harm: it holds nothing but what it is working on.
"""

from __future__ import annotations

import multiprocessing
import os
import signal
import sys
import threading
import time
from collections.abc import Callable
from contextlib import suppress
from dataclasses import dataclass
from multiprocessing.connection import Connection
from multiprocessing.process import BaseProcess
from typing import Any

from routeviz.errors import RoutevizError

__all__ = ["Bench", "Runner", "Say"]

Say = Callable[[str, Any], None]  # a topic, and what is to be said of it
Bench = Callable[[Any, Say], Any]  # does one job, talks while it goes, gives the result
Told = Callable[[int, str, Any], None]  # number of the job; "done", "stopped", "failed" or a topic; what was said

_LOOK_S = 0.05
_GIVES_WAY = 5  # of 19: how far a process stands back behind others


@dataclass(frozen=True)
class _Wanted:
    number: int
    job: Any


class Runner:
    """Gives jobs to its process one at a time. Among jobs that wait only the newest is done."""

    def __init__(self, make: Callable[[], Bench], told: Told, *, patience_s: float, gives_way: bool = False) -> None:
        """Start a process.

        Parameters
        ----------
        make : callable
            Makes the bench inside the process; a function of a module, so that the process can find it.
        told : callable
            Hears of every job: what it says, then that it is done, stopped or failed. Called in a thread of its own.
        patience_s : float
            How long a job that is no longer wanted may go on before it is ended [s].
        gives_way : bool
            Whether the process stands back where others want the processor, such as the browser that draws an answer.
        """
        self._make, self._told, self._patience, self._gives_way = make, told, patience_s, gives_way
        self._lock = threading.Condition()
        self._next: _Wanted | None = None
        self._stop = self._closed = False
        self._process: BaseProcess | None = None
        self._line: Connection | None = None
        self._thread = threading.Thread(target=self._work, name=f"runner of {make.__name__}", daemon=True)
        self._thread.start()

    def give(self, number: int, job: Any) -> None:
        """Give a job; one that still waits is dropped."""
        with self._lock:
            self._next, self._stop = _Wanted(number, job), False
            self._lock.notify()

    def stop(self) -> None:
        """End the job that is being done, and drop the one that waits."""
        with self._lock:
            self._next, self._stop = None, True
            self._lock.notify()

    def close(self) -> None:
        """End everything."""
        with self._lock:
            self._closed = self._stop = True
            self._lock.notify()
        self._thread.join(timeout=5)

    def _work(self) -> None:
        self._ready()
        while True:
            with self._lock:
                self._lock.wait_for(lambda: self._next is not None or self._closed)
                if self._closed:
                    break
                wanted, self._next, self._stop = self._next, None, False
            if wanted is not None:
                self._do(wanted)
        self._end()

    def _do(self, wanted: _Wanted) -> None:
        line = self._ready()
        begun = time.monotonic()
        try:
            line.send(wanted.job)
            while not line.poll(_LOOK_S):
                with self._lock:
                    late = self._next is not None and time.monotonic() - begun > self._patience
                    if self._stop or late:
                        break
            else:
                if self._listen(wanted, line, begun):
                    return
            self._end()
            self._told(wanted.number, "stopped", None)
        except (EOFError, OSError):
            self._end()
            self._told(wanted.number, "failed", "The planning stopped by itself; change anything and it begins again.")
        if not self._closed:
            self._ready()

    def _listen(self, wanted: _Wanted, line: Connection, begun: float) -> bool:
        """Pass on what the process says; True when it is through, False when it is to be ended."""
        while True:
            if line.poll(_LOOK_S):
                topic, said = line.recv()
                self._told(wanted.number, topic, said)
                if topic in ("done", "failed"):
                    return True
            with self._lock:
                if self._stop or (self._next is not None and time.monotonic() - begun > self._patience):
                    return False

    def _ready(self) -> Connection:
        if self._line is None or self._process is None or not self._process.is_alive():
            self._end()
            context = _context()
            self._line, far = context.Pipe()
            self._process = context.Process(target=_serve, args=(far, self._make, self._gives_way), daemon=True)
            self._process.start()
            far.close()
        return self._line

    def _end(self) -> None:
        if self._process is not None and self._process.is_alive():
            self._process.terminate()
            self._process.join(timeout=2)
            if self._process.is_alive():
                self._process.kill()
                self._process.join(timeout=2)
        if self._line is not None:
            self._line.close()
        self._process = self._line = None


def _context() -> Any:
    """Give the way to start processes: a server that has loaded everything already where there is one."""
    if "forkserver" not in multiprocessing.get_all_start_methods():
        return multiprocessing.get_context("spawn")
    context = multiprocessing.get_context("forkserver")
    context.set_forkserver_preload([*_PRELOADED])
    return context


_PRELOADED: list[str] = []


def preload(*modules: str) -> None:
    """Name the modules that the processes will need, to be loaded once for all of them."""
    _PRELOADED.extend(m for m in modules if m not in _PRELOADED)


def _serve(line: Connection, make: Callable[[], Bench], gives_way: bool) -> None:
    """Do jobs until the line is closed. Ctrl-C is for the program that owns this process."""
    with suppress(ValueError):
        signal.signal(signal.SIGINT, signal.SIG_IGN)
    if gives_way and hasattr(os, "nice"):
        os.nice(_GIVES_WAY)
    bench = make()
    try:
        while True:
            line.send(_outcome(bench, line.recv(), lambda topic, said: line.send((topic, said))))
    except (EOFError, OSError):
        sys.exit(0)


def _outcome(bench: Bench, job: Any, say: Say) -> tuple[str, Any]:
    try:
        return "done", bench(job, say)
    except RoutevizError as fault:
        return "failed", str(fault)
    except OSError:
        raise
    except Exception as fault:
        return "failed", f"a fault of the program itself, not of your numbers ({type(fault).__name__}: {fault})"
