"""A fire-rated wall is rated in all its parts, up to the roof and through every storey, and no way leads through it."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest
from framing.test_frames_of_random_homes import homes
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from routeviz import pipeline, rules, scenefile
from routeviz.framing import frame
from routeviz.freespace import carve
from routeviz.geometry import bounds
from routeviz.model.finding import State
from routeviz.model.scene import RoofForm, RunDirection, Scene, Wall, WallSide
from routeviz.model.solids import Crossing, Solid, SolidKind
from routeviz.rules.bench import OUT, meets, straight_out

SCENES = Path(__file__).parents[2] / "scenes"
SHEETS = (SolidKind.BOARD, SolidKind.SHEATHING, SolidKind.CLADDING, SolidKind.MASONRY)


def rate(scene: Scene, side: WallSide) -> Scene:
    return replace(scene, walls=tuple(replace(w, fire_rated=w.side is side) for w in scene.walls))


def slab(scene: Scene, wall: Wall) -> tuple[int, float, float]:
    """Give where a kitchen wall stands: the axis across it, and its two faces."""
    thick, kitchen = wall.thickness_in, scene.kitchen
    return {
        WallSide.HOOD: (1, 0.0, thick),
        WallSide.LEFT: (0, -thick, 0.0),
        WallSide.RIGHT: (0, kitchen.width_in, kitchen.width_in + thick),
        WallSide.FRONT: (1, -kitchen.depth_in - thick, -kitchen.depth_in),
    }[wall.side]


def within(solid: Solid, place: tuple[int, float, float]) -> bool:
    axis, lo, hi = place
    box = bounds(solid.shape)
    return lo - 1e-6 <= box.lo[axis] and box.hi[axis] <= hi + 1e-6


@settings(max_examples=60, deadline=None, suppress_health_check=list(HealthCheck))
@given(homes(), st.sampled_from(list(WallSide)))
def test_the_parts_of_a_rated_wall_are_those_that_stand_in_it(home: Scene, side: WallSide) -> None:
    """A sheet is rated where it lies between the faces of the rated wall, at whatever height, and nowhere else."""
    home = replace(rate(home, side), spaces=())
    framed, place = frame(home), slab(home, home.wall(side))
    sheets = [s for s in framed.solids if s.kind in SHEETS]
    assert {s.id for s in sheets if s.rated} == {s.id for s in sheets if within(s, place)}
    assert all(within(s, place) for s in framed.solids if s.rated)
    hung = replace(home, hood=replace(home.hood, mount_in=26.0))
    barriers = {b.id: b for b in carve(frame(hung), hung, hung.duct.sections[0]).barriers}
    assert all(barriers[s.id].runs == (True, True, True) for s in framed.solids if s.rated)


def juniper(**roof: object) -> Scene:
    """A kitchen whose duct may only leave through a wall."""
    plain = scenefile.load(SCENES / "juniper_straight_up.toml")
    assert plain.roof is not None
    return replace(plain, roof=replace(plain.roof, **roof), cap=replace(plain.cap, roof=False))


@pytest.mark.parametrize(
    "home",
    [juniper(ridge=RunDirection.OUT, ridge_at_in=70.0), juniper(form=RoofForm.SHED, high_side=WallSide.HOOD, pitch=0.25)],
    ids=["gable end", "high wall of a shed roof"],
)  # fmt: skip
def test_no_way_is_offered_through_the_gable_of_a_rated_wall(home: Scene) -> None:
    place = slab(home, home.wall(WallSide.HOOD))

    def pierced(scene: Scene) -> list[Solid]:
        plan = pipeline.plan(scene)
        ways = [o.route for o in plan.options]
        return [s for way in ways for p in way.penetrations if within(s := plan.frame.solid(p.solid), place)]

    assert any("gable" in s.id for s in pierced(home))
    assert not pierced(rate(home, WallSide.HOOD))


def test_no_way_is_offered_through_the_rated_wall_of_a_space() -> None:
    home = scenefile.load(SCENES / "garage_beyond.toml")
    (garage,) = home.spaces
    walls = tuple(replace(w, fire_rated=True) for w in garage.walls)
    assert pipeline.plan(home).best is not None
    assert pipeline.plan(replace(home, spaces=(replace(garage, walls=walls),))).best is None


@pytest.mark.parametrize(
    ("name", "part", "words"),
    [
        ("juniper_straight_up", "right-gable-outside-1", "the right wall"),
        ("side_wall_storey_above", "right-upper-outside-1-1", "the right wall upstairs"),
        ("garage_beyond", "garage-front-outside-1-1", "the garage's far wall"),
    ],
)
def test_a_duct_through_a_part_of_a_rated_wall_is_told(name: str, part: str, words: str) -> None:
    home = scenefile.load(SCENES / f"{name}.toml")
    rated = replace(
        rate(home, WallSide.RIGHT),
        spaces=tuple(
            replace(s, walls=tuple(replace(w, fire_rated=True) for w in s.walls)) for s in home.spaces
        ),
    )  # fmt: skip
    for scene, told in ((home, False), (rated, True)):
        framed = frame(scene)
        solid = framed.solid(part)
        assert solid.crossing is Crossing.PASS
        box = bounds(solid.shape)
        middle = tuple((a + b) / 2 for a, b in zip(box.lo, box.hi, strict=True))
        route = straight_out(penetrations=(meets(solid, OUT, (middle[0], middle[1], middle[2]), 8.5),))
        context = rules.Context(scene, framed, rules.profile("irc-2021"), route)
        found = [f for f in rules.check(context) if f.code == "FIR-WALL"]
        assert [(f.state, f.title) for f in found] == (
            [(State.BROKEN, f"Through a fire-rated wall: {words}")] if told else []
        )
