"""A shift tells what it costs; what bars a way is a finding with its limit; musts and advice are told apart."""

from __future__ import annotations

from importlib import resources
from pathlib import Path

import pytest

from routeviz import freespace, pipeline, scenefile, studies
from routeviz.model.finding import State
from routeviz.model.plan import Plan
from routeviz.model.study import FixKind

SCENES = Path(__file__).parents[2] / "scenes"


def planned(name: str) -> Plan:
    return pipeline.plan(scenefile.load(SCENES / f"{name}.toml"), alternatives=1)


def test_a_far_shift_takes_the_cooktop_along_in_every_place_it_is_told() -> None:
    """28 in aside a 36 in canopy covers 18 + 15 - 28 = 5 of the cooktop's 30 in: next to nothing."""
    plan = planned("soffit_vent_cap")
    why = next(w for w in plan.paths.why_not if w.wanted == "straight back")
    assert why.shift_in == 28.0
    assert why.takes_cooktop
    assert "Shift hood and cooktop 28 in right and it goes up and straight back." in plan.answer
    found = studies.fixes(plan)
    moved = [f for f in found if f.kind in (FixKind.SHIFT, FixKind.SHIFT_BOTH)]
    assert [f.words for f in moved] == ["Shift hood and cooktop 28 in right"]
    assert (moved[0].broken, moved[0].left) == (1, ())  # the soffit vent, on which inspectors differ, stays too near
    assert moved[0].again is not None
    left = [f for f in moved[0].again.all_findings if f.state is State.BROKEN]
    assert [(f.code, f.must) for f in left] == [("TRM-SOFFIT-VENT", False)]


@pytest.mark.parametrize(("name", "shift_in"), [("joist_dead_centre", 5), ("stud_dead_centre", 6)])
def test_a_small_shift_says_what_advice_it_breaks(name: str, shift_in: int) -> None:
    """The canopy's 3 in beyond the cooktop are used up; 28 or 27 of its 30 in stay covered, 18 of 21 in deep: 0.77 and more."""
    plan = planned(name)
    why = plan.paths.told_first
    assert why is not None
    assert (why.takes_cooktop, why.alone_breaks) == (False, ("Canopy beyond the cooktop",))
    told = f"Shift {shift_in} in left and it goes {why.wanted} (against advice: canopy beyond the cooktop)."
    assert told in plan.answer
    # 8 in to the middle of the bay leave 25 of 30 in covered: 0.71, less than the 0.75 wished for
    assert "8 in left is the middle of the bay" in plan.second
    assert "to spare, with the cooktop." in plan.second
    alone = next(f for f in studies.fixes(plan) if f.kind is FixKind.SHIFT)
    assert alone.again is not None
    broken = {f.title for f in alone.again.all_findings if f.state is State.BROKEN}
    assert set(why.alone_breaks) <= broken


@pytest.mark.parametrize(
    ("name", "code", "measured_in", "thing"),
    [
        ("lot_line_close", "TRM-LOT-LINE", 18.0, "lot line"),  # the wall is 18 in from the line
        ("soffit_vent_cap", "TRM-OPENING", 15.75, "side window"),  # from 38 to 53 3/4 in
    ],
)
def test_what_bars_a_way_is_a_finding_with_limit_and_source(
    name: str, code: str, measured_in: float, thing: str
) -> None:
    plan = planned(name)
    assert plan.best is None
    barred = [f for f in plan.all_findings if f.state is State.BROKEN]
    assert [(f.code, f.title) for f in barred] == [(code, f"Cap to the {thing}")]
    found = barred[0]
    assert (found.must, found.relation, found.limit) == (True, "at least", 36.0)
    assert found.measured == pytest.approx(measured_in)
    assert found.margin == pytest.approx(measured_in - 36.0)
    assert "M1504.3" in found.source_text
    assert "bars the way straight back" in found.detail
    assert found.place is not None


def test_nothing_is_barred_where_there_is_a_way() -> None:
    assert not [f for f in planned("out_the_back").findings if f.code.startswith("TRM-")]


def test_no_way_up_says_whether_the_roof_is_missing_or_not_allowed() -> None:
    """The kitchen has a roof, and its cap may not be there; another one has rooms over it and no roof of its own."""
    told = planned("soffit_vent_cap").second
    assert "Not straight up: the scene allows no cap on the roof." in told
    home = scenefile.load(SCENES / "lot_line_close.toml")
    assert home.roof is None
    space = freespace.carve(planned("lot_line_close").frame, home, home.duct.sections[0])
    assert space.no_roof == "there is no roof to leave through"


def test_musts_are_named_and_advice_is_counted() -> None:
    assert planned("gas_low_cabinets").answer.startswith(
        "To clear first: Spice shelf above the cooktop; no room for a mounting height; 4 more, advice only. Straight up"
    )


def test_an_offset_is_called_one_and_says_what_is_bought_for_it() -> None:
    plan = planned("truss_in_front")
    assert "one offset of two 30° elbows, 4 ft 10 in" in plan.answer
    assert "one elbow" not in plan.answer
    assert plan.best is not None
    assert sum(p.kind.value == "elbow" for p in plan.best.route.parts) == 2
    fix = next(f for f in studies.fixes(planned("joist_dead_centre")) if f.kind is FixKind.OFFSET)
    assert fix.words.endswith("inside the cover with an offset")
    assert "one offset of two" in fix.recheck


def test_the_first_step_settles_what_the_answer_names() -> None:
    plan = pipeline.plan(scenefile.load(SCENES / "as_built_flex_in_attic.toml"))
    named = (
        "o backdraft damper; screws at each joint; flexible duct, not smooth inside; ends inside the attic; "
        "1 more, advice only."
    )
    assert plan.answer.startswith(f"To clear first: N{named} ")
    assert plan.best is not None
    assert plan.best.takeoff.steps[0].text == f"Settle what is broken first: n{named}"


def test_a_distance_that_is_advice_says_how_it_is_let() -> None:
    """36 in to a gas regulator is common practice alone: the search keeps it, and a waiver with its reason lifts it."""
    book = resources.files("routeviz.views.lessons").joinpath("book", "cap_place_scene.toml")
    moved = {"as_built": None, "hood.centre": "88 3/4 in", "cooktop.centre": "88 3/4 in"}
    text = scenefile.edit(book.read_text(encoding="utf-8"), moved)
    kept = pipeline.plan(scenefile.loads(text, "kitchen.toml"))
    assert kept.best is None
    assert "advice: a waiver of TRM-GAS, with its reason" in kept.answer
    waiver = '[rules]\nwaivers = [{ code = "TRM-GAS", reason = "the gas supplier has agreed" }]\n'
    let = pipeline.plan(scenefile.loads(text.replace("[rules]\n", waiver, 1), "kitchen.toml"))
    assert let.answer.startswith("Up, then back between studs 6 and 7")
