"""The order of work respects what each step needs; measure-first ranks by what is left."""

from __future__ import annotations

from dataclasses import replace

import handmade
import pytest
import samples
from hypothesis import given
from hypothesis import strategies as st

from routeviz.model.route import Near
from routeviz.model.scene import Assumption, Tolerances
from routeviz.model.solids import Box, Crossing, Solid, SolidKind, Vec3
from routeviz.model.takeoff import Sheet, Step
from routeviz.takeoff import count
from routeviz.takeoff.measure import measure_first
from routeviz.takeoff.work import in_order

SHEETS = {str(s) for s in Sheet}


def test_every_step_comes_after_what_it_needs() -> None:
    for route in (handmade.up_route(), handmade.back_route()):
        steps = count(route, samples.scene(), handmade.frame(), handmade.findings()).steps
        place = {s.id: n for n, s in enumerate(steps)}
        for step in steps:
            assert all(place[a] < place[step.id] for a in step.after)
        assert place["power"] < place["look"] < place["inside"] < place["outside"] < place["cap"] < place["test"]
        assert place["inspect"] < place["screws"] < place["lift"] < place["connect"] < place["test"]
        assert "patch" not in place  # the cover hides every hole: nothing is left to patch
        assert all(s.drawing in SHEETS for s in steps if s.drawing)
        lift = steps[place["lift"]]
        assert "Two people" in lift.text
        assert "55 lb" in lift.text
        assert "small opening" in steps[place["look"]].text
        assert steps[place["look"]].hold


def test_a_circle_and_a_double_are_refused() -> None:
    with pytest.raises(ValueError, match="wait for each other"):
        in_order([Step("a", "", ("b",)), Step("b", "", ("a",))])
    with pytest.raises(ValueError, match="stands twice"):
        in_order([Step("a", "", ()), Step("a", "", ())])


@given(st.lists(st.integers(0, 9), min_size=10, max_size=10), st.permutations(range(10)))
def test_any_acyclic_steps_are_sorted(parents: list[int], shuffled: list[int]) -> None:
    steps = [Step(f"s{n}", "", (f"s{p % n}", "not there") if n else ()) for n, p in enumerate(parents)]
    ordered = in_order([steps[n] for n in shuffled])
    seen: set[str] = set()
    for step in ordered:
        assert set(step.after) <= seen
        seen.add(step.id)
    assert len(seen) == 10


def test_joists_are_measured_first_when_they_are_least_sure() -> None:
    scene = samples.scene(tolerances=Tolerances(joists_in=0.5))
    found = measure_first(handmade.up_route(), scene, handmade.frame())
    # 3 1/4 in gap less 1/4 in clearance; joists may be off by 1/2 in, rafters are taken as exact
    assert [m.what for m in found] == ["joist 4 and rafter 4, right edge", "joist 5 and rafter 5, left edge"]
    first = found[0]
    assert (first.slack_in, first.tolerance_in) == (3.0, 0.5)
    assert first.assumed == "62 3/4 in from the left wall"
    # the duct's left side is at 66, its clearance ends at 65 3/4
    assert first.changes_at == "more than 65 3/4 in"
    assert found[1].changes_at == "less than 74 1/4 in"


def test_assumed_numbers_come_before_measured_ones() -> None:
    scene = samples.scene(tolerances=Tolerances(), assumptions=(Assumption("roof.framing.first", "14 in", "not seen"),))

    def tell(solid: Solid) -> Solid:
        return replace(solid, origin="roof.framing" if solid.id.startswith("rafter") else "ceiling.joists")

    frame = handmade.frame()
    frame = replace(frame, solids=tuple(tell(s) for s in frame.solids))
    found = measure_first(handmade.up_route(), scene, frame)
    assert [m.assumed_only for m in found] == [True, True]  # the rafters answer for the joists they stand over
    alone = measure_first(replace(handmade.up_route(), near=handmade.up_route().near[:3]), scene, frame)
    assert [(m.what, m.assumed_only) for m in alone] == [
        ("joist 4 and rafter 4, right edge", True), ("joist 5, left edge", False),
    ]  # fmt: skip


def test_heights_come_from_findings_with_a_margin() -> None:
    found = measure_first(handmade.up_route(), samples.scene(), handmade.frame(), handmade.findings())
    # the mounting line stays 66 in above the floor: a cooktop 6 in higher than 36 leaves the least of 24 in
    (height,) = [m for m in found if m.what == "Cooktop above the floor"]
    assert (height.assumed, height.changes_at, height.slack_in) == ("36 in", "more than 42 in", 6.0)
    # what is broken is settled, not measured; the joist is there once
    assert not any("window" in m.what for m in found)
    assert sum("joist 4" in m.what for m in found) == 1


@pytest.mark.parametrize(
    ("toward", "at", "changes"),
    [
        ((-1.0, 0.0, 0.0), (65.75, -8.5, 100.0), "more than 65 3/4 in"),
        ((1.0, 0.0, 0.0), (74.25, -8.5, 100.0), "less than 74 1/4 in"),
        ((0.0, 1.0, 0.0), (70.0, -4.25, 100.0), "more than 4 1/4 in"),  # between wall and duct
        ((0.0, -1.0, 0.0), (70.0, -12.75, 100.0), "less than 12 3/4 in"),  # on the room's side
    ],
)
def test_without_spare_the_plan_changes_towards_the_duct(toward: Vec3, at: Vec3, changes: str) -> None:
    """A riser of 8 in at (70, -8 1/2) with 1/4 in clear on every side: 65 3/4, 74 1/4, 4 1/4 and 12 3/4 in."""
    hi, lo = [a + 1.0 for a in at], [a - 1.0 for a in at]
    axis = max(range(3), key=lambda k: abs(toward[k]))
    (lo if toward[axis] > 0 else hi)[axis] = at[axis]
    beam = Solid(
        "beam", SolidKind.BEAM, "beam", Box((lo[0], lo[1], lo[2]), (hi[0], hi[1], hi[2])), Crossing.NEVER, "test"
    )
    framed = handmade.frame()
    framed = replace(framed, solids=(*framed.solids, beam))
    noise = 1e-12  # what the geometry of a sloped member leaves in a gap
    near = Near("beam", "beam", 0.25 + noise, toward, at, "straight-1")
    (found,) = measure_first(replace(handmade.up_route(), near=(near,)), samples.scene(), framed)
    assert found.changes_at == changes
