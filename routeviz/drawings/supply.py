"""Where the hood's supply comes out of the wall, and what stands there behind the board."""

from __future__ import annotations

from collections.abc import Sequence

from routeviz.drawings import palette as ink
from routeviz.drawings.backing import backing_pieces
from routeviz.drawings.flat import ends_of
from routeviz.drawings.house import View
from routeviz.drawings.sketch import Sketch
from routeviz.model.plan import Plan
from routeviz.model.scene import Scene, WallFrame, WallSide
from routeviz.model.solids import STUD_KINDS, SolidKind
from routeviz.model.takeoff import Mark

__all__ = ["draw_supply", "name_supply", "supply_at", "supply_meets"]

_HOLDS = (*STUD_KINDS, SolidKind.PLATE, SolidKind.BLOCKING, SolidKind.BEAM, SolidKind.FURRING)
_SOLID = (WallFrame.MASONRY, WallFrame.CONCRETE, WallFrame.LOG)
_HALF = 1.2  # of the crossed box on paper [mm]


def supply_at(scene: Scene) -> tuple[float, float] | None:
    """Give the supply's place from the left wall and above the floor [in]; None where the scene names none."""
    supply, bottom = scene.hood.electrical, scene.hood_bottom_in
    if supply is None or bottom is None:
        return None
    return scene.hood.centre_in + supply.across_in, bottom + supply.up_in


def supply_meets(plan: Plan, marks: Sequence[Mark]) -> str:
    """Say what stands behind the board at the supply: ``meets stud 5: bring it in beside it``; "" where none is named.

    Backing that is let in for the `marks` counts too.
    """
    at, wall = supply_at(plan.scene), plan.scene.wall(WallSide.HOOD)
    if at is None:
        return ""
    if any(p.left_in <= at[0] <= p.right_in and p.low_in <= at[1] <= p.high_in for p in backing_pieces(marks)):
        return "in the backing: bring it in above or below"
    met = [s.label for s in plan.frame.solids if s.kind in _HOLDS and s.side in (None, WallSide.HOOD)
           and ends_of(s.shape, 1)[0] < wall.thickness_in and ends_of(s.shape, 1)[1] > 0
           and all(low <= v <= high for v, (low, high) in zip(at, (ends_of(s.shape, 0), ends_of(s.shape, 2)), strict=True))]  # fmt: skip
    if met:
        return f"meets {met[0]}: bring it in beside it"
    return f"{wall.frame.value} wall behind it" if wall.frame in _SOLID else "clear of the framing"


def draw_supply(sketch: Sketch, view: View, plan: Plan) -> None:
    """Draw the supply as a crossed box."""
    at = supply_at(plan.scene)
    if at is None:
        return
    x, y = view.at(*at)
    sketch.rect((x - _HALF, y - _HALF), (x + _HALF, y + _HALF), ink.FINE, fill=ink.WHITE)
    sketch.line((x - _HALF, y - _HALF), (x + _HALF, y + _HALF), ink.FINE)
    sketch.line((x - _HALF, y + _HALF), (x + _HALF, y - _HALF), ink.FINE)
    sketch.reserve((x - _HALF - 0.4, y - _HALF - 0.4, x + _HALF + 0.4, y + _HALF + 0.4))


def name_supply(sketch: Sketch, view: View, plan: Plan, words: str, size: float = ink.LEAST) -> None:
    """Write words with a leader to the supply."""
    at = supply_at(plan.scene)
    if at is None:
        return
    x, y = view.at(*at)
    places = [(x + a, y + b) for b in (-4.5, -8.0, 4.5, -12.0) for a in (-5.0, 5.0, -9.0, 9.0)]
    sketch.note((x, y), words, places, size, halo=ink.WALL)
