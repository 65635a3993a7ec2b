"""What would stand out through a low roof ends under it, as joists are cut to the rafters' slope."""

from __future__ import annotations

from dataclasses import replace

from shapely import Polygon, box
from shapely.geometry.polygon import orient

from routeviz.framing.roofshape import RoofShape
from routeviz.model.solids import Box, Prism, Solid

__all__ = ["below", "solids_under", "under_roof"]

_THIN_IN = 2.0  # what is no wider across the slope is cut level


def under_roof(shape: RoofShape, block: Box, layers: int | None = None) -> Box | Prism | None:
    """Give what is left of a box under the roof; None where nothing is.

    Parameters
    ----------
    shape : RoofShape
        The roof.
    block : Box
        What may stand too high.
    layers : int, optional
        Sheets of the roof that it may go into: 0 for none, up to the rafters' top; all when left out.
    """
    across = 1 - shape.axis
    lo, hi = block.lo[across], block.hi[across]
    tops = shape.tops(lo, hi, layers)
    low, top = min(z for _, z in tops), block.hi[2]
    if low >= top - 1e-9:
        return block
    if hi - lo <= _THIN_IN:
        return Box(block.lo, (block.hi[0], block.hi[1], low)) if low > block.lo[2] else None
    left = below(box(lo, block.lo[2], hi, top), tops)
    if left.area < 1e-6:
        return None
    outline = [(float(u), float(z)) for u, z in list(orient(left).exterior.coords)[:-1]]
    return Prism(shape.axis, block.lo[shape.axis], block.hi[shape.axis], tuple(outline))


def below(section: Polygon, tops: list[tuple[float, float]]) -> Polygon:
    """Give what of a section (u, z) lies under a line; nothing where that is not one piece."""
    floor = min(section.bounds[1], *(z for _, z in tops)) - 1.0
    left = section.intersection(Polygon([(tops[0][0], floor), (tops[-1][0], floor), *reversed(tops)]))
    return left if isinstance(left, Polygon) else Polygon()


def solids_under(shape: RoofShape | None, solids: list[Solid]) -> list[Solid]:
    """Cut boards, joists and rims off at the rafters' top."""
    if shape is None:
        return solids
    found = []
    for solid in solids:
        left = under_roof(shape, solid.shape, 0) if isinstance(solid.shape, Box) else solid.shape
        if left is not None:
            found.append(solid if left is solid.shape else replace(solid, shape=left))
    return found
