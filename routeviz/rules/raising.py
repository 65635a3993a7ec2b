"""What may be done with a thing that hangs too low: shortened, raised, or taken away, by the room there is for it."""

from __future__ import annotations

from dataclasses import replace

from routeviz.model.overhead import ceiling_span_in
from routeviz.model.scene import Obstacle, ObstacleKind, Scene
from routeviz.model.solids import Box, obstacle_box
from routeviz.rules.context import Context
from routeviz.rules.cuts import overlap_in
from routeviz.rules.outcome import EPSILON_IN
from routeviz.rules.room import hood_boxes

__all__ = ["may_be_raised", "raised_words"]

_BUILT_IN = frozenset(
    {ObstacleKind.SOFFIT, ObstacleKind.BEAM, ObstacleKind.PIPE, ObstacleKind.TRUNK, ObstacleKind.UNIT}
)


def _hood_and_cover(scene: Scene) -> tuple[Box, ...]:
    boxes = hood_boxes(scene)
    if not boxes or scene.hood.cover is None:
        return boxes
    body = boxes[-1]
    return (*boxes, Box(body.lo, (body.hi[0], body.hi[1], scene.kitchen.ceiling_in)))


def may_be_raised(scene: Scene, thing: Obstacle, by_in: float) -> bool:
    """Whether a thing has room higher up by so much [in]: under the ceiling, clear of hood, cover and other things."""
    box = obstacle_box(replace(thing, bottom_in=thing.bottom_in + by_in))
    lowest, _ = ceiling_span_in(scene, (box.lo[0], box.hi[0]), (-box.hi[1], -box.lo[1]))
    others = (obstacle_box(o) for o in scene.obstacles if o.id != thing.id)
    taken = (*_hood_and_cover(scene), *others)
    shares = (all(overlap_in((a.lo[i], a.hi[i]), (box.lo[i], box.hi[i])) > EPSILON_IN for i in range(3)) for a in taken)
    return box.hi[2] <= lowest + EPSILON_IN and not any(shares)


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
