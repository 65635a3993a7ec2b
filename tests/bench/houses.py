"""The framed house and the walls of the shipped scenes: fields, layers, queries, centring."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from functools import cache
from pathlib import Path

import numpy as np
from bench.apart import Measured, fastest
from framed_house import collars, framed_house

from routeviz import framing, freespace, pipeline, routing, rules, scenefile, search, studies
from routeviz.airflow import flow_along_cfm
from routeviz.airflow import solve as solve_air
from routeviz.model.freespace import FreeSpace
from routeviz.model.scene import Scene
from routeviz.search.centring import centred
from routeviz.search.layers import Layers
from routeviz.search.solve import Solution, solve
from routeviz.search.terms import Terms

__all__ = [
    "Mapped", "Wall", "centring", "flows", "house_costs", "house_field", "layer_and_copy", "place_by_place", "space_of",
    "wall", "wall_and_queries", "wall_map",
]  # fmt: skip

_SCANNED = ("order", "key", "walls", "position", "along", "work")  # a scan's own arrays
SCENES = Path(__file__).resolve().parents[2] / "scenes"


def house_field(elbows: int, *, bodies: bool, places: int) -> Solution:
    """Lay the closed grid of the framed house and fill it up to the collars; `places` of them, evenly spread."""
    every = _spread(places)
    found = solve(framed_house(elbows=elbows), Terms(relaxed=not bodies), elbows, every)
    found.costs([every], elbows)
    return found


def _spread(places: int) -> Sequence[tuple[int, int, int]]:
    every = collars()
    return every[:: max(1, len(every) // places)]


def house_costs(elbows: int, bodies: bool, places: int) -> np.ndarray:
    """Give the least length per number of elbows and place, -1 where there is no way."""
    found = house_field(elbows, bodies=bodies, places=places)
    costs = found.costs([_spread(places)], elbows)[:, 0]
    return np.where(costs < found.grid.terms.limit, costs, -1)


def place_by_place(elbows: int, bodies: bool, places: int, asked: Sequence[int]) -> np.ndarray:
    """Give the same for some of the places, each searched on a grid of its own."""
    rows = []
    for n in asked:
        collar = _spread(places)[n]
        alone = solve(framed_house(elbows=elbows), Terms(relaxed=not bodies), elbows, [collar])
        costs = [alone.cost(collar, k) for k in range(elbows + 1)]
        rows.append([-1 if c is None else c[2] for c in costs])
    return np.array(rows).T


def layer_and_copy(elbows: int, times: int, places: int) -> tuple[float, float, int]:
    """Time one layer of all states, and a copy of the arrays that it reads and writes [s]; give the elbow places too.

    These are the costs of all states below and above, the room for elbows, and the tables of the scans.
    """
    found = house_field(elbows, bodies=True, places=places)
    grid, states = found.grid, range(len(found.grid.table.states))
    layers = Layers(grid, found.layers.out)
    layers.grow(1)
    below = [list(layers.cost[0][state]) for state in states]
    tracks = [grid.track(state) for state in states]

    def layer() -> list[list[np.ndarray]]:
        return [list(layers.compute(state, 1)) for state in states]

    above = fastest(times, layer)
    arrays = [grid.bits, *(part for row in (*below, *above.answer) for part in row)]
    for track in {id(t): t for t in tracks}.values():
        arrays += [value for name, value in vars(track).items() if name in _SCANNED]
        arrays += list(track.ahead.values())
    copies = [np.empty_like(a) for a in arrays]

    def copy() -> None:
        for to, a in zip(copies, arrays, strict=True):
            np.copyto(to, a)

    return above.seconds, fastest(times, copy).seconds, len(grid.alive)


@dataclass(frozen=True)
class Wall:
    """A scene's space with the places and heights of a whole wall [in]."""

    name: str
    space: FreeSpace
    shifts: tuple[float, ...]
    lifts: tuple[float, ...]


@cache
def space_of(name: str) -> tuple[Scene, FreeSpace]:
    """Read, frame and carve a shipped scene."""
    scene = scenefile.load(SCENES / f"{name}.toml")
    profile = rules.profile(scene.rules.profile, file=scene.file)
    scene = pipeline.settle(replace(scene, as_built=None), profile)
    return scene, freespace.carve(framing.frame(scene, rules.keep_away(profile)), scene, scene.duct.sections[0])


def wall(name: str, places: int, heights: int) -> Wall:
    """Give at least so many places along a scene's whole wall, by heights an inch apart."""
    scene, space = space_of(name)
    step = min(1.0, (scene.kitchen.width_in - scene.hood.width_in) / places)
    shifts = tuple(x - scene.hood.centre_in for x in studies.places(scene, step_in=step))
    return Wall(name, space, shifts, tuple(float(n - heights // 2) for n in range(heights)))


@dataclass(frozen=True)
class Mapped:
    """A whole wall's map: how many places have a way, and what it takes to move the hood afterwards."""

    places: int
    heights: int
    ways: int
    asked: int
    query_seconds: float


def wall_map(name: str, places: int, heights: int) -> tuple[int, int, search.Field]:
    """Map a scene's whole wall."""
    asked = wall(name, places, heights)
    return len(asked.shifts), len(asked.lifts), search.field(asked.space, asked.shifts, asked.lifts)


def wall_and_queries(name: str, places: int, heights: int, every: int) -> tuple[Measured, Mapped]:
    """Map a scene's whole wall, then ask for answer and route at every n-th place."""
    made = fastest(2, wall_map, name, places, heights)
    along, up, field = made.answer
    some = [(j, i) for j in range(up) for i in range(along)][::every]
    asked = fastest(1, _routes, field, some)
    return replace(made, answer=None), Mapped(along, up, asked.answer, len(some), asked.seconds / len(some))


def _routes(field: search.Field, places: Sequence[tuple[int, int]]) -> int:
    ways = 0
    for j, i in places:
        cell, line = field.cell(j, i), field.route(j, i)
        if (line is None) != (cell.elbows is None):
            raise AssertionError("the field's answer and its route differ")
        ways += line is not None
    return ways


def flows(name: str) -> tuple[float, float, int]:
    """Time the flow of every way that a scene's map holds: as a centre line, and as a route solved in full [s each]."""
    scene = space_of(name)[0]
    asked = wall(name, 1, 1)
    field = search.field(asked.space, asked.shifts, asked.lifts)
    lines = [line for i in range(len(asked.shifts)) if (line := field.route(0, i)) is not None]
    frame = framing.frame(scene)
    kinds = {face.id: face.kind for face in frame.faces}
    flow_along_cfm(lines[0], scene, kinds[lines[0].face])  # what is looked up once is not the subject
    quick = fastest(1, lambda: [flow_along_cfm(line, scene, kinds[line.face]) for line in lines])
    routes = [routing.realise(line, scene, frame) for line in lines]
    full = fastest(1, lambda: [solve_air(route, scene).full.flow_cfm for route in routes])
    if not np.allclose(quick.answer, full.answer, rtol=1e-9):
        raise AssertionError("a line's flow and its route's differ")
    return quick.seconds / len(lines), full.seconds / len(lines), len(lines)


def centring(name: str, times: int) -> tuple[float, int]:
    """Time the centring of the best route of a scene [s]; give its elbows too."""
    _, space = space_of(name)
    collar = space.start.point
    fields = [solve(space, Terms(), 2, [collar], plane=t) for t in range(3) if t != space.start.axis]
    best = min((cost, n) for n, f in enumerate(fields) for k in (1, 2) if (cost := f.cost(collar, k)) is not None)
    field = fields[best[1]]
    route = field.route(collar, best[0][1])
    assert route is not None
    made = fastest(times, centred, field.grid.space, field.grid.table, route)
    return made.seconds, made.answer.elbows
