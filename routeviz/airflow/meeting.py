"""Where the fan meets the duct, at one speed."""

from __future__ import annotations

import math
from dataclasses import dataclass

from routeviz.airflow.curves import root
from routeviz.airflow.fan import FanCurve, FanModel
from routeviz.airflow.system import System
from routeviz.model.airflow import AirStatus

__all__ = ["Meeting", "band_cfm", "meet"]


@dataclass(frozen=True, slots=True)
class Meeting:
    """The operating point: flow [cfm], fan static pressure [in wg], and how they meet."""

    flow_cfm: float
    static_inwg: float
    status: AirStatus


def meet(fan: FanCurve, system: System, *, speed: float = 1.0) -> Meeting:
    """Find the operating point.

    The fan at speed n in air of density ratio r gives r n^2 p(Q/n) (fan laws). Right of its peak it falls while
    the system rises, so there is one meeting point, found by bracketing. If the system already asks for more at
    the peak, the point lies left of it and the fan is in stall. If the curve ends with pressure to spare, or the
    point lies before its first known flow, there is no meeting point and the end of the curve is given; a curve
    that ends at no pressure ends at free delivery, which is an answer.

    Parameters
    ----------
    fan : FanCurve
        At full speed in standard air.
    system : System
        The duct in the site's air.
    speed : float
        Share of full speed, above 0.

    Raises
    ------
    ValueError
        If the speed is not above 0.

    References
    ----------
    air-fan-laws
    """
    if not (speed > 0.0 and math.isfinite(speed)):
        raise ValueError(f"a fan speed is above 0, not {speed:g}")
    scale = system.air.density_ratio * speed * speed

    def pressure(flow_cfm: float) -> float:
        return scale * fan(flow_cfm / speed)

    def spare(flow_cfm: float) -> float:
        return pressure(flow_cfm) - system.static_inwg(flow_cfm)

    peak, end = fan.peak_cfm * speed, fan.end_cfm * speed
    if spare(end) >= 0.0:
        left = pressure(end)
        dead = left <= 1e-3 * pressure(peak)
        return Meeting(end, left, AirStatus.SOLVED if dead else AirStatus.NO_MEETING)
    if spare(peak) >= 0.0:
        flow = root(spare, peak, end)
        return Meeting(flow, pressure(flow), AirStatus.SOLVED)
    flow = root(spare, 0.0, peak)
    before = flow < fan.first_cfm * speed
    return Meeting(flow, pressure(flow), AirStatus.NO_MEETING if before else AirStatus.STALLED)


def band_cfm(model: FanModel, low_loss: System, high_loss: System, *, speed: float = 1.0) -> tuple[float, float]:
    """Give the least and the largest flow over both ends of every loss and of the fan's assumption [cfm]."""
    fans = {id(f): f for f in (model.usual, model.low, model.high)}.values()
    least = min(meet(fan, high_loss, speed=speed).flow_cfm for fan in fans)
    most = max(meet(fan, low_loss, speed=speed).flow_cfm for fan in fans)
    return least, most
