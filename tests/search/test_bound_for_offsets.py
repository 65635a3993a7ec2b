"""What bounds an offset is inside its true body, and an offset that is offered takes all of that body.

The true body is sampled: a straight, an arc, the diagonal, an arc and a straight, swept by the round duct.
"""

from __future__ import annotations

import math
from dataclasses import replace

import numpy as np
from oracle.naive import Block, Opening, World
from oracle.worlds import as_space

from routeviz.model.freespace import FreeSpace, OffsetChoice
from routeviz.search.fans import core_fits, fans, fits
from routeviz.search.moves import State, moves
from routeviz.search.offsets import Column

UP = State(2, 1, -1)


def problem(rng: np.random.Generator) -> tuple[FreeSpace, float, int]:
    """One box beside a riser; whole units are fine enough to stand for a true duct."""
    r = int(rng.integers(200, 500))
    radius = int(r * rng.uniform(1.5, 3.0))
    start = (0, 0, 0)
    lo = tuple(int(rng.integers(a, b)) for a, b in ((-900, 2500), (-600, 600), (500, 3000)))
    hi = tuple(v + int(rng.integers(5, 400)) for v in lo)
    top = Opening(2, 1, (90_000.0, 0.0, 0.0), (-9000, -9000), (9000, 9000))
    world = World((-9000, -9000, -9000), (9000, 9000, 90_000), [Block(lo, hi)], [], [], [top], start, r, radius, 0, 0, 0,  # type: ignore[arg-type]
                  False, 0, False)  # fmt: skip
    angle = float(rng.choice([30.0, 45.0, 60.0]))
    space = replace(as_space(world, 2), offsets=(OffsetChoice(angle, (int(rng.integers(1200, 2500)),)),))
    return space, angle, radius


def centre_line(shift: float, angle_deg: float, radius: float) -> np.ndarray:
    """Points of a rounded offset towards x that begins at the origin and goes up z."""
    angle = math.radians(angle_deg)
    tangent = radius * math.tan(angle / 2)
    turns = np.linspace(0, angle, 200)
    first = np.stack([radius * (1 - np.cos(turns)), np.zeros(200), radius * np.sin(turns)], axis=1)
    corner = np.array([0.0, 0.0, tangent])
    way = np.array([math.sin(angle), 0.0, math.cos(angle)])
    far = corner + way * (shift / math.sin(angle))
    end = np.array([shift, 0.0, 2 * tangent + shift / math.tan(angle)])
    steps = np.linspace(tangent, shift / math.sin(angle) - tangent, 400)
    last = end - first[::-1] * np.array([1.0, 1.0, 1.0])
    assert math.isclose(math.dist(far, end), tangent)
    return np.concatenate([first, corner + steps[:, None] * way, last])


def test_the_core_lies_inside_the_true_body_and_the_body_inside_what_is_asked_for() -> None:
    rng = np.random.default_rng(19)
    hit = clear = 0
    for _ in range(400):
        space, angle, radius = problem(rng)
        table = moves(space.section, space.limits)
        column = Column(space, UP, priced=False)
        fan = next(f for f in fans(space, table, UP) if (f.axis, f.sign) == (0, 1))
        line = centre_line(int(fan.distance[0]), angle, radius)
        box = space.barriers[0].region
        core, whole = (f(column, fan, np.zeros(1, bool)) for f in (core_fits, fits))
        for place in rng.integers(-2500, 3500, 12).tolist():
            inside = [bool(((f.low < place) & (place < f.high)).any()) for f in (core, whole)]
            at = line + np.array([0.0, 0.0, float(place)])
            away = np.maximum(np.maximum(np.array(box.lo) - at, at - np.array(box.hi)), 0.0)
            squares = (away**2).sum(axis=1)
            apart = float(np.sqrt(squares.min())) - space.section.half_wide
            if int(squares.argmin()) in (0, len(squares) - 1):
                continue  # beyond an end, where the straight run goes on
            if inside[0]:
                assert apart < 2.0, (space, place, apart)
                assert inside[1]
                hit += 1
            if not inside[1]:
                assert apart > -2.0, (space, place, apart)
                clear += 1
    assert hit > 200
    assert clear > 200
