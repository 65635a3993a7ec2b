"""What the search answers: centre lines with a named outcome."""

from __future__ import annotations

import math
from dataclasses import dataclass
from enum import StrEnum

from routeviz.model.scene import SectionSize
from routeviz.model.solids import Vec3

__all__ = ["Blocker", "Bend", "Centreline", "Outcome", "Paths", "SearchFacts", "WhyNot"]  # noqa: RUF022


class Outcome(StrEnum):
    """How a search ended. "There is none" and "gave up" are different words."""

    PROVEN = "proven best"
    BEST_FOUND = "best found"
    NONE_EXISTS = "none exists"
    LIMIT_REACHED = "limit reached"
    BAD_START = "bad start"


@dataclass(frozen=True, slots=True)
class Bend:
    """One turn of a centre line: where its straights would meet, by how much, with which radius.

    `plane_in` is the duct's side in the plane of the bend (the diameter for round duct).
    """

    at: Vec3
    angle_deg: float
    radius_in: float
    plane_in: float
    offset_id: int = 0  # bends of one offset share a number > 0


@dataclass(frozen=True, slots=True)
class Centreline:
    """A duct's centre line from the hood's collar to the outer face [in].

    `points` are the start, every bend and the end; straights join them. `wide_axis` gives, for each straight,
    the axis (0, 1, 2) along which a rectangular or oval section's wide side lies; None for round.
    """

    points: tuple[Vec3, ...]
    bends: tuple[Bend, ...]
    section: SectionSize
    wide_axis: tuple[int | None, ...]
    face: str  # id of the exit face
    elbows: float  # in 90-degree equivalents; two 45s count as one
    length_in: float  # along the centre line, corners square; of the run to the outer surface
    boxed_in: float  # run in the open room that would need boxing
    crossed: tuple[str, ...]  # ids of the RULE solids that it passes through
    bays: tuple[str, ...] = ()  # labels of the bays and spaces it runs in, in order
    slack_in: float = 0.0  # least gap to any solid beyond the wanted clearance


@dataclass(frozen=True, slots=True)
class Blocker:
    """A solid, face keep-out or zone that a simpler route would meet."""

    id: str
    label: str
    overlap_in: float  # how far it reaches into the duct itself; what it must keep away from it is not counted
    at: Vec3
    kind: str = "solid"  # "solid", "keep-out", "zone", or "straight" when a straight would be too short
    axis: int | None = None  # along which the duct would run through it; None when that is not told


@dataclass(frozen=True, slots=True)
class WhyNot:
    """Why a simpler route is not there, and the least shift of the hood that frees it.

    `shift_in` is along the wall (right is positive), `lift_in` upwards; None when no shift in reach frees it. The least
    shift leaves the duct just its clearance; at `middle_in` it has `spare_in` more to either side.

    A hood that moves alone leaves the cooktop behind: of the shifts told here, `with_cooktop` are those [in] at which the
    canopy would then not cover it as it should, or a must be broken, so that the cooktop has to go with it;
    `alone_breaks` are the titles of what is advice and would be broken at `shift_in`.
    """

    wanted: str  # "straight up", "straight back", "with one elbow"
    blockers: tuple[Blocker, ...]
    shift_in: float | None
    shift_other_in: float | None  # the least shift the other way
    middle_in: float | None  # shift to the middle of the nearest good bay
    lift_in: float | None = None
    verified: bool = False  # each offered shift was searched again
    spare_in: float | None = None
    elbows: int = 0  # of the simpler route
    points: tuple[Vec3, ...] = ()  # of the nearest such route, at the place that frees it
    crossing: tuple[Blocker, ...] = ()  # the fewest members to be cut for it where the hood stands; none: no use
    with_cooktop: tuple[float, ...] = ()
    alone_breaks: tuple[str, ...] = ()

    @property
    def takes_cooktop(self) -> bool:
        """Whether the least shift is one of hood and cooktop together."""
        return self.shift_in is not None and self.shift_in in self.with_cooktop

    @property
    def goes(self) -> str:
        """Say which way it goes; an outlet that looks elsewhere turns first: "up and straight back"."""
        turns = {"straight back": "up and straight back", "straight up": "back and straight up"}
        return turns.get(self.wanted, self.wanted) if self.elbows else self.wanted

    @property
    def told(self) -> tuple[Blocker, ...]:
        """Give the blockers in the order of telling: a closed place first where no shift of the hood gets past it.

        Cutting a member in front of it would be no use.
        """
        if self.verified and self.shift_in is not None:
            return self.blockers
        return tuple(sorted(self.blockers, key=lambda b: b.kind != "zone"))


@dataclass(frozen=True, slots=True)
class SearchFacts:
    """How the search was done: for the report and for judging it.

    `not_tried` names in plain words the kinds of route within the elbow limit that were not looked for; the outcome
    says nothing of them.
    """

    grid: tuple[int, int, int]
    alive: int
    elbow_limit: int
    seconds: float
    note: str = ""
    not_tried: str = ""


@dataclass(frozen=True, slots=True)
class Paths:
    """The search's answer for one hood place and one section."""

    outcome: Outcome
    best: Centreline | None
    alternatives: tuple[Centreline, ...]
    front: tuple[tuple[float, float, float], ...]  # (elbows, boxed_in, length_in), none dominated
    why_not: tuple[WhyNot, ...]
    facts: SearchFacts

    @property
    def told_first(self) -> WhyNot | None:
        """Give the simpler way to tell of first; None when nothing stands in one.

        Beside a route it is the first that something bars. Without one it is a way that is open but for what bars it,
        before a place that is closed for good; and of these the one that the least shift frees.
        """
        barred = [w for w in self.why_not if w.blockers]
        if self.best is not None:
            return barred[0] if barred else None
        far = [math.inf if w.shift_in is None else abs(w.shift_in) for w in barred]
        order = [
            (w.told[0].kind == "zone", not w.verified, at, n) for n, (w, at) in enumerate(zip(barred, far, strict=True))
        ]
        return barred[min(order)[-1]] if barred else None
