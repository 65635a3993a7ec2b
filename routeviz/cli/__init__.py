"""One module per command: parse, call, print. Commands load only when they are called."""

from __future__ import annotations

import sys

__all__ = ["main"]


def main(argv: list[str] | None = None) -> int:
    """Run the command line and give the exit code: 0 done, 2 a mistake to mend, 130 stopped by the person."""
    from routeviz.cli.app import app
    from routeviz.errors import RoutevizError, SceneError

    try:
        result = app(
            sys.argv[1:] if argv is None else argv, exit_on_error=False, print_error=True, result_action="return_value"
        )
    except SceneError as fault:
        for mistake in fault.mistakes:
            print(mistake, file=sys.stderr)  # noqa: T201
        count = len(fault.mistakes)
        print(f"{count} {'thing' if count == 1 else 'things'} to mend; nothing was written.", file=sys.stderr)  # noqa: T201
        return 2
    except RoutevizError as fault:
        print(f"routeviz: {fault}", file=sys.stderr)  # noqa: T201
        return 2
    except KeyboardInterrupt:
        print("Stopped; nothing half done was left.", file=sys.stderr)  # noqa: T201
        return 130
    except BrokenPipeError:
        return 0
    except Exception as fault:
        from cyclopts import CycloptsError

        if isinstance(fault, CycloptsError):
            return 2
        raise
    return result if isinstance(result, int) else 0
