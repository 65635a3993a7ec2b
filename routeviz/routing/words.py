"""The way and the exit in the trade's words: "Straight up between joists 4 and 5, out through the roof"."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass
from itertools import groupby, pairwise

from routeviz.geometry import bounds
from routeviz.model.path import Centreline
from routeviz.model.route import Part, PartKind, Termination, offsets_in
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
_NOTHING_IN = 1e-6  # a run shorter than this is none
_PLURAL = {SolidKind.JOIST: "joists", SolidKind.STUD: "studs", SolidKind.RAFTER: "rafters"}


def way(direction: Vec3) -> str:
    """Name the main way of a direction, as seen from the room."""
    return max(_WAYS, key=lambda w: dot(direction, w[0]))[1]


@dataclass(frozen=True, slots=True)
class _Run:
    """A run of duct from corner to corner, without the slanted middle of an offset."""

    start: Vec3
    end: Vec3
    direction: Vec3
    flexible: bool = False

    @property
    def square(self) -> bool:
        return max(abs(c) for c in self.direction) > 1 - 1e-9


def in_words(line: Centreline, frame: Frame, face: ExitFace) -> str:
    """Say how a searched route runs and where it leaves."""
    runs = [_Run(a, b, unit(sub(b, a))) for a, b in pairwise(line.points)]
    offsets = {b.offset_id for b in line.bends if b.offset_id}
    text = _course([run for run in runs if run.square], len(offsets), frame)
    return f"{text[0].upper()}{text[1:]}, {_out(face.kind, face.label)}"


def _out(kind: FaceKind, label: str) -> str:
    return f"out through {'the roof' if kind is FaceKind.ROOF else label}"


def _course(runs: list[_Run], offsets: int, frame: Frame) -> str:
    """Name the ways of the runs in order, the members that they lie between, and the offsets."""
    pieces: list[str] = []
    last, bay = "", ""
    for run in runs:
        name = f"{way(run.direction)}{' in flexible duct' if run.flexible else ''}"
        if name == last:
            continue  # the run goes on after an offset
        between = _between(run.start, run.end, run.direction, frame) if run.square else ""
        pieces.append(f"{name}{' ' + between if between and between != bay else ''}")
        bay = between
        last = name
    if len(pieces) == 1:
        if offsets:
            head, _, tail = pieces[0].partition(" ")
            said = f"an offset{_shift(runs)}" if offsets == 1 else _in_turn(runs)
            pieces = [f"{head} with {said}{' ' + tail if tail else ''}"]
        elif not runs[0].flexible:
            pieces = [f"straight {pieces[0]}"]
    elif offsets and pieces:
        pieces[0] += " with an offset"
    return ", then ".join(pieces) or "a fitting"


def _shift(runs: list[_Run]) -> str:
    move = sub(runs[-1].end, runs[0].start)
    lateral = tuple(m if abs(d) < 0.5 else 0.0 for m, d in zip(move, runs[0].direction, strict=True))
    if max(abs(m) for m in lateral) < 1e-6:
        return ""
    return f" {way(unit((lateral[0], lateral[1], lateral[2])))}"


def _in_turn(runs: list[_Run]) -> str:
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
                wall, other = _wall_words(low), _wall_words(high)
                if low.member.number and high.member.number and wall == other:
                    first, second = sorted((low.member.number, high.member.number))
                    return f"between {wall}{_PLURAL[kind]} {first} and {second}"
                return f"between {low.label} and {high.label}"
    return ""


def _wall_words(solid: Solid) -> str:
    """Give what a numbered member's label says before its kind: "left wall ", "porch far wall ", nothing behind the hood."""
    number = solid.member.number if solid.member is not None else 0
    return solid.label.partition(f"{solid.kind.value} {number}")[0]


def _nearest(
    kind: SolidKind, axis: int, across: int, lo: tuple[float, ...], hi: tuple[float, ...], frame: Frame
) -> tuple[Solid | None, Solid | None]:
    third = 3 - axis - across
    low: tuple[float, Solid] | None = None
    high: tuple[float, Solid] | None = None
    for solid in frame.solids:
        member = solid.member
        if solid.kind is not kind or member is None or member.axis == across:
            continue
        if not isinstance(solid.shape, Box) and kind is not SolidKind.JOIST:  # a joist's end may be cut to the rafters
            continue
        shape = bounds(solid.shape)
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


def as_built_words(parts: tuple[Part, ...], termination: Termination, frame: Frame) -> str:
    """Say how a route as built runs and where it ends."""
    pairs = offsets_in(parts)
    text = _course(_runs(parts, pairs), len(pairs), frame)
    end = _out(termination.kind, termination.label) if termination.kind else f"ends {termination.label}"
    return f"As built: {text}, {end}"


def _runs(parts: tuple[Part, ...], pairs: tuple[tuple[Part, Part], ...]) -> list[_Run]:
    """Give the runs of a route as built from corner to corner, flexible duct apart, offsets without their middle."""
    slanted = {a.id for a, _ in pairs}  # the elbows after which an offset's middle follows
    bends = [i for i, part in enumerate(parts) if part.corner is not None]
    runs: list[_Run] = []
    for first, last in pairwise([-1, *bends, len(parts)]):
        if first >= 0 and parts[first].id in slanted:
            continue
        start = (parts[first].corner if first >= 0 else None) or parts[0].start
        end = (parts[last].corner if last < len(parts) else None) or parts[-1].end
        if math.dist(start, end) > _NOTHING_IN:
            runs += _by_kind(start, end, parts[first + 1 : last])
    return runs


def _by_kind(start: Vec3, end: Vec3, laid: tuple[Part, ...]) -> Iterator[_Run]:
    """Cut a run where rigid duct becomes flexible or the other way round."""
    direction = unit(sub(end, start))
    straights = [p for p in laid if p.kind in (PartKind.STRAIGHT, PartKind.FLEX) and p.length_in > 0]
    groups = [(kind, next(group)) for kind, group in groupby(straights, key=lambda p: p.kind)]
    places = [start, *(part.start for _, part in groups[1:]), end]
    kinds = [kind for kind, _ in groups] or [PartKind.STRAIGHT]
    for (a, b), kind in zip(pairwise(places), kinds, strict=True):
        yield _Run(a, b, direction, kind is PartKind.FLEX)
