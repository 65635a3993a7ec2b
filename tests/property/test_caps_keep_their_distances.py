"""Every planned cap keeps its distance in space from every window, intake and lot line, by the scene's own numbers.

Where things stand is worked out here from the scene alone, and the distance from a cap is the least over points of its
opening: nothing of framing, search or rules is asked but the end of the route and its findings.
"""

from __future__ import annotations

import math
from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass, replace
from pathlib import Path
from random import Random

import numpy as np
import pytest
import samples

from routeviz import pipeline, rules, scenefile
from routeviz.model.plan import Option
from routeviz.model.scene import (
    Layer,
    Opening,
    OpeningKind,
    OutdoorKind,
    OutdoorThing,
    Outlet,
    RoofForm,
    RunDirection,
    Scene,
    Space,
    SpaceKind,
    Wall,
    WallFrame,
    WallSide,
)
from routeviz.model.solids import FaceKind

SCENES = sorted((Path(__file__).parents[2] / "scenes").glob("*.toml"))
LIMITS = {
    OutdoorKind.OPERABLE_WINDOW: "opening_operable", OutdoorKind.DOOR: "opening_operable",
    OutdoorKind.FIXED_WINDOW: "opening_fixed", OutdoorKind.LOT_LINE: "lot_line",
    OutdoorKind.MECHANICAL_INTAKE: "intake_mechanical", OutdoorKind.GRAVITY_INTAKE: "intake_gravity",
    OutdoorKind.METER: "meter", OutdoorKind.REGULATOR: "regulator", OutdoorKind.UNIT: "outdoor_unit",
}  # fmt: skip
EXCUSED = {"opening_operable": "opening_above", "intake_mechanical": "intake_mechanical_above"}
FAR = 1e5
HOMES = 80
SLACK = 0.01  # of the points that stand for the opening
Box = tuple[tuple[float, float], tuple[float, float], tuple[float, float]]


@dataclass(frozen=True)
class Side:
    """An outer wall: its face stands at `at` along `axis`, outwards is `out`; its measure runs from `start` by `way`."""

    axis: int
    at: float
    out: int
    start: float
    way: int
    floor: float

    def box(self, left: float, wide: float, bottom: float, high: float, away: float = 0.0) -> Box:
        a, b = sorted((self.start + self.way * left, self.start + self.way * (left + wide)))
        flat = (self.at + self.out * away,) * 2
        z = bottom, bottom + high
        return (flat, (a, b), z) if self.axis == 0 else ((a, b), flat, z)


def kitchen_sides(scene: Scene) -> dict[WallSide, Side]:
    thick = {w.side: w.thickness_in for w in scene.walls}
    wide, deep = scene.kitchen.width_in, scene.kitchen.depth_in
    return {
        WallSide.HOOD: Side(1, thick[WallSide.HOOD], 1, 0.0, 1, 0.0),
        WallSide.FRONT: Side(1, -deep - thick[WallSide.FRONT], -1, 0.0, 1, 0.0),
        WallSide.LEFT: Side(0, -thick[WallSide.LEFT], -1, 0.0, -1, 0.0),
        WallSide.RIGHT: Side(0, wide + thick[WallSide.RIGHT], 1, 0.0, -1, 0.0),
    }


def behind_hood_sides(scene: Scene, space: Space) -> dict[WallSide, Side]:
    thick = {w.side: w.thickness_in for w in space.walls}
    near, left, floor = scene.wall(WallSide.HOOD).thickness_in, space.left_in, space.floor_in
    found = {
        WallSide.LEFT: Side(0, left - thick.get(WallSide.LEFT, 0.0), -1, near, 1, floor),
        WallSide.RIGHT: Side(0, left + space.width_in + thick.get(WallSide.RIGHT, 0.0), 1, near, 1, floor),
        WallSide.FRONT: Side(1, near + space.deep_in + thick.get(WallSide.FRONT, 0.0), 1, left, 1, floor),
    }
    return {side: place for side, place in found.items() if side in thick}


def of_walls(walls: tuple[Wall, ...], sides: dict[WallSide, Side]) -> Iterator[tuple[OutdoorKind, Box]]:
    for wall in walls:
        if wall.beyond != "outdoors" or wall.side not in sides:
            continue
        side = sides[wall.side]
        for o in wall.openings:
            glass = OutdoorKind.OPERABLE_WINDOW if o.operable else OutdoorKind.FIXED_WINDOW
            kind = OutdoorKind.DOOR if o.kind is OpeningKind.DOOR else glass
            yield kind, side.box(o.left_in, o.width_in, side.floor + o.sill_in, o.height_in)
        if wall.lot_line_in is not None:
            line = side.at + side.out * wall.lot_line_in
            ends = (-FAR, FAR)
            yield OutdoorKind.LOT_LINE, ((line, line), ends, ends) if side.axis == 0 else (ends, (line, line), ends)


def things(scene: Scene) -> Iterator[tuple[OutdoorKind, Box]]:
    """Give everything that has a distance, but what a space or the house hides from every cap of these scenes."""
    sides = kitchen_sides(scene)
    named = {str(side): place for side, place in sides.items()}
    yield from of_walls(scene.walls, sides)
    for space in scene.spaces:
        if space.beyond is WallSide.HOOD:
            beyond = behind_hood_sides(scene, space)
            named |= {f"{space.id}/{side}": place for side, place in beyond.items()}
            yield from of_walls(space.walls, beyond)
            hood = scene.wall(WallSide.HOOD)
            for o in hood.openings if hood.beyond == space.id else ():
                if o.left_in + o.width_in <= beyond.get(WallSide.LEFT, sides[WallSide.LEFT]).at:  # beside it
                    yield (
                        OutdoorKind.OPERABLE_WINDOW,
                        sides[WallSide.HOOD].box(o.left_in, o.width_in, o.sill_in, o.height_in),
                    )
    for t in scene.outdoors:
        if t.face in named:
            yield t.kind, named[t.face].box(t.left_in, t.width_in, t.bottom_in, t.height_in, t.away_in)


def opening(option: Option) -> np.ndarray:
    """Give points of the cap's opening: rings of a disc square to the duct's last run; a flat duct by its lesser side."""
    end, size = option.route.termination, option.route.parts[-1].section_out
    across = [k for k in range(3) if abs(end.direction[k]) < 0.5]
    radius = min(size.width_in, size.height_in) / 2
    turn, ring = np.meshgrid(np.linspace(0.0, 2 * np.pi, 721), np.linspace(0.0, radius, 41))
    points = np.tile(np.array(end.point), (turn.size, 1))
    points[:, across[0]] += (ring * np.cos(turn)).ravel()
    points[:, across[1]] += (ring * np.sin(turn)).ravel()
    return points


def distance(points: np.ndarray, box: Box) -> float:
    lo, hi = np.array([s[0] for s in box]), np.array([s[1] for s in box])
    return float(np.linalg.norm(np.maximum(np.maximum(lo - points, points - hi), 0.0), axis=1).min())


def hold(scene: Scene, seen: Counter[str]) -> None:
    """Plan a scene and measure every way out that it offers."""
    plan = pipeline.plan(scene, alternatives=2, counted=False)
    profile = rules.profile(scene.rules.profile)
    for option in plan.options if not scene.as_built else ():
        points = opening(option)
        told = [f.measured for f in option.findings if f.code.startswith("TRM-") and f.measured is not None]
        for kind, box in things(scene):
            limit = profile.get(LIMITS.get(kind, ""))
            if limit is None:
                continue
            gap = distance(points, box)
            over = profile.get(EXCUSED.get(limit.key, ""))
            excused = over is not None and points[:, 2].min() - box[2][1] >= over.number - SLACK
            where = (scene.name, kind, option.route.termination.face, option.route.termination.point)
            assert excused or gap >= limit.number - SLACK, (gap, box, where)
            seen[f"{kind} by {option.route.termination.kind}"] += 1
            seen["near"] += gap < limit.number + 2.0
            if gap < 60.0 and not excused and option.route.section.is_round:
                assert min(abs(gap - m) for m in told) < SLACK, (gap, told, where)


@pytest.mark.parametrize("path", SCENES, ids=lambda p: p.stem)
def test_every_way_out_of_the_shipped_scenes(path: Path) -> None:
    hold(scenefile.load(path), Counter())


SIDING = (Layer("wood lap siding", 0.75),)


def window(chance: Random, name: str, most: int) -> tuple[Opening, ...]:
    """A window anywhere on a wall, or none; it may reach up to the eave."""
    if chance.random() < 0.3:
        return ()
    sill = 30.0 + chance.randint(0, 30)
    return (Opening(name, OpeningKind.WINDOW, True, 4.0 + chance.randint(0, most), sill, 24.0, 34.0),)


def home_by(chance: Random) -> Scene:
    """The sample kitchen with its windows, lot lines, roof, intake and hood anywhere; a porch behind it or none."""
    home = samples.scene()
    roof = home.roof
    assert roof is not None
    roof = replace(
        roof, pitch=chance.choice((0.25, 0.5, 1.0)), ridge=chance.choice(list(RunDirection)),
        overhang_in=chance.choice((0.0, 16.0)), form=chance.choice((RoofForm.GABLE, RoofForm.SHED)), ridge_at_in=70.0,
    )  # fmt: skip
    lines = (None, 2.0, 20.0, 60.0)
    walls = {
        WallSide.HOOD: replace(home.wall(WallSide.HOOD), openings=window(chance, "back", 112), lot_line_in=chance.choice(lines)),
        WallSide.RIGHT: replace(home.wall(WallSide.RIGHT), openings=window(chance, "side", 100), lot_line_in=chance.choice(lines)),
    }  # fmt: skip
    spaces: tuple[Space, ...] = ()
    if chance.random() < 0.4:
        walls[WallSide.HOOD] = replace(walls[WallSide.HOOD], beyond="porch", lot_line_in=None)
        around = tuple(
            Wall(side, chance.choice(("outdoors", "room")), WallFrame.WOOD, samples.studs("2x4", depth=3.5), 3.5, True,
                 False, (), SIDING)
            for side in (WallSide.LEFT, WallSide.RIGHT, WallSide.FRONT)
        )  # fmt: skip
        left = float(chance.choice((4, 36, 44)))
        spaces = (Space("porch", SpaceKind.PORCH, WallSide.HOOD, 72.0, left, 96.0, 0.0, 96.0, around, True),)
    kinds = (OutdoorKind.MECHANICAL_INTAKE, OutdoorKind.GRAVITY_INTAKE, OutdoorKind.METER)
    listed = tuple(
        OutdoorThing(f"thing-{side}", chance.choice(kinds), side, float(chance.randint(0, 124)),
                     float(chance.randint(12, 60)), 8.0, 8.0)
        for side in ("right", *(() if spaces else ("hood",)))
        if chance.random() < 0.6
    )  # fmt: skip
    hood = replace(home.hood, centre_in=20.0 + chance.randint(0, 96))
    if chance.random() < 0.5:
        hood = replace(hood, outlet=Outlet("rear", hood.outlet.section, up_in=6.0, collar_in=0.0), cover=None)
    return replace(
        home, roof=roof, walls=tuple(walls.get(w.side, w) for w in home.walls), spaces=spaces, outdoors=listed,
        hood=hood, cooktop=replace(home.cooktop, centre_in=hood.centre_in), duct=replace(home.duct, max_elbows=2),
    )  # fmt: skip


def test_every_way_out_of_random_homes() -> None:
    seen: Counter[str] = Counter()
    for n in range(HOMES):
        hold(home_by(Random(n)), seen)
    for kind in (OutdoorKind.OPERABLE_WINDOW, OutdoorKind.LOT_LINE, OutdoorKind.MECHANICAL_INTAKE, OutdoorKind.METER):
        for face in FaceKind:
            assert seen[f"{kind} by {face}"] > 2 or face is FaceKind.GABLE, seen
    assert seen["near"] > 5, seen  # the limits are met, not only kept from afar


def test_the_measure_itself() -> None:
    """A 4 in disc 3 in above and 30 in beside a box: 26 in to its rim, level."""
    turn = np.linspace(0.0, 2 * np.pi, 721)
    disc = np.stack([4 * np.cos(turn), 4 * np.sin(turn), np.zeros_like(turn)], axis=1)
    assert distance(disc, ((30.0, 40.0), (-5.0, 5.0), (-9.0, -3.0))) == pytest.approx(math.hypot(26.0, 3.0))
