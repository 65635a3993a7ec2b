"""What the air does, in words: the flow, where the pressure goes, what another duct would give."""

from __future__ import annotations

from routeviz.model.airflow import AirResult, AirStatus
from routeviz.reports.words import wrap
from routeviz.units import gain_text, loss_text, quantity_text

__all__ = ["air_text"]


def air_text(air: AirResult, width: int, metric: bool) -> str:
    """Say what flows, what each part loses and what all of it comes to, and what another duct would give."""
    if air.full.status is AirStatus.NO_FAN:
        return "  No fan data in the scene: add [hood.fan] rated or curve."
    point = air.full
    band = (
        f"{quantity_text(point.low_cfm, 'cfm', metric=metric)} to {quantity_text(point.high_cfm, 'cfm', metric=metric)}"
    )
    lines = [
        wrap(
            f"{quantity_text(point.flow_cfm, 'cfm', metric=metric)} of {quantity_text(air.label_cfm, 'cfm', metric=metric)} on the "
            f"label ({band} with the uncertain losses). At that flow: {quantity_text(point.velocity_fpm, 'ft/min', metric=metric)} "
            f"in the duct, and the fan holds {quantity_text(point.static_inwg, 'in wg', metric=metric)} ({point.status}).",
            width,
            "  ",
        )
    ]
    most = max((x.loss_inwg for x in air.losses), default=0.0)
    longest = min(24, max(0, width - 45))  # beside the label and the number
    for loss in air.losses:
        bar = "█" * round(longest * loss.loss_inwg / most) if most > 0 else ""
        lines.append(f"  {loss.label[:30]:<30} {loss_text(loss.loss_inwg, metric=metric):>11} {bar}".rstrip())
    if together := air.together(metric=metric):
        lines.append(wrap(together, width, "  "))
    computed = f"Equivalent length {quantity_text(air.equivalent_ft, 'ft', metric=metric)} computed"
    lines.append(wrap(f"{computed}{_by_code(air, metric)}.", width, "  "))
    lines += [
        wrap(
            f"→ {a.label}: {quantity_text(a.flow_cfm, 'cfm', metric=metric)} ({_gain(a.gain_cfm, metric)})",
            width,
            "  ",
        )
        for a in air.advice
    ]
    if air.assumption:
        lines.append(wrap(air.assumption, width, "  "))
    lines += [wrap(n, width, "  ") for n in air.notes]
    return "\n".join(lines)


def _gain(gain_cfm: float, metric: bool) -> str:
    """Say what a change gains; a loss, which only a duct of the scene's own list can bring, in words."""
    flow = quantity_text(abs(gain_cfm), "cfm", metric=metric)
    if flow.startswith("0 "):
        return "no gain"
    return f"a loss of {flow}" if gain_cfm < 0 else gain_text(gain_cfm, "cfm", metric=metric)


def _by_code(air: AirResult, metric: bool) -> str:
    """Say what the code's own count and table give; nothing where the place has no such table."""
    if not air.code_asks:
        return ""
    count = f"; {quantity_text(air.code_equivalent_ft, 'ft', metric=metric)} by the code's count, "
    if air.code_allowed_ft is None:
        return f"{count}no entry in the code's table"
    if air.code_allowed_ft == float("inf"):
        return f"{count}no limit by the code's table"
    if air.code_allowed_ft == 0:
        return f"{count}the code's table does not allow this duct"
    return f"{count}the code's table allows {quantity_text(air.code_allowed_ft, 'ft', metric=metric)}"
