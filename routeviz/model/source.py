"""Where a number comes from."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

__all__ = ["COMMON_PRACTICE", "Seen", "Source"]

COMMON_PRACTICE = "common-practice"


class Seen(StrEnum):
    """How well a source is known to us."""

    PRINT = "seen in print"
    SECOND = "seen in a summary"
    REMEMBERED = "remembered, not verified"
    DERIVED = "derived by arithmetic"
    PRACTICE = "common practice, no source"


@dataclass(frozen=True, slots=True)
class Source:
    """A document, its edition and clause."""

    id: str
    document: str
    edition: str
    clause: str
    seen: Seen

    @property
    def text(self) -> str:
        """Write the source as a person cites it."""
        if self.seen is Seen.PRACTICE:
            return "common practice, no source"
        words = " ".join(w for w in (self.document, self.edition, self.clause) if w)
        return f"{words} (remembered, not verified)" if self.seen is Seen.REMEMBERED else words
