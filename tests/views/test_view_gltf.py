"""The exported model: metres, y up, not mirrored, the same bytes every time."""

from __future__ import annotations

import io
import json
import struct

import numpy as np
import pytest
import trimesh
import view_plans

from routeviz.views import gltf
from routeviz.views.parts import Group
from routeviz.views.stage import build

M = 0.0254


@pytest.fixture(scope="module")
def data() -> bytes:
    return gltf.export(build(view_plans.plan()))


@pytest.fixture(scope="module")
def model(data) -> trimesh.Scene:
    return trimesh.load(io.BytesIO(data), file_type="glb")


def centre(model: trimesh.Scene, name: str) -> np.ndarray:
    transform, geometry = model.graph[name]
    return trimesh.transform_points([model.geometry[geometry].bounds.mean(axis=0)], transform)[0]


def test_it_is_gltf_2_in_one_file(data):
    magic, version, length = struct.unpack("<4sII", data[:12])
    assert (magic, version, length) == (b"glTF", 2, len(data))
    chunk = struct.unpack("<I", data[12:16])[0]
    header = json.loads(data[20 : 20 + chunk])
    assert header["asset"]["version"] == "2.0"
    assert all("uri" not in b for b in header["buffers"])


def test_same_stage_same_bytes(data):
    assert gltf.export(build(view_plans.plan())) == data


def test_it_is_not_mirrored(model):
    hood, window, cap = (centre(model, n) for n in ("hood-band", "hood-sink-window-glass", "cap-1"))
    # as seen from the room: hood left of window, cap above both, the room towards the viewer (+z)
    assert hood[0] < window[0]
    assert cap[1] > hood[1] > 0
    assert hood[2] > window[2]
    # right, up and towards the viewer make a right-handed frame
    right, up, near = window - hood, cap - hood, centre(model, "hood-keys") - centre(model, "hood-sink-window-glass")
    assert np.linalg.det([right * [1, 0, 0], up * [0, 1, 0], near * [0, 0, 1]]) > 0


def test_lengths_are_metres(model):
    transform, geometry = model.graph["hood-band"]
    size = model.geometry[geometry].extents
    assert transform == pytest.approx(np.eye(4))
    assert size == pytest.approx([36 * M, 2 * M, 19.9 * M], rel=1e-5)


def test_faces_still_look_outward(model):
    for name in ("hood-body", "joist-4", "duct-straight-1", "hood-inside-1-1"):
        mesh = model.geometry[model.graph[name][1]].copy()
        mesh.merge_vertices(merge_tex=True, merge_norm=True)
        assert mesh.is_watertight, name
        assert mesh.volume > 0, name


def test_nodes_are_named_as_the_stages_pieces_and_groups_can_be_left_out():
    stage = build(view_plans.plan())
    names = set(
        trimesh.load(io.BytesIO(gltf.export(stage, without={Group.ROUTE})), file_type="glb").graph.nodes_geometry
    )
    assert names == {p.name for p in stage.pieces if p.group is not Group.ROUTE}
