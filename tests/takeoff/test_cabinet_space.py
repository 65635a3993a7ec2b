"""What the duct takes of a cabinet, by plain products of the given sizes."""

from __future__ import annotations

from dataclasses import replace

import pytest
import samples

from routeviz import pipeline
from routeviz.model.scene import AsBuilt, AsBuiltFitting, Obstacle, ObstacleKind, Scene
from routeviz.model.takeoff import CabinetSpace
from routeviz.units import quantity_text as quantity

CABINET = Obstacle("hood-cabinet", ObstacleKind.CABINET, 50.0, 0.0, 78.5, 40.0, 14.0, 17.5, hides_duct=True)


def taken(cabinet: Obstacle, *fittings: AsBuiltFitting) -> tuple[CabinetSpace, ...]:
    plain: Scene = samples.scene(obstacles=(cabinet,))
    hood = replace(plain.hood, cover=None)
    plan = pipeline.plan(replace(plain, hood=hood, as_built=AsBuilt(fittings)))
    assert plan.best is not None
    return plan.best.takeoff.cabinets


def test_straight_up_takes_the_boxing_times_the_height() -> None:
    (space,) = taken(CABINET, AsBuiltFitting("straight", 40.0), AsBuiltFitting("cap"))
    assert space.lost_in3 == pytest.approx(8.5 * 8.5 * 17.5)  # 8 in duct and 1/4 in all round
    assert space.of_in3 == 40.0 * 14.0 * 17.5


def test_a_turn_inside_counts_to_the_corner_and_on_to_the_side() -> None:
    """Up 2 in, elbow of 8 in take-off, then right to the cabinet's side at 90 in: 10 in up and 20 in across."""
    run = (AsBuiltFitting("straight", 2.0), AsBuiltFitting("elbow", turn="right"), AsBuiltFitting("straight", 30.0))
    (space,) = taken(CABINET, *run)
    assert space.lost_in3 == pytest.approx(8.5 * 8.5 * (10.0 + 20.0))


def test_a_cabinet_that_hides_no_duct_or_lies_elsewhere_loses_nothing() -> None:
    up = AsBuiltFitting("straight", 40.0)
    assert taken(replace(CABINET, hides_duct=False), up) == ()
    assert taken(replace(CABINET, left_in=100.0, width_in=30.0), up) == ()


def test_volumes_are_written_in_cubic_feet_or_litres() -> None:
    assert quantity(1728.0, "in3", metric=False) == "1.0 cu ft"
    assert quantity(1728.0, "in3", metric=True) == "28 l"  # 1 cu ft = 28.317 l, exact from 2.54 cm


def holes(*fittings: AsBuiltFitting) -> list[tuple[str, tuple[float, float], float, float]]:
    """Give layer, size and centre of the holes in a cabinet 1 in over the collar, along the run."""
    plain: Scene = samples.scene(obstacles=(replace(CABINET, bottom_in=79.5, height_in=16.5),))
    plan = pipeline.plan(replace(plain, hood=replace(plain.hood, cover=None), as_built=AsBuilt(fittings)))
    assert plan.best is not None
    found = [h for h in plan.best.takeoff.holes if "cabinet" in h.layer]
    return [(h.layer.partition(" of ")[0], h.size_in, h.from_left_in, h.from_other_in) for h in found]


@pytest.mark.parametrize(
    ("turn", "panel", "centre"),
    [
        ("back", "back", (70.0, 89.0)),  # from the left wall, above the floor
        ("right", "right", (8.5, 89.0)),  # out from the hood wall, above the floor
        ("left", "left", (8.5, 89.0)),
    ],
)
def test_every_panel_that_the_duct_passes_is_a_hole(turn: str, panel: str, centre: tuple[float, float]) -> None:
    """Collar at 78 1/2 in, 2 1/2 in and an elbow of 8 in take-off: the level run lies 89 in above the floor."""
    run = (AsBuiltFitting("straight", 2.5), AsBuiltFitting("elbow", turn=turn), AsBuiltFitting("straight", 30.0))
    found = holes(*run)
    assert [name for name, *_ in found] == ["bottom", panel]
    assert found[1] == (panel, (8.5, 8.5), *centre)


def test_straight_through_a_cabinet_cuts_bottom_and_top() -> None:
    assert [name for name, *_ in holes(AsBuiltFitting("straight", 40.0), AsBuiltFitting("cap"))] == ["bottom", "top"]
