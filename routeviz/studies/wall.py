"""The whole wall: a plan for every place and height of the hood, from one search."""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence
from dataclasses import replace

from routeviz import airflow, framing, freespace, pipeline, routing, rules, search
from routeviz.model.finding import State
from routeviz.model.freespace import FreeSpace
from routeviz.model.path import Outcome, Paths, SearchFacts
from routeviz.model.plan import Option, Plan
from routeviz.model.scene import Scene
from routeviz.model.solids import Frame
from routeviz.units import ticks

__all__ = ["heights", "places", "wall_plans"]

_LEAST_APART_IN = 0.5  # an end of the window nearer to another height is not worth a row
_REACH_IN = 12.0  # a hood is not looked at farther above or below where it hangs
Rows = tuple[tuple[Plan, ...], ...]


def places(scene: Scene, *, step_in: float = 1.0) -> tuple[float, ...]:
    """Give hood centres along the wall, a step apart and through the scene's own place [in].

    Places where the hood would stand in a side wall by more than its half are left out.
    """
    half = scene.hood.width_in / 2
    first = math.ceil((half - scene.hood.centre_in) / step_in)
    last = math.floor((scene.kitchen.width_in - half - scene.hood.centre_in) / step_in)
    return tuple(scene.hood.centre_in + step_in * n for n in range(first, last + 1))


def heights(scene: Scene, *, step_in: float = math.inf) -> tuple[float, ...]:
    """Give mounting heights within the legal window, rising, a step apart and through the scene's own [in], and its ends.

    Heights count above the cooking surface; without one of its own the scene takes the one that would be chosen. With
    the default step that one is all.
    """
    profile = rules.profile(scene.rules.profile, file=scene.file)
    own = pipeline.settle(scene, profile).hood.mount_in or 0.0
    if math.isinf(step_in):
        return (own,)
    window = rules.mounting_window(scene, profile)
    low, high = max(window.low_in, own - _REACH_IN), min(window.high_in, own + _REACH_IN)
    first, last = math.ceil((low - own) / step_in - 1e-9), math.floor((high - own) / step_in + 1e-9)
    found = [own + step_in * n for n in range(min(first, 0), max(last, 0) + 1)]
    ends = [end for end in (low, high) if low < high and min(abs(end - h) for h in found) > _LEAST_APART_IN]
    return tuple(sorted([*found, *ends]))


def wall_plans(
    scene: Scene,
    positions_in: Sequence[float],
    heights_in: Sequence[float],
    *,
    progress: Callable[[int, int], None] | None = None,
) -> Rows:
    """Plan the hood at every place and height with one search; the cooktop moves along with the hood.

    Parameters
    ----------
    scene : Scene
        The kitchen; without a mounting height the best one is taken as the field's own.
    positions_in : sequence of float
        Hood centres from the left wall [in], rising.
    heights_in : sequence of float
        Mounting heights above the cooking surface [in], rising.
    progress : callable
        Told how many places are done, and of how many.

    Returns
    -------
    tuple of tuples of Plan
        By height, then by place. Parts are not counted: their take-off is empty.

    Raises
    ------
    LimitError
        If the field for so many places would be too large.
    """
    profile = rules.profile(scene.rules.profile, file=scene.file)
    scene = pipeline.settle(replace(scene, as_built=None), profile)
    mount = scene.hood.mount_in or 0.0
    framed = pipeline.framed(scene, profile)
    space = freespace.carve(framed, scene, scene.duct.sections[0])
    shifts = [x - scene.hood.centre_in for x in positions_in]
    lifts = [h - mount for h in heights_in]
    found = search.field(space, shifts, lifts)
    rows = []
    total = len(shifts) * len(lifts)
    for j, lift in enumerate(lifts):
        row = []
        for i, shift in enumerate(shifts):
            here = _moved(scene, shift, mount + lift)
            row.append(
                _plan_here(
                    here, framing.moved(framed, here), profile, found, _space_at(space, here, shift, lift), (j, i)
                )
            )
            if progress:
                progress(j * len(shifts) + i + 1, total)
        rows.append(tuple(row))
    return tuple(rows)


def _moved(scene: Scene, shift_in: float, mount_in: float) -> Scene:
    hood = replace(scene.hood, centre_in=scene.hood.centre_in + shift_in, mount_in=mount_in)
    return replace(scene, hood=hood, cooktop=replace(scene.cooktop, centre_in=scene.cooktop.centre_in + shift_in))


def _space_at(space: FreeSpace, scene: Scene, shift_in: float, lift_in: float) -> FreeSpace:
    x, y, z = space.start.point
    point = x + ticks(shift_in), y, z + ticks(lift_in)
    reach = freespace.reach_x(scene, rules.hood_places(scene))
    return replace(space, start=replace(space.start, point=point, reach_x=reach))


def _plan_here(
    scene: Scene,
    frame: Frame,
    profile: rules.Profile,
    found: search.Field,
    space: FreeSpace,
    at: tuple[int, int],
) -> Plan:
    findings = rules.check_scene(scene, frame, profile, fan_cfm=airflow.fan_cfm(scene))
    facts = SearchFacts((0, 0, 0), 0, found.elbows, 0.0, "one field for the whole wall", found.not_tried)
    if any(f.code == "FIT-ROOM" and f.state is State.BROKEN and not f.waived for f in findings):
        return pipeline.conclude(scene, frame, Paths(Outcome.BAD_START, None, (), (), (), facts), (), findings)
    cell = found.cell(*at)
    line = found.route(*at)
    below = math.inf if line is None or cell.elbows is None else float(cell.elbows)
    why_not = search.why_not_straight(space, below=below)
    front = () if line is None else ((line.elbows, line.boxed_in, line.length_in),)
    paths = Paths(cell.outcome, line, (), front, why_not, facts)
    if line is None:
        return pipeline.conclude(scene, frame, paths, (), findings)
    route = routing.realise(line, scene, frame)
    air = airflow.solve(route, scene)
    option = Option(route, rules.check_route(scene, frame, profile, route, air), air, pipeline.NOTHING_COUNTED)
    return pipeline.conclude(scene, frame, paths, (option,), findings)
