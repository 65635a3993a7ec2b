"""Every route that the search returns passes the checker on the exact solids, and the checker does find faults."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import numpy as np
import pytest
import samples

from routeviz import pipeline
from routeviz.framing import frame
from routeviz.freespace import carve
from routeviz.model.finding import State
from routeviz.model.path import Bend, Centreline
from routeviz.model.scene import MemberKind, MemberLayout, RunDirection, Scene, SectionShape, SectionSize
from routeviz.model.solids import Frame
from routeviz.scenefile import load
from routeviz.search import find
from routeviz.search.verify import verify

SCENES = sorted((Path(__file__).parents[2] / "scenes").glob("*.toml"))
BLOCKED = ("joist_dead_centre", "stud_dead_centre")  # by the house itself; distances of caps are left out here


def routes(scene: Scene) -> tuple[Frame, list[Centreline]]:
    framed = frame(scene)
    found = find(carve(framed, scene, scene.duct.sections[0]))
    return framed, [line for line in (found.best, *found.alternatives) if line is not None]


@pytest.mark.parametrize("file", SCENES, ids=lambda f: f.stem)
def test_routes_of_the_example_homes_hold(file: Path) -> None:
    scene = load(file)
    if scene.hood.mount_in is None:
        scene = replace(scene, hood=replace(scene.hood, mount_in=30.0))
    framed, lines = routes(scene)
    assert bool(lines) is (file.stem not in BLOCKED)
    assert [fault for line in lines for fault in verify(line, framed, scene)] == []


def varied(rng: np.random.Generator) -> Scene:
    """Juniper Lane with other members, other duct and another place of the hood."""
    scene = samples.scene()
    size = float(rng.choice([5.0, 6.0, 7.0, 8.0]))
    section = SectionSize(SectionShape.ROUND, size, size)
    along = bool(rng.random() < 0.4)
    joists = MemberLayout(
        MemberKind.SAWN, "2x10", 1.5, 9.25, float(rng.choice([12.0, 16.0, 24.0])), float(rng.integers(2, 60)) / 4,
        RunDirection.ALONG if along else RunDirection.OUT,
    )  # fmt: skip
    assert scene.roof is not None
    assert scene.roof.framing is not None
    roof = replace(
        scene.roof, pitch=float(rng.choice([0.125, 0.25, 0.5])),
        framing=replace(scene.roof.framing, first_in=float(rng.integers(2, 60)) / 4),
        ridge=RunDirection(rng.choice(["out", "along"])), ridge_at_in=72.0,
    )  # fmt: skip
    hood = replace(
        scene.hood, centre_in=float(rng.integers(200, 900)) / 8, mount_in=float(rng.integers(26, 33)),
        outlet=replace(scene.hood.outlet, section=section),
    )  # fmt: skip
    duct = replace(
        scene.duct, sections=(section,), min_straight_in=float(rng.choice([0.0, 6.0, 12.0])),
        elbow_ratio=float(rng.choice([0.75, 1.0, 1.5])), max_elbows=2,
    )  # fmt: skip
    return replace(scene, ceiling=replace(scene.ceiling, joists=joists), roof=roof, hood=hood, duct=duct)


def test_routes_of_random_homes_hold() -> None:
    rng = np.random.default_rng(5)
    checked = bent = offset = 0
    for _ in range(10):
        scene = varied(rng)
        framed, lines = routes(scene)
        for line in lines:
            assert verify(line, framed, scene) == (), (scene, line)
            checked += 1
            bent += line.elbows > 0
            offset += any(b.offset_id for b in line.bends)
    assert checked >= 20
    assert bent >= 10
    assert offset >= 1


def test_the_checker_finds_what_is_wrong() -> None:
    scene = samples.scene()
    framed, lines = routes(scene)
    straight, back = lines[0], lines[1]

    def shifted(line: Centreline, dx: float, dz: float = 0.0) -> Centreline:
        return replace(line, points=tuple((x + dx, y, z + dz) for x, y, z in line.points))

    moved = replace(scene, hood=replace(scene.hood, centre_in=78.0))  # joist 5 stands at 78
    assert any("joist 5" in fault for fault in verify(shifted(straight, 8.0), framed, moved))
    assert any("not at the collar" in fault for fault in verify(shifted(straight, 8.0), framed, scene))
    assert any("says" in fault for fault in verify(replace(straight, length_in=40.0), framed, scene))
    assert any("elbows" in fault for fault in verify(replace(back, elbows=0.0), framed, scene))
    assert any("turns by" in fault for fault in verify(replace(back, bends=(replace(back.bends[0], angle_deg=45.0),)),
                                                       framed, scene))  # fmt: skip
    assert any("no face" in fault for fault in verify(replace(back, face="nowhere"), framed, scene))
    short = replace(back, points=(back.points[0], *back.points[1:-1], (70.0, 5.0, back.points[-1][2])))
    assert any("ends at" in fault for fault in verify(short, framed, scene))
    strict = replace(scene, duct=replace(scene.duct, clearance_in=3.5))
    assert any("is wanted" in fault for fault in verify(straight, framed, strict))
    low = replace(back, points=tuple((x, y, min(z, 80.0)) for x, y, z in back.points))
    assert any("straight 1" in fault for fault in verify(low, framed, scene))


def test_straights_touch_where_the_duct_comes_back_to_itself_and_not_beside_a_short_one() -> None:
    """A 6 in duct: two legs 5 in apart touch, 7 in apart they do not; a step of 5 in goes on and comes back to nothing."""
    size = SectionSize(SectionShape.ROUND, 6.0, 6.0)

    def faults(*points: tuple[float, float, float]) -> list[str]:
        bends = tuple(Bend(p, 90.0, 6.0, 6.0) for p in points[1:-1])
        wide = (None,) * (len(points) - 1)
        line = Centreline(points, bends, size, wide, "face-hood", float(len(bends)), 0.0, 0.0, ())
        scene = samples.scene()
        return [f for f in verify(line, frame(scene), scene) if "touch" in f]

    start, top = (0.0, 0.0, 0.0), (0.0, 0.0, 30.0)
    assert faults(start, top, (5.0, 0.0, 30.0), (5.0, 0.0, 0.0)) == ["straights 1 and 3 touch"]
    assert faults(start, top, (7.0, 0.0, 30.0), (7.0, 0.0, 0.0)) == []
    assert faults(start, top, (5.0, 0.0, 30.0), (5.0, 0.0, 60.0)) == []


def test_a_step_that_falls_on_a_ceiling_between_two_zones_is_in_one_of_them() -> None:
    """From 78 5/8 in each quarter inch's middle of the riser to 108 1/8 in falls on the joists' top at 103 7/8 in."""
    home = samples.scene()
    home = replace(home, hood=replace(home.hood, outlet=replace(home.hood.outlet, collar_in=1.625)))
    plan = pipeline.plan(home)
    assert plan.best is not None
    assert len(plan.options) == 3
    assert [verify(o.route.centreline, plan.frame, plan.scene) for o in plan.options] == [()] * 3


def test_a_cover_too_short_is_made_longer_and_hides_the_riser_to_the_ceiling() -> None:
    """A 10 ft ceiling over a cover of 10 to 14 in: FIT-COVER asks for an extension; nothing is boxed."""
    home = samples.scene()
    cover = home.hood.cover
    assert cover is not None
    home = replace(
        home, kitchen=replace(home.kitchen, ceiling_in=120.0),
        hood=replace(home.hood, cover=replace(cover, min_in=10.0, max_in=14.0)),
    )  # fmt: skip
    plan = pipeline.plan(home)
    assert plan.best is not None
    assert plan.best.route.boxed_in == 0.0
    assert verify(plan.best.route.centreline, plan.frame, plan.scene) == ()
    assert {f.code: f.state for f in plan.findings}["FIT-COVER"] is State.BROKEN
    assert any(line.item == "chimney cover extension" for line in plan.best.takeoff.buy)
