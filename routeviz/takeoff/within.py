"""Where a tape hooks on inside a space beyond a kitchen wall: its left wall, the kitchen's wall in it, and its floor."""

from __future__ import annotations

from dataclasses import dataclass

from routeviz.geometry import bounds
from routeviz.model.scene import Scene, Space, WallSide
from routeviz.model.solids import Frame, Vec3
from routeviz.model.spoken import spoken

__all__ = ["Within", "within"]


@dataclass(frozen=True, slots=True)
class Within:
    """The three edges of one space, for someone who faces it from the kitchen.

    `origin` is where each of the house's axes is measured from, `sense` 1 where the tape runs along it and -1 where it
    runs against it [in]; `deep` is the level axis that leads away from the kitchen.
    """

    origin: Vec3
    sense: tuple[int, int, int]
    deep: int
    name: str

    def measured(self, axis: int, at: float) -> float:
        """Give a coordinate as a tape reads it in there."""
        return self.sense[axis] * (at - self.origin[axis])

    def words(self, axis: int) -> str:
        """Name the edge that a coordinate is measured from."""
        if axis == 2:
            return f"above the floor of the {self.name}"
        return (
            f"from the kitchen's wall in the {self.name}"
            if axis == self.deep
            else f"from the left wall of the {self.name}"
        )

    def side(self, axis: int, towards: int) -> str:
        """Name the side of a thing that is met by who goes towards it along an axis of the house."""
        ahead = self.sense[axis] * towards > 0
        if axis == 2:
            return "underside" if ahead else "top"
        if axis == self.deep:
            return "face towards the kitchen" if ahead else "face away from the kitchen"
        return "left edge" if ahead else "right edge"


def within(space_id: str, scene: Scene, frame: Frame) -> Within | None:
    """Give the edges of a space of the scene; None in the kitchen itself and where the scene knows no such space."""
    space = next((s for s in scene.spaces if s.id == space_id), None)
    return _edges(space, frame) if space is not None else None


def _edges(space: Space, frame: Frame) -> Within:
    inside = bounds(next(zone.shape for zone in frame.zones if zone.id == space.id))
    deep = 1 if space.beyond in (WallSide.HOOD, WallSide.FRONT) else 0
    away = 1 if space.beyond in (WallSide.HOOD, WallSide.RIGHT) else -1
    right = 1 if space.beyond in (WallSide.HOOD, WallSide.LEFT) else -1
    sense = (right, away, 1) if deep == 1 else (away, right, 1)
    ends = [inside.lo[k] if sense[k] > 0 else inside.hi[k] for k in (0, 1)]
    return Within((ends[0], ends[1], space.floor_in), sense, deep, spoken(space.id))
