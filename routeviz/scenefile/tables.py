"""What every table of a scene file has in common: how its keys are declared.

A key is `asked` (must be there), `optional` (may be left out, nothing is taken in its place) or `taken` (a stated
value is taken when it is left out, and the scene lists it as an assumption with the reason given here).
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import Annotated, Any, Final

from pydantic import BaseModel, ConfigDict, Field, model_validator  # noqa: TID251 - this is the door

from routeviz.scenefile.fields import UNREAD, Length, LongLength, Name, Words, YesNo, unreadable

__all__ = [
    "Distance", "Flag", "Gap", "Height", "Label", "Long", "Size", "Table", "Text", "Thickness", "asked", "optional",
    "taken",
]  # fmt: skip

_LEAST: Final = 1 / 16

Size = Annotated[float, Length(_LEAST, 1200.0)]  # a width, depth or height of a thing
Thickness = Annotated[float, Length(1 / 64, 60.0)]
Gap = Annotated[float, Length(0.0, 600.0)]  # nothing or more
Height = Annotated[float, Length(0.0, 1200.0)]  # above a floor
Distance = Annotated[float, Length()]  # may be negative
Long = Annotated[float, LongLength()]
Flag = Annotated[bool, YesNo()]
Text = Annotated[str, Words()]
Label = Annotated[str, Name()]


def asked(description: str, example: Any) -> Any:
    """Declare a key that must be there; the example is shown when it is missing."""
    return Field(description=description, examples=[example])


def optional(description: str, example: Any, default: Any = None) -> Any:
    """Declare a key that may be left out."""
    return Field(default=default, description=description, examples=[example])


def taken(default: Any, reason: str, description: str, example: Any) -> Any:
    """Declare a key whose value is taken, with a reason, when it is left out."""
    return Field(default=default, description=description, examples=[example], json_schema_extra={"assume": reason})


class Table(BaseModel):
    """A table of the file. Unknown keys are mistakes; everything is read once and never changed."""

    model_config = ConfigDict(extra="forbid", frozen=True, arbitrary_types_allowed=True)

    def idle(self) -> frozenset[str]:
        """Give the keys that mean nothing beside what the others say; their defaults are no assumption."""
        return frozenset()

    @model_validator(mode="before")
    @classmethod
    def _is_table(cls, value: Any) -> Any:
        if value is UNREAD:
            return {key: UNREAD for key, field in cls.model_fields.items() if field.is_required()}
        if not isinstance(value, Mapping):
            raise unreadable("a table is needed here", "Give its keys under a [header], or in braces { key = value }")
        return value
