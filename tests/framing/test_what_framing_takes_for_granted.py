"""What nobody measured but a house must have is said, and only where it matters."""

from __future__ import annotations

from dataclasses import replace

import pytest
import samples

from routeviz.framing import assumptions, frame
from routeviz.model.scene import Above, AboveKind, Layer, MemberKind, RunDirection, WallSide
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


def trussed(pitch: float, width_in: float, ridge_at_in: float):
    scene = samples.scene(walls=tuple(samples.wall(s, "outdoors") for s in WallSide))
    trusses = replace(scene.roof.framing, kind=MemberKind.TRUSS, depth_in=3.5, spacing_in=24.0)
    roof = replace(scene.roof, pitch=pitch, ridge=RunDirection.OUT, ridge_at_in=ridge_at_in, framing=trusses)
    return replace(scene, roof=roof, kitchen=replace(scene.kitchen, width_in=width_in))


@pytest.mark.parametrize("pitch", [3 / 12, 4 / 12, 5 / 12, 6 / 12, 8 / 12])
@pytest.mark.parametrize("width_in", [120.0, 132.0, 140.0, 150.5])
def test_every_truss_has_a_king_post_up_to_its_top_chords(pitch, width_in):
    scene = trussed(pitch, width_in, width_in / 2)
    webs = [s for s in frame(scene).solids if s.kind is SolidKind.WEB]
    posts = [s for s in webs if s.id.endswith("web-1")]
    core = next(w for w in scene.walls if w.side is WallSide.LEFT)
    run = width_in / 2 + sum(layer.thickness_in for layer in core.inside) + core.core_in
    for post in posts:
        heights = [z for _, z in post.shape.outline]
        assert max(heights) - min(heights) == pytest.approx(pitch * run)  # half the span times rise over run
        assert {round(u, 6) for u, _ in post.shape.outline} == {width_in / 2 + d for d in (-1.75, 0.0, 1.75)}
    assert posts
    assert len(webs) == 3 * len(posts)  # half way up the rise is 7 1/2 in or more: room for diagonals of 3 1/2 in
    assert ("roof.framing", "a king post and two diagonals in each truss") in said(scene)


def test_what_is_said_of_webs_is_what_is_laid():
    # run 66 + 6 in: at 1 in 12 the top chords meet 6 in over the bottom one, too low for diagonals of 3 1/2 in
    for scene, webs, words in (
        (trussed(1 / 12, 132.0, 66.0), {"web-1"}, "a king post in each truss"),
        (trussed(4 / 12, 132.0, 66.0), {"web-1", "web-2", "web-3"}, "a king post and two diagonals in each truss"),
        (trussed(4 / 12, 132.0, 300.0), set(), "no webs in the trusses"),
    ):
        assert {s.id.split("-", 2)[2] for s in frame(scene).solids if s.kind is SolidKind.WEB} == webs
        assert [v for f, v in said(scene) if f == "roof.framing"] == [words]


def test_slopes_that_had_to_differ_from_the_stated_pitch_are_named():
    both = tuple(samples.wall(s, "outdoors" if s in (WallSide.HOOD, WallSide.FRONT) else "room") for s in WallSide)
    scene = samples.scene(walls=both)
    # walls' cores are 6 in beyond the finished faces: 46 in and 98 in of run at 40 in out; 3 in 12 over 46 is 11 1/2 in,
    # so the other slope falls 12 x 11.5 / 98 = 1.408 in 12
    off = replace(scene, roof=replace(scene.roof, ridge_at_in=40.0))
    assert ("roof.ridge_at", "slopes of 3.0 in 12 and 1.4 in 12") in said(off)
    middle = replace(scene, roof=replace(scene.roof, ridge_at_in=66.0))
    assert not any(field == "roof.ridge_at" for field, _ in said(middle))
