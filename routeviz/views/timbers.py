"""What a framing member looks like: a solid timber, two flanges with a web, or two chords with webs between them.

The search, the rules and the sheets go by the whole box of a member. Here alone it is given its shape, which stays inside
that box, so that nobody takes a thin web for sawn timber.
"""

from __future__ import annotations

import shapely
import shapely.affinity
from shapely.geometry.base import BaseGeometry

from routeviz.catalog import table
from routeviz.model.kinds import MemberKind
from routeviz.model.plan import Plan
from routeviz.model.solids import Box, Solid, SolidKind
from routeviz.views.shapes import Slab, slab_of

__all__ = ["flange_in", "member_slab", "open_web", "two_flanges"]

WEB_IN = 0.5  # drawn web of an I-joist; real ones are of 3/8 to 1/2 in board
CHORD_IN = 1.5  # chords and webs of a truss or open-web joist are of nominal 2 in timber
_LEAST_OPEN_IN = 2.0  # shallower than this between its chords, nothing of a web would be seen


def flange_in(plan: Plan) -> float:
    """Give the depth of an I-joist's flanges [in]: the maker's, else what the rules take it to be."""
    given = plan.scene.rules.maker.joist_flange_in
    return float(table("members")["i_joist"]["flange_in"]["value"]) if given is None else given


def two_flanges(width: float, depth: float, flange: float) -> BaseGeometry:
    """Give the cross-section of an I-joist about (0, 0) at its lower left corner [in]; a plain one where it is too shallow."""
    if depth - 2 * flange < _LEAST_OPEN_IN or width <= WEB_IN:
        return shapely.box(0, 0, width, depth)
    web = shapely.box((width - WEB_IN) / 2, 0, (width + WEB_IN) / 2, depth)
    flanges = [shapely.box(0, 0, width, flange), shapely.box(0, depth - flange, width, depth)]
    return shapely.union_all([web, *flanges])


def open_web(length: float, depth: float) -> BaseGeometry:
    """Give the side of an open-web joist or floor truss from its lower left corner [in]: chords, ends, and slanted webs."""
    clear = depth - 2 * CHORD_IN
    if clear < _LEAST_OPEN_IN or length < 2 * depth:
        return shapely.box(0, 0, length, depth)
    panels = 2 * max(1, round(length / (2.4 * depth) / 2))  # as many up as down
    step = length / panels
    spots = [(k * step, CHORD_IN / 2 if k % 2 == 0 else depth - CHORD_IN / 2) for k in range(panels + 1)]
    webs = shapely.LineString(spots).buffer(CHORD_IN / 2, cap_style="flat", join_style="bevel")
    bars = [shapely.box(0, 0, length, CHORD_IN), shapely.box(0, depth - CHORD_IN, length, depth),
            shapely.box(0, 0, CHORD_IN, depth), shapely.box(length - CHORD_IN, 0, length, depth)]  # fmt: skip
    return shapely.union_all([*bars, webs]).intersection(shapely.box(0, 0, length, depth))


def member_slab(solid: Solid, plan: Plan) -> Slab:
    """Give a member as it is drawn."""
    member, shape = solid.member, solid.shape
    if member is None or solid.kind is not SolidKind.JOIST or not isinstance(shape, Box) or member.axis == 2:
        return slab_of(shape)
    axis = member.axis
    across = 1 - axis
    width, depth = shape.hi[across] - shape.lo[across], shape.hi[2] - shape.lo[2]
    if member.kind is MemberKind.I_JOIST:
        outline = two_flanges(width, depth, flange_in(plan))
        placed = shapely.affinity.translate(outline, shape.lo[across], shape.lo[2])
        return Slab(axis, shape.lo[axis], shape.hi[axis], placed)
    if member.kind in (MemberKind.OPEN_WEB, MemberKind.TRUSS):
        side = open_web(shape.hi[axis] - shape.lo[axis], depth)
        placed = shapely.affinity.translate(side, shape.lo[axis], shape.lo[2])
        return Slab(across, shape.lo[across], shape.hi[across], placed)
    return slab_of(shape)
