"""One module per command: parse, call, print. Commands load only when they are called."""

from __future__ import annotations

import io
import os
import sys

from routeviz.cli import stopping

__all__ = ["main"]


def main(argv: list[str] | None = None) -> int:
    """Run the command line and give the exit code.

    Returns
    -------
    int
        0 done, 2 a mistake to mend, 130 stopped by the person, 1 a fault of routeviz itself.
    """
    _write_what_the_terminal_can()
    try:
        with stopping.heard():
            return _run(sys.argv[1:] if argv is None else argv)
    except KeyboardInterrupt:
        _say("Stopped; nothing half done was left.")
        return 130
    except BrokenPipeError:
        _drop_output()
        return 0
    except Exception as fault:
        if stopping.was_stopped(fault):
            _say("Stopped; nothing half done was left.")
            return 130
        if os.environ.get("ROUTEVIZ_TRACEBACK"):
            raise
        _say(
            f"routeviz: a fault of the program itself, not of your file ({type(fault).__name__}: {fault}). "
            "Run again with ROUTEVIZ_TRACEBACK=1 set to see where, and report it with the scene file."
        )
        return 1


def _run(argv: list[str]) -> int:
    from cyclopts import CycloptsError

    from routeviz.cli.app import app
    from routeviz.errors import CatalogError, RoutevizError, SceneError

    try:
        result = app(argv, exit_on_error=False, print_error=False, result_action="return_value")
        sys.stdout.flush()
    except CycloptsError as fault:
        from routeviz.cli.usage import usage_words

        _say(usage_words(fault))
        return 2
    except SceneError as fault:
        for mistake in fault.mistakes:
            _say(str(mistake))
        count = len(fault.mistakes)
        _say(f"{count} {'thing' if count == 1 else 'things'} to mend; nothing was written.")
        return 2
    except CatalogError:
        raise
    except RoutevizError as fault:
        if stopping.was_stopped(fault):  # a part that could not load because it was interrupted
            raise KeyboardInterrupt from fault
        _say(f"routeviz: {fault}")
        return 2
    return result if isinstance(result, int) else 0


def _say(text: str) -> None:
    print(text, file=sys.stderr)  # noqa: T201


def _write_what_the_terminal_can() -> None:
    """Let a terminal without UTF-8 show a question mark for what it lacks, rather than stop."""
    for stream in (sys.stdout, sys.stderr):
        if isinstance(stream, io.TextIOWrapper) and stream.encoding.lower().replace("-", "") != "utf8":
            stream.reconfigure(errors="replace")


def _drop_output() -> None:
    """Send what is still to be written nowhere, so that closing a pipe early leaves no message."""
    nowhere = os.open(os.devnull, os.O_WRONLY)
    os.dup2(nowhere, sys.stdout.fileno())
    os.close(nowhere)
