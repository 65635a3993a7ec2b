"""What the rules say."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

from routeviz.model.solids import Vec3

__all__ = ["Finding", "MemberVerdict", "State", "Verdict"]


class State(StrEnum):
    """State of a finding; the order is the order of listing."""

    BROKEN = "broken"
    CLOSE = "close"
    FINE = "fine"
    NOT_CHECKED = "not checked"
    DOES_NOT_APPLY = "does not apply"


class Verdict(StrEnum):
    """The word over the whole plan."""

    WORKS = "Works"
    TIGHT = "Works, tight"
    BLOCKED = "Blocked"
    NO_PLACE = "No place"


@dataclass(frozen=True, slots=True)
class Finding:
    """One check with its number, its limit and its source.

    `relation` is "at least", "at most", "exactly" or "" when nothing is measured. `margin` is the spare:
    negative when broken. Lengths are inches (`unit` "in"); other units are named.
    """

    code: str
    title: str
    state: State
    must: bool
    measured: float | None
    relation: str
    limit: float | None
    margin: float | None
    unit: str
    source: str  # a source id of the catalogue, or "common practice"
    source_text: str  # document, edition, clause; or "common practice, no source"
    where: tuple[str, ...] = ()  # ids of solids, parts or outdoor things
    place: Vec3 | None = None
    detail: str = ""
    remedy: str = ""
    waived: str = ""  # the reason, when a waiver answers for it


class MemberVerdict(StrEnum):
    """What may be done to a member."""

    ALLOWED = "allowed"
    WITHIN = "allowed within these numbers"
    NOT_ALLOWED = "not allowed"
    DECIDED_ELSEWHERE = "engineer or maker decides"
