"""In which spaces a route runs: its parts followed in short pieces, each with the zone that rules there."""

from __future__ import annotations

import itertools
import math
from collections.abc import Iterator
from typing import NamedTuple

from routeviz.geometry.measure import bounds, contains
from routeviz.model.route import Part, PartKind, Route
from routeviz.model.scene import Scene, SpaceKind
from routeviz.model.solids import Box, Frame, Vec3, Zone

__all__ = ["COLD_KINDS", "Stretch", "followed", "in_cold", "pieces", "space_kind"]

_LAID = (PartKind.STRAIGHT, PartKind.FLEX, PartKind.ELBOW, PartKind.TRANSITION)
_STEP_IN = 1.0  # parts are followed in pieces no longer than this
COLD_KINDS = frozenset({SpaceKind.ATTIC, SpaceKind.GARAGE, SpaceKind.PORCH, SpaceKind.CRAWL})


class Stretch(NamedTuple):
    """A short piece of a part [in] with the zone that it lies in."""

    part: Part
    middle: Vec3
    length_in: float
    zone: Zone | None


def _first_that_holds(zones: list[tuple[Box, Zone]], point: Vec3) -> Zone | None:
    """Give the zone that rules at a point: later zones of a frame overrule earlier ones."""
    x, y, z = point
    for box, zone in zones:
        (x0, y0, z0), (x1, y1, z1) = box.lo, box.hi
        if x0 <= x <= x1 and y0 <= y <= y1 and z0 <= z <= z1 and contains(zone.shape, point):
            return zone
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


def followed(route: Route, frame: Frame) -> tuple[Stretch, ...]:
    """Follow the duct from the hood to its end."""
    zones = [(bounds(zone.shape), zone) for zone in reversed(frame.zones)]
    return tuple(
        Stretch(part, middle, length, _first_that_holds(zones, middle))
        for part in route.parts
        if part.kind in _LAID
        for middle, length in pieces(part)
    )


def space_kind(scene: Scene, space: str) -> SpaceKind | None:
    """Give what a space is, by its id in the scene or by the word itself; None when nobody can tell."""
    for known in scene.spaces:
        if known.id == space:
            return known.kind
    plain = space.lower().strip()
    for kind in SpaceKind:
        if plain == kind.value or plain.startswith(f"{kind.value}:"):
            return kind
    return None


def in_cold(stretch: Stretch, scene: Scene) -> bool:
    """Whether a stretch lies in a place that is not heated: attic, garage, porch, crawl space."""
    return stretch.zone is not None and space_kind(scene, stretch.zone.space) in COLD_KINDS
