"""The tables of the house: site, kitchen, walls, ceiling, what lies above, roof, other spaces, things in the way."""

from __future__ import annotations

from typing import Annotated, Any

from pydantic import Field, ValidationInfo, model_validator  # noqa: TID251 - this is the door

from routeviz.errors import LengthError
from routeviz.model.scene import (
    AboveKind,
    MemberKind,
    ObstacleKind,
    OpeningKind,
    RoofForm,
    RunDirection,
    ServiceKind,
    SpaceKind,
    WallFrame,
    WallSide,
)  # fmt: skip
from routeviz.scenefile.fields import Choice, Length, Number, Pitch, Quantity
from routeviz.scenefile.fields import unreadable as refuse
from routeviz.scenefile.sizes import MemberSize, SizeText, split_layer
from routeviz.scenefile.tables import (
    Distance,
    Flag,
    Gap,
    Height,
    Label,
    Long,
    Size,
    Table,
    Text,
    Thickness,
    asked,
    optional,
    taken,
)  # fmt: skip

__all__ = [
    "AboveTable", "BeamTable", "CeilingTable", "KitchenTable", "LayerTable", "LayoutTable", "ObstacleTable",
    "OpeningTable", "RoofTable", "ServiceTable", "SiteTable", "SpaceTable", "SpaceWalls", "WallTable", "WallsTable",
]  # fmt: skip

_Count = Annotated[int, Number(1, 500, whole=True)]
_SAFE = "taken on the safe side"


class SiteTable(Table):
    """Where the house stands, as far as air and snow go."""

    altitude: Long = taken(0.0, "taken as sea level", "height above the sea", "1200 ft")
    air_temp: Annotated[float, Quantity("degF", -60, 140)] = taken(
        70.0, "ordinary room air", "temperature of the air in the duct", "70 degF"
    )
    cold_climate: Flag = taken(False, "nothing said of cold winters", "hard winters: cold duct, drips", True)
    snow: Height | None = optional("usual depth of snow on the roof", "24 in")


class KitchenTable(Table):
    """The kitchen as a box, finished face to finished face."""

    width: Annotated[float, Length(24, 1200)] = asked("along the hood wall, left wall to right wall", "12 ft")
    depth: Annotated[float, Length(24, 1200)] = asked("out from the hood wall to the wall opposite", "11 ft")
    ceiling: Annotated[float, Length(60, 600)] = asked("finished floor to finished ceiling", "8 ft")


class LayerTable(Table):
    """One sheet of a wall, ceiling, floor or roof; most easily one text such as "gypsum board 1/2 in"."""

    material: Text = asked("what it is made of", "gypsum board")
    thickness: Thickness = asked("how thick it is", "1/2 in")

    @model_validator(mode="before")
    @classmethod
    def _one_text(cls, value: Any, info: ValidationInfo) -> Any:
        if isinstance(value, str):
            try:
                material, thickness = split_layer(value, (info.context or {}).get("unit", "in"))
            except LengthError as fault:
                raise refuse(fault.problem, fault.remedy) from None
            if not 1 / 64 <= thickness <= 60:
                raise refuse("a layer of that thickness makes no sense", "Check the number and its unit")
            return {"material": material, "thickness": f"{thickness!r} in"}
        return value


Layers = tuple[LayerTable, ...]


class LayoutTable(Table):
    """Repeated members: studs, joists, rafters or trusses."""

    kind: Annotated[MemberKind, Choice(MemberKind)] = taken(
        MemberKind.SAWN,
        "nothing said; plain lumber is common",
        "sawn, i-joist, open-web, truss, engineered, ...",
        "sawn",
    )
    size: Annotated[SizeText, MemberSize()] | None = optional("lumber size, or the real one with a unit", "2x8")
    width: Thickness | None = optional("real width of one member, instead of size", "1 1/2 in")
    depth: Thickness | None = optional("real depth of one member, instead of size", "7 1/4 in")
    spacing: Annotated[float, Length(4, 120)] | None = optional("centre to centre", "16 in")
    first: Distance | None = optional("centre of the first one, from the left end or from the hood wall", "14 in")
    direction: Annotated[RunDirection, Choice(RunDirection)] | None = optional(
        "out: square to the hood wall; along: parallel to it", "out"
    )
    at: tuple[Distance, ...] = optional("measured centres, instead of first and spacing", ["14 in", "29 1/2 in"], ())
    doubled: tuple[_Count, ...] = optional("which ones are doubled, counted from 1", [3], ())
    missing: tuple[_Count, ...] = optional("which ones are not there, counted from 1", [5], ())


class OpeningTable(Table):
    """A window or door in a wall; rough opening."""

    name: Label = asked("a name for it", "sink-window")
    kind: Annotated[OpeningKind, Choice(OpeningKind)] = asked("window or door", "window")
    operable: Flag = taken(True, f"{_SAFE}: as one that opens", "whether it can be opened", True)
    left: Height = asked("from the left end of the wall (side walls: out from the hood wall)", "112 in")
    sill: Height | None = optional("its lower edge above the floor; doors start at 0", "44 in")
    width: Size = asked("width of the rough opening", "28 in")
    height: Size = asked("height of the rough opening", "36 in")


class ServiceTable(Table):
    """A cable, pipe or return-air bay inside a wall."""

    name: Label = asked("a name for it", "range-cable")
    kind: Annotated[ServiceKind, Choice(ServiceKind)] = asked(
        "cable, gas, water, drain, return air, duct, flue", "cable"
    )
    left: Height = asked("its left edge from the left end of the wall", "60 in")
    bottom: Height = asked("its lower edge above the floor", "0 in")
    width: Size = asked("its width", "1 in")
    height: Size = asked("its height", "8 ft")
    clearance: Gap = optional("gap that a duct must keep from it", "1 in", 0.0)
    movable: Flag = optional("whether it may be moved", False, False)


class WallTable(Table):
    """One wall: what lies beyond it and how it is built."""

    beyond: Text = asked('"outdoors", "room" (another room), or the name of one of the [[spaces]]', "outdoors")
    frame: Annotated[WallFrame, Choice(WallFrame)] = taken(
        WallFrame.WOOD, "nothing said; studs of wood are common", "wood, steel, masonry, concrete or log", "wood"
    )
    studs: LayoutTable | None = optional(
        "its studs; first is the centre of the first one from the left end",
        {"size": "2x6", "spacing": "16 in", "first": "3/4 in"},
    )
    core: Thickness | None = optional("thickness of masonry, concrete or log without its layers", "8 in")
    bearing: Flag = taken(True, f"{_SAFE}: as a wall that carries load", "whether it carries load", True)
    fire_rated: Flag = taken(False, "nothing said of a fire rating", "whether it is a fire-rated wall", False)
    inside: Layers | None = optional("layers on the kitchen side, from the core outwards", ["gypsum board 1/2 in"])
    outside: Layers | None = optional(
        "layers on the far side, from the core outwards", ["OSB sheathing 7/16 in", "wood lap siding 3/4 in"]
    )
    plates: Annotated[int, Number(0, 6, whole=True)] = taken(
        3, "one at the bottom, two at the top, as is common", "horizontal plates in all", 3
    )
    openings: tuple[OpeningTable, ...] = optional("windows and doors", [], ())
    services: tuple[ServiceTable, ...] = optional("cables and pipes inside the wall", [], ())
    lot_line: Gap | None = optional("outer face to the lot line, square to the wall", "12 ft")

    def idle(self) -> frozenset[str]:
        """Walls that are not framed have no plates."""
        return frozenset() if self.frame in (WallFrame.WOOD, WallFrame.STEEL) else frozenset({"plates"})


class WallsTable(Table):
    """The kitchen's walls. Only the hood wall must be described."""

    hood: WallTable = asked("the wall that the hood hangs on", {"beyond": "outdoors"})
    left: WallTable | None = optional("the wall at the left end of the hood wall", {"beyond": "room"})
    right: WallTable | None = optional("the wall at the right end of the hood wall", {"beyond": "room"})
    front: WallTable | None = optional("the wall opposite the hood", {"beyond": "room"})


class BeamTable(Table):
    """A single beam, header or doubled member across the joists."""

    name: Label = asked("a name for it", "carrying-beam")
    kind: Annotated[MemberKind, Choice(MemberKind)] = taken(
        MemberKind.ENGINEERED, f"{_SAFE}: as one that only its maker may judge", "sawn, engineered, steel, ...", "sawn"
    )
    width: Thickness = asked("its real width", "3 1/2 in")
    depth: Thickness = asked("its real depth", "11 1/4 in")
    direction: Annotated[RunDirection, Choice(RunDirection)] = asked("out or along the hood wall", "along")
    at: Distance = asked("its centre line, from the left (runs out) or out from the hood wall (runs along)", "60 in")
    bottom: Height = asked("its underside above the floor", "96 in")
    start: Distance | None = optional("where it begins along its run", "0 in")
    end: Distance | None = optional("where it ends along its run", "12 ft")


class CeilingTable(Table):
    """Ceiling board, joists and what is hung in them."""

    layers: Layers | None = optional("ceiling layers, from the joists down to the room", ["gypsum board 5/8 in"])
    joists: LayoutTable | None = optional(
        "the ceiling joists, or the bottom chords of trusses",
        {"size": "2x8", "spacing": "16 in", "first": "14 in", "direction": "out"},
    )
    beams: tuple[BeamTable, ...] = optional("beams that cross the joists", [], ())
    blocking: tuple[Distance, ...] = optional("lines of solid blocking, measured along the joists", ["66 in"], ())
    rim: Flag = taken(True, "floors and ceilings of joists usually have one", "a rim joist closes the bays", True)
    slab: Annotated[float, Length(0, 60)] = optional("thickness of a concrete ceiling", "200 mm", 0.0)


class AboveTable(Table):
    """What lies above the ceiling."""

    kind: Annotated[AboveKind, Choice(AboveKind)] = asked("attic, storey, roof (no attic) or slab", "attic")
    storey_height: Annotated[float, Length(60, 600)] | None = optional("floor to ceiling of the storey above", "8 ft")
    floor: Layers | None = optional("the floor of the storey above, from the joists up", ["plywood subfloor 3/4 in"])


class RoofTable(Table):
    """The roof over the kitchen."""

    form: Annotated[RoofForm, Choice(RoofForm)] = asked("gable, shed or flat", "gable")
    pitch: Annotated[float, Pitch()] | None = optional("rise over run; flat roofs may leave it out", "6/12")
    ridge: Annotated[RunDirection, Choice(RunDirection)] | None = optional(
        "along: ridge parallel to the hood wall; out: square to it", "along"
    )
    ridge_at: Distance | None = optional("where the ridge is: out from the hood wall, or from the left", "11 ft")
    overhang: Gap = asked("from the wall's core to the eave edge", "16 in")
    heel: Thickness | None = optional(
        "heel height: top of the wall plates up to the top of the rafters or trusses, plumb over the studs' outer face",
        "6 in",
    )
    framing: LayoutTable | None = optional(
        "rafters or trusses; they run square to the ridge", {"size": "2x6", "spacing": "16 in", "first": "14 in"}
    )
    layers: Layers | None = optional(
        "deck and covering, from the inside out", ["plywood deck 1/2 in", "shingles 3/8 in"]
    )
    high_side: Annotated[WallSide, Choice(WallSide)] | None = optional("shed roofs: the wall at the high edge", "front")
    soffit_vented: Flag = taken(
        True, f"{_SAFE}: as one with vents in the eave", "vents in the underside of the eave", True
    )


class SpaceWalls(Table):
    """The walls of another space, as seen from the kitchen; front is its far wall."""

    front: WallTable | None = optional("its far wall", {"beyond": "outdoors"})
    left: WallTable | None = optional("its left wall, as seen from the kitchen", {"beyond": "outdoors"})
    right: WallTable | None = optional("its right wall, as seen from the kitchen", {"beyond": "outdoors"})


class SpaceTable(Table):
    """What lies beyond a wall: a box behind it, clear sizes."""

    name: Label = asked("a name for it; a wall says beyond = that name", "garage")
    kind: Annotated[SpaceKind, Choice(SpaceKind)] = asked(
        "room, garage, porch, attic, storey, shaft, crawl, chase", "garage"
    )
    behind: Annotated[WallSide, Choice(WallSide)] = asked("the kitchen wall that it lies behind", "hood")
    deep: Size = asked("clear depth, square to that wall", "20 ft")
    left: Distance = taken(0.0, "taken to begin with the wall", "where it begins along that wall", "0 in")
    width: Size | None = optional("clear width along that wall", "20 ft")
    floor: Distance = taken(0.0, "taken level with the kitchen floor", "its floor above the kitchen floor", "-8 in")
    height: Size | None = optional("clear height inside", "9 ft")
    walls: SpaceWalls = Field(default_factory=lambda: SpaceWalls.model_validate({}), description="its other walls")
    duct_allowed: Flag = taken(
        False, f"{_SAFE}: closed to ducts", "may a sealed metal duct pass through it to outdoors", True
    )
    above: Text = taken("outdoors", "nothing said of what is over it", "what lies over it", "outdoors")


class ObstacleTable(Table):
    """A thing in the way, or a place that hides a duct; a box in the kitchen's measures."""

    name: Label = asked("a name for it", "left-uppers")
    kind: Annotated[ObstacleKind, Choice(ObstacleKind)] = asked(
        "cabinet, soffit, beam, pipe, trunk, light, unit, chase, existing duct, existing hole, other", "cabinet"
    )
    left: Distance = asked("its left edge from the left wall", "24 in")
    out: Distance = taken(0.0, "taken to stand against the hood wall", "its back, out from the hood wall", "0 in")
    bottom: Distance = asked("its underside above the floor", "54 in")
    width: Size = asked("its width", "28 in")
    depth: Size = asked("how far it comes out", "12 in")
    height: Size = asked("its height", "36 in")
    clearance: Gap = optional("gap that a duct must keep from it", "1 in", 0.0)
    combustible: Flag = taken(True, f"{_SAFE}: as a thing that burns", "whether it burns", True)
    protected: Flag = optional("its underside is faced with board and sheet metal", False, False)
    cut_allowed: Flag = optional("whether it may be cut", False, False)
    hides_duct: Flag = optional("whether a duct may run hidden in it", False, False)
    diameter: Size | None = optional("of an existing hole or duct", "6 in")
    ends_at: Text = optional("where an existing duct ends, if known", "outdoors", "")
