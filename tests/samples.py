"""A kitchen made by hand for the tests: Juniper Lane, invented.

12 ft hood wall outdoors behind it, 2x6 studs, 2x8 joists running out from the hood wall at 16 in with the first
at 14 in, an attic and a 3/12 gable roof with the ridge along the hood wall, a 36 in hood centred at 70 in.
"""

from __future__ import annotations

from dataclasses import replace
from typing import Any

from routeviz.model.scene import (
    Above,
    AboveKind,
    Cap,
    Ceiling,
    Cooktop,
    CooktopKind,
    Cover,
    DuctChoice,
    Electrical,
    Fan,
    Fastener,
    Hood,
    Kitchen,
    Layer,
    MemberKind,
    MemberLayout,
    Opening,
    OpeningKind,
    Outlet,
    Roof,
    RoofForm,
    RuleChoice,
    RunDirection,
    Scene,
    SectionShape,
    SectionSize,
    Site,
    Tolerances,
    Wall,
    WallFrame,
    WallSide,
)  # fmt: skip

ROUND_8 = SectionSize(SectionShape.ROUND, 8.0, 8.0)
ROUND_6 = SectionSize(SectionShape.ROUND, 6.0, 6.0)


def studs(
    size: str = "2x6", width: float = 1.5, depth: float = 5.5, spacing: float = 16.0, first: float = 0.75
) -> MemberLayout:
    """Give a stud layout along a wall."""
    return MemberLayout(MemberKind.SAWN, size, width, depth, spacing, first, RunDirection.ALONG)


def wall(side: WallSide, beyond: str = "outdoors", **changes: Any) -> Wall:
    """Give a plain 2x6 exterior wall, or a 2x4 partition when something else lies beyond."""
    outside = beyond == "outdoors"
    plain = Wall(
        side=side,
        beyond=beyond,
        frame=WallFrame.WOOD,
        studs=studs() if outside else studs("2x4", depth=3.5),
        core_in=5.5 if outside else 3.5,
        bearing=outside,
        fire_rated=False,
        inside=(Layer("gypsum board", 0.5),),
        outside=(Layer("OSB sheathing", 0.4375), Layer("wood lap siding", 0.75))
        if outside
        else (Layer("gypsum board", 0.5),),
    )
    return replace(plain, **changes)


def scene(**changes: Any) -> Scene:
    """Give the Juniper Lane kitchen, with fields replaced."""
    window = Opening("sink-window", OpeningKind.WINDOW, True, 112.0, 44.0, 28.0, 36.0)
    plain = Scene(
        name="Juniper Lane kitchen",
        about="straight up between two joists to the roof",
        file="juniper.toml",
        metric=False,
        invented=True,
        site=Site(),
        kitchen=Kitchen(144.0, 132.0, 96.0),
        walls=(
            wall(WallSide.HOOD, openings=(window,), lot_line_in=144.0),
            wall(WallSide.LEFT, "room"),
            wall(WallSide.RIGHT),
            wall(WallSide.FRONT, "room"),
        ),
        ceiling=Ceiling((Layer("gypsum board", 0.625),), MemberLayout(MemberKind.SAWN, "2x8", 1.5, 7.25, 16.0, 14.0)),
        above=Above(AboveKind.ATTIC),
        roof=Roof(
            RoofForm.GABLE, 0.25, RunDirection.ALONG, 132.0, 16.0,
            MemberLayout(MemberKind.SAWN, "2x6", 1.5, 5.5, 16.0, 14.0),
            (Layer("roof deck", 0.5), Layer("asphalt shingles", 0.375)),
        ),
        spaces=(),
        obstacles=(),
        cooktop=Cooktop(CooktopKind.GAS, 70.0, 30.0, 21.0, 36.0, 2.0, 38000.0),
        hood=Hood(
            36.0, 20.0, 11.0, 2.0, 55.0, 70.0, 30.0,
            Outlet("top", ROUND_8, 0.0, 8.5), Cover(16.0, 34.0, 12.0, 13.0),
            Fan(400.0, 0.1, ((0.0, 0.9), (200.0, 0.7), (350.0, 0.3), (400.0, 0.1), (420.0, 0.0))),
            (Fastener(-10.5, 9.5), Fastener(-5.5, 9.5), Fastener(5.5, 9.5), Fastener(10.5, 9.5)),
            Electrical(-4.0, 9.0),
        ),
        duct=DuctChoice((ROUND_8,)),
        cap=Cap(),
        outdoors=(),
        rules=RuleChoice("irc-2021"),
        as_built=None,
        tolerances=Tolerances(joists_in=0.5),
        assumptions=(),
    )  # fmt: skip
    return replace(plain, **changes)
