"""The quick flow along a centre line is the flow of the route that the line becomes."""

from __future__ import annotations

import math
from itertools import pairwise

import pytest
import samples
from airflow.ducts import STACK, round_duct, scene_with

from routeviz import framing, routing
from routeviz.airflow import flow_along_cfm, flow_cfm
from routeviz.model.path import Bend, Centreline
from routeviz.model.scene import Fan, SectionSize
from routeviz.model.solids import FaceKind, Vec3
from routeviz.routing.vectors import unit

FRAME = framing.frame(samples.scene())
START: Vec3 = (70.0, -8.5, 78.5)
ROOF_Z = next(f for f in FRAME.faces if f.id == "roof-back")
TO_BACK: tuple[Vec3, ...] = (START, (70.0, -8.5, 94.0), (70.0, 7.0, 94.0))
UP_AND_OVER: tuple[Vec3, ...] = (START, (70.0, -8.5, 112.0), (100.0, -8.5, 112.0), (100.0, 7.0, 112.0))
PLUMB: tuple[Vec3, ...] = (START, (70.0, -8.5, ROOF_Z.plane[0] + ROOF_Z.plane[2] * -8.5))


def line(points: tuple[Vec3, ...], section: SectionSize, face: str, wide: tuple[int | None, ...] = ()) -> Centreline:
    bends = []
    for a, b, c in zip(points, points[1:], points[2:], strict=False):
        before, after = (unit((q[0] - p[0], q[1] - p[1], q[2] - p[2])) for p, q in ((a, b), (b, c)))
        angle = math.degrees(math.acos(sum(p * q for p, q in zip(before, after, strict=True))))
        bends.append(Bend(b, angle, 6.0, section.width_in))
    length = sum(math.dist(a, b) for a, b in pairwise(points))
    axes = wide or (None,) * (len(points) - 1)
    return Centreline(points, tuple(bends), section, axes, face, len(bends), length, 0.0, ())


@pytest.mark.parametrize(
    ("points", "section", "face", "wide"),
    [
        (TO_BACK, round_duct(8), "face-hood", ()),
        (TO_BACK, round_duct(6), "face-hood", ()),
        (UP_AND_OVER, round_duct(6), "face-hood", ()),
        (UP_AND_OVER, STACK, "face-hood", (0, 1, 0)),
        (PLUMB, round_duct(8), "roof-back", ()),
    ],
)
def test_same_flow_as_the_realised_route(
    points: tuple[Vec3, ...], section: SectionSize, face: str, wide: tuple[int | None, ...]
) -> None:
    scene = scene_with(Fan(500.0))
    centre = line(points, section, face, wide)
    kind = next(f.kind for f in FRAME.faces if f.id == face)
    assert (kind is FaceKind.ROOF) == (face == "roof-back")
    route = routing.realise(centre, scene, FRAME)
    assert flow_along_cfm(centre, scene, kind) == pytest.approx(flow_cfm(route, scene), rel=1e-9)


def test_no_fan_no_flow() -> None:
    assert flow_along_cfm(line(PLUMB, round_duct(8), "roof-back"), scene_with(Fan(0.0)), FaceKind.ROOF) == 0.0
