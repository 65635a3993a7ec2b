"""The duct itself, as people meet it: each test carries one situation's geometry in our own words."""

from __future__ import annotations

import itertools
import math
from dataclasses import replace
from typing import Any

import pytest
import rulebench as bench
import samples

from routeviz import rules
from routeviz.model.finding import Finding, State
from routeviz.model.scene import Fan, Obstacle, ObstacleKind, Outlet, Scene, SectionShape, SectionSize
from routeviz.rules.bench import duct, flat, kitchen, look, round_duct, straight_up
from routeviz.rules.sections import area_in2, low_points

PLAIN = samples.scene()


def outlet(section: SectionSize, scene: Scene | None = None) -> Scene:
    plain = scene or kitchen()
    return replace(plain, hood=replace(plain.hood, outlet=replace(plain.hood.outlet, section=section)))


def judged(scene: Scene, **more: Any) -> tuple[Finding, ...]:
    return rules.check(look(scene, **more))


@pytest.mark.parametrize(
    ("wide", "narrow", "lost"),
    # area goes with the square: 7 to 6 in loses 26 of 100, 6 to 5 in 31, 120 to 100 mm 31
    [(7.0, 6.0, 1 - 36 / 49), (6.0, 5.0, 1 - 25 / 36), (120 / 25.4, 100 / 25.4, 1 - 1 / 1.44)],
)
def test_a_reducer_right_on_the_hood(wide: float, narrow: float, lost: float) -> None:
    found = bench.one_of(judged(outlet(round_duct(wide)), route=straight_up(section=round_duct(narrow))), "DCT-OUTLET")
    assert found.margin == pytest.approx(-lost)
    assert (found.state, found.must) == (State.BROKEN, False)
    assert f"{lost * 100:.0f} of 100" in found.detail


def test_stepping_down_from_6_to_5_in_at_the_rim() -> None:
    scene = bench.built(bench.straight(20.0), bench.reducer(round_duct(5.0)), bench.straight(40.0), bench.cap(),
                        scene=outlet(round_duct(6.0), PLAIN))  # fmt: skip
    found = bench.one_of(bench.judge_built(scene), "DCT-SHRINK")
    assert found.margin == pytest.approx(25 / 36 - 1)
    assert "wider duct all the way" in found.remedy


def test_a_slot_3_by_10_does_for_6_in_round() -> None:
    # the joist bay is too low for 6 in insulated round duct: a stretch of 3 x 10 in has a little more area
    found = bench.one_of(judged(outlet(round_duct(6.0)), route=straight_up(section=flat(10.0, 3.0))), "DCT-OUTLET")
    assert found.measured == pytest.approx(30 / (9 * math.pi))
    assert found.state is State.FINE


@pytest.mark.parametrize(
    ("steps", "shares"),
    [
        ((flat(10.0, 3.0), round_duct(6.0)), (1.0, 1.0)),  # 6 in round, 30 in2 flat, 6 in round again: no step down
        ((round_duct(5.0), round_duct(6.0)), (25 / 36, 1.0)),  # 6 to 5 and back to 6: the 5 is told
        ((round_duct(5.0), round_duct(4.0)), (25 / 36, 16 / 25)),
    ],
)
def test_coming_back_to_an_earlier_size_is_no_step_down(
    steps: tuple[SectionSize, ...], shares: tuple[float, ...]
) -> None:
    fittings = [bench.straight(12.0)]
    for step in steps:
        fittings += [bench.reducer(step), bench.straight(12.0)]
    scene = bench.built(*fittings, bench.cap(), scene=outlet(round_duct(6.0), PLAIN))
    found = bench.all_of(bench.judge_built(scene), "DCT-SHRINK")
    assert sorted(f.measured or 0.0 for f in found) == pytest.approx(sorted(shares))


def test_the_hoods_own_transition_is_not_a_step_down_on_the_way() -> None:
    from routeviz.model.route import PartKind
    from routeviz.rules.bench import as_built_part

    first = as_built_part(PartKind.TRANSITION, round_duct(8.0), out=round_duct(6.0), length_in=6.0)
    route = straight_up(section=round_duct(6.0))
    route = replace(route, parts=(first, *route.parts))
    findings = judged(kitchen(), route=route)
    assert bench.one_of(findings, "DCT-SHRINK").state is State.FINE
    assert bench.one_of(findings, "DCT-OUTLET").state is State.BROKEN


@pytest.mark.parametrize("where", ["hood", "attic"])
def test_flexible_duct_is_broken_wherever_it_is(where: str) -> None:
    # closed up in a soffit before anybody looked; between hood and a duct that comes down off the middle
    parts = [bench.flex(18.0), bench.straight(60.0)] if where == "hood" else [bench.straight(60.0), bench.flex(18.0)]
    found = bench.one_of(bench.judge_built(bench.built(*parts, bench.cap())), "DCT-SMOOTH")
    assert (found.state, found.must) == (State.BROKEN, True)
    assert "18 in" in found.detail
    assert "before closing" in found.remedy


def test_three_screws_a_joint_are_fine_and_a_gap_to_wood_is_only_advised() -> None:
    # 10 in duct through the roof: screws in a home's duct, contact with wood
    scene = bench.built(bench.straight(60.0), bench.cap(), screws_per_joint=3)
    findings = bench.judge_built(scene)
    assert bench.one_of(findings, "DCT-SCREWS").state is not State.BROKEN
    wood = bench.all_of(findings, "CLR-DUCT")
    assert all(not f.must for f in wood)
    untold = bench.one_of(bench.judge_built(bench.built(bench.straight(60.0), bench.cap())), "DCT-SCREWS")
    assert untold.state is State.NOT_CHECKED


def test_up_across_down_and_out_has_many_elbows_but_no_trap() -> None:
    # up to a soffit, across the ceiling, down behind a shallow cabinet, out: four elbows, and it only falls to the cap
    points = ((60.0, -8.0, 77.5), (60.0, -8.0, 100.0), (100.0, -8.0, 100.0), (100.0, -8.0, 60.0), (100.0, 6.5, 60.0))
    falling = judged(kitchen(), route=duct(points))
    assert bench.one_of(falling, "DCT-LOW-POINT").state is State.FINE
    again = (*points[:-1], (118.0, -8.0, 60.0), (118.0, -8.0, 120.0))
    trapped = bench.one_of(judged(kitchen(), route=duct(again)), "DCT-LOW-POINT")
    assert (trapped.state, trapped.measured) == (State.BROKEN, 1.0)
    assert trapped.place is not None
    assert trapped.place[2] == pytest.approx(60.0)


@pytest.mark.parametrize(
    ("heights", "count"),
    [([0, 10, 20], 0), ([20, 10, 0], 0), ([10, 0, 10], 1), ([10, 0, 10, 0, 10], 2), ([0, 10, 5, 10, 5], 1), ([10, 0, 0, 0, 5], 1),
     ([10, 9.8, 10], 0), ([0, 10, 0], 0), ([5, 0, 3, 1, 4], 2)],
)  # fmt: skip
def test_low_points_are_counted_one_by_one(heights: list[float], count: int) -> None:
    from routeviz.model.route import PartKind
    from routeviz.rules.bench import as_built_part

    parts = tuple(
        replace(
            as_built_part(PartKind.STRAIGHT, round_duct(8.0)), start=(10.0 * i, 0.0, a), end=(10.0 * i + 10.0, 0.0, b)
        )
        for i, (a, b) in enumerate(itertools.pairwise(heights))
    )
    assert len(low_points(parts)) == count


def test_elbows_back_to_back_as_somebody_built_them() -> None:
    scene = bench.built(
        bench.straight(30.0), bench.elbow("right"), bench.elbow("up"), bench.straight(40.0), bench.cap(), scene=PLAIN
    )
    found = bench.one_of(bench.judge_built(scene), "ELB-STRAIGHT")
    assert (found.measured, found.state, found.must) == (0.0, State.BROKEN, False)
    assert found.detail == "elbows back to back"


def test_one_elbow_and_8_ft_sideways_is_fine() -> None:
    # an old house: up a little and 8 ft sideways out of the kitchen wall
    route = duct(((60.0, -8.0, 77.5), (60.0, -8.0, 101.0), (156.0, -8.0, 101.0)))
    findings = judged(kitchen(), route=route)
    assert bench.one_of(findings, "ELB-COUNT").state is State.FINE
    assert bench.broken_codes(findings, must=False) == set()


def test_4_ft_up_and_6_ft_across_in_metal_never_plastic() -> None:
    route = duct(((60.0, -8.0, 77.5), (60.0, -8.0, 125.5), (132.0, -8.0, 125.5)))
    assert bench.one_of(judged(kitchen(), route=route), "DCT-MATERIAL").state is State.FINE
    plastic = replace(route, parts=tuple(replace(p, material="PVC") for p in route.parts))
    found = bench.one_of(judged(kitchen(), route=plastic), "DCT-MATERIAL")
    assert (found.state, found.must) == (State.BROKEN, True)


@pytest.mark.parametrize(("profile", "state"), [("irc-2021", State.BROKEN), ("washington", State.FINE)])
def test_aluminum_is_a_matter_of_place(profile: str, state: State) -> None:
    route = straight_up()
    route = replace(route, parts=tuple(replace(p, material="aluminium") for p in route.parts))
    assert bench.one_of(rules.check(look(kitchen(), route=route, profile_name=profile)), "DCT-MATERIAL").state is state


@pytest.mark.parametrize(
    ("cfm", "diameter", "fpm", "state"),
    # V = Q / A: 800 cfm in 6 in is 4074 ft/min, in 8 in 2292; 400 cfm in 6 in is 2037
    [(800.0, 6.0, 4074.4, State.BROKEN), (800.0, 8.0, 2291.8, State.FINE), (400.0, 6.0, 2037.2, State.FINE)],
)
def test_a_strong_hood_on_a_narrow_duct(cfm: float, diameter: float, fpm: float, state: State) -> None:
    plain = kitchen()
    scene = replace(plain, hood=replace(plain.hood, fan=Fan(cfm)))
    found = bench.one_of(judged(scene, route=straight_up(section=round_duct(diameter))), "AIR-SPEED")
    assert found.measured == pytest.approx(fpm, abs=0.1)
    assert found.state is state


def existing(thing: Obstacle, section: SectionSize | None = None) -> tuple[Finding, ...]:
    scene = replace(outlet(section or round_duct(8.0)), obstacles=(thing,))
    return rules.check(look(scene))


def test_a_new_800_cfm_hood_on_the_old_6_in_duct_tears_it_out() -> None:
    old = Obstacle("old-duct", ObstacleKind.DUCT, 56.0, 4.0, 84.0, 8.0, 8.0, 60.0, diameter_in=6.0, ends_at="outdoors")
    (found,) = bench.all_of(existing(old), "EXI-DUCT")
    assert (found.measured, found.limit, found.state) == (6.0, 8.0, State.BROKEN)
    assert "Tear it out" in found.remedy


def test_an_old_duct_with_an_unknown_end_is_followed_first() -> None:
    # icy air falls out of the hood; the duct ends above the garage ceiling, nobody knows where
    old = Obstacle("old-duct", ObstacleKind.DUCT, 56.0, 4.0, 84.0, 8.0, 8.0, 60.0, diameter_in=8.0)
    end, size = bench.all_of(existing(old), "EXI-DUCT")[::-1]
    assert end.state is State.NOT_CHECKED
    assert "smoke" in end.remedy
    assert size.state is not State.BROKEN
    lost = replace(old, ends_at="attic")
    assert State.BROKEN in {f.state for f in bench.all_of(existing(lost), "EXI-DUCT")}


def test_without_a_damper_it_is_cold_and_wet() -> None:
    scene = bench.built(bench.straight(60.0), bench.cap(), scene=replace(PLAIN, cap=replace(PLAIN.cap, damper=False)))
    found = bench.one_of(bench.judge_built(scene), "DCT-DAMPER")
    assert (found.state, found.must) == (State.BROKEN, True)


def rear_hole(old_z: float, diameter_in: float) -> Finding:
    """Judge an old round hole in the hood wall against a new 8 in duct straight back at 74 in above the floor."""
    hole = Obstacle("old-hole", ObstacleKind.HOLE, 70.0 - diameter_in / 2, -7.1875, old_z - diameter_in / 2, diameter_in, 7.1875,
                    diameter_in, diameter_in=diameter_in)  # fmt: skip
    hood = replace(PLAIN.hood, outlet=Outlet("rear", samples.ROUND_8, up_in=8.0))
    scene = bench.built(bench.straight(7.1875), bench.cap(), scene=replace(PLAIN, hood=hood, obstacles=(hole,)))
    return bench.one_of(bench.judge_built(scene), "EXI-HOLE")


def test_the_old_hole_is_used_enlarged_or_closed() -> None:
    # the hood rises 6 in, and its hole with it: the old 8 in hole is enlarged upward, a far one is closed
    assert rear_hole(74.0, 8.5).state is not State.BROKEN
    shifted = rear_hole(68.0, 8.5)
    assert shifted.state is State.BROKEN
    assert "6 in off" in shifted.detail
    assert "Enlarge" in shifted.remedy
    narrow = rear_hole(74.0, 6.0)
    assert (narrow.state, narrow.must) == (State.BROKEN, False)
    assert (shifted.measured, shifted.relation, shifted.limit) == (pytest.approx(6.0), "at most", 1.0)  # not its size
    assert (narrow.measured, narrow.relation, narrow.limit) == (pytest.approx(6.0), "at least", pytest.approx(8.5))
    assert "Enlarge it to 8 1/2 in" in narrow.remedy  # the limit and the way out are one number
    wide = rear_hole(72.0, 12.5)  # 2 in off, and wide enough to hold the new hole: 8 1/2 + 2 x 2
    assert (wide.state, wide.limit) == (State.FINE, pytest.approx(8.5))
    away = rear_hole(40.0, 6.0)
    assert (away.measured, away.relation, away.limit) == (6.0, "", None)
    assert away.state is State.FINE
    assert "close it" in away.detail


@pytest.mark.parametrize(("apart_in", "web_in"), [(7.5, 0.25), (8.0, 0.75)])
def test_a_thin_strip_between_an_old_hole_and_the_new_one_is_told(apart_in: float, web_in: float) -> None:
    # new hole 8 1/2 in, old one 6 in: their edges are as far apart as their middles, less 4 1/4 and 3 in
    thin = rear_hole(74.0 - apart_in, 6.0)
    assert (thin.state, thin.must, thin.relation, thin.limit) == (State.BROKEN, False, "at least", 1.0)
    assert thin.measured == pytest.approx(web_in)
    assert f"{apart_in - 7.25 - 1.0:.2f}" == f"{thin.margin:.2f}"
    assert "one opening" in thin.remedy
    assert rear_hole(74.0 - 8.25, 6.0).state is State.FINE, "1 in is left"


def test_areas_of_sections() -> None:
    assert area_in2(round_duct(8.0)) == pytest.approx(16 * math.pi)
    assert area_in2(flat(10.0, 3.25)) == 32.5
    oval = SectionSize(SectionShape.OVAL, 14.0, 3.25)
    assert area_in2(oval) == pytest.approx((14 - 3.25) * 3.25 + math.pi * 3.25**2 / 4)


def test_a_reused_chase_with_three_straight_lengths_has_nothing_broken_about_its_way() -> None:
    # 3 1/4 x 10 in straight up through attic and roof: no elbow, no step, no low point
    findings = judged(outlet(flat(10.0, 3.25)), route=straight_up(section=flat(10.0, 3.25)))
    assert bench.one_of(findings, "ELB-COUNT").measured == 0.0
    for code in ("DCT-OUTLET", "DCT-SHRINK", "DCT-LOW-POINT", "DCT-SMOOTH"):
        assert bench.one_of(findings, code).state is State.FINE


def test_plain_duct_up_the_cover_is_hidden_and_beside_it_boxed() -> None:
    # as built: straight up inside the cover; and jogging 30 in aside under the ceiling
    up = bench.judge_built(bench.built(bench.straight(60.0), bench.cap()))
    assert bench.one_of(up, "FIT-BOXING").state is State.FINE
    aside = bench.judge_built(
        bench.built(bench.straight(2.0), bench.elbow("right"), bench.straight(24.0), bench.elbow("up"), bench.straight(50.0), bench.cap())
    )  # fmt: skip
    boxed = bench.one_of(aside, "FIT-BOXING")
    assert boxed.state is State.BROKEN
    assert boxed.measured is not None
    assert 24.0 < boxed.measured < 50.0
