"""Writing a fix into a new scene file, planned once more from that file before it is kept."""

from __future__ import annotations

import sys
import tomllib
from collections.abc import Sequence
from pathlib import Path

from routeviz.cli.files import OutputError, write_text
from routeviz.cli.scenes import load_text
from routeviz.model.study import Fix

__all__ = ["apply_fix", "field_value", "fixed_text", "target_for"]


def target_for(scene: Path, number: int) -> Path:
    """Give the new file's name, in the present folder.

    Raises
    ------
    OutputError
        If a file has this name already.
    """
    target = Path(f"{scene.stem}_fix_{number}.toml")
    if target.exists():
        raise OutputError(f"{target} is there already; nothing was written. Move it away first")
    return target


def apply_fix(scene: Path, number: int, fixes: Sequence[Fix]) -> Path:
    """Write the scene with one fix, counted from 1, to a new file.

    Raises
    ------
    OutputError
        If there is no such fix, the file is there already or cannot be written, or the new file leaves another
        must-finding than the fix says.
    """
    from routeviz import pipeline

    if not 1 <= number <= len(fixes):
        offered = f"{len(fixes)} on offer" if fixes else "this scene needs none, or none was found"
        raise OutputError(f"no fix {number}: {offered}; nothing was written")
    target, fix = target_for(scene, number), fixes[number - 1]
    text = fixed_text(scene.read_bytes().decode("utf-8"), fix)
    again = pipeline.plan(load_text(text, target), alternatives=1)
    if again.best is None or {f.title for f in again.must_broken} - set(fix.left):
        raise OutputError(f"fix {number} does not hold once it is written down: {again.answer} Nothing was written")
    write_text(target, text)
    print(f"{target}: {fix.words} ({fix.recheck})", file=sys.stderr)  # noqa: T201
    return target


def fixed_text(text: str, fix: Fix) -> str:
    """Give the text of a scene file with the changes of a fix."""
    from routeviz import scenefile

    return scenefile.edit(text, {field: field_value(value) for field, value in fix.changes})


def field_value(text: str) -> object:
    """Read a new value: a list, a number or true as TOML has it; a length stays text; nothing takes the field out."""
    if not text:
        return None
    try:
        return tomllib.loads(f"value = {text}")["value"]
    except tomllib.TOMLDecodeError:
        return text
