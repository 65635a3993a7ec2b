"""The sum of the parts is the route, on random routes; every piece fits its stock."""

from __future__ import annotations

import math
from collections import defaultdict
from dataclasses import replace

import handmade
import pytest
import samples
from hypothesis import given, settings
from hypothesis import strategies as st

from routeviz.model.route import Part, PartKind, Route
from routeviz.model.scene import Outlet, Scene
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
@given(
    routes(), st.sampled_from((36.0, 60.0, 120.0)), st.sampled_from((1.0, 1.5, 2.0)),
    st.sampled_from((Outlet("top", samples.ROUND_8, out_in=8.5, collar_in=1.5),
                     Outlet("top", samples.ROUND_8, out_in=8.5, collar_in=4.0),
                     Outlet("rear", samples.ROUND_8, up_in=7.0, collar_in=1.0))),
)  # fmt: skip
def test_the_parts_are_the_route(drawn: tuple[Route, float], stock: float, lap: float, outlet: Outlet) -> None:
    route, square = drawn
    plain = samples.scene()
    duct, hood = replace(plain.duct, stock_in=stock, overlap_in=lap), replace(plain.hood, outlet=outlet)
    scene = replace(plain, duct=duct, hood=hood)
    total = account(route)
    assert math.isclose(total.length_in, route.length_in, rel_tol=1e-12)
    assert math.isclose(total.square_in, square, rel_tol=1e-12)  # take-off of a right elbow is its radius

    cuts, plans = cut_list(route, scene, FRAME)
    by_part: dict[str, float] = defaultdict(float)
    for cut in cuts:
        by_part[cut.part] += cut.visible_in
    straights = {p.id: p.length_in for p in route.parts if p.kind is PartKind.STRAIGHT}
    assert by_part == straights  # exact: sixty-fourths are exact in binary

    # a piece is its visible length, one lap at its downstream end, the collar of a top outlet before the first, the cap
    # after the last; the collar of a rear outlet stands inside what is counted already
    made = pieces(route, scene, FRAME)
    over = 0.0 if outlet.place == "rear" else min(outlet.collar_in, lap)
    assert sum(c.cut_in for c in cuts) == sum(straights.values()) + lap * (len(made) - 1) + over + 1.5
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


def rear(collar_in: float) -> Scene:
    """Give the sample kitchen under a hood that blows straight back."""
    plain = samples.scene()
    outlet = Outlet("rear", samples.ROUND_8, up_in=7.0, collar_in=collar_in)
    return replace(plain, hood=replace(plain.hood, outlet=outlet))


def straight_back(length_in: float) -> Route:
    """Give a run straight back from the wall's face, with a cap at its end."""
    part = handmade.straight("straight-1", (70.0, 0.0, 73.0), (70.0, length_in, 73.0))
    cap = handmade.cap(part.end, (0.0, 1.0, 0.0))
    return replace(handmade.back_route(), parts=(part, cap), penetrations=(), near=())


@pytest.mark.parametrize("collar_in", [0.0, 1.0, 1.5, 4.0])
def test_behind_a_rear_outlet_the_collar_lies_inside_the_first_piece(collar_in: float) -> None:
    # the wall is 1/2 + 5 1/2 + 7/16 + 3/4 = 7 3/16 in thick, and the cap takes 1 1/2 in
    (cut,), _ = cut_list(straight_back(7.1875), rear(collar_in), FRAME)
    assert (cut.visible_in, cut.cut_in) == (7.1875, 8.6875)


def test_behind_a_rear_outlet_the_first_section_shows_as_much_as_the_next() -> None:
    # 153 13/16 in: two whole sections show 60 less the crimp of 1 1/2 in each; 36 13/16 and the cap's 1 1/2 are left
    cuts, _ = cut_list(straight_back(153.8125), rear(1.0), FRAME)
    assert [c.visible_in for c in cuts] == [58.5, 58.5, 36.8125]
    assert [c.cut_in for c in cuts] == [60.0, 60.0, 38.3125]


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
