"""A flat duct lies as its outlet does: close to the wall only its narrow side faces it."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest

from routeviz import pipeline, scenefile, search
from routeviz.model.path import Outcome
from routeviz.model.plan import Plan
from routeviz.model.scene import SectionShape, SectionSize

HOME = scenefile.load(Path(__file__).parents[2] / "scenes" / "joist_dead_centre.toml")  # joist 4 from 61 1/4 to 62 3/4
FLAT = SectionSize(SectionShape.RECT, 10.0, 3.25)


def planned(centre: float, out: float) -> Plan:
    hood = replace(HOME.hood, centre_in=centre, outlet=replace(HOME.hood.outlet, section=FLAT, out_in=out))
    return pipeline.plan(replace(HOME, hood=hood, duct=replace(HOME.duct, sections=(FLAT,))))


@pytest.mark.parametrize("out", [2.0, 3.0, 4.0])
def test_it_goes_up_in_the_middle_of_a_bay(out: float) -> None:
    """Half its narrow side is 1 5/8 in: 2 in from the wall it is 3/8 in clear, though half its wide side is 5 in."""
    plan = planned(54.0, out)
    assert plan.paths.outcome is Outcome.PROVEN
    assert plan.paths.best is not None
    assert plan.paths.best.elbows == 0
    assert search.verify(plan.paths.best, plan.frame, plan.scene) == ()


def test_what_is_in_its_way_is_what_its_sides_meet() -> None:
    """Half the wide side, half a joist and the gap are 5 + 3/4 + 1/4 = 6 in; the wall's board is no hindrance."""
    (why,) = (w for w in planned(62.0, 3.0).paths.why_not if w.wanted == "straight up")
    assert [b.label for b in why.blockers] == ["joist 4", "rafter 4, back slope"]
    assert [b.overlap_in for b in why.blockers] == [1.5, 1.5]
    assert (why.shift_in, why.shift_other_in) == (-6.0, 6.0)
