"""Laws that hold for every duct: longer, rougher, narrower or more bent never delivers more, and nothing jumps."""

from __future__ import annotations

from dataclasses import replace
from itertools import pairwise

import pytest
from airflow.ducts import BACK, CURVE, RIGHT, UP, Duct, round_duct, scene_with
from hypothesis import given, settings
from hypothesis import strategies as st

from routeviz.airflow import flow_cfm, solve
from routeviz.airflow.air import air_at
from routeviz.airflow.curves import MonotoneCurve
from routeviz.airflow.fan import Points
from routeviz.airflow.fittings import CONSTRUCTIONS
from routeviz.airflow.friction import friction_factor
from routeviz.airflow.meeting import meet
from routeviz.airflow.system import Level, Piece, System
from routeviz.model.route import Route
from routeviz.model.scene import Fan, Scene, SectionShape, SectionSize, Site

FAN = Fan(450.0, 0.1, CURVE)
LABEL = Fan(450.0)
SLACK = 1e-6  # cfm, far above the root finder's width

diameters = st.floats(4.0, 12.0)
feet = st.floats(0.1, 60.0)
angles = st.floats(5.0, 90.0)
ratios = st.floats(0.5, 2.5)
kinds = st.sampled_from(CONSTRUCTIONS)
fans = st.sampled_from([FAN, LABEL, Fan(300.0, 0.25), Fan(450.0, None, ((0.0, 0.3), (150.0, 0.6), (480.0, 0.0)))])
quick = settings(max_examples=80, deadline=None, derandomize=True)


def bent(diameter: float, first: float, angle: float, last: float, ratio: float, kind: str) -> Route:
    duct = Duct(round_duct(diameter)).straight(first).elbow(BACK, angle, ratio=ratio, construction=kind)
    return duct.straight(last).route()


def on_its_own_outlet(fan: Fan) -> Scene:
    return scene_with(fan, outlet=round_duct(8.0))


@quick
@given(diameters, feet, feet, feet, ratios, kinds, fans)
def test_longer_never_delivers_more(
    diameter: float, first: float, last: float, more: float, ratio: float, kind: str, fan: Fan
) -> None:
    scene = on_its_own_outlet(fan)
    first = max(first, 3.0)  # an elbow right behind the blower only widens the range
    short = flow_cfm(bent(diameter, first, 90.0, last, ratio, kind), scene)
    assert flow_cfm(bent(diameter, first + more, 90.0, last, ratio, kind), scene) <= short + SLACK
    assert flow_cfm(bent(diameter, first, 90.0, last + more, ratio, kind), scene) <= short + SLACK


@quick
@given(diameters, st.floats(0.05, 3.0), feet, ratios, kinds, fans)
def test_narrower_never_delivers_more(
    diameter: float, less: float, length: float, ratio: float, kind: str, fan: Fan
) -> None:
    scene = on_its_own_outlet(fan)
    wide = bent(diameter, 3.0, 90.0, length, ratio, kind)
    narrow = bent(max(diameter - less, 3.0), 3.0, 90.0, length, ratio, kind)
    assert flow_cfm(narrow, scene) <= flow_cfm(wide, scene) + SLACK


@quick
@given(st.floats(4.0, 14.0), st.floats(2.5, 8.0), st.floats(0.1, 2.0), feet, st.sampled_from([BACK, RIGHT]), fans)
def test_flatter_never_delivers_more(
    wide: float, high: float, less: float, length: float, toward: tuple[float, float, float], fan: Fan
) -> None:
    """The elbow keeps its own shape in the table only while its sides do; straight duct is what is compared."""
    scene = on_its_own_outlet(fan)
    full = SectionSize(SectionShape.RECT, max(wide, high), min(wide, high))
    flat = replace(full, height_in=max(full.height_in - less, 1.5))
    flows = [flow_cfm(Duct(s, wide=toward).straight(length).route(), scene) for s in (full, flat)]
    assert flows[1] <= flows[0] + SLACK


@quick
@given(diameters, feet, angles, st.floats(0.1, 60.0), ratios, kinds, fans)
def test_more_bent_never_delivers_more(
    diameter: float, length: float, angle: float, more: float, ratio: float, kind: str, fan: Fan
) -> None:
    scene = on_its_own_outlet(fan)
    plain = flow_cfm(Duct(round_duct(diameter)).straight(3.0).straight(length).route(), scene)
    once = flow_cfm(bent(diameter, 3.0, angle, length, ratio, kind), scene)
    sharper = flow_cfm(bent(diameter, 3.0, min(angle + more, 150.0), length, ratio, kind), scene)
    duct = Duct(round_duct(diameter)).straight(3.0).elbow(BACK, angle, ratio=ratio, construction=kind)
    twice = flow_cfm(duct.straight(length).elbow(RIGHT, angle, ratio=ratio, construction=kind).route(), scene)
    assert twice <= once + SLACK
    assert sharper <= once + SLACK
    assert once <= plain + SLACK


@quick
@given(diameters, st.floats(0.0, 12.0), st.floats(0.05, 4.0), st.sampled_from([UP, RIGHT]), kinds)
def test_elbows_farther_apart_never_lose_more_to_each_other(
    diameter: float, gap: float, more: float, toward: tuple[float, float, float], kind: str
) -> None:
    def surcharge(feet_between: float) -> float:
        duct = Duct(round_duct(diameter)).straight(4.0).elbow(BACK, construction=kind)
        result = solve(duct.straight(feet_between).elbow(toward, construction=kind).route(), on_its_own_outlet(FAN))
        pair = [loss for loss in result.losses if "close" in loss.label]
        return sum(x.coefficient or 0.0 for x in pair)

    assert surcharge(gap + more) <= surcharge(gap) + 1e-12


@quick
@given(diameters, feet, fans)
def test_rougher_never_delivers_more(diameter: float, length: float, fan: Fan) -> None:
    scene = on_its_own_outlet(fan)
    materials = ("PVC", "aluminum", "galvanized steel")  # 0.0001, 0.00016, 0.0003 ft
    flows = [flow_cfm(Duct(round_duct(diameter), material=m).straight(length).route(), scene) for m in materials]
    flows.append(flow_cfm(Duct(round_duct(diameter)).flex(length).route(), scene))
    assert all(later <= sooner + SLACK for sooner, later in pairwise(flows))


@quick
@given(st.floats(1.0, 1e7), st.floats(0.0, 0.05), st.floats(0.0, 0.02))
def test_friction_factor_grows_with_roughness_and_pressure_with_flow(re: float, relative: float, more: float) -> None:
    rough = min(relative + more, 0.05)
    assert friction_factor(re, rough) >= friction_factor(re, relative) * (1 - 1e-12)
    faster = re * 1.01
    assert friction_factor(faster, relative) * faster**2 >= friction_factor(re, relative) * re**2


@quick
@given(diameters, feet, angles, feet, ratios, fans, st.floats(0.0, 10_000.0), st.floats(-20.0, 150.0))
def test_the_band_holds_the_flow_and_the_losses_hold_the_pressure(
    diameter: float, first: float, angle: float, last: float, ratio: float, fan: Fan, altitude: float, temp: float
) -> None:
    scene = replace(on_its_own_outlet(fan), site=Site(altitude_ft=altitude, air_temp_f=temp))
    result = solve(bent(diameter, first, angle, last, ratio, "4-piece"), scene)
    full = result.full
    assert full.low_cfm <= full.flow_cfm + SLACK
    assert full.flow_cfm <= full.high_cfm + SLACK
    spent = sum(loss.loss_inwg for loss in result.losses)
    if full.status.value in ("solved", "stalled") and full.static_inwg > 1e-3:
        assert spent == pytest.approx(full.static_inwg + result.collar_inwg, rel=1e-5, abs=1e-6)
    for advice in result.advice:
        assert advice.gain_cfm == pytest.approx(advice.flow_cfm - full.flow_cfm, abs=1e-9)


@quick
@given(diameters, feet, st.floats(1.0, 90.0), feet, ratios, kinds, fans, st.integers(0, 6))
def test_flow_is_continuous_in_every_measure(
    diameter: float, first: float, angle: float, last: float, ratio: float, kind: str, fan: Fan, which: int
) -> None:
    """A step of one part in 10 000 moves the flow by no more than a hundredth of it, everywhere."""
    small = 1e-4
    measures = [diameter, first, angle, last, ratio]
    scene = on_its_own_outlet(fan)
    moved = scene
    if which < len(measures):
        measures[which] *= 1 + small
    elif which == 5:
        moved = replace(scene, site=Site(altitude_ft=20.0))
    else:
        factor = 1 + small
        curve = tuple((q * factor, p) for q, p in fan.curve)
        moved = on_its_own_outlet(replace(fan, rated_cfm=fan.rated_cfm * factor, curve=curve))
    before = flow_cfm(bent(diameter, first, angle, last, ratio, kind), scene)
    d, f, a, la, r = measures
    after = flow_cfm(bent(d, f, a, la, r, kind), moved)
    assert after == pytest.approx(before, rel=1e-2)


@quick
@given(st.floats(0.0, 15.0), st.floats(0.0, 90.0), st.sampled_from(("mitre", "4-piece")))
def test_flow_is_continuous_where_elbows_meet(gap: float, turn: float, kind: str) -> None:
    scene = on_its_own_outlet(FAN)

    def flow(feet_between: float, angle: float) -> float:
        duct = Duct(round_duct(6.0)).straight(4.0).elbow(BACK, construction=kind).straight(feet_between)
        return flow_cfm(duct.elbow(RIGHT, max(angle, 1.0), construction=kind).route(), scene)

    assert flow(gap + 1e-4, turn) == pytest.approx(flow(gap, turn), rel=1e-3)
    assert flow(gap, turn + 1e-3) == pytest.approx(flow(gap, turn), rel=1e-3)


@st.composite
def curves(draw: st.DrawFn) -> Points:
    """Fan curves with one peak, which may lie anywhere."""
    count = draw(st.integers(3, 8))
    steps = draw(st.lists(st.floats(20.0, 150.0), min_size=count, max_size=count))
    heights = sorted(draw(st.lists(st.floats(0.0, 1.5), min_size=count, max_size=count, unique=True)))
    peak = draw(st.integers(0, count - 2))
    order = [*heights[count - 1 - peak : count], *reversed(heights[: count - 1 - peak])]
    flows = [sum(steps[:i]) for i in range(count)]
    return Points(MonotoneCurve.through(tuple(zip(flows, order, strict=True))))


@quick
@given(curves(), st.floats(1.0, 400.0), st.floats(3.0, 14.0), st.floats(0.2, 1.0))
def test_the_meeting_point_lies_on_both_curves_whatever_their_shape(
    fan: Points, c: float, diameter: float, speed: float
) -> None:
    section = round_duct(diameter)
    piece = Piece(0, section, (120.0,) * 3, (0.0036,) * 3, (c, c, c), 0.0, "")
    system = System.of_pieces((piece,), section, air_at(), Level.USUAL)
    met = meet(fan, system, speed=speed)
    assert 0.0 <= met.flow_cfm <= fan.end_cfm * speed
    pressure = speed**2 * fan(met.flow_cfm / speed)
    assert met.static_inwg == pytest.approx(pressure)
    if met.flow_cfm < fan.end_cfm * speed:
        assert system.static_inwg(met.flow_cfm) == pytest.approx(pressure, rel=1e-4, abs=1e-6)
    else:
        assert system.static_inwg(met.flow_cfm) <= pressure + 1e-9
    stalled = met.status.value == "stalled"
    assert stalled == (met.flow_cfm < fan.peak_cfm * speed and met.flow_cfm >= fan.first_cfm * speed)
