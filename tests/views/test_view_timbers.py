"""What members look like: flanges and webs stay inside the box that the search and the rules go by."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest
import samples
import shapely
import view_plans
from lessonbench import told

from routeviz.model.kinds import MemberKind
from routeviz.model.scene import Above, AboveKind
from routeviz.views.stage import build
from routeviz.views.timbers import CHORD_IN, WEB_IN, flange_in, open_web, two_flanges


def test_an_i_joist_is_two_flanges_and_a_thin_web():
    shape = two_flanges(2.5, 9.5, 1.5)
    assert shape.bounds == (0.0, 0.0, 2.5, 9.5)
    # two flanges of 2 1/2 x 1 1/2 in and a web of 6 1/2 in between them
    assert shape.area == pytest.approx(2 * 2.5 * 1.5 + WEB_IN * 6.5)
    assert two_flanges(1.5, 4.0, 1.5).area == pytest.approx(6.0)  # too shallow to show a web: 1 1/2 x 4 in


def test_an_open_web_has_whole_chords_and_room_between_its_webs():
    side = open_web(120.0, 14.0)
    assert side.bounds == (0.0, 0.0, 120.0, 14.0)
    for low in (0.0, 14.0 - CHORD_IN):
        assert side.intersection(shapely.box(0, low, 120, low + CHORD_IN)).area == pytest.approx(120 * CHORD_IN)
    assert len(side.interiors) >= 3  # one piece with openings in it
    assert side.area < 0.6 * 120 * 14


def test_the_flange_is_the_makers_or_what_the_rules_take():
    plan = view_plans.plan()
    assert flange_in(plan) == 1.5  # as the member table says
    maker = replace(plan.scene.rules.maker, joist_flange_in=1.125)
    scene = replace(plan.scene, rules=replace(plan.scene.rules, maker=maker))
    assert flange_in(replace(plan, scene=scene)) == 1.125


def joist(stage, name):
    piece = stage.piece(name)
    solid = stage.plan.frame.solid(name)
    return piece, np.array([solid.shape.lo, solid.shape.hi])


def test_i_joists_are_drawn_inside_their_box_with_an_x_on_each_flange():
    _, _, _, stages = told("which-member-may-be-cut")
    piece, box = joist(stages["i-joists"], "joist-4")
    low, high = piece.mesh.bounds
    assert piece.mesh.is_watertight
    assert low[[0, 2]] == pytest.approx(box[0, [0, 2]])
    assert high == pytest.approx(box[1])
    # 2 1/2 x 9 1/2 in with flanges of 1 1/2 in
    assert piece.mesh.volume == pytest.approx((7.5 + WEB_IN * 6.5) * (high[1] - low[1]))
    assert len(piece.lines) == 4
    sawn, _ = joist(stages[""], "joist-4")
    assert sawn.mesh.volume == pytest.approx(np.prod(sawn.mesh.extents))
    assert len(sawn.lines) == 2


@pytest.mark.parametrize("kind", [MemberKind.TRUSS, MemberKind.OPEN_WEB])
def test_floor_trusses_show_chords_and_webs(kind):
    joists = replace(samples.scene().ceiling.joists, kind=kind, depth_in=14.0)
    scene = view_plans.scene(
        ceiling=replace(samples.scene().ceiling, joists=joists), roof=None, above=Above(AboveKind.STOREY, 96.0)
    )
    stage = build(view_plans.plan(scene, (view_plans.out_the_back(scene),)))
    names = {s.id for s in stage.plan.frame.solids if s.member is not None and s.member.number == 4}
    name = next(n for n in names if "stud" not in n and stage.plan.frame.solid(n).origin == "ceiling.joists")
    piece, box = joist(stage, name)
    assert piece.mesh.is_watertight
    assert (piece.mesh.bounds[0] >= box[0] - 1e-6).all()
    assert (piece.mesh.bounds[1] <= box[1] + 1e-6).all()
    assert piece.mesh.volume < 0.75 * np.prod(piece.mesh.extents)


def test_trusses_that_run_out_are_cut_where_a_web_is_seen():
    _, _, _, stages = told("which-member-may-be-cut")
    stage = stages["trusses"]
    web = stage.piece("truss-4-web-3").mesh
    assert web.extents[1] > 24  # the slanted web to the middle of a slope that is 66 in long
    assert stage.cut.front_in < stages[""].cut.front_in


def test_soffits_that_the_duct_runs_in_are_seen_through():
    _, _, _, stages = told("why-three-elbows")
    for plan, clear in (
        ("", {"soffit-over-the-wall", "soffit-on-the-right"}),
        ("window-moved", {"soffit-over-the-wall"}),
    ):
        glassy = {p.solid.rsplit("-", 1)[0] for p in stages[plan].pieces if p.material == "clear board"}
        assert glassy >= clear
