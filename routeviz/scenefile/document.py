"""The whole scene file, and its tables of rules, routes as built and tolerances."""

from __future__ import annotations

from typing import Annotated

from pydantic import Field  # noqa: TID251 - this is the door

from routeviz.model.scene import SectionSize
from routeviz.scenefile.equipment import CAP, DUCT, CapTable, CooktopTable, DuctTable, HoodTable, OutdoorTable
from routeviz.scenefile.fields import Angle, Choice, Number, Words
from routeviz.scenefile.house import (
    AboveTable,
    CeilingTable,
    KitchenTable,
    ObstacleTable,
    RoofTable,
    SiteTable,
    SpaceTable,
    WallsTable,
)  # fmt: skip
from routeviz.scenefile.sizes import Section
from routeviz.scenefile.tables import Flag, Gap, Long, Table, Text, asked, optional, taken

__all__ = ["FORMAT", "UNITS", "Document"]

FORMAT = 1
UNITS = ("in", "ft", "mm", "cm", "m")
_Said = Annotated[str, Words(may_be_empty=False)]


class MakerTable(Table):
    """What the makers' instructions say; goes before the profile."""

    hood_min: Gap | None = optional("least height, cooking surface to hood", "24 in")
    hood_max: Gap | None = optional("greatest height, cooking surface to hood", "36 in")
    cabinet_above: Gap | None = optional("cooking surface to a cabinet above it", "30 in")
    side_clearance: Gap | None = optional("cooktop edge to a wall or cabinet beside it", "6 in")
    side_cabinet_up: Gap | None = optional("cooking surface up to the cabinets beside it", "18 in")
    duct_min: Gap | None = optional("least duct diameter", "6 in")
    max_equivalent: Long | None = optional("longest equivalent length of duct", "100 ft")
    member_hole: Gap | None = optional("largest hole that the joist maker's chart allows here", "6 in")
    joist_flange: Gap | None = optional("depth of each flange of its I-joists; left out: 1 1/2 in", "1 1/2 in")
    document: Text = optional("what is cited", "hood maker's instructions", "maker's instructions")


class WaiverTable(Table):
    """A finding that someone answers for."""

    code: _Said = asked("code of the finding", "CLR-SIDE")
    reason: _Said = asked("why it may stand; printed in every report", "side panel faced with steel, agreed on site")
    by: Text = optional("who answers for it", "owner", "")


class RulesTable(Table):
    """Which rule profile applies, and what goes before it."""

    profile: _Said = taken("irc-2021", "no place named; a widely used model code", "rule profile", "irc-2021")
    maker: MakerTable = Field(default_factory=lambda: MakerTable.model_validate({}), description="makers' limits")
    waivers: tuple[WaiverTable, ...] = optional("findings that someone answers for, each with its reason", [], ())
    open_flue_appliance: Flag | None = optional("an open-flue heater, boiler or stove is in the house", True)
    tight_house: Flag | None = optional("the house is tightly sealed", False)
    makeup_air: Flag | None = optional("makeup air is planned or there", True)


class FittingTable(Table):
    """One fitting of a route that exists or is proposed."""

    part: Annotated[str, Choice(("straight", "elbow", "offset", "reducer", "flex", "cap", "open end"))] = asked(
        "straight, elbow, offset, reducer, flex, cap or open end", "straight"
    )
    length: Gap = optional("along its run", "30 in", 0.0)
    angle: Annotated[float, Angle(5, 90)] = optional("how far an elbow turns", 90, 90.0)
    turn: Annotated[str, Choice(("up", "down", "left", "right", "back", "front"))] = optional(
        "where an elbow or offset turns to; back is through the hood wall", "back", ""
    )
    to_section: Annotated[SectionSize, Section()] | None = optional("section after a reducer", "6 in round")
    ends_in: Text = optional("the space in which the route ends", "attic", "")


class AsBuiltTable(Table):
    """A route to be checked instead of searched, fitting by fitting from the hood."""

    fittings: tuple[FittingTable, ...] = asked("the fittings, in order from the hood", [])
    material: Text = taken("galvanized steel", "nothing said of the material", "what it is made of", "galvanized steel")
    note: Text = optional("anything worth knowing", "joints taped", "")
    screws_per_joint: Annotated[int, Number(0, 24, whole=True)] | None = optional("screws in each joint", 3)


class TolerancesTable(Table):
    """How far each measured group may be off; left out: taken as exact."""

    studs: Gap = taken(0.0, "taken as exact", "studs", "1/2 in")
    joists: Gap = taken(0.0, "taken as exact", "the ceiling's joists, or the chords in their place", "1/2 in")
    rafters: Gap = taken(0.0, "taken as exact", "rafters or trusses", "1/2 in")
    openings: Gap = taken(0.0, "taken as exact", "windows and doors", "1/4 in")
    other: Gap = taken(0.0, "taken as exact", "everything else", "1/4 in")


class Document(Table):
    """A scene: what a person measured in one kitchen."""

    format: Annotated[int, Number(FORMAT, FORMAT, whole=True)] = asked("version of this file format", FORMAT)
    name: _Said = asked("what this kitchen is called", "Juniper Lane kitchen")
    about: Text = optional("what this scene shows", "straight up between two joists", "")
    unit: Annotated[str, Choice(UNITS)] = taken("in", "nothing said", "unit of bare numbers: in, ft, mm, cm or m", "in")
    invented: Flag = optional("an invented home, made for practice", False, False)
    assumed: tuple[Text, ...] = optional("keys whose values are guessed, not measured", ["ceiling.joists.first"], ())
    site: SiteTable = Field(default_factory=lambda: SiteTable.model_validate({}), description="where the house stands")
    kitchen: KitchenTable = asked("the room", {"width": "12 ft", "depth": "11 ft", "ceiling": "8 ft"})
    walls: WallsTable = asked("the walls", {})
    ceiling: CeilingTable = asked("ceiling and joists", {})
    above: AboveTable = asked("what lies above the ceiling", {"kind": "attic"})
    roof: RoofTable | None = optional("the roof over the kitchen", {"form": "gable", "pitch": "6/12"})
    spaces: tuple[SpaceTable, ...] = optional("what lies beyond the walls", [], ())
    obstacles: tuple[ObstacleTable, ...] = optional("things in the way, or that hide a duct", [], ())
    cooktop: CooktopTable = asked("the cooktop", {"kind": "gas"})
    hood: HoodTable = asked("the hood", {})
    duct: DuctTable = DUCT
    cap: CapTable = CAP
    outdoors: tuple[OutdoorTable, ...] = optional("things outdoors that the cap must keep away from", [], ())
    rules: RulesTable = Field(default_factory=lambda: RulesTable.model_validate({}), description="rules that apply")
    as_built: AsBuiltTable | None = optional("a route to be checked instead of searched", {})
    tolerances: TolerancesTable = Field(
        default_factory=lambda: TolerancesTable.model_validate({}), description="how far the tape may be off"
    )
