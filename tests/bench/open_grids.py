"""One open grid with joists and boxes, and three ways to map it: the layered field, scipy and networkx.

Every cell is a place of the hood, a run must be at least so many cells long, an elbow weighs more than any length.
All three give the cost of the best route from every cell.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from routeviz.model.freespace import Barrier, BarrierKind, Exit, FreeSpace, Limits, Region, Section, Start
from routeviz.model.scene import SectionShape, SectionSize
from routeviz.model.solids import FaceKind
from routeviz.search.lattice import lattice
from routeviz.search.layers import Layers
from routeviz.search.moves import moves
from routeviz.search.terms import Terms

__all__ = ["Shape", "by_field", "by_networkx", "by_scipy", "solids"]

Shape = tuple[int, int, int]
WEIGHT = 100_000  # an elbow costs as much as this many cells


def solids(shape: Shape) -> list[Region]:
    """Give joist layers and random boxes as open regions between grid points."""
    rng = np.random.default_rng(7)
    found = []
    for level in (shape[2] // 4, shape[2] // 2, 3 * shape[2] // 4):
        found += [Region((x, -1, level), (x + 2, shape[1], level + 3)) for x in range(3, shape[0] - 2, 8)]
    for _ in range(shape[0] * shape[1] * shape[2] // 3000):
        size = rng.integers(2, 9, 3).tolist()
        at = [int(rng.integers(1, max(2, n - 1))) for n in shape]
        if at[2] + size[2] < shape[2] - 1:
            found.append(Region((at[0], at[1], at[2]), (at[0] + size[0], at[1] + size[1], at[2] + size[2])))
    return found


def by_field(shape: Shape, least: int) -> np.ndarray:
    """Give the least cost from every cell by the layered field; infinite where there is no way."""
    half, top = Section(SectionSize(SectionShape.ROUND, 1, 1), 0, 0, 0, 0), shape[2] - 1
    space = FreeSpace(
        (0, 0, 0), (shape[0] - 1, shape[1] - 1, top), half, Start((0, 0, 0), 2, 1), Limits(99, least, 0, least, 0),
        tuple(Barrier(f"b{n}", "", BarrierKind.SOLID, r, (True, True, True)) for n, r in enumerate(solids(shape))), (),
        (Exit("roof", "", FaceKind.ROOF, 2, 1, (float(top), 0.0, 0.0), (1, 1), (1, 1)),),
    )  # fmt: skip
    x, y, z = (np.arange(n) for n in shape)
    grid = lattice(space, moves(half, space.limits), (x, y, z), Terms(), most=x.size * y.size * z.size)
    layers = Layers(grid)
    limit = grid.terms.limit
    best = np.full(len(grid.alive), limit, np.int32)
    for elbows in range(WEIGHT):
        layers.grow(elbows)
        least = layers.cost[elbows][0][0].copy()
        for (cost,) in layers.cost[elbows][1:]:
            np.minimum(least, cost, out=least)
        least += np.int32(elbows * WEIGHT)
        if not (least < best).any():
            break
        np.minimum(best, least, out=best)
    found = np.full(x.size * y.size * z.size, np.inf)
    found[grid.alive] = np.where(best < limit, best, np.inf)
    return found


@dataclass(frozen=True)
class _States:
    """The graph of (direction, run so far, cell), every edge backwards from the exit."""

    rows: np.ndarray
    columns: np.ndarray
    weights: np.ndarray
    source: int
    size: int


def _states(shape: Shape, least: int) -> _States:
    """Write the same question as a graph whose shortest paths answer it."""
    ids = np.arange(int(np.prod(shape))).reshape(shape)
    regions, inside = solids(shape), np.zeros(shape, bool)
    for r in regions:
        inside[tuple(slice(max(r.lo[t] + 1, 0), max(r.hi[t], 0)) for t in range(3))] = True
    open_cells = ids[~inside]
    rows, columns, weights = [], [], []

    def state(direction: int, run: int, cells: np.ndarray) -> np.ndarray:
        return cells + (direction * (least + 1) + run) * ids.size

    for axis in range(3):
        free = np.ones([n - (t == axis) for t, n in enumerate(shape)], bool)
        for r in regions:
            cut = [slice(max(r.lo[t] + 1, 0), max(r.hi[t], 0)) for t in range(3)]
            cut[axis] = slice(max(r.lo[axis], 0), max(r.hi[axis], 0))
            free[tuple(cut)] = False
        near, far = (np.moveaxis(ids, axis, 0)[s] for s in (slice(None, -1), slice(1, None)))
        passable = np.moveaxis(free, axis, 0)
        for sign, (here, there) in enumerate(((near, far), (far, near))):
            direction = 2 * axis + sign
            for run in range(least + 1):
                rows.append(state(direction, run, here[passable]))
                columns.append(state(direction, min(run + 1, least), there[passable]))
                weights.append(np.ones(len(rows[-1])))
            for other in range(6):
                if other // 2 != axis:
                    rows.append(state(direction, least, open_cells))
                    columns.append(state(other, 0, open_cells))
                    weights.append(np.full(len(open_cells), float(WEIGHT)))
    source = int(ids[1, 1, shape[2] - 1]) + 5 * (least + 1) * ids.size  # downwards from the exit
    return _States(np.concatenate(rows), np.concatenate(columns), np.concatenate(weights), source,
                   6 * (least + 1) * ids.size)  # fmt: skip


def by_scipy(shape: Shape, least: int) -> np.ndarray:
    """Give the same by scipy's Dijkstra."""
    from scipy.sparse import coo_matrix
    from scipy.sparse.csgraph import dijkstra

    made = _states(shape, least)
    graph = coo_matrix((made.weights, (made.rows, made.columns)), (made.size, made.size)).tocsr()
    cost = np.asarray(dijkstra(graph, indices=made.source), np.float64)
    found: np.ndarray = cost.reshape(6, least + 1, -1)[:, least].min(axis=0)
    return found


def by_networkx(shape: Shape, least: int) -> np.ndarray:
    """Give the same by networkx's Dijkstra."""
    import networkx as nx

    made = _states(shape, least)
    graph: nx.DiGraph[int] = nx.DiGraph()
    graph.add_weighted_edges_from(
        zip(made.rows.tolist(), made.columns.tolist(), made.weights.tolist(), strict=True)
    )  # fmt: skip
    cost = np.full(made.size, np.inf)
    for node, value in nx.single_source_dijkstra_path_length(graph, made.source).items():
        cost[node] = value
    found: np.ndarray = cost.reshape(6, least + 1, -1)[:, least].min(axis=0)
    return found
