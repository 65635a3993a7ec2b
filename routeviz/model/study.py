"""Answers that come from many plans: fixes that are proven, ways side by side."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

from routeviz.model.finding import Verdict

__all__ = ["Fix", "FixKind", "Way"]


class FixKind(StrEnum):
    """What a fix changes; the order is from least to most intrusive."""

    CABINET = "shorten a cabinet"
    SHIFT = "shift the hood"
    OFFSET = "offset in the cover"
    HEIGHT = "change the height"
    SHIFT_BOTH = "shift hood and cooktop"
    SECTION = "other section"
    CAP = "move the cap"
    WAY = "other way out"
    BOX = "box in the room"
    MAKEUP = "bring in makeup air"
    FRAME = "frame an opening"


@dataclass(frozen=True, slots=True)
class Fix:
    """A change of the scene that was planned again and clears every must-finding.

    `changes` are scene-file fields with their new values, ready to be written; an empty value takes the field out.
    """

    kind: FixKind
    words: str
    changes: tuple[tuple[str, str], ...]
    moved_in: float
    elbows: float
    length_in: float
    boxed_in: float
    flow_cfm: float
    close: int  # findings that stay close
    broken: int  # should-findings that stay broken; must-findings are 0
    verdict: Verdict
    answer: str
    members: tuple[str, ...] = ()  # members framed round, with what that takes

    @property
    def recheck(self) -> str:
        """Say what planning again found; the only promise that is made."""
        elbows = "no elbow" if self.elbows == 0 else f"{self.elbows:g} elbow{'s' if self.elbows != 1 else ''}"
        broken = "0 broken" if not self.broken else f"{self.broken} broken, none a must"
        return f"planned again: {broken}, {elbows}"


@dataclass(frozen=True, slots=True)
class Way:
    """One row of a comparison; `elbows` and what follows are None when there is no such way."""

    label: str
    outcome: str
    verdict: Verdict
    elbows: float | None
    length_in: float | None
    boxed_in: float | None
    flow_cfm: float | None
    holes: int | None
    members: tuple[str, ...]
    broken: int
    close: int
    parts: int | None
    answer: str
    cabinet_in3: float = 0.0  # taken of the cabinets that hide the duct
