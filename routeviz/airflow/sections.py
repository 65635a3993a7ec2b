"""Duct sections as the air sees them: area, perimeter, and the diameters that stand for them."""

from __future__ import annotations

import math
from functools import lru_cache

from routeviz.model.scene import SectionShape, SectionSize
from routeviz.units import inch_text, mm_text

__all__ = ["area_in2", "friction_equivalent_in", "hydraulic_in", "perimeter_in", "section_text", "velocity_fpm"]


@lru_cache(maxsize=512)
def area_in2(section: SectionSize) -> float:
    """Give the free area [in2]; a flat oval is a rectangle with two half circles.

    Examples
    --------
    >>> area_in2(SectionSize(SectionShape.RECT, 10.0, 3.25))
    32.5
    """
    wide, high = section.width_in, section.height_in
    if section.shape is SectionShape.RECT:
        return wide * high
    if section.shape is SectionShape.OVAL:
        return math.pi * high * high / 4 + high * (wide - high)
    return math.pi * wide * wide / 4


@lru_cache(maxsize=512)
def perimeter_in(section: SectionSize) -> float:
    """Give the wetted perimeter [in]."""
    wide, high = section.width_in, section.height_in
    if section.shape is SectionShape.RECT:
        return 2 * (wide + high)
    if section.shape is SectionShape.OVAL:
        return math.pi * high + 2 * (wide - high)
    return math.pi * wide


@lru_cache(maxsize=512)
def hydraulic_in(section: SectionSize) -> float:
    """Give the hydraulic diameter 4 A / P [in]; the code's length table calls this the diameter.

    Examples
    --------
    >>> round(hydraulic_in(SectionSize(SectionShape.RECT, 10.0, 3.25)), 3)
    4.906
    """
    return 4 * area_in2(section) / perimeter_in(section)


@lru_cache(maxsize=512)
def friction_equivalent_in(section: SectionSize) -> float:
    """Give the round duct [in] with the same friction at the same flow.

    Rectangular: 1.30 (ab)^0.625 / (a+b)^0.25 (Huebscher 1948); flat oval: 1.55 A^0.625 / P^0.25
    (Heyt and Diaz 1975). Koch (2008) disputes both; they are reported, while losses are computed from the true
    velocity and the hydraulic diameter. Valid for aspect ratios up to 8.

    References
    ----------
    air-huebscher, air-heyt-diaz

    Examples
    --------
    >>> round(friction_equivalent_in(SectionSize(SectionShape.RECT, 10.0, 3.25)), 3)
    6.002
    """
    wide, high = section.width_in, section.height_in
    if section.shape is SectionShape.RECT:
        return float(1.30 * (wide * high) ** 0.625 / (wide + high) ** 0.25)
    if section.shape is SectionShape.OVAL:
        return float(1.55 * area_in2(section) ** 0.625 / perimeter_in(section) ** 0.25)
    return wide


def velocity_fpm(flow_cfm: float, section: SectionSize) -> float:
    """Give the mean velocity [fpm] of a flow [cfm].

    Examples
    --------
    >>> round(velocity_fpm(800, SectionSize(SectionShape.ROUND, 6.0, 6.0)))
    4074
    """
    return flow_cfm * 144.0 / area_in2(section)


def section_text(section: SectionSize, *, metric: bool = False) -> str:
    """Write a section for a person: ``8 in round``, ``3 1/4 × 10 in``, ``150 mm round``."""
    if section.is_round:
        return f"{mm_text(section.width_in) if metric else inch_text(section.width_in)} round"
    small, large = section.height_in, section.width_in
    pair = (
        f"{mm_text(small).removesuffix(' mm')} × {mm_text(large)}"
        if metric
        else f"{inch_text(small).removesuffix(' in')} × {inch_text(large)}"
    )
    return f"{pair} oval" if section.shape is SectionShape.OVAL else pair
