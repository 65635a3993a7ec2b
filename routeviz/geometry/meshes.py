"""Closed triangle meshes of shapes, with normals that point outwards."""

from __future__ import annotations

from typing import Any

import numpy as np

from routeviz.geometry.shapes import lift
from routeviz.model.solids import Box, Prism, Shape

__all__ = ["mesh"]

ROUND_SIDES = 48


def _outline(shape: Shape) -> tuple[int, float, float, list[tuple[float, float]]]:
    if isinstance(shape, Box):
        (x0, y0, z0), (x1, y1, z1) = shape.lo, shape.hi
        return 2, z0, z1, [(x0, y0), (x1, y0), (x1, y1), (x0, y1)]
    if isinstance(shape, Prism):
        return shape.axis, shape.start, shape.end, list(shape.outline)
    angles = np.linspace(0.0, 2 * np.pi, ROUND_SIDES, endpoint=False)
    (u, v), r = shape.centre, shape.radius
    return shape.axis, shape.start, shape.end, [(u + r * np.cos(a), v + r * np.sin(a)) for a in angles.tolist()]


def mesh(shape: Shape) -> Any:
    """Give a shape as a closed `trimesh.Trimesh`; round bars have 48 flat sides, inscribed.

    trimesh is imported on first use, so that commands without meshes never load it.
    """
    import mapbox_earcut
    import trimesh

    axis, start, end, outline = _outline(shape)
    flat = np.asarray(outline, dtype=np.float64)
    n = len(flat)
    cap = mapbox_earcut.triangulate_float64(flat, np.array([n], dtype=np.uint32)).reshape(-1, 3).astype(np.int64)
    corners = [lift(axis, start, (u, v)) for u, v in outline] + [lift(axis, end, (u, v)) for u, v in outline]
    ring = np.arange(n)
    following = np.roll(ring, -1)
    sides = np.concatenate(
        [np.stack([ring, following, following + n], 1), np.stack([ring, following + n, ring + n], 1)]
    )
    area = np.sum(flat[:, 0] * np.roll(flat[:, 1], -1) - np.roll(flat[:, 0], -1) * flat[:, 1])
    if area < 0:
        sides = sides[:, ::-1]
    first, second, third = flat[cap[:, 0]], flat[cap[:, 1]], flat[cap[:, 2]]
    turn = np.sum((second - first)[:, ::-1] * (third - first) * np.array([-1.0, 1.0]))
    if turn < 0:
        cap = cap[:, ::-1]
    faces = np.concatenate([cap[:, ::-1], cap + n, sides])
    if axis == 1:  # (x, z) with y is a left-handed order
        faces = faces[:, ::-1]
    return trimesh.Trimesh(np.asarray(corners), faces, process=False)
