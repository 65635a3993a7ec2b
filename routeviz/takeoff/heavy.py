"""A heavy hood and a long cover: what holds them, and what is asked before they are hung."""

from __future__ import annotations

import math

from routeviz.catalog import table
from routeviz.model.overhead import cover_room_in
from routeviz.model.scene import Scene
from routeviz.model.takeoff import BuyLine, Sheet, Step
from routeviz.units import length_text, quantity_text

__all__ = ["heavy_steps", "is_heavy", "is_long", "stay_lines", "stays", "weight_text"]


def is_heavy(scene: Scene) -> bool:
    """Whether two people cannot raise the hood, and a few screws are not trusted with it."""
    return scene.hood.weight_lb > float(table("rules")["heavy"]["hood_over_lb"])


def is_long(scene: Scene) -> bool:
    """Whether the cover wants wood behind its bracket and stays on the way up."""
    return stays(scene) > 0


def stays(scene: Scene) -> int:
    """Count the stays of the cover: one for each further length of 6 ft, begun ones too; 0 for a short cover."""
    room = cover_room_in(scene)
    if room is None:
        return 0
    return max(0, math.ceil(room[1] / float(table("rules")["heavy"]["cover_over_in"]) - 1e-9) - 1)


def weight_text(scene: Scene) -> str:
    """Write the hood's weight."""
    return quantity_text(scene.hood.weight_lb, "lb", metric=scene.metric)


def stay_lines(scene: Scene) -> list[BuyLine]:
    """Give the stays of a long cover."""
    count, room = stays(scene), cover_room_in(scene)
    if not count or room is None:
        return []
    long = length_text(room[1], metric=scene.metric)
    return [
        BuyLine(
            "stay for the cover",
            "as its maker supplies",
            count,
            "each",
            f"{long} of cover; each into framing or blocking",
        )
    ]


def heavy_steps(scene: Scene) -> list[Step]:
    """Give what is asked of the maker before a heavy hood's screws are marked."""
    if not is_heavy(scene):
        return []
    text = (f"Get the maker's fixing for {weight_text(scene)}: how many screws, of which size, how far into the wood. Every mark "
            "gets framing or blocking behind it; no screw goes into board alone.")  # fmt: skip
    return [
        Step(
            "heavy",
            text,
            ("measure",),
            "The maker's fixing is at hand, and it is what hangs the hood.",
            "",
            Sheet.MARKING,
        )
    ]
