"""The scene: what a person measured in the room, as frozen records.

Lengths are inches. Positions are distances as seen from the room: `left` from the left end of the hood wall
(+x), `out` from the finished hood wall into the room (-y), heights above the finished floor (+z). On the left
and right walls, `left` counts out from the hood wall. The finished hood wall is the plane y = 0; the finished
left wall is x = 0.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from enum import StrEnum

__all__ = [
    "Above",
    "AboveKind",
    "AsBuilt",
    "AsBuiltFitting",
    "Assumption",
    "Beam",
    "Burner",
    "Cap",
    "Ceiling",
    "Cooktop",
    "CooktopKind",
    "Cover",
    "DuctChoice",
    "Electrical",
    "Fan",
    "Fastener",
    "Hood",
    "Kitchen",
    "Layer",
    "MakerLimits",
    "MemberKind",
    "MemberLayout",
    "Obstacle",
    "ObstacleKind",
    "Opening",
    "OpeningKind",
    "OutdoorKind",
    "OutdoorThing",
    "Outlet",
    "Roof",
    "RoofForm",
    "RuleChoice",
    "RunDirection",
    "Scene",
    "SectionShape",
    "SectionSize",
    "Service",
    "ServiceKind",
    "Site",
    "Space",
    "SpaceKind",
    "Tolerances",
    "Waiver",
    "Wall",
    "WallFrame",
    "WallSide",
]  # fmt: skip


class WallSide(StrEnum):
    """A wall of a space, as seen from the room by someone who faces the hood."""

    HOOD = "hood"
    LEFT = "left"
    RIGHT = "right"
    FRONT = "front"


class WallFrame(StrEnum):
    """What carries a wall."""

    WOOD = "wood"
    STEEL = "steel"
    MASONRY = "masonry"
    CONCRETE = "concrete"
    LOG = "log"


class MemberKind(StrEnum):
    """What a repeated or single framing member is; decides which cutting rule applies."""

    SAWN = "sawn"
    I_JOIST = "i-joist"
    OPEN_WEB = "open-web"
    TRUSS = "truss"
    ENGINEERED = "engineered"
    STEEL = "steel"
    FURRING = "furring"


class RunDirection(StrEnum):
    """Which way joists, rafters, beams or a ridge run."""

    OUT = "out"  # square to the hood wall
    ALONG = "along"  # parallel to the hood wall


class SpaceKind(StrEnum):
    """What a space is; only outdoors counts as outdoors."""

    KITCHEN = "kitchen"
    ROOM = "room"
    GARAGE = "garage"
    PORCH = "porch"
    ATTIC = "attic"
    STOREY = "storey"
    SHAFT = "shaft"
    CRAWL = "crawl"
    CHASE = "chase"
    OUTDOORS = "outdoors"


class AboveKind(StrEnum):
    """What lies above the kitchen ceiling."""

    ATTIC = "attic"
    STOREY = "storey"
    ROOF = "roof"  # cathedral: the ceiling board is fixed to the rafters or to joists right under the deck
    SLAB = "slab"  # concrete ceiling with another flat or floor on it


class RoofForm(StrEnum):
    """Shape of the roof over the kitchen."""

    GABLE = "gable"
    SHED = "shed"
    FLAT = "flat"


class OpeningKind(StrEnum):
    """A hole for people or light in a wall."""

    WINDOW = "window"
    DOOR = "door"


class ServiceKind(StrEnum):
    """Something live or needed inside a wall or bay."""

    CABLE = "cable"
    GAS = "gas"
    WATER = "water"
    DRAIN = "drain"
    RETURN_AIR = "return air"
    DUCT = "duct"
    FLUE = "flue"


class ObstacleKind(StrEnum):
    """A thing in the way, or a place that can hide a duct."""

    CABINET = "cabinet"
    SOFFIT = "soffit"
    BEAM = "beam"
    PIPE = "pipe"
    TRUNK = "trunk"
    LIGHT = "light"
    UNIT = "unit"
    CHASE = "chase"
    DUCT = "existing duct"
    HOLE = "existing hole"
    OTHER = "other"


class OutdoorKind(StrEnum):
    """A thing outdoors that a cap must keep away from."""

    OPERABLE_WINDOW = "operable window"
    FIXED_WINDOW = "fixed window"
    DOOR = "door"
    MECHANICAL_INTAKE = "mechanical air intake"
    GRAVITY_INTAKE = "gravity air intake"
    LOT_LINE = "lot line"
    SOFFIT_VENT = "soffit vent"
    METER = "gas meter"
    REGULATOR = "gas regulator"
    UNIT = "outdoor unit"
    WALKWAY = "walkway"
    OTHER = "other"


class SectionShape(StrEnum):
    """Shape of a duct across its run."""

    ROUND = "round"
    RECT = "rectangular"
    OVAL = "oval"


class CooktopKind(StrEnum):
    """How the cooktop heats."""

    ELECTRIC = "electric"
    INDUCTION = "induction"
    GAS = "gas"


@dataclass(frozen=True, slots=True)
class Layer:
    """A sheet on a wall, ceiling, floor or roof, counted from the room outwards."""

    material: str
    thickness_in: float


@dataclass(frozen=True, slots=True)
class MemberLayout:
    """Repeated members: dressed section, spacing and where the first one stands.

    `first_in` is the centre of the first member from the reference edge: the left end of the hood wall for
    members that run `out`, the hood wall for members that run `along`. `at_in`, when given, lists measured
    centres and replaces the even layout. `doubled` and `missing` count members from 1.
    """

    kind: MemberKind
    size: str
    width_in: float
    depth_in: float
    spacing_in: float
    first_in: float
    direction: RunDirection = RunDirection.OUT
    at_in: tuple[float, ...] = ()
    doubled: tuple[int, ...] = ()
    missing: tuple[int, ...] = ()


@dataclass(frozen=True, slots=True)
class Opening:
    """A window or door in a wall; rough opening."""

    id: str
    kind: OpeningKind
    operable: bool
    left_in: float
    sill_in: float
    width_in: float
    height_in: float


@dataclass(frozen=True, slots=True)
class Service:
    """A cable, pipe or return-air bay inside a wall; a box in the wall's own measures."""

    id: str
    kind: ServiceKind
    left_in: float
    bottom_in: float
    width_in: float
    height_in: float
    clearance_in: float = 0.0
    movable: bool = False


@dataclass(frozen=True, slots=True)
class Wall:
    """One wall of a space. `inside` and `outside` are layers from the cavity to each face."""

    side: WallSide
    beyond: str  # "outdoors" or the id of a space
    frame: WallFrame
    studs: MemberLayout | None
    core_in: float  # depth of studs, or thickness of masonry, concrete or log
    bearing: bool
    fire_rated: bool
    inside: tuple[Layer, ...]
    outside: tuple[Layer, ...]
    plates: int = 3  # one bottom, two top
    openings: tuple[Opening, ...] = ()
    services: tuple[Service, ...] = ()
    lot_line_in: float | None = None

    @property
    def thickness_in(self) -> float:
        """Finished face to outer face [in]."""
        return self.core_in + sum(layer.thickness_in for layer in self.inside + self.outside)


@dataclass(frozen=True, slots=True)
class Beam:
    """A single beam, header or doubled member across the joists; a box with its own place."""

    id: str
    kind: MemberKind
    width_in: float
    depth_in: float
    direction: RunDirection
    at_in: float  # centre line, from the left (runs out) or out from the hood wall (runs along)
    bottom_in: float  # above the finished floor
    start_in: float | None = None
    end_in: float | None = None


@dataclass(frozen=True, slots=True)
class Kitchen:
    """The kitchen as a box: finished sizes."""

    width_in: float  # along the hood wall
    depth_in: float  # out from the hood wall
    ceiling_in: float  # finished floor to finished ceiling


@dataclass(frozen=True, slots=True)
class Space:
    """What lies beyond a wall: a box behind it. Sizes are clear inside."""

    id: str
    kind: SpaceKind
    beyond: WallSide  # the kitchen wall that it lies behind
    deep_in: float  # square to that wall
    left_in: float  # where it begins along that wall
    width_in: float
    floor_in: float
    height_in: float
    walls: tuple[Wall, ...]  # FRONT = its far wall, LEFT and RIGHT as seen from the kitchen
    duct_allowed: bool  # may a sealed metal duct pass through it to outdoors
    above: str = "outdoors"


@dataclass(frozen=True, slots=True)
class Ceiling:
    """Ceiling board, joists and what is hung in them."""

    layers: tuple[Layer, ...]
    joists: MemberLayout | None
    beams: tuple[Beam, ...] = ()
    blocking_in: tuple[float, ...] = ()  # lines of solid blocking or bridging, from the joist layout's other edge
    rim: bool = True
    slab_in: float = 0.0  # thickness of a concrete ceiling


@dataclass(frozen=True, slots=True)
class Above:
    """What lies above the ceiling."""

    kind: AboveKind
    storey_height_in: float = 0.0  # finished floor to finished ceiling of the storey above
    floor_layers: tuple[Layer, ...] = ()


@dataclass(frozen=True, slots=True)
class Roof:
    """The roof over the kitchen. The eave line is the top of the wall plates (or of the joists on them)."""

    form: RoofForm
    pitch: float  # rise over run
    ridge: RunDirection  # ALONG: ridge parallel to the hood wall
    ridge_at_in: float  # where the ridge is: out from the hood wall (ALONG) or from the left (OUT)
    overhang_in: float
    framing: MemberLayout | None  # rafters or trusses; they run square to the ridge
    layers: tuple[Layer, ...]  # deck and covering, from the inside out
    high_side: WallSide | None = None  # shed roofs: the wall at the high edge
    soffit_vented: bool = False


@dataclass(frozen=True, slots=True)
class Obstacle:
    """A thing in the way, or a place that hides a duct, as a box in the kitchen's measures.

    `out_in` may be negative for a thing beyond the hood wall.
    """

    id: str
    kind: ObstacleKind
    left_in: float
    out_in: float
    bottom_in: float
    width_in: float
    depth_in: float
    height_in: float
    clearance_in: float = 0.0
    combustible: bool = True
    protected: bool = False
    cut_allowed: bool = False
    hides_duct: bool = False
    diameter_in: float | None = None  # of an existing hole or duct
    ends_at: str = ""  # where an existing duct ends, "" when nobody knows


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


@dataclass(frozen=True, slots=True)
class OutdoorThing:
    """Something outdoors that the cap must keep away from; a rectangle on (or before) a face.

    Window and door openings of the scene's walls are added by themselves and need not be repeated.
    """

    id: str
    kind: OutdoorKind
    face: str  # hood, left, right, front, roof, or "space/side"
    left_in: float
    bottom_in: float
    width_in: float
    height_in: float
    away_in: float = 0.0  # how far it stands off the face


@dataclass(frozen=True, slots=True)
class MakerLimits:
    """What the makers' instructions say; overrides the profile."""

    hood_min_in: float | None = None  # cooking surface to hood
    hood_max_in: float | None = None
    cabinet_above_in: float | None = None
    side_clearance_in: float | None = None
    side_cabinet_up_in: float | None = None
    duct_min_in: float | None = None
    max_equivalent_ft: float | None = None
    member_hole_in: float | None = None  # largest hole that the joist maker's chart allows here
    document: str = "maker's instructions"


@dataclass(frozen=True, slots=True)
class Waiver:
    """A finding that someone answers for, with a reason that is printed everywhere."""

    code: str
    reason: str
    by: str = ""


@dataclass(frozen=True, slots=True)
class RuleChoice:
    """Which rule profile applies, and what overrides it."""

    profile: str
    maker: MakerLimits = field(default_factory=MakerLimits)
    waivers: tuple[Waiver, ...] = ()
    open_flue_appliance: bool | None = None
    tight_house: bool | None = None
    makeup_air: bool | None = None  # makeup air is planned or there


@dataclass(frozen=True, slots=True)
class AsBuiltFitting:
    """One fitting of a route that exists or is proposed, in order from the hood.

    `part` is straight, elbow, offset, reducer, flex, cap or open end; `turn` names where an elbow turns to:
    up, down, left, right, back (through the hood wall) or front.
    """

    part: str
    length_in: float = 0.0
    angle_deg: float = 90.0
    turn: str = ""
    to_section: SectionSize | None = None
    ends_in: str = ""


@dataclass(frozen=True, slots=True)
class AsBuilt:
    """A route to be checked instead of searched."""

    fittings: tuple[AsBuiltFitting, ...]
    material: str = "galvanized steel"
    note: str = ""
    screws_per_joint: int | None = None


@dataclass(frozen=True, slots=True)
class Tolerances:
    """How far each measured group may be off [in]; 0 means taken as exact."""

    studs_in: float = 0.0
    joists_in: float = 0.0
    rafters_in: float = 0.0
    openings_in: float = 0.0
    other_in: float = 0.0


@dataclass(frozen=True, slots=True)
class Site:
    """Where the house stands, as far as air and snow go."""

    altitude_ft: float = 0.0
    air_temp_f: float = 70.0
    cold_climate: bool = False
    snow_in: float | None = None


@dataclass(frozen=True, slots=True)
class Assumption:
    """A number nobody measured: which field, what was taken, and why."""

    field: str
    value: str
    reason: str


@dataclass(frozen=True, slots=True)
class Scene:
    """Everything that is known about one kitchen before the first hole."""

    name: str
    about: str
    file: str
    metric: bool
    invented: bool
    site: Site
    kitchen: Kitchen
    walls: tuple[Wall, ...]  # the kitchen's: hood, left, right, front
    ceiling: Ceiling
    above: Above
    roof: Roof | None
    spaces: tuple[Space, ...]
    obstacles: tuple[Obstacle, ...]
    cooktop: Cooktop
    hood: Hood
    duct: DuctChoice
    cap: Cap
    outdoors: tuple[OutdoorThing, ...]
    rules: RuleChoice
    as_built: AsBuilt | None
    tolerances: Tolerances
    assumptions: tuple[Assumption, ...]

    def wall(self, side: WallSide) -> Wall:
        """Give the kitchen's wall on `side`.

        Raises
        ------
        KeyError
            If the scene has no such wall (a scene read from a file always has all four).
        """
        for wall in self.walls:
            if wall.side is side:
                return wall
        raise KeyError(side)

    @property
    def hood_bottom_in(self) -> float | None:
        """Underside of the hood above the floor [in], when the mounting height is given."""
        return None if self.hood.mount_in is None else self.cooktop.height_in + self.hood.mount_in

    def transition_in(self, section: SectionSize) -> float:
        """Give the length [in] of the fitting between the hood's outlet and a duct of `section`; 0 if they agree."""
        return 0.0 if self.hood.outlet.section == section else self.duct.transition_in
