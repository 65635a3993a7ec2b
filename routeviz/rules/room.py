"""Where the hood has room along its wall."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace
from itertools import pairwise

from routeviz.model.overhead import ceiling_span_in
from routeviz.model.scene import ObstacleKind, OpeningKind, RunDirection, Scene, WallSide
from routeviz.model.solids import Box, obstacle_box
from routeviz.model.spoken import spoken
from routeviz.rules.cuts import overlap_in
from routeviz.rules.outcome import EPSILON_IN

__all__ = ["Clash", "free_for", "free_heights", "free_places", "hood_boxes", "hood_places", "hung_over", "in_the_way", "room_beside", "room_under_ceiling"]  # fmt: skip

_NO_BODY = frozenset({ObstacleKind.CHASE, ObstacleKind.HOLE})
_BODY_WIDTH_IN, _BODY_DEPTH_IN = 14.0, 12.0  # of a hood without a cover
_FAR_IN = 1000.0


@dataclass(frozen=True, slots=True)
class Clash:
    """Something in the hood's place. `across`: a shift along the wall can clear it; else only the height can."""

    id: str
    words: str
    overlap_in: float
    across: bool = True


@dataclass(frozen=True, slots=True)
class _Thing:
    id: str
    words: str
    box: Box


def hood_boxes(scene: Scene) -> tuple[Box, ...]:
    """Give the canopy and the body above it as boxes in the house frame."""
    hood, bottom = scene.hood, scene.hood_bottom_in
    if bottom is None:
        return ()
    x, rim = hood.centre_in, min(hood.canopy_in, hood.body_in)
    wide, deep = (hood.cover.width_in, hood.cover.depth_in) if hood.cover else (_BODY_WIDTH_IN, _BODY_DEPTH_IN)
    wide, deep = min(wide, hood.width_in), min(deep, hood.depth_in)
    canopy = Box((x - hood.width_in / 2, -hood.depth_in, bottom), (x + hood.width_in / 2, 0.0, bottom + rim))
    if hood.body_in - rim < 0.01:
        return (canopy,)
    return canopy, Box((x - wide / 2, -deep, bottom + rim), (x + wide / 2, 0.0, bottom + hood.body_in))


def _things(scene: Scene) -> Iterator[_Thing]:
    """Give all that has a body where a hood may hang: things in the way, beams, windows and doors."""
    yield from _obstacles(scene)
    yield from _openings(scene)
    yield from _beams(scene)


def _obstacles(scene: Scene) -> Iterator[_Thing]:
    for o in scene.obstacles:
        if o.kind not in _NO_BODY:
            words = spoken(o.id)
            yield _Thing(o.id, f"the {words}", obstacle_box(o))


def _openings(scene: Scene) -> Iterator[_Thing]:
    for opening in scene.wall(WallSide.HOOD).openings:
        words = spoken(opening.id)
        kind = "door" if opening.kind is OpeningKind.DOOR else "window"
        sill = opening.sill_in
        yield _Thing(opening.id, f"the {words if kind in words else f'{kind} {words}'}",
                     Box((opening.left_in, -1.0, sill), (opening.left_in + opening.width_in, 1.0, sill + opening.height_in)))  # fmt: skip


def _beams(scene: Scene) -> Iterator[_Thing]:
    for beam in scene.ceiling.beams:
        half, z = beam.width_in / 2, (beam.bottom_in, beam.bottom_in + beam.depth_in)
        if beam.direction is RunDirection.OUT:
            lo = (beam.at_in - half, -(beam.end_in if beam.end_in is not None else scene.kitchen.depth_in), z[0])
            hi = (beam.at_in + half, -(beam.start_in or 0.0), z[1])
        else:
            lo = (beam.start_in or 0.0, -beam.at_in - half, z[0])
            hi = (beam.end_in if beam.end_in is not None else scene.kitchen.width_in, -beam.at_in + half, z[1])
        yield _Thing(beam.id, f"the {beam.id.replace('-', ' ')}", Box(lo, hi))


def _shares(a: Box, b: Box, axes: tuple[int, ...]) -> bool:
    return all(overlap_in((a.lo[i], a.hi[i]), (b.lo[i], b.hi[i])) > EPSILON_IN for i in axes)


def hung_over(scene: Scene) -> Iterator[tuple[str, float]]:
    """Give what hangs over the hood, whether it hides duct or not, with the greatest mounting height under it [in]."""
    for thing in (*_obstacles(scene), *_beams(scene)):
        heights = _beside(scene, thing)
        if heights is not None and thing.box.lo[2] > scene.cooktop.height_in:
            yield thing.words, heights[0]


def _beside(scene: Scene, thing: _Thing) -> tuple[float, float] | None:
    """Give the greatest mounting height under a thing and the least over it [in]; None where the hood passes it by."""
    low = hood_boxes(replace(scene, hood=replace(scene.hood, mount_in=0.0)))
    met = [box for box in low if _shares(box, thing.box, (0, 1))]
    if not met:
        return None
    return thing.box.lo[2] - max(box.hi[2] for box in met), thing.box.hi[2] - min(box.lo[2] for box in met)


def _under_ceiling(scene: Scene, box: Box) -> float:
    """Give the room between a box's top and the ceiling where that is lowest over it [in]; negative where it hits."""
    lowest, _ = ceiling_span_in(scene, (box.lo[0], box.hi[0]), (-box.hi[1], -box.lo[1]))
    return lowest - box.hi[2]


def free_for(scene: Scene, box: Box, own_id: str) -> bool:
    """Whether a box fits under the ceiling, clear of hood, chimney cover and every body but the thing `own_id` itself."""
    taken = [*hood_boxes(scene), *(thing.box for thing in _things(scene) if thing.id != own_id)]
    hood, bottom = scene.hood, scene.hood_bottom_in
    if hood.cover is not None and bottom is not None:
        half, top = hood.cover.width_in / 2, bottom + hood.body_in
        _, ceiling = ceiling_span_in(scene, (hood.centre_in - half, hood.centre_in + half), (0.0, hood.cover.depth_in))
        taken.append(Box((hood.centre_in - half, -hood.cover.depth_in, top), (hood.centre_in + half, 0.0, ceiling)))
    return _under_ceiling(scene, box) >= -EPSILON_IN and not any(_shares(box, other, (0, 1, 2)) for other in taken)


def room_under_ceiling(scene: Scene) -> float:
    """Give the greatest mounting height at which the hood's canopy and body stay under the ceiling [in]."""
    low = replace(scene, hood=replace(scene.hood, mount_in=0.0))
    return min(_under_ceiling(low, box) for box in hood_boxes(low))


def in_the_way(scene: Scene) -> Iterator[Clash]:
    """Give everything that shares a place with the hood, each with how far it reaches in [in]."""
    boxes, width = hood_boxes(scene), scene.kitchen.width_in
    if not boxes:
        return
    canopy = boxes[0]
    if canopy.lo[0] < -EPSILON_IN:
        yield Clash("left-wall", "the left wall", -canopy.lo[0])
    if canopy.hi[0] > width + EPSILON_IN:
        yield Clash("right-wall", "the right wall", canopy.hi[0] - width)
    over = -min(_under_ceiling(scene, box) for box in boxes)
    if over > EPSILON_IN:
        yield Clash("ceiling", "the ceiling", over, across=False)
    for thing in _things(scene):
        hit = [b for b in boxes if _shares(b, thing.box, (0, 1, 2))]
        if hit:
            reach = max(min(b.hi[0] - thing.box.lo[0], thing.box.hi[0] - b.lo[0]) for b in hit)
            yield Clash(thing.id, thing.words, reach)


def _taken(scene: Scene) -> list[tuple[float, float]]:
    """Give the spans of hood centres at which something is in the way, open at their ends."""
    half, width = scene.hood.width_in / 2, scene.kitchen.width_in
    spans = [(-_FAR_IN, half), (width - half, _FAR_IN)]
    for thing in _things(scene):
        for box in hood_boxes(scene):
            if _shares(box, thing.box, (1, 2)):
                reach = (box.hi[0] - box.lo[0]) / 2
                spans.append((thing.box.lo[0] - reach, thing.box.hi[0] + reach))
    return spans


def _merged(spans: list[tuple[float, float]]) -> list[tuple[float, float]]:
    merged: list[tuple[float, float]] = []
    for a, b in sorted(spans):
        if merged and a < merged[-1][1] - EPSILON_IN:
            merged[-1] = (merged[-1][0], max(merged[-1][1], b))
        else:
            merged.append((a, b))
    return merged


def hood_places(scene: Scene) -> tuple[tuple[float, float], ...]:
    """Give the closed intervals of hood centres at which nothing is in the way [in from the left wall]."""
    return tuple((a, b) for (_, a), (b, _) in pairwise(_merged(_taken(scene))) if a <= b)


def free_places(scene: Scene) -> tuple[float | None, float | None]:
    """Give the nearest hood centres to the left and to the right at which nothing is in the way [in from the left]."""
    places, x = hood_places(scene), scene.hood.centre_in
    left = max((min(b, x) for a, b in places if a <= x + EPSILON_IN), default=None)
    right = min((max(a, x) for a, b in places if b >= x - EPSILON_IN), default=None)
    return left, right


def free_heights(scene: Scene, low_in: float, high_in: float) -> tuple[float, float]:
    """Give how far the mounting height may go within two limits before the hood meets something [in].

    The limits themselves where something is in the way already.
    """
    mount = scene.hood.mount_in
    if mount is None or any(True for _ in in_the_way(scene)):
        return low_in, high_in
    for under, over in filter(None, (_beside(scene, thing) for thing in _things(scene))):
        if under >= mount - EPSILON_IN:
            high_in = min(high_in, under)
        else:
            low_in = max(low_in, over)
    return low_in, high_in


def room_beside(scene: Scene) -> tuple[float, str, str]:
    """Give the least room beside the hood [in], what is there in words, and its id."""
    width = scene.kitchen.width_in
    found = []
    for box in hood_boxes(scene):
        found += [(box.lo[0], "the left wall", "left-wall"), (width - box.hi[0], "the right wall", "right-wall")]
        for thing in _things(scene):
            if _shares(box, thing.box, (1, 2)):
                gap = -overlap_in((box.lo[0], box.hi[0]), (thing.box.lo[0], thing.box.hi[0]))
                found.append((gap, thing.words, thing.id))
    return min(found) if found else (width, "the left wall", "left-wall")
