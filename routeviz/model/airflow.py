"""What the air does."""

from __future__ import annotations

import math
from dataclasses import dataclass
from enum import StrEnum

from routeviz.units import split_text

__all__ = [
    "AirNeed", "AirResult", "AirStatus", "CaptureGuide", "FlowNeed", "Loss", "LossBar", "MakeupAir", "OperatingPoint",
    "SizeAdvice",
]  # fmt: skip


class AirStatus(StrEnum):
    """How the fan and the duct meet."""

    SOLVED = "solved"
    STALLED = "stalled"  # the meeting point lies left of the curve's peak
    NO_MEETING = "no meeting point"  # the curve ends before it meets the system
    NO_FAN = "no fan data"


@dataclass(frozen=True, slots=True)
class Loss:
    """Pressure lost in one part at the operating point [in wg], with a low-to-high band."""

    part: str
    label: str
    loss_inwg: float
    low_inwg: float
    high_inwg: float
    coefficient: float | None  # C on the part's velocity pressure; None for straight friction
    source: str
    note: str = ""


@dataclass(frozen=True, slots=True)
class OperatingPoint:
    """Where fan and duct meet at one speed."""

    speed: float
    status: AirStatus
    flow_cfm: float
    low_cfm: float
    high_cfm: float
    static_inwg: float
    velocity_fpm: float


@dataclass(frozen=True, slots=True)
class SizeAdvice:
    """What another duct would give."""

    label: str
    flow_cfm: float
    gain_cfm: float
    velocity_fpm: float


@dataclass(frozen=True, slots=True)
class LossBar:
    """One bar of the loss figure: a part, its loss [in wg] and its share of all losses (0 to 1)."""

    part: str
    label: str
    loss_inwg: float
    share: float


@dataclass(frozen=True, slots=True)
class AirResult:
    """Flow through one route, at full speed first."""

    points: tuple[OperatingPoint, ...]
    losses: tuple[Loss, ...]
    label_cfm: float
    share: float  # delivered over label
    equivalent_ft: float  # computed from losses
    code_equivalent_ft: float  # straight + deduction per elbow by the code's method
    code_allowed_ft: float | None  # by the code's table, None where it has no entry; inf = no limit
    assumption: str  # what was assumed of the fan, "" when its curve is known
    fan_curve: tuple[tuple[float, float], ...]
    system_curve: tuple[tuple[float, float], ...]
    advice: tuple[SizeAdvice, ...]
    notes: tuple[str, ...] = ()
    collar_inwg: float = 0.0  # velocity pressure at the collar; fan static plus this is the sum of the losses
    friction_equivalent_in: float = 0.0  # round duct of equal friction at equal flow
    fastest_fpm: float = 0.0  # where the route is narrowest
    fastest_part: str = ""
    density_ratio: float = 1.0  # over standard air
    system_low: tuple[tuple[float, float], ...] = ()  # the system curve with every loss at its low end
    system_high: tuple[tuple[float, float], ...] = ()
    equivalent_run_ft: float = 0.0  # as `equivalent_ft` without collar and cap, to set beside the code's
    code_flow_cfm: float = 0.0  # the flow that the code's length table is entered with
    code_diameter_in: float = 0.0  # the diameter that it is entered with
    code_asks: bool = True  # whether the place's rules hold that table at all

    @property
    def full(self) -> OperatingPoint:
        """Give the operating point at full speed."""
        return self.points[0]

    @property
    def bars(self) -> tuple[LossBar, ...]:
        """Give the losses as shares of their sum, in order from the hood."""
        total = sum(loss.loss_inwg for loss in self.losses)
        return tuple(
            LossBar(loss.part, loss.label, loss.loss_inwg, loss.loss_inwg / total if total > 0 else 0.0)
            for loss in self.losses
        )

    def together(self, *, metric: bool) -> str:
        """Say why the parts lose more than the fan holds: at the collar the air has its speed already.

        "" where nothing was solved, or where the speed is worth less than a pascal. The three figures add up as written.
        """
        lost = math.fsum(loss.loss_inwg for loss in self.losses)
        if not self.losses or not self.points or (lost - self.full.static_inwg) * 249.0 < 1.0:
            return ""
        every, held, speed = split_text(lost, self.full.static_inwg, "in wg", metric=metric)
        return (
            f"The parts lose {every} together: the fan holds {held}, and the speed that the air has at the collar is worth "
            f"the other {speed}."
        )


@dataclass(frozen=True, slots=True)
class FlowNeed:
    """One published or customary flow for this kitchen, beside what the duct delivers.

    `at_least_cfm` is the wanted flow; `up_to_cfm` ends the range when the source gives one.
    """

    id: str
    label: str
    at_least_cfm: float
    up_to_cfm: float | None
    delivered_cfm: float
    source: str
    note: str = ""

    @property
    def met(self) -> bool:
        """Whether the delivered flow reaches the wanted one."""
        return self.delivered_cfm >= self.at_least_cfm


@dataclass(frozen=True, slots=True)
class CaptureGuide:
    """What research or practice says of catching the smoke, and how this hood stands to it."""

    id: str
    label: str
    wanted: float
    actual: float
    unit: str
    source: str
    note: str = ""

    @property
    def met(self) -> bool:
        """Whether this hood reaches the guide's number."""
        return self.actual >= self.wanted


_SHOWN_CFM = 0.5  # flows are told in whole cfm: a smaller difference is arithmetic, no other flow


def capable_cfm(label_cfm: float, fan_cfm: float | None = None, duct_cfm: float | None = None) -> tuple[float, str]:
    """Give the most that a hood is known to move, and by what: its label, its fan's curve, or the duct's flow.

    Examples
    --------
    >>> capable_cfm(390.0, 421.0, 405.0)
    (421.0, 'curve')
    >>> capable_cfm(400.0, 400.0000001)
    (400.0, 'label')
    """
    most, by = max(label_cfm, 0.0), "label"
    for flow, words in ((fan_cfm, "curve"), (duct_cfm, "duct")):
        if flow is not None and flow > most + _SHOWN_CFM:
            most, by = flow, words
    return most, by


@dataclass(frozen=True, slots=True)
class MakeupAir:
    """Whether air must come back in, how much, and through what opening.

    `capacity_cfm` is the most that the fan is known to move, by `capable_cfm`: codes judge the hood's capability.
    `opening_in2` lets `supply_cfm` pass at `pressure_pa`; `square_in` is that opening as a square.
    """

    threshold_cfm: float
    capacity_cfm: float
    needed: bool
    supply_cfm: float
    opening_in2: float
    square_in: float
    pressure_pa: float
    source: str
    advice: tuple[str, ...]
    cautions: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class AirNeed:
    """Everything the kitchen asks of the hood's air."""

    flows: tuple[FlowNeed, ...]
    capture: tuple[CaptureGuide, ...]
