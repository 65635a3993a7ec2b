"""The ceiling's height is one number: where the boards hang in the frame is where rules, parts and drawings say it is."""

from __future__ import annotations

import math
from dataclasses import replace
from pathlib import Path

import pytest
import samples
from framing.test_frames_of_random_homes import homes
from hypothesis import HealthCheck, assume, given, settings
from hypothesis import strategies as st
from shapely import LineString, Polygon

from routeviz import rules, scenefile
from routeviz.framing import frame
from routeviz.model.overhead import ceiling_at_in, ceiling_over_hood_in
from routeviz.model.scene import Above, AboveKind, Cover, Layer, Roof, RoofForm, RunDirection, Scene, WallSide
from routeviz.model.solids import Box, Frame, Prism
from routeviz.takeoff.cover import cover_gap_in

SCENES = Path(__file__).parents[2] / "scenes"
MANY = settings(max_examples=150, deadline=None, suppress_health_check=list(HealthCheck))


def hangs_at(framed: Frame, x: float, y: float) -> float:
    """Measure the lowest point of any ceiling or roof part on the plumb line over a place, in the solids alone."""
    found = []
    for solid in framed.solids:
        if solid.origin not in (
            "ceiling.layers",
            "ceiling.joists",
            "ceiling.slab_in",
            "roof",
            "roof.framing",
            "roof.layers",
        ):
            continue
        shape = solid.shape
        if isinstance(shape, Box):
            if shape.lo[0] <= x <= shape.hi[0] and shape.lo[1] <= y <= shape.hi[1]:
                found.append(shape.lo[2])
        elif isinstance(shape, Prism):
            along, across = (x, y) if shape.axis == 0 else (y, x)
            if shape.start <= along <= shape.end:
                plumb = LineString([(across, -1000.0), (across, 4000.0)])
                cut = plumb.intersection(Polygon(shape.outline))
                if not cut.is_empty:
                    found.append(cut.bounds[1])
    return min(found)


def hung_round(home: Scene, framed: Frame, wide: float, deep: float) -> list[float]:
    """Measure the ceiling over the corners of what hangs at the wall, and over the ridge where that lies between them."""
    x, off = home.hood.centre_in, 1e-5
    xs, ys = [x - wide / 2 + off, x + wide / 2 - off], [-off, off - deep]
    assert home.roof is not None
    if home.roof.form is RoofForm.GABLE:
        at = home.roof.ridge_at_in
        if home.roof.ridge is RunDirection.OUT:
            xs += [at + side for side in (-off, off) if xs[0] < at < xs[1] and at < home.kitchen.width_in]
        else:
            ys += [-at + side for side in (-off, off) if ys[1] < -at < ys[0] and at < home.kitchen.depth_in]
    return [hangs_at(framed, a, b) for a in xs for b in ys]


@st.composite
def under_rafters(draw) -> Scene:
    """A kitchen whose ceiling follows the roof: any form, pitch and ridge, and any walls outdoors."""
    base = samples.scene()
    assert base.roof is not None
    width, depth = draw(st.floats(90, 260)), draw(st.floats(80, 220))
    form = draw(st.sampled_from(list(RoofForm)))
    pitch = draw(st.floats(0.0, 1 / 12)) if form is RoofForm.FLAT else draw(st.floats(0.05, 1.2))
    ridge, high = draw(st.sampled_from(list(RunDirection))), None
    if form is RoofForm.SHED:
        ends = (WallSide.FRONT, WallSide.HOOD) if ridge is RunDirection.ALONG else (WallSide.LEFT, WallSide.RIGHT)
        high = draw(st.sampled_from(ends))
        pitch = min(pitch, 0.2) if high is WallSide.HOOD else pitch  # else the front wall would have no height
    at = draw(st.one_of(st.floats(-20, 0), st.floats(1, 280)))  # no ridge within the thickness of a board from the wall
    roof: Roof = replace(base.roof, form=form, pitch=pitch, ridge=ridge, ridge_at_in=at, high_side=high)
    walls = tuple(replace(w, beyond=draw(st.sampled_from(["outdoors", "room"])), openings=()) for w in base.walls)
    board = draw(
        st.sampled_from([(Layer("gypsum board", 0.625),), (Layer("gypsum board", 0.5), Layer("pine boards", 0.75))])
    )
    cover = draw(st.sampled_from([None, Cover(10.0, 40.0, 12.0, 12.0), Cover(60.0, 260.0, 16.0, 14.0)]))
    half = base.hood.width_in / 2
    centre = draw(st.floats(half, width - half))
    return replace(
        base, kitchen=replace(base.kitchen, width_in=width, depth_in=depth, ceiling_in=draw(st.floats(84, 120))), walls=walls,
        ceiling=replace(base.ceiling, joists=None, layers=board), above=Above(AboveKind.ROOF), roof=roof,
        hood=replace(base.hood, centre_in=centre, mount_in=draw(st.floats(24, 32)), cover=cover),
        cooktop=replace(base.cooktop, centre_in=centre),
    )  # fmt: skip


@MANY
@given(under_rafters(), st.floats(0.01, 0.99), st.floats(0.01, 0.99))
def test_under_rafters_the_ceiling_is_where_its_boards_hang(home: Scene, right: float, out: float) -> None:
    framed, kitchen = frame(home), home.kitchen
    for x, y in ((right * kitchen.width_in, -0.01), (right * kitchen.width_in, -out * kitchen.depth_in)):
        assert ceiling_at_in(home, x, -y) == pytest.approx(hangs_at(framed, x, y), abs=1e-6)


@settings(max_examples=60, deadline=None, suppress_health_check=list(HealthCheck))
@given(homes(), st.floats(0.01, 0.99))
def test_in_any_home_the_ceiling_is_where_it_hangs(home: Scene, right: float) -> None:
    x = right * home.kitchen.width_in
    assert ceiling_at_in(home, x, 1.0) == pytest.approx(hangs_at(frame(home), x, -1.0), abs=1e-6)


@MANY
@given(under_rafters())
def test_rules_parts_and_cover_go_by_the_ceiling_that_hangs_there(home: Scene) -> None:
    assert home.roof is not None
    assume(abs(home.hood.centre_in - home.roof.ridge_at_in) > 0.01)  # boards of unlike slopes meet there in a seam
    framed, hood, cooktop = frame(home), home.hood, home.cooktop
    hangs = hangs_at(framed, hood.centre_in, -1e-6)
    window = rules.mounting_window(home, rules.profile("irc-2021"))
    (under,) = [b for b in window.bounds if b.by == "hood body under the ceiling"]
    wide, deep = (hood.cover.width_in, hood.cover.depth_in) if hood.cover else (14.0, 12.0)
    canopy = min(hung_round(home, framed, hood.width_in, hood.depth_in)) - min(hood.canopy_in, hood.body_in)
    body = min(hung_round(home, framed, wide, deep)) - hood.body_in
    assert under.value_in == pytest.approx(min(canopy, body) - cooktop.height_in, abs=1e-4)
    if hood.cover is None:
        assert cover_gap_in(home) is None
        return
    foot = cooktop.height_in + (hood.mount_in or 0.0) + hood.body_in
    assert cover_gap_in(home) == pytest.approx(max(hung_round(home, framed, wide, deep)) - foot, abs=1e-4)
    assume(hangs > foot + 0.1)
    cover = framed.solid("cover").shape
    assert isinstance(cover, Box)
    assert (cover.lo[2], cover.hi[2]) == pytest.approx((foot, hangs), abs=1e-4)
    (inside,) = [z.shape for z in framed.zones if z.id == "in-cover"]
    assert isinstance(inside, Box)
    assert inside.hi[2] >= cover.hi[2] - 1e-9
    assert (inside.hi[2] > cover.hi[2] + 1e-9) <= (cover.hi[2] > hangs - 0.02)  # higher only where it is cut to a slope


def cathedral(**roof: object) -> Scene:
    plain = scenefile.load(SCENES / "cathedral_roof.toml")
    assert plain.roof is not None
    return replace(plain, roof=replace(plain.roof, **roof))


def test_a_roof_held_by_the_right_wall_rises_from_there() -> None:
    """Ridge at 60 in, only the right wall outdoors: 132 in of 12/12 from 120 in there, and 18 in down again to the hood."""
    home = cathedral(ridge_at_in=60.0)
    home = replace(
        home, walls=tuple(replace(w, beyond="room") if w.side is WallSide.LEFT else w for w in home.walls)
    )  # fmt: skip
    assert ceiling_over_hood_in(home) == pytest.approx(120 + 132 - 18)
    assert cover_gap_in(home) == pytest.approx(234 + 10 - 80)  # its high side, 10 in towards the ridge


def test_a_flat_roof_that_falls_along_the_hood_wall_takes_the_ceiling_with_it() -> None:
    """1/12 over 16 ft: 16 in higher at the right wall."""
    home = cathedral(form=RoofForm.FLAT, pitch=1 / 12)
    assert [ceiling_at_in(home, x) for x in (0.0, 96.0, 192.0)] == pytest.approx([120.0, 128.0, 136.0])


def test_the_cover_of_the_example_under_the_pitched_ceiling_reaches_it() -> None:
    """198 in over the hood, as its scene works out; the cover pulled out to 118 in starts at 80 in."""
    cover = frame(cathedral()).solid("cover").shape
    assert isinstance(cover, Box)
    assert (cover.lo[2], cover.hi[2]) == pytest.approx((80.0, 198.0))
    assert math.isclose(cover.hi[0] - cover.lo[0], 20.0)
