"""The parts list by its rules: joints, hangers, ties, makeup air, cover, openings."""

from __future__ import annotations

import itertools
import math
from dataclasses import replace

import handmade
import pytest
import samples

from routeviz.model.finding import Finding, FramingPiece, MemberRuling, MemberVerdict, State
from routeviz.model.route import Penetration, Route
from routeviz.model.scene import Cover, MemberKind, Scene
from routeviz.model.solids import Box, Crossing, Frame, Member, Solid, SolidKind, Vec3
from routeviz.model.takeoff import BuyLine
from routeviz.takeoff import count
from routeviz.takeoff.hangers import hangers
from routeviz.takeoff.lumber import openings


def bought(word: str, route: Route | None = None, scene: Scene | None = None, frame: Frame | None = None,
           findings: tuple[Finding, ...] = ()) -> list[BuyLine]:  # fmt: skip
    taken = count(route or handmade.up_route(), scene or samples.scene(), frame or handmade.frame(), findings)
    return [b for b in taken.buy if word in b.item]


def test_three_screws_a_joint() -> None:
    # IMC 603.4.1: at least three; collar, elbow's two ends, cap
    assert [b.count for b in bought("screws", handmade.back_route()) if b.item == "sheet-metal screws"] == [12]


def test_tape_goes_round_each_joint() -> None:
    # 4 joints of pi x 8 in, with a quarter more for the lap, in whole feet
    feet = math.ceil(4 * math.pi * 8 * 1.25 / 12)
    assert bought("tape", handmade.back_route())[0].size == f"{feet} ft needed"


@pytest.mark.parametrize(
    ("length", "expected"),
    [(47.0, 1), (49.0, 2), (168.0, 2), (169.0, 3), (288.0, 3), (289.0, 4)],
)
def test_hangers_between_two_elbows(length: float, expected: int) -> None:
    """Within 24 in of each elbow (SMACNA) and at most 120 in apart (NREL): 24 + 120 n + 24."""
    up: Vec3 = (0.0, 0.0, 1.0)
    along: Vec3 = (1.0, 0.0, 0.0)
    first = handmade.elbow("elbow-1", (0.0, 0.0, 100.0), up, along)
    run = handmade.straight("straight-1", first.end, (first.end[0] + length, 0.0, 100.0))
    last = handmade.elbow("elbow-2", (run.end[0] + 8.0, 0.0, 100.0), along, up)
    placed = hangers(replace(handmade.back_route(), parts=(first, run, last)))
    assert len(placed) == expected
    at = [h.at_in for h in placed]
    assert at[0] <= 24.0
    assert length - at[-1] <= 24.0
    assert all(b - a <= 120.0 + 1e-9 for a, b in itertools.pairwise(at))


def test_makeup_air_above_400() -> None:
    # IRC M1503: "in excess of 400 cfm": 400 does not ask for it, 401 does
    def scene(flow: float) -> Scene:
        plain = samples.scene()
        return replace(plain, hood=replace(plain.hood, fan=replace(plain.hood.fan, rated_cfm=flow)))

    assert bought("makeup", scene=scene(400.0)) == []
    assert len(bought("makeup-air", scene=scene(401.0))) == 3
    waived = Finding(
        "AIR-MAKEUP", "makeup air", State.DOES_NOT_APPLY, False, 401.0, "at most", 400.0, -1.0, "cfm", "x", "x"
    )
    assert bought("makeup", scene=scene(401.0), findings=(waived,)) == []


@pytest.mark.parametrize(
    ("low", "high", "item", "words"),
    [
        (16.0, 34.0, "chimney cover, as supplied", "no cut"),
        (20.0, 34.0, "chimney cover, cut", "cut 1 in off"),
        (10.0, 17.5, "chimney cover extension", "1 1/2 in more"),
    ],
)
def test_chimney_cover(low: float, high: float, item: str, words: str) -> None:
    # ceiling 96, underside 66, body 11: the cover fills 19 in
    plain = samples.scene()
    scene = replace(plain, hood=replace(plain.hood, cover=Cover(low, high, 12.0, 11.0)))
    (line,) = bought("chimney cover", scene=scene)
    assert (line.item, line.size) == (item, "19 in")
    assert words in line.note


def through_plate(scene_plate_bearing: bool) -> tuple[Route, Frame]:
    frame = handmade.frame()
    plate = replace(frame.solid("plate-2"), id="plate-x", shape=Box((0.0, -11.25, 97.0), (144.0, -5.75, 98.5)))
    assert plate.member is not None
    plate = replace(plate, member=replace(plate.member, bearing=scene_plate_bearing, exterior=scene_plate_bearing))
    x, y, _ = handmade.COLLAR
    hole = Penetration("plate-x", "plate", "wood", (x, y, 97.0), (x, y, 98.5), (0.0, 0.0, 1.0), 1.5, "round",
                       (8.0, 8.0), (8.5, 8.5))  # fmt: skip
    return replace(handmade.up_route(), penetrations=(hole,)), replace(frame, solids=(*frame.solids, plate))


def test_plate_tie_past_the_opening() -> None:
    # R602.6.1: more than half of the width is cut; the tie reaches 6 in past the opening on each side: 8 1/2 + 12
    route, frame = through_plate(True)
    (tie,) = bought("tie", route, frame=frame)
    assert (tie.size, tie.count) == ("20 1/2 in", 1)
    route, frame = through_plate(False)
    assert bought("tie", route, frame=frame) == []


def test_joist_opening_spans_two_bays() -> None:
    y = handmade.COLLAR[1]
    hole = Penetration("joist-4", "joist 4", "wood", (62.0, y, 98.0), (62.0, y, 103.0), (0.0, 0.0, 1.0), 5.0, "round",
                       (8.0, 8.0), (8.5, 8.5))  # fmt: skip
    route = replace(handmade.up_route(), penetrations=(hole,))
    (opening,) = openings(route, handmade.frame())
    # between joists 3 and 5 at 16 in on centre: 2 x 14 1/2 + 1 1/2
    assert (opening.header_in, opening.plies, opening.nominal) == (30.5, 1, "2x8")
    (line,) = bought("lumber", route)
    assert (line.count, line.size) == (2, "30 1/2 in")


def test_a_ruling_replaces_the_general_rule() -> None:
    y = handmade.COLLAR[1]
    hole = Penetration("joist-4", "joist 4", "wood", (62.0, y, 98.0), (62.0, y, 103.0), (0.0, 0.0, 1.0), 5.0, "round",
                       (8.0, 8.0), (8.5, 8.5))  # fmt: skip
    route = replace(handmade.up_route(), penetrations=(hole,))
    ruling = MemberRuling("joist-4", "joist 4", MemberVerdict.NOT_ALLOWED, "STR-01", "", "hole", 2.4, 8.0, "x", "x",
                          (FramingPiece("header", "2x8", 30.5, 2),))  # fmt: skip
    finding = Finding("STR-01", "joist 4 cut", State.BROKEN, True, 8.0, "at most", 2.4, -5.6, "in", "x", "x", ("joist-4",),
                      ruling=ruling)  # fmt: skip
    taken = count(route, samples.scene(), handmade.frame(), (finding,))
    assert [(b.item, b.size, b.count) for b in taken.buy if "header" in b.item] == [("header", "2x8, 30 1/2 in", 2)]
    assert not any("lumber" in b.item for b in taken.buy)
    assert taken.steps[0].id == "settle"


def test_fireblock_once_a_level() -> None:
    frame = handmade.frame()
    member = Member(MemberKind.SAWN, "", 0.0, 0.0, 0)
    floor = Solid("subfloor", SolidKind.SUBFLOOR, "subfloor", Box((0.0, -132.0, 103.875), (144.0, 0.0, 104.625)),
                  Crossing.PASS, "test", member)  # fmt: skip
    x, y, _ = handmade.COLLAR
    up = handmade.up_route()
    hole = Penetration("subfloor", "subfloor", "wood", (x, y, 103.875), (x, y, 104.625), (0.0, 0.0, 1.0), 0.75, "round",
                       (8.0, 8.0), (8.5, 8.5))  # fmt: skip
    route = replace(up, penetrations=(up.penetrations[0], hole))
    (line,) = bought("fireblocking", route, frame=replace(frame, solids=(*frame.solids, floor)))
    assert line.count == 2


def test_a_framed_stud_opens_the_board_from_stud_to_stud() -> None:
    # header span between studs 4 and 6: 30 1/2 in; hole 8 1/2 + two headers of 5 1/2 + 2 in over and under
    back = handmade.back_route()
    y = 64.75
    stud = Penetration("stud-5", "stud 5", "wood", (y, 0.5, 88.5), (y, 6.0, 88.5), (0.0, 1.0, 0.0), 5.5, "round",
                       (8.0, 8.0), (8.5, 8.5))  # fmt: skip
    route = replace(back, penetrations=(*back.penetrations, stud))
    (patch,) = bought("board patch", route)
    assert patch.size == "30 1/2 x 23 1/2 in"


def test_siding_gets_a_mounting_block_and_a_larger_hole() -> None:
    taken = count(handmade.back_route(), samples.scene(), handmade.frame())
    block = next(b for b in taken.buy if "mounting block" in b.item)
    # flange: duct and 4 in; siding of 3/4 in
    assert block.size == "12 x 12 in, 3/4 in thick or more"
    assert [b.size for b in taken.buy if "channel" in b.item] == ["48 in"]
    sizes = {h.layer: (h.shape, h.size_in) for h in taken.holes}
    assert sizes["wood lap siding"] == ("rectangular", (12.0, 12.0))
    assert sizes["OSB sheathing"] == ("round", (8.5, 8.5))


def test_masonry_gets_a_hole_an_inch_larger_and_a_sleeve_with_mortar_round_it() -> None:
    frame = handmade.frame()
    brick = Solid(
        "brick", SolidKind.MASONRY, "brick", Box((0.0, 0.5, 0.0), (144.0, 7.1875, 104.0)), Crossing.PASS, "test"
    )
    framed = replace(frame, solids=(*frame.solids, brick))
    back = handmade.back_route()
    hole = Penetration("brick", "brick", "masonry", (70.0, 0.5, 88.5), (70.0, 7.1875, 88.5), (0.0, 1.0, 0.0), 6.6875, "round",
                       (8.0, 8.0), (8.5, 8.5))  # fmt: skip
    taken = count(replace(back, penetrations=(hole,)), samples.scene(), framed)
    assert taken.holes[0].size_in == (9.0, 9.0)
    assert [b.size for b in taken.buy if b.item == "sleeve"] == [
        "8 1/2 in round, 6 11/16 in long"
    ]  # 1/4 in of mortar (common practice)


def test_planned_makeup_air_is_still_bought() -> None:
    plain = samples.scene()
    fine = Finding("AIR-MAKEUP", "Makeup air", State.FINE, True, 600.0, "", None, None, "cfm", "x", "x")
    scene = replace(plain, hood=replace(plain.hood, fan=replace(plain.hood.fan, rated_cfm=600.0)),
                    rules=replace(plain.rules, makeup_air=True))  # fmt: skip
    assert len(bought("makeup-air", scene=scene, findings=(fine,))) == 3


def test_a_deep_cap_takes_more_duct() -> None:
    def last(route: Route, overlap: float | None) -> float:
        plain = samples.scene()
        return (
            count(route, replace(plain, cap=replace(plain.cap, overlap_in=overlap)), handmade.frame()).cuts[-1].cut_in
        )

    # wall: 7 11/16 showing, and 1 1/2 or 3 into the cap; roof: the stub of 8 in holds any shorter overlap
    assert last(handmade.back_route(), None) == pytest.approx(7.6875 + 1.5)
    assert last(handmade.back_route(), 3.0) == pytest.approx(7.6875 + 3.0)
    assert last(handmade.up_route(), 3.0) == last(handmade.up_route(), None)
