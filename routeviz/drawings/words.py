"""How figures are written on sheets."""

from __future__ import annotations

from routeviz.model.scene import Scene
from routeviz.units import inch_text, length_text, mm_text

__all__ = ["figure", "length", "unit_note"]


def figure(length_in: float, scene: Scene) -> str:
    """Write a dimension without its unit: ``13 1/2`` or ``343``; the sheet says the unit once."""
    if scene.metric:
        return mm_text(length_in).removesuffix(" mm")
    return inch_text(length_in).removesuffix(" in")


def length(length_in: float, scene: Scene) -> str:
    """Write a length with its unit."""
    return length_text(length_in, metric=scene.metric)


def unit_note(scene: Scene) -> str:
    """Say which unit the dimensions have."""
    return "All sizes in millimetres." if scene.metric else "All sizes in inches."
