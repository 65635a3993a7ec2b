"""What the validation says, in the words of the trade."""

from __future__ import annotations

import types
import typing
from collections.abc import Mapping
from dataclasses import dataclass
from difflib import get_close_matches
from typing import Any

from pydantic import BaseModel  # noqa: TID251 - this is the door
from pydantic_core import ErrorDetails

from routeviz.scenefile.fields import literal
from routeviz.scenefile.paths import Path, rows, write_path

__all__ = ["Trouble", "known_keys", "table_at", "trouble_from", "value_text", "without_misspelt"]

_SHOWN = 60
_FEW = 16
_UNKNOWN = "unknown key"


@dataclass(frozen=True, slots=True)
class Trouble:
    """A mistake before its line is known. `path` is where to point, `field` what to call it."""

    path: Path
    field: str
    value: str
    problem: str
    remedy: str


def value_text(value: Any) -> str:
    """Show a value as it stands in the file, shortened; tables and long lists are not shown."""
    if isinstance(value, Mapping) or (rows(value) is not None and any(isinstance(v, Mapping) for v in value)):
        return ""
    text = " ".join(literal(value).split())
    return text if len(text) <= _SHOWN else text[: _SHOWN - 1] + "…"


def _model_in(annotation: Any) -> type[BaseModel] | None:
    """Find the table class inside ``X | None``, ``tuple[X, ...]`` and the like."""
    if isinstance(annotation, type) and issubclass(annotation, BaseModel):
        return annotation
    if isinstance(annotation, types.UnionType) or typing.get_origin(annotation) is not None:
        for part in typing.get_args(annotation):
            found = _model_in(part)
            if found is not None:
                return found
    return None


def table_at(root: type[BaseModel], path: Path) -> type[BaseModel] | None:
    """Give the class of the table at `path`, None where there is no table."""
    here: type[BaseModel] | None = root
    for step in path:
        if isinstance(step, int):
            continue
        if here is None or step not in here.model_fields:
            return None
        here = _model_in(here.model_fields[step].annotation)
    return here


def known_keys(root: type[BaseModel], path: Path) -> list[str]:
    """List the keys of the table at `path`."""
    table = table_at(root, path)
    return list(table.model_fields) if table else []


def trouble_from(detail: ErrorDetails, root: type[BaseModel], raw: Any) -> Trouble:
    """Turn one finding of the validation into trade words."""
    path: Path = detail["loc"]
    field = write_path(path, raw) if path else "the file"
    kind = detail["type"]
    shown = value_text(detail["input"])
    if kind == "unreadable":
        context = detail.get("ctx", {})
        return Trouble(path, field, shown, str(context["problem"]), str(context["remedy"]))
    if kind == "extra_forbidden":
        return Trouble(path, field, shown, _UNKNOWN, _nearest(str(path[-1]), known_keys(root, path[:-1])))
    if kind == "missing":
        return Trouble(path, field, "", "missing", _how_to_add(root, path, raw))
    if kind in ("tuple_type", "list_type"):
        return Trouble(path, field, shown, "a list is needed here", _how_to_list(root, path, raw, detail["input"]))
    if kind == "too_long":
        return Trouble(path, field, shown, "too many values", "Write a pair: flow first, then pressure")
    return Trouble(path, field, shown, "cannot be read", "Compare it with the starter scene")


def without_misspelt(troubles: list[Trouble]) -> list[Trouble]:
    """Leave out "missing" where the same table has an unknown key that is nearly it."""
    meant = {
        (*t.path[:-1], t.remedy.removeprefix("Did you mean ").split("?")[0])
        for t in troubles
        if t.problem == _UNKNOWN and t.remedy.startswith("Did you mean ")
    }
    return [t for t in troubles if not (t.problem == "missing" and t.path in meant)]


def _nearest(word: str, known: list[str]) -> str:
    near = get_close_matches(word.lower(), known, n=1, cutoff=0.5)
    listed = f"Known keys here: {', '.join(known)}" if len(known) <= _FEW else ""
    if near:
        return f"Did you mean {near[0]}?" + (f" {listed}" if listed else "")
    return listed or "Take it out, or see the starter scene for the known keys"


def _how_to_add(root: type[BaseModel], path: Path, raw: Any) -> str:
    last = path[-1]
    if isinstance(last, int):
        return "Write a pair: flow first, then pressure"
    parent = table_at(root, path[:-1])
    info = parent.model_fields.get(last) if parent else None
    if info is None:
        return f"Add {last}"
    said = f" ({info.description})" if info.description else ""
    if _model_in(info.annotation) is not None:
        return f"Add a table [{write_path(path, raw)}]{said}"
    return f"Add {last} = {literal((info.examples or ['...'])[0])} to {_header(path[:-1], raw)}{said}"


def _header(path: Path, raw: Any) -> str:
    if not path:
        return "the top of the file"
    if any(isinstance(step, int) for step in path):
        return f"{write_path(path, raw)}"
    return f"[{write_path(path, raw)}]"


def _how_to_list(root: type[BaseModel], path: Path, raw: Any, value: Any) -> str:
    name = write_path(path, raw)
    if isinstance(value, Mapping):
        return f"Write [[{name}]] with double brackets, once for each"
    parent = table_at(root, path[:-1])
    info = parent.model_fields.get(str(path[-1])) if parent else None
    example = (info.examples or [[]])[0] if info else []
    return f"Put it in brackets, like {path[-1]} = {literal(example)}" if rows(example) else f"Write [[{name}]]"
