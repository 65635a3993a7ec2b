"""How single values of a scene file are read: lengths, flows, numbers, words.

Each kind of value is a small frozen reader that pydantic calls. A reader either gives the value or says in trade
words what is wrong and how to write it. `UNREAD` stands in for a value that could not be read: readers turn it into
"not a number" or None, so that the checks between fields can still run on the rest and never trip over it.
"""

from __future__ import annotations

import math
import re
from abc import ABC, abstractmethod
from collections.abc import Mapping
from dataclasses import dataclass
from difflib import get_close_matches
from enum import StrEnum
from typing import Any, Final

import tomlkit
from pydantic import GetCoreSchemaHandler, GetJsonSchemaHandler, ValidationInfo  # noqa: TID251 - this is the door
from pydantic_core import PydanticCustomError, core_schema

from routeviz.errors import LengthError
from routeviz.units import (
    LENGTH_EXAMPLES,
    MM_PER_IN,
    inch_text,
    parse_angle,
    parse_length,
    parse_pitch,
    parse_quantity,
)  # fmt: skip

__all__ = [
    "LONGEST_TEXT", "UNREAD", "Angle", "Choice", "Length", "LongLength", "Name", "Number", "Pitch", "Quantity", "Reader",
    "Words", "YesNo", "file_is_metric", "file_unit", "is_blank", "literal", "read_length", "unreadable",
]  # fmt: skip

LONGEST_TEXT: Final = 80


class _Unread:
    """The place of a value that could not be read."""

    def __repr__(self) -> str:
        return "UNREAD"


UNREAD: Final = _Unread()


def is_blank(value: object) -> bool:
    """Whether a word, choice or flag stands for one that could not be read."""
    return value is None


def unreadable(problem: str, remedy: str) -> PydanticCustomError:
    """Give the exception by which a reader refuses a value."""
    return PydanticCustomError("unreadable", "{problem}. {remedy}", {"problem": problem, "remedy": remedy})


def literal(value: object) -> str:
    """Write a value as it stands in a TOML file."""
    try:
        return str(tomlkit.item(value).as_string()).strip()
    except (ValueError, TypeError):
        return str(value)


def file_unit(info: ValidationInfo) -> str:
    """Give the unit of bare numbers in the file that is being read."""
    context = info.context
    return str(context.get("unit", "in")) if isinstance(context, Mapping) else "in"


def file_is_metric(info: ValidationInfo) -> bool:
    """Whether the file counts in millimetres, centimetres or metres."""
    return file_unit(info) in ("mm", "cm", "m")


class Reader(ABC):
    """Reads one kind of value; used as pydantic metadata in ``Annotated``."""

    blank: Any = None

    @abstractmethod
    def read(self, value: Any, info: ValidationInfo) -> Any:
        """Give the value, or raise what `unreadable` gives."""

    @abstractmethod
    def schema(self) -> dict[str, Any]:
        """Give the JSON schema of what may be written."""

    def show(self, value: Any, *, metric: bool) -> str:
        """Write a value for a person."""
        return literal(value)

    def __get_pydantic_core_schema__(self, source: Any, handler: GetCoreSchemaHandler) -> core_schema.CoreSchema:
        return core_schema.with_info_plain_validator_function(self._read)

    def __get_pydantic_json_schema__(
        self, schema: core_schema.CoreSchema, handler: GetJsonSchemaHandler
    ) -> dict[str, Any]:
        return self.schema()

    def _read(self, value: Any, info: ValidationInfo) -> Any:
        return self.blank if value is UNREAD else self.read(value, info)


@dataclass(frozen=True)
class Length(Reader):
    """A length [in]; the bounds are those of a sensible kitchen."""

    lowest: float = -2400.0
    highest: float = 2400.0
    blank = math.nan

    def read(self, value: Any, info: ValidationInfo) -> float:
        """Read text such as ``16 3/8 in`` or a number in the file's unit."""
        found = read_length(value, info)
        metric = file_is_metric(info)
        if found < self.lowest or not found <= self.highest:
            raise unreadable(*_outside(found, self.lowest, self.highest, lambda v: self.show(v, metric=metric)))
        return found

    def schema(self) -> dict[str, Any]:
        """A text with its unit, or a number in the file's unit."""
        return {"type": ["string", "number"]}

    def show(self, value: Any, *, metric: bool) -> str:
        """Write the length in the scene's own measures, as exactly as a tape reads."""
        return f"{round(value * MM_PER_IN, 1):g} mm" if metric else inch_text(value, denominator=64)


@dataclass(frozen=True)
class LongLength(Reader):
    """A long distance [ft]; a bare number is in feet, or in metres where the file is metric."""

    lowest: float = 0.0
    highest: float = 20000.0
    blank = math.nan

    def read(self, value: Any, info: ValidationInfo) -> float:
        """Read text such as ``1200 ft`` or ``350 m``."""
        found = read_length(value, info, unit="m" if file_is_metric(info) else "ft") / 12
        if not self.lowest <= found <= self.highest:
            raise unreadable(*_outside(found, self.lowest, self.highest, lambda v: f"{v:g} ft"))
        return found

    def schema(self) -> dict[str, Any]:
        """A text with its unit, or a number of feet (metres in metric files)."""
        return {"type": ["string", "number"]}

    def show(self, value: Any, *, metric: bool) -> str:
        """Write feet or metres."""
        return f"{value * 0.3048:.0f} m" if metric else f"{value:g} ft"


def read_length(value: Any, info: ValidationInfo, *, unit: str = "") -> float:
    """Read a length [in]; bare numbers are in `unit`, or in the file's."""
    if not isinstance(value, str | int | float) or isinstance(value, bool):
        raise unreadable("a length is needed here", f"Write it like {LENGTH_EXAMPLES}")
    if isinstance(value, str) and len(value) > LONGEST_TEXT:
        raise unreadable("too long a text for a length", f"Write it like {LENGTH_EXAMPLES}")
    try:
        found = parse_length(value, unit=unit or file_unit(info))
    except LengthError as fault:
        raise unreadable(fault.problem, fault.remedy) from None
    except (OverflowError, ValueError):
        raise unreadable("not a finite length", f"Write it like {LENGTH_EXAMPLES}") from None
    return found


def _outside(found: float, lowest: float, highest: float, say: Any) -> tuple[str, str]:
    if found < lowest:
        if lowest == 0:
            return "must not be negative", f"Write {say(0.0)} or more"
        return f"must be at least {say(lowest)}", "Check the number and its unit"
    return f"must be at most {say(highest)}", "Check the number and its unit"


_METRIC = {  # exact but for water at 4 degC (NIST SP 811 appendix B) and the international table's btu
    "cfm": (0.4719474432, "l/s"), "in wg": (249.08891, "Pa"), "lb": (0.45359237, "kg"), "btu/h": (0.00029307107, "kW"),
}  # fmt: skip


@dataclass(frozen=True)
class Quantity(Reader):
    """A flow, pressure, weight, heat or temperature with its unit."""

    unit: str  # cfm, "in wg", lb, btu/h or degF
    lowest: float = 0.0
    highest: float = 1e6
    blank = math.nan

    _UNIT_NAME = re.compile(r"[\s\d.,+-]*[A-Za-z0-9°³²/ .]{0,24}")

    def read(self, value: Any, info: ValidationInfo) -> float:
        """Read text such as ``400 cfm`` or a number in the unit that the key states."""
        if not isinstance(value, str | int | float) or isinstance(value, bool):
            raise unreadable("a number with its unit is needed here", f"Write it like {self._example()}")
        if isinstance(value, str) and (len(value) > LONGEST_TEXT or not self._UNIT_NAME.fullmatch(value)):
            raise unreadable("not a quantity", f"Write it like {self._example()}")
        try:
            found = parse_quantity(value, unit=self.unit)
        except LengthError as fault:
            raise unreadable(fault.problem, fault.remedy) from None
        except OverflowError:
            raise unreadable("not a finite quantity", f"Write it like {self._example()}") from None
        if not self.lowest <= found <= self.highest:
            raise unreadable(*_outside(found, self.lowest, self.highest, lambda v: f"{v:g} {self.unit}"))
        return found

    def _example(self) -> str:
        return {"cfm": "400 cfm or 190 l/s", "in wg": "0.25 in wg or 60 Pa", "lb": "55 lb or 25 kg",
                "btu/h": "40000 btu/h or 11 kW"}.get(self.unit, "70 degF or 21 degC")  # fmt: skip

    def schema(self) -> dict[str, Any]:
        """A text with its unit, or a number."""
        return {"type": ["string", "number"]}

    def show(self, value: Any, *, metric: bool) -> str:
        """Write the number with its unit, as a scene file takes it; metric scenes read metric units."""
        factor, name = _METRIC.get(self.unit, (1.0, self.unit)) if metric else (1.0, self.unit)
        if metric and self.unit == "degF":
            return f"{(value - 32) / 1.8:.3g} degC"
        return f"{value * factor:.4g} {name}" if factor != 1.0 else f"{value:g} {self.unit}"


@dataclass(frozen=True)
class Number(Reader):
    """A plain number; `whole` for counts."""

    lowest: float = 0.0
    highest: float = 1e6
    whole: bool = False
    unit: str = ""
    blank = math.nan

    def read(self, value: Any, info: ValidationInfo) -> float | int:
        """Read a number that stands without quotes."""
        kind = "a whole number" if self.whole else "a number"
        wanted = int if self.whole else int | float
        if isinstance(value, bool) or not isinstance(value, wanted):
            raise unreadable(f"{kind} is needed here", f"Write {kind} without quotes, such as {self._example()}")
        if not self.lowest <= value <= self.highest:
            raise unreadable(*_outside(value, self.lowest, self.highest, lambda v: f"{v:g}"))
        return value if self.whole else float(value)

    def _example(self) -> str:
        return f"{max(self.lowest, min(self.highest, 1.0)):g}"

    def schema(self) -> dict[str, Any]:
        """A number within bounds."""
        return {"type": "integer" if self.whole else "number", "minimum": self.lowest, "maximum": self.highest}

    def show(self, value: Any, *, metric: bool) -> str:
        """Write the number."""
        return f"{value:g} {self.unit}".strip()


@dataclass(frozen=True)
class YesNo(Reader):
    """True or false."""

    def read(self, value: Any, info: ValidationInfo) -> bool:
        """Read true or false."""
        if not isinstance(value, bool):
            raise unreadable("true or false is needed here", "Write true or false, without quotes")
        return value

    def schema(self) -> dict[str, Any]:
        """True or false."""
        return {"type": "boolean"}

    def show(self, value: Any, *, metric: bool) -> str:
        """Write yes or no."""
        return "yes" if value else "no"


@dataclass(frozen=True)
class Words(Reader):
    """Free text on one or more lines."""

    may_be_empty: bool = True

    def read(self, value: Any, info: ValidationInfo) -> str:
        """Read a text."""
        if not isinstance(value, str):
            raise unreadable("a text is needed here", 'Put it in quotes, like "text"')
        if not value.strip() and not self.may_be_empty:
            raise unreadable("must not be empty", "Say it in a few words")
        return value.strip()

    def schema(self) -> dict[str, Any]:
        """A text."""
        return {"type": "string"} if self.may_be_empty else {"type": "string", "minLength": 1}


@dataclass(frozen=True)
class Name(Reader):
    """A name by which other lines, findings and drawings call a thing."""

    _PATTERN = re.compile(r"[^\W_][\w '&+-]{0,39}")

    def read(self, value: Any, info: ValidationInfo) -> str:
        """Read a short name without dots or slashes."""
        remedy = 'Use letters, digits, spaces and hyphens, like "sink-window"'
        if not isinstance(value, str):
            raise unreadable("a name is needed here", remedy)
        if not self._PATTERN.fullmatch(value):
            raise unreadable("cannot be a name", remedy)
        return value

    def schema(self) -> dict[str, Any]:
        """A short text."""
        return {"type": "string", "minLength": 1, "maxLength": 40}


@dataclass(frozen=True)
class Choice(Reader):
    """One of a few words."""

    words: type[StrEnum] | tuple[str, ...]

    def read(self, value: Any, info: ValidationInfo) -> str:
        """Read one of the words; an enum gives its member."""
        known = self.known()
        if isinstance(value, str) and value.strip().lower() in known:
            word = value.strip().lower()
            return word if isinstance(self.words, tuple) else self.words(word)
        near = get_close_matches(value.lower(), known, n=1) if isinstance(value, str) and len(value) < 60 else []
        meant = f'Did you mean "{near[0]}"? ' if near else ""
        raise unreadable("not one of the known words", f"{meant}Write one of: {', '.join(known)}")

    def known(self) -> list[str]:
        """List the words."""
        return list(self.words) if isinstance(self.words, tuple) else [str(m) for m in self.words]

    def schema(self) -> dict[str, Any]:
        """One of the words."""
        return {"type": "string", "enum": self.known()}


@dataclass(frozen=True)
class Pitch(Reader):
    """A roof pitch, given as rise over run."""

    blank = math.nan

    def read(self, value: Any, info: ValidationInfo) -> float:
        """Read ``6/12``, ``6 in 12`` or ``27 deg``."""
        if not isinstance(value, str) or len(value) > LONGEST_TEXT:
            raise unreadable("a roof pitch is needed here", 'Write it like "6/12", "6 in 12" or "27 deg"')
        try:
            return parse_pitch(value)
        except LengthError as fault:
            raise unreadable(fault.problem, fault.remedy) from None

    def schema(self) -> dict[str, Any]:
        """A text such as 6/12 or 27 deg."""
        return {"type": "string"}

    def show(self, value: Any, *, metric: bool) -> str:
        """Write rise in 12, or degrees."""
        return f"{math.degrees(math.atan(value)):.1f} deg" if metric else f"{value * 12:g}/12"


@dataclass(frozen=True)
class Angle(Reader):
    """An angle [deg]."""

    lowest: float = 5.0
    highest: float = 90.0
    blank = math.nan

    def read(self, value: Any, info: ValidationInfo) -> float:
        """Read ``45`` or ``45 deg``."""
        if not isinstance(value, str | int | float) or isinstance(value, bool) or len(str(value)) > LONGEST_TEXT:
            raise unreadable("an angle is needed here", "Write it like 45 or 45 deg")
        try:
            found = parse_angle(value)
        except LengthError as fault:
            raise unreadable(fault.problem, fault.remedy) from None
        if not self.lowest <= found <= self.highest:
            raise unreadable(*_outside(found, self.lowest, self.highest, lambda v: f"{v:g} deg"))
        return found

    def schema(self) -> dict[str, Any]:
        """A text with deg, or a number of degrees."""
        return {"type": ["string", "number"]}

    def show(self, value: Any, *, metric: bool) -> str:
        """Write degrees."""
        return f"{value:g} deg"
