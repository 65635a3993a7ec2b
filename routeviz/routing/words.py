"""The way and the exit in the trade's words: "Straight up between joists 4 and 5, out through the roof"."""

from __future__ import annotations

from itertools import pairwise

from routeviz.model.path import Centreline
from routeviz.model.route import Part, PartKind, Termination
from routeviz.model.solids import Box, ExitFace, FaceKind, Frame, Solid, SolidKind, Vec3
from routeviz.routing.vectors import dot, sub, unit

__all__ = ["as_built_words", "in_words", "way"]

_WAYS: tuple[tuple[Vec3, str], ...] = (
    ((0.0, 0.0, 1.0), "up"),
    ((0.0, 0.0, -1.0), "down"),
    ((-1.0, 0.0, 0.0), "left"),
    ((1.0, 0.0, 0.0), "right"),
    ((0.0, 1.0, 0.0), "back"),
    ((0.0, -1.0, 0.0), "forward"),
)
_PLURAL = {SolidKind.JOIST: "joists", SolidKind.STUD: "studs", SolidKind.RAFTER: "rafters"}


def way(direction: Vec3) -> str:
    """Name the main way of a direction, as seen from the room."""
    return max(_WAYS, key=lambda w: dot(direction, w[0]))[1]


def in_words(line: Centreline, frame: Frame, face: ExitFace) -> str:
    """Say how a searched route runs and where it leaves."""
    runs = [(a, b, unit(sub(b, a))) for a, b in pairwise(line.points)]
    offsets = {b.offset_id for b in line.bends if b.offset_id}
    straight_runs = [(a, b, d) for a, b, d in runs if max(abs(c) for c in d) > 1 - 1e-9]
    pieces: list[str] = []
    last, bay = "", ""
    for a, b, d in straight_runs:
        name = way(d)
        if name == last:
            continue  # the run goes on after an offset
        between = _between(a, b, d, frame)
        pieces.append(f"{name}{' ' + between if between and between != bay else ''}")
        bay = between
        last = name
    if len(pieces) == 1:
        if offsets:
            head, _, tail = pieces[0].partition(" ")
            said = f"an offset{_shift(straight_runs)}" if len(offsets) == 1 else _in_turn(straight_runs)
            pieces = [f"{head} with {said}{' ' + tail if tail else ''}"]
        else:
            pieces = [f"straight {pieces[0]}"]
    elif offsets:
        pieces[0] += " with an offset"
    text = ", then ".join(pieces)
    leaves = "the roof" if face.kind is FaceKind.ROOF else face.label
    return f"{text[0].upper()}{text[1:]}, out through {leaves}"


def _shift(runs: list[tuple[Vec3, Vec3, Vec3]]) -> str:
    first, last = runs[0][0], runs[-1][1]
    move = sub(last, first)
    lateral = tuple(m if abs(d) < 0.5 else 0.0 for m, d in zip(move, runs[0][2], strict=True))
    if max(abs(m) for m in lateral) < 1e-6:
        return ""
    return f" {way(unit((lateral[0], lateral[1], lateral[2])))}"


def _in_turn(runs: list[tuple[Vec3, Vec3, Vec3]]) -> str:
    """Name the directions of offsets on one run: "offsets right, then forward"."""
    return "offsets" + ", then".join(_shift(list(pair)) for pair in pairwise(runs))


def _between(a: Vec3, b: Vec3, d: Vec3, frame: Frame) -> str:
    """Name the two nearest parallel members that the run lies between, if it runs between two."""
    axis = max(range(3), key=lambda i: abs(d[i]))
    lo = tuple(min(p, q) for p, q in zip(a, b, strict=True))
    hi = tuple(max(p, q) for p, q in zip(a, b, strict=True))
    for kind in (SolidKind.JOIST, SolidKind.STUD, SolidKind.RAFTER):
        for across in (0, 1, 2):
            if across == axis:
                continue
            low, high = _nearest(kind, axis, across, lo, hi, frame)
            if low and high and low.member and high.member:
                if low.member.number and high.member.number:
                    prefix = (
                        "left wall " if "left wall" in low.label else "right wall " if "right wall" in low.label else ""
                    )
                    first, second = sorted((low.member.number, high.member.number))
                    return f"between {prefix}{_PLURAL[kind]} {first} and {second}"
                return f"between {low.label} and {high.label}"
    return ""


def _nearest(
    kind: SolidKind, axis: int, across: int, lo: tuple[float, ...], hi: tuple[float, ...], frame: Frame
) -> tuple[Solid | None, Solid | None]:
    third = 3 - axis - across
    low: tuple[float, Solid] | None = None
    high: tuple[float, Solid] | None = None
    for solid in frame.solids:
        shape, member = solid.shape, solid.member
        if solid.kind is not kind or member is None or not isinstance(shape, Box) or member.axis == across:
            continue
        meets_run = shape.lo[axis] < hi[axis] - 1e-9 and shape.hi[axis] > lo[axis] + 1e-9
        meets_side = shape.lo[third] < hi[third] + 1e-9 and shape.hi[third] > lo[third] - 1e-9
        if not (meets_run and meets_side):
            continue
        if shape.hi[across] <= lo[across] and (low is None or shape.hi[across] > low[0]):
            low = (shape.hi[across], solid)
        if shape.lo[across] >= hi[across] and (high is None or shape.lo[across] < high[0]):
            high = (shape.lo[across], solid)
    if low and high and high[0] - low[0] <= 49.0:  # farther apart is open space, not a bay
        return low[1], high[1]
    return None, None


def as_built_words(parts: tuple[Part, ...], termination: Termination) -> str:
    """Say how a route as built runs and where it ends."""
    ways: list[str] = []
    for part in parts:
        if part.kind in (PartKind.STRAIGHT, PartKind.FLEX) and part.length_in > 0:
            name = way(part.direction)
            if part.kind is PartKind.FLEX:
                name += " in flexible duct"
            if not ways or ways[-1] != name:
                ways.append(name)
    text = ", then ".join(ways) or "a fitting"
    end = f"out through {termination.label}" if termination.kind else f"ends {termination.label}"
    return f"As built: {text}, {end}"
