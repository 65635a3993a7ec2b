"""Tape-measure text and quantities to floats and back; the only door to pint.

Inside routeviz every length is a float in inches (field names end in ``_in``): sixteenths and sixty-fourths
are exact in binary, and a metric length comes back exactly when printed in millimetres. The search works on
whole ticks of 1/8128 in = 1/320 mm, so that 1/64 in (127 ticks) and 0.1 mm (32 ticks) are both whole numbers.
"""

from __future__ import annotations

import functools
import math
import re
from fractions import Fraction
from typing import Any

from routeviz.errors import LengthError

__all__ = [
    "LENGTH_EXAMPLES",
    "MM_PER_IN",
    "TICKS_PER_IN",
    "comma_remedy",
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
    "parse_angle",
    "parse_length",
    "parse_pitch",
    "parse_quantity",
    "quantity_text",
    "sheet_text",
    "spare_text",
    "split_text",
    "ticks",
    "told",
]

MM_PER_IN = 25.4  # exact, NIST SP 811 appendix B
TICKS_PER_IN = 8128  # 1 tick = 1/320 mm: 1/64 in = 127 ticks, 1 mm = 320 ticks
LENGTH_EXAMPLES = '7\' 6 1/2", 7 ft 6-1/2 in, 16 3/8 in, 3/4", 610 mm or 2.4 m'

_IN_PER = {
    "in": Fraction(1),
    "ft": Fraction(12),
    "mm": Fraction(10, 254),
    "cm": Fraction(100, 254),
    "m": Fraction(10000, 254),
}
_ALIASES = {
    '"': "in", "''": "in", "”": "in", "″": "in", "in": "in", "in.": "in", "inch": "in", "inches": "in",
    "'": "ft", "’": "ft", "′": "ft", "ft": "ft", "ft.": "ft", "foot": "ft", "feet": "ft",
    "mm": "mm", "cm": "cm", "m": "m",
    "millimetre": "mm", "millimetres": "mm", "millimeter": "mm", "millimeters": "mm",
    "metre": "m", "metres": "m", "meter": "m", "meters": "m",
}  # fmt: skip
_UNICODE_FRACTIONS = {
    "½": "1/2", "¼": "1/4", "¾": "3/4", "⅛": "1/8", "⅜": "3/8", "⅝": "5/8", "⅞": "7/8",
}  # fmt: skip
_NUMBER = r"(?:\d+\s*/\s*\d+|\d+\.\d+|\.\d+|\d+)(?:[\s-]+\d+\s*/\s*\d+)?"
_UNIT = "|".join(sorted((re.escape(a) for a in _ALIASES), key=len, reverse=True))
_JOIN = re.compile(r"\s*[-,]?\s*")  # between feet and inches: 7'-6"
_PART = re.compile(rf"\s*({_NUMBER})\s*({_UNIT})?(?![A-Za-z])\s*[,]?", re.IGNORECASE)
_WITH_COMMA = re.compile(r"\d+(?:,\d+)+(?:\.\d+)?")  # digits with a comma between them
_THOUSANDS = re.compile(r"[1-9]\d{0,2}(?:,\d{3})+(?:\.\d+)?")  # 40,000: the only comma that a quantity may hold


def comma_remedy(text: str) -> str:
    """Say how to write a number that holds a comma; "" where no comma stands between digits.

    Examples
    --------
    >>> comma_remedy("22,5 kg")
    'Write 22.5 with a point'
    >>> comma_remedy("7 ft, 6 in")
    ''
    """
    found = _WITH_COMMA.search(text)
    if found is None:
        return ""
    number, bare = found[0], found[0].replace(",", "")
    if number.count(",") > 1 or "." in number:
        return f"Write {bare} without commas"
    pointed = f"Write {number.replace(',', '.')} with a point"
    return f"{pointed}, or {bare} without the comma" if _THOUSANDS.fullmatch(number) else pointed


def _number(text: str) -> Fraction:
    total = Fraction(0)
    for piece in re.split(r"(?<!/)[\s-]+(?!\s*/)", re.sub(r"\s*/\s*", "/", text.strip())):
        total += Fraction(piece)
    return total


def parse_length(text: str | float, *, unit: str = "in") -> float:
    """Read a length as people write it and give it in inches.

    Parameters
    ----------
    text : str or float
        For example ``7' 6 1/2"``, ``7 ft 6-1/2 in``, ``16 3/8 in``, ``610 mm``. A bare number is in `unit`.
    unit : str
        Unit of bare numbers: in, ft, mm, cm or m.

    Returns
    -------
    float
        Length [in].

    Raises
    ------
    LengthError
        If the text is not a length, mixes feet with metric, or is not finite.

    Examples
    --------
    >>> parse_length('''7' 6 1/2"''')
    90.5
    >>> parse_length("7 ft 6-1/2 in")
    90.5
    >>> parse_length("610 mm") * 25.4
    610.0
    """
    shown = str(text)
    if isinstance(text, bool):
        raise LengthError(shown, "a length is needed, not true or false", f"Write it like {LENGTH_EXAMPLES}")
    if isinstance(text, int | float):
        if not math.isfinite(text):
            raise LengthError(shown, "not a finite length", f"Write it like {LENGTH_EXAMPLES}")
        return float(Fraction(str(text)) * _IN_PER[unit])
    body = text.strip()
    for sign, plain in _UNICODE_FRACTIONS.items():
        body = body.replace(sign, f" {plain}")
    negative = body.startswith(("-", "−"))
    body = body.lstrip("-−+").strip()
    if _WITH_COMMA.search(body):
        raise LengthError(shown, "a comma inside a number", comma_remedy(body))
    if not body:
        raise LengthError(shown, "empty where a length is needed", f"Write it like {LENGTH_EXAMPLES}")
    total, at, units = Fraction(0), 0, []
    while at < len(body):
        if at:
            at = _JOIN.match(body, at).end()  # type: ignore[union-attr]
        found = _PART.match(body, at)
        if found is None or found.end() == at:
            raise LengthError(shown, "not a length", f"Write it like {LENGTH_EXAMPLES}")
        try:
            value = _number(found[1])
        except (ValueError, ZeroDivisionError):
            raise LengthError(shown, "not a length", f"Write it like {LENGTH_EXAMPLES}") from None
        name = _ALIASES[found[2].lower()] if found[2] else unit
        total += value * _IN_PER[name]
        units.append(name)
        at = found.end()
    if len(units) > 1 and units != ["ft", "in"]:
        raise LengthError(shown, "only feet and inches may be written together", f"Write it like {LENGTH_EXAMPLES}")
    return float(-total if negative else total)


def parse_pitch(text: str | float) -> float:
    """Read a roof pitch and give rise over run (0.5 for ``6/12``, ``6 in 12`` or ``26.565 deg``).

    Raises
    ------
    LengthError
        If the text is no pitch, or lies outside 0 to 60 degrees.
    """
    shown, remedy = str(text), comma_remedy(str(text)) or "Write it like 6/12, 6 in 12 or 27 deg"
    ratio = re.fullmatch(r"\s*(\d+(?:\.\d+)?)\s*(?:/|:|in)\s*12\s*", shown)
    if ratio:
        rise = float(ratio[1]) / 12
    else:
        degrees = re.fullmatch(r"\s*(\d+(?:\.\d+)?)\s*(?:deg|degrees|°)\s*", shown)
        if degrees is None:
            raise LengthError(shown, "not a roof pitch", remedy)
        if float(degrees[1]) >= 90:
            raise LengthError(shown, "steeper than 60 degrees", remedy)
        rise = math.tan(math.radians(float(degrees[1])))
    if rise > math.tan(math.radians(60)) + 1e-12:
        raise LengthError(shown, "steeper than 60 degrees", remedy)
    return rise


def parse_angle(text: str | float) -> float:
    """Read an angle and give degrees; bare numbers are degrees.

    Raises
    ------
    LengthError
        If the text is no angle.
    """
    found = re.fullmatch(r"\s*(\d+(?:\.\d+)?)\s*(?:deg|degrees|°)?\s*", str(text))
    if found is None:
        raise LengthError(str(text), "not an angle", comma_remedy(str(text)) or "Write it like 45 or 45 deg")
    return float(found[1])


@functools.cache
def _registry() -> Any:
    import pint  # noqa: TID251 - this is the door

    registry: Any = pint.UnitRegistry(cache_folder=None)
    registry.define("cfm = foot ** 3 / minute = CFM")
    registry.define("inwg = 249.08891 pascal = in_wg = inches_water")
    registry.define("btuh = 0.29307107 watt = BTUh")
    return registry


_FAST = {
    "cfm": {"cfm": 1.0, "l/s": 1 / 0.47194744320, "m3/h": 1 / 1.69901079552},
    "in wg": {"in wg": 1.0, "inwg": 1.0, "pa": 1 / 249.08891},
    "lb": {"lb": 1.0, "lbs": 1.0, "kg": 1 / 0.45359237},
    "btu/h": {"btu/h": 1.0, "kw": 3412.141633, "w": 3.412141633},
    "degF": {"degf": 1.0, "°f": 1.0},
}  # the common spellings, so that reading an ordinary scene need not load pint
_PINT_NAME = {"cfm": "cfm", "in wg": "inwg", "lb": "pound", "btu/h": "btuh", "degF": "degF"}


def parse_quantity(text: str | float, *, unit: str) -> float:
    """Read a quantity such as ``400 cfm``, ``190 l/s``, ``0.25 in wg`` or ``60 Pa`` and give it in `unit`.

    Parameters
    ----------
    text : str or float
        A bare number is taken to be in `unit` already. A comma may only part thousands: ``40,000 btu/h``.
    unit : str
        cfm, "in wg", lb, btu/h or degF.

    Raises
    ------
    LengthError
        If the text cannot be read, or has another dimension.
    """
    shown = str(text)
    remedy = f"Write a number with its unit, for example {_EXAMPLE[unit]}"
    if isinstance(text, bool):
        raise LengthError(shown, "a quantity is needed, not true or false", remedy)
    if isinstance(text, int | float):
        if not math.isfinite(text):
            raise LengthError(shown, "not a finite quantity", remedy)
        return float(text)
    found = re.fullmatch(r"\s*([-+]?\d[\d,]*(?:\.\d+)?)\s*(.*?)\s*", text)
    if found is None:
        raise LengthError(shown, "not a quantity", remedy)
    digits = found[1].lstrip("+-")
    if "," in digits and not _THOUSANDS.fullmatch(digits):
        raise LengthError(shown, "a comma that parts no thousands", comma_remedy(digits) or remedy)
    number, name = float(found[1].replace(",", "")), found[2]
    fast = _FAST[unit].get(name.lower().replace("³", "3").replace("l / s", "l/s"))
    if name == "":
        return number
    if fast is not None:
        return number * fast
    if unit == "degF" and name.lower() in ("degc", "°c"):
        return number * 1.8 + 32
    registry = _registry()
    try:
        spelled = name.replace("in wg", "inwg").replace("°", "deg").replace("³", "**3")
        if unit == "btu/h" and name.lower() in ("btu/hr", "btuh"):
            return number
        return float(registry.Quantity(number, spelled).to(_PINT_NAME[unit]).magnitude)
    except Exception:  # pint raises many kinds; all mean the same to the person
        raise LengthError(shown, f"cannot be read as {unit}", remedy) from None


_EXAMPLE = {"cfm": "400 cfm or 190 l/s", "in wg": "0.25 in wg or 60 Pa", "lb": "55 lb or 25 kg",
            "btu/h": "40000 btu/h or 11 kW", "degF": "70 degF or 21 degC"}  # fmt: skip


def ticks(length_in: float) -> int:
    """Give a length [in] in whole ticks of 1/8128 in, rounded to nearest."""
    return round(length_in * TICKS_PER_IN)


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
        number, _, unit = words.rpartition(" ")
        return length_text(float(number) * float(_IN_PER[unit]), metric=metric, long=unit in ("ft", "m"))

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
