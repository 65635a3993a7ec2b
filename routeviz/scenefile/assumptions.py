"""The list of numbers that nobody measured: defaults that were used, and what the file itself marks as guessed."""

from __future__ import annotations

import types
import typing
from typing import Any

from pydantic import BaseModel  # noqa: TID251 - this is the door
from pydantic.fields import FieldInfo  # noqa: TID251 - this is the door

from routeviz.model.scene import MARKED, Assumption, SectionSize
from routeviz.scenefile.document import Document
from routeviz.scenefile.fields import Length, Quantity, Reader, literal
from routeviz.scenefile.house import LayerTable
from routeviz.scenefile.paths import Path, read_path, write_path
from routeviz.scenefile.sizes import Section
from routeviz.scenefile.tables import Table
from routeviz.units import mm_text

__all__ = ["Taken", "reader_of"]


def reader_of(info: FieldInfo) -> Reader | None:
    """Give the reader of a key's values, also inside ``X | None``; None for tables and lists."""
    for piece in info.metadata:
        if isinstance(piece, Reader):
            return piece
    if isinstance(info.annotation, types.UnionType) or typing.get_origin(info.annotation) is typing.Union:
        for part in typing.get_args(info.annotation):
            for piece in getattr(part, "__metadata__", ()):
                if isinstance(piece, Reader):
                    return piece
    return None


class Taken:
    """Collects assumptions while a scene is built; one for each place, in the order found."""

    def __init__(self, document: Document, raw: dict[str, Any]) -> None:
        self._document = document
        self._raw = raw
        self.metric = document.unit in ("mm", "cm", "m")
        self._found: dict[str, Assumption] = {}

    def found(self) -> tuple[Assumption, ...]:
        """Give the list so far."""
        return tuple(self._found.values())

    def note(self, where: Path, value: str, reason: str) -> None:
        """Write down one value that was taken."""
        field = write_path(where, self._raw)
        self._found.setdefault(field, Assumption(field, value, reason))

    def left_out(self, where: Path, value: str, reason: str) -> None:
        """Write down that a table was not used; what was noted inside it no longer matters."""
        inside = f"{write_path(where, self._raw)}."
        self._found = {field: found for field, found in self._found.items() if not field.startswith(inside)}
        self.note(where, value, reason)

    def length(self, length_in: float) -> str:
        """Write a length in the scene's measures."""
        return Length().show(length_in, metric=self.metric)

    def section(self, section: SectionSize) -> str:
        """Write a duct section in the scene's measures."""
        return Section().show(section, metric=self.metric)

    def value_or(self, given: float | None, default: float, where: Path, reason: str) -> float:
        """Give a length, or the default and a note."""
        if given is not None:
            return given
        self.note(where, mm_text(default) if self.metric else self.length(default), reason)
        return default

    def defaults(self) -> None:
        """Note every default that the tables took."""
        self._defaults(self._document, ())

    def _defaults(self, table: Table, path: Path) -> None:
        for key, info in type(table).model_fields.items():
            value = getattr(table, key)
            extra = info.json_schema_extra
            if key not in table.model_fields_set and isinstance(extra, dict) and "assume" in extra:
                if key not in table.idle():
                    self.note((*path, key), self._default(info, value), str(extra["assume"]))
            elif isinstance(value, Table):
                self._defaults(value, (*path, key))
            elif isinstance(value, tuple):
                for number, row in enumerate(value):
                    if isinstance(row, Table):
                        self._defaults(row, (*path, key, number))

    def _default(self, info: FieldInfo, value: Any) -> str:
        """Show a default; in metric scenes in whole millimetres and degrees, whatever units it was fixed in."""
        reader = reader_of(info)
        if self.metric and value is not None:
            if isinstance(reader, Length):
                return mm_text(value)
            if isinstance(reader, Quantity) and reader.unit == "degF":
                return f"{(value - 32) / 1.8:.0f} degC"
        return self._show(info, value)

    def _show(self, info: FieldInfo, value: Any) -> str:
        reader = reader_of(info)
        if reader is not None and value is not None:
            return reader.show(value, metric=self.metric).strip('"')
        if isinstance(value, tuple):
            return ", ".join(self._part(v) for v in value)
        return literal(value).strip('"')

    def _part(self, value: Any) -> str:
        """Show one value of a list; a layer by its material and thickness."""
        if isinstance(value, LayerTable):
            return f"{value.material} {self.length(value.thickness)}"
        return f"{value:g}" if isinstance(value, float) else str(value)

    def marked(self) -> None:
        """Note every key that the file lists under ``assumed``."""
        for text in self._document.assumed:
            path = read_path(text, self._raw)
            if path is not None:
                self.note(path, self._value_at(path), MARKED)

    def _value_at(self, path: Path) -> str:
        here: Any = self._document
        info: FieldInfo | None = None
        for step in path:
            if isinstance(step, str) and isinstance(here, BaseModel):
                info = type(here).model_fields.get(step)
                here = getattr(here, step, None)
            elif isinstance(step, int) and isinstance(here, tuple) and step < len(here):
                info, here = None, here[step]
            else:
                return "as written"
        if isinstance(here, BaseModel) or here is None:
            return "the whole table" if here is not None else "as written"
        if isinstance(here, tuple) and all(isinstance(v, float) for v in here):
            return ", ".join(self.length(v) for v in here)
        if isinstance(here, float) and path[-2:-1] == ("at",):  # one centre of a list
            return self.length(here)
        return self._show(info, here) if info else "as written"
