"""Answers that come from many plans: fixes that are proven, ways side by side."""

from __future__ import annotations

from dataclasses import dataclass, field
from enum import StrEnum

from routeviz.model.finding import MemberRuling, Verdict
from routeviz.model.plan import Plan
from routeviz.units import elbows_text

__all__ = ["Bay", "Fix", "FixKind", "JoistAt", "JoistPreview", "Way"]


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
    """A change of the scene that was planned again and clears every must-finding that a change of place can clear.

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
    broken: int  # findings that stay broken; none is a must but those `left`
    verdict: Verdict
    answer: str
    members: tuple[str, ...] = ()  # members framed round, with what that takes
    turns: str = ""  # its elbows and offsets in words
    left: tuple[str, ...] = ()  # must-findings that no change of place clears, such as makeup air
    _again: Plan | None = field(default=None, compare=False, repr=False)

    @property
    def again(self) -> Plan | None:
        """Give the plan that was made for this fix, for whoever shows it."""
        return self._again

    @property
    def recheck(self) -> str:
        """Say what planning again found; the only promise that is made."""
        broken = "0 broken" if not self.broken else f"{self.broken} broken, none a must"
        if self.left:
            broken = f"{self.broken} broken, still to clear: {', '.join(self.left)}"
        return f"planned again: {broken}, {self.turns or elbows_text(self.elbows)}"


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
    note: str = ""  # its duct, or what of the scene it overrides


@dataclass(frozen=True, slots=True)
class JoistAt:
    """One joist as a stud finder told it, or as the pattern was carried on from there; distances from the edge [in]."""

    number: int
    centre_in: float
    low_in: float
    high_in: float
    measured: bool


@dataclass(frozen=True, slots=True)
class Bay:
    """The space between two joists, or between a wall and a joist; distances from the edge [in]."""

    low_in: float
    high_in: float
    fits: bool  # the duct goes through with its clearance
    here: bool  # the duct's centre stands in it


@dataclass(frozen=True, slots=True)
class JoistPreview:
    """What measured joists mean for a duct that goes straight up where the hood hangs.

    Shifts are of the hood along the wall, negative to the left; None where there is none, or where joists run along the
    wall and no shift helps. `blockers` name what stands in the duct with how far [in], `opening` what a framed opening
    needs at each joist that does. `offset` is the answer of a plan in which two equal bends step the duct aside, with
    the `offset_changes` of the scene that it asks for. `changes` put the joists into the scene file.
    """

    along: bool  # joists run along the hood wall; distances count from it
    spacing_in: float
    joists: tuple[JoistAt, ...]
    bays: tuple[Bay, ...]
    duct_in: tuple[float, float]  # the duct's edges, measured as the joists are
    blockers: tuple[tuple[str, float], ...]
    shift_left_in: float | None
    shift_right_in: float | None
    middle_in: float | None
    opening: tuple[tuple[str, MemberRuling], ...]
    notes: tuple[str, ...]
    changes: tuple[tuple[str, object], ...]
    offset: str = ""
    offset_words: str = ""
    offset_changes: tuple[tuple[str, str], ...] = ()
