"""The order of the house: levels, walls, ceiling, what lies above, spaces, furniture, zones, faces, bounds."""

from __future__ import annotations

import itertools
from collections.abc import Mapping
from dataclasses import replace

from routeviz.framing.ceiling import beam_solids, ceiling_solids
from routeviz.framing.faces import exit_faces
from routeviz.framing.furniture import furniture_solids
from routeviz.framing.levels import eave_line, storey_levels
from routeviz.framing.naming import told_apart
from routeviz.framing.place import House, Place, house
from routeviz.framing.roof import eave_soffit_z, roof_solids
from routeviz.framing.roofshape import RoofShape, is_cathedral, roof_shape
from routeviz.framing.spaces import Beyond, beyond
from routeviz.framing.underroof import solids_under
from routeviz.framing.upper import infill_solids, storey_solids
from routeviz.framing.walls import Heights, wall_solids
from routeviz.framing.zones import furniture_zones, zones
from routeviz.model.scene import Scene, WallSide
from routeviz.model.solids import Box, Frame, Solid

__all__ = ["frame", "moved"]


def _cover_tops(built: House, shape: RoofShape | None, eave: float) -> dict[WallSide, float]:
    """Give the heights up to which the outer layers of each wall run before gables begin."""
    tops = {}
    for place in built.places:
        side = place.wall.side
        top = eave if built.outdoors(side) else built.ceiling
        if shape is not None and (is_cathedral(built) or built.outdoors(side)):
            top = min(top, _under_roof(shape, place))
        if shape is not None and side in shape.eaves and built.outdoors(side):
            soffit = eave_soffit_z(built, shape, side)
            top = soffit if soffit is not None else shape.underside(place.outer)
        tops[side] = top
    return tops


def _under_roof(shape: RoofShape, place: Place) -> float:
    """Give the highest level that a whole wall may reach under the roof."""
    if place.normal_axis == shape.axis:
        return min(shape.underside(u) for u in place.span(place.cover))
    return min(shape.underside(place.depth(n)) for n in (0.0, place.wall.thickness_in))


def _heights(built: House, shape: RoofShape | None, tops: dict[WallSide, float]) -> dict[WallSide, Heights]:
    """Give the heights of the kitchen's own walls."""
    levels, found = storey_levels(built), {}
    for place in built.places:
        side = place.wall.side
        plate, board = built.plate_top, built.ceiling
        if shape is not None and is_cathedral(built):
            plate = board = _under_roof(shape, place)
        cover = levels[0] if levels is not None and built.outdoors(side) else tops[side]
        found[side] = Heights(0.0, plate, board, cover)
    return found


def _bounds(built: House, shape: RoofShape | None, eave: float, others: list[Beyond]) -> Box:
    """Give the box worth searching: the kitchen to its outer faces, up to the roof, and the spaces a duct may cross."""
    x0, x1, y0, y1 = built.outer
    lo, hi = [x0, y0, 0.0], [x1, y1, eave]
    if shape is not None:
        across = 1 - shape.axis
        skyline = shape.skyline(built.outer[2 * across], built.outer[2 * across + 1])
        hi[2] = max(eave, *(z for _, z in skyline)) + built.scene.cap.roof_stub_in
    for other in others:
        if not other.space.duct_allowed:
            continue
        faces = [place.outer for place in other.places if place.wall.beyond == "outdoors"]
        axes = [place.normal_axis for place in other.places if place.wall.beyond == "outdoors"]
        for axis in range(3):
            also = [face for face, own in zip(faces, axes, strict=True) if own == axis]
            lo[axis] = min([lo[axis], other.inside.lo[axis], *also])
            hi[axis] = max([hi[axis], other.inside.hi[axis], *also])
    return Box((lo[0], lo[1], lo[2]), (hi[0], hi[1], hi[2]))


def frame(scene: Scene, keep_away: Mapping[str, float] | None = None) -> Frame:
    """Frame a scene: every solid with its tag, the zones where a duct may run and the faces where it may leave.

    Parameters
    ----------
    scene : Scene
        What was measured.
    keep_away : mapping of str to float, optional
        Wanted distance [in] between a cap and a thing outdoors, by `OutdoorKind` value, "lot line", "edge" or
        "eave". What is not named gets 0: only its body counts.

    Returns
    -------
    Frame
        Solids in a fixed order (walls, ceiling, roof, storey, spaces, furniture), ids unique.
    """
    wanted = keep_away or {}
    built = house(scene)
    line = eave_line(built)
    eave, shape = line.base, roof_shape(built, line)
    tops = _cover_tops(built, shape, eave)
    heights = _heights(built, shape, tops)
    others = [beyond(built, space) for space in scene.spaces]
    solids: list[Solid] = []
    for place in built.places:
        solids += wall_solids(place, heights[place.wall.side])
    bases = {side: min(eave, tops[side]) if built.outdoors(side) else eave for side in heights}
    if is_cathedral(built):
        eave = min(h.plate_top for h in heights.values())
        bases = {side: h.plate_top for side, h in heights.items()}
        solids += beam_solids(built)
    else:
        solids += solids_under(shape, ceiling_solids(built))
    if shape is not None:
        solids += roof_solids(built, shape) + infill_solids(built, shape, bases)
    solids += storey_solids(built, tops)
    for other in others:
        solids += other.solids
    solids += furniture_solids(built)
    bounds = _bounds(built, shape, eave, others)
    return Frame(
        told_apart(solids), zones(built, shape, heights, solids, others, bounds, eave),
        exit_faces(built, shape, heights, tops, others, bases, wanted), bounds,
    )  # fmt: skip


def moved(framed: Frame, scene: Scene) -> Frame:
    """Give a frame anew for a scene in which nothing but the hood and the cooktop stands elsewhere; the house is kept.

    The same as `frame(scene)` and some ten times quicker, for the many places of one hood along a wall.
    """
    built = house(scene)
    shape = roof_shape(built, eave_line(built))
    furniture = furniture_solids(built)
    solids = itertools.takewhile(lambda s: s.id != furniture[0].id, framed.solids)  # none but the floor is called so
    kept = next(n for n, zone in enumerate(framed.zones) if zone.id == "kitchen")
    return replace(
        framed,
        solids=told_apart((*solids, *furniture)),
        zones=(*framed.zones[: kept + 1], *furniture_zones(built, shape)),
    )
