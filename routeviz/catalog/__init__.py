"""Tables as TOML with a source on every row; one loader for all of them.

Every table is a file ``routeviz/catalog/NAME.toml``; sources are the files of ``routeviz/catalog/sources/``.
A row names its source by id in the key ``source``. `sources` merges all source files and refuses an id that
stands twice; `table` refuses a row whose source does not exist.
"""

from __future__ import annotations

import functools
import tomllib
from importlib import resources
from typing import Any

from routeviz.errors import CatalogError
from routeviz.model.source import COMMON_PRACTICE, Seen, Source

__all__ = ["source", "sources", "table"]


def _read(*parts: str) -> dict[str, Any]:
    file = resources.files("routeviz.catalog").joinpath(*parts)
    return tomllib.loads(file.read_text(encoding="utf-8"))


@functools.cache
def sources() -> dict[str, Source]:
    """Give all sources by id.

    Raises
    ------
    CatalogError
        If an id stands in two files, or a source says nothing of how it was seen.
    """
    found = {
        COMMON_PRACTICE: Source(COMMON_PRACTICE, "common practice", "", "", Seen.PRACTICE),
    }
    folder = resources.files("routeviz.catalog").joinpath("sources")
    for file in sorted(folder.iterdir(), key=lambda f: f.name):
        if not file.name.endswith(".toml"):
            continue
        for key, row in tomllib.loads(file.read_text(encoding="utf-8")).items():
            if key in found:
                raise CatalogError(f"source {key!r} stands twice, the second time in {file.name}")
            try:
                found[key] = Source(
                    key, row["document"], row.get("edition", ""), row.get("clause", ""), Seen(row["seen"])
                )
            except (KeyError, ValueError) as fault:
                raise CatalogError(f"source {key!r} in {file.name}: {fault}") from fault
    return found


def source(source_id: str) -> Source:
    """Give one source.

    Raises
    ------
    CatalogError
        If no source has this id.
    """
    try:
        return sources()[source_id]
    except KeyError:
        raise CatalogError(f"no source {source_id!r}") from None


def _check_rows(name: str, value: Any) -> None:
    if isinstance(value, dict):
        named = value.get("source")
        if isinstance(named, str):
            try:
                source(named)
            except CatalogError as fault:
                raise CatalogError(f"table {name}: {fault}") from None
        for inner in value.values():
            _check_rows(name, inner)
    elif isinstance(value, list):
        for inner in value:
            _check_rows(name, inner)


@functools.cache
def table(name: str) -> dict[str, Any]:
    """Read a table by name, for example ``timber`` or ``profiles/irc-2021``. Treat the result as read-only.

    Raises
    ------
    CatalogError
        If a row names a source that is not there.
    """
    found = _read(*(name + ".toml").split("/"))
    _check_rows(name, found)
    return found
