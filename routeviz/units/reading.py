"""What a tape, a leaflet or a label says, to floats; the only door to pint."""

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
    "parse_angle",
    "parse_length",
    "parse_pitch",
    "parse_quantity",
    "ticks",
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
