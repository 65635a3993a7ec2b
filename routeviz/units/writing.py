"""Floats to what people read: fractions of an inch or millimetres, flows, pressures; rounding happens only here."""

from __future__ import annotations

import math
import re
from fractions import Fraction

from routeviz.units.reading import MM_PER_IN, parse_length, parse_quantity

__all__ = [
    "down_in",
    "drill_text",
    "elbows_text",
    "feet_text",
    "flow_text",
    "gain_text",
    "inch_text",
    "length_text",
    "limit_text",
    "loss_text",
    "mm_text",
    "quantity_text",
    "sheet_text",
    "spare_text",
    "split_text",
    "told",
]


def inch_text(length_in: float, *, denominator: int = 16) -> str:
    """Write a length in inches with a fraction: ``16 3/8 in``; rounding happens only here.

    Examples
    --------
    >>> inch_text(16.375)
    '16 3/8 in'
    >>> inch_text(-0.75)
    '−3/4 in'
    """
    return f"{_mixed(length_in, denominator)} in"


def _mixed(value: float, denominator: int) -> str:
    n = math.floor(abs(value) * denominator + 0.5)
    whole, rest = divmod(n, denominator)
    sign = "−" if value < 0 and n else ""
    if rest == 0:
        return f"{sign}{whole}"
    part = Fraction(rest, denominator)
    text = f"{part.numerator}/{part.denominator}"
    return f"{sign}{whole} {text}" if whole else f"{sign}{text}"


def down_in(length_in: float, *, metric: bool = False) -> float:
    """Give a greatest length as it may be written: rounded down to what is printed, never past the limit.

    Examples
    --------
    >>> inch_text(7.25 / 3), inch_text(down_in(7.25 / 3))
    ('2 7/16 in', '2 3/8 in')
    """
    parts = MM_PER_IN if metric else 16
    return math.floor(length_in * parts + 1e-6) / parts


def feet_text(length_in: float, *, denominator: int = 1) -> str:
    """Write a longer length in feet and inches: ``4 ft 5 in``; below 12 in only inches.

    Examples
    --------
    >>> feet_text(53.2)
    '4 ft 5 in'
    """
    n = math.floor(abs(length_in) * denominator + 0.5)
    if n < 12 * denominator:
        return inch_text(length_in, denominator=denominator)
    feet, rest = divmod(n, 12 * denominator)
    sign = "−" if length_in < 0 else ""
    if rest == 0:
        return f"{sign}{feet} ft"
    return f"{sign}{feet} ft {_mixed(rest / denominator, denominator)} in"


def mm_text(length_in: float) -> str:
    """Write a length in whole millimetres: ``610 mm``.

    Examples
    --------
    >>> mm_text(24)
    '610 mm'
    """
    n = math.floor(abs(length_in) * MM_PER_IN + 0.5)
    sign = "−" if length_in < 0 and n else ""
    return f"{sign}{n} mm"


def drill_text(size_in: float, *, metric: bool = False) -> str:
    """Write a drill's size as drills are sold: 32nds of an inch, or whole millimetres.

    Examples
    --------
    >>> drill_text(0.15625), drill_text(0.15625, metric=True)
    ('5/32 in', '4 mm')
    """
    return mm_text(size_in) if metric else inch_text(size_in, denominator=32)


def sheet_text(sheet_in: float, *, metric: bool = False) -> str:
    """Write the thickness of sheet metal, too thin for fractions.

    Examples
    --------
    >>> sheet_text(0.019), sheet_text(0.019, metric=True)
    ('0.019 in', '0.48 mm')
    """
    return f"{sheet_in * MM_PER_IN:.2f} mm" if metric else f"{sheet_in:g} in"


def flow_text(flow_cfm: float, *, metric: bool = False) -> str:
    """Write an air flow [cfm] for a person.

    Examples
    --------
    >>> flow_text(400)
    '400 cfm'
    >>> flow_text(400, metric=True)
    '189 l/s'
    """
    return (f"{flow_cfm * 0.47194744320:.0f} l/s" if metric else f"{flow_cfm:.0f} cfm").replace("-", "−")


def length_text(length_in: float, *, metric: bool = False, long: bool = False) -> str:
    """Write a length for a person: fractions of an inch or mm; `long` uses feet, or metres from 1 m.

    Examples
    --------
    >>> length_text(53.25, long=True)
    '4 ft 5 in'
    >>> length_text(53.25, metric=True, long=True)
    '1.35 m'
    """
    if metric:
        if long and abs(length_in) * MM_PER_IN >= 1000:
            return f"{length_in * MM_PER_IN / 1000:.2f} m"
        return mm_text(length_in)
    return feet_text(length_in) if long else inch_text(length_in)


_MEASURE = re.compile(r"\{([^{}]+)\}")


def told(text: str, *, metric: bool = False) -> str:
    """Put the measures that stand in braces in a text in the reader's units; those in ft or m as long ones.

    Examples
    --------
    >>> told("{24 in} to {30 in} is usual; {400 cfm} proves nothing")
    '24 in to 30 in is usual; 400 cfm proves nothing'
    >>> told("{24 in} to {30 in} is usual; {400 cfm} proves nothing", metric=True)
    '610 mm to 762 mm is usual; 189 l/s proves nothing'
    """

    def said(found: re.Match[str]) -> str:
        words = found[1]
        if words.endswith(("cfm", "l/s", "m3/h")):
            return flow_text(parse_quantity(words, unit="cfm"), metric=metric)
        return length_text(parse_length(words), metric=metric, long=words.endswith((" ft", " m")))

    return _MEASURE.sub(said, text)


_COUNTED = ("no elbow", "one elbow", "two elbows", "three elbows", "four elbows", "five elbows", "six elbows")
_METRIC = {  # factor, unit and decimals; ft, lb exact, water at 4 degC after NIST SP 811 appendix B
    "ft/min": (0.00508, "m/s", 1), "in wg": (249.08891, "Pa", 0), "ft": (0.3048, "m", 1),
    "lb": (0.45359237, "kg", 0), "in3": (0.016387064, "l", 0), "thousandths of an inch": (0.0254, "mm", 2),
    "in per ft": (1000 / 12, "mm per m", 0), "btu/h": (1 / 3412.141633, "kW", 1),
}  # fmt: skip
_IMPERIAL = {
    "ft/min": (1.0, "ft/min", 0), "in wg": (1.0, "in wg", 2), "ft": (1.0, "ft", 0),
    "lb": (1.0, "lb", 0), "btu/h": (1.0, "Btu/h", 0), "in3": (1 / 1728, "cu ft", 1),
}  # fmt: skip


def quantity_text(value: float, unit: str, *, metric: bool = False) -> str:
    """Write a measured value with its unit for a person, as the scene counts.

    Examples
    --------
    >>> quantity_text(16.375, "in"), quantity_text(0.352, "in wg"), quantity_text(1, "elbows")
    ('16 3/8 in', '0.35 in wg', '1 elbow')
    >>> quantity_text(0.25, "in per ft"), quantity_text(0.25, "in per ft", metric=True)
    ('1/4 in per ft', '21 mm per m')
    >>> quantity_text(1000, "ft/min", metric=True), quantity_text(0.75, "of the depth"), quantity_text(2.5, "")
    ('5.1 m/s', '0.75 of the depth', '2.5')
    """
    if unit == "in":
        return length_text(value, metric=metric)
    if unit == "cfm":
        return flow_text(value, metric=metric)
    if unit == "in per ft" and not metric:
        return f"{inch_text(value)} per ft"
    table = _METRIC if metric else _IMPERIAL
    if unit in table:
        factor, name, places = table[unit]
        return f"{value * factor:.{places}f} {name}".replace("-", "−")
    if unit == "" or unit.startswith("of "):
        plain = f"{value:.2f}" if unit else f"{value:.2f}".rstrip("0").rstrip(".")
        return f"{plain} {unit}".strip().replace("-", "−")
    counted = unit.removesuffix("s") if value == 1 and "/" not in unit else unit
    return (f"{value:.3g} {counted}" if abs(value) < 1000 else f"{value:.0f} {counted}").replace("-", "−")


def loss_text(loss_inwg: float, *, metric: bool = False) -> str:
    """Write one part's loss, finer than a fan's pressure so that many small ones add up to what is said of all.

    Examples
    --------
    >>> loss_text(0.0128), loss_text(0.0128, metric=True)
    ('0.013 in wg', '3.2 Pa')
    """
    factor, name, places = (_METRIC if metric else _IMPERIAL)["in wg"]
    return f"{loss_inwg * factor:.{places + 1}f} {name}".replace("-", "−")


def split_text(whole: float, part: float, unit: str, *, metric: bool = False) -> tuple[str, str, str]:
    """Write a whole, a part of it and the rest so that the figures add up as written.

    Examples
    --------
    >>> split_text(0.3849, 0.2651, "in wg")
    ('0.38 in wg', '0.27 in wg', '0.11 in wg')
    """
    factor, name, places = (_METRIC if metric else _IMPERIAL)[unit]
    first, second = (round(value * factor, places) for value in (whole, part))
    every, held, rest = (f"{v:.{places}f} {name}".replace("-", "−") for v in (first, second, first - second))
    return every, held, rest


_PHYSICAL = ("in", "cfm", "ft/min", "in wg", "ft", "lb", "V", "Hz", "A")


def spare_text(value: float, unit: str, *, metric: bool = False) -> str:
    """Write a number beside a measured one of the same unit: what is counted was named there.

    Examples
    --------
    >>> spare_text(1.5, "in"), spare_text(3, "elbows")
    ('1 1/2 in', '3')
    """
    return quantity_text(value, unit if unit in _PHYSICAL or (metric and unit in _METRIC) else "", metric=metric)


def limit_text(limit: float, relation: str, unit: str, *, measured: bool, metric: bool = False) -> str:
    """Write a limit; where nothing was measured beside it, it says itself what it asks for.

    Examples
    --------
    >>> limit_text(3, "at most", "elbows", measured=True), limit_text(13, "", "thousandths of an inch", measured=False)
    ('at most 3', 'asks for 13 thousandths of an inch')
    """
    if measured and not relation:  # it is answered for in another way
        return ""
    if measured:
        return f"{relation} {spare_text(limit, unit, metric=metric)}".strip()
    return f"{relation or 'asks for'} {quantity_text(limit, unit, metric=metric)}"


def gain_text(value: float, unit: str, *, metric: bool = False) -> str:
    """Write a change with its sign.

    Examples
    --------
    >>> gain_text(9, "cfm"), gain_text(-23, "cfm")
    ('+9 cfm', '−23 cfm')
    """
    return ("+" if value >= 0 else "") + quantity_text(value, unit, metric=metric)


def elbows_text(elbows: float) -> str:
    """Write a count of elbows in 90-degree equivalents.

    Examples
    --------
    >>> elbows_text(0), elbows_text(1), elbows_text(2.5)
    ('no elbow', 'one elbow', '2.5 elbows')
    """
    whole = round(elbows)
    if abs(elbows - whole) < 1e-9 and whole < len(_COUNTED):
        return _COUNTED[whole]
    return f"{elbows:.3g} elbows"
