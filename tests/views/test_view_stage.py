"""The stage as numbers: what stands where, closed, named once, cut open where the duct must be seen."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest
import samples
import view_plans

from routeviz.model.finding import State
from routeviz.model.scene import (
    Above,
    AboveKind,
    MemberKind,
    MemberLayout,
    Outlet,
    RunDirection,
    SectionShape,
    SectionSize,
)
from routeviz.model.solids import FaceKind
from routeviz.views.marks import notes
from routeviz.views.parts import Group, Layer
from routeviz.views.stage import Stage, build
from routeviz.views.viewpoints import viewpoint_words

RECT = SectionSize(SectionShape.RECT, 10.0, 3.25)


@pytest.fixture(scope="module")
def up() -> Stage:
    return build(view_plans.plan())


def uncapped(kind: FaceKind | None):
    """The duct straight up as somebody built it, without the cap."""
    route = view_plans.straight_up(view_plans.scene())
    end = replace(route.termination, kind=kind)
    return view_plans.plan(routes=(replace(route, parts=route.parts[:-1], termination=end, as_built=True),))


def test_no_word_speaks_of_a_cap_that_is_not_there(up: Stage) -> None:
    for plan in (uncapped(FaceKind.ROOF), uncapped(None)):
        words = [f"{n.title} {n.text}" for n in notes(plan)]
        assert any("from hood to its end" in w for w in words)
        assert not [w for w in words if "cap" in w.lower().split()]
        assert "cap" not in viewpoint_words(plan, "outside")
    assert any("from hood to cap" in n.text for n in notes(up.plan))
    assert any(n.title == "Cap on the roof's back slope" for n in notes(up.plan))
    assert any(n.title == "Open end at the roof's back slope" for n in notes(uncapped(FaceKind.ROOF)))
    assert viewpoint_words(up.plan, "outside") == "outside at the cap"


def inside(mesh, point) -> bool:
    """Whether a closed mesh winds round a point: the solid angles of its triangles sum to 4 pi."""
    a, b, c = np.moveaxis(mesh.triangles - np.asarray(point), 1, 0)
    la, lb, lc = (np.linalg.norm(v, axis=1) for v in (a, b, c))
    top = np.einsum("ij,ij->i", a, np.cross(b, c))
    foot = (
        la * lb * lc
        + np.einsum("ij,ij->i", a, b) * lc
        + np.einsum("ij,ij->i", b, c) * la
        + np.einsum("ij,ij->i", c, a) * lb
    )
    return bool(abs(2 * np.arctan2(top, foot).sum()) > 2 * np.pi)


def plans():
    at = view_plans.scene()
    storey = view_plans.scene(above=Above(AboveKind.STOREY, 96.0), roof=None)
    along = replace(
        at,
        ceiling=replace(
            at.ceiling, joists=MemberLayout(MemberKind.SAWN, "2x8", 1.5, 7.25, 16.0, 14.0, RunDirection.ALONG)
        ),
    )
    rear = replace(at, hood=replace(at.hood, outlet=Outlet("rear", samples.ROUND_8, up_in=6.0)))
    return {
        "straight up": view_plans.plan(),
        "out the back": view_plans.plan(routes=(view_plans.out_the_back(at),)),
        "offset": view_plans.plan(routes=(view_plans.offset_up(at),)),
        "flat duct": view_plans.plan(routes=(view_plans.out_the_back(at, section=RECT, radius=5.0),)),
        "blocked": view_plans.blocked(),
        "blocked rear outlet": replace(view_plans.blocked(), scene=rear),
        "storey above": view_plans.plan(storey, (view_plans.out_the_back(storey),)),
        "joists along": view_plans.plan(along, (view_plans.out_the_back(along),)),
    }


@pytest.mark.parametrize(
    "name",
    [
        "straight up",
        "out the back",
        "offset",
        "flat duct",
        "blocked",
        "blocked rear outlet",
        "storey above",
        "joists along",
    ],
)
def test_every_piece_is_closed_and_named_once(name):
    stage = build(plans()[name])
    names = [p.name for p in stage.pieces]
    assert len(set(names)) == len(names)
    assert len(names) > 80
    for piece in stage.pieces:
        assert piece.mesh.is_watertight, piece.name
        assert piece.mesh.is_winding_consistent, piece.name
        assert piece.mesh.volume > 0, piece.name
        assert piece.label, piece.name


def test_duct_starts_at_the_collar_and_ends_at_the_roofs_surface(up):
    duct = up.piece("duct-straight-1").mesh
    assert duct.bounds[0, 2] == pytest.approx(view_plans.COLLAR_Z)
    assert duct.bounds[1, 2] == pytest.approx(view_plans.roof_z(view_plans.scene(), 70.0, -8.5))
    assert duct.bounds[:, 0] == pytest.approx([66.0, 74.0])
    assert duct.bounds[:, 1] == pytest.approx([-12.5, -4.5])


def test_duct_ends_at_the_walls_outer_face():
    at = view_plans.scene()
    stage = build(view_plans.plan(routes=(view_plans.out_the_back(at),)))
    # board 1/2, studs 5 1/2, OSB 7/16, siding 3/4
    assert stage.piece("duct-straight-2").mesh.bounds[1, 1] == pytest.approx(0.5 + 5.5 + 0.4375 + 0.75)
    caps = [p for p in stage.pieces if p.name.startswith("cap-")]
    assert min(p.mesh.bounds[0, 1] for p in caps) >= 7.1875
    assert max(p.mesh.bounds[1, 1] for p in caps) < 7.1875 + 10


def test_parts_meet_without_a_gap():
    at = view_plans.scene()
    stage = build(view_plans.plan(routes=(view_plans.offset_up(at),)))
    for before, after in (
        ("straight-1", "elbow-1"),
        ("elbow-1", "straight-2"),
        ("straight-2", "elbow-2"),
        ("elbow-2", "straight-3"),
    ):
        a = {tuple(p) for p in np.round(stage.piece(f"duct-{before}").mesh.vertices, 5)}
        b = {tuple(p) for p in np.round(stage.piece(f"duct-{after}").mesh.vertices, 5)}
        assert len(a & b) == 96, (before, after)  # both rings of the joint, inner and outer, coincide


@pytest.mark.parametrize(("shift", "bands"), [(1.0, 2), (3.0, 2), (5.0, 0), (12.0, 2)])
def test_bands_of_a_small_offset_do_not_run_together(shift, bands):
    """At 5 in only 7/16 in of straight lies between the elbows: no room for a band there."""
    at = view_plans.scene()
    route = view_plans.offset_up(at, shift=shift)
    stage = build(view_plans.plan(routes=(route,)))
    along = np.array([1, 0, 1]) / np.sqrt(2)
    slanted = [p.mesh for p in stage.pieces if p.name in ("band-straight-2", "band-elbow-2")]
    assert len(slanted) == bands
    spans = sorted((float((m.vertices @ along).min()), float((m.vertices @ along).max())) for m in slanted)
    assert all(a[1] < b[0] for a, b in zip(spans, spans[1:], strict=False))


def test_hood_hangs_left_of_the_window_and_under_the_ceiling(up):
    hood, glass = up.piece("hood-band").mesh.bounds, up.piece("hood-sink-window-glass").mesh.bounds
    assert hood[1, 0] < glass[0, 0]
    assert hood[0, 2] == pytest.approx(66.0)
    assert hood[:, 0] == pytest.approx([52.0, 88.0])
    assert hood[0, 1] == pytest.approx(-20.0)  # into the room
    assert glass[0, 1] > 0  # in the wall


def test_board_is_cut_open_behind_the_hood_and_kept_at_the_sides(up):
    board = up.piece("hood-inside-1-1").mesh
    x0, x1 = up.cut.open_x
    assert x0 < 52.0 < 88.0 < x1
    probe = np.array([[70.0, 0.25, 80.0], [5.0, 0.25, 80.0], [70.0, 0.25, 30.0], [130.0, 0.25, 60.0]])
    assert [inside(board, p) for p in probe] == [False, True, True, False]  # opened, kept, kept below, window


def test_nothing_of_the_house_stands_before_the_cut(up):
    layers = {Layer.FRAMING, Layer.BOARD, Layer.SKIN, Layer.ROOF}
    house = [piece for piece in up.pieces if piece.layer in layers]
    assert {piece.layer for piece in house} == layers
    for piece in house:
        assert piece.mesh.bounds[0, 1] >= up.cut.front_in - 0.1, piece.name


def test_joists_are_numbered_at_their_cut_ends(up):
    assert [n.text for n in up.numbers] == [str(k) for k in range(1, 10)]
    assert [n.place[0] for n in up.numbers] == pytest.approx([14.0 + 16 * k for k in range(9)])
    assert {n.place[1] for n in up.numbers} == {up.cut.front_in}


def test_end_grain_is_an_x_on_the_cut_face(up):
    lines = up.piece("joist-4").lines
    assert len(lines) == 2
    ends = np.vstack(lines)
    assert ends[:, 0].min() == pytest.approx(61.25)
    assert ends[:, 0].max() == pytest.approx(62.75)
    assert ends[:, 2].max() - ends[:, 2].min() == pytest.approx(7.25)
    assert (ends[:, 1] < up.cut.front_in).all()


def test_roof_is_cut_back_so_that_the_cap_is_seen_over_it(up):
    covering = [p.mesh.bounds[0, 1] for p in up.pieces if p.layer is Layer.ROOF and "course" in p.name]
    assert min(covering) > -8.5 - 8.0 - 6.0
    assert min(covering) > up.cut.front_in
    assert any(p.layer is Layer.OUTER for p in up.pieces)


def test_clearance_over_the_cooktop_reaches_from_the_surface_to_the_hood(up):
    zone = up.piece("zone-cook").mesh.bounds
    assert zone[:, 2] == pytest.approx([36.6, 65.94])
    assert zone[:, 0] == pytest.approx([55.0, 85.0])


def test_blocked_member_is_barred_over_its_whole_length():
    stage = build(view_plans.blocked())
    assert stage.broken == {"joist-4"}
    bars, gaps = stage.piece("joist-4-bars").mesh, stage.piece("joist-4-gaps").mesh
    whole = (62.75 - 61.25) * (4.5 - stage.cut.front_in) * 7.25
    assert bars.volume + gaps.volume == pytest.approx(whole, rel=1e-4)
    with pytest.raises(KeyError):
        stage.piece("joist-4")
    assert all(p.material not in ("bar red", "bar white") for p in stage.pieces if p.solid and p.solid != "joist-4")


def test_blocked_plan_shows_the_wanted_duct_its_clash_and_the_shift():
    stage = build(view_plans.blocked())
    wanted, ghost = stage.piece("wanted-duct").mesh.bounds, stage.piece("shifted-duct").mesh.bounds
    assert wanted[:, 0] == pytest.approx([56.25, 64.25])
    assert ghost[:, 0] == pytest.approx([53.0, 61.0])  # 3 1/4 in to the left
    sleeve = stage.piece("meets-1-bars").mesh.bounds
    assert sleeve[0, 2] == pytest.approx(96.625, abs=0.01)  # the joist's underside and top
    assert sleeve[1, 2] == pytest.approx(103.875, abs=0.01)


def test_windows_and_walls_are_never_barred():
    at = view_plans.scene()
    route = view_plans.out_the_back(at)
    stage = build(view_plans.plan(at, (route,), (view_plans.window_finding(30.0),)))
    assert stage.broken == frozenset()


def test_flags_count_worst_first_and_skip_what_was_not_checked():
    broken, open_ = view_plans.joist_finding(), replace(view_plans.mount_finding(), state=State.NOT_CHECKED)
    stage = build(view_plans.plan(findings=(view_plans.mount_finding(), broken, open_)))
    assert [(f.number, f.state) for f in stage.flags] == [(1, State.BROKEN), (2, State.CLOSE), (3, State.FINE)]
    assert stage.flags[0].short == "5 7/8 in over"
    assert stage.flags[0].view == "ceiling"


def test_cap_keep_out_is_drawn_on_the_outer_wall_as_far_as_the_finding_asks():
    at = view_plans.scene()
    stage = build(view_plans.plan(at, (view_plans.out_the_back(at),), (view_plans.window_finding(40.0),)))
    zone = stage.piece("zone-hood-sink-window").mesh.bounds
    assert zone[0, 0] == pytest.approx(112.0 - 36.0)
    assert zone[0, 1] > 7.1875
    face = next(f for f in stage.plan.frame.faces if f.id == "face-hood")
    assert zone[1, 2] <= face.hi[1] + 1e-9  # not above the wall


def test_members_before_the_duct_are_cut_back_where_they_run_along_the_wall():
    stage = build(plans()["joists along"])
    x0, x1 = stage.cut.open_x
    hiding = [p for p in stage.pieces if p.solid.startswith("joist-") and p.mesh.bounds[1, 1] < stage.cut.duct_in]
    assert hiding
    assert all(p.mesh.bounds[1, 0] <= x0 or p.mesh.bounds[0, 0] >= x1 for p in hiding)


def test_moving_groups_hold_the_hood_its_cover_and_the_cooktop(up):
    of = {g: {p.name for p in up.pieces if p.group is g} for g in Group}
    assert {"hood-band", "hood-body"} <= of[Group.HOOD]
    assert {"cover-left", "cover-right"} <= of[Group.COVER]
    assert {"cooktop", "zone-cook", "pot"} <= of[Group.COOK]
    assert all(p.layer in (Layer.DUCT, Layer.ZONES) for p in up.pieces if p.group is Group.ROUTE)


def test_reach_opens_the_board_for_every_place_of_the_hood():
    wide = build(view_plans.plan(), reach=(39.0, 94.0))
    narrow = build(view_plans.plan())
    assert wide.cut.open_x[0] < narrow.cut.open_x[0]
    assert wide.cut.open_x[1] >= narrow.cut.open_x[1]
