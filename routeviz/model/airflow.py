"""What the air does."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

__all__ = ["AirResult", "AirStatus", "Loss", "OperatingPoint", "SizeAdvice"]


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

    @property
    def full(self) -> OperatingPoint:
        """Give the operating point at full speed."""
        return self.points[0]
