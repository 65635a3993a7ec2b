"""What is hung and laid: cooktop, hood, duct and cap. Lengths are inches."""

from __future__ import annotations

from dataclasses import dataclass

from routeviz.model.kinds import CooktopKind, SectionShape

__all__ = [
    "Burner",
    "Cap",
    "Cooktop",
    "Cover",
    "DuctChoice",
    "Electrical",
    "Fan",
    "Fastener",
    "Hood",
    "Outlet",
    "SectionSize",
]


@dataclass(frozen=True, slots=True)
class Burner:
    """One burner: centre from the cooktop's left and back edges, and its heat."""

    across_in: float
    from_back_in: float
    diameter_in: float
    heat_btu_h: float = 0.0


@dataclass(frozen=True, slots=True)
class Cooktop:
    """The cooking surface."""

    kind: CooktopKind
    centre_in: float  # from the left wall
    width_in: float
    depth_in: float
    height_in: float  # cooking surface above the floor
    back_in: float  # finished wall to its back edge
    heat_btu_h: float | None = None
    burners: tuple[Burner, ...] = ()
    counter_in: float | None = None  # top of the counter beside it, above the floor; None: as the cooking surface


@dataclass(frozen=True, slots=True)
class SectionSize:
    """A duct section. Round: `width_in` = `height_in` = diameter. Else `width_in` is the wide side."""

    shape: SectionShape
    width_in: float
    height_in: float

    @property
    def is_round(self) -> bool:
        """Whether the section is a circle."""
        return self.shape is SectionShape.ROUND


@dataclass(frozen=True, slots=True)
class Outlet:
    """Where the hood hands over the air."""

    place: str  # "top" or "rear"
    section: SectionSize
    across_in: float = 0.0  # right of the hood's centre line
    out_in: float = 0.0  # top outlet: centre, out from the finished wall
    up_in: float = 0.0  # rear outlet: centre, above the hood's underside
    collar_in: float = 1.5  # how far the collar stands off the hood


@dataclass(frozen=True, slots=True)
class Cover:
    """Telescoping chimney cover of a wall canopy."""

    min_in: float
    max_in: float
    width_in: float
    depth_in: float


@dataclass(frozen=True, slots=True)
class Fan:
    """What the maker says of the fan: rated points and, when known, the curve (flow [cfm], static [in wg])."""

    rated_cfm: float
    rated_at_inwg: float | None = None
    curve: tuple[tuple[float, float], ...] = ()
    speeds: tuple[float, ...] = (1.0,)  # share of full speed


@dataclass(frozen=True, slots=True)
class Fastener:
    """One fixing hole of the hood: right of its centre line and above its underside."""

    across_in: float
    up_in: float
    row: str = "upper"  # "upper" or "lower"


@dataclass(frozen=True, slots=True)
class Electrical:
    """Where the supply enters: right of the hood's centre line, above its underside."""

    across_in: float
    up_in: float
    volts: float = 120.0
    hertz: float = 60.0
    amps: float = 15.0
    cord: bool = False
    dedicated: bool | None = None


@dataclass(frozen=True, slots=True)
class Hood:
    """The canopy hood."""

    width_in: float
    depth_in: float
    body_in: float  # underside to the top of the body, where the cover starts
    canopy_in: float  # height of the lower rim
    weight_lb: float
    centre_in: float  # from the left wall
    mount_in: float | None  # cooking surface to underside; None lets routeviz choose
    outlet: Outlet
    cover: Cover | None
    fan: Fan
    fasteners: tuple[Fastener, ...] = ()
    electrical: Electrical | None = None

    def cover_slack_in(self, half_in: float) -> tuple[float, float, float, float]:
        """Give how far a riser of this half size may shift inside the cover [in]: left, right, out, back; never below 0."""
        if self.cover is None:
            return 0.0, 0.0, 0.0, 0.0
        side, outlet = self.cover.width_in / 2 - half_in, self.outlet
        room = (side + outlet.across_in, side - outlet.across_in, self.cover.depth_in - outlet.out_in - half_in,
                outlet.out_in - half_in)  # fmt: skip
        return max(0.0, room[0]), max(0.0, room[1]), max(0.0, room[2]), max(0.0, room[3])


@dataclass(frozen=True, slots=True)
class DuctChoice:
    """What duct may be used and how it must be laid."""

    sections: tuple[SectionSize, ...]  # first is the wish; others may be compared
    material: str = "galvanized steel"
    elbow_radius_in: float | None = None  # centre line; None: from `elbow_ratio`
    elbow_ratio: float = 1.0  # centre-line radius over diameter (or over the side in the bend)
    elbow_construction: str = "4-piece"
    max_elbows: int = 3
    min_straight_in: float = 24.0
    first_run_in: float = 0.0  # straight between the collar and the first elbow
    last_run_in: float = 0.0  # straight between the last elbow and the cap
    clearance_in: float = 0.25
    stock_in: float = 60.0
    overlap_in: float = 1.5
    offset_angles_deg: tuple[float, ...] = (45.0, 30.0)
    offset_max_in: float = 24.0
    boxing_allowed: bool = True
    transition_in: float = 6.0  # length of a fitting that changes the section
    sheet_in: float | None = None  # thickness of the sheet metal, when known
    insulation_r: float | None = None  # R-value wrapped around it in unheated places, when decided


@dataclass(frozen=True, slots=True)
class Cap:
    """Termination fittings that may be used."""

    wall: bool = True
    roof: bool = True
    damper: bool = True
    wall_flange_in: float | None = None  # None: section + 4 in
    roof_stub_in: float = 8.0  # duct above the roof surface along its axis
    loss_coefficient: float | None = None
    overlap_in: float | None = None  # how far the cap takes the duct; None: 1 1/2 in, common practice
