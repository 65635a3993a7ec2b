"""What the fan gives: a curve from the maker's points, or from one or two ratings with a stated assumption."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from functools import lru_cache
from itertools import pairwise
from typing import Protocol

from routeviz.airflow.curves import MonotoneCurve, root
from routeviz.airflow.words import flow_text, pressure_text
from routeviz.catalog import table
from routeviz.model.scene import Fan

__all__ = ["FanCurve", "FanModel", "Parabola", "Points", "fan_model", "flow_at"]

_CONTRADICTING = "the fan's curve and its label contradict each other; the curve was used"


class FanCurve(Protocol):
    """Static pressure [in wg] by flow [cfm] in standard air at full speed.

    `peak_cfm` is where the pressure is highest; left of it the fan is in stall. `first_cfm` and `end_cfm` bound
    what is known.
    """

    @property
    def peak_cfm(self) -> float:
        """Flow of the highest pressure."""

    @property
    def first_cfm(self) -> float:
        """Least flow that is known."""

    @property
    def end_cfm(self) -> float:
        """Largest flow that is known."""

    def __call__(self, flow_cfm: float) -> float:
        """Give the static pressure at a flow."""


@dataclass(frozen=True, slots=True)
class Parabola:
    """p = shutoff (1 - (Q / free)^2): falls all the way, ends at free delivery."""

    shutoff_inwg: float
    free_cfm: float
    peak_cfm: float = 0.0
    first_cfm: float = 0.0

    @property
    def end_cfm(self) -> float:
        """Flow of free delivery."""
        return self.free_cfm

    def __call__(self, flow_cfm: float) -> float:
        """Give the static pressure [in wg] at a flow [cfm]."""
        return self.shutoff_inwg * (1.0 - (flow_cfm / self.free_cfm) ** 2)


@dataclass(frozen=True, slots=True)
class Points:
    """The maker's points joined by a curve that never overshoots them."""

    curve: MonotoneCurve

    @property
    def peak_cfm(self) -> float:
        """Flow of the highest point, the rightmost if several are equal."""
        top = max(self.curve.ys)
        return max(x for x, y in zip(self.curve.xs, self.curve.ys, strict=True) if y == top)

    @property
    def first_cfm(self) -> float:
        """Flow of the first point."""
        return self.curve.xs[0]

    @property
    def end_cfm(self) -> float:
        """Flow of the last point."""
        return self.curve.xs[-1]

    def __call__(self, flow_cfm: float) -> float:
        """Give the static pressure [in wg] at a flow [cfm]."""
        return self.curve(flow_cfm)


@dataclass(frozen=True, slots=True)
class FanModel:
    """A fan as assumed: the usual curve with a low and a high one, and what was assumed ("" when all is known)."""

    usual: FanCurve
    low: FanCurve
    high: FanCurve
    assumption: str
    notes: tuple[str, ...] = ()


@lru_cache(maxsize=256)
def fan_model(fan: Fan, *, metric: bool = False) -> FanModel | None:
    """Turn what the maker says into curves, or None when nothing usable is said.

    Three or more points are joined as they are; the label's rating counts as one of them where the maker's curve has
    fewer. Two fix a parabola p = a - b Q^2. One rating needs an assumed pressure at no flow; a label without its
    pressure is taken to be rated at 0.1 in wg, at worst at free delivery. Points contradict each other where the
    pressure does not fall as the flow rises, or one flow has two pressures.

    References
    ----------
    air-fan-shape, air-fan-rating, air-fan-laws
    """
    points = _clean(fan.curve)
    if len(points) >= 3 and max(pressure for _, pressure in points) > 0:
        curve = Points(MonotoneCurve.through(points))
        return FanModel(curve, curve, curve, "", _curve_notes(fan, curve, metric))
    rated = () if fan.rated_at_inwg is None or fan.rated_cfm <= 0 else ((fan.rated_cfm, fan.rated_at_inwg),)
    known = _clean(points + tuple(r for r in rated if r[0] not in dict(points)))
    odd = any(later >= sooner for (_, sooner), (_, later) in pairwise(known)) or any(
        abs(dict(points).get(flow, pressure) - pressure) > 1e-9 for flow, pressure in rated
    )
    if len(known) >= 3 and not odd:
        curve = Points(MonotoneCurve.through(known))
        return FanModel(curve, curve, curve, "")
    falling = _parabola(points if len(known) >= 3 else known)
    if falling:
        words = "curve taken as a parabola through the two rated points"
        return FanModel(falling, falling, falling, words, (_CONTRADICTING,) if odd else ())
    flow, pressure = (fan.rated_cfm, fan.rated_at_inwg) if fan.rated_cfm > 0 else known[-1] if known else (0.0, None)
    if flow <= 0:
        return None
    model = _one_rating(flow, pressure, metric=metric)
    return replace(model, notes=("the fan's rated points contradict each other; only one was used",)) if odd else model


def _clean(points: tuple[tuple[float, float], ...]) -> tuple[tuple[float, float], ...]:
    """Sort by flow, keep the lower pressure of a repeated flow, drop what lies below zero."""
    found: dict[float, float] = {}
    for flow, pressure in sorted(points):
        if flow >= 0 and pressure >= 0 and math.isfinite(flow) and math.isfinite(pressure):
            found.setdefault(flow, pressure)
    return tuple(found.items())


def _parabola(points: tuple[tuple[float, float], ...]) -> Parabola | None:
    if len(points) != 2 or points[0][1] <= points[1][1]:
        return None
    (q1, p1), (q2, p2) = points
    steep = (p1 - p2) / (q2 * q2 - q1 * q1)
    shutoff = p1 + steep * q1 * q1
    return Parabola(shutoff, math.sqrt(shutoff / steep))


def _one_rating(flow_cfm: float, rated_inwg: float | None, *, metric: bool) -> FanModel:
    row, rating = table("fans")["shutoff"], table("fans")["rating"]
    at = rating["inwg"] if rated_inwg is None else max(rated_inwg, 0.0)
    worst = rating["low_inwg"] if rated_inwg is None else at

    def curve(shutoff: float, over: float, pressure: float) -> Parabola:
        top = max(shutoff, over * pressure)
        return Parabola(top, flow_cfm / math.sqrt(1.0 - pressure / top))

    usual = curve(row["inwg"], row["over_rating"], at)
    ends = [
        curve(row["low_inwg"], row["over_rating_low"], worst),
        curve(row["high_inwg"], row["over_rating_high"], at),
    ]
    shown = pressure_text(at, metric=metric)
    said = f"label taken as rated at {shown}" if rated_inwg is None else f"one rating, at {shown}"
    top, least, most = (pressure_text(c.shutoff_inwg, metric=metric) for c in (usual, *ends))
    words = f"{said}; static pressure at no flow taken as {top} ({least} to {most}), falling as the square of the flow"
    return FanModel(usual, ends[0], ends[1], words)


def _curve_notes(fan: Fan, curve: Points, metric: bool) -> tuple[str, ...]:
    notes = []
    falling = [p for q, p in zip(curve.curve.xs, curve.curve.ys, strict=True) if q >= curve.peak_cfm]
    if any(later > sooner for sooner, later in pairwise(falling)):
        notes.append("the fan's curve rises again right of its peak; look at its points again")
    if fan.rated_at_inwg is not None and fan.rated_cfm > 0:
        there = flow_at(curve, fan.rated_at_inwg)
        if there is not None and abs(there - fan.rated_cfm) > 0.05 * fan.rated_cfm:
            notes.append(
                f"the curve gives {flow_text(there, metric=metric)} at "
                f"{pressure_text(fan.rated_at_inwg, metric=metric)}, the label "
                f"{flow_text(fan.rated_cfm, metric=metric)}; the curve was used"
            )
    return tuple(notes)


def flow_at(curve: FanCurve, static_inwg: float) -> float | None:
    """Give the largest flow at a static pressure [cfm]; None when the fan cannot reach it, or its curve ends above.

    Examples
    --------
    >>> round(flow_at(Parabola(0.8, 600.0), 0.6), 6)
    300.0
    """
    if curve(curve.peak_cfm) < static_inwg or curve(curve.end_cfm) > static_inwg:
        return None
    return root(lambda q: curve(q) - static_inwg, curve.peak_cfm, curve.end_cfm)
