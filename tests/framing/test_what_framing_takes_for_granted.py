"""What nobody measured but a house must have is said, and only where it matters."""

from __future__ import annotations

from dataclasses import replace

import samples

from routeviz.framing import assumptions, frame
from routeviz.model.scene import Above, AboveKind, Layer, MemberKind, WallSide
from routeviz.model.solids import SolidKind


def said(scene):
    return {(a.field, a.value) for a in assumptions(scene)}


def test_header_of_a_window_is_an_assumption_with_the_depth_that_is_framed():
    scene = samples.scene()
    header = frame(scene).solid("hood-sink-window-header")
    assert header.member.depth_in == 5.5
    assert ("walls.hood.openings.sink-window", "header 5 1/2 in deep, one jack and one king stud a side") in said(scene)


def test_an_attic_without_openings_and_gables_takes_nothing_for_granted():
    plain = samples.scene(walls=tuple(samples.wall(s, "outdoors" if s is WallSide.HOOD else "room") for s in WallSide))
    assert not any(field.startswith("walls") for field, _ in said(plain))
    assert ("roof", "studs in the gable ends stand over the studs below") not in said(plain)
    assert ("roof", "studs in the gable ends stand over the studs below") in said(samples.scene())


def test_storey_above_says_what_was_not_seen_there():
    above = Above(AboveKind.STOREY, 96.0, (Layer("plywood subfloor", 0.75),))
    values = {value for _, value in said(samples.scene(above=above))}
    assert "studs upstairs stand over the studs below" in values
    assert "no joists in the ceiling upstairs" in values
    assert "no joists in the ceiling upstairs" not in {v for _, v in said(samples.scene(above=above, roof=None))}


def test_webs_are_invented_only_for_trusses_with_their_ridge_over_the_kitchen():
    scene = samples.scene()
    trusses = replace(scene.roof.framing, kind=MemberKind.TRUSS, depth_in=3.5)
    over = replace(scene, roof=replace(scene.roof, framing=trusses, ridge_at_in=60.0))
    beyond = replace(scene, roof=replace(scene.roof, framing=trusses, ridge_at_in=300.0))
    for home in (over, beyond):
        webs = any(s.kind is SolidKind.WEB for s in frame(home).solids)
        assert webs == ("a king post and two diagonals in each truss" in {v for _, v in said(home)})


def test_slopes_that_had_to_differ_from_the_stated_pitch_are_named():
    both = tuple(samples.wall(s, "outdoors" if s in (WallSide.HOOD, WallSide.FRONT) else "room") for s in WallSide)
    scene = samples.scene(walls=both)
    # walls' cores are 6 in beyond the finished faces: 46 in and 98 in of run at 40 in out; 3 in 12 over 46 is 11 1/2 in,
    # so the other slope falls 12 x 11.5 / 98 = 1.408 in 12
    off = replace(scene, roof=replace(scene.roof, ridge_at_in=40.0))
    assert ("roof.ridge_at", "slopes of 3.0 in 12 and 1.4 in 12") in said(off)
    middle = replace(scene, roof=replace(scene.roof, ridge_at_in=66.0))
    assert not any(field == "roof.ridge_at" for field, _ in said(middle))
