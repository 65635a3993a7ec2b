"""Random small worlds, and the same worlds as the product's free space."""

from __future__ import annotations

import numpy as np
from oracle.naive import Block, Opening, World

from routeviz.model.freespace import (
    Barrier,
    BarrierKind,
    Exit,
    FreeSpace,
    KeepClear,
    Limits,
    Region,
    Section,
    Start,
)  # fmt: skip
from routeviz.model.scene import SectionShape, SectionSize
from routeviz.model.solids import FaceKind

ROUND = SectionSize(SectionShape.ROUND, 2.0, 2.0)


def random_world(rng: np.random.Generator, size: int, *, slopes: bool = False, rounded: bool = False) -> World:
    """A world of about `size` units a side: boxes, sheets, an open room, exits back, right and up.

    With `slopes` or `rounded`, sloped bars or rounded keep-outs tie two axes together, and no grid but the full
    lattice is sure to hold the optimum.
    """
    depth = size // 3
    lo, hi = (0, -depth, 0), (size, size - depth, size)

    def number(a: int, b: int) -> int:
        return int(rng.integers(a, b + 1))

    def solid(thin: bool = False) -> Block:
        sides = [number(1, max(2, size // 3)) for _ in range(3)]
        if thin:
            sides[number(0, 2)] = 1
        at = [number(lo[t] - 1, hi[t]) for t in range(3)]
        end = [a + s for a, s in zip(at, sides, strict=True)]
        runs = [True, True, True]
        if thin and rng.random() < 0.5:
            runs[sides.index(min(sides))] = False
        return Block((at[0], at[1], at[2]), (end[0], end[1], end[2]), (runs[0], runs[1], runs[2]))

    blocks = [solid() for _ in range(number(1, 5))] + [solid(True) for _ in range(number(0, 3))]
    if rng.random() < 0.5:  # a ceiling sheet with joists on it
        z = number(size // 2, size - 4)
        blocks.append(Block((lo[0], lo[1], z), (hi[0], 1, z + 1), (True, True, False)))
        blocks += [Block((x, lo[1], z + 1), (x + 1, hi[1], z + 3)) for x in range(number(0, 5), size, 6)]
    if slopes:
        blocks.append(_slope(rng, lo, hi, size))
    room = []
    cover_top = number(size // 2, size)
    if rng.random() < 0.7:
        room = [Block((lo[0], lo[1], 0), (hi[0], 0, cover_top))]
        if rng.random() < 0.3:
            room.append(Block((number(0, size), 0, number(0, size)), (size + 1, number(1, 4), size + 1)))
    start = (number(2, size - 2), -number(2, depth - 1), number(0, size // 3))
    for part in room:  # nothing is boxed in below the collar
        if part.lo[2] < start[2] < part.hi[2]:
            blocks.append(Block(part.lo, (part.hi[0], part.hi[1], start[2])))
            part.lo = (part.lo[0], part.lo[1], start[2])
    return World(
        lo, hi, blocks, _outdoors(rng, lo, hi, size), room, _openings(rng, lo, hi, rounded), start, 1, number(1, 3),
        number(0, 3), number(0, 2), number(0, 2), bool(rng.random() < 0.5), cover_top, bool(rng.random() < 0.5),
    )  # fmt: skip


def _slope(rng: np.random.Generator, lo: tuple[int, ...], hi: tuple[int, ...], size: int) -> Block:
    axis = int(rng.integers(0, 2))
    other = 1 - axis
    a, b = lo[other], hi[other]
    low, rise = int(rng.integers(size // 2, size)), int(rng.integers(-4, 5))
    outline = ((a, low), (b, low + rise), (b, low + rise + 2), (a, low + 2))
    start = int(rng.integers(lo[axis], hi[axis] - 2))
    first, last = [0, 0, min(low, low + rise)], [0, 0, max(low, low + rise) + 2]
    first[axis], last[axis], first[other], last[other] = start, start + int(rng.integers(1, 5)), a, b
    return Block((first[0], first[1], first[2]), (last[0], last[1], last[2]), (True, True, True), axis, outline)


def _outdoors(rng: np.random.Generator, lo: tuple[int, ...], hi: tuple[int, ...], size: int) -> list[Block]:
    if rng.random() < 0.5:
        return []
    z = int(rng.integers(size - 3, size + 1))
    return [Block((lo[0] - 2, lo[1] - 2, z), (hi[0] + 2, hi[1] + 2, size + 9))]


def _openings(rng: np.random.Generator, lo: tuple[int, ...], hi: tuple[int, ...], rounded: bool) -> list[Opening]:
    found = []
    for axis, sign in ((1, 1), (0, 1), (2, 1), (0, -1)):
        if rng.random() < 0.5:
            continue
        u, v = (t for t in range(3) if t != axis)
        a = sorted(int(x) for x in rng.integers(lo[u], hi[u] + 1, 2))
        b = sorted(int(x) for x in rng.integers(lo[v], hi[v] + 1, 2))
        keep = []
        if rng.random() < 0.5:
            k = int(rng.integers(lo[u], hi[u])), int(rng.integers(lo[v], hi[v]))
            far = k[0] + int(rng.integers(0, 4)), k[1] + int(rng.integers(0, 4))
            reach, flange = int(rng.integers(0, 5)) if rounded else 0, int(rng.integers(0, 4))
            above = far[1] + int(rng.integers(0, 4)) if rounded and rng.random() < 0.5 else None
            keep.append((k, far, reach, flange, above))
        at = hi[axis] - int(rng.integers(0, 3)) if sign > 0 else lo[axis] + int(rng.integers(0, 3))
        found.append(Opening(axis, sign, (float(at), 0.0, 0.0), (a[0], b[0]), (a[1], b[1]), keep))
    return found


def as_space(world: World, elbows: int) -> FreeSpace:
    """Write a world as the product's free space."""

    def region(block: Block) -> Region:
        return Region(block.lo, block.hi, block.axis, block.outline)

    barriers = [
        Barrier(f"block-{n}", f"block {n}", BarrierKind.SOLID if all(b.runs) else BarrierKind.SHEET, region(b), b.runs)
        for n, b in enumerate(world.blocks)
    ] + [
        Barrier(f"out-{n}", "outdoors", BarrierKind.OUTDOORS, region(b), b.runs) for n, b in enumerate(world.outdoors)
    ]  # fmt: skip
    exits = tuple(
        Exit(f"exit-{n}", f"exit {n}", FaceKind.ROOF if o.axis == 2 else FaceKind.WALL, o.axis, o.sign, o.rise, o.lo,
             o.hi, tuple(KeepClear(f"keep-{i}", "keep", *k) for i, k in enumerate(o.keep)))
        for n, o in enumerate(world.openings)
    )  # fmt: skip
    return FreeSpace(
        world.lo, world.hi, Section(ROUND, world.r, world.r, world.radius, world.radius),
        Start(world.start, 2, 1, world.covered, world.cover_top),
        Limits(elbows, world.between, world.first, world.last, 0, world.priced),
        tuple(barriers), tuple(region(b) for b in world.room), exits,
    )  # fmt: skip
