"""The roof's form: straight slopes as lines z = a + b u over the coordinate across the ridge."""

from __future__ import annotations

from dataclasses import dataclass

from routeviz.framing.levels import EaveLine
from routeviz.framing.place import House, sides_of
from routeviz.model.roofline import follows_rafters, roof_lines, room_edges, stretch_of
from routeviz.model.scene import Roof, RunDirection, WallSide

__all__ = ["RoofShape", "Slope", "is_cathedral", "roof_shape"]

_FLAT = 1e-9


@dataclass(frozen=True, slots=True)
class Slope:
    """One slope: underside of its rafters (or deck) z = a + b u for lo <= u <= hi [in].

    `u` is x when the ridge runs out from the hood wall, else y. `lo` and `hi` include the overhang.
    """

    name: str  # "back", "front", "left" or "right": where it falls to; "" when it is the only one
    a: float
    b: float
    lo: float
    hi: float

    def z(self, u: float) -> float:
        """Give the underside's height at `u`."""
        return self.a + self.b * u

    @property
    def stretch(self) -> float:
        """Give the vertical height of a sheet over its thickness: 1 / cos of the slope."""
        return stretch_of(self.b)

    def band(self, bottom: float, top: float, lo: float, hi: float) -> list[tuple[float, float]]:
        """Give the outline (u, z) of a sheet between two vertical heights above the underside."""
        return [(lo, self.z(lo) + bottom), (hi, self.z(hi) + bottom), (hi, self.z(hi) + top), (lo, self.z(lo) + top)]


@dataclass(frozen=True, slots=True)
class RoofShape:
    """All slopes over the kitchen, from low u to high u, and what they are made of."""

    roof: Roof
    axis: int  # along the ridge: 0 (x) or 1 (y); sections lie in (u, z)
    slopes: tuple[Slope, ...]
    ridge_u: float | None
    along: tuple[float, float]  # extent along the ridge, overhangs included
    eaves: tuple[WallSide, ...]  # walls under a low edge of the roof
    frame_in: float  # depth of rafters or top chords, square to the slope; 0 without
    base: float  # top of the joists, chords or plates that the space under the roof begins on

    def slope_at(self, u: float) -> Slope:
        """Give the slope over `u`."""
        return next((s for s in self.slopes if u <= s.hi + _FLAT), self.slopes[-1])

    def underside(self, u: float) -> float:
        """Give the height of the rafters' underside."""
        return self.slope_at(u).z(u)

    def rise(self, slope: Slope, layers: int | None = None) -> float:
        """Give the vertical height from the underside to the top of the framing and the first `layers` sheets."""
        sheets = self.roof.layers if layers is None else self.roof.layers[:layers]
        return (self.frame_in + sum(layer.thickness_in for layer in sheets)) * slope.stretch

    def surface(self, u: float) -> float:
        """Give the height of the roof's outer surface."""
        slope = self.slope_at(u)
        return slope.z(u) + self.rise(slope)

    def tops(self, lo: float, hi: float, layers: int | None = None) -> list[tuple[float, float]]:
        """Give the top of the framing and the first `layers` sheets from `lo` to `hi` as points (u, z)."""
        return [(u, self.underside(u) + self.rise(self.slope_at(u), layers)) for u in self.profile(lo, hi)]

    def skyline(self, lo: float, hi: float) -> list[tuple[float, float]]:
        """Give the outer surface from `lo` to `hi` as points (u, z); slopes of unlike pitch meet in a step."""
        found: list[tuple[float, float]] = []
        for slope in self.slopes:
            ends = max(lo, slope.lo), min(hi, slope.hi)
            if ends[1] - ends[0] > _FLAT:
                found += [(u, slope.z(u) + self.rise(slope)) for u in ends]
        return [
            p
            for i, p in enumerate(found)
            if i == 0 or max(abs(p[0] - found[i - 1][0]), abs(p[1] - found[i - 1][1])) > _FLAT
        ]

    def profile(self, lo: float, hi: float) -> list[float]:
        """Give the u at which a section from `lo` to `hi` has corners."""
        corners = [s.hi for s in self.slopes[:-1] if lo < s.hi < hi]
        return [lo, *corners, hi]


def is_cathedral(house: House) -> bool:
    """Whether the ceiling follows the rafters."""
    return follows_rafters(house.scene)


def roof_shape(house: House, eave: EaveLine) -> RoofShape | None:
    """Lay the scene's roof over the house.

    Parameters
    ----------
    house : House
        Walls and levels.
    eave : EaveLine
        Where it begins.

    Returns
    -------
    RoofShape or None
        None when the scene has no roof.
    """
    roof = house.scene.roof
    if roof is None:
        return None
    axis = 0 if roof.ridge is RunDirection.ALONG else 1
    across = 1 - axis
    edges = (
        room_edges(house.scene, roof) if is_cathedral(house) else (house.core[2 * across], house.core[2 * across + 1])
    )
    laid = roof_lines(house.scene, roof, edges, eave.underside)
    lo, hi = _reach(house, roof, across)
    cuts = [lo, *([laid.ridge_u] if laid.ridge_u is not None else []), hi]
    slopes = tuple(Slope(s.name, s.a, s.b, cuts[i], cuts[i + 1]) for i, s in enumerate(laid.lines))
    along = _reach(house, roof, axis)
    depth = roof.framing.depth_in if roof.framing else 0.0
    return RoofShape(roof, axis, slopes, laid.ridge_u, along, laid.eaves, depth, eave.base)


def _reach(house: House, roof: Roof, axis: int) -> tuple[float, float]:
    """Give the roof's extent along an axis: the overhang counts from the core of an outer wall, and covers its layers."""
    low, high = sides_of(axis)
    lo, hi = house.outer[2 * axis], house.outer[2 * axis + 1]
    if house.outdoors(low):
        lo = min(lo, house.core[2 * axis] - roof.overhang_in)
    if house.outdoors(high):
        hi = max(hi, house.core[2 * axis + 1] + roof.overhang_in)
    return lo, hi
