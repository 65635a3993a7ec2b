"""Levels over the ceiling: the storey above, and where the roof comes down to the walls by its heel, measured or taken."""

from __future__ import annotations

from dataclasses import dataclass

from routeviz.framing.place import CHORD_IN, House
from routeviz.model.roofline import eave_on_rafters_in, follows_rafters, stretch_of
from routeviz.model.scene import AboveKind, MemberKind

__all__ = ["UPPER_CEILING_IN", "EaveLine", "eave_line", "storey_levels"]

UPPER_CEILING_IN = 0.5  # board of the ceiling above, which the scene does not describe


@dataclass(frozen=True, slots=True)
class EaveLine:
    """The heights at which a roof begins [in]. The rafters' underside counts at the outer face of the studs."""

    plate: float  # top of the wall plates that the roof stands on
    base: float  # top of what lies on them: joists, bottom chords, the board of the storey's ceiling
    underside: float  # of the rafters or top chords
    heel: float  # from the plate up to the top of the rafters, plumb


def storey_levels(house: House) -> tuple[float, float] | None:
    """Give the floor and the ceiling of the storey above [in]; None when there is none."""
    above = house.scene.above
    if above.kind is not AboveKind.STOREY:
        return None
    floor = house.joist_top + sum(layer.thickness_in for layer in above.floor_layers)
    return floor, floor + max(above.storey_height_in, 1.0)


def eave_line(built: House) -> EaveLine:
    """Give where the roof begins: by its heel, else on what lies on the plates, or on a ceiling that follows the rafters."""
    roof, levels = built.scene.roof, storey_levels(built)
    framing = roof.framing if roof is not None else None
    plate, base = built.plate_top, built.joist_top
    if levels is not None:
        plate = levels[1] + UPPER_CEILING_IN
        base = plate + (CHORD_IN if framing is not None and framing.kind is MemberKind.TRUSS else 0.0)
    if roof is None:
        return EaveLine(plate, base, base, base - plate)
    high = (framing.depth_in if framing is not None else 0.0) * stretch_of(roof.pitch)
    if follows_rafters(built.scene):
        base = eave_on_rafters_in(built.scene, roof)
        return EaveLine(plate, base, base, base + high - plate)
    heel = base + high - plate if roof.heel_in is None else roof.heel_in
    return EaveLine(plate, base, plate + heel - high, heel)
