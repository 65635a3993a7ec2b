"""What labels, flags and lists say of a number; lengths follow the scene's units."""

from __future__ import annotations

from routeviz.model.finding import Finding, State
from routeviz.model.route import Route
from routeviz.model.scene import SectionShape, SectionSize
from routeviz.units import length_text

__all__ = ["elbow_words", "finding_short", "quantity", "section_words"]

_COUNT = ("no elbow", "one elbow", "two elbows", "three elbows", "four elbows", "five elbows", "six elbows")
_METRIC = {
    "cfm": (0.4719474432, "l/s", 0), "ft/min": (0.00508, "m/s", 1), "fpm": (0.00508, "m/s", 1), "in wg": (249.08891, "Pa", 0),
    "ft": (0.3048, "m", 1), "lb": (0.45359237, "kg", 0),
}  # fmt: skip
_PLACES = {"cfm": 0, "ft/min": 0, "fpm": 0, "in wg": 2, "ft": 0, "lb": 0}


def quantity(value: float, unit: str, *, metric: bool) -> str:
    """Write a value with its unit: "16 3/8 in", "371 cfm", "0.35 in wg"."""
    if unit == "in":
        return length_text(value, metric=metric)
    if unit in _PLACES:
        factor, name, places = _METRIC[unit] if metric else (1.0, unit, _PLACES[unit])
        return f"{value * factor:.{places}f} {name}".replace("-", "−")
    if unit.startswith("of "):
        return f"{value:.2g} {unit}".replace("-", "−")
    return f"{value:.4g} {unit}".strip().replace("-", "−")


def finding_short(finding: Finding, *, metric: bool) -> str:
    """Say what a flag says beside its number: how much is missing or spare."""
    if finding.margin is None:
        return quantity(finding.measured, finding.unit, metric=metric) if finding.measured is not None else ""
    amount = quantity(abs(finding.margin), finding.unit, metric=metric).split(" of ")[0]
    if finding.state is State.BROKEN:
        return f"{amount} short" if finding.relation == "at least" else f"{amount} over"
    return f"{amount} spare"


def elbow_words(elbows: float) -> str:
    """Write a count of elbows in 90-degree equivalents."""
    whole = round(elbows)
    if abs(elbows - whole) < 1e-9 and whole < len(_COUNT):
        return _COUNT[whole]
    return f"{elbows:g} elbows"


def section_words(section: SectionSize, *, metric: bool) -> str:
    """Write a duct section: "8 in round", "3 1/4 x 10 in"."""
    if section.is_round:
        return f"{length_text(section.width_in, metric=metric)} round"
    wide, high = length_text(section.width_in, metric=metric), length_text(section.height_in, metric=metric)
    unit = " mm" if metric else " in"
    flat = f"{high.removesuffix(unit)} × {wide}"
    return f"{flat} oval" if section.shape is SectionShape.OVAL else flat


def route_title(route: Route, *, metric: bool) -> str:
    """Give the label of a duct: its section and how many elbows it has."""
    return f"{section_words(route.section, metric=metric)}, {elbow_words(route.elbows)}"
