"""Rules over random situations: distances against an independent library, verdicts that only get stricter with size."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest
import samples
from hypothesis import example, given, settings
from hypothesis import strategies as st
from shapely import Point, box

from routeviz import rules
from routeviz.model.finding import MemberVerdict, State
from routeviz.model.scene import CooktopKind, Scene, SectionShape, SectionSize
from routeviz.model.solids import Box, Crossing, Frame, KeepOut, Solid, SolidKind
from routeviz.rules.bench import flat, kitchen, look, member, round_duct
from routeviz.rules.cuts import cut_by, hole_box
from routeviz.rules.distances import opening_gap_in
from routeviz.rules.members import member_verdict

IRC = rules.profile("irc-2021")
ALLOWED = (MemberVerdict.ALLOWED, MemberVerdict.WITHIN)
place = st.floats(-200, 200, allow_nan=False)
size = st.floats(1, 60, allow_nan=False)


@settings(max_examples=300, deadline=None)
@given(place, place, size, size, place, place, st.floats(3, 14), st.floats(0, 100))
def test_gaps_to_round_openings_agree_with_shapely(
    left: float, bottom: float, width: float, height: float, x: float, z: float, diameter: float, away: float
) -> None:
    thing = KeepOut("t", "t", "operable window", (left, bottom), (left + width, bottom + height), 36.0, away)
    flat_gap = max(0.0, Point(x, z).distance(box(left, bottom, left + width, bottom + height)) - diameter / 2)
    found = opening_gap_in((x, z), round_duct(diameter), thing)
    assert found == pytest.approx(math.hypot(flat_gap, away), abs=1e-9)


@settings(max_examples=300, deadline=None)
@given(place, place, size, size, place, place, st.floats(3, 20), st.floats(3, 20), st.booleans())
def test_gaps_to_rectangular_openings_agree_with_shapely(
    left: float, bottom: float, width: float, height: float, x: float, z: float, wide: float, narrow: float, level: bool
) -> None:
    thing = KeepOut("t", "t", "door", (left, bottom), (left + width, bottom + height), 36.0)
    half = (wide / 2, narrow / 2) if level else (narrow / 2, wide / 2)
    opening = box(x - half[0], z - half[1], x + half[0], z + half[1])
    section = SectionSize(SectionShape.RECT, wide, narrow)
    found = opening_gap_in((x, z), section, thing, wide_first=level)
    assert found == pytest.approx(opening.distance(box(left, bottom, left + width, bottom + height)), abs=1e-9)


MEMBERS = (
    member("joist-1", SolidKind.JOIST, (0.0, 0.0, 0.0), (1.5, 144.0, 11.25), 1, "2x12"),
    member("stud-1", SolidKind.STUD, (0.0, 0.0, 0.0), (1.5, 5.5, 92.0), 2, "2x6"),
    member("rim", SolidKind.RIM, (0.0, 0.0, 0.0), (144.0, 1.5, 9.25), 0, "2x10", crossing=Crossing.RULE),
    member("beam", SolidKind.BEAM, (0.0, 0.0, 0.0), (144.0, 3.0, 11.25), 0, "2x12", plies=2),
)


@settings(max_examples=200, deadline=None)
@given(st.sampled_from(MEMBERS), st.floats(0.1, 12), st.floats(0.1, 12))
def test_a_larger_hole_is_never_more_allowed(solid: Solid, a: float, b: float) -> None:
    assert solid.member is not None
    depth = solid.member.depth_in
    small, large = sorted((a, b))
    first = member_verdict(solid, rules.bore(small, depth), IRC)
    second = member_verdict(solid, rules.bore(large, depth), IRC)
    assert first is not None
    assert second is not None
    if second.verdict in ALLOWED:
        assert first.verdict in ALLOWED


@settings(max_examples=200, deadline=None)
@given(st.floats(-20, 20), st.floats(-5, 20), st.floats(0.5, 12))
def test_a_cut_takes_what_overlaps(y: float, z: float, diameter: float) -> None:
    # a hole along x through a joist that runs along y: wood left below and above is plain subtraction
    joist = MEMBERS[0]
    cut = cut_by(joist, hole_box((0.75, 72.0 + y, z), 0, round_duct(diameter), 0.0), 0)
    assert cut.left_in is not None
    assert cut.left_in[0] == pytest.approx(z - diameter / 2)
    assert cut.left_in[1] == pytest.approx(11.25 - z - diameter / 2)
    assert cut.severs is (cut.left_in[0] <= 0 and cut.left_in[1] <= 0)
    assert cut.from_end_in == pytest.approx(72.0 - abs(y))
    ruled = member_verdict(joist, cut, IRC)
    assert ruled is not None
    fits = diameter <= 3.75 and min(cut.left_in) >= 2.0
    if fits:
        assert ruled.verdict is MemberVerdict.WITHIN
    elif min(cut.left_in) >= 0:
        assert ruled.verdict is MemberVerdict.NOT_ALLOWED


@settings(max_examples=100, deadline=None)
@given(
    st.sampled_from(MEMBERS[:1]),
    st.sampled_from((round_duct(6.0), round_duct(8.0), flat(10.0, 3.25))),
    st.floats(-4, 4),
)
def test_a_duct_along_the_depth_always_severs(solid: Solid, section: SectionSize, off: float) -> None:
    cut = cut_by(solid, hole_box((0.75 + off, 72.0, 5.0), 2, section, 0.0), 2)
    found = member_verdict(solid, cut, IRC)
    assert found is not None
    assert found.verdict is MemberVerdict.NOT_ALLOWED


EMPTY = Frame((), (), (), Box((0.0, 0.0, 0.0), (1.0, 1.0, 1.0)))


@settings(max_examples=100, deadline=None)
@given(st.floats(10, 60), st.floats(10, 60), st.sampled_from(list(CooktopKind)), st.sampled_from(rules.profiles()))
def test_a_higher_hood_never_breaks_the_least_height(a: float, b: float, kind: CooktopKind, name: str) -> None:
    def margin(mount: float) -> float:
        plain = kitchen()
        scene = replace(plain, hood=replace(plain.hood, mount_in=mount), cooktop=replace(plain.cooktop, kind=kind))
        context = look(scene, profile_name=name)
        (found,) = (f for f in rules.check(context) if f.code == "HGT-CANOPY-LOW")
        assert found.margin is not None
        return found.margin

    low, high = sorted((a, b))
    assert margin(low) <= margin(high) + 1e-9


def covered(ceiling: float, least: float, more: float, body: float, kind: CooktopKind, name: str) -> Scene:
    """A kitchen whose hood has a cover of these lengths."""
    plain = samples.scene()
    cover = replace(plain.hood.cover, min_in=least, max_in=least + more)  # type: ignore[type-var]
    return replace(
        plain, kitchen=replace(plain.kitchen, ceiling_in=ceiling), cooktop=replace(plain.cooktop, kind=kind),
        hood=replace(plain.hood, body_in=body, cover=cover), rules=replace(plain.rules, profile=name),
    )  # fmt: skip


@pytest.mark.parametrize(
    ("ceiling", "least", "more", "body", "empty"),
    # counter 36, hood 11: the cover needs 96 - 36 - 11 - 34 to 96 - 36 - 11 - 14 in over the top: 15 to 35 in
    [(96.0, 14.0, 20.0, 11.0, False), (84.0, 30.0, 10.0, 11.0, True), (96.0, 4.0, 1.0, 5.0, True)],
)  # fmt: skip
def test_some_hoods_have_a_window_and_some_have_none(
    ceiling: float, least: float, more: float, body: float, empty: bool
) -> None:
    scene = covered(ceiling, least, more, body, CooktopKind.ELECTRIC, "irc-2021")
    assert rules.mounting_window(scene, rules.profile("irc-2021")).empty is empty


@settings(max_examples=150, deadline=None)
@example(96.0, 14.0, 20.0, 11.0, CooktopKind.ELECTRIC, "irc-2021")
@example(84.0, 30.0, 10.0, 11.0, CooktopKind.ELECTRIC, "irc-2021")
@given(
    st.floats(84, 150), st.floats(4, 30), st.floats(1, 30), st.floats(5, 20), st.sampled_from(list(CooktopKind)),
    st.sampled_from(rules.profiles()),
)  # fmt: skip
def test_the_suggested_height_breaks_no_must_that_can_be_kept(
    ceiling: float, least: float, more: float, body: float, kind: CooktopKind, name: str
) -> None:
    scene, profile = covered(ceiling, least, more, body, kind, name), rules.profile(name)
    window = rules.mounting_window(scene, profile)
    hung = replace(scene, hood=replace(scene.hood, mount_in=window.suggested_in))
    broken = [
        f
        for f in rules.check_scene(hung, EMPTY, profile)
        if f.state is State.BROKEN and f.code.startswith(("HGT-", "FIT-COVER"))
    ]
    musts = [b for b in window.bounds if b.must]
    possible = max((b.value_in for b in musts if b.lower), default=0.0) <= min(b.value_in for b in musts if not b.lower)
    if not window.empty:
        assert broken == []
    elif possible:
        assert [f for f in broken if f.must] == []
