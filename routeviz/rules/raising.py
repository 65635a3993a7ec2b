"""What may be done with a thing that hangs too low: shortened, raised, or taken away, by the room there is for it."""

from __future__ import annotations

from dataclasses import replace

from routeviz.model.scene import Obstacle, ObstacleKind, Scene
from routeviz.model.solids import obstacle_box
from routeviz.rules.context import Context
from routeviz.rules.room import free_for

__all__ = ["may_be_raised", "raised_words"]

_BUILT_IN = frozenset(
    {ObstacleKind.SOFFIT, ObstacleKind.BEAM, ObstacleKind.PIPE, ObstacleKind.TRUNK, ObstacleKind.UNIT}
)


def may_be_raised(scene: Scene, thing: Obstacle, by_in: float) -> bool:
    """Whether a thing has room higher up by so much [in]: under the ceiling, clear of hood, cover and other things."""
    return free_for(scene, obstacle_box(replace(thing, bottom_in=thing.bottom_in + by_in)), thing.id)


def raised_words(context: Context, thing: Obstacle, lack_in: float, name: str) -> str:
    """Say what clears a thing whose underside is too low by `lack_in` [in]; no more than there is of it or room for it.

    `name` is what it is called in the sentence: "it", "the spice shelf".
    """
    scene, much = context.scene, context.length(lack_in)
    if thing.kind in _BUILT_IN:
        return f"Set cooktop and hood clear of {name}"
    ways = []
    if thing.height_in > 2 * lack_in:  # at least half of it stays
        ways.append("shorten")
    if may_be_raised(scene, thing, lack_in):
        ways.append("raise")
    if ways:
        said = " or ".join(ways)
        return f"{said[0].upper()}{said[1:]} {name} by {much}"
    return f"Take {name} away, or hang it clear of the cooktop and the hood"
