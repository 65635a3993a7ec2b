"""The house round the hood: walls, ceiling, roof, spaces and what stands in the way. Lengths are inches."""

from __future__ import annotations

from dataclasses import dataclass

from routeviz.model.kinds import (
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
)

__all__ = [
    "Above",
    "Beam",
    "Ceiling",
    "Kitchen",
    "Layer",
    "MemberLayout",
    "Obstacle",
    "Opening",
    "Roof",
    "Service",
    "Space",
    "Wall",
]


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
    """The roof over the kitchen.

    `heel_in` is the height from the top of the wall plates to the top of the rafters or trusses, plumb over the outer
    face of the studs. None: nobody measured it, and the roof is taken to stand on the joists, chords or plates there.
    """

    form: RoofForm
    pitch: float  # rise over run
    ridge: RunDirection  # ALONG: ridge parallel to the hood wall
    ridge_at_in: float  # where the ridge is: out from the hood wall (ALONG) or from the left (OUT)
    overhang_in: float
    framing: MemberLayout | None  # rafters or trusses; they run square to the ridge
    layers: tuple[Layer, ...]  # deck and covering, from the inside out
    high_side: WallSide | None = None  # shed roofs: the wall at the high edge
    soffit_vented: bool = False
    heel_in: float | None = None


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
