"""What the terminal says of a finding."""

from __future__ import annotations

import re

from routeviz.folding import fold
from routeviz.model.finding import Finding, State
from routeviz.units import limit_text, quantity_text, spare_text

__all__ = ["MARKS", "finding_numbers", "wrap"]

MARKS = {
    State.BROKEN: "✗",
    State.CLOSE: "!",
    State.FINE: "✓",
    State.NOT_CHECKED: "?",
    State.DOES_NOT_APPLY: "·",
}
_MARK = re.compile(
    r"(?:[✗!] \d{1,2} |[✓✗!?☐●□→▨·↑] |[ \d]?\d\. |(?:\d{1,2}|[A-Z])  )"
)  # what a line of a list begins with


def finding_numbers(finding: Finding, *, metric: bool) -> tuple[str, str, str]:
    """Give measured, limit and spare as text; empty where there is none."""
    unit, given = finding.unit, finding.measured is not None
    measured = "" if finding.measured is None else quantity_text(finding.measured, unit, metric=metric)
    limit = (
        ""
        if finding.limit is None
        else limit_text(finding.limit, finding.relation, unit, measured=given, metric=metric)
    )
    return measured, limit, "" if finding.margin is None else spare_text(finding.margin, unit, metric=metric)


def wrap(text: str, width: int = 80, indent: str = "", *, hang: int | None = None) -> str:
    """Fold a paragraph for the terminal, the one place for every command.

    Parameters
    ----------
    hang : int, optional
        How much further in all lines but the first stand; without it as far as a mark or number at the beginning is wide.
    """
    if hang is None:
        mark = _MARK.match(text)
        hang = len(mark[0]) if mark else 0
    return "\n".join(fold(text, width, first=indent, rest=indent + " " * hang))
