"""Ctrl-C that is always heard, and what it must not leave behind.

An interrupt is raised wherever the program happens to be. Some of those places swallow it: a library that tries an import
and goes on when it fails, a callback out of compiled code, the end of an object. So the signal is also written down, asked
for again where the interpreter says that it dropped one, and looked up between the parts of a long work.
"""

from __future__ import annotations

import _thread
import atexit
import shutil
import signal
import sys
import tempfile
import threading
from collections.abc import Iterator
from contextlib import contextmanager, suppress
from dataclasses import dataclass, field
from pathlib import Path
from types import FrameType

__all__ = ["check", "heard", "held", "made_folder", "scratch", "was_stopped"]


@dataclass(slots=True)
class _State:
    """What the signal's handler must know."""

    asked: bool = False
    closing: bool = False  # what was begun is being taken away: not the moment to stop again
    holding: int = 0  # blocks that hold it back
    scrap: list[Path] = field(default_factory=list)  # folders that go away with all that is in them
    folders: list[Path] = field(default_factory=list)  # folders made for the work; they go if nothing came into them


_STATE = _State()


def _stop(_number: int, _frame: FrameType | None) -> None:
    _STATE.asked = True
    if not (_STATE.closing or _STATE.holding):
        raise KeyboardInterrupt


@contextmanager
def heard() -> Iterator[None]:
    """Hear every Ctrl-C until the end of the block, and then take away what was begun.

    Where the program does not take Ctrl-C in the usual way (a thread, a run in the background), nothing changes but that
    what was begun is taken away.
    """
    usual = (
        threading.current_thread() is threading.main_thread()
        and signal.getsignal(signal.SIGINT) is signal.default_int_handler
    )
    dropped = sys.unraisablehook

    def again(what: sys.UnraisableHookArgs) -> None:
        if issubclass(what.exc_type, KeyboardInterrupt):
            _thread.interrupt_main()  # it was dropped; raise it once more where it can be caught
        else:
            dropped(what)

    _STATE.asked = _STATE.closing = False
    _STATE.holding = 0
    if usual:
        sys.unraisablehook = again
        signal.signal(signal.SIGINT, _stop)
    try:
        yield
    finally:
        _STATE.closing = True  # no call before this: the handler may run at any call
        _tidy()
        if usual:
            atexit.unregister(_leave)  # once, however many commands ran
            atexit.register(_leave)
            signal.signal(signal.SIGINT, signal.default_int_handler)
            sys.unraisablehook = dropped
            exec("")  # clears the interpreter's note of an interrupt, or it would end itself by the signal


def check() -> None:
    """Stop here if Ctrl-C was asked for and something on the way swallowed it.

    Raises
    ------
    KeyboardInterrupt
        If so.
    """
    if _STATE.asked and not _STATE.closing:
        raise KeyboardInterrupt


def was_stopped(fault: BaseException | None) -> bool:
    """Whether a fault came of Ctrl-C: a library that is interrupted while it loads says only that it could not load."""
    if _STATE.asked:
        return True
    while fault is not None:
        if isinstance(fault, KeyboardInterrupt):
            return True
        fault = fault.__cause__ or fault.__context__
    return False


@contextmanager
def held() -> Iterator[None]:
    """Hold Ctrl-C back for a few steps that belong together, or that it would break; it comes when they are done.

    Raises
    ------
    KeyboardInterrupt
        At the end, if it was asked for.
    """
    _STATE.holding += 1
    try:
        yield
    finally:
        _STATE.holding -= 1
    if not _STATE.holding:
        check()


def scratch(inside: Path | None = None) -> Path:
    """Make a folder for what is not finished; it goes away when the command ends, however it ends."""
    with held():
        made = Path(tempfile.mkdtemp(prefix=".routeviz-", dir=inside))
        _STATE.scrap.append(made)
    return made


def made_folder(folder: Path) -> Path:
    """Make a folder with those above it; what nothing was put into goes away when the command ends."""
    with held():
        new = [p for p in (folder, *folder.parents) if not p.exists()]
        folder.mkdir(parents=True, exist_ok=True)
        _STATE.folders += new
    return folder


def _leave() -> None:
    """Ignore Ctrl-C while the interpreter ends: all is written and said."""
    with suppress(ValueError):  # not the main thread
        signal.signal(signal.SIGINT, signal.SIG_IGN)


def _tidy() -> None:
    for folder in _STATE.scrap:
        shutil.rmtree(folder, ignore_errors=True)
    for folder in _STATE.folders:
        with suppress(OSError):
            folder.rmdir()  # only when it is empty
    _STATE.scrap.clear()
    _STATE.folders.clear()
