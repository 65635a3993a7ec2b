"""The ceiling as solids: board, joists, rims, blocking, beams and slab."""

from __future__ import annotations

import itertools

from routeviz.framing.layout import Slot, slots, without
from routeviz.framing.materials import is_combustible, is_gap, member_burns, member_crossing
from routeviz.framing.place import WALL_WORDS, House, Place, sides_of
from routeviz.framing.sheets import Rect, pieces
from routeviz.model.scene import AboveKind, Beam, MemberKind, MemberLayout, RunDirection, WallSide
from routeviz.model.solids import Box, Crossing, Member, Solid, SolidKind
from routeviz.model.spoken import spoken

__all__ = ["RIM_IN", "beam_solids", "ceiling_solids", "joist_axis", "joist_run", "joist_slots"]

RIM_IN = 1.5


def joist_axis(layout: MemberLayout) -> int:
    """Give the axis that joists run along."""
    return 1 if layout.direction is RunDirection.OUT else 0


def _has_rim(house: House, side: WallSide) -> bool:
    return house.scene.ceiling.rim and house.outdoors(side)


def _clear(house: House, axis: int) -> tuple[float, float]:
    """Give the span along an axis between the rims, on the wall plates."""
    low, high = sides_of(axis)
    lo, hi = house.core[2 * axis : 2 * axis + 2]
    return lo + (RIM_IN if _has_rim(house, low) else 0.0), hi - (RIM_IN if _has_rim(house, high) else 0.0)


def joist_run(house: House, layout: MemberLayout) -> tuple[float, float]:
    """Give the span that joists run over, end to end."""
    return _clear(house, joist_axis(layout))


def joist_slots(house: House, layout: MemberLayout) -> tuple[Slot, ...]:
    """Give the joists in true coordinates across their run, ordered by number.

    Joists that run out are numbered from the left, joists that run along from the hood wall.
    """
    across = 1 - joist_axis(layout)
    lo, hi = _clear(house, across)
    if across == 0:
        return slots(layout, lo, hi)
    return tuple(Slot(s.number, -s.hi, -s.lo, s.plies) for s in slots(layout, -hi, -lo))


def _bar(axis: int, run: tuple[float, float], across: tuple[float, float], z: tuple[float, float]) -> Box:
    lo, hi = [0.0, 0.0, z[0]], [0.0, 0.0, z[1]]
    lo[axis], hi[axis] = run
    lo[1 - axis], hi[1 - axis] = across
    return Box((lo[0], lo[1], lo[2]), (hi[0], hi[1], hi[2]))


def _beam_box(house: House, beam: Beam) -> Box:
    axis = 1 if beam.direction is RunDirection.OUT else 0
    lo, hi = house.core[2 * axis : 2 * axis + 2]
    if beam.bottom_in < house.plate_top:  # it hangs below the plates: from finished wall to finished wall
        lo, hi = (0.0, house.scene.kitchen.width_in) if axis == 0 else (-house.scene.kitchen.depth_in, 0.0)
    if axis == 0:
        start = lo if beam.start_in is None else beam.start_in
        end = hi if beam.end_in is None else beam.end_in
    else:
        end = -beam.start_in if beam.start_in is not None else hi
        start = -beam.end_in if beam.end_in is not None else lo
    at = beam.at_in if axis == 1 else -beam.at_in
    return _bar(axis, (start, end), (at - beam.width_in / 2, at + beam.width_in / 2),
                (beam.bottom_in, beam.bottom_in + beam.depth_in))  # fmt: skip


def beam_solids(house: House) -> list[Solid]:
    """Give the single beams of the ceiling, each in its own place."""
    found = []
    for beam in house.scene.ceiling.beams:
        axis = 1 if beam.direction is RunDirection.OUT else 0
        name = spoken(beam.id)
        found.append(
            Solid(beam.id, SolidKind.BEAM, name if "beam" in name else f"beam {name}", _beam_box(house, beam),
                  Crossing.NEVER, "ceiling.beams", Member(beam.kind, "", beam.width_in, beam.depth_in, axis),
                  "steel" if beam.kind is MemberKind.STEEL else "timber", combustible=member_burns(beam.kind))
        )  # fmt: skip
    return found


def _cut(box: Box, axis: int, blockers: list[Box]) -> list[Box]:
    """Cut a bar along its run where beams pass through it; joists hang into flush beams."""
    others = [a for a in range(3) if a != axis]
    taken = [
        (b.lo[axis], b.hi[axis])
        for b in blockers
        if all(b.lo[a] < box.hi[a] - 1e-9 and box.lo[a] < b.hi[a] - 1e-9 for a in others)
    ]
    return [
        Box(tuple(lo if a == axis else box.lo[a] for a in range(3)),  # type: ignore[arg-type]
            tuple(hi if a == axis else box.hi[a] for a in range(3)))  # type: ignore[arg-type]
        for lo, hi in without((box.lo[axis], box.hi[axis]), taken)
    ]  # fmt: skip


def _timber(
    key: str, kind: SolidKind, label: str, box: Box, crossing: Crossing, layout: MemberLayout, slot: Slot, axis: int,
    origin: str, *, wall: Place | None = None,
) -> Solid:  # fmt: skip
    member = Member(layout.kind, layout.size, layout.width_in * slot.plies, layout.depth_in, axis, slot.number,
                    slot.plies, True, wall is not None)  # fmt: skip
    return Solid(key, kind, label, box, crossing, origin, member, "steel" if layout.kind is MemberKind.STEEL else "timber",
                 side=wall.kitchen_side if wall else None, combustible=member_burns(layout.kind),
                 wall=wall.words if wall else "", rated=wall is not None and wall.wall.fire_rated)  # fmt: skip


def _joists(house: House, layout: MemberLayout, beams: list[Box]) -> list[Solid]:
    axis, run = joist_axis(layout), joist_run(house, layout)
    z = (house.plate_top, house.plate_top + layout.depth_in)
    furring = layout.kind is MemberKind.FURRING
    floor_truss = layout.kind is MemberKind.TRUSS and house.scene.above.kind is AboveKind.STOREY
    truss = layout.kind is MemberKind.TRUSS and not floor_truss
    word = "ceiling strip" if furring else "truss" if truss else "floor truss" if floor_truss else "joist"
    kind = SolidKind.FURRING if furring else SolidKind.CHORD if truss else SolidKind.JOIST
    solids = []
    for slot in joist_slots(house, layout):
        key = f"{word.replace(' ', '-')}-{slot.number}{'-bottom' if truss else ''}"
        label = f"{word} {slot.number}{' bottom chord' if truss else ''}"
        for i, part in enumerate(_cut(_bar(axis, run, (slot.lo, slot.hi), z), axis, beams), 1):
            solids.append(_timber(key if i == 1 else f"{key}-{i}", kind, label, part, member_crossing(layout.kind),
                                  layout, slot, axis, "ceiling.joists"))  # fmt: skip
    return solids


def _rims(house: House, layout: MemberLayout, beams: list[Box]) -> list[Solid]:
    """Give rim boards on the outer walls: the hood and front wall's run through, the others between them."""
    z, solids = (house.plate_top, house.plate_top + layout.depth_in), []
    x, y = house.core[:2], _clear(house, 1)
    for side, axis, run, at in (
        (WallSide.HOOD, 0, x, house.core[3] - RIM_IN), (WallSide.FRONT, 0, x, house.core[2]),
        (WallSide.LEFT, 1, y, house.core[0]), (WallSide.RIGHT, 1, y, house.core[1] - RIM_IN),
    ):  # fmt: skip
        if not _has_rim(house, side):
            continue
        board = MemberLayout(MemberKind.SAWN, layout.size, RIM_IN, layout.depth_in, 0.0, 0.0)
        for i, part in enumerate(_cut(_bar(axis, run, (at, at + RIM_IN), z), axis, beams), 1):
            solids.append(_timber(f"rim-{side}{'' if i == 1 else f'-{i}'}", SolidKind.RIM,
                                  f"rim joist on the {WALL_WORDS[side]}", part, Crossing.RULE, board,
                                  Slot(0, 0.0, 0.0), axis, "ceiling.rim", wall=house.place(side)))  # fmt: skip
    return solids


def _blocking(house: House, layout: MemberLayout, beams: list[Box]) -> list[Solid]:
    axis, found = joist_axis(layout), joist_slots(house, layout)
    lo, hi = joist_run(house, layout)
    z, ordered, solids = (house.plate_top, house.plate_top + layout.depth_in), sorted(found, key=lambda s: s.lo), []
    block = MemberLayout(MemberKind.SAWN, layout.size, RIM_IN, layout.depth_in, 0.0, 0.0)
    for line, at_in in enumerate(house.scene.ceiling.blocking_in, 1):
        at = -at_in if axis == 1 else at_in
        if at - RIM_IN / 2 < lo or at + RIM_IN / 2 > hi:
            continue
        for a, b in itertools.pairwise(ordered):
            first, last = sorted((a.number, b.number))
            if b.lo - a.hi < 1.0:
                continue
            bar = _bar(1 - axis, (a.hi, b.lo), (at - RIM_IN / 2, at + RIM_IN / 2), z)
            for i, part in enumerate(_cut(bar, 1 - axis, beams), 1):
                solids.append(_timber(f"blocking-{line}-{first}{'' if i == 1 else f'-{i}'}", SolidKind.BLOCKING,
                                      f"blocking between joists {first} and {last}", part, Crossing.RULE, block,
                                      Slot(0, 0.0, 0.0), 1 - axis, "ceiling.blocking_in"))  # fmt: skip
    return solids


def _boards(house: House, beams: list[Box]) -> list[Solid]:
    kitchen, at, solids = house.scene.kitchen, house.plate_top, []
    room = Rect(0.0, kitchen.width_in, -kitchen.depth_in, 0.0)
    for k, layer in enumerate(house.scene.ceiling.layers, 1):  # from the joists down to the room
        top, at = at, at - layer.thickness_in
        if is_gap(layer.material):
            continue
        holes = [
            Rect(b.lo[0], b.hi[0], b.lo[1], b.hi[1]) for b in beams if b.lo[2] < top - 1e-9 and at < b.hi[2] - 1e-9
        ]
        for i, r in enumerate(pieces(room, holes), 1):
            solids.append(Solid(f"ceiling-{k}" if i == 1 else f"ceiling-{k}-{i}", SolidKind.BOARD,
                                f"ceiling {layer.material}", Box((r.s0, r.z0, at), (r.s1, r.z1, top)), Crossing.PASS,
                                "ceiling.layers", None, layer.material,
                                combustible=is_combustible(layer.material)))  # fmt: skip
    return solids


def ceiling_solids(house: House) -> list[Solid]:
    """Give the solids of a flat ceiling from the board to the joists' top."""
    ceiling = house.scene.ceiling
    beams = beam_solids(house)
    boxes = [b.shape for b in beams if isinstance(b.shape, Box)]
    solids = _boards(house, boxes) + beams
    if ceiling.joists is not None:
        layout = ceiling.joists
        solids += _joists(house, layout, boxes) + _rims(house, layout, boxes) + _blocking(house, layout, boxes)
    if ceiling.slab_in > 0:
        x0, x1, y0, y1 = house.core
        slab = Box((x0, y0, house.joist_top - ceiling.slab_in), (x1, y1, house.joist_top))
        solids.append(Solid("slab", SolidKind.SLAB, "concrete ceiling", slab, Crossing.NEVER, "ceiling.slab_in", None,
                            "concrete"))  # fmt: skip
    return solids
