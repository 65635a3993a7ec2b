"""What the rules ask of where a route runs, and for how long."""

from __future__ import annotations

from functools import lru_cache

from routeviz.geometry import whereabouts as following
from routeviz.geometry.whereabouts import Stretch, followed, in_cold, pieces
from routeviz.model.scene import SpaceKind
from routeviz.model.solids import Passage, Vec3
from routeviz.rules.context import Context

__all__ = ["boxed_run", "cold_run", "lengths_by_space", "pieces", "space_kind"]


def space_kind(context: Context, space: str) -> SpaceKind | None:
    """Give what a space is, by its id in the scene or by the word itself; None when nobody can tell."""
    return following.space_kind(context.scene, space)


@lru_cache(maxsize=2)  # several rules follow the same route
def _followed(context: Context) -> tuple[Stretch, ...]:
    return followed(context.the_route(), context.frame)


def lengths_by_space(context: Context) -> dict[str, float]:
    """Give how much duct [in] runs in each space, to about an inch."""
    found: dict[str, float] = {}
    for stretch in _followed(context):
        if stretch.zone is not None:
            found[stretch.zone.space] = found.get(stretch.zone.space, 0.0) + stretch.length_in
    return found


def boxed_run(context: Context) -> tuple[float, Vec3 | None]:
    """Give the run in the open room [in] and where it begins: where the centre line is in the room, else at the hood."""
    route = context.the_route()
    if route.boxed_in <= 0 or not route.parts:
        return route.boxed_in, None
    if not route.as_built:
        return route.boxed_in, route.parts[0].start
    seen = (s.middle for s in _followed(context) if s.zone is not None and s.zone.passage is Passage.BOXING)
    return route.boxed_in, next(seen, route.parts[0].start)


def cold_run(context: Context) -> float:
    """Give how much duct [in] runs in places that are not heated: attic, garage, porch, crawl space."""
    return sum(s.length_in for s in _followed(context) if in_cold(s, context.scene))
