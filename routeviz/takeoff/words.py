"""How sizes are written in the lists; the one place where the take-off rounds."""

from __future__ import annotations

import math
from collections.abc import Mapping
from typing import Any

from routeviz.model.scene import SectionShape, SectionSize
from routeviz.units import MM_PER_IN, inch_text, length_text, mm_text

__all__ = ["angle_text", "covering", "hole_text", "own_in", "running", "section_text", "size_text"]


_SAME_IN = 1 / 64


def section_text(section: SectionSize, *, metric: bool = False) -> str:
    """Write a duct section: ``8 in round``, ``3 1/4 x 10 in``.

    Examples
    --------
    >>> section_text(SectionSize(SectionShape.RECT, 10.0, 3.25))
    '3 1/4 x 10 in rectangular'
    """
    if section.is_round:
        return f"{length_text(section.width_in, metric=metric)} round"
    square = abs(section.width_in - section.height_in) < _SAME_IN
    shape = "oval" if section.shape is SectionShape.OVAL else "square" if square else "rectangular"
    return f"{size_text(section.height_in, section.width_in, metric=metric)} {shape}"


def size_text(first_in: float, second_in: float, *, metric: bool = False) -> str:
    """Write two sides with the unit once: ``8 1/4 x 8 1/2 in``."""
    if metric:
        return f"{mm_text(first_in).removesuffix(' mm')} x {mm_text(second_in)}"
    return f"{inch_text(first_in).removesuffix(' in')} x {inch_text(second_in)}"


def hole_text(shape: str, size_in: tuple[float, float], *, metric: bool = False) -> str:
    """Write a hole's size with its shape: ``8 1/2 in round``, ``8 1/2 x 8 3/4 in ellipse``."""
    if shape == "round":
        return f"{length_text(size_in[0], metric=metric)} round"
    same = shape == "rectangular" and abs(size_in[0] - size_in[1]) < _SAME_IN
    return f"{size_text(*size_in, metric=metric)} {'square' if same else shape}"


def angle_text(angle_deg: float) -> str:
    """Write an angle without needless decimals: ``45°``, ``22.5°``."""
    return f"{angle_deg:.1f}".removesuffix(".0") + "°"


def own_in(row: Mapping[str, Any], name: str, *, metric: bool) -> float:
    """Give a catalogue length [in] in the units that a scene is written in: its row in millimetres, where it has one.

    Examples
    --------
    >>> own_in({"margin_in": 2.0, "margin_mm": 50}, "margin", metric=True) * 25.4
    50.0
    """
    if metric and f"{name}_mm" in row:
        return float(row[f"{name}_mm"]) / MM_PER_IN
    return float(row[f"{name}_in"])


def covering(area_in2: float, *, metric: bool = False) -> tuple[float, str]:
    """Give what is sold by area, never less than needed: whole square feet, or tenths of a square metre.

    Examples
    --------
    >>> covering(1924.0)
    (14, 'sq ft')
    >>> covering(1924.0, metric=True)
    (1.3, 'm²')
    """
    if metric:
        return math.ceil(area_in2 * (MM_PER_IN / 1000.0) ** 2 * 10 - 1e-9) / 10, "m²"
    return math.ceil(area_in2 / 144.0 - 1e-9), "sq ft"


def running(length_in: float, *, metric: bool = False) -> tuple[int, str]:
    """Give what is sold by length: whole feet, or whole metres, never less than needed.

    Examples
    --------
    >>> running(61.0)
    (6, 'ft')
    >>> running(61.0, metric=True)
    (2, 'm')
    """
    if metric:
        return math.ceil(length_in * MM_PER_IN / 1000.0 - 1e-9), "m"
    return math.ceil(length_in / 12.0 - 1e-9), "ft"
