"""Numbers of the air in a person's units: cfm, in wg and ft/min, or l/s, Pa and m/s for metric homes."""

from __future__ import annotations

__all__ = ["area_text", "flow_text", "pressure_text", "speed_text"]

_L_S_PER_CFM = 0.47194744
_PA_PER_INWG = 249.08891
_M_S_PER_FPM = 0.00508  # exact
_CM2_PER_IN2 = 6.4516  # exact


def flow_text(flow_cfm: float, *, metric: bool = False) -> str:
    """Write a flow.

    Examples
    --------
    >>> flow_text(127.13), flow_text(127.13, metric=True)
    ('127 cfm', '60 l/s')
    """
    return f"{flow_cfm * _L_S_PER_CFM:.0f} l/s" if metric else f"{flow_cfm:.0f} cfm"


def pressure_text(pressure_inwg: float, *, metric: bool = False) -> str:
    """Write a pressure.

    Examples
    --------
    >>> pressure_text(0.25), pressure_text(0.25, metric=True)
    ('0.25 in wg', '62 Pa')
    """
    return f"{pressure_inwg * _PA_PER_INWG:.0f} Pa" if metric else f"{pressure_inwg:.2g} in wg"


def speed_text(speed_fpm: float, *, metric: bool = False) -> str:
    """Write an air speed.

    Examples
    --------
    >>> speed_text(2000), speed_text(2000, metric=True)
    ('2000 ft/min', '10.2 m/s')
    """
    return f"{speed_fpm * _M_S_PER_FPM:.1f} m/s" if metric else f"{speed_fpm:.0f} ft/min"


def area_text(area_in2: float, *, metric: bool = False) -> str:
    """Write a free area.

    Examples
    --------
    >>> area_text(144), area_text(144, metric=True)
    ('144 in²', '929 cm²')
    """
    return f"{area_in2 * _CM2_PER_IN2:.0f} cm²" if metric else f"{area_in2:.0f} in²"
