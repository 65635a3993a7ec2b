"""Friction in straight duct: Darcy-Weisbach with Colebrook's factor."""

from __future__ import annotations

import functools
from collections.abc import Callable
from dataclasses import dataclass
from typing import Any

from routeviz.airflow.air import STANDARD, Air, reynolds, velocity_pressure_inwg
from routeviz.airflow.sections import hydraulic_in, velocity_fpm
from routeviz.catalog import table
from routeviz.model.scene import SectionSize

__all__ = ["Roughness", "flex_times", "friction_factor", "loss_per_100_ft_inwg", "roughness", "unchecked_factor"]

_LAMINAR_RE = 2000.0
_TURBULENT_RE = 4000.0
_USUAL = "galvanized steel"


@dataclass(frozen=True, slots=True)
class Roughness:
    """Absolute roughness of a material [in], with the low and high end that tables print."""

    usual_in: float
    low_in: float
    high_in: float
    source: str
    known: bool = True


@functools.cache
def _colebrook() -> Callable[[float, float], float]:
    from fluids.friction import Clamond  # loaded when first needed: it brings numpy

    solve: Callable[[float, float], float] = Clamond
    return solve


def friction_factor(re: float, relative_roughness: float) -> float:
    """Give the Darcy friction factor.

    1/sqrt(f) = -2 log10( e/(3.7 D) + 2.51/(Re sqrt f) ) (Colebrook) from Re 4 000 up, solved by Clamond's
    iteration to machine precision; 64/Re below Re 2 000; between them a straight line in Re, so that f is
    continuous. Valid for Re up to 1e8 and relative roughness from 0 to 0.05.

    Parameters
    ----------
    re : float
        Reynolds number [-], above 0.
    relative_roughness : float
        Roughness over (hydraulic) diameter [-].

    Raises
    ------
    ValueError
        Outside these limits.

    References
    ----------
    air-colebrook

    Examples
    --------
    >>> round(friction_factor(1e5, 1e-4), 7)
    0.0185139
    """
    if not 0.0 < re <= 1e8:
        raise ValueError(f"Reynolds number {re:g} lies outside 0 to 1e8")
    if not 0.0 <= relative_roughness <= 0.05:
        raise ValueError(f"relative roughness {relative_roughness:g} lies outside 0 to 0.05")
    return unchecked_factor(re, relative_roughness)


def unchecked_factor(re: float, relative_roughness: float) -> float:
    """Do the work of `friction_factor` without its checks, for the solver's inner loop."""
    if re >= _TURBULENT_RE:
        return _colebrook()(re, relative_roughness)
    if re <= _LAMINAR_RE:
        return 64.0 / re
    share = (re - _LAMINAR_RE) / (_TURBULENT_RE - _LAMINAR_RE)
    return (1 - share) * 64.0 / _LAMINAR_RE + share * _colebrook()(_TURBULENT_RE, relative_roughness)


@functools.cache
def roughness(material: str) -> Roughness:
    """Give a material's roughness; an unknown material is taken as galvanized steel and says so in `known`.

    References
    ----------
    air-roughness, air-roughness-remembered

    Examples
    --------
    >>> round(roughness("galvanized steel").usual_in / 12, 6)
    0.0003
    """
    rows: dict[str, Any] = table("ducts")["roughness"]
    name = material.strip().lower()
    by_name = {key.lower(): row for key, row in rows.items()}
    if "flex" in name:
        name = "flex"
    aliases = {"galvanised steel": _USUAL, "aluminium": "aluminum", "pvc": "pvc", "stainless": "stainless steel"}
    row = by_name.get(aliases.get(name, name))
    known = row is not None
    row = row or rows[_USUAL]
    return Roughness(row["ft"] * 12, row["low_ft"] * 12, row["high_ft"] * 12, row["source"], known)


@functools.cache
def flex_times() -> tuple[float, float, float, str]:
    """Give how many times stretched friction flexible duct costs as found: usual, low, high, source id."""
    row = table("ducts")["flex_as_found"]
    return row["times"], row["low_times"], row["high_times"], row["source"]


def loss_per_100_ft_inwg(flow_cfm: float, section: SectionSize, roughness_in: float, *, air: Air = STANDARD) -> float:
    """Give the friction loss of 100 ft of straight duct [in wg], by true velocity and hydraulic diameter.

    Parameters
    ----------
    flow_cfm : float
        Flow [cfm], above 0.
    section : SectionSize
        Round, rectangular or oval.
    roughness_in : float
        Absolute roughness [in].

    References
    ----------
    air-colebrook

    Examples
    --------
    >>> from routeviz.model.scene import SectionShape
    >>> round(loss_per_100_ft_inwg(400, SectionSize(SectionShape.ROUND, 8.0, 8.0), 0.0036), 3)
    0.256
    """
    diameter = hydraulic_in(section)
    velocity = velocity_fpm(flow_cfm, section)
    factor = friction_factor(reynolds(diameter, velocity, air), roughness_in / diameter)
    return factor * 1200.0 / diameter * velocity_pressure_inwg(velocity, air)
