"""Any sensible home can be framed: nothing raises, members do not share space, all lies where it belongs."""

from __future__ import annotations

import random
from dataclasses import replace

import pytest
import samples
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from overlaps import shared_volumes

from routeviz.framing import frame
from routeviz.geometry import bounds, boxes_overlap, contains, stair_boxes
from routeviz.model.scene import (
    Above,
    AboveKind,
    Beam,
    Layer,
    MemberKind,
    MemberLayout,
    Obstacle,
    ObstacleKind,
    Opening,
    OpeningKind,
    Roof,
    RoofForm,
    RunDirection,
    Scene,
    Space,
    SpaceKind,
    WallFrame,
    WallSide,
)
from routeviz.model.solids import Box, FaceKind, Frame, Passage

SIDES = (WallSide.HOOD, WallSide.LEFT, WallSide.RIGHT, WallSide.FRONT)
FURRED = {
    "frame": WallFrame.MASONRY, "core_in": 8.0, "outside": (),
    "studs": MemberLayout(MemberKind.FURRING, "1x2", 1.5, 0.75, 16.0, 8.0, RunDirection.ALONG),
    "inside": (Layer("plaster on wood lath", 0.75), Layer("furring gap", 0.75)),
}  # fmt: skip


@st.composite
def homes(draw) -> Scene:
    base = samples.scene()
    width, depth = draw(st.floats(80, 260)), draw(st.floats(70, 220))
    ceiling_in = draw(st.sampled_from([84.0, 90.0, 96.0, 97.125, 108.0, 120.0]))
    outdoors = [WallSide.HOOD, *(s for s in SIDES[1:] if draw(st.booleans()))]
    if draw(st.integers(0, 4)) == 0:
        outdoors.remove(WallSide.HOOD)
    walls = []
    for side in SIDES:
        beyond = "outdoors" if side in outdoors else draw(st.sampled_from(["room", "garage"]))
        length = width if side in (WallSide.HOOD, WallSide.FRONT) else depth
        changes = draw(st.sampled_from([{}, {}, {"plates": 2}, FURRED]))
        wall = samples.wall(side, beyond, **changes)
        if beyond == "outdoors" and draw(st.booleans()):
            first = draw(st.floats(2, length - 40))
            kind = draw(st.sampled_from(list(OpeningKind)))
            sill = 0.0 if kind is OpeningKind.DOOR else draw(st.floats(20, 50))
            openings = [Opening("one", kind, True, first, sill, draw(st.floats(16, 36)), draw(st.floats(20, 32)))]
            if first + 100 < length:
                openings.append(
                    Opening("two", OpeningKind.WINDOW, False, first + draw(st.floats(40, 60)), 44.0, 30.0, 36.0)
                )
            wall = replace(wall, openings=tuple(openings))
        walls.append(wall)
    walls = tuple(walls)
    spaces = tuple(
        Space("garage" if n == 0 else f"garage-{n}", SpaceKind.GARAGE, w.side, 200.0, 20.0, 40.0, -6.0, 96.0,
              tuple(samples.wall(s) for s in (WallSide.FRONT, WallSide.LEFT, WallSide.RIGHT)), draw(st.booleans()))
        for n, w in enumerate(w for w in walls if w.beyond == "garage")
    )  # fmt: skip
    kind = draw(st.sampled_from(list(AboveKind)))
    joists = replace(
        base.ceiling.joists,
        direction=draw(st.sampled_from(list(RunDirection))),
        spacing_in=draw(st.sampled_from([12.0, 16.0, 19.2, 24.0])),
        first_in=draw(st.floats(0.75, 24.0)),
        kind=draw(st.sampled_from([MemberKind.SAWN, MemberKind.I_JOIST, MemberKind.TRUSS])),
        doubled=draw(st.sampled_from([(), (2,), (3, 4)])),
        missing=draw(st.sampled_from([(), (2,), (5,)])),
    )
    beams = draw(st.sampled_from([(), (Beam("long-beam", MemberKind.ENGINEERED, 3.5, 11.25, RunDirection.ALONG, 50.0,
                                            ceiling_in + 0.625 - 4.0),)]))  # fmt: skip
    ceiling = replace(base.ceiling, joists=joists, beams=beams, blocking_in=draw(st.sampled_from([(), (30.0,)])))
    roof: Roof | None = replace(
        base.roof,
        form=draw(st.sampled_from(list(RoofForm))),
        pitch=draw(st.sampled_from([0.02, 0.25, 0.5, 1.0])),
        ridge=draw(st.sampled_from(list(RunDirection))),
        ridge_at_in=draw(st.floats(-20, 280)),
        overhang_in=draw(st.sampled_from([0.0, 1.0, 12.0, 24.0])),
        framing=draw(
            st.sampled_from([base.roof.framing, replace(base.roof.framing, kind=MemberKind.TRUSS, depth_in=3.5)])
        ),
        high_side=None,
        heel_in=draw(st.sampled_from([None, None, 30.0])),  # higher than any joist and rafter that is drawn here
    )
    if kind is AboveKind.SLAB:
        ceiling, roof = replace(ceiling, joists=None, slab_in=8.0, beams=(), blocking_in=()), None
    elif (kind is AboveKind.ROOF and draw(st.booleans())) or (
        roof is not None and roof.framing.kind is MemberKind.TRUSS and draw(st.booleans())
    ):
        ceiling = replace(ceiling, joists=None, beams=(), blocking_in=())
    elif kind is AboveKind.STOREY and draw(st.booleans()):
        roof = None
    above = Above(kind, 96.0 if kind is AboveKind.STOREY else 0.0, (Layer("plywood subfloor", 0.75),))
    things = draw(st.sampled_from([(), (Obstacle("pipe", ObstacleKind.PIPE, 30.0, 5.0, 0.0, 4.0, 4.0, 90.0, diameter_in=4.0),
                                        Obstacle("uppers", ObstacleKind.CABINET, 2.0, 0.0, 54.0, 30.0, 12.0, 30.0,
                                                 hides_duct=True))]))  # fmt: skip
    return replace(
        base, kitchen=replace(base.kitchen, width_in=width, depth_in=depth, ceiling_in=ceiling_in), walls=walls,
        ceiling=ceiling, above=above, roof=roof, spaces=spaces, obstacles=things,
        hood=replace(base.hood, centre_in=width / 2), cooktop=replace(base.cooktop, centre_in=width / 2),
    )  # fmt: skip


def cathedral(scene: Scene) -> bool:
    truss = scene.roof is not None and scene.roof.framing is not None and scene.roof.framing.kind is MemberKind.TRUSS
    return scene.above.kind is AboveKind.ROOF and scene.ceiling.joists is None and not truss


def in_zone(framed: Frame, point):
    return [z for z in framed.zones if contains(z.shape, point)][-1]


@given(homes())
@settings(max_examples=30, deadline=None, suppress_health_check=list(HealthCheck), derandomize=True)
def test_random_homes(scene: Scene):
    framed = frame(scene, {"operable window": 36.0})
    ids = [s.id for s in framed.solids]
    assert len(set(ids)) == len(ids)
    assert len({z.id for z in framed.zones}) == len(framed.zones)
    assert len({f.id for f in framed.faces}) == len(framed.faces)
    assert framed == frame(scene, {"operable window": 36.0})  # the same scene gives the same frame
    assert shared_volumes(framed) == []
    _members_lie_in_the_house(scene, framed)
    _exits_lead_out_of_hidden_places(scene, framed)
    _no_open_air_indoors(scene, framed)


def _members_lie_in_the_house(scene: Scene, framed: Frame) -> None:
    over = (scene.roof.overhang_in if scene.roof else 0.0) + 0.01
    lo, hi = framed.bounds.lo, framed.bounds.hi
    for solid in framed.solids:
        if solid.member is None or solid.space.startswith("garage"):
            continue
        box = bounds(solid.shape)
        assert box.lo[0] >= lo[0] - over, solid.id
        assert box.hi[0] <= hi[0] + over, solid.id
        assert box.lo[1] >= lo[1] - over, solid.id
        assert box.hi[1] <= hi[1] + over, solid.id
        assert box.lo[2] >= -0.01, solid.id
        assert box.hi[2] <= hi[2] + over * (scene.roof.pitch if scene.roof else 0.0) + 0.01, solid.id
    kitchen = scene.kitchen
    room = Box((0.1, -kitchen.depth_in + 0.1, 0.1), (kitchen.width_in - 0.1, -0.1, kitchen.ceiling_in - 0.1))
    for solid in framed.solids:
        hung = solid.origin == "ceiling.beams" or (cathedral(scene) and solid.origin.startswith(("roof", "ceiling")))
        if solid.member is not None and not hung:
            assert not any(boxes_overlap(room, step) for step in stair_boxes(solid.shape, step=2.0)), solid.id


def _exits_lead_out_of_hidden_places(scene: Scene, framed: Frame) -> None:
    """A step inside a face is never the open air, and the way out ends inside the bounds."""
    box = framed.bounds
    for face in framed.faces:
        assert all(a < b for a, b in zip(face.lo, face.hi, strict=True)), face.id
        u, v = ((face.lo[i] + face.hi[i]) / 2 for i in range(2))
        if face.kind is FaceKind.ROOF:
            z = face.plane[0] + face.plane[1] * u + face.plane[2] * v
            assert z + scene.cap.roof_stub_in <= box.hi[2] + 1e-6, face.id
            inside = (u, v, z - 0.1)
        elif face.kind is FaceKind.WALL:
            point = [u, v]
            point.insert(face.axis, face.at_in - face.sign * 0.1)
            inside = (point[0], point[1], point[2])
            assert box.lo[face.axis] - 1e-9 <= face.at_in <= box.hi[face.axis] + 1e-9, face.id
        else:
            continue
        assert in_zone(framed, inside).passage is not Passage.OUTDOORS, face.id


def _no_open_air_indoors(scene: Scene, framed: Frame) -> None:
    """From the floor to the top of the joists, within the walls' outer faces, no place counts as outdoors."""
    kitchen, board = scene.kitchen, sum(layer.thickness_in for layer in scene.ceiling.layers)
    joists = scene.ceiling.joists.depth_in if scene.ceiling.joists else scene.ceiling.slab_in
    top = kitchen.ceiling_in + (0.0 if cathedral(scene) else board + joists)
    thick = {w.side: w.thickness_in for w in scene.walls}
    rng = random.Random(len(framed.solids))
    for _ in range(60):
        point = (
            rng.uniform(-thick[WallSide.LEFT], kitchen.width_in + thick[WallSide.RIGHT]),
            rng.uniform(-kitchen.depth_in - thick[WallSide.FRONT], thick[WallSide.HOOD]),
            rng.uniform(0.0, top),
        )
        if cathedral(scene):
            point = (min(max(point[0], 0.0), kitchen.width_in), min(max(point[1], -kitchen.depth_in), 0.0), point[2])
        assert in_zone(framed, point).passage is not Passage.OUTDOORS, point


@pytest.mark.parametrize("form", list(RoofForm))
@pytest.mark.parametrize("ridge", list(RunDirection))
@pytest.mark.parametrize("kind", [AboveKind.ATTIC, AboveKind.ROOF, AboveKind.STOREY])
def test_every_roof_over_every_ceiling(form, ridge, kind):
    base = samples.scene()
    for high in (None, *SIDES):
        roof = replace(
            base.roof, form=form, ridge=ridge, ridge_at_in=66.0, high_side=high if _fits(ridge, high) else None
        )
        ceiling = replace(base.ceiling, joists=None) if kind is AboveKind.ROOF else base.ceiling
        framed = frame(replace(base, roof=roof, ceiling=ceiling, above=Above(kind, 96.0)))
        assert shared_volumes(framed) == []
        assert any(f.kind is FaceKind.ROOF for f in framed.faces)


def _fits(ridge: RunDirection, high: WallSide | None) -> bool:
    across = (WallSide.HOOD, WallSide.FRONT) if ridge is RunDirection.ALONG else (WallSide.LEFT, WallSide.RIGHT)
    return high in across
