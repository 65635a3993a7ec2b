"""A masonry wall is drilled, cored and made good; only board is opened by a blade and patched with board."""

from __future__ import annotations

from dataclasses import replace

import pytest
import samples
from cases.homes import MM, STACK, built, cap, elbow, straight, with_duct, with_wall

from routeviz.catalog import table
from routeviz.drawings import sheets
from routeviz.drawings.primitives import Text
from routeviz.model.plan import Plan
from routeviz.model.scene import Layer, MemberKind, MemberLayout, Scene, WallFrame, WallSide
from routeviz.model.takeoff import Step, TakeOff
from routeviz.takeoff.mending import mending_steps

PLASTER = (Layer("gypsum plaster", 15 * MM),)
RENDER = (Layer("cement render", 20 * MM),)
DRYWALL = (Layer("gypsum board", 0.5),)
FURRED = (Layer("air gap 2 in", 2.0), Layer("lath and plaster 3/4 in", 0.75))
STRIPS = MemberLayout(MemberKind.FURRING, "1x2", 1.5, 2.0, 16.0, 8.0)
OUT_BEHIND = (straight(2.5), elbow("back"), straight(20.0), cap())


def kitchen(frame: WallFrame, inside: tuple[Layer, ...], *, furred: bool = False, core_in: float = 250 * MM) -> Scene:
    bare = replace(samples.scene(), hood=replace(samples.scene().hood, cover=None))
    return with_wall(bare, WallSide.HOOD, frame=frame, studs=STRIPS if furred else None, core_in=core_in, inside=inside,
                     outside=RENDER, openings=())  # fmt: skip


def planned(scene: Scene) -> Plan:
    plan = built(scene, *OUT_BEHIND)
    assert plan.best is not None
    assert plan.best.route.termination.kind is not None, plan.best.route.termination
    return plan


def take(scene: Scene) -> TakeOff:
    best = planned(scene).best
    assert best is not None
    return best.takeoff


def step(taken: TakeOff, name: str) -> Step:
    (found,) = [s for s in taken.steps if s.id == name]
    return found


def said(taken: TakeOff) -> str:
    """Give all words of parts and steps but those of the boxing, which has board of its own in any house."""
    words = [w for s in taken.steps if s.id not in ("box", "settle") for w in (s.text, s.hold, s.caution)]
    words += [w for b in taken.buy if "boxing" not in b.item for w in (b.item, b.note)]
    return " ".join(words).lower()


SOLID = [(WallFrame.MASONRY, PLASTER), (WallFrame.MASONRY, ()), (WallFrame.CONCRETE, PLASTER)]


@pytest.mark.parametrize(("frame", "inside"), SOLID)
def test_a_solid_wall_is_drilled_through_first_and_cored_along_the_pilot(
    frame: WallFrame, inside: tuple[Layer, ...]
) -> None:
    taken = take(kitchen(frame, inside))
    look, core = step(taken, "look"), step(taken, "outside")
    # common practice: a long drill of 3/8 in
    assert look.text.startswith("Drill a pilot hole of 3/8 in right through the ")
    assert "tells the thickness" in look.text
    # the duct is 8 in and a sleeve takes an inch more
    assert core.text.startswith("Core-drill 9 in round through the ")
    assert "silica" in core.caution
    assert "look" in core.after
    assert "blade" not in said(taken)
    assert "board" not in said(taken)
    names = [s.id for s in taken.steps]
    assert "fireblock" not in names
    assert "inside" not in names  # plaster, masonry and render are one hole
    assert names.index("look") < names.index("outside") < names.index("sleeve") < names.index("cap")


def test_mortar_and_plaster_are_bought_and_the_plaster_is_made_good() -> None:
    taken = take(kitchen(WallFrame.MASONRY, PLASTER))
    mortar, plaster = ([b for b in taken.buy if b.item == item] for item in ("repair mortar", "finishing plaster"))
    assert [(b.size, b.unit) for b in mortar] == [("round the sleeve, in a hole of 9 in round", "bag")]
    assert len(plaster) == 1
    assert step(taken, "patch").text == "Make good the plaster round the duct: a finishing coat over the mortar."
    bare = take(kitchen(WallFrame.MASONRY, ()))
    assert not [b for b in bare.buy if b.item == "finishing plaster"]
    assert "patch" not in {s.id for s in bare.steps}


@pytest.mark.parametrize("inside", [DRYWALL, FURRED])
def test_board_before_masonry_is_opened_and_the_masonry_drilled(inside: tuple[Layer, ...]) -> None:
    taken = take(kitchen(WallFrame.MASONRY, inside, furred=inside is FURRED))
    look = step(taken, "look")
    assert look.text.startswith("Cut a small opening of 2 in")
    assert "Drill a pilot hole of 3/8 in right through the masonry" in look.text
    assert "blade" in look.caution
    assert "silica" in look.caution
    patches = [b.note for b in taken.buy if b.item == "board patch"]
    if inside is DRYWALL:
        assert len(patches) == 1
        assert "Patch the boards." in step(taken, "patch").text
    else:  # lath and plaster on strips: round the duct, and over what packs the gap behind the screws
        assert patches[0].startswith("lath and plaster 3/4 in, round the duct")
        assert patches[1].startswith("over the packing blocks of")
        assert step(taken, "patch").text.startswith("Make good the plaster that was opened")


def test_a_framed_wall_is_opened_as_before() -> None:
    taken = take(replace(samples.scene(), hood=replace(samples.scene().hood, cover=None)))
    assert "Cut a small opening" in step(taken, "look").text
    assert not any(word in said(taken) for word in ("pilot hole of", "silica", "mortar"))
    assert step(taken, "outside").text.startswith("Drill the centre through the wall from inside")


def test_logs_are_cut_and_sealed_and_hold_no_silica() -> None:
    taken = take(kitchen(WallFrame.LOG, ()))
    assert "pilot hole" in step(taken, "look").text
    assert "silica" not in said(taken)
    assert "mortar" not in said(taken)
    assert step(taken, "sleeve").text == (
        "Set the sleeve, 8 1/2 in round, in the middle of its hole and seal what is left round it, at least 1/4 in."
    )


def test_a_flat_duct_is_not_core_drilled() -> None:
    scene = with_duct(kitchen(WallFrame.MASONRY, PLASTER), STACK)
    assert step(take(scene), "outside").text.startswith("Chain-drill and cut ")


def test_metric_pilots_are_ten_millimetres() -> None:
    scene = replace(kitchen(WallFrame.MASONRY, PLASTER), metric=True)
    assert table("stock")["pilot_through"]["drill_mm"] == 10
    assert "pilot hole of 10 mm" in step(take(scene), "look").text


def test_the_holes_sheet_says_the_same_as_the_step() -> None:
    plan = planned(kitchen(WallFrame.MASONRY, PLASTER))
    (page,) = [p for p in sheets(plan) if p.name == "holes"]
    words = " ".join(t.text for t in page.items if isinstance(t, Text))
    assert "drill a pilot hole of 3/8 in right through the masonry" in words
    assert "small opening" not in words


def test_mending_in_masonry_needs_no_blade() -> None:
    plain, solid = (
        " ".join(
            s.text + s.caution
            for s in mending_steps((), planned(kitchen(WallFrame.MASONRY, PLASTER)).best.route, board=b)
        )
        for b in (True, False)
    )
    assert "board" in plain
    assert "board" not in solid
    assert "make good what was opened." in solid
