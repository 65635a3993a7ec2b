"""From a measured value and a limit to a finding: the only place where states are decided."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace
from typing import Protocol

from routeviz.model.finding import Finding, MemberRuling, State
from routeviz.model.solids import Vec3
from routeviz.rules.context import Context, close_amount
from routeviz.rules.profiles import Limit

__all__ = [
    "EPSILON_IN",
    "arithmetic",
    "as_bought",
    "at_least",
    "at_most",
    "exactly",
    "in_thousandths",
    "judge_number",
    "not_checked",
    "settled",
    "wished",
    "yes_or_no",
]

_MM_PER_IN = 25.4
EPSILON_IN = 1e-6  # arithmetic noise, far below anything that a tape can see


class Named(Protocol):
    """What a finding takes from its rule."""

    @property
    def code(self) -> str:
        """Give the rule's code."""
        ...

    @property
    def title(self) -> str:
        """Give the rule's title."""
        ...

    @property
    def fault(self) -> str:
        """Give the title of what breaks the rule; empty where the title serves for both."""
        ...


def _state(code: str, margin: float, unit: str) -> State:
    if margin < -EPSILON_IN:
        return State.BROKEN
    amount = close_amount(code, unit)
    return State.CLOSE if margin < amount - EPSILON_IN else State.FINE


def _titled(rule: Named, title: str, state: State) -> tuple[str, str]:
    """Give a finding's title and, where it is broken and named by what is wrong, what was wished."""
    title = title or rule.title
    if state is State.BROKEN and rule.fault and title.startswith(rule.title):
        return rule.fault + title.removeprefix(rule.title), title
    return title, ""


def _remedy(state: State, remedy: str, unit: str) -> str:
    """Give the way out of a broken finding; of a close one, what to do about the small spare."""
    if state is State.BROKEN:
        return remedy
    return "Little to spare: measure again before cutting." if state is State.CLOSE and unit == "in" else ""


def _finding(
    rule: Named, limit: Limit, measured: float, relation: str, margin: float, where: Sequence[str],
    place: Vec3 | None, detail: str, remedy: str, title: str, must: bool | None, ruling: MemberRuling | None,
) -> Finding:  # fmt: skip
    state = _state(rule.code, margin, limit.unit)
    named, wish = _titled(rule, title, state)
    return Finding(
        code=rule.code,
        title=named,
        state=state,
        must=limit.must if must is None else must,
        measured=measured,
        relation=relation,
        limit=limit.number,
        margin=margin,
        unit=limit.unit,
        source=limit.source,
        source_text=limit.source_text,
        where=tuple(where),
        place=place,
        detail=detail or limit.note,
        remedy=_remedy(state, remedy, limit.unit),
        ruling=ruling,
        wish=wish,
    )


def at_least(
    rule: Named, limit: Limit, measured: float, *, where: Sequence[str] = (), place: Vec3 | None = None,
    detail: str = "", remedy: str = "", title: str = "", must: bool | None = None, ruling: MemberRuling | None = None,
) -> Finding:  # fmt: skip
    """Give the finding on a value that must reach its limit."""
    margin = measured - limit.number
    return _finding(
        rule, limit, measured, "at least", margin, where, place, detail, remedy, title, must, ruling
    )  # fmt: skip


def at_most(
    rule: Named, limit: Limit, measured: float, *, where: Sequence[str] = (), place: Vec3 | None = None,
    detail: str = "", remedy: str = "", title: str = "", must: bool | None = None, ruling: MemberRuling | None = None,
) -> Finding:  # fmt: skip
    """Give the finding on a value that must not pass its limit."""
    margin = limit.number - measured
    return _finding(
        rule, limit, measured, "at most", margin, where, place, detail, remedy, title, must, ruling
    )  # fmt: skip


def exactly(
    rule: Named, limit: Limit, measured: float, *, where: Sequence[str] = (), place: Vec3 | None = None,
    detail: str = "", remedy: str = "", title: str = "",
) -> Finding:  # fmt: skip
    """Give the finding on a value that must equal its limit."""
    margin = 0.0 - abs(measured - limit.number)
    found = _finding(rule, limit, measured, "exactly", margin, where, place, detail, remedy, title, None, None)
    return found if margin < -EPSILON_IN else replace(found, state=State.FINE, remedy="")


def in_thousandths(limit: Limit) -> Limit:
    """Give a thickness limit in thousandths of an inch, as sheet metal is too thin for fractions."""
    return replace(limit, value=round(limit.number * 1000, 6), unit="thousandths of an inch")


def as_bought(limit: Limit, sheet_in: float) -> Limit:
    """Give the least thickness of sheet in thousandths, by its figure in millimetres where the sheet is bought by that.

    Codes print sheet in inches and in millimetres to the hundredth, and the two differ by a hair: 0.019 in is 0.48 mm
    in R302.5.2 (remembered), which is 0.0189 in. Either figure satisfies the limit.
    """
    in_mm = round(limit.number * _MM_PER_IN, 2) / _MM_PER_IN
    return in_thousandths(replace(limit, value=in_mm) if in_mm - EPSILON_IN <= sheet_in < limit.number else limit)


def settled(found: Finding, state: State, detail: str) -> Finding:
    """Give a finding whose number is answered for in another way: it keeps the numbers and drops the comparison."""
    remedy = "" if state is State.FINE else found.remedy
    return replace(found, state=state, relation="", margin=None, detail=detail, remedy=remedy)


def yes_or_no(
    rule: Named, limit: Limit, holds: bool, *, where: Sequence[str] = (), place: Vec3 | None = None,
    detail: str = "", remedy: str = "", title: str = "", must: bool | None = None, ruling: MemberRuling | None = None,
) -> Finding:  # fmt: skip
    """Give the finding on something that is so or is not."""
    state = State.FINE if holds else State.BROKEN
    named, wish = _titled(rule, title, state)
    return Finding(
        rule.code, named, state, limit.must if must is None else must,
        None, "", None, None, "", limit.source, limit.source_text, tuple(where), place, detail or limit.note,
        "" if holds else remedy, ruling=ruling, wish=wish,
    )  # fmt: skip


def not_checked(
    rule: Named, context: Context, key: str, *, limit: Limit | None = None, measured: float | None = None,
    unit: str = "", where: Sequence[str] = (), place: Vec3 | None = None, detail: str = "", remedy: str = "",
    title: str = "", must: bool = True, ruling: MemberRuling | None = None,
) -> Finding:  # fmt: skip
    """Give the finding on something that could not be checked, with what to ask or to do.

    Without a limit (this place's profile does not know one) the remedy is what the profile says to ask, and a measured
    value needs its `unit`.

    Raises
    ------
    ValueError
        If something is measured and nobody says in which unit.
    """
    if measured is not None and not unit:
        raise ValueError(f"{rule.code}: a measured value needs its unit")
    number = limit.number if limit is not None and isinstance(limit.value, int | float) and limit.unit else None
    return Finding(
        rule.code, title or rule.title, State.NOT_CHECKED, limit.must if limit else must, measured, "", number, None,
        limit.unit if limit and limit.unit else unit,
        limit.source if limit else "none", limit.source_text if limit else f"{context.profile.title}: no limit known",
        tuple(where), place, detail or (limit.note if limit else ""), remedy or context.profile.asked(key),
        ruling=ruling,
    )  # fmt: skip


def judge_number(
    rule: Named, context: Context, key: str, measured: float, unit: str, *, least: bool = True,
    where: Sequence[str] = (), place: Vec3 | None = None, detail: str = "", remedy: str = "", title: str = "",
    must: bool | None = None,
) -> Iterator[Finding]:  # fmt: skip
    """Judge a number by the limit `key`; where the place has none, say what to ask, or nothing if nothing is asked.

    `unit` is that of `measured`, and of the limit where there is one.
    """
    limit = context.limit(key)
    if limit is not None:
        judged = at_least if least else at_most
        yield judged(
            rule, limit, measured, where=where, place=place, detail=detail, remedy=remedy, title=title, must=must
        )
    elif context.profile.asked(key):
        yield not_checked(
            rule, context, key, measured=measured, unit=unit, where=where, place=place, detail=detail, title=title
        )


def arithmetic(key: str, value: float, unit: str = "in", *, must: bool = True, words: str = "") -> Limit:
    """Give a limit that follows from the given sizes alone."""
    return Limit(key, value, unit, must, "arithmetic", f"{value:g} {unit}", "", words)


def wished(key: str, number: float) -> Limit:
    """Give a limit that the scene itself asks for; the habit behind it is common practice."""
    return replace(arithmetic(key, number, must=False, words="the scene's own wish"), source="common-practice")
