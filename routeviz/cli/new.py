"""``routeviz new``: a commented starter scene."""

from __future__ import annotations

import sys
from pathlib import Path

from routeviz.cli.files import OutputError, write_text

__all__ = ["new"]


def new(file: Path = Path("kitchen.toml"), /) -> int:
    """Write a commented starter scene to fill in from a tape measure.

    Parameters
    ----------
    file
        Where to write it; a file that is there already is never overwritten.
    """
    from routeviz import scenefile

    if file.exists():
        raise OutputError(f"{file} is there already; nothing was written. Give another name")
    if not file.parent.is_dir():
        raise OutputError(f"the folder {file.parent} is not there; nothing was written")
    write_text(file, scenefile.starter())
    print(f"{file}: put in your own numbers, then run: routeviz plan {file}", file=sys.stderr)  # noqa: T201
    return 0
