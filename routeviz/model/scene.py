"""The scene: what a person measured in the room, as frozen records.

Lengths are inches. Positions are distances as seen from the room: `left` from the left end of the hood wall
(+x), `out` from the finished hood wall into the room (-y), heights above the finished floor (+z). On the left
and right walls, `left` counts out from the hood wall. The finished hood wall is the plane y = 0; the finished
left wall is x = 0.

The records stand by subject in ``kinds``, ``house`` and ``equipment``; this module adds what concerns the whole scene and
is where the rest of the program imports all of them from.
"""

from __future__ import annotations

from collections.abc import Collection
from dataclasses import dataclass, field

from routeviz.model.equipment import (
    Burner,
    Cap,
    Cooktop,
    Cover,
    DuctChoice,
    Electrical,
    Fan,
    Fastener,
    Hood,
    Outlet,
    SectionSize,
)
from routeviz.model.house import (
    Above,
    Beam,
    Ceiling,
    Kitchen,
    Layer,
    MemberLayout,
    Obstacle,
    Opening,
    Roof,
    Service,
    Space,
    Wall,
)
from routeviz.model.kinds import (
    AboveKind,
    CooktopKind,
    MemberKind,
    ObstacleKind,
    OpeningKind,
    OutdoorKind,
    RoofForm,
    RunDirection,
    SectionShape,
    ServiceKind,
    SpaceKind,
    WallFrame,
    WallSide,
)

__all__ = [
    "MARKED",
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
]


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
    joist_flange_in: float | None = None  # depth of an I-joist's flange
    document: str = "maker's instructions"


@dataclass(frozen=True, slots=True)
class Waiver:
    """A finding that someone answers for, with a reason that is printed everywhere."""

    code: str
    reason: str
    by: str = ""

    def answers_for(self, code: str, things: Collection[str]) -> bool:
        """Tell whether it answers for a rule's finding about these things; ``CODE:thing`` answers for one thing alone."""
        own, _, thing = self.code.strip().partition(":")
        return own.upper() == code and (not thing or thing in things)

    @property
    def words(self) -> str:
        """Give the reason and who answers."""
        return self.reason + (f" ({self.by})" if self.by else "")


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


MARKED = "marked as guessed in the scene file"


@dataclass(frozen=True, slots=True)
class Assumption:
    """A number nobody measured: which field, what was taken, and why."""

    field: str
    value: str
    reason: str

    @property
    def marked(self) -> bool:
        """Whether the scene file itself lists the field as guessed."""
        return self.reason == MARKED


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
