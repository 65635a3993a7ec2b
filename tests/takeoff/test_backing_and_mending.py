"""Backing behind screws that meet no wood, and the steps that mend a run which stands already."""

from __future__ import annotations

from dataclasses import replace

import handmade
import pytest
import samples

from routeviz.model.finding import Finding, State
from routeviz.model.route import PartKind, Route
from routeviz.model.scene import Fastener, Scene, WallFrame, WallSide
from routeviz.model.solids import Frame, SolidKind
from routeviz.takeoff import count, marks_of
from routeviz.takeoff.backing import backing, needs_backing
from routeviz.takeoff.marks import hood_marks
from routeviz.takeoff.mending import mending_steps

# Studs of the hand-made wall: middles at 3/4 + 16 n, 1 1/2 in wide, so 48 to 49 1/2, 64 to 65 1/2, 80 to 81 1/2, 96 to 97 1/2.
BAY = 14.5  # 16 in less a stud


def kitchen(centre_in: float, *across_in: float, frame: WallFrame = WallFrame.WOOD) -> Scene:
    plain = samples.scene()
    hood = replace(plain.hood, centre_in=centre_in, cover=None, fasteners=tuple(Fastener(a, 13.5) for a in across_in))
    walls = tuple(replace(w, frame=frame) if w.side is WallSide.HOOD else w for w in plain.walls)
    return replace(plain, hood=hood, walls=walls)


def pieces(scene: Scene, frame: Frame | None = None) -> list[tuple[float, float, tuple[str, ...]]]:
    framed = frame or handmade.frame()
    return [(b.left_in, b.right_in, b.marks) for b in backing(scene, framed, hood_marks(scene, framed))]


def test_two_screws_in_wood_need_no_backing() -> None:
    # 72 3/4 - 8 and + 8 are the middles of studs 5 and 6; at least two in wood is common practice
    assert pieces(kitchen(72.75, -8.0, 8.0)) == []
    assert pieces(kitchen(72.75, -8.0, 0.0, 8.0)) == []  # the third is an anchor


def test_one_screw_in_wood_gets_backing_for_the_others() -> None:
    assert pieces(kitchen(72.75, -8.0, 3.0)) == [(65.5, 80.0, ("S2",))]


def test_each_bay_gets_one_piece_however_many_screws_it_holds() -> None:
    # 62 1/4; 67 1/4 and 78 1/4; 83 1/4: three bays, none of the four in a stud
    scene = kitchen(72.75, -10.5, -5.5, 5.5, 10.5)
    assert pieces(scene) == [(49.5, 64.0, ("S1",)), (65.5, 80.0, ("S2", "S3")), (81.5, 96.0, ("S4",))]
    assert all(b - a == BAY for a, b, _ in pieces(scene))
    taken = count(handmade.up_route(), scene, handmade.frame())
    lumber = [b for b in taken.buy if b.item == "backing between two studs"]
    assert [(b.size, b.count, b.note) for b in lumber] == [("2x8, 14 1/2 in", 3, "behind marks S1 S2 S3 S4")]
    # a 2x8 is 7 1/4 in deep as dressed (PS 20), and the board is taken 2 in past it above and below (common practice)
    boards = [b for b in taken.buy if b.note == "over the backing of S1 S2 S3 S4"]
    assert [(b.size, b.count) for b in boards] == [("14 1/2 x 11 1/4 in", 3)]


def test_a_screw_at_the_edge_of_a_stud_is_not_in_wood() -> None:
    # stud 5 begins at 64: an eighth inside is less than the quarter that counts (common practice)
    scene = kitchen(72.125, -8.0, 3.0)
    (mark, _) = hood_marks(scene, handmade.frame())
    assert not mark.wood
    assert mark.holds == "board only: stud 5 is too near its edge here"
    assert needs_backing(scene, hood_marks(scene, handmade.frame()))
    drilled = marks_of(scene, handmade.frame())[0]
    assert drilled.holds == "backing, let in first; it meets stud 5 here: plywood across both"
    assert drilled.fastener == "1/4 x 3 in wood screw"
    assert drilled.pilot_in == 3 / 16


def test_without_studs_the_room_ends_the_bay() -> None:
    framed = handmade.frame()
    bare = replace(framed, solids=tuple(s for s in framed.solids if s.kind is not SolidKind.STUD))
    assert pieces(kitchen(72.75, 3.0), bare) == [(0.0, 144.0, ("S1",))]


@pytest.mark.parametrize("wall", [WallFrame.MASONRY, WallFrame.CONCRETE, WallFrame.LOG])
def test_a_solid_wall_needs_none(wall: WallFrame) -> None:
    assert pieces(kitchen(72.75, -10.5, 10.5, frame=wall)) == []


def test_backing_is_let_in_before_the_boards_are_patched_and_the_screws_driven() -> None:
    taken = count(handmade.up_route(), kitchen(72.75, -10.5, 10.5), handmade.frame())
    place = {s.id: n for n, s in enumerate(taken.steps)}
    assert place["look"] < place["backing"] < place["inspect"] < place["patch"] < place["screws"]
    screws = taken.steps[place["screws"]].text
    assert "anchors" not in screws  # they meet the backing
    none = count(handmade.up_route(), kitchen(72.75, -8.0, 0.0, 8.0), handmade.frame())
    assert "backing" not in {s.id for s in none.steps}
    assert "set anchors where a mark says so" in next(s.text for s in none.steps if s.id == "screws")


def finding(code: str, title: str, state: State, remedy: str = "", *, waived: str = "") -> Finding:
    return Finding(code, title, state, True, None, "", None, None, "", "x", "x", remedy=remedy, waived=waived)


FOUND = (
    finding("DCT-SMOOTH", "Smooth duct", State.BROKEN, "replace the flexible duct."),
    finding("TRM-OUT", "Ends outdoors", State.BROKEN),
    finding("ELB-COUNT", "Elbows", State.BROKEN, "take one out", waived="the owner knows"),
    finding("CLR-DUCT", "Clear of joist 4", State.CLOSE, "shift it"),
)


def test_each_broken_finding_has_its_step_in_order() -> None:
    steps = mending_steps(FOUND, handmade.back_route())
    assert [s.id for s in steps] == ["compare", "mend-1", "mend-2", "inspect", "patch"]
    # where it runs is settled before what it is made of, whatever the findings' order
    assert steps[1].text == "Ends outdoors: see its finding."
    assert steps[2].text == "Smooth duct: Replace the flexible duct."
    assert "a wall or a roof may have to be cut" in steps[1].caution.lower()
    assert steps[2].caution == ""
    assert [s.after for s in steps[1:]] == [("compare",), ("mend-1",), ("mend-2",), ("inspect",)]


def test_nothing_broken_leaves_looking_and_closing() -> None:
    assert [s.id for s in mending_steps(FOUND[2:], handmade.back_route())] == ["compare", "inspect", "patch"]


def as_built(route: Route) -> Route:
    return replace(route, as_built=True)


def hose(route: Route) -> Route:
    """The same run with its last 31 in of hose, and no cap."""
    parts = [p for p in route.parts if p.kind is not PartKind.CAP]
    last = replace(parts[-1], kind=PartKind.FLEX, length_in=31.0, material="flexible duct")
    return replace(route, parts=(*parts[:-1], last), as_built=True)


@pytest.mark.parametrize(
    ("inside", "cap"), [(True, "roof or wall cap with backdraft damper"), (False, "roof cap with backdraft damper")]
)
def test_what_mends_a_run_is_bought_and_not_what_is_wrong_with_it(inside: bool, cap: str) -> None:
    route = hose(handmade.up_route())
    route = replace(route, termination=replace(route.termination, kind=None)) if inside else route
    broken = (FOUND[0], finding("DCT-DAMPER", "No backdraft damper", State.BROKEN, "fit a cap"))
    lines = {b.item: (b.count, b.unit) for b in count(route, samples.scene(), handmade.frame(), broken).buy}
    assert "flexible duct" not in lines
    assert lines["duct, galvanized steel"] == (3, "ft")  # 31 in, in whole feet
    assert lines[cap] == (1, "each")
    # where the place lets the hose be and asks for no damper, it is counted as found
    lines = {b.item: (b.count, b.unit) for b in count(route, samples.scene(), handmade.frame()).buy}
    assert lines["flexible duct"] == (3, "ft")
    assert not [item for item in lines if " cap " in item]


def test_a_faulty_run_is_mended_and_not_built_again() -> None:
    steps = count(as_built(handmade.back_route()), samples.scene(), handmade.frame(), FOUND).steps
    names = [s.id for s in steps]
    assert names == [
        "settle",
        "measure",
        "power",
        "protect",
        "compare",
        "mend-1",
        "mend-2",
        "inspect",
        "patch",
        "gas",
        "test",
    ]


def test_a_run_whose_only_fault_is_a_member_is_built_with_its_framing() -> None:
    member = finding("MBR-STUD", "Stud 5 is cut", State.BROKEN, "frame it")
    names = {s.id for s in count(as_built(handmade.back_route()), samples.scene(), handmade.frame(), (member,)).steps}
    assert {"settle", "run", "lift"} <= names
    assert "compare" not in names
