"""What the stud finder said: bays by hand, shifts by the search, and an opening's pieces by the rule."""

from __future__ import annotations

import itertools
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from routeviz import pipeline, rules, scenefile, studies
from routeviz.errors import LengthError
from routeviz.model.finding import Verdict
from routeviz.model.scene import Scene

SCENES = Path(__file__).parents[2] / "scenes"


def scene(name: str, **changes: object) -> Scene:
    text = (SCENES / f"{name}.toml").read_text(encoding="utf-8")
    dotted = {key.replace("__", "."): value for key, value in changes.items()}
    return scenefile.loads(scenefile.edit(text, dotted), profiles=rules.profiles(), codes=rules.codes())


@pytest.mark.parametrize(
    ("text", "unit", "expected"),
    [
        ("13 1/4, 29, 45 1/8", "in", (13.25, 29.0, 45.125)),
        ("45 1/8; 13 1/4 in and 29\n", "in", (13.25, 29.0, 45.125)),
        ("2 ft 5 in", "in", (29.0,)),
        ("508, 1016", "mm", (20.0, 40.0)),
    ],
)
def test_marks_are_read_as_they_are_called_out(text: str, unit: str, expected: tuple[float, ...]) -> None:
    assert studies.read_marks(text, unit=unit) == pytest.approx(expected)


@pytest.mark.parametrize("text", ["", " , ;", "13, about 29", "13, 13 1/4", "-4, 12", "13, 9999", "NaN", "1e9"])
def test_what_is_no_mark_is_told(text: str) -> None:
    with pytest.raises(LengthError) as told:
        studies.read_marks(text)
    assert told.value.problem
    assert told.value.remedy


def test_bays_are_what_lies_between_the_joists() -> None:
    """Joists 1 1/2 in wide (dressed 2x8) at 13 1/4, 29 and 45 1/8: faces at 12 1/2, 14, 28 1/4, 29 3/4, 44 3/8, 45 7/8."""
    found = studies.joist_preview(scene("juniper_straight_up"), (13.25, 29.0, 45.125))
    assert [(b.low_in, b.high_in) for b in found.bays][:3] == [(0.0, 12.5), (14.0, 28.25), (29.75, 44.375)]
    assert found.spacing_in == 16
    # carried on at 16 in from the last: 61 1/8, 77 1/8, ... within the 144 in wall
    assert [j.centre_in for j in found.joists if not j.measured] == [61.125, 77.125, 93.125, 109.125, 125.125, 141.125]
    assert "6 more joists were carried on at 16 in; they are not measured." in found.notes
    here = next(b for b in found.bays if b.here)
    assert (here.low_in, here.high_in) == (61.875, 76.375), "the hood's centre is at 70 in"


def test_a_joist_in_the_way_with_both_shifts() -> None:
    """Right values on top of the scene: joist 4 at 62 in, the hood at 62 in; free from 5 in to either side."""
    found = studies.joist_preview(scene("joist_dead_centre"), (14.0, 30.0, 46.0, 62.0, 78.0, 94.0, 110.0, 126.0, 142.0))
    # the duct is 8 in, the joist 1 1/2 in wide and wholly inside it
    assert found.blockers[0] == ("joist 4", 1.5)
    assert (found.shift_left_in, found.shift_right_in) == (-5.0, 5.0)
    assert abs(found.middle_in) == 8.0
    assert found.duct_in == (58.0, 66.0)
    label, ruling = found.opening[0]
    assert label == "joist 4"
    # a header between joists 3 and 5: 78 - 46 less half a joist at each end
    assert {p.name: p.length_in for p in ruling.framing}["header"] == 30.5


def test_the_offset_that_works_is_planned() -> None:
    found = studies.joist_preview(scene("joist_dead_centre"), tuple(14.0 + 16 * n for n in range(9)), offset=True)
    assert "2 in" in found.offset_words, "the scene's own file: shifted 2 in with an offset of 3 in"
    changed = scene("joist_dead_centre", **{k.replace(".", "__"): v for k, v in found.offset_changes})
    plan = pipeline.plan(changed, alternatives=1)
    assert plan.best is not None
    assert any(b.offset_id for b in plan.best.route.centreline.bends)
    assert plan.verdict in (Verdict.WORKS, Verdict.TIGHT)


def test_no_offset_is_sought_where_the_duct_goes_straight() -> None:
    found = studies.joist_preview(scene("juniper_straight_up"), (14.0, 30.0), offset=True)
    assert (found.blockers, found.offset, found.offset_words) == ((), "", "")


def test_a_joist_that_was_missed_and_one_that_is_odd_are_told() -> None:
    found = studies.joist_preview(scene("juniper_straight_up"), (14.0, 46.0, 62.0, 78.0, 87.5))
    assert any("14 in to 46 in is 32 in: 1 joist may have been missed" in note for note in found.notes)
    assert any("78 in to 87 1/2 in is 9 1/2 in, not the 16 in of the others" in note for note in found.notes)
    assert 30.0 in [j.centre_in for j in found.joists if not j.measured]


def test_joists_along_the_wall_count_from_it_and_no_shift_helps() -> None:
    along = scene("juniper_straight_up", ceiling__joists__direction="along")
    found = studies.joist_preview(along, (8.5, 24.5))  # the first stands over the outlet, 8 1/2 in out
    assert found.along
    assert found.duct_in == (4.5, 12.5)
    assert any(label.startswith("joist 1") for label, _ in found.blockers)
    assert (found.shift_left_in, found.shift_right_in) == (None, None)


def test_a_concrete_ceiling_has_none() -> None:
    with pytest.raises(LengthError, match="no joists"):
        studies.joist_preview(scene("metric_concrete_ceiling"), (14.0,))


def test_taking_the_joists_gives_the_same_joists() -> None:
    """What is written into the file frames just as the preview said."""
    text = (SCENES / "juniper_straight_up.toml").read_text(encoding="utf-8")
    found = studies.joist_preview(scene("juniper_straight_up"), (13.25, 29.0, 45.125, 60.0))
    again = scenefile.loads(scenefile.edit(text, dict(found.changes)))
    assert again.ceiling.joists.at_in == pytest.approx([j.centre_in for j in found.joists], abs=1 / 64)


def test_joists_that_were_only_carried_on_stay_assumed() -> None:
    """Four marks in a 144 in wall: 12 1/2 to 60 1/2 were read off, 76 1/2 to 140 1/2 follow at 16 in."""
    text = (SCENES / "juniper_straight_up.toml").read_text(encoding="utf-8")
    text = text.replace("invented = true", 'assumed = ["ceiling.joists.first", "ceiling.joists.size", "hood.mount"]')
    before = scenefile.loads(text)
    marks = (12.5, 28.5, 44.5, 60.5)
    found = studies.joist_preview(before, marks)
    taken = scenefile.edit(text, dict(found.changes))
    again = scenefile.loads(taken)
    assert again.ceiling.joists.at_in == tuple(12.5 + 16 * n for n in range(9))
    told = {a.field: a.value for a in again.assumptions if a.marked}
    carried = {f"ceiling.joists.at.{n}": f"{12 + 16 * (n - 1)} 1/2 in" for n in range(5, 10)}
    assert told == {"ceiling.joists.size": before.ceiling.joists.size, "hood.mount": "30 in", **carried}
    # all nine read off: nothing of their places is left to guess
    found = studies.joist_preview(again, tuple(12.5 + 16 * n for n in range(9)))
    last = scenefile.loads(scenefile.edit(taken, dict(found.changes)))
    assert {a.field for a in last.assumptions if a.marked} == {"ceiling.joists.size", "hood.mount"}


def test_only_the_joist_that_nobody_read_off_is_said_to_be_assumed() -> None:
    text = (SCENES / "juniper_straight_up.toml").read_text(encoding="utf-8")
    found = studies.joist_preview(
        scenefile.loads(text), (14.0, 30.0, 46.0, 62.0)
    )  # the hood at 70 in, between 62 and 78
    plan = pipeline.plan(scenefile.loads(scenefile.edit(text, dict(found.changes))), alternatives=1)
    assert plan.best is not None
    rows = {m.what.split(",")[0]: m.assumed_only for m in plan.best.takeoff.measure_first if m.what.startswith("joist")}
    assert rows == {"joist 4": False, "joist 5": True}


@settings(max_examples=40, deadline=None)
@given(st.lists(st.integers(4, 140 * 4).map(lambda n: n / 4), min_size=1, max_size=9, unique=True))
def test_any_marks_give_bays_and_joists_that_fill_the_wall(marks: list[float]) -> None:
    """Bays and joists tile the wall from 0 to 144 in, whatever was read off; a shift is to a place that is free."""
    taken = [marks[0]]
    for mark in sorted(marks):
        if all(abs(mark - t) >= 2 for t in taken):
            taken.append(mark)
    found = studies.joist_preview(scene("juniper_straight_up"), tuple(sorted(taken)))
    filled = sum(b.high_in - b.low_in for b in found.bays) + sum(j.high_in - j.low_in for j in found.joists)
    assert filled == pytest.approx(144.0, abs=1 / 8)
    for a, b in itertools.pairwise(found.joists):
        assert a.high_in <= b.low_in + 1e-9
    centres = {round(j.centre_in, 4) for j in found.joists if j.measured}
    assert centres == {round(t, 4) for t in taken if 0.75 <= t <= 143.25}
    for shift in (found.shift_left_in, found.shift_right_in):
        if shift is not None:
            low, high = (edge + shift for edge in found.duct_in)
            assert all(j.high_in <= low - 0.25 + 1e-3 or j.low_in >= high + 0.25 - 1e-3 for j in found.joists)


def test_plain_data_says_the_same() -> None:
    found = studies.joist_preview(scene("joist_dead_centre"), tuple(14.0 + 16 * n for n in range(9)))
    data = studies.joists_as_json(found)
    assert data["left"] == -5.0
    assert data["bays"][3] == [46.75, 61.25, True, False]
    assert data["changes"]["ceiling.joists.first"] is None
