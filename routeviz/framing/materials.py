"""What a sheet material is: its kind in the house and whether it burns."""

from __future__ import annotations

from routeviz.model.scene import MemberKind
from routeviz.model.solids import Crossing, SolidKind

__all__ = ["is_combustible", "is_gap", "layer_kind", "member_burns", "member_crossing"]

_SAFE = (
    "gypsum", "plaster", "brick", "block", "stone", "concrete", "masonry", "cement", "steel", "metal", "tile", "stucco",
    "glass", "slate", "mineral", "rock wool", "air", "render", "zinc", "copper", "aluminum", "aluminium", "screed",
)  # fmt: skip
_BURNS = ("wood", "lath", "osb", "plywood", "timber", "vinyl", "foam", "cedar", "pine", "asphalt")
_MASONRY = ("brick", "block", "stone", "concrete", "masonry", "screed")
_SHEATHING = ("sheathing", "osb", "plywood")
_GAPS = ("air", "cavity", "furring", "batten", "strapping")


def is_gap(material: str) -> bool:
    """Whether a layer is a gap that strips stand in rather than a sheet."""
    return any(word in material.lower() for word in _GAPS)


def is_combustible(material: str) -> bool:
    """Whether a sheet burns; what is not known to be safe is taken to burn.

    Gypsum board counts as safe (its core does not burn), wood lath under plaster does not.
    """
    name = material.lower()
    if any(word in name for word in _BURNS):
        return True
    return not any(word in name for word in _SAFE)


def layer_kind(material: str, *, outer: bool) -> SolidKind:
    """Give the kind of a wall layer from its material."""
    name = material.lower()
    if any(word in name for word in _MASONRY) and "cement board" not in name:
        return SolidKind.MASONRY
    if any(word in name for word in _SHEATHING) and "siding" not in name:
        return SolidKind.SHEATHING
    return SolidKind.CLADDING if outer else SolidKind.BOARD


def member_burns(kind: MemberKind) -> bool:
    """Whether a framing member burns."""
    return kind is not MemberKind.STEEL


def member_crossing(kind: MemberKind) -> Crossing:
    """Say how a duct may meet a repeated member: only furring strips may be cut, by their rule."""
    return Crossing.RULE if kind is MemberKind.FURRING else Crossing.NEVER
