"""Names as people say them."""

from __future__ import annotations

import re

__all__ = ["spoken"]

_I_JOIST = re.compile(r"\bi joist\b")


def spoken(name: str) -> str:
    """Write the name of a thing as it is said: ``sink-window`` is the sink window, ``i-joist-4`` I-joist 4."""
    said = name.replace("-", " ").replace("_", " ")
    return _I_JOIST.sub("I-joist", said)
