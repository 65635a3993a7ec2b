"""The map of a whole grid against scipy's Dijkstra on the state graph, in one run on the same instance.

Run it by hand: ``python tests/bench/bench_search.py [NX NY NZ [LEAST]]``. It prints times, ratios and whether all
answers are identical. Every cell is a place of the hood; a run must be at least LEAST cells long, elbows weigh more
than any length.
"""

from __future__ import annotations

import sys
import time

import numpy as np
from scipy.sparse import coo_matrix
from scipy.sparse.csgraph import dijkstra

from routeviz.model.freespace import (
    Barrier,
    BarrierKind,
    Exit,
    FreeSpace,
    Limits,
    Region,
    Section,
    Start,
)  # fmt: skip
from routeviz.model.scene import SectionShape, SectionSize
from routeviz.model.solids import FaceKind
from routeviz.search.lattice import lattice
from routeviz.search.layers import Layers
from routeviz.search.moves import moves
from routeviz.search.terms import Terms

WEIGHT = 100_000  # an elbow costs as much as this many cells


def instance(shape: tuple[int, int, int]) -> list[Region]:
    """Give joist layers and random boxes as open regions between grid points."""
    rng = np.random.default_rng(7)
    found = []
    for level in (shape[2] // 4, shape[2] // 2, 3 * shape[2] // 4):
        found += [Region((x, -1, level), (x + 2, shape[1], level + 3)) for x in range(3, shape[0] - 2, 8)]
    for _ in range(shape[0] * shape[1] * shape[2] // 3000):
        size = rng.integers(2, 9, 3)
        at = [int(rng.integers(1, max(2, n - 1))) for n in shape]
        if at[2] + size[2] < shape[2] - 1:
            found.append(Region((at[0], at[1], at[2]), tuple(int(a + s) for a, s in zip(at, size, strict=True))))  # type: ignore[arg-type]
    return found


def ours(shape: tuple[int, int, int], regions: list[Region], least: int) -> np.ndarray:
    """Give the cost from every cell by the layered field."""
    half = Section(SectionSize(SectionShape.ROUND, 1, 1), 0, 0, 0, 0)
    top = shape[2] - 1
    space = FreeSpace(
        (0, 0, 0), (shape[0] - 1, shape[1] - 1, top), half, Start((0, 0, 0), 2, 1), Limits(99, least, 0, least, 0),
        tuple(Barrier(f"b{n}", "", BarrierKind.SOLID, r, (True, True, True)) for n, r in enumerate(regions)), (),
        (Exit("roof", "", FaceKind.ROOF, 2, 1, (float(top), 0.0, 0.0), (1, 1), (1, 1)),),
    )  # fmt: skip
    grid = lattice(space, moves(half, space.limits), tuple(np.arange(n) for n in shape), Terms())  # type: ignore[arg-type]
    layers = Layers(grid)
    best = np.full(len(grid.alive), np.inf)
    k = 0
    while True:
        layers.grow(k)
        here = np.min([state[0] for state in layers.cost[k]], axis=0).astype(float)
        here[here >= grid.terms.limit] = np.inf
        better = here + k * WEIGHT < best
        if not better.any():
            break
        best = np.where(better, here + k * WEIGHT, best)
        k += 1
    found = np.full(int(np.prod(shape)), np.inf)
    found[grid.alive] = best
    return found


def scipys(shape: tuple[int, int, int], regions: list[Region], least: int) -> np.ndarray:
    """Give the same by Dijkstra over (direction, run so far, cell), backwards from the exit."""
    ids = np.arange(int(np.prod(shape))).reshape(shape)
    count = ids.size
    steps = []
    for axis in range(3):
        for sign in (1, -1):
            a, b = [slice(None)] * 3, [slice(None)] * 3
            a[axis], b[axis] = (slice(0, -1), slice(1, None)) if sign > 0 else (slice(1, None), slice(0, -1))
            free = np.ones([n - (t == axis) for t, n in enumerate(shape)], bool)
            for r in regions:
                cut = [slice(max(r.lo[t] + 1, 0), max(r.hi[t], 0)) for t in range(3)]
                cut[axis] = slice(max(r.lo[axis], 0), max(r.hi[axis], 0))
                free[tuple(cut)] = False
            steps.append((axis, ids[tuple(a)][free], ids[tuple(b)][free]))
    rows, columns, weights = [], [], []
    for d, (axis, here, there) in enumerate(steps):
        for run in range(least + 1):
            to = min(run + 1, least)
            rows.append(here + (d * (least + 1) + run) * count)
            columns.append(there + (d * (least + 1) + to) * count)
            weights.append(np.ones(len(here)))
        every = np.arange(count)
        inside = np.zeros(shape, bool)
        for r in regions:
            inside[tuple(slice(max(r.lo[t] + 1, 0), max(r.hi[t], 0)) for t in range(3))] = True
        every = every[~inside.ravel()]
        for e, (other, _, _) in enumerate(steps):
            if other != axis:
                rows.append(every + (d * (least + 1) + least) * count)
                columns.append(every + e * (least + 1) * count)
                weights.append(np.full(len(every), float(WEIGHT)))
    size = 6 * (least + 1) * count
    graph = coo_matrix((np.concatenate(weights), (np.concatenate(rows), np.concatenate(columns))), (size, size)).tocsr()
    source = ids[1, 1, shape[2] - 1] + 5 * (least + 1) * count  # downwards from the exit
    cost = dijkstra(graph, indices=int(source))
    return cost.reshape(6, least + 1, count)[:, least].min(axis=0)


def main() -> None:
    """Print one comparison."""
    numbers = [int(a) for a in sys.argv[1:]]
    shape = (numbers[0], numbers[1], numbers[2]) if len(numbers) >= 3 else (60, 60, 40)
    least = numbers[3] if len(numbers) == 4 else 4
    regions = instance(shape)
    times, answers = [], []
    for run in (ours, scipys):
        began = time.perf_counter()
        answers.append(run(shape, regions, least))
        times.append(time.perf_counter() - began)
    reached = np.isfinite(answers[0])
    same = bool(np.array_equal(answers[0][reached], answers[1][reached]))
    print(f"{shape}, runs of at least {least}: {reached.sum()} cells reached")
    print(f"layered field {times[0]:.2f} s, scipy {times[1]:.2f} s: {times[1] / times[0]:.0f} times; same: {same}")


if __name__ == "__main__":
    main()
