"""Where the checks between fields write down what they find."""

from __future__ import annotations

from typing import Any

from routeviz.scenefile.document import Document
from routeviz.scenefile.fields import Length
from routeviz.scenefile.mistakes import Trouble, value_text
from routeviz.scenefile.paths import Path, descend, write_path
from routeviz.units import flow_text, quantity_text

__all__ = ["Notes"]


class Notes:
    """The mistakes found so far; each names its place, what is wrong and what to do."""

    def __init__(self, document: Document, raw: dict[str, Any]) -> None:
        self.found: list[Trouble] = []
        self._raw = raw
        self._metric = document.unit in ("mm", "cm", "m")

    def add(self, path: Path, problem: str, remedy: str) -> None:
        """Write down one mistake; its value is what the file says there."""
        try:
            value = value_text(descend(self._raw, path))
        except LookupError:
            value = ""
        self.found.append(Trouble(path, write_path(path, self._raw), value, problem, remedy))

    def missing(self, path: Path, remedy: str) -> None:
        """Write down that something must be added."""
        self.found.append(Trouble(path, write_path(path, self._raw), "", "missing", remedy))

    def is_set(self, path: Path) -> bool:
        """Whether the file says anything at `path`, readable or not."""
        try:
            descend(self._raw, path)
        except LookupError:
            return False
        return True

    def length(self, length_in: float) -> str:
        """Write a length in the scene's measures."""
        return Length().show(length_in, metric=self._metric)

    def flow(self, flow_cfm: float) -> str:
        """Write a flow in the scene's measures."""
        return flow_text(flow_cfm, metric=self._metric)

    def pressure(self, pressure_inwg: float) -> str:
        """Write a pressure in the scene's measures."""
        return quantity_text(pressure_inwg, "in wg", metric=self._metric)
