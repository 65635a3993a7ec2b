"""The kinds of things a scene may hold, in the trade's words."""

from __future__ import annotations

from enum import StrEnum

__all__ = [
    "AboveKind",
    "CooktopKind",
    "MemberKind",
    "ObstacleKind",
    "OpeningKind",
    "OutdoorKind",
    "RoofForm",
    "RunDirection",
    "SectionShape",
    "ServiceKind",
    "SpaceKind",
    "WallFrame",
    "WallSide",
]


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
