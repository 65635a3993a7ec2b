"""Names as people say them."""

from __future__ import annotations

__all__ = ["spoken"]


def spoken(name: str) -> str:
    """Write the name of a thing as it is said: ``sink-window`` is the sink window."""
    return name.replace("-", " ").replace("_", " ")
