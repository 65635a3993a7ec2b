"""The sum of the parts is the route, on random routes; every piece fits its stock."""

from __future__ import annotations

import math
from collections import defaultdict
from dataclasses import replace

import handmade
import samples
from hypothesis import given, settings
from hypothesis import strategies as st

from routeviz.model.route import Part, PartKind, Route
from routeviz.model.solids import Vec3
from routeviz.takeoff import count
from routeviz.takeoff.duct import account, cut_list, joints, pieces

FRAME = handmade.frame()
WAYS: tuple[Vec3, ...] = ((1, 0, 0), (-1, 0, 0), (0, 1, 0), (0, -1, 0), (0, 0, 1))
sixty_fourths = st.integers(min_value=1, max_value=64 * 260).map(lambda n: n / 64)


@st.composite
def routes(draw: st.DrawFn) -> tuple[Route, float]:
    """Draw a route of straights and right elbows with its exact length along square corners."""
    runs = draw(st.lists(sixty_fourths, min_size=1, max_size=5))
    radius = draw(st.sampled_from((6.0, 8.0, 12.0)))
    at, way = handmade.COLLAR, (0, 0, 1)
    square = math.fsum(runs) + 2 * radius * (len(runs) - 1)
    parts: list[Part] = []
    for n, run in enumerate(runs):
        end = tuple(a + run * w for a, w in zip(at, way, strict=True))
        parts.append(replace(handmade.straight(f"straight-{n + 1}", at, end), length_in=run))
        at = end
        if n < len(runs) - 1:
            turn = draw(st.sampled_from([w for w in WAYS if sum(a * b for a, b in zip(w, way, strict=True)) == 0]))
            corner = tuple(a + radius * w for a, w in zip(at, way, strict=True))
            parts.append(handmade.elbow(f"elbow-{n + 1}", corner, way, turn, radius))
            at, way = parts[-1].end, turn
    parts.append(handmade.cap(at, way))
    whole = replace(
        handmade.back_route(), parts=tuple(parts), length_in=math.fsum(p.length_in for p in parts), centreline=None,
        penetrations=(), near=(),
    )  # fmt: skip
    return whole, square


@settings(max_examples=150, deadline=None)
@given(routes(), st.sampled_from((36.0, 60.0, 120.0)), st.sampled_from((1.0, 1.5, 2.0)))
def test_the_parts_are_the_route(drawn: tuple[Route, float], stock: float, lap: float) -> None:
    route, square = drawn
    scene = samples.scene(duct=replace(samples.scene().duct, stock_in=stock, overlap_in=lap))
    total = account(route)
    assert math.isclose(total.length_in, route.length_in, rel_tol=1e-12)
    assert math.isclose(total.square_in, square, rel_tol=1e-12)  # take-off of a right elbow is its radius

    cuts, plans = cut_list(route, scene, FRAME)
    by_part: dict[str, float] = defaultdict(float)
    for cut in cuts:
        by_part[cut.part] += cut.visible_in
    straights = {p.id: p.length_in for p in route.parts if p.kind is PartKind.STRAIGHT}
    assert by_part == straights  # exact: sixty-fourths are exact in binary

    # a piece is its visible length, one lap at its downstream end, the collar before the first, the cap after the last
    made = pieces(route, scene, FRAME)
    assert sum(c.cut_in for c in cuts) == sum(straights.values()) + lap * (len(made) - 1) + min(1.5, lap) + 1.5
    assert all(0 < c.cut_in <= stock for c in cuts)
    used: dict[int, list[float]] = defaultdict(list)
    for cut in cuts:
        used[cut.stock].append(cut.cut_in)
    kerf = plans[0].kerf_in
    assert all(sum(v) + kerf * (len(v) - 1) <= stock + 1e-9 for v in used.values())
    assert len(used) == plans[0].count
    assert plans[0].bound <= plans[0].count
    assert len(joints(route, scene, FRAME)) == len(route.parts) + (len(made) - len(straights))


def test_a_straight_longer_than_a_section_has_the_fewest_joints() -> None:
    start: Vec3 = (70.0, -8.5, 78.5)
    part = handmade.straight("straight-1", start, (70.0, -8.5, 78.5 + 144.0))
    route = replace(handmade.up_route(), parts=(part, handmade.cap(part.end, (0.0, 0.0, 1.0))))
    cuts, plans = cut_list(route, samples.scene(), FRAME)
    # 144 + collar 1 1/2 + stub 8 = 153 1/2; each of two splices takes 1 1/2: 156 1/2 of 3 sections
    assert [c.cut_in for c in cuts] == [60.0, 60.0, 36.5]
    assert [c.visible_in for c in cuts] == [57.0, 58.5, 28.5]
    assert (plans[0].count, plans[0].bound, plans[0].proven) == (3, 3, True)
    assert plans[0].waste_in == 180.0 - 156.5


def test_no_sliver_is_left_at_the_end_of_a_run() -> None:
    start: Vec3 = (70.0, -8.5, 78.5)
    part = handmade.straight("straight-1", start, (70.0, -8.5, 78.5 + 57.5))
    route = replace(handmade.up_route(), parts=(part, handmade.cap(part.end, (0.0, 0.0, 1.0))))
    cuts, _ = cut_list(route, samples.scene(), FRAME)
    assert len(cuts) == 2
    assert min(c.visible_in for c in cuts) >= 12.0


def test_two_sections_are_packed_apart() -> None:
    route = handmade.back_route()
    flat = replace(route.parts[2], section=samples.ROUND_6, section_out=samples.ROUND_6)
    mixed = replace(route, parts=(route.parts[0], route.parts[1], flat, route.parts[3]))
    cuts, plans = cut_list(mixed, samples.scene(), FRAME)
    assert [p.section for p in plans] == ["8 in round", "6 in round"]
    assert [c.stock for c in cuts] == [1, 2]


def test_count_carries_the_account() -> None:
    route = handmade.back_route()
    taken = count(route, samples.scene(), handmade.frame())
    assert taken.account.length_in == route.length_in
    assert math.isclose(taken.account.square_in, 10.0 + 8.5 + 7.1875, rel_tol=1e-12)
