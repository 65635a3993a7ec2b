"""A second opinion on a route: every rule of the search checked on the exact solids, with none of the search's code.

The search works on boxes in whole ticks; this works on the frame's own shapes in inches, with the true bodies of
straights and elbows. What it finds is a list of plain sentences; an empty list means that the route holds.
"""

from __future__ import annotations

import math
from collections.abc import Iterator
from itertools import combinations, pairwise, product

from routeviz.geometry import Elbow, Piece, Straight, bounds, gap
from routeviz.model.path import Centreline
from routeviz.model.scene import Scene
from routeviz.model.solids import Box, Crossing, ExitFace, FaceKind, Frame, Passage, Shape, Solid, Vec3, Zone

__all__ = ["pieces_of", "verify"]

_TOLERANCE_IN = 1 / 512  # the search rounds to ticks of 1/8128 in
_STEP_IN = 0.5  # how densely the centre line is asked where it is


def _minus(a: Vec3, b: Vec3) -> Vec3:
    return a[0] - b[0], a[1] - b[1], a[2] - b[2]


def _along(a: Vec3, d: Vec3, length: float) -> Vec3:
    return a[0] + d[0] * length, a[1] + d[1] * length, a[2] + d[2] * length


def _unit(v: Vec3) -> Vec3:
    size = math.hypot(*v)
    return v[0] / size, v[1] / size, v[2] / size


def _axis(axis: int | None) -> Vec3 | None:
    return None if axis is None else (float(axis == 0), float(axis == 1), float(axis == 2))


def _take_offs(line: Centreline) -> list[float]:
    return [b.radius_in * math.tan(math.radians(b.angle_deg) / 2) for b in line.bends]


def pieces_of(line: Centreline) -> list[Piece]:
    """Give the straights and elbows of a centre line as exact bodies; straights without length are left out."""
    ways = [_unit(_minus(b, a)) for a, b in pairwise(line.points)]
    offs = [0.0, *_take_offs(line), 0.0]
    found: list[Piece] = []
    for n, (a, b) in enumerate(pairwise(line.points)):
        begin, end = _along(a, ways[n], offs[n]), _along(b, ways[n], -offs[n + 1])
        wide = _axis(line.wide_axis[n])
        if sum(w * d for w, d in zip(ways[n], _minus(end, begin), strict=True)) > _TOLERANCE_IN:
            found.append(Straight(begin, end, line.section, wide))
        if n < len(line.bends):
            found.append(Elbow(end, ways[n], ways[n + 1], line.bends[n].radius_in, line.section, wide))
    return found


def verify(line: Centreline, frame: Frame, scene: Scene) -> tuple[str, ...]:
    """Check a route against the exact frame.

    Parameters
    ----------
    line : Centreline
        As the search returned it.
    frame : Frame
    scene : Scene
        The scene that the frame and the search's free space were made from.

    Returns
    -------
    tuple of str
        What is wrong, one sentence each; empty when the route holds.
    """
    pieces = pieces_of(line)
    return (
        *_start(line, scene), *_straights(line, scene), *_solids(pieces, frame, scene), *_contact(line),
        *_zones(line, frame, scene), *_exit(line, frame, scene),
    )  # fmt: skip


def _start(line: Centreline, scene: Scene) -> Iterator[str]:
    hood, outlet, bottom = scene.hood, scene.hood.outlet, scene.hood_bottom_in or 0.0
    if outlet.place == "top":
        want: Vec3 = (hood.centre_in + outlet.across_in, -outlet.out_in, bottom + hood.body_in + outlet.collar_in)
        way: Vec3 = (0.0, 0.0, 1.0)
    else:
        want, way = (hood.centre_in + outlet.across_in, 0.0, bottom + outlet.up_in), (0.0, 1.0, 0.0)
    if math.dist(line.points[0], want) > _TOLERANCE_IN:
        yield f"it starts at {line.points[0]}, not at the collar {want}"
    if math.dist(_unit(_minus(line.points[1], line.points[0])), way) > 1e-6:
        yield "it does not leave the collar straight"


def _straights(line: Centreline, scene: Scene) -> Iterator[str]:
    """Check every straight between fittings, the number of elbows, their angles and the length."""
    offs = [0.0, *_take_offs(line), 0.0]
    last = len(line.points) - 2
    for n, (a, b) in enumerate(pairwise(line.points)):
        straight = math.dist(a, b) - offs[n] - offs[n + 1]
        inside = (
            0 < n <= last - 1 and line.bends[n - 1].offset_id and line.bends[n - 1].offset_id == line.bends[n].offset_id
        )
        wanted = 0.0 if inside else scene.duct.min_straight_in
        if n == 0:
            wanted = scene.duct.first_run_in + scene.transition_in(line.section)
        if n == last:
            wanted = scene.duct.last_run_in if n else max(wanted, scene.duct.last_run_in)
        if straight < wanted - _TOLERANCE_IN:
            yield f"straight {n + 1} is {straight:.4f} in, less than {wanted:.4f} in"
    for n, bend in enumerate(line.bends):
        before, after = (_unit(_minus(line.points[n + i + 1], line.points[n + i])) for i in (0, 1))
        angle = math.degrees(math.acos(max(-1.0, min(1.0, sum(p * q for p, q in zip(before, after, strict=True))))))
        if abs(angle - bend.angle_deg) > 0.01:
            yield f"bend {n + 1} turns by {angle:.3f} degrees, not {bend.angle_deg}"
    elbows = sum(b.angle_deg for b in line.bends if not b.offset_id) / 90 + len({b.offset_id for b in line.bends} - {0})
    if abs(elbows - line.elbows) > 1e-9 or elbows > scene.duct.max_elbows:
        yield f"it has {elbows} elbows, says {line.elbows}, and may have {scene.duct.max_elbows}"
    length = sum(math.dist(a, b) for a, b in pairwise(line.points))
    if abs(length - line.length_in) > _TOLERANCE_IN:
        yield f"it is {length:.4f} in long and says {line.length_in:.4f} in"


def _solids(pieces: list[Piece], frame: Frame, scene: Scene) -> Iterator[str]:
    for solid in frame.solids:
        if solid.crossing is Crossing.GHOST:
            continue
        for number, piece in enumerate(pieces):
            if solid.crossing is Crossing.NEVER:
                wanted = max(scene.duct.clearance_in, solid.clearance_in)
                found = gap(piece, solid.shape).gap_in
                if found < wanted - _TOLERANCE_IN:
                    yield f"piece {number + 1} comes to {found:.4f} in from {solid.label}; {wanted:.4f} in is wanted"
            elif (
                isinstance(piece, Elbow)
                and gap(piece, _core(solid.shape)).gap_in < -_TOLERANCE_IN
                and not (solid.crossing is Crossing.PASS and _stands_in_hole(piece, solid.shape, scene))
            ):
                yield f"elbow {number + 1} lies inside {solid.label}"
            elif isinstance(piece, Straight) and _lengthwise(piece, solid):
                yield f"straight {number + 1} runs along the inside of {solid.label}"


def _stands_in_hole(elbow: Elbow, shape: Shape, scene: Scene) -> bool:
    """Tell whether a flat sheet meets only an elbow's end, where the hole for its straight holds the elbow too.

    At a height h over its end the elbow's inner skin, of radius R - r, has left the straight by
    R - r - sqrt((R - r)^2 - h^2); that may be no more than the gap in the hole.
    """
    if not isinstance(shape, Box):
        return False
    end = _along(_along(elbow.start, elbow.direction, elbow.radius), elbow.turn_to, elbow.radius)
    in_plane = elbow.wide is not None and abs(elbow.wide[_main(elbow.turn_to)]) > 0.5
    throat = elbow.radius - (elbow.section.width_in if in_plane else elbow.section.height_in) / 2
    for at, way in ((elbow.start, elbow.direction), (end, _minus((0.0, 0.0, 0.0), elbow.turn_to))):
        axis = _main(way)
        sizes = [b - a for a, b in zip(shape.lo, shape.hi, strict=True)]
        deep = max((shape.lo[axis] - at[axis]) * way[axis], (shape.hi[axis] - at[axis]) * way[axis])
        if sizes[axis] > min(sizes) + _TOLERANCE_IN or not 0 <= deep <= throat:
            continue
        if throat - math.sqrt(throat**2 - deep**2) <= scene.duct.clearance_in + _TOLERANCE_IN:
            return True
    return False


def _main(way: Vec3) -> int:
    return max(range(3), key=lambda t: abs(way[t]))


def _core(shape: Shape) -> Shape:
    """Give a box less a hair on all sides, so that an elbow may stand flat on a sheet."""
    if not isinstance(shape, Box):
        return shape
    lo, hi = (tuple(v + s * _TOLERANCE_IN for v in corner) for corner, s in ((shape.lo, 1), (shape.hi, -1)))
    return Box((lo[0], lo[1], lo[2]), (hi[0], hi[1], hi[2]))


def _lengthwise(piece: Straight, solid: Solid) -> bool:
    """Tell whether a straight lies in a flat sheet or member instead of passing squarely through it."""
    if gap(piece, solid.shape).gap_in >= -_TOLERANCE_IN or not isinstance(solid.shape, Box):
        return False
    way = _minus(piece.end, piece.start)
    axis = max(range(3), key=lambda t: abs(way[t]))
    sizes = [b - a for a, b in zip(solid.shape.lo, solid.shape.hi, strict=True)]
    return sizes[axis] > min(sizes) + _TOLERANCE_IN and sizes[axis] > 3 * min(sizes)


def _contact(line: Centreline) -> Iterator[str]:
    """Check that straights that no fitting joins keep apart.

    Near a short straight the two beside it are near each other too; only places farther apart along the duct than one
    and a half times its size can touch.
    """
    size = max(line.section.width_in, line.section.height_in)
    straights = list(pairwise(line.points))
    begins = [sum(math.dist(*s) for s in straights[:n]) for n in range(len(straights))]
    for (i, a), (j, b) in combinations(enumerate(straights), 2):
        ids = {bend.offset_id for bend in line.bends[i:j]}
        joined = j - i == 1 or (len(ids) == 1 and 0 not in ids)
        if not joined and _apart(a, b, begins[j] - begins[i], 1.5 * size) < size - _TOLERANCE_IN:
            yield f"straights {i + 1} and {j + 1} touch"


def _apart(a: tuple[Vec3, Vec3], b: tuple[Vec3, Vec3], along: float, least: float) -> float:
    """Give the distance between two straights, sampled densely, at places more than `least` apart along the duct.

    `along` is how far along the duct the second one begins behind the first one's beginning.
    """
    steps = 64
    points = [[(n / steps * math.dist(p, q), _along(p, _minus(q, p), n / steps)) for n in range(steps + 1)]
              for p, q in (a, b)]  # fmt: skip
    found = (math.dist(p, q) for (s, p), (t, q) in product(*points) if along + t - s > least)
    return min(found, default=math.inf)


def _zone_at(frame: Frame, point: Vec3) -> Zone | None:
    """Give the zone that rules a place: the last one that holds it."""
    return next((z for z in reversed(frame.zones) if z.id != "in-cover" and _holds(z.shape, point)), None)


def _holds(shape: object, point: Vec3) -> bool:
    box = bounds(shape)  # type: ignore[arg-type]
    if any(
        not box.lo[t] <= point[t] < box.hi[t] for t in range(3)
    ):  # zones that touch share no point, and leave none out
        return False
    if isinstance(shape, Box):
        return True
    u, v = (t for t in range(3) if t != shape.axis)  # type: ignore[attr-defined]
    return _inside(shape.outline, point[u], point[v])  # type: ignore[attr-defined]


def _inside(outline: tuple[tuple[float, float], ...], x: float, y: float) -> bool:
    """Ray casting."""
    odd = False
    for (x1, y1), (x2, y2) in pairwise((*outline, outline[0])):
        if (y1 > y) != (y2 > y) and x < x1 + (x2 - x1) * (y - y1) / (y2 - y1):
            odd = not odd
    return odd


def _samples(line: Centreline) -> Iterator[tuple[int, Vec3, float]]:
    """Give points along the centre line with the number of their straight and the length that each stands for."""
    for n, (a, b) in enumerate(pairwise(line.points)):
        length = math.dist(a, b)
        count = max(1, math.ceil(length / _STEP_IN))
        for k in range(count):
            yield n, _along(a, _minus(b, a), (k + 0.5) / count), length / count


def _cover_top(frame: Frame, scene: Scene) -> float:
    """Give how high the chimney cover reaches: to the ceiling over it."""
    return max((bounds(z.shape).hi[2] for z in frame.zones if z.id == "in-cover"), default=scene.kitchen.ceiling_in)


def _covered(line: Centreline, scene: Scene, top_in: float, straight: int, point: Vec3) -> bool:
    """Tell whether the chimney cover hides this part: the riser, and a run straight back to the wall."""
    if scene.hood.cover is None or scene.hood.outlet.place != "top":
        return False
    start = line.points[0]
    cover = scene.hood.cover
    half = max(line.section.width_in, line.section.height_in) / 2
    in_column = (
        abs(point[0] - scene.hood.centre_in)
        <= max(cover.width_in / 2 - half, abs(start[0] - scene.hood.centre_in)) + 1e-6
    )
    riser = math.dist(point[:2], start[:2]) < 1e-6
    deep = point[1] >= min(start[1], -cover.depth_in + half) - 1e-6
    offset = bool(line.bends) and line.bends[0].offset_id > 0 and in_column and deep
    back = straight == 1 and abs(point[0] - start[0]) < 1e-6 and start[1] <= point[1] <= 0 and not offset
    return point[2] <= top_in + 1e-6 and (riser or back or offset)


def _zones(line: Centreline, frame: Frame, scene: Scene) -> Iterator[str]:
    """Check that the centre line stays out of closed places, and count what lies in the open room."""
    boxed, closed, top = 0.0, set(), _cover_top(frame, scene)
    last = len(line.points) - 2
    for straight, point, length in _samples(line):
        zone = _zone_at(frame, point)
        if zone is None:
            continue
        if zone.passage is Passage.CLOSED or (zone.passage is Passage.OUTDOORS and straight != last):
            closed.add(zone.label)
        if zone.passage is Passage.BOXING and not _covered(line, scene, top, straight, point):
            boxed += length
    yield from (f"it passes {label}" for label in sorted(closed))
    slop = _STEP_IN * len(line.points) + max(line.section.width_in, line.section.height_in)
    if boxed > line.boxed_in + slop:
        yield f"{boxed:.1f} in of it lies in the open room; it says {line.boxed_in:.1f} in"
    if boxed > _TOLERANCE_IN and not scene.duct.boxing_allowed:
        yield "it needs boxing, which is not allowed"


def _exit(line: Centreline, frame: Frame, scene: Scene) -> Iterator[str]:
    face = next((f for f in frame.faces if f.id == line.face), None)
    if face is None:
        yield f"there is no face {line.face}"
        return
    end, way = line.points[-1], _unit(_minus(line.points[-1], line.points[-2]))
    if abs(way[face.axis] - face.sign) > 1e-6:
        yield "it does not leave square to the face"
    if face.kind is FaceKind.ROOF:
        want = face.plane[0] + face.plane[1] * end[0] + face.plane[2] * end[1] + scene.cap.roof_stub_in
    else:
        want = face.at_in
    if abs(end[face.axis] - want) > _TOLERANCE_IN:
        yield f"it ends at {end[face.axis]:.4f} in, not at {want:.4f} in"
    yield from _cap(face, line, scene)


def _cap(face: ExitFace, line: Centreline, scene: Scene) -> Iterator[str]:
    """Check the cap's place on its face."""
    end = line.points[-1]
    place = tuple(end[t] for t in range(3) if t != face.axis)
    half = max(line.section.width_in, line.section.height_in) / 2
    body = half if face.kind is FaceKind.ROOF else (scene.cap.wall_flange_in or 2 * half + 4) / 2
    for side, (lo, hi) in enumerate(zip(face.lo, face.hi, strict=True)):
        if not lo - _TOLERANCE_IN <= place[side] - body and place[side] + body <= hi + _TOLERANCE_IN:
            yield "the cap stands over the face's edge"
    for keep in face.seen_from(end):
        du, dv = (max(keep.lo[s] - place[s], place[s] - keep.hi[s], 0.0) for s in (0, 1))
        true = math.hypot(max(math.hypot(du, dv) - half, 0.0), keep.away_in)
        low, top = (place[1] - half, keep.hi[1]) if keep.heights_in is None else (end[2], keep.heights_in[1])
        over = keep.above_in is not None and low >= top + keep.above_in - _TOLERANCE_IN
        if true < keep.distance_in - _TOLERANCE_IN and not over:
            yield f"the cap's opening is {true:.3f} in from {keep.label}; {keep.distance_in:.3f} in is wanted"
        if keep.away_in == 0 and keep.heights_in is None and max(du, dv) < body - _TOLERANCE_IN:
            yield f"the cap lies on {keep.label}"
