"""One way to call the program as a person does."""

from __future__ import annotations

import contextlib
import io
import re
from dataclasses import dataclass
from pathlib import Path

from routeviz.cli import main

__all__ = ["BANNED", "SCENES", "Said", "call", "files_in"]

SCENES = Path(__file__).parents[1] / "scenes"
BANNED = re.compile(r"\b([Ee]rrors?|[Ww]arnings?|[Ii]nvalid|OK|[Ss]cores?|[Pp]ercent)\b|\d ?%|Traceback")


@dataclass(frozen=True)
class Said:
    """What one call gave."""

    code: int
    out: str
    err: str


def call(*argv: object) -> Said:
    """Run a command; whatever it says is free of the words that people should not meet."""
    out, err = io.StringIO(), io.StringIO()
    with contextlib.redirect_stdout(out), contextlib.redirect_stderr(err):
        code = main([str(a) for a in argv])
    assert not BANNED.search(err.getvalue()), err.getvalue()
    return Said(code, out.getvalue(), err.getvalue())


def files_in(folder: Path) -> set[str]:
    """Give every file and folder under a folder, hidden ones too."""
    return {str(p.relative_to(folder)) for p in folder.rglob("*")}
