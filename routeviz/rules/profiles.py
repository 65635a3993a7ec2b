"""Rule profiles: which limits a place and edition set, each with its source.

A profile is a file of ``catalog/profiles``. It stands on a base and replaces limits of it by name. A limit that a
profile does not know is absent; the profile says then what to ask, and the rule reports "not checked".
"""

from __future__ import annotations

import difflib
import functools
from collections.abc import Mapping
from dataclasses import dataclass, field
from importlib import resources
from typing import Any

from routeviz import catalog
from routeviz.errors import CatalogError, Mistake, SceneError
from routeviz.model.scene import Scene
from routeviz.units import parse_length, parse_quantity

__all__ = ["Limit", "Profile", "common", "profile", "profile_mistake", "profiles"]

_LENGTH_UNITS = ("in", "ft", "mm", "m")
_FLOW_UNITS = ("cfm", "l/s", "m3/h")
LimitValue = float | bool | tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Limit:
    """One limit. Lengths are inches and flows cfm, whatever the document's own unit (`said` keeps that)."""

    key: str
    value: LimitValue
    unit: str
    must: bool
    source: str
    said: str  # as the document states it: "750 mm"
    note: str = ""  # lengths in braces: "{24 in} to {30 in} is usual"
    source_words: str = ""  # for a maker's limit, which is in no catalogue

    @property
    def number(self) -> float:
        """Give the value as a number.

        Raises
        ------
        CatalogError
            If this limit is a list or a yes.
        """
        if isinstance(self.value, bool) or not isinstance(self.value, int | float):
            raise CatalogError(f"limit {self.key} is no number")
        return float(self.value)

    @property
    def source_text(self) -> str:
        """Write the source as a person cites it."""
        return self.source_words or catalog.source(self.source).text


@dataclass(frozen=True, slots=True)
class Profile:
    """The limits of one place and edition; `ask` says what to ask where a limit is absent."""

    name: str
    title: str
    place: str
    about: str
    metric: bool
    limits: Mapping[str, Limit]
    ask: Mapping[str, str] = field(default_factory=dict)

    def get(self, key: str) -> Limit | None:
        """Give the limit, or None when this profile does not know it."""
        return self.limits.get(key)

    def asked(self, key: str) -> str:
        """Say what to ask about an absent limit; "" when the place does not count it at all."""
        return self.ask.get(key, "")


def _files() -> tuple[str, ...]:
    folder = resources.files("routeviz.catalog").joinpath("profiles")
    return tuple(sorted(f.name[:-5] for f in folder.iterdir() if f.name.endswith(".toml")))


@functools.cache
def profiles() -> tuple[str, ...]:
    """Give the names of all profiles that a scene may choose, in order."""
    return tuple(name for name in _files() if catalog.table(f"profiles/{name}").get("chosen", True))


def _limit(name: str, key: str, row: dict[str, Any]) -> Limit:
    for needed in ("value", "unit", "must", "source"):
        if needed not in row:
            raise CatalogError(f"profile {name}, limit {key}: {needed} is missing")
    value, unit, said = row["value"], row["unit"], ""
    if isinstance(value, list):
        value = tuple(value)
    elif not isinstance(value, bool):
        said = f"{value:g} {unit}"
        if unit in _LENGTH_UNITS:
            value, unit = parse_length(value, unit=unit), "in"
        elif unit in _FLOW_UNITS:
            value, unit = parse_quantity(f"{value} {unit}", unit="cfm"), "cfm"
    return Limit(key, value, unit, row["must"], row["source"], said, row.get("note", ""))


@functools.cache
def _read(name: str) -> Profile:
    rows = catalog.table(f"profiles/{name}")
    base = _read(rows["base"]) if "base" in rows else None
    limits = dict(base.limits) if base else {}
    ask = dict(base.ask) if base else {}
    for key, row in rows.get("limits", {}).items():
        if row.get("absent", False):
            limits.pop(key, None)
        else:
            limits[key] = _limit(name, key, row)
    ask.update(rows.get("ask", {}))
    return Profile(name, rows["title"], rows["place"], rows["about"], rows["metric"], limits, ask)


def common() -> Profile:
    """Give what every profile stands on and none has to repeat: common practice."""
    return _read("common")


def profile_mistake(name: str, file: str) -> Mistake | None:
    """Say what is wrong with a profile's name, with the nearest known one; None when it is known."""
    if name in profiles():
        return None
    near = difflib.get_close_matches(name.lower().replace("_", "-").replace(" ", "-"), profiles(), n=1, cutoff=0.5)
    known = ", ".join(profiles())
    remedy = f"Did you mean {near[0]}? Known profiles: {known}" if near else f"Known profiles: {known}"
    return Mistake(file, None, "rules.profile", f'"{name}"', "there is no such rule profile", remedy)


def profile(name: str, *, file: str = "") -> Profile:
    """Give a profile by name; `file` is the scene file to name when there is none.

    Raises
    ------
    SceneError
        If there is none of this name; the message has the nearest one.
    """
    mistake = profile_mistake(name, file)
    if mistake is not None:
        raise SceneError((mistake,))
    return _read(name)


def maker_limit(scene: Scene, key: str, value_in: float, unit: str = "in") -> Limit:
    """Give a limit of the maker's instructions in the scene; it overrides the profile's and is always a must."""
    words = scene.rules.maker.document or "maker's instructions"
    return Limit(key, value_in, unit, True, "maker", f"{value_in:g} {unit}", "", words)
