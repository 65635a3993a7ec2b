"""A picture drawn in a process of its own, so that something else can be made meanwhile.

The child takes the plan from its standard input and writes the picture with `still.render`, whole or not at all. It
is in a session of its own: Ctrl-C ends the parent, and the parent ends the child.
"""

from __future__ import annotations

import pickle
import subprocess
import sys
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from types import TracebackType
from typing import TYPE_CHECKING, Self

from routeviz.errors import MissingPartError

if TYPE_CHECKING:
    from routeviz.model.plan import Plan

__all__ = ["Drawing"]

_MISSING = 3  # exit code of a child that has no OpenGL driver; the message is on its standard error


class Drawing:
    """A still picture of a plan that is being drawn aside; `finished` waits for it.

    Use it in a with statement: a picture that nobody waited for is given up when the block is left.
    """

    def __init__(self, plan: Plan, path: Path) -> None:
        self._child = subprocess.Popen(  # our own module, no shell
            [sys.executable, "-m", __name__, str(path)],
            stdin=subprocess.PIPE,
            stdout=subprocess.DEVNULL,
            stderr=subprocess.PIPE,
            start_new_session=True,
        )
        with _even_if_it_has_ended():
            assert self._child.stdin is not None
            self._child.stdin.write(pickle.dumps(plan))
            self._child.stdin.close()

    def __enter__(self) -> Self:
        return self

    def __exit__(self, kind: type[BaseException] | None, fault: BaseException | None, at: TracebackType | None) -> None:
        if self._child.poll() is None:
            self._child.kill()
        self._child.wait()
        assert self._child.stderr is not None
        self._child.stderr.close()

    def finished(self) -> None:
        """Wait until the picture is written.

        Raises
        ------
        MissingPartError
            If this machine has no OpenGL driver; the message names the packages that bring it.
        RuntimeError
            If the child failed for another reason; the message is the last line that it wrote.
        """
        assert self._child.stderr is not None
        said = self._child.stderr.read().decode("utf-8", "replace").strip()
        code = self._child.wait()
        if code == _MISSING:
            raise MissingPartError(said)
        if code != 0:
            raise RuntimeError(said.splitlines()[-1] if said else f"the drawing process ended with {code}")


@contextmanager
def _even_if_it_has_ended() -> Iterator[None]:
    """Let a child be that ended before it took its plan; `finished` tells why."""
    try:
        yield
    except BrokenPipeError:
        return


def _draw() -> int:
    plan = pickle.loads(sys.stdin.buffer.read())
    from routeviz.views import stage, still

    try:
        still.render(stage.build(plan), Path(sys.argv[1]))
    except MissingPartError as fault:
        sys.stderr.write(str(fault))
        return _MISSING
    return 0


if __name__ == "__main__":
    sys.exit(_draw())
