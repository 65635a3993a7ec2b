"""What to buy, mark, drill and cut."""

from __future__ import annotations

from dataclasses import dataclass

from routeviz.model.solids import Vec3

__all__ = ["BuyLine", "Cut", "Hole", "Mark", "MeasureFirst", "Step", "StockPlan", "TakeOff"]


@dataclass(frozen=True, slots=True)
class BuyLine:
    """One line of the parts list."""

    item: str
    size: str
    count: float
    unit: str  # "each", "ft", "roll", ...
    note: str = ""
    parts: tuple[str, ...] = ()  # ids of the route parts it covers


@dataclass(frozen=True, slots=True)
class Cut:
    """One piece of duct to cut: its finished visible length and its cut length with overlap."""

    id: str
    part: str
    visible_in: float
    cut_in: float
    stock: int  # which stock section it comes from, from 1
    note: str = ""


@dataclass(frozen=True, slots=True)
class StockPlan:
    """How many stock sections the cuts need, and whether fewer is impossible."""

    stock_in: float
    count: int
    bound: int
    proven: bool
    waste_in: float


@dataclass(frozen=True, slots=True)
class Hole:
    """One hole with its centre from two edges that a tape can hook on."""

    solid: str
    layer: str
    shape: str
    size_in: tuple[float, float]
    from_left_in: float  # from the finished left wall (or out from the hood wall on side walls)
    from_left_name: str
    from_other_in: float
    from_other_name: str
    from_centre_in: float | None  # off the hood's centre line
    centre: Vec3
    note: str = ""


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
