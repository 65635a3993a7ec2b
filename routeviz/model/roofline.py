"""The roof's lines over the kitchen: which way each slope falls, how steeply, and from where. Framing lays its roof on them."""

from __future__ import annotations

import math
from dataclasses import dataclass

from routeviz.model.scene import AboveKind, MemberKind, Roof, RoofForm, RunDirection, Scene, WallSide

__all__ = [
    "RoofLine",
    "RoofLines",
    "across_walls",
    "eave_on_rafters_in",
    "follows_rafters",
    "on_rafters",
    "roof_lines",
    "room_edges",
    "stretch_of",
]

_STEEPEST = math.tan(math.radians(60))


def stretch_of(pitch: float) -> float:
    """Give the plumb height of a sheet or rafter over its depth square to a slope: 1 / cos of the slope."""
    return math.hypot(1.0, pitch)


@dataclass(frozen=True, slots=True)
class RoofLine:
    """One slope: the underside of its rafters z = a + b u [in], u across the ridge in the house frame (x, or y)."""

    name: str  # "back", "front", "left" or "right": where it falls to; "" when it is the only one
    a: float
    b: float

    @property
    def stretch(self) -> float:
        """Give the vertical height of a sheet over its thickness: 1 / cos of the slope."""
        return stretch_of(self.b)


@dataclass(frozen=True, slots=True)
class RoofLines:
    """The slopes from low u to high u, where they meet, and the walls under a low edge."""

    lines: tuple[RoofLine, ...]
    ridge_u: float | None
    eaves: tuple[WallSide, ...]

    def over(self, u: float) -> RoofLine:
        """Give the slope over `u`."""
        return self.lines[0] if self.ridge_u is None or u <= self.ridge_u else self.lines[-1]


def follows_rafters(scene: Scene) -> bool:
    """Whether the scene's ceiling is fixed to the rafters."""
    roof, ceiling = scene.roof, scene.ceiling
    framed = roof.framing.kind if roof is not None and roof.framing is not None else None
    return roof is not None and on_rafters(
        scene.above.kind, joists=ceiling.joists is not None, slab=ceiling.slab_in > 0, framed=framed
    )


def on_rafters(above: AboveKind, *, joists: bool, slab: bool, framed: MemberKind | None) -> bool:
    """Whether a ceiling is fixed to the rafters: a roof above, and neither joists nor a slab nor trusses between.

    `framed` is what the roof is framed with.
    """
    return above is AboveKind.ROOF and not joists and not slab and framed is not MemberKind.TRUSS


def eave_on_rafters_in(scene: Scene, roof: Roof) -> float:
    """Give where the rafters' underside begins over a ceiling that follows them [in]: its boards lie square to the slope."""
    return scene.kitchen.ceiling_in + sum(layer.thickness_in for layer in scene.ceiling.layers) * stretch_of(roof.pitch)


def room_edges(scene: Scene, roof: Roof) -> tuple[float, float]:
    """Give the finished room's edges across the ridge, where rafters that carry its ceiling are measured from."""
    return (-scene.kitchen.depth_in, 0.0) if roof.ridge is RunDirection.ALONG else (0.0, scene.kitchen.width_in)


def across_walls(roof: Roof) -> tuple[WallSide, WallSide]:
    """Give the two kitchen walls on either side of the ridge, low coordinate first."""
    return (WallSide.FRONT, WallSide.HOOD) if roof.ridge is RunDirection.ALONG else (WallSide.LEFT, WallSide.RIGHT)


def roof_lines(scene: Scene, roof: Roof, edges: tuple[float, float], eave: float) -> RoofLines:
    """Lay the roof's slopes.

    Parameters
    ----------
    scene : Scene
        The house under the roof.
    roof : Roof
        Its roof.
    edges : two floats
        Coordinates across the ridge at which a slope comes down to the eave line [in].
    eave : float
        Height of the eave line [in].
    """
    low, high = across_walls(roof)
    lo, hi = edges
    along = roof.ridge is RunDirection.ALONG
    if roof.form is not RoofForm.GABLE:
        up = roof.high_side or (low if along else high)
        rising = roof.pitch if up is high else -roof.pitch
        at = hi if up is low or (along and follows_rafters(scene)) else lo
        return RoofLines((RoofLine("", eave - rising * at, rising + 0.0),), None, (low if up is high else high,))
    ridge = -roof.ridge_at_in if along else roof.ridge_at_in
    names = ("front", "back") if along else ("left", "right")
    if ridge <= lo or ridge >= hi:  # the ridge lies beyond the kitchen: one slope is all there is of it
        falls_low = ridge >= hi
        slope, at = (roof.pitch, lo) if falls_low else (-roof.pitch, hi)
        return RoofLines((RoofLine("", eave - slope * at, slope),), None, (low if falls_low else high,))
    rise, top = _gable_rises(scene, roof, {low: ridge - lo, high: hi - ridge})
    top += eave
    first = RoofLine(names[0], top - rise[low] * ridge, rise[low])
    return RoofLines((first, RoofLine(names[1], top + rise[high] * ridge, -rise[high])), ridge, (low, high))


def _anchor_side(scene: Scene, low: WallSide, high: WallSide, run: dict[WallSide, float]) -> WallSide:
    """Choose the wall that holds the roof: under rafters with a ceiling the hood wall, else an eave wall outdoors.

    Without any wall outdoors it is the one farther from the ridge, so that the roof clears the other.
    """
    if follows_rafters(scene) and high is WallSide.HOOD:
        return high
    preferred = (high, low) if high is WallSide.HOOD else (low, high)
    return next((s for s in preferred if _outdoors(scene, s)), max(run, key=lambda side: run[side]))


def _outdoors(scene: Scene, side: WallSide) -> bool:
    return scene.wall(side).beyond == "outdoors"


def _gable_rises(scene: Scene, roof: Roof, run: dict[WallSide, float]) -> tuple[dict[WallSide, float], float]:
    """Give the rise over run of both slopes and the ridge's height above the eave line.

    The anchor wall's slope has the scene's pitch. The other has the same pitch, or less where it would come down
    below the far wall's plate, or, where both walls are eaves, what joins ridge and plate (at most 60 degrees).
    """
    low, high = run
    anchor = _anchor_side(scene, low, high, run)
    other = high if anchor is low else low
    top = roof.pitch * run[anchor]
    joined = top / run[other]
    both = _outdoors(scene, low) and _outdoors(scene, high)
    return {anchor: roof.pitch, other: min(joined, _STEEPEST if both else roof.pitch)}, top
