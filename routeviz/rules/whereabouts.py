"""In which spaces a route runs, and for how long."""

from __future__ import annotations

import itertools
import math
from collections.abc import Iterator
from functools import lru_cache

from routeviz.geometry import bounds, contains
from routeviz.model.route import Part, PartKind
from routeviz.model.scene import SpaceKind
from routeviz.model.solids import Box, Frame, Passage, Vec3, Zone
from routeviz.rules.context import Context

__all__ = ["boxed_run", "cold_run", "lengths_by_space", "pieces", "space_kind"]

_LAID = (PartKind.STRAIGHT, PartKind.FLEX, PartKind.ELBOW, PartKind.TRANSITION)
_STEP_IN = 1.0  # parts are followed in pieces no longer than this
COLD_KINDS = frozenset({SpaceKind.ATTIC, SpaceKind.GARAGE, SpaceKind.PORCH, SpaceKind.CRAWL})


def _bounded(frame: Frame) -> list[tuple[Box, Zone]]:
    """Give the zones with the boxes round them, the one that overrules all others first."""
    return [(bounds(zone.shape), zone) for zone in reversed(frame.zones)]


def _first_that_holds(zones: list[tuple[Box, Zone]], point: Vec3) -> Zone | None:
    """Give the zone that rules at a point: later zones of a frame overrule earlier ones."""
    x, y, z = point
    for box, zone in zones:
        (x0, y0, z0), (x1, y1, z1) = box.lo, box.hi
        if x0 <= x <= x1 and y0 <= y <= y1 and z0 <= z <= z1 and contains(zone.shape, point):
            return zone
    return None


def space_kind(context: Context, space: str) -> SpaceKind | None:
    """Give what a space is, by its id in the scene or by the word itself; None when nobody can tell."""
    for known in context.scene.spaces:
        if known.id == space:
            return known.kind
    plain = space.lower().strip()
    for kind in SpaceKind:
        if plain == kind.value or plain.startswith(f"{kind.value}:"):
            return kind
    return None


def pieces(part: Part) -> Iterator[tuple[Vec3, float]]:
    """Give the middle and the length of short pieces of a part; elbows along their two tangents."""
    corners = (part.start, part.corner, part.end) if part.corner is not None else (part.start, part.end)
    total = sum(math.dist(a, b) for a, b in itertools.pairwise(corners))
    if total <= 0:
        return
    scale = part.length_in / total if part.length_in else 1.0
    for a, b in itertools.pairwise(corners):
        long = math.dist(a, b)
        count = max(1, math.ceil(long / _STEP_IN))
        for i in range(count):
            t = (i + 0.5) / count
            middle = tuple(p + t * (q - p) for p, q in zip(a, b, strict=True))
            yield (middle[0], middle[1], middle[2]), long / count * scale


@lru_cache(maxsize=2)  # several rules follow the same route
def _followed(context: Context) -> tuple[tuple[Vec3, float, Zone | None], ...]:
    zones = _bounded(context.frame)
    return tuple(
        (middle, length, _first_that_holds(zones, middle))
        for part in context.the_route().parts
        if part.kind in _LAID
        for middle, length in pieces(part)
    )


def lengths_by_space(context: Context) -> dict[str, float]:
    """Give how much duct [in] runs in each space, to about an inch."""
    found: dict[str, float] = {}
    for _, length, zone in _followed(context):
        if zone is not None:
            found[zone.space] = found.get(zone.space, 0.0) + length
    return found


def boxed_run(context: Context) -> tuple[float, Vec3 | None]:
    """Give the run in the open room [in] and where it begins: where the centre line is in the room, else at the hood."""
    route = context.the_route()
    if route.boxed_in <= 0 or not route.parts:
        return route.boxed_in, None
    if not route.as_built:
        return route.boxed_in, route.parts[0].start
    seen = (middle for middle, _, zone in _followed(context) if zone is not None and zone.passage is Passage.BOXING)
    return route.boxed_in, next(seen, route.parts[0].start)


def cold_run(context: Context) -> float:
    """Give how much duct [in] runs in places that are not heated: attic, garage, porch, crawl space."""
    return sum(
        length for space, length in lengths_by_space(context).items() if space_kind(context, space) in COLD_KINDS
    )
