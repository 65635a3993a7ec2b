"""How far each thing near the duct may be off before it touches: moved along the axes it is measured by, until contact.

A moved solid comes no nearer than it moves, so a step of the present gap never overshoots; the steps end at the first
contact. Framing members are measured across the way they lie (a joist by its place in the row); other things along
all three axes.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace

from routeviz.geometry import Piece, bounds, gap, piece_bounds
from routeviz.model.route import Allowance, Route
from routeviz.model.scene import Scene
from routeviz.model.solids import Box, Cylinder, Frame, Prism, Shape, Solid, SolidKind, tolerance_in
from routeviz.routing.touch import route_pieces

__all__ = ["allowances"]

_REACH_IN = 12.0  # whatever may be off by more is not told of
_CLOSE_IN = 1e-6
_MOST_STEPS = 200
_UPRIGHT = (SolidKind.STUD, SolidKind.JACK, SolidKind.CRIPPLE)


def _axes(solid: Solid) -> tuple[int, ...]:
    """Give the axes along which a tape measures the solid's place."""
    if solid.member is None:
        return (0, 1, 2)
    if solid.member.axis == 2 or solid.kind in _UPRIGHT:  # a stud: along its wall
        box = bounds(solid.shape)
        return (0,) if box.hi[0] - box.lo[0] <= box.hi[1] - box.lo[1] else (1,)
    return (1 - solid.member.axis,)


def _moved(shape: Shape, axis: int, by: float) -> Shape:
    if isinstance(shape, Box):
        lo, hi = list(shape.lo), list(shape.hi)
        lo[axis], hi[axis] = lo[axis] + by, hi[axis] + by
        return Box((lo[0], lo[1], lo[2]), (hi[0], hi[1], hi[2]))
    if axis == shape.axis:
        return replace(shape, start=shape.start + by, end=shape.end + by)
    side = [t for t in range(3) if t != shape.axis].index(axis)
    if isinstance(shape, Cylinder):
        u, v = shape.centre
        return replace(shape, centre=(u + by, v) if side == 0 else (u, v + by))
    return Prism(
        shape.axis, shape.start, shape.end,
        tuple((u + by, v) if side == 0 else (u, v + by) for u, v in shape.outline),
    )  # fmt: skip


def _travel(piece: Piece, shape: Shape, axis: int, sign: int, wanted: float, reach: float) -> float | None:
    """Give how far a shape may move before it comes nearer than `wanted` to a piece; None for farther than `reach`."""
    own, box = piece_bounds(piece), bounds(shape)
    if any(box.lo[t] - wanted >= own.hi[t] or own.lo[t] - wanted >= box.hi[t] for t in range(3) if t != axis):
        return None
    apart = own.lo[axis] - box.hi[axis] if sign > 0 else box.lo[axis] - own.hi[axis]
    gone = max(0.0, apart - wanted)  # before their boxes meet, nothing does
    for _ in range(_MOST_STEPS):
        if gone > reach:
            return None
        left = gap(piece, _moved(shape, axis, sign * gone)).gap_in - wanted
        if left <= _CLOSE_IN:
            return gone
        gone += left
    return gone


def allowances(route: Route, frame: Frame, scene: Scene) -> tuple[Allowance, ...]:
    """Say for everything near the duct how far it may be off before contact, the least room first.

    Parameters
    ----------
    route : Route
        Realised, with what is near it.
    frame : Frame
    scene : Scene
        Its tolerances say what the measures may be off by.

    Returns
    -------
    tuple of Allowance
        One per solid: its least travel along the axes that it is measured by, exact to 1/1000 in; a solid that is
        to stay away from ducts counts up to that distance. Solids that meet nothing within 12 in are left out.
    """
    pieces, found = route_pieces(route.parts), []
    for close in route.near:
        solid = frame.solid(close.solid)
        least = min(_ways(solid, pieces), default=None)
        if least is not None:
            travel, axis, sign, part = least
            found.append(
                Allowance(solid.id, solid.label, axis, sign, travel, tolerance_in(solid, scene.tolerances), part)
            )
    return tuple(sorted(found, key=lambda a: (round(a.travel_in - a.tolerance_in, 6), a.solid)))


def _ways(solid: Solid, pieces: Sequence[tuple[str, Piece]]) -> Iterator[tuple[float, int, int, str]]:
    """Give the travels until contact, axis by axis and part by part, that are no longer than those before them."""
    reach = _REACH_IN
    for part, piece in pieces:
        for axis in _axes(solid):
            for sign in (1, -1):
                travel = _travel(piece, solid.shape, axis, sign, solid.clearance_in, reach + _CLOSE_IN)
                if travel is not None:
                    reach = min(reach, travel)
                    yield travel, axis, sign, part
