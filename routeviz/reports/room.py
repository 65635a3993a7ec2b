"""How far the things near the duct may be off, in words."""

from __future__ import annotations

from routeviz.model.route import Allowance, Route
from routeviz.reports.words import wrap
from routeviz.units import length_text

__all__ = ["room_text"]

_MOST = 8
_WAYS = {(0, 1): "to the right", (0, -1): "to the left", (1, 1): "further back", (1, -1): "further out", (2, 1): "higher",
         (2, -1): "lower"}  # fmt: skip


def room_text(route: Route, *, metric: bool, width: int = 80) -> list[str]:
    """Say how far each thing near the duct may be off before they meet, and whether the stated tolerances are within that."""
    if not route.allowances:
        return []
    lines = [wrap(_verdict(route.allowances, metric), width, "  ")]
    shown = [f"{a.label}, {_travel(a, metric)}" for a in route.allowances[:_MOST]]
    lines.append(wrap("Room to spare: " + " · ".join(shown), width, "  "))
    return lines


def _travel(allowance: Allowance, metric: bool) -> str:
    return f"{length_text(allowance.travel_in, metric=metric)} {_WAYS[allowance.axis, allowance.sign]}"


def _verdict(found: tuple[Allowance, ...], metric: bool) -> str:
    deciding = [a for a in found if not a.holds]
    if not deciding:
        if any(a.tolerance_in > 0 for a in found):
            return "✓ Clear of everything near it, even with each as far off as the scene allows."
        return "The scene takes its measures as exact: state tolerances, and this says which one decides."
    first = deciding[0]
    more = f" So do {len(deciding) - 1} more." if len(deciding) > 1 else ""
    return (
        f"! {first.label} decides: {_travel(first, metric)} and the duct meets it, and it may be off by "
        f"{length_text(first.tolerance_in, metric=metric)}. Measure it before cutting.{more}"
    )
