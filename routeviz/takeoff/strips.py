"""Strips of board that are opened to lay duct behind them, and from where to where."""

from __future__ import annotations

from dataclasses import dataclass

from routeviz.model.opened import opened_along
from routeviz.model.overhead import ceiling_at_in
from routeviz.model.route import Part, PartKind, Penetration, Route
from routeviz.model.scene import AboveKind, Scene, WallSide
from routeviz.model.takeoff import BuyLine
from routeviz.takeoff.words import size_text
from routeviz.units import length_text

__all__ = ["Strip", "behind_board", "strip_line"]

_SIDE_OPEN_IN = 24.0  # duct this far above the ceiling is reached from above
_CEILING, _WALL = "ceiling board, under the duct", "wallboard, in front of the duct"
_EDGES = ("from the left wall", "out from the hood wall", "above the floor")


@dataclass(frozen=True, slots=True)
class Strip:
    """One strip to open: along an axis of the house from `low_in` to `high_in` as a tape reads it in the room [in]."""

    where: str
    parts: tuple[str, ...]
    axis: int
    low_in: float
    high_in: float
    middle: tuple[float, float, float]

    @property
    def length_in(self) -> float:
        """Give the strip's length [in]."""
        return self.high_in - self.low_in

    def from_to(self, scene: Scene) -> str:
        """Say from where to where it is opened: ``from 68 3/4 in to 144 in from the left wall``."""
        low, high = (length_text(v, metric=scene.metric) for v in (self.low_in, self.high_in))
        return f"from {low} to {high} {_EDGES[self.axis]}"

    def covers(self, crossing: Penetration) -> bool:
        """Whether a hole in the ceiling lies in the strip already."""
        if self.where != _CEILING or abs(crossing.direction[2]) < 0.5:
            return False
        along = abs(crossing.centre[self.axis])
        return (
            self.low_in <= along <= self.high_in
            and abs(crossing.centre[1 - self.axis] - self.middle[1 - self.axis]) < 1.0
        )


def behind_board(route: Route, scene: Scene) -> list[Strip]:
    """Give a strip for each straight that lies behind wallboard, or over a ceiling that is reached from below only.

    It reaches over the elbows at the straight's ends, which go in by it too, and ends with the room.
    """
    found = []
    for n, part in enumerate(route.parts):
        where = _hidden(part, scene)
        if where:
            strip = _strip(n, where, route, scene)
            found += [strip] if strip.length_in > 0 else []
    return found


def _hidden(part: Part, scene: Scene) -> str:
    """Say what board a straight lies behind; "" where it can be laid without opening a strip."""
    if part.kind is not PartKind.STRAIGHT:
        return ""
    x, y, z = ((a + b) / 2 for a, b in zip(part.start, part.end, strict=True))
    ceiling = ceiling_at_in(scene, x)
    in_wall = 0.0 < y < scene.wall(WallSide.HOOD).thickness_in and abs(part.direction[1]) < 0.1
    if in_wall and z < ceiling:
        return _WALL
    flat = abs(part.direction[2]) < 0.1
    over = flat and ceiling < z < ceiling + _SIDE_OPEN_IN and y < 0.0 and scene.above.kind is AboveKind.STOREY
    return _CEILING if over else ""


def _strip(n: int, where: str, route: Route, scene: Scene) -> Strip:
    part = route.parts[n]
    beside = [p for p in route.parts[max(0, n - 1) : n + 2] if p is part or (p.kind is PartKind.ELBOW and p.corner)]
    axis, low, high = opened_along(beside, scene)
    ids = (part.id, *(p.id for p in beside if p is not part))
    x, y, z = ((a + b) / 2 for a, b in zip(part.start, part.end, strict=True))
    return Strip(where, ids, axis, low, high, (x, y, z))


def strip_line(strip: Strip, scene: Scene) -> BuyLine:
    """Give the board of one strip: from member to member across, and as long as it is opened."""
    members = scene.ceiling.joists if strip.where == _CEILING else scene.wall(WallSide.HOOD).studs
    spacing = members.spacing_in if members is not None else 16.0
    size = size_text(spacing, strip.length_in, metric=scene.metric)
    return BuyLine("board to open and patch", size, 1, "strip",
                   f"{strip.where}, from member to member, {strip.from_to(scene)}", strip.parts)  # fmt: skip
