"""Ways that people take and the search must find: past a truss, round a riser, inside a cabinet, not through a rated wall."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest
import samples
from cases.homes import blind, found, holes_in, must_broken, one, with_wall
from cases.test_how_the_duct_is_laid import SIDEWAYS, between, riser_in_the_attic, under_cabinet
from cases.test_members_in_the_way import truss_over_the_outlet

from routeviz import pipeline
from routeviz.model.finding import State
from routeviz.model.route import PartKind
from routeviz.model.scene import WallSide


def test_the_search_goes_past_the_truss_and_cuts_none() -> None:
    plan = pipeline.plan(truss_over_the_outlet(), alternatives=1)
    assert plan.best is not None
    assert plan.best.route.termination.face.startswith("roof")
    assert not holes_in(plan, "truss")
    assert plan.best.route.elbows == pytest.approx(1.0)  # two 45s
    assert one(plan, "FIT-COVER-DUCT").state is State.BROKEN


def test_the_search_goes_round_the_riser_with_an_offset() -> None:
    plan = pipeline.plan(riser_in_the_attic(), alternatives=1)
    assert plan.best is not None
    route = plan.best.route
    assert route.elbows == pytest.approx(1.0)
    assert {p.angle_deg for p in route.parts if p.kind is PartKind.ELBOW} <= {45.0, 30.0}
    first, last = route.parts[0].start, route.parts[-1].end
    assert math.hypot(last[0] - first[0], last[1] - first[1]) >= SIDEWAYS - 1e-6
    assert not must_broken(plan)


ASIDE = 8.0 / 2 + 1.5 / 2 + 0.25  # past the joist


@pytest.mark.parametrize(("spare_in", "way"), [(3.5, True), (-0.5, False)])
def test_a_taller_cabinet_absorbs_more_offset(spare_in: float, way: bool) -> None:
    """Two 45s of 8 in duct need 11.63 in of height for 5 in aside (two 30s 12.95 in); in a lower cabinet there is no way.

    The search is safe, not sharp: it wants a little more height than that before it offers the offset.
    """
    t = math.radians(45.0)
    needed = 2 * 8.0 * math.sin(t) + between(ASIDE, 8.0) * math.cos(t)
    assert needed == pytest.approx(11.628, abs=0.001)
    plan = pipeline.plan(under_cabinet(needed + spare_in), alternatives=1)
    assert (plan.best is not None) is way
    if plan.best is not None:
        first, last = plan.best.route.parts[0].start, plan.best.route.parts[-1].end
        assert abs(last[0] - first[0]) + 1e-9 >= ASIDE
        assert plan.best.route.elbows == pytest.approx(1.0)
        assert plan.best.route.boxed_in == 0.0
        assert not holes_in(plan, "joist")


def test_a_rated_wall_is_left_alone_when_there_is_another_way() -> None:
    """A joist stands over the outlet, so back through the wall is the simple way; rated, it is not taken."""
    home = blind(samples.scene())
    assert home.ceiling.joists is not None
    ceiling = replace(home.ceiling, joists=replace(home.ceiling.joists, first_in=6.0))
    home = replace(home, ceiling=ceiling, duct=replace(home.duct, max_elbows=2))
    free = pipeline.plan(home, alternatives=1)
    assert free.best is not None
    assert free.best.route.termination.face == "face-hood"
    rated = pipeline.plan(with_wall(home, WallSide.HOOD, fire_rated=True), alternatives=1)
    assert rated.best is not None
    assert rated.best.route.termination.face != "face-hood"
    assert not found(rated, "FIR-WALL")
