"""The whole wall's map for a page, from many plans."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from routeviz.model.plan import Plan
    from routeviz.views.wallmap import WallMap

__all__ = ["even_step", "wall_map"]

_HEIGHTS_APART = 3  # steps along the wall to one step in height
_EVEN_MM = 5.0
_MM_PER_IN = 25.4


def even_step(step_in: float, *, metric: bool) -> float:
    """Give a step [in] as people of a metric home count it."""
    if not metric:
        return step_in
    return max(_EVEN_MM, round(step_in * _MM_PER_IN / _EVEN_MM) * _EVEN_MM) / _MM_PER_IN


def wall_map(found: Plan, step_in: float, *, progress: Callable[[int, int], None] | None = None) -> WallMap | None:
    """Answer for places all along the wall and heights through the legal window, a step apart.

    In a metric home the step is the next one of whole 5 mm, 50 mm for 2 in. None for a route as built, which stays where it is, and for a wall too short to move along.

    Raises
    ------
    LimitError
        If the field for so many places would be too large.
    """
    from routeviz import studies
    from routeviz.views.wallmap import WallMap, cell_of

    scene = found.scene
    step_in = even_step(step_in, metric=scene.metric)
    positions = studies.places(scene, step_in=step_in)
    heights = studies.heights(scene, step_in=_HEIGHTS_APART * step_in)
    if scene.as_built is not None or not positions:
        return None
    rows = studies.wall_plans(scene, positions, heights, progress=progress)
    here = scene.hood.centre_in, scene.hood.mount_in
    cells = tuple(
        tuple(cell_of(found if (p.scene.hood.centre_in, p.scene.hood.mount_in) == here else p) for p in row)
        for row in rows
    )
    return WallMap(positions, heights, cells)
