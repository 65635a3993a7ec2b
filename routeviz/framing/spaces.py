"""Spaces beyond the kitchen's walls: boxes with walls of their own."""

from __future__ import annotations

from dataclasses import dataclass

from routeviz.framing.place import House, Place, inside_in
from routeviz.framing.walls import Heights, wall_solids
from routeviz.model.scene import Space, Wall, WallSide
from routeviz.model.solids import Box, Solid
from routeviz.model.spoken import spoken

__all__ = ["Beyond", "beyond", "space_name"]


@dataclass(frozen=True, slots=True)
class Beyond:
    """One space in the house frame: its clear inside and its walls."""

    space: Space
    inside: Box
    places: tuple[Place, ...]
    solids: tuple[Solid, ...]


def space_name(space: Space) -> str:
    """Name a space for people."""
    return spoken(space.id)


def _place(space: Space, wall: Wall, kitchen: Place, around: dict[WallSide, Wall]) -> Place:
    """Put one wall of a space; LEFT and RIGHT are as seen from the kitchen by someone who faces that space."""
    name, outer = space_name(space), kitchen.wall.thickness_in
    if wall.side is WallSide.FRONT:
        reach = [
            inside_in(w) + w.core_in if w else 0.0 for w in (around.get(WallSide.LEFT), around.get(WallSide.RIGHT))
        ]
        if not _left_is_start(space.beyond):
            reach.reverse()
        span = (-reach[0], space.width_in + reach[1])
        return Place(wall, f"{space.id}-front", f"the {name}'s far wall", f"{name} far wall ", kitchen.run_axis,
                     kitchen.run_sign, kitchen.at(space.left_in), kitchen.normal_sign,
                     kitchen.depth(outer + space.deep_in), space.width_in, span, span, space.id)  # fmt: skip
    at_start = (wall.side is WallSide.LEFT) == _left_is_start(space.beyond)
    at = space.left_in if at_start else space.left_in + space.width_in
    far = around.get(WallSide.FRONT)
    length = space.deep_in
    core = (0.0, length + (inside_in(far) if far else 0.0))
    cover = (0.0, length + (inside_in(far) + far.core_in if far else 0.0))
    return Place(wall, f"{space.id}-{wall.side}", f"the {name}'s {wall.side} wall", f"{name} {wall.side} wall ",
                 kitchen.normal_axis, kitchen.normal_sign, kitchen.depth(outer),
                 -kitchen.run_sign if at_start else kitchen.run_sign, kitchen.at(at), length, core, cover,
                 space.id)  # fmt: skip


def _left_is_start(side: WallSide) -> bool:
    """Whether the left hand of someone who faces this kitchen wall is where its measure begins."""
    return side in (WallSide.HOOD, WallSide.RIGHT)


def beyond(house: House, space: Space) -> Beyond:
    """Build one space behind a kitchen wall."""
    kitchen = house.place(space.beyond)
    around = {w.side: w for w in space.walls}
    places = tuple(_place(space, wall, kitchen, around) for wall in space.walls if wall.side is not WallSide.HOOD)
    outer = kitchen.wall.thickness_in
    top = space.floor_in + space.height_in
    inside = kitchen.box((space.left_in, space.left_in + space.width_in), (outer, outer + space.deep_in),
                         (space.floor_in, top))  # fmt: skip
    heights = Heights(space.floor_in, top, top, top)
    solids = tuple(solid for place in places for solid in wall_solids(place, heights))
    return Beyond(space, inside, places, solids)
