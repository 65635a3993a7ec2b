"""A stage as binary glTF: y up, metres, right-handed, one named node per piece, the same bytes every time."""

from __future__ import annotations

from collections.abc import Collection

import numpy as np
import trimesh
from trimesh.visual.material import PBRMaterial

from routeviz.units import MM_PER_IN
from routeviz.views.palette import MATERIALS, Finish, rgb
from routeviz.views.parts import Group, Piece
from routeviz.views.stage import Stage

__all__ = ["export"]

M_PER_IN = MM_PER_IN / 1000

# x stays, z becomes up, and what lies through the wall (+y) lies away from the viewer (-z): a rotation, no mirror
_TURN = np.array([[1.0, 0, 0, 0], [0, 0, 1, 0], [0, -1, 0, 0], [0, 0, 0, 1]])
_SMOOTH_DEG = 40.0


def _linear(channel: int) -> float:
    value = channel / 255
    return value / 12.92 if value <= 0.04045 else ((value + 0.055) / 1.055) ** 2.4


def _material(name: str, finish: Finish) -> PBRMaterial:
    colour = [round(255 * _linear(c)) for c in rgb(finish.colour)]
    return PBRMaterial(
        name=name, baseColorFactor=[*colour, round(255 * finish.opacity)], metallicFactor=0.55 if finish.metal else 0.0,
        roughnessFactor=0.42 if finish.metal else 0.9, alphaMode="BLEND" if finish.opacity < 1 else "OPAQUE",
        doubleSided=finish.opacity < 1,
    )  # fmt: skip


def _mesh(piece: Piece, material: PBRMaterial) -> trimesh.Trimesh:
    mesh = piece.mesh.copy()
    turn = _TURN.copy()
    turn[:3] *= M_PER_IN
    mesh.apply_transform(turn)
    if piece.smooth:
        mesh = trimesh.graph.smooth_shade(mesh, angle=np.radians(_SMOOTH_DEG))
    else:
        mesh.unmerge_vertices()
    mesh.visual = trimesh.visual.TextureVisuals(material=material)
    mesh.metadata = {"label": piece.label, "layer": piece.layer.value, "solid": piece.solid}
    return mesh


def export(stage: Stage, *, without: Collection[Group] = ()) -> bytes:
    """Give a stage as the bytes of a GLB file.

    Parameters
    ----------
    stage : Stage
        What to export; lengths in inches.
    without : collection of Group
        Groups to leave out; a page that draws the duct itself leaves out ``Group.ROUTE``.

    Returns
    -------
    bytes
        glTF 2.0 binary: metres, y up, the viewer at +z, nodes named as the stage's pieces. Two exports of equal
        stages are equal byte for byte.
    """
    scene = trimesh.Scene()
    materials = {name: _material(name, finish) for name, finish in MATERIALS.items()}
    for piece in stage.pieces:
        if piece.group not in without:
            scene.add_geometry(_mesh(piece, materials[piece.material]), node_name=piece.name, geom_name=piece.name)
    data: bytes = scene.export(file_type="glb", include_normals=True)
    return data
