"""DRAW: a plan becomes sheets; primitives in millimetres first, then SVG, PDF and PNG.

The front end knows kitchens and emits frozen primitives; the back ends know only primitives. `checking.faults` says
what is wrong with a sheet before anyone prints it.
"""

from __future__ import annotations

from routeviz.drawings.checking import faults
from routeviz.drawings.packet import packet, sheets, svgs, take_place
from routeviz.drawings.png import to_png
from routeviz.drawings.sheet import PAPERS, paper_named, picture_room
from routeviz.drawings.svg import to_svg
from routeviz.drawings.tape_sheet import tape_page

__all__ = [
    "PAPERS", "faults", "packet", "paper_named", "picture_room", "sheets", "svgs", "take_place", "tape_page", "to_png", "to_svg",
]  # fmt: skip
