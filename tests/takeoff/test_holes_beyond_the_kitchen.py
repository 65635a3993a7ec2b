"""Holes in the walls of a place beyond the kitchen are measured from that place's own walls, as someone there would."""

from __future__ import annotations

from dataclasses import replace

import handmade
import pytest
import samples

from routeviz import framing
from routeviz.model.route import Penetration
from routeviz.model.scene import Scene, Space, SpaceKind, Wall, WallFrame, WallSide
from routeviz.model.takeoff import Hole
from routeviz.takeoff.holes import hole_schedule

AWAY = {WallSide.HOOD: (0, 1), WallSide.FRONT: (0, -1), WallSide.LEFT: (-1, 0), WallSide.RIGHT: (1, 0)}
BEGINS, WIDE, DEEP = 10.0, 100.0, 80.0


def beyond(side: WallSide) -> Scene:
    """A porch behind one wall, 10 in from where that wall's measure begins: at the left wall, or at the hood wall."""
    home = samples.scene()
    studs, board = samples.studs("2x4", depth=3.5), samples.wall(WallSide.FRONT).outside
    walls = tuple(
        Wall(own, "outdoors", WallFrame.WOOD, studs, 3.5, True, False, (), board)
        for own in (WallSide.LEFT, WallSide.RIGHT, WallSide.FRONT)
    )
    porch = Space("back-porch", SpaceKind.ROOM, side, DEEP, BEGINS, WIDE, 4.0, 90.0, walls, True)
    house = tuple(replace(w, beyond="back-porch") if w.side is side else w for w in home.walls)
    return replace(home, walls=house, spaces=(porch,))


def at(home: Scene, side: WallSide, from_left: float, from_near: float) -> tuple[float, float]:
    """Give x and y of a place so far from the porch's left wall, seen from the kitchen, and from the kitchen's wall."""
    thick, wide, deep = home.wall(side).thickness_in, home.kitchen.width_in, home.kitchen.depth_in
    return {
        WallSide.HOOD: (BEGINS + from_left, thick + from_near),
        WallSide.FRONT: (BEGINS + WIDE - from_left, -deep - thick - from_near),
        WallSide.LEFT: (-thick - from_near, -(BEGINS + WIDE - from_left)),
        WallSide.RIGHT: (wide + thick + from_near, -(BEGINS + from_left)),
    }[side]


def hole(home: Scene, solid_part: str, centre: tuple[float, float, float], way: tuple[float, float, float]) -> Hole:
    frame = framing.frame(home)
    solid = next(s for s in frame.solids if s.space == "back-porch" and solid_part in s.id)
    crossing = Penetration(
        solid.id, solid.label, solid.material, centre, centre, way, 0.5, "round", (8.0, 8.0), (8.5, 8.5)
    )
    (found,) = hole_schedule(replace(handmade.up_route(), penetrations=(crossing,)), home, frame)
    return found


@pytest.mark.parametrize("side", AWAY, ids=str)
def test_in_the_far_wall_from_the_left_wall(side: WallSide) -> None:
    home, (ax, ay) = beyond(side), AWAY[side]
    x, y = at(home, side, 30.0, DEEP)
    found = hole(home, "front-outside", (x, y, 64.0), (float(ax), float(ay), 0.0))
    assert (found.from_left_in, found.from_left_name) == (pytest.approx(30.0), "from the left wall of the back porch")
    assert (found.from_other_in, found.from_other_name) == (60.0, "above the floor of the back porch")


@pytest.mark.parametrize("side", AWAY, ids=str)
def test_in_a_side_wall_from_the_kitchens_wall(side: WallSide) -> None:
    home, (ax, ay) = beyond(side), AWAY[side]
    x, y = at(home, side, WIDE, 20.0)
    found = hole(home, "right-outside", (x, y, 64.0), (float(ay), float(-ax), 0.0))
    assert (found.from_left_in, found.from_left_name) == (
        pytest.approx(20.0),
        "from the kitchen's wall in the back porch",
    )


def test_the_house_corner_is_to_the_right_of_who_stands_outside() -> None:
    """The hood wall's outer skin: 70 in from the left wall inside, and that wall's thickness more outside."""
    home = samples.scene()
    left = replace(home.wall(WallSide.LEFT), beyond="outdoors", outside=home.wall(WallSide.HOOD).outside)
    home = replace(home, walls=tuple(left if w.side is WallSide.LEFT else w for w in home.walls))
    frame = framing.frame(home)
    skin = next(s for s in frame.solids if s.id.startswith("hood-outside"))
    assert left.thickness_in == 5.1875  # 3 1/2 in of stud, board, sheathing and siding
    for from_space in ("between studs 5 and 6", "kitchen", ""):
        crossing = Penetration(
            skin.id, skin.label, skin.material, (70.0, 6.0, 90.0), (70.0, 7.0, 90.0), (0.0, 1.0, 0.0), 0.5, "round",
            (8.0, 8.0), (8.5, 8.5), from_space, "outdoors",
        )  # fmt: skip
        (found,) = hole_schedule(replace(handmade.up_route(), penetrations=(crossing,)), home, frame)
        assert found.outside.endswith("check: 75 3/16 in from the house corner, which is to your right outside")
