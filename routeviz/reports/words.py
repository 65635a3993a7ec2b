"""What the terminal says of a finding."""

from __future__ import annotations

from routeviz.model.finding import Finding, State
from routeviz.units import quantity_text

__all__ = ["MARKS", "finding_numbers", "wrap"]

MARKS = {
    State.BROKEN: "✗",
    State.CLOSE: "!",
    State.FINE: "✓",
    State.NOT_CHECKED: "?",
    State.DOES_NOT_APPLY: "·",
}


_PHYSICAL = ("in", "cfm", "fpm", "ft/min", "in wg", "ft", "lb")


def finding_numbers(finding: Finding, *, metric: bool) -> tuple[str, str, str]:
    """Give measured, limit and spare as text; empty where nothing is measured."""

    def show(value: float | None, unit: str) -> str:
        return "" if value is None else quantity_text(value, unit, metric=metric)

    unit = finding.unit
    bare = unit if unit in _PHYSICAL else ""  # a count names what it counts only once
    limit = f"{finding.relation} {show(finding.limit, bare)}".strip() if finding.limit is not None else ""
    return show(finding.measured, unit), limit, show(finding.margin, bare)


def wrap(text: str, width: int = 80, indent: str = "") -> str:
    """Fold a paragraph for the terminal."""
    import textwrap

    return textwrap.fill(text, width, initial_indent=indent, subsequent_indent=indent, break_long_words=False)
