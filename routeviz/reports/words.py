"""Numbers and lengths as people read them; one place for the whole program."""

from __future__ import annotations

from routeviz.model.finding import Finding, State
from routeviz.units import flow_text, length_text

__all__ = ["MARKS", "elbows_text", "finding_numbers", "quantity", "wrap"]

MARKS = {
    State.BROKEN: "✗",
    State.CLOSE: "!",
    State.FINE: "✓",
    State.NOT_CHECKED: "?",
    State.DOES_NOT_APPLY: "·",
}


def elbows_text(elbows: float) -> str:
    """Write a count of 90-degree equivalents: "no elbow", "1 elbow", "2 1/2 elbows"."""
    if elbows == 0:
        return "no elbow"
    if elbows == 1:
        return "one elbow"
    small = {2: "two", 3: "three", 4: "four", 5: "five", 6: "six"}
    whole = round(elbows)
    return f"{small.get(whole, str(whole))} elbows" if abs(elbows - whole) < 1e-9 else f"{elbows:.3g} elbows"


def quantity(value: float, unit: str, *, metric: bool) -> str:
    """Write a value with its unit; lengths follow the scene's units."""
    if unit == "in":
        return length_text(value, metric=metric)
    if unit == "":
        return f"{value:.2f}".rstrip("0").rstrip(".")
    if unit == "cfm":
        return flow_text(value, metric=metric)
    if unit in ("fpm", "ft/min"):
        return f"{value * 0.00508:.1f} m/s" if metric else f"{value:.0f} ft/min"
    if unit == "in wg":
        return f"{value * 249.08891:.0f} Pa" if metric else f"{value:.2f} in wg"
    if unit == "ft":
        return f"{value * 0.3048:.1f} m" if metric else f"{value:.0f} ft"
    if unit == "in3":
        return f"{value * 0.016387064:.0f} l" if metric else f"{value / 1728:.1f} cu ft"
    if unit == "lb":
        return f"{value * 0.45359237:.0f} kg" if metric else f"{value:.0f} lb"
    if unit.startswith("of "):
        return f"{value:.2f} {unit}"
    return f"{value:.3g} {unit}"


_PHYSICAL = ("in", "cfm", "fpm", "ft/min", "in wg", "ft", "lb")


def finding_numbers(finding: Finding, *, metric: bool) -> tuple[str, str, str]:
    """Give measured, limit and spare as text; empty where nothing is measured."""

    def show(value: float | None, unit: str) -> str:
        return "" if value is None else quantity(value, unit, metric=metric)

    unit = finding.unit
    bare = unit if unit in _PHYSICAL else ""  # a count names what it counts only once
    limit = f"{finding.relation} {show(finding.limit, bare)}".strip() if finding.limit is not None else ""
    return show(finding.measured, unit), limit, show(finding.margin, bare)


def wrap(text: str, width: int = 80, indent: str = "") -> str:
    """Fold a paragraph for the terminal."""
    import textwrap

    return textwrap.fill(text, width, initial_indent=indent, subsequent_indent=indent, break_long_words=False)
