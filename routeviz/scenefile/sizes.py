"""How cross-sections are read: sizes of members, duct sections, layers with their thickness."""

from __future__ import annotations

import math
import re
from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any, NamedTuple

from pydantic import ValidationInfo  # noqa: TID251 - this is the door

from routeviz.catalog import table
from routeviz.errors import LengthError
from routeviz.model.scene import SectionShape, SectionSize
from routeviz.scenefile.fields import (
    LONGEST_TEXT,
    Choice,
    Length,
    Reader,
    file_is_metric,
    file_unit,
    read_length,
    unreadable,
)  # fmt: skip
from routeviz.units import comma_remedy, parse_length

__all__ = ["MemberSize", "Section", "SizeText", "split_layer"]


class SizeText(NamedTuple):
    """A member's cross-section: what people call it, its real width and depth [in], and whether that is a trade size."""

    text: str
    width_in: float
    depth_in: float
    nominal: bool = False


_BY = re.compile(r"\s*[x×]\s*", re.IGNORECASE)
_HAS_UNIT = re.compile(r"(mm|cm|m|in\.?|inch|inches|ft|[\"'″′”’])\s*$", re.IGNORECASE)


def _two_lengths(text: str, unit: str) -> tuple[float, float]:
    """Read ``3-1/4 x 10 in``: a unit after the second number serves both. Raises LengthError."""
    parts = _BY.split(text.strip())
    if len(parts) != 2 or len(text) > LONGEST_TEXT:
        raise LengthError(text, "not two lengths", "Write it like 3-1/4 x 10 in")
    first, second = parts
    found = _HAS_UNIT.search(second)
    if found and not _HAS_UNIT.search(first):
        first = f"{first} {found[1]}"
    try:
        return parse_length(first, unit=unit), parse_length(second, unit=unit)
    except OverflowError:
        raise LengthError(text, "not two lengths", "Write it like 3-1/4 x 10 in") from None


@dataclass(frozen=True)
class MemberSize(Reader):
    """A member's size: nominal (``2x8``) or actual with a unit (``38x184 mm``)."""

    blank = SizeText("", math.nan, math.nan)

    def read(self, value: Any, info: ValidationInfo) -> SizeText:
        """Read a nominal size through the dressed-size table, or an actual one."""
        dressed = {k: v for k, v in table("timber")["dressed"].items() if k != "source"}
        remedy = f'Write a nominal size like "2x8" ({", ".join(dressed)}), or the real one like "38x184 mm"'
        if not isinstance(value, str) or len(value) > LONGEST_TEXT:
            raise unreadable("a member size is needed here", remedy)
        text = value.strip()
        nominal = re.fullmatch(r"(\d+)\s*[x×]\s*(\d+)", text, re.IGNORECASE)
        if nominal and nominal[1] in dressed and nominal[2] in dressed:
            return SizeText(f"{nominal[1]}x{nominal[2]}", float(dressed[nominal[1]]), float(dressed[nominal[2]]), True)
        if not _HAS_UNIT.search(text) and not file_is_metric(info):
            raise unreadable("not a known lumber size", remedy)
        try:
            width, depth = _two_lengths(text, file_unit(info))
        except LengthError:
            raise unreadable("not a member size", comma_remedy(text) or remedy) from None
        if not (0 < width <= 48 and 0 < depth <= 96):
            raise unreadable("not a sensible member size", remedy)
        return SizeText(text, width, depth)

    def schema(self) -> dict[str, Any]:
        """A text such as 2x8 or 38x184 mm."""
        return {"type": "string"}

    def show(self, value: Any, *, metric: bool) -> str:
        """Write the size as it was given."""
        return str(value.text)


@dataclass(frozen=True)
class Section(Reader):
    """A duct section: text such as ``6 in round`` or ``3-1/4 x 10 in``, or a table."""

    blank = SectionSize(SectionShape.ROUND, math.nan, math.nan)
    _REMEDY = 'Write it like "6 in round", "3-1/4 x 10 in", "150 mm round" or "60 x 200 mm oval"'

    def read(self, value: Any, info: ValidationInfo) -> SectionSize:
        """Read a section; the wide side of a rectangle or oval comes first in the result."""
        if isinstance(value, str):
            shape, width, height = self._text(value, file_unit(info))
        elif isinstance(value, Mapping):
            shape, width, height = self._table(value, info)
        else:
            raise unreadable("a duct section is needed here", self._REMEDY)
        if not (min(width, height) >= 1.5 and max(width, height) <= 40):
            raise unreadable("not a sensible duct section", f"{self._REMEDY}; sides from 1 1/2 in to 40 in")
        return SectionSize(shape, max(width, height), min(width, height))

    def _text(self, text: str, unit: str) -> tuple[SectionShape, float, float]:
        words = text.strip().lower()
        shape = re.search(r"\b(round|oval|rectangular)\b", words)
        size = re.sub(r"\b(round|oval|rectangular)\b", " ", words).strip()
        try:
            if _BY.search(size):
                if shape and shape[1] == "round":
                    raise unreadable("a round duct has one size", self._REMEDY)
                width, height = _two_lengths(size, unit)
                return SectionShape(shape[1] if shape else "rectangular"), width, height
            if shape and shape[1] == "round" and len(size) <= LONGEST_TEXT:
                width = parse_length(size, unit=unit)
                return SectionShape.ROUND, width, width
        except (LengthError, OverflowError):
            pass
        raise unreadable("not a duct section", comma_remedy(text) or self._REMEDY)

    def _table(self, value: Mapping[str, Any], info: ValidationInfo) -> tuple[SectionShape, float, float]:
        unknown = set(value) - {"shape", "width", "height"}
        if unknown or "width" not in value:
            what = f"unknown key {min(unknown)!r}" if unknown else "a section needs its width"
            raise unreadable(what, "Write {shape, width, height}; a round one {shape, width}")
        shape = Choice(SectionShape).read(value.get("shape", "rectangular"), info)
        width = read_length(value["width"], info)
        return SectionShape(shape), width, read_length(value.get("height", value["width"]), info)

    def schema(self) -> dict[str, Any]:
        """A text, or a table of shape, width and height."""
        length = {"type": ["string", "number"]}
        shapes = {"type": "string", "enum": [str(s) for s in SectionShape]}
        return {
            "anyOf": [
                {"type": "string"},
                {
                    "type": "object",
                    "properties": {"shape": shapes, "width": length, "height": length},
                    "required": ["width"],
                    "additionalProperties": False,
                },
            ]
        }

    def show(self, value: Any, *, metric: bool) -> str:
        """Write the section in the scene's own measures."""
        wide, high = (Length().show(side, metric=metric) for side in (value.width_in, value.height_in))
        return f"{wide} round" if value.is_round else f"{high} x {wide} {value.shape}"


def split_layer(text: str, unit: str) -> tuple[str, float]:
    """Read ``gypsum board 1/2 in`` (or ``1/2 in gypsum board``) and give material and thickness [in].

    Raises
    ------
    LengthError
        If no thickness, or no material, stands in the text.
    """
    words = text.split()
    if len(text) <= LONGEST_TEXT:
        cuts = [(" ".join(words[:n]), " ".join(words[n:])) for n in range(1, len(words))]
        cuts += [(" ".join(words[n:]), " ".join(words[:n])) for n in range(len(words) - 1, 0, -1)]
        for material, thickness in cuts:
            if not re.search(r"[A-Za-z]{2}", material) or material[0].isdigit():
                continue
            try:
                return material, parse_length(thickness, unit=unit)
            except (LengthError, OverflowError):
                continue
    raise LengthError(
        text, "not a layer", comma_remedy(text) or 'Write material and thickness, like "gypsum board 1/2 in"'
    )
