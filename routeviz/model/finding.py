"""What the rules say."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from enum import StrEnum

from routeviz.model.solids import Vec3
from routeviz.units import down_in

__all__ = [
    "Finding", "FramingPiece", "MemberRuling", "MemberVerdict", "State", "Verdict", "inside_sentence", "musts_named",
]  # fmt: skip

_MOST_NAMED = 3


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


class MemberVerdict(StrEnum):
    """What may be done to a member."""

    ALLOWED = "allowed"
    WITHIN = "allowed within these numbers"
    NOT_ALLOWED = "not allowed"
    DECIDED_ELSEWHERE = "engineer or maker decides"


@dataclass(frozen=True, slots=True)
class FramingPiece:
    """One piece that an opening needs; `length_in` is its cut length, None where the scene does not tell it."""

    name: str  # "header", "sill", "cripple above", "trimmer", "plate tie", ...
    size: str  # "2x8", "16 gage x 1 1/2 in strap"
    length_in: float | None
    count: int = 1
    note: str = ""

    @property
    def counted(self) -> str:
        """Give count and name as a person says them: "1 sill", "2 headers", "2 cripples above"."""
        return f"{self.count} {self.name if self.count == 1 else ' or '.join(map(_many, self.name.split(' or ')))}"


def _many(name: str) -> str:
    first, *rest = name.split(" ")
    return " ".join([f"{first}s", *rest]) if rest in (["above"], ["below"]) else f"{name}s"


@dataclass(frozen=True, slots=True)
class MemberRuling:
    """What may be done to one member, by which rule, with the rule's number and ours [in].

    `allowed_in` is the largest hole, cut or notch that the rule allows in this member, `ours_in` what the duct
    takes; both None where the rule is a plain yes or no. `framing` is what an opening would need.
    """

    solid: str
    label: str
    verdict: MemberVerdict
    code: str  # of the rule that judged it
    rule: str  # the rule in one line
    measure: str  # what allowed and ours measure: "hole", "notch", "cut of the width"
    allowed_in: float | None
    ours_in: float | None
    source: str
    source_text: str
    framing: tuple[FramingPiece, ...] = ()
    detail: str = ""
    remedy: str = ""

    def most_in(self, *, metric: bool) -> float | None:
        """Give what is allowed as it may be written [in]: never past it. Wood that must be left is no greatest length."""
        if self.allowed_in is None or self.measure.startswith("wood"):
            return self.allowed_in
        return down_in(self.allowed_in, metric=metric)


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
    ruling: MemberRuling | None = None  # what may be done to the member that it is about
    wish: str = ""  # what is wished, where the title names what is wrong

    @property
    def asked(self) -> str:
        """Give what was looked at, in words that do not tell how it came out."""
        return self.wish or self.title


def inside_sentence(title: str) -> str:
    """Write a title as it stands inside a sentence."""
    return title[:1].lower() + title[1:]


def musts_named(broken: Sequence[Finding]) -> str:
    """Name the musts among broken findings in the order of the list of findings, and count the advice beside them.

    "no backdraft damper; ends inside the attic; 2 more, advice only"; "" where no must is broken. The answer and
    the order of work say the same.
    """
    musts = list(dict.fromkeys(inside_sentence(f.title) for f in sorted(broken, key=lambda f: f.code) if f.must))
    more, advice = len(musts) - _MOST_NAMED, sum(not f.must for f in broken)
    said = musts if more <= 1 else [*musts[:_MOST_NAMED], f"{more} more musts"]
    return "; ".join([*said, *([f"{advice} more, advice only"] if musts and advice else [])])
