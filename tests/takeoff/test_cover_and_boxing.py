"""A cover that the duct leaves is not bought and set as if it could be; duct in the open room is boxed in."""

from __future__ import annotations

from dataclasses import replace

import handmade
import pytest
import samples
from cases.homes import STACK, built, cap, elbow, one, straight

from routeviz import reports
from routeviz.model.finding import State
from routeviz.model.plan import Plan
from routeviz.model.route import Route
from routeviz.model.scene import SectionSize
from routeviz.model.takeoff import TakeOff
from routeviz.takeoff import count
from routeviz.units import length_text


def aside() -> Plan:
    """Up, then right under the ceiling and out: an 8 in duct that leaves a 12 in cover through its side."""
    return built(samples.scene(), straight(2.5), elbow("right"), straight(72.0), cap())


def straight_up() -> Plan:
    return built(samples.scene(), straight(60.0), cap())


def taken(plan: Plan) -> TakeOff:
    assert plan.best is not None
    return plan.best.takeoff


def covers(plan: Plan) -> list[str]:
    return [b.words for b in taken(plan).buy if b.item.startswith("chimney cover")]


def test_the_finding_says_how_far_outside_without_a_sign() -> None:
    told = one(aside(), "FIT-COVER-DUCT")
    assert told.state is State.BROKEN
    assert told.title == "Duct outside the chimney cover"
    assert told.measured is not None
    assert told.measured > 0
    assert (told.relation, told.limit) == ("at most", 0.0)
    inside = one(straight_up(), "FIT-COVER-DUCT")
    # a cover 13 in deep, the duct's middle 8 1/2 in out and its front 4 in further
    assert (inside.title, inside.measured, inside.relation) == ("Duct inside the chimney cover", 0.5, "at least")
    text = " ".join(reports.plan_text(aside(), width=300).split())
    assert "Duct outside the chimney cover: " in text
    assert "Duct outside the chimney cover: −" not in text


def test_a_cover_that_the_duct_leaves_is_not_bought_as_supplied() -> None:
    # ceiling 96, hood's top 77
    assert covers(aside()) == ["1 chimney cover, only if its maker lets its side be cut out, 19 in"]
    assert covers(straight_up()) == ["1 chimney cover, as supplied, 19 in"]


def test_nothing_counts_on_a_cover_that_is_left_off() -> None:
    route, scene, frame = handmade.back_route(), samples.scene(), handmade.frame()
    whole, without = (count(route, scene, frame, (one(plan, "FIT-COVER-DUCT"),)) for plan in (straight_up(), aside()))
    first, second = ({s.id: s.text for s in t.steps} for t in (whole, without))
    assert first["cover"] == "Set the cover to 19 in and fix it to its bracket."
    assert second["cover"].startswith("Leave the cover off: the duct passes through its side.")
    assert "bracket" in first
    assert "bracket" not in second
    assert {m.row for m in whole.marks} == {"upper", "bracket"}
    assert {m.row for m in without.marks} == {"upper"}
    assert not [b for b in without.buy if "bracket" in b.size]
    patches = [[b.note for b in t.buy if b.item == "board patch" and "duct" in b.note] for t in (whole, without)]
    assert patches == [[], ["wallboard 1/2 in, round the duct"]]  # the cover would have hidden the hole


def boxed(length_in: float, section: SectionSize, *, metric: bool = False) -> TakeOff:
    route: Route = replace(handmade.up_route(), boxed_in=length_in, section=section)
    scene = replace(samples.scene(), metric=metric)
    assert scene.duct.clearance_in == 0.25
    return count(route, scene, handmade.frame(), ())


@pytest.mark.parametrize(
    ("section", "length", "sides", "board", "strip"),
    [
        # 6 in, 1/4 in clear and a 3/4 in strip on both sides: 8 in; 4 x 8 x 74 = 2368 in2 = 16.4 sq ft; 4 x 74 in = 24.7 ft
        (samples.ROUND_6, 74.0, "8 x 8 in", 17, 25),
        # 12 and 5 1/4 in: 2 x 17 1/4 x 40 = 1380 in2 = 9.6 sq ft; 160 in = 13.3 ft
        (STACK, 40.0, "12 x 5 1/4 in", 10, 14),
        # 10 in: 4 x 10 x 36 = 1440 in2, ten square feet to the inch; 144 in, twelve feet
        (samples.ROUND_8, 36.0, "10 x 10 in", 10, 12),
    ],
)
def test_boxing_takes_four_strips_and_four_boards(
    section: SectionSize, length: float, sides: str, board: int, strip: int
) -> None:
    found = {b.item: b for b in boxed(length, section).buy if "boxing" in b.item}
    assert found["strip for the boxing"].words == f"{strip} ft of strip for the boxing, 1x2"
    assert found["board for the boxing"].words == f"{board} sq ft of board for the boxing, sides {sides}"


def test_boxing_in_metric() -> None:
    # 10 in is 254 mm; 4 x 0.254 x 0.9144 = 0.93 m2, told as 1 (tenths); 4 x 0.9144 = 3.7 m
    found = [b.words for b in boxed(36.0, samples.ROUND_8, metric=True).buy if "boxing" in b.item]
    assert found == [
        "4 m of strip for the boxing, 19 x 38 mm",
        "1 m² of board for the boxing, sides 254 x 254 mm",
    ]


def test_boxing_is_a_step_after_the_inspection() -> None:
    steps = boxed(74.0, samples.ROUND_6).steps
    names = [s.id for s in steps]
    assert names.index("inspect") < names.index("box") < names.index("test")
    (step,) = [s for s in steps if s.id == "box"]
    assert step.text.startswith("Box the duct in over 74 in: ")
    hidden = boxed(0.0, samples.ROUND_6)
    assert "box" not in [s.id for s in hidden.steps]
    assert not [b for b in hidden.buy if "boxing" in b.item]


def test_a_run_as_built_is_boxed_where_its_finding_found_it_open() -> None:
    told = one(aside(), "FIT-BOXING")
    assert told.measured is not None
    assert told.measured > 0
    route = replace(handmade.up_route(), as_built=True, boxed_in=0.0)
    steps = count(route, samples.scene(), handmade.frame(), (told,)).steps
    (step,) = [s for s in steps if s.id == "box"]
    assert f"over {length_text(told.measured)}:" in step.text
