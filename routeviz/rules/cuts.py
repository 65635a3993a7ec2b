"""How a hole meets a member: what is taken across its depth, what wood is left, and whether it is severed."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from typing import NamedTuple

from routeviz import catalog
from routeviz.model.route import Part, PartKind, Penetration
from routeviz.model.scene import SectionSize
from routeviz.model.solids import Box, Cylinder, Prism, Shape, Solid, SolidKind, Vec3
from routeviz.rules.sections import half_sizes

__all__ = [
    "Cut",
    "bore",
    "cut_by",
    "cut_of",
    "cut_of_part",
    "extent",
    "hole_box",
    "length_in",
    "lies_on_slope",
    "main_axis",
    "notch",
    "overlap_in",
    "severing",
]

FLAT_KINDS = frozenset({SolidKind.PLATE, SolidKind.SILL})
SLEEVED_KINDS = frozenset({SolidKind.MASONRY, SolidKind.SLAB})
SLOPED_KINDS = frozenset({SolidKind.RAFTER, SolidKind.CHORD, SolidKind.WEB, SolidKind.JOIST, SolidKind.BLOCKING})
UPRIGHT_KINDS = frozenset({SolidKind.STUD, SolidKind.JACK, SolidKind.CRIPPLE, SolidKind.FURRING})


class Span(NamedTuple):
    """Where a hole and a member lie along one direction [in]."""

    hole: tuple[float, float]
    member: tuple[float, float]


@dataclass(frozen=True, slots=True)
class Cut:
    """What a duct takes out of one member [in].

    Depth is the side that the cutting rules measure: the height of a joist or beam, the side of a stud across the
    wall, the width of a plate across the wall. `left_in` are the least pieces of wood left at either edge of the
    depth; None when the place is not known and the hole is taken to be centred.
    """

    size_in: float  # across the member's depth
    along_in: float  # along the member
    depth_in: float  # of the member
    left_in: tuple[float, float] | None = None
    severs: bool = False  # nothing of the member's section stays whole
    lengthwise: bool = False  # the duct lies along the member
    from_end_in: float | None = None  # centre of the cut to the nearer end of the member
    length_in: float | None = None  # of the member
    place: Vec3 | None = None
    box: Box | None = None  # the hole in space

    @property
    def edge_in(self) -> float:
        """Give the least wood left at an edge; negative when the hole breaks through it."""
        if self.left_in is None:
            return (self.depth_in - self.size_in) / 2
        return min(self.left_in)

    @property
    def is_notch(self) -> bool:
        """Whether the hole breaks through one edge but not both."""
        return not self.severs and self.edge_in < 0

    @property
    def notch_in(self) -> float:
        """Give how deep the cut reaches in from the edge that it breaks through."""
        return self.size_in if self.left_in is None else self.depth_in - max(self.left_in)

    @property
    def end_share(self) -> float | None:
        """Give how far along the member the cut is, from the nearer end (0 at the end, 0.5 in the middle)."""
        if self.from_end_in is None or not self.length_in:
            return None
        return self.from_end_in / self.length_in


def bore(size_in: float, depth_in: float, *, edge_in: float | None = None, along_in: float | None = None) -> Cut:
    """Give a bored hole by its size and the member's depth; centred unless `edge_in` says how much wood is left."""
    left = None if edge_in is None else (edge_in, depth_in - size_in - edge_in)
    return Cut(size_in, size_in if along_in is None else along_in, depth_in, left)


def notch(
    size_in: float, depth_in: float, *, along_in: float = 0.0, from_end_in: float | None = None,
    length_in: float | None = None,
) -> Cut:  # fmt: skip
    """Give a notch of depth `size_in` cut in from one edge."""
    return Cut(size_in, along_in, depth_in, (-1e-3, depth_in - size_in), from_end_in=from_end_in, length_in=length_in)


def severing(size_in: float, depth_in: float) -> Cut:
    """Give a cut that takes the whole section away."""
    return Cut(size_in, size_in, depth_in, None, True)


def extent(shape: Shape) -> tuple[Vec3, Vec3]:
    """Give the lowest and highest corner of a shape's bounding box."""
    if isinstance(shape, Box):
        return shape.lo, shape.hi
    lo, hi = [0.0] * 3, [0.0] * 3
    lo[shape.axis], hi[shape.axis] = shape.start, shape.end
    others = [a for a in range(3) if a != shape.axis]
    for i, a in enumerate(others):
        if isinstance(shape, Cylinder):
            lo[a], hi[a] = shape.centre[i] - shape.radius, shape.centre[i] + shape.radius
        else:
            values = [p[i] for p in shape.outline]
            lo[a], hi[a] = min(values), max(values)
    return (lo[0], lo[1], lo[2]), (hi[0], hi[1], hi[2])


def overlap_in(a: tuple[float, float], b: tuple[float, float]) -> float:
    """Give how much of two spans is shared; negative is the gap between them."""
    return min(a[1], b[1]) - max(a[0], b[0])


def depth_axis(solid: Solid) -> int:
    """Give the axis across which the cutting rules measure this member."""
    lo, hi = extent(solid.shape)
    run = solid.member.axis if solid.member else max(range(3), key=lambda a: hi[a] - lo[a])
    others = [a for a in range(3) if a != run]
    if solid.kind in FLAT_KINDS:
        return next(a for a in others if a != 2)
    if run != 2:
        return 2
    if solid.member is None:
        return max(others, key=lambda a: hi[a] - lo[a])
    wanted = solid.member.depth_in
    return min(others, key=lambda a: (abs(hi[a] - lo[a] - wanted), -(hi[a] - lo[a])))


def _local(solid: Solid, hole: Box) -> tuple[Vec3, Vec3]:
    """Give a member's bounds; of a sloped one only the piece above or below the hole."""
    lo, hi = extent(solid.shape)
    if not isinstance(solid.shape, Prism) or solid.shape.axis == 2:
        return lo, hi
    u = next(a for a in (0, 1) if a != solid.shape.axis)
    middle = (hole.lo[u] + hole.hi[u]) / 2
    heights = _heights_at(solid.shape, middle)
    if heights is None:
        return lo, hi
    return (lo[0], lo[1], heights[0]), (hi[0], hi[1], heights[1])


def _heights_at(prism: Prism, u: float) -> tuple[float, float] | None:
    """Give the lowest and highest point of a prism's outline on the line at `u` of its first axis."""
    points = prism.outline
    found = []
    for (u0, z0), (u1, z1) in zip(points, points[1:] + points[:1], strict=True):
        if min(u0, u1) - 1e-9 <= u <= max(u0, u1) + 1e-9:
            found += [z0, z1] if abs(u1 - u0) < 1e-9 else [z0 + (z1 - z0) * (u - u0) / (u1 - u0)]
    return (min(found), max(found)) if len(found) > 1 else None


def cut_by(solid: Solid, hole: Box, direction_axis: int, *, is_round: bool = False) -> Cut:
    """Give what a hole that runs through along `direction_axis` takes out of a member.

    A member on a slope is measured square to itself; of an oblong hole there the corners count.
    """
    if lies_on_slope(solid):
        return _cut_on_slope(solid, hole, direction_axis, is_round=is_round)
    lo, hi = _local(solid, hole)
    run = solid.member.axis if solid.member else max(range(3), key=lambda a: hi[a] - lo[a])
    depth = depth_axis(solid)
    whole_lo, whole_hi = extent(solid.shape)
    spans = {
        depth: Span((hole.lo[depth], hole.hi[depth]), (lo[depth], hi[depth])),
        run: Span((hole.lo[run], hole.hi[run]), (whole_lo[run], whole_hi[run])),
    }
    return _cut(
        hole, (lo, hi), spans[depth], spans[run], along_depth=direction_axis == depth, lengthwise=direction_axis == run
    )


def _cut(
    hole: Box, bounds: tuple[Vec3, Vec3], across: Span, along: Span, *, along_depth: bool, lengthwise: bool
) -> Cut:
    """Give the cut from where hole and member lie across the member's depth and along it."""
    low, high = across.hole[0] - across.member[0], across.member[1] - across.hole[1]
    taken = max(0.0, overlap_in(across.hole, across.member))
    middle = (along.hole[0] + along.hole[1]) / 2
    lo, hi = bounds
    place = tuple((max(hole.lo[a], lo[a]) + min(hole.hi[a], hi[a])) / 2 for a in range(3))
    # along the depth or lengthwise the duct takes the section from edge to edge
    severs = along_depth or lengthwise or (low <= 0 and high <= 0)
    long = along.hole[1] - along.hole[0]
    return Cut(
        max(taken, long) if severs else across.hole[1] - across.hole[0], long, across.member[1] - across.member[0],
        (low, high), severs, lengthwise, min(middle - along.member[0], along.member[1] - middle),
        along.member[1] - along.member[0], (place[0], place[1], place[2]), hole,
    )  # fmt: skip


def lies_on_slope(solid: Solid) -> bool:
    """Whether a member's own depth leans: a rafter or a chord, drawn as an outline that is swept through its thickness."""
    if not isinstance(solid.shape, Prism) or solid.member is None or solid.kind not in SLOPED_KINDS:
        return False
    return solid.shape.axis not in (2, solid.member.axis)


def _lie(outline: tuple[tuple[float, float], ...]) -> tuple[float, float]:
    """Give the unit direction of an outline's longest edge: how the member runs."""
    edges = [(u1 - u0, z1 - z0) for (u0, z0), (u1, z1) in zip(outline, outline[1:] + outline[:1], strict=True)]
    du, dz = max(edges, key=lambda e: math.hypot(*e))
    long = math.hypot(du, dz)
    return (du / long, dz / long) if du > 0 or (du == 0 and dz > 0) else (-du / long, -dz / long)


def length_in(solid: Solid) -> float:
    """Give a member's length along itself, a sloped one's from long point to long point [in]."""
    if isinstance(solid.shape, Prism) and lies_on_slope(solid):
        lo, hi = _span(solid.shape.outline, _lie(solid.shape.outline))
        return hi - lo
    low, high = extent(solid.shape)
    run = solid.member.axis if solid.member else 1
    return high[run] - low[run]


def _span(points: Sequence[tuple[float, float]], toward: tuple[float, float]) -> tuple[float, float]:
    values = [u * toward[0] + z * toward[1] for u, z in points]
    return min(values), max(values)


def _cut_on_slope(solid: Solid, hole: Box, direction_axis: int, *, is_round: bool) -> Cut:
    prism = solid.shape
    assert isinstance(prism, Prism)
    u = 1 - prism.axis
    run = _lie(prism.outline)
    square = (-run[1], run[0])
    middle = ((hole.lo[u] + hole.hi[u]) / 2, (hole.lo[2] + hole.hi[2]) / 2)
    half = (hole.hi[u] - hole.lo[u]) / 2, (hole.hi[2] - hole.lo[2]) / 2

    def span(toward: tuple[float, float], reach: float) -> Span:
        at = middle[0] * toward[0] + middle[1] * toward[1]
        return Span((at - reach, at + reach), _span(prism.outline, toward))

    def reach(toward: tuple[float, float]) -> float:
        return max(half) if is_round else half[0] * abs(toward[0]) + half[1] * abs(toward[1])

    plumb, level = direction_axis == 2, direction_axis == u
    along = span(run, half[0] if plumb or level else reach(run))
    return _cut(hole, _local(solid, hole), span(square, reach(square)), along, along_depth=plumb, lengthwise=level)


def main_axis(direction: Vec3) -> int:
    """Give the axis that a direction mostly follows."""
    return max(range(3), key=lambda a: abs(direction[a]))


def sleeve_in(solid: Solid) -> float:
    """Give how much larger than the duct the sleeve's hole is in this solid [in]; 0 where no sleeve is set."""
    return float(catalog.table("members")["masonry"]["sleeve_in"]["value"]) if solid.kind in SLEEVED_KINDS else 0.0


def _axis_box(centre: Vec3, axis: int, ends: tuple[float, float], sizes: dict[int, float]) -> Box:
    lo, hi = list(centre), list(centre)
    lo[axis], hi[axis] = min(ends), max(max(ends), min(ends) + 1e-6)
    for a, size in sizes.items():
        lo[a], hi[a] = centre[a] - size / 2, centre[a] + size / 2
    return Box((lo[0], lo[1], lo[2]), (hi[0], hi[1], hi[2]))


def cut_of(solid: Solid, crossing: Penetration) -> Cut:
    """Give what a route's crossing takes out of a member; the hole includes the clearance, in masonry the sleeve.

    The hole is taken as the duct passes it: one that is longer up a slope is as wide, seen along the duct, as in a level member.
    """
    axis = main_axis(crossing.direction)
    middle = tuple((a + b) / 2 for a, b in zip(crossing.centre, crossing.leave, strict=True))
    lined = zip(crossing.lined_in(sleeve_in(solid)), crossing.stretch, strict=True)
    sides = dict(zip((a for a in range(3) if a != axis), (side / slope for side, slope in lined), strict=True))
    ends = crossing.centre[axis], crossing.leave[axis]
    hole = _axis_box((middle[0], middle[1], middle[2]), axis, ends, sides)
    return cut_by(solid, hole, axis, is_round=crossing.shape in ("round", "ellipse"))


def cut_of_part(solid: Solid, part: Part) -> Cut:
    """Give what the body of one part takes out of a member that it overlaps off its centre."""
    entering, leaving = half_sizes(part), half_sizes(part, leaving=True)
    lo = tuple(min(s - a, e - b) for s, e, a, b in zip(part.start, part.end, entering, leaving, strict=True))
    hi = tuple(max(s + a, e + b) for s, e, a, b in zip(part.start, part.end, entering, leaving, strict=True))
    straight = part.kind in (PartKind.STRAIGHT, PartKind.FLEX) and part.section.is_round
    return cut_by(
        solid, Box((lo[0], lo[1], lo[2]), (hi[0], hi[1], hi[2])), main_axis(part.direction), is_round=straight
    )


def hole_box(at: Vec3, axis: int, section: SectionSize, gap_in: float, long_in: float = 1.0) -> Box:
    """Give the hole for a duct that passes `at` along an axis, with a gap all round."""
    sizes = [section.width_in + 2 * gap_in, section.height_in + 2 * gap_in]
    others = [a for a in range(3) if a != axis]
    lo, hi = list(at), list(at)
    lo[axis], hi[axis] = at[axis] - long_in / 2, at[axis] + long_in / 2
    for a, size in zip(others, sizes, strict=True):
        lo[a], hi[a] = at[a] - size / 2, at[a] + size / 2
    return Box((lo[0], lo[1], lo[2]), (hi[0], hi[1], hi[2]))
