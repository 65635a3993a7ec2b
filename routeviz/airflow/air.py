"""The air itself: density by temperature and altitude, velocity pressure, Reynolds number."""

from __future__ import annotations

import math
from dataclasses import dataclass

__all__ = [
    "COLDEST_F", "HIGHEST_FT", "HOTTEST_F", "LOWEST_FT", "STANDARD", "Air", "air_at", "pressure_ratio", "reynolds",
    "velocity_pressure_inwg",
]  # fmt: skip

COLDEST_F, HOTTEST_F = -60.0, 400.0
LOWEST_FT, HIGHEST_FT = -1500.0, 36000.0

STANDARD_DENSITY_LB_FT3 = 0.075
STANDARD_TEMP_F = 70.0
_RANKINE = 459.67
_SUTHERLAND_K = 110.4
_REYNOLDS_STANDARD = 8.56  # Re = 8.56 D V for standard air, D [in], V [fpm]
_VELOCITY_CONSTANT = 1097.0  # p = density (V / 1097)^2 [in wg]; 4005 fpm gives 1 in wg in standard air


@dataclass(frozen=True, slots=True)
class Air:
    """Air in the duct. `reynolds_constant` k gives Re = k D V for D [in] and V [fpm]."""

    density_lb_ft3: float
    reynolds_constant: float

    @property
    def density_ratio(self) -> float:
        """Density over standard air's."""
        return self.density_lb_ft3 / STANDARD_DENSITY_LB_FT3


def pressure_ratio(altitude_ft: float) -> float:
    """Give the pressure of the standard atmosphere over its sea-level value.

    ratio = (1 - 6.8754e-6 z)^5.2559. Valid from -1 500 to 36 000 ft (the troposphere).

    Parameters
    ----------
    altitude_ft : float
        Height above the sea [ft].

    Raises
    ------
    ValueError
        Outside -1 500 to 36 000 ft.

    References
    ----------
    air-isa

    Examples
    --------
    >>> round(pressure_ratio(5000), 3)
    0.832
    """
    if not LOWEST_FT <= altitude_ft <= HIGHEST_FT:
        raise ValueError(f"altitude {altitude_ft:g} ft lies outside -1500 to 36000 ft")
    return float((1.0 - 6.8754e-6 * altitude_ft) ** 5.2559)


def air_at(temp_f: float = STANDARD_TEMP_F, altitude_ft: float = 0.0) -> Air:
    """Give dry air at a temperature and an altitude.

    Density follows the ideal gas from standard air (0.075 lb/ft3 at 70 F); viscosity follows Sutherland's law,
    scaled so that standard air has the trade's Re = 8.56 D V.

    Parameters
    ----------
    temp_f : float
        Temperature [degF], -60 to 400.
    altitude_ft : float
        Height above the sea [ft].

    Raises
    ------
    ValueError
        Outside the stated ranges.

    References
    ----------
    air-standard, air-isa, air-sutherland

    Examples
    --------
    >>> round(air_at(70).density_lb_ft3, 4)
    0.075
    >>> round(air_at(70, 5000).density_ratio, 3)
    0.832
    """
    if not COLDEST_F <= temp_f <= HOTTEST_F:
        raise ValueError(f"air at {temp_f:g} degF lies outside -60 to 400 degF")
    hot, standard = temp_f + _RANKINE, STANDARD_TEMP_F + _RANKINE
    ratio = pressure_ratio(altitude_ft) * standard / hot
    viscosity_ratio = _sutherland(hot / 1.8) / _sutherland(standard / 1.8)
    return Air(STANDARD_DENSITY_LB_FT3 * ratio, _REYNOLDS_STANDARD * ratio / viscosity_ratio)


def _sutherland(kelvin: float) -> float:
    return kelvin * math.sqrt(kelvin) / (kelvin + _SUTHERLAND_K)


STANDARD = Air(STANDARD_DENSITY_LB_FT3, _REYNOLDS_STANDARD)


def velocity_pressure_inwg(velocity_fpm: float, air: Air = STANDARD) -> float:
    """Give the velocity pressure [in wg]: density (V / 1097)^2.

    References
    ----------
    air-standard

    Examples
    --------
    >>> round(velocity_pressure_inwg(4005), 3)
    1.0
    """
    return air.density_lb_ft3 * (velocity_fpm / _VELOCITY_CONSTANT) ** 2


def reynolds(diameter_in: float, velocity_fpm: float, air: Air = STANDARD) -> float:
    """Give the Reynolds number of a (hydraulic) diameter [in] and a velocity [fpm].

    References
    ----------
    air-elbows

    Examples
    --------
    >>> round(reynolds(8, 1145.9))
    78471
    """
    return air.reynolds_constant * diameter_in * velocity_fpm
