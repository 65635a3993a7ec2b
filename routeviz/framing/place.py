"""Where the walls stand: wall measures (along, outwards, up) to the house frame, and the outlines of the house.

A wall is described in its own measures: `s` along it (from the left wall on the hood and front wall, out from the
hood wall on the left and right wall), `n` outwards from its finished face, `z` up from the finished floor.
"""

from __future__ import annotations

from dataclasses import dataclass

from routeviz.model.scene import MemberKind, Scene, Wall, WallSide
from routeviz.model.solids import Box, Prism

__all__ = ["CHORD_IN", "PLATE_IN", "WALL_WORDS", "House", "Place", "house", "inside_in", "sides_of"]

WALL_WORDS = {
    WallSide.HOOD: "wall behind", WallSide.LEFT: "left wall", WallSide.RIGHT: "right wall", WallSide.FRONT: "front wall"
}  # fmt: skip
PLATE_IN = 1.5  # thickness of a nominal 2-in plate, PS 20
CHORD_IN = 3.5  # bottom chord and webs of a truss, when the scene names only its top chord: a nominal 4


def inside_in(wall: Wall) -> float:
    """Give the thickness of a wall's room-side layers [in]."""
    return sum(layer.thickness_in for layer in wall.inside)


@dataclass(frozen=True, slots=True)
class Place:
    """One wall in the house frame [in].

    `run_axis` is the axis along the wall, `run_origin` the coordinate of s = 0 and `run_sign` the sense of s;
    `normal_origin` is the coordinate of the finished face and `normal_sign` points outwards.
    `length` is the finished length; `core` the span of the core along s; `cover` the span of the outer layers.
    """

    wall: Wall
    prefix: str  # for ids: "hood", "garage-front"
    words: str  # for labels of the wall itself: "the wall behind", "the left wall"
    member_words: str  # before member labels: "" for the hood wall, "left wall "
    run_axis: int
    run_sign: int
    run_origin: float
    normal_sign: int
    normal_origin: float
    length: float
    core: tuple[float, float]
    cover: tuple[float, float]
    space: str = "kitchen"
    kitchen_side: WallSide | None = None

    @property
    def normal_axis(self) -> int:
        """Give the axis square to the wall."""
        return 1 - self.run_axis

    def at(self, s: float) -> float:
        """Give the coordinate of a place along the wall."""
        return self.run_origin + self.run_sign * s

    def depth(self, n: float) -> float:
        """Give the coordinate of a place across the wall."""
        return self.normal_origin + self.normal_sign * n

    @property
    def outer(self) -> float:
        """Give the coordinate of the outer face."""
        return self.depth(self.wall.thickness_in)

    @property
    def core_n(self) -> tuple[float, float]:
        """Give the span of the core across the wall."""
        start = inside_in(self.wall)
        return start, start + self.wall.core_in

    def span(self, s: tuple[float, float]) -> tuple[float, float]:
        """Give the ordered coordinates of a span along the wall."""
        a, b = self.at(s[0]), self.at(s[1])
        return min(a, b), max(a, b)

    def box(self, s: tuple[float, float], n: tuple[float, float], z: tuple[float, float]) -> Box:
        """Give a box from spans along, across and up the wall."""
        run, across = self.span(s), sorted((self.depth(n[0]), self.depth(n[1])))
        lo, hi = [0.0, 0.0, z[0]], [0.0, 0.0, z[1]]
        lo[self.run_axis], hi[self.run_axis] = run
        lo[self.normal_axis], hi[self.normal_axis] = across
        return Box((lo[0], lo[1], lo[2]), (hi[0], hi[1], hi[2]))

    def prism(self, outline: list[tuple[float, float]], n: tuple[float, float]) -> Prism:
        """Give a prism through the wall from an outline in (coordinate along the wall, z) and a span across."""
        across = sorted((self.depth(n[0]), self.depth(n[1])))
        return Prism(self.normal_axis, across[0], across[1], tuple(outline))


@dataclass(frozen=True, slots=True)
class House:
    """The outlines that every part of the framing needs [in].

    `outer` and `core` are (x_lo, x_hi, y_lo, y_hi) of the walls' outer faces and of their cores' outer faces.
    """

    scene: Scene
    places: tuple[Place, ...]  # hood, left, right, front
    outer: tuple[float, float, float, float]
    core: tuple[float, float, float, float]
    ceiling: float  # finished ceiling at the hood wall
    plate_top: float  # where joists bear
    joist_top: float

    def place(self, side: WallSide) -> Place:
        """Give the place of one kitchen wall."""
        return next(p for p in self.places if p.wall.side is side)

    def outdoors(self, side: WallSide) -> bool:
        """Whether a kitchen wall has the open air behind it."""
        return self.place(side).wall.beyond == "outdoors"


def sides_of(axis: int) -> tuple[WallSide, WallSide]:
    """Give the two kitchen walls that stand across an axis, low coordinate first."""
    return (WallSide.LEFT, WallSide.RIGHT) if axis == 0 else (WallSide.FRONT, WallSide.HOOD)


def _kitchen_places(scene: Scene) -> tuple[Place, ...]:
    width, depth = scene.kitchen.width_in, scene.kitchen.depth_in
    hood, left, right, front = (scene.wall(s) for s in (WallSide.HOOD, WallSide.LEFT, WallSide.RIGHT, WallSide.FRONT))

    def reach(wall: Wall) -> float:  # how far the through walls' cores run past the finished side wall
        return inside_in(wall) + wall.core_in if wall.beyond == "outdoors" else wall.thickness_in

    through = (-reach(left), width + reach(right))
    cover = (-left.thickness_in, width + right.thickness_in)
    between = (-inside_in(hood), depth + inside_in(front))

    def side_cover(wall: Wall) -> tuple[float, float]:
        if wall.beyond != "outdoors":
            return between
        return -inside_in(hood) - hood.core_in, depth + inside_in(front) + front.core_in

    return (
        Place(hood, "hood", f"the {WALL_WORDS[WallSide.HOOD]}", "", 0, 1, 0.0, 1, 0.0, width, through, cover, "kitchen", WallSide.HOOD),
        Place(left, "left", f"the {WALL_WORDS[WallSide.LEFT]}", "left wall ", 1, -1, 0.0, -1, 0.0, depth, between, side_cover(left),
              "kitchen", WallSide.LEFT),
        Place(right, "right", f"the {WALL_WORDS[WallSide.RIGHT]}", "right wall ", 1, -1, 0.0, 1, width, depth, between, side_cover(right),
              "kitchen", WallSide.RIGHT),
        Place(front, "front", f"the {WALL_WORDS[WallSide.FRONT]}", "front wall ", 0, 1, 0.0, -1, -depth, width, through, cover,
              "kitchen", WallSide.FRONT),
    )  # fmt: skip


def house(scene: Scene) -> House:
    """Lay out the walls and levels of a scene."""
    places = _kitchen_places(scene)
    by = {p.wall.side: p for p in places}
    ends = [by[WallSide.LEFT], by[WallSide.RIGHT], by[WallSide.FRONT], by[WallSide.HOOD]]
    outer = [p.outer for p in ends]
    core = [p.depth(p.core_n[1]) for p in ends]
    ceiling = scene.kitchen.ceiling_in
    plate_top = ceiling + sum(layer.thickness_in for layer in scene.ceiling.layers)
    return House(
        scene,
        places,
        (outer[0], outer[1], outer[2], outer[3]),
        (core[0], core[1], core[2], core[3]),
        ceiling,
        plate_top,
        plate_top + _ceiling_depth(scene),
    )


def _ceiling_depth(scene: Scene) -> float:
    """Give the depth of what carries the ceiling: joists, truss chords or slab; 0 under bare rafters."""
    hung = scene.ceiling.joists.depth_in if scene.ceiling.joists is not None else 0.0
    if hung + scene.ceiling.slab_in > 0:
        return hung + scene.ceiling.slab_in  # strips or joists hang under a slab
    trusses = scene.roof is not None and scene.roof.framing is not None and scene.roof.framing.kind is MemberKind.TRUSS
    return CHORD_IN if trusses else 0.0
