"""What stands or hangs beside the cooktop."""

from __future__ import annotations

from collections.abc import Iterator

from routeviz.model.scene import Obstacle, ObstacleKind
from routeviz.rules.context import Context
from routeviz.rules.cuts import overlap_in

__all__ = ["side_things"]

_NO_THING = frozenset({ObstacleKind.HOLE, ObstacleKind.DUCT, ObstacleKind.CHASE, ObstacleKind.LIGHT})


def side_things(context: Context, *, within_in: float, stone: bool = False) -> Iterator[tuple[Obstacle, float]]:
    """Give things beside the cooktop that reach above it, each with its sideways distance [in].

    Things that do not burn or are protected count only with `stone`: a maker's own distance holds for them too.
    A thing counts when it is beside, not over, the cooktop, nearer than `within_in`, and not wholly in front of it.
    """
    top = context.scene.cooktop
    left, right = top.centre_in - top.width_in / 2, top.centre_in + top.width_in / 2
    for thing in context.scene.obstacles:
        if thing.kind in _NO_THING or ((not thing.combustible or thing.protected) and not stone):
            continue
        apart = -overlap_in((left, right), (thing.left_in, thing.left_in + thing.width_in))
        reaches = thing.bottom_in + thing.height_in > top.height_in
        beside = thing.out_in < top.back_in + top.depth_in
        if reaches and beside and -1e-9 <= apart < within_in - 1e-9:
            yield thing, max(0.0, apart)
