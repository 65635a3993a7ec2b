"""A roof stands as high over the ceiling as its heel says; without one it is taken to stand on the joists, and that is said.

The sample kitchen: plates' top at 96 + 5/8 = 96 5/8 in, 2x8 joists (7 1/4 in) on them, 2x6 rafters (5 1/2 in) at 3 in 12,
studs' outer face 6 in and outer face 7 3/16 in behind the hood wall's face; deck 1/2 in and shingles 3/8 in.
"""

from __future__ import annotations

import math
from dataclasses import replace

import pytest
import samples
from overlaps import shared_volumes

from routeviz.framing import assumptions, frame
from routeviz.geometry import bounds, contains
from routeviz.model.scene import Above, AboveKind, Layer, MemberKind, RoofForm, RunDirection, Scene
from routeviz.model.solids import ExitFace, FaceKind, Frame, Prism

STRETCH = math.sqrt(1 + 0.25**2)
SEATED = 5.5 * STRETCH - 0.25 * 5.5  # the rafters' underside meets the plates' inner edge, 5 1/2 in further in


def home(heel_in: float | None, **changes: object) -> Scene:
    plain = samples.scene()
    assert plain.roof is not None
    return replace(plain, roof=replace(plain.roof, heel_in=heel_in, **changes))  # type: ignore[arg-type]


def roof_face(framed: Frame) -> ExitFace:
    return next(f for f in framed.faces if f.kind is FaceKind.ROOF)


def surface(framed: Frame, y: float) -> float:
    a, _, b = roof_face(framed).plane
    return a + b * y


def test_rafters_seated_on_the_plates_bring_the_roof_down() -> None:
    # underside at the plates' inner edge (1/2 in behind the face) is the plates' top; 9 in further in it is 2 1/4 in higher
    framed = frame(home(SEATED))
    assert surface(framed, -8.5) == pytest.approx(96.625 + 2.25 + 6.375 * STRETCH)
    # on the joists: 103 7/8 at the studs' outer face, 14 1/2 in further out
    taken = frame(home(None))
    assert surface(taken, -8.5) == pytest.approx(103.875 + 0.25 * 14.5 + 6.375 * STRETCH)
    assert surface(taken, -8.5) - surface(framed, -8.5) == pytest.approx(7.25 + 0.25 * 5.5)  # 8 5/8 in


@pytest.mark.parametrize("heel_in", [SEATED, 9.0, 7.25 + 5.5 * STRETCH, 24.0])
def test_the_rafters_top_is_the_heel_over_the_plates_at_the_studs_outer_face(heel_in: float) -> None:
    framed = frame(home(heel_in))
    assert surface(framed, 6.0) == pytest.approx(96.625 + heel_in + 0.875 * STRETCH)


def test_a_heel_that_says_what_is_taken_changes_nothing() -> None:
    taken, said = frame(home(None)), frame(home(7.25 + 5.5 * STRETCH))
    for a, b in zip(said.solids, taken.solids, strict=True):
        assert a.id == b.id
        assert bounds(a.shape).lo == pytest.approx(bounds(b.shape).lo)
        assert bounds(a.shape).hi == pytest.approx(bounds(b.shape).hi)


def test_joists_and_rims_are_cut_to_the_rafters() -> None:
    framed = frame(home(SEATED))
    for solid in framed.solids:
        if not solid.id.startswith(("joist", "rim-hood")):
            continue
        shape = solid.shape
        corners = shape.outline if isinstance(shape, Prism) else [(shape.hi[1], shape.hi[2])]  # type: ignore[union-attr]
        assert all(z <= 96.625 + SEATED + 0.25 * (6.0 - y) + 1e-6 for y, z in corners)
    rim = bounds(framed.solid("rim-hood").shape)
    assert rim.hi[2] == pytest.approx(96.625 + SEATED)  # at its outer side, where the rafters are lowest
    joist = framed.solid("joist-4").shape
    assert isinstance(joist, Prism)
    assert bounds(joist).hi[2] == 103.875  # whole once the rafters are high enough
    sheets = [
        pair for pair in shared_volumes(framed) if any(name.startswith(("roof-", "hood-outside")) for name in pair[:2])
    ]
    assert [pair for pair in sheets if any(name.startswith(("joist", "rim")) for name in pair[:2])] == []


def test_over_a_low_roof_there_is_open_air() -> None:
    framed = frame(home(SEATED))
    for y in (3.0, 6.5):
        at = surface(framed, y)
        for over, where in ((0.1, "outdoors"), (-0.1, "ceiling")):
            last = [z for z in framed.zones if contains(z.shape, (70.0, y, at + over))][-1]
            assert (last.id == "outdoors") == (where == "outdoors")


@pytest.mark.parametrize(
    ("kind", "depth_in", "heel", "words"),
    [  # 7 1/4 and the depth plumb: 5 1/2 x 1.0308 = 5.669, 3 1/2 x 1.0308 = 3.608
        (MemberKind.SAWN, 5.5, "12 15/16 in", "the rafters taken to stand on the joists"),
        (MemberKind.TRUSS, 3.5, "10 7/8 in", "the top chords taken to stand on the bottom chords"),
    ],
)
def test_a_heel_that_nobody_measured_is_said(kind: MemberKind, depth_in: float, heel: str, words: str) -> None:
    scene = home(None)
    assert scene.roof is not None
    assert scene.roof.framing is not None
    scene = replace(scene, roof=replace(scene.roof, framing=replace(scene.roof.framing, kind=kind, depth_in=depth_in)))
    (told,) = [a for a in assumptions(scene) if a.field == "roof.heel"]
    assert told.value == heel
    assert told.reason.startswith(words)
    said = replace(scene, roof=replace(scene.roof, heel_in=10.0))
    assert not [a for a in assumptions(said) if a.field == "roof.heel"]


def test_a_ceiling_on_the_rafters_has_no_heel_to_take() -> None:
    plain = home(None)
    follows = replace(plain, above=Above(AboveKind.ROOF), ceiling=replace(plain.ceiling, joists=None))
    assert not [a for a in assumptions(follows) if a.field == "roof.heel"]


def test_over_a_storey_the_heel_counts_from_the_plates_upstairs() -> None:
    # joists' top 103 7/8, subfloor 3/4, room 96, board 1/2
    above = Above(AboveKind.STOREY, 96.0, (Layer("plywood subfloor", 0.75),))
    framed = frame(replace(home(6.0), above=above))
    assert surface(framed, 6.0) == pytest.approx(103.875 + 0.75 + 96.0 + 0.5 + 6.0 + 0.875 * STRETCH)


@pytest.mark.parametrize("ridge", list(RunDirection))
@pytest.mark.parametrize("form", [RoofForm.GABLE, RoofForm.SHED])
@pytest.mark.parametrize("heel_in", [SEATED, 20.0])
def test_trusses_have_their_bottom_chords_on_the_plates_whatever_the_heel(
    ridge: RunDirection, form: RoofForm, heel_in: float
) -> None:
    scene = home(heel_in, ridge=ridge, form=form, ridge_at_in=66.0)
    assert scene.roof is not None
    assert scene.roof.framing is not None
    trusses = replace(scene.roof.framing, kind=MemberKind.TRUSS)
    scene = replace(scene, roof=replace(scene.roof, framing=trusses), ceiling=replace(scene.ceiling, joists=None))
    framed = frame(scene)
    chords = [bounds(s.shape) for s in framed.solids if s.id.startswith("truss-") and s.id.endswith("-bottom")]
    assert chords
    assert {(c.lo[2], c.hi[2]) for c in chords} == {(96.625, 100.125)}  # a nominal 4 on the plates
