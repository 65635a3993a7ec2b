"""Words with names in braces, and conditions such as ``elbows = 3`` or ``wide:flow > {flow}``, judged on plans."""

from __future__ import annotations

import re
from collections.abc import Mapping
from difflib import get_close_matches

from routeviz.errors import LengthError
from routeviz.units import parse_length, parse_quantity
from routeviz.views.lessons.facts import Fact

__all__ = ["Facts", "UnfitError", "filled", "holds"]

Facts = Mapping[str, Mapping[str, Fact]]  # of each plan, by its name
_NAME = r"(?:[\w'&+ -]*:)?[\w-]+(?:\.[\w-]+)*"
_HOLE = re.compile(r"\{([^{}]*)\}")
_CONDITION = re.compile(rf"\s*({_NAME})\s*(<=|>=|!=|<|>|=)\s*(.+?)\s*")
_AS_WRITTEN = 1e-6


class UnfitError(Exception):
    """A text that a plan cannot answer: the problem and the remedy."""

    def __init__(self, problem: str, remedy: str) -> None:
        self.problem, self.remedy = problem, remedy
        super().__init__(f"{problem}. {remedy}")


def _fact(name: str, plan: str, facts: Facts) -> Fact:
    if ":" in name:
        plan, name = name.split(":", 1)
        if plan not in facts:
            known = ", ".join(p for p in facts if p) or "none"
            raise UnfitError(f"no plan is named {plan}", f"Plans with names: {known}")
    here = facts[plan]
    if name not in here:
        near = get_close_matches(name, here, n=3, cutoff=0.6)
        meant = f"Did you mean {' or '.join(near)}?" if near else "Take one that routeviz lesson FILE --facts lists"
        raise UnfitError(f"this plan says nothing by the name {name}", meant)
    return here[name]


def filled(text: str, plan: str, facts: Facts) -> str:
    """Put what the plan says in place of the names in braces, with a capital where a sentence begins.

    Spaces and line ends are drawn together.

    Raises
    ------
    UnfitError
        If a name is not known.
    """

    def put(match: re.Match[str]) -> str:
        said = _fact(match[1].strip(), plan, facts).text
        before = text[: match.start()].rstrip()
        begins = not before or before[-1] in ".?!"
        return said[:1].upper() + said[1:] if begins else said

    return " ".join(_HOLE.sub(put, text).split())


def holds(condition: str, plan: str, facts: Facts) -> tuple[bool, str]:
    """Judge a condition; give whether it holds, and what the plan says instead of it.

    Raises
    ------
    UnfitError
        If it cannot be read, or a name in it is not known.
    """
    found = _CONDITION.fullmatch(condition)
    if found is None:
        raise UnfitError(
            "not a condition", "Write a name, a sign (= != < > <= >=) and a value, like elbows = 3 or flow > {:flow}"
        )
    left = _fact(found[1], plan, facts)
    right = _value(found[3], left, plan, facts)
    return _compare(left.value, found[2], right), f"{found[1]} is {left.text}"


def _value(text: str, left: Fact, plan: str, facts: Facts) -> float | str:
    """Read the right side: a name in braces, else a value of the kind that the left side has."""
    name = _HOLE.fullmatch(text)
    if name is not None:
        return _fact(name[1].strip(), plan, facts).value
    if isinstance(left.value, str):
        return text
    try:
        if left.unit == "in":
            return parse_length(text, unit="in")
        if left.unit in ("cfm", "in wg", "lb"):
            return parse_quantity(text, unit=left.unit)
        return float(text.removesuffix(left.unit).strip())
    except (LengthError, ValueError):
        raise UnfitError(
            f"{text} cannot be compared with {left.text}", f"Write a value like {left.text}, or a name in braces"
        ) from None


def _compare(left: float | str, sign: str, right: float | str) -> bool:
    if isinstance(left, str) or isinstance(right, str):
        same = str(left).casefold() == str(right).casefold()
        if sign not in ("=", "!="):
            raise UnfitError("words have no order", "Compare them with = or !=")
        return same == (sign == "=")
    near = abs(left - right) <= _AS_WRITTEN * max(1.0, abs(right))
    return {"=": near, "!=": not near, "<": left < right and not near, ">": left > right and not near,
            "<=": left < right or near, ">=": left > right or near}[sign]  # fmt: skip
