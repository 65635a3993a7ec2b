"""Writing files so that nothing is half written and nothing is lost."""

from __future__ import annotations

import os
import sys
import tempfile
from pathlib import Path
from typing import Annotated

from cyclopts import Parameter

from routeviz.cli import stopping
from routeviz.errors import RoutevizError

__all__ = ["AsJson", "OutputError", "folder_for", "write_bytes", "write_json", "write_text"]

AsJson = Annotated[str | None, Parameter(name="--json", allow_leading_hyphen=True)]  # a file, or - for standard output


class OutputError(RoutevizError):
    """A file or folder cannot be written; the message says which and what to do."""


def folder_for(scene_file: Path, wanted: Path | None) -> Path:
    """Make and give the output folder: `wanted`, or the scene's name with ``_plan`` in the present folder."""
    folder = wanted or Path(f"{scene_file.stem}_plan")
    try:
        stopping.made_folder(folder)
    except OSError as fault:
        raise OutputError(f"cannot make the folder {folder}: {fault.strerror}. Choose another with --out") from None
    return folder


def write_bytes(path: Path, data: bytes) -> None:
    """Write a file whole or not at all."""
    try:
        if path.is_dir():
            raise IsADirectoryError(0, "a folder has this name")
        with tempfile.NamedTemporaryFile(dir=path.parent, prefix=f".{path.name}.", delete=False) as file:
            unfinished = Path(file.name)
            try:
                file.write(data)
                file.close()
                unfinished.chmod(0o644)
                os.replace(unfinished, path)
            except BaseException:
                unfinished.unlink(missing_ok=True)
                raise
    except OSError as fault:
        raise OutputError(f"cannot write {path}: {fault.strerror}. Choose another place") from None


def write_text(path: Path, text: str) -> None:
    """Write a text file whole or not at all."""
    write_bytes(path, text.encode("utf-8"))


def write_json(target: str, text: str) -> None:
    """Write JSON to a file, or alone to standard output where the target is -."""
    if target == "-":
        sys.stdout.write(text if text.endswith("\n") else f"{text}\n")
    else:
        write_text(Path(target), text)
