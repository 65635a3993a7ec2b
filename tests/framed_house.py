"""A two-storey framed house as the search's free space: our own invention, in whole sixteenths of an inch.

Kitchen below, a closed storey above with two chases, an attic with joists and rafters; exits through the back wall,
through the left gable and through the roof. Everything is a box on whole sixteenths, so that an integer programme can
certify every answer. A duct may only rise in the open kitchen, except inside a soffit along the hood wall.
"""

from __future__ import annotations

from dataclasses import dataclass, field

from routeviz.model.freespace import (
    Barrier,
    BarrierKind,
    Exit,
    FreeSpace,
    Limits,
    Region,
    Section,
    Start,
    Ticks,
)  # fmt: skip
from routeviz.model.scene import SectionShape, SectionSize
from routeviz.model.solids import FaceKind

UNIT = 16  # to the inch
WIDTH, DEPTH, WALL, TOP = 240.0, 168.0, 5.5, 262.0
CEILING, JOIST_TOP, FLOOR_TOP, UPPER, ATTIC = 97.0, 106.25, 107.0, 202.0, 211.25
GAP = 0.5  # kept clear of everything
CHASES = ((68.0, 79.0, -32.0, -16.0), (146.0, 158.0, -92.0, -76.0))

EVERY = (True, True, True)


def sixteenths(value: float) -> int:
    found = round(value * UNIT)
    assert abs(found - value * UNIT) < 1e-9, f"{value} in is not a whole number of sixteenths"
    return found


@dataclass
class _House:
    barriers: list[Barrier] = field(default_factory=list)

    def add(
        self, x: tuple[float, float], y: tuple[float, float], z: tuple[float, float], name: str, *,
        runs: tuple[bool, bool, bool] = EVERY, kind: BarrierKind = BarrierKind.SOLID, gap: float = GAP,
    ) -> None:  # fmt: skip
        lo, hi = (tuple(sixteenths(s[side] + (gap if side else -gap)) for s in (x, y, z)) for side in (0, 1))
        key = f"{name}-{len(self.barriers)}"
        self.barriers.append(Barrier(key, name, kind, Region((lo[0], lo[1], lo[2]), (hi[0], hi[1], hi[2])), runs))


def _members(house: _House) -> None:
    for n in range(1, 15):
        x = 16.0 * n
        across = x - 0.75, x + 0.75
        house.add(across, (-DEPTH, 0.0), (CEILING, JOIST_TOP), f"joist {n}")
        house.add(across, (-DEPTH, 0.0), (UPPER, ATTIC), f"attic joist {n}")
        house.add(across, (-DEPTH, 0.0), (238.0, TOP - 1), f"rafter {n}")
        house.add(across, (0.0, WALL), (0.0, 94.0), f"stud {n}")
        house.add(across, (0.0, WALL), (FLOOR_TOP, UPPER), f"upper stud {n}")
    house.add((95.25, 98.25), (-DEPTH, 0.0), (CEILING, JOIST_TOP), "doubled joist")
    for z in ((94.0, CEILING), (JOIST_TOP, FLOOR_TOP + 1.5), (UPPER - 3.0, UPPER)):
        house.add((0.0, WIDTH), (0.0, WALL), z, "plates", runs=(True, True, False), gap=0.0)
    house.add((0.0, WIDTH), (0.0, 1.5), (CEILING, JOIST_TOP), "rim", runs=(True, False, True), gap=0.0)


def _upper_storey(house: _House) -> None:
    """Close the storey above but for the chases."""
    cuts = sorted({0.0, WIDTH, *(c for chase in CHASES for c in chase[:2])})
    for left, right in zip(cuts, cuts[1:], strict=False):
        y = -DEPTH
        for chase in sorted(c[2:] for c in CHASES if c[0] <= left and right <= c[1]):
            house.add((left, right), (y, chase[0]), (FLOOR_TOP, UPPER), "storey", kind=BarrierKind.CLOSED, gap=0.0)
            y = chase[1]
        house.add((left, right), (y, 0.0), (FLOOR_TOP, UPPER), "storey", kind=BarrierKind.CLOSED, gap=0.0)


def _things(house: _House) -> None:
    house.add((0.0, WIDTH), (-DEPTH, 0.0), (CEILING - 0.5, CEILING), "ceiling board", runs=(True, True, False), gap=0.0)
    house.add((60.0, 96.0), (0.0, WALL), (40.0, 80.0), "window")
    house.add((40.0, 70.0), (0.0, WALL), (130.0, 180.0), "upper window")
    house.add((120.0, 127.0), (-DEPTH, -40.0), (98.0, 105.0), "trunk")
    house.add((196.0, 203.0), (-120.0, -60.0), (98.0, 105.0), "return air")
    for n, (x, y, z) in enumerate(((24.5, -40.0, 99.0), (70.5, -60.25, 101.0), (104.5, -22.0, 98.5), (135.5, -31.0, 100.0),
                                   (150.0, -50.0, 99.5), (170.25, -20.0, 102.0), (182.0, -70.0, 98.0), (214.5, -9.0, 99.0),
                                   (229.0, -26.0, 101.5), (86.5, -12.0, 98.0), (40.0, -24.0, 99.0), (56.5, -30.0, 103.0),
                                   (118.5, -34.0, 102.0), (165.0, -100.0, 98.0), (190.0, -36.0, 101.0)), 1):  # fmt: skip
        house.add((x - 1.0, x + 1.0), (y - 6.0, y + 6.0), (z, z + 3.0), f"pipe {n}")
    for n, (x, y) in enumerate(((30.0, -60.0), (112.0, -44.0), (176.0, -120.0), (208.0, -30.0), (122.0, -80.0)), 1):
        house.add((x, x + 18.0), (y - 10.0, y), (ATTIC, ATTIC + 12.0), f"attic box {n}")
    for n, y in enumerate((-56.0, -112.0), 1):
        for left in (16.0, 80.0, 176.0):
            house.add((left + 0.75, left + 15.25), (y, y + 1.5), (98.0, 105.25), f"bridging {n}")
    house.add((0.0, 144.0), (-DEPTH, -104.0), (ATTIC, TOP - 1), "attic room", kind=BarrierKind.CLOSED, gap=0.0)
    house.add((180.0, 184.0), (-24.0, 0.0), (84.0, CEILING - 0.5), "beam in the soffit")
    house.add((0.0, WIDTH), (-DEPTH, -40.0), (0.0, CEILING - 0.5), "kitchen", kind=BarrierKind.CLOSED,
              runs=(True, True, False), gap=0.0)  # fmt: skip
    house.add((0.0, WIDTH), (-40.0, 0.0), (0.0, 84.0), "kitchen", kind=BarrierKind.CLOSED, runs=(True, True, False),
              gap=0.0)  # fmt: skip
    house.add((0.0, 110.0), (-40.0, 0.0), (84.0, CEILING - 0.5), "kitchen", kind=BarrierKind.CLOSED,
              runs=(True, True, False), gap=0.0)  # fmt: skip


def _exits() -> tuple[Exit, ...]:
    back = sixteenths(WALL)

    def face(
        name: str, kind: FaceKind, axis: int, sign: int, at: int, lo: tuple[float, float], hi: tuple[float, float]
    ) -> Exit:  # fmt: skip
        return Exit(name, name, kind, axis, sign, (float(at), 0.0, 0.0), (sixteenths(lo[0]), sixteenths(lo[1])),
                    (sixteenths(hi[0]), sixteenths(hi[1])))  # fmt: skip

    return (
        face("back-low", FaceKind.WALL, 1, 1, back, (204.0, 40.0), (232.0, 92.0)),
        face("back-rim", FaceKind.WALL, 1, 1, back, (6.0, 99.0), (58.0, 105.0)),
        face("gable-left", FaceKind.WALL, 0, -1, 0, (-90.0, 214.0), (-8.0, 232.0)),
        face("roof", FaceKind.ROOF, 2, 1, sixteenths(TOP), (10.0, -150.0), (100.0, -10.0)),
    )


def collars() -> tuple[Ticks, ...]:
    """Give 342 places of the collar: every 2 in along the wall, at three heights."""
    return tuple(
        (sixteenths(x), sixteenths(-12.0), sixteenths(z)) for z in (70.0, 72.0, 74.5) for x in range(8, 234, 2)
    )


def framed_house(
    *, elbows: int = 3, wide: float = 6.0, high: float = 6.0, ratio: float = 1.0, shape: SectionShape = SectionShape.ROUND
) -> FreeSpace:  # fmt: skip
    """Give the house for a duct of `wide` by `high` inches whose elbows turn at `ratio` times the side they bend."""
    house = _House()
    _members(house)
    _upper_storey(house)
    _things(house)
    section = Section(SectionSize(shape, wide, high), sixteenths(wide / 2), sixteenths(high / 2),
                      sixteenths(ratio * wide), sixteenths(ratio * high))  # fmt: skip
    return FreeSpace(
        (0, sixteenths(-DEPTH), 0), (sixteenths(WIDTH), sixteenths(WALL), sixteenths(TOP)), section,
        Start(collars()[0], 2, 1), Limits(elbows, sixteenths(6.0), sixteenths(4.0), sixteenths(4.0), 0, boxing=False),
        tuple(house.barriers), (), _exits(),
    )  # fmt: skip
