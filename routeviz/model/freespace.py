"""The search's problem in whole ticks: what blocks, what costs, where a duct may start and leave.

Everything here is a whole number of ticks (`routeviz.units.TICKS_PER_IN`), so that comparisons are exact. Shapes are
open: a duct may touch them. Barriers are already grown by the gap that the duct must keep; they are not grown by the
duct's own size, because a run, an elbow and an offset each have another body.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

import numpy as np
import numpy.typing as npt

from routeviz.model.scene import SectionSize
from routeviz.model.solids import FaceKind
from routeviz.units import TICKS_PER_IN

__all__ = [
    "Barrier", "BarrierKind", "Exit", "FreeSpace", "Ints", "KeepClear", "Limits", "OffsetChoice", "Region", "Section",
    "Start", "Ticks",
]  # fmt: skip

Ticks = tuple[int, int, int]
Ints = npt.NDArray[np.int64]


@dataclass(frozen=True, slots=True)
class Region:
    """An open box, or an open convex prism inside that box [ticks].

    A prism is swept along `axis`; `outline` holds its corners in the two other axes, in axis order. For a box
    `axis` is -1 and `outline` is empty. `lo` and `hi` are the bounding box in both cases.
    """

    lo: Ticks
    hi: Ticks
    axis: int = -1
    outline: tuple[tuple[int, int], ...] = ()


class BarrierKind(StrEnum):
    """Why something blocks."""

    SOLID = "solid"  # never crossed
    SHEET = "sheet"  # crossed squarely by a run; holds no elbow and no run lengthwise
    MEMBER = "member"  # the same, but its own cutting rule decides
    CLOSED = "closed"  # a place that a duct may not enter
    OUTDOORS = "outdoors"  # only the last run may end in it


@dataclass(frozen=True, slots=True)
class Barrier:
    """Something that blocks runs along some axes and, always, the bodies of elbows and offsets."""

    id: str  # of the solid or zone
    label: str
    kind: BarrierKind
    region: Region
    runs: tuple[bool, bool, bool]  # whether it blocks runs along x, y, z
    across: tuple[bool, bool, bool] = (False, False, False)  # along which a framing member lies crosswise to a run
    grown: int = 0  # by how much the region is larger than the thing, for its clearance [ticks]


@dataclass(frozen=True, slots=True)
class KeepClear:
    """A rectangle on a face that the opening's centre must keep away from.

    The centre lies at least `reach` from the rectangle (rounded corners) or at `above` or higher along the face's
    second axis, and outside the rectangle grown by `flange` on all sides (square corners).
    """

    id: str
    label: str
    lo: tuple[int, int]
    hi: tuple[int, int]
    reach: int
    flange: int
    above: int | None = None

    def holds_off(self, v: int) -> bool:
        """Tell whether the reach counts at a coordinate along the face's second axis."""
        return self.above is None or v < self.above


@dataclass(frozen=True, slots=True)
class Exit:
    """A face through which a duct may leave: where its centre may be, and where its end lies.

    The duct ends at ``rise[0] + rise[1] * u + rise[2] * v`` along `axis`, with u and v the two other axes in axis
    order; for walls both slopes are 0.
    """

    face: str
    label: str
    kind: FaceKind
    axis: int
    sign: int
    rise: tuple[float, float, float]
    lo: tuple[int, int]
    hi: tuple[int, int]
    keep_clear: tuple[KeepClear, ...] = ()

    @property
    def flat(self) -> bool:
        """Whether the duct ends at the same coordinate everywhere."""
        return self.rise[1] == 0.0 and self.rise[2] == 0.0

    def end(self, u: Ints, v: Ints) -> Ints:
        """Give the coordinate where a duct at (u, v) ends, all in ticks; arrays broadcast to one shape."""
        return np.rint(self.rise[0] + self.rise[1] * u + self.rise[2] * v).astype(np.int64)

    def allows(self, u: Ints, v: Ints) -> npt.NDArray[np.bool_]:
        """Tell where the opening's centre may be; exact, rounded corners included. Arrays broadcast."""
        ok = (u >= self.lo[0]) & (u <= self.hi[0]) & (v >= self.lo[1]) & (v <= self.hi[1])
        for k in self.keep_clear:
            du = np.maximum(np.maximum(k.lo[0] - u, u - k.hi[0]), 0)
            dv = np.maximum(np.maximum(k.lo[1] - v, v - k.hi[1]), 0)
            away = np.hypot(du, dv)
            ok = ok & ((away >= k.reach) | (False if k.above is None else v >= k.above))
            ok = ok & ~((u > k.lo[0] - k.flange) & (u < k.hi[0] + k.flange)
                        & (v > k.lo[1] - k.flange) & (v < k.hi[1] + k.flange))  # fmt: skip
        return ok


@dataclass(frozen=True, slots=True)
class Section:
    """Half sizes and centre-line radii of the duct [ticks]; round duct has equal sides and one radius.

    `radius_wide` belongs to a bend in the plane of the wide side (the hard way), `radius_high` to the other.
    """

    size: SectionSize
    half_wide: int
    half_high: int
    radius_wide: int
    radius_high: int

    @property
    def turns(self) -> bool:
        """Whether the section's orientation matters."""
        return self.half_wide != self.half_high or self.radius_wide != self.radius_high


@dataclass(frozen=True, slots=True)
class Start:
    """Where the duct begins: the end of the collar, and the way it goes from there.

    `covered` says that a chimney cover hides the riser, and an elbow with a run straight back to the wall, below
    `cover_top`. `cover_slack` is how far an offset may shift inside the cover: left, right, out, back (always >= 0).
    The reaches are coordinates of the collar: closed intervals, from left to right, where nothing is in the hood's way.
    """

    point: Ticks
    axis: int
    sign: int
    covered: bool = False
    cover_top: int = 0
    cover_slack: tuple[int, int, int, int] = (0, 0, 0, 0)
    wide_axes: tuple[int, ...] = (0, 1, 2)  # how a rectangular section may lie on the collar
    reach_x: tuple[tuple[int, int], ...] = (
        (-(1 << 40), 1 << 40),
    )  # where the collar may go with the hood along the wall
    reach_z: tuple[int, int] | None = None  # and in height; None: the hood's height is not to be changed
    step_z: int = TICKS_PER_IN // 16  # in which steps a height can be written down


@dataclass(frozen=True, slots=True)
class Limits:
    """How a duct must be laid [ticks]."""

    elbows: int
    between: int  # straight between fittings
    first: int  # straight between collar and first fitting
    last: int  # straight between last fitting and cap
    contact: int  # least gap of the duct to itself
    boxing: bool = True  # whether runs in the open room are allowed at a price
    hole: int = 0  # gap all round in a hole that a run passes a sheet by


@dataclass(frozen=True, slots=True)
class OffsetChoice:
    """Two equal elbows of `angle_deg` that shift a run sideways by one of `shifts` [ticks]."""

    angle_deg: float
    shifts: tuple[int, ...]


@dataclass(frozen=True, slots=True)
class FreeSpace:
    """Where the centre line of one section may be, and what it costs to be there."""

    lo: Ticks
    hi: Ticks
    section: Section
    start: Start
    limits: Limits
    barriers: tuple[Barrier, ...]
    boxing: tuple[Region, ...]
    exits: tuple[Exit, ...]
    offsets: tuple[OffsetChoice, ...] = ()
    no_roof: str = "there is no roof to leave through"  # said where a way straight up finds no exit
    bays: tuple[tuple[str, Region], ...] = ()  # named hidden places, later ones overrule earlier ones
