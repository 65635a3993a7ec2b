"""Which solids of a frame share space, by boxes and by manifold3d's exact intersections."""

from __future__ import annotations

import manifold3d
import numpy as np

from routeviz.geometry import bounds, mesh
from routeviz.model.solids import Box, Crossing, Frame, Solid


def body(solid: Solid) -> manifold3d.Manifold:
    surface = mesh(solid.shape)
    return manifold3d.Manifold(
        manifold3d.Mesh(np.asarray(surface.vertices, np.float32), np.asarray(surface.faces, np.uint32))
    )


def shared_volumes(framed: Frame) -> list[tuple[str, str, float]]:
    """Give pairs of solids in a wall's, ceiling's or roof's make-up that share more than rounding [cubic in]."""
    built = [s for s in framed.solids if s.crossing is not Crossing.GHOST and not s.origin.startswith("obstacles")]
    built = [s for s in built if not s.origin.endswith("services")]
    boxes = [bounds(s.shape) for s in built]
    lo, hi = np.array([b.lo for b in boxes]), np.array([b.hi for b in boxes])
    meet = np.all((lo[:, None] < hi[None] - 1e-6) & (lo[None] < hi[:, None] - 1e-6), axis=2)
    found = []
    for i, j in zip(*np.nonzero(np.triu(meet, 1)), strict=True):
        a, b = built[i], built[j]
        if isinstance(a.shape, Box) and isinstance(b.shape, Box):
            found.append((a.id, b.id, float(np.prod(np.minimum(hi[i], hi[j]) - np.maximum(lo[i], lo[j])))))
            continue
        volume = (body(a) ^ body(b)).volume()
        if volume > 0.02:  # 32-bit coordinates of 200 in are good to 1e-5 in; touching faces of 100 x 6 in
            found.append((a.id, b.id, volume))
    return found
