"""A plumb duct through a slope: its sides lie in the house's order, and the clearance is stretched with the duct.

12 in 12: a slope is as long as the square root of 2 over its level length; 10 1/2 in become 14.849 in.
"""

from __future__ import annotations

import math
from dataclasses import replace

import pytest
import samples
from handmade import straight

from routeviz import framing, pipeline
from routeviz.model.route import Penetration
from routeviz.model.scene import DuctChoice, RunDirection, Scene, SectionShape, SectionSize
from routeviz.model.solids import Box, Crossing, Frame, Prism, Solid, SolidKind, Vec3
from routeviz.routing.touch import penetrations
from routeviz.takeoff import count

ROOT2 = math.sqrt(2.0)
ROUND_10 = SectionSize(SectionShape.ROUND, 10.0, 10.0)
FLAT = SectionSize(SectionShape.RECT, 14.0, 6.0)
OVAL = SectionSize(SectionShape.OVAL, 14.0, 6.0)
X, Y = (1.0, 0.0, 0.0), (0.0, 1.0, 0.0)


def through(axis: int, section: SectionSize, wide: Vec3 | None = None, clearance_in: float = 0.25) -> Penetration:
    """Give the hole of a plumb duct at (50, 50) through a deck at 12 in 12 whose eave runs along `axis`."""
    outline = ((0.0, 100.0), (100.0, 200.0), (100.0, 201.0), (0.0, 101.0))
    deck = Solid("deck", SolidKind.DECK, "roof deck", Prism(axis, 0.0, 100.0, outline), Crossing.PASS, "test")
    level = Solid("board", SolidKind.BOARD, "board", Box((0.0, 0.0, 60.0), (100.0, 100.0, 61.0)), Crossing.PASS, "test")
    frame = Frame((level, deck), (), (), Box((0.0, 0.0, 0.0), (100.0, 100.0, 300.0)))
    run = replace(straight("straight-1", (50.0, 50.0, 40.0), (50.0, 50.0, 220.0), section), wide=wide)
    board, hole = penetrations((run,), frame, clearance_in)
    assert board.stretch == (1.0, 1.0)
    assert board.level_in == board.hole_in
    return hole


@pytest.mark.parametrize(("axis", "along"), [(0, 1), (1, 0)])
def test_a_round_ducts_ellipse_is_long_up_the_slope_with_its_clearance(axis: int, along: int) -> None:
    hole = through(axis, ROUND_10)
    assert hole.shape == "ellipse"
    assert (hole.size_in[along], hole.size_in[1 - along]) == pytest.approx((10.0 * ROOT2, 10.0))
    assert (hole.hole_in[along], hole.hole_in[1 - along]) == pytest.approx((10.5 * ROOT2, 10.5))  # 14.849
    assert hole.level_in == pytest.approx((10.5, 10.5))
    assert hole.sloped


@pytest.mark.parametrize("section", [FLAT, OVAL])
@pytest.mark.parametrize("wide", [X, Y])
@pytest.mark.parametrize("axis", [0, 1])
def test_a_flat_ducts_sides_are_told_along_the_wall_then_out(section: SectionSize, wide: Vec3, axis: int) -> None:
    hole = through(axis, section, wide)
    level = (14.0, 6.0) if wide == X else (6.0, 14.0)
    factors = (1.0, ROOT2) if axis == 0 else (ROOT2, 1.0)
    assert hole.size_in == pytest.approx((level[0] * factors[0], level[1] * factors[1]))
    assert hole.hole_in == pytest.approx(((level[0] + 0.5) * factors[0], (level[1] + 0.5) * factors[1]))
    assert hole.level_in == pytest.approx((level[0] + 0.5, level[1] + 0.5))


def over(ridge: RunDirection, section: SectionSize) -> Scene:
    """Give the sample kitchen with a low roof of 3 in 12 whose ridge lies beyond it."""
    plain = samples.scene()
    assert plain.roof is not None
    outlet = replace(plain.hood.outlet, section=section)
    return replace(plain, roof=replace(plain.roof, ridge=ridge, ridge_at_in=160.0), duct=DuctChoice((section,)),
                   hood=replace(plain.hood, outlet=outlet, cover=None), cap=replace(plain.cap, wall=False))  # fmt: skip


@pytest.mark.parametrize("ridge", list(RunDirection))
def test_the_schedule_says_plumb_and_the_sides_lie_as_it_says(ridge: RunDirection) -> None:
    scene = over(ridge, samples.ROUND_8)
    plan = pipeline.plan(scene, alternatives=1)
    assert plan.best is not None
    deck = next(h for h in plan.best.takeoff.holes if h.solid.startswith("roof-1"))
    long = 8.5 * math.sqrt(1 + 0.25**2)
    assert deck.sides == ("along the hood wall", "out from it")
    assert deck.size_in == pytest.approx((8.5, long) if ridge is RunDirection.ALONG else (long, 8.5))
    assert deck.note == "ellipse: the long side runs up the slope; cut plumb, along the duct"
    outside = next(s for s in plan.best.takeoff.steps if s.id == "outside")
    assert "plumb, along the duct" in outside.text


def test_a_flat_ducts_hole_and_flashing_say_how_it_lies() -> None:
    stack = SectionSize(SectionShape.RECT, 10.0, 3.25)
    for ridge, words in ((RunDirection.ALONG, "along the eave"), (RunDirection.OUT, "up the slope")):
        scene = over(ridge, stack)
        plan = pipeline.plan(scene, alternatives=1)
        assert plan.best is not None
        deck = next(h for h in plan.best.takeoff.holes if h.solid.startswith("roof-1"))
        stretch = math.sqrt(1 + 0.25**2)
        assert deck.size_in == pytest.approx(
            (10.5, 3.75 * stretch) if words == "along the eave" else (10.5 * stretch, 3.75)
        )
        assert deck.note == "cut plumb, along the duct"
        (flashing,) = [b for b in plan.best.takeoff.buy if b.item == "roof flashing"]
        assert flashing.note == f"for a roof of 3 in 12, the wide side {words}"


def test_what_is_cut_level_says_nothing_of_plumb() -> None:
    scene = samples.scene()
    framed = framing.frame(scene)
    plan = pipeline.plan(replace(scene, cap=replace(scene.cap, roof=False)), alternatives=1)
    assert plan.best is not None
    taken = count(plan.best.route, scene, framed)
    assert not any("plumb, along the duct" in h.note for h in taken.holes)
    assert not any("plumb, along the duct" in s.text for s in taken.steps)
