"""Flat outlines and shells to closed meshes [in]; every function gives a watertight mesh or None."""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from functools import lru_cache
from typing import TypeAlias

import numpy as np
import numpy.typing as npt
import shapely
import trimesh
from shapely.geometry.base import BaseGeometry

from routeviz.model.solids import Cylinder, Prism, Shape

__all__ = ["Slab", "barred", "box", "frustum", "loft", "merge", "rough_outline", "slab_of", "tube"]

Array = npt.NDArray[np.float64]
Mesh: TypeAlias = trimesh.Trimesh

# columns: where the outline's u and v and the sweep go in x, y, z; each is a rotation, so faces stay outward
_TURN = {
    0: np.array([[0.0, 0, 1], [1, 0, 0], [0, 1, 0]]),
    1: np.array([[1.0, 0, 0], [0, 0, -1], [0, 1, 0]]),
    2: np.eye(3),
}


@dataclass(frozen=True)
class Slab:
    """A flat outline in two axes, swept along the third from `start` to `end`.

    `outline` may have holes and several parts; its axes are the two others, in axis order.
    """

    axis: int
    start: float
    end: float
    outline: BaseGeometry

    def clip(self, axis: int, low: float, high: float) -> Slab | None:
        """Keep what lies between two planes square to `axis`; None when nothing does."""
        if axis == self.axis:
            start, end = max(self.start, low), min(self.end, high)
            return Slab(axis, start, end, self.outline) if end - start > 1e-9 else None
        across = [a for a in (0, 1, 2) if a != self.axis].index(axis)
        x0, y0, x1, y1 = self.outline.bounds
        window = shapely.box(low, y0 - 1, high, y1 + 1) if across == 0 else shapely.box(x0 - 1, low, x1 + 1, high)
        left = self.outline.intersection(window)
        return Slab(self.axis, self.start, self.end, left) if left.area > 1e-9 else None

    def minus(self, hole: BaseGeometry) -> Slab | None:
        """Cut an outline away; None when nothing is left."""
        left = self.outline.difference(hole)
        return Slab(self.axis, self.start, self.end, left) if left.area > 1e-9 else None

    def mesh(self) -> Mesh:
        """Give the closed mesh; equal slabs share one, so it is not to be changed."""
        return _swept(self.axis, self.start, self.end, shapely.to_wkb(self.outline))


@lru_cache(maxsize=4096)
def _swept(axis: int, start: float, end: float, outline: bytes) -> Mesh:
    """Sweep an outline. From plan to plan most of a house stays what it is, so what was made is kept."""
    parts = []
    found = shapely.from_wkb(outline)
    for polygon in getattr(found, "geoms", [found]):
        if polygon.geom_type != "Polygon" or polygon.area < 1e-9:
            continue
        part = trimesh.creation.extrude_polygon(shapely.normalize(polygon), end - start)
        turn = np.eye(4)
        turn[:3, :3] = _TURN[axis]
        turn[axis, 3] = end if axis == 1 else start
        part.apply_transform(turn)
        parts.append(part)
    return merge(parts)


def slab_of(shape: Shape, *, along: int | None = None) -> Slab:
    """Give a solid's shape as a slab; a box is swept along `along` (default y).

    A cylinder becomes a 48-sided outline.
    """
    if isinstance(shape, Prism):
        return Slab(shape.axis, shape.start, shape.end, shapely.Polygon(shape.outline))
    if isinstance(shape, Cylinder):
        return Slab(shape.axis, shape.start, shape.end, shapely.Point(*shape.centre).buffer(shape.radius, quad_segs=12))
    axis = 1 if along is None else along
    u, v = (a for a in (0, 1, 2) if a != axis)
    return Slab(axis, shape.lo[axis], shape.hi[axis], shapely.box(shape.lo[u], shape.lo[v], shape.hi[u], shape.hi[v]))


def merge(meshes: Iterable[Mesh]) -> Mesh:
    """Join meshes into one without welding them."""
    every = list(meshes)
    if len(every) == 1:
        return every[0]
    if not every:
        return trimesh.Trimesh()
    joined: Mesh = trimesh.util.concatenate(every)
    return joined


def box(x0: float, x1: float, y0: float, y1: float, z0: float, z1: float) -> Mesh:
    """Give a box between two corners."""
    return trimesh.creation.box(bounds=[[x0, y0, z0], [x1, y1, z1]])


def frustum(low: tuple[float, float, float, float, float], high: tuple[float, float, float, float, float]) -> Mesh:
    """Give the hull of two level rectangles, each ``(x0, x1, y0, y1, z)``."""
    points = [(x, y, r[4]) for r in (low, high) for x in r[0:2] for y in r[2:4]]
    return trimesh.convex.convex_hull(np.array(points))


def tube(centre: tuple[float, float], inner: float, outer: float, z0: float, z1: float, *, sections: int = 48) -> Mesh:
    """Give an upright round tube with a wall."""
    mesh = trimesh.creation.annulus(inner, outer, z1 - z0, sections=sections)
    mesh.apply_translation([centre[0], centre[1], (z0 + z1) / 2])
    return mesh


def loft(outer: Sequence[Array], inner: Sequence[Array] | None = None) -> Mesh:
    """Join rings of points, one after the other, into a closed skin.

    Parameters
    ----------
    outer, inner : sequence of float arrays, shape (n, 3)
        Rings in order along the run, counter-clockwise seen from the run's end. With `inner` the result is a wall
        between two skins with both ends closed; without it, a solid with flat ends (rings must then be convex).
    """
    n, k = len(outer[0]), len(outer)
    index = np.arange(n)
    after = (index + 1) % n

    def skin(first: int, rows: int, *, inward: bool) -> list[npt.NDArray[np.int64]]:
        """Give the triangles between rows of points as indices of points, each array of shape (n, 3), from point `first` on."""
        faces = []
        for row in range(rows - 1):
            a, b = first + row * n + index, first + row * n + after
            c, d = a + n, b + n
            faces += [np.c_[a, d, b], np.c_[a, c, d]] if inward else [np.c_[a, b, d], np.c_[a, d, c]]
        return faces

    if inner is None:
        points = np.vstack([*outer, outer[0].mean(axis=0), outer[-1].mean(axis=0)])
        foot, head, last = k * n, k * n + 1, (k - 1) * n
        faces = skin(0, k, inward=False)
        faces += [np.c_[np.full(n, foot), after, index], np.c_[np.full(n, head), last + index, last + after]]
        return trimesh.Trimesh(points, np.vstack(faces), process=False)
    points = np.vstack([*outer, *inner])
    base, last = k * n, (k - 1) * n
    faces = skin(0, k, inward=False) + skin(base, k, inward=True)
    faces += [np.c_[index, base + index, after], np.c_[after, base + index, base + after]]
    top, under = last + index, base + last + index
    top_next, under_next = last + after, base + last + after
    faces += [np.c_[top, top_next, under], np.c_[top_next, under_next, under]]
    return trimesh.Trimesh(points, np.vstack(faces), process=False)


def rough_outline(
    x0: float, x1: float, z0: float, z1: float, *, open_top: bool, seed: int = 3, stray: float = 0.9
) -> shapely.Polygon:
    """Give a rectangle with a calm, hand-cut edge; the top runs straight past `z1` when it is open."""
    wobble = np.random.default_rng(seed)

    def edge(a: tuple[float, float], b: tuple[float, float]) -> list[tuple[float, float]]:
        count = max(2, round(math.dist(a, b) / 4.0))
        return [
            tuple(np.array(a) * (1 - t) + np.array(b) * t + wobble.uniform(-stray, stray, 2))
            for t in np.linspace(0, 1, count, endpoint=False)
        ]

    points = edge((x0, z0), (x1, z0)) + edge((x1, z0), (x1, z1))
    points += [(x1, z1 + 8), (x0, z1 + 8)] if open_top else edge((x1, z1), (x0, z1))
    points += edge((x0, z1), (x0, z0))
    return shapely.Polygon(points)


def barred(mesh: Mesh, *, pitch_in: float = 3.6) -> tuple[Mesh, Mesh]:
    """Slice a closed mesh into slanted bars; give every other bar in each of two closed meshes.

    Raises
    ------
    ValueError
        If the mesh is not closed.
    """
    import manifold3d

    if not mesh.is_watertight:
        raise ValueError("only a closed mesh can be barred")
    rest = manifold3d.Manifold(
        manifold3d.Mesh(np.asarray(mesh.vertices, np.float32), np.asarray(mesh.faces, np.uint32))
    )
    normal = np.array([1.0, 1.0, 1.0]) / math.sqrt(3)
    heights = mesh.vertices @ normal
    step = pitch_in / math.sqrt(3)
    cut = math.floor(heights.min() / step) * step + step
    bars: tuple[list[Mesh], list[Mesh]] = ([], [])
    turn = 0
    while not rest.is_empty():
        above, below = rest.split_by_plane(tuple(normal), cut)
        if not below.is_empty():
            piece = below.to_mesh()
            bars[turn % 2].append(trimesh.Trimesh(piece.vert_properties[:, :3], piece.tri_verts, process=True))
        rest, cut, turn = above, cut + step, turn + 1
        if cut > heights.max() + 2 * step:
            break
    return merge(bars[0]), merge(bars[1])
