"""How much of a route as built runs in the open room and would need boxing, by the measure of the search.

Lengths are taken along the centre lines up to where they meet in the corners. A run counts where its body, not only
its centre line, reaches into the open room; an offset counts whole or not at all. A chimney cover hides the riser, a
run straight back from it under the cover's top, and an offset that stays inside the cover.
"""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass
from itertools import pairwise

from routeviz.geometry import bounds, contains
from routeviz.model.route import Part, offsets_in
from routeviz.model.scene import Scene
from routeviz.model.solids import Frame, Passage, Prism, Vec3, Zone
from routeviz.routing.vectors import distance, sub, unit

__all__ = ["boxed_length_in"]

_COVER = "in-cover"
_FINE_IN = 0.25  # along sloped ceilings and oblique runs
_INSIDE_IN = 1e-3  # touching is not reaching in
_SIDE = (-1.0, -0.5, 0.0, 0.5, 1.0)  # where a duct's cross-section is looked at


@dataclass(frozen=True, slots=True)
class _Leg:
    """A straight piece of centre line, from end to corner or from corner to end of a part."""

    part: Part
    start: Vec3
    end: Vec3

    @property
    def length_in(self) -> float:
        return distance(self.start, self.end)

    @property
    def direction(self) -> Vec3:
        return unit(sub(self.end, self.start))


def boxed_length_in(parts: tuple[Part, ...], frame: Frame, scene: Scene) -> float:
    """Give the length [in] that would have to be boxed in."""
    room = _Room(frame)
    if room.kitchen is None:
        return 0.0
    pairs = offsets_in(parts)
    hidden = _Hidden(parts, pairs, room.cover_top_in, scene)
    total = 0.0
    for group in _grouped(parts, pairs):
        legs = [leg for part in group for leg in _legs(part)]
        if len(group) == 1:
            total += sum(room.reached_in(leg) for leg in legs if not hidden.hides(leg))
        elif not all(hidden.hides(leg) for leg in legs) and any(room.reached_in(leg) > _INSIDE_IN for leg in legs):
            total += sum(leg.length_in for leg in legs)
    return total


def _legs(part: Part) -> Iterator[_Leg]:
    points = (part.start, part.end) if part.corner is None else (part.start, part.corner, part.end)
    yield from (_Leg(part, a, b) for a, b in pairwise(points) if distance(a, b) > 0)


def _grouped(parts: tuple[Part, ...], pairs: tuple[tuple[Part, Part], ...]) -> Iterator[tuple[Part, ...]]:
    """Give the parts one by one, those of an offset together."""
    at = 0
    ends = {a.id: b.id for a, b in pairs}
    while at < len(parts):
        last = ends.get(parts[at].id)
        to = at if last is None else next(i for i, p in enumerate(parts) if p.id == last)
        yield parts[at : to + 1]
        at = to + 1


class _Hidden:
    """What the chimney cover hides."""

    def __init__(
        self, parts: tuple[Part, ...], pairs: tuple[tuple[Part, Part], ...], top_in: float, scene: Scene
    ) -> None:
        self._legs: set[tuple[Vec3, Vec3]] = set()
        if scene.hood.cover is None or scene.hood.outlet.place != "top":
            return
        offset = pairs[0] if pairs and next(p for p in parts if p.angle_deg) is pairs[0][0] else None
        if offset is not None and not _inside_cover(offset, scene):
            offset = None
        legs = [leg for part in parts for leg in _legs(part)]
        riser_ends = len(legs)
        ours = () if offset is None else _span(parts, offset)
        for n, leg in enumerate(legs):
            if leg.direction[2] < 1 - 1e-9 and leg.part.id not in ours:
                riser_ends = n
                break
            self._add(leg)
        if offset is None:
            for leg in legs[riser_ends:]:
                if leg.direction[1] < 1 - 1e-9 or leg.start[2] + leg.part.section_out.height_in / 2 > top_in + 1e-6:
                    break
                self._add(leg)

    def _add(self, leg: _Leg) -> None:
        self._legs.add((leg.start, leg.end))

    def hides(self, leg: _Leg) -> bool:
        """Whether the cover hides this piece; straight back it does so up to the wall, where no room is left."""
        return (leg.start, leg.end) in self._legs


def _span(parts: tuple[Part, ...], pair: tuple[Part, Part]) -> tuple[str, ...]:
    ids = [p.id for p in parts]
    return tuple(ids[ids.index(pair[0].id) : ids.index(pair[1].id) + 1])


def _inside_cover(pair: tuple[Part, Part], scene: Scene) -> bool:
    """Whether an offset on the riser stays inside the cover."""
    section = pair[0].section
    slack = scene.hood.cover_slack_in(max(section.width_in, section.height_in) / 2)
    x, y, _ = sub(pair[1].end, pair[0].start)
    left, right, out, back = slack
    return -left - 1e-6 <= x <= right + 1e-6 and -out - 1e-6 <= y <= back + 1e-6


class _Room:
    """The open room: the kitchen without the cabinets, soffits and chases that stand in it."""

    def __init__(self, frame: Frame) -> None:
        self._zones = tuple(zone for zone in frame.zones if zone.id != _COVER)
        open_zones = [zone for zone in self._zones if zone.passage is Passage.BOXING]
        self.kitchen: Zone | None = open_zones[0] if open_zones else None
        covers = [zone for zone in frame.zones if zone.id == _COVER]
        self.cover_top_in = max((bounds(zone.shape).hi[2] for zone in covers), default=0.0)

    def _open(self, point: Vec3) -> bool:
        zone = next((z for z in reversed(self._zones) if contains(z.shape, point)), None)
        return zone is not None and zone.passage is Passage.BOXING

    def reached_in(self, leg: _Leg) -> float:
        """Give the length [in] over which a run's body reaches into the open room."""
        axis = _main(leg.direction)
        half = _half_sizes(leg, axis)
        marks = self._marks(leg, axis)
        total = 0.0
        for a, b in pairwise(marks):
            if any(self._open(point) for point in _section_at(leg, (a + b) / 2, axis, half)):
                total += (b - a) * leg.length_in
        return total

    def _marks(self, leg: _Leg, axis: int) -> list[float]:
        """Give shares of the run between which nothing changes; short steps where a ceiling slopes along it."""
        a, b = leg.start[axis], leg.end[axis]
        fine = abs(leg.direction[axis]) < 1 - 1e-9
        found = {0.0, 1.0}
        for zone in self._zones:
            box = bounds(zone.shape)
            found |= {(v - a) / (b - a) for v in (box.lo[axis], box.hi[axis])}
            fine = fine or (isinstance(zone.shape, Prism) and zone.shape.axis != axis and zone is self.kitchen)
        if fine:
            steps = max(1, math.ceil(leg.length_in / _FINE_IN))
            found |= {n / steps for n in range(steps + 1)}
        return sorted(share for share in found if 0.0 <= share <= 1.0)


def _main(direction: Vec3) -> int:
    return max(range(3), key=lambda a: abs(direction[a]))


def _half_sizes(leg: _Leg, axis: int) -> Vec3:
    """Give the half sizes of a run's body across it; 0 along it."""
    section, wide = leg.part.section_out, leg.part.wide
    half = [section.height_in / 2] * 3
    if wide is not None:
        lies = _main(wide)
        half[_main(leg.part.direction) if lies == axis else lies] = section.width_in / 2  # turned with the elbow
    half[axis] = 0.0
    return half[0], half[1], half[2]


def _section_at(leg: _Leg, share: float, axis: int, half: Vec3) -> Iterator[Vec3]:
    middle = [p + share * (q - p) for p, q in zip(leg.start, leg.end, strict=True)]
    u, v = (a for a in range(3) if a != axis)
    for s in _SIDE:
        for t in _SIDE:
            at = list(middle)
            at[u] += s * max(half[u] - _INSIDE_IN, 0.0)
            at[v] += t * max(half[v] - _INSIDE_IN, 0.0)
            yield at[0], at[1], at[2]
