"""What to buy, mark, drill and cut."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

from routeviz.model.solids import Vec3

__all__ = [
    "Account",
    "BuyLine",
    "CabinetSpace",
    "Cut",
    "Hole",
    "Mark",
    "MeasureFirst",
    "Sheet",
    "Step",
    "StockPlan",
    "TakeOff",
]


_NO_PLURAL = ("ft", "m", "sq ft", "m²")


class Sheet(StrEnum):
    """The sheets of the packet, by the name that steps and drawings use for them."""

    HOOD_WALL = "hood wall"
    JOIST_PLAN = "joist plan"
    SECTION = "section along the duct"
    OUTSIDE = "outside"
    PICTURE = "where it runs"
    CONFLICT = "what is in the way"
    MARKING = "marking"
    PARTS = "parts and cuts"
    CUTS = "cut list"  # where it stands on the sheets of parts and cuts
    HOLES = "holes"
    ORDER = "order of work"
    MEASURE = "measure first"
    FINDINGS = "findings and sources"
    AIR = "air"


@dataclass(frozen=True, slots=True)
class BuyLine:
    """One line of the parts list."""

    item: str
    size: str
    count: float
    unit: str  # "each", "ft", "roll", ...
    note: str = ""
    parts: tuple[str, ...] = ()  # ids of the route parts it covers

    @property
    def words(self) -> str:
        """Say it as on a shopping list: ``6 sheet-metal screws, #8 x 1/2 in`` or ``2 sections of duct, 8 in round``."""
        if self.unit in ("", "each"):
            times = " ×" if self.item[:1].isdigit() else ""
            return f"{self.count:g}{times} {self.item}, {self.size}"
        many = self.unit if self.count == 1 or self.unit in _NO_PLURAL else f"{self.unit}s"
        return f"{self.count:g} {many} of {self.item}, {self.size}"


@dataclass(frozen=True, slots=True)
class Cut:
    """One piece of duct to cut: its finished visible length and its cut length with overlap."""

    id: str
    part: str
    visible_in: float
    cut_in: float
    stock: int  # which stock section it comes from, from 1
    note: str = ""
    section: str = ""  # in words: "8 in round"
    past_in: float = 0.0  # part of the cut length that stands past the outer surface


@dataclass(frozen=True, slots=True)
class StockPlan:
    """How many stock sections the cuts need, and whether fewer is impossible."""

    stock_in: float
    count: int
    bound: int
    proven: bool
    waste_in: float
    section: str = ""  # in words: "8 in round"
    kerf_in: float = 0.0

    @property
    def words(self) -> str:
        """Say how good the count is: ``4 sections; 4 is the least possible``."""
        many = "1 section" if self.count == 1 else f"{self.count} sections"
        if self.proven:
            return f"{many}; {self.bound} is the least possible"
        return f"{many}; best found, at least {self.bound} are needed"


@dataclass(frozen=True, slots=True)
class Account:
    """The route's length [in] as the sum of its parts.

    `straight_in` + `arcs_in` + `others_in` is the length along the centre line; with `take_offs_in` (twice R tan(t/2)
    for each elbow) in place of the arcs it is the length with square corners.
    """

    straight_in: float
    arcs_in: float
    take_offs_in: float
    others_in: float  # transitions, collars, flexible pieces

    @property
    def length_in(self) -> float:
        """Give the length along the centre line [in]."""
        return self.straight_in + self.arcs_in + self.others_in

    @property
    def square_in(self) -> float:
        """Give the length with square corners [in]."""
        return self.straight_in + self.take_offs_in + self.others_in


@dataclass(frozen=True, slots=True)
class Hole:
    """One hole with its centre from two edges that a tape can hook on."""

    solid: str
    layer: str
    shape: str
    size_in: tuple[
        float, float
    ]  # as in `Penetration`: level then upright, or along the hood wall then out, ellipses too
    from_left_in: float  # from the finished left wall (or out from the hood wall on side walls)
    from_left_name: str
    from_other_in: float
    from_other_name: str
    from_centre_in: float | None  # off the hood's centre line
    centre: Vec3
    note: str = ""
    duct_in: tuple[float, float] = (0.0, 0.0)  # the duct's own sides in this layer
    outside: str = ""  # how to find the same centre from outside
    group: int = 0  # holes on one line through the same wall, ceiling or roof share a number, from 1
    member: str = ""  # clear distances to the nearest members, in words
    sides: tuple[str, str] = ("", "")  # which way the two sizes lie, in words; empty where it does not matter

    @property
    def lies(self) -> str:
        """Say which way an oblong hole lies: "wide x high"; "" for a round, square or elliptic one."""
        oblong = self.shape not in ("round", "ellipse") and abs(self.size_in[0] - self.size_in[1]) > 1 / 64
        return " x ".join(self.sides) if oblong and all(self.sides) else ""


@dataclass(frozen=True, slots=True)
class Mark:
    """One fastener mark on the wall or ceiling."""

    label: str
    left_in: float
    height_in: float
    holds: str  # "stud 5" or "board only"
    fastener: str
    pilot_in: float
    wood: bool
    stand_off_in: float = 0.0  # how far the screw is left proud
    source: str = "common practice"
    row: str = "upper"  # "upper", "lower" or "bracket"
    edge_in: float | None = None  # from the screw to the nearest edge of the wood
    backed: bool = False  # it goes into backing that is let in first
    bay_in: tuple[float, float] | None = None  # from the left wall: both ends of the backing that it goes into
    opening_in: float = 0.0  # how high the board is opened for that backing, its screws in the middle
    at_edge_of: str = ""  # the member at whose edge it stands, too near to hold there
    piece: str = ""  # how the piece that it holds lies, in words
    screw: str = ""  # the screw that goes into an anchor or plug; "" where the fastener is the screw
    gap_in: float = 0.0  # between the wall's face and the masonry that the screw holds in: packed first

    @property
    def driven(self) -> str:
        """Say what is driven: ``1/4 x 3 in wood screw``, or ``masonry anchor, 1/4 x 4 1/2 in screw``."""
        return f"{self.fastener.partition(' for a ')[0]}, {self.screw}" if self.screw else self.fastener


@dataclass(frozen=True, slots=True)
class Step:
    """One step of the work; `after` names the steps that must be done before."""

    id: str
    text: str
    after: tuple[str, ...]
    hold: str = ""  # what must be true before going on
    caution: str = ""
    drawing: str = ""


@dataclass(frozen=True, slots=True)
class MeasureFirst:
    """A number to check before cutting, with the slack that the route has there."""

    what: str
    assumed: str
    slack_in: float
    changes_at: str  # the number that would change the plan
    ids: tuple[str, ...] = ()
    tolerance_in: float = 0.0  # how far the scene says it may be off
    assumed_only: bool = False  # nobody measured it


@dataclass(frozen=True, slots=True)
class CabinetSpace:
    """What a duct, boxed in with its clearance, takes of one cabinet [in3]."""

    obstacle: str
    label: str
    lost_in3: float
    of_in3: float


@dataclass(frozen=True, slots=True)
class TakeOff:
    """Everything counted for one route."""

    buy: tuple[BuyLine, ...]
    cuts: tuple[Cut, ...]
    stock: tuple[StockPlan, ...]
    holes: tuple[Hole, ...]
    marks: tuple[Mark, ...]
    steps: tuple[Step, ...]
    measure_first: tuple[MeasureFirst, ...]
    account: Account = Account(0.0, 0.0, 0.0, 0.0)
    cabinets: tuple[CabinetSpace, ...] = ()
