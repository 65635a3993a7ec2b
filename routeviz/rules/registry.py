"""The rule book: one file per rule in ``rules/book``, found by looking there.

To add a rule: put a file named as its code, such as ``trm_cap.py`` for TRM-CAP, in ``rules/book`` that defines
``RULE``; its examples are run by the tests as they stand.
"""

from __future__ import annotations

import difflib
import functools
import importlib
import pkgutil
from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass
from enum import StrEnum

from routeviz.errors import CatalogError, RoutevizError
from routeviz.model.finding import Finding, State
from routeviz.rules.context import Context

__all__ = ["FAMILIES", "Rule", "Scope", "all_rules", "rule"]

FAMILIES = {
    "HGT": "mounting height",
    "CLR": "clearances",
    "FIT": "fit of canopy, body and chimney cover",
    "MBR": "framing members",
    "DCT": "duct",
    "ELB": "elbows and straights",
    "TRM": "where the duct ends",
    "FIR": "fire-rated and shared walls",
    "AIR": "air",
    "PWR": "power",
    "SVC": "services in the bay",
    "EXI": "existing holes and ducts",
}


class Scope(StrEnum):
    """What a rule needs to be judged."""

    SCENE = "scene"
    ROUTE = "route"


@dataclass(frozen=True, slots=True)
class Rule:
    """One rule with its explanation and its examples.

    A broken finding bears `fault` in place of `title` where the rule has one: "No backdraft damper". A title that a rule
    lengthens (``f"{rule.title}: {thing}"``) is turned likewise.

    `passing` and `failing` build a small situation; `passing_words` and `failing_words` say what it is. A rule that
    only reminds has `fails_as` "not checked".
    """

    code: str
    title: str
    scope: Scope
    checks: str
    why: str
    limits: tuple[str, ...]  # names of the profile limits that it reads
    sources: tuple[str, ...]  # sources beside those of the limits
    applies: str
    blind: str  # what it does not see
    judge: Callable[[Context, Rule], Iterable[Finding]]
    passing_words: str
    passing: Callable[[], Context]
    failing_words: str
    failing: Callable[[], Context]
    fails_as: State = State.BROKEN
    judge_route: Callable[[Context, Rule], Iterable[Finding]] | None = None  # what a rule on the scene adds for a route
    fault: str = ""  # names what is wrong, where the title names what is wished
    tables: tuple[str, ...] = ()  # groups of the member table whose numbers it uses

    @property
    def family(self) -> str:
        """Give the family's letters."""
        return self.code.split("-")[0]

    def judged(self, context: Context) -> tuple[Finding, ...]:
        """Give this rule's findings on a context."""
        return tuple(self.judge(context, self))


def _modules() -> Iterator[str]:
    package = importlib.import_module("routeviz.rules.book")
    for found in sorted(pkgutil.iter_modules(package.__path__), key=lambda m: m.name):
        yield f"{package.__name__}.{found.name}"


@functools.cache
def all_rules() -> tuple[Rule, ...]:
    """Give every rule, by family and number.

    Raises
    ------
    CatalogError
        If a file of the rule book defines no rule, or a code stands twice.
    """
    found: dict[str, Rule] = {}
    for name in _modules():
        one = getattr(importlib.import_module(name), "RULE", None)
        if not isinstance(one, Rule):
            raise CatalogError(f"{name} defines no RULE")
        if one.code in found:
            raise CatalogError(f"rule code {one.code} stands twice, the second time in {name}")
        if one.family not in FAMILIES:
            raise CatalogError(f"rule code {one.code} is of no known family")
        found[one.code] = one
    order = list(FAMILIES)
    return tuple(sorted(found.values(), key=lambda r: (order.index(r.family), r.code)))


def rule(code: str) -> Rule:
    """Give a rule by its code, in any case.

    Raises
    ------
    RoutevizError
        If there is none; the message has the nearest code.
    """
    wanted = code.strip().upper()
    codes = {r.code: r for r in all_rules()}
    if wanted in codes:
        return codes[wanted]
    near = difflib.get_close_matches(wanted, list(codes), n=1, cutoff=0.5)
    hint = f"Did you mean {near[0]}?" if near else f"Codes look like {next(iter(codes))}."
    raise RoutevizError(f"there is no rule {code!r}. {hint}")
