"""The tables of the equipment: cooktop, hood, duct, cap, things outdoors."""

from __future__ import annotations

from typing import Annotated

from pydantic import Field  # noqa: TID251 - this is the door

from routeviz.model.scene import CooktopKind, OutdoorKind, SectionSize
from routeviz.scenefile.fields import Angle, Choice, Length, Number, Quantity
from routeviz.scenefile.sizes import Section
from routeviz.scenefile.tables import Distance, Flag, Gap, Height, Label, Size, Table, Text, asked, optional, taken

__all__ = ["CapTable", "CooktopTable", "DuctTable", "HoodTable", "OutdoorTable"]

_Flow = Annotated[float, Quantity("cfm", 0, 5000)]
_Pressure = Annotated[float, Quantity("in wg", 0, 10)]
_Heat = Annotated[float, Quantity("btu/h", 0, 500000)]
_Section = Annotated[SectionSize, Section()]
_PRACTICE = "common practice"


class BurnerTable(Table):
    """One burner."""

    across: Height = asked("its centre from the cooktop's left edge", "8 in")
    from_back: Height = asked("its centre from the cooktop's back edge", "6 in")
    diameter: Size = asked("its size across", "6 in")
    heat: _Heat = optional("its heat", "12000 btu/h", 0.0)


class CooktopTable(Table):
    """The cooking surface."""

    kind: Annotated[CooktopKind, Choice(CooktopKind)] = asked("electric, induction or gas", "gas")
    centre: Height = asked("its centre from the left wall", "70 in")
    width: Annotated[float, Length(8, 1200)] = asked("its width", "30 in")
    depth: Annotated[float, Length(8, 60)] = asked("its depth, back to front", "21 in")
    height: Annotated[float, Length(12, 60)] = taken(
        36.0, "the usual counter height", "its surface above the floor", "36 in"
    )
    back: Gap = asked("finished wall to its back edge", "2 in")
    heat: _Heat | None = optional("heat of all burners together", "38000 btu/h")
    burners: tuple[BurnerTable, ...] = optional("the burners, one by one", [], ())
    counter: Annotated[float, Length(12, 60)] | None = optional(
        "top of the counter beside it, above the floor", "36 in"
    )


class OutletTable(Table):
    """Where the hood hands over the air."""

    place: Annotated[str, Choice(("top", "rear"))] = asked("top or rear", "top")
    section: _Section = asked("its shape and size", "8 in round")
    across: Distance = taken(
        0.0, "taken on the hood's centre line", "its centre, right of the hood's centre line", "0 in"
    )
    out: Gap | None = optional("top outlet: its centre out from the finished wall", "8 1/2 in")
    up: Gap | None = optional("rear outlet: its centre above the hood's underside", "8 in")
    collar: Gap = taken(1.5, f"{_PRACTICE}, no source", "how far its collar stands off the hood", "1 1/2 in")


class CoverTable(Table):
    """The telescoping chimney cover."""

    min: Size = asked("shortest height that it can be set to", "16 in")
    max: Size = asked("longest height that it can be set to", "34 in")
    width: Size = asked("its width", "12 in")
    depth: Size = asked("how far it comes out", "11 in")


class FanTable(Table):
    """What the maker says of the fan."""

    rated: _Flow = asked("flow on the label", "400 cfm")
    rated_at: _Pressure | None = optional("static pressure at which that flow was measured", "0.1 in wg")
    curve: tuple[tuple[_Flow, _Pressure], ...] = optional(
        "flow and static pressure, pair by pair", [["0 cfm", "0.9 in wg"], ["400 cfm", "0.35 in wg"]], ()
    )
    speeds: tuple[Annotated[float, Number(0.05, 1)], ...] = optional(
        "share of full speed, full first", [1.0, 0.6], (1.0,)
    )


class FastenerTable(Table):
    """One fixing hole of the hood."""

    across: Distance = asked("its centre, right of the hood's centre line", "-10 in")
    up: Distance = asked("above the hood's underside", "9 1/2 in")
    row: Annotated[str, Choice(("upper", "lower"))] = optional("upper or lower row", "upper", "upper")


class ElectricalTable(Table):
    """Where the supply enters the hood."""

    across: Distance = asked("where the supply enters, right of the hood's centre line", "-4 in")
    up: Distance = asked("where the supply enters, above the hood's underside", "9 in")
    volts: Annotated[float, Number(12, 480, unit="V")] = taken(120.0, _PRACTICE, "supply voltage", 120)
    hertz: Annotated[float, Number(0, 60, unit="Hz")] = taken(60.0, _PRACTICE, "supply frequency", 60)
    amps: Annotated[float, Number(0, 60, unit="A")] = taken(15.0, _PRACTICE, "rating of the circuit", 15)
    cord: Flag = taken(False, "taken as wired in", "cord and plug instead of fixed wiring", False)
    dedicated: Flag | None = optional("whether the circuit serves only the hood", True)


class HoodTable(Table):
    """The wall-mounted canopy hood."""

    width: Annotated[float, Length(12, 1200)] = asked("its width", "36 in")
    depth: Annotated[float, Length(6, 60)] = asked("how far it comes out from the wall", "20 in")
    body: Annotated[float, Length(2, 60)] = asked(
        "its underside to the top of the body, where the cover starts", "11 in"
    )
    canopy: Annotated[float, Length(0.25, 60)] = taken(2.0, _PRACTICE, "height of its lower rim", "2 in")
    weight: Annotated[float, Quantity("lb", 1, 2000)] = asked("its weight", "55 lb")
    centre: Height | None = optional("its centre from the left wall; left out: over the cooktop", "70 in")
    mount: Annotated[float, Length(8, 96)] | None = optional(
        "cooking surface to its underside; left out: routeviz chooses", "30 in"
    )
    outlet: OutletTable = asked("where the air leaves it", {"place": "top", "section": "8 in round", "out": "8 1/2 in"})
    cover: CoverTable | None = optional(
        "its chimney cover", {"min": "16 in", "max": "34 in", "width": "12 in", "depth": "11 in"}
    )
    fan: FanTable = asked("its fan", {"rated": "400 cfm"})
    fasteners: tuple[FastenerTable, ...] = optional("its fixing holes", [], ())
    electrical: ElectricalTable | None = optional("where its supply enters", {"across": "-4 in", "up": "9 in"})


class DuctTable(Table):
    """What duct may be used and how it must be laid."""

    sections: tuple[_Section, ...] | None = optional(
        "duct that may be used, the wish first; left out: as the hood's outlet", ["8 in round"]
    )
    material: Text = taken("galvanized steel", _PRACTICE, "what the duct is made of", "galvanized steel")
    elbow_radius: Size | None = optional("radius of the elbows' centre line", "8 in")
    elbow_ratio: Annotated[float, Number(0.5, 3)] = taken(
        1.0, _PRACTICE, "radius of the elbows' centre line over the duct's diameter", 1.0
    )
    elbow_construction: Text = taken("4-piece", _PRACTICE, "how the elbows are made", "4-piece")
    max_elbows: Annotated[int, Number(0, 8, whole=True)] = taken(3, _PRACTICE, "most elbows allowed", 3)
    min_straight: Gap = taken(24.0, _PRACTICE, "least straight duct between two elbows", "24 in")
    first_run: Gap = taken(
        0.0, "nothing asked for", "least straight duct between the collar and the first elbow", "0 in"
    )
    last_run: Gap = taken(0.0, "nothing asked for", "least straight duct between the last elbow and the cap", "0 in")
    clearance: Gap = taken(0.25, _PRACTICE, "gap between duct and framing", "1/4 in")
    stock: Annotated[float, Length(6, 480)] = taken(60.0, _PRACTICE, "length of one section in the shop", "60 in")
    overlap: Gap = taken(1.5, _PRACTICE, "how far one section slides into the next", "1 1/2 in")
    offset_angles: tuple[Annotated[float, Angle(5, 75)], ...] = taken(
        (45.0, 30.0), _PRACTICE, "angles of the elbows of an offset", [45, 30]
    )
    offset_max: Gap = taken(24.0, _PRACTICE, "largest sideways offset tried", "24 in")
    boxing_allowed: Flag = taken(True, "as a last resort", "a run in the open room may be boxed in", True)
    transition: Gap = taken(6.0, _PRACTICE, "length of a fitting that changes the section", "6 in")
    sheet: Annotated[float, Length(0.005, 0.25)] | None = optional(
        "thickness of the sheet metal, when known", "0.016 in"
    )
    insulation_r: Annotated[float, Number(0, 60)] | None = optional("R-value around it in unheated places", 8)


class CapTable(Table):
    """Termination fittings that may be used."""

    wall: Flag = taken(True, "both ways out are looked at", "a cap in a wall may be used", True)
    roof: Flag = taken(True, "both ways out are looked at", "a cap on the roof may be used", True)
    damper: Flag = taken(True, _PRACTICE, "the cap has a backdraft damper", True)
    wall_flange: Size | None = optional("width of the wall cap's flange; left out: duct + 4 in", "12 in")
    roof_stub: Gap = taken(8.0, _PRACTICE, "duct above the roof surface", "8 in")
    loss_coefficient: Annotated[float, Number(0, 50)] | None = optional("the maker's loss coefficient", 2.0)
    overlap: Gap | None = optional("how far it takes the duct; left out: 1 1/2 in", "3 in")


class OutdoorTable(Table):
    """Something outdoors that the cap must keep away from. Windows of [walls] need not be repeated."""

    name: Label = asked("a name for it", "upstairs-window")
    kind: Annotated[OutdoorKind, Choice(OutdoorKind)] = asked(
        "operable window, fixed window, door, mechanical air intake, gravity air intake, lot line, soffit vent, "
        "gas meter, gas regulator, outdoor unit, walkway, other", "operable window",
    )  # fmt: skip
    face: Text = asked('hood, left, right, front, roof, or "space/side" for another space', "hood")
    left: Distance = asked("its left edge along that face", "90 in")
    bottom: Distance = asked("its lower edge above the kitchen floor", "12 ft")
    width: Size = asked("its width", "30 in")
    height: Size = asked("its height", "48 in")
    away: Gap = optional("how far it stands off the face", "0 in", 0.0)


def default_duct() -> DuctTable:
    """Give the table of a file that says nothing of ducts."""
    return DuctTable.model_validate({})


DUCT = Field(default_factory=default_duct, description="what duct may be used and how it must be laid")
CAP = Field(default_factory=lambda: CapTable.model_validate({}), description="caps that may be used")
