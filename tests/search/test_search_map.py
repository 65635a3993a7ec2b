"""The map of hood places against one place searched at a time, and against arithmetic on a hand-made house."""

from __future__ import annotations

import sys
from dataclasses import replace

import pytest
import samples
from framed_house import UNIT, framed_house
from search.test_search_find import ROOF, WALL, box, house, plan

from routeviz import framing
from routeviz.freespace import carve
from routeviz.model.path import Outcome
from routeviz.model.solids import Crossing, SolidKind
from routeviz.search import field, find
from routeviz.search.solve import solve
from routeviz.search.terms import Terms
from routeviz.search.verify import verify
from routeviz.units import TICKS_PER_IN, ticks


def test_each_cell_is_what_one_place_gives() -> None:
    joist = box("joist", (69.25, -96, 96.5), (70.75, 0, 104), Crossing.NEVER, SolidKind.JOIST)
    stud = box("stud", (80.25, 0.5, 0), (81.75, 6, 96), Crossing.NEVER, SolidKind.STUD)
    framed = house(joist, stud)
    scene = plan(max_elbows=2)
    shifts, lifts = [-20.0, -5.0, -4.75, 0.0, 4.0, 5.0, 11.0, 14.5], [-2.0, 0.0, 1.0]
    found = field(carve(framed, scene, samples.ROUND_8), shifts, lifts)
    for i, lift in enumerate(lifts):
        for j, shift in enumerate(shifts):
            hood = replace(scene.hood, centre_in=70.0 + shift, mount_in=30.0 + lift)
            space = carve(framed, replace(scene, hood=hood), samples.ROUND_8)
            alone = solve(space, Terms(), 2, [space.start.point])
            best = min((c for k in range(3) if (c := alone.cost(space.start.point, k)) is not None), default=None)
            cell = found.cell(i, j)
            assert best is not None
            assert (cell.boxed_in, cell.elbows, cell.length_in) == (0, best[1], best[2] / TICKS_PER_IN)
            line = found.route(i, j)
            assert line is not None
            assert line.points[0][0] == 70.0 + shift
            assert line.length_in == pytest.approx(cell.length_in)


def test_straight_up_is_free_just_clear_of_a_joist() -> None:
    """Half the duct, the gap and half the joist: 4 + 1/4 + 3/4 = 5 in to either side."""
    joist = box("joist", (69.25, -96, 96.5), (70.75, 0, 119), Crossing.NEVER, SolidKind.JOIST)
    shifts = [s / 4 for s in range(-28, 29)]
    found = field(carve(house(joist, faces=(ROOF, WALL)), plan(max_elbows=1), samples.ROUND_8), shifts)
    straight = [s for n, s in enumerate(shifts) if found.cell(0, n).elbows == 0]
    assert straight == [s for s in shifts if abs(s) >= 5]
    assert all(found.cell(0, n).elbows == 1 for n, s in enumerate(shifts) if abs(s) < 5)
    assert [k for k, _ in found.front(0, 0)] == [0, 1]


def test_a_place_without_hidden_way_tells_its_boxing() -> None:
    slab = box("slab", (0, -96, 96.5), (144, 0, 104), Crossing.NEVER, SolidKind.SLAB)
    stud = box("stud", (69.25, 0.5, 0), (70.75, 6, 96), Crossing.NEVER, SolidKind.STUD)
    space = carve(house(slab, stud), plan(max_elbows=2, offset_angles_deg=()), samples.ROUND_8)
    cell = field(space, [0.0]).cell(0, 0)
    best = find(space).best
    assert best is not None
    assert (cell.elbows, cell.boxed_in) == (2, best.boxed_in) == (2, 28 + 8.5)


def test_a_place_that_an_offset_alone_frees_says_so_at_every_height() -> None:
    """Half the duct, half the joist and the gap are 4 + 3/4 + 1/4 = 5 in; the bends have room between board and joist."""
    joist = box("joist", (69.25, -96, 112), (70.75, 0, 119), Crossing.NEVER, SolidKind.JOIST)
    framed, scene = house(joist, faces=(ROOF,)), plan(offset_angles_deg=(45.0,))
    shifts, lifts = [-6.0, -1.0, 0.0, 3.0], [-2.0, 0.0, 2.0]
    found = field(carve(framed, scene, samples.ROUND_8), shifts, lifts)
    for i, lift in enumerate(lifts):
        assert [found.cell(i, j).elbows for j in range(4)] == [0, 1, 1, 1]
        for j, shift in enumerate(shifts[1:], 1):
            # the joist is nearer on one side: 5 in less the shift; two 45s of 8 in radius shift at least 4.69, so 4 3/4
            aside = max(5 - abs(shift), 4.75)
            length = 128 - (78.5 + lift) + aside * (2**0.5 - 1)
            line = found.route(i, j)
            assert line is not None
            assert line.length_in == pytest.approx(length, abs=0.01)
            assert (found.cell(i, j).boxed_in, found.cell(i, j).length_in) == (0, pytest.approx(line.length_in))
            moved = replace(scene, hood=replace(scene.hood, centre_in=70.0 + shift, mount_in=30.0 + lift))
            assert verify(line, framed, moved) == ()
            alone = find(carve(framed, moved, samples.ROUND_8)).best
            assert alone is not None
            assert alone.length_in == pytest.approx(line.length_in)


def test_a_third_elbow_is_looked_for_where_a_second_can_be_reached(monkeypatch: pytest.MonkeyPatch) -> None:
    """The framed house is in sixteenths of an inch: a place every 2 in, each searched alone with three elbows too."""
    space = framed_house()
    shifts, lifts = [2 * UNIT * n / TICKS_PER_IN for n in range(113)][5::9], [0.0, 2 * UNIT / TICKS_PER_IN]
    found = field(space, shifts, lifts)
    best: dict[tuple[int, int], tuple[int, int] | None] = {}
    for i, lift in enumerate(lifts):
        collars = [
            (space.start.point[0] + ticks(s), space.start.point[1], space.start.point[2] + ticks(lift)) for s in shifts
        ]
        whole = solve(replace(space, start=replace(space.start, point=collars[0])), Terms(), 3, collars)
        for j, collar in enumerate(collars):
            costs = [c for k in range(4) if (c := whole.cost(collar, k)) is not None]
            best[i, j] = min(costs)[1:] if costs else None
    assert {None, 1, 2, 3} <= {b and b[0] for b in best.values()}
    for (i, j), expected in best.items():
        cell, line = found.cell(i, j), found.route(i, j)
        assert (cell.elbows is None) == (line is None) == (expected is None)
        if expected is None:
            assert cell.outcome is Outcome.NONE_EXISTS
        else:
            assert (cell.elbows, cell.length_in) == (expected[0], expected[1] / TICKS_PER_IN)
            assert line is not None
            assert line.elbows == expected[0]
    assert found.elbows == 3
    monkeypatch.setattr(sys.modules["routeviz.search.field"], "_MOST_DEEP", 0)
    short = field(space, shifts, lifts)
    assert short.elbows == 2
    for (i, j), expected in best.items():
        if expected is not None and expected[0] == 3:
            assert short.cell(i, j).outcome is Outcome.LIMIT_REACHED
        elif expected is not None:
            assert short.cell(i, j) == found.cell(i, j)


def test_a_place_that_a_boxed_offset_leads_out_of_says_what_a_plan_says() -> None:
    """No cover hides the riser, so an offset round the joist is boxed; a plan made for each place alone finds the same."""
    home = samples.scene()
    home = replace(home, hood=replace(home.hood, cover=None), cap=replace(home.cap, wall=False))
    framed, shifts = framing.frame(home), [-12.0, -9.5, -8.0, 0.0, 5.0, 8.0, 10.0]
    found = field(carve(framed, home, samples.ROUND_8), shifts)
    aside = 0
    for n, shift in enumerate(shifts):
        hood = replace(home.hood, centre_in=home.hood.centre_in + shift)
        best = find(carve(framed, replace(home, hood=hood), samples.ROUND_8), others=0).best
        line = found.route(0, n)
        assert best is not None
        assert line is not None
        assert (line.boxed_in, line.elbows) == (pytest.approx(best.boxed_in), best.elbows)
        aside += any(bend.offset_id for bend in line.bends)
    assert aside >= 2
