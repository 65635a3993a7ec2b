"""An oblong hole is given as it lies: level then upright in a wall, along the hood wall then out from it overhead."""

from __future__ import annotations

from dataclasses import replace

import pytest
import samples
from cases.homes import STACK, built, cap, elbow, rear_outlet, straight, with_duct, with_wall

from routeviz.drawings.words import hole_size
from routeviz.model.plan import Option
from routeviz.model.scene import WallSide
from routeviz.model.takeoff import Hole
from routeviz.reports import plan_text


def holes(option: Option | None, part: str) -> list[Hole]:
    assert option is not None
    found = [h for h in option.takeoff.holes if part in h.solid and h.note == ""]
    assert found
    return found


def test_a_rear_outlet_lies_flat_in_the_wall_behind() -> None:
    """10 by 3 1/4 in with 1/4 in all round."""
    plan = built(rear_outlet(samples.scene(), STACK), straight(8.0), cap())
    for hole in holes(plan.best, "hood-"):
        assert hole.size_in == (10.5, 3.75)
        assert hole.lies == "wide x high"
    assert "rectangular 10 1/2 in wide × 3 3/4 in high" in " ".join(plan_text(plan).split())
    assert hole_size(holes(plan.best, "hood-")[0], plan.scene) == "10 1/2 x 3 3/4 in rectangular (wide x high)"


def test_turned_aside_the_hard_way_it_stands_upright_in_the_side_wall() -> None:
    """Up from the hood its wide side lies along the hood wall; turned along the wall that side points up and down."""
    home = with_duct(samples.scene(), STACK)
    home = with_wall(home, WallSide.RIGHT, beyond="outdoors", outside=home.wall(WallSide.HOOD).outside)
    plan = built(home, straight(8.0), elbow("right"), straight(70.0), cap())
    for hole in holes(plan.best, "right-"):
        assert hole.size_in == (3.75, 10.5)
        assert hole.lies == "wide x high"
    assert plan.best is not None
    for finding in plan.best.findings:
        if finding.ruling is not None and finding.ruling.solid.startswith("right-stud"):
            assert finding.ruling.ours_in == pytest.approx(3.75)


def test_up_through_a_ceiling_its_sides_are_told_along_the_wall_and_out() -> None:
    plan = built(with_duct(samples.scene(), STACK), straight(30.0), cap())
    (hole,) = holes(plan.best, "ceiling-1")
    assert hole.size_in == (10.5, 3.75)
    assert hole.lies == "along the hood wall x out from it"


def test_round_and_square_holes_lie_no_way() -> None:
    hole = Hole("wall", "board", "rectangular", (10.0, 10.0), 1.0, "", 1.0, "", None, (0, 0, 0), sides=("wide", "high"))
    assert (
        hole.lies == replace(hole, shape="round").lies == replace(hole, shape="ellipse", size_in=(8.0, 9.0)).lies == ""
    )
    assert replace(hole, size_in=(10.0, 4.0)).lies == "wide x high"
