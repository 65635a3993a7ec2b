"""A level run that should fall is drawn level: each hole along it says how much lower it must then be.

A quarter inch per foot is 1/48 of the length.
"""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import handmade
import pytest
import samples

from routeviz import pipeline, scenefile
from routeviz.model.finding import Finding, State
from routeviz.model.route import Penetration, Route, level_stretches
from routeviz.model.takeoff import TakeOff
from routeviz.takeoff import count

ASKED = Finding(
    "DCT-SLOPE", "Fall towards the cap", State.NOT_CHECKED, False, None, "", 0.25, None, "in per ft", "", ""
)
SCENES = Path(__file__).parents[2] / "scenes"
BACK = (0.0, 1.0, 0.0)


def hole(solid: str, x: float, y: float, z: float, way: tuple[float, float, float] = BACK) -> Penetration:
    return Penetration(solid, solid, "board", (x, y, z), (x + way[0] / 2, y + way[1] / 2, z + way[2] / 2), way, 0.5,
                       "round", (8.0, 8.0), (8.5, 8.5))  # fmt: skip


def level_run() -> Route:
    """Give 18 in up, an elbow of 8 in radius, then 144 in straight back."""
    x, y, z = handmade.COLLAR
    corner = (x, y, z + 18.0)
    turn = handmade.elbow("elbow-1", corner, (0.0, 0.0, 1.0), BACK)
    end = (x, turn.end[1] + 144.0, corner[2])
    parts = (handmade.straight("straight-1", handmade.COLLAR, turn.start), turn,
             handmade.straight("straight-2", turn.end, end), handmade.cap(end, BACK))  # fmt: skip
    holes = tuple(hole("wall-board", x, turn.end[1] + far, corner[2]) for far in (10.0, 12.0, 13.0, 96.0, 144.0))
    return replace(handmade.back_route(), parts=parts, penetrations=holes, near=())


def notes(taken: TakeOff) -> list[str]:
    return [h.note for h in taken.holes]


def counted(route: Route, *findings: Finding) -> TakeOff:
    return count(route, samples.scene(), handmade.frame(), findings)


def test_each_hole_says_how_much_lower_it_must_be_once_the_clearance_does_not_cover_it() -> None:
    # 10/48 and 12/48 lie within the clearance of 1/4 in; 13/48 is 0.271, 96/48 is 2, 144/48 is 3
    lower = [f"for the run to fall, {w} lower than given here" for w in ("1/4 in", "2 in", "3 in")]
    assert notes(counted(level_run(), ASKED)) == ["", "", *lower]


def test_the_steps_say_it_too() -> None:
    steps = {s.id: s for s in counted(level_run(), ASKED).steps}
    assert "fall towards the cap, 3 in over its length" in steps["run"].text
    assert "lower than drawn" in steps["outside"].text
    x, y, _ = handmade.COLLAR
    roof = replace(level_run(), penetrations=(*level_run().penetrations, hole("deck", x, y, 120.0, (0.0, 0.0, 1.0))))
    assert "lower than drawn" not in next(s.text for s in counted(roof, ASKED).steps if s.id == "outside")
    plain = {s.id: s for s in counted(level_run()).steps}
    assert "fall" not in plain["run"].text + plain["outside"].text


def test_nothing_is_lowered_where_no_fall_is_asked_for() -> None:
    built = replace(level_run(), as_built=True, centreline=None)
    for route, findings in (
        (level_run(), ()), (level_run(), (replace(ASKED, waived=True),)), (level_run(), (replace(ASKED, state=State.FINE),)),
        (built, (ASKED,)),
    ):  # fmt: skip
        assert set(notes(counted(route, *findings))) == {""}


def test_the_fall_goes_on_round_a_level_elbow_and_begins_anew_after_a_riser() -> None:
    x, y, z = handmade.COLLAR
    right, up = (1.0, 0.0, 0.0), (0.0, 0.0, 1.0)
    first = handmade.straight("straight-1", (x, y, z), (x + 40.0, y, z))
    turn = handmade.elbow("elbow-1", (x + 48.0, y, z), right, BACK)  # arc 8 x 90 degrees
    back = handmade.straight("straight-2", turn.end, (x + 48.0, turn.end[1] + 20.0, z))
    rise = handmade.elbow("elbow-2", (x + 48.0, back.end[1] + 8.0, z), BACK, up)
    riser = handmade.straight("straight-3", rise.end, (x + 48.0, rise.end[1], rise.end[2] + 30.0))
    over = handmade.elbow("elbow-3", (x + 48.0, rise.end[1], riser.end[2] + 8.0), up, right)
    last = handmade.straight("straight-4", over.end, (over.end[0] + 48.0, over.end[1], over.end[2]))
    parts = (first, turn, back, rise, riser, over, last)
    assert [[p.id for p in s] for s in level_stretches(parts)] == [
        ["straight-1", "elbow-1", "straight-2"],
        ["straight-4"],
    ]
    route = replace(
        level_run(), parts=parts, penetrations=(hole("siding", *back.end), hole("sheathing", *last.end, right))
    )
    found = notes(counted(route, ASKED))
    # 40 + 12.566 + 20 = 72.566, a forty-eighth of it 1.512; then 48 in, 1 in
    assert found[0].endswith("1 1/2 in lower than given here")
    assert found[1].endswith("1 in lower than given here")


@pytest.mark.parametrize(
    ("unit", "asked", "board", "end"),
    [("in", "1/4 in per foot", "3 1/8 in", "3 3/16 in"), ("mm", "21 mm per metre", "79 mm", "81 mm")],
)
def test_across_a_cold_garage(unit: str, asked: str, board: str, end: str) -> None:
    """Its far wall's board is 1/2 + 3 1/2 + 5/8 + 144 = 148 5/8 in along, the run 153 13/16 in long: 3.096 and 3.204 in."""
    text = (SCENES / "garage_beyond.toml").read_text(encoding="utf-8")
    home = scenefile.loads(f"{text}\n[site]\ncold_climate = true\n")
    plan = pipeline.plan(replace(home, metric=unit == "mm"), alternatives=1)
    assert plan.best is not None
    (told,) = [f for f in plan.best.findings if f.code == "DCT-SLOPE"]
    assert f"at {asked} it falls {end} over that length" in told.detail
    lowered = {h.solid: h.note for h in plan.best.takeoff.holes if "to fall" in h.note}
    assert [note.rpartition("fall, ")[2].removesuffix(" lower than given here") for note in lowered.values()] == [
        board,
        end,
        end,
    ]
    assert all(name.startswith("garage-front") for name in lowered)
