"""The exception tree.

::

    RoutevizError
    ├── SceneError            a scene file cannot be used; carries every mistake at once
    ├── LengthError           a length or quantity cannot be read (also a ValueError)
    ├── CatalogError          a shipped table is broken (a defect of ours)
    ├── LimitError            a stated memory or size limit would be passed (also a MemoryError)
    └── MissingPartError      an optional package or driver is not there; names what brings it

"No route" is not an error: the search answers with a named outcome.
"""

from __future__ import annotations

from dataclasses import dataclass

__all__ = [
    "CatalogError",
    "LengthError",
    "LimitError",
    "MissingPartError",
    "Mistake",
    "RoutevizError",
    "SceneError",
]


class RoutevizError(Exception):
    """Root of all errors that routeviz raises on purpose."""


@dataclass(frozen=True, slots=True)
class Mistake:
    """One thing wrong in a scene file, said so that a person can mend it."""

    file: str
    line: int | None
    field: str
    value: str
    problem: str
    remedy: str

    def __str__(self) -> str:
        place = self.file if self.line is None else f"{self.file}:{self.line}"
        shown = f" = {self.value}" if self.value else ""
        return f"{place}: {self.field}{shown}: {self.problem}. {self.remedy}"


class SceneError(RoutevizError):
    """A scene cannot be used; ``mistakes`` holds all of them, in file order."""

    def __init__(self, mistakes: tuple[Mistake, ...]) -> None:
        self.mistakes = mistakes
        super().__init__("\n".join(str(m) for m in mistakes))


class LengthError(RoutevizError, ValueError):
    """Text that should be a length or a quantity is not; ``remedy`` says how to write it."""

    def __init__(self, text: str, problem: str, remedy: str) -> None:
        self.text = text
        self.problem = problem
        self.remedy = remedy
        super().__init__(f"{text!r}: {problem}. {remedy}")


class CatalogError(RoutevizError):
    """A shipped table is inconsistent."""


class LimitError(RoutevizError, MemoryError):
    """A problem is larger than the stated limit; the message says which limit and what to do."""


class MissingPartError(RoutevizError):
    """Something optional is missing; the message names the package that brings it."""
