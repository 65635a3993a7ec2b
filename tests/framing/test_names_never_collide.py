"""A scene may call its things what it likes: the house keeps its own ids, and no two solids share one."""

from __future__ import annotations

import re
from dataclasses import replace

import pytest
import samples
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from routeviz import framing, pipeline
from routeviz.errors import SceneError
from routeviz.framing.naming import FURNITURE_IDS
from routeviz.model.kinds import MemberKind, ObstacleKind, OpeningKind, RunDirection, ServiceKind, SpaceKind, WallSide
from routeviz.model.scene import Beam, Obstacle, Opening, Scene, Service, Space
from routeviz.model.solids import Frame, Solid
from routeviz.scenefile import loads, starter

HOUSE = framing.frame(samples.scene())
OWN = sorted({solid.id for solid in HOUSE.solids})
PARTS = ("left", "right", "front", "top", "bottom", "header", "king-1", "jack-2", "sill", "stud-1", "2")
PLAIN = ("one", "two", "window", "pipe", "beam", "shed")
words = st.sampled_from(
    [*OWN, *(i.removeprefix("hood-") for i in OWN), *FURNITURE_IDS, *PARTS, "one-left", "window-sill"]
)
names = st.lists(st.one_of(words, st.from_regex(r"[a-z0-9][a-z0-9 '&+-]{0,12}", fullmatch=True)),
                 min_size=6, max_size=6, unique=True)  # fmt: skip


def called(one: str, two: str, window: str, pipe: str, beam: str, shed: str) -> Scene:
    """Give a kitchen with two cabinets, a window, a pipe in the wall, a beam and a shed, by these names."""
    plain = samples.scene()
    hood, *others = plain.walls
    hood = replace(
        hood,
        openings=(
            replace(hood.openings[0], id=window),
            Opening("far-window", OpeningKind.WINDOW, True, 20.0, 44.0, 20.0, 36.0),
        ),
        services=(Service(pipe, ServiceKind.DRAIN, 50.0, 0.0, 2.0, 90.0),),
    )
    cabinet = Obstacle(one, ObstacleKind.CABINET, 100.0, 0.0, 54.0, 20.0, 12.0, 30.0, hides_duct=True)
    return replace(
        plain,
        walls=(hood, *others),
        obstacles=(cabinet, Obstacle(two, ObstacleKind.PIPE, 10.0, 0.0, 0.0, 4.0, 4.0, 40.0)),
        ceiling=replace(
            plain.ceiling, beams=(Beam(beam, MemberKind.SAWN, 3.0, 9.25, RunDirection.ALONG, 120.0, 96.0),)
        ),
        spaces=(
            Space(
                shed,
                SpaceKind.GARAGE,
                WallSide.RIGHT,
                120.0,
                0.0,
                100.0,
                0.0,
                96.0,
                (samples.wall(WallSide.FRONT),),
                False,
            ),
        ),
    )


def bodies(frame: Frame) -> list[tuple[object, ...]]:
    """Give all of a frame's solids but what comes from names."""
    return [(s.kind, s.shape, s.crossing, s.member, s.side, s.combustible) for s in frame.solids]


def house_of(frame: Frame) -> dict[str, Solid]:
    return {s.id: s for s in frame.solids if s.id in set(OWN)}


AS_PLAIN = framing.frame(called(*PLAIN))


@settings(max_examples=150, deadline=None)
@given(names)
def test_any_names_give_the_same_house(chosen: list[str]) -> None:
    assume(not {"kitchen", "attic", "storey", "room", "outdoors"} & set(chosen))
    scene = called(*chosen)
    frame = framing.frame(scene)
    assert len({s.id for s in frame.solids}) == len(frame.solids)
    assert bodies(frame) == bodies(AS_PLAIN)
    plain = house_of(AS_PLAIN)
    assert {i: s.shape for i, s in house_of(frame).items() if i in plain} == {i: s.shape for i, s in plain.items()}
    assert [(z.shape, z.passage) for z in frame.zones] == [(z.shape, z.passage) for z in AS_PLAIN.zones]
    assert [z for z in frame.zones if z.id == "in-cover"] == [z for z in AS_PLAIN.zones if z.id == "in-cover"]


@settings(max_examples=40, deadline=None)
@given(names, st.sampled_from([20.0, 60.0, 90.0]))
def test_a_hood_that_moves_keeps_the_names_of_a_fresh_frame(chosen: list[str], centre_in: float) -> None:
    assume(not {"kitchen", "attic", "storey", "room", "outdoors"} & set(chosen))
    scene = called(*chosen)
    moved = replace(
        scene, hood=replace(scene.hood, centre_in=centre_in), cooktop=replace(scene.cooktop, centre_in=centre_in)
    )
    assert framing.moved(framing.frame(scene), moved).solids == framing.frame(moved).solids


def test_a_name_alone_never_changes_what_is_free() -> None:
    (cabinet,) = [s for s in framing.frame(called("cover", *PLAIN[1:])).solids if s.label == "top of the cabinet cover"]
    assert cabinet.id == "cover-top"
    taken = framing.frame(called("left", "left-plate-top", *PLAIN[2:]))
    assert len({s.id for s in taken.solids}) == len(taken.solids)


@pytest.mark.parametrize(
    "name", ["cover", "floor", "cooktop", "joist-4", "ridge", "counter-left", "roof-1-back", "hood-body"]
)
def test_a_plan_is_the_same_whatever_a_pipe_is_called(name: str) -> None:
    plain = pipeline.plan(called(*PLAIN))
    for chosen in ((PLAIN[0], name, *PLAIN[2:]), (name, *PLAIN[1:]), (*PLAIN[:2], "stud-5", "stud-6", name, PLAIN[5])):
        plan = pipeline.plan(called(*chosen))
        assert plan.answer == plain.answer
        assert [(f.code, f.state, f.measured) for f in plan.all_findings] == [
            (f.code, f.state, f.measured) for f in plain.all_findings
        ]


def with_obstacles(*named: str) -> str:
    """Put pipes before the starter's own obstacles."""
    before, header, after = starter().partition("[[obstacles]]")
    return before + "".join(map(obstacle, named)) + header + after


def obstacle(name: str) -> str:
    return (
        f'[[obstacles]]\nname = "{name}"\nkind = "pipe"\nleft = "4 in"\nbottom = "0 in"\nwidth = "3 in"\n'
        'depth = "3 in"\nheight = "20 in"\n\n'
    )


@pytest.mark.parametrize(
    ("first", "second", "words"),
    [
        ("old pipe", "old pipe", "used twice"),
        ("old-pipe", "Old Pipe", 'reads the same as "old-pipe"'),
        ("old_pipe", "old--pipe", 'reads the same as "old_pipe"'),
        ("Sink Window", "pipe", ""),  # the starter's own window is called sink-window
    ],
)
def test_names_that_read_the_same_are_refused(first: str, second: str, words: str) -> None:
    text = with_obstacles(first, second)
    with pytest.raises(SceneError) as caught:
        loads(text, "kitchen.toml")
    (slip,) = caught.value.mistakes
    assert re.search(words or 'reads the same as "sink-window"', slip.problem)
    assert slip.value == f'"{second if words else first}"'
    assert slip.line == 1 + [n for n, line in enumerate(text.split("\n")) if line == f"name = {slip.value}"][-1]
    assert "its own name" in slip.remedy


def test_names_that_read_apart_are_fine() -> None:
    assert len(loads(with_obstacles("pipe 1", "pipe 2", "cover"), "k.toml").obstacles) >= 3
