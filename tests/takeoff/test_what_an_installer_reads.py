"""What steps, parts and notes say on the wall: where to open, which edge is clear, which joint is made when."""

from __future__ import annotations

from dataclasses import replace
from functools import cache
from pathlib import Path

import handmade
import pytest
import samples
from cases.homes import MM, built, cap, straight, with_wall

from routeviz import pipeline, scenefile
from routeviz.drawings import sheets
from routeviz.drawings.primitives import Text
from routeviz.model.plan import Option, Plan
from routeviz.model.route import Penetration
from routeviz.model.scene import Fastener, Layer, MemberKind, MemberLayout, Scene, WallFrame, WallSide
from routeviz.model.solids import Box, Crossing, Frame, Solid, SolidKind
from routeviz.model.takeoff import Mark, Step
from routeviz.takeoff import marks_of
from routeviz.takeoff.backing import backing
from routeviz.takeoff.beside import beside
from routeviz.takeoff.joining import of_step, screws_at

SCENES = Path(__file__).parents[2] / "scenes"
BLOCKED = {"joist_dead_centre", "lot_line_close", "soffit_vent_cap", "stud_dead_centre"}  # these have no way out
NAMES = sorted({p.stem for p in SCENES.glob("*.toml")} - BLOCKED)


@cache
def planned(name: str) -> Plan:
    return pipeline.plan(scenefile.load(SCENES / f"{name}.toml"))


def best(name: str) -> Option:
    option = planned(name).best
    assert option is not None
    return option


def step(name: str, step_id: str) -> Step:
    (found,) = [s for s in best(name).takeoff.steps if s.id == step_id]
    return found


def page_words(plan: Plan, name: str, *, template: bool = False) -> list[list[str]]:
    pages = [p for p in sheets(plan, template=template) if str(p.name) == name]
    return [[t.text for t in page.items if isinstance(t, Text)] for page in pages]


# strips ---------------------------------------------------------------------------------------------------------------
def test_the_ceilings_strip_is_opened_from_the_elbow_to_the_wall() -> None:
    (line,) = [b for b in best("side_wall_storey_above").takeoff.buy if b.item == "board to open and patch"]
    # the riser stands at 72 in, 6 in wide and 1/4 in clear: from 68 3/4; the kitchen ends at 144 in: 75 1/4
    assert line.size == "16 x 75 1/4 in"
    assert line.note.endswith("from 68 3/4 in to 144 in from the left wall")
    assert "from 68 3/4 in to 144 in from the left wall" in step("side_wall_storey_above", "open").text


# holes ----------------------------------------------------------------------------------------------------------------
def member(solid_id: str, lo: tuple[float, float, float], hi: tuple[float, float, float]) -> Solid:
    return Solid(solid_id, SolidKind.STUD, solid_id.replace("-", " "), Box(lo, hi), Crossing.RULE, "test")


def wall_hole(wide: float) -> Penetration:
    return Penetration("board", "board", "board", (56.75, 0.0, 73.0), (56.75, 0.5, 73.0), (0.0, 1.0, 0.0), 0.5, "round",
                       (6.0, 6.0), (wide, wide))  # fmt: skip


@pytest.mark.parametrize(
    ("wide", "words"),
    [
        (
            6.5,
            "edge 4 in clear of studs 4 and 5",
        ),  # studs end at 49 1/2 and begin at 64; the edges are at 53 1/2 and 60
        (14.5, "edge touching studs 4 and 5"),
        (16.0, "edge 3/4 in over studs 4 and 5"),
    ],
)
def test_a_hole_tells_its_own_edge_and_not_the_ducts(wide: float, words: str) -> None:
    studs = (
        member("stud-4", (48.0, 0.5, 1.5), (49.5, 4.0, 93.0)),
        member("stud-5", (64.0, 0.5, 1.5), (65.5, 4.0, 93.0)),
    )
    frame = replace(handmade.frame(), solids=studs)
    assert beside(wall_hole(wide), (wide, wide), 1, frame, frozenset(), metric=False) == words


def test_what_stands_at_another_level_is_not_beside_a_hole() -> None:
    # a stud of the storey above begins 33 in over the hole's middle; one that the duct cuts is no neighbour
    high, cut = (
        member("stud-9", (48.0, 0.5, 106.0), (49.5, 4.0, 200.0)),
        member("stud-1", (56.0, 0.5, 0.0), (57.5, 4.0, 96.0)),
    )
    frame = replace(handmade.frame(), solids=(high, cut))
    assert beside(wall_hole(6.5), (6.5, 6.5), 1, frame, frozenset({"stud-1"}), metric=False) == ""


def test_a_roofs_hole_stands_between_rafters_and_a_ceilings_between_joists() -> None:
    ceiling, *roof = best("juniper_straight_up").takeoff.holes
    assert ceiling.member == "edge 3 in clear of joists 4 and 5"
    assert {h.member for h in roof} == {"edge 3 in clear of rafters 4 and 5, back slope"}
    assert best("truss_in_front").takeoff.holes[0].member.startswith("edge touching truss 1 bottom chord")


# joints ---------------------------------------------------------------------------------------------------------------
@pytest.mark.parametrize("name", NAMES)
def test_screws_are_counted_where_a_step_drives_them(name: str) -> None:
    plan, option = planned(name), best(name)
    steps = {s.id: s.text for s in option.takeoff.steps}
    if "compare" in steps:
        return  # a run to be mended: its joints are there
    driven = {
        where
        for where, step_id in (("run", "seal"), ("cap", "cap"), ("hood", "connect"))
        if " screws" in steps.get(step_id, "")
    }
    screws = sum(screws_at(j.section) for where in driven for j in of_step(option.route, plan.scene, plan.frame, where))
    assert [b.count for b in option.takeoff.buy if b.item == "sheet-metal screws"] == [screws]
    order = list(steps)
    assert order.index("run") < order.index("cap") < order.index("lift") < order.index("connect")
    if "seal" in steps:
        assert order.index("run") < order.index("seal") < order.index("cap")


def test_a_collar_that_goes_back_into_the_wall_takes_no_screw() -> None:
    (line,) = [b for b in best("rear_outlet_straight_back").takeoff.buy if b.item == "sheet-metal screws"]
    assert line.count == 3  # the cap's joint alone, at least three (IMC 603.4.1)
    assert "the hood's collar is sealed without" in line.note


# cautions -------------------------------------------------------------------------------------------------------------
@pytest.mark.parametrize("name", NAMES)
def test_whoever_stands_on_a_roof_is_told_to_be_held_there(name: str) -> None:
    option = best(name)
    roof = str(option.route.termination.kind) == "roof"
    for s in option.takeoff.steps:
        if s.id in ("outside", "cap"):
            assert ("fall protection" in s.caution) == roof


def test_work_over_ten_feet_names_a_scaffold() -> None:
    high = {s.id for s in best("cathedral_roof").takeoff.steps if "scaffold" in s.caution}
    # the hole at 198 in, the bracket at 188 and 205, the cover's top at 208
    assert {"inside", "bracket", "backing", "cover", "run"} <= high
    assert not high & {"screws", "lift", "connect", "cap", "outside"}  # 75 1/2 in up, or on the roof
    assert "198 in above the floor" in step("cathedral_roof", "inside").caution
    assert not [s for s in best("juniper_straight_up").takeoff.steps if "scaffold" in s.caution]


def test_a_hood_too_heavy_for_two_is_nowhere_given_to_two() -> None:
    words = " ".join(w for page in page_words(planned("cathedral_roof"), "order of work") for w in page)
    assert "two people for the hood" not in words
    assert "as many hands for the hood as its step says" in words
    taken = best("cathedral_roof").takeoff
    (screw,) = [b for b in taken.buy if b.size == "for the hood"]
    assert "the maker's fixing for 330 lb decides" in screw.note
    assert all(m.holds.endswith("the maker's fixing decides") for m in taken.marks if m.row != "bracket")


# sheets ---------------------------------------------------------------------------------------------------------------
def cells(plan: Plan, text: str, *, template: bool = False) -> list[str]:
    """Give what stands in the last column beside a step."""
    found: list[str] = []
    for page in sheets(plan, template=template):
        texts = [t for t in page.items if isinstance(t, Text)]
        for start in [t for t in texts if str(page.name) == "order of work" and t.text.startswith(text)]:
            row = [t for t in texts if abs(t.at[1] - start.at[1]) < 0.1]
            found.append(max(row, key=lambda t: t.at[0]).text)
    return found


def test_the_cut_list_and_the_supply_are_looked_up_where_they_stand() -> None:
    plan = planned("cathedral_roof")
    pages = list(sheets(plan))
    cuts = [n for n, p in enumerate(pages, 1) if any(isinstance(t, Text) and t.text == "To cut" for t in p.items)]
    marking = [n for n, p in enumerate(pages, 1) if str(p.name) == "marking"]
    assert cells(plan, "Cut the straights") == [str(n) for n in cuts]
    assert cells(plan, "Bring the hood's supply") == [str(n) for n in marking]


def test_the_marks_name_the_template_where_it_is_made() -> None:
    plan = planned("juniper_straight_up")
    plain, made = len(sheets(plan)), len(sheets(plan, template=True))
    assert made > plain
    (named,) = cells(plan, "Draw the plumb centre line", template=True)
    assert named.endswith("; template")
    assert cells(plan, "line 66 in above the floor", template=True) == [f"{plain + 1} to {made}"]
    assert "template" not in cells(plan, "Draw the plumb centre line")[0]


@pytest.mark.parametrize("name", NAMES)
def test_what_is_measured_first_stands_first(name: str) -> None:
    lines = best(name).takeoff.measure_first
    known = [m for m in lines if not m.assumed_only]
    assert list(lines[len(lines) - len(known) :]) == known
    room = [m.slack_in - m.tolerance_in for m in known]
    assert room == sorted(room)
    told = " ".join(w for page in page_words(planned(name), "measure first") for w in page)
    assert "what nobody measured comes first, then what has the least room" in told
    assert "column" not in told


def test_what_is_measured_can_be_read_before_the_hood_hangs() -> None:
    lines = {m.what: m for m in best("side_wall_storey_above").takeoff.measure_first}
    assert not {
        "Canopy above the cooktop",
        "Chimney cover between hood and ceiling",
        "Duct inside the chimney cover",
    } & set(lines)
    # underside 66 in over the floor, body 11 in and a cover of at least 14 in: 91 in
    assert lines["Ceiling above the floor over the hood"].changes_at == "less than 91 in"
    # canopy 24 to 36 in over a cooktop that is 36 in high, under a line that stays at 66 in
    assert set(lines["Cooktop above the floor"].changes_at.split(" or ")) == {"more than 42 in", "less than 30 in"}
    # a cover 12 x 13 in; the duct's front is at 8 3/4 + 3 = 11 3/4 in
    assert lines["Chimney cover's inside, unpacked: width and depth"].changes_at == "less than 11 3/4 in deep"
    words = " ".join(lines)
    assert "joist 1, face towards the room" in words
    assert "joist 2, face towards the hood wall" in words


# walls with a gap -----------------------------------------------------------------------------------------------------
def test_a_screw_that_would_bridge_a_gap_is_packed_and_long_enough() -> None:
    taken = best("furring_strip_brick").takeoff
    hood = [m for m in taken.marks if m.row != "bracket"]
    # 3/4 in of plaster, a gap of 2 in, 1 1/2 in in the brick (common practice) and 1/4 in proud: 4 1/2 in
    assert {(m.gap_in, m.screw) for m in hood} == {(2.0, "1/4 x 4 1/2 in screw")}
    assert all("behind a 2 in gap: pack the gap first" in m.holds for m in hood)
    items = {b.item: b for b in taken.buy}
    assert (items["packing block"].size, items["packing block"].count) == ("6 x 6 in, 2 in thick", 4)
    assert items["1/4 x 4 1/2 in screw"].count == 2
    assert "1/4 x 4 1/2 in screw" in step("furring_strip_brick", "pack").text
    order = [s.id for s in taken.steps]
    assert order.index("look") < order.index("strip") < order.index("outside")
    assert order.index("pack") < order.index("patch") < order.index("screws")
    strip = step("furring_strip_brick", "strip").text
    assert strip.index("Open the wall's face") < strip.index("then cut it")
    assert "no member but furring strip 4" in step("furring_strip_brick", "look").hold
    assert "plaster that was opened" in step("furring_strip_brick", "patch").text


def test_plaster_straight_on_masonry_needs_no_packing() -> None:
    taken = best("metric_concrete_ceiling").takeoff
    # 15 mm of plaster, 40 mm in the wall, 6 mm proud: 61 mm, and screws are sold in tens
    assert {(m.gap_in, m.screw) for m in taken.marks if m.row != "bracket"} == {(0.0, "6 x 70 mm screw")}
    assert not [b for b in taken.buy if b.item == "packing block"]


@pytest.mark.parametrize(("name", "hole", "sleeve"), [("furring_strip_brick", "7 in", "6 1/2 in"), ("metric_concrete_ceiling", "175 mm", "160 mm")])  # fmt: skip
def test_the_hole_is_larger_than_its_sleeve(name: str, hole: str, sleeve: str) -> None:
    (line,) = [b for b in best(name).takeoff.buy if b.item == "sleeve"]
    assert line.size.startswith(f"{sleeve} round")
    assert f"in a hole of {hole} round" in line.note
    assert "of mortar all round" in line.note
    assert f"Set the sleeve, {sleeve} round" in step(name, "sleeve").text
    assert f"Core-drill {hole} round" in step(name, "outside").text


def test_the_core_goes_through_what_lies_on_the_masonry_and_nothing_else() -> None:
    assert "masonry, along the pilot" in step("furring_strip_brick", "outside").text
    assert "masonry and the gypsum plaster and cement render on it" in step("metric_concrete_ceiling", "outside").text
    for name in ("furring_strip_brick", "metric_concrete_ceiling"):
        notes = {h.outside for h in best(name).takeoff.holes if h.outside}
        assert notes == {"drill the pilot through from inside, then cut from both faces"}


# backing --------------------------------------------------------------------------------------------------------------
def rowed(*rows: tuple[float, float]) -> tuple[Scene, Frame, tuple[Mark, ...]]:
    """Give a kitchen whose hood hangs by screws at (off the centre line, over the underside), and its marks."""
    plain = samples.scene()
    holes = tuple(Fastener(across, up) for across, up in rows)
    scene = replace(plain, hood=replace(plain.hood, centre_in=72.75, cover=None, fasteners=holes))
    return scene, handmade.frame(), marks_of(scene, handmade.frame())


@pytest.mark.parametrize(("lower", "pieces"), [(9.0, 1), (8.25, 1), (8.0, 2), (2.0, 2)])
def test_rows_too_far_apart_for_one_board_get_two(lower: float, pieces: int) -> None:
    # a 2x8 is 7 1/4 in deep; with an inch left over and under the screws it holds 5 1/4 in of height
    scene, frame, marks = rowed((-2.0, 13.5), (2.0, lower))
    assert len(backing(scene, frame, marks)) == pieces


def test_a_mark_at_a_studs_edge_gets_a_board_that_is_bought_and_set() -> None:
    taken = best("side_wall_storey_above").takeoff
    (plywood,) = [b for b in taken.buy if b.item == "plywood across backing and stud"]
    assert (plywood.count, plywood.size) == (2, "12 x 7 1/4 in, as thick as the board")
    words = step("side_wall_storey_above", "backing").text
    assert "screw plywood" in words
    # screws 75 1/2 in up; the board is opened 2 in past a 2x8 above and below
    assert "11 1/4 in high, its middle 75 1/2 in (S1 S2) above the floor" in words


# the rest -------------------------------------------------------------------------------------------------------------
def test_straps_say_where_and_speak_of_elbows_only_where_there_are_any() -> None:
    straps = {
        n: [b for b in best(n).takeoff.buy if b.item.startswith("duct strap")] for n in NAMES if n != "lot_line_close"
    }
    assert straps["big_fan_small_duct"] == []  # 9 3/4 in from an elbow to the wall that holds it
    (riser,) = straps["juniper_straight_up"]
    assert riser.note == "at 100 5/16 in above the floor"  # half of 43.57 in over the collar at 78 1/2
    assert "elbow" not in "".join(b.note for b in straps["garage_beyond"])
    (run,) = straps["side_wall_storey_above"]
    assert run.note == "at 102 in from the left wall; within 2 ft of each elbow"  # the run begins at 78 in


def test_what_is_closed_round_the_duct_is_bought() -> None:
    for name in NAMES:
        option = best(name)
        told = [s.text for s in option.takeoff.steps if s.id == "fireblock"]
        bought = [b for b in option.takeoff.buy if b.item.startswith("fireblocking")]
        if told:
            assert bought, name
        if any("sealant" in t for t in told):
            assert any(b.item == "fireblocking sealant" for b in bought), name
    (seal,) = [b for b in best("garage_beyond").takeoff.buy if b.item == "fireblocking sealant"]
    assert "a fire separation" in seal.note


def test_only_members_that_are_cut_are_inspected() -> None:
    assert "cut members" not in step("juniper_straight_up", "inspect").text
    assert "cut members" in step("side_wall_storey_above", "inspect").text  # the rim joist


def test_anchors_come_with_their_screws() -> None:
    for name in NAMES:
        option = best(name)
        lines = {b.item: b.count for b in option.takeoff.buy}
        for item in {m.fastener for m in option.takeoff.marks if not m.wood and not m.backed}:
            screws = {m.screw for m in option.takeoff.marks if m.fastener == item}
            assert screws
            assert sum(lines[s] for s in screws) >= lines[item]


def test_a_hood_that_hangs_is_not_marked_and_the_run_is_mended_in_the_order_of_the_work() -> None:
    taken = best("as_built_flex_in_attic").takeoff
    assert taken.marks == ()
    assert not [b for b in taken.buy if "backing" in b.item or b.size == "for the hood" or "cover" in b.item]
    titles = [s.text.partition(":")[0] for s in taken.steps if s.id.startswith("mend-")]
    assert titles == ["Length of the duct", "Ends inside the attic", "Flexible duct, not smooth inside", "Screws at each joint",
                      "No backdraft damper"]  # fmt: skip
    words = " ".join(w for page in page_words(planned("as_built_flex_in_attic"), "findings and sources") for w in page)
    assert "attic: ends inside" not in words
    assert "left over" not in " ".join(b.note for b in taken.buy)


def test_square_is_called_square() -> None:
    words = [w for page in page_words(planned("rear_outlet_straight_back"), "holes") for w in page]
    assert any("10 x 10 in square" in " ".join(words[k : k + 2]) for k in range(len(words)))
    assert not any("rectangular" in w for w in words)


@pytest.mark.parametrize("frame", [WallFrame.MASONRY, WallFrame.CONCRETE])
def test_metric_walls_keep_round_measures(frame: WallFrame) -> None:
    scene = replace(with_wall(samples.scene(), WallSide.HOOD, frame=frame, studs=None, core_in=250 * MM, openings=(),
                              inside=(Layer("gypsum plaster", 15 * MM),), outside=()), metric=True)  # fmt: skip
    plan = built(replace(scene, kitchen=replace(scene.kitchen, ceiling_in=2500 * MM)), straight(60.0), cap())
    bracket = [m for m in marks_of(plan.scene, plan.frame) if m.row == "bracket"]
    # 3 mm under the ceiling and 25 mm from the bracket's edge to its screws
    assert {round(m.height_in / MM, 6) for m in bracket} == {2472.0}


def test_a_metric_lintel_rule_of_our_own_is_round() -> None:
    told = [f for f in planned("metric_concrete_ceiling").findings + best("metric_concrete_ceiling").findings
            if f.code == "MBR-MASONRY"]  # fmt: skip
    assert told
    assert {round((f.limit or 0.0) / MM, 6) for f in told} == {400.0}


def test_a_strip_behind_a_mark_packs_the_gap_itself() -> None:
    strips = MemberLayout(MemberKind.FURRING, "1x2", 1.5, 2.0, 16.0, 8.0)
    plain = with_wall(samples.scene(), WallSide.HOOD, frame=WallFrame.MASONRY, studs=strips, core_in=8.0, openings=(),
                      inside=(Layer("air gap 2 in", 2.0), Layer("lath and plaster 3/4 in", 0.75)), outside=())  # fmt: skip
    hood = replace(plain.hood, centre_in=72.0, cover=None, fasteners=(Fastener(0.0, 9.5), Fastener(8.0, 9.5)))
    plan = built(replace(plain, hood=hood), straight(60.0), cap())
    on_strip, between = marks_of(plan.scene, plan.frame)
    assert (on_strip.gap_in, between.gap_in) == (0.0, 2.0)  # strips stand at 8 + 16 n: one at 72
    assert on_strip.screw == between.screw  # as long: the strip is as thick as the gap
