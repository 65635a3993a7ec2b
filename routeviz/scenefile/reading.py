"""From a file to a scene, or to every mistake at once."""

from __future__ import annotations

import copy
import math
import re
import tomllib
from collections.abc import Iterable, Sequence
from pathlib import Path as FilePath
from typing import Any, Final

from pydantic import ValidationError  # noqa: TID251 - this is the door

from routeviz.errors import Mistake, SceneError
from routeviz.model.scene import Scene
from routeviz.scenefile.build import build
from routeviz.scenefile.checks import Known, cross_checks
from routeviz.scenefile.document import UNITS, Document
from routeviz.scenefile.fields import UNREAD
from routeviz.scenefile.lines import find_lines, line_of
from routeviz.scenefile.mistakes import Trouble, trouble_from, without_misspelt
from routeviz.scenefile.notation import notation_words
from routeviz.scenefile.paths import Path, descend

__all__ = ["load", "loads", "parse_toml", "plain", "read_text"]

_DEEPEST: Final = 20  # far more than any place in a scene
_LARGEST_BYTES: Final = 4_000_000
_REPAIRS: Final = 8
_START: Final = "For a starter scene to edit: routeviz new"


def load(path: str | FilePath, *, profiles: Sequence[str] = (), codes: Sequence[str] = ()) -> Scene:
    """Read a scene file.

    Parameters
    ----------
    path : str or Path
        A TOML file in UTF-8.
    profiles, codes : sequence of str
        The rule profiles and the codes of findings that are known; with them, another profile or a waiver of another
        code is a mistake like any other.

    Returns
    -------
    Scene
        The scene; `Scene.assumptions` lists every value that was taken for granted.

    Raises
    ------
    SceneError
        With every mistake of the file at once, each with its line and remedy; also when the file cannot be read.
    """
    place = FilePath(path)
    return loads(read_text(place), place.name or str(path), profiles=profiles, codes=codes)


def read_text(place: FilePath, kind: str = "scene") -> str:
    """Give the text of a file that holds a scene, or another `kind` of thing.

    Raises
    ------
    SceneError
        If there is no such file, or it is not one.
    """
    name = place.name or str(place)
    try:
        if place.is_dir():
            raise _file_mistake(name, f"this is a folder, not a {kind} file", "Name a file ending in .toml")
        if place.stat().st_size > _LARGEST_BYTES:
            raise _file_mistake(
                name, f"far too large for a {kind} file", f"Name a {kind} file; they have a few hundred lines"
            )
        data = place.read_bytes()
    except FileNotFoundError:
        remedy = f"Check the name. {_START}" if kind == "scene" else "Check the name"
        raise _file_mistake(name, "there is no such file", remedy) from None
    except (OSError, ValueError) as fault:
        reason = getattr(fault, "strerror", None) or "the name is not possible"
        raise _file_mistake(name, f"the file cannot be read ({reason})", "Check its name and permissions") from None
    try:
        return data.decode("utf-8-sig")
    except UnicodeDecodeError as fault:
        line = data[: fault.start].count(b"\n") + 1
        raise _file_mistake(
            name, "not text in UTF-8", "Save the file as UTF-8 (plain text) and try again", line
        ) from None


def loads(text: str, name: str = "scene.toml", *, profiles: Sequence[str] = (), codes: Sequence[str] = ()) -> Scene:
    """Read a scene from text; `name` stands for the file in messages. See `load` for the rest.

    Raises
    ------
    SceneError
        With every mistake at once.
    """
    raw = parse_toml(text, name)
    if not raw:
        raise _file_mistake(name, "the file says nothing", _START)
    document, troubles = _validate(raw)
    if document is not None:
        known = {t.path for t in troubles}
        troubles += [
            t for t in cross_checks(document, raw, Known(tuple(profiles), tuple(codes))) if not _hidden(t.path, known)
        ]
    if troubles or document is None:
        raise SceneError(_mistakes(troubles, text, name))
    return build(document, raw, name)


def plain(text: str) -> dict[str, Any]:
    """Give what stands in the text of a scene file, as it is written there.

    Raises
    ------
    SceneError
        If the text is not TOML.
    """
    return parse_toml(text, "scene")


def parse_toml(text: str, name: str) -> dict[str, Any]:
    """Give the plain data of a TOML text.

    Raises
    ------
    SceneError
        If it is not TOML, with the line.
    """
    deep = _file_mistake(name, "brackets or dotted keys nested too deeply", "No place in a scene is that deep", 1)
    try:
        data = tomllib.loads(text)
    except RecursionError:
        raise deep from None
    except ValueError as fault:
        said = str(fault)
        found = re.search(r"\(at line (\d+), column (\d+)\)", said)
        line = int(found[1]) if found else (text.count("\n") + 1 if "end of document" in said else None)
        what = re.sub(r"\s*\(at .*\)$", "", said)
        column = f" at column {found[2]}" if found else ""
        raise _file_mistake(
            name, f"not written as TOML{column}: {notation_words(what)}",
            'Write key = value on one line, text in quotes ("7 ft 6 in"; inch marks only inside three quotes), { } on one line, '
            "lists in [ ], and tables under a [header]",
            line,
        ) from None  # fmt: skip
    if _deeper_than(data, _DEEPEST):
        raise deep
    return data


def _deeper_than(data: object, most: int) -> bool:
    """Whether tables and lists are nested deeper than `most`; counted layer by layer, so any depth is safe."""
    layer: list[object] = [data]
    for _ in range(most + 1):
        nested = [
            (each.values() if isinstance(each, dict) else each) for each in layer if isinstance(each, dict | list)
        ]
        layer = [inner for values in nested for inner in values]
    return bool(layer)


def _file_mistake(name: str, problem: str, remedy: str, line: int | None = None) -> SceneError:
    return SceneError((Mistake(name, line, "the file", "", problem, remedy),))


def _validate(raw: dict[str, Any]) -> tuple[Document | None, list[Trouble]]:
    """Validate; what cannot be read is replaced by blanks, so that the cross-checks can look at the rest."""
    unit = raw.get("unit", "in")
    context = {"unit": unit if unit in UNITS else "in"}
    patched = raw
    troubles: list[Trouble] = []
    for turn in range(_REPAIRS):
        try:
            return Document.model_validate(patched, context=context), troubles
        except ValidationError as fault:
            details = fault.errors(include_url=False)
            if turn == 0:
                troubles = without_misspelt([trouble_from(detail, Document, raw) for detail in details])
                patched = copy.deepcopy(raw)
            for detail in details:
                _blank(patched, detail["loc"], str(detail["type"]))
    return None, troubles


def _blank(data: dict[str, Any], path: Path, kind: str) -> None:
    """Put a blank where a value could not be read; take an unknown key out."""
    try:
        parent = descend(data, path[:-1])
    except LookupError:
        return
    last = path[-1]
    blank: Any = [] if kind in ("tuple_type", "list_type") else UNREAD
    if isinstance(parent, dict):
        if kind == "extra_forbidden":
            parent.pop(last, None)
        else:
            parent[last] = blank
    elif isinstance(parent, list) and isinstance(last, int):
        parent[last : last + 1] = [blank]


def _hidden(path: Path, known: Iterable[Path]) -> bool:
    """Whether a mistake was already reported at this place, or at a table above or a value below it."""
    return any(path[: len(k)] == k or k == path for k in known)


def _mistakes(troubles: list[Trouble], text: str, name: str) -> tuple[Mistake, ...]:
    lines = find_lines(text)
    found = [Mistake(name, line_of(t.path, lines), t.field, t.value, t.problem, t.remedy) for t in troubles]
    order = sorted(range(len(found)), key=lambda n: (found[n].line or math.inf, n))
    return tuple(dict.fromkeys(found[n] for n in order))
