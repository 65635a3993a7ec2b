"""Insulation round the duct where it runs through cold places: what is bought, and when it is wrapped."""

from __future__ import annotations

import math
from dataclasses import dataclass

from routeviz.catalog import table
from routeviz.geometry.whereabouts import Stretch, followed, in_cold
from routeviz.model.route import Route
from routeviz.model.scene import Scene, SectionShape, SectionSize
from routeviz.model.solids import Frame
from routeviz.model.takeoff import BuyLine, Sheet, Step
from routeviz.takeoff.words import covering
from routeviz.units import length_text

__all__ = ["Wrap", "wrap_lines", "wrap_of", "wrap_steps"]


@dataclass(frozen=True, slots=True)
class Wrap:
    """The duct that lies in the cold, and what goes round it."""

    r_value: float
    thick_in: float
    length_in: float
    area_in2: float  # of the wrap's outer face: its perimeter times the length
    parts: tuple[str, ...]


def perimeter_in(section: SectionSize, out_in: float) -> float:
    """Give the way round a section [in], `out_in` off its surface.

    Examples
    --------
    >>> perimeter_in(SectionSize(SectionShape.RECT, 10.0, 4.0), 0.0)
    28.0
    """
    wide, high = section.width_in, section.height_in
    corners = 2 * math.pi * out_in
    if section.shape is SectionShape.RECT:
        return 2 * (wide + high) + corners
    return 2 * (wide - high) + math.pi * high + corners


def wrap_of(route: Route, scene: Scene, frame: Frame) -> Wrap | None:
    """Say what is wrapped: duct in cold places where the climate is cold or the scene gives the insulation itself."""
    given = scene.duct.insulation_r or 0.0
    if not scene.site.cold_climate and given <= 0:
        return None
    rows = table("stock")["wrap"]
    r_value = given if given > 0 else float(rows["r_value"])
    thick = r_value * float(rows["thick_per_r_in"])
    cold: list[Stretch] = [s for s in followed(route, frame) if in_cold(s, scene)]
    long = sum(s.length_in for s in cold)
    if long < float(rows["least_in"]):
        return None
    area = sum(perimeter_in(s.part.section, thick) * s.length_in for s in cold)
    return Wrap(r_value, thick, long, area, tuple(dict.fromkeys(s.part.id for s in cold)))


def wrap_lines(route: Route, scene: Scene, frame: Frame) -> list[BuyLine]:
    """Give the wrap with its vapour-barrier jacket, by the area of its outer face, and the tape for its seams."""
    wrap = wrap_of(route, scene, frame)
    if wrap is None:
        return []
    count, unit = covering(wrap.area_in2, metric=scene.metric)
    thick, long = (length_text(v, metric=scene.metric) for v in (wrap.thick_in, wrap.length_in))
    size = f"R-{wrap.r_value:g}, about {thick} thick"
    return [
        BuyLine("duct wrap with a vapour-barrier jacket", size, count, unit,
                f"round {long} of duct in the cold, measured at its outer face; laps come on top", wrap.parts),
        BuyLine("tape for the vapour-barrier jacket's seams", "foil-faced, as the wrap's maker says", 1, "roll", "every lap and end"),
    ]  # fmt: skip


def wrap_steps(route: Route, scene: Scene, frame: Frame) -> list[Step]:
    """Give the wrapping of what lies in the cold."""
    wrap = wrap_of(route, scene, frame)
    if wrap is None:
        return []
    text = f"Wrap the duct in the cold with R-{wrap.r_value:g}, not pressed flat, jacket outwards; lap and tape every seam and both ends."
    return [
        Step(
            "wrap",
            text,
            ("run", "seal", "hang"),
            "No bare metal in the cold, and no gap in the jacket.",
            "",
            Sheet.PARTS,
        )
    ]
