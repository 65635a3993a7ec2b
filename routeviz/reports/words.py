"""What the terminal says of a finding."""

from __future__ import annotations

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


def wrap(text: str, width: int = 80, indent: str = "") -> str:
    """Fold a paragraph for the terminal."""
    import textwrap

    return textwrap.fill(text, width, initial_indent=indent, subsequent_indent=indent, break_long_words=False)
