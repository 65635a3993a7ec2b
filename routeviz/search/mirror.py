"""The same problem seen in a mirror, so that a search that runs up an axis also runs down it."""

from __future__ import annotations

from dataclasses import replace

from routeviz.model.freespace import Exit, FreeSpace, KeepClear, Region, Ticks
from routeviz.search.moves import State
from routeviz.search.trace import Trace

__all__ = ["mirrored", "unmirrored"]


def _point(point: Ticks, axis: int) -> Ticks:
    x, y, z = (-v if t == axis else v for t, v in enumerate(point))
    return x, y, z


def _region(region: Region, axis: int) -> Region:
    lo, hi = list(region.lo), list(region.hi)
    lo[axis], hi[axis] = -region.hi[axis], -region.lo[axis]
    outline = region.outline
    if region.axis >= 0 and region.axis != axis:
        side = [t for t in range(3) if t != region.axis].index(axis)
        turned = ((-u, v) if side == 0 else (u, -v) for u, v in outline)
        outline = tuple(turned)[::-1]
    return Region((lo[0], lo[1], lo[2]), (hi[0], hi[1], hi[2]), region.axis, outline)


def _across(lo: tuple[int, int], hi: tuple[int, int], side: int) -> tuple[tuple[int, int], tuple[int, int]]:
    if side == 0:
        return (-hi[0], lo[1]), (-lo[0], hi[1])
    return (lo[0], -hi[1]), (hi[0], -lo[1])


def _exit(leave: Exit, axis: int) -> Exit:
    if leave.axis == axis:
        a, b, c = leave.rise
        return replace(leave, sign=-leave.sign, rise=(-a, -b, -c))
    side = [t for t in range(3) if t != leave.axis].index(axis)
    lo, hi = _across(leave.lo, leave.hi, side)
    keeps = tuple(_keep(k, side) for k in leave.keep_clear)
    a, b, c = leave.rise
    return replace(leave, rise=(a, -b, c) if side == 0 else (a, b, -c), lo=lo, hi=hi, keep_clear=keeps)


def _keep(keep: KeepClear, side: int) -> KeepClear:
    lo, hi = _across(keep.lo, keep.hi, side)
    return replace(keep, lo=lo, hi=hi)


def mirrored(space: FreeSpace, axis: int) -> FreeSpace:
    """Give the space with `axis` turned round: what lay at v lies at -v."""
    left, right, out, back = space.start.cover_slack
    slack = (
        (right, left, out, back) if axis == 0 else (left, right, back, out) if axis == 1 else (left, right, out, back)
    )
    whole = _region(Region(space.lo, space.hi), axis)
    return replace(
        space,
        lo=whole.lo,
        hi=whole.hi,
        start=replace(space.start, point=_point(space.start.point, axis), cover_slack=slack),
        barriers=tuple(replace(b, region=_region(b.region, axis)) for b in space.barriers),
        boxing=tuple(_region(r, axis) for r in space.boxing),
        exits=tuple(_exit(e, axis) for e in space.exits),
        bays=(),
    )


def unmirrored(route: Trace, axis: int, space: FreeSpace) -> Trace:
    """Give a route of the mirrored space as one of the space itself."""
    states = tuple(State(s.axis, -s.sign if s.axis == axis else s.sign, s.wide) for s in route.states)
    leave = next(e for e in space.exits if _exit(e, axis) == route.exit)
    return replace(route, points=tuple(_point(p, axis) for p in route.points), states=states, exit=leave)
